import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

/** What stands in the page's own tree. */
export const varyStyles = css`
  .vary-over { position: absolute; right: 0; top: 0; bottom: 66px; width: 58%; border-bottom: 2px solid var(--ink); border-left: 2px solid var(--ink); background: var(--sheet); display: flex; flex-direction: column; z-index: 1; }
  .vary-over :is(takeup-curve, takeup-map, takeup-region) { flex: 1; min-height: 0; }
  .vary-stop { position: absolute; right: 14px; top: 8px; min-height: 44px; visibility: hidden; animation: vary-late 0s 0.7s forwards; }
  @keyframes vary-late { to { visibility: visible; } }
  .vary-shape { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); }
  .vary-over p, .vary-pic p { margin: 0; padding: 8px 16px; font-size: 15px; border-top: 1px solid var(--rule); min-height: 1.35em; }
  .vary-pic { display: flex; flex-direction: column; position: relative; }
  .vary-pic takeup-curve { height: 380px; }
  .vary-pic takeup-map { height: 420px; }
  .vary-pic takeup-region { height: 520px; }
  .vary-mode { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); margin-top: 8px; }
  .vary-two { grid-template-columns: repeat(2, minmax(0, 1fr)); }
  .seek-go { width: 100%; justify-content: center; min-height: 52px; }
  .seek-far { margin: 0; font-size: 14.5px; line-height: 1.3; min-height: 2.6em; }
  .seek-read .seek-want, .seek-read .after small { display: block; font-size: 14px; font-weight: 560; }
  .seek-read small.bad { color: var(--bad); }
  .seek-read thead th { white-space: normal; }
  .seek-read thead th:first-child { text-align: left; }
  .vary-read.seek-read :is(td, th) { font-size: 19px; }
  .vary-read.seek-read :is(tbody th, thead th) { font-size: 15px; }
  .seek-none p { border-top: 0; }
  .seek-ask .seek-wishes li { grid-template-columns: repeat(3, minmax(0, 1fr)) auto; }
  .seek-ready span { display: grid; }
  .seek-ready small { font-size: 14px; font-weight: 520; color: var(--ink2); line-height: 1.25; }
  .vary-ways { display: flex; flex-wrap: wrap; gap: 0 14px; }
  .vary-ways button { border: 0; background: none; padding: 0; min-height: 32px; font: inherit; font-size: 14.5px; font-weight: 620; color: var(--ink); text-decoration: underline; text-underline-offset: 3px; cursor: pointer; }
  .vary-read table { border-collapse: collapse; width: 100%; }
  .vary-read :is(th, td) { padding: 6px 16px; text-align: right; font-size: 24px; font-weight: 680; border-top: 1px solid var(--rule); white-space: nowrap; }
  .vary-read thead :is(th, td) { border-top: 0; font-size: 16px; font-weight: 620; color: var(--ink2); }
  .vary-read :is(tbody th, thead td) { text-align: left; font-size: 15px; font-weight: 560; color: var(--ink2); white-space: normal; line-height: 1.2; }
  .vary-read .after { font-weight: 780; }
  .vary-read .by { font-size: 15px; font-weight: 560; color: var(--ink2); }
  .vary-read p { margin: 0; padding: 8px 16px; font-size: 15.5px; line-height: 1.35; border-top: 1px solid var(--rule); }
  .vary-read .btn { margin: 8px 16px 12px; }
  .vary-ask { padding: 10px 16px 14px; display: grid; gap: 8px; }
  .vary-field { display: grid; gap: 2px; font-size: 14.5px; font-weight: 560; color: var(--ink2); min-width: 0; }
  .vary-field small { font-size: 13px; }
  .vary-field :is(input, select) { font: inherit; font-size: 18px; font-weight: 660; color: var(--ink); background: var(--sheet); border: 2px solid var(--ink); min-height: 44px; padding: 0 10px; min-width: 0; width: 100%; box-sizing: border-box; }
  .vary-four { grid-template-columns: repeat(4, minmax(0, 1fr)); }
  .vary-ctl .seg { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); }
  .vary-check { display: flex; gap: 10px; align-items: center; min-height: 40px; font-size: 15px; line-height: 1.25; }
  .vary-check input { width: 22px; height: 22px; margin: 0; accent-color: var(--ink); flex: none; }
  .vary-known { padding: 10px 16px 14px; display: grid; gap: 8px; }
  .vary-known h2 { margin: 0; font-size: 20px; font-weight: 740; }
  .vary-known h3 { margin: 6px 0 0; font-size: 16px; font-weight: 700; }
  .vary-known p { margin: 0; font-size: 15px; line-height: 1.35; }
  .vary-known :is(ul, ol) { list-style: none; margin: 0; padding: 0; }
  .vary-known ul li { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 1fr) auto; gap: 4px 8px; align-items: end; border-top: 1px solid var(--rule); padding: 6px 0; }
  .vary-known ul li > span { grid-column: 1 / -1; font-size: 15.5px; font-weight: 660; }
  .vary-known table { border-collapse: collapse; width: 100%; }
  .vary-known :is(th, td) { padding: 4px 0 4px 10px; text-align: right; font-size: 16px; font-weight: 680; border-top: 1px solid var(--rule); white-space: nowrap; }
  .vary-known :is(tbody th, th:first-child) { text-align: left; font-size: 15px; font-weight: 560; white-space: normal; padding-left: 0; }
  .vary-rank li { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 2px 8px; font-size: 15px; padding: 3px 0; }
  .vary-rank svg { grid-column: 1 / -1; width: 100%; height: 12px; fill: var(--ink); }
  .vary-ready { padding: 10px 16px 14px; display: grid; gap: 8px; }
  .vary-ready h2 { margin: 0; font-size: 20px; font-weight: 740; }
  .vary-ready .btn { justify-content: flex-start; text-align: left; min-height: 46px; padding: 4px 14px; }
  @media ${COMPACT} {
    .vary-over { width: 42%; bottom: 48px; }
    .vary-four { gap: 6px; }
    .vary-four :is(input) { padding: 0 6px; }
  }
  @media ${NARROW} {
    main[data-station='vary'] .h { order: 1; }
    main[data-station='vary'] .vary-pic { order: 2; }
    main[data-station='vary'] .vary-read { order: 3; }
    main[data-station='vary'] .vary-ctl { order: 4; position: static; }
    main[data-station='vary'] .vary-ask { order: 5; }
    main[data-station='vary'] .vary-known { order: 6; }
    main[data-station='vary'] .vary-own { order: 6; }
    main[data-station='vary'] .vary-ready { order: 7; }
    .vary-four { grid-template-columns: repeat(2, minmax(0, 1fr)); }
    main[data-station='vary'] .seek-ask { order: 5; }
    .seek-ask .seek-wishes li { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
    .seek-go { min-height: 60px; }
    .vary-ready .btn, .vary-read .btn { min-height: 56px; }
    .vary-field :is(input, select) { min-height: 56px; }
    .vary-check { min-height: 56px; }
    .vary-known .btn { min-height: 56px; }
    .vary-ways button { min-height: 56px; font-size: 15px; }
  }
`;
