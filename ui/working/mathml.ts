import { mathml, type TemplateResult } from 'lit';
import type { Step, Term, Working } from '../../sim/index.ts';
import { figure, isPlain, resultText, symbolParts } from './write.ts';

/** A working as MathML, which browsers draw and screen readers read, number by number. */

const operator = (sign: string): TemplateResult => mathml`<mo>${sign}</mo>`;

function symbol(text: string): TemplateResult {
  const [base, index] = symbolParts(text);
  return index
    ? mathml`<msub><mi>${base}</mi><mtext>${index}</mtext></msub>`
    : mathml`<mi>${base}</mi>`;
}

const between = (parts: readonly TemplateResult[], sign: string): TemplateResult =>
  mathml`${parts.map((p, i) => (i > 0 ? mathml`${operator(sign)}${p}` : p))}`;

const bracketed = (inner: TemplateResult): TemplateResult =>
  mathml`<mrow><mo>(</mo>${inner}<mo>)</mo></mrow>`;

/** Terms that need brackets as a factor. */
const isSum = (t: Term): boolean => t.is === 'sum' || t.is === 'less';

function write(t: Term, figures: number | null): TemplateResult {
  if (t.is === 'given') {
    if (figures === null) return symbol(t.symbol);
    const told = mathml`<mn>${figure(t.value, figures)}</mn>`;
    return t.value < 0 ? bracketed(told) : told;
  }
  if (t.is === 'number') return mathml`<mn>${t.value}</mn>`;
  const of = t.of.map((part) => write(part, figures));
  const factor = (i: number): TemplateResult => {
    const inner = of[i] as TemplateResult;
    return isSum(t.of[i] as Term) ? bracketed(inner) : inner;
  };
  switch (t.is) {
    case 'sum':
      return mathml`<mrow>${between(of, '+')}</mrow>`;
    case 'less':
      return mathml`<mrow>${of[0]}${operator('−')}${factor(1)}</mrow>`;
    case 'product':
      return mathml`<mrow>${between(
        of.map((_, i) => factor(i)),
        '·',
      )}</mrow>`;
    case 'over':
      return mathml`<mfrac><mrow>${of[0]}</mrow><mrow>${of[1]}</mrow></mfrac>`;
    case 'square': {
      const base = t.of[0] as Term;
      const whole = base.is === 'given' || base.is === 'number';
      return mathml`<msup>${whole ? of[0] : bracketed(of[0] as TemplateResult)}<mn>2</mn></msup>`;
    }
    case 'root':
      return mathml`<msqrt>${of[0]}</msqrt>`;
    case 'greatest':
    case 'least':
      return mathml`<mrow><mi>${t.is === 'greatest' ? 'max' : 'min'}</mi><mo>(</mo>${between(of, ';')}<mo>)</mo></mrow>`;
  }
}

/** A symbol alone, its index set low. */
export const symbolMath = (text: string): TemplateResult => symbol(text);

/** A line in its parts: symbol = formula, = numbers, = result; each may go into a row of its own. */
export function workingMath(w: Working | Step): readonly TemplateResult[] {
  const { formula, figures } = w;
  const equals = operator('=');
  const result = mathml`<mrow>${equals}<mtext class="result">${resultText(w)}</mtext></mrow>`;
  const head = w.symbol ? symbol(w.symbol) : mathml`<mtext></mtext>`;
  if (isPlain(formula)) return [mathml`<mrow>${head}</mrow>`, result];
  return [
    mathml`<mrow>${head}${w.symbol ? equals : ''}${write(formula, null)}</mrow>`,
    mathml`<mrow>${equals}${write(formula, figures)}</mrow>`,
    result,
  ];
}
