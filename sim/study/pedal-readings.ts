import type { Reading } from '../readings/reading.ts';
import type { PedalCurve } from './pedal-curve.ts';

/** Readings of a pedal that is pushed down slowly. */
export function curveReadings(c: PedalCurve): Reading[] {
  const row = (
    key: Reading['key'],
    name: string,
    value: number | undefined,
    unit: 'mm' | 'N',
    formula: string,
  ): Reading => ({
    key,
    name,
    symbol: '',
    value: value ?? Number.NaN,
    unit,
    digits: unit === 'mm' ? 1 : 0,
    formula,
  });
  return [
    row('pedalTouch', 'Pedal at the first touch', c.touch?.total, 'mm', 'x_pedal at N > 0'),
    row('pedalTouchForce', 'Foot at the first touch', c.touch?.force, 'N', 'F_pedal at N > 0'),
    row(
      'pedalSeated',
      'Pedal with both linings on the drum',
      c.seated?.total,
      'mm',
      'x_pedal at g = 0',
    ),
    row(
      'pedalSeatedForce',
      'Foot with both linings on the drum',
      c.seated?.force,
      'N',
      'F_pedal at g = 0',
    ),
    row(
      'pedalFloor',
      'Pedal with the master cylinder at its end',
      c.floor,
      'mm',
      'i · (free play + stroke)',
    ),
    row('pedalReserve', 'Pedal travel left to there', c.reserve, 'mm', 'floor − x_pedal'),
  ];
}
