import * as v from 'valibot';
import {
  type AdjusterKind,
  adjusterKinds,
  type Brake,
  type BrakeState,
  freshState,
  type Held,
  type Scene,
  toothAcross,
  UNHELD,
  type Wheel,
} from '../../sim/index.ts';
import { recordBench as words } from '../../sim/words/en.ts';
import { type Across, acrossIn, acrossSchema, heldSchema } from './across.ts';
import {
  brakeOf,
  brakeOfRef,
  otherStartOf,
  ownBrakeOf,
  refitted,
  standingOf,
  startOf,
} from './derive.ts';
import { leave } from './guest.ts';
import { intention } from './intention.ts';
import { begun, type LifeRecord, lifeSchema, withClick } from './life.ts';
import type { Moment } from './moment.ts';
import { withPart } from './moment.ts';
import { partsAnew } from './parts.ts';
import { NAME, sceneValue } from './shelf.ts';
import { stateSchema } from './state.ts';

/** Which brake: a teaching brake by its name, one of one's own, or a whole scene. */
export type BrakeRef =
  | { readonly kind: 'scene'; readonly name: string }
  | { readonly kind: 'own'; readonly name: string }
  | { readonly kind: 'whole'; readonly scene: Scene };

/** Another adjuster in the place of the brake's own. */
export interface AdjusterFit {
  readonly kind: AdjusterKind;
  readonly hotLock: boolean;
  readonly drivenBy: Brake['adjuster']['drivenBy'];
}

/** The brake and the state it is in. */
export interface Bench {
  readonly brake: BrakeRef;
  /** Id of a fault that is built into it. */
  readonly fault: string | null;
  readonly adjuster: AdjusterFit | null;
  /** The standing state that it was last put into; null: as the scene starts. */
  readonly standing: string | null;
  readonly state: BrakeState;
  /** What holds the drum besides. */
  readonly held: Held;
  /** The life driven so far, as what it was driven by. */
  readonly life: LifeRecord;
  /** The axle's other wheel; null: like this one. */
  readonly across: Across | null;
}

const name = v.pipe(v.string(), v.minLength(1), v.maxLength(60));

export const benchSchema: v.GenericSchema<unknown, Bench> = v.strictObject({
  brake: v.variant('kind', [
    v.strictObject({ kind: v.literal('scene'), name }),
    v.strictObject({ kind: v.literal('own'), name: v.pipe(v.string(), v.regex(NAME)) }),
    v.strictObject({ kind: v.literal('whole'), scene: sceneValue }),
  ]),
  fault: v.nullable(name),
  adjuster: v.nullable(
    v.strictObject({
      kind: v.picklist(adjusterKinds),
      hotLock: v.boolean(),
      drivenBy: v.picklist(['application', 'parking pull']),
    }),
  ),
  standing: v.nullable(name),
  state: stateSchema,
  held: heldSchema,
  life: lifeSchema,
  across: v.optional(v.nullable(acrossSchema), null),
});

/** A brake in a state, nothing driven; the axle's other wheel is like it unless told. */
export function freshBench(
  brake: BrakeRef,
  state: BrakeState,
  across: Across | null = null,
): Bench {
  return {
    brake,
    fault: null,
    adjuster: null,
    standing: null,
    state,
    held: UNHELD,
    life: begun(state),
    across,
  };
}

/**
 * The record with the brake in another state. A life goes on where only the cable or the warmth is
 * another, takes a tooth that was set as a leg of its own, and begins anew with anything else. What
 * was tried on the drum, and the teeth counted off, were of the state before.
 */
export function withState(m: Moment, state: BrakeState): Moment {
  const { bench } = m;
  const before = bench.state;
  if (state === before) return m;
  const same =
    before.distance === state.distance &&
    before.drumRadius === state.drumRadius &&
    before.wear.front === state.wear.front &&
    before.wear.rear === state.wear.rear;
  const life = !same
    ? begun(state)
    : before.tooth !== state.tooth
      ? withClick(bench.life, state)
      : bench.life.legs.length === 0
        ? begun(state)
        : { ...bench.life, onRow: false };
  const next = { ...m, bench: { ...bench, state, life } };
  return withPart(next, 'drum-off', { tried: null, back: 0 });
}

/**
 * The record with the stage at another moment of the life driven so far: the life stays.
 *
 * @param onRow the state is that of the row, bit for bit
 */
export function withMoment(m: Moment, at: number, state: BrakeState, onRow = true): Moment {
  const { bench } = m;
  const { life } = bench;
  if (life.at === at && life.onRow === onRow && bench.state === state) return m;
  const next = { ...m, bench: { ...bench, state, life: { ...life, at, onRow } } };
  return withPart(next, 'drum-off', { tried: null, back: 0 });
}

/** The pedal comes up. */
export const released = (m: Moment): Moment =>
  m.pedal === 0 ? m : { ...m, pedal: 0, follows: false };

/** A state put on in place of all that was: its own life, nothing out of order around the drum. */
export function withBegun(m: Moment, state: BrakeState, standing: string | null): Moment {
  const next = released(m);
  return withPart(
    {
      ...next,
      bench: { ...next.bench, standing, state, held: UNHELD, life: begun(state) },
    },
    'drum-off',
    { tried: null, back: 0 },
  );
}

/** The other wheel as a brake's scene starts it, where it says so. */
export const acrossAt = (built: Brake): Across | null =>
  built.otherStart && acrossIn(otherThan(built), otherStartOf(built));

const otherThan = ({ wheel }: Brake): Wheel => (wheel === 'left' ? 'right' : 'left');

const titleOf = (m: Moment): string => brakeOf(m).title;

/** Puts another brake on the bench, new; a guest leaves. */
export const chooseBrake = intention(
  'bench.brake',
  (m: Moment, brake: BrakeRef) => {
    const home = leave(m);
    const built = brakeOfRef(brake, home.shelf);
    const start = startOf(built);
    return released({
      ...home,
      bench: freshBench(brake, start, acrossAt(built)),
      parts: partsAnew(home.parts, built),
    });
  },
  (_before, after) => words.onTheBench(titleOf(after)),
);

export const backToNew = intention(
  'bench.new',
  (m: Moment) => withBegun(m, freshState(brakeOf(m)), null),
  words.backToNew,
);

/** Puts on one of the scene's standing states; throws on an unknown name. */
export const putStanding = intention(
  'bench.standing',
  (m: Moment, standing: string) => withBegun(m, standingOf(brakeOf(m), standing), standing),
  (_before, after) => `${after.bench.standing ?? 'start'}`,
);

/** Puts the brake into a state, at rest. */
export const putState = intention(
  'bench.state',
  (m: Moment, state: BrakeState) => released(withState(m, state)),
  (before, after) =>
    before.bench.state.tooth === after.bench.state.tooth
      ? words.stateOfTheBrake
      : words.toothTo(before.bench.state.tooth, after.bench.state.tooth),
);

/** A tooth dropped in by itself: what the moving brake tells the record. */
export const clicked = intention(
  'bench.clicked',
  (m: Moment, state: BrakeState) => withState(m, state),
  (before, after) => words.toothTo(before.bench.state.tooth, after.bench.state.tooth),
);

/**
 * The linings lie as they wear under the other kind of shoes: what follows from changing these, however long it took to
 * reckon. Whatever was done meanwhile stays; a brake whose linings are others by now is left alone. Its life begins anew.
 *
 * @param from the state that was bedded in
 * @param wear and `wornBy` of it under the other shoes
 */
export const bedded = intention(
  'bench.bedded',
  (m: Moment, from: BrakeState, { wear, wornBy }: Pick<BrakeState, 'wear' | 'wornBy'>) => {
    const { state } = m.bench;
    if (state.wear.front !== from.wear.front || state.wear.rear !== from.wear.rear) return m;
    const { wornBy: _, ...kept } = state;
    return withState(m, { ...kept, wear, ...(wornBy ? { wornBy } : {}) });
  },
  words.liningsBeddedIn,
);

/** Puts another kind of adjuster on the brake, as long as the one before; the life begins anew. */
export const fitAdjuster = intention(
  'bench.adjuster',
  (m: Moment, fit: AdjusterFit) => {
    const before = brakeOf(m);
    const { state } = m.bench;
    const next = refitted(ownBrakeOf(m.bench, m.shelf), fit);
    const fitted = (s: BrakeState): BrakeState => ({
      ...s,
      tooth: toothAcross(before, next, s.tooth),
    });
    const put = fitted(state);
    const { across } = m.bench;
    const other = across && acrossIn(across.wheel, fitted(across.state));
    return released({
      ...m,
      bench: { ...m.bench, adjuster: fit, state: put, life: begun(put), across: other },
    });
  },
  (_before, after) => words.adjuster(after.bench.adjuster?.kind ?? words.itsOwn),
);

/** Full travel of the pedal, bar. */
export const MOST_BAR = 80;
/** What a plain press is, bar. */
export const PRESS_BAR = 40;

function pedalAt(m: Moment, bar: number, follows: boolean): Moment {
  const pedal = Math.max(0, Math.min(MOST_BAR, bar));
  return pedal === m.pedal && follows === m.follows ? m : { ...m, pedal, follows };
}
const pedalSays = (before: Moment, after: Moment): string =>
  before.bench.state.tooth === after.bench.state.tooth
    ? words.pedalAtBar(Math.round(after.pedal))
    : words.pressToothTo(before.bench.state.tooth, after.bench.state.tooth);

/** Pedal by hand: the pressure follows at once. */
export const press = intention(
  'pedal.press',
  (m: Moment, bar: number) => pedalAt(m, bar, true),
  pedalSays,
  { joins: 'pedal' },
);

/** Pedal by key or button: the pressure rises as a foot would press. */
export const pressTo = intention(
  'pedal.pressTo',
  (m: Moment, bar: number) => pedalAt(m, bar, false),
  pedalSays,
  { joins: 'pedal' },
);

export const release = intention(
  'pedal.release',
  (m: Moment) => (m.pedal === 0 ? m : { ...m, pedal: 0, follows: false }),
  (before, after) =>
    before.bench.state.tooth === after.bench.state.tooth
      ? words.pedalLetGo
      : pedalSays(before, after),
  { joins: 'pedal', ends: true },
);
