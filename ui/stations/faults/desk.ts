import { faultsDesk as words } from '../../../sim/words/en.ts';
import {
  cases,
  type Examination,
  type ExaminationId,
  examinations,
  type Fault,
  faultOf,
  Investigation,
  type Observed,
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
import { type Van, Vans } from './vans.ts';
import { byCost, type Changed, faultWork, type Parting } from './work.ts';

/** Said after a name: wrong, or right. */
export interface Answer {
  readonly right: boolean;
  readonly name: Fault;
  readonly text: string;
}

/** What the workshop's checks say of the fault that is chosen, and of the van to be found out. */
export class FaultsDesk {
  readonly session: Session;
  readonly #work: Piecewise<string, Changed | Parting>;
  readonly #vans: Vans;
  readonly #van = new Kept<Investigation>();
  readonly #rigid = new Kept<Investigation | null>();
  readonly #all = new Kept<Piecewise<'all', never>>();
  readonly #ruled = new Kept<ReadonlyMap<string, ExaminationId>>();
  readonly #hint = new Kept<Examination | null>();
  readonly #cheapest = new Kept<ReturnType<Investigation['cheapest']>>();

  constructor(session: Session) {
    this.session = session;
    this.#work = new Piecewise(() => session.changed());
    this.#vans = new Vans(() => session.changed());
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
    if (!fault) return { results: [], working: false };
    const van = this.#vanFrom(baseOf(fault.id));
    const shoes = van.rigid ? 'bending' : 'rigid';
    return this.#work.of(`${fault.id}, ${shoes}`, () => [...faultWork(fault, van)]);
  }
  /** The sound van, its shoes as the bench's: rigid till its linings are bedded in under ones that bend. */
  #vanFrom(standing: string): Van {
    const bending = this.session.bending ? this.#vans.bending(standing) : null;
    return bending ?? this.#vans.rigid(standing);
  }
  /** The van's linings are bedded in under shoes that bend; till then its readings are those of rigid ones. */
  get bedding(): boolean {
    const { fault, session } = this;
    if (!session.bending) return false;
    const from = this.mode === 'find' ? this.#case.from : fault ? baseOf(fault.id) : null;
    return from !== null && this.#vans.bending(from) === null;
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

  get #case() {
    const c = cases.find((x) => x.number === this.#part.van) ?? cases[0];
    if (!c) throw new Error('No vans');
    return c;
  }
  get van(): Investigation {
    const c = this.#case;
    const { own } = this.#vanFrom(c.from);
    return this.#van.of([c, own.state], () => new Investigation(c, own.rig, own.state));
  }
  /** What a check finds on the van under rigid shoes; null where its own are rigid. */
  rigid(id: ExaminationId, name?: Fault): readonly Observed[] | null {
    const c = this.#case;
    const { own, rigid } = this.#vanFrom(c.from);
    const van = this.#rigid.of([c, own.state], () =>
      rigid ? new Investigation(c, rigid.rig, rigid.state) : null,
    );
    return van ? van.found(id, name?.id) : null;
  }
  /** Every check of every name is known: worked off one at a time, since all at once would hold the page up. */
  get #known(): boolean {
    const { van } = this;
    const all = this.#all.of([van], () => new Piecewise(() => this.session.changed()));
    const checks = () =>
      examinations.flatMap((e) =>
        van.names.map((f) => () => {
          van.found(e.id, f.id);
          return null;
        }),
      );
    return !all.of('all', checks).working;
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
    return hinted && this.#known ? this.#hint.of([van, taken], () => van.hint(taken)) : null;
  }
  /** A hint or the cheapest way was asked for and is still worked out. */
  get searching(): boolean {
    const { hinted, cheapest } = this.#part;
    return (hinted || cheapest) && !this.#known;
  }
  get answer(): Answer | null {
    const { named } = this.#part;
    const name = this.van.names.find((f) => f.id === named);
    if (!name) return null;
    if (name.id !== this.van.cause.id) return { right: false, name, text: '' };
    const left = this.van.names.length - this.ruled.size;
    const text =
      left === 1
        ? words.nothingElseWasLeft
        : words.rightWithOtherNotYet(left - 1, left === 2 ? words.name : words.names);
    return { right: true, name, text };
  }
  get cheapest(): ReturnType<Investigation['cheapest']> | null {
    const { van } = this;
    return this.#part.cheapest && this.#known
      ? this.#cheapest.of([van], () => van.cheapest())
      : null;
  }
}
