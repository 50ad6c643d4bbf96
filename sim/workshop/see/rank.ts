import type { FaultId } from '../../index.ts';
import { type Examination, type ExaminationId, examinations } from '../examinations.ts';
import {
  type Figure,
  isFigure,
  type Shown,
  type Sign,
  type SignKey,
  type SignValue,
  signs,
} from './signs.ts';
import type { SignTable } from './table.ts';
import { told } from './told.ts';

/**
 * Which fault fits what was seen. Each thing said is held against what each fault would show, in the
 * logarithm of odds (naive Bayes: signs count by themselves; how sure people are of each is our own
 * choice): a fault that shows it loses nothing, another as much as people are sure of it. Two faults at
 * once show what either shows; they cost more from the start, so that one is named where one fits.
 */

/** What was said: a value of a sign or of what is told, or a figure as its text. */
export type Said = Readonly<Record<string, string>>;

/** A cause, or two at once. */
export interface Cause {
  readonly faults: readonly [FaultId] | readonly [FaultId, FaultId];
  readonly score: number;
  /** Keys of what was said that it shows, and that it does not. */
  readonly fits: readonly string[];
  readonly against: readonly string[];
}

/** What a second fault costs: one in some thirty cars that have one has another besides (our own choice). */
const SECOND = 3.4;
/** Where two fit better than any one by so much, they are told first. */
const BETTER = 0.8;
/** What is told sways: for a fault that goes with it, against the others. */
const SWAYS = 0.9;
/** No single sign may decide more than this. */
const MOST = 4;
/** Within this of the best a cause is still open. */
const OPEN = 2.6;

/** The figure that was typed; NaN for none. */
export const figureOf = (text: string): number => Number(text.replace(',', '.'));

const good = (f: Figure, value: number): number => Math.max(f.good, f.share * Math.abs(value));

/** What it costs a fault that shows this to be told that. */
function costs(sign: Sign, shown: SignValue, said: string): number {
  if (typeof shown === 'number') {
    if (!isFigure(sign.values)) return 0;
    const value = figureOf(said);
    if (Number.isNaN(value)) return 0;
    const off = (value - shown) / good(sign.values, Math.max(Math.abs(shown), Math.abs(value)));
    return Math.min(MOST, 0.5 * off * off);
  }
  return shown.includes(said) ? 0 : sign.sure;
}

/** Can these be told from each other by that sign? */
export function differ(sign: Sign, a: SignValue, b: SignValue): boolean {
  if (typeof a === 'number' || typeof b === 'number') {
    if (typeof a !== 'number' || typeof b !== 'number' || !isFigure(sign.values)) return false;
    return Math.abs(a - b) > 1.2 * good(sign.values, Math.max(Math.abs(a), Math.abs(b)));
  }
  return a.join() !== b.join();
}

/** What two faults show together, by what each shows alone: figures add up, of words what is not sound. */
function together(sign: Sign, sound: SignValue, a: SignValue, b: SignValue): SignValue {
  if (typeof sound === 'number') return (a as number) + (b as number) - sound;
  const odd = [...new Set([...(a as string[]), ...(b as string[])])].filter(
    (v) => !sound.includes(v),
  );
  if (odd.length === 0) return sound;
  // Of one wheel and another both are warm.
  if (
    sign.key === 'hot' &&
    odd.length === 1 &&
    odd[0] === 'one' &&
    differ(sign, a, sound) &&
    differ(sign, b, sound)
  )
    return ['one', 'both'];
  // What one lengthens the other may shorten again.
  const eased = sign.key === 'travel' && odd.includes('short') && !odd.includes('floor');
  return eased && odd.length > 1 ? [...odd, 'ever', 'long'] : odd;
}

const both = (table: SignTable, a: FaultId, b: FaultId): Shown =>
  Object.fromEntries(
    signs.map((s) => {
      const of = (id: FaultId): SignValue => table.faults[id]?.[s.key] ?? table.sound[s.key];
      return [s.key, together(s, table.sound[s.key], of(a), of(b))];
    }),
  ) as Record<SignKey, SignValue>;

function judge(faults: Cause['faults'], shown: Shown, said: Said): Cause {
  let score = 0;
  const fits: string[] = [];
  const against: string[] = [];
  for (const sign of signs) {
    const text = said[sign.key];
    if (text === undefined) continue;
    const cost = costs(sign, shown[sign.key], text);
    score -= cost;
    (cost < 1 ? fits : against).push(sign.key);
  }
  for (const t of told) {
    const text = said[t.key];
    const goes = text === undefined ? undefined : t.speaksFor[text];
    if (!goes) continue;
    const one = faults.some((f) => goes.includes(f));
    score += one ? SWAYS : 0;
    if (one) fits.push(t.key);
  }
  return { faults, score, fits, against };
}

export interface Judged {
  /** One cause each, the likeliest first. */
  readonly causes: readonly Cause[];
  /** Two at once that fit better than any one; null: one is enough. */
  readonly pair: Cause | null;
  /** Faults that are still open, the likeliest first. */
  readonly open: readonly FaultId[];
}

/** Likely causes of what was said, the best first. Nothing said: all alike, in the order of the list. */
export function judgeSaid(table: SignTable, said: Said): Judged {
  const ids = Object.keys(table.faults) as FaultId[];
  const causes = ids.map((id) => judge([id], table.faults[id] as Shown, said));
  causes.sort((a, b) => b.score - a.score);
  const best = causes[0];
  let pair: Cause | null = null;
  if (best && best.against.length > 0) {
    // Only what explains something of what was said can be one of two.
    for (let i = 0; i < ids.length; i++)
      for (let j = i + 1; j < ids.length; j++) {
        const two = [ids[i] as FaultId, ids[j] as FaultId] as const;
        const cause = judge(two, both(table, ...two), said);
        const at = { ...cause, score: cause.score - SECOND };
        if (!pair || at.score > pair.score) pair = at;
      }
    if (pair && pair.score < best.score + BETTER) pair = null;
  }
  if (pair) {
    const first = pair.faults.map((f) => causes.find((c) => c.faults[0] === f) as Cause);
    first.sort((a, b) => b.score - a.score);
    const rest = causes.filter((c) => !first.includes(c));
    return { causes: [...first, ...rest], pair, open: [...pair.faults] };
  }
  const open = causes.filter((c) => best && c.score > best.score - OPEN).map((c) => c.faults[0]);
  return { causes, pair: null, open };
}

/** A check that parts what is still open. */
export interface NextCheck {
  readonly check: Examination;
  /** Its minutes, with those of what must be done before. */
  readonly minutes: number;
  /** What is asked there, the sign that parts the likeliest first. */
  readonly signs: readonly Sign[];
}

/** Signs of a check that were not told yet. */
const unsaid = (id: ExaminationId, said: Said): Sign[] =>
  signs.filter((s) => s.by === id && said[s.key] === undefined);

/** Was something of this check, or of one that comes after it, told already? */
const done = (id: ExaminationId, said: Said): boolean =>
  signs.some((s) => s.by === id && said[s.key] !== undefined) ||
  examinations.some(
    (e) => e.needs === id && signs.some((s) => s.by === e.id && said[s.key] !== undefined),
  );

function minutesOf(e: Examination, said: Said): number {
  let minutes = e.minutes;
  for (let needs = e.needs; needs !== null; ) {
    const before = examinations.find((x) => x.id === needs);
    if (!before || done(before.id, said)) break;
    minutes += before.minutes;
    needs = before.needs;
  }
  return minutes;
}

/**
 * The cheapest check that parts the likeliest cause from another that is open: most parted a minute.
 * Null where none does: they are alike in all that can be seen.
 */
export function nextCheck(
  table: SignTable,
  said: Said,
  open: readonly FaultId[],
): NextCheck | null {
  const [first, ...others] = open.map((id) => table.faults[id] as Shown);
  if (!first) return null;
  // One alone: what would show it is there at all.
  const against = others.length > 0 ? others.slice(0, 6) : [table.sound];
  let best: (NextCheck & { readonly worth: number }) | null = null;
  for (const check of examinations) {
    const left = unsaid(check.id, said);
    const parts = (s: Sign): number =>
      against.reduce((n, o, i) => n + (differ(s, first[s.key], o[s.key]) ? 1 / (i + 1) : 0), 0);
    const asks = left.filter((s) => parts(s) > 0).sort((a, b) => parts(b) - parts(a));
    if (asks.length === 0) continue;
    const minutes = minutesOf(check, said);
    const parted = against.reduce(
      (n, o, i) => n + (asks.some((s) => differ(s, first[s.key], o[s.key])) ? 1 / (i + 1) : 0),
      0,
    );
    const worth = parted / minutes;
    if (!best || worth > best.worth) best = { check, minutes, signs: asks, worth };
  }
  return best;
}

/** Signs that a fault would also show, not told yet: those that a sound brake does not. */
export const alsoShows = (table: SignTable, id: FaultId, said: Said): Sign[] =>
  signs.filter((s) => {
    const shown = table.faults[id]?.[s.key];
    return said[s.key] === undefined && shown !== undefined && differ(s, shown, table.sound[s.key]);
  });
