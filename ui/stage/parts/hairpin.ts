import type { Point } from '../../../sim/index.ts';
import { angleOf, degrees, distance, polar } from '../geometry.ts';
import { circlePath, type Path, trace } from '../path.ts';
import { outlined, type Shape } from '../shapes.ts';
import { maker } from './make.ts';

/**
 * The lever's spring: a hairpin of wire with its coil on a stud of the strut. One leg presses on the lever's
 * pin from above, square to the strut; the other is hooked behind the bar.
 */

/** Wire, middle radius of the coil, length of the short leg, mm at u = 1. Drawn only. */
const WIRE = 0.8;
const COIL = 2.3;
const SHORT = 8;

/**
 * @param stud middle of the coil, and the pin's, in the world
 * @param radius of the pin, mm
 * @param u scale of the adjuster
 */
export function hairpin(stud: Point, pin: Point, radius: number, u: number): Shape[] {
  const make = maker('springs', 'lever spring', ' lever');
  const wire = WIRE * u;
  const r = COIL * u;
  const over: Point = [pin[0], pin[1] + radius + wire / 2];
  // The leg leaves the coil at its top as a tangent.
  const d = distance(over, stud);
  const lean = angleOf(over, stud) - Math.acos(Math.min(1, r / d));
  const beyond: Point = [over[0] - 2.2 * u, over[1] + 0.7 * u];
  const leg = polar(r, lean, stud);
  const foot = polar(SHORT * u, degrees(62), polar(r, degrees(-28), stud));
  const path: Path = trace()
    .line(beyond, over, leg)
    .arc(stud, r, lean, degrees(-28) - 2 * Math.PI)
    .line(foot).path;
  const width = { mm: wire * 1.25, least: 3.1, inset: 0 };
  return [
    make(circlePath(stud, r * 0.62), outlined('bolt', 1)),
    make(path, { stroke: 'ink', width, round: true }),
    make(path, {
      stroke: 'wire',
      width: { ...width, inset: 1.9 },
      round: true,
    }),
  ];
}
