import { PI } from '../units/units.ts';
import type { Brake, Hydraulics, Vehicle } from './types.ts';

/**
 * What stands between the foot and this axle's wheel cylinders. All of it may be left out of a scene: then
 * pedal and line hang together by the pedal's ratio and the master cylinder's area alone (Pascal's principle
 * and the lever).
 */

/** Area of the master cylinder, mm². */
export const masterArea = (h: Hydraulics): number => (PI / 4) * h.masterBore * h.masterBore;

/**
 * Pressure of the master cylinder, MPa, for a force of the foot, N. A booster gives F = gain·F_in up to its
 * knee, and beyond F = F_in + (gain − 1)·F_knee, F_in = foot·ratio (boost and its knee; R. Limpert, Brake
 * Design and Safety, ch. 5, from memory).
 */
export function masterAt({ hydraulics: h }: Brake, foot: number): number {
  const { booster } = h;
  const help = booster ? (booster.gain - 1) * Math.min(foot, booster.knee) : 0;
  return ((foot + help) * h.pedalRatio) / masterArea(h);
}

/** Force of the foot for a pressure of the master cylinder, N: the same turned round. */
export function footFor({ hydraulics: h }: Brake, master: number): number {
  const rod = (master * masterArea(h)) / h.pedalRatio;
  const { booster } = h;
  if (!booster) return rod;
  return rod <= booster.gain * booster.knee
    ? rod / booster.gain
    : rod - (booster.gain - 1) * booster.knee;
}

/**
 * Pressure in this axle's wheel cylinders, MPa, while the foot pushes: p up to the valve's knee, beyond it
 * p_knee + slope·(p − p_knee) (proportioning valve; R. Limpert, Brake Design and Safety, ch. 7, from memory).
 * None where this axle's circuit has failed.
 */
export function lineAt({ hydraulics: h }: Brake, master: number): number {
  if (ownFailed(h)) return 0;
  const { rearValve: valve } = h;
  if (!valve || master <= valve.knee) return master;
  return valve.knee + valve.slope * (master - valve.knee);
}

/** Pressure of the master cylinder for one in this axle's line: the same turned round. */
export function masterFor({ hydraulics: h }: Brake, line: number): number {
  const { rearValve: valve } = h;
  if (!valve || line <= valve.knee) return line;
  return valve.knee + (line - valve.knee) / valve.slope;
}

/** With one brake a circuit it is told of the brake whose circuit holds. */
const ownFailed = ({ circuits }: Hydraulics): boolean =>
  circuits?.split === 'axles' && circuits.failed === 'this';

/**
 * What stands in the wheel cylinders, MPa: what is asked for where there is a circuit to bring it, and at
 * least what stays in the line. A residual valve keeps its pressure after release (0.5 to 1.2 bar in drum
 * circuits, from memory): too little for the springs, enough for the cups' lips.
 *
 * @param kept what is out of order keeps in the line, MPa
 */
export const wheelPressure = (h: Hydraulics, kept: number, asked: number): number =>
  Math.max(ownFailed(h) ? 0 : asked, kept, ownFailed(h) ? 0 : h.residual);

/** Share of the brakes of this axle, and of the other, that are still pressed. */
export function working({ circuits }: Hydraulics): {
  readonly own: number;
  readonly other: number;
} {
  if (!circuits || circuits.failed === 'none') return { own: 1, other: 1 };
  if (circuits.split === 'diagonal') return { own: 0.5, other: 0.5 };
  return circuits.failed === 'this' ? { own: 0, other: 1 } : { own: 1, other: 0 };
}

/** Stroke that the master cylinder loses to a circuit that has failed, mm. */
export function lostStroke({ circuits, masterStroke }: Hydraulics): number {
  if (!circuits || circuits.failed === 'none') return 0;
  return circuits.failed === 'this' ? circuits.stroke : masterStroke - circuits.stroke;
}

/** Is anything in the way of the foot's pressure that shares braking out otherwise? */
export const sharesOtherwise = (h: Hydraulics): boolean =>
  h.rearValve !== null || (h.circuits !== null && h.circuits.failed !== 'none');

/**
 * Braking of the other axle at the road, N. It is taken to give what the vehicle's share leaves it, as
 * this axle gives with the master cylinder's own pressure.
 *
 * @param unheld braking of this axle with that pressure, no valve and nothing failed, N
 */
export const otherForce = (v: Vehicle, h: Hydraulics, unheld: number): number =>
  ((1 - v.share) / v.share) * unheld * working(h).other;
