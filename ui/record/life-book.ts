import {
  type Brake,
  type BrakeState,
  driveLife,
  type LifeEnd,
  type LifeOptions,
  type LifeRow,
} from '../../sim/index.ts';
import { recordLifeBook as words } from '../../sim/words/en.ts';
import { type ToldEvent, toldEvent } from '../../sim/workshop/index.ts';
import type { LifeDriver, LifeEar, LifeTrouble } from '../life-messages.ts';
import { isBending, rigOfBrake } from './derive.ts';
import { hotOf } from './hot.ts';
import { Kept, KeptFor } from './kept.ts';
import type { DriveLeg, HotLeg, Leg, LifeRecord, Stretch } from './life.ts';
import { dutyOn, type Road } from './road.ts';

/** What a life came to, as far as it has been driven. */
export interface LifeSoFar {
  readonly rows: readonly LifeRow[];
  readonly events: readonly ToldEvent[];
  /** Why its last stretch ended; null where it was cut, or is no stretch. */
  readonly end: LifeEnd | null;
  /** All of it is there. False: legs of a record that was loaded are still to be driven again. */
  readonly whole: boolean;
}

/** What a stretch gave: its rows without the first where that is the last one before it. */
export interface Driven {
  readonly rows: readonly LifeRow[];
  readonly events: readonly ToldEvent[];
  /** Null: it was not driven to its end. */
  readonly end: LifeEnd | null;
}

const NOTHING: Driven = { rows: [], events: [], end: null };

interface Job {
  readonly brake: Brake;
  readonly stretch: Stretch;
}

interface Wanted {
  readonly life: LifeRecord;
  readonly brake: Brake;
  /** The last stretch, when it is to be driven to its end. */
  readonly open: Stretch | null;
}

/** Has a leg been driven as far as the record has it? */
const covers = (driven: Driven | undefined, rows: number): boolean =>
  driven !== undefined && (driven.end !== null || driven.rows.length >= rows);

/** A stretch cut to so many rows. What happened after the last of them is forgotten with it. */
function cutTo(driven: Driven, rows: number, before: LifeRow): Driven {
  if (rows >= driven.rows.length) return driven;
  const left = driven.rows.slice(0, rows);
  const last = left.at(-1) ?? before;
  const events = driven.events.filter(
    (e) =>
      e.distance < last.distance || (e.distance === last.distance && last.at !== 'before click'),
  );
  return { rows: left, events, end: null };
}

function optionsOf({ distance, rowEvery, stopAtLimit, toNextClick }: Stretch): LifeOptions {
  return {
    rowEvery,
    stopAtLimit,
    ...(distance === null ? {} : { distance }),
    ...(toNextClick ? { toNextClick } : {}),
  };
}

/** A row for a state in which nothing is driven. */
function standing(brake: Brake, state: BrakeState, road: Road): LifeRow {
  const options = { distance: state.distance, askLocks: false };
  const [row] = driveLife(rigOfBrake(brake), state, dutyOn(brake, road), options).rows;
  return { ...(row as LifeRow), state };
}

/** Event of a hot press that made the adjuster step; null when it did not. */
export function hotEvent(brake: Brake, { from, hill }: Pick<HotLeg, 'from' | 'hill'>) {
  const { cold, gapCold, stepped, temperature } = hotOf(brake, from, hill);
  if (stepped === 0) return null;
  const steps = stepped === 1 ? words.oneStep : words.steps(stepped);
  return {
    kind: 'stepped hot',
    distance: from.distance,
    tooth: cold.tooth,
    side: null,
    temperature,
    value: gapCold,
    torque: 0,
    text: words.hotPressAtCTo(Math.round(temperature), steps, cold.tooth),
    state: cold,
  } as const satisfies ToldEvent;
}

const clickEvent = (state: BrakeState): ToldEvent => ({
  kind: 'click',
  distance: state.distance,
  tooth: state.tooth,
  side: null,
  temperature: 0,
  value: 1,
  torque: 0,
  text: words.clickToothOnThePedal(state.tooth),
  state,
});

/**
 * The rows and events of the lives of one session. They are kept for the stretches that gave them, so
 * that what is undone is there again at once; a stretch without, as after a reload, is driven again.
 */
export class LifeBook {
  readonly #driver: LifeDriver;
  readonly #heard: (stretch: Stretch, events: readonly ToldEvent[]) => void;
  readonly #driven = new KeptFor<Brake, WeakMap<Stretch, Driven>>();
  readonly #standing = new KeptFor<BrakeState, Kept<LifeRow>>();
  readonly #told = new Kept<LifeSoFar>();
  #wanted: Wanted | null = null;
  #job: Job | null = null;
  #trouble: { readonly of: Stretch; readonly trouble: LifeTrouble } | null = null;
  #progress = 0;
  #changes = 0;

  /** @param heard is told of each news of a stretch with its new events, and of trouble */
  constructor(
    driver: LifeDriver,
    heard: (stretch: Stretch, events: readonly ToldEvent[]) => void = () => {},
  ) {
    this.#driver = driver;
    this.#heard = heard;
  }

  /** Why the driver does not go on; null: it does, or there is nothing to do. */
  get trouble(): LifeTrouble | null {
    return this.#trouble?.trouble ?? null;
  }
  /** Share driven of the stretch that is being driven, 0..1. */
  get progress(): number {
    return this.#progress;
  }

  /**
   * What there is of a life.
   *
   * @param road of the first row, while nothing was driven
   */
  soFar(life: LifeRecord, brake: Brake, road: Road): LifeSoFar {
    const { legs, start } = life;
    return this.#told.of([start, legs, brake, road, this.#changes], () =>
      this.#assemble(start, legs, brake, road),
    );
  }

  #row(brake: Brake, state: BrakeState, road: Road): LifeRow {
    return this.#standing
      .of(state, () => new Kept())
      .of([brake, road], () => standing(brake, state, road));
  }

  /** What a stretch has given so far, whatever the record has of it. */
  given(brake: Brake, stretch: Stretch): Driven {
    return this.#of(brake, stretch) ?? NOTHING;
  }

  #of(brake: Brake, stretch: Stretch): Driven | undefined {
    return this.#driven.of(brake, () => new WeakMap()).get(stretch);
  }

  #assemble(start: BrakeState, legs: readonly Leg[], brake: Brake, chosen: Road): LifeSoFar {
    const first = legs.find((leg): leg is DriveLeg => leg.kind === 'drive');
    let road = first?.stretch.road ?? chosen;
    const rows: LifeRow[] = [this.#row(brake, start, road)];
    const events: ToldEvent[] = [];
    let end: LifeEnd | null = null;
    for (const leg of legs) {
      end = null;
      if (leg.kind === 'click') {
        rows.push({ ...this.#row(brake, leg.state, road), at: 'after click' });
        events.push(clickEvent(leg.state));
      } else if (leg.kind === 'hot') {
        const { cold } = hotOf(brake, leg.from, leg.hill);
        if (leg.rows > 0) rows.push({ ...this.#row(brake, cold, road), at: 'after click' });
        const event = hotEvent(brake, leg);
        if (event) events.push(event);
      } else {
        road = leg.stretch.road;
        const driven = this.#of(brake, leg.stretch);
        const part = cutTo(driven ?? NOTHING, leg.rows, rows.at(-1) as LifeRow);
        rows.push(...part.rows);
        events.push(...part.events);
        end = part.end;
        if (!covers(driven, leg.rows)) return { rows, events, end, whole: false };
      }
    }
    return { rows, events, end, whole: true };
  }

  /**
   * Sees to it that a life is driven as far as the record has it.
   *
   * @param open its last stretch, when that is to be driven to its end; null: none is
   */
  drive(life: LifeRecord, brake: Brake, open: Stretch | null): void {
    this.#wanted = { life, brake, open };
    const lost = this.#trouble?.of;
    if (lost && !life.legs.some((leg) => leg.kind === 'drive' && leg.stretch === lost)) {
      this.#trouble = null;
    }
    this.#next();
  }

  /** Nothing is driven until it is asked for again. */
  pause(): void {
    this.#wanted = null;
    this.#next();
  }

  /** After trouble: the next stretch is tried with a driver that begins anew. */
  again(): void {
    if (!this.#trouble) return;
    this.#stop();
    this.#trouble = null;
  }

  #stop(): void {
    if (!this.#job) return;
    this.#job = null;
    this.#driver.stop();
  }

  /** The first leg that is not driven as far as it should be, by its place. */
  #need(): { readonly index: number; readonly leg: DriveLeg } | null {
    if (!this.#wanted) return null;
    const { brake, life, open } = this.#wanted;
    for (const [index, leg] of life.legs.entries()) {
      if (leg.kind !== 'drive') continue;
      const driven = this.#of(brake, leg.stretch);
      const toItsEnd = leg.stretch === open && !driven?.end;
      if (toItsEnd || !covers(driven, leg.rows)) return { index, leg };
    }
    return null;
  }

  /** Lets the driver drive what is needed next, or rest. */
  #next(): void {
    const need = this.#need();
    const job = this.#job;
    if (job && (job.stretch !== need?.leg.stretch || job.brake !== this.#wanted?.brake)) {
      this.#stop();
    }
    if (need && this.#wanted && !this.#job && !this.#trouble) this.#begin(need, this.#wanted);
  }

  #begin(need: { readonly index: number; readonly leg: DriveLeg }, { brake, life }: Wanted): void {
    const { stretch } = need.leg;
    const { road } = stretch;
    const { rows: earlier } = this.#assemble(
      life.start,
      life.legs.slice(0, need.index),
      brake,
      road,
    );
    const before = earlier.at(-1) as LifeRow;
    const job: Job = { brake, stretch };
    this.#job = job;
    this.#progress = 0;
    const state = stretch.from ?? before.state;
    const order = {
      brake,
      bending: isBending(brake),
      state,
      duty: dutyOn(brake, road),
      options: optionsOf(stretch),
    };
    this.#driver.start(order, this.#ear(job, before));
  }

  #ear(job: Job, before: LifeRow): LifeEar {
    const { brake, stretch } = job;
    let driven = NOTHING;
    let first = true;
    return {
      news: (news) => {
        if (this.#job !== job) return;
        const [one] = news.rows;
        // The first row of a stretch is the last of the one before.
        const twice = first && one && one.at === 'run' && one.distance === before.distance;
        if (one) first = false;
        const events = news.events.map((e) => toldEvent(brake, e));
        driven = {
          rows: [...driven.rows, ...(twice ? news.rows.slice(1) : news.rows)],
          events: [...driven.events, ...events],
          end: news.end,
        };
        const known = this.#of(brake, stretch);
        // Driven again from its start, it has more to show only where it gets farther.
        if (!known || driven.end || driven.rows.length > known.rows.length) {
          this.#driven.of(brake, () => new WeakMap()).set(stretch, driven);
        }
        this.#progress = news.progress;
        this.#trouble = null;
        if (news.end) this.#job = null;
        this.#changes += 1;
        this.#heard(stretch, events);
        this.#next();
      },
      trouble: (trouble) => {
        if (this.#job !== job) return;
        this.#trouble = { of: stretch, trouble };
        // One that is silent may only be slow, and is heard when it speaks.
        if (trouble.kind !== 'silent') this.#job = null;
        this.#changes += 1;
        this.#heard(stretch, []);
      },
    };
  }
}
