import type { Reading } from '../readings/reading.ts';
import { type PedalCurve, pedalParts } from './pedal-curve.ts';

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

/** The travel at the curve's end, part by part; what a scene does not have is left out. */
export function partReadings(c: PedalCurve): Reading[] {
  const p = pedalParts(c);
  const row = (key: Reading['key'], name: string, value: number, formula: string): Reading => ({
    key,
    name,
    symbol: '',
    value,
    unit: 'mm',
    digits: 1,
    formula,
  });
  const has = (value: number, made: Reading): Reading[] => (value > 0 ? [made] : []);
  return [
    row('partFree', 'Free play', p.freePlay, 'i · free play'),
    ...has(p.booster, row('partBooster', 'Play of the booster', p.booster, 'i · play')),
    ...has(p.lost, row('partLost', 'Stroke of the failed circuit', p.lost, 'i · stroke')),
    ...has(
      p.rollBack,
      row('partRollBack', 'Pistons drawn back', p.rollBack, 'i · 2 n A x_seal / A_master'),
    ),
    row('partToDrum', 'This axle’s shoes to the drum', p.toDrum, 'i · V_pistons / A_master'),
    row(
      'partElastic',
      'Give of its shoes and linings',
      p.elastic,
      'i · (V_pistons − V_seated) / A_master',
    ),
    ...has(p.ownLines, row('partLines', 'Give of its lines', p.ownLines, 'i · C_own p / A_master')),
    row('partRest', 'Rest of the circuit', p.rest, 'i · C p / A_master'),
    {
      ...row('partOwn', 'This axle’s part', 100 * p.own, 'own parts / x_pedal'),
      unit: '%',
      digits: 0,
    },
  ];
}
