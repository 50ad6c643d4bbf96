import type { FaultId } from '../../../sim/index.ts';
import { type Bases, type SignTable, tableWork } from '../../../sim/workshop/index.ts';
import { bending, ownBrakeOf, rigOfBrake, standingOf, startOf } from '../../record/derive.ts';
import { Piecewise } from '../../record/piecewise.ts';
import { Rebeds } from '../../record/rebeds.ts';
import type { Session } from '../../session.ts';
import { VAN } from '../faults/van.ts';
import van from './van-signs.json' with { type: 'json' };

type Row = readonly [FaultId | 'sound', SignTable['sound']];

/** How many rows are worked out, of how many. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** What faults show, and what stands in for it meanwhile. */
interface Told {
  readonly table: SignTable;
  /** Null: the table is that of the bench's brake under its shoes. */
  readonly working: Progress | null;
  /** The same under rigid shoes; null where its own are rigid, or stand in. */
  readonly rigid: SignTable | null;
}

const PLAIN = van as unknown as SignTable;
const ROWS = Object.keys(PLAIN.faults).length;

/** The pieces of a table: one whose fault this brake cannot have gives no row, since its state cannot be built. */
const piecesOf = (bases: Bases): (() => Row | null)[] =>
  [...tableWork(bases)].flatMap(({ pieces, row }) => {
    let can = true;
    const guarded = (work: () => Row | null) => (): Row | null => {
      if (!can) return null;
      try {
        return work();
      } catch {
        can = false;
        return null;
      }
    };
    const quiet = pieces.map((piece) => () => {
      piece();
      return null;
    });
    return [...quiet, row].map(guarded);
  });

const tableOf = (results: readonly Row[]): SignTable => {
  const all = Object.fromEntries(results) as Record<string, SignTable['sound']>;
  const { sound, ...faults } = all;
  return { sound: sound ?? PLAIN.sound, faults: faults as SignTable['faults'] };
};

/** What each fault shows on the bench's brake, under rigid shoes and under ones that bend: worked out piece by piece. */
export class SignTables {
  readonly #session: Session;
  readonly #plain: Piecewise<string, Row>;
  readonly #bent: Piecewise<string, Row>;
  readonly #rebeds: Rebeds;
  readonly #made = new WeakMap<readonly Row[], SignTable>();

  constructor(session: Session) {
    this.#session = session;
    const tell = () => session.changed();
    this.#plain = new Piecewise(tell);
    this.#bent = new Piecewise(tell);
    this.#rebeds = new Rebeds(tell);
  }

  get told(): Told {
    const { bench, shelf } = this.#session.moment;
    const brake = ownBrakeOf(bench, shelf);
    const key = JSON.stringify([bench.brake, brake.adjuster.kind]);
    const ready = bench.brake.kind === 'scene' && bench.brake.name === VAN.name;
    const named = (name: string) =>
      brake.states.some((s) => s.name === name) ? standingOf(brake, name) : startOf(brake);
    const bases = (): { worn: Bases['worn']; clicked: Bases['clicked'] } => {
      const rig = rigOfBrake(brake);
      return {
        worn: { rig, state: named('Worn-in') },
        clicked: { rig, state: named('Just clicked') },
      };
    };
    const plain = ready
      ? { table: PLAIN, working: null }
      : this.#table(this.#plain, key, () => piecesOf(bases()));
    if (plain.working || !this.#session.bending) return { ...plain, rigid: null };
    // Linings that wore under rigid shoes lie badly under ones that bend: bedded in first.
    const rig = rigOfBrake(bending(brake));
    const { worn, clicked } = bases();
    const states = [worn, clicked].map((b) => this.#rebeds.of(rig, b.state));
    const [a, b] = states;
    if (!a || !b) return { table: plain.table, working: { done: 0, of: ROWS }, rigid: null };
    const bent = this.#table(this.#bent, key, () =>
      piecesOf({ worn: { rig, state: a }, clicked: { rig, state: b } }),
    );
    return bent.working
      ? { table: plain.table, working: bent.working, rigid: null }
      : { ...bent, rigid: plain.table };
  }

  #table(
    rows: Piecewise<string, Row>,
    key: string,
    pieces: () => readonly (() => Row | null)[],
  ): Pick<Told, 'table' | 'working'> {
    const { results, working } = rows.of(key, pieces);
    if (working) return { table: PLAIN, working: { done: results.length, of: ROWS } };
    const made = this.#made.get(results) ?? tableOf(results);
    this.#made.set(results, made);
    return { table: made, working: null };
  }
}
