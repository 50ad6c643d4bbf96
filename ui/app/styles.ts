import { css } from 'lit';
import { BARRED, COMPACT, LOW, NARROW } from '../pieces/page-sizes.ts';

/** Layout and type of the page: ruled cells, square corners, two line weights. */
export const styles = css`
  :host { display: flex; flex-direction: column; height: 100%; background: var(--desk); color: var(--ink); font: 500 17px/1.4 'Encode Sans Variable', 'Encode Sans', sans-serif; font-feature-settings: 'tnum'; --gap: 14px; }
  * { box-sizing: border-box; }
  button, select { font: inherit; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; text-align: inherit; border-radius: 0; }
  button:focus-visible, select:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; z-index: 2; }
  button:disabled { color: var(--off); cursor: default; }
  .top { display: flex; align-items: stretch; height: 60px; flex: none; background: var(--sheet); border-bottom: 2px solid var(--ink); }
  .brand { display: flex; align-items: center; gap: 12px; padding: 0 26px 0 20px; font-weight: 800; font-stretch: 118%; font-size: 25px; letter-spacing: -0.01em; }
  .mark { width: 40px; height: 22px; color: var(--adj); }
  .tabs { display: flex; flex: none; }
  .where { flex: 1; min-width: 0; border-left: 1px solid var(--rule); padding: 0 14px; font-size: 19px; font-weight: 700; }
  .tabs button { padding: 0 13px; white-space: nowrap; border-left: 1px solid var(--rule); font-size: 18px; font-weight: 560; display: flex; align-items: center; gap: 9px; }
  .tabs button:last-child { border-right: 1px solid var(--rule); }
  .tabs i { font-style: normal; font-size: 13px; font-weight: 650; color: var(--ink2); }
  .tabs .on { background: var(--ink); color: var(--sheet); font-weight: 700; }
  .tabs .on i { color: var(--sheet); }
  .util { margin-left: auto; display: flex; min-width: 0; }
  .util button { flex: none; padding: 0 14px; border-left: 1px solid var(--rule); font-size: 15px; }
  .util .on { background: var(--ink); color: var(--sheet); }
  .util .asks { display: flex; align-items: center; justify-content: center; gap: 8px; font-weight: 640; }
  .util .asks svg { width: 20px; height: 20px; }
  .util .brake { min-width: 0; flex: 0 1 auto; display: flex; align-items: center; gap: 8px; padding: 0 14px; border-left: 1px solid var(--rule); font-size: 15px; }
  .util .onbench { min-width: 0; max-width: 190px; align-self: center; padding: 0 14px; font-size: 14px; font-weight: 620; line-height: 1.15; display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 2; overflow: hidden; text-align: right; }
  .util .brake select { font-weight: 620; height: 38px; min-width: 0; max-width: 290px; text-overflow: ellipsis; background: var(--sheet); }
  /* All tabs and all buttons beside each other: pictures and lists say what they are without a word, and the brake has its name. */
  @media (min-width: 1800px) and (max-width: 2059px) {
    .brand { padding: 0 18px 0 16px; }
    .tabs button { padding: 0 11px; }
    .util button { padding: 0 12px; }
    .util .word { display: none; }
  }
  @media (max-width: 1899px) { .util .brake .name { display: none; } }
  .work { display: grid; grid-template-columns: minmax(0, 1fr) 508px; grid-template-rows: minmax(0, 1fr); gap: var(--gap); padding: var(--gap); flex: 1; min-height: 0; }
  /* The rest of the wall's rules comes with its words. */
  .wall .missed { margin: 0; padding: 24px; font-size: 34px; line-height: 1.25; overflow-wrap: anywhere; }
  .wall { display: grid; grid-template-columns: minmax(0, 66fr) minmax(0, 34fr); flex: 1; min-height: 0; background: var(--sheet); }
  /* It has the focus where nothing in it has: no ring round all of the page. */
  main:focus { outline: none; }
  .stage { position: relative; background: var(--sheet); border: 2px solid var(--ink); min-height: 0; min-width: 0; overflow: hidden; }
  .side { display: flex; flex-direction: column; gap: 12px; min-height: 0; overflow-y: auto; }
  .blk { background: var(--sheet); border: 2px solid var(--ink); flex: none; }
  .h { padding: 14px 18px; }
  .h h1 { margin: 0 0 4px; font-size: 34px; line-height: 1.05; font-weight: 800; font-stretch: 106%; letter-spacing: -0.012em; }
  .h p { margin: 0; font-size: 19px; line-height: 1.36; min-height: 2.72em; }
  .rd { display: grid; grid-template-columns: 1fr 1fr; overflow: hidden; }
  .c { padding: 6px 16px 6px; border-top: 1px solid var(--rule); border-left: 1px solid var(--rule); margin-left: -1px; margin-top: -1px; min-width: 0; contain: content; }
  .c.w { grid-column: 1 / 3; }
  .c b { display: block; font-size: 14.5px; font-weight: 560; color: var(--ink2); line-height: 1.25; }
  .c .v { font-size: 34px; font-weight: 680; line-height: 1.08; letter-spacing: -0.01em; white-space: nowrap; }
  .c .v small { font-size: 16px; font-weight: 540; margin-left: 5px; letter-spacing: 0; }
  .c .v em { font-style: normal; color: var(--ink2); font-size: 16px; font-weight: 540; margin-left: 9px; }
  .c .v.big { font-size: 52px; font-weight: 760; }
  .c .v.mid { font-size: 30px; }
  .lead { color: var(--lead); }
  .trail { color: var(--trail); }
  .adj { color: var(--adj); }
  .sq { display: inline-block; width: 11px; height: 11px; margin-right: 7px; border: 2px solid var(--lead); background: var(--lead); vertical-align: -1px; }
  .sq.trail { border-color: var(--trail); background: none; }
  .bf { display: grid; grid-template-columns: auto 1fr; gap: 22px; align-items: center; }
  .bf .v:not(.big):not(.mid) { font-size: 66px; line-height: 1; font-weight: 760; letter-spacing: -0.025em; min-width: 2.1em; }
  .bar2 { display: flex; height: 26px; border: 2px solid var(--ink); }
  .bar2 s { display: block; background: var(--lead); }
  .bar2 u { display: block; flex: 1; border-left: 2px solid var(--ink); background: repeating-linear-gradient(135deg, var(--trail) 0 2px, transparent 2px 7px); }
  .bl { display: flex; justify-content: space-between; font-size: 16px; font-weight: 640; margin-top: 5px; }
  .bq { margin-top: 3px; font-size: 15px; font-weight: 540; color: var(--ink2); white-space: nowrap; }
  .bq strong { font-weight: 700; color: var(--ink); }
  .try { padding: 10px 18px 11px; font-size: 17.5px; line-height: 1.35; min-height: 70px; }
  .try b { font-weight: 780; margin-right: 6px; }
  .ctl { padding: 10px 16px 12px; display: grid; gap: 8px; margin-top: auto; position: sticky; bottom: 0; z-index: 2; }
  .row { display: grid; gap: 10px; }
  .withhands { grid-template-columns: minmax(0, 1fr) auto; }
  /* Beside another button there is no room for words and arrows both; the stage's own arrow shows the turn. */
  @media (max-width: 1199px) { .withhands .seg button svg { display: none; } }
  .two { grid-template-columns: 1fr 1fr; }
  .three { grid-template-columns: 1fr 1fr 1fr; }
  .four { grid-template-columns: repeat(4, minmax(0, 1fr)); gap: 8px; }
  .four .btn { padding: 0 4px; line-height: 1.1; }
  .back { display: grid; gap: 8px; }
  .back .said { display: flex; justify-content: space-between; align-items: baseline; font-size: 15px; color: var(--ink2); }
  .back .said b { font-size: 20px; font-weight: 740; color: var(--ink); }
  .reel { position: relative; height: 34px; border: 2px solid var(--ink); }
  .reel .marked { position: absolute; top: 0; bottom: 0; min-width: 4px; background: color-mix(in srgb, var(--adj) 30%, transparent); }
  .reel .click { position: absolute; top: 0; width: 3px; height: 12px; margin-left: -1px; background: var(--adj); }
  .reel input { position: absolute; inset: 0; width: 100%; margin: 0; accent-color: var(--ink); background: none; }
  .reel input:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .lab { font-size: 14.5px; font-weight: 560; color: var(--ink2); margin-bottom: 4px; }
  .seg { display: grid; grid-auto-flow: column; grid-auto-columns: minmax(0, 1fr); border: 2px solid var(--ink); }
  .seg button { min-height: 46px; text-align: center; font-weight: 600; font-size: 16.5px; border-left: 1px solid var(--rule); padding: 0 6px; display: flex; align-items: center; justify-content: center; gap: 8px; position: relative; }
  .seg button:first-child { border: 0; }
  .seg .on { background: var(--ink); color: var(--sheet); }
  .btn { border: 2px solid var(--ink); min-height: 46px; padding: 0 14px; font-weight: 620; font-size: 16.5px; display: flex; align-items: center; justify-content: center; gap: 9px; text-align: center; }
  .btn.p { background: var(--ink); color: var(--sheet); }
  .btn.p[data-wait] { background: var(--sheet); color: var(--ink2); }
  .btn.tall { min-height: 64px; font-size: 20px; }
  .pick { border: 2px solid var(--ink); min-height: 50px; width: 100%; padding: 0 10px; font-weight: 600; font-size: 16.5px; background: var(--sheet); }
  .show { position: absolute; left: 34px; right: 34px; bottom: 12px; display: flex; height: 44px; border: 2px solid var(--ink); background: var(--sheet); z-index: 1; }
  .show button { flex: 1; display: flex; align-items: center; justify-content: center; gap: 9px; font-size: 15.5px; font-weight: 590; border-left: 1px solid var(--rule); white-space: nowrap; padding: 0 8px; }
  .show button:first-child { border-left: 0; }
  .show .on { background: color-mix(in srgb, var(--ink) 10%, var(--sheet)); box-shadow: inset 0 -5px 0 var(--ink); }
  .show svg { width: 28px; height: 18px; flex: none; }
  .show .more { font-weight: 680; text-decoration: underline; text-underline-offset: 3px; }
  .moreless { flex: none; background: var(--sheet); min-height: 38px; font-size: 15px; justify-content: space-between; }
  /* Where there is no keyboard a key is nothing to be told. */
  @media (hover: none) and (pointer: coarse) { kbd { display: none !important; } }
  .extras { display: grid; grid-auto-flow: column; grid-auto-columns: 1fr; gap: 8px; flex: none; }
  .extras [aria-pressed='true'] { box-shadow: inset 0 -5px 0 var(--ink); }
  .moreless kbd { font: inherit; border: 1px solid currentcolor; padding: 0 7px; min-width: 1.6em; text-align: center; }
  .few .c .v { font-size: 46px; font-weight: 740; }
  .few .c:first-child { grid-column: 1 / 3; }
  .few .c:first-child .v { font-size: 66px; }
  .why summary { cursor: pointer; min-height: 34px; padding: 6px 0; font-weight: 640; }
  .why summary:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .show .says { display: none; margin-left: auto; align-self: center; padding: 0 16px; font-size: 15px; color: var(--ink2); min-width: 0; overflow: hidden; text-overflow: ellipsis; white-space: nowrap; }
  /* The brake in full, or what is laid over it; what has room beside both only on a larger stage is left out. */
  .one > div > * { display: none; }
  .one.laid::before { content: ''; position: absolute; inset: 0 0 var(--foot); background: var(--sheet); z-index: 1; }
  .one .turn { position: absolute; top: 4px; right: 10px; min-height: 34px; padding: 0 12px; border: 2px solid var(--ink); background: var(--sheet); font-size: 15px; font-weight: 620; z-index: 2; }
  .one.laid > div > .beside { display: flex; inset: 46px 14px calc(var(--foot) + 12px); width: auto; max-height: none; }
  .one.laid > div > .beside.ns-over { display: block; }
  .strip { position: absolute; left: 0; right: 0; bottom: 0; border-top: 2px solid var(--ink); background: var(--panel); }
  .card { position: absolute; z-index: 1; background: var(--sheet); border: 2px solid var(--ink); padding: 6px 14px; font-size: 19px; font-weight: 560; color: var(--ink2); text-align: center; }
  .card b { display: block; font-size: 15px; font-weight: 560; }
  .card strong { font-size: 40px; line-height: 1.1; font-weight: 780; color: var(--adj); margin-right: 7px; }
  .card.flash { background: var(--adj-fill); }
  .note { display: flex; gap: 13px; padding: 11px 16px; font-size: 16px; line-height: 1.38; align-items: flex-start; background: var(--sheet); border: 2px solid var(--ink); flex: none; }
  .note svg { flex: none; width: 34px; height: 31px; margin-top: 1px; }
  .wearpages { flex: none; background: var(--sheet); }
  .wearpages i { font-style: normal; font-size: 14px; font-weight: 600; border: 1px solid currentcolor; padding: 0 6px; }
  .fc p { margin: 2px 0 0; font-size: 15px; line-height: 1.3; color: var(--ink2); }
  .fc .v { font-size: 28px; }
  .wearpanel { flex: 0 1 auto; min-height: 130px; overflow-y: auto; }
  .wearpanel:focus-visible { outline: 4px solid var(--trail); outline-offset: -2px; }
  .wearlog { flex: 1 1 200px; }
  .wearlog p { margin: 0; padding: 10px 16px; font-size: 16px; color: var(--ink2); }
  .wearlog ul { list-style: none; margin: 0; padding: 0; }
  .wearlog button { display: flex; gap: 11px; align-items: flex-start; width: 100%; padding: 8px 14px; min-height: 44px; border-bottom: 1px solid var(--rule); font-size: 16.5px; line-height: 1.3; }
  .wearlog li { display: flex; border-bottom: 1px solid var(--rule); }
  .wearlog li button { border-bottom: 0; }
  .wearlog li .again { width: auto; flex: none; align-items: center; border-left: 1px solid var(--rule); font-weight: 640; }
  .wearlog button:hover { background: var(--panel); }
  .wearlog .on { background: color-mix(in srgb, var(--ink) 10%, var(--sheet)); box-shadow: inset 6px 0 0 var(--ink); }
  .sign16 { width: 16px; height: 16px; flex: none; margin-top: 3px; }
  .wearset { padding: 10px 16px 14px; }
  .wearset .lab { display: block; margin: 8px 0 4px; }
  .wearset .lab:first-child { margin-top: 0; }
  .hotgo { width: 100%; margin-top: 8px; }
  .hotdid { margin: 9px 0 4px; font-size: 16px; line-height: 1.3; }
  .hotverdict { display: flex; gap: 10px; margin: 0 0 6px; font-size: 16px; line-height: 1.3; }
  .hotverdict strong { display: block; font-size: 19px; }
  .hotsum { width: 100%; border-collapse: collapse; margin-top: 8px; font-size: 16px; }
  .hotsum caption { text-align: left; font-size: 14.5px; color: var(--ink2); font-weight: 560; padding-bottom: 2px; }
  .hotsum th { text-align: left; font-weight: 500; padding: 2px 0; }
  .hotsum td { text-align: right; font-weight: 680; }
  .hotsum .all { border-top: 2px solid var(--ink); }
  .hotwarns { display: flex; gap: 10px; margin: 10px 0 0; font-size: 15px; line-height: 1.35; }
  .hotwarns svg { flex: none; width: 30px; height: 27px; }
  .wearabout { margin: 8px 0 0; font-size: 15px; line-height: 1.35; color: var(--ink2); }
  .wearabout b { color: var(--ink); }
  .thirds { grid-template-columns: repeat(6, 1fr); }
  .thirds .c { grid-column: span 3; padding-inline: 14px 4px; }
  .thirds .c.w { grid-column: 1 / 7; }
  .thirds .c:nth-last-child(-n + 4):not(.w) { grid-column: span 2; }
  .thirds .c:nth-last-child(-n + 4):not(.w) .v { font-size: 27px; }
  .rd.wearpanel .v.big { font-size: 46px; }
  .wearends { margin: 0; font-size: 15px; font-weight: 600; }
  .btn [data-progress] { font-weight: 500; }
  .check { font-size: 13.5px; color: var(--ink2); padding: 6px 16px; border-top: 1px solid var(--rule); }
  .steps { padding: 12px 16px; }
  .work.answers { grid-template-rows: auto minmax(0, 1fr); }
  .work.answers .stage { grid-column: 1; }
  .work.answers .side { grid-column: 2; grid-row: 1 / 3; }
  .stage[hidden] { display: none; }
  .asked { flex: none; display: flex; gap: 10px; align-items: center; padding: 7px 20px; background: var(--sheet); border: 2px solid var(--ink); grid-column: 1; font-size: 16px; line-height: 1.3; }
  .asked { flex-wrap: wrap; }
  .bars { display: grid; gap: 8px; grid-column: 1; min-width: 0; }
  .asked div { flex: 1 1 320px; min-width: 0; }
  .asked b { margin-right: 8px; }
  .asked span { color: var(--ink2); }
  .asked .btn { min-height: 38px; font-size: 15px; }
  /* Cautions, and what is to be tried, keep in view whatever is read above or below them. */
  .side > .note, .side > .try { position: sticky; top: 0; bottom: var(--ctl, 0px); z-index: 1; }
  .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .error { padding: 20px; white-space: pre-wrap; border: 2px solid var(--bad); margin: 14px; background: var(--sheet); }

  @media ${COMPACT} {
    :host { --gap: 12px; }
    .top { height: 50px; }
    .brand { font-size: 21px; padding: 0 20px 0 14px; }
    .mark { width: 32px; height: 18px; }
    .asked { padding: 5px 14px; font-size: 14px; }
    .asked .btn { min-height: 34px; font-size: 14px; }
    .tabs button { padding: 0 9px; font-size: 15px; gap: 5px; }
    .util button { padding: 0 14px; font-size: 14px; }
    .util .brake { padding: 0 14px; font-size: 14px; }
    .util .brake select { font-size: 14px; height: 34px; }
    .work { grid-template-columns: minmax(0, 1fr) clamp(360px, 32vw, 420px); }
    .side { gap: 10px; }
    .h { padding: 8px 16px 10px; }
    .h h1 { font-size: 27px; }
    .h p { font-size: 16px; }
    .c { padding: 4px 12px 5px; }
    .c b { font-size: 13.5px; }
    .c .v { font-size: 26px; }
    .c .v small, .c .v em { font-size: 14px; }
    .c .v.big, .c .v.mid { font-size: 28px; }
    .bf .v:not(.big):not(.mid) { font-size: 50px; }
    .bar2 { height: 20px; }
    .bl, .bq { font-size: 14px; }
    .try { font-size: 15px; padding: 7px 14px; min-height: 56px; }
    .ctl { padding: 10px 12px 12px; gap: 9px; }
    .lab { font-size: 13.5px; margin-bottom: 2px; }
    .pace .lab { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; white-space: nowrap; }
    .seg button, .btn { min-height: 42px; font-size: 15px; }
    .btn.tall { min-height: 48px; font-size: 17px; }
    .pick { min-height: 46px; font-size: 15px; }
    .note { font-size: 14.5px; padding: 7px 12px; }
    .strip { bottom: 50px; }
    .show { left: 0; right: 0; bottom: 0; height: 48px; border-width: 2px 0 0; }
    .show button { flex: 0 1 58px; min-width: 0; border-right: 1px solid var(--rule); border-left: 0; position: relative; }
    .show button span { position: absolute; bottom: calc(100% + 2px); left: 0; background: var(--ink); color: var(--sheet); padding: 4px 10px; font-size: 14px; opacity: 0; pointer-events: none; }
    .show button:hover span, .show button:focus-visible span { opacity: 1; }
    .show .says { display: block; }
    .card strong { font-size: 32px; }
    .check { font-size: 13px; padding: 3px 12px; }
    .fc p { font-size: 14px; }
    .fc .v { font-size: 22px; }
    .rd.wearpanel .v.big { font-size: 28px; }
    .thirds .c { padding-inline: 12px 2px; }
    .thirds .c:nth-last-child(-n + 4):not(.w) .v { font-size: 22px; }
    .wearlog button, .hotdid, .hotverdict, .hotsum { font-size: 15px; }
    .seg.by button, .wearpages button { font-size: 14px; padding: 0 3px; }
  }
  /* All tabs and all buttons: the mark alone says whose page it is. */
  @media (min-width: 1260px) and (max-width: 1360px) { .brand { padding: 0 14px; } .brand span { display: none; } }
  @media (min-width: 1260px) and (max-width: 1469px) { .util button, .util .onbench { padding: 0 10px; } }
  /* German names of stations are longer: they stand closer, in the face's narrower letters. */
  @media (min-width: 1260px) { :host(:lang(de)) :is(.tabs button, .util button, .util .onbench) { padding: 0 6px; font-stretch: 84%; } :host(:lang(de)) .tabs button { gap: 4px; } :host(:lang(de)) .util .brake { padding: 0 8px; } }
  @media (min-width: 1260px) and (max-width: 1469px) { :host(:lang(de)) .brand { padding: 0 14px; } :host(:lang(de)) .brand span { display: none; } }
  @media ${BARRED} {
    .side { gap: 8px; }
    .h { padding: 8px 18px 9px; }
    .h h1 { font-size: 30px; }
    .h p { font-size: 17.5px; line-height: 1.3; min-height: 2.6em; }
    .c { padding-top: 4px; padding-bottom: 3px; }
    .c .v { font-size: 31px; }
    .bf .v:not(.big):not(.mid) { font-size: 54px; }
    .try { padding: 6px 18px 7px; font-size: 16px; line-height: 1.3; min-height: 0; }
    .note { font-size: 15px; padding: 6px 16px; }
    .ctl { padding: 9px 16px 11px; gap: 8px; }
    takeup-pedal { --pad: 84px; }
  }
  @media ${LOW} {
    .h { padding: 6px 16px 7px; }
    .h h1 { font-size: 24px; margin: 0; }
    .h p { font-size: 15px; line-height: 1.3; }
    .side { gap: 8px; }
    .c { padding: 3px 12px 3px; }
    .c .v { font-size: 24px; }
    .fc p { font-size: 13.5px; line-height: 1.25; }
    .wearset .lab { margin: 5px 0 2px; }
    .try { font-size: 14px; padding: 5px 14px; min-height: 46px; line-height: 1.28; }
    .ctl { padding: 8px 12px 10px; gap: 7px; }
    .seg button, .btn { min-height: 38px; }
    .pick { min-height: 42px; }
    .wearctl #by { display: none; }
    .note { font-size: 14px; padding: 6px 12px; }
    .wearset { padding: 8px 12px 10px; }
    .bf .v:not(.big):not(.mid) { font-size: 44px; }
    takeup-pedal { --pad: 56px; }
  }
  @media ${NARROW} {
    :host { height: auto; min-height: 100%; }
    .top { height: 52px; position: sticky; top: 0; z-index: 3; }
    .brand { padding: 0 12px; font-size: 0; gap: 0; }
    .brand span { display: none; }
    .util button { white-space: nowrap; font-size: 17px; font-weight: 600; min-width: 56px; padding: 0 10px; text-align: center; }
    .util .undo { min-width: 48px; justify-content: center; }
    .work { display: flex; flex-direction: column; padding: 0; gap: 0; }
    .stage { height: max(410px, 46vh); flex: none; border-width: 0 0 2px; }
    .side { overflow: visible; gap: 0; flex: 1; }
    .blk, .note { border-width: 0 0 2px; }
    .ctl { position: sticky; bottom: 0; order: 9; border-top: 2px solid var(--ink); border-bottom: 0; padding: 12px; z-index: 2; }
    .seg button { min-height: 58px; font-size: 17px; }
    .btn, .btn.tall { min-height: 58px; font-size: 17px; }
    .seeblk { order: 2; padding: 10px 12px; }
    .seeit .btn { text-align: center; line-height: 1.15; }
    .moreless { order: 6; border-width: 0 0 2px; }
    .why summary { min-height: 56px; }
    .h { order: 3; }
    .try { order: 4; }
    .side > .note, .side > .try { top: auto; padding: 6px 12px; font-size: 14px; line-height: 1.25; min-height: 0; border-width: 2px 0 0; }
    .side > .note svg { width: 26px; height: 24px; }
    .note { order: 5; }
    .rd { order: 2; }
    .bf .v:not(.big):not(.mid) { font-size: 56px; }
    .c b, .check, .lab, .c .v small, .c .v em { font-size: 14px; }
    .strip { bottom: 0; }
    .steps { order: 5; display: grid; gap: 10px; }
    .reel { height: 58px; }
    .four .btn { font-size: 15px; }
    .asked { border-width: 0 0 2px; padding: 0 0 0 14px; gap: 0; font-size: 15px; line-height: 1.25; }
    .asked details { flex: 1; min-width: 0; }
    .asked summary { min-height: 56px; display: flex; align-items: center; padding: 4px 8px 4px 0; cursor: pointer; }
    .asked details[open] { padding-bottom: 8px; }
    .asked .btn { min-height: 56px; font-size: 15px; padding: 0 10px; border-width: 0 0 0 1px; align-self: start; }
    .ctl .lab { display: none; }
    .wearpages { order: 1; border-width: 0 0 2px; }
    .wearlog, .wearset { order: 2; }
    .wearlog { max-height: 60vh; }
    .wearpanel { flex: none; }
    .wearlog button { min-height: 58px; font-size: 16px; align-items: center; }
    .pick { min-height: 58px; font-size: 17px; }
    .wearctl .row.two:first-child { display: none; }
  }
  /* The narrowest phones: words before pictures. */
  @media (max-width: 360px) {
    .brand { display: none; }
    .where { border-left: 0; padding: 0 8px; }
    .btn, .btn.tall, .seg button { padding: 0 4px; font-size: 15px; min-width: 0; }
    .seg button svg { display: none; }
    .row > *, .side, .blk { min-width: 0; }
    .ctl { grid-template-columns: minmax(0, 1fr); }
    .two { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); }
    .three { grid-template-columns: repeat(3, minmax(0, 1fr)); }
  }
  /* A phone on its side: what sticks would cover all the rest. */
  @media (max-height: 520px) {
    .stage { height: 76vh; }
    .ctl, .side > .note, .side > .try { position: static; }
  }
  @media (prefers-reduced-motion: no-preference) {
    .card { transition: background-color 240ms linear; }
    .show button { transition: background-color 160ms ease-out; }
  }
`;
