import type { Motion, Rig } from '../sim/index.ts';
import { bringSlow, broughtSlow } from './brought.ts';
import type { LookBack } from './look-back.ts';
import type { Pace } from './pace.ts';
import { Reel } from './reel.ts';

/** The last click is shown from so long before its crest to so long after, s: climb, fall and ring. */
const AROUND = 4e-3;

/** Whose brake is looked back at. */
interface Looker {
  readonly rig: Rig;
  readonly motion: Motion;
  readonly pace: Pace;
  goAt(pace: Pace): void;
  /** What is on the stage has changed. */
  changed(): void;
}

/** The last ten seconds of a moving brake, and a look back at them. */
export class LookingBack {
  readonly reel = new Reel();
  readonly #looker: Looker;
  #look: LookBack | null = null;

  constructor(looker: Looker) {
    this.#looker = looker;
  }

  /** The look that is being had; null: the brake of now is on the stage. */
  get look(): LookBack | null {
    return this.#look;
  }

  /** Begins to look back, or goes on looking; null when there is nothing yet to look at. */
  begin(): LookBack | null {
    const slow = broughtSlow();
    if (!slow) {
      // It comes in a moment; one that cannot be loaded is asked for again at the next press.
      bringSlow().then(
        () => this.begin(),
        () => undefined,
      );
      return null;
    }
    const { rig, motion } = this.#looker;
    if (!this.#look && Number.isFinite(this.reel.begin)) {
      this.#look = new slow.LookBack(rig, this.reel, motion.time);
      this.#looker.changed();
    }
    return this.#look;
  }

  /** Begins, or ends. */
  turn(): void {
    if (this.#look) this.end();
    else this.begin();
  }

  /** Looks at a moment of the last ten seconds, s of the brake's time. */
  seek(time: number): void {
    const back = this.begin();
    if (!back) return;
    back.playing = false;
    back.seek(time);
    this.#looker.changed();
  }

  /** Plays the marked stretch, once or again and again. */
  play(loop: boolean): void {
    this.begin()?.play(loop);
    this.#looker.changed();
  }

  stop(): void {
    if (this.#look) this.#look.playing = false;
    this.#looker.changed();
  }

  /** The moment that is looked at begins or ends the marked stretch. */
  markHere(which: 'from' | 'to'): void {
    const back = this.begin();
    if (!back) return;
    const { from, to } = back.stretch;
    const { time } = back;
    back.stretch =
      which === 'from'
        ? { from: time, to: Math.max(to, time) }
        : { from: Math.min(from, time), to: time };
    this.#looker.changed();
  }

  /** The last tooth that dropped in, again and again, at ×1/100 or slower. */
  lastClick(): void {
    const at = this.reel.crests.at(-1);
    const back = at === undefined ? null : this.begin();
    if (at === undefined || !back) return;
    if (this.#looker.pace < 100) this.#looker.goAt(100);
    back.stretch = {
      from: Math.max(back.begin, at - AROUND),
      to: Math.min(back.end, at + AROUND),
    };
    back.play(true);
    this.#looker.changed();
  }

  /** The brake of now again: it goes on as it was left. */
  end(): void {
    if (!this.#look) return;
    this.#look = null;
    this.#looker.changed();
  }

  /** Forgets all of it: the brake is another. */
  forget(): void {
    this.reel.cut();
    this.#look = null;
  }
}
