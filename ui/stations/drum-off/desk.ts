import {
  type BackOff,
  type Held,
  isForceLock,
  type LipFit,
  type Lock,
  type Removal,
  removal,
  teethToBackOff,
  unforced,
} from '../../../sim/index.ts';
import { drumOffDesk as texts } from '../../../sim/words/en.ts';
import { stepsOf } from '../../adjusters.ts';
import { putStanding } from '../../record/bench.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { openOrder } from '../order/wants.ts';
import { whichKind } from '../questions/part.ts';
import type { Complaint } from './complaints.ts';
import {
  answer,
  attempt,
  backOff,
  backOne,
  complain,
  type DrumPage,
  type DrumPart,
  type Fastening,
  fasten,
  hold,
  letGoOf,
  leverOff,
  likelyOf,
  type Mine,
  nextQuestion,
  openPage,
  putOn,
  type Question,
  slackenCable,
  type Try,
  tryWorn,
  wornStateOf,
} from './part.ts';
import { foundBy } from './words.ts';

/** How far a drum that is off has been carried, mm along the axle. */
const CARRIED = 90;
/** A pull takes this long on screen, s, and what it catches flashes so long after the stop. */
const PULL_TIME = 0.6;
const FLASH_TIME = 0.7;
/** What the simulator says of the drum as it stands: locks, overlaps, what was tried. */
export class DrumDesk {
  readonly session: Session;
  readonly #now = new Kept<Removal>();
  readonly #tried = new Kept<Removal>();
  readonly #backOffs = new Kept<BackOff>();

  constructor(session: Session) {
    this.session = session;
  }

  get #part(): DrumPart {
    return this.session.moment.parts['drum-off'];
  }
  get held(): Held {
    return this.session.moment.bench.held;
  }
  get page(): DrumPage {
    return this.#part.page;
  }
  get fastening(): Fastening {
    return this.#part.fastening;
  }
  get mine(): Mine {
    return this.#part.mine;
  }
  /** Teeth backed off since the state was put on. */
  get back(): number {
    return this.#part.back;
  }

  /** How the drum stands now. */
  get now(): Removal {
    const { state, rig } = this.session;
    const { held } = this;
    return this.#now.of([state, rig, held], () => removal(rig, state, held));
  }

  get fit(): LipFit {
    return this.now.fit;
  }

  /** The last thing tried, and what came of it. */
  get tried(): { readonly what: Try; readonly found: Removal } | null {
    const { tried } = this.#part;
    if (!tried) return null;
    const { state, rig } = this.session;
    const { what, held } = tried;
    return { what, found: this.#tried.of([state, rig, held], () => removal(rig, state, held)) };
  }

  /** Overlaps tooth by tooth, counted from where the adjuster stood. */
  get backOffs(): BackOff {
    const { state, rig } = this.session;
    const { aside } = this.held;
    return this.#backOffs.of([state, rig, aside], () => {
      const tooth = Math.min(rig.brake.adjuster.teeth, state.tooth + Math.max(0, this.back));
      return teethToBackOff(rig, unforced({ ...state, tooth }), aside);
    });
  }

  /** Teeth to back off counted from where the adjuster stood; null when even tooth 0 holds. */
  get need(): number | null {
    const { teeth } = this.backOffs;
    return teeth === null ? null : teeth + Math.min(0, this.back);
  }

  /** The drum has been pulled off. */
  get off(): boolean {
    const { tried } = this;
    return tried?.what === 'pull' && tried.found.heldBy === null;
  }

  /** Puts on one of the scene's standing states, nothing else out of order. */
  standing(name: string): void {
    this.session.do(putStanding, name);
  }

  complain(c: Complaint): void {
    this.session.do(complain, c);
  }

  backOff(teeth: number): void {
    this.session.do(backOff, teeth);
  }

  leverOff(mm: number): void {
    this.session.do(leverOff, mm);
  }

  hold(change: Partial<Held>): void {
    this.session.do(hold, change);
  }

  attempt(what: Try): void {
    this.session.do(attempt, what);
  }

  /** A worn brake that can be tried instead of one that nothing holds; false where there is none. */
  get canTryWorn(): boolean {
    const { heldBy, fit } = this.now;
    return (
      heldBy === null &&
      fit.height === 0 &&
      this.session.moment.guest === null &&
      wornStateOf(this.session.brake) !== null
    );
  }
  tryWorn(): void {
    this.session.do(tryWorn);
  }

  /** To the pictures of the kinds of brake that this bench is not. */
  whichKind(): void {
    this.session.do(whichKind);
  }

  /** The work in its order, at one of its pages. */
  stepByStep(page: 'back' | 'apart'): void {
    this.session.do(openOrder, page);
  }

  putOn(): void {
    this.session.do(putOn);
  }

  slacken(): void {
    this.session.do(slackenCable);
  }

  fasten(kind: Fastening): void {
    this.session.do(fasten, kind);
  }

  /** The release that one lock answers to, done. */
  release(lock: Lock): void {
    if (isForceLock(lock)) this.session.do(letGoOf, lock);
    else if (lock === 'lever off its stop') this.slacken();
    else if (lock === 'rust at the hub') this.hold({ hubRust: false });
    else if (lock === 'shoes not centred') this.hold({ aside: 0 });
    else if (lock === 'linings rusted on') this.attempt('break');
    else this.backOff(stepsOf(this.session.brake).press);
  }

  /** Since the pull was begun, s of the page; Infinity where it is over, or was never seen. */
  get #since(): number {
    const { tried } = this.#part;
    if (tried?.what !== 'pull' || this.session.reducedMotion) return Number.POSITIVE_INFINITY;
    return this.session.clock - this.session.began(tried);
  }

  /** The drum is on its way: what comes of it is told when it has stopped. */
  get pulling(): boolean {
    return this.#since < PULL_TIME;
  }

  /** What came of the last try, once it has been seen; empty: nothing was tried. */
  get found(): string {
    if (this.pulling) return texts.pulledStraight;
    return this.tried ? foundBy(this.tried.what, this.tried.found) : '';
  }

  /** How far the drum has come on screen, mm along the axle: faster and faster, until it stops at once. */
  slide(): number {
    const { tried } = this;
    if (tried?.what !== 'pull') return 0;
    const to = this.off ? CARRIED : tried.found.signs.slide;
    const t = Math.min(1, this.#since / PULL_TIME);
    return to * t * t;
  }

  /** Strength of the flash where the lip has caught the lining, 0 to 1. */
  get flash(): number {
    if (this.off || this.tried?.found.signs.slides !== 'a little') return 0;
    const since = this.#since - PULL_TIME;
    return since < 0 ? 0 : Math.max(0, 1 - since / FLASH_TIME);
  }

  open(page: DrumPage): void {
    this.session.do(openPage, page);
  }

  /** The question that is asked next; null when all are answered. */
  get question(): Question | null {
    return nextQuestion(this.mine);
  }

  answer(given: Partial<Mine>): void {
    this.session.do(answer, given);
  }

  backOne(): void {
    this.session.do(backOne);
  }

  /** What the answers point to, in the order of release. */
  get likely(): readonly Lock[] {
    return likelyOf(this.mine);
  }
}
