import { KM } from '../../../sim/index.ts';
import { inspectWords as words } from '../../../sim/words/en.ts';
import type { AxleForecast } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';

const what = {
  'front lining': words.leadingLining,
  'rear lining': words.trailingLining,
  drum: 'drum',
  teeth: 'teeth',
} as const;

/** Distances to the nearest 100 km: a forecast is an order, not a promise. */
const km = (mm: number): string => number(Math.round(mm / KM / 100) * 100, 0);

/** Distance left with its band, in one sentence; empty without a forecast. */
export function forecastText(f: AxleForecast | null): string {
  if (!f) return '';
  if (f.left <= 0) return words.atItsLimitNowWheel(what[f.what], f.wheel);
  const each = f.rate * 1000 * KM;
  return words.aboutKmLeftToTo(
    km(f.left),
    km(f.low),
    km(f.high),
    what[f.what],
    f.wheel,
    number(each, 3),
    f.unit,
  );
}
