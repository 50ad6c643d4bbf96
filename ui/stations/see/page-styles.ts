import { css } from 'lit';
import { NARROW } from '../../pieces/page-sizes.ts';

/** What stands in the page's own tree. */
export const seePageStyles = css`
  .stage takeup-said { position: absolute; inset: 0; overflow-y: auto; z-index: 2; }
  .see-h { display: flex; align-items: baseline; gap: 12px; justify-content: space-between; }
  .see-h span { display: flex; gap: 10px; white-space: nowrap; }
  .see-change { text-decoration: underline; text-underline-offset: 4px; font-weight: 620; min-height: 44px; padding: 0 6px; }
  .see-all summary { min-height: 58px; display: flex; align-items: center; padding: 0 14px; font-size: 18px; font-weight: 680; cursor: pointer; border-top: 2px solid var(--ink); background: var(--sheet); }
  takeup-likely, takeup-free { flex: none; }
  @media ${NARROW} { main[data-station='see'] .h { order: 1; } main[data-station='see'] takeup-said:not([all]) { order: 2; } }
`;
