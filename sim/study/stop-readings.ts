import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { roadPower, torqueFor } from '../brake/stopping.ts';
import { footFor, lineAt, sharesOtherwise } from '../brake/upstream.ts';
import type { Reading } from '../readings/reading.ts';
import { BAR } from '../units/units.ts';
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
      name: 'Stopping distance',
      symbol: 'd',
      value: s.distance * MILLI,
      unit: 'm',
      digits: 1,
      formula: 'd = v² / 2 a',
    },
    {
      key: 'stopDeceleration',
      name: 'Mean deceleration',
      symbol: 'a',
      value: s.deceleration * MILLI,
      unit: 'm/s²',
      digits: 2,
      formula: 'a = n T / (r m share)',
    },
    {
      key: 'stopTime',
      name: 'Time of the stop',
      symbol: 't',
      value: s.time,
      unit: 's',
      digits: 1,
      formula: 't = v / a',
    },
    {
      key: 'stopGrip',
      name: 'Grip that the tyres need',
      symbol: 'μ_tyre',
      value: s.grip,
      unit: '',
      digits: 2,
      formula: 'μ_tyre = a / g',
    },
    {
      key: 'stopForce',
      name: 'Braking of this axle at the road',
      symbol: 'F',
      value: s.force,
      unit: 'N',
      digits: 0,
      formula: 'F = n T / r',
    },
    {
      key: 'stopShare',
      name: 'Share of this axle',
      symbol: 'share',
      value: 100 * s.share,
      unit: '%',
      digits: 0,
      formula: 'F / (m a)',
    },
    {
      key: 'stopEnergy',
      name: 'Energy of the stop in this brake',
      symbol: 'E',
      value: s.energy * MILLI * MILLI,
      unit: 'kJ',
      digits: 1,
      formula: 'E = ½ m v² share / n',
    },
    {
      key: 'stopRise',
      name: 'Drum warmer by it',
      symbol: 'Δϑ',
      value: s.rise,
      unit: 'K',
      digits: 1,
      formula: 'Δϑ = E / C',
    },
    {
      key: 'stopFaceRise',
      name: 'Drum’s face warmer at its hottest',
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
      name: 'Torque needed of each brake',
      symbol: 'T',
      value: torque * MILLI,
      unit: 'N·m',
      digits: 1,
      formula: 'T = m a share r / n',
    },
    {
      key: 'stopPressure',
      name: 'Line pressure needed',
      symbol: 'p',
      value: lineAt(brake, master) / BAR,
      unit: 'bar',
      digits: 1,
      formula: 'T(p) = T',
    },
    {
      key: 'stopPedal',
      name: 'Pedal force needed',
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
      name: 'Drag of the released brake',
      symbol: 'T_0',
      value: d.torque * MILLI,
      unit: 'N·m',
      digits: 1,
      formula: 'T_0 = R · Σ μ N',
    },
    {
      key: 'dragPower',
      name: 'Its power at that speed',
      symbol: 'P',
      value: d.power * MILLI,
      unit: 'W',
      digits: 0,
      formula: 'P = T_0 v / r',
    },
    {
      key: 'dragForce',
      name: 'More rolling resistance at the tyre',
      symbol: 'F_0',
      value: d.force,
      unit: 'N',
      digits: 1,
      formula: 'F_0 = T_0 / r',
    },
    {
      key: 'dragShare',
      name: 'Of what the level road asks for',
      symbol: 'P / P_road',
      value: (100 * vehicle.brakes * d.power) / roadPower(vehicle, speed),
      unit: '%',
      digits: 0,
      formula: 'n T_0 v / r over (c m g + k v²) v',
    },
    {
      key: 'dragSettles',
      name: 'Drum settles at',
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
