import type { AdjusterKind, Brake } from '../../sim/index.ts';
import { fitAdjuster } from '../record/bench.ts';
import { lockAt, ownBrakeOf } from '../record/derive.ts';
import type { Session } from '../session.ts';

/** Which adjuster the bench's brake has, and another kind put in its place. */
export class AdjusterChoice {
  readonly #session: Session;

  constructor(session: Session) {
    this.#session = session;
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
    const { bench, shelf } = this.#session.moment;
    return lockAt(ownBrakeOf(bench, shelf));
  }

  /** Puts another kind on the brake, as long as the one before; the run begins anew. */
  fit(kind: AdjusterKind, hotLock: boolean, drivenBy = this.drivenBy): void {
    this.#session.do(fitAdjuster, { kind, hotLock, drivenBy });
  }
}
