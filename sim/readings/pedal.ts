import type { Instant } from '../balance/instant.ts';
import { type PedalStack, pedalFrom } from '../brake/pedal.ts';
import type { Brake } from '../brake/types.ts';
import type { Reading } from './reading.ts';

/** @param airVolume air in the circuit at atmospheric pressure, mm³ */
export function pedalStack(brake: Brake, i: Instant, airVolume = 0): PedalStack {
  const { front, rear } = i.shoes;
  // The parking lever alone moves no foot: fluid follows by itself.
  const alone = i.cableForce > 0 && !(i.pressure > 0);
  const [f, r] = alone ? [0, 0] : [front.pistonTravel, rear.pistonTravel];
  return pedalFrom(brake, f, r, i.pressure, airVolume);
}

/** Travel left until the cup of the farther piston leaves the bore, mm. */
export function runOutLeft(brake: Brake, i: Instant): number {
  return brake.cylinder.stroke - Math.max(i.shoes.front.pistonTravel, i.shoes.rear.pistonTravel);
}

/** The stack as readings, with the foot's force and the fluid. */
export function pedalReadings(brake: Brake, i: Instant): Reading[] {
  const p = pedalStack(brake, i);
  return [
    {
      key: 'pedalTravel',
      name: 'Pedal travel',
      symbol: 'x_pedal',
      value: p.total,
      unit: 'mm',
      digits: 1,
      formula: 'x_pedal = i · (free play + (V_pistons + C · p) / A_master)',
    },
    {
      key: 'pedalFree',
      name: 'of it free play',
      symbol: '',
      value: p.freePlay,
      unit: 'mm',
      digits: 1,
      formula: 'i · free play',
    },
    {
      key: 'pedalGaps',
      name: 'of it to close the gaps',
      symbol: '',
      value: p.gaps,
      unit: 'mm',
      digits: 1,
      formula: 'i · V_pistons / A_master',
    },
    {
      key: 'pedalCircuit',
      name: 'of it give in the circuit',
      symbol: '',
      value: p.circuit,
      unit: 'mm',
      digits: 1,
      formula: 'i · C · p / A_master',
    },
    {
      key: 'pedalForce',
      name: 'Pedal force',
      symbol: 'F_pedal',
      value: p.force,
      unit: 'N',
      digits: 0,
      formula: brake.hydraulics.booster
        ? 'F_pedal = (p · A_master − help) / i'
        : 'F_pedal = p · A_master / i',
    },
    {
      key: 'fluid',
      name: 'Fluid taken by this brake',
      symbol: 'V',
      value: p.fluid,
      unit: 'mm³',
      digits: 0,
      formula: 'V = A · (x_front + x_rear)',
    },
    {
      key: 'runOut',
      name: 'Piston travel left to run-out',
      symbol: '',
      value: runOutLeft(brake, i),
      unit: 'mm',
      digits: 2,
      formula: 'stroke − x',
    },
  ];
}
