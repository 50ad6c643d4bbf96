import {
  BAR,
  type Brake,
  type BrakeState,
  balance,
  createMotion,
  hitOf,
  type Instant,
  leverForm,
  type Motion,
  type MotionPress,
  type MotionRecord,
  type Reading,
  type Rig,
  readings,
  type TiltCause,
  type Turning,
  type Wheel,
} from '../sim/index.ts';
import { labelWords, session as texts } from '../sim/words/en.ts';
import { stepEnergy, wordsOf } from './adjusters.ts';
import { broughtSlow } from './brought.ts';
import { LookingBack } from './looking-back.ts';
import { type Pace, stepAt } from './pace.ts';
import { wheelOf } from './record/across.ts';
import {
  backToNew,
  clicked,
  MOST_BAR,
  PRESS_BAR,
  press,
  pressTo,
  putStanding,
  release,
} from './record/bench.ts';
import { bends, brakeOf, read, restOf, rigOf, withoutDrum } from './record/derive.ts';
import { dialled } from './record/dials.ts';
import { guestTitle } from './record/guest-title.ts';
import {
  amend,
  begin,
  close,
  everywhere,
  type History,
  redo,
  step,
  undo,
} from './record/history.ts';
import type { Intention } from './record/intention.ts';
import { Kept, KeptFor } from './record/kept.ts';
import type { Moment } from './record/moment.ts';
import { layersOf, shownState } from './record/parts.ts';
import { plainMoment } from './record/start.ts';
import {
  bend,
  hideNames,
  type LayerName,
  type Layers,
  look,
  lookAt,
  magnify,
  reveal,
  showOnWall,
  slowDown,
  sound,
  tip,
  toggleLayer,
  turn,
} from './record/view.ts';
import { type Place, walk, wayBack } from './record/walk.ts';
import { type Climb, climbOf, ShownPress } from './shown-press.ts';
import { ClickSound, type Timbre } from './sound.ts';
import type { PartId } from './stage/part-names.ts';
import { measuredWheel } from './stations/inspect/part.ts';
import type { ThemeName } from './theme.ts';
import type { Watch } from './watch.ts';

export { MOST_BAR, PRESS_BAR } from './record/bench.ts';
export type { LayerName } from './record/view.ts';

/** Release from full pressure takes this long, s. */
const RELEASE = 0.18;
/** A key's or the space bar's press comes up over this time, s. */
const RISE = 0.35;
/** A lesson asks its own questions; the others name no parts of the brake (`unnamed` of a station). */
const UNASKED: readonly Moment['station'][] = ['lessons', 'compare', 'apart'];
/** Steps that "step back" can go. */
const HISTORY = 240;
/** How much slower the shoes' way is seen: on the whole brake, and where the loupe shows a tooth. */
const WATCHED_AT = { brake: 50, tooth: 100 } as const;
/** A brake at whose dials one turns is shown by Balance until nothing was turned for so long, s. */
const TURNING = 0.25;
/** Of the moving brake's time that it is then pressed for in one frame, s. */
const CATCH_UP = 0.1;
/** A pedal that is down when a moment is put on is held this long before it is shown, s. */
const HELD = 1.5;

/** A step as it is heard: `detail` of the session's event `click`. */
export interface Heard {
  /** Null: it has no sound. */
  readonly timbre: Timbre | null;
  /** mJ */
  readonly energy: number;
  /** s of the page. */
  readonly ago: number;
}

/** Something that happened to the brake, told once. */
export interface Happening {
  readonly kind: string;
  /** mm driven. */
  readonly distance: number;
  readonly tooth: number;
  readonly text: string;
}

/**
 * The record of the bench with its way back and forth, and the brake that moves as it says. Every
 * intention of the user goes through `do`; the moving brake follows, and tells the record what it did
 * by itself with `amend`. Nothing mechanical is computed here.
 */
export class Session extends EventTarget {
  motion: Motion;
  readonly sound = new ClickSound();
  frozen = false;
  events: readonly Happening[] = [];
  /** When the last tooth dropped in, s of the page's clock; for the flash. */
  clickedAt = Number.NEGATIVE_INFINITY;
  /** What was undone or done again, and when, s of the page's clock. */
  said = { text: '', at: Number.NEGATIVE_INFINITY };
  readonly reducedMotion: boolean;
  /** What the open station does to the moving brake beside the pedal; set by the page. */
  acts: (press: MotionPress) => MotionPress = (press) => press;
  /** Is the moving brake on the stage? Then its quick moves are slowed, and its clicks shown; set by the page. */
  watches: () => boolean = () => false;
  #history: History;
  #pressure = 0;
  #snapshots: ReturnType<Motion['snapshot']>[] = [];
  /** The last ten seconds of the moving brake, and a look back at them. */
  readonly back = new LookingBack(this);
  /** A press that is shown once more. */
  readonly show = new ShownPress(this);
  /** Hits of the falling lever that are still to come, by the moving brake's clock, s, and their energies, mJ. */
  #hits: { readonly at: number; readonly energy: number }[] = [];
  /** How long the moving brake of what was turned at the dials is still to be pressed, s; 0: it is there. */
  #behind = 0;
  readonly #balanced = new Kept<Instant>();
  #watch: Watch | null = null;
  /** The most that the shoes came apart at the strut in the present press or the last one, mm. */
  #reached = 0;
  #clock = 0;
  #revision = 0;
  readonly #magnified = new KeptFor<Layers, Layers>();
  readonly #told = new KeptFor<readonly PartId[], ReadonlySet<PartId>>();
  /** When objects of the record first appeared by something that was done, s. */
  readonly #began = new WeakMap<object, number>();

  /** @param history the record to begin with, and the way back and forth from it */
  constructor(history: History, reducedMotion: boolean) {
    super();
    const moment = history.present;
    this.reducedMotion = reducedMotion;
    this.#history = history;
    this.sound.on = moment.view.sound;
    this.motion = createMotion(this.rig, moment.bench.state);
    this.#settle();
  }

  /** A session on a scene's data; throws with all findings when it cannot be read. */
  static of(scene: object, reducedMotion: boolean): Session {
    const whole = { kind: 'whole', scene: read(scene).scene } as const;
    return new Session(begin(plainMoment('apply', whole)), reducedMotion);
  }

  /** The record as it stands. */
  get moment(): Moment {
    return this.#history.present;
  }
  /** Grows with every change of what the page shows. */
  get revision(): number {
    return this.#revision;
  }
  get brake(): Brake {
    return brakeOf(this.moment);
  }
  get rig(): Rig {
    return rigOf(this.moment);
  }
  get state(): BrakeState {
    return this.moment.bench.state;
  }
  /** State of the brake on the stage: the bench's, or the open station's own. */
  get shown(): BrakeState {
    return this.show.state ?? shownState(this.moment);
  }
  get station(): Moment['station'] {
    return this.moment.station;
  }
  get layers(): Layers {
    const layers = layersOf(this.moment);
    // A click that is shown is looked at through the loupe, whatever else is.
    return this.show.on
      ? this.#magnified.of(layers, () => ({ ...layers, loupe: true, edge: false, polygons: false }))
      : layers;
  }
  get tiltCause(): TiltCause {
    return this.moment.view.tilt;
  }
  get magnification(): 1 | 20 | 40 {
    return this.moment.view.magnification;
  }
  get theme(): ThemeName {
    return this.moment.view.theme;
  }
  /** Parts whose names are told; null: all of them. */
  get revealed(): ReadonlySet<PartId> | null {
    const { revealed } = this.moment.view;
    return revealed && this.#told.of(revealed, () => new Set(revealed));
  }
  /** A part is asked for by its name: what is tapped answers. */
  get asked(): boolean {
    return this.moment.view.asked !== null && this.layers.names && !UNASKED.includes(this.station);
  }
  get wall(): boolean {
    return this.moment.view.wall;
  }
  get turning(): Turning {
    return this.moment.turning;
  }
  /** Which wheel the drawing shows; the mechanics are each other's mirror image. */
  get wheel(): Wheel {
    // The sheet of measurements is filled in wheel by wheel: the drawing turns with it.
    if (this.station === 'inspect') return measuredWheel(this.moment);
    return wheelOf(this.moment);
  }
  /** How much slower than the clock the brake's time runs. */
  get pace(): Pace {
    return this.moment.view.slow;
  }
  /** Is the brake to have shoes that bend? */
  get bending(): boolean {
    return this.moment.view.bending;
  }
  /** Has it? Not before its linings are bedded in under them. */
  get bends(): boolean {
    return bends(this.moment);
  }
  /** What stands on the bench instead of the brake that was chosen. */
  get guest(): string | null {
    return guestTitle(this.moment);
  }
  /** Line pressure now, MPa. */
  get pressure(): number {
    return this.#pressure;
  }
  /** Pedal as set, bar. */
  get pedal(): number {
    return this.moment.pedal;
  }
  get clock(): number {
    return this.#clock;
  }

  /** Does what the user wants: a step that can be undone. */
  do<A extends readonly unknown[]>(intention: Intention<A>, ...asked: A): void {
    const before = this.moment;
    const after = intention.does(before, ...asked);
    const said = after === before ? '' : intention.says(before, after, ...asked);
    this.sound.wake();
    this.frozen = false;
    this.#history = step(this.#history, after, said, intention.joins(...asked), intention.ends);
    // What was undone before is no longer the last thing that happened.
    if (after !== before) this.said = { text: '', at: Number.NEGATIVE_INFINITY };
    // A guest that leaves with its station goes unseen.
    if (before.guest && !after.guest && after.station !== before.station) {
      this.say(texts.hasLeftYoursStandsOn(guestTitle(before)));
    }
    // Who presses or turns means the brake of now.
    if (after.pedal !== before.pedal || after.turning !== before.turning) this.back.end();
    if (before.pedal === 0 && after.pedal > 0) this.#reached = 0;
    this.#noteBegun(before, after);
    this.#follow(before, false);
    this.changed();
  }

  /** What the brake did by itself: it belongs to the step before. */
  amend<A extends readonly unknown[]>(intention: Intention<A>, ...asked: A): void {
    const before = this.moment;
    const does = (m: Moment): Moment => intention.does(m, ...asked);
    this.#history = intention.along
      ? everywhere(this.#history, does)
      : amend(this.#history, does(before));
    this.#follow(before, false);
    this.changed();
  }

  /** Ends a step that others could still join, such as a drag. */
  close(): void {
    this.#history = close(this.#history);
  }

  /** A change from another window: it holds before and after every step. */
  fromOutside(change: (moment: Moment) => Moment): void {
    const before = this.moment;
    this.#history = everywhere(this.#history, change);
    this.#follow(before, true);
    this.changed();
  }

  /** Puts a whole record on, as one step. */
  put(moment: Moment, said: string): void {
    const before = this.moment;
    this.#history = step(this.#history, moment, said);
    this.#follow(before, true);
    this.changed();
  }

  get history(): History {
    return this.#history;
  }
  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }
  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }
  /** What the next undo takes back. */
  get lastDone(): string {
    return this.#history.past.at(-1)?.said ?? '';
  }

  undo(): void {
    this.#walk(undo(this.#history), labelWords.undone);
  }
  redo(): void {
    this.#walk(redo(this.#history), texts.doneAgain);
  }

  /** Goes where Back or Forward of the browser leads. */
  walkTo(place: Place): void {
    const way = wayBack(this.#history, place);
    if (way === 'undo') this.undo();
    else if (way === 'redo') this.redo();
    else this.do(walk, place);
  }

  #walk(walked: ReturnType<typeof undo>, word: string): void {
    if (!walked) return;
    const before = this.moment;
    this.#history = walked.history;
    this.frozen = false;
    this.say(`${word}: ${walked.said}`);
    this.#follow(before, true);
    this.changed();
  }

  /** Tells the user something in a line that goes by itself. */
  say(text: string): void {
    this.said = { text, at: this.#clock };
    this.changed();
  }

  /** Objects one and two levels deep that were not there before: what began with this step. */
  #noteBegun(before: Moment, after: Moment): void {
    if (after.parts === before.parts) return;
    for (const key of Object.keys(after.parts) as (keyof Moment['parts'])[]) {
      const [was, is] = [before.parts[key], after.parts[key]];
      if (was === is) continue;
      for (const value of Object.values(is as object)) {
        const known = Object.values(was as object).includes(value);
        if (typeof value === 'object' && value !== null && !known) {
          this.#began.set(value, this.#clock);
        }
      }
    }
  }

  /** When a part's object first appeared by what was done, s; −∞ when it was loaded, undone or linked. */
  began(object: object): number {
    return this.#began.get(object) ?? Number.NEGATIVE_INFINITY;
  }

  /** The moving brake takes up what the record says. */
  #follow(before: Moment, whole: boolean): void {
    const now = this.moment;
    if (now === before) return;
    this.sound.on = now.view.sound;
    // A tooth that is shown dropping in goes no further than its station.
    if (whole || now.station !== before.station) {
      this.show.end();
      this.clickedAt = Number.NEGATIVE_INFINITY;
      this.back.end();
    }
    const sameBrake = brakeOf(before) === this.brake;
    const moved = this.motion.state === now.bench.state;
    if (!sameBrake || !moved) {
      this.show.end();
      this.#reached = 0;
      this.#snapshots = [];
      this.#forget();
      if (sameBrake) this.motion.load(now.bench.state);
      else this.motion = createMotion(this.rig, now.bench.state);
      this.#pressure = 0;
      this.#behind = 0;
      if (dialled(before, now) && !whole && now.pedal > 0) this.#behind = HELD + TURNING;
      else if (now.pedal > 0 || whole) this.#settle();
    } else if (whole && now.pedal !== before.pedal) {
      this.#forget();
      this.motion.load(now.bench.state);
      this.#pressure = 0;
      this.#settle();
    }
    if (now.station !== before.station) this.events = [];
  }

  /** A moment that is put on with the pedal down is there at once: pressed, and come to rest. */
  #settle(): void {
    this.#behind = 0;
    if (this.moment.pedal === 0) return;
    this.#comeUp(HELD);
    this.#arrived();
  }

  #arrived(): void {
    this.#pressure = this.moment.pedal * BAR;
    this.#took();
  }

  /** The moving brake is pressed on for so long, s, as a foot presses. */
  #comeUp(seconds: number): void {
    const { motion } = this;
    for (let t = 0; t < seconds; t += motion.dt) {
      this.#advancePedal(motion.dt);
      const before = motion.snapshot();
      const press = { pressure: this.#pressure, turning: this.turning };
      if (motion.step(press).clicked === 0) continue;
      // The press that stands in the record has stepped all that it gives: its tooth is in the state.
      motion.restore({ ...before, clickedThisPress: Number.MAX_SAFE_INTEGER });
      motion.step(press);
    }
  }

  /** A brake that was turned at its dials comes up to what Balance shows of it, a part of it in each frame. */
  #catchUp(seconds: number): void {
    if (this.#behind > HELD) {
      this.#behind = Math.max(HELD, this.#behind - seconds);
      return;
    }
    this.#comeUp(Math.min(CATCH_UP, this.#behind));
    this.#behind = Math.max(0, this.#behind - CATCH_UP);
    if (this.#behind > 0) return;
    this.#arrived();
    this.changed();
  }

  /** What the moving brake did to the state goes into the record. */
  #took(): void {
    const { state } = this.motion;
    if (state === this.state) return;
    this.#history = amend(this.#history, clicked.does(this.moment, state));
  }

  /** The released brake in the present state. */
  get rest(): Instant {
    return restOf(this.rig, this.state);
  }

  /** The moment on the stage: of the moving brake, or of what is looked back at or shown. */
  instant(): Instant {
    const seen = this.back.look?.instant() ?? this.show.instant;
    return seen ?? (this.#behind > 0 ? this.#atRest : this.motion.instant());
  }

  /** The pressed brake by Balance, while its moving one is on its way. */
  get #atRest(): Instant {
    const { rig, state, turning, pedal } = this;
    return this.#balanced.of([rig, state, turning, pedal], () =>
      balance(rig, state, { pressure: pedal * BAR, turning }),
    );
  }

  /** What is not the moving brake's present is forgotten: its state is another. */
  #forget(): void {
    this.back.forget();
    this.#hits = [];
  }

  readings(instant: Instant): Reading[] {
    const { shown } = this;
    return readings(this.brake, shown, instant, restOf(this.rig, shown));
  }

  /** Readings to be listed: with the drum off, those that do without it. */
  told(instant: Instant): readonly Reading[] {
    return withoutDrum(this.brake, this.shown, this.readings(instant));
  }

  /** The same moment by Balance: the always-on check of the page. Relative difference of torque. */
  agreement(instant: Instant): number {
    const b = balance(this.rig, this.state, {
      pressure: instant.pressure,
      turning: instant.turning,
    });
    const scale = Math.abs(b.torqueOnDrum);
    return scale > 0 ? Math.abs(instant.torqueOnDrum - b.torqueOnDrum) / scale : 0;
  }

  // What the page's own controls want, by name.
  press(bar: number): void {
    this.do(press, bar);
  }
  pressTo(bar: number): void {
    this.do(pressTo, bar);
  }
  release(): void {
    this.do(release);
  }
  turn(turning: Turning): void {
    this.do(turn, turning);
  }
  goAt(pace: Pace): void {
    this.do(slowDown, pace);
  }
  toggleBending(): void {
    this.do(bend, !this.bending);
  }
  toggleSound(): void {
    this.do(sound, !this.moment.view.sound);
  }
  toggle(layer: LayerName): void {
    this.do(toggleLayer, layer);
  }
  tip(cause: TiltCause): void {
    this.do(tip, cause);
  }
  hideNames(hidden: boolean): void {
    this.do(hideNames, hidden);
  }
  reveal(part: PartId): void {
    this.do(reveal, part);
  }
  magnify(times: 1 | 20 | 40): void {
    this.do(magnify, times);
  }
  look(theme: ThemeName): void {
    this.do(look, theme);
  }
  showOnWall(wall: boolean): void {
    this.do(showOnWall, wall);
  }
  lookAt(wheel: Wheel): void {
    this.do(lookAt, wheel);
  }
  backToNew(): void {
    this.do(backToNew);
  }
  /** Puts on one of the scene's standing states; throws on an unknown name. */
  standing(name: string): void {
    this.do(putStanding, name);
  }

  /** Holds the moment, then goes on one step of the engine a call. */
  oneStep(): void {
    this.sound.wake();
    if (this.back.look) {
      this.back.look.stepBy(1, this.pace);
      this.changed();
      return;
    }
    this.frozen = true;
    this.motion.setStep(stepAt(this.pace));
    this.#advancePedal(this.motion.dt);
    this.#remember();
    const press = this.acts({ pressure: this.#pressure, turning: this.turning });
    this.back.reel.note(this.motion, press);
    this.#clicked(this.motion.step(press).clicked);
    this.#hear();
    this.changed();
  }

  stepBack(): void {
    if (this.back.look) {
      this.back.look.stepBy(-1, this.pace);
      this.changed();
      return;
    }
    const last = this.#snapshots.pop();
    if (!last) return;
    this.frozen = true;
    this.motion.restore(last);
    this.back.reel.cut(this.motion.time);
    this.#hits = [];
    this.#took();
    this.#pressure = this.motion.instant().pressure;
    this.changed();
  }

  get canStepBack(): boolean {
    return this.back.look !== null || this.#snapshots.length > 0;
  }

  go(): void {
    this.frozen = false;
    this.changed();
  }

  #clicked(teeth: number): void {
    if (teeth <= 0) return;
    const before = { ...this.motion.state, tooth: this.motion.tooth - teeth };
    this.#took();
    const { distance, tooth } = this.state;
    this.tell({ kind: 'click', distance, tooth, text: texts.clickToothOnThePedal(tooth) });
    const { drops } = this.motion;
    for (const drop of drops) this.back.reel.crest(drop.at);
    // Where nobody can see a tooth the press is shown once more, with it.
    if (this.show.on) return;
    if (this.#watching && !this.layers.loupe && this.show.begin(before, true)) return;
    const form = leverForm(this.brake);
    if (!form || drops.length === 0) {
      this.tellClick();
      return;
    }
    for (const drop of drops) {
      const { after, energy } = hitOf(form, drop);
      this.#hits.push({ at: drop.at + after, energy });
    }
  }

  /** A hand lets the toothed lever go, so far off its tooth's root, mm: it is heard when it hits, and can be seen again. */
  letLeverFall(lift: number): void {
    const form = leverForm(this.brake);
    const drop = this.motion.letFall(lift);
    if (!form || !drop) return;
    this.back.reel.part();
    this.back.reel.crest(drop.at);
    const { after, energy } = hitOf(form, drop);
    this.#hits.push({ at: drop.at + after, energy });
  }

  /** What the lever's fall has come to by now is heard and seen when it hits. */
  #hear(): void {
    const due = this.#hits.filter(({ at }) => at <= this.motion.time);
    if (due.length === 0) return;
    this.#hits = this.#hits.filter((hit) => !due.includes(hit));
    const ago = (this.motion.time - Math.min(...due.map(({ at }) => at))) * this.paceNow;
    this.tellClick(Math.max(...due.map(({ energy }) => energy)), ago);
  }

  /** Puts what happened into words for whoever listens. */
  tell(happening: Happening): void {
    this.events = [...this.events.slice(-99), happening];
  }

  /**
   * A step has been taken: flash, and a sound where it has one.
   *
   * @param energy of the lever's hit, mJ; that of its spring's lift when left out
   * @param ago when it hit, s of the page before now: within the picture that is told
   */
  tellClick(energy: number = stepEnergy(this.brake, this.state), ago = 0): void {
    this.clickedAt = this.#clock;
    const { timbre } = wordsOf(this.brake);
    if (timbre) this.sound.play(timbre, energy);
    this.dispatchEvent(new CustomEvent<Heard>('click', { detail: { timbre, energy, ago } }));
    this.changed();
  }

  /** A fast-forward's click: shown once more as the press makes it, slowly enough to see, and heard as it hits. */
  showClick(after: BrakeState = this.state): void {
    const shown = after.tooth > 0 && this.show.begin({ ...after, tooth: after.tooth - 1 }, true);
    if (!shown) this.tellClick();
  }

  /** A press is being shown. */
  get showing(): boolean {
    return this.show.on;
  }

  /** Whoever presses a key or taps has seen enough of what is slowed or shown. */
  skipShow(): void {
    this.#watch?.enough();
    this.show.skip();
  }

  /** How far the shoes part at the strut, of what is needed for the next tooth: in what is shown, or now. */
  get climb(): Climb {
    const seen = { pace: this.#watch?.pace ?? 1, most: this.#reached };
    return this.show.climb ?? climbOf(this.brake, this.state, this.instant(), seen);
  }

  /** How much slower than the clock it runs now, by the user's pace or by what is watched. */
  get paceNow(): number {
    return this.show.pace ?? (this.pace === 1 ? (this.#watch?.pace ?? 1) : this.pace);
  }

  #remember(): void {
    this.#snapshots.push(this.motion.snapshot());
    if (this.#snapshots.length > HISTORY) this.#snapshots.shift();
  }

  #advancePedal(seconds: number): void {
    const target = this.pedal * BAR;
    const rate = target > this.#pressure ? (PRESS_BAR * BAR) / RISE : (MOST_BAR * BAR) / RELEASE;
    const most =
      this.moment.follows && target > this.#pressure ? Number.POSITIVE_INFINITY : rate * seconds;
    const change = target - this.#pressure;
    this.#pressure += Math.max(-most, Math.min(most, change));
  }

  /** One frame of the page. */
  frame(seconds: number): void {
    this.#clock += seconds;
    this.show.advance(seconds);
    if (this.back.look) {
      this.back.look.advance(seconds, this.pace, () => this.tellClick());
      return;
    }
    if (this.#behind > 0) {
      this.#catchUp(seconds);
      return;
    }
    if (this.frozen) return;
    if (this.#watching) this.#runWatched(seconds);
    else this.#run(seconds / this.pace);
    this.#hear();
    const { separation, strutLength } = this.motion.instant();
    this.#reached = Math.max(this.#reached, separation - strutLength);
  }

  #run(time: number): void {
    this.motion.setStep(stepAt(this.pace));
    this.#advancePedal(time);
    const press = this.#press();
    const note = (): void => this.back.reel.note(this.motion, press);
    this.#clicked(this.motion.advance(time, press, note));
  }

  /** What is done to the moving brake now. */
  #press(): MotionPress {
    // The drum is seen to turn where it is pressed; in Wear it turns too, as on the road.
    const turning = this.reducedMotion && this.#pressure === 0 ? 0 : this.turning;
    return this.acts({ pressure: this.#pressure, turning });
  }

  /** The pedal is on its way, or what it moves, and the brake is seen as it moves. */
  get #watching(): boolean {
    if (this.pace > 1 || this.reducedMotion || !broughtSlow() || !this.watches()) return false;
    const moves = Math.abs(this.#pressure - this.pedal * BAR) > 1e-9;
    return moves || (this.#watch?.pace ?? 1) > 1;
  }

  #runWatched(seconds: number): void {
    const slow = broughtSlow();
    if (!slow) return;
    this.#watch ??= new slow.Watch();
    const { motion } = this;
    this.#watch.run(seconds, this.layers.loupe ? WATCHED_AT.tooth : WATCHED_AT.brake, {
      motion,
      step: (dt, before) => {
        motion.setStep(dt);
        this.#advancePedal(dt);
        const press = this.#press();
        this.back.reel.note(motion, press, before);
        return motion.step(press).clicked;
      },
      pedal: () => this.#pressure,
      back: (record: MotionRecord, pedal) => {
        motion.restore(record);
        this.back.reel.cut(motion.time);
        this.#pressure = pedal;
      },
      took: (clicked) => this.#clicked(clicked),
      busy: () => this.#hits.length > 0,
    });
  }

  /** Any action of the user lets the sound begin, and what is held goes on. */
  acted(): void {
    this.sound.wake();
    this.frozen = false;
  }

  /** Tells the page that what it shows has changed. */
  changed(): void {
    this.#revision += 1;
    this.dispatchEvent(new Event('change'));
  }
}
