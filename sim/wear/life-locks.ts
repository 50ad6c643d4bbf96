import { lockedShoe } from '../balance/lock.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { type Kind, type Schedule, waySpeed } from './schedule.ts';

/** The shoe that would lock in one of a duty's directions or weathers, cold; null: it can be driven. */
export function lockedWhenDriven(rig: Rig, state: BrakeState, schedule: Schedule): Side | null {
  const { kinds, weather } = schedule;
  const forward = kinds.filter((k) => k.reverse < 1);
  const backward = kinds.filter((k) => k.reverse > 0);
  // All are alike where friction does not hang on speed.
  const few = (of: readonly Kind[]) => (rig.brake.rubbing ? of : of.slice(0, 1));
  for (const surface of [null, ...weather]) {
    const condition = surface
      ? { ...state.condition, surface: { front: surface, rear: surface } }
      : state.condition;
    // A surface met stands for any film of it.
    const asked = { ...state, condition, film: surface ? undefined : state.film };
    for (const [way, of] of [
      [1, few(forward)],
      [-1, few(backward)],
    ] as const) {
      for (const kind of of) {
        const side = lockedShoe(rig, asked, way, undefined, waySpeed(kind));
        if (side) return side;
      }
    }
  }
  return null;
}
