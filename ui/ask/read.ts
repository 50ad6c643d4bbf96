import { askPatterns, askRead as texts } from '../../sim/words/en.ts';
import { stem } from './stem.ts';
import { isEmpty, NEVER_MIXED, NOT, PLAIN, SPOKEN, synonyms } from './words.ts';

/** Reads what people type into the bench's own terms. */

/** The words of a text as they are read: "Won’t let-go!" is wont, let, go; "cannae get it aff" is cant, get, it, off. */
export const plain = (text: string): string[] =>
  askPatterns.words(text).flatMap((w) => SPOKEN.get(w)?.split(' ') ?? w);

const foldedWords = (texts: string): ReadonlySet<string> =>
  new Set(askPatterns.fold(texts).split(' '));
const not = foldedWords(NOT);

interface Phrase {
  readonly words: readonly string[];
  readonly term: string;
}

/** Phrases by their first word, the longest first. */
const phrases = new Map<string, Phrase[]>();
/** Words that may stand inside a phrase: "get the rear drum off" is "get drum off". */
const between = foldedWords(texts.theAAnMyYour);
/** At most so many of them in a row. */
const BETWEEN = 3;
/** Every word that somebody can mean, as typed: no slip of another. */
const known = new Set<string>(not);
for (const { term, said } of synonyms) {
  for (const text of said) {
    const typed = plain(text);
    for (const w of typed) {
      known.add(w);
      known.add(stem(w));
    }
    const words = typed.map(stem);
    const [first] = words;
    if (first === undefined) continue;
    const list = phrases.get(first) ?? [];
    list.push({ words, term });
    phrases.set(first, list);
  }
}
for (const list of phrases.values()) list.sort((a, b) => b.words.length - a.words.length);

/** Are these one slip apart: a letter more, less, other, or two in each other's place? */
export function slip(a: string, b: string, most: number): boolean {
  if (Math.abs(a.length - b.length) > most) return false;
  const rows: number[][] = [];
  for (let i = 0; i <= a.length; i++) {
    rows.push([i]);
    for (let j = 1; j <= b.length; j++) {
      const row = rows[i] as number[];
      if (i === 0) {
        row.push(j);
        continue;
      }
      const up = rows[i - 1] as number[];
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(
        (up[j] as number) + 1,
        (row[j - 1] as number) + 1,
        (up[j - 1] as number) + same,
      );
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, ((rows[i - 2] as number[])[j - 2] as number) + 1);
      row.push(least);
    }
  }
  return ((rows[a.length] as number[])[b.length] as number) <= most;
}

const mixed = (a: string, b: string): boolean =>
  NEVER_MIXED.some(([x, y]) => (a === x && b === y) || (a === y && b === x));

/** What each word was found to mean, by the words that are known besides: most words come again and again. */
const kept = new WeakMap<ReadonlySet<string>, Map<string, string>>();
/** At most so many are kept. */
const MOST_KEPT = 20_000;

/** The word that was meant by one that nobody knows; itself where there is none. */
function meant(word: string, more: ReadonlySet<string>): string {
  const before = kept.get(more) ?? new Map<string, string>();
  kept.set(more, before);
  const found = before.get(word) ?? nearest(word, more);
  if (before.size < MOST_KEPT) before.set(word, found);
  return found;
}

function nearest(word: string, more: ReadonlySet<string>): string {
  if (known.has(word) || more.has(word) || isEmpty(word) || PLAIN.has(word)) return word;
  if (word.length < 4 || /\d/.test(word)) return word;
  const root = stem(word);
  if (known.has(root) || more.has(root)) return word;
  const most = word.length >= 8 ? 2 : 1;
  let best = '';
  for (const all of [known, more]) {
    for (const w of all) {
      if (w.length < 4 || w[0] !== word[0] || mixed(w, word)) continue;
      if (!slip(word, w, most)) continue;
      // Of several the nearest in length: "squeel" is squeal, not squeals.
      if (best === '' || Math.abs(w.length - word.length) < Math.abs(best.length - word.length))
        best = w;
    }
  }
  return best === '' ? word : best;
}

/**
 * Where a phrase that begins at a word ends there, the word after it; 0 where it does not stand there.
 * Small words may stand between its own.
 */
function endOf(
  phrase: Phrase,
  words: readonly string[],
  typed: readonly string[],
  at: number,
): number {
  let i = at + 1;
  for (const w of phrase.words.slice(1)) {
    let passed = 0;
    while (words[i] !== w && passed < BETWEEN && between.has(typed[i] as string)) {
      i++;
      passed++;
    }
    if (words[i] !== w) return 0;
    i++;
  }
  return i;
}

/** What was read: terms, in their order, and how each was typed. */
export interface Term {
  readonly term: string;
  readonly typed: string;
}

const NONE: ReadonlySet<string> = new Set();

/**
 * Terms of a text. A word that is turned by a "not" stands twice: as itself, and as not_ itself.
 *
 * @param more words of the index that are no slips either; none while the index is made
 */
export function termsOf(text: string, more: ReadonlySet<string> = NONE): Term[] {
  const typed = plain(text);
  const words = typed.map((w) => stem(meant(w, more)));
  const out: Term[] = [];
  let turned = false;
  for (let i = 0; i < words.length; ) {
    const begins = phrases.get(words[i] as string) ?? [];
    let here: Phrase | undefined;
    let end = i + 1;
    for (const p of begins) {
      const to = endOf(p, words, typed, i);
      if (to === 0) continue;
      here = p;
      end = to;
      break;
    }
    const word = words[i] as string;
    const as = typed.slice(i, end).join(' ');
    i = end;
    if (here) {
      out.push({ term: here.term, typed: as });
      if (turned) out.push({ term: `not_${here.term}`, typed: texts.not(as) });
      turned = false;
    } else if (/^\d+$/.test(as)) {
      // A figure is no word: it says nothing of where to look.
    } else if (not.has(typed[i - 1] as string)) {
      turned = true;
      // Some negations stand behind what they turn.
      const last = out.at(-1);
      if (
        last &&
        askPatterns.turnsBack.test(typed[i - 1] as string) &&
        !last.term.startsWith('not_')
      )
        out.push({ term: `not_${last.term}`, typed: texts.not(last.typed) });
    } else if (!isEmpty(typed[i - 1] as string) && !isEmpty(word)) {
      out.push({ term: word, typed: as });
      if (turned) out.push({ term: `not_${word}`, typed: texts.not(as) });
      turned = false;
    }
  }
  return byNeighbours(out);
}

/** What makes a click one of the hand lever, and what keeps it the adjuster's. */
const OF_LEVER = new Set(['handbrake', 'lever', 'roof', 'hold', 'not_hold']);
const OF_ADJUSTER = new Set(texts.adjusterStarPawlPedalPress.split(' '));

/** A click beside the handbrake is a notch: a word of two meanings is told by what stands with it. */
function byNeighbours(read: Term[]): Term[] {
  const has = (of: ReadonlySet<string>): boolean => read.some((t) => of.has(t.term));
  if (!has(OF_LEVER) || has(OF_ADJUSTER)) return read;
  return read.map((t) =>
    t.term === 'click' || t.term === 'not_click'
      ? { ...t, term: t.term.replace('click', 'notch') }
      : t,
  );
}
