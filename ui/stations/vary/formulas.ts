import { type Answer, type Quantity, SET, type VaryPoint } from '../../../sim/index.ts';
import type { Formula, Known } from '../../formula-reader.ts';
import { readTypedFormula } from '../../typed-formula.ts';
import { type OwnFormula, ownKey } from './part.ts';

/** Formulas of one's own, read once their reader is there. */

export interface ReadOwn {
  readonly own: OwnFormula;
  readonly key: string;
  readonly read: Formula;
}

/** What a formula may name: readings by their keys, sizes by where they stand. */
export function knownNames(
  answers: readonly Answer[],
  quantities: readonly Quantity[],
): readonly Known[] {
  const readings = answers.map(({ key, unit }): Known => ({ name: key, key, unit }));
  const taken = new Set(readings.map((k) => k.name));
  const sizes = quantities
    .filter((q) => !taken.has(q.id))
    .map(({ id, unit }): Known => ({ name: id, key: `${SET}${id}`, unit }));
  return [...readings, ...sizes];
}

export const readAll = (
  formulas: readonly OwnFormula[],
  known: readonly Known[],
): readonly ReadOwn[] =>
  formulas.flatMap((own) => {
    const read = readTypedFormula(own.text, known);
    return read ? [{ own, key: ownKey(own.name), read }] : [];
  });

/** Three figures that count, of a value as it is. */
const digitsFor = (value: number): number => {
  const size = Math.abs(value);
  if (!(size > 0) || !Number.isFinite(size)) return 2;
  return Math.max(0, Math.min(6, 2 - Math.floor(Math.log10(size))));
};

/** A formula as an answer. @param value of it as the brake is */
export const asAnswer = ({ own, key, read }: ReadOwn, value: number): Answer => ({
  key,
  name: own.name,
  unit: read.ok ? read.unit : '',
  digits: digitsFor(value),
});

/** Keys that are asked for so that all of these can be told: a formula's are those that it rests on. */
export const keysFor = (keys: readonly string[], own: readonly ReadOwn[]): readonly string[] => [
  ...new Set(
    keys.flatMap((key) => {
      const found = own.find((f) => f.key === key);
      return found ? (found.read.ok ? found.read.uses.map((k) => k.key) : []) : [key];
    }),
  ),
];

/** A point's values of these keys, from those that were asked for. */
export function valuesFor(
  keys: readonly string[],
  own: readonly ReadOwn[],
  asked: readonly string[],
  values: readonly number[],
): readonly number[] {
  const of = (key: string): number => values[asked.indexOf(key)] ?? Number.NaN;
  return keys.map((key) => {
    const found = own.find((f) => f.key === key);
    if (!found) return of(key);
    return found.read.ok ? found.read.worth(found.read.uses.map((k) => of(k.key))) : Number.NaN;
  });
}

export const pointFor = (
  keys: readonly string[],
  own: readonly ReadOwn[],
  asked: readonly string[],
  p: VaryPoint,
): VaryPoint => ({ ...p, values: valuesFor(keys, own, asked, p.values) });
