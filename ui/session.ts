import {
  BAR,
  type Brake,
  type BrakeState,
  balance,
  createMotion,
  createRig,
  freshState,
  type Instant,
  isTold,
  type Motion,
  type MotionRecord,
  type Reading,
  type Rig,
  readings,
  readScene,
  rest,
  standingState,
  startState,
  type TiltCause,
  type Turning,
  UPRIGHT,
} from '../sim/index.ts';
import { wordsOf } from './adjusters.ts';
import { ClickSound } from './sound.ts';
import type { PartId } from './stage/part-names.ts';
import type { ThemeName } from './theme.ts';

export type LayerName = 'fan' | 'comb' | 'forces' | 'names' | 'ghost' | 'heat' | 'loupe' | 'edge';

/** Full travel of the pedal, bar. */
export const MOST_BAR = 80;
/** What a plain press is, bar. */
export const PRESS_BAR = 40;
/** Release from full pressure takes this long, s. */
const RELEASE = 0.18;
/** A key's or the space bar's press comes up over this time, s. */
const RISE = 0.35;
/** Tooth step: climb and drop, s. */
export const CLIMB = 0.09;
export const DROP = 0.04;
/** Steps that "step back" can go. */
const HISTORY = 240;

/** Something that happened to the brake, told once. */
export interface Happening {
  readonly kind: string;
  /** mm driven. */
  readonly distance: number;
  readonly tooth: number;
  readonly text: string;
}

/**
 * Holds the scene, its state and what is shown; one method for each intention of the user. Nothing
 * mechanical is computed here: Motion moves the brake, wearOn wears it, readings reads it.
 */
export class Session extends EventTarget {
  rig: Rig;
  motion: Motion;
  readonly sound = new ClickSound();
  /** Id of the open station. */
  station = '';
  layers: Readonly<Record<LayerName, boolean>> = {
    fan: false,
    comb: false,
    forces: false,
    names: false,
    ghost: false,
    heat: false,
    loupe: false,
    edge: false,
  };
  /** What is out of order along the axle; shown in the edge-on drawing alone. */
  tiltCause: TiltCause = UPRIGHT;
  magnification: 1 | 20 | 40 = 20;
  theme: ThemeName = 'sheet';
  /** Parts whose names are told; null: all of them. */
  revealed: ReadonlySet<PartId> | null = null;
  /** For the wall of a classroom: half drawing, half text, nothing small. */
  wall = false;
  turning: Turning = 1;
  /** Which wheel the drawing shows; the mechanics are each other's mirror image. */
  wheel: 'left' | 'right';
  slow = false;
  /** Show what shoes that bend would do beside the rigid ones. */
  bending = false;
  frozen = false;
  events: readonly Happening[] = [];
  /** When the last tooth dropped in, s of the page's clock; for the flash. */
  clickedAt = Number.NEGATIVE_INFINITY;
  /** Tooth step shown after a fast-forward's click: counts down, s. */
  stepShown = 0;
  readonly reducedMotion: boolean;
  #target = 0;
  #pressure = 0;
  #follow = false;
  #state: BrakeState;
  #rest: { readonly state: BrakeState; readonly instant: Instant } | null = null;
  #history: MotionRecord[] = [];
  #bendingRig: Rig | null = null;
  #clock = 0;
  #guest: string | null = null;

  constructor(rig: Rig, reducedMotion: boolean) {
    super();
    this.rig = rig;
    this.reducedMotion = reducedMotion;
    this.wheel = rig.brake.wheel;
    this.#state = startState(rig.brake);
    this.motion = createMotion(rig, this.#state);
  }

  /** A session on a scene's data; throws with all findings when it cannot be read. */
  static of(scene: unknown, reducedMotion: boolean): Session {
    const result = readScene(scene);
    if (!result.ok) {
      throw new Error(
        result.findings.map((f) => `${f.path}: found ${f.found}; allowed: ${f.allowed}`).join('\n'),
      );
    }
    return new Session(createRig(result.brake), reducedMotion);
  }

  get brake(): Brake {
    return this.rig.brake;
  }
  get state(): BrakeState {
    return this.#state;
  }
  /** What stands on the bench instead of the brake that was chosen. */
  get guest(): string | null {
    return this.#guest;
  }
  get pressure(): number {
    return this.#pressure;
  }
  /** Pedal as set, bar. */
  get pedal(): number {
    return this.#target / BAR;
  }

  /** The released brake in the present state. */
  get rest(): Instant {
    if (this.#rest?.state !== this.#state) {
      this.#rest = { state: this.#state, instant: rest(this.rig, this.#state) };
    }
    return this.#rest.instant;
  }

  instant(): Instant {
    return this.motion.instant();
  }

  readings(instant: Instant): Reading[] {
    return readings(this.brake, this.#state, instant, this.rest);
  }

  /** The same moment by Balance: the always-on check of the page. Relative difference of torque. */
  agreement(instant: Instant): number {
    const b = balance(this.rig, this.#state, {
      pressure: instant.pressure,
      turning: instant.turning,
    });
    const scale = Math.abs(b.torqueOnDrum);
    return scale > 0 ? Math.abs(instant.torqueOnDrum - b.torqueOnDrum) / scale : 0;
  }

  toggleBending(): void {
    this.bending = !this.bending;
    this.changed();
  }

  /**
   * The same press with steel shoes that bend, at new linings only: a lining worn in under rigid shoes
   * fits bending ones badly, and the other way round. Null when it is off or cannot be told.
   */
  bendingInstant(instant: Instant): Instant | null {
    const state = this.#state;
    const worn = state.wear.front.some((w) => w > 0) || state.wear.rear.some((w) => w > 0);
    if (!this.bending || worn || !isTold(instant)) return null;
    this.#bendingRig ??= createRig(this.brake, { flexible: true });
    return balance(this.#bendingRig, state, {
      pressure: instant.pressure,
      turning: instant.turning,
    });
  }

  /** Pedal by hand: the pressure follows at once. */
  press(bar: number): void {
    this.#act();
    this.#follow = true;
    this.#target = Math.max(0, Math.min(MOST_BAR, bar)) * BAR;
    this.changed();
  }

  /** Pedal by key or button: the pressure rises as a foot would press. */
  pressTo(bar: number): void {
    this.press(bar);
    this.#follow = false;
  }

  release(): void {
    this.#target = 0;
    this.#follow = false;
    this.changed();
  }

  turn(turning: Turning): void {
    this.#act();
    this.turning = turning;
    this.changed();
  }

  toggleSlow(): void {
    this.#act();
    this.slow = !this.slow;
    this.changed();
  }

  /** Holds the moment, then goes on one step of the engine a call. */
  oneStep(): void {
    this.#act();
    this.frozen = true;
    this.#advancePedal(this.motion.dt);
    this.#remember();
    this.#clicked(this.motion.step({ pressure: this.#pressure, turning: this.turning }).clicked);
    this.changed();
  }

  stepBack(): void {
    const last = this.#history.pop();
    if (!last) return;
    this.frozen = true;
    this.motion.restore(last);
    this.#state = this.motion.state;
    this.#pressure = this.motion.instant().pressure;
    this.changed();
  }

  get canStepBack(): boolean {
    return this.#history.length > 0;
  }

  go(): void {
    this.frozen = false;
    this.changed();
  }

  toggle(layer: LayerName): void {
    const on = !this.layers[layer];
    this.layers = { ...this.layers, [layer]: on };
    // Loupe and edge-on drawing take the same place.
    if (on && layer === 'loupe') this.layers = { ...this.layers, edge: false };
    if (on && layer === 'edge') this.layers = { ...this.layers, loupe: false };
    this.changed();
  }

  tip(cause: TiltCause): void {
    this.tiltCause = cause;
    this.changed();
  }

  /** Hides the names behind their numbers, to be asked for one by one; or tells all again. */
  hideNames(hidden: boolean): void {
    this.revealed = hidden ? new Set() : null;
    this.changed();
  }

  reveal(part: PartId): void {
    if (!this.revealed) return;
    this.revealed = new Set([...this.revealed, part]);
    this.changed();
  }

  magnify(times: 1 | 20 | 40): void {
    this.magnification = times;
    this.layers = { ...this.layers, fan: true };
    this.changed();
  }

  /** Opens a station: the pedal comes up, the layers that it works with come on. */
  show(station: {
    readonly id: string;
    readonly layers: Readonly<Partial<Record<LayerName, boolean>>>;
  }): void {
    if (this.station === station.id) return;
    this.station = station.id;
    this.release();
    this.layers = { ...this.layers, ...station.layers };
    this.changed();
  }

  /** Puts the brake into a state, at rest; distance, events and trace stay as they are. */
  load(state: BrakeState): void {
    this.release();
    this.#pressure = 0;
    this.#put(state);
  }

  /**
   * Puts another build of the brake on the bench, in the present state or the one given.
   *
   * @param guest what it is, where it is not the brake that was chosen; null: that one again
   */
  refit(
    brake: Brake,
    state: BrakeState = this.motion.state,
    guest: string | null = this.#guest,
  ): void {
    this.#guest = guest;
    this.release();
    this.#pressure = 0;
    this.rig = createRig(brake);
    this.#bendingRig = null;
    this.#rest = null;
    this.motion = createMotion(this.rig, state);
    this.#put(state);
  }

  look(theme: ThemeName): void {
    this.theme = theme;
    this.changed();
  }

  showOnWall(wall: boolean): void {
    this.wall = wall;
    this.changed();
  }

  lookAt(wheel: 'left' | 'right'): void {
    this.wheel = wheel;
    this.changed();
  }

  toggleSound(): void {
    this.sound.on = !this.sound.on;
    this.#act();
    this.changed();
  }

  backToNew(): void {
    this.#act();
    this.#begin(freshState(this.brake));
  }

  /** Puts on one of the scene's standing states; throws on an unknown name. */
  standing(name: string): void {
    this.#act();
    this.#begin(standingState(this.rig, name));
  }

  #begin(state: BrakeState): void {
    this.release();
    this.#pressure = 0;
    this.#put(state);
    this.events = [];
    this.changed();
  }

  #put(state: BrakeState): void {
    this.#state = state;
    this.#history = [];
    this.motion.load(state);
    this.changed();
  }

  #clicked(teeth: number): void {
    if (teeth <= 0) return;
    this.#state = this.motion.state;
    const { distance, tooth } = this.#state;
    this.tell({ kind: 'click', distance, tooth, text: `Click: tooth ${tooth} on the pedal` });
    this.tellClick(false);
  }

  /** Puts what happened into words for whoever listens. */
  tell(happening: Happening): void {
    this.events = [...this.events, happening];
  }

  /**
   * A tooth has dropped in: flash and sound.
   *
   * @param shown the step is shown once more, slowly enough to see
   */
  tellClick(shown: boolean): void {
    this.clickedAt = this.#clock;
    if (shown && !this.reducedMotion) this.stepShown = CLIMB + DROP;
    if (wordsOf(this.brake).heard) this.sound.play();
    this.dispatchEvent(new Event('click'));
    this.changed();
  }

  #remember(): void {
    this.#history.push(this.motion.snapshot());
    if (this.#history.length > HISTORY) this.#history.shift();
  }

  #advancePedal(seconds: number): void {
    const rate =
      this.#target > this.#pressure ? (PRESS_BAR * BAR) / RISE : (MOST_BAR * BAR) / RELEASE;
    const most =
      this.#follow && this.#target > this.#pressure ? Number.POSITIVE_INFINITY : rate * seconds;
    const change = this.#target - this.#pressure;
    this.#pressure += Math.max(-most, Math.min(most, change));
  }

  /** One frame of the page. */
  frame(seconds: number): void {
    this.#clock += seconds;
    this.stepShown = Math.max(0, this.stepShown - seconds * (this.slow ? 0.25 : 1));
    if (this.frozen) return;
    const time = seconds * (this.slow ? 0.25 : 1);
    this.#advancePedal(time);
    // The drum is seen to turn where it is pressed; in Wear it turns too, as on the road.
    const turning = this.reducedMotion && this.#pressure === 0 ? 0 : this.turning;
    this.#clicked(this.motion.advance(time, { pressure: this.#pressure, turning }));
  }

  get clock(): number {
    return this.#clock;
  }

  /** Any action of the user lets the sound begin. */
  acted(): void {
    this.#act();
  }

  #act(): void {
    this.sound.wake();
    if (this.frozen) this.frozen = false;
  }

  /** Tells the page that what it shows has changed. */
  changed(): void {
    this.dispatchEvent(new Event('change'));
  }
}
