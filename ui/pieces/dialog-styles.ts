import { css } from 'lit';
import { NARROW } from './page-sizes.ts';

/** Look of the sheets that open over the page: square, ruled, head and close button always in view. */
export const dialogStyles = css`
  * { box-sizing: border-box; }
  dialog { border: 2px solid var(--ink); padding: 0; background: var(--sheet); color: var(--ink); width: min(var(--wide, 560px), 100vw); max-width: none; max-height: calc(100vh - 24px); margin: auto; overflow-y: auto; font: 500 17px/1.35 'Encode Sans Variable', 'Encode Sans', sans-serif; font-feature-settings: 'tnum'; }
  dialog::backdrop { background: color-mix(in srgb, var(--ink) 45%, transparent); }
  header { display: flex; align-items: center; justify-content: space-between; border-bottom: 2px solid var(--ink); padding: 6px 6px 6px 18px; position: sticky; top: 0; background: var(--sheet); z-index: 1; }
  h2 { margin: 0; font-size: 24px; font-weight: 800; font-stretch: 106%; }
  button, select { font: inherit; color: inherit; background: var(--sheet); border: 2px solid var(--ink); border-radius: 0; min-height: 48px; cursor: pointer; padding: 0 14px; font-weight: 600; }
  button:disabled { color: var(--off); border-color: var(--rule); cursor: default; }
  button:focus-visible, select:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  @media ${NARROW} {
    button, select { min-height: 56px; }
    dialog { width: 100vw; margin: auto 0 0; border-width: 2px 0 0; }
  }
`;
