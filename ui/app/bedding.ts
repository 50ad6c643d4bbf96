import { type BrakeState, type Rebedding, type Rig, rebed, suits } from '../../sim/index.ts';
import { bedded } from '../record/bench.ts';
import { bending, rigid, rigOfBrake } from '../record/derive.ts';
import type { Session } from '../session.ts';

/** Worked on at one go, ms: a frame still comes in time. */
const SLICE = 6;
/** A state must stand so long before it is bedded in, ms: one that is driven on changes with every frame. */
const STANDS = 300;

/** A state under the other kind of shoes. */
export interface Other {
  readonly rig: Rig;
  readonly state: BrakeState;
  /** Tooth that shoes of that kind have reached by as much wear; null where the linings are new to both. */
  readonly reached: number | null;
}

/** What one lining's wear came to under the other shoes. */
interface Pair {
  readonly of: BrakeState;
  readonly is: BrakeState;
}

/**
 * The brake of a session under the other kind of shoes, and its linings bedded in where that was asked for. A worn
 * brake takes half a second and more, so it is worked off in slices between the frames; what is done is kept for
 * the wear that it is of, both ways, so that who changes back has the same linings again.
 */
export class Bedding {
  readonly #session: Session;
  readonly #pairs = new WeakMap<Float64Array, Pair>();
  #asked: BrakeState | null = null;
  #askedAt = 0;
  #work: { readonly of: BrakeState; readonly rig: Rig; readonly job: Rebedding } | null = null;
  #going = false;

  constructor(session: Session) {
    this.#session = session;
  }

  /** Share of the work done, 0..1; null where none is. */
  get progress(): number | null {
    return this.#work?.job.progress ?? null;
  }

  /** Looks what the record asks for; called some ten times a second, at a time in ms. */
  look(now: number): void {
    const session = this.#session;
    const { state } = session;
    if (session.bends === session.bending) {
      if (session.bending) this.#ask(session.shown, now);
      return;
    }
    const other = this.#known(state, this.#otherRig());
    if (other) session.amend(bedded, state, other.state);
    else this.#ask(state, now);
  }

  /** The brake on the stage under the other shoes; null while that is worked on. */
  get other(): Other | null {
    return this.#known(this.#session.shown, this.#otherRig());
  }

  /** Of the same brake with the other kind of shoes. */
  #otherRig(): Rig {
    const { bends, brake } = this.#session;
    return rigOfBrake(bends ? rigid(brake) : bending(brake));
  }

  #known(state: BrakeState, rig: Rig): Other | null {
    if (suits(rig, state)) return { rig, state, reached: null };
    const pair = this.#pairs.get(state.wear.front);
    if (!pair || pair.of.wear.rear !== state.wear.rear || !suits(rig, pair.is)) return null;
    const { tooth, wear, wornBy } = pair.is;
    const { wornBy: _, ...kept } = state;
    return { rig, state: { ...kept, wear, ...(wornBy ? { wornBy } : {}) }, reached: tooth };
  }

  #ask(state: BrakeState, now: number): void {
    const rig = this.#otherRig();
    if (this.#known(state, rig)) {
      this.#work = null;
      return;
    }
    const same = (x: BrakeState | undefined | null) =>
      x?.wear.front === state.wear.front && x.wear.rear === state.wear.rear;
    if (!same(this.#asked)) {
      this.#asked = state;
      this.#askedAt = now;
      this.#work = null;
    }
    if (now - this.#askedAt < STANDS || (this.#work?.rig === rig && same(this.#work.of))) return;
    this.#work = { of: state, rig, job: rebed(rig, state) };
    if (!this.#going) this.#next();
  }

  #next = (): void => {
    const work = this.#work;
    this.#going = work !== null;
    if (!work) return;
    const until = performance.now() + SLICE;
    while (!work.job.done && performance.now() < until) work.job.advance();
    if (work.job.done) {
      const is = work.job.state();
      this.#pairs.set(work.of.wear.front, { of: work.of, is });
      this.#pairs.set(is.wear.front, { of: is, is: work.of });
      this.#work = null;
      this.#session.changed();
    }
    setTimeout(this.#next);
  };
}
