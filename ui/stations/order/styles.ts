import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import { scrollEdge } from '../../pieces/scroll-edge.ts';

/** The work in its order: a ruled list of steps, and the open one's card. */
export const orderStyles = css`
  .or-h { display: grid; gap: 8px; }
  .or-pages button { min-height: 40px; font-size: 16px; padding: 0 4px; }
  .or-list ol { list-style: none; margin: 0; padding: 0; }
  .or-list li { border-top: 1px solid var(--rule); }
  .or-list li:first-child { border-top: 0; }
  .or-list li > button { display: grid; grid-template-columns: 30px minmax(0, 1fr) 22px; gap: 8px; align-items: center; width: 100%; min-height: 35px; padding: 0 16px; text-align: left; font-size: 16px; }
  .or-list i { font-style: normal; font-weight: 720; }
  .or-list b { font-weight: 620; }
  .or-list .on { background: var(--ink); color: var(--sheet); }
  .or-list .on > button { min-height: 42px; }
  .or-list .on i { font-size: 25px; }
  .or-list .on b { font-size: 19px; font-weight: 740; }
  .or-list .on button:focus-visible { outline-color: var(--sheet); outline-offset: -5px; }
  .or-list li p { margin: 0; padding: 0 16px 8px 54px; font-size: 16px; line-height: 1.36; }
  .or-tick { width: 20px; height: 20px; color: var(--good); }
  .or-list .on .or-tick { color: var(--sheet); }
  .or-list .care, .or-now .care { display: grid; grid-template-columns: 28px minmax(0, 1fr); gap: 10px; font-weight: 660; }
  .or-list .care svg, .or-now .care svg { width: 28px; height: 26px; }
  .or-over { position: absolute; right: 34px; top: 34px; width: 33%; max-height: calc(100% - 128px); overflow: auto; border: 2px solid var(--ink); background: ${scrollEdge}; z-index: 1; padding: 12px 18px 14px; }
  .or-over h2, .or-card h2, .or-now h2 { margin: 0; font-size: 22px; font-weight: 760; line-height: 1.2; }
  .or-part { display: grid; grid-template-columns: 116px minmax(0, 1fr); gap: 14px; align-items: center; border-bottom: 1px solid var(--rule); padding: 8px 0; }
  .or-part p { margin: 0; font-size: 16px; line-height: 1.3; }
  .or-tool { width: 116px; height: 86px; }
  .or-tool .tb { fill: var(--plate); stroke: var(--ink); stroke-width: 2.4; stroke-linejoin: round; }
  .or-tool .tl { fill: none; stroke: var(--ink); stroke-width: 2.6; stroke-linejoin: round; stroke-linecap: round; }
  .or-holds { display: flex; flex-wrap: wrap; gap: 4px 22px; margin: 0; padding: 8px 0; border-bottom: 1px solid var(--rule); }
  .or-holds dt { font-size: 14.5px; color: var(--ink2); font-weight: 560; }
  .or-holds dd { margin: 0; font-size: 27px; font-weight: 750; line-height: 1.1; white-space: nowrap; }
  .or-holds small { font-size: 15px; font-weight: 560; margin-left: 5px; }
  .or-orders { width: 100%; border-collapse: collapse; margin-top: 8px; font-size: 16px; }
  .or-orders caption { text-align: left; font-size: 16px; font-weight: 720; padding-bottom: 2px; }
  .or-orders th, .or-orders td { text-align: right; padding: 3px 5px; border-top: 1px solid var(--rule); font-weight: 640; vertical-align: top; }
  .or-orders th:first-child { text-align: left; padding-left: 4px; }
  .or-orders thead th { font-size: 13.5px; font-weight: 560; color: var(--ink2); border: 0; line-height: 1.1; }
  .or-orders .says td { text-align: left; border-top: 0; padding-top: 0; font-weight: 480; color: var(--ink2); line-height: 1.3; }
  .or-beside { padding: 8px 14px 10px; }
  .or-said { margin: 0; padding: 7px 0; border-bottom: 1px solid var(--rule); font-size: 15.5px; line-height: 1.3; }
  .or-said div { padding: 3px 0; }
  .or-said dt { font-weight: 700; }
  .or-said dd { margin: 0; }
  .or-orders .on { background: color-mix(in srgb, var(--ink) 8%, var(--sheet)); }
  .or-fact { margin: 7px 0 0; font-size: 16px; line-height: 1.34; }
  .or-checks { border: 0; margin: 8px 0 0; padding: 0; }
  .or-checks legend { padding: 0; font-size: 14.5px; color: var(--ink2); font-weight: 560; }
  .or-checks label { display: grid; grid-template-columns: 26px minmax(0, 1fr); gap: 10px; align-items: center; min-height: 32px; font-size: 16px; line-height: 1.25; cursor: pointer; }
  .or-checks input { width: 22px; height: 22px; margin: 0; accent-color: var(--ink); }
  .or-checks input:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .or-to { margin-top: 10px; width: 100%; min-height: 44px; font-size: 16px; }
  .or-back { padding: 8px 0; border-bottom: 1px solid var(--rule); }
  .or-step { display: grid; grid-template-columns: 52px minmax(0, 1fr) 52px; gap: 10px; align-items: center; }
  .or-step > div { text-align: center; font-size: 16px; font-weight: 600; }
  .or-step strong { font-size: 28px; font-weight: 760; }
  .or-step .btn { min-height: 46px; padding: 0; font-size: 22px; }
  .or-ways { margin: 8px 0 0; padding: 0 0 0 22px; font-size: 16px; line-height: 1.3; }
  .or-ways li { padding: 4px 0 5px; border-top: 1px solid var(--rule); }
  .or-ways small { display: block; font-size: 14.5px; color: var(--ink2); }
  .or-card figure, .or-over figure { margin: 8px 0 0; }
  .or-card figcaption, .or-over figcaption { font-size: 14.5px; font-weight: 620; }
  .or-chart { display: block; width: 100%; }
  .or-chart text { font: 560 14.5px/1 'Encode Sans Variable', 'Encode Sans', sans-serif; fill: var(--ink); }
  .or-chart .v { font-weight: 740; }
  .or-chart .g { stroke: var(--rule); stroke-width: 1; }
  .or-chart .m { stroke: var(--ink2); stroke-width: 1.4; stroke-dasharray: 5 4; }
  .or-chart .w { fill: none; stroke: var(--ink); stroke-width: 2.4; }
  .or-chart .d { fill: var(--ink); }
  .or-chart .lead { fill: none; stroke: var(--lead); stroke-width: 2.6; }
  .or-chart .trail { fill: none; stroke: var(--trail); stroke-width: 2.6; stroke-dasharray: 9 4; }
  .or-chart .ld { fill: var(--lead); }
  .or-chart .td { fill: var(--sheet); stroke: var(--trail); stroke-width: 2; }
  .or-key { margin: 0; font-size: 14.5px; font-weight: 660; }
  .or-key .lead { color: var(--lead); margin-right: 16px; }
  .or-key .trail { color: var(--trail); }
  .or-bed { width: 100%; border-collapse: collapse; margin-top: 8px; font-size: 15px; }
  .or-bed th, .or-bed td { text-align: right; padding: 3px 6px; border-top: 1px solid var(--rule); font-weight: 620; white-space: nowrap; }
  .or-bed thead th { white-space: normal; border: 0; font-size: 13.5px; font-weight: 560; color: var(--ink2); vertical-align: bottom; }
  .or-ctl .row { grid-template-columns: 1fr 2.4fr; }
  .or-ctl .btn { min-height: 56px; font-size: 18px; padding: 0 12px; line-height: 1.15; text-align: center; }
  .or-foot { margin: 0; font-size: 14px; line-height: 1.35; color: var(--ink2); padding: 0 4px; }
  @media ${COMPACT} {
    .or-h { gap: 5px; }
    .or-pages button { min-height: 32px; font-size: 14.5px; }
    .or-list li > button { min-height: 24px; font-size: 14px; padding: 0 12px; grid-template-columns: 24px minmax(0, 1fr) 18px; }
    .or-list .on > button { min-height: 32px; }
    .or-list .on i { font-size: 19px; }
    .or-list .on b { font-size: 16px; }
    .or-list li p { font-size: 14px; padding: 0 12px 6px 44px; line-height: 1.3; }
    .or-tick { width: 16px; height: 16px; }
    .or-over { right: 10px; top: 10px; width: max(35%, 262px); max-height: calc(100% - 74px); padding: 8px 12px 10px; }
    .or-over h2 { font-size: 17px; }
    .or-part { grid-template-columns: 78px minmax(0, 1fr); padding: 5px 0; gap: 10px; }
    .or-part p, .or-fact, .or-checks label, .or-ways { font-size: 14px; }
    .or-tool { width: 78px; height: 58px; }
    .or-holds dd { font-size: 21px; }
    .or-holds dt, .or-checks legend, .or-ways small, .or-key, .or-card figcaption, .or-over figcaption { font-size: 13px; }
    .or-holds small { font-size: 14px; }
    .or-orders, .or-orders caption { font-size: 14px; }
    .or-said { font-size: 14px; }
    .or-beside { padding: 4px 12px 6px; }
    .or-orders thead th { font-size: 13px; }
    .or-checks label { min-height: 25px; }
    .or-checks input { width: 18px; height: 18px; }
    .or-to, .or-step .btn { min-height: 36px; font-size: 14px; }
    .or-step strong { font-size: 22px; }
    .or-step > div { font-size: 14px; }
    .or-bed { font-size: 13.5px; }
    .or-bed thead th { font-size: 13px; }
    .or-bed th, .or-bed td { padding: 1px 4px; }
    .or-ctl .btn { min-height: 46px; font-size: 15.5px; }
    .or-foot { font-size: 13px; }
  }
  @media ${NARROW} {
    .or-h { order: 0; padding: 8px 12px 10px; }
    .or-h h1 { font-size: 24px; }
    .or-pages button { min-height: 56px; font-size: 16px; padding: 0 2px; }
    .or-now { order: 1; padding: 10px 14px 12px; border-left: 6px solid var(--ink); }
    .or-now h2 { font-size: 22px; }
    .or-now h2 i { font-style: normal; margin-right: 6px; }
    .or-now p { margin: 6px 0 0; font-size: 17px; line-height: 1.36; }
    .or-card { order: 2; padding: 10px 14px 14px; }
    .or-card > h2 { display: none; }
    .or-card figure { margin-top: 12px; }
    .or-part p, .or-fact, .or-ways { font-size: 16.5px; }
    .or-checks label { min-height: 56px; font-size: 17px; }
    .or-checks input { width: 26px; height: 26px; }
    .or-to { min-height: 56px; }
    .or-step .btn { min-height: 56px; }
    .or-list { order: 3; }
    .or-list li > button, .or-list .on > button { min-height: 56px; font-size: 17px; }
    .or-list .on i, .or-list i { font-size: 19px; }
    .or-list .on b { font-size: 17px; }
    .or-foot { order: 4; padding: 8px 14px; }
    .or-ctl .btn { min-height: 58px; font-size: 17px; }
  }
`;
