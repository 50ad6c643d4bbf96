import { css } from 'lit';
import { NARROW } from '../pieces/page-sizes.ts';

/** What all ways of the dialog share: ruled parts, large buttons, plain lists of choices. */
export const wayStyles = css`
  * { box-sizing: border-box; }
  :host { display: block; }
  .part { padding: 13px 18px 15px; border-top: 1px solid var(--rule); }
  .part:first-of-type { border-top: 0; }
  h3 { margin: 0 0 5px; font-size: 18px; font-weight: 700; }
  .acts + p { margin-top: 10px; }
  p { margin: 0 0 8px; font-size: 15.5px; line-height: 1.36; }
  .dim { color: var(--ink2); }
  .acts { display: flex; flex-wrap: wrap; gap: 8px; margin-top: 8px; }
  button, select, input[type='text'], input[type='number'], textarea, .file { font: inherit; color: inherit; background: var(--sheet); border: 2px solid var(--ink); border-radius: 0; min-height: 46px; padding: 0 14px; font-size: 16.5px; font-weight: 600; }
  button, select, .file { cursor: pointer; }
  input[type='text'], input[type='number'], textarea { width: 100%; font-weight: 500; cursor: text; }
  textarea { padding: 8px 14px; resize: vertical; }
  button.main { background: var(--ink); color: var(--sheet); }
  button:disabled { color: var(--off); border-color: var(--rule); cursor: default; background: var(--sheet); }
  button:focus-visible, select:focus-visible, input:focus-visible, textarea:focus-visible, summary:focus-visible, a:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .lab { display: block; font-size: 15px; font-weight: 560; color: var(--ink2); margin: 10px 0 4px; }
  .seg { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; border: 2px solid var(--ink); }
  .seg button { border: 0; border-left: 1px solid var(--rule); min-height: 42px; padding: 0 6px; font-size: 15.5px; }
  .seg button:first-child { border-left: 0; }
  .seg .on { background: var(--ink); color: var(--sheet); }
  .seg button:focus-visible { outline-offset: -4px; }
  .tick { display: flex; align-items: center; gap: 10px; min-height: 40px; font-size: 16px; font-weight: 560; cursor: pointer; }
  .tick input { width: 21px; height: 21px; margin: 0; accent-color: var(--ink); }
  .file { position: relative; display: inline-grid; place-items: center; overflow: hidden; }
  .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; }
  .file:focus-within { outline: 4px solid var(--trail); outline-offset: 2px; }
  .said { min-height: 1.4em; margin: 8px 0 0; font-weight: 600; }
  @media ${NARROW} { button, select, .file, .seg button { min-height: 56px; } .tick { min-height: 48px; } .acts > * { flex: 1 1 auto; } }
`;
