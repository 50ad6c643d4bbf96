import type { Moment } from './moment.ts';

/** One step of what was done: how it is told, and the record on its other side. */
export interface Step {
  readonly said: string;
  readonly moment: Moment;
}

/**
 * The record as it stands, with the way back and the way forth. A value: each function gives a new
 * one. Records share what did not change, so that a step costs little.
 */
export interface History {
  readonly present: Moment;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** Group whose next intention joins the last step; empty: none does. */
  readonly open: string;
}

/** Steps that can be undone. */
export const STEPS = 400;

export const begin = (present: Moment): History => ({ present, past: [], future: [], open: '' });

/** Do both show the same, field by field, so many levels deep? */
function alike(a: unknown, b: unknown, depth: number): boolean {
  if (Object.is(a, b)) return true;
  if (depth === 0 || typeof a !== 'object' || typeof b !== 'object' || !a || !b) return false;
  const [x, y] = [a, b] as Readonly<Record<string, unknown>>[];
  const keys = Object.keys(x ?? {});
  return (
    keys.length === Object.keys(y ?? {}).length &&
    keys.every((k) => alike(x?.[k], y?.[k], depth - 1))
  );
}
/** The record, its parts, and what each of them says. */
const LEVELS = 3;

/**
 * Goes on to another record as a step that can be undone.
 *
 * @param join group of the step; it goes into the last step when that is of the same group and open
 * @param ends the group's step ends here
 */
export function step(h: History, next: Moment, said: string, join = '', ends = false): History {
  const open = ends ? '' : join;
  const joined = join !== '' && join === h.open && h.past.length > 0;
  if (joined) {
    const last = h.past.at(-1) as Step;
    // A pedal that was pressed and let go, and nothing came of it: there is nothing to be undone.
    if (ends && alike(last.moment, next, LEVELS)) {
      return { present: last.moment, past: h.past.slice(0, -1), future: [], open: '' };
    }
    // Where it led is told, and where it began.
    const past = [...h.past.slice(0, -1), { said: said || last.said, moment: last.moment }];
    return { present: next, past, future: [], open };
  }
  if (next === h.present) return open === h.open ? h : { ...h, open };
  const past = [...h.past.slice(-(STEPS - 1)), { said, moment: h.present }];
  return { present: next, past, future: [], open };
}

/** What the brake itself did, such as a tooth that dropped in: it belongs to the step before. */
export const amend = (h: History, next: Moment): History => ({ ...h, present: next });

/** No further intention joins the last step. */
export const close = (h: History): History => (h.open === '' ? h : { ...h, open: '' });

/** A change from outside, such as another window's: it holds before and after every step. */
export const everywhere = (h: History, change: (moment: Moment) => Moment): History => {
  const at = (s: Step): Step => {
    const moment = change(s.moment);
    return moment === s.moment ? s : { ...s, moment };
  };
  return { ...h, present: change(h.present), past: h.past.map(at), future: h.future.map(at) };
};

/** One step back, and what was undone by it; null when there is none. */
export function undo(h: History): { readonly history: History; readonly said: string } | null {
  const last = h.past.at(-1);
  if (!last) return null;
  const { said } = last;
  const future = [...h.future, { said, moment: h.present }];
  return {
    said,
    history: { present: last.moment, past: h.past.slice(0, -1), future, open: '' },
  };
}

/** One undone step forth again; null when there is none. */
export function redo(h: History): { readonly history: History; readonly said: string } | null {
  const next = h.future.at(-1);
  if (!next) return null;
  const { said } = next;
  const past = [...h.past, { said, moment: h.present }];
  return {
    said,
    history: { present: next.moment, past, future: h.future.slice(0, -1), open: '' },
  };
}
