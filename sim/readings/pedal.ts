import type { Instant } from '../balance/instant.ts';
import type { Brake } from '../brake/types.ts';
import { PI } from '../units/units.ts';
import type { Reading } from './reading.ts';

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

/** Atmospheric pressure, MPa (standard atmosphere). */
const ATMOSPHERE = 0.101325;

/** @param airVolume air in the circuit at atmospheric pressure, mm³ */
export function pedalStack(brake: Brake, i: Instant, airVolume = 0): PedalStack {
  const h = brake.hydraulics;
  const master = (PI / 4) * h.masterBore * h.masterBore;
  const out = (side: 'front' | 'rear'): number => Math.max(0, i.shoes[side].pistonTravel);
  const fluid = brake.cylinder.area * (out('front') + out('rear'));
  const at = (volume: number): number => (h.pedalRatio * volume) / master;
  const freePlay = h.pedalRatio * h.freePlay;
  const gaps = at(fluid * brake.vehicle.brakes);
  const circuit = at(h.circuit * i.pressure);
  const air = at((airVolume * i.pressure) / (ATMOSPHERE + i.pressure));
  return {
    freePlay,
    gaps,
    circuit,
    air,
    total: freePlay + gaps + circuit + air,
    force: (i.pressure * master) / h.pedalRatio,
    fluid,
  };
}

/** Travel left until the cup of the farther piston leaves the bore, mm. */
export function runOutLeft(brake: Brake, i: Instant): number {
  return brake.cylinder.stroke - Math.max(i.shoes.front.pistonTravel, i.shoes.rear.pistonTravel);
}

/** The stack as readings, with the foot's force and the fluid. */
export function pedalReadings(brake: Brake, i: Instant): Reading[] {
  const p = pedalStack(brake, i);
  const at = (
    key: string,
    name: string,
    symbol: string,
    value: number,
    unit: string,
    digits: number,
    means: string,
    formula: string,
  ): Reading => ({ key, name, symbol, value, unit, digits, means, formula });
  return [
    at(
      'pedalTravel',
      'Pedal travel',
      'x_pedal',
      p.total,
      'mm',
      1,
      'How far the pedal goes down: free play, then the gaps, then what the circuit gives.',
      'x_pedal = i · (free play + (V_pistons + C · p) / A_master)',
    ),
    at(
      'pedalFree',
      'of it free play',
      '',
      p.freePlay,
      'mm',
      1,
      'Pedal travel before the master piston moves.',
      'i · free play',
    ),
    at(
      'pedalGaps',
      'of it to close the gaps',
      '',
      p.gaps,
      'mm',
      1,
      'Pedal travel that moves the wheel pistons of both brakes.',
      'i · V_pistons / A_master',
    ),
    at(
      'pedalCircuit',
      'of it give in the circuit',
      '',
      p.circuit,
      'mm',
      1,
      'Pedal travel that goes into hoses and fluid: it grows with the pressure.',
      'i · C · p / A_master',
    ),
    at(
      'pedalForce',
      'Pedal force',
      'F_pedal',
      p.force,
      'N',
      0,
      'Push of the foot for this pressure, without a booster.',
      'F_pedal = p · A_master / i',
    ),
    at(
      'fluid',
      'Fluid taken by this brake',
      'V',
      p.fluid,
      'mm³',
      0,
      'Volume that both pistons of this brake have moved out.',
      'V = A · (x_front + x_rear)',
    ),
    at(
      'runOut',
      'Piston travel left to run-out',
      '',
      runOutLeft(brake, i),
      'mm',
      2,
      'How much farther the farther piston may go before its cup leaves the bore.',
      'stroke − x',
    ),
  ];
}
