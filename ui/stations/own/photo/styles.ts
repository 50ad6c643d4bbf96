import { css } from 'lit';
import { COMPACT, NARROW } from '../../../pieces/page-sizes.ts';

export const photoStyles = css`
  .fit { display: flex; gap: 10px; align-items: flex-start; margin-top: 4px; }
  .fit .mark-v { width: 26px; height: 26px; }
  .small { font-size: 14.5px; color: var(--ink2); }
  .now h2 { display: flex; gap: 10px; align-items: center; font-size: 22px; }
  .now h2 i, .points i { font-style: normal; font-weight: 700; min-width: 34px; height: 34px; border: 2px solid var(--ink); border-radius: 17px; display: inline-flex; align-items: center; justify-content: center; font-size: 16px; flex: none; }
  .now h2 i { background: #f4c430; color: #16181a; }
  .cells { display: grid; grid-template-columns: 1fr 1fr; border-top: 1px solid var(--rule); border-bottom: 1px solid var(--rule); margin: 6px 0; }
  .cells div { padding: 4px 10px; border-left: 1px solid var(--rule); }
  .cells div:first-child { border: 0; padding-left: 0; }
  .cells span { display: block; font-size: 14.5px; color: var(--ink2); }
  .cells b { font-size: 22px; font-variant-numeric: tabular-nums; }
  .dots { display: flex; gap: 3px; margin-bottom: 8px; }
  .dots i { flex: 1; height: 10px; border: 1.5px solid var(--ink); min-width: 0; }
  .dots .done { background: var(--ink); }
  .dots .none { border-style: dashed; }
  .dots .now { background: #f4c430; }
  .pad { display: grid; grid-template-columns: repeat(4, 1fr); gap: 8px; margin-bottom: 8px; }
  .pad .btn, .two .btn, .set { justify-content: center; }
  .set { width: 100%; min-height: 56px; font-size: 18px; margin-bottom: 8px; }
  .two { display: grid; grid-template-columns: 1fr 1fr; gap: 8px; }
  .points { list-style: none; margin: 0; padding: 0; }
  .points button { display: flex; gap: 10px; width: 100%; align-items: center; border: 0; border-bottom: 1px solid var(--rule); min-height: 44px; text-align: left; padding: 2px 6px; }
  .points button > span:nth-child(2) { flex: 1; font-weight: 620; }
  .points .on { background: color-mix(in srgb, var(--ink) 10%, var(--sheet)); }
  .points em { font-style: normal; border: 1px dashed var(--ink2); padding: 0 5px; color: var(--ink2); }
  .answer { border-top: 1px solid var(--rule); padding: 6px 0; }
  .answer > div { display: flex; justify-content: space-between; gap: 12px; align-items: baseline; }
  .answer b { font-size: 26px; }
  .answer small { font-size: 15px; font-weight: 560; }
  .bar > span { font-weight: 620; }
  .answer .bar { align-items: center; }
  .bar i { flex: 1; height: 16px; border: 2px solid var(--ink); position: relative; background: repeating-linear-gradient(135deg, transparent 0 5px, var(--ink2) 5px 6.5px); }
  .bar u { position: absolute; top: -2px; bottom: -2px; background: var(--ink); }
  .key i { display: inline-block; width: 22px; height: 11px; border: 1.5px solid var(--ink); background: repeating-linear-gradient(135deg, transparent 0 4px, var(--ink2) 4px 5.5px); }
  .key .solid { background: var(--ink); }
  .tick { display: flex; gap: 10px; align-items: center; min-height: 44px; }
  .tick input { width: 24px; min-height: 24px; height: 24px; }
  @media ${COMPACT} {
    .now h2 { font-size: 19px; }
    .answer b { font-size: 22px; }
  }
  @media ${NARROW} {
    .pad .btn { min-height: 64px; font-size: 20px; }
    .set { min-height: 72px; font-size: 20px; }
    .points button { min-height: 56px; }
  }
`;
