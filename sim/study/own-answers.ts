import { balance } from '../balance/balance.ts';
import { createRig } from '../balance/rig.ts';
import { freshState } from '../brake/state.ts';
import { shoeFactor } from '../readings/factors.ts';
import { readScene } from '../scene/read.ts';
import { leverArms } from '../scene/rules/parking.ts';
import type { Scene } from '../scene/schema.ts';
import { BAR } from '../units/units.ts';
import type { OwnSeen, PlaceKey } from './own-places.ts';

/** What one's own brake is asked for beside a picture of it: new, cold, rolling forward. */
export interface OwnAnswers {
  /** Brake factor after the springs. */
  readonly factor: number;
  /** N·mm a wheel. */
  readonly torque: number;
  /** Force on the strut for a pull of the cable: the arms of both about the lever's pivot. */
  readonly ratio: number;
}
export const answerKeys = ['factor', 'torque', 'ratio'] as const;

/**
 * @param flexible the shoes bend
 * @returns null where the scene cannot be built or locks
 */
export function ownAnswers(scene: Scene, bar: number, flexible = false): OwnAnswers | null {
  const read = readScene(scene);
  if (!read.ok) return null;
  const { brake } = read;
  const at = { pressure: bar * BAR, turning: 1 } as const;
  const pressed = balance(createRig(brake, { flexible }), freshState(brake), at);
  const factor = shoeFactor(pressed, 'front') + shoeFactor(pressed, 'rear');
  const arms = leverArms(read.scene);
  return Number.isFinite(factor)
    ? { factor, torque: Math.abs(pressed.torqueOnDrum), ratio: arms.hook / arms.notch }
    : null;
}

/** How far a place is moved to see what it changes, mm. */
const STEP = 0.5;

/**
 * What one place adds to the variance of each answer: gᵀ C g, g the answer's change for a millimetre of it
 * in x and y. The law of propagation of uncertainty: JCGM 100:2008 (GUM), section 5. The seats slide to
 * the measured clearance each time, as `ownScene` has them.
 *
 * @param make scene of one's own brake from what was seen
 * @param spread covariance of the place: xx, xy, yy, mm²
 * @param flexible the shoes bend
 * @returns null where a brake with the place so moved cannot be built
 */
export function varianceOf(
  make: (seen: OwnSeen) => Scene,
  seen: OwnSeen,
  key: PlaceKey,
  spread: readonly [number, number, number],
  bar: number,
  flexible = false,
): OwnAnswers | null {
  const at = seen.places[key];
  if (!at) return null;
  const asked = (dx: number, dy: number): OwnAnswers | null =>
    ownAnswers(
      make({ ...seen, places: { ...seen.places, [key]: [at[0] + dx, at[1] + dy] } }),
      bar,
      flexible,
    );
  /** A limit of what can be built lies near: then the other side alone tells. */
  const slope = (x: number, y: number): OwnAnswers | null => {
    const here = ownAnswers(make(seen), bar, flexible);
    const up = asked(x, y) ?? here;
    const down = asked(-x, -y) ?? here;
    if (!here || !up || !down || (up === here && down === here)) return null;
    const by = up === here || down === here ? STEP : 2 * STEP;
    const d = (k: keyof OwnAnswers): number => (up[k] - down[k]) / by;
    return { factor: d('factor'), torque: d('torque'), ratio: d('ratio') };
  };
  const gx = slope(STEP, 0);
  const gy = slope(0, STEP);
  if (!gx || !gy) return null;
  const [xx, xy, yy] = spread;
  const of = (k: keyof OwnAnswers): number =>
    gx[k] * gx[k] * xx + 2 * gx[k] * gy[k] * xy + gy[k] * gy[k] * yy;
  return { factor: of('factor'), torque: of('torque'), ratio: of('ratio') };
}
