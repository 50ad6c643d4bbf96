import type { FoundKey } from '../../../sim/index.ts';

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
  f(
    'drumNow',
    'mm',
    [80, 510],
    'Inside caliper in the swept track, at three angles: the largest. Not on the lip.',
  ),
  f(
    'leading',
    'mm',
    [0, 25],
    'The shoe towards the front of the vehicle. Along the whole arc, without the steel table.',
  ),
  f('trailing', 'mm', [0, 25], 'The other shoe of the same wheel, alike.'),
  f(
    'tooth',
    '',
    [0, 2000],
    'Count those it has passed, from its shortest; steps of a screw or wedge alike.',
    true,
  ),
  f('notches', '', [0, 40], 'Clicks to a firm hold, before anything is touched.'),
  f(
    'pedal',
    'mm',
    [0, 250],
    'Rule beside the pedal, pumped twice before: from up to firm. Drums on.',
  ),
];
