import { describe, expect, it } from 'vitest';
import { plainNumber } from '../../ui/pieces/number-field.ts';

/** A comma is a decimal mark in most of Europe, and what stands behind it must never be taken for more digits. */
describe('a plain number as typed', () => {
  it.each([
    ['200.5', 200.5],
    ['200,5', 200.5],
    [' 200,50 mm ', 200.5],
    ['-3', -3],
    ['\u22123', -3],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['1\u202f500', 1500],
  ])('%s is %d', (text, value) => {
    expect(plainNumber(text, 'mm')).toBe(value);
  });
  it.each([
    '',
    '1/0',
    '1e9',
    '1.234,5',
    '1,234.5',
    '0x10',
    'Infinity',
    '3/4 in',
    '5 N',
    'mm',
    '--1',
  ])('“%s” is none', (text) => {
    expect(plainNumber(text, 'mm')).toBeNaN();
  });
});
