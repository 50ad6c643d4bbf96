import type { Brake } from '../../../sim/index.ts';
import { degrees, polar, TURN } from '../geometry.ts';
import { circlePath, polyline, regular, trace } from '../path.ts';
import { DASH, outlined, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { rimRadius } from './drum.ts';
import { maker, perBrake } from './make.ts';

/** What stands still to the eye, below and above what turns. */
const still = perBrake((brake): { under: Shape[]; over: Shape[]; axes: Shape[] } => {
  const { hubRadius: r } = brake.look;
  const make = maker('hub', 'hub');
  const cross = r * 1.2;
  return {
    under: [
      make(circlePath([0, 0], r), outlined('hub')),
      make(circlePath([0, 0], r * 0.883), stroked('ink', 0.9)),
    ],
    over: [make(circlePath([0, 0], r * 0.483), outlined('plate', 1))],
    axes: [
      make(circlePath([0, 0], r * 0.147), stroked('ink', 0.9)),
      make(
        [...polyline([-cross, 0], [cross, 0]), ...polyline([0, -cross], [0, cross])],
        stroked('ink2', WEIGHT.axis, DASH.axis),
      ),
    ],
  };
});

const turning = perBrake((brake) => {
  const { hubRadius, studs, studCircle, studRadius } = brake.look;
  return {
    studs: Array.from({ length: studs }, (_, i) => {
      const at = polar(studCircle, degrees(45) + (i * TURN) / studs);
      return [...circlePath(at, studRadius), ...circlePath(at, studRadius * 0.6)];
    }),
    nut: regular([0, 0], hubRadius * 0.287, 6),
    // One stroke of paint across the rim's outer edge tells that the drum turns.
    paint: trace().arc([0, 0], rimRadius(brake) - 0.9, degrees(57), degrees(63)).path,
  };
});

/** The hub; its studs and nut turn with the drum (rad). */
export function hub(brake: Brake, turn: number): Shape[] {
  const { under, over, axes } = still(brake);
  const { studs, nut } = turning(brake);
  const make = maker('hub', 'hub', ' turning');
  const place = { angle: turn, x: 0, y: 0 };
  return [
    ...under,
    ...studs.map((stud) => make(stud, outlined('bolt', 1), { place })),
    ...over,
    make(nut, outlined('bolt', 1), { place }),
    ...axes,
  ];
}

export function paintStroke(brake: Brake, turn: number): Shape {
  const make = maker('drum', 'drum', ' paint');
  return make(
    turning(brake).paint,
    { stroke: 'ink', width: { mm: 1.8, least: 3, inset: 0 } },
    { place: { angle: turn, x: 0, y: 0 } },
  );
}
