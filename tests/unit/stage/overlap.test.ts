import { expect, it } from 'vitest';
import { overlapText } from '../../../ui/stage/layers/overlap.ts';

it('never tells an overlap that holds as nought', () => {
  expect([0.29, 0.0051, 0.004, 0.0004, -0.1].map(overlapText)).toEqual([
    '0.29',
    '0.01',
    '<0.01',
    'clear',
    'clear',
  ]);
});
