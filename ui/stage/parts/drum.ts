import type { Brake } from '../../../sim/index.ts';
import { circlePath } from '../path.ts';
import { DASH, hatched, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { maker } from './make.ts';

/** Swept radius beyond the lip, mm, from which the lip is worth drawing. */
const LIP_SEEN = 0.005;

/** Outer radius of the rim, mm. */
export const rimRadius = (brake: Brake): number => brake.drum.radiusNew + brake.drum.rim;

/**
 * The rim in section. Its hatch never turns. Where the linings have worn the drum larger than its
 * unworn edge, that edge (the lip) is a dashed circle.
 *
 * @param radius inner radius now, mm
 * @param cold inner radius of the cold drum: what it has grown by heat the lip has grown too
 */
export function drum(brake: Brake, radius: number, cold: number): Shape[] {
  const make = maker('drum', 'drum');
  const shapes = [
    make(
      [...circlePath([0, 0], rimRadius(brake)), ...circlePath([0, 0], radius)],
      hatched('drum', WEIGHT.heavy),
      { evenOdd: true },
    ),
  ];
  if (cold > brake.drum.lipRadius + LIP_SEEN) {
    const lip = brake.drum.lipRadius + radius - cold;
    shapes.push(make(circlePath([0, 0], lip), stroked('ink', 1.2, DASH.lip)));
  }
  return shapes;
}
