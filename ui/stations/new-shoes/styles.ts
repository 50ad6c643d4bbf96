import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import { scrollEdge } from '../../pieces/scroll-edge.ts';

/** What only this station has. */
export const shoesStyles = css`
  .ns-rigid { display: block; font-size: 14px; font-weight: 500; color: var(--ink2); }
  .ns-strip { display: flex; height: 100%; }
  .ns-strip button { flex: 1; min-width: 0; display: flex; flex-direction: column; align-items: flex-start; gap: 2px; padding: 12px 14px; border-left: 1px solid var(--rule); background: var(--sheet); overflow: hidden; }
  .ns-strip button:first-child { border-left: 0; }
  .ns-strip .ns-n { display: flex; gap: 10px; align-items: center; }
  .ns-strip strong { font-size: 32px; line-height: 1.1; font-weight: 780; }
  .ns-strip .park-mk { width: 22px; height: 22px; }
  .ns-strip b { display: block; font-size: 18px; font-weight: 720; line-height: 1.25; }
  .ns-t > span { font-size: 15.5px; line-height: 1.3; }
  .ns-t em { display: block; font-style: normal; font-size: 15.5px; font-weight: 680; margin-top: 4px; }
  .ns-strip .on { flex: 2.5; flex-direction: row; gap: 18px; background: var(--ink); color: var(--sheet); }
  .ns-strip .on .ns-n { flex-direction: column; align-items: flex-start; }
  .ns-strip .on strong { font-size: 76px; line-height: 0.95; }
  .ns-strip .on b { font-size: 27px; }
  .ns-strip .on .ns-t > span { font-size: 18px; }
  .ns-strip .on .park-mk { background: var(--sheet); padding: 2px; width: 26px; height: 26px; }
  .ns-over { position: absolute; right: 34px; top: 44px; width: 27.5%; max-height: calc(100% - 260px); overflow: auto; border: 2px solid var(--ink); z-index: 1;
    background: ${scrollEdge}; }
  .ns-over p:last-child { padding-bottom: 6px; }
  .h .ns-worn { font-weight: 640; }
  .ns-card { padding: 12px 18px 14px; }
  .ns-card h2 { margin: 0 0 4px; font-size: 21px; font-weight: 760; }
  .ns-card h2 small { font-size: 14px; font-weight: 540; color: var(--ink2); margin-left: 8px; }
  .ns-card p { margin: 8px 0 0; font-size: 16px; line-height: 1.38; }
  .ns-card > small { display: block; font-size: 13.5px; color: var(--ink2); }
  .ns-pic { display: block; width: 100%; max-height: 330px; }
  .ns-pic text { font: 540 17.5px/1 'Encode Sans Variable', 'Encode Sans', sans-serif; fill: var(--ink); }
  .ns-pic .v { font-weight: 720; font-size: 17.5px; }
  .ns-pic .s { fill: var(--ink2); }
  .ns-pic .on { paint-order: stroke; stroke: var(--lining); stroke-width: 5px; font-weight: 640; }
  .ns-pic .bad { fill: var(--bad); font-weight: 720; }
  .ns-comb { margin-top: 6px; }
  .ns-comb b { font-size: 16px; margin-right: 8px; }
  .ns-comb span { font-size: 14.5px; }
  .ns-comb svg { display: block; width: 100%; }
  .ns-bed, .ns-cable { width: 100%; border-collapse: collapse; margin-top: 8px; font-size: 16px; }
  .ns-bed th, .ns-bed td, .ns-cable th, .ns-cable td { text-align: right; padding: 3px 6px; border-top: 1px solid var(--rule); font-weight: 640; }
  .ns-bed thead th, .ns-cable thead th { font-size: 13.5px; font-weight: 560; color: var(--ink2); border: 0; }
  .ns-cable th:first-child { text-align: left; }
  .ns-cable .park-mk { width: 16px; height: 16px; vertical-align: -2px; }
  .ns-bed button { min-width: 64px; text-align: right; text-decoration: underline; min-height: 26px; }
  .ns-bed .on { background: color-mix(in srgb, var(--ink) 10%, var(--sheet)); }
  table.ns-teeth { border-collapse: collapse; width: 100%; font-size: 19px; }
  .ns-teeth th, .ns-teeth td { text-align: left; padding: 7px 16px; border-top: 1px solid var(--rule); font-weight: 640; }
  .ns-teeth thead th { font-size: 14.5px; font-weight: 560; color: var(--ink2); border: 0; }
  .ns-teeth .park-mk { width: 18px; height: 18px; vertical-align: -2px; margin-right: 8px; }
  .ns-teeth td span { font-size: 16px; }
  .ns-teeth .on { background: color-mix(in srgb, var(--adj) 14%, var(--sheet)); box-shadow: inset 6px 0 0 var(--adj); }
  .ns-set { min-width: 0; }
  .ns-set .whatif { border: 0; background: none; min-height: 24px; padding: 0; font: inherit; color: inherit; text-align: left; text-decoration: underline dotted; text-underline-offset: 3px; cursor: pointer; }
  .rd .whatif { border: 0; background: none; float: right; min-height: 24px; padding: 0; font: inherit; font-size: 13px; font-weight: 620; color: var(--ink); text-decoration: underline; text-underline-offset: 3px; cursor: pointer; }
  .ns-step { display: grid; grid-template-columns: 52px minmax(0, 1fr) 52px; border: 2px solid var(--ink); }
  .ns-step .btn { border: 0; padding: 0; font-size: 21px; }
  .ns-step .btn:first-child { border-right: 1px solid var(--rule); }
  .ns-step .btn:last-child { border-left: 1px solid var(--rule); }
  .ns-step b { align-self: center; text-align: center; font-size: 16px; font-weight: 560; white-space: nowrap; }
  .ns-step b strong { font-size: 26px; font-weight: 760; }
  .ns-step input { font: inherit; font-size: 17px; font-weight: 640; text-align: center; border: 0; background: none; color: inherit; min-width: 0; width: 100%; padding: 0; border-radius: 0; }
  .ns-step input:focus-visible { outline: 4px solid var(--trail); outline-offset: -4px; }
  .ns-three { grid-template-columns: 1fr 1fr 1fr; gap: 8px; }
  .ns-three .ns-step { grid-template-columns: 34px minmax(0, 1fr) 34px; }
  .ns-own { display: grid; gap: 10px; padding: 12px; order: 1; }
  .ns-parts { min-height: 42px; font-size: 16px; background: var(--sheet); }
  .ns-nav { grid-template-columns: 1fr 2fr; }
  .ns-nav .btn { min-height: 56px; font-size: 18px; }
  .ns-ctl .btn { padding: 0 8px; text-align: center; }
  .ns-count { font-size: 16px; font-weight: 640; align-self: center; min-height: 1.3em; }
  .ns-ctl .seg button { font-size: 14.5px; padding: 0 2px; }
  @media ${COMPACT} {
    .ns-strip button { padding: 7px 9px; gap: 0; }
    .ns-strip strong { font-size: 22px; }
    .ns-strip b { font-size: 14.5px; }
    .ns-strip .park-mk { width: 16px; height: 16px; }
    .ns-t > span, .ns-t em { font-size: 13px; line-height: 1.25; }
    .ns-strip .on { gap: 12px; }
    .ns-strip .on strong { font-size: 50px; }
    .ns-strip .on b { font-size: 19px; }
    .ns-strip .on .ns-t > span { font-size: 14.5px; }
    .ns-over { right: 10px; top: 10px; width: max(33%, 250px); max-height: calc(100% - 192px); }
    .ns-card { padding: 7px 12px 9px; }
    .ns-card h2 { font-size: 17px; }
    .ns-card h2 small, .ns-card > small { font-size: 13px; }
    .ns-card p { font-size: 14px; margin-top: 5px; }
    .ns-pic { max-height: 270px; }
    .ns-comb b { font-size: 14.5px; }
    .ns-comb span { font-size: 13px; }
    .ns-comb svg { max-height: 54px; }
    .ns-bed button { min-height: 24px; }
    .ns-comb { margin-top: 2px; }
    .ns-bed, .ns-cable { font-size: 14px; margin-top: 4px; }
    .ns-bed th, .ns-bed td, .ns-cable th, .ns-cable td { padding: 1px 4px; }
    .ns-bed thead th, .ns-cable thead th { font-size: 13px; }
    table.ns-teeth { font-size: 16px; }
    .ns-teeth th, .ns-teeth td { padding: 4px 12px; }
    .ns-teeth thead th { font-size: 13px; }
    .ns-teeth td span { font-size: 14px; }
    .ns-parts { min-height: 34px; font-size: 14px; }
    .ns-nav .btn { min-height: 46px; font-size: 16px; }
    .ns-step b strong { font-size: 21px; }
    .ns-step { grid-template-columns: 44px minmax(0, 1fr) 44px; }
    .ns-step input { font-size: 14.5px; }
    .ns-three .ns-step { grid-template-columns: 24px minmax(0, 1fr) 24px; }
    .ns-ctl .seg button, .ns-count { font-size: 13.5px; }
  }
  @media ${NARROW} {
    p.ns-worn { order: 0; margin: 0; padding: 10px 14px; font-size: 15.5px; line-height: 1.32; font-weight: 640; background: var(--sheet); border-bottom: 1px solid var(--rule); }
    .ns-strip { height: 58px; border-bottom: 1px solid var(--rule); }
    .ns-strip button, .ns-strip .on { flex: 1; flex-direction: row; align-items: center; justify-content: center; gap: 4px; padding: 0; }
    .ns-strip strong, .ns-strip .on strong { font-size: 22px; line-height: 1; }
    .ns-strip .on .park-mk { width: 18px; height: 18px; }
    .ns-say { padding: 8px 14px; font-size: 15px; line-height: 1.32; }
    .ns-say b { font-weight: 760; }
    .ns-say em { font-style: normal; font-weight: 700; }
    .ns-set .whatif, .rd .whatif { min-height: 56px; }
    .ns-card { order: 2; padding: 12px 16px; }
    .ns-parts { order: 1; min-height: 58px; margin: 10px 14px; }
    .ns-teeth { order: 2; border-width: 0 0 2px; }
    .ns-card p { font-size: 16px; }
    .ns-pic { max-height: none; }
    .ns-card h2 { font-size: 20px; }
    .ns-card h2 small, .ns-card > small, .ns-comb span, .ns-bed, .ns-cable, .ns-bed thead th, .ns-cable thead th, .ns-teeth thead th { font-size: 14.5px; }
    .ns-bed button { min-height: 56px; min-width: 72px; }
    .ns-step, .ns-three .ns-step { grid-template-columns: 58px minmax(0, 1fr) 58px; }
    .ns-three { grid-template-columns: 1fr; gap: 4px; }
    .ns-three .ns-set { display: grid; grid-template-columns: 104px 1fr; gap: 8px; align-items: center; }
    .ns-own .two .btn { padding: 0 6px; }
    .ns-own .seg button { min-height: 58px; font-size: 14px; padding: 0 2px; }
    .ns-step .btn, .ns-nav .btn { min-height: 56px; }
    .ns-step input { font-size: 18px; }
    .ns-ctl .seg button { font-size: 14px; }
    .ns-count { font-size: 15px; }
    [data-station='new-shoes'] .note { order: 2; }
  }
`;
