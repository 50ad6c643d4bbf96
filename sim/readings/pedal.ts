import type { Instant } from '../balance/instant.ts';
import { type PedalStack, pedalFrom } from '../brake/pedal.ts';
import type { Brake } from '../brake/types.ts';
import { type Reading, row } from './reading.ts';

/** @param airVolume air in the circuit at atmospheric pressure, mm³ */
export function pedalStack(brake: Brake, i: Instant, airVolume = 0): PedalStack {
  const { front, rear } = i.shoes;
  return pedalFrom(brake, front.pistonTravel, rear.pistonTravel, i.pressure, airVolume);
}

/** Travel left until the cup of the farther piston leaves the bore, mm. */
export function runOutLeft(brake: Brake, i: Instant): number {
  return brake.cylinder.stroke - Math.max(i.shoes.front.pistonTravel, i.shoes.rear.pistonTravel);
}

/** The stack as readings, with the foot's force and the fluid. */
export function pedalReadings(brake: Brake, i: Instant): Reading[] {
  const p = pedalStack(brake, i);
  return [
    row(
      'pedalTravel',
      'Pedal travel',
      'x_pedal',
      p.total,
      'mm',
      1,
      'x_pedal = i · (free play + (V_pistons + C · p) / A_master)',
    ),
    row('pedalFree', 'of it free play', '', p.freePlay, 'mm', 1, 'i · free play'),
    row('pedalGaps', 'of it to close the gaps', '', p.gaps, 'mm', 1, 'i · V_pistons / A_master'),
    row(
      'pedalCircuit',
      'of it give in the circuit',
      '',
      p.circuit,
      'mm',
      1,
      'i · C · p / A_master',
    ),
    row('pedalForce', 'Pedal force', 'F_pedal', p.force, 'N', 0, 'F_pedal = p · A_master / i'),
    row('fluid', 'Fluid taken by this brake', 'V', p.fluid, 'mm³', 0, 'V = A · (x_front + x_rear)'),
    row('runOut', 'Piston travel left to run-out', '', runOutLeft(brake, i), 'mm', 2, 'stroke − x'),
  ];
}
