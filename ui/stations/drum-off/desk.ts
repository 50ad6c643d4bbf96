import {
  type BackOff,
  type BrakeState,
  type DrumAnswers,
  type Held,
  isForceLock,
  type LipFit,
  type Lock,
  letGo,
  likelyLocks,
  type Removal,
  type Rig,
  removal,
  teethToBackOff,
  UNHELD,
  unforced,
} from '../../../sim/index.ts';
import { stepsOf } from '../../adjusters.ts';
import type { Session } from '../../session.ts';
import type { Complaint } from './complaints.ts';

/** What the side shows: the brake, its faults to set, the questions, how the drum is fastened. */
export type DrumPage = 'brake' | 'faults' | 'mine' | 'fastening';
export type Fastening = 'studs' | 'screw' | 'nut';
export type Try = 'pull' | 'turn' | 'rock' | 'break';

/** The questions of "Which is mine?" in their order; each is answered by one press. */
export interface Mine {
  readonly fastening?: Fastening;
  readonly turns?: DrumAnswers['turns'];
  readonly slides?: DrumAnswers['slides'];
  readonly slack?: DrumAnswers['slack'];
}
const ORDER = ['fastening', 'turns', 'slides', 'slack'] as const;
export type Question = (typeof ORDER)[number];

/** How far a drum that is off has been carried, mm along the axle. */
const CARRIED = 90;
/** A pull takes this long on screen, s. */
const PULL_TIME = 0.5;
/** Farthest that a cable is set too tight here, mm at the hook. */
const MOST_OFF_STOP = 8;

/** What the station remembers for one session: causes beside the brake's state, what was tried, answers. */
export class DrumDesk {
  readonly session: Session;
  held: Held = UNHELD;
  page: DrumPage = 'brake';
  fastening: Fastening = 'studs';
  mine: Mine = {};
  /** The last thing tried, and what came of it. */
  tried: { readonly what: Try; readonly found: Removal } | null = null;
  /** Teeth backed off since the state was put on. */
  back = 0;
  #seen: BrakeState | null = null;
  #base: {
    readonly state: BrakeState;
    readonly rig: Rig;
    readonly aside: number;
    readonly all: BackOff;
  } | null = null;
  #now: {
    readonly state: BrakeState;
    readonly rig: Rig;
    readonly held: Held;
    readonly removal: Removal;
  } | null = null;
  #pulledAt = 0;
  /** The questions were left to try something on the drum: they go on where they stood. */
  #asking = false;

  constructor(session: Session) {
    this.session = session;
  }

  /** How the drum stands now. */
  get now(): Removal {
    const { state, rig } = this.session;
    this.#follow(state);
    if (this.#now?.state !== state || this.#now.rig !== rig || this.#now.held !== this.held) {
      this.#now = { state, rig, held: this.held, removal: removal(rig, state, this.held) };
    }
    return this.#now.removal;
  }

  get fit(): LipFit {
    return this.now.fit;
  }

  /** Overlaps tooth by tooth, counted from where the adjuster stood. */
  get backOffs(): BackOff {
    const { state, rig } = this.session;
    this.#follow(state);
    const { aside } = this.held;
    if (this.#base?.state !== state || this.#base.rig !== rig || this.#base.aside !== aside) {
      const tooth = Math.min(rig.brake.adjuster.teeth, state.tooth + Math.max(0, this.back));
      this.#base = {
        state,
        rig,
        aside,
        all: teethToBackOff(rig, unforced({ ...state, tooth }), aside),
      };
    }
    return this.#base.all;
  }

  /** Teeth to back off counted from where the adjuster stood; null when even tooth 0 holds. */
  get need(): number | null {
    const { teeth } = this.backOffs;
    return teeth === null ? null : teeth + Math.min(0, this.back);
  }

  /** The drum has been pulled off. */
  get off(): boolean {
    return this.tried?.what === 'pull' && this.tried.found.heldBy === null;
  }

  /** A state that was put on elsewhere starts the count of teeth anew. */
  #follow(state: BrakeState): void {
    if (state === this.#seen) return;
    this.#seen = state;
    this.back = 0;
    this.tried = null;
  }

  #put(state: BrakeState, back = this.back): void {
    this.session.load(state);
    this.#seen = this.session.state;
    this.back = back;
    this.tried = null;
    this.session.changed();
  }

  /** Puts on one of the scene's standing states, nothing else out of order. */
  standing(name: string): void {
    this.session.standing(name);
    this.held = UNHELD;
    this.#follow(this.session.state);
    this.session.changed();
  }

  /** A complaint that a driver comes with, as far as this scene has the state for it. */
  complain(c: Complaint): void {
    this.standing(c.state);
    if (c.leverOff > 0) this.leverOff(c.leverOff);
    this.held = { ...UNHELD, ...c.held };
    this.page = 'brake';
    this.session.changed();
  }

  /** Teeth the adjuster is backed off; negative: stepped on again. */
  backOff(teeth: number): void {
    const { state, brake } = this.session;
    const tooth = Math.max(0, Math.min(brake.adjuster.teeth, state.tooth - teeth));
    if (tooth === state.tooth) return;
    this.#put({ ...state, tooth }, this.back + state.tooth - tooth);
  }

  /** Cable that holds the lever off its stop by so much, mm at the hook; 0: slack. */
  leverOff(mm: number): void {
    const { state } = this.session;
    this.#put({ ...state, leverOffStop: Math.max(0, Math.min(MOST_OFF_STOP, mm)) });
  }

  hold(change: Partial<Held>): void {
    this.held = { ...this.held, ...change };
    this.tried = null;
    this.session.changed();
  }

  /** What is done to the drum is answered beside the brake: a sheet that hides it closes. */
  #toBrake(): void {
    if (this.page === 'mine') this.#asking = this.question !== null;
    this.page = 'brake';
  }

  /** Pull, turn or rock the drum as it stands. */
  attempt(what: Try): void {
    this.#toBrake();
    this.tried = { what, found: this.now };
    this.#pulledAt = this.session.clock;
    if (what === 'break') this.held = { ...this.held, liningsRusted: false };
    this.session.changed();
  }

  /** Puts the drum back on. */
  putOn(): void {
    this.#toBrake();
    this.tried = null;
    this.session.changed();
  }

  /** Slackens the cable until the lever is back on its stop. */
  slacken(): void {
    this.#toBrake();
    this.leverOff(0);
  }

  /** The release that one lock answers to, done. */
  release(lock: Lock): void {
    if (isForceLock(lock)) this.#put(letGo(this.session.state, lock));
    else if (lock === 'lever off its stop') this.slacken();
    else if (lock === 'rust at the hub') this.hold({ hubRust: false });
    else if (lock === 'shoes not centred') this.hold({ aside: 0 });
    else if (lock === 'linings rusted on') this.attempt('break');
    else this.backOff(stepsOf(this.session.brake).press);
  }

  /** How far the drum has come on screen, mm along the axle. */
  slide(): number {
    if (this.tried?.what !== 'pull') return 0;
    const to = this.off ? CARRIED : this.tried.found.signs.slide;
    if (this.session.reducedMotion) return to;
    const t = Math.min(1, (this.session.clock - this.#pulledAt) / PULL_TIME);
    return to * (1 - (1 - t) * (1 - t));
  }

  open(page: DrumPage): void {
    this.page = page;
    if (page === 'mine' && !this.#asking) this.mine = {};
    this.#asking = false;
    this.session.changed();
  }

  /** The question that is asked next; null when all are answered. */
  get question(): Question | null {
    return ORDER.find((q) => this.mine[q] === undefined) ?? null;
  }

  answer(given: Mine): void {
    this.mine = { ...this.mine, ...given };
    this.session.changed();
  }

  /** One press back: the last answer is taken away, or the questions are left. */
  backOne(): void {
    const given = ORDER.filter((q) => this.mine[q] !== undefined);
    const last = this.page === 'mine' ? given.at(-1) : undefined;
    if (last === undefined) this.page = 'brake';
    else
      this.mine = Object.fromEntries(given.filter((q) => q !== last).map((q) => [q, this.mine[q]]));
    this.session.changed();
  }

  /** What the answers point to, in the order of release. */
  get likely(): readonly Lock[] {
    const { turns, slides, slack } = this.mine;
    return turns && slides && slack ? likelyLocks({ turns, slides, slack }) : [];
  }
}
