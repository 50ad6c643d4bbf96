import { css } from 'lit';
import { COMPACT, LOW, NARROW } from '../../pieces/page-sizes.ts';

/** What only this station has: lines of locks, teeth, the section's card, questions. */
export const drumStyles = css`
  .locks .ask { padding: 8px 18px; font-size: 16px; font-weight: 620; color: var(--ink2); }
  .lock { display: flex; align-items: center; gap: 14px; padding: 5px 18px; border-top: 1px solid var(--rule); min-height: 38px; font-size: 16px; }
  .lock > div { flex: 1; min-width: 0; }
  .lock b { font-weight: 720; margin-right: 4px; }
  .lock .btn { min-height: 38px; font-size: 15px; padding: 0 12px; flex: none; white-space: nowrap; }
  .mk { width: 20px; height: 20px; flex: none; }
  .lock.holds { padding-top: 9px; padding-bottom: 9px; }
  .lock.holds .mk { width: 28px; height: 28px; }
  .lock.holds b { display: block; font-size: 20px; line-height: 1.2; }
  .many .lock.holds { padding-top: 4px; padding-bottom: 4px; }
  .many .lock.holds b { display: inline; font-size: 16px; }
  .many .lock.holds .mk { width: 20px; height: 20px; }
  .teeth { padding: 10px 16px 0; }
  .step { display: grid; grid-template-columns: 62px 1fr 62px; align-items: center; gap: 10px; }
  .step .btn { min-height: 58px; font-size: 26px; padding: 0; }
  .step .count { text-align: center; font-size: 20px; font-weight: 650; }
  .step .count strong { font-size: 42px; line-height: 1.05; font-weight: 760; }
  .step.small { grid-template-columns: 56px 1fr 56px; }
  .step.small .btn { min-height: 46px; font-size: 22px; }
  .step.small .count { font-size: 17px; }
  .bars { display: flex; gap: 6px; margin: 9px 0 10px; }
  .bars i { flex: 1; height: 12px; border: 2px solid var(--ink); }
  .bars .on { background: var(--adj); border-color: var(--adj); }
  .facts { border-top: 1px solid var(--rule); margin: 8px -16px 0; gap: 0; }
  .facts > div { padding: 6px 16px 8px; font-size: 17px; font-weight: 560; }
  .facts > div + div { border-left: 1px solid var(--rule); }
  .facts b { display: block; font-size: 14.5px; font-weight: 560; color: var(--ink2); }
  .facts strong { font-size: 32px; line-height: 1.05; font-weight: 720; }
  .drumctl { position: sticky; bottom: 0; }
  .drumctl .three .btn { padding: 0 6px; font-size: 15.5px; line-height: 1.15; text-align: center; }
  .drumctl .btn[aria-pressed='true'] { background: var(--ink); color: var(--sheet); }
  .foot { margin: 0; font-size: 14px; line-height: 1.35; color: var(--ink2); padding: 0 4px; }
  .onstage { position: absolute; right: 34px; top: 62px; bottom: 78px; width: max(33.5%, 260px); display: flex; flex-direction: column; gap: 12px; z-index: 1; }
  .bb { flex: 1; min-height: 0; display: flex; flex-direction: column; border: 2px solid var(--ink); background: var(--sheet); }
  .bb .cap { padding: 9px 14px 0; font-size: 16px; color: var(--ink2); }
  .bb .cap b { font-size: 26px; font-weight: 800; color: var(--ink); margin-right: 8px; }
  .bb takeup-section { flex: 1; min-height: 120px; }
  .bb p { margin: 0; padding: 6px 16px 12px; font-size: 17.5px; line-height: 1.35; }
  table.rows { border-collapse: collapse; width: 100%; border: 2px solid var(--ink); background: var(--sheet); font-size: 19px; font-weight: 650; }
  .rows th, .rows td { text-align: right; padding: 5px 14px; border-top: 1px solid var(--rule); }
  .rows thead th { border: 0; font-size: 15px; font-weight: 560; color: var(--ink2); }
  .rows th:first-child { text-align: left; }
  .rows .now { background: color-mix(in srgb, var(--ink) 9%, var(--sheet)); }
  .rows small { font-size: 14px; font-weight: 560; color: var(--ink2); margin-left: 8px; }
  .bad { color: var(--bad); }
  .good { color: var(--good); }
  .force { font-size: 15px; line-height: 1.38; border: 2px solid var(--ink); padding: 8px 14px; background: var(--panel); }
  .sets { padding: 12px 16px 14px; display: grid; gap: 9px; }
  .set > b { display: block; font-size: 14.5px; font-weight: 560; color: var(--ink2); margin-bottom: 3px; }
  .btn.wide { width: 100%; justify-content: flex-start; text-align: left; min-height: 52px; padding: 6px 16px; line-height: 1.2; }
  .btn.wide em { margin-left: auto; font-style: normal; font-weight: 520; }
  .quiz { padding: 14px 18px 16px; display: grid; gap: 10px; }
  .quiz h2 { margin: 0; font-size: 25px; line-height: 1.2; font-weight: 740; }
  .quiz p { margin: 0 0 4px; color: var(--ink2); font-size: 17px; }
  .quiz .back { justify-self: start; }
  .order { padding: 4px 18px 14px; }
  .order ol, .fast ol { margin: 0; padding-left: 26px; }
  .order li { padding: 9px 0 7px; border-bottom: 1px solid var(--rule); }
  .order li > b { font-size: 19px; }
  .order p { margin: 3px 0; font-size: 16px; line-height: 1.38; }
  .order .care { display: flex; gap: 9px; align-items: flex-start; color: var(--ink); font-weight: 600; font-size: 15px; }
  .care svg { width: 24px; height: 22px; flex: none; }
  .order .last { color: var(--ink2); margin: 9px 0; }
  .fast { padding: 12px 16px 14px; display: grid; gap: 12px; }
  .fast li { padding: 4px 0; font-size: 16.5px; line-height: 1.36; }
  .fast dl { margin: 0; }
  .fast dt { font-weight: 720; font-size: 16px; }
  .fast dd { margin: 2px 0 9px; font-size: 16px; line-height: 1.36; }
  .nut { width: 100%; max-height: 150px; border: 1px solid var(--rule); }
  .nut .w { font-size: 13px; font-weight: 600; fill: var(--ink); }
  .strip-bb { display: flex; }
  @media ${COMPACT} {
    .onstage { right: 14px; top: 14px; bottom: 62px; gap: 8px; }
    .locks .ask { padding: 4px 14px; font-size: 14px; }
    .lock { padding: 3px 14px; min-height: 28px; font-size: 14.5px; gap: 10px; }
    .lock .btn { min-height: 32px; font-size: 14px; }
    .mk { width: 17px; height: 17px; }
    .lock.holds { padding-top: 5px; padding-bottom: 5px; }
    .lock.holds .mk { width: 23px; height: 23px; }
    .lock.holds b { font-size: 17px; }
    .teeth { padding: 6px 14px 0; }
    .step .btn { min-height: 44px; font-size: 22px; }
    .step .count { font-size: 17px; }
    .step .count strong { font-size: 30px; }
    .bars { margin: 6px 0; }
    .bars i { height: 9px; }
    .facts { margin: 4px -14px 0; }
    .facts > div { padding: 3px 14px 4px; font-size: 15px; }
    .facts b { font-size: 13.5px; }
    .facts strong { font-size: 24px; }
    .drumctl .three .btn { font-size: 14px; }
    .foot { font-size: 13px; }
    .bb .cap { font-size: 14px; padding: 5px 10px 0; }
    .bb .cap b { font-size: 21px; }
    .bb p { font-size: 14.5px; padding: 3px 10px 7px; }
    table.rows { font-size: 16px; }
    .rows th, .rows td { padding: 2px 10px; }
    .rows thead th { font-size: 13.5px; }
    .force { font-size: 13.5px; padding: 5px 10px; line-height: 1.3; }
  }
  @media ${LOW} {
    .lock { min-height: 26px; padding-top: 2px; padding-bottom: 2px; }
    .lock.holds { padding-top: 4px; padding-bottom: 4px; }
    main[data-station='drum-off'] .side { gap: 6px; }
    main[data-station='drum-off'] .note { font-size: 13.5px; padding: 5px 12px; line-height: 1.3; }
    main[data-station='drum-off'] .note svg { width: 28px; height: 26px; }
    .teeth .lab { margin-bottom: 0; }
    .step .btn { min-height: 40px; }
    .step .count strong { font-size: 27px; }
    .drumctl .three .btn { font-size: 13.5px; min-height: 36px; padding: 0 3px; line-height: 1.05; }
    .foot { line-height: 1.25; }
  }
  .tryworn { margin-top: 8px; }
  .tryworn .btn { width: 100%; }
  @media ${NARROW} {
    .tryworn { order: 1; margin: 0; padding: 10px 12px; background: var(--sheet); border-bottom: 2px solid var(--ink); }
    .tryworn .btn { min-height: 56px; }
    main[data-station='drum-off']:has(.quiz, .order, .fast) .drumctl { display: none; }
    .btn.wide, .sets .pick { min-height: 56px; }
    main[data-station='drum-off'] .stage { height: max(336px, 40vh); }
    .strip-bb { order: 1; height: 132px; }
    .strip-bb takeup-section { width: 57%; }
    .strip-bb > div { flex: 1; padding: 8px 10px; font-size: 15px; line-height: 1.25; }
    .strip-bb p { margin: 0 0 4px; }
    .strip-bb strong { font-size: 21px; }
    .strip-bb small { font-size: 14px; color: var(--ink2); }
    main[data-station='drum-off'] .h { order: 1; }
    /* Heard, not seen: the controls tell what was found. */
    main[data-station='drum-off'] .onbrake { position: absolute; width: 1px; height: 1px; padding: 0; border: 0; overflow: hidden; clip-path: inset(50%); }
    main[data-station='drum-off']:has(.quiz, .order, .fast, .sets) .stage { position: absolute; visibility: hidden; width: 100%; }
    .pages { order: 3; padding: 10px 12px; }
    .pages .btn { padding: 0 6px; font-size: 15px; line-height: 1.15; text-align: center; }
    .teeth { order: 2; }
    .teeth .lab { display: block; }
    .facts > div { font-size: 16px; }
    .facts b { font-size: 14px; }
    .locks { order: 3; }
    .lock { font-size: 16px; min-height: 40px; }
    .lock .btn { min-height: 56px; font-size: 16px; }
    .locks .ask { font-size: 15px; }
    .step .btn, .step.small .btn { min-height: 58px; font-size: 26px; }
    .step .count { font-size: 19px; }
    .step .count strong { font-size: 38px; }
    .more { order: 6; padding: 12px; display: grid; gap: 10px; }
    .force { font-size: 15px; }
    table.rows { font-size: 17px; }
    .rows th, .rows td { padding: 5px 10px; }
    .rows thead th { font-size: 14px; }
    .foot { order: 7; padding: 8px 12px; font-size: 14px; }
    .sets, .quiz, .order, .fast { order: 2; }
    .set > b { font-size: 15px; }
    .drumctl { gap: 8px; padding: 8px 12px; }
    .drumctl .btn { min-height: 56px; }
    .drumctl .three .btn { font-size: 15px; }
    .nut .w { font-size: 12.5px; }
  }
`;
