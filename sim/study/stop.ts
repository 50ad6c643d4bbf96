import { balance } from '../balance/balance.ts';
import { type Instant, isTold } from '../balance/instant.ts';
import { createRig, type Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { axleForce, decelerationBy, meanSpeed, stoppingDistance } from '../brake/stopping.ts';
import { lineAt, otherForce, sharesOtherwise, working } from '../brake/upstream.ts';
import { rootBetween, type Until } from '../math/root.ts';
import { dragOf } from '../readings/factors.ts';
import { GRAVITY, PI } from '../units/units.ts';
import { stopEnergyOf } from '../wear/heat.ts';
import { flashRise } from '../wear/interface.ts';

/** One stop from a speed: what each brake, this axle and the vehicle do. NaN where no force can be told. */
export interface Stop {
  /** Speed before it, mm/s. */
  readonly speed: number;
  /** In this axle's line, MPa. */
  readonly pressure: number;
  /** Of each brake against the turning, N·mm. */
  readonly torque: number;
  /** Of this axle at the road, N, and its share of all braking. */
  readonly force: number;
  readonly share: number;
  /** Of the vehicle, mm/s². */
  readonly deceleration: number;
  /** mm; Infinity without any braking. */
  readonly distance: number;
  /** s */
  readonly time: number;
  /** Taken up by one brake, N·mm. */
  readonly energy: number;
  /** Of its drum by this stop, K. */
  readonly rise: number;
  /** Of its rubbed face, at the hottest, K; NaN where the stop is too long for that to be told. */
  readonly faceRise: number;
  /** Friction that the tyres need where each axle carries load as it brakes: deceleration over gravity. */
  readonly grip: number;
}

/** Which way the vehicle goes. */
type Way = 1 | -1;

/** Places in a turn over which a drum that is not true is averaged: its harmonics are the first and second. */
const AROUND = 8;

const isMany = (s: BrakeState | readonly BrakeState[]): s is readonly BrakeState[] =>
  Array.isArray(s);

/**
 * Torque against the turning of a pressed brake, over one turn of its drum, N·mm; NaN where none can be told.
 *
 * @param state of several brakes of the axle: their mean
 * @param speed of the vehicle before the stop, mm/s, for friction that hangs on it
 */
export function brakingTorque(
  rig: Rig,
  state: BrakeState | readonly BrakeState[],
  pressure: number,
  way: Way,
  speed: number,
): number {
  if (isMany(state)) {
    const each = state.map((one) => brakingTorque(rig, one, pressure, way, speed));
    return each.reduce((sum, torque) => sum + torque, 0) / each.length;
  }
  const { offCentre, oval } = state.condition;
  const places = offCentre === 0 && oval === 0 ? 1 : AROUND;
  const of = (i: Instant): number =>
    isTold(i) ? dragOf(i, 'front') + dragOf(i, 'rear') : Number.NaN;
  let sum = 0;
  for (let k = 0; k < places; k++) {
    const drumAngle = (2 * PI * k) / places;
    sum += of(balance(rig, state, { pressure, turning: way, drumAngle, speed: meanSpeed(speed) }));
  }
  return sum / places;
}

/** The same brake with both its circuits sound: what this axle would give. */
const sound = (rig: Rig): Rig =>
  createRig({ ...rig.brake, hydraulics: { ...rig.brake.hydraulics, circuits: null } }, rig.options);

/**
 * A stop at a pressure of the master cylinder that stays. The torque is that of the drum as warm as it is,
 * held through the whole stop: what it fades by in one stop is left out. Energy and rise: wear/heat.ts. The
 * tyres are not asked: whether they grip so is for who reads it, by `grip`.
 *
 * Where a valve holds this axle's pressure back, or a circuit has failed, the other axle is taken to give
 * what the share leaves it by the master cylinder's own pressure (brake/upstream.ts), and each brake that
 * still works takes up T·d/r.
 */
export function stopAt(
  rig: Rig,
  state: BrakeState | readonly BrakeState[],
  speed: number,
  pressure: number,
  way: Way = 1,
): Stop {
  const { vehicle, hydraulics, drum } = rig.brake;
  const line = lineAt(rig.brake, pressure);
  const torque = brakingTorque(rig, state, line, way, speed);
  const force = axleForce(vehicle, torque) * working(hydraulics).own;
  const as = (deceleration: number, energy: number, grip: number): Stop => ({
    speed,
    pressure: line,
    torque,
    force,
    share: force / (vehicle.mass * deceleration),
    deceleration,
    distance: stoppingDistance(speed, deceleration),
    time: speed / deceleration,
    energy,
    rise: energy / drum.heatCapacity,
    faceRise: flashRise(rig.brake, { energy, time: speed / deceleration }),
    grip,
  });
  if (!sharesOtherwise(hydraulics)) {
    const deceleration = decelerationBy(vehicle, torque);
    return {
      ...as(deceleration, stopEnergyOf(rig.brake, speed), deceleration / GRAVITY),
      share: vehicle.share,
    };
  }
  const whole = line === pressure ? torque : brakingTorque(sound(rig), state, pressure, way, speed);
  const other = otherForce(vehicle, hydraulics, axleForce(vehicle, whole));
  const deceleration = (force + other) / vehicle.mass;
  const energy = (torque * stoppingDistance(speed, deceleration)) / vehicle.tyreRadius;
  const { share } = vehicle;
  const grip = Math.max(force / share, other / (1 - share)) / (vehicle.mass * GRAVITY);
  return as(deceleration, energy, grip);
}

/** Highest pressure that is looked for, MPa: twice what any foot makes. */
const MOST = 20;

/** Pressures, MPa, that are alike, and decelerations, mm/s². Halving, since a pressure within the springs' makes none. */
const ALIKE: Until = {
  near: 1e-6,
  apart: (a, b) => Math.abs(b - a) <= 1e-9,
  trials: 60,
  halving: true,
};

/**
 * Pressure of the master cylinder at which the vehicle slows so, MPa.
 *
 * @param deceleration mm/s²
 * @param speed before the stop, mm/s
 * @returns NaN where 200 bar do not, or no force can be told
 */
export function pressureToSlow(
  rig: Rig,
  state: BrakeState | readonly BrakeState[],
  deceleration: number,
  speed: number,
  way: Way = 1,
): number {
  const over = (pressure: number): number =>
    stopAt(rig, state, speed, pressure, way).deceleration - deceleration;
  const little = over(0);
  if (little >= 0) return 0;
  const much = over(MOST);
  if (!(much >= 0)) return Number.NaN;
  return rootBetween(over, [0, little], [MOST, much], ALIKE)[0];
}
