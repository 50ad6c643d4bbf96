import { expect, it } from 'vitest';
import { driveLife, forecast, freshState, KM } from '../../sim/index.ts';
import { restsOn } from '../../sim/workshop/index.ts';
import { liningTold } from '../../ui/pieces/cells.ts';
import { quay } from '../brakes.ts';

it('a lining driven to its limit is told at it, not a tenth past it', () => {
  const { rig, brake } = quay();
  const duty = brake.duties[0];
  if (!duty) throw new Error('no duty');
  const life = driveLife(rig, freshState(brake), duty, { lump: 0.02 });
  expect(life.end).toBe('lining limit');
  const left = life.rows.at(-1)?.liningFront ?? Number.NaN;
  const share = (100 * (left - 1.5)) / 3;
  expect(left).not.toBe(1.5);
  expect(liningTold(left, 1.5, share)).toEqual({ value: 1.5, beside: 'at its limit' });
});

it('elsewhere it is rounded down, and a negative share is told in words', () => {
  expect(liningTold(1.58, 1.5, 2.7)).toEqual({ value: 1.5, beside: '2 %' });
  expect(liningTold(1.44, 1.5, -2)).toEqual({ value: 1.4, beside: 'past its limit' });
});

it('one click tells no rate; two do, and one tooth is no teeth', () => {
  const { brake } = quay();
  expect(forecast(brake, { distance: 3000 * KM, teeth: 1 }).first).toBe(null);
  const line = forecast(brake, { distance: 76000 * KM, teeth: 19 }).first;
  if (!line) throw new Error('no forecast');
  expect(restsOn(line)).toContain('19 teeth lost');
  expect(restsOn(line)).toContain('1 tooth left');
});
