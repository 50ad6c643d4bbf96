import {
  type Axle,
  axleWith,
  type BrakeState,
  type FaultId,
  type Rig,
  type WheelBrake,
} from '../index.ts';
import type { Case } from './cases.ts';
import { type Examination, type ExaminationId, examinations } from './examinations.ts';
import { examine, minutesOf, parted } from './examine.ts';
import type { Fault } from './fault-types.ts';
import { faultOf } from './faults.ts';
import type { Observed } from './finding-text.ts';

/** What a name would have shown at an examination. */
export interface Against {
  readonly by: ExaminationId;
  readonly would: readonly Observed[];
}

/** A case with its vans built: the one that stands there, and one for each name. Reads lazily. */
export class Investigation {
  readonly case: Case;
  readonly cause: Fault;
  readonly names: readonly Fault[];
  readonly axle: Axle;
  readonly #others: ReadonlyMap<string, Axle>;
  readonly #found = new Map<string, readonly Observed[]>();

  /** @param base the sound brake and its state that the van starts from */
  constructor(c: Case, rig: Rig, base: BrakeState) {
    this.case = c;
    this.cause = faultOf(c.cause);
    this.names = c.names.map(faultOf);
    const sound: WheelBrake = { rig, state: base };
    this.#others = new Map(this.names.map((f) => [f.id, axleWith(sound, f)]));
    this.axle = this.#others.get(c.cause) as Axle;
  }

  /** What an examination finds on a van with the named fault; on this van when left out. */
  found(id: ExaminationId, name = this.case.cause): readonly Observed[] {
    const key = `${name}/${id}`;
    const known = this.#found.get(key);
    if (known) return known;
    const axle = this.#others.get(name) ?? this.axle;
    const made = examine(axle, id, faultOf(name).allWheels);
    this.#found.set(key, made);
    return made;
  }

  minutes(e: Examination): number {
    return minutesOf(e, this.axle);
  }

  /** The first of these examinations that speaks against a name; null when none does. */
  against(name: FaultId, taken: readonly ExaminationId[]): Against | null {
    for (const by of taken) {
      const would = parted(this.found(by), this.found(by, name));
      if (would.length > 0) return { by, would };
    }
    return null;
  }

  /** Names that what was taken leaves possible. */
  left(taken: readonly ExaminationId[]): Fault[] {
    return this.names.filter((f) => !this.against(f.id, taken));
  }

  /**
   * The cheapest way to certainty: the set of examinations with the fewest minutes after which only
   * the cause is left. Every set is tried; the story is always heard first.
   */
  cheapest(): { readonly minutes: number; readonly taken: readonly ExaminationId[] } {
    const others = this.names.filter((f) => f.id !== this.case.cause);
    const parts = examinations.map((e) =>
      others.map((f) => parted(this.found(e.id), this.found(e.id, f.id)).length > 0),
    );
    const cost = examinations.map((e) => this.minutes(e));
    const needed = examinations.map((e) => examinations.findIndex((x) => x.id === e.needs));
    let best = { minutes: Number.POSITIVE_INFINITY, taken: [] as ExaminationId[] };
    for (let set = 1; set < 1 << examinations.length; set += 2) {
      let minutes = 0;
      for (let i = 0; i < examinations.length; i++) {
        if (!(set & (1 << i))) continue;
        minutes += cost[i] as number;
        const needs = needed[i] as number;
        if (needs >= 0 && !(set & (1 << needs))) minutes = Number.POSITIVE_INFINITY;
      }
      if (minutes >= best.minutes) continue;
      const sure = others.every((_, o) => parts.some((p, i) => set & (1 << i) && p[o]));
      if (sure) {
        const taken = examinations.filter((_, i) => set & (1 << i)).map((e) => e.id);
        best = { minutes, taken };
      }
    }
    return best;
  }

  /** The cheapest examination not yet taken that rules out at least one name still left. */
  hint(taken: readonly ExaminationId[]): Examination | null {
    const left = this.left(taken).filter((f) => f.id !== this.case.cause);
    const rules = (id: ExaminationId): number =>
      left.filter((f) => parted(this.found(id), this.found(id, f.id)).length > 0).length;
    const open = examinations.filter(
      (e) => !taken.includes(e.id) && (!e.needs || taken.includes(e.needs)) && rules(e.id) > 0,
    );
    // Most names struck out a minute.
    const worth = (e: Examination): number => rules(e.id) / this.minutes(e);
    return open.sort((a, b) => worth(b) - worth(a))[0] ?? null;
  }
}
