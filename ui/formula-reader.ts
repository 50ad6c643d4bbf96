import {
  absDependencies,
  addDependencies,
  type ConstantNode,
  cosDependencies,
  create,
  createUnitDependencies,
  divideDependencies,
  expDependencies,
  type FunctionNode,
  logDependencies,
  type MathNode,
  maxDependencies,
  minDependencies,
  multiplyDependencies,
  type OperatorNode,
  parseDependencies,
  piDependencies,
  powDependencies,
  type SymbolNode,
  sinDependencies,
  sqrtDependencies,
  subtractDependencies,
  tanDependencies,
  type Unit,
  unaryMinusDependencies,
  unaryPlusDependencies,
  unitDependencies,
} from 'mathjs';
import { formulaReader as texts } from '../sim/words/en.ts';

/**
 * Formulas that people type: sums of readings and sizes in their units. What is typed may come with a link
 * from anybody, so nothing of it is worked out before every part of it is one of the few that are allowed:
 * numbers, brackets, + − · / ^, ten functions, names that are known, and units. No loops can be written with
 * these, so none needs to be timed.
 */
const math = create({
  ...parseDependencies,
  ...unitDependencies,
  ...createUnitDependencies,
  ...addDependencies,
  ...subtractDependencies,
  ...multiplyDependencies,
  ...divideDependencies,
  ...piDependencies,
  ...powDependencies,
  ...unaryMinusDependencies,
  ...unaryPlusDependencies,
  ...sqrtDependencies,
  ...absDependencies,
  ...minDependencies,
  ...maxDependencies,
  ...sinDependencies,
  ...cosDependencies,
  ...tanDependencies,
  ...expDependencies,
  ...logDependencies,
});

/** A name that a formula may use. */
export interface Known {
  /** As it is typed: a reading's key, or where a size stands, `cylinder.bore`. */
  readonly name: string;
  /** Key that its value is asked by. */
  readonly key: string;
  /** As the bench tells it; empty for a pure number. */
  readonly unit: string;
}

export type Formula =
  | {
      readonly ok: true;
      /** What it rests on. */
      readonly uses: readonly Known[];
      /** Of its result; empty for a pure number. */
      readonly unit: string;
      /** @param values in their units, in the order of `uses` */
      worth(values: readonly number[]): number;
    }
  | {
      readonly ok: false;
      /** Place in the text, from 0. */
      readonly at: number;
      readonly found: string;
      readonly why: string;
    };

export const LONGEST = 200;
const MOST_PARTS = 200;
const OPERATORS = new Set([
  'add',
  'subtract',
  'multiply',
  'divide',
  'pow',
  'unaryMinus',
  'unaryPlus',
]);
export const FUNCTIONS = ['sqrt', 'abs', 'min', 'max', 'sin', 'cos', 'tan', 'exp', 'log'] as const;
const CALLED: ReadonlySet<string> = new Set(FUNCTIONS);

/** The bench's units as the library has them. Warmth is told from 0 °C: as a number it is so many kelvin. */
const UNITS: Readonly<Record<string, string>> = {
  '°C': 'K',
  '°': 'deg',
  degrees: 'deg',
  'W/K for each km/h': 'W/K/(km/h)',
  'N/(m/s)²': 'N/(m/s)^2',
};
/** In the library's spelling; empty for what is counted or a share. */
export function libraryUnit(unit: string): string {
  // “of 20”: so many of all there are.
  if (unit === '%' || /^\p{L}+ \d+$/u.test(unit)) return '';
  return (UNITS[unit] ?? unit).replace(/·/g, ' ').replace(/²/g, '^2').replace(/³/g, '^3');
}

/** Plain units that a result is told in, the first of its kind; and those that come after a quotient of what it rests on. */
const PLAIN = ['mm', 'N', 'N·m', 'bar', 'mm²', 'm/s', 'm/s²', 's', 'W', 'kg', 'K', 'K/s', 'deg'];
const RARE = ['mm³', 'N/mm', 'mm/N', '1/bar', '1/N', '1/mm'];

/** Signs as people type them, each for one of the library's. */
const SIGNS: Readonly<Record<string, string>> = {
  '·': '*',
  '×': '*',
  '÷': '/',
  '−': '-',
  '–': '-',
};

/** Letters of a name with dots, as the parser takes it: the same length, so places stay where they are. */
const undotted = (name: string): string => name.replace(/\./g, '_');

class Refused extends Error {
  readonly at: number;
  readonly found: string;
  constructor(at: number, found: string, why: string) {
    super(why);
    this.at = at;
    this.found = found;
  }
}

/** Where a part of the text stands, as a word of its own where it is one: parts of a tree are told by their words. */
function placeOf(text: string, part: string): number {
  const inWord = (c: string | undefined): boolean => c !== undefined && /\w/.test(c);
  const first = text.indexOf(part);
  for (let at = first; at >= 0; at = text.indexOf(part, at + 1)) {
    const joins =
      (inWord(part[0]) && inWord(text[at - 1])) ||
      (inWord(part.at(-1)) && inWord(text[at + part.length]));
    if (!joins) return at;
  }
  return Math.max(0, first);
}

const isUnit = (name: string): boolean => {
  try {
    return math.Unit.isValuelessUnit(name);
  } catch {
    return false;
  }
};

/** Every part of a tree, or the reason why one is refused. */
function judge(node: MathNode, text: string, known: ReadonlyMap<string, Known>): Set<Known> {
  const uses = new Set<Known>();
  let parts = 0;
  const refuse = (part: string, why: string): never => {
    throw new Refused(placeOf(text, part), part, why);
  };
  const walk = (n: MathNode): void => {
    if (++parts > MOST_PARTS) refuse(text.slice(0, 20), texts.noMoreThanParts(MOST_PARTS));
    switch (n.type) {
      case 'ConstantNode': {
        const { value } = n as ConstantNode;
        if (typeof value !== 'number' || !Number.isFinite(value))
          refuse(String(value), texts.aPlainNumber);
        return;
      }
      case 'ParenthesisNode':
        n.forEach(walk);
        return;
      case 'OperatorNode': {
        const { fn, op } = n as OperatorNode;
        if (!OPERATORS.has(fn as string)) refuse(op, texts.andBrackets);
        n.forEach(walk);
        return;
      }
      case 'FunctionNode': {
        const { fn } = n as FunctionNode;
        const name = fn.type === 'SymbolNode' ? (fn as unknown as SymbolNode).name : '';
        if (!CALLED.has(name)) refuse(name || n.toString(), texts.oneOf(FUNCTIONS.join(', ')));
        for (const arg of (n as FunctionNode).args) walk(arg);
        return;
      }
      case 'SymbolNode': {
        const { name } = n as SymbolNode;
        const found = known.get(name);
        if (found) uses.add(found);
        else if (name !== 'pi' && (CALLED.has(name) || !isUnit(name)))
          refuse(name, CALLED.has(name) ? texts.bracketsAfter(name) : texts.aReadingASizeOr);
        return;
      }
      default:
        refuse(n.toString().slice(0, 30), texts.numbersNamesUnitsAndBrackets);
    }
  };
  walk(node);
  return uses;
}

const isUnitValue = (x: unknown): x is Unit => math.typeOf(x) === 'Unit';

/** The unit that a result is told in; throws where it has none. */
function unitFor(result: unknown, uses: readonly Known[]): string {
  if (!isUnitValue(result)) return '';
  const own = [...new Set(uses.map((k) => k.unit))].filter((u) => libraryUnit(u) !== '');
  const quotients = own.flatMap((a) => own.filter((b) => b !== a).map((b) => `${a}/${b}`));
  const told = [...own, ...PLAIN, ...quotients, ...RARE].find((u) =>
    result.equalBase(math.unit(1, libraryUnit(u))),
  );
  return told ?? result.toSI().formatUnits();
}

/** Puts signs and names into the parser's spelling; places stay where they are, but for ² and ³. */
function spelled(text: string, known: readonly Known[]): string {
  let out = text.replace(/[·×÷−–]/g, (sign) => SIGNS[sign] ?? sign);
  out = out.replace(/²/g, '^2').replace(/³/g, '^3').replace(/µ|μ/g, 'u');
  const dotted = known.filter((k) => k.name.includes('.'));
  for (const { name } of [...dotted].sort((a, b) => b.name.length - a.name.length))
    out = out.split(name).join(undotted(name));
  return out;
}

/** Reads a formula: what it rests on and its unit, or where it goes wrong and why. */
export function readFormula(text: string, known: readonly Known[]): Formula {
  const bad = (at: number, found: string, why: string): Formula => ({ ok: false, at, found, why });
  if (text.trim() === '') return bad(0, 'nothing', texts.aSumOfReadingsAnd);
  if (text.length > LONGEST)
    return bad(LONGEST, texts.characters(text.length), texts.atMost(LONGEST));
  const typed = spelled(text, known);
  const names = new Map(known.map((k) => [undotted(k.name), k]));
  try {
    const node = math.parse(typed);
    const uses = [...judge(node, typed, names)];
    const compiled = node.compile();
    const units = uses.map((k) => libraryUnit(k.unit));
    const at = (values: readonly number[]): unknown => {
      const scope = new Map<string, unknown>();
      uses.forEach((k, i) => {
        const value = values[i] as number;
        const unit = units[i] as string;
        scope.set(undotted(k.name), unit === '' ? value : math.unit(value, unit));
      });
      return compiled.evaluate(scope);
    };
    // Units are judged by a try: with numbers that no difference makes nothing of.
    const tried = at(uses.map((_, i) => 1 + i / 7));
    if (typeof tried !== 'number' && !isUnitValue(tried))
      return bad(0, typed.slice(0, 30), texts.oneNumberAsItsResult);
    const unit = unitFor(tried, uses);
    const one = unit === '' ? 1 : math.unit(1, libraryUnit(unit));
    return {
      ok: true,
      uses,
      unit,
      worth: (values) => {
        if (!values.every(Number.isFinite)) return Number.NaN;
        const came = at(values);
        // Over one of its unit: `1/K` as a unit has a value for the library, which it will not turn into.
        const told = isUnitValue(came) ? math.divide(came, one) : came;
        return typeof told === 'number' && Number.isFinite(told) ? told : Number.NaN;
      },
    };
  } catch (error) {
    if (error instanceof Refused) return bad(error.at, error.found, error.message);
    return broken(error, typed);
  }
}

/** What the library says of a text that is no sum, or of units that do not go together. */
function broken(error: unknown, typed: string): Formula {
  const message = error instanceof Error ? error.message : String(error);
  const char = (error as { readonly char?: unknown }).char;
  if (typeof char === 'number') {
    const at = Math.max(0, Math.min(typed.length, char - 1));
    const found = typed.slice(at, at + 12) || texts.theEnd;
    return { ok: false, at, found, why: texts.aWholeSumSomethingIs };
  }
  const units = /unit|dimension|same base|types/i.test(message);
  return {
    ok: false,
    at: 0,
    found: typed.slice(0, 40),
    why: units ? texts.unitsThatGoTogetherOnly : texts.aSumThatCanBe,
  };
}
