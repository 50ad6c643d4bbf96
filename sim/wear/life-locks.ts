import { lockedShoe } from '../balance/lock.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import type { Schedule } from './schedule.ts';

/** The shoe that would lock in one of a duty's directions or weathers, cold; null: it can be driven. */
export function lockedWhenDriven(rig: Rig, state: BrakeState, schedule: Schedule): Side | null {
  const { kinds, weather } = schedule;
  const forward = kinds.some((k) => k.reverse < 1);
  const backward = kinds.some((k) => k.reverse > 0);
  for (const surface of [null, ...weather]) {
    const condition = surface
      ? { ...state.condition, surface: { front: surface, rear: surface } }
      : state.condition;
    const asked = { ...state, condition };
    const side =
      (forward ? lockedShoe(rig, asked, 1) : null) ??
      (backward ? lockedShoe(rig, asked, -1) : null);
    if (side) return side;
  }
  return null;
}
