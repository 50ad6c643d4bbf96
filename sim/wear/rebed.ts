import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import { KM } from '../units/units.ts';
import { createLife } from './life.ts';
import type { Life } from './life-types.ts';
import { suits } from './under.ts';

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

/** A worn brake that is bedded in under other shoes, in pieces. */
export interface Rebedding {
  readonly done: boolean;
  /** Share of the work done, 0..1. */
  readonly progress: number;
  /** Drives one piece on, a few milliseconds long; nothing once it is done. */
  advance(): void;
  /** The state under the other shoes; throws before it is done. */
  state(): BrakeState;
}

/**
 * A state as it would be under the rig's shoes: itself where its wear suits them. Else both linings are worn
 * anew, from new and by the first duty, until they have lost as much volume, in a drum that is then as wide as the
 * state's; the tooth is the one then reached. The drum, what was driven and what is out of order stay. By
 * Archard's law lost volume is a coefficient times the work of friction (J. F. Archard 1953), and the way to a
 * shape passes away within tenths of a millimetre, so any use that cost as much comes to nearly the same face.
 */
export function rebed(rig: Rig, state: BrakeState): Rebedding {
  if (suits(rig, state)) {
    return { done: true, progress: 1, advance: () => undefined, state: () => state };
  }
  const { brake } = rig;
  const { radiusNew } = brake.drum;
  const elements = state.wear.front.length;
  const goal = lostVolume(rig, state.wear);
  const drive = (start: BrakeState, distance?: number): Life =>
    createLife(rig, start, brake.duties[0], {
      stopAtLimit: false,
      rowEvery: LOOK,
      askLocks: false,
      ...(distance === undefined ? {} : { distance }),
    });
  // Once in a new drum, to see how far and how much that wears the drum; then in one that ends as wide as the state's.
  const first = drive(freshState(brake, radiusNew, elements));
  const look = () => {
    const { wear, drumRadius } = first.state();
    return {
      distance: first.distance,
      volume: lostVolume(rig, wear),
      drum: drumRadius - radiusNew,
    };
  };
  let before = look();
  let now = before;
  let second: Life | null = null;
  let far = 0;
  const again = (): Life => {
    const grown = now.volume - before.volume;
    const part = grown > 0 ? Math.min(1, (goal - before.volume) / grown) : 0;
    const at = (key: 'distance' | 'drum'): number => before[key] + part * (now[key] - before[key]);
    far = at('distance');
    const radius = Math.max(radiusNew, state.drumRadius - at('drum'));
    return drive(freshState(brake, radius, elements), far);
  };
  return {
    get done() {
      return second?.done === true;
    },
    get progress() {
      const half = Math.min(1, now.volume / goal) / 2;
      return second ? 0.5 + 0.5 * second.progress : half;
    },
    advance() {
      if (second) {
        second.advance(LOOK);
        return;
      }
      if (!first.done && now.volume < goal) {
        before = now;
        first.advance(LOOK);
        now = look();
      }
      if (first.done || now.volume >= goal) second = again();
    },
    state() {
      if (!second?.done) throw new Error('Not bedded in yet');
      const { tooth, wear, wornBy } = second.state();
      const { wornBy: _, ...kept } = state;
      return { ...kept, tooth, wear, ...(wornBy ? { wornBy } : {}) };
    },
  };
}

/** The same at one go. */
export function underShoes(rig: Rig, state: BrakeState): BrakeState {
  const work = rebed(rig, state);
  while (!work.done) work.advance();
  return work.state();
}
