import type { BedRow, Fit, NewFit, PresetRow } from '../../../sim/index.ts';
import { newShoesDesk as words } from '../../../sim/words/en.ts';
import { type Steps, stepEnergy, stepsOf, wordsOf } from '../../adjusters.ts';
import { rigid, rigOfBrake } from '../../record/derive.ts';
import type { Session } from '../../session.ts';
import { openOrder } from '../order/wants.ts';
import type { Pair } from '../station.ts';
import { type CableCost, fittingOf, type Hands, handsOf } from './fitting.ts';
import {
  beddedAt,
  centre,
  goTo,
  leaveTooth,
  measureParts,
  namedTooth,
  presetByGauge,
  pressShoes,
  pushAside,
  type ShoeStep,
  type ShoesPart,
  setCable,
  setTooth,
  slideOn,
  startAgain,
  takeOff,
  takeParts,
  want,
} from './part.ts';

/** Fitting new shoes: what the views show of it, and what their buttons ask for. */
export class ShoeDesk {
  readonly session: Session;

  constructor(session: Session) {
    this.session = session;
  }

  get #part(): ShoesPart {
    return this.session.moment.parts['new-shoes'];
  }
  get #hands(): Hands {
    return handsOf(this.session.brake, this.#part);
  }
  get #fitting() {
    return fittingOf(this.session.rig);
  }

  /** The same with rigid shoes; null where they do not bend. */
  get #plain() {
    const { bends, brake } = this.session;
    return bends ? fittingOf(rigOfBrake(rigid(brake))) : null;
  }
  /** What is told of rigid shoes under what those that bend do; each null where they do not. */
  get rigidFit(): Fit | null {
    return this.#plain?.fit(this.#hands) ?? null;
  }
  get rigidBeds(): readonly BedRow[] | null {
    return this.#plain?.beds(this.#hands) ?? null;
  }
  get rigidCost(): CableCost | null {
    return this.#plain?.cost(this.#hands) ?? null;
  }
  /** Of the new linings at their first press, drum on or off: how they lie, and what they do. */
  get pairs(): readonly Pair[] {
    const plain = this.#plain?.newFit(this.#hands);
    if (!plain) return [];
    const own = this.#fitting.newFit(this.#hands);
    const pair = (
      key: string,
      name: string,
      unit: string,
      digits: number,
      of: (f: NewFit) => number,
    ) => ({
      ...{ key, name, unit, digits },
      ...{ bend: of(own), rigid: of(plain) },
    });
    return [
      pair(words.fitGap, words.gapLeftAt40Bar, 'mm', 3, (f) => f.fit.gap),
      pair(words.firstTorque, words.firstPress40Bar, 'N·m', 0, (f) => f.torque / 1000),
    ];
  }

  get step(): ShoeStep {
    return this.#part.step;
  }
  get thickness(): number {
    return this.#hands.thickness;
  }
  get ground(): number {
    return this.#hands.ground;
  }
  get bore(): number {
    return this.#hands.bore;
  }
  get tooth(): number {
    return this.#hands.tooth;
  }
  get aside(): number {
    return this.#part.aside;
  }
  get drumOn(): boolean {
    return this.#part.drumOn;
  }
  get cable(): ShoesPart['cable'] {
    return this.#part.cable;
  }
  get wanted(): number {
    return this.#part.wanted;
  }
  get clicks(): readonly number[] {
    return this.#part.clicks;
  }
  get silent(): boolean {
    return this.#part.silent;
  }
  get bedded(): number {
    return this.#part.bedded;
  }
  get done(): ShoesPart['done'] {
    return this.#part.done;
  }
  get contact(): boolean {
    return this.#part.contact;
  }

  /** How this adjuster is set by hand. */
  get steps(): Steps {
    return stepsOf(this.session.brake);
  }
  /** "tooth 2", "strut 98.99 mm". */
  named(tooth: number): string {
    return namedTooth(this.session.brake, tooth);
  }

  get fit(): Fit {
    return this.#fitting.fit(this.#hands);
  }
  get rows(): readonly PresetRow[] {
    return this.#fitting.rows(this.#hands);
  }
  /** As the gauge and the lip find it now, with the pair where it stands. */
  get row(): PresetRow {
    return this.#fitting.row(this.#hands);
  }
  /** How the shoes bed in from here; only with the drum on. */
  get beds(): readonly BedRow[] {
    return this.#fitting.beds(this.#hands);
  }
  /** What a cable tightened first costs, at this tooth. */
  get cost(): CableCost {
    return this.#fitting.cost(this.#hands);
  }

  /**
   * By how much the shoes are wider than the bore, so that no gauge can set them and no drum goes on, mm,
   * and the step that helps: setting the strut back, or other parts where even that is not enough. Null
   * where the step can be done.
   */
  hindered(step: ShoeStep): { readonly by: number; readonly first: ShoeStep } | null {
    if (step < 4 || this.drumOn) return null;
    const { difference } = this.row;
    if (difference >= 0) return null;
    const shortest = this.rows[0]?.difference ?? difference;
    return { by: -difference, first: this.tooth > 0 && shortest >= 0 ? 2 : 1 };
  }

  go(step: ShoeStep): void {
    this.session.do(goTo, step);
  }
  restart(): void {
    this.session.do(startAgain);
  }
  parts(sizes: {
    readonly thickness?: number;
    readonly ground?: number;
    readonly bore?: number;
  }): void {
    this.session.do(measureParts, sizes);
  }
  takeParts(): void {
    this.session.do(takeParts);
  }
  setTooth(tooth: number): void {
    this.session.do(setTooth, tooth);
  }
  centre(): void {
    this.session.do(centre);
  }
  push(aside: number): void {
    this.session.do(pushAside, aside);
  }
  want(mm: number): void {
    this.session.do(want, mm);
  }
  preset(): void {
    this.session.do(presetByGauge);
  }
  takeTooth(): void {
    this.session.do(leaveTooth);
  }
  tryDrum(): void {
    this.session.do(slideOn);
  }
  takeOff(): void {
    this.session.do(takeOff);
  }
  /** Presses once, or until nothing clicks; a tooth that drops in is heard. */
  press(until: 'once' | 'silent'): void {
    const { tooth } = this;
    this.session.do(pressShoes, until);
    const { brake, sound } = this.session;
    const { timbre } = wordsOf(brake);
    if (this.tooth > tooth && timbre) sound.play(timbre, stepEnergy(brake, this.session.state));
  }
  setCable(cable: 'home' | 'tight'): void {
    this.session.do(setCable, cable);
  }
  /** The work part by part, from taking apart on. */
  partByPart(): void {
    this.session.do(openOrder, 'apart');
  }
  drive(row: number): void {
    this.session.do(beddedAt, row);
  }
}
