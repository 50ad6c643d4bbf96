import { css } from 'lit';
import { COMPACT, NARROW, SLIM } from '../../pieces/page-sizes.ts';

/** Where the station's blocks stand on the page. */
export const pageStyles = css`
  .work[data-station='inspect'] { grid-template-columns: minmax(0, 1fr) minmax(0, 1180px); }
  [data-station='inspect'] .side { overflow: hidden; }
  /* The sheet takes more than half of the page: what a question says goes over both. */
  [data-station='inspect'].answers .asked { grid-column: 1 / 3; }
  [data-station='inspect'].answers .side { grid-row: 2; }
  .place { display: flex; gap: 14px; padding: 12px 16px; }
  .place i { flex: none; width: 38px; height: 38px; border-radius: 50%; background: var(--ink); color: var(--sheet); display: grid; place-items: center; font-style: normal; font-weight: 780; font-size: 20px; }
  .place h2 { margin: 0 0 3px; font-size: 20px; line-height: 1.15; font-weight: 740; }
  .place p { margin: 0; font-size: 16px; line-height: 1.32; }
  .place .echo { margin-top: 4px; font-weight: 600; }
  .place .standing { margin-top: 6px; font-size: 13.5px; color: var(--ink2); }
  .place .mark-v { width: 17px; height: 17px; vertical-align: -3px; }
  .place.narrow { position: absolute; top: 10px; right: 10px; width: 46%; padding: 0; }
  .place.narrow i { display: none; }
  @media ${COMPACT} {
    .work[data-station='inspect'] { grid-template-columns: 482px minmax(0, 1fr); }
    [data-station='inspect'] .show .says { display: none; }
    .place { padding: 8px 12px; gap: 10px; }
    .place h2 { font-size: 17px; }
    .place p { font-size: 14px; line-height: 1.28; }
    .place .standing { font-size: 13px; margin-top: 4px; }
  }
  @media ${SLIM} {
    .work[data-station='inspect'] { grid-template-columns: 400px minmax(0, 1fr); }
  }
  @media ${NARROW} {
    [data-station='inspect'] .side { overflow: visible; }
    [data-station='inspect'] .stage { height: 216px !important; }
    .place h2 { font-size: 19px; }
    .place p { font-size: 14.5px; }
  }
`;
