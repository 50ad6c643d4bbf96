import { type BrakeState, type Rebedding, type Rig, rebed } from '../../sim/index.ts';

/** Worked on at one go, ms: a frame still comes in time. */
const SLICE = 6;

/**
 * Worn states bedded in under other shoes, which wear a lining to another face (sim/wear/under.ts): half a second of
 * work each, in slices between the frames; what is done stays done.
 */
export class Rebeds {
  readonly #tell: () => void;
  readonly #jobs = new Map<BrakeState, Rebedding>();
  readonly #done = new WeakMap<BrakeState, BrakeState>();
  #going = false;

  /** @param tell is called when a state is bedded in */
  constructor(tell: () => void) {
    this.#tell = tell;
  }

  /** The state under the rig's shoes, always the same rig for it; null while it is worked on. */
  of(rig: Rig, state: BrakeState): BrakeState | null {
    const done = this.#done.get(state);
    if (done) return done;
    if (!this.#jobs.has(state)) this.#jobs.set(state, rebed(rig, state));
    if (!this.#going) {
      this.#going = true;
      setTimeout(this.#next);
    }
    return null;
  }

  #next = (): void => {
    const [first] = this.#jobs;
    this.#going = first !== undefined;
    if (!first) return;
    const [state, job] = first;
    const until = performance.now() + SLICE;
    while (!job.done && performance.now() < until) job.advance();
    if (job.done) {
      this.#done.set(state, job.state());
      this.#jobs.delete(state);
      this.#tell();
    }
    setTimeout(this.#next);
  };
}
