import type { Held } from '../../../sim/index.ts';

/** What drivers say, and what is out of order then. */
export interface Complaint {
  readonly says: string;
  readonly state: string;
  readonly leverOff: number;
  readonly held: Partial<Held>;
}
export const complaints: readonly Complaint[] = [
  { says: 'Comes a bit, then it’s like a wall.', state: 'At its limit', leverOff: 0, held: {} },
  {
    says: 'Hit it all day, not a hair.',
    state: 'Worn-in',
    leverOff: 0,
    held: { hubRust: true },
  },
  {
    says: 'Came off last year, and I only tightened the handbrake.',
    state: 'Worn-in',
    leverOff: 6,
    held: {},
  },
  {
    says: 'Stood a wet week on the handbrake. Now the wheel won’t turn.',
    state: 'Worn-in',
    leverOff: 0,
    held: { liningsRusted: true },
  },
];
