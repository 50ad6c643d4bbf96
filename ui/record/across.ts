import * as v from 'valibot';
import { type BrakeState, type Held, UNHELD, type Wheel } from '../../sim/index.ts';
import { recordAcross as words } from '../../sim/words/en.ts';
import type { Bench } from './bench.ts';
import { brakeOf } from './derive.ts';
import { intention } from './intention.ts';
import { begun, type LifeRecord, lifeSchema } from './life.ts';
import { type Moment, withPart } from './moment.ts';
import { stateSchema } from './state.ts';

/**
 * The axle's other wheel, where it is not like the one on the bench: the same brake in a state, with a life, of its
 * own. One of the two stands on the bench at a time; what is done is done to that one.
 */
export interface Across {
  readonly wheel: Wheel;
  readonly standing: string | null;
  readonly state: BrakeState;
  readonly held: Held;
  readonly life: LifeRecord;
}

export const heldSchema: v.GenericSchema<unknown, Held> = v.strictObject({
  hubRust: v.boolean(),
  liningsRusted: v.boolean(),
  aside: v.pipe(v.number(), v.minValue(-10), v.maxValue(10)),
});

export const acrossSchema: v.GenericSchema<unknown, Across> = v.strictObject({
  wheel: v.picklist(['left', 'right']),
  standing: v.nullable(v.pipe(v.string(), v.minLength(1), v.maxLength(60))),
  state: stateSchema,
  held: heldSchema,
  life: lifeSchema,
});

const opposite = (wheel: Wheel): Wheel => (wheel === 'left' ? 'right' : 'left');

/** A wheel in a state, nothing driven yet. */
export const acrossIn = (wheel: Wheel, state: BrakeState): Across => ({
  wheel,
  standing: null,
  state,
  held: UNHELD,
  life: begun(state),
});

/** Which wheel stands on the bench. */
export const wheelOf = (m: Moment): Wheel =>
  m.bench.across ? opposite(m.bench.across.wheel) : (m.view.wheel ?? brakeOf(m).wheel);

/** The states of both wheels; null where they are alike. */
export function bothOf(m: Moment): Readonly<Record<Wheel, BrakeState>> | null {
  const { across, state } = m.bench;
  if (!across) return null;
  return across.wheel === 'left'
    ? { left: across.state, right: state }
    : { left: state, right: across.state };
}

/** The record with the other wheel on the bench. Nothing is done to either; a pedal that was down comes up. */
export function crossed(m: Moment): Moment {
  const { across, held, life, standing, state, ...rest } = m.bench;
  if (!across) return m;
  const aside = { wheel: wheelOf(m), standing, state, held, life };
  const { wheel, ...put } = across;
  const bench: Bench = { ...rest, ...put, across: aside };
  const next = { ...m, bench, pedal: 0, follows: false, view: { ...m.view, wheel } };
  return withPart(next, 'drum-off', { tried: null, back: 0 });
}

/** Lets the wheels of the axle go each its own way from here, or makes the other one like the one on the bench. */
export const standApart = intention(
  'bench.apart',
  (m: Moment, apart: boolean) => {
    if (apart === (m.bench.across !== null)) return m;
    const wheel = wheelOf(m);
    const across = apart ? acrossIn(opposite(wheel), m.bench.state) : null;
    return { ...m, bench: { ...m.bench, across }, view: { ...m.view, wheel } };
  },
  (_before, after) => (after.bench.across ? words.eachWheelItsOwn : words.bothWheelsAlike),
);
