import { type Brake, type BrakeState, type Instant, playToStep, type Rig } from '../sim/index.ts';
import { wordsOf } from './adjusters.ts';
import { broughtSlow } from './brought.ts';
import type { ClickShow, Phase, Stage } from './click-show.ts';

/** How far the shoes part at the strut: mm, with what the picture of it is about. */
export interface Climb {
  /** Of a press that is shown; null: the moving brake. */
  readonly phase: Phase | null;
  readonly pace: number;
  readonly there: number;
  /** The most of this press. */
  readonly most: number;
  /** Play before the lever moves, and what it takes for the next tooth; NaN: there is none. */
  readonly slot: number;
  readonly needed: number;
  readonly clicks: boolean;
  readonly tooth: number;
}

/** Whose presses are shown. */
interface Presser {
  readonly rig: Rig;
  readonly brake: Brake;
  readonly reducedMotion: boolean;
  /** Pedal as set, bar. */
  readonly pedal: number;
  /**
   * A step has been taken: it is told.
   *
   * @param energy of its hit, mJ; left out: that of its spring's lift
   * @param ago s of the page
   */
  tellClick(energy?: number, ago?: number): void;
  /** What is on the stage has changed. */
  changed(): void;
}

/** A press that is shown once more, slowly enough to see: a fast-forward's click, or one that does not click. */
export class ShownPress {
  readonly #presser: Presser;
  #show: ClickShow | null = null;

  constructor(presser: Presser) {
    this.#presser = presser;
  }

  get on(): boolean {
    return this.#show !== null;
  }
  /** State of the brake in it; null: none is shown. */
  get state(): BrakeState | null {
    return this.#show?.state ?? null;
  }
  /** How much slower than the clock it runs now; null: none is shown. */
  get pace(): number | null {
    return this.#show?.part.pace ?? null;
  }
  get instant(): Instant | null {
    return this.#show?.instant() ?? null;
  }
  /** Its stages; none: none is shown. */
  get stages(): readonly Stage[] {
    return this.#show?.stages ?? [];
  }

  /** How long the stage that is on is shown yet, s of the page; 0: none is shown. */
  get stageLasts(): number {
    const show = this.#show;
    const stage = show?.stages.find((s) => s.on);
    return show && stage ? show.lasts(show.time, stage.to) : 0;
  }

  /** So far the shoes part in it; null: none is shown. */
  get climb(): Climb | null {
    const show = this.#show;
    if (!show) return null;
    const { most, needed, part, slot, there, clicks } = show;
    return { ...part, most, needed, slot, there, clicks, tooth: show.state.tooth };
  }

  /**
   * Shows a press of a brake, whether it clicks or not; false where there is nothing to be seen of it.
   *
   * @param click only one that clicks
   */
  begin(before: BrakeState, click: boolean): boolean {
    const { rig, brake, pedal, reducedMotion } = this.#presser;
    const slow = broughtSlow();
    if (reducedMotion || !slow || !wordsOf(brake).timbre) return false;
    const show = slow.ClickShow.of(rig, before, pedal > 0 && click);
    if (click && !show.clicks) return false;
    this.#show = show;
    this.#presser.changed();
    return true;
  }

  /** Whoever presses a key or taps has seen enough; a click that is not told yet is told. */
  skip(): void {
    const show = this.#show;
    if (!show) return;
    this.end();
    if (show.clicks && !show.hit) this.#presser.tellClick();
    this.#presser.changed();
  }

  end(): void {
    this.#show = null;
  }

  /** A picture's time: s. */
  advance(seconds: number): void {
    const show = this.#show;
    if (!show) return;
    const { hit } = show;
    const on = show.advance(seconds);
    if (show.hit && !hit) this.#presser.tellClick(undefined, show.lasts(show.hitAt, show.time));
    if (on) return;
    this.end();
    this.#presser.changed();
  }
}

/** So far the shoes of a moving brake part at the strut. */
export function climbOf(
  brake: Brake,
  state: BrakeState,
  { separation, strutLength }: Instant,
  seen: { readonly pace: number; readonly most: number },
): Climb {
  return {
    phase: null,
    ...seen,
    needed: playToStep(brake, state),
    slot: brake.adjuster.lostMotion,
    there: Math.max(0, separation - strutLength),
    clicks: false,
    tooth: state.tooth,
  };
}
