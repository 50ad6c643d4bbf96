import { PI } from '../units/units.ts';
import type { Brake, Hydraulics } from './types.ts';

/**
 * Pedal travel told as a stack, mm at the pedal.
 *
 * Volumes: each piston displaces bore area × travel; the rest of the circuit gives by its stiffness;
 * air shrinks by Boyle's law, V = V0·p0/(p0 + p). Their sum over the master's area is its stroke,
 * times the pedal ratio its travel (Pascal's principle and the lever).
 */
export interface PedalStack {
  readonly freePlay: number;
  readonly gaps: number;
  readonly circuit: number;
  readonly air: number;
  readonly total: number;
  /** Force of the foot, N: pressure × master area / ratio. */
  readonly force: number;
  /** Fluid taken by one brake, mm³. */
  readonly fluid: number;
}

/** Pressure that the foot makes, MPa: force × ratio / master's area (Pascal's principle and the lever). */
export const pressureAt = ({ hydraulics: h }: Brake, force: number): number =>
  (force * h.pedalRatio) / masterArea(h);

/** Force of the foot for a pressure, N. */
export const pedalForceAt = ({ hydraulics: h }: Brake, pressure: number): number =>
  (pressure * masterArea(h)) / h.pedalRatio;

/** Travel of the pedal with the master's piston at the end of its stroke, mm. */
export const pedalFloor = ({ hydraulics: h }: Brake): number =>
  h.pedalRatio * (h.freePlay + h.masterStroke);

const masterArea = (h: Hydraulics): number => (PI / 4) * h.masterBore * h.masterBore;

/** Atmospheric pressure, MPa (standard atmosphere). */
const ATMOSPHERE = 0.101325;

/**
 * The stack by how far both pistons of each brake stand out, mm.
 *
 * @param airVolume air in the circuit at atmospheric pressure, mm³
 */
export function pedalFrom(
  brake: Brake,
  front: number,
  rear: number,
  pressure: number,
  airVolume = 0,
): PedalStack {
  const h = brake.hydraulics;
  const master = masterArea(h);
  const fluid = brake.cylinder.area * (Math.max(0, front) + Math.max(0, rear));
  const at = (volume: number): number => (h.pedalRatio * volume) / master;
  const freePlay = h.pedalRatio * h.freePlay;
  const gaps = at(fluid * brake.vehicle.brakes);
  const circuit = at(h.circuit * pressure);
  const air = at((airVolume * pressure) / (ATMOSPHERE + pressure));
  return {
    freePlay,
    gaps,
    circuit,
    air,
    total: freePlay + gaps + circuit + air,
    force: pedalForceAt(brake, pressure),
    fluid,
  };
}
