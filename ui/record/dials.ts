import type { BrakeState, Scene } from '../../sim/index.ts';
import { language, recordDials as words } from '../../sim/words/en.ts';
import type { Bench } from './bench.ts';
import { type Dialled, MOST_DIALLED } from './guest.ts';
import { handsIn } from './hands.ts';
import { intention } from './intention.ts';
import { begun } from './life.ts';
import type { Moment, StationId } from './moment.ts';
import { layersOf } from './parts.ts';

/**
 * Dials on the stage: sizes of the brake, and of its state, turned where they are. The brake that they make is
 * a guest that says what was turned; one's own waits under it, and is what each dial snaps back to.
 */

/** Stations that have dials, and in which a brake stays that was turned at. */
const STANDS: readonly StationId[] = ['apply', 'wear', 'drum-off', 'park'];

/** Has the open station dials? Hands in the brake have the stage to themselves. */
export const hasDials = (m: Moment): boolean => STANDS.includes(m.station) && !handsIn(m);

/** Are they on the stage? */
export const dialsOn = (m: Moment): boolean => hasDials(m) && layersOf(m).dials;

/** What is turned now. */
export const dialledNow = ({ guest }: Moment): readonly Dialled[] =>
  guest?.call.kind === 'dialled' ? guest.call.set : [];

/** The bench whose brake is turned at: one's own, under what was turned so far; null under another guest. */
export const dialledFrom = ({ bench, guest }: Moment): Bench | null =>
  guest === null ? bench : guest.call.kind === 'dialled' ? guest.mine.bench : null;

/** Was it by a dial that another brake came onto the bench? */
export const dialled = (before: Moment, after: Moment): boolean =>
  before.guest !== after.guest &&
  [before, after].some(({ guest }) => guest?.call.kind === 'dialled') &&
  before.station === after.station;

/** The brake as its dials make it. */
export interface Turned {
  readonly scene: Scene;
  readonly state: BrakeState;
}

/** Nothing is turned: one's own brake stands there again, under the same pedal. */
function untold(m: Moment): Moment {
  const from = dialledFrom(m);
  return m.guest && from ? { ...m, guest: null, bench: from } : m;
}

function turned(m: Moment, set: readonly Dialled[], made: Turned): Moment {
  const from = dialledFrom(m);
  if (!from || !hasDials(m)) return m;
  if (set.length === 0) return untold(m);
  const mine = m.guest?.mine ?? {
    bench: m.bench,
    turning: m.turning,
    station: m.station,
    layers: m.view.layers,
    parts: m.parts,
  };
  const { scene, state } = made;
  const bench = {
    ...from,
    brake: { kind: 'whole', scene } as const,
    standing: null,
  };
  return {
    ...m,
    guest: {
      call: { kind: 'dialled', set: set.slice(0, MOST_DIALLED) },
      stands: STANDS,
      mine,
    },
    bench: { ...bench, state, life: begun(state) },
  };
}

/**
 * A dial is turned: the brake that all of them make.
 *
 * @param set all that is turned; none: one's own brake again
 * @param name of the dial, for what is told when it is undone
 */
export const turnDial = intention(
  'dial.turn',
  (m: Moment, _name: string, set: readonly Dialled[], made: Turned) => turned(m, set, made),
  (_before, _after, name) => language.inside(name),
  { joins: (name) => words.dial(name) },
);

/** All dials back: the brake as it was. */
export const dialsBack = intention('dial.back', untold, words.dialsBack);
