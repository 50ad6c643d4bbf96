import type { Held } from '../../../sim/index.ts';
import { drumOffComplaints as words } from '../../../sim/words/en.ts';

/** What drivers say, and what is out of order then. */
export interface Complaint {
  readonly says: string;
  readonly state: string;
  readonly leverOff: number;
  readonly held: Partial<Held>;
}
export const complaints: readonly Complaint[] = [
  { says: words.comesABitThenIts, state: words.atItsLimit, leverOff: 0, held: {} },
  {
    says: words.hitItAllDayNot,
    state: 'Worn-in',
    leverOff: 0,
    held: { hubRust: true },
  },
  {
    says: words.cameOffLastYearAnd,
    state: 'Worn-in',
    leverOff: 6,
    held: {},
  },
  {
    says: words.stoodAWetWeekOn,
    state: 'Worn-in',
    leverOff: 0,
    held: { liningsRusted: true },
  },
];
