import { language } from '../../sim/words/en.ts';
import { faultNames, isFault } from '../../sim/workshop/index.ts';
import { brakeOf } from './derive.ts';
import type { Moment } from './moment.ts';
import { sceneName } from './scene-names.ts';

/** The brake on the bench with the fault that is built into it. */
export function benchTitle(m: Moment): string {
  const { title } = brakeOf(m);
  const { fault } = m.bench;
  return fault === null || !isFault(fault) ? title : `${title}: ${faultNames[fault]}`;
}

/** What stands on the bench instead of one's own brake, in the list of brakes and on the band; null: nothing does. */
export function guestTitle(m: Moment): string | null {
  const { guest, bench } = m;
  if (!guest) return null;
  const title = benchTitle(m);
  if (bench.fault !== null || guest.call.kind === 'van' || bench.standing === null) return title;
  return `${title}, ${language.inside(sceneName(bench.standing))}`;
}
