import { askPatterns, askFigures as texts } from '../../sim/words/en.ts';
import type { Entry, Figures, SheetKey } from './types.ts';

/**
 * Figures in what was typed: each goes to the place where it is judged, word for word as it was typed.
 * Which a number is, is told by the noun that stands nearest and by what such a size can be: a drum is
 * not 2 mm wide, and a lining not 200 thick.
 */

const patterns = askPatterns.figures;
/** What a number can be of. */
type What = keyof typeof patterns.nouns;

/** Nouns that say what a number is. */
const nouns = Object.entries(patterns.nouns) as [What, RegExp][];
const nounOf = (word: string): What | null => nouns.find(([, r]) => r.test(word))?.[0] ?? null;

interface Typed {
  readonly value: number;
  /** As typed, its unit with it. */
  readonly text: string;
  readonly unit: string;
  /** Place among the words. */
  readonly at: number;
}

const {
  number: NUMBER,
  unit: UNIT,
  inch: INCH,
  notch: NOTCH,
  percent: PERCENT,
  newton: NEWTON,
} = patterns;

/** 32nds and mixed fractions are read by the sheet; here only about how much they are. */
function about(text: string): number {
  const [top, bottom] = text.replace(',', '.').split('/').map(Number);
  return bottom === undefined ? (top ?? Number.NaN) : (top ?? Number.NaN) / bottom;
}

function numbersOf(words: readonly string[]): Typed[] {
  const out: Typed[] = [];
  words.forEach((word, at) => {
    const m = NUMBER.exec(word);
    if (!m) return;
    const [, digits = '', own = ''] = m;
    const next = words[at + 1] ?? '';
    // "in" may be a word of its own: only after a size that can be one of inches.
    const unit = own !== '' ? own : UNIT.test(next) ? next : '';
    out.push({ value: about(digits), text: digits, unit, at });
  });
  return out;
}

/** mm by the unit, or as a plain number. */
const mmOf = ({ value, unit }: Typed): number =>
  INCH.test(unit) ? 25.4 * value : unit === 'cm' ? 10 * value : value;

/** Can it be one? Drums of road vehicles, linings with their wear, levers, slopes, a hand's pull. */
function canBe(what: What, n: Typed): boolean {
  const mm = mmOf(n);
  const length = n.unit === '' || INCH.test(n.unit) || /^(mm|mil|mils|mill|cm)/.test(n.unit);
  switch (what) {
    case 'drum':
    case 'drum2':
    case 'mark':
    case 'new':
      return length && mm >= 120 && mm <= 500;
    case 'score':
    case 'lip':
      return length && mm > 0 && mm <= 5;
    case 'lining':
    case 'trailing':
      return length && mm > 0 && mm <= 15;
    case 'notches':
      return (
        (n.unit === '' || NOTCH.test(n.unit)) &&
        Number.isInteger(n.value) &&
        n.value >= 1 &&
        n.value <= 30
      );
    case 'slope':
      return PERCENT.test(n.unit) && n.value >= 1 && n.value <= 60;
    case 'turn':
      return NEWTON.test(n.unit) && n.value <= 800;
    case 'unlike':
    case 'swing':
      return PERCENT.test(n.unit) && n.value <= 100;
  }
}

/** The wheel that was named last before a number; none named is the left one, where a sheet begins. */
const wheelOf = (words: readonly string[], n: Typed): 'left' | 'right' =>
  words
    .slice(0, n.at)
    .reverse()
    .some(
      (w, i, all) => patterns.right.test(w) && !all.slice(0, i).some((x) => patterns.left.test(x)),
    )
    ? 'right'
    : 'left';

/** The noun that says what a number is: the nearest that can be, one before it sooner than one after. */
function whatOf(words: readonly string[], n: Typed): What | null {
  if (NOTCH.test(n.unit) && words.some((w) => nounOf(w) === 'notches')) return 'notches';
  let best: What | null = null;
  let least = Number.POSITIVE_INFINITY;
  words.forEach((word, at) => {
    const what = nounOf(word);
    if (!what || !canBe(what, n)) return;
    const far = at < n.at ? n.at - at : (at - n.at) * 1.5 + 0.5;
    if (far < least) {
      best = what;
      least = far;
    }
  });
  // "2 shoes" is how many; so is "4 linings".
  const counts = n.unit === '' && Number.isInteger(n.value) && nounOf(words[n.at + 1] ?? '');
  if (best === 'lining' && counts === 'lining') return null;
  // "trailing lining 3.1": which of two is said up to three words before.
  if (
    best === 'lining' &&
    words.slice(Math.max(0, n.at - 3), n.at).some((w) => patterns.trailing.test(w))
  )
    return 'trailing';
  return best ?? (words.some((w) => patterns.diameter.test(w)) && canBe('drum', n) ? 'drum' : null);
}

const wordsIn = (text: string): string[] => patterns.parts(text);

/** With its unit: a plain number is taken for millimetres, whatever the sheet takes one for. */
const sized = ({ text, unit }: Typed): string =>
  INCH.test(unit) ? texts.inWord(text) : unit === 'cm' ? `${text} cm` : `${text} mm`;

const said: Readonly<Record<Exclude<What, 'notches' | 'turn'>, string>> = {
  ...texts.saidOf,
  drum2: texts.acrossTheOtherWay,
  trailing: texts.trailingLining,
  swing: texts.swingInATurn,
};

type Read = readonly (readonly [What, Typed])[];

/** The figures that were read, each what it is of. */
export function readFigures(text: string): Read {
  const words = wordsIn(text);
  const all = numbersOf(words);
  // "1 in 5": a slope by its two sides.
  const oneIn = patterns.oneIn.exec(text.toLowerCase());
  if (oneIn && words.some((w) => nounOf(w) === 'slope')) {
    const value = Math.round(100 / Number(oneIn[1]));
    return [['slope', { value, text: String(value), unit: '%', at: 0 }]];
  }
  const found: [What, Typed][] = [];
  for (const n of all) {
    const what = whatOf(words, n);
    if (!what) continue;
    const has = (w: What): boolean =>
      found.some(([of, other]) => of === w && wheelOf(words, other) === wheelOf(words, n));
    if (!has(what)) found.push([what, n]);
    // A second size of a drum: the one it measures where its mark was told, else its other angle.
    else if (canBe('drum', n) && !has('drum')) found.push(['drum', n]);
    else if (what === 'drum' && !has('drum2')) found.push(['drum2', n]);
  }
  return found;
}

/** "drum 183.4 mm", "9 notches", "imbalance 30 %". */
function told([what, n]: Read[number]): string {
  switch (what) {
    case 'notches':
      return texts.notches(n.text);
    case 'turn':
      return texts.nToTurnIt(n.text);
    case 'slope':
    case 'unlike':
    case 'swing':
      return `${said[what]} ${n.text} %`;
    default:
      return `${said[what]} ${sized(n)}`;
  }
}

const entry = (id: string, read: Read, title: string, text: string, figures: Figures): Entry => ({
  key: `figures:${id}`,
  kind: 'reading',
  title: `${title}: ${read.map(told).join(', ')}`,
  text,
  leads: { to: 'figures', figures },
  says: [],
});

/** Where on the sheet a figure goes. */
const places: Readonly<Partial<Record<What, SheetKey>>> = {
  drum: 'drumA',
  drum2: 'drumB',
  mark: 'drumMax',
  new: 'drumNew',
  score: 'score',
  lip: 'lip',
  lining: 'leadThin',
  trailing: 'trailThin',
};
const ofSheet = ([what]: Read[number]): boolean => places[what] !== undefined;

/** Places where the figures of a text are judged, with the figures carried along. */
export function figureEntries(text: string): Entry[] {
  const read = readFigures(text);
  const words = wordsIn(text);
  const out: Entry[] = [];
  const sheet = read.filter(ofSheet);
  if (sheet.length > 0) {
    const write = sheet.map(
      ([what, n]) => [places[what] as SheetKey, sized(n), wheelOf(words, n)] as const,
    );
    const owner = sheet.some(([w]) => w === 'mark')
      ? texts.theMarkIsTheLimit
      : texts.noVerdictBeforeItsLimit;
    out.push(
      entry('sheet', sheet, texts.judgeIt, texts.onTheSheetOfInspect(owner), {
        to: 'inspect',
        write,
      }),
    );
  }
  const seen = read.filter(
    ([w]) => w === 'notches' || w === 'turn' || w === 'unlike' || w === 'swing',
  );
  if (seen.length > 0) {
    const sign = {
      notches: 'notches',
      turn: 'force',
      unlike: 'unlike',
      swing: 'swing',
    } as const;
    const topic = seen.some(([w]) => w === 'notches')
      ? 'lever'
      : seen.some(([w]) => w === 'turn')
        ? 'drag'
        : 'braking';
    out.push(
      entry('see', seen, texts.whatItPointsTo, texts.whatISeeWithThe, {
        to: 'see',
        topic,
        said: seen.map(([w, n]) => [sign[w as keyof typeof sign], n.text] as const),
      }),
    );
  }
  const slope = read.find(([w]) => w === 'slope');
  if (slope)
    out.push(
      entry('slope', [slope], texts.willItHold, texts.parkWithThisSlopeThe, {
        to: 'park',
        percent: slope[1].value,
      }),
    );
  return out;
}
