import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

/** What stands beside and under two brakes. */
export const compareStyles = css`
  .cmp-n, .cmp-a, .cmp-c { padding: 10px 16px 12px; }
  .cmp-n h2, .cmp-a h2, .cmp-c h2 { margin: 0 0 2px; font-size: 20px; font-weight: 760; line-height: 1.2; }
  .cmp-n.more { box-shadow: inset 10px 0 0 var(--warn); padding-left: 24px; }
  .cmp-n p, .cmp-a p, .cmp-c p { margin: 2px 0 4px; font-size: 15.5px; line-height: 1.35; }
  .cmp-d { margin: 4px 0 0; }
  .cmp-d div { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 12px; border-top: 1px solid var(--rule); padding: 3px 0; font-size: 16px; }
  .cmp-d dt { font-weight: 560; }
  .cmp-d dd { margin: 0; font-weight: 720; }
  .cmp-d .follows { color: var(--ink2); }
  .cmp-two, .cmp-three { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; margin: 6px 0; }
  .cmp-three { grid-template-columns: auto 1fr 1fr; }
  .cmp-c .btn { min-height: 40px; font-size: 15px; padding: 2px 6px; line-height: 1.1; text-align: center; }
  .cmp-c label { display: block; font-size: 14.5px; color: var(--ink2); }
  .cmp-c .pick { min-height: 40px; font-size: 15.5px; }
  .cmp-c .txt { text-decoration: underline; text-underline-offset: 3px; font-weight: 620; padding: 4px 2px; min-height: 24px; }
  .cmp-t { width: 100%; height: 100%; border-collapse: collapse; font-size: 16px; background: var(--sheet); }
  .cmp-t th, .cmp-t td { border-top: 1px solid var(--rule); padding: 2px 20px; text-align: right; font-weight: 720; white-space: nowrap; }
  .cmp-t tr > :first-child { text-align: left; font-weight: 540; white-space: normal; }
  .cmp-t thead th { color: var(--ink2); font-size: 14.5px; background: var(--panel); border: 0; }
  .cmp-t .same td { font-weight: 540; color: var(--ink2); }
  .cmp-s label { display: flex; justify-content: space-between; align-items: baseline; font-size: 16px; }
  .cmp-s b { font-size: 26px; font-weight: 760; }
  .cmp-s input { width: 100%; height: 34px; margin: 0; accent-color: var(--fluid); }
  .cmp-s input:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .cmp-s p { margin: 0; font-size: 14.5px; color: var(--ink2); }
  .cmp-ms { position: relative; height: 18px; margin: 0 8px; }
  .cmp-m { position: absolute; transform: translateX(-50%); font-style: normal; font-size: 14px; font-weight: 720; border-bottom: 3px solid var(--ink); line-height: 1; }
  .wall .cmp-w { font-size: calc(36 * var(--u)); border-collapse: collapse; width: 100%; }
  .wall .cmp-w th, .wall .cmp-w td { border-top: calc(4 * var(--u)) solid var(--ink); text-align: right; padding: calc(6 * var(--u)) 0 calc(6 * var(--u)) calc(14 * var(--u)); font-weight: 740; white-space: nowrap; }
  .wall .cmp-w tr > :first-child { text-align: left; font-weight: 560; padding-left: 0; white-space: normal; line-height: 1.05; }
  @media ${COMPACT} { .cmp-t { font-size: 15px; } .cmp-t th, .cmp-t td { padding: 1px 14px; } .cmp-n h2, .cmp-a h2, .cmp-c h2 { font-size: 18px; } .cmp-s b { font-size: 22px; } }
  @media ${NARROW} { .cmp-c .btn { min-height: 56px; } .cmp-c .pick { min-height: 56px; } .cmp-c .txt { min-height: 44px; } .cmp-s input { height: 56px; } .cmp-t { border: 2px solid var(--ink); height: auto; } .cmp-t th, .cmp-t td { padding: 4px 10px; } }
`;
