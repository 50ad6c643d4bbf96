import * as v from 'valibot';
import { type FaultId, faultChanges, UNHELD, withFault } from '../../../sim/index.ts';
import { language, faultsPart as words } from '../../../sim/words/en.ts';
import {
  cases,
  type ExaminationId,
  examinations,
  faultIds,
  faultNames,
} from '../../../sim/workshop/index.ts';
import { freshBench, released } from '../../record/bench.ts';
import { arrive, leave, opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, type StationId, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';
import { withLayers } from '../../record/parts.ts';
import { VAN, vanRig, vanState } from './van.ts';

export type Mode = 'browse' | 'find';

export interface FaultsPart {
  readonly mode: Mode;
  /** The fault that is looked at; null: none is chosen yet. */
  readonly fault: string | null;
  /** Draws the order of the vans. */
  readonly seed: number;
  readonly place: number;
  /** Number of the van to be found out. */
  readonly van: number;
  readonly taken: readonly ExaminationId[];
  /** Names that were given and are wrong, in their order. */
  readonly wrong: readonly string[];
  /** Name that is picked; empty: none. */
  readonly chosen: string;
  readonly hinted: boolean;
  /** The last name given; null: none since a reading was taken. */
  readonly named: string | null;
  readonly cheapest: boolean;
}

/** Stations that judge a faulty brake as it stands there. */
export const FAULT_STANDS: readonly StationId[] = [
  'faults',
  'apply',
  'wear',
  'drum-off',
  'park',
  'inspect',
];
const VAN_STANDS: readonly StationId[] = ['faults'];

const FIRST_VAN = 5;
const UNTOUCHED = {
  taken: [],
  wrong: [],
  chosen: '',
  hinted: false,
  named: null,
  cheapest: false,
} as const;

const id = v.picklist(faultIds);
const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(2 ** 32));

export const faultsPart: Part<FaultsPart> = {
  anew: false,
  layers: { fan: true },
  initial: () => ({
    mode: 'browse',
    fault: null,
    seed: 1,
    place: 0,
    van: FIRST_VAN,
    ...UNTOUCHED,
  }),
  schema: v.strictObject({
    mode: v.picklist(['browse', 'find']),
    fault: v.nullable(id),
    seed: count,
    place: v.pipe(count, v.maxValue(cases.length)),
    van: v.picklist(cases.map((c) => c.number)),
    taken: v.pipe(
      v.array(v.picklist(examinations.map((e) => e.id))),
      v.maxLength(examinations.length),
    ),
    wrong: v.pipe(v.array(id), v.maxLength(faultIds.length)),
    chosen: v.union([id, v.literal('')]),
    hinted: v.boolean(),
    named: v.nullable(id),
    cheapest: v.boolean(),
  }),
};

const put = (m: Moment, change: Partial<FaultsPart>): Moment => withPart(m, 'faults', change);

/** State of the van from which a fault is shown: a tooth has just dropped where heat then adds more. */
export const baseOf = (fault: string): string =>
  fault === 'stepped hot' ? words.justClicked : 'Worn-in';

/** The van with a fault in it on the bench. */
export function withFaultOn(m: Moment, fault: string): Moment {
  const standing = baseOf(fault);
  const wheel = withFault(
    { rig: vanRig(), state: vanState(standing) },
    faultChanges[fault as FaultId],
  );
  const bench = freshBench(VAN, wheel.state);
  return put(released({ ...m, bench: { ...bench, fault, standing, held: wheel.held ?? UNHELD } }), {
    mode: 'browse',
    fault,
  });
}

/** A sound van on the bench, while a cause is hidden. */
export function withVanOn(m: Moment, number: number): Moment {
  const standing = 'Worn-in';
  const bench = { ...freshBench(VAN, vanState(standing)), standing };
  const same = m.parts.faults.van === number;
  return withLayers(
    put(released({ ...m, bench }), { mode: 'find', van: number, ...(same ? {} : UNTOUCHED) }),
    {
      fan: false,
      comb: false,
      forces: false,
      loupe: false,
      ghost: false,
      names: false,
      heat: false,
    },
  );
}

/** Chooses a fault to look at: it is on the bench at once, as a guest. */
export const chooseFault = intention(
  'faults.choose',
  (m: Moment, fault: string) => {
    if (m.guest?.call.kind === 'fault' && m.guest.call.id === fault) return m;
    const here = FAULT_STANDS.includes(m.station) ? m : opened(m, 'faults');
    const on = withFaultOn(arrive(here, { kind: 'fault', id: fault }, FAULT_STANDS), fault);
    return here.parts.faults.mode === 'find' ? withLayers(on, { fan: true }) : on;
  },
  (_before, _after, fault) => words.fault(language.inside(faultNames[fault as FaultId])),
);

/** Takes the guest off the bench; the station stays open. */
export const takeOut = intention('faults.out', (m: Moment) => leave(m), words.faultTakenOut);

export const bringVan = intention(
  'faults.van',
  (m: Moment, number: number) =>
    withVanOn(arrive(opened(m, 'faults'), { kind: 'van', number }, VAN_STANDS), number),
  (_before, after) => words.van(after.parts.faults.van),
);

/** Browses the faults, or finds the one of a van. */
export const showMode = intention(
  'faults.mode',
  (m: Moment, mode: Mode) => {
    if (mode === 'find') {
      return bringVan.does(m, m.parts.faults.van);
    }
    const { faults: _own, ...layers } = m.view.layers;
    const back = leave({ ...m, view: { ...m.view, layers } });
    return put(back, { mode: 'browse' });
  },
  (_before, after) =>
    after.parts.faults.mode === 'find' ? words.findTheFault : words.browseFaults,
);

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

/** The next van: seeded, so that the same seed brings the same row of vans. */
export const anotherVan = intention(
  'faults.another',
  (m: Moment) => {
    const { seed, place } = m.parts.faults;
    const next = (place + 1) % cases.length;
    return put(bringVan.does(m, order(seed)[next] as number), { place: next });
  },
  words.anotherVan,
);

export const take = intention(
  'faults.take',
  (m: Moment, reading: ExaminationId) => {
    const { taken, named, wrong } = m.parts.faults;
    if (taken.includes(reading)) return m;
    // A wrong name is no longer talked of; a right one stands.
    const still = named !== null && !wrong.includes(named) ? named : null;
    return put(m, { taken: [...taken, reading], hinted: false, named: still });
  },
  (_before, _after, reading) =>
    words.reading(examinations.find((e) => e.id === reading)?.name ?? reading),
);

export const pick = intention(
  'faults.pick',
  (m: Moment, name: string) => put(m, { chosen: name }),
  words.aNamePicked,
);

/** Names the fault that is picked. A wrong name costs nothing. */
export const nameFault = intention(
  'faults.name',
  (m: Moment) => {
    const { chosen, van, wrong } = m.parts.faults;
    if (chosen === '') return m;
    const right = cases.find((c) => c.number === van)?.cause === chosen;
    return right
      ? put(m, { named: chosen })
      : put(m, { named: chosen, wrong: [...wrong, chosen], chosen: '' });
  },
  words.aNameGiven,
);

export const giveHint = intention(
  'faults.hint',
  (m: Moment) => put(m, { hinted: true }),
  words.aHint,
);

export const showCheapest = intention(
  'faults.cheapest',
  (m: Moment) => put(m, { cheapest: true }),
  words.theCheapestWay,
);
