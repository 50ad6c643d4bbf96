import type { Brake } from '../../../sim/index.ts';
import { add, degrees, polar } from '../geometry.ts';
import { circlePath, regular, slotPath } from '../path.ts';
import { outlined, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { maker, perBrake } from './make.ts';

/** Nuts on the plate: common places, clear of the shoes. */
const NUTS = [20, 160, 205, 335];

export const plate = perBrake((brake: Brake): Shape[] => {
  const { plateRadius, hubRadius, accessHole: hole } = brake.look;
  const make = maker('plate', 'plate');
  const shapes = [
    make(circlePath([0, 0], plateRadius), { fill: 'plate' }),
    make(circlePath([0, 0], plateRadius * 0.594), stroked('emboss', WEIGHT.heavy)),
    make(circlePath([0, 0], plateRadius * 0.443), stroked('emboss', WEIGHT.heavy)),
  ];
  for (const angle of NUTS) {
    const at = polar(hubRadius * 1.3, degrees(angle));
    shapes.push(make(regular(at, hubRadius * 0.133, 6, degrees(30)), outlined('bolt', 1)));
    shapes.push(make(circlePath(at, hubRadius * 0.063), stroked('ink', 0.9)));
  }
  const along = polar(hole.length / 2, hole.along);
  const ends = [add(hole.at, along, -1), add(hole.at, along)] as const;
  const plug = maker('plate', 'access hole');
  shapes.push(
    plug(slotPath(...ends, hole.radius), { hatch: 'rubber', stroke: 'ink', width: 0.9 }),
    plug(slotPath(...ends, hole.radius * 0.6), stroked('ink', 0.9)),
  );
  return shapes;
});
