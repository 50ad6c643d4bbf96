import type { BrakeState } from '../brake/state.ts';
import { instantOf } from './build.ts';
import type { Instant } from './instant.ts';
import { lockedShoe } from './lock.ts';
import { type Press, solveBalance } from './press.ts';
import type { Rig } from './rig.ts';

/** One instant: where every part sits and what pushes. Says which shoe locks, or that nothing balances, instead of a force. */
export function balance(rig: Rig, state: BrakeState, press: Press): Instant {
  const locked =
    press.turning === 0
      ? null
      : lockedShoe(
          rig,
          state,
          press.turning,
          press.cable ? undefined : press.pressure,
          press.speed,
        );
  const i = locked ? null : instantOf(solveBalance(rig, state, press), press);
  if (i && !(i.lost && press.turning !== 0)) return i;
  // Where the turning drum leaves no pose, the standing one is shown.
  const still = instantOf(solveBalance(rig, state, { ...press, turning: 0 }), press);
  return { ...still, turning: press.turning, locked, lost: i !== null };
}

/** The released brake, standing still. */
export function rest(rig: Rig, state: BrakeState): Instant {
  return balance(rig, state, { pressure: 0, turning: 0 });
}
