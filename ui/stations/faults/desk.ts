import { type Axle, axleWith, type Brake, type BrakeState } from '../../../sim/index.ts';
import {
  cases,
  type Examination,
  type ExaminationId,
  examinations,
  examine,
  type Fault,
  faultOf,
  faults,
  Investigation,
  type Observed,
  parted,
} from '../../../sim/workshop/index.ts';
import type { Session } from '../../session.ts';
import { VAN_TITLE, vanRig, vanState } from './van.ts';

export type Mode = 'browse' | 'find';

/** A reading that the fault changes. */
export interface Changed {
  readonly by: Examination;
  readonly before: readonly Observed[];
  readonly after: readonly Observed[];
}

/** The cheapest check that parts a fault from a look-alike, with what both show. */
export interface Parting {
  readonly other: Fault;
  readonly by: Examination | null;
  readonly here: readonly Observed[];
  readonly there: readonly Observed[];
}

/** What the station remembers for a session. */
export class FaultsDesk {
  mode: Mode = 'browse';
  /** Counts what changed, for the page. */
  rev = 0;
  fault: Fault = faults[0] as Fault;
  changed: readonly Changed[] = [];
  partings: readonly Parting[] = [];
  /** Put on the bench: then the stage shows it, and the other stations work with it. */
  onBench = false;
  working = false;
  /** Find the fault. */
  seed = 1;
  van: Investigation;
  taken: ExaminationId[] = [];
  ruled = new Map<string, ExaminationId>();
  chosen = '';
  hint: Examination | null = null;
  /** Said after a name: wrong, or right. */
  answer: { readonly right: boolean; readonly name: Fault; readonly text: string } | null = null;
  cheapest: { readonly minutes: number; readonly taken: readonly ExaminationId[] } | null = null;
  #session: Session;
  /** The bench as it was before the first fault. */
  #before: {
    readonly brake: Brake;
    readonly state: BrakeState;
    readonly guest: string | null;
  } | null = null;
  #job = 0;
  #place = 0;

  constructor(session: Session) {
    this.#session = session;
    this.van = this.#open(5);
  }

  #open(number: number): Investigation {
    const c = cases.find((x) => x.number === number) ?? cases[0];
    if (!c) throw new Error('No vans');
    return new Investigation(c, vanRig(), vanState(c.from));
  }

  #tell(): void {
    this.rev += 1;
    this.#session.changed();
  }

  /** State of the van from which a fault is shown: a tooth has just dropped where heat then adds more. */
  #base(fault: Fault): BrakeState {
    return vanState(fault.id === 'stepped hot' ? 'Just clicked' : 'Worn-in');
  }

  show(mode: Mode): void {
    this.mode = mode;
    this.#session.layers = {
      ...this.#session.layers,
      fan: mode === 'browse',
      comb: false,
      forces: false,
      loupe: false,
      ghost: false,
      names: false,
      heat: false,
    };
    if (mode === 'find') this.#sound();
    else if (this.changed.length === 0) this.choose(this.fault.id);
    else this.#put();
    this.#tell();
  }

  #keep(): void {
    this.#before ??= {
      brake: this.#session.brake,
      state: this.#session.state,
      guest: this.#session.guest,
    };
  }

  /** A sound van stands on the bench while a cause is hidden. */
  #sound(): void {
    this.#keep();
    this.onBench = false;
    this.#session.refit(vanRig().brake, vanState('Worn-in'), VAN_TITLE);
  }

  /** Puts the chosen fault on the bench. */
  #put(): void {
    this.#keep();
    const { right } = this.#axle(this.fault);
    this.onBench = true;
    this.#session.refit(right.rig.brake, right.state, `${VAN_TITLE}: ${this.fault.name}`);
  }

  /** Puts the bench back as it was before the first fault. */
  restore(): void {
    if (!this.#before) return;
    this.#session.refit(this.#before.brake, this.#before.state, this.#before.guest);
    this.#before = null;
    this.onBench = false;
    this.#tell();
  }

  /** On leaving: a hidden van is taken off the bench; a fault that was chosen stays to be tried. */
  leave(): void {
    this.#job += 1;
    this.working = false;
    if (this.mode === 'find') this.restore();
  }

  #axle(fault: Fault): Axle {
    return axleWith({ rig: vanRig(), state: this.#base(fault) }, fault);
  }

  /** Chooses a fault to look at: on the bench at once, its readings one after the other. */
  choose(id: string): void {
    this.fault = faultOf(id);
    this.changed = [];
    this.partings = [];
    this.#put();
    const { fault } = this;
    const sound = axleWith({ rig: vanRig(), state: this.#base(fault) }, null);
    const axle = this.#axle(fault);
    const queue: (() => void)[] = examinations.map((by) => () => {
      const before = examine(sound, by.id);
      const after = examine(axle, by.id, fault.allWheels);
      const differ = parted(before, after);
      if (differ.length === 0) return;
      const was = parted(after, before);
      this.changed = [...this.changed, { by, before: was, after: differ }];
    });
    for (const other of fault.lookAlikes.map(faultOf)) {
      queue.push(() => {
        const theirs = axleWith({ rig: vanRig(), state: this.#base(fault) }, other);
        const byCost = [...examinations].sort((a, b) => a.minutes - b.minutes);
        let found: Parting = { other, by: null, here: [], there: [] };
        for (const by of byCost) {
          const a = examine(axle, by.id, fault.allWheels);
          const b = examine(theirs, by.id, other.allWheels);
          const there = parted(a, b);
          const here = parted(b, a);
          if (here.length + there.length === 0) continue;
          found = { other, by, here, there };
          break;
        }
        this.partings = [...this.partings, found];
      });
    }
    this.#run(queue);
  }

  /** Works a queue off without holding the page up: one check at a time. */
  #run(queue: (() => void)[]): void {
    const job = ++this.#job;
    this.working = true;
    const next = (): void => {
      if (job !== this.#job) return;
      const task = queue.shift();
      if (task) task();
      this.working = queue.length > 0;
      this.#tell();
      if (this.working) setTimeout(next, 0);
    };
    this.#tell();
    setTimeout(next, 0);
  }

  /** The next van: seeded, so that the same seed brings the same row of vans. */
  another(): void {
    this.#place = (this.#place + 1) % cases.length;
    this.#load(order(this.seed)[this.#place] as number);
  }

  /** A certain van, by its number. */
  bring(number: number): void {
    this.#load(number);
  }

  #load(number: number): void {
    this.van = this.#open(number);
    this.taken = [];
    this.ruled = new Map();
    this.chosen = '';
    this.hint = null;
    this.answer = null;
    this.cheapest = null;
    this.#tell();
  }

  get minutes(): number {
    return this.taken.reduce((sum, id) => {
      const e = examinations.find((x) => x.id === id);
      return sum + (e ? this.van.minutes(e) : 0);
    }, 0);
  }

  /** May be taken now. */
  open(e: Examination): boolean {
    return !e.needs || this.taken.includes(e.needs);
  }

  take(id: ExaminationId): void {
    if (this.taken.includes(id)) return;
    this.taken = [...this.taken, id];
    this.hint = null;
    if (this.answer && !this.answer.right) this.answer = null;
    for (const f of this.van.names) {
      if (this.ruled.has(f.id)) continue;
      const against = this.van.against(f.id, [id]);
      if (against) this.ruled.set(f.id, against.by);
    }
    if (this.ruled.has(this.chosen)) this.chosen = '';
    this.#tell();
  }

  pick(id: string): void {
    this.chosen = id;
    this.#tell();
  }

  /** Names the fault. A wrong name costs nothing: it is told which reading rules it out. */
  name(): void {
    const name = this.van.names.find((f) => f.id === this.chosen);
    if (!name) return;
    if (name.id === this.van.cause.id) {
      const left = this.van.names.length - this.ruled.size;
      const text =
        left === 1
          ? 'Nothing else was left.'
          : `Right, with ${left - 1} other ${left === 2 ? 'name' : 'names'} not yet ruled out.`;
      this.answer = { right: true, name, text };
    } else {
      const byCost = [...examinations].sort((a, b) => a.minutes - b.minutes).map((e) => e.id);
      const against = this.van.against(name.id, byCost);
      if (against) this.ruled.set(name.id, against.by);
      this.chosen = '';
      this.answer = { right: false, name, text: '' };
    }
    this.#tell();
  }

  giveHint(): void {
    this.hint = this.van.hint(this.taken);
    this.#tell();
  }

  showCheapest(): void {
    this.cheapest = this.van.cheapest();
    this.#tell();
  }
}

/** Numbers of the vans in an order drawn from a seed: a linear congruential row and Fisher–Yates. */
export function order(seed: number): number[] {
  const all = cases.map((c) => c.number);
  let x = seed >>> 0;
  for (let i = all.length - 1; i > 0; i--) {
    x = (Math.imul(x, 1664525) + 1013904223) >>> 0;
    const j = x % (i + 1);
    [all[i], all[j]] = [all[j] as number, all[i] as number];
  }
  return all;
}
