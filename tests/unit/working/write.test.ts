import { expect, it } from 'vitest';
import {
  figuresFor,
  given,
  givens,
  less,
  over,
  product,
  root,
  square,
  sum,
  worth,
} from '../../../sim/study/working/term.ts';
import {
  figure,
  formulaText,
  latexSymbol,
  numbersText,
  workingLatex,
  workingText,
} from '../../../ui/working/write.ts';

const a = given('a_x', -3, 'mm', 'one', 'scene');
const b = given('b', 4, 'mm', 'other', 'scene');
const told = {
  symbol: 'T*_d,lead',
  formula: root(sum(square(a), square(b))),
  value: 5,
  unit: 'N·m',
  digits: 1,
  figures: 4,
};

it('puts brackets where they are needed and nowhere else', () => {
  const f = over(product(2, sum(a, b)), less(b, less(a, 1)));
  expect(formulaText(f)).toBe('2 · (a_x + b) / (b − (a_x − 1))');
  expect(numbersText(f, 4)).toBe('2 · ((−3) + 4) / (4 − ((−3) − 1))');
  // 2·(−3 + 4)/(4 − (−3 − 1)) = 2/8.
  expect(worth(f)).toBe(0.25);
  expect(formulaText(product(over(a, b), over(b, a)))).toBe('(a_x / b) · (b / a_x)');
  expect(givens(f).map((g) => g.symbol)).toEqual(['a_x', 'b']);
});

it('writes a line as text and as LaTeX', () => {
  expect(workingText(told)).toBe('T*_d,lead = √(a_x² + b²) = √((−3)² + 4²) = 5.0 N·m');
  expect(workingLatex(told)).toBe(
    'T^{*}_{\\mathrm{d,lead}} = \\sqrt{a_{\\mathrm{x}}^{2} + b^{2}} = \\sqrt{\\left(-3\\right)^{2} + 4^{2}} = 5.0\\,\\mathrm{N\\cdot m}',
  );
  expect(latexSymbol('μ_tyre')).toBe('\\mu_{\\mathrm{tyre}}');
  const share = { ...told, symbol: '', formula: a, value: -3, unit: '%', digits: 0 };
  expect([workingText(share), workingLatex(share)]).toEqual(['−3 %', '-3\\,\\mathrm{\\%}']);
});

it('takes as many figures as the result needs', () => {
  // 1.23456 · 1000 is 1234.56: to 0 digits four figures give 1235, to 1 digit it takes five, 1234.6.
  const f = product(given('x', 1.23456, '', 'a factor', 'scene'), 1000);
  expect(figuresFor(f, worth(f), 0)).toBe(4);
  expect(figuresFor(f, worth(f), 1)).toBe(5);
  expect(figure(0.00001234, 4)).toBe('1.234 · 10^−5');
  expect(figure(-1234567, 4)).toBe('−1235000');
});
