import { type ForecastLine, KM } from '../index.ts';
import { workshopForecastText as words } from '../words/en.ts';
import { fixed } from './figure.ts';

const limits: Readonly<Record<ForecastLine['what'], (limit: number) => string>> = {
  'front lining': (limit) => words.limitOfMm(limit),
  'rear lining': (limit) => words.limitOfMm(limit),
  drum: (limit) => words.largestDiameterOfMm(limit),
  teeth: (limit) => words.lastOf(limit),
};

const one: Readonly<Record<ForecastLine['unit'], string>> = words.one;
const many: Readonly<Record<ForecastLine['unit'], string>> = words.many;

/** What a line of a forecast rests on, one sentence. */
export function restsOn(line: ForecastLine): string {
  const { lost, distance, margin, unit } = line;
  const size = (value: number): string => fixed(value, unit === 'mm' ? 2 : 0);
  const each = line.rate * 1000 * KM;
  const to = limits[line.what](line.limit);
  const of = (value: number): string => `${size(value)} ${(value === 1 ? one : many)[unit]}`;
  const left = margin > 0 ? words.leftToThe(of(margin), to) : words.noneLeftToThe(to);
  return words.lostInKmIsIn(
    of(lost),
    (distance / KM).toFixed(0),
    fixed(each, each < 0.1 ? 3 : 2),
    unit,
    left,
    margin > 0 ? words.theRateMayBeHalf : '',
  );
}
