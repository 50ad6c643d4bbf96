import {
  type BedRow,
  type BrakeState,
  bedIn,
  type CableFirst,
  cableFirst,
  type Fit,
  fitOf,
  freshState,
  PRESS,
  type PresetRow,
  presetRow,
  presetRows,
  presetTooth,
  pressUntilSilent,
  type Rig,
  withNewLinings,
} from '../../../sim/index.ts';
import { type Steps, stepsOf, wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import type { Session } from '../../session.ts';

export type ShoeStep = 1 | 2 | 3 | 4 | 5 | 6;

/** Share of the way from new to its largest bore that the drum is worn, where the scene tells no set but the first. */
const WORN = 2 / 3;
/** How far the pair stands aside before it is centred, mm at the front lining's middle. */
const ASIDE = 0.25;
/** How far a cable tightened first holds the lever off its stop, mm at the hook. */
export const HELD_OFF = 3;
/** Distances at which the new linings are looked at, km. */
export const BED_AT = [0, 100, 500, 1000, 2000] as const;

/** One thing done, with what came of it. */
export interface Done {
  readonly text: string;
  readonly good: boolean;
}

class Kept<T> {
  #key: readonly unknown[] = [];
  #value: T | undefined;
  of(key: readonly unknown[], make: () => T): T {
    if (this.#value === undefined || key.some((k, i) => k !== this.#key[i])) {
      this.#key = key;
      this.#value = make();
    }
    return this.#value;
  }
}

/**
 * Fitting new shoes: what is in the hands, how the brake is set, what was done. Steps may be taken in
 * any order. The brake on the bench is this one while the station is open.
 */
export class ShoeDesk {
  readonly session: Session;
  step: ShoeStep = 1;
  thickness = 0;
  /** Diameter the linings are ground for, and of the drum, mm. */
  ground = 0;
  bore = 0;
  tooth = 0;
  aside = ASIDE;
  drumOn = false;
  cable: 'slack' | 'home' | 'tight' = 'slack';
  /** Wanted bore less across, mm. */
  wanted = 0;
  /** Teeth that dropped in at each press since the drum went on. */
  clicks: number[] = [];
  silent = false;
  /** Which row of the bedding in is shown. */
  bedded = 0;
  done: Partial<Record<ShoeStep, Done>> = {};
  /** The last step shows the contact picture, not the cable's table. */
  contact = false;
  #before: BrakeState | null = null;
  #touched = false;
  readonly #rows = new Kept<PresetRow[]>();
  readonly #row = new Kept<PresetRow>();
  readonly #beds = new Kept<BedRow[]>();
  readonly #first = new Kept<CableFirst & { readonly home0: number; readonly held0: number }>();

  #fit: { readonly rig: Rig; readonly key: string; readonly fit: Fit } | null = null;

  constructor(session: Session) {
    this.session = session;
    this.begin();
  }

  /** Everything as the worn shoes left it: strut three quarters out, pair aside, cable slack. */
  begin(): void {
    const { brake } = this.session;
    const { drum, adjuster } = brake;
    const { lining } = brake.shoes.front;
    const told = brake.states.find((s) => s.drumRadius !== null)?.drumRadius;
    const wider = 2 * (told ?? drum.radiusNew + WORN * (drum.radiusMax - drum.radiusNew));
    this.bore = Math.round(wider * 10) / 10;
    this.thickness = lining.thicknessNew;
    this.ground = 2 * lining.groundRadius;
    this.tooth = Math.round(0.75 * adjuster.teeth);
    this.aside = ASIDE;
    this.drumOn = false;
    this.cable = 'slack';
    this.clicks = [];
    this.silent = false;
    this.bedded = 0;
    this.done = {};
    this.step = 1;
    const asNew = presetRow(this.session.rig, freshState(brake)).difference;
    this.wanted = Math.round(asNew * 100) / 100;
  }

  /** The six steps from the first again. */
  restart(): void {
    this.begin();
    this.#put();
  }

  /** How this adjuster is set by hand. */
  get steps(): Steps {
    return stepsOf(this.session.brake);
  }

  /** "tooth 2", "strut 98.99 mm". */
  named(tooth: number): string {
    return wordsOf(this.session.brake).named(this.steps.at(tooth));
  }

  /** Linings, tooth and cable as they are, with the drum on. */
  get state(): BrakeState {
    const { thickness, tooth } = this;
    const fitted = withNewLinings(
      this.session.rig,
      { thickness, groundRadius: this.ground / 2 },
      this.bore / 2,
      tooth,
    );
    return { ...fitted, leverOffStop: this.cable === 'tight' ? HELD_OFF : 0 };
  }

  /** The brake on the bench: without a drum there is nothing near the linings. */
  #put(): void {
    const { drum } = this.session.brake;
    const state = this.drumOn
      ? ((this.bedded > 0 ? this.beds[this.bedded]?.state : null) ?? this.state)
      : { ...this.state, drumRadius: 1.1 * drum.radiusMax };
    this.session.load({ ...state, distance: 0 });
    this.session.changed();
  }

  open(): void {
    this.#before = this.session.state;
    this.#touched = false;
    this.#put();
  }

  /** Leaves the bench with the brake as it was if nothing was done, or if the drum does not go on. */
  close(): void {
    const before = this.#before;
    if (before && !(this.#touched && this.drumOn)) this.session.load(before);
    this.#before = null;
  }

  go(step: ShoeStep): void {
    this.step = step;
    this.contact = false;
    this.session.changed();
  }

  #act(step: ShoeStep, text: string, good: boolean): void {
    this.#touched = true;
    this.done = { ...this.done, [step]: { text, good } };
    this.#put();
  }

  /** What no longer holds once something before it is changed. */
  #undo(): void {
    this.drumOn = false;
    this.clicks = [];
    this.silent = false;
    this.bedded = 0;
    const { 5: _five, 6: _six, ...kept } = this.done;
    this.done = kept;
    this.cable = 'slack';
  }

  get fit(): Fit {
    const { rig } = this.session;
    const { thickness, ground, bore } = this;
    const key = `${thickness} ${ground} ${bore}`;
    if (this.#fit?.rig !== rig || this.#fit.key !== key) {
      const lining = { thickness, groundRadius: ground / 2 };
      this.#fit = { rig, key, fit: fitOf(rig, lining, bore / 2) };
    }
    return this.#fit.fit;
  }

  parts(change: {
    readonly thickness?: number;
    readonly ground?: number;
    readonly bore?: number;
  }): void {
    const { drum } = this.session.brake;
    const { lining } = this.session.brake.shoes.front;
    const within = (value: number, low: number, high: number): number =>
      Math.max(low, Math.min(high, Math.round(value * 100) / 100));
    this.#undo();
    if (change.thickness !== undefined)
      this.thickness = within(change.thickness, lining.thicknessMin, lining.thicknessNew + 2);
    if (change.ground !== undefined)
      this.ground = within(change.ground, 2 * drum.radiusNew - 2, 2 * drum.radiusMax + 2);
    if (change.bore !== undefined)
      this.bore = within(change.bore, 2 * drum.radiusNew, 2 * drum.radiusMax + 1);
    this.#touched = true;
    const { 1: _one, ...kept } = this.done;
    this.done = kept;
    this.#put();
  }

  /** The parts are taken as they are. */
  takeParts(): void {
    const { where } = this.fit;
    const zero = this.rows[0];
    const tight = zero !== undefined && !zero.slidesOn;
    const says = {
      'all along': 'lies all along',
      crown: 'crown first',
      ends: 'ends first',
      toe: 'bears at the toe',
      heel: 'bears at the heel',
    }[where];
    const good = where === 'all along' || where === 'crown';
    this.#act(1, tight ? `${says}, but too thick` : says, good && !tight);
  }

  setTooth(tooth: number): void {
    const next = Math.max(0, Math.min(this.session.brake.adjuster.teeth, tooth));
    if (next === this.tooth) return;
    this.#undo();
    const from = this.tooth;
    this.tooth = next;
    if (this.step === 2)
      this.#act(2, `strut from ${this.steps.at(from)} to ${this.steps.at(next)}`, next < from);
    else {
      const { 4: _four, ...kept } = this.done;
      this.done = kept;
      this.#touched = true;
      this.#put();
    }
  }

  centre(): void {
    this.aside = 0;
    this.#act(3, 'both sides even', true);
  }

  push(aside: number): void {
    this.aside = aside;
    this.#undo();
    this.#act(3, 'pair left aside', false);
  }

  want(mm: number): void {
    this.wanted = Math.max(0.05, Math.min(3, Math.round(mm * 100) / 100));
    this.session.changed();
  }

  /** The adjuster set to the tooth that the gauge asks for. */
  preset(): void {
    const row = presetTooth(this.rows, this.wanted);
    if (!row) {
      this.#act(4, 'no tooth is short enough', false);
      return;
    }
    this.#undo();
    this.tooth = row.tooth;
    this.#act(
      4,
      `${this.named(row.tooth)}, ${number(row.difference, 2)} smaller than the bore`,
      true,
    );
  }

  takeTooth(): void {
    const { row } = this;
    this.#act(
      4,
      `${this.named(row.tooth)}, ${number(row.difference, 2)} smaller than the bore`,
      row.slidesOn,
    );
  }

  get rows(): PresetRow[] {
    const { rig } = this.session;
    return this.#rows.of([rig, this.thickness, this.ground, this.bore, this.cable], () =>
      presetRows(rig, this.state),
    );
  }

  /** As the gauge and the lip find it now, with the pair where it stands. */
  get row(): PresetRow {
    const { rig } = this.session;
    const key = [rig, this.thickness, this.ground, this.bore, this.cable, this.tooth, this.aside];
    return this.#row.of(key, () => presetRow(rig, this.state, this.aside));
  }

  tryDrum(): void {
    const { row } = this;
    if (row.slidesOn) {
      this.drumOn = true;
      this.clicks = [];
      this.silent = false;
      this.#act(5, 'drum on, not pressed yet', true);
      return;
    }
    const over = -Math.min(row.lip, row.bore);
    const where = row.lip < row.bore ? 'the lip' : 'the bore';
    this.#act(5, `over ${where} by ${number(Math.ceil(over * 100) / 100, 2)} a side`, false);
  }

  takeOff(): void {
    this.#undo();
    this.#touched = true;
    this.#put();
  }

  /** Presses once, or until nothing clicks. */
  press(until: 'once' | 'silent'): void {
    if (!this.drumOn) {
      this.#act(5, 'not pressed: the drum is off', false);
      return;
    }
    const { rig } = this.session;
    const run = pressUntilSilent(rig, this.state, PRESS, until === 'once' ? 1 : 400);
    this.clicks = [...this.clicks, ...run.clicks];
    this.tooth = run.state.tooth;
    this.silent = run.silent;
    this.bedded = 0;
    const words = wordsOf(this.session.brake);
    if (words.heard && run.clicks.some((n) => n > 0)) this.session.sound.play();
    const teeth = this.clicks.reduce((a, b) => a + b, 0);
    const presses = this.clicks.filter((n) => n > 0).length;
    const count = words.pressed(teeth, presses, this.steps.amount(this.tooth, teeth));
    this.#act(5, this.silent ? `${count}, then silent` : `${count}, press on`, this.silent);
  }

  setCable(cable: 'home' | 'tight'): void {
    this.cable = cable;
    this.contact = false;
    this.bedded = 0;
    const first = !this.silent;
    if (cable === 'home')
      this.#act(
        6,
        first ? 'lever on its stop, but shoes not set yet' : 'lever on its stop',
        !first,
      );
    else this.#act(6, `lever ${HELD_OFF} mm off its stop`, false);
  }

  /** How the shoes bed in from here; only with the drum on. */
  get beds(): readonly BedRow[] {
    if (!this.drumOn) return [];
    const { rig } = this.session;
    const key = [rig, this.thickness, this.ground, this.bore, this.tooth, this.cable];
    return this.#beds.of(key, () => bedIn(rig, this.state, BED_AT));
  }

  drive(index: number): void {
    this.bedded = Math.max(0, Math.min(BED_AT.length - 1, index));
    this.contact = true;
    this.#put();
  }

  /** What a cable tightened first costs, at this tooth. */
  get first(): CableFirst & { readonly home0: number; readonly held0: number } {
    const { rig } = this.session;
    const home = { ...this.state, leverOffStop: 0 };
    const key = [rig, this.thickness, this.ground, this.bore, this.tooth];
    const at = (leverOffStop: number): number => presetRow(rig, { ...home, leverOffStop }).centre;
    return this.#first.of(key, () => ({
      ...cableFirst(rig, home, HELD_OFF),
      home0: at(0),
      held0: at(HELD_OFF),
    }));
  }
}
