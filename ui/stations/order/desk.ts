import {
  balance,
  type Instant,
  lipForce,
  openBrake,
  PULLER,
  partToe,
  pressingHoldDown,
  type Removal,
  removal,
  runOutLeft,
  type Side,
  type ToothGives,
  type ToothLift,
  teethToBackOff,
  toothGives,
  toothLift,
  type Unhooking,
  unforced,
  unhooking,
  usualPressure,
} from '../../../sim/index.ts';
import { stepsOf, wordsOf } from '../../adjusters.ts';
import { Kept } from '../../record/kept.ts';
import type { StationId } from '../../record/moment.ts';
import type { Session } from '../../session.ts';
import { wornStateOf } from '../drum-off/part.ts';
import { Bedding } from './bedding.ts';
import { type OrderPart, placeIn } from './part.ts';
import { type Off, type OrderPage, offAt, springsOf, stepsOn } from './plan.ts';
import { Setting } from './setting.ts';
import type { AtLip, Facts, Step } from './step.ts';
import { backOffHere, goToStep, openOrder, tickCheck, tryWornHere } from './wants.ts';
import { apartWords } from './words-apart.ts';
import { backWords } from './words-back.ts';
import { bedWords, setWords } from './words-set.ts';
import { togetherWords } from './words-together.ts';

type After = { readonly page: OrderPage } | { readonly station: StationId };

/** Where the work goes on after a page's last step. */
const AFTER: Readonly<Record<OrderPage, After>> = {
  back: { page: 'apart' },
  apart: { station: 'inspect' },
  together: { page: 'set' },
  set: { page: 'bed' },
  bed: { station: 'inspect' },
};

/** What the work in its order shows of this brake, and what its buttons ask for. */
export class OrderDesk implements Facts {
  readonly session: Session;
  readonly #instant = new Kept<Instant>();
  readonly #removal = new Kept<Removal>();
  readonly #need = new Kept<number | null>();
  readonly #gives = new Kept<ToothGives | null>();
  readonly #out = new Kept<number>();
  readonly #words = new Kept<Readonly<Record<string, Step>>>();
  readonly #set = new Kept<Setting>();
  readonly #bed = new Kept<Bedding>();

  constructor(session: Session) {
    this.session = session;
  }

  get part(): OrderPart {
    return this.session.moment.parts.order;
  }
  get page(): OrderPage {
    return this.part.page;
  }
  get at(): number {
    return placeIn(this.session.moment);
  }
  get ids(): readonly string[] {
    return stepsOn(this.session.brake, this.page);
  }
  get id(): string {
    return this.ids[this.at] as string;
  }
  get byHand(): 'lift' | 'wheel' | 'wedge' {
    return wordsOf(this.session.brake).byHand;
  }
  get onFlats(): boolean {
    return this.session.brake.shoes.front.anchor.kind === 'abutment';
  }
  get off(): ReadonlySet<Off> {
    return offAt(this.session.brake, this.page, this.at);
  }

  /** The page's steps in words. */
  get words(): Readonly<Record<string, Step>> {
    const { page, session } = this;
    const { brake, moment } = session;
    return this.#words.of([page, brake, moment.parts['new-shoes'], moment.bench.state], () => {
      switch (page) {
        case 'back':
          return backWords(this);
        case 'apart':
          return apartWords(this);
        case 'together':
          return togetherWords(this);
        case 'set':
          return setWords(this);
        case 'bed':
          return bedWords(this);
      }
    });
  }
  get step(): Step {
    return this.words[this.id] as Step;
  }

  /** The brake at rest as it stands here: with its drum on or off, and what else is off. */
  get instant(): Instant {
    const { rig, rest, shown } = this.session;
    const { off } = this;
    if (!off.has('drum')) return rest;
    return this.#instant.of([rig, shown], () => openBrake(rig, shown));
  }
  get strutForce(): number {
    return this.off.has('strut') ? 0 : this.instant.strutForce;
  }
  get toeForce(): number {
    return partToe(this.session.brake, this.strutForce);
  }
  get lift(): ToothLift | null {
    const { brake, shown } = this.session;
    return toothLift(brake, shown.tooth, this.strutForce, shown.condition.leverSpring);
  }
  spring(end: 'upper' | 'lower'): Unhooking | null {
    const { brake } = this.session;
    const [index] = springsOf(brake, end);
    return index === undefined ? null : unhooking(brake, this.instant, index);
  }
  /** What the springs of an end pull with when the brake is together, N; null where it has none there. */
  fitted(end: 'upper' | 'lower'): number | null {
    const { brake } = this.session;
    const all = springsOf(brake, end);
    return all.length === 0
      ? null
      : all.reduce((sum, i) => sum + (brake.springs[i]?.fitted ?? 0), 0);
  }
  pressing(side: Side): number {
    return pressingHoldDown(this.session.brake, side);
  }
  get leverOff(): number {
    return this.session.moment.bench.state.leverOffStop;
  }
  get #now(): Removal {
    const { rig, moment } = this.session;
    const { held, state } = moment.bench;
    return this.#removal.of([rig, state, held], () => removal(rig, state, held));
  }
  /** Room at the lip as the bench's brake stands, mm; negative: over it. */
  get lipRoom(): number {
    return -this.#now.fit.greatest;
  }
  /** What a piston has left before it leaves its bore, pressed as usual on worn linings, mm. */
  get runOut(): number {
    const { brake, moment, rig } = this.session;
    const { state } = moment.bench;
    return this.#out.of([rig, state], () =>
      runOutLeft(brake, balance(rig, state, { pressure: usualPressure(brake), turning: 1 })),
    );
  }

  /** What the bench's adjuster gives by one press of a hand's step. */
  get gives(): ToothGives | null {
    const { brake, rig, shown } = this.session;
    const { press } = stepsOf(brake);
    return this.#gives.of([rig, shown], () => {
      const back = Math.min(press, shown.tooth);
      return back > 0 ? toothGives(rig, shown, back) : null;
    });
  }
  /** Steps still to be backed off until the drum passes; null: all are not enough. */
  get need(): number | null {
    const { rig, shown } = this.session;
    return this.#need.of([rig, shown], () => teethToBackOff(rig, unforced(shown)).teeth);
  }
  get needText(): string {
    const { brake, shown } = this.session;
    return stepsOf(brake).taken(shown.tooth, this.need ?? 0);
  }
  get back(): number {
    return this.part.back;
  }
  get lipForce(): AtLip | null {
    const { fit } = this.#now;
    if (!(fit.greatest > 0)) return null;
    const f = lipForce(this.session.brake, fit, PULLER);
    return { pull: PULLER, onShoe: f.onShoe, givesAt: f.givesAt, givesFirst: f.givesFirst };
  }

  get set(): Setting {
    const { rig, moment } = this.session;
    const shoes = moment.parts['new-shoes'];
    return this.#set.of([rig, shoes], () => new Setting(moment, rig));
  }
  get bedding(): Bedding {
    const { rig, moment } = this.session;
    const shoes = moment.parts['new-shoes'];
    return this.#bed.of([rig, shoes], () => new Bedding(rig, this.set.silent));
  }

  isTicked(i: number): boolean {
    return this.part.ticked.includes(`${this.id} ${i}`);
  }
  tick(i: number): void {
    this.session.do(tickCheck, `${this.id} ${i}`);
  }
  open(page: OrderPage): void {
    this.session.do(openOrder, page);
  }
  go(at: number): void {
    this.session.do(goToStep, at);
  }
  backOff(by: number): void {
    this.session.do(backOffHere, by);
  }
  /** A worn brake can be tried in place of one that has nothing to be backed off. */
  get canTryWorn(): boolean {
    const { brake, moment } = this.session;
    return moment.guest === null && wornStateOf(brake) !== null;
  }
  tryWorn(): void {
    this.session.do(tryWornHere);
  }
  get isLast(): boolean {
    return this.at === this.ids.length - 1;
  }
  get after(): After {
    return AFTER[this.page];
  }
}
