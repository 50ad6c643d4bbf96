import { html, svg, type TemplateResult } from 'lit';
import { type BodyForce, bodyGap, type Point, type Side } from '../../sim/index.ts';
import { workingBodyPolygon as texts } from '../../sim/words/en.ts';
import { number } from '../format.ts';
import { words } from './body-words.ts';

/** All forces on a shoe as arrows tip to tail, at one scale: the last ends where the first began. */

export interface Body {
  readonly side: Side;
  readonly forces: readonly BodyForce[];
}

const WIDE = 560;
const HIGH = 300;
const EDGE = 30;
/** A force under this share of the greatest stands in the list, but its arrow is too short for a number. */
const NAMED = 0.02;

/** Corners of the polygon in newtons, first and last alike but for what is left over. */
export function corners(forces: readonly BodyForce[]): readonly Point[] {
  const out: Point[] = [[0, 0]];
  for (const { force } of forces) {
    const [x, y] = out.at(-1) as Point;
    out.push([x + force[0], y + force[1]]);
  }
  return out;
}

export function bodyPolygon({ side, forces }: Body): TemplateResult {
  const points = corners(forces);
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const [left, right, low, high] = [
    Math.min(...xs),
    Math.max(...xs),
    Math.min(...ys),
    Math.max(...ys),
  ];
  const scale = Math.min((WIDE - 2 * EDGE) / (right - left), (HIGH - 2 * EDGE) / (high - low));
  if (!Number.isFinite(scale)) return html`<p>${texts.nothingPushesOnTheShoe(side)}</p>`;
  const dx = (WIDE - scale * (right - left)) / 2;
  const dy = (HIGH - scale * (high - low)) / 2;
  const at = ([x, y]: Point): Point => [dx + scale * (x - left), HIGH - dy - scale * (y - low)];
  const sizes = forces.map(({ force: [x, y] }) => Math.hypot(x, y));
  const most = Math.max(...sizes);
  const gap = bodyGap(forces);
  const told = forces
    .map((f, i) => `${i + 1} ${words(f)} ${number(sizes[i] as number, 0)} N`)
    .join(', ');
  const arrow = (_: BodyForce, i: number): TemplateResult => {
    const [[x1, y1], [x2, y2]] = [at(points[i] as Point), at(points[i + 1] as Point)];
    const size = sizes[i] as number;
    const [mx, my] = [(x1 + x2) / 2, (y1 + y2) / 2];
    const long = Math.hypot(x2 - x1, y2 - y1);
    // Beside the arrow, outward from the middle of the picture.
    const [nx, ny] = long > 0 ? [-(y2 - y1) / long, (x2 - x1) / long] : [0, 0];
    const out = nx * (mx - WIDE / 2) + ny * (my - HIGH / 2) >= 0 ? 1 : -1;
    const [tx, ty] = [mx + 12 * out * nx, my + 12 * out * ny];
    const anchor = tx > mx + 4 ? 'start' : tx < mx - 4 ? 'end' : 'middle';
    return svg`<g><path d=${`M${x1.toFixed(1)} ${y1.toFixed(1)}L${x2.toFixed(1)} ${y2.toFixed(1)}`} stroke="var(--ink)" stroke-width="3" marker-end="url(#tip)" />${
      size > NAMED * most
        ? svg`<text x=${tx} y=${ty + 5} text-anchor=${anchor}>${i + 1}</text>`
        : ''
    }</g>` as TemplateResult;
  };
  return html`<svg viewBox=${`0 0 ${WIDE} ${HIGH}`} role="img" aria-label=${texts.forcesOnTheShoeTip(side, told)} data-gap=${Math.hypot(...gap).toFixed(3)}>
    <defs><marker id="tip" viewBox="0 0 10 10" refX="9" refY="5" markerWidth="4.6" markerHeight="4.6" orient="auto"><path d="M0 0L10 5L0 10z" fill="var(--ink)" /></marker></defs>
    ${forces.map(arrow)}<circle cx=${at([0, 0])[0]} cy=${at([0, 0])[1]} r="6" fill="none" stroke="var(--ink)" stroke-width="2" />
  </svg><p class="told">${texts.shoeLeftOverN(side === 'front' ? texts.front : texts.rear, told, number(Math.hypot(...gap), 1))}</p>`;
}
