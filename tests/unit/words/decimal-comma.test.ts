import { expect, it } from 'vitest';
import { commasIn } from '../../../ui/decimal-comma.ts';

it('a figure that is put into a text gets its comma there; counts, and what was written, stay', () => {
  const texts = commasIn({
    one: {
      plain: 'Schritt 6.1',
      left: (mm: number, step: string, n: number) => `${mm} mm, ${step}, ${n === 1 ? 'eins' : n}`,
      pieces: (mm: number) => ['noch ', mm, ` von ${mm} mm`],
      list: [(x: number) => `${x}`],
      asked: /\bnicht\b/,
    },
  }).one;
  expect(texts.plain).toBe('Schritt 6.1');
  expect(texts.left(2.5, '6.1', 1)).toBe('2,5 mm, 6.1, eins');
  expect(texts.left(-0.25, '2,5', 3)).toBe('-0,25 mm, 2,5, 3');
  expect(texts.pieces(1.5)).toEqual(['noch ', 1.5, ' von 1,5 mm']);
  expect(texts.list[0]?.(0.5)).toBe('0,5');
  expect(texts.asked.test('hier nicht')).toBe(true);
});
