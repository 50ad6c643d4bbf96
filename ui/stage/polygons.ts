import { type BodyForce, bodyGap, type Instant, type Point, type Side } from '../../sim/index.ts';
import { stagePolygons as words } from '../../sim/words/en.ts';
import { fixed } from '../format.ts';
import type { Ink } from '../theme.ts';
import type { EdgeBox } from './edge-on.ts';
import { arrowPath } from './layers/arrows.ts';
import { lookOf, SIDES } from './layers/band.ts';
import { label, sizeOf } from './layers/label.ts';
import { circlePath, polygon, polyline } from './path.ts';
import type { Drawing, Label, Shape } from './shapes.ts';
import type { View } from './view.ts';

/**
 * All forces on each shoe as arrows head to tail, both shoes at one scale: a body at rest, so the last arrow ends
 * where the first began (statics; e.g. J. L. Meriam & L. G. Kraige, Engineering Mechanics: Statics, ch. 3).
 * What is left over is told in newtons: while a shoe moves, its inertia is not among them.
 */

export type Bodies = Readonly<Record<Side, readonly BodyForce[]>>;

/** A force under this share of the greatest has its number in the list alone: its arrow is shorter than the number. */
const NAMED = 0.03;
/** Kept free inside the box, px at text size 1. */
const EDGE = 16;

/** Corners of a polygon in newtons, y up: first and last alike but for what is left over. */
function cornersOf(forces: readonly BodyForce[]): readonly Point[] {
  const out: Point[] = [[0, 0]];
  for (const { force } of forces) {
    const [x, y] = out.at(-1) as Point;
    out.push([x + force[0], y + force[1]]);
  }
  return out;
}

interface Extent {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function extentOf(points: readonly Point[]): Extent {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    low: Math.min(...ys),
    high: Math.max(...ys),
  };
}

/** What of a scale is told: 1, 2 or 5 at a power of ten, that takes at most so many px. */
export function barOf(perNewton: number, most: number): number {
  const ten = 10 ** Math.floor(Math.log10(most / perNewton));
  return ([5, 2, 1].find((n) => n * ten * perNewton <= most) ?? 1) * ten;
}

function inkOf({ kind }: BodyForce, side: Side, instant: Instant): Ink {
  if (kind === 'normal' || kind === 'friction') return lookOf(side, instant).colour;
  if (kind === 'piston') return 'fluid';
  return kind === 'strut' || kind === 'climbing' ? 'adj' : kind === 'anchor' ? 'ink' : 'ink2';
}

const size = ({ force: [x, y] }: BodyForce): number => Math.hypot(x, y);

/** Figures of what is left over: a tenth of a newton. */
const leftOver = (forces: readonly BodyForce[]): string => fixed(Math.hypot(...bodyGap(forces)), 1);

/**
 * @param bodies null where no force is told
 * @param box px of the stage
 * @param sense −1 on a right-hand wheel: the brake is seen mirrored, and its forces with it
 */
export function polygons(
  bodies: Bodies | null,
  instant: Instant,
  view: View,
  box: EdgeBox,
  sense: 1 | -1,
): Drawing {
  const [left, top] = box.at;
  // In px, y up, from the box's lower left corner.
  const inside: View = { ...view, scale: 1, origin: [left, top + box.height] };
  const { width: wide, height: high } = box;
  const line = sizeOf(view, 'gap word') * 1.45;
  const edge = EDGE * Math.max(1, view.text);
  const shapes: Shape[] = [
    {
      key: 'polygon ground',
      path: polygon([
        [0, 0],
        [wide, 0],
        [wide, high],
        [0, high],
      ]),
      style: { fill: 'sheet', stroke: 'ink', width: 2 },
      group: 'polygons',
    },
  ];
  const labels: Label[] = [];
  const text = (key: string, told: string, at: Point, anchor: Label['anchor'] = 'start'): void => {
    labels.push(
      label(inside, {
        key: `polygon ${key}`,
        text: told,
        at,
        anchor,
        style: 'number',
        size: 14 * view.text,
        colour: 'ink',
      }),
    );
  };
  if (!bodies) {
    text('none', instant.locked ? words.aShoeLocksNoForce : words.noForceIsTold, [
      edge,
      high - line * 0.8,
    ]);
    return { view: inside, shapes, labels };
  }
  const corners = (side: Side): readonly Point[] =>
    cornersOf(bodies[side]).map(([x, y]): Point => [sense * x, y]);
  const each = (high - 1.6 * line) / 2;
  // Above a polygon its shoe is named; beside it its numbers stand.
  const free = [wide - 2 * edge - 1.6 * line, each - 3.1 * line] as const;
  const extents = { front: extentOf(corners('front')), rear: extentOf(corners('rear')) };
  const perNewton = Math.min(
    ...SIDES.map((s) => free[0] / (extents[s].right - extents[s].left)),
    ...SIDES.map((s) => free[1] / (extents[s].high - extents[s].low)),
  );
  // Of a brake that lies still with nothing on its shoes there is no scale.
  if (!Number.isFinite(perNewton) || perNewton <= 0) {
    text('none', words.nothingPushesOnTheShoes, [edge, high - line * 0.8]);
    return { view: inside, shapes, labels };
  }
  SIDES.forEach((side, i) => {
    const forces = bodies[side];
    const ceiling = high - i * each;
    const head = words.head(side === 'front' ? words.front : words.rear, leftOver(forces));
    text(words.head2(side), head, [edge, ceiling - line * 0.8]);
    const { left: l, right: r, low, high: h } = extents[side];
    const middle: Point = [wide / 2, ceiling - 1.3 * line - (each - 1.3 * line) / 2];
    const at = ([x, y]: Point): Point => [
      middle[0] + perNewton * (x - (l + r) / 2),
      middle[1] + perNewton * (y - (low + h) / 2),
    ];
    const points = corners(side).map(at);
    const most = Math.max(...forces.map(size));
    forces.forEach((force, k) => {
      const [a, b] = [points[k] as Point, points[k + 1] as Point];
      const long = Math.hypot(b[0] - a[0], b[1] - a[1]);
      if (long < 0.3) return;
      shapes.push({
        key: `polygon ${side} ${k + 1}`,
        path: arrowPath(a, b, 2.6 * Math.max(1, view.text)),
        style: { fill: inkOf(force, side, instant) },
        group: 'polygons',
      });
      if (size(force) <= NAMED * most) return;
      // Beside the arrow, outward from the polygon's middle.
      const [mx, my] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      const [nx, ny] = [-(b[1] - a[1]) / long, (b[0] - a[0]) / long];
      const out = nx * (mx - middle[0]) + ny * (my - middle[1]) >= 0 ? 1 : -1;
      const far = out * 0.78 * line;
      labels.push(
        label(inside, {
          key: `polygon ${side} ${k + 1}`,
          text: String(k + 1),
          at: [mx + far * nx, my + far * ny],
          anchor: 'middle',
          style: 'force',
          size: 15 * view.text,
          colour: 'ink',
        }),
      );
    });
    shapes.push({
      key: `polygon start ${side}`,
      path: circlePath(points[0] as Point, 4.5),
      style: { stroke: 'ink', width: 1.8 },
      group: 'polygons',
    });
  });
  const told = barOf(perNewton, wide * 0.3);
  const y = 0.75 * line;
  shapes.push({
    key: 'polygon scale',
    path: polyline(
      [edge, y + 5],
      [edge, y - 5],
      [edge, y],
      [edge + told * perNewton, y],
      [edge + told * perNewton, y + 5],
      [edge + told * perNewton, y - 5],
    ),
    style: { stroke: 'ink', width: 1.8 },
    group: 'polygons',
  });
  text('scale', `${told}\u00a0N`, [edge + told * perNewton + 8, y]);
  return { view: inside, shapes, labels };
}
