import { type Brake, type Point, sickleOf } from '../../../sim/index.ts';
import { stagePartsParking as words } from '../../../sim/words/en.ts';
import { add, angleOf, apply, direction, distance, type Frame, polar } from '../geometry.ts';
import { circlePath, type Path, polygon, polyline, trace } from '../path.ts';
import { DASH, outlined, type Shape, stroked } from '../shapes.ts';
import { coil } from './coil.ts';
import { maker, perBrake } from './make.ts';

interface LeverPaths {
  readonly body: Path;
  readonly stop: Path;
  readonly hook: Path;
  readonly pin: Path;
  readonly pinEye: Path;
}
const leverPaths = perBrake((brake: Brake): LeverPaths => {
  const { pivot, hook } = brake.parkingLever;
  const { to, eye, edge } = sickleOf(brake);
  const body = trace().arc(pivot, eye.radius, eye.from, eye.to);
  for (const stretch of edge) {
    if ('corner' in stretch) body.bend(stretch.corner, stretch.to);
    else body.line(stretch.to);
  }
  return {
    body: body.close().path,
    stop: polygon([to(21.9, -69.4), to(24.7, -70.8), to(24.5, -75.2), to(21.2, -76.8)]),
    hook: circlePath(hook, 2.1),
    pin: circlePath(pivot, 4.4),
    pinEye: circlePath(pivot, 1.7),
  };
});

/** x of the lever's right edge in the reference pose, `up` mm above the strut's axis. */
export function leverEdge(brake: Brake, up: number): number {
  const y = brake.shoes.rear.strutSeat[1] + up;
  // From the eye to the first bend's end.
  const edge = sickleOf(brake)
    .edge.slice(0, 3)
    .flatMap((s) => ('corner' in s ? [s.corner, s.to] : [s.to]));
  const below = edge.findIndex((p) => p[1] <= y);
  const [a, b] = [edge[Math.max(0, below - 1)] as Point, edge[Math.max(1, below)] as Point];
  return a[0] + ((b[0] - a[0]) * (y - a[1])) / (b[1] - a[1]);
}

/** Outline of the lever in the reference pose, for a picture of it alone. */
export const leverBody = (brake: Brake): Path => leverPaths(brake).body;

/** Outline of its stop, which rests on the rear web. */
export const leverStop = (brake: Brake): Path => leverPaths(brake).stop;

/** Lever and cable, behind the rear web. */
export function parkingLever(brake: Brake, place: Frame): Shape[] {
  const paths = leverPaths(brake);
  const lever = maker('parking', 'parking lever');
  return [
    ...cable(brake, place),
    lever(paths.body, outlined('parkingLever', 1.5), { place }),
    lever(paths.hook, outlined('hole', 1), { place }),
  ];
}

/** What of the lever shows over the rear web: its hidden edge, its stop and its pivot on the web. */
export function parkingLeverOver(brake: Brake, place: Frame): Shape[] {
  const paths = leverPaths(brake);
  const lever = maker(words.parkingOver, 'parking lever');
  const stop = maker(words.parkingOver, 'lever stop');
  const pivot = maker(words.parkingOver, 'lever pivot');
  return [
    lever(paths.body, stroked('ink', 1, DASH.hidden), { place }),
    stop(paths.stop, outlined('parkingLever', 1.5), { place }),
    pivot(paths.pin, outlined('bolt', 1.5), { place }),
    pivot(paths.pinEye, stroked('ink', 0.9), { place }),
  ];
}

/** Cord from the hook inside a wide coil to its guide in the plate, hidden behind it. */
function cable(brake: Brake, place: Frame): Shape[] {
  const { cableGuide: guide, hook, pull } = brake.parkingLever;
  const from = apply(place, hook);
  const cord = maker('parking', 'cable');
  const guideMaker = maker('parking', 'cable guide');
  const angle = angleOf(add(guide, pull), guide);
  const along = (t: number, y = 0): Point =>
    add(add(guide, pull, t), polar(1, angle + Math.PI / 2), y);
  const u = direction(from, guide);
  const start = add(from, u, 5);
  const run = polyline(add(from, u, 1), along(8.4));
  const block = (a: number, b: number, half: number): Path =>
    polygon([along(a, -half), along(b, -half), along(b, half), along(a, half)]);
  const span = distance(start, guide);
  return [
    cord(run, stroked('ink', 4)),
    cord(run, { stroke: 'wire', width: 2, dash: [3, 1.4] }),
    ...coil('cable', 'cable', start, along(-0.6), {
      lead: [span * 0.06, span * 0.06],
      turns: Math.max(5, Math.round(span / 2.15)),
      radius: 2.7,
      wire: 0.72,
    }),
    guideMaker(block(0, 8.4, 3.4), outlined('bolt', 1)),
    guideMaker(block(8.4, 12.4, 2.2), outlined('bolt', 1)),
    cord(polyline(along(12.4), along(21.4, 1), along(31.4, 5)), stroked('ink', 1, DASH.hidden)),
  ];
}

/** Points for the names layer. */
export function parkingSpots(brake: Brake, place: Frame) {
  const { cableGuide, hook, pivot, pull } = brake.parkingLever;
  const middle = sickleOf(brake).to(18.3, -54);
  const now = apply(place, hook);
  return {
    lever: apply(place, middle),
    pivot: apply(place, pivot),
    guide: add(cableGuide, pull, 4.2),
    cable: add(now, direction(now, cableGuide), distance(now, cableGuide) * 0.45),
  };
}
