import { balance, rest } from '../balance/balance.ts';
import { dress } from '../balance/dress.ts';
import type { Instant } from '../balance/instant.ts';
import { createRig, type Rig } from '../balance/rig.ts';
import { type BrakeState, SOUND } from '../brake/state.ts';
import type { Side, Turning } from '../brake/types.ts';
import { cos } from '../math/trig.ts';
import { pedalStack } from '../readings/pedal.ts';
import { BAR, KMH, PI } from '../units/units.ts';
import { application } from '../wear/application.ts';
import { parked } from './parking.ts';
import { RETURN_TIME } from './pump.ts';
import { FELT, type Held, type Removal, removal, UNHELD } from './removal.ts';

/** The checks of a workshop, each on one wheel or on the two of an axle. */

/** One wheel's brake as it is. */
export interface WheelBrake {
  readonly rig: Rig;
  readonly state: BrakeState;
  /** What holds the drum besides. */
  readonly held?: Held;
  /** What is found behind the boots and at the hub; all dry when left out. */
  readonly wet?: 'boot wet' | 'oil from the hub';
}

/** Both wheels of the axle; nearside is the left. */
export interface Axle {
  readonly left: WheelBrake;
  readonly right: WheelBrake;
}

/** Forward and backward, N·mm. */
export interface BothWays {
  readonly forward: number;
  readonly backward: number;
}

const torqueOf = (i: Instant): number => Math.abs(i.torqueOnDrum);

const turned = new WeakMap<Rig, Rig>();

/** Places in a turn over which a drum that is not true is averaged: its harmonics are the first and second. */
const AROUND = 8;

/** Left of a hold-down's friction so that the float stays decided, N. */
const TRACE = 0.05;

/**
 * The brake whose drum is being turned: hold-downs keep only the share of their friction that a
 * turning drum does not shake off, since here the drum rubs on its linings.
 */
function turning(rig: Rig): Rig {
  const { brake } = rig;
  const found = turned.get(rig);
  if (found) return found;
  const loose = (side: Side) => {
    const shoe = brake.shoes[side];
    const { friction, shakenOff } = shoe.holdDown;
    const left = Math.max(Math.min(TRACE, friction), friction * (1 - shakenOff));
    return { ...shoe, holdDown: { ...shoe.holdDown, friction: left } };
  };
  const made = createRig(
    { ...brake, shoes: { front: loose('front'), rear: loose('rear') } },
    rig.options,
  );
  turned.set(rig, made);
  return made;
}

/** A state with the drum central: on stands nothing lifts it in its bearing. */
const onStands = (state: BrakeState): BrakeState =>
  state.condition.drumRise === 0
    ? state
    : { ...state, condition: { ...state.condition, drumRise: 0 } };

/** Torque of a turning wheel at a line pressure, MPa, and a pull of its cable, N; N·mm. */
export function bothWays(w: WheelBrake, pressure: number, cable = 0): BothWays {
  const rig = turning(w.rig);
  const { offCentre, oval } = w.state.condition;
  const places = offCentre === 0 && oval === 0 ? 1 : AROUND;
  const at = (sense: Turning): number => {
    let sum = 0;
    for (let k = 0; k < places; k++) {
      const drumAngle = (2 * PI * k) / places;
      sum += torqueOf(balance(rig, w.state, { pressure, turning: sense, cable, drumAngle }));
    }
    return sum / places;
  };
  return { forward: at(1), backward: at(-1) };
}

/** Torque that turns the wheel by hand on stands, nothing pressed, N·mm. */
export const handTurn = (w: WheelBrake): BothWays =>
  bothWays({ rig: w.rig, state: onStands(w.state) }, 0);

/** Torque of one wheel on the roller at a line pressure in MPa, N·mm. */
export const roller = (w: WheelBrake, pressure: number): BothWays =>
  bothWays({ rig: w.rig, state: onStands(w.state) }, pressure);

/** A gauge reads no lower and no higher than this in the check of the first touch, MPa. */
const MOST_TOUCH = 40 * BAR;

/**
 * Line pressure at which a wheel that is turned by hand begins to drag, MPa: the springs' threshold.
 * Drag grows with the pressure, so halving finds it to 0.01 bar.
 *
 * @returns 0 where it drags without; NaN where 40 bar do not make it
 */
export function firstTouch(w: WheelBrake): number {
  const drags = (pressure: number): boolean => {
    const { forward, backward } = roller(w, pressure);
    return Math.max(forward, backward) > FELT;
  };
  if (drags(0)) return 0;
  if (!drags(MOST_TOUCH)) return Number.NaN;
  let [low, high] = [0, MOST_TOUCH];
  while (high - low > 0.01 * BAR) {
    const middle = (low + high) / 2;
    if (drags(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * Time from letting the pedal go until the wheel is free, s. The springs push the fluid back through
 * the line, whose flow goes with the pressure behind the pistons (laminar, Hagen and Poiseuille): so
 * the time goes with one over what the springs have left after the cups' friction. A sound wheel of the
 * same brake takes RETURN_TIME.
 *
 * @returns Infinity where the springs cannot bring the pistons home, or pressure stays in the line
 */
export function releaseTime(w: WheelBrake): number {
  const { condition } = w.state;
  if (condition.keptPressure > 0) return Number.POSITIVE_INFINITY;
  // The push of the springs on the toes of the released brake: the same whatever else holds it.
  const springs = (factor: number): number => {
    const state = { ...w.state, leverOffStop: 0, condition: { ...SOUND, springFactor: factor } };
    const { front, rear } = rest(w.rig, state).shoes;
    return -Math.max(front.toeForce, rear.toeForce);
  };
  const left = springs(condition.springFactor) - condition.cupExtra;
  return left > 0 ? (RETURN_TIME * springs(1)) / left : Number.POSITIVE_INFINITY;
}

/** Torque of one wheel on the roller under the parking brake, N in its cable, N·mm. */
export const parkedRoller = (w: WheelBrake, cable: number): BothWays =>
  bothWays({ rig: w.rig, state: onStands(w.state) }, 0, cable);

/** Notches of the hand lever at a pull in each cable, N: it shares both wheels' travel. */
export function notchesAt(a: Axle, cable: number): number {
  const of = (w: WheelBrake): number => parked(w.rig, onStands(w.state), cable).notches;
  return (of(a.left) + of(a.right)) / 2;
}

export interface PedalCheck {
  /** At the pedal, mm: all of it, and what closes the gaps, goes into circuit and booster, is free play. */
  readonly total: number;
  readonly gaps: number;
  readonly circuit: number;
  readonly freePlay: number;
}

/** Pedal travel at a pressure in MPa, from where pistons and pedal stand released. */
export function pedalAt(a: Axle, pressure: number): PedalCheck {
  const { brake } = a.right.rig;
  const stack = (w: WheelBrake) => {
    const state = onStands(w.state);
    const pressed = balance(w.rig, state, { pressure, turning: 1 });
    const released = balance(w.rig, state, { pressure: 0, turning: 0 });
    const [on, off] = [pedalStack(w.rig.brake, pressed), pedalStack(w.rig.brake, released)];
    return {
      ...on,
      gaps: (on.gaps - off.gaps) / w.rig.brake.vehicle.brakes,
      circuit: on.circuit + on.booster + on.rollBack + on.lost,
    };
  };
  // Each side's share of the gaps; pipes and free play are common to both.
  const [left, right] = [stack(a.left), stack(a.right)];
  const gaps = ((left.gaps + right.gaps) * brake.vehicle.brakes) / 2;
  const freePlay = Math.min(left.freePlay, right.freePlay);
  const circuit = Math.max(left.circuit, right.circuit);
  return { total: freePlay + gaps + circuit, gaps, circuit, freePlay };
}

/** How much the pedal is pushed to and fro in one turn at a pressure in MPa, mm. */
export function pedalPulse(a: Axle, pressure: number): number {
  const gaps = (w: WheelBrake): number[] => {
    const state = onStands(w.state);
    const { offCentre, oval } = state.condition;
    if (offCentre === 0 && oval === 0) return [];
    return Array.from({ length: 2 * AROUND }, (_, k) => {
      const drumAngle = (PI * k) / AROUND;
      const i = balance(w.rig, state, { pressure, turning: 1, drumAngle });
      return pedalStack(w.rig.brake, i).gaps / w.rig.brake.vehicle.brakes;
    });
  };
  // Wheels turn at their own pace, so their swings add at some time.
  return [a.left, a.right].reduce((sum, w) => {
    const all = gaps(w);
    return all.length === 0 ? sum : sum + Math.max(...all) - Math.min(...all);
  }, 0);
}

/** Both wheels after one press: what their adjusters took up. */
export function pressedOnce(a: Axle, pressure: number): { axle: Axle; clicked: number } {
  let clicked = 0;
  const press = (w: WheelBrake): WheelBrake => {
    const r = application(w.rig, w.state, { pressure, turning: 1 });
    clicked += r.clicked;
    return { ...w, state: r.state };
  };
  const axle = { left: press(a.left), right: press(a.right) };
  return { axle, clicked };
}

/** A drum hotter than this is told as too hot, K. */
export const TOO_HOT = 300;

/**
 * How much hotter a dragging drum settles than the air, K: drag × turning speed = cooling × rise
 * (heat balance of a steady drag, W). A force that is left presses alike however the drum grows. Where
 * only want of room presses, the drum eases as it grows, and the rise is found by halving. The wheel
 * stands on the road.
 *
 * @param speed mm/s
 * @returns at most TOO_HOT
 */
export function dragHeat(w: WheelBrake, speed: number): number {
  const { drum, vehicle } = w.rig.brake;
  const { still, perKmh } = drum.cooling;
  const rig = turning(w.rig);
  const over = (rise: number): number => {
    const state = { ...w.state, temperature: w.state.temperature + rise };
    const drag = torqueOf(balance(rig, state, { pressure: 0, turning: 1 }));
    return (drag * (speed / vehicle.tyreRadius)) / (still + perKmh * (speed / KMH)) - rise;
  };
  const { keptPressure, keptCable, lean } = w.state.condition;
  const forced = keptPressure > 0 || keptCable > 0 || lean.front > 0 || lean.rear > 0;
  if (forced || over(1) <= 0) return Math.min(TOO_HOT, Math.max(0, over(0)));
  if (over(TOO_HOT) > 0) return TOO_HOT;
  let [low, high] = [1, TOO_HOT];
  while (high - low > 0.2) {
    const middle = (low + high) / 2;
    if (over(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** How far the parking lever stands off its stop with the hand lever down, mm at the hook. */
export const leverOff = (w: WheelBrake): number => rest(w.rig, w.state).leverAngle * w.rig.hookArm;

/** Gap of the linings' middle at rest, mm; negative when they would stand inside the drum. */
export const restGap = (w: WheelBrake): number => dress(w.rig, onStands(w.state)).restGap;

/** What hands find when they turn the drum and pull at it. */
export const pullDrum = (w: WheelBrake): Removal =>
  removal(w.rig, onStands(w.state), w.held ?? UNHELD);

/** Where a lining touches a drum that goes round. */
export interface Rubbing {
  /** How often a turn the lining touches: 0 clear, 1 once, 2 twice, Infinity all round. */
  readonly times: number;
  /** Least gap in the turn, mm. */
  readonly least: number;
}

const PLACES = 180;

/**
 * Where a lining rubs as the drum goes round, the shoe standing at rest: gap + e·cos(θ − φ) +
 * o·cos 2(θ − φ) for a bore off centre by e and oval by ±o (first and second harmonic of the radius).
 */
export function rubbing(w: WheelBrake, side: Side): Rubbing {
  const state = onStands(w.state);
  const { offCentre, oval } = state.condition;
  const shoe = rest(w.rig, { ...state, condition: { ...state.condition, offCentre: 0, oval: 0 } })
    .shoes[side];
  let least = Number.POSITIVE_INFINITY;
  const touches: boolean[] = [];
  for (let k = 0; k < PLACES; k++) {
    const phi = (2 * PI * k) / PLACES;
    let here = Number.POSITIVE_INFINITY;
    for (let i = 0; i < shoe.gap.length; i++) {
      const at = (shoe.angle[i] as number) - phi;
      const gap = (shoe.gap[i] as number) + offCentre * cos(at) + oval * cos(2 * at);
      if (gap < here) here = gap;
    }
    touches.push(here < 0);
    if (here < least) least = here;
  }
  if (touches.every((t) => t)) return { times: Number.POSITIVE_INFINITY, least };
  const times = touches.filter((t, k) => t && !touches[(k + PLACES - 1) % PLACES]).length;
  return { times, least };
}

/** Least and greatest bore by a two-point gauge, and what a dial on the turning bore swings, mm. */
export function boreCheck(w: WheelBrake): { least: number; greatest: number; dial: number } {
  const { oval, offCentre } = w.state.condition;
  const mean = 2 * w.state.drumRadius;
  const o = Math.abs(oval);
  return { least: mean - 2 * o, greatest: mean + 2 * o, dial: 2 * (o + Math.abs(offCentre)) };
}

/** Common presses and pulls of the checks. */
export const LIGHT = 10 * BAR;
export const FIRM = 40 * BAR;
export const ROLLER = 20 * BAR;
/** N in each cable. */
export const HAND = 300;
/** mm/s. */
export const DRIVE = 50 * KMH;

/** Line pressures and pull of the checks, as the page tells them: bar, bar, bar, N. */
export const CHECKED = {
  light: LIGHT / BAR,
  firm: FIRM / BAR,
  roller: ROLLER / BAR,
  hand: HAND,
} as const;
