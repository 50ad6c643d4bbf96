import { createMotion, type Instant, type Motion, type Rig } from '../sim/index.ts';
import { type Pace, stepAt } from './pace.ts';
import { type Done, type Reel, type Stretch, timeOf } from './reel.ts';

/**
 * A look at what the moving brake did: a brake of its own goes where the reel says, while the other one waits.
 * At the steps in which it was run, a moment is had again to the bit; slower than that a stretch is run again
 * by finer steps, what was done to it going evenly from one old step to the next.
 */
export class LookBack {
  readonly #reel: Reel;
  readonly #motion: Motion;
  /** End of what can be seen, s: where the other brake waits. */
  readonly end: number;
  /** The stretch that was marked. */
  stretch: Stretch;
  playing = false;
  loop = false;
  /** Steps of its own, finer than the reel's, since it was last put on a record. */
  #finer = false;

  constructor(rig: Rig, reel: Reel, end: number) {
    this.#reel = reel;
    this.end = end;
    this.stretch = { from: Math.max(reel.begin, end - 1), to: end };
    const first = reel.before(end);
    if (!first) throw new Error('Nothing is kept to look back at');
    this.#motion = createMotion(rig, first.cell.from.state);
    this.seek(end);
  }

  get begin(): number {
    return this.#reel.begin;
  }
  get time(): number {
    return this.#motion.time;
  }
  get motion(): Motion {
    return this.#motion;
  }
  instant(): Instant {
    return this.#motion.instant();
  }

  /** Puts the moment on, to the bit of the reel's nearest step at or before it. */
  seek(time: number): void {
    const at = Math.max(this.begin, Math.min(this.end, time));
    const found = this.#reel.before(at);
    if (!found) return;
    const { from, done } = found.cell;
    this.#motion.restore(from);
    this.#finer = false;
    for (const press of done) {
      if (this.#motion.time + from.dt > at + from.dt * 1e-3) break;
      this.#motion.step(press);
    }
  }

  /** One step on or back, as long as a step at the pace. */
  stepBy(way: 1 | -1, pace: Pace): void {
    this.playing = false;
    if (way > 0) this.#on(stepAt(pace));
    else {
      const back = this.time - stepAt(pace);
      this.seek(back);
      // Within an old step it is run again from its beginning.
      while (back - this.time > stepAt(pace) / 2) this.#on(stepAt(pace));
    }
  }

  /** One step as the reel has it, or a finer one; nothing beyond the end. */
  #on(most: number): void {
    const { time } = this.#motion;
    const found = this.#reel.before(time);
    if (!found || time >= this.end - 1e-9) {
      this.playing = false;
      return;
    }
    const { cell, index } = found;
    const start = timeOf(cell.from);
    const n = Math.floor((time - start) / cell.from.dt + 1e-6);
    if (n >= cell.done.length) {
      // It lay still until the next record.
      const next = this.#reel.cells[index + 1];
      if (next) this.#motion.restore(next.from);
      else this.playing = false;
      this.#finer = false;
      return;
    }
    if (most >= cell.from.dt * 0.999 && !this.#finer) {
      this.#motion.setStep(cell.from.dt);
      this.#motion.step(cell.done[n] as Done);
      // The next record is that very moment, to the bit; a finer one takes over from it.
      return;
    }
    this.#finer = true;
    this.#motion.setStep(Math.min(most, cell.from.dt));
    this.#motion.step(this.#between(cell.done, n, (time - start) / cell.from.dt - n, index));
  }

  /** What was done at a share of a step: evenly from what was done in the step before to what in it. */
  #between(done: readonly Done[], n: number, share: number, index: number): Done {
    const now = done[n] as Done;
    const before = done[n - 1] ?? this.#reel.cells[index - 1]?.done.at(-1) ?? now;
    return { ...now, pressure: before.pressure + share * (now.pressure - before.pressure) };
  }

  /** Plays the marked stretch from its beginning. */
  play(loop: boolean): void {
    this.loop = loop;
    this.seek(this.stretch.from);
    this.playing = true;
  }

  /**
   * A picture's time at a pace.
   *
   * @param dropped told of each drop that begins
   */
  advance(seconds: number, pace: Pace, dropped: () => void): void {
    if (!this.playing) return;
    const until = this.time + seconds / pace;
    const step = stepAt(pace);
    for (let n = 0; n < 600 && this.playing && this.time + step / 2 < until; n++) {
      this.#on(step);
      if (this.#motion.drops.length > 0) dropped();
      if (this.time < this.stretch.to - 1e-9) continue;
      if (this.loop) this.seek(this.stretch.from);
      else this.playing = false;
      return;
    }
  }
}
