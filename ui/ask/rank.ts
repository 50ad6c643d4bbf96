import MiniSearch from 'minisearch';
import { askRank as pageWords } from '../../sim/words/en.ts';
import { entries } from './entries.ts';
import { figureEntries } from './figures.ts';
import { type Term, termsOf } from './read.ts';
import type { Entry, Kind } from './types.ts';
import { synonyms } from './words.ts';

/** Ranks what can be found by what was typed: any word may match, and there is always an answer. */

export interface Found {
  readonly entry: Entry;
  readonly score: number;
}

export interface Answer {
  /** The bench's terms that were read, each once. */
  readonly read: readonly Term[];
  /** Best first; never empty. */
  readonly found: readonly Found[];
}

/** One line of an entry: its lines are ranked one by one, so that many lines do not thin each other out. */
interface Line {
  readonly id: number;
  readonly entry: number;
  readonly text: string;
  readonly own: boolean;
}

/** Terms are told apart by this in a text that the index splits. */
const GAP = '\n';

interface Index {
  readonly lines: readonly Line[];
  readonly search: MiniSearch<Line>;
  /** In how many entries a term stands. */
  readonly spread: ReadonlyMap<string, number>;
  /** The terms that stand in any. */
  readonly known: ReadonlySet<string>;
}

function makeIndex(): Index {
  const lines: Line[] = [];
  const joined = (text: string): string =>
    termsOf(text)
      .map((t) => t.term)
      .join(GAP);
  entries.forEach((e, entry) => {
    const put = (text: string, own: boolean): void => {
      lines.push({ id: lines.length, entry, text: joined(text), own });
    };
    put(`${e.title} ${e.text}`, true);
    for (const said of e.says) put(said, false);
  });
  const search = new MiniSearch<Line>({
    fields: ['text'],
    tokenize: (text) => text.split(GAP).filter((t) => t !== ''),
    processTerm: (term) => term,
  });
  search.addAll(lines);
  const seen = new Map<string, Set<number>>();
  for (const { text, entry } of lines)
    for (const term of text.split(GAP)) {
      const all = seen.get(term) ?? new Set<number>();
      all.add(entry);
      seen.set(term, all);
    }
  const spread = new Map([...seen].map(([term, all]) => [term, all.size]));
  return { lines, search, spread, known: new Set(spread.keys()) };
}

let made: Index | undefined;
/** Made when something is first asked: it takes a fifth of a second. */
const index = (): Index => {
  made ??= makeIndex();
  return made;
};

/** Where something is, of what kind of answer or how much of it: said beside a trouble, never the trouble itself. */
const BESIDE = new Set(pageWords.bothwheelsAllwheelsHowmuch.split(' '));

/** Terms that the file of words knows. Any other word is of the language, and tells less. */
const ofTrade: ReadonlySet<string> = new Set(synonyms.map((s) => s.term));
const RAW = 0.65;

/** What a term tells: the rarer the more (inverse document frequency over entries). Unknown ones tell nothing. */
const tells = (term: string): number => {
  const n = index().spread.get(term);
  if (n === undefined) return 0;
  const share = term.startsWith('not_') || BESIDE.has(term) ? 0.5 : ofTrade.has(term) ? 1 : RAW;
  return Math.log(1 + entries.length / n) * share;
};

/** Who asks in his own words wants an answer before a word of the trade. */
const WEIGHT: Readonly<Record<Kind, number>> = {
  question: 1,
  fault: 1.02,
  check: 1,
  station: 1,
  'take away': 1,
  'not here': 1,
  lesson: 0.98,
  caution: 0.95,
  word: 0.95,
  part: 0.93,
  reading: 0.85,
};
/** Titles and texts of an entry against a line that somebody would say. */
const OWN = 0.6;
/** How much the second best line of an entry adds. */
const SECOND = 0.3;

let told: readonly number[] | undefined;
/** What all words of each line tell. */
const wholes = (): readonly number[] => {
  told ??= index().lines.map((line) => {
    let whole = 0;
    for (const w of new Set(line.text.split(GAP))) whole += tells(w);
    return whole;
  });
  return told;
};

function ranked(terms: readonly string[]): {
  found: Found[];
  hits: Map<Entry, Set<string>>;
} {
  const all = terms.reduce((sum, t) => sum + tells(t), 0);
  const best = new Map<number, number[]>();
  const hits = new Map<Entry, Set<string>>();
  if (all > 0) {
    const { lines, search } = index();
    const whole = wholes();
    const results = search.search(terms.join(GAP), { combineWith: 'OR' });
    for (const r of results) {
      const line = lines[r.id as number] as Line;
      const has = new Set(r.queryTerms);
      let share = 0;
      for (const t of has) share += tells(t);
      // What of the question is met, and what of the line.
      const wholly = whole[r.id as number] as number;
      const met = share / all;
      const meets = wholly > 0 ? Math.min(1, share / wholly) : 0;
      const value =
        (met * 0.72 + meets * (line.own ? 0.05 : 0.28)) * met ** 0.5 * (line.own ? OWN : 1);
      const entry = entries[line.entry] as Entry;
      const values = best.get(line.entry) ?? [];
      // What its best line meets: what all of its lines meet together, nobody has said.
      if (values.every((v) => v < value * WEIGHT[entry.kind])) hits.set(entry, has);
      values.push(value * WEIGHT[entry.kind]);
      best.set(line.entry, values);
    }
  }
  const found = [...best].map(([at, values]) => {
    const [first = 0, second = 0] = values.sort((a, b) => b - a);
    return { entry: entries[at] as Entry, score: first + SECOND * second };
  });
  found.sort((a, b) => b.score - a.score);
  return { found, hits };
}

/** What is shown when nothing that was typed is known: the ways in. */
const NEAREST = ['station:see', 'station:start', 'station:kind', 'station:questions'];
/** At most so many are listed. */
const MOST = 24;
/** A second topic is told when so much of the question is left by the best, and it fits so well itself. */
const LEFT = 0.36;
const FITS = 0.22;

/**
 * The way in to which a word belongs, whatever else was said: where no line fits well, the trouble is
 * still one of the pedal, of the lever, of heat. The first row that has a word of the question counts
 * most where rows tell alike.
 */
const WAYS: readonly (readonly [key: string, terms: string])[] = [
  ['check:drag', pageWords.hotSmellDragSpinCoast],
  ['check:lever', pageWords.handbrakeNotchCableSlopeCreep],
  ['check:pedal', pageWords.pedalSoftLongSinkHard],
  ['check:braking', pageWords.pullGrabWeakYankSkid],
  ['check:noise', pageWords.noiseSquealGrindGroanClunk],
  ['station:drum-off', pageWords.comeoffSlidStudDrumSeized],
  ['station:inspect', pageWords.limitThickScoreMachineMeasure],
  ['station:new-shoes', pageWords.fitShoeTogetherBedLining],
];
/** An answer under this is a guess; a third one that fits better than so stays where it is. */
const WEAK = 0.42;
const STAYS = 0.24;

/** The way in whose words tell most of these terms; null where none has any. */
function wayOf(terms: readonly string[]): string | null {
  let best: string | null = null;
  let most = 0;
  for (const [key, words] of WAYS) {
    const own = new Set(words.split(' '));
    const sum = terms.filter((t) => own.has(t)).reduce((s, t) => s + tells(t), 0);
    if (sum > most) [best, most] = [key, sum];
  }
  return best;
}

const entryOf = (key: string): Entry => entries.find((e) => e.key === key) as Entry;

/** @param most how many are given at the most */
export function ask(text: string, most = MOST): Answer {
  const read = termsOf(text, index().known);
  const terms = [...new Set(read.map((t) => t.term))];
  const { found, hits } = ranked(terms);
  const first = found[0];
  let list = found;
  if (first) {
    // Two topics: what the best leaves of the question is asked by itself, and its best stands second.
    const met = hits.get(first.entry) ?? new Set<string>();
    const rest = terms.filter((t) => !met.has(t));
    const sum = (of: readonly string[]): number => of.reduce((s, t) => s + tells(t), 0);
    if (rest.length > 1 && sum(rest) > LEFT * sum(terms)) {
      const other = ranked(rest).found.find((f) => f.entry !== first.entry);
      if (other && other.score > FITS)
        list = [first, other, ...found.filter((f) => f !== first && f.entry !== other.entry)];
    }
    const way = first.score < WEAK ? wayOf(terms) : null;
    if (way && !list.slice(0, 3).some((f) => f.entry.key === way)) {
      const put = found.find((f) => f.entry.key === way) ?? {
        entry: entryOf(way),
        score: 0.1,
      };
      const at = (list[2]?.score ?? 0) < STAYS ? 2 : 3;
      list = [...list.slice(0, at), put, ...list.slice(at).filter((f) => f.entry.key !== way)];
    }
    // A danger that is meant stands above all else.
    const at = list.findIndex((f) => f.entry.danger && f.score > 0.8 * first.score);
    if (at > 0) list = [list[at] as Found, ...list.filter((_, i) => i !== at)];
  }
  const figures = figureEntries(text).map((entry) => ({ entry, score: 2 }));
  const shown = [...figures, ...list].slice(0, most);
  for (const key of NEAREST)
    if (shown.length < NEAREST.length && !shown.some((f) => f.entry.key === key))
      shown.push({ entry: entryOf(key), score: 0 });
  return {
    read: read.filter((t, i) => read.findIndex((x) => x.term === t.term) === i),
    found: shown,
  };
}
