import { axleWith } from '../../../sim/index.ts';
import {
  type Examination,
  examinations,
  examine,
  type Fault,
  faultOf,
  type Observed,
  parted,
} from '../../../sim/workshop/index.ts';
import { sameNames, type Van } from './vans.ts';

/** A reading that the fault changes. */
export interface Changed {
  readonly kind: 'changed';
  readonly by: Examination;
  readonly before: readonly Observed[];
  readonly after: readonly Observed[];
  /** What the fault changes under rigid shoes; null where its own are rigid. */
  readonly rigid: readonly Observed[] | null;
}

/** The cheapest check that parts a fault from a look-alike, with what both show. */
export interface Parting {
  readonly kind: 'parting';
  readonly other: Fault;
  readonly by: Examination | null;
  readonly here: readonly Observed[];
  readonly there: readonly Observed[];
  /** The same of rigid shoes; null where its own are rigid. */
  readonly rigid: {
    readonly here: readonly Observed[];
    readonly there: readonly Observed[];
  } | null;
}

export const byCost = [...examinations].sort((a, b) => a.minutes - b.minutes);

/** The readings that a fault changes, and what parts it from its look-alikes: one check at a time. */
export function* faultWork(fault: Fault, van: Van): Generator<() => Changed | Parting | null> {
  const { own, rigid } = van;
  const axle = axleWith(own, fault);
  const beside = rigid && axleWith(rigid, fault);
  const sound = axleWith(own, null);
  const soundBeside = rigid && axleWith(rigid, null);
  for (const by of examinations) {
    yield () => {
      const before = examine(sound, by.id);
      const after = examine(axle, by.id, fault.allWheels);
      const differ = parted(before, after);
      const plain =
        beside &&
        soundBeside &&
        parted(examine(soundBeside, by.id), examine(beside, by.id, fault.allWheels));
      if (differ.length === 0 && !plain?.length) return null;
      return { kind: 'changed', by, before: parted(after, before), after: differ, rigid: plain };
    };
  }
  for (const other of fault.lookAlikes.map(faultOf)) {
    yield () => {
      const theirs = axleWith(own, other);
      for (const by of byCost) {
        const a = examine(axle, by.id, fault.allWheels);
        const b = examine(theirs, by.id, other.allWheels);
        const there = parted(a, b);
        const here = parted(b, a);
        if (here.length + there.length === 0) continue;
        const plain = beside &&
          rigid && {
            here: sameNames(here, examine(beside, by.id, fault.allWheels)),
            there: sameNames(there, examine(axleWith(rigid, other), by.id, other.allWheels)),
          };
        return { kind: 'parting', other, by, here, there, rigid: plain };
      }
      return { kind: 'parting', other, by: null, here: [], there: [], rigid: null };
    };
  }
}
