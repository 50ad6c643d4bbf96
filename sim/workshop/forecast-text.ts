import { type ForecastLine, KM } from '../index.ts';

const limits: Readonly<Record<ForecastLine['what'], (limit: number) => string>> = {
  'front lining': (limit) => `limit of ${limit} mm`,
  'rear lining': (limit) => `limit of ${limit} mm`,
  drum: (limit) => `largest diameter of ${limit} mm`,
  teeth: (limit) => `last of ${limit}`,
};

const ONE: Readonly<Record<ForecastLine['unit'], string>> = {
  mm: 'mm',
  teeth: 'tooth',
  steps: 'step',
};

/** What a line of a forecast rests on, one sentence. */
export function restsOn(line: ForecastLine): string {
  const { lost, distance, margin, unit } = line;
  const size = (value: number): string => value.toFixed(unit === 'mm' ? 2 : 0);
  const each = line.rate * 1000 * KM;
  const to = limits[line.what](line.limit);
  const of = (value: number): string => `${size(value)} ${value === 1 ? ONE[unit] : unit}`;
  const left = margin > 0 ? `${of(margin)} left to the ${to}` : `none left to the ${to}`;
  return `${of(lost)} lost in ${(distance / KM).toFixed(0)} km is ${each.toFixed(each < 0.1 ? 3 : 2)} ${unit} in 1000 km; ${left}${margin > 0 ? '; the rate may be half or twice that' : ''}.`;
}
