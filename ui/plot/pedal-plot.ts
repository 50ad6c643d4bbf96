import { svg, type TemplateResult } from 'lit';
import type { PedalCurve } from '../../sim/index.ts';
import { plotPedalPlot as texts } from '../../sim/words/en.ts';
import { number } from '../format.ts';

/** What the marks on the drawing are. */
export const plotKey = texts.plotKey;

const WIDE = 640;
const HIGH = 250;
/** Room for the axes' figures and words. */
const LEFT = 64;
const RIGHT = 16;
const TOP = 22;
const FOOT = 52;

/** Round steps of an axis: 1, 2 or 5 times a power of ten, at most so many. */
function ticks(most: number, count: number): number[] {
  const rough = most / count;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((m) => m * power >= rough) ?? 10);
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, k) => k * step);
}

/** Force of the foot against pedal travel, as a drawing: where linings touch and lie, and where the pedal is. */
export function pedalPlot(
  curve: PedalCurve,
  now: { readonly travel: number; readonly force: number },
): TemplateResult {
  const far = Math.max(...curve.points.map((p) => p.total));
  const hard = Math.max(...curve.points.map((p) => p.force), 1);
  const x = (mm: number): number => LEFT + ((WIDE - LEFT - RIGHT) * mm) / far;
  const y = (n: number): number => HIGH - FOOT - ((HIGH - FOOT - TOP) * n) / hard;
  const line = [{ total: 0, force: 0 }, ...curve.points].map(
    (p) => `${x(p.total).toFixed(1)},${y(p.force).toFixed(1)}`,
  );
  const mark = (p: { total: number; force: number } | null, fill: string) =>
    p &&
    svg`<circle cx=${x(p.total)} cy=${y(p.force)} r="6" fill=${fill} stroke="var(--ink)" stroke-width="2" />`;
  return svg`<svg viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${texts.forceOfTheFootAgainst}>
    ${ticks(far, 8).map(
      (mm) =>
        svg`<path d=${`M${x(mm)} ${TOP}V${y(0)}`} stroke="var(--faint)" /><text x=${x(mm)} y=${y(0) + 20} text-anchor="middle">${number(mm, 0)}</text>`,
    )}
    ${ticks(hard, 4).map(
      (n) =>
        svg`<path d=${`M${LEFT} ${y(n)}H${WIDE - RIGHT}`} stroke="var(--faint)" /><text x=${LEFT - 8} y=${y(n) + 5} text-anchor="end">${number(n, 0)}</text>`,
    )}
    <path d=${`M${LEFT} ${TOP}V${y(0)}H${WIDE - RIGHT}`} fill="none" stroke="var(--ink)" stroke-width="2" />
    <text x=${LEFT - 8} y="14" text-anchor="end">N</text>
    <text x=${WIDE - RIGHT} y=${HIGH - 8} text-anchor="end">${texts.pedalTravelMm}</text>
    <polyline points=${line.join(' ')} fill="none" stroke="var(--fluid)" stroke-width="3" />
    ${mark(curve.touch, 'var(--sheet)')}${mark(curve.seated, 'var(--fluid)')}
    ${mark({ total: now.travel, force: now.force }, 'var(--ink)')}
  </svg>` as TemplateResult;
}
