import { balance } from '../balance/balance.ts';
import type { ShoeInstant } from '../balance/instant.ts';
import type { Press } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { peak } from '../readings/factors.ts';
import { pedalStack } from '../readings/pedal.ts';
import { BAR, KM } from '../units/units.ts';
import { application } from '../wear/application.ts';
import { wearOn } from '../wear/wear-on.ts';

/** The press by which new shoes are judged: 40 bar, drum forward. */
export const PRESS: Press = { pressure: 40 * BAR, turning: 1 };

/** Share of a lining's arc that bears, 0 to 1, by elements. */
export function contactShare(s: ShoeInstant): number {
  let bearing = 0;
  for (const p of s.pressure) if (p > 0) bearing++;
  return bearing / s.pressure.length;
}

/** How new shoes bear and brake at one distance. */
export interface BedRow {
  /** km since they were fitted. */
  readonly km: number;
  /** N·mm, at the press. */
  readonly torque: number;
  readonly contactFront: number;
  readonly contactRear: number;
  /** MPa on each element, index 0 at the arc's `from` end. */
  readonly pressureFront: Float64Array;
  readonly pressureRear: Float64Array;
  /** MPa */
  readonly peakFront: number;
  readonly peakRear: number;
  /** mm at the pedal. */
  readonly pedal: number;
  readonly tooth: number;
  readonly state: BrakeState;
}

export function bedRow(rig: Rig, state: BrakeState, km: number, press: Press = PRESS): BedRow {
  const i = balance(rig, state, press);
  return {
    km,
    torque: Math.abs(i.torqueOnDrum),
    contactFront: contactShare(i.shoes.front),
    contactRear: contactShare(i.shoes.rear),
    pressureFront: i.shoes.front.pressure,
    pressureRear: i.shoes.rear.pressure,
    peakFront: peak(i.shoes.front.pressure),
    peakRear: peak(i.shoes.rear.pressure),
    pedal: pedalStack(rig.brake, i).total,
    tooth: state.tooth,
    state,
  };
}

/** Drives new shoes on by the duty and looks at them at each of the distances (km, rising). */
export function bedIn(rig: Rig, state: BrakeState, at: readonly number[]): BedRow[] {
  let now = state;
  let done = 0;
  return at.map((km) => {
    if (km > done) now = wearOn(rig, now, { distance: (km - done) * KM }).state;
    done = km;
    return bedRow(rig, now, km);
  });
}

/** First presses on new shoes. */
export interface FirstPresses {
  /** Teeth that dropped in at each press; the last one, silent, is 0 unless the count ran out. */
  readonly clicks: readonly number[];
  readonly state: BrakeState;
  readonly silent: boolean;
}

/** Presses and releases until nothing clicks any more. @param most presses at the most */
export function pressUntilSilent(
  rig: Rig,
  state: BrakeState,
  press: Press = PRESS,
  most = 400,
): FirstPresses {
  const clicks: number[] = [];
  let now = state;
  while (clicks.length < most) {
    const result = application(rig, now, press);
    clicks.push(result.clicked);
    now = result.state;
    if (result.clicked === 0) return { clicks, state: now, silent: true };
  }
  return { clicks, state: now, silent: false };
}

/** Distance to the next click from a state, mm; NaN when the lining's limit comes first. */
function toNextClick(rig: Rig, state: BrakeState): number {
  const run = wearOn(rig, state, { distance: 100_000 * KM, toNextClick: true });
  const click = run.events.find((e) => e.kind === 'click');
  return click ? click.distance - state.distance : Number.NaN;
}

/** What a cable tightened first, holding the lever off its stop, does to the next click. */
export interface CableFirst {
  /** mm from here to the next click with the lever on its stop, and held off it. */
  readonly home: number;
  readonly held: number;
  readonly late: number;
}

/** @param off how far the cable holds the lever off its stop, mm at the hook */
export function cableFirst(rig: Rig, state: BrakeState, off: number): CableFirst {
  const home = toNextClick(rig, { ...state, leverOffStop: 0 });
  const held = toNextClick(rig, { ...state, leverOffStop: off });
  return { home, held, late: held - home };
}
