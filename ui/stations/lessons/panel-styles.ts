import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

/** Type of a lesson's panel: on the wall all of it in shares of the screen's width, nothing under 34 px at 1920. */
export const panelStyles = css`
  :host { display: flex; flex-direction: column; gap: 12px; background: var(--sheet); border: 2px solid var(--ink); padding: 14px 18px 16px; flex: none; font-size: 17px; line-height: 1.36; --line: 2px; }
  * { box-sizing: border-box; }
  button { font: inherit; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; text-align: inherit; border-radius: 0; }
  button:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; z-index: 2; position: relative; }
  h1 { margin: 0; font-size: 27px; line-height: 1.1; font-weight: 800; }
  p, ol { margin: 0; padding: 0; list-style: none; }
  .place { color: var(--ink2); font-size: 15px; margin-top: 3px; }
  .body { display: flex; flex-direction: column; gap: 12px; }
  .where { display: grid; grid-template-columns: repeat(3, 1fr); border: var(--line) solid var(--ink); }
  .where li { text-align: center; padding: 4px 0; font-weight: 600; color: var(--ink2); border-left: var(--line) solid var(--ink); }
  .where li:first-child { border: 0; }
  .where .on { background: var(--ink); color: var(--sheet); font-weight: 720; }
  .ask { font-size: 23px; line-height: 1.22; font-weight: 740; }
  .ask.small { font-size: 17px; font-weight: 600; }
  .choices { display: grid; gap: 8px; }
  .choices li { display: flex; border: var(--line) solid var(--ink); min-height: 46px; }
  .choices .mine { box-shadow: 0 0 0 3px var(--ink); }
  .pickone { flex: 1; display: flex; align-items: stretch; min-width: 0; }
  .pickone > b { flex: none; width: 44px; display: grid; place-items: center; font-size: 20px; font-weight: 800; border-right: var(--line) solid var(--ink); }
  .mine .pickone > b { background: var(--ink); color: var(--sheet); }
  .pickone > span:not(.hidden) { padding: 7px 12px; align-self: center; font-weight: 560; }
  .hands { flex: none; min-width: 48px; text-align: center; display: grid; place-items: center; border-left: 1px solid var(--rule); font-weight: 720; }
  .held { display: flex; gap: 8px; align-items: flex-start; font-weight: 700; }
  .held svg { width: 1.1em; height: 1.1em; flex: none; margin-top: 0.12em; color: var(--good); }
  s { color: var(--ink2); display: block; }
  .values { width: 100%; border-collapse: collapse; }
  .values th { text-align: left; font-weight: 560; padding: 3px 0; border-bottom: 1px solid var(--rule); }
  .values th small { font-size: 1em; font-weight: 500; color: var(--ink2); }
  .values thead th { font-size: 15px; color: var(--ink2); border: 0; padding: 0; }
  .values thead th:not(:first-child), .values td { text-align: right; padding-left: 12px; white-space: nowrap; }
  .values td { border-bottom: 1px solid var(--rule); color: var(--ink2); }
  .values strong { font-size: 22px; font-weight: 780; color: var(--ink); }
  .covered { display: flex; border: var(--line) solid var(--ink); min-height: 44px; }
  .covered b { padding: 7px 12px; font-weight: 600; max-width: 70%; background: var(--sheet); }
  .covered i { flex: 1; border-left: var(--line) solid var(--ink); background: repeating-linear-gradient(135deg, var(--rule) 0 2px, transparent 2px 9px); }
  .named { display: grid; gap: 0.2em; }
  .named b { display: inline-block; min-width: 1.6em; font-weight: 780; }
  .shows { font-weight: 680; }
  .explained { display: grid; gap: 8px; }
  .try { padding-top: 8px; border-top: 1px solid var(--rule); }
  .try b { font-weight: 780; }
  .record { display: grid; gap: 4px; font-size: 16px; }
  .chart svg { display: block; width: 100%; }
  .axis { fill: none; stroke: var(--rule); stroke-width: 1.5; }
  .gap { fill: none; stroke: var(--adj); stroke-width: 2.4; }
  .dot { fill: var(--adj); }
  .chart text { font-size: 15px; fill: var(--ink2); }
  .chart .end { text-anchor: end; }
  .caution { display: flex; gap: 10px; font-size: 15px; line-height: 1.35; border-top: 1px solid var(--rule); padding-top: 9px; }
  .caution b { flex: none; width: 22px; height: 22px; display: grid; place-items: center; background: var(--warn); color: var(--warn-ink); font-weight: 800; }
  .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  @media ${COMPACT} { .ask { font-size: 20px; } h1 { font-size: 22px; } :host(:not([wall])) { font-size: 16px; gap: 9px; padding: 10px 14px 12px; } }
  @media ${NARROW} { :host(:not([wall])) { font-size: 17px; } .choices li { min-height: 56px; } .hands { min-width: 56px; } }

  :host([wall]) { --u: calc(100vw / 1920); --line: calc(4 * var(--u)); border: 0; flex: 1; min-height: 0; min-width: 0; gap: calc(16 * var(--u)); padding: calc(26 * var(--u)) calc(30 * var(--u)) calc(26 * var(--u)) calc(16 * var(--u)); font-size: calc(34 * var(--u)); line-height: 1.18; }
  :host([wall]) .body { flex: 1; min-height: 0; gap: calc(14 * var(--u)); }
  :host([wall]) .place { order: 5; font-size: calc(34 * var(--u)); margin: 0; display: flex; gap: calc(16 * var(--u)); align-items: center; }
  :host([wall]) .place span { flex: 1; }
  :host([wall]) .place kbd { line-height: 1; }
  :host([wall]) kbd { font: inherit; font-size: calc(34 * var(--u)); font-weight: 640; border: calc(3 * var(--u)) solid currentcolor; padding: 0 calc(12 * var(--u)); line-height: 1.25; min-width: 1.7em; box-sizing: border-box; display: inline-block; text-align: center; flex: none; }
  :host([wall]) .ask { font-size: calc(50 * var(--u)); line-height: 1.14; }
  :host([wall]) .ask.long { font-size: calc(42 * var(--u)); }
  :host([wall]) .ask.small { display: none; }
  :host([wall]) .choices { gap: calc(12 * var(--u)); }
  :host([wall]) .choices li { min-height: calc(84 * var(--u)); }
  :host([wall]) .choices .mine { box-shadow: 0 0 0 calc(6 * var(--u)) var(--ink); }
  :host([wall]) .pickone > b { width: calc(76 * var(--u)); font-size: calc(48 * var(--u)); }
  :host([wall]) .pickone > span:not(.hidden) { padding: calc(8 * var(--u)) calc(16 * var(--u)); line-height: 1.1; font-size: calc(36 * var(--u)); }
  :host([wall]) .hands { min-width: calc(84 * var(--u)); font-size: calc(44 * var(--u)); }
  :host([wall]) .values thead th { font-size: calc(34 * var(--u)); }
  :host([wall]) .values th { padding: calc(2 * var(--u)) 0; line-height: 1.08; }
  :host([wall]) .values strong { font-size: calc(48 * var(--u)); line-height: 1; }
  :host([wall]) .covered { flex: none; min-height: calc(54 * var(--u)); }
  :host([wall]) .covered b { padding: calc(4 * var(--u)) calc(16 * var(--u)); max-width: 84%; line-height: 1.3; display: -webkit-box; -webkit-box-orient: vertical; -webkit-line-clamp: 2; overflow: hidden; }
  :host([wall]) .full .covered b { display: block; white-space: nowrap; text-overflow: ellipsis; }
  :host([wall]) .chart text { font-size: 22px; }
  :host([wall]) .caution { font-size: calc(34 * var(--u)); padding-top: calc(8 * var(--u)); border-top-width: var(--line); line-height: 1.1; }
  :host([wall]) .caution b { width: calc(44 * var(--u)); height: calc(44 * var(--u)); }
  :host([wall]) .record { font-size: calc(34 * var(--u)); }
  :host([wall]) .told .choices { gap: calc(8 * var(--u)); }
  :host([wall]) .told .choices li { min-height: calc(58 * var(--u)); }
  :host([wall]) .told .pickone > span:not(.hidden) { padding: calc(3 * var(--u)) calc(12 * var(--u)); font-size: calc(34 * var(--u)); line-height: 1.04; }
  :host([wall]) .told .pickone > b { width: calc(58 * var(--u)); font-size: calc(38 * var(--u)); }
  :host([wall]) .told .hands { font-size: calc(38 * var(--u)); }
  :host([wall]) .told .values strong { font-size: calc(42 * var(--u)); }
  :host([wall]) .told .explained { gap: calc(6 * var(--u)); line-height: 1.1; }
  .acts { display: flex; gap: calc(16 * var(--u)); }
  .main { display: flex; align-items: center; justify-content: space-between; gap: calc(16 * var(--u)); text-align: left; line-height: 1.05; flex: 1; min-height: calc(88 * var(--u)); padding: 0 calc(26 * var(--u)); background: var(--ink); color: var(--sheet); font-size: calc(42 * var(--u)); font-weight: 740; }
  .main[data-wait] { background: var(--sheet); color: var(--ink2); box-shadow: inset 0 0 0 var(--line) var(--ink); }
`;
