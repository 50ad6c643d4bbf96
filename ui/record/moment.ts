import type { Turning } from '../../sim/index.ts';
import { recordMoment as words } from '../../sim/words/en.ts';
import type { ApartPart } from '../stations/apart/part.ts';
import type { AskPart } from '../stations/ask/part.ts';
import type { ComparePart } from '../stations/compare/part.ts';
import type { DrumPart } from '../stations/drum-off/part.ts';
import type { FaultsPart } from '../stations/faults/part.ts';
import type { InspectPart } from '../stations/inspect/part.ts';
import type { KindPart } from '../stations/kind/part.ts';
import type { LessonsPart } from '../stations/lessons/part.ts';
import type { ShoesPart } from '../stations/new-shoes/part.ts';
import type { OrderPart } from '../stations/order/part.ts';
import type { OwnPart } from '../stations/own/part.ts';
import type { ParkPart } from '../stations/park/part.ts';
import type { QuestionsPart } from '../stations/questions/part.ts';
import type { SeePart } from '../stations/see/part.ts';
import type { StartPart } from '../stations/start/part.ts';
import type { VaryPart } from '../stations/vary/part.ts';
import type { WearPart } from '../stations/wear-part.ts';
import type { Bench } from './bench.ts';
import type { Guest } from './guest.ts';
import type { HandsRecord } from './hands.ts';
import type { Shelf } from './shelf.ts';
import type { View } from './view.ts';

/** The stations' ids, in the order of their tabs; the first is open at first. */
export const stationIds = [
  'apply',
  'wear',
  'drum-off',
  'park',
  'inspect',
  'new-shoes',
  'faults',
  'own',
  'questions',
  'start',
  'ask',
  'see',
  'kind',
  'lessons',
  'vary',
  'order',
  'compare',
  'apart',
] as const;
export type StationId = (typeof stationIds)[number];

/** As they stand on their tabs. */
export const stationNames: Readonly<Record<StationId, string>> = words.stationNames;

/** What each station remembers; Apply has nothing of its own. */
export interface Parts {
  readonly apply: Readonly<Record<never, never>>;
  readonly wear: WearPart;
  readonly 'drum-off': DrumPart;
  readonly park: ParkPart;
  readonly inspect: InspectPart;
  readonly 'new-shoes': ShoesPart;
  readonly faults: FaultsPart;
  readonly own: OwnPart;
  readonly questions: QuestionsPart;
  readonly start: StartPart;
  readonly ask: AskPart;
  readonly see: SeePart;
  readonly kind: KindPart;
  readonly lessons: LessonsPart;
  readonly vary: VaryPart;
  readonly order: OrderPart;
  readonly compare: ComparePart;
  readonly apart: ApartPart;
}

/**
 * The record: all that stands on the bench, as one readonly value. Whatever can be kept, undone,
 * linked to, put aside and brought back is in it; solutions, rows and pictures are functions of it.
 */
export interface Moment {
  readonly version: 1;
  readonly bench: Bench;
  /** Pedal as set, bar. */
  readonly pedal: number;
  /** True: the pressure follows the pedal at once, as under a hand; false: it comes up as a foot presses. */
  readonly follows: boolean;
  readonly turning: Turning;
  /** Open station. */
  readonly station: StationId;
  readonly view: View;
  readonly parts: Parts;
  /** Who stands on the bench in the place of one's own. */
  readonly guest: Guest | null;
  /** Hands in the brake. */
  readonly hands: HandsRecord;
  /** Brakes of one's own. */
  readonly shelf: Shelf;
}

/** The record with fields of one station's part changed. */
export function withPart<K extends StationId>(
  m: Moment,
  station: K,
  change: Partial<Parts[K]>,
): Moment {
  return { ...m, parts: { ...m.parts, [station]: { ...m.parts[station], ...change } } };
}
