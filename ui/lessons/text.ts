import type { LessonValue } from '../../sim/index.ts';
import { number } from '../format.ts';
import type { Ran } from './run.ts';

/**
 * Figures in a lesson's text: `{torque=227}` names a value by its key and says what it was when the
 * text was written. `{before.torque=…}` is of a noted moment, `{pistonForce~10=1 140}` told to 10.
 */

export interface Figure {
  /** All of it, with its braces. */
  readonly text: string;
  /** Name of the moment it is of. */
  readonly moment: string;
  readonly key: string;
  /** Told to this; null: as many digits as written. */
  readonly to: number | null;
  readonly written: string;
}

const FIGURE =
  /\{(?:([a-zA-Z][a-zA-Z0-9]*)\.)?([a-zA-Z][a-zA-Z0-9]*)(?:~([0-9.]+))?(?:=([^{}]*))?\}/g;

/** The figures of a text, in their order. */
export const figuresOf = (text: string): readonly Figure[] =>
  [...text.matchAll(FIGURE)].map(([all, moment, key, to, written]) => ({
    text: all,
    moment: moment ?? 'now',
    key: key ?? '',
    to: to === undefined ? null : Number(to),
    written: (written ?? '').trim(),
  }));

/** A number as it was written, with whatever groups its thousands. */
export const numberIn = (written: string): number =>
  Number(written.replace(/[\s\u00a0\u202f\u2009]/g, '').replace('\u2212', '-'));

const digitsOf = (text: string): number => text.split('.')[1]?.length ?? 0;

/** The value of a figure; null where there is no such moment or key. */
export const figureValue = ({ key, moment }: Figure, ran: Ran): LessonValue | null =>
  ran.notes.get(moment)?.of(key) ?? null;

/** A value rounded as a figure tells it. */
export function rounded(f: Figure, value: LessonValue): string {
  if (f.to !== null && f.to > 0) {
    return number(Math.round(value.value / f.to) * f.to, f.to >= 1 ? 0 : digitsOf(String(f.to)));
  }
  return number(value.value, f.written === '' ? value.digits : digitsOf(f.written));
}

/** Does what was written still hold? */
export function holds(f: Figure, ran: Ran): boolean {
  const value = figureValue(f, ran);
  if (!value || f.written === '') return value !== null;
  return numberIn(rounded(f, value)) === numberIn(f.written);
}

/** A text with its figures: the model's, or as written while it has not been reckoned. */
export function filled(text: string, ran: Ran | null): string {
  return figuresOf(text).reduce((t, f) => {
    const value = ran && figureValue(f, ran);
    return t.replace(f.text, value ? rounded(f, value) : f.written);
  }, text);
}
