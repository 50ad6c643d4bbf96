import {
  type AdjusterKind,
  type Brake,
  HOT_LOCK,
  toothAcross,
  withAdjuster,
} from '../../sim/index.ts';
import type { Session } from '../session.ts';

/** Which adjuster the bench's brake has, and another kind put in its place. */
export class AdjusterChoice {
  readonly #session: Session;
  /** The brake as the station found it: every kind is made from its own. */
  readonly #own: Brake;
  readonly #refitting: (refit: () => void) => void;

  /** @param refitting does what goes before and after a change of the brake */
  constructor(session: Session, refitting: (refit: () => void) => void) {
    this.#session = session;
    this.#own = session.brake;
    this.#refitting = refitting;
  }

  get kind(): AdjusterKind {
    return this.#session.brake.adjuster.kind;
  }
  /** What turns it: the pedal's press, or the pull of the parking lever. */
  get drivenBy(): Brake['adjuster']['drivenBy'] {
    return this.#session.brake.adjuster.drivenBy;
  }
  get hotLock(): boolean {
    return Number.isFinite(this.#session.brake.adjuster.hotLock);
  }
  /** Temperature above which the hot lock holds, when it is on, °C. */
  get lockAt(): number {
    const own = this.#own.adjuster.hotLock;
    return Number.isFinite(own) ? own : HOT_LOCK;
  }

  /** Puts another kind on the brake, as long as the one before; the run begins anew. */
  fit(kind: AdjusterKind, hotLock: boolean, drivenBy = this.drivenBy): void {
    const { brake, state } = this.#session;
    const own = { ...brake, adjuster: this.#own.adjuster };
    const limit = hotLock ? this.lockAt : Number.POSITIVE_INFINITY;
    const next = withAdjuster(own, kind, { hotLock: limit, drivenBy });
    this.#refitting(() => {
      this.#session.refit(next, { ...state, tooth: toothAcross(brake, next, state.tooth) });
    });
  }
}
