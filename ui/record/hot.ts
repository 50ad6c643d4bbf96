import {
  type Brake,
  type BrakeState,
  type Hill,
  type HotPress,
  hotPress,
  KM,
  KMH,
} from '../../sim/index.ts';
import { rigOfBrake } from './derive.ts';
import { KeptFor } from './kept.ts';

/** Hills of the hot press, driven down at 40 km/h with the brake holding the speed. */
export const hills = [
  { name: '8 %, 3 km', slope: 0.08, length: 3 * KM, speed: 40 * KMH },
  { name: '12 %, 4 km', slope: 0.12, length: 4 * KM, speed: 40 * KMH },
  { name: '16 %, 4 km', slope: 0.16, length: 4 * KM, speed: 40 * KMH },
] as const satisfies readonly (Hill & { readonly name: string })[];

const presses = new KeptFor<Brake, KeptFor<BrakeState, Map<number, HotPress>>>();

/** A hot press of a brake at the foot of a hill of the list; the first one where there is no such. */
export function hotOf(brake: Brake, from: BrakeState, hill: number): HotPress {
  const known = presses.of(brake, () => new KeptFor()).of(from, () => new Map());
  const found = known.get(hill);
  if (found) return found;
  const made = hotPress(rigOfBrake(brake), from, hills[hill] ?? hills[0]);
  known.set(hill, made);
  return made;
}
