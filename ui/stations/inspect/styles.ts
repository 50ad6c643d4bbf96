import { css } from 'lit';
import { COMPACT, SLIM } from '../../pieces/page-sizes.ts';

/** The sheet at wall, desk and laptop size; the phone's is in phone.ts. */
export const sheetStyles = css`
  :host { display: flex; flex-direction: column; min-height: 0; flex: 1; background: var(--sheet); border: 2px solid var(--ink); font-size: 16px; line-height: 1.25; }
  * { box-sizing: border-box; }
  button, select, input { font: inherit; color: inherit; border-radius: 0; background: var(--sheet); }
  button, select { cursor: pointer; }
  button:focus-visible, select:focus-visible, input:focus-visible { outline: 4px solid var(--trail); outline-offset: 1px; z-index: 2; }
  .tools { display: flex; gap: 14px; align-items: center; flex-wrap: wrap; padding: 7px 12px; border-bottom: 1px solid var(--rule); font-size: 15px; flex: none; }
  .tools label { display: flex; align-items: center; gap: 7px; color: var(--ink2); }
  .tools select { height: 36px; border: 1px solid var(--ink); padding: 0 6px; font-weight: 600; color: var(--ink); max-width: 300px; }
  .scroll { flex: 1; min-height: 0; overflow-y: auto; position: relative; }
  table { border-collapse: separate; border-spacing: 0; width: 100%; table-layout: fixed; }
  col.num { width: 42px; }
  col.name { width: 208px; }
  col.fc { width: 112px; }
  col.limc { width: 132px; }
  th, td { text-align: left; padding: 2px 8px; border-bottom: 1px solid var(--rule); font-weight: 500; vertical-align: middle; }
  thead th { position: sticky; top: 0; background: var(--sheet); z-index: 1; border-bottom: 2px solid var(--ink); color: var(--ink2); font-size: 15px; height: 34px; }
  thead .on { color: var(--ink); font-weight: 700; }
  tbody th { height: 36px; }
  .named { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0 6px; }
  .whatif { border: 0; background: none; min-height: 24px; padding: 0; margin-left: auto; font: inherit; font-size: 13px; font-weight: 620; color: var(--ink); text-decoration: underline; text-underline-offset: 3px; cursor: pointer; }
  .num i { display: grid; place-items: center; width: 25px; height: 25px; border: 2px solid var(--ink); border-radius: 50%; font-style: normal; font-weight: 700; font-size: 14px; }
  .f { padding: 2px 2px 2px 8px; }
  .f input, .f select { width: 100%; height: 31px; border: 1px solid var(--ink2); padding: 0 7px; font-weight: 680; text-align: right; }
  .f select { text-align: left; font-weight: 600; padding: 0 2px; }
  .f output { display: block; text-align: right; font-weight: 680; padding: 0 8px; }
  .f [aria-invalid='true'] { border: 2px solid var(--bad); }
  .v { font-size: 14.5px; font-weight: 600; overflow-wrap: anywhere; }
  .v > div { display: flex; align-items: center; gap: 7px; }
  .v .bad { color: var(--bad); }
  .v small { display: block; font-size: 13px; font-weight: 500; color: var(--ink2); }
  .mark-v { width: 20px; height: 20px; flex: none; }
  .v small .mark-v { width: 15px; height: 15px; vertical-align: -2px; }
  .lim { font-size: 14px; }
  .lim input { width: 66px; height: 27px; border: 1px solid var(--rule); padding: 0 5px; text-align: right; font-weight: 600; font-size: 14.5px; }
  .lim small { display: block; font-size: 13px; color: var(--ink2); line-height: 1.15; }
  .now th, .now td { background: color-mix(in srgb, var(--warn) 22%, var(--sheet)); }
  .now .num i { background: var(--ink); color: var(--sheet); }
  .axle { display: grid; grid-template-columns: repeat(2, 1fr); gap: 6px 22px; padding: 10px 14px 12px; }
  .axle label, .heads label { display: flex; align-items: center; gap: 8px; font-size: 15px; flex-wrap: wrap; }
  .axle label span { flex: 1; min-width: 130px; }
  .axle input { width: 104px; height: 33px; border: 1px solid var(--ink2); padding: 0 7px; text-align: right; font-weight: 650; }
  .axle .wide { flex-basis: 100%; font-size: 13px; color: var(--ink2); }
  .axle .bad { color: var(--bad); font-weight: 600; }
  .heads { display: grid; grid-template-columns: repeat(3, 1fr); gap: 6px 16px; padding: 10px 14px; border-top: 1px solid var(--rule); }
  .heads input { flex: 1; min-width: 60px; height: 33px; border: 1px solid var(--ink2); padding: 0 7px; }
  .verdict { flex: none; display: flex; gap: 14px; padding: 9px 16px; border-top: 2px solid var(--ink); background: var(--panel); max-height: 148px; }
  .verdict > .mark-v { width: 38px; height: 38px; margin-top: 2px; }
  .verdict h2 { margin: 0 0 2px; font-size: 21px; line-height: 1.1; font-weight: 780; }
  .verdict .why { overflow-y: auto; min-height: 0; }
  .verdict > div { display: flex; flex-direction: column; min-height: 0; min-width: 0; flex: 1; }
  .verdict p { margin: 0; font-size: 15px; line-height: 1.3; }
  .verdict.bad { background: var(--bad); color: var(--sheet); }
  .verdict.bad .mark-v rect { fill: var(--sheet); }
  .verdict.bad .mark-v path { stroke: var(--bad); }
  .said { flex: none; padding: 6px 16px; border-top: 1px solid var(--rule); font-size: 15px; max-height: 84px; overflow-y: auto; }
  .said ul { margin: 2px 0 0; padding-left: 20px; }
  .said .bad { color: var(--bad); font-weight: 600; }
  .note { flex: none; display: flex; gap: 10px; padding: 6px 16px; font-size: 14.5px; line-height: 1.3; align-items: center; border-top: 1px solid var(--rule); }
  .note svg { flex: none; width: 26px; height: 24px; }
  .acts { flex: none; display: flex; flex-wrap: wrap; gap: 8px; padding: 8px 14px 10px; align-items: stretch; }
  .btn { border: 2px solid var(--ink); min-height: 42px; padding: 0 12px; font-weight: 620; font-size: 15px; }
  .btn.p { background: var(--ink); color: var(--sheet); flex: 1; min-width: 240px; }
  .seg { display: flex; border: 2px solid var(--ink); }
  .seg button { border: 0; padding: 0 12px; font-weight: 620; font-size: 15px; min-height: 38px; }
  .seg .on { background: var(--ink); color: var(--sheet); }
  .ask { display: flex; gap: 8px; align-items: center; flex: 1; font-weight: 650; }
  .hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  @media ${COMPACT} {
    :host { font-size: 14.5px; }
    th, td { padding: 1px 6px; }
    tbody th { height: 31px; }
    thead th { height: 29px; font-size: 14px; }
    .tools { padding: 5px 10px; font-size: 14px; gap: 10px; }
    .tools select { height: 32px; max-width: 230px; }
    col.num { width: 36px; }
    col.name { width: 176px; }
    col.fc { width: 82px; }
    col.limc { width: 110px; }
    .f { padding: 1px 0 1px 6px; }
    .f input, .f select { height: 28px; }
    .num i { width: 22px; height: 22px; font-size: 13px; }
    .v { font-size: 13.5px; }
    .lim { font-size: 13px; padding-right: 2px; }
    .lim input { width: 58px; height: 24px; font-size: 13.5px; }
    .mark-v { width: 17px; height: 17px; }
    .verdict { padding: 6px 12px; max-height: 92px; }
    .verdict h2 { font-size: 18px; }
    .verdict p { font-size: 13.5px; }
    .verdict > .mark-v { width: 30px; height: 30px; }
    .note { font-size: 13px; padding: 4px 12px; }
    .said { font-size: 13.5px; padding: 4px 12px; max-height: 60px; }
    .acts { padding: 6px 10px 8px; gap: 6px; }
    .btn, .seg button { font-size: 13.5px; min-height: 38px; padding: 0 7px; }
    .about { display: none; }
    .v small .mark-v { width: 14px; height: 14px; vertical-align: -2px; }
    .seg button { min-height: 34px; }
    .btn.p { min-width: 150px; }
    .axle { padding: 6px 10px; gap: 4px 18px; }
    .axle label, .heads label { font-size: 14px; }
    .heads { padding: 6px 10px; }
  }
  @media ${SLIM} {
    col.num { width: 32px; }
    col.name { width: 132px; }
    col.fc { width: 72px; }
    col.limc { width: 100px; }
    th, td { padding: 1px 4px; }
    .lim input { width: 54px; }
  }
`;
