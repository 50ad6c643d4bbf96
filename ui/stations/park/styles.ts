import { css } from 'lit';
import { BARRED, COMPACT, LOW, NARROW } from '../../pieces/page-sizes.ts';

/** What only this station has. */
export const parkStyles = css`
  .park-mk { width: 34px; height: 34px; flex: none; }
  .park-verdict { padding: 8px 18px 9px; position: relative; }
  .park-chocks { position: absolute; top: 12px; right: 16px; min-height: 40px; padding: 0 10px; font-size: 15px; }
  .park-says { padding-right: 112px; }
  .park-says { display: flex; gap: 16px; align-items: center; }
  .park-says strong { display: block; font-size: 31px; line-height: 1.1; font-weight: 780; }
  .park-says span { font-size: 18px; }
  .park-other { display: flex; gap: 8px; align-items: center; font-size: 15px; color: var(--ink2); margin: 3px 0 5px 50px; }
  .park-other .park-mk, .park-way .park-mk, .park-hot .park-mk { width: 16px; height: 16px; }
  .park-bars { margin-top: 4px; }
  .park-bars .lab { margin: 0; }
  .park-both { position: relative; display: grid; gap: 5px; }
  .park-bar { display: grid; grid-template-columns: 96px 1fr 62px; gap: 10px; align-items: center; }
  .park-bar span { font-size: 16px; }
  .park-bar .on { font-weight: 720; }
  .park-bar i { height: 22px; border: 2px solid var(--ink); display: block; }
  .park-bar s, .park-mini s { display: block; height: 100%; background: var(--ink); }
  .park-bar s.up, .park-mini s.up { background: repeating-linear-gradient(135deg, var(--ink) 0 2px, transparent 2px 7px); border-right: 2px solid var(--ink); }
  .park-bar b { font-size: 22px; font-weight: 720; text-align: right; }
  .park-need { position: absolute; left: 108px; right: 74px; top: -4px; bottom: -4px; pointer-events: none; }
  .park-need em { position: absolute; top: 0; bottom: 0; width: 8px; margin-left: -4px; background: var(--warn); border: 2px solid var(--ink); }
  .park-needs { text-align: center; font-size: 15px; margin-top: 3px; }
  .park-rule { display: grid; grid-template-columns: auto 1fr; gap: 10px; align-items: center; font-size: 15px; color: var(--ink2); margin-top: 6px; }
  .park-rule .pick { min-height: 38px; color: var(--ink); }
  .park-what { margin: 5px 0 0; font-size: 14px; line-height: 1.32; color: var(--ink2); }
  .park-notch .park-row { display: grid; grid-template-columns: auto 1fr; gap: 14px; align-items: center; }
  .park-spent { display: flex; height: 18px; border: 2px solid var(--ink); }
  .park-spent s { display: block; min-width: 0; }
  .park-spent .stretch { border-left: 1.5px solid var(--ink); border-right: 1.5px solid var(--ink); background: repeating-linear-gradient(90deg, var(--ink2) 0 1.5px, transparent 1.5px 5px); }
  .park-spent .turning { background: var(--ink2); }
  .park-parts { display: flex; flex-wrap: wrap; gap: 0 12px; font-size: 14px; font-weight: 580; }
  .c.park-kept { font-size: 14.5px; line-height: 1.34; color: var(--ink2); padding-top: 7px; padding-bottom: 8px; }
  .c.park-kept b { display: inline; color: var(--ink); font-weight: 700; font-size: inherit; }
  .c .v em.park-over { color: var(--bad); position: static; }
  .park-over { position: absolute; right: 34px; top: 34px; bottom: 70px; width: 27.5%; display: flex; flex-direction: column; gap: 12px; z-index: 1; }
  .park-panel { padding: 12px 16px 12px; overflow: auto; }
  .park-main { flex: 1; min-height: 0; padding: 0; display: flex; flex-direction: column; }
  .park-main .seg { border-width: 0 0 2px; flex: none; }
  .park-main .seg button { font-size: 15px; min-height: 42px; }
  .park-body { padding: 10px 16px 12px; overflow: auto; min-height: 0; }
  .park-panel h2 { margin: 0 0 4px; font-size: 21px; font-weight: 760; }
  .park-panel p { margin: 8px 0; font-size: 15.5px; line-height: 1.36; }
  .park-panel small { display: block; font-size: 13.5px; line-height: 1.34; color: var(--ink2); }
  .park-lever { display: block; width: 100%; max-height: 380px; }
  .park-lever text { font: 540 17.5px/1 'Encode Sans Variable', 'Encode Sans', sans-serif; fill: var(--ink); paint-order: stroke; stroke: var(--sheet); stroke-width: 4px; stroke-linejoin: round; }
  .park-lever .n { font-size: 20px; font-weight: 700; }
  .park-sum { border-top: 1px solid var(--rule); margin: 6px -16px 0; padding: 8px 16px 0; font-size: 16px; line-height: 1.45; }
  .park-stop { flex: none; }
  .park-stops { display: grid; grid-template-columns: 1fr 1fr; gap: 10px; }
  .park-stops figure { margin: 0; text-align: center; position: relative; padding: 4px; }
  .park-stops .now { outline: 2px solid var(--ink); }
  .park-loupe { position: relative; width: min(100%, 132px); margin: 0 auto 4px; }
  .park-loupe > svg { display: block; width: 100%; }
  .park-loupe > svg + svg { position: absolute; width: 28px; right: 0; bottom: 0; }
  .park-stops b { display: block; font-size: 16px; }
  .park-stops figcaption { font-size: 14.5px; line-height: 1.3; }
  .park-pick { display: block; font-size: 14.5px; color: var(--ink2); }
  .park-pick .pick { margin-top: 3px; min-height: 44px; font-size: 15px; color: var(--ink); }
  .park-unit { font-size: 14.5px; color: var(--ink2); margin: 8px 0 2px; }
  .park-wheel { border-top: 1px solid var(--rule); padding: 6px 0; }
  .park-wheel > b { font-size: 16px; }
  .park-mini { display: grid; grid-template-columns: 44px 1fr 46px; gap: 8px; align-items: center; font-size: 15px; }
  .park-mini i { height: 16px; border: 2px solid var(--ink); }
  .park-mini b { text-align: right; font-size: 17px; }
  .park-way { display: flex; gap: 8px; align-items: center; font-size: 15.5px; padding: 3px 0; }
  .park-stepper { display: grid; grid-template-columns: 1fr 46px 66px 46px; gap: 6px; align-items: center; font-size: 15.5px; }
  .park-stepper .btn { min-height: 42px; padding: 0; }
  .park-stepper b { text-align: center; font-size: 18px; }
  .park-hot { width: 100%; border-collapse: collapse; margin-top: 8px; font-size: 15.5px; }
  .park-hot th, .park-hot td { text-align: right; padding: 5px 4px; border-top: 1px solid var(--rule); font-weight: 620; vertical-align: top; }
  .park-hot thead th { font-size: 13.5px; font-weight: 560; color: var(--ink2); border: 0; }
  .park-hot th:first-child { text-align: left; }
  .park-hot td:last-child { white-space: nowrap; }
  .park-hot td span { margin-left: 5px; }
  .park-care { display: flex; gap: 10px; font-size: 14.5px; line-height: 1.34; }
  .park-care svg { width: 28px; height: 26px; flex: none; }
  .park-hill { position: absolute; left: 40px; bottom: 74px; display: flex; align-items: flex-end; gap: 12px; pointer-events: none; z-index: 1; }
  .park-hill svg { width: 180px; flex: none; }
  .park-hill .mirrored { transform: scaleX(-1); }
  .park-hill div { padding-bottom: 6px; font-size: 15px; line-height: 1.3; }
  .park-hill b { display: block; font-size: 24px; font-weight: 760; }
  .park-hill span { display: block; }
  .park-hill .bad { color: var(--bad); font-weight: 700; }
  .park-first { grid-template-columns: minmax(0, 1.25fr) minmax(0, 1fr) auto; align-items: end; }
  .park-step { display: grid; grid-template-columns: 46px 1fr 46px; border: 2px solid var(--ink); align-items: stretch; }
  .park-step .btn { border: 0; padding: 0; min-height: 42px; }
  .park-step .btn:first-child { border-right: 1px solid var(--rule); }
  .park-step .btn:last-child { border-left: 1px solid var(--rule); }
  .park-step b { align-self: center; text-align: center; font-size: 16.5px; font-weight: 650; white-space: nowrap; }
  .park-set input.pick { font-size: 16.5px; color: var(--ink); border-radius: 0; }
  .park-set .lab { display: block; }
  .park-set .pick { min-height: 46px; }
  .park-hand { display: grid; grid-template-columns: repeat(4, minmax(0, 1fr)); gap: 8px; }
  .park-hand .btn { padding: 0 4px; white-space: nowrap; }
  .park-hand .pick { min-height: 42px; text-align: center; padding: 0 2px; border-radius: 0; color: var(--ink); min-width: 0; }
  .park-cable { margin-top: 8px; }
  input.pick:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  @media ${COMPACT} {
    .park-over { right: 10px; top: 10px; bottom: 58px; width: max(31%, 250px); gap: 8px; }
    .park-hill { left: 10px; bottom: 56px; gap: 6px; }
    .park-hill svg { width: 138px; }
    .park-hill .mirrored { transform: scaleX(-1); }
  .park-hill div { font-size: 13px; padding-bottom: 0; }
    .park-hill b { font-size: 18px; }
    .park-verdict { padding: 6px 14px 8px; }
    .park-says strong { font-size: 24px; }
    .park-says span { font-size: 15px; }
    .park-chocks { min-height: 36px; font-size: 14px; right: 12px; }
    .park-says { padding-right: 100px; }
    .park-mk { width: 26px; height: 26px; }
    .park-other { font-size: 13.5px; margin: 1px 0 2px 42px; }
    .park-bar { grid-template-columns: 78px 1fr 48px; }
    .park-bar span { font-size: 14px; }
    .park-bar i { height: 16px; }
    .park-bar b { font-size: 17px; }
    .park-need { left: 90px; right: 60px; }
    .park-needs { font-size: 13px; margin-top: 0; }
    .park-both { gap: 3px; }
    .park-spent { height: 14px; }
    .park-rule { font-size: 13.5px; margin-top: 2px; }
    .park-rule .pick { min-height: 36px; font-size: 14px; }
    .park-what { font-size: 13px; line-height: 1.25; margin-top: 3px; }
    .park-parts { font-size: 13px; gap: 0 9px; }
    .c.park-kept { font-size: 13px; padding-top: 4px; padding-bottom: 4px; }
    .park-main .seg button { font-size: 13px; min-height: 34px; padding: 0 3px; }
    .park-ctl .lab, .park-bars .lab { display: none; }
    .park-stop h2 { display: none; }
    .park-cable { margin-top: 4px; gap: 6px; }
    .park-cable .lab { font-size: 13px; margin: 0; }
    .park-cable .park-step { grid-template-columns: 32px 1fr 32px; }
    .park-cable .park-step .btn { min-height: 30px; }
    .park-cable .park-step b { font-size: 13px; }
    .park-hand .pick { min-height: 34px; }
    .park-first .btn, .park-first .seg button { min-height: 34px; }
    .park-body { padding: 6px 12px 8px; }
    .park-panel h2 { font-size: 17px; }
    .park-panel p { font-size: 13.5px; margin: 5px 0; }
    .park-panel small { font-size: 13px; }
    .park-lever { max-height: 230px; }
    .park-sum { font-size: 13.5px; margin: 2px -12px 0; padding: 5px 12px 0; }
    .park-stop { padding: 6px 12px 8px; }
    .park-loupe { width: 62px; }
    .park-loupe > svg + svg { width: 22px; right: -8px; }
    .park-stops b { font-size: 14px; }
    .park-stops figcaption { font-size: 13px; }
    .park-step .btn, .park-set .pick { min-height: 36px; }
    .park-hot { font-size: 13.5px; }
    .park-hot thead th { font-size: 13px; }
    .park-care { font-size: 13px; }
    .park-ctl { gap: 6px; }
    .park-ctl .btn { min-height: 34px; }
    .park-set .pick { font-size: 14px; }
    .park-step b { font-size: 14.5px; }
    .park-pick, .park-unit { font-size: 13px; }
    .park-pick .pick, .park-stepper { font-size: 13.5px; }
    .park-mini { font-size: 13.5px; }
    .park-way { font-size: 13.5px; }
  }
  @media ${BARRED} {
    takeup-park-pad { --pad: 64px; }
    .park-verdict { padding: 5px 18px 6px; }
    .park-says strong { font-size: 27px; }
    .park-says span { font-size: 16.5px; }
    .park-bar i { height: 18px; }
    .park-bar b { font-size: 19px; }
    .park-needs { margin-top: 0; }
    .park-what { margin-top: 3px; line-height: 1.25; }
  }
  @media ${LOW} {
    takeup-park-pad { --pad: 46px; }
    .park-says strong { font-size: 22px; }
    .park-what { line-height: 1.2; }
  }
  @media ${NARROW} {
    .park-bars .lab, .park-stop h2 { display: block; }
    .park-first .seg button { min-height: 58px; }
    [data-station='park'] .note { order: 2; }
    .park-cable .lab { display: block; font-size: 14.5px; }
    .park-cable .park-step { grid-template-columns: 58px 1fr 58px; }
    .park-cable .park-step b { font-size: 16px; }
    .park-cable .park-step .btn { min-height: 58px; }
    .park-cable.row { grid-template-columns: 1fr; }
    .park-verdict { order: 1; padding: 10px 16px; }
    .park-chocks { min-height: 56px; font-size: 16px; }
    .park-says { padding-right: 120px; min-height: 62px; }
    .park-says strong { font-size: 27px; }
    .park-says span, .park-other { font-size: 16px; }
    .park-other { margin-left: 42px; }
    .park-panel { order: 2; overflow: visible; border-top: 0; }
    .park-body { overflow: visible; padding: 12px 16px; }
    .park-hill { position: static; }
    .park-hill svg { width: 190px; }
    .park-hill div, .park-panel p, .park-care { font-size: 16px; }
    .park-panel small, .park-what, .park-needs, .park-rule, .park-parts, .c.park-kept, .park-unit, .park-pick, .park-hot, .park-hot thead th, .park-stops figcaption, .park-mini, .park-way, .park-sum { font-size: 14.5px; }
    .park-bar { grid-template-columns: 84px 1fr 52px; }
    .park-bar span { font-size: 15px; }
    .park-need { left: 94px; right: 62px; }
    .park-main .seg button { font-size: 15px; min-height: 56px; }
    .park-rule .pick, .park-pick .pick { min-height: 56px; font-size: 16px; }
    .park-stepper { grid-template-columns: 1fr 58px 64px 58px; font-size: 16px; }
    .park-stepper .btn { min-height: 58px; }
    .park-step { grid-template-columns: 58px 1fr 58px; }
    .park-step .btn { min-height: 58px; }
    .park-first { grid-template-columns: minmax(0, 1fr) auto; }
    .park-hand { gap: 6px; }
    .park-ctl .btn { min-height: 56px; }
    .park-lever { max-height: none; }
    .park-loupe { width: 120px; }
  }
`;
