import {
  type AtTravel,
  atTravel,
  BAR,
  type Brake,
  type BrakeState,
  balance,
  type Instant,
  masterFor,
  pressedTo,
  type Reading,
  type Rig,
  readings,
} from '../../../sim/index.ts';
import { MOST_BAR } from '../../record/bench.ts';
import { brakeOf, isBending, restOf, rigOfBrake } from '../../record/derive.ts';
import { Kept, KeptFor } from '../../record/kept.ts';
import type { Moment } from '../../record/moment.ts';
import type { ComparePart, KeptMoment } from './part.ts';

/** Ordinary press that both are told for, bar. */
export const TOLD_AT = 40;

/** One of the two: what follows from a kept moment, worked out once for each. */
export class One {
  readonly kept: KeptMoment;
  readonly brake: Brake;
  readonly rig: Rig;
  readonly bends: boolean;
  readonly #pushed = new Kept<AtTravel>();
  readonly #told = new Kept<AtTravel>();
  readonly #asKept = new Kept<Instant>();

  constructor(kept: KeptMoment, m: Moment) {
    this.kept = kept;
    const there = {
      ...m,
      bench: kept.bench,
      view: { ...m.view, bending: kept.bending },
    };
    this.brake = brakeOf(there);
    this.rig = rigOfBrake(this.brake);
    this.bends = isBending(this.brake);
  }

  get state(): BrakeState {
    return this.kept.bench.state;
  }
  get rest(): Instant {
    return restOf(this.rig, this.state);
  }

  /** As the one pedal has it. */
  pushed({ by, at }: Pick<ComparePart, 'by' | 'at'>): AtTravel {
    const { brake, kept, rig, state } = this;
    return this.#pushed.of([by, at], () =>
      by === 'travel'
        ? atTravel(rig, state, at, kept.turning, MOST_BAR * BAR)
        : pressedTo(rig, state, masterFor(brake, at * BAR), kept.turning),
    );
  }

  /** At an ordinary press. */
  get told(): AtTravel {
    const { brake, kept, rig, state } = this;
    return this.#told.of([], () =>
      pressedTo(rig, state, masterFor(brake, TOLD_AT * BAR), kept.turning),
    );
  }

  /** As it was when it was kept. */
  get asKept(): Instant {
    const { kept, rig, state } = this;
    const { cable, pedal, turning } = kept;
    return this.#asKept.of([], () =>
      balance(rig, state, { pressure: pedal * BAR, turning, cable }),
    );
  }

  readings(instant: Instant): Reading[] {
    return readings(this.brake, this.state, instant, this.rest);
  }
}

const known = new KeptFor<KeptMoment, One>();

/** What follows from a kept moment. */
export const oneOf = (kept: KeptMoment, m: Moment): One => known.of(kept, () => new One(kept, m));
