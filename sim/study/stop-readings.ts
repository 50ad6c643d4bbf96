import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { roadPower, torqueFor } from '../brake/stopping.ts';
import { footFor, lineAt, sharesOtherwise } from '../brake/upstream.ts';
import type { Reading } from '../readings/reading.ts';
import { BAR } from '../units/units.ts';
import { studyNames as names, studyStopReadings as words } from '../words/en.ts';
import { dragHeat } from './checks.ts';
import { roadDrag } from './road-drag.ts';
import { pressureToSlow, stopAt } from './stop.ts';

/** N·mm to N·m, J and, of a second, W; mm to m. */
const MILLI = 1e-3;

/**
 * Readings of one stop from a speed (mm/s) at a pressure of the master cylinder (MPa).
 *
 * @param way the vehicle goes
 */
export function stopReadings(
  rig: Rig,
  state: BrakeState | readonly BrakeState[],
  speed: number,
  pressure: number,
  way: 1 | -1 = 1,
): Reading[] {
  const s = stopAt(rig, state, speed, pressure, way);
  return [
    {
      key: 'stopDistance',
      name: names.stoppingDistance,
      symbol: 'd',
      value: s.distance * MILLI,
      unit: 'm',
      digits: 1,
      formula: 'd = v² / 2 a',
    },
    {
      key: 'stopDeceleration',
      name: names.meanDeceleration,
      symbol: 'a',
      value: s.deceleration * MILLI,
      unit: 'm/s²',
      digits: 2,
      formula: words.deceleration,
    },
    {
      key: 'stopTime',
      name: names.timeOfStop,
      symbol: 't',
      value: s.time,
      unit: 's',
      digits: 1,
      formula: 't = v / a',
    },
    {
      key: 'stopGrip',
      name: names.gripNeeded,
      symbol: 'μ_tyre',
      value: s.grip,
      unit: '',
      digits: 2,
      formula: 'μ_tyre = a / g',
    },
    {
      key: 'stopForce',
      name: names.brakingOfAxle,
      symbol: 'F',
      value: s.force,
      unit: 'N',
      digits: 0,
      formula: 'F = n T / r',
    },
    {
      key: 'stopShare',
      name: names.shareOfAxle,
      symbol: words.share,
      value: 100 * s.share,
      unit: '%',
      digits: 0,
      formula: 'F / (m a)',
    },
    {
      key: 'stopEnergy',
      name: names.energyOfStop,
      symbol: 'E',
      value: s.energy * MILLI * MILLI,
      unit: 'kJ',
      digits: 1,
      formula: words.energy,
    },
    {
      key: 'stopRise',
      name: names.drumWarmer,
      symbol: 'Δϑ',
      value: s.rise,
      unit: 'K',
      digits: 1,
      formula: 'Δϑ = E / C',
    },
    {
      key: 'stopFaceRise',
      name: names.faceWarmer,
      symbol: 'Δϑ_f',
      value: s.faceRise,
      unit: 'K',
      digits: 1,
      formula: 'Δϑ_f = 0.532 · γ · q_0 · √t / √(k · ρ · c), q_0 = 2 E / (t · 2 π R b)',
    },
  ];
}

/** What a wanted deceleration, mm/s², from a speed, mm/s, asks of the brake. */
export function slowingReadings(
  rig: Rig,
  state: BrakeState | readonly BrakeState[],
  deceleration: number,
  speed: number,
  way: 1 | -1 = 1,
): Reading[] {
  const { brake } = rig;
  const { vehicle, hydraulics } = brake;
  const master = pressureToSlow(rig, state, deceleration, speed, way);
  const torque = sharesOtherwise(hydraulics)
    ? stopAt(rig, state, speed, master, way).torque
    : torqueFor(vehicle, deceleration);
  return [
    {
      key: 'stopTorque',
      name: names.torqueNeeded,
      symbol: 'T',
      value: torque * MILLI,
      unit: 'N·m',
      digits: 1,
      formula: words.torque,
    },
    {
      key: 'stopPressure',
      name: names.pressureNeeded,
      symbol: 'p',
      value: lineAt(brake, master) / BAR,
      unit: 'bar',
      digits: 1,
      formula: 'T(p) = T',
    },
    {
      key: 'stopPedal',
      name: names.pedalForceNeeded,
      symbol: 'F_pedal',
      value: footFor(brake, master),
      unit: 'N',
      digits: 0,
      formula: 'F_pedal = p · A_master / i',
    },
  ];
}

/** What the released brake costs at a road speed, mm/s. */
export function dragReadings(rig: Rig, state: BrakeState, speed: number): Reading[] {
  const { vehicle } = rig.brake;
  const d = roadDrag(rig, state, speed);
  return [
    {
      key: 'dragTorque',
      name: names.dragReleased,
      symbol: 'T_0',
      value: d.torque * MILLI,
      unit: 'N·m',
      digits: 1,
      formula: 'T_0 = R · Σ μ N',
    },
    {
      key: 'dragPower',
      name: names.itsPower,
      symbol: 'P',
      value: d.power * MILLI,
      unit: 'W',
      digits: 0,
      formula: 'P = T_0 v / r',
    },
    {
      key: 'dragForce',
      name: names.moreRolling,
      symbol: 'F_0',
      value: d.force,
      unit: 'N',
      digits: 1,
      formula: 'F_0 = T_0 / r',
    },
    {
      key: 'dragShare',
      name: names.ofLevelRoad,
      symbol: 'P / P_road',
      value: (100 * vehicle.brakes * d.power) / roadPower(vehicle, speed),
      unit: '%',
      digits: 0,
      formula: words.ofLevelRoad,
    },
    {
      key: 'dragSettles',
      name: names.drumSettles,
      symbol: 'ϑ',
      value: Number.isFinite(d.power)
        ? state.temperature + dragHeat({ rig, state }, speed)
        : d.power,
      unit: '°C',
      digits: 0,
      formula: 'P(ϑ) = G (ϑ − ϑ_air)',
    },
  ];
}
