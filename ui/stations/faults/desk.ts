import { axleWith } from '../../../sim/index.ts';
import {
  cases,
  type Examination,
  type ExaminationId,
  examinations,
  examine,
  type Fault,
  faultOf,
  Investigation,
  type Observed,
  parted,
} from '../../../sim/workshop/index.ts';
import { Kept } from '../../record/kept.ts';
import { Piecewise } from '../../record/piecewise.ts';
import type { Session } from '../../session.ts';
import {
  anotherVan,
  baseOf,
  chooseFault,
  type FaultsPart,
  giveHint,
  type Mode,
  nameFault,
  pick,
  showCheapest,
  showMode,
  take,
  takeOut,
} from './part.ts';
import { vanRig, vanState } from './van.ts';

/** A reading that the fault changes. */
export interface Changed {
  readonly kind: 'changed';
  readonly by: Examination;
  readonly before: readonly Observed[];
  readonly after: readonly Observed[];
}

/** The cheapest check that parts a fault from a look-alike, with what both show. */
export interface Parting {
  readonly kind: 'parting';
  readonly other: Fault;
  readonly by: Examination | null;
  readonly here: readonly Observed[];
  readonly there: readonly Observed[];
}

/** Said after a name: wrong, or right. */
export interface Answer {
  readonly right: boolean;
  readonly name: Fault;
  readonly text: string;
}

const byCost = [...examinations].sort((a, b) => a.minutes - b.minutes);

/** The readings that a fault changes, and what parts it from its look-alikes: one check at a time. */
function* work(fault: Fault): Generator<() => Changed | Parting | null> {
  const van = { rig: vanRig(), state: vanState(baseOf(fault.id)) };
  const sound = axleWith(van, null);
  const axle = axleWith(van, fault);
  for (const by of examinations) {
    yield () => {
      const before = examine(sound, by.id);
      const after = examine(axle, by.id, fault.allWheels);
      const differ = parted(before, after);
      if (differ.length === 0) return null;
      return { kind: 'changed', by, before: parted(after, before), after: differ };
    };
  }
  for (const other of fault.lookAlikes.map(faultOf)) {
    yield () => {
      const theirs = axleWith(van, other);
      for (const by of byCost) {
        const a = examine(axle, by.id, fault.allWheels);
        const b = examine(theirs, by.id, other.allWheels);
        const there = parted(a, b);
        const here = parted(b, a);
        if (here.length + there.length > 0) return { kind: 'parting', other, by, here, there };
      }
      return { kind: 'parting', other, by: null, here: [], there: [] };
    };
  }
}

/** What the workshop's checks say of the fault that is chosen, and of the van to be found out. */
export class FaultsDesk {
  readonly session: Session;
  readonly #work: Piecewise<string, Changed | Parting>;
  readonly #van = new Kept<Investigation>();
  readonly #ruled = new Kept<ReadonlyMap<string, ExaminationId>>();
  readonly #hint = new Kept<Examination | null>();
  readonly #cheapest = new Kept<ReturnType<Investigation['cheapest']>>();

  constructor(session: Session) {
    this.session = session;
    this.#work = new Piecewise(() => session.changed());
  }

  get #part(): FaultsPart {
    return this.session.moment.parts.faults;
  }
  get mode(): Mode {
    return this.#part.mode;
  }
  /** Null: none is chosen yet. */
  get fault(): Fault | null {
    const { fault } = this.#part;
    return fault === null ? null : faultOf(fault);
  }
  get #worked(): { readonly results: readonly (Changed | Parting)[]; readonly working: boolean } {
    const { fault } = this;
    return fault
      ? this.#work.of(fault.id, () => [...work(fault)])
      : { results: [], working: false };
  }
  get changed(): readonly Changed[] {
    return this.#worked.results.filter((r) => r.kind === 'changed');
  }
  get partings(): readonly Parting[] {
    return this.#worked.results.filter((r) => r.kind === 'parting');
  }
  get working(): boolean {
    return this.#worked.working;
  }
  /** A fault stands on the bench: the stage shows it, and the other stations judge it. */
  get onBench(): boolean {
    return this.session.moment.bench.fault !== null && this.session.moment.guest !== null;
  }

  show(mode: Mode): void {
    this.session.do(showMode, mode);
  }
  choose(id: string): void {
    this.session.do(chooseFault, id);
  }
  restore(): void {
    this.session.do(takeOut);
  }
  another(): void {
    this.session.do(anotherVan);
  }
  take(id: ExaminationId): void {
    this.session.do(take, id);
  }
  pick(id: string): void {
    this.session.do(pick, id);
  }
  name(): void {
    this.session.do(nameFault);
  }
  giveHint(): void {
    this.session.do(giveHint);
  }
  showCheapest(): void {
    this.session.do(showCheapest);
  }

  get van(): Investigation {
    const { van } = this.#part;
    return this.#van.of([van], () => {
      const c = cases.find((x) => x.number === van) ?? cases[0];
      if (!c) throw new Error('No vans');
      return new Investigation(c, vanRig(), vanState(c.from));
    });
  }
  get taken(): readonly ExaminationId[] {
    return this.#part.taken;
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

  /** Names that are out, each with the reading that rules it out; a wrong name by the cheapest. */
  get ruled(): ReadonlyMap<string, ExaminationId> {
    const { van } = this;
    const { taken, wrong } = this.#part;
    return this.#ruled.of([van, taken, wrong], () => {
      const ruled = new Map<string, ExaminationId>();
      for (const f of van.names) {
        const by = wrong.includes(f.id)
          ? van.against(
              f.id,
              byCost.map((e) => e.id),
            )?.by
          : taken.find((id) => van.against(f.id, [id]));
        if (by) ruled.set(f.id, by);
      }
      return ruled;
    });
  }
  /** Name that is picked and still possible; empty: none. */
  get chosen(): string {
    const { chosen } = this.#part;
    return this.ruled.has(chosen) ? '' : chosen;
  }
  get hint(): Examination | null {
    const { van } = this;
    const { hinted, taken } = this.#part;
    return hinted ? this.#hint.of([van, taken], () => van.hint(taken)) : null;
  }
  get answer(): Answer | null {
    const { named } = this.#part;
    const name = this.van.names.find((f) => f.id === named);
    if (!name) return null;
    if (name.id !== this.van.cause.id) return { right: false, name, text: '' };
    const left = this.van.names.length - this.ruled.size;
    const text =
      left === 1
        ? 'Nothing else was left.'
        : `Right, with ${left - 1} other ${left === 2 ? 'name' : 'names'} not yet ruled out.`;
    return { right: true, name, text };
  }
  get cheapest(): ReturnType<Investigation['cheapest']> | null {
    const { van } = this;
    return this.#part.cheapest ? this.#cheapest.of([van], () => van.cheapest()) : null;
  }
}
