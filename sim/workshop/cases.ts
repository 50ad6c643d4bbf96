import {
  type Axle,
  axleWith,
  type BrakeState,
  type FaultId,
  type Rig,
  type WheelBrake,
} from '../index.ts';
import { type Examination, type ExaminationId, examinations } from './examinations.ts';
import { examine, minutesOf, type Observed, parted } from './examine.ts';
import type { Fault } from './fault-types.ts';
import { faultOf } from './faults.ts';

/** A van in the workshop: what its driver says, what it has, which names are to be chosen from. */
export interface Case {
  readonly number: number;
  /** Minutes that a good mechanic needs to be sure; the story always counts. Own choice. */
  readonly par: number;
  readonly complaint: string;
  readonly cause: FaultId;
  /** Ids of faults that fit such a complaint, the cause among them. */
  readonly names: readonly FaultId[];
  /** Standing state of the brake that it starts from. */
  readonly from: string;
}

const LONG: readonly FaultId[] = [
  'seized short',
  'air',
  'stretched cable',
  'worn teeth',
  'glazed',
  'short cable',
];
const HOT: readonly FaultId[] = [
  'kept pull',
  'hose',
  'stepped hot',
  'port shut',
  'leaning part',
  'oval drum',
  'bearing',
];
const TIGHT: readonly FaultId[] = [
  'stepped hot',
  'rusted on',
  'short cable',
  'port shut',
  'kept pull',
  'hose',
];
const RUBS: readonly FaultId[] = [
  'oval drum',
  'drum off centre',
  'bearing',
  'stepped hot',
  'leaning part',
  'kept pull',
];
const HELD: readonly FaultId[] = [
  'lip',
  'hub rust',
  'short cable',
  'rusted on',
  'stepped hot',
  'kept pull',
];
const PULLS: readonly FaultId[] = [
  'stuck piston',
  'fluid on linings',
  'other bore',
  'oil on one lining',
  'stiff pivot',
  'sluggish pistons',
];
const RAMP: readonly FaultId[] = [
  'glazed',
  'oil on one lining',
  'stiff pivot',
  'fluid on linings',
  'stretched cable',
  'seized short',
];

const van = (
  number: number,
  par: number,
  cause: FaultId,
  names: readonly FaultId[],
  complaint: string,
  from = 'Worn-in',
): Case => ({ number, par, complaint, cause, names, from });

/** Twenty vans; their readings as first worked out stand in tests/reference/teaching-tables.md. */
export const cases: readonly Case[] = [
  van(
    1,
    4,
    'seized short',
    LONG,
    'Pedal goes halfway down, then it’s solid. Handbrake nearly in the roof.',
  ),
  van(2, 4, 'air', LONG, 'Like stepping on a sponge since the pipe was changed.'),
  van(3, 3, 'stretched cable', LONG, 'Pedal’s lovely, lever’s hopeless.'),
  van(4, 4, 'worn teeth', LONG, 'Bad each morning, first press goes down, tick-tick, then fine.'),
  van(5, 26, 'kept pull', HOT, 'Nearside stays cool, the other one stinks.'),
  van(6, 26, 'hose', HOT, 'Fine till I brake, then it drags for a bit.'),
  van(
    7,
    20,
    'stepped hot',
    TIGHT,
    'After the pass it was free, next morning it wouldn’t roll.',
    'Just clicked',
  ),
  van(8, 14, 'port shut', HOT, 'All of them warm, worse the longer I drive.'),
  van(9, 33, 'oval drum', RUBS, 'Throbs through the pedal; rubs since it was set up a tooth.'),
  van(10, 41, 'drum off centre', RUBS, 'Swish, swish, once each turn, since the hub was off.'),
  van(11, 12, 'bearing', RUBS, 'Spins free on the jack, hot on the road.'),
  van(12, 14, 'lip', HELD, 'Comes a bit, then it’s like a wall.'),
  van(13, 10, 'hub rust', HELD, 'Hit it all day, not a hair.'),
  van(14, 14, 'short cable', HELD, 'Came off last year, and I only tightened the handbrake.'),
  van(15, 20, 'stuck piston', PULLS, 'Pulls left forwards, but backing up it pulls far less.'),
  van(16, 35, 'fluid on linings', PULLS, 'Pulled left since the winter.'),
  van(17, 23, 'other bore', PULLS, 'Always pulled right since the repair.'),
  van(18, 13, 'glazed', RAMP, 'Creeps either way up, and the pedal feels wooden.'),
  van(19, 13, 'oil on one lining', RAMP, 'Holds facing the sea, slides facing the hill.'),
  van(20, 25, 'stiff pivot', RAMP, 'Holds on the flat. Been slow to let go too.'),
];

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
