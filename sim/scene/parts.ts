import * as v from 'valibot';
import { sceneParts as texts } from '../words/en.ts';
import { nearest } from './nearest.ts';

/** Units of a scene file; each number is told with one, in its description. */
export type Unit =
  | 'mm'
  | 'µm'
  | 'mm/1000 km'
  | 'degrees'
  | 'N'
  | 'N/mm'
  | 'mm/N'
  | 'MPa'
  | 'bar'
  | 'kg'
  | 'kg·mm²'
  | 'J'
  | 'J/K'
  | 'W/K'
  | 'W/K for each km/h'
  | '1/K'
  | 'W/(m·K)'
  | 'kg/m³'
  | 'J/(kg·K)'
  | 'mm²/N'
  | 'mm³/MPa'
  | 'N/(m/s)²'
  | '°C'
  | 'km/h'
  | 'km'
  | '1/km'
  | 'm/s²'
  | '%'
  | 'plain number';

const told = (unit: Unit): string => (unit === 'plain number' ? texts.plain : unit);

/** Kinds of value in a scene file, each with its unit told in the description. */
export const num = (about: string, unit: Unit, min = -1e9, max = 1e9) =>
  v.pipe(
    v.number(texts.aNumber),
    v.finite(texts.aFiniteNumber),
    v.minValue(min, texts.atLeast(min)),
    v.maxValue(max, texts.atMost(max)),
    v.description(`${about}, ${told(unit)}`),
  );
export const size = (about: string, unit: Unit, max = 1000) =>
  v.pipe(
    v.number(texts.aNumber),
    v.finite(texts.aFiniteNumber),
    v.gtValue(0, texts.moreThan0),
    v.maxValue(max, texts.atMost(max)),
    v.description(`${about}, ${told(unit)}`),
  );
export const count = (about: string, min: number, max: number) =>
  v.pipe(
    v.number(texts.aNumber),
    v.integer(texts.aWholeNumber),
    v.minValue(min, texts.atLeast(min)),
    v.maxValue(max, texts.atMost(max)),
    v.description(`${about}, ${texts.whole}`),
  );
/** Letters of a text of some sentences. */
export const LONG = 2000;
export const words = (about: string, most = 120) =>
  v.pipe(
    v.string(texts.text),
    v.nonEmpty(texts.textThatIsNotEmpty),
    v.maxLength(most, texts.atMostLetters(most)),
    v.description(about),
  );
export const choice = <const T extends readonly string[]>(about: string, of: T) =>
  v.pipe(v.picklist(of, texts.oneOf(of)), v.description(about));
export const point = (about: string) =>
  v.pipe(
    v.strictTuple([num('x', 'mm', -1000, 1000), num('y', 'mm', -1000, 1000)]),
    v.description(`${about}: [x, y], mm`),
  );

/** What is said of a key that is missing, or that the format does not have: the nearest that it has. */
export const keysOf =
  (known: readonly string[]) =>
  (issue: v.StrictObjectIssue): string => {
    if (issue.expected !== 'never') {
      return issue.expected === 'Object' ? texts.anObject : texts.thisKeyIsNeeded;
    }
    const meant = nearest(String(issue.input), known);
    return meant ? texts.onlyTheKeysOfThe(meant) : texts.onlyTheKeysOfThe2(known.join(', '));
  };

/** A group of keys; an unknown one among them is a finding. */
export const part = <const T extends v.ObjectEntries>(about: string, entries: T) =>
  v.pipe(v.strictObject(entries, keysOf(Object.keys(entries))), v.description(about));

/** Every list has a bound: a page that draws twenty thousand holes stands still. */
export const list = <const T extends v.GenericSchema>(
  about: string,
  item: T,
  most: number,
  least = 0,
) =>
  v.pipe(
    v.array(item, texts.aList),
    v.minLength(least, texts.atLeast2(least)),
    v.maxLength(most, texts.atMost2(most)),
    v.description(about),
  );
