import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

/** Ruled lists, square corners, two line weights: what both modes share. */
export const look = css`
  :host { display: block; font-feature-settings: 'tnum'; color: var(--ink); }
  * { box-sizing: border-box; }
  button, select { font: inherit; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; text-align: inherit; border-radius: 0; }
  button:focus-visible, select:focus-visible, input:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; z-index: 2; }
  button:disabled { color: var(--ink2); cursor: default; }
  h2, h3, p { margin: 0; }
  .lab { font-size: 14.5px; font-weight: 560; color: var(--ink2); }
  .btn { border: 2px solid var(--ink); min-height: 38px; padding: 0 14px; font-weight: 640; font-size: 16px; background: var(--sheet); }
  .btn.p { background: var(--ink); color: var(--sheet); }
  .rigid { display: block; font-size: 14px; font-weight: 500; color: var(--ink2); }
  .no { flex: none; display: inline-flex; align-items: center; justify-content: center; width: 28px; height: 28px; border: 2px solid currentColor; border-radius: 50%; font-size: 14px; font-weight: 700; }
  .no.small { width: 23px; height: 23px; font-size: 13px; border: 0; background: var(--ink); color: var(--sheet); }
  .no.done { background: var(--ink); color: var(--sheet); border-color: var(--ink); }
  @media ${COMPACT} {
    .lab { font-size: 13.5px; }
    .rigid { font-size: 13px; }
    .btn { font-size: 14.5px; min-height: 34px; padding: 0 10px; }
    .no { width: 24px; height: 24px; font-size: 13px; }
  }
  @media ${NARROW} {
    .lab { font-size: 14px; }
    .btn { min-height: 56px; font-size: 16px; }
    .no { width: 28px; height: 28px; font-size: 14px; }
    .no.small { font-size: 14px; }
  }
`;
