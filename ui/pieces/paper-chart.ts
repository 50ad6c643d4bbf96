import { html, svg, type TemplateResult } from 'lit';

/** A small chart for paper: black lines told apart by their dashes, letters of 8 pt and more. */

interface Line {
  readonly points: readonly (readonly [x: number, y: number])[];
  /** px on, off; a whole line where left out. */
  readonly dash?: string;
  /** Words at its end. */
  readonly name?: string;
}

export interface PaperChart {
  readonly title: string;
  readonly x: { readonly from: number; readonly to: number; readonly step: number };
  readonly y: { readonly from: number; readonly to: number; readonly step: number };
  readonly tell: { x(v: number): string; y(v: number): string };
  readonly lines: readonly Line[];
  readonly limits?: readonly { readonly at: number; readonly name: string }[];
}

const WIDE = 720;
const HIGH = 200;
const LEFT = 52;
const RIGHT = 110;
const TOP = 10;
const FOOT = 26;

function ticks({ from, step, to }: PaperChart['x']): number[] {
  const n = Math.floor((to - from) / step + 1e-9);
  return Array.from({ length: n + 1 }, (_, i) => from + i * step);
}

/** Where the names at the lines' ends stand, px: pushed apart where they would lie on each other. */
function ends(lines: readonly Line[], y: (v: number) => number) {
  const out: { x: number; at: number; name: string }[] = [];
  for (const { name, points } of lines) {
    const end = points.at(-1);
    if (!end || !name) continue;
    let at = y(end[1]);
    while (out.some((o) => Math.abs(o.at - at) < 14)) at += 1;
    out.push({ x: end[0], at, name });
  }
  return out;
}

export function paperChart(c: PaperChart): TemplateResult {
  const x = (v: number): number =>
    LEFT + ((v - c.x.from) / (c.x.to - c.x.from)) * (WIDE - LEFT - RIGHT);
  const y = (v: number): number =>
    TOP + (1 - (v - c.y.from) / (c.y.to - c.y.from)) * (HIGH - TOP - FOOT);
  const path = ({ points }: Line): string =>
    points.map(([a, b], i) => `${i ? 'L' : 'M'}${x(a).toFixed(1)} ${y(b).toFixed(1)}`).join('');
  return html`<figure class="chart"><figcaption><b>${c.title}</b></figcaption><svg viewBox="0 0 ${WIDE} ${HIGH}" role="img" aria-label=${c.title} font-size="13">
    ${ticks(c.y).map((v) => svg`<path d="M${LEFT} ${y(v)}H${WIDE - RIGHT}" stroke="#BBBBBB" /><text x=${LEFT - 6} y=${y(v) + 4.5} text-anchor="end">${c.tell.y(v)}</text>`)}
    ${ticks(c.x).map((v) => svg`<path d="M${x(v)} ${HIGH - FOOT}v5" stroke="#000000" /><text x=${x(v)} y=${HIGH - 6} text-anchor="middle">${c.tell.x(v)}</text>`)}
    ${(c.limits ?? []).map(({ at, name }) => svg`<path d="M${LEFT} ${y(at)}H${WIDE - RIGHT}" stroke="#000000" stroke-dasharray="2 4" /><text x=${WIDE - RIGHT + 6} y=${y(at) + 4.5}>${name}</text>`)}
    <path d="M${LEFT} ${TOP}V${HIGH - FOOT}H${WIDE - RIGHT}" fill="none" stroke="#000000" />
    ${c.lines.map((l) => svg`<path d=${path(l)} fill="none" stroke="#000000" stroke-width="1.6" stroke-linejoin="round" stroke-dasharray=${l.dash ?? 'none'} />`)}
    ${ends(c.lines, y).map(({ at, name, x: end }) => svg`<text x=${x(end) + 6} y=${at + 4.5}>${name}</text>`)}
  </svg></figure>`;
}

/** A round step of which some eight go into a span. */
export function roundStep(span: number, most = 8): number {
  const rough = span / most;
  const ten = 10 ** Math.floor(Math.log10(rough));
  return ten * ([1, 2, 5, 10].find((f) => f * ten >= rough) ?? 10);
}
