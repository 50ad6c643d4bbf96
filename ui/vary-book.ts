import type { VaryPoint } from '../sim/index.ts';
import type { CurveAsk } from './vary-messages.ts';
import { VaryRun } from './vary-run.ts';

/** A curve of a picture: whose it is, and its points so far, sorted. */
export interface Curve {
  /** Told beside it; empty for the only one. */
  readonly label: string;
  readonly points: readonly VaryPoint[];
}

const sorted = (points: readonly VaryPoint[]): readonly VaryPoint[] =>
  [...points].sort((a, b) => (a.at[0] as number) - (b.at[0] as number));

/** The curves that were asked for last, as far as they have come. */
export class VaryBook {
  readonly #run = new VaryRun();
  readonly #changed: () => void;
  #asked: readonly unknown[] | null = null;
  #curves: readonly Curve[] = [];
  #busy = false;
  #trouble = '';

  /** @param changed called when something has come */
  constructor(changed: () => void) {
    this.#changed = changed;
  }

  get curves(): readonly Curve[] {
    return this.#curves;
  }
  get busy(): boolean {
    return this.#busy;
  }
  /** What the program says where it broke off. */
  get trouble(): string {
    return this.#trouble;
  }

  /** What has come stays; no more is worked out until something else is asked. */
  stop(): void {
    if (!this.#busy) return;
    this.#run.stop();
    this.#busy = false;
    this.#changed();
  }

  /**
   * Asks for other curves, where the question is another than before.
   *
   * @param key what they follow from
   */
  ask(
    key: readonly unknown[],
    make: () => readonly (CurveAsk & { readonly label: string })[],
  ): void {
    const before = this.#asked;
    if (before && before.length === key.length && key.every((k, i) => k === before[i])) return;
    this.#asked = key;
    const asked = make();
    this.#curves = asked.map(({ label }) => ({ label, points: [] }));
    this.#busy = true;
    this.#trouble = '';
    this.#run.start(
      { curves: asked.map(({ label: _, ...curve }) => curve) },
      {
        news: ({ fresh, done }) => {
          const news = new Map(fresh.map(({ curve, points }) => [curve, points]));
          this.#curves = this.#curves.map((c, i) => {
            const points = news.get(i);
            return points ? { ...c, points: sorted([...c.points, ...points]) } : c;
          });
          this.#busy = !done;
          this.#changed();
        },
        failed: (message) => {
          this.#busy = false;
          this.#trouble = message;
          this.#changed();
        },
      },
    );
  }
}
