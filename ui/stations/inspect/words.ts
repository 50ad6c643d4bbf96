import { KM } from '../../../sim/index.ts';
import type { AxleForecast } from '../../../sim/workshop/index.ts';
import { number } from '../../format.ts';

const what = {
  'front lining': 'leading lining',
  'rear lining': 'trailing lining',
  drum: 'drum',
  teeth: 'teeth',
} as const;

/** Distances to the nearest 100 km: a forecast is an order, not a promise. */
const km = (mm: number): string => number(Math.round(mm / KM / 100) * 100, 0);

/** Distance left with its band, in one sentence; empty without a forecast. */
export function forecastText(f: AxleForecast | null): string {
  if (!f) return '';
  if (f.left <= 0) return `At its limit now: ${what[f.what]}, ${f.wheel} wheel.`;
  const each = f.rate * 1000 * KM;
  return `About ${km(f.left)} km left (${km(f.low)} to ${km(f.high)}) to the limit of the ${what[f.what]}, ${f.wheel} wheel, at ${number(each, 3)} ${f.unit} in 1\u202f000 km; the rate may be half or twice that.`;
}
