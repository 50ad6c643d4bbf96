import { css, html, nothing, type TemplateResult } from 'lit';
import type { Wheel } from '../../../sim/index.ts';
import { inspectCut as words } from '../../../sim/words/en.ts';
import { type Cut, cutOf, judgeCut, wheels } from '../../../sim/workshop/index.ts';
import { down, number } from '../../format.ts';
import { marks } from '../../pieces/marks.ts';
import { COMPACT, NARROW } from '../../pieces/page-sizes.ts';
import type { InspectDesk } from './desk.ts';

/** Cut it or renew it: depth of a score, bore after the cut, against the mark and the machining limit. */

export const cutStyles = css`
  .cut { padding: 10px 14px 12px; border-top: 2px solid var(--ink); }
  .cut h2, .parts h2, .history h2 { margin: 0 0 6px; font-size: 19px; font-weight: 760; line-height: 1.15; }
  .cut .sum { display: flex; flex-wrap: wrap; gap: 4px 14px; align-items: flex-end; padding: 4px 0; }
  .cut .sum > div:not(.against) { display: grid; }
  .cut .sum b { font-size: 24px; line-height: 1.1; font-weight: 760; }
  .cut .sum .after > b { border-bottom: 3px solid var(--ink); }
  .cut small { font-size: 14px; color: var(--ink2); }
  .cut .against { display: flex; gap: 8px; align-items: center; border-left: 1px solid var(--rule); padding-left: 12px; }
  .cut .against div { display: grid; }
  .cut .sum .against b { font-size: 17px; }
  .cut .mark-v { width: 24px; height: 24px; }
  .cut .end { display: flex; gap: 12px; align-items: flex-start; padding: 8px 10px; margin-top: 6px; background: var(--panel); border: 1px solid var(--rule); }
  .cut .end b { font-size: 18px; display: block; }
  .cut .end.bad { background: var(--bad); color: var(--sheet); }
  .cut .end.bad .mark-v rect { fill: var(--sheet); }
  .cut .end.bad .mark-v path { stroke: var(--bad); }
  @media ${COMPACT} {
    .cut { padding: 6px 10px 8px; }
    .cut h2, .parts h2, .history h2 { font-size: 16.5px; }
    .cut .sum b { font-size: 20px; }
    .cut .sum .against b, .cut .end b { font-size: 15.5px; }
    .cut small { font-size: 13px; }
  }
  @media ${NARROW} {
    .cut { padding: 12px; }
    .cut h2, .parts h2, .history h2 { font-size: 20px; }
    .cut .sum b { font-size: 24px; }
    .cut .sum .against { border-left: 0; padding-left: 0; width: 100%; }
    .cut small { font-size: 14.5px; }
    .cut .sum .against b { font-size: 18px; }
  }
`;

/** Read up, never towards good. */
const up = (value: number): string => number(-down(-value, 2), 2);

/** The least that is told, mm. */
const LEAST = 0.005;

function against(left: number | null, limit: number | null, to: string, whose: string) {
  // What leaves nothing that is told is no pass.
  const level = left === null ? 'watch' : left < -1e-8 ? 'bad' : left < LEAST ? 'watch' : 'good';
  const said =
    left === null
      ? words.noneSetNoVerdict
      : left < -1e-8
        ? words.tooFar(up(-left))
        : words.left(number(down(Math.max(0, left), 2), 2));
  return html`<div class="against">${marks[level]}<div><b>${said}</b><small>${to}${limit === null ? '' : `, ${number(limit, 2)}`}${whose && limit !== null ? `: ${whose}` : ''}</small></div></div>`;
}

function sum(desk: InspectDesk, wheel: Wheel, cut: Cut): TemplateResult {
  const { limits, whose } = desk.judged.read;
  return html`<div class="sum" data-cut=${wheel}><div><small>${words.found(wheel)}</small><b>${up(cut.found)}</b></div><b>+</b>
    <div><small>${words.of2Score(number(cut.score, 2))}</small><b>${up(2 * cut.score)}</b></div><b>=</b>
    <div class="after"><small>${words.boreAfterTheCut}</small><b>${up(cut.after)}</b></div>
    ${against(cut.toMark, limits.drumMax, words.toTheMark, whose.drumMax)}${against(cut.toMachined, limits.drumCut, words.toTheMachiningLimit, whose.drumCut)}</div>`;
}

/** Nothing until a bore and a score stand on the sheet. */
export function cutSection(desk: InspectDesk): TemplateResult | typeof nothing {
  const { found, limits } = desk.judged.read;
  const cuts = { left: cutOf(found.left, limits), right: cutOf(found.right, limits) };
  const end = judgeCut(cuts);
  if (!end) return nothing;
  return html`<section class="cut" aria-label=${words.cutItOrRenewIt}><h2>${words.cutItOrRenewIt2}</h2>
    ${wheels.map((w) => (cuts[w] ? sum(desk, w, cuts[w]) : nothing))}
    <div class="end ${end.level}" data-cut-verdict=${end.level}>${marks[end.level]}<div><b>${end.title}</b>${end.why}</div></div></section>`;
}

/** The same in one sentence, for paper; empty without a score. */
export function cutText(desk: InspectDesk): string {
  const { found, limits } = desk.judged.read;
  const cuts = { left: cutOf(found.left, limits), right: cutOf(found.right, limits) };
  const end = judgeCut(cuts);
  if (!end) return '';
  const each = wheels.flatMap((w) => {
    const cut = cuts[w];
    return cut ? [`${w} ${up(cut.found)} + 2 × ${number(cut.score, 2)} = ${up(cut.after)}`] : [];
  });
  return words.boreAfterACut(each.join('; '), end.title, end.why);
}
