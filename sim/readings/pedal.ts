import type { Instant } from '../balance/instant.ts';
import { type PedalStack, pedalFrom } from '../brake/pedal.ts';
import type { Brake } from '../brake/types.ts';
import { readingFormulas as formulas, readingNames as names } from '../words/en.ts';
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
      name: names.pedalTravel,
      symbol: 'x_pedal',
      value: p.total,
      unit: 'mm',
      digits: 1,
      formula: formulas.pedal,
    },
    {
      key: 'pedalFree',
      name: names.ofItFreePlay,
      symbol: '',
      value: p.freePlay,
      unit: 'mm',
      digits: 1,
      formula: formulas.freePlay,
    },
    {
      key: 'pedalGaps',
      name: names.ofItGaps,
      symbol: '',
      value: p.gaps,
      unit: 'mm',
      digits: 1,
      formula: 'i · V_pistons / A_master',
    },
    {
      key: 'pedalCircuit',
      name: names.ofItGive,
      symbol: '',
      value: p.circuit,
      unit: 'mm',
      digits: 1,
      formula: 'i · C · p / A_master',
    },
    {
      key: 'pedalForce',
      name: names.pedalForce,
      symbol: 'F_pedal',
      value: p.force,
      unit: 'N',
      digits: 0,
      formula: brake.hydraulics.booster ? formulas.helped : 'F_pedal = p · A_master / i',
    },
    {
      key: 'fluid',
      name: names.fluidTaken,
      symbol: 'V',
      value: p.fluid,
      unit: 'mm³',
      digits: 0,
      formula: 'V = A · (x_front + x_rear)',
    },
    {
      key: 'runOut',
      name: names.travelLeft,
      symbol: '',
      value: runOutLeft(brake, i),
      unit: 'mm',
      digits: 2,
      formula: formulas.stroke,
    },
  ];
}
