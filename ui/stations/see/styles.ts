import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

/** What the elements of What I see share. */
export const seeLook = css`
  .opts { display: flex; flex-wrap: wrap; gap: 8px; }
  .opts button { border: 2px solid var(--ink); min-height: 46px; padding: 4px 14px; font-weight: 600; font-size: 16px; background: var(--sheet); color: var(--ink); flex: 0 1 auto; }
  .opts button.on { background: var(--ink); color: var(--sheet); }
  .opts .unsure { border-color: var(--rule); font-weight: 540; }
  .step { display: inline-grid; grid-template-columns: 56px 92px 56px; border: 2px solid var(--ink); background: var(--sheet); color: var(--ink); }
  .step button { min-height: 48px; font-size: 24px; font-weight: 700; text-align: center; }
  .step input { width: 100%; border: 0; border-left: 1px solid var(--rule); border-right: 1px solid var(--rule); background: none; color: inherit; font: inherit; font-size: 20px; font-weight: 700; text-align: center; padding: 0; }
  @media ${COMPACT} { .opts button { min-height: 40px; font-size: 15px; padding: 2px 11px; } .step button { min-height: 42px; } }
  @media ${NARROW} { .opts button { min-height: 54px; font-size: 17px; } .step button { min-height: 54px; } }
`;
