import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

/** Hands in the brake: a ruled list of what can be held, and what is felt. */
export const handsStyles = css`
  .hands-list .head { display: flex; justify-content: space-between; align-items: center; padding: 4px 16px; border-bottom: 1px solid var(--rule); font-size: 15px; color: var(--ink2); }
  .hands-list ul { list-style: none; margin: 0; padding: 0; }
  .hands-list li { border-top: 1px solid var(--rule); }
  .hands-list li:first-child { border-top: 0; }
  .hands-list li > button, .hands-list li > div { display: grid; grid-template-columns: 11em minmax(0, 1fr) auto; align-items: center; width: 100%; min-height: 34px; padding: 0 16px; font-size: 16px; }
  .hands-list b { font-weight: 660; }
  .hands-list span { color: var(--ink2); min-width: 0; }
  .hands-list .on { background: var(--ink); color: var(--sheet); }
  .hands-list .on span { color: var(--sheet); }
  .hands-list .do { border: 2px solid var(--ink); min-height: 28px; padding: 0 12px; font-size: 15px; font-weight: 620; }
  .hands-list .do:disabled { border-color: var(--rule); }
  .hands-rd { grid-template-columns: 1fr 1fr 1fr; }
  .hands-segs { display: grid; grid-template-columns: 1fr 1fr 1.2fr; gap: 10px; padding: 10px 16px; }
  .hands-segs .seg button { min-height: 40px; padding: 0 6px; white-space: nowrap; font-size: 15.5px; }
  .hands-h > div { display: flex; justify-content: space-between; align-items: start; gap: 12px; }
  .hands-h .btn { min-height: 38px; font-size: 15px; white-space: nowrap; }
  .hands-ctl { grid-template-columns: minmax(0, 1fr) auto; }
  .hands-ctl kbd { font: inherit; font-size: 14px; border: 1px solid currentcolor; padding: 0 6px; }
  .hands-list ul + ul, .hands-why { border-top: 1px solid var(--rule); }
  .hands-why { margin: 0; padding: 6px 16px; font-size: 15px; }
  @media ${COMPACT} {
    .hands-list .head { font-size: 13.5px; padding: 2px 12px; }
    .hands-list li > button, .hands-list li > div { min-height: 24px; font-size: 14px; padding: 0 12px; grid-template-columns: 10.2em minmax(0, 1fr) auto; }
    .hands-list .do { min-height: 24px; font-size: 13.5px; border-width: 1px; }
    .hands-rd .c .v { font-size: 25px; }
    .hands-segs { gap: 6px; padding: 6px 12px; }
    .hands-segs .seg button { min-height: 34px; padding: 0 4px; font-size: 14px; }
    .hands-h .btn { min-height: 32px; font-size: 14px; }
    .hands-why { font-size: 14px; }
  }
  @media ${NARROW} {
    .hands-list li > button, .hands-list li > div { min-height: 56px; font-size: 16px; grid-template-columns: 8.6em minmax(0, 1fr) auto; }
    .hands-list .do { min-height: 56px; font-size: 16px; border-width: 2px; }
    .hands-segs .seg button, .hands-h .btn { min-height: 56px; font-size: 16px; }
  }
`;
