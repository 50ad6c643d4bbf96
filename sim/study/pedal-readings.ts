import type { Reading } from '../readings/reading.ts';
import { studyPedalReadings as words } from '../words/en.ts';
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
    row('pedalTouch', words.pedalAtTouch, c.touch?.total, 'mm', words.travelAtTouch),
    row('pedalTouchForce', words.footAtTouch, c.touch?.force, 'N', words.forceAtTouch),
    row('pedalSeated', words.pedalSeated, c.seated?.total, 'mm', words.travelSeated),
    row('pedalSeatedForce', words.footSeated, c.seated?.force, 'N', words.forceSeated),
    row('pedalFloor', words.pedalAtEnd, c.floor, 'mm', words.toEnd),
    row('pedalReserve', words.travelLeft, c.reserve, 'mm', words.reserve),
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
    row('partFree', words.freePlay, p.freePlay, words.freePlayTravel),
    ...has(p.booster, row('partBooster', words.playOfBooster, p.booster, words.playTravel)),
    ...has(p.lost, row('partLost', words.strokeOfFailed, p.lost, words.strokeTravel)),
    ...has(
      p.rollBack,
      row('partRollBack', words.pistonsDrawnBack, p.rollBack, 'i · 2 n A x_seal / A_master'),
    ),
    row('partToDrum', words.shoesToDrum, p.toDrum, 'i · V_pistons / A_master'),
    row('partElastic', words.giveOfShoes, p.elastic, 'i · (V_pistons − V_seated) / A_master'),
    ...has(p.ownLines, row('partLines', words.giveOfLines, p.ownLines, 'i · C_own p / A_master')),
    row('partRest', words.restOfCircuit, p.rest, 'i · C p / A_master'),
    {
      ...row('partOwn', words.partOfAxle, 100 * p.own, words.ownOfAll),
      unit: '%',
      digits: 0,
    },
  ];
}
