import type { FoundKey } from '../../../sim/index.ts';
import { ownFoundFields as words } from '../../../sim/words/en.ts';

/** How each figure of the brake as it is now is measured, and within what. */
export interface FoundField {
  readonly key: FoundKey;
  readonly how: string;
  readonly unit: 'mm' | '';
  /** Whole numbers only. */
  readonly whole: boolean;
  readonly range: readonly [number, number];
}

const f = (
  key: FoundKey,
  unit: FoundField['unit'],
  range: readonly [number, number],
  how: string,
  whole = false,
): FoundField => ({ key, how, unit, whole, range });

export const foundFields: readonly FoundField[] = [
  f('drumNow', 'mm', [80, 510], words.insideCaliperInTheSwept),
  f('leading', 'mm', [0, 25], words.theShoeTowardsTheFront),
  f('trailing', 'mm', [0, 25], words.theOtherShoeOfThe),
  f('tooth', '', [0, 2000], words.countThoseItHasPassed, true),
  f('notches', '', [0, 40], words.clicksToAFirmHold),
  f('pedal', 'mm', [0, 250], words.ruleBesideThePedalPumped),
];
