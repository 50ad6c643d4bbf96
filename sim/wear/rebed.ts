import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import { KM } from '../units/units.ts';
import { createLife } from './life.ts';
import { suits } from './under.ts';
import { wearOn } from './wear-on.ts';

/** Distance between two looks at what is worn, mm. Between them the lost volume grows evenly (Archard). */
const LOOK = 500 * KM;

/** Volume lost by both linings, mm³: each element b·arc·(r·w − w²/2), see contact/bed.ts. */
export function lostVolume({ front, rear }: Rig, wear: BrakeState['wear']): number {
  let sum = 0;
  for (const { bed, side } of [front, rear]) {
    for (let i = 0; i < bed.count; i++) {
      const w = wear[side][i] as number;
      sum += bed.width * bed.arc * ((bed.face[i] as number) * w - (w * w) / 2);
    }
  }
  return sum;
}

/**
 * A state as it would be under the rig's shoes: itself where its wear suits them. Else both linings are worn
 * anew, from new and by the first duty, until they have lost as much volume, in a drum that is then as wide as the
 * state's; the tooth is the one then reached. The drum, what was driven and what is out of order stay. By
 * Archard's law lost volume is a coefficient times the work of friction (J. F. Archard 1953), and the way to a
 * shape passes away within tenths of a millimetre, so any use that cost as much comes to nearly the same face.
 */
export function underShoes(rig: Rig, state: BrakeState): BrakeState {
  if (suits(rig, state)) return state;
  const { brake } = rig;
  const { radiusNew } = brake.drum;
  const elements = state.wear.front.length;
  const goal = lostVolume(rig, state.wear);
  // Once in a new drum, to see how far and how much that wears the drum.
  const life = createLife(rig, freshState(brake, radiusNew, elements), brake.duties[0], {
    stopAtLimit: false,
    rowEvery: LOOK,
    askLocks: false,
  });
  const look = () => {
    const { wear, drumRadius } = life.state();
    return { distance: life.distance, volume: lostVolume(rig, wear), drum: drumRadius - radiusNew };
  };
  let before = look();
  let now = before;
  while (!life.done && now.volume < goal) {
    before = now;
    life.advance(LOOK);
    now = look();
  }
  const part = Math.min(1, (goal - before.volume) / (now.volume - before.volume));
  const at = (key: 'distance' | 'drum'): number => before[key] + part * (now[key] - before[key]);
  const start = freshState(brake, Math.max(radiusNew, state.drumRadius - at('drum')), elements);
  const { tooth, wear, wornBy } = wearOn(rig, start, { distance: at('distance') }).state;
  const { wornBy: _, ...kept } = state;
  return { ...kept, tooth, wear, ...(wornBy ? { wornBy } : {}) };
}
