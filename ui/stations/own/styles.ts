import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

export const ownStyles = css`
  :host { display: flex; flex-direction: column; min-height: 0; flex: 1; background: var(--sheet); border: 2px solid var(--ink); font-size: 16px; line-height: 1.3; }
  * { box-sizing: border-box; }
  button, select, input { font: inherit; color: inherit; border-radius: 0; background: var(--sheet); }
  button, select { cursor: pointer; }
  button:focus-visible, select:focus-visible, input:focus-visible, .file:focus-within { outline: 4px solid var(--trail); outline-offset: 1px; }
  button:disabled { color: var(--ink2); border-color: var(--rule); cursor: default; }
  .top { padding: 10px 16px; border-bottom: 2px solid var(--ink); flex: none; }
  h1 { margin: 0; font-size: 30px; line-height: 1.05; font-weight: 800; font-stretch: 106%; }
  h2 { margin: 0 0 6px; font-size: 18px; font-weight: 760; }
  p { margin: 4px 0; }
  .small { font-size: 14.5px; color: var(--ink2); }
  .scroll { flex: 1; min-height: 0; overflow-y: auto; }
  section { padding: 12px 16px; border-bottom: 1px solid var(--rule); }
  .row { display: grid; grid-template-columns: 200px 1fr; gap: 10px; align-items: center; margin-bottom: 8px; }
  input, select { border: 1px solid var(--ink2); min-height: 40px; padding: 0 8px; font-weight: 620; min-width: 0; width: 100%; }
  .field { display: grid; grid-template-columns: 1fr 150px; gap: 2px 12px; align-items: center; padding: 6px 0 6px 10px; border-left: 5px solid var(--ink); margin-bottom: 6px; }
  .field.open { border-left-color: var(--faint); }
  .field label { font-weight: 620; }
  .field small, .kept small { display: block; font-weight: 500; font-size: 14px; color: var(--ink2); line-height: 1.25; }
  .field input { text-align: right; }
  .field [aria-invalid='true'] { border: 2px solid var(--bad); }
  .told { grid-column: 1 / 3; font-size: 14.5px; text-align: right; }
  .whatif { border: 0; background: none; min-height: 44px; padding: 0 0 0 10px; font-size: 14.5px; font-weight: 620; text-decoration: underline; text-underline-offset: 3px; }
  .told .bad { display: inline-flex; gap: 6px; align-items: center; text-align: left; }
  .assumed { color: var(--ink2); }
  .assumed b { font-weight: 650; border: 1px dashed var(--ink2); padding: 0 5px; margin-right: 5px; }
  .bad { color: var(--bad); font-weight: 600; }
  .field:focus-within { background: color-mix(in srgb, var(--warn) 22%, var(--sheet)); }
  .changed { background: var(--panel); border: 1px solid var(--rule); padding: 8px 12px; margin: 0 0 10px; }
  .changed p { margin: 0 0 4px; }
  .changed table { width: 100%; border-collapse: collapse; font-variant-numeric: tabular-nums; }
  .changed th { text-align: left; font-weight: 560; padding: 2px 6px 2px 0; }
  .changed td { text-align: right; padding: 2px 0 2px 6px; white-space: nowrap; }
  .changed b { font-weight: 760; }
  .changed .same, .changed .same b { color: var(--ink2); font-weight: 500; }
  .changed .to { display: inline-block; width: 22px; height: 2px; background: currentColor; position: relative; vertical-align: middle; }
  .changed .to::after { content: ''; position: absolute; right: 0; top: -4px; border: 5px solid transparent; border-left: 8px solid currentColor; border-right: 0; }
  .friction { display: grid; grid-template-columns: 52px 1fr 52px; gap: 6px 14px; align-items: center; padding: 4px 0 8px; }
  .friction .btn { min-height: 48px; justify-content: center; font-size: 22px; padding: 0; }
  .friction p { grid-column: 1 / 4; margin: 0; }
  .friction .bar { position: relative; height: 48px; }
  .friction .bar i, .friction .bar span { position: absolute; }
  .friction .line { left: 0; right: 0; top: 15px; height: 2px; background: var(--ink); }
  .friction .band { top: 8px; height: 16px; border: 1.5px solid var(--ink); background: repeating-linear-gradient(135deg, var(--ink2) 0 1.5px, var(--sheet) 1.5px 6px); }
  .friction .at { top: 2px; width: 4px; height: 28px; margin-left: -2px; background: var(--ink); }
  .friction .bar span { top: 29px; transform: translateX(-50%); font-size: 14px; color: var(--ink2); }
  .says ul { list-style: none; margin: 0; padding: 0; }
  .says li { display: flex; gap: 10px; padding: 5px 0; align-items: flex-start; }
  .says .mark-v { width: 24px; height: 24px; }
  .mark-v { width: 20px; height: 20px; flex: none; }
  .sum { display: flex; gap: 10px; align-items: center; padding: 8px 10px; background: var(--panel); border: 1px solid var(--rule); margin-top: 8px; }
  .sum .mark-v { width: 28px; height: 28px; }
  .acts { display: flex; gap: 10px; flex-wrap: wrap; margin-top: 8px; }
  .btn { border: 2px solid var(--ink); min-height: 44px; padding: 0 14px; font-weight: 620; display: inline-flex; align-items: center; }
  .btn.p { background: var(--ink); color: var(--sheet); }
  .file { position: relative; cursor: pointer; }
  .file input { position: absolute; inset: 0; opacity: 0; cursor: pointer; min-height: 0; height: 100%; }
  .kept { list-style: none; margin: 0 0 8px; padding: 0; }
  .kept li { display: flex; gap: 8px; align-items: center; padding: 5px 0 5px 10px; border-left: 5px solid transparent; flex-wrap: wrap; }
  .kept .on { border-left-color: var(--ink); }
  .kept span { flex: 1; min-width: 120px; font-weight: 650; }
  .plain { margin: 0; padding-left: 20px; columns: 2; }
  .note { flex: none; display: flex; gap: 10px; padding: 7px 16px; font-size: 14.5px; line-height: 1.3; align-items: center; border-top: 2px solid var(--ink); }
  .note svg { flex: none; width: 28px; height: 26px; }
  .said { flex: none; padding: 6px 16px; border-bottom: 1px solid var(--rule); max-height: 120px; overflow-y: auto; }
  .said ul { margin: 2px 0 0; padding-left: 20px; }
  .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  @media ${COMPACT} {
    :host { font-size: 15px; }
    h1 { font-size: 24px; }
    h2 { font-size: 16px; }
    section { padding: 8px 12px; }
    .field { padding: 3px 0 3px 8px; margin-bottom: 3px; }
    .field small, .kept small, .note { font-size: 13px; }
    .told { font-size: 13.5px; }
    input, select { min-height: 34px; }
    .btn { min-height: 38px; }
  }
  @media ${NARROW} {
    :host { border-width: 0 0 2px; font-size: 16px; }
    .scroll { overflow: visible; }
    .row { grid-template-columns: 1fr; gap: 4px; }
    .field { grid-template-columns: 1fr 132px; }
    .field small, .kept small, .note, .told { font-size: 14.5px; }
    input, select { min-height: 56px; font-size: 18px; }
    .btn { min-height: 56px; font-size: 16.5px; }
    .whatif { min-height: 56px; }
    .file input { min-height: 56px; }
    .plain { columns: 1; }
    .changed .by { display: none; }
    .friction { grid-template-columns: 58px 1fr 58px; }
    .friction .btn { min-height: 58px; }
  }
`;

/** Where the station's blocks stand on the page. */
export const ownPageStyles = css`
  .work[data-station='own'] { grid-template-columns: minmax(0, 1fr) 660px; }
  [data-station='own'] .side { overflow: hidden; }
  @media ${COMPACT} { [data-station='own'] { grid-template-columns: minmax(0, 1fr) 560px; } }
  @media ${NARROW} {
    [data-station='own'] .side { overflow: visible; }
    [data-station='own'] .stage { height: 300px; }
    [data-station='own'] .stage:has(takeup-photo) { height: 400px; }
  }
`;
