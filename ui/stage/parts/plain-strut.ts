import type { Brake, Instant, Point } from '../../../sim/index.ts';
import { apply, degrees, type Frame } from '../geometry.ts';
import { type Path, polygon, polyline } from '../path.ts';
import { outlined, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { maker } from './make.ts';

/** Half height of the bar and of the tube over it, star wheel radius and width, mm. Drawn only. */
const BAR = 3.8;
const TUBE = 5.4;
const WHEEL = { radius: 11, half: 3, teeth: 20 };
/** Flank of the wedge: 1 in 8, so its stand in the gap tells how much it has made the strut longer. */
const FLANK = 1 / 8;

const box = (x0: number, x1: number, y0: number, y1: number): Path =>
  polygon([
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ]);

/**
 * Struts without a toothed lever, drawn in a frame whose x axis is the strut's and whose 0 is the
 * rear seat: the part that sets the length always has the adjuster's colour and heavy outline.
 *
 * @param strut where the strut's rear end stands
 */
export function plainStrut(brake: Brake, instant: Instant, strut: Frame): Shape[] {
  const { kind, growth } = brake.adjuster;
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const [x, y] = apply(strut, [nx, ny]);
  const place = { angle: strut.angle, x, y };
  const length = instant.strutLength;
  const grown = growth[instant.tooth] ?? 0;
  const body = maker('strut', 'strut');
  if (kind === 'wedge') {
    const wide = 7 + grown;
    return [
      body(bar(-length + wide, 0), outlined('strut'), { place }),
      ...wedge(-length, wide, grown).map((shape) => ({ ...shape, place })),
    ];
  }
  const joint = -length * 0.42;
  return [
    body(box(joint - 2, joint + 16, -2.6, 2.6), outlined('bolt', 1.1), { place }),
    body(thread(joint, joint + 16), stroked('ink', 0.9), { place }),
    body(bar(joint + 16, 0), outlined('strut'), { place }),
    body(box(-length, joint - 2, -TUBE, TUBE), outlined('strut'), { place }),
    ...starWheel(joint + 1 + grown, instant).map((shape) => ({ ...shape, place })),
  ];
}

const bar = (x0: number, x1: number): Path =>
  polygon([
    [x0, -BAR],
    [x1, -BAR],
    [x1, -2],
    [x1 + 8.5, -2],
    [x1 + 8.5, 2],
    [x1, 2],
    [x1, BAR],
    [x0, BAR],
  ]);

const thread = (x0: number, x1: number): Path =>
  Array.from({ length: Math.floor(x1 - x0) }, (_, i) =>
    polyline([x0 + i, -2.6], [x0 + i + 0.5, 2.6]),
  ).flat();

/** Wheel seen on edge: a tooth's edge stands at R·sin of its turn; one tooth a step. */
function starWheel(x: number, instant: Instant): Shape[] {
  const { radius, half, teeth } = WHEEL;
  const make = maker('strut', 'star wheel');
  const edges: Path[] = [];
  for (let k = 0; k < teeth; k++) {
    const turn = degrees((360 / teeth) * (k + instant.tooth + instant.climb));
    if (Math.cos(turn) < 0) continue;
    const at = radius * Math.sin(turn);
    edges.push(polyline([x - half, at], [x + half, at]));
  }
  return [
    make(box(x - half, x + half, -radius, radius), outlined('adjFill', WEIGHT.adjuster, 'adj')),
    make(edges.flat(), stroked('adj', 1.3)),
  ];
}

/** Wedge between the strut's end and the front web, thicker end up; it drops as it takes up room. */
function wedge(seat: number, wide: number, grown: number): Shape[] {
  const make = maker('strut', 'wedge');
  const drop = grown / FLANK;
  const top = 22 - drop / 2;
  const bottom = -42 - drop / 2;
  const at = (y: number): number => seat + wide + y * FLANK * 0.5;
  const form: Point[] = [
    [seat, bottom],
    [at(bottom), bottom],
    [at(top), top],
    [seat, top],
  ];
  return [make(polygon(form), outlined('adjFill', WEIGHT.adjuster, 'adj'))];
}
