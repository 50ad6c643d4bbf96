import { html, nothing, svg, type TemplateResult } from 'lit';
import { KM, type LifeRow } from '../../../sim/index.ts';
import { lessonsChart as words } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { LessonDesk } from './desk.ts';

/** The clearance over what a step drives, its clicks as falls: covered while the question is open. */

const WIDE = 400;
const HIGH = 120;
const LEFT = 46;
const FOOT = 24;

function drawn(rows: readonly LifeRow[], at: number): TemplateResult {
  const first = rows[0]?.distance ?? 0;
  const way = Math.max(1, (rows.at(-1)?.distance ?? 1) - first);
  const most = 1.1 * Math.max(...rows.map((r) => r.clearance));
  const x = (d: number): number => LEFT + ((d - first) / way) * (WIDE - LEFT - 6);
  const y = (gap: number): number => HIGH - FOOT - (gap / most) * (HIGH - FOOT - 8);
  const seen = rows.filter((r) => r.distance <= at + 1);
  const line = seen
    .map((r, i) => `${i === 0 ? 'M' : 'L'}${x(r.distance).toFixed(1)} ${y(r.clearance).toFixed(1)}`)
    .join('');
  const now = seen.at(-1);
  return html`<svg class="saw" viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${words.clearanceFromToKmNow(number(first / KM, 0), number((first + way) / KM, 0), number(now?.clearance ?? 0, 2))}>
    <path class="axis" d=${`M${LEFT} 4V${HIGH - FOOT}H${WIDE - 4}`} />
    <path class="gap" d=${line} />
    ${now ? svg`<circle class="dot" cx=${x(now.distance)} cy=${y(now.clearance)} r="4" />` : nothing}
    <text x="4" y="16">mm</text><text x="4" y=${HIGH - FOOT}>0</text>
    <text x=${LEFT} y=${HIGH - 5}>${number(first / KM, 0)}</text>
    <text class="end" x=${WIDE - 4} y=${HIGH - 5}>${number((first + way) / KM, 0)} km</text></svg>`;
}

export function chartOf(desk: LessonDesk): TemplateResult | typeof nothing {
  const { ran, step } = desk;
  if (!step?.look.chart || !ran || ran.rows.length < 2) return nothing;
  if (desk.covered) {
    return html`<div class="covered" data-covered><b>${words.chart}</b><span class="hidden">${words.coveredUntilItIsShown}</span><i aria-hidden="true"></i></div>`;
  }
  return html`<div class="chart">${drawn(ran.rows, desk.session.state.distance)}</div>`;
}
