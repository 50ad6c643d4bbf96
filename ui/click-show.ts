import {
  BAR,
  type BrakeState,
  createMotion,
  type Drop,
  hitOf,
  type Instant,
  leverForm,
  type Motion,
  type Rig,
  ringOf,
} from '../sim/index.ts';
import { SHOWN_AT, stepAt } from './pace.ts';

/** A press that makes the tooth drop: as a foot presses, bar and s. */
const PRESS = { bar: 40, rise: 0.35 };
/** Shown from so long before the crest, s of the brake's time. */
const BEFORE = 3e-3;
/** It stays in sight so long after it has come to rest, s of the brake's time. */
const AFTER = 1e-3;

/**
 * A click of a fast-forward, seen as the press makes it: the brake as it stood before is pressed once more,
 * in its own time, and shown from shortly before the crest until the lever lies still.
 */
export class ClickShow {
  readonly #motion: Motion;
  readonly #end: number;
  readonly #hit: number;
  #pressure: number;
  #time: number;
  /** The lever has hit, in what was shown. */
  hit = false;

  private constructor(motion: Motion, pressure: number, hit: number, end: number) {
    this.#motion = motion;
    this.#pressure = pressure;
    this.#time = motion.time;
    this.#hit = hit;
    this.#end = end;
  }

  /** The click by which a brake comes to a state; null where its adjuster does not drop, or not so. */
  static of(rig: Rig, after: BrakeState): ClickShow | null {
    const form = leverForm(rig.brake);
    if (!form || after.tooth === 0) return null;
    const motion = createMotion(rig, { ...after, tooth: after.tooth - 1, temperature: 20 });
    const pressureAt = (time: number): number => Math.min(1, time / PRESS.rise) * PRESS.bar * BAR;
    const kept: ReturnType<Motion['snapshot']>[] = [];
    let drop: Drop | undefined;
    while (!drop && motion.time < PRESS.rise + 0.05) {
      kept.push(motion.snapshot());
      motion.step({ pressure: pressureAt(motion.time), turning: 1 });
      drop = motion.drops[0];
    }
    if (!drop) return null;
    const back = Math.max(0, kept.length - 1 - Math.ceil(BEFORE / motion.dt));
    motion.restore(kept[back] as ReturnType<Motion['snapshot']>);
    motion.setStep(stepAt(SHOWN_AT));
    let crest: Drop | undefined;
    // A shoe that creeps over the crest passes it a little sooner or later at finer steps.
    const early: ReturnType<Motion['snapshot']>[] = [];
    while (!crest && motion.time < PRESS.rise + 0.05) {
      early.push(motion.snapshot());
      if (early.length > BEFORE / motion.dt) early.shift();
      motion.step({ pressure: pressureAt(motion.time), turning: 1 });
      crest = motion.drops[0];
    }
    const from = early[0];
    if (!crest || !from) return null;
    const hit = hitOf(form, crest);
    const end = crest.at + hit.after + ringOf(form, crest, hit) + AFTER;
    motion.restore(from);
    return new ClickShow(motion, PRESS.bar * BAR, crest.at + hit.after, end);
  }

  /** A picture's time; false when it is over. */
  advance(seconds: number): boolean {
    const motion = this.#motion;
    this.#time += seconds / SHOWN_AT;
    while (motion.time < Math.min(this.#time, this.#end)) {
      const pressure = Math.min(1, motion.time / PRESS.rise) * this.#pressure;
      motion.step({ pressure, turning: 1 });
    }
    if (this.#time >= this.#hit) this.hit = true;
    return this.#time < this.#end;
  }

  instant(): Instant {
    return this.#motion.instant();
  }
}
