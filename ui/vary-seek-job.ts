import { type Free, missOf, roomOf, Vary, type Wish } from '../sim/index.ts';
import type { Job, VaryNews } from './vary-messages.ts';
import {
  type DesignAsk,
  type DesignFound,
  type DesignPoint,
  isMet,
  leansOn,
  type SeekFound,
  type Slice,
  searchDesign,
} from './vary-seek.ts';

/**
 * Sizes that give what is wished, and a picture of where they lie: first they are looked for (`vary-seek.ts`), then
 * an even net is worked out over the bounds, again and again twice as fine. Of three sizes the third stands still
 * on each of a few slices.
 */

/** Fields along a side, net by net, by how many sizes are free. */
const FIELDS: Readonly<Record<number, readonly number[]>> = { 1: [96], 2: [8, 16, 32], 3: [6, 12] };
/** Slices of a third size. */
const SLICES = 4;

const evenly = (from: number, to: number, fields: number, whole: boolean): readonly number[] => {
  const all = Array.from({ length: fields + 1 }, (_, k) => from + ((to - from) * k) / fields);
  return whole ? [...new Set(all.map(Math.round))].filter((x) => x >= from && x <= to) : all;
};

/** Where the third size stands still: over what it reaches, one of them where the best was found, or between its bounds where nothing does. */
function thirdsOf(
  free: readonly Free[],
  { reach, best }: Pick<SeekFound, 'reach' | 'best'>,
): readonly (number | null)[] {
  const [, , third] = free;
  if (!third) return [null];
  const [from, to] = reach?.[2] ?? [third.from, third.to];
  const even = evenly(from, to, SLICES - 1, third.whole);
  const z = best.at[2] as number;
  const nearest = even.reduce((a, b) => (Math.abs(b - z) < Math.abs(a - z) ? b : a));
  return [...new Set(even.map((x) => (reach && x === nearest ? z : x)))];
}

/** Looks for sizes in slices of time, then draws. */
export class SeekJob implements Job {
  readonly #ask: DesignAsk;
  readonly #work: Generator<SeekFound, void>;
  #done = false;

  constructor(ask: DesignAsk) {
    this.#ask = ask;
    this.#work = this.#all();
  }

  get done(): boolean {
    return this.#done;
  }

  slice(over: () => boolean): Omit<VaryNews, 'run'> {
    let found: SeekFound | undefined;
    do {
      const next = this.#work.next();
      if (next.done) this.#done = true;
      else found = next.value;
    } while (!this.#done && !over());
    return { fresh: [], ...(found ? { found } : {}), done: this.#done };
  }

  *#all(): Generator<SeekFound, void> {
    const { free, wishes } = this.#ask;
    let last: DesignFound | null = null;
    for (const found of searchDesign(this.#ask)) {
      last = found;
      yield this.#told(found, [], 'looking');
    }
    if (!last) return;
    const vary = new Vary(this.#ask.base);
    const points: DesignPoint[] = [];
    const asked = new Map<string, DesignPoint>();
    const at = (place: readonly number[]): DesignPoint => {
      const key = place.join();
      const known = asked.get(key);
      if (known) return known;
      const point = { at: place, miss: missOf(vary, free, wishes, place) };
      asked.set(key, point);
      points.push(point);
      return point;
    };
    let slices: readonly Slice[] = [];
    const looked = last;
    const now = (stage: SeekFound['stage']): SeekFound =>
      this.#told({ ...looked, points: [...looked.points, ...points] }, slices, stage);
    const thirds = thirdsOf(free, this.#told(looked, [], 'looking'));
    for (const fields of FIELDS[free.length] ?? []) {
      const next: Slice[] = [];
      for (const third of thirds) {
        const slice = sliceOf(free, wishes, third, fields, at);
        for (;;) {
          const row = slice.next();
          if (row.done) {
            next.push(row.value);
            break;
          }
          yield now('drawing');
        }
      }
      slices = next;
      yield now('drawing');
    }
    yield now('done');
  }

  #told(found: DesignFound, slices: readonly Slice[], stage: SeekFound['stage']): SeekFound {
    const { free, wishes } = this.#ask;
    const met = found.points.filter(isMet);
    const room = (p: DesignPoint): number => roomOf(wishes, p.miss.values);
    const best = met.length > 0 ? met.reduce((a, b) => (room(b) > room(a) ? b : a)) : found.best;
    const reach =
      met.length > 0
        ? free.map((_, k): readonly [number, number] => {
            const all = met.map((p) => p.at[k] as number);
            return [Math.min(...all), Math.max(...all)];
          })
        : null;
    return {
      brakes: found.points.length,
      stage,
      reach,
      best,
      leaning: reach ? [] : leansOn(free, best),
      slices,
    };
  }
}

/** A slice, row by row. */
function* sliceOf(
  [first, second]: readonly Free[],
  wishes: readonly Wish[],
  third: number | null,
  fields: number,
  at: (place: readonly number[]) => DesignPoint,
): Generator<void, Slice> {
  if (!first) throw new Error('a search has a size');
  const xs = evenly(first.from, first.to, fields, first.whole);
  const ys = second ? evenly(second.from, second.to, fields, second.whole) : [0];
  const rooms: number[] = [];
  const values: (readonly number[])[] = [];
  for (const y of ys) {
    for (const x of xs) {
      const place = [x, ...(second ? [y] : []), ...(third === null ? [] : [third])];
      const { miss } = at(place);
      const told = miss.values.every(Number.isFinite);
      rooms.push(told ? roomOf(wishes, miss.values) : Number.NaN);
      values.push(miss.values);
    }
    yield;
  }
  return { third, xs, ys, rooms, values };
}
