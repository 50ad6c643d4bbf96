import { rounded, type Step, type Term, type Working } from '../../sim/index.ts';

/** A working written out: as plain text and as LaTeX, in symbols or with its numbers put in. */

/** Null: in symbols; else so many figures that count of each number. */
type Figures = number | null;

/** How firmly a term holds together: what holds less needs brackets inside what holds more. */
const HOLDS = { sum: 1, product: 2, power: 3, whole: 4 };

const SMALL = 1e-4;

/** A number in plain digits, its minus a true one: a copied sum can be worked out by hand or machine. */
export function figure(value: number, figures: number): string {
  const told = rounded(value, figures);
  const size = Math.abs(told);
  const text = size > 0 && size < SMALL ? told.toExponential() : String(told);
  return text.replace(/-/g, '−').replace('e', ' · 10^');
}

interface Written {
  readonly text: string;
  readonly holds: number;
}

const inside = ({ text, holds }: Written, least: number): string =>
  holds < least ? `(${text})` : text;

function plain(t: Term, figures: Figures): Written {
  if (t.is === 'given') {
    if (figures === null) return { text: t.symbol, holds: HOLDS.whole };
    const text = figure(t.value, figures);
    const bare = t.value >= 0 && !text.includes('·');
    return { text, holds: bare ? HOLDS.whole : 0 };
  }
  if (t.is === 'number') return { text: String(t.value), holds: HOLDS.whole };
  const of = t.of.map((part) => plain(part, figures));
  const [a, b] = of as [Written, Written];
  switch (t.is) {
    case 'sum':
      return { text: of.map((w) => inside(w, HOLDS.sum)).join(' + '), holds: HOLDS.sum };
    case 'less':
      return {
        text: `${inside(a, HOLDS.sum)} − ${inside(b, HOLDS.product)}`,
        holds: HOLDS.sum,
      };
    case 'product':
      return { text: of.map((w) => inside(w, HOLDS.power)).join(' · '), holds: HOLDS.product };
    case 'over':
      return {
        text: `${inside(a, HOLDS.product)} / ${inside(b, HOLDS.power)}`,
        holds: HOLDS.product,
      };
    case 'square':
      return { text: `${inside(a, HOLDS.whole)}²`, holds: HOLDS.power };
    case 'root':
      return { text: `√(${a.text})`, holds: HOLDS.whole };
    case 'greatest':
      return { text: `max(${of.map((w) => w.text).join('; ')})`, holds: HOLDS.whole };
    case 'least':
      return { text: `min(${of.map((w) => w.text).join('; ')})`, holds: HOLDS.whole };
  }
}

export const formulaText = (t: Term): string => plain(t, null).text;
export const numbersText = (t: Term, figures: number): string => plain(t, figures).text;

type Told = Pick<Working | Step, 'symbol' | 'formula' | 'value' | 'unit' | 'digits' | 'figures'>;

/** The result as the reading is told, its minus a true one. */
export const resultText = ({ value, digits, unit }: Told): string => {
  const told = (value + 0)
    .toFixed(digits)
    .replace(/^-(?=0(\.0*)?$)/, '')
    .replace('-', '−');
  return unit ? `${told} ${unit}` : told;
};

/** A formula of a single number has nothing to put in. */
export const isPlain = (t: Term): boolean => t.is === 'given';

/** The whole line: symbol, formula, numbers, result. */
export const workingText = (w: Told): string =>
  (isPlain(w.formula)
    ? [w.symbol, resultText(w)]
    : [w.symbol, formulaText(w.formula), numbersText(w.formula, w.figures), resultText(w)]
  )
    .filter(Boolean)
    .join(' = ');

const GREEK: Readonly<Record<string, string>> = {
  μ: '\\mu ',
  π: '\\pi ',
  η: '\\eta ',
  γ: '\\gamma ',
  ϑ: '\\vartheta ',
  θ: '\\theta ',
  φ: '\\varphi ',
  Δ: '\\Delta ',
  ℓ: '\\ell ',
  ρ: '\\rho ',
};

/** A symbol with its index: `F_d,lead` is F with a low "d,lead". */
export function symbolParts(symbol: string): readonly [base: string, index: string] {
  const at = symbol.indexOf('_');
  return at < 0 ? [symbol, ''] : [symbol.slice(0, at), symbol.slice(at + 1)];
}

const latexLetters = (text: string): string =>
  text
    .replace(/[μπηγϑθφΔℓρ]/g, (c) => GREEK[c] ?? c)
    .replace(/−/g, '-')
    .replace(/%/g, '\\%');

export function latexSymbol(symbol: string): string {
  const [base, index] = symbolParts(symbol);
  const star = base.endsWith('*') ? '^{*}' : '';
  const low = index ? `_{\\mathrm{${latexLetters(index).trim()}}}` : '';
  return `${latexLetters(base.replace('*', '')).trim()}${star}${low}`;
}

const latexFigure = (value: number, figures: number): string =>
  figure(value, figures)
    .replace(/−/g, '-')
    .replace(/ · 10\^(-?\d+)/, ' \\cdot 10^{$1}');

function latex(t: Term, figures: Figures): Written {
  if (t.is === 'given') {
    if (figures === null) return { text: latexSymbol(t.symbol), holds: HOLDS.whole };
    return { text: latexFigure(t.value, figures), holds: t.value < 0 ? 0 : HOLDS.whole };
  }
  if (t.is === 'number') return { text: String(t.value), holds: HOLDS.whole };
  const of = t.of.map((part) => latex(part, figures));
  const [a, b] = of as [Written, Written];
  const brackets = (w: Written, least: number): string =>
    w.holds < least ? `\\left(${w.text}\\right)` : w.text;
  switch (t.is) {
    case 'sum':
      return { text: of.map((w) => brackets(w, HOLDS.sum)).join(' + '), holds: HOLDS.sum };
    case 'less':
      return {
        text: `${brackets(a, HOLDS.sum)} - ${brackets(b, HOLDS.product)}`,
        holds: HOLDS.sum,
      };
    case 'product':
      return {
        text: of.map((w) => brackets(w, HOLDS.product)).join(' \\cdot '),
        holds: HOLDS.product,
      };
    case 'over':
      return { text: `\\frac{${a.text}}{${b.text}}`, holds: HOLDS.product };
    case 'square':
      return { text: `${brackets(a, HOLDS.whole)}^{2}`, holds: HOLDS.power };
    case 'root':
      return { text: `\\sqrt{${a.text}}`, holds: HOLDS.whole };
    case 'greatest':
      return {
        text: `\\max\\left(${of.map((w) => w.text).join(',\\; ')}\\right)`,
        holds: HOLDS.whole,
      };
    case 'least':
      return {
        text: `\\min\\left(${of.map((w) => w.text).join(',\\; ')}\\right)`,
        holds: HOLDS.whole,
      };
  }
}

/** The whole line in LaTeX, to be put between its maths marks. */
export function workingLatex(w: Told): string {
  const { formula, figures } = w;
  const told = resultText({ ...w, unit: '' }).replace('−', '-');
  const unit = w.unit
    ? `\\,\\mathrm{${latexLetters(w.unit).replace(/ /g, '\\ ').replace(/·/g, '\\cdot ')}}`
    : '';
  const parts = [w.symbol && latexSymbol(w.symbol.replace(/ − .*/, ''))];
  if (!isPlain(formula)) parts.push(latex(formula, null).text, latex(formula, figures).text);
  parts.push(`${told}${unit}`);
  return parts.filter(Boolean).join(' = ');
}
