import { begin, type History, type Step } from './history.ts';
import { fromPlain, toPlain } from './json.ts';
import type { Moment } from './moment.ts';
import { type Read, readMoment } from './record.ts';
import { EMPTY_SHELF, type Shelf } from './shelf.ts';

/** The way back and forth as a window keeps it over a reload. */

/** Steps kept each way, and the most text that they may take: a window's storage has room for five times that. */
const MOST_STEPS = 100;
const MOST_LETTERS = 1_000_000;
/** Longest words of a step. */
const LONGEST_SAID = 200;

interface KeptStep {
  readonly said: string;
  readonly moment: unknown;
}
export interface KeptSteps {
  readonly past: readonly KeptStep[];
  readonly future: readonly KeptStep[];
}

/** What is kept of a record: its shelf has a key of its own. */
export const keptPart = (m: Moment): unknown => toPlain({ ...m, shelf: EMPTY_SHELF });

/** A kept record with the shelf that it belongs to. */
export const readKept = (data: unknown, shelf: Shelf): Read => {
  const plain = fromPlain(data);
  return readMoment(typeof plain === 'object' && plain !== null ? { ...plain, shelf } : plain);
};

/** The nearest steps of a history, as data. */
export function keptSteps(h: History): KeptSteps {
  let room = MOST_LETTERS;
  const nearest = (steps: readonly Step[]): KeptStep[] => {
    const out: KeptStep[] = [];
    for (const { said, moment } of steps.slice(-MOST_STEPS).reverse()) {
      const kept = { said, moment: keptPart(moment) };
      room -= JSON.stringify(kept).length;
      if (room < 0) break;
      out.unshift(kept);
    }
    return out;
  };
  const past = nearest(h.past);
  return { past, future: nearest(h.future) };
}

/**
 * A history of what was kept; steps beyond one that cannot be read any more are left out.
 *
 * @param data what a window kept of it, unknown
 */
export function historyOf(present: Moment, data: unknown, shelf: Shelf): History {
  const whole = typeof data === 'object' && data !== null ? (data as Partial<KeptSteps>) : {};
  const read = (steps: unknown): Step[] => {
    const out: Step[] = [];
    for (const s of Array.isArray(steps) ? [...steps].reverse() : []) {
      const { said, moment } = (s ?? {}) as Partial<KeptStep>;
      const r = readKept(moment, shelf);
      if (!r.ok || typeof said !== 'string') break;
      out.unshift({ said: said.slice(0, LONGEST_SAID), moment: r.moment });
    }
    return out;
  };
  return { ...begin(present), past: read(whole.past), future: read(whole.future) };
}
