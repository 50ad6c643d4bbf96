import type { Motion, MotionRecord } from '../sim/index.ts';
import { stepAt } from './pace.ts';

/** Shoes that part or close faster than this at the strut are watched, mm/s: 0.1 mm in a picture would be 6. */
const QUICK = 12;
/** They have come to rest, or bear, when they have been slower for so long, s of the brake's time. */
const CALM = 6e-4;
/** It is looked out for a little longer than the coarsest step that was taken back, s of the brake's time. */
const LEAST = 1.2e-3;
/** Nothing is watched longer than this, s of the page. */
const MOST = 1.6;
/** Steps of ordinary time, and the ones by which it is found when the shoes begin to move, s. */
const STEPS = [1 / 240, 1 / 960] as const;

/** What is run: the moving brake under the page's pedal. */
export interface Watched {
  readonly motion: Motion;
  /**
   * One step of the motion under what is done to it, its pedal too; how many teeth dropped.
   *
   * @param before the brake before it
   */
  step(dt: number, before: MotionRecord): number;
  /** Where the pedal stands, to be put back with the brake. */
  pedal(): number;
  back(record: MotionRecord, pedal: number): void;
  /** A step that stands: so many teeth dropped in it. */
  took(clicked: number): void;
  /** Something is on its way still, such as a lever that falls. */
  busy(): boolean;
}

/**
 * Runs the moving brake so that a quick move can be seen: 8 ms and the shoes are out, in half a picture. Where
 * they are found to move fast, the step is taken back, and that moment runs slowly, in the brake's own steps.
 */
export class Watch {
  /** How much slower than the clock time runs now. */
  pace = 1;
  #level: 0 | 1 | 2 = 0;
  #owed = 0;
  #calm = 0;
  /** Since it was slowed, s of the brake's time and of the page. */
  #since = 0;
  #page = 0;
  /** Enough was watched of this move. */
  #enough = false;

  /** Whoever presses a key has seen enough. */
  enough(): void {
    if (this.pace > 1) this.#leave(true);
  }

  #leave(enough = false): void {
    this.pace = 1;
    this.#level = 0;
    this.#enough = enough;
  }

  /**
   * A picture's time.
   *
   * @param slow pace at which quick moves are seen
   */
  run(seconds: number, slow: number, on: Watched): void {
    this.#owed = Math.min(0.25, this.#owed + seconds);
    for (;;) {
      const dt = this.#level === 2 ? stepAt(this.pace) : STEPS[this.#level];
      const lasts = dt * this.pace;
      if (this.#owed < lasts - 1e-9) return;
      this.#owed -= lasts;
      this.#step(dt, slow, on);
    }
  }

  #step(dt: number, slow: number, on: Watched): void {
    const { motion } = on;
    const before = motion.snapshot();
    const pedal = on.pedal();
    const from = motion.separation;
    const clicked = on.step(dt, before);
    const quick = Math.abs(motion.separation - from) > QUICK * dt;
    if (quick && this.#level < 2 && !this.#enough) {
      on.back(before, pedal);
      this.#owed += dt;
      this.#level += 1;
      this.#calm = 0;
      this.#since = 0;
      this.#page = 0;
      if (this.#level === 2) this.pace = slow;
      return;
    }
    on.took(clicked);
    this.#calm = quick || on.busy() ? 0 : this.#calm + dt;
    this.#since += dt;
    this.#page += dt * this.pace;
    if (this.#level === 1 && this.#calm > STEPS[0]) this.#level = 0;
    if (this.#level === 2 && this.#calm > CALM && this.#since > LEAST) this.#leave();
    if (this.#level === 2 && this.#page > MOST) this.#leave(true);
    if (this.#enough && !quick) this.#enough = false;
  }
}
