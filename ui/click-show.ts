import {
  BAR,
  type BrakeState,
  createMotion,
  hitOf,
  type Instant,
  leverForm,
  type Motion,
  type MotionRecord,
  playToStep,
  type Rig,
  ringOf,
  strutLength,
} from '../sim/index.ts';
import { stepAt } from './pace.ts';

/** A press as a foot presses, bar and s, and how fast it lets go, bar/s: those of the page's pedal. */
const PRESS = { bar: 40, rise: 0.35, fall: 80 / 0.18 };
/** Seats apart from which the shoes are said to be on their way, mm. */
const MOVED = 0.004;
/** A press that does not click has come to its top where the seats part slower than this, mm/s. */
const SLOW = 15;
/** Steps while what nobody could see goes on, s. */
const FINE = stepAt(100);
/** Nothing is waited for longer than this, s of the brake's time. */
const PATIENCE = 0.08;
/** The lever lies still so long before the pedal is let go, s of the brake's time. */
const AFTER = 5e-4;
/** From first movement to hit it lasts about so long on the page, s, at one of these paces. */
const LASTS = 0.95;
const SLOWEST = [100, 50, 20, 10, 5, 1];
/** The shoes' way back is shown at this pace; the pedal's way up without a click twice as fast as it is. */
const BACK = 15;
const QUICK = 0.5;

/** What the brake is about in a press that is shown. */
export type Phase = 'rest' | 'out' | 'climb' | 'drop' | 'ring' | 'held' | 'release';

/** A stretch of what is shown: until when, s of the brake's time, and how much slower than the clock. */
export interface Part {
  readonly phase: Phase;
  readonly to: number;
  readonly pace: number;
}

/** A stage of what is shown, s of the brake's time, and whether it is on. */
export interface Stage {
  readonly phase: Phase;
  readonly from: number;
  readonly to: number;
  readonly on: boolean;
}

/**
 * The press that makes a tooth drop, or does not: the brake as it stood before is pressed once more, in its own
 * time, and shown. The shoes go out, the lever climbs its tooth, drops or slides back, the pedal is let go. What
 * nobody could see runs slower: from the first movement to the hit it is 8 to 10 ms on the teaching brakes.
 */
export class ClickShow {
  readonly #motion: Motion;
  readonly #records: readonly MotionRecord[];
  readonly #before: BrakeState;
  #at = 0;
  #time = 0;
  readonly parts: readonly Part[];
  /** The lever hits then, s of the brake's time; NaN: this press does not click. */
  readonly hitAt: number;
  /** Shoes apart at the strut before the lever moves, and for the next tooth, mm. */
  readonly slot: number;
  readonly needed: number;
  /** The most that they come apart in what was shown so far, mm. */
  most = 0;

  private constructor(motion: Motion, run: Run, before: BrakeState, slot: number, needed: number) {
    this.#motion = motion;
    this.#records = run.records;
    this.parts = run.parts;
    this.hitAt = run.hitAt;
    this.#before = before;
    this.slot = slot;
    this.needed = needed;
    this.#put();
  }

  /**
   * @param before the state that is pressed
   * @param held the pedal stays down: the shoes' way back is left out
   */
  static of(rig: Rig, before: BrakeState, held = false): ClickShow {
    const state = { ...before, temperature: 20 };
    const motion = createMotion(rig, state);
    const slot = rig.brake.adjuster.lostMotion;
    return new ClickShow(motion, runOf(motion, held), state, slot, playToStep(rig.brake, state));
  }

  /** This press makes a tooth drop. */
  get clicks(): boolean {
    return Number.isFinite(this.hitAt);
  }
  /** The lever has hit, in what was shown. */
  get hit(): boolean {
    return this.#time >= this.hitAt;
  }
  /** s of the brake's time. */
  get time(): number {
    return this.#time;
  }
  get part(): Part {
    return this.parts.find((p) => this.#time < p.to) ?? (this.parts.at(-1) as Part);
  }
  /** The state that is told: the new tooth is counted with the hit. */
  get state(): BrakeState {
    return this.hit ? this.#motion.state : this.#before;
  }

  /** So far the shoes are apart at the strut as it was before, mm. */
  get there(): number {
    const length = strutLength(this.#motion.rig.brake, this.#before.tooth);
    return Math.max(0, this.instant().separation - length);
  }

  /** Its stages one after the other, s of the brake's time. */
  get stages(): readonly Stage[] {
    const out: { phase: Phase; from: number; to: number; on: boolean }[] = [];
    const now = this.part.phase;
    let from = 0;
    for (const { phase, to } of this.parts) {
      const last = out.at(-1);
      if (last?.phase === phase) last.to = to;
      else out.push({ phase, from, to, on: phase === now });
      from = to;
    }
    return out;
  }

  /** A picture's time; false when it is over. */
  advance(seconds: number): boolean {
    let left = seconds;
    for (const { to, pace } of this.parts) {
      if (this.#time >= to) continue;
      const room = (to - this.#time) * pace;
      if (left < room) {
        this.#time += left / pace;
        break;
      }
      left -= room;
      this.#time = to;
    }
    this.#put();
    return this.#time < (this.parts.at(-1) as Part).to;
  }

  /** How long it is shown from one moment to another, s of the page. */
  lasts(from = 0, to = Number.POSITIVE_INFINITY): number {
    let [sum, at] = [0, 0];
    for (const part of this.parts) {
      sum += Math.max(0, Math.min(part.to, to) - Math.max(at, from)) * part.pace;
      at = part.to;
    }
    return sum;
  }

  #put(): void {
    const timeOf = ({ since, steps, dt }: MotionRecord): number => since + steps * dt;
    let next = this.#records[this.#at + 1];
    while (next && timeOf(next) <= this.#time + 1e-9) {
      this.#at += 1;
      next = this.#records[this.#at + 1];
    }
    this.#motion.restore(this.#records[this.#at] as MotionRecord);
    this.most = Math.max(this.most, this.there);
  }

  instant(): Instant {
    return this.#motion.instant();
  }
}

interface Run {
  readonly records: readonly MotionRecord[];
  readonly parts: readonly Part[];
  readonly hitAt: number;
}

/** The press, step by step: fine ones from shortly before the shoes move until the lever lies still. */
function runOf(motion: Motion, held: boolean): Run {
  const { brake } = motion.rig;
  const length = strutLength(brake, motion.tooth);
  const records: MotionRecord[] = [motion.snapshot()];
  const apart = (): number => motion.instant().separation - length;
  let letGo = Number.POSITIVE_INFINITY;
  const step = (): number => {
    const down = Math.min(1, Math.min(motion.time, letGo) / PRESS.rise) * PRESS.bar;
    const bar = Math.max(0, down - Math.max(0, motion.time - letGo) * PRESS.fall);
    const { clicked } = motion.step({ pressure: bar * BAR, turning: 1 });
    records.push(motion.snapshot());
    return clicked;
  };
  const parts: Part[] = [];
  const until = (phase: Phase, to: number, pace: number): void => {
    parts.push({ phase, to, pace });
  };

  while (apart() < MOVED && motion.time < PRESS.rise) step();
  // That step has gone too far: it is gone again by finer ones.
  if (records.length > 1) records.pop();
  motion.restore(records.at(-1) as MotionRecord);
  motion.setStep(FINE);
  while (apart() < MOVED && motion.time < PRESS.rise) step();
  const out = motion.time;
  until('rest', out, 1);

  // Out, and up the tooth: over its crest, or until the linings bear.
  let [climb, clicked, speed] = [out, 0, 1e3];
  let before = apart();
  while (!clicked && speed > SLOW && motion.time < out + PATIENCE) {
    clicked = step();
    const now = apart();
    speed = 0.8 * speed + (0.2 * (now - before)) / motion.dt;
    before = now;
    if (now < brake.adjuster.lostMotion) climb = motion.time;
  }
  const borne = clicked ? (motion.drops[0]?.at ?? motion.time) : motion.time;
  const closing = motion.instant().pressure;
  const pace = SLOWEST.find((p) => (borne - out) * p <= LASTS) ?? 1;
  until('out', Math.min(climb, borne), pace);
  until('climb', borne, pace);
  // What gives in lining and shoe may take it over the crest yet: hardly moving, so nothing is lost if it runs.
  if (!clicked) {
    motion.setStep(1 / 240);
    while (!clicked && motion.time < PRESS.rise) clicked = step();
    if (clicked) {
      records.pop();
      motion.restore(records.at(-1) as MotionRecord);
      motion.setStep(FINE);
      until('climb', motion.time, QUICK);
      const from = motion.time;
      for (clicked = 0; !clicked && motion.time < from + 0.01; ) clicked = step();
    }
  }
  const form = leverForm(brake);
  const drop = clicked ? motion.drops[0] : undefined;
  const hit = form && drop ? hitOf(form, drop) : null;
  const crest = drop?.at ?? motion.time;
  const hitAt = clicked ? crest + (hit?.after ?? 0) : Number.NaN;
  if (clicked) {
    const still = hitAt + AFTER + (form && drop && hit ? ringOf(form, drop, hit) : 0);
    if (crest > borne) until('climb', crest, 5);
    until('drop', hitAt, pace);
    until('ring', still, pace / 2);
    while (motion.time < still) step();
    letGo = motion.time;
  } else {
    until('held', motion.time, QUICK);
    letGo = motion.time;
  }
  if (!held) {
    motion.setStep(1 / 240);
    while (motion.instant().pressure > 1.15 * closing) step();
    if (motion.time > letGo) until('release', motion.time, 1);
  }
  if (!held) {
    motion.setStep(1 / (60 * BACK));
    const home = (): boolean => motion.instant().strutForce > 0;
    const from = motion.time;
    while (!home() && motion.time < from + PATIENCE) step();
    for (let n = 0; n < 3; n++) step();
    until('release', motion.time, BACK);
  }
  return { records, parts, hitAt };
}
