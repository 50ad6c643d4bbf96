import { css } from 'lit';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';

/** In the page's own tree: Start's lines, and the field of Ask. */
export const startStyles = css`
  .ways { background: var(--sheet); }
  .ways button { display: grid; grid-template-columns: 64px 30px minmax(0, 1fr) 20px; align-items: center; gap: 14px; width: 100%; padding: 0 22px; min-height: 92px; border-bottom: 1px solid var(--rule); }
  .ways button:hover { background: var(--panel); }
  .ways button > svg:first-child { width: 58px; height: 58px; }
  .ways i { font-style: normal; font-weight: 800; font-size: 21px; }
  .ways b { display: block; font-size: 23px; font-weight: 730; line-height: 1.15; }
  .ways small { display: block; font-size: 17px; color: var(--ink2); line-height: 1.25; }
  .ways .go { width: 14px; height: 24px; }
  .ways .rim { fill: none; stroke: var(--ink); stroke-width: 3; }
  .ways .pl { fill: var(--plate); } .ways .dr { fill: var(--drum); stroke: var(--ink); stroke-width: 1.4; } .ways .li { fill: var(--lining); stroke: var(--ink); stroke-width: 1.4; }
  .ways .fl { fill: var(--fluid); stroke: var(--ink); stroke-width: 1.4; } .ways .lv { fill: var(--web); stroke: var(--ink); stroke-width: 1.4; } .ways .adj { fill: var(--adj-fill); stroke: var(--adj); stroke-width: 2; }
  .ways .ln, .ways .hot, .ways .bad { fill: none; stroke: var(--ink); stroke-width: 2.6; } .ways .bad, .ways .hot { stroke: var(--bad); }
  .speaks { margin: 8px 0 0; font-size: 15px; color: var(--ink2); }
  .speaks button { min-height: 34px; padding: 0 12px; border: 1px solid var(--rule); background: var(--sheet); color: var(--ink); }
  .startover { position: absolute; inset: 0; overflow-y: auto; z-index: 2; background: var(--sheet); }
  .stage takeup-ask { position: absolute; inset: 0; overflow-y: auto; z-index: 2; }
  .stage takeup-kind { position: absolute; inset: 0; overflow-y: auto; z-index: 2; }
  .askfield { grid-template-columns: 44px minmax(0, 1fr); align-items: center; gap: 0; padding: 12px 16px; background: var(--panel); z-index: 3; }
  .askfield .lens { display: grid; place-items: center; height: 56px; border: 2px solid var(--ink); border-right: 0; background: var(--sheet); }
  .askfield input { font: inherit; font-size: 19px; color: inherit; background: var(--sheet); border: 2px solid var(--ink); border-left: 0; min-height: 56px; width: 100%; padding: 0 10px 0 4px; border-radius: 0; appearance: none; }
  .askfield input:focus-visible { outline: 4px solid var(--trail); outline-offset: 2px; }
  .askfield input::placeholder { color: var(--ink2); opacity: 1; }
  @media ${COMPACT} { .ways button { min-height: 74px; } .ways b { font-size: 20px; } .ways small { font-size: 15.5px; } .ways button > svg:first-child { width: 50px; height: 50px; } .askfield input, .askfield .lens { min-height: 46px; height: 46px; font-size: 17px; } }
  @media ${NARROW} {
    .ways { order: 2; } .ways button { padding: 0 16px 0 14px; min-height: 89px; gap: 10px; } .ways b { font-size: 20px; }
    .ways button > svg:first-child { width: 54px; height: 54px; }
    :is(main[data-station='start'], main[data-station='kind']) .h { order: 1; } main[data-station='ask'] .h { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); } main[data-station='start'] .h p { min-height: 0; font-size: 17px; }
    main[data-station='start'] .h h1, main[data-station='see'] .h h1 { font-size: 27px; margin: 0; } main[data-station='start'] .h, main[data-station='kind'] .h { padding: 8px 14px 9px; }
    .askfield { padding: 10px 12px; } .askfield input, .askfield .lens { min-height: 56px; height: 56px; font-size: 19px; }
  }
`;
