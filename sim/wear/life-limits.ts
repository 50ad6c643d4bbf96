import type { Brake, Side } from '../brake/types.ts';
import type { LifeEnd, LifeEventKind } from './life-types.ts';
import type { Wearing } from './wearing.ts';

const SIDES = ['front', 'rear'] as const;

interface Line {
  readonly kind: LifeEventKind;
  readonly side: Side | null;
  /** Ends the life: always, when it stops at limits, or never. */
  readonly ends: LifeEnd | null;
  readonly always: boolean;
  /** What is left before it, mm; negative once passed. */
  readonly left: (w: Wearing) => number;
  passed: boolean;
}

/** What passed in a stretch of driving. */
export interface Passed {
  readonly kind: LifeEventKind;
  readonly side: Side | null;
  readonly end: LifeEnd | null;
}

/** The lines that wear can pass. Each is told once, when it is passed; what is past already is not. */
export class Limits {
  readonly #lines: Line[] = [];
  readonly #brake: Brake;
  readonly #stops: boolean;
  readonly #first: Readonly<Record<Side, number>>;

  constructor(brake: Brake, w: Wearing, stops: boolean) {
    this.#brake = brake;
    this.#stops = stops;
    this.#first = { front: w.thinnest('front'), rear: w.thinnest('rear') };
    const add = (
      kind: LifeEventKind,
      side: Side | null,
      ends: LifeEnd | null,
      always: boolean,
      left: Line['left'],
    ): void => {
      this.#lines.push({ kind, side, ends, always, left, passed: left(w) <= 0 });
    };
    for (const side of SIDES) {
      const { thicknessMin, rivetHeight } = brake.shoes[side].lining;
      const over = (least: number) => (now: Wearing) => now.thinnest(side) - least;
      add('lining limit', side, 'lining limit', false, over(thicknessMin));
      if (rivetHeight > 0) add('rivet contact', side, null, false, over(rivetHeight));
      add('table contact', side, 'worn through', true, over(0));
    }
    const { radiusMax } = brake.drum;
    add('drum limit', null, 'drum limit', false, (now) => radiusMax - now.drumRadius);
  }

  /** A lining is gone: nothing is driven on. */
  get gone(): boolean {
    return this.#lines.some((l) => l.always && l.passed);
  }

  /** Least thickness before the next lining line, mm: a lump may be cut there. */
  nearest(w: Wearing): number {
    let least = Number.POSITIVE_INFINITY;
    for (const line of this.#lines) {
      if (!line.passed && line.side) least = Math.min(least, line.left(w));
    }
    return least;
  }

  /** By how much the farthest line was overrun, mm of lining; 0: none was. */
  overrun(w: Wearing): number {
    let most = 0;
    for (const line of this.#lines) {
      if (!line.passed && line.side) most = Math.max(most, -line.left(w));
    }
    return most;
  }

  /** Lines passed since the last call. */
  take(w: Wearing): readonly Passed[] {
    let out: Passed[] | null = null;
    for (const line of this.#lines) {
      if (line.passed || line.left(w) > 0) continue;
      line.passed = true;
      out ??= [];
      const end = line.always || this.#stops ? line.ends : null;
      out.push({ kind: line.kind, side: line.side, end });
    }
    return out ?? NONE;
  }

  /** Share of the way to the first limit, 0..1. */
  share(w: Wearing): number {
    const { drum } = this.#brake;
    let share = (w.drumRadius - drum.radiusNew) / (drum.radiusMax - drum.radiusNew);
    for (const side of SIDES) {
      const least = this.#brake.shoes[side].lining.thicknessMin;
      const first = this.#first[side];
      if (first > least) share = Math.max(share, (first - w.thinnest(side)) / (first - least));
    }
    return share;
  }
}

const NONE: readonly Passed[] = [];
