import type { FaultId } from '../index.ts';
import { workshopCases as words } from '../words/en.ts';

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
  van(1, 4, 'seized short', LONG, words.pedalGoesHalfwayDownThen),
  van(2, 4, 'air', LONG, words.likeSteppingOnASponge),
  van(3, 3, 'stretched cable', LONG, words.pedalsLovelyLeversHopeless),
  van(4, 4, 'worn teeth', LONG, words.badEachMorningFirstPress),
  van(5, 26, 'kept pull', HOT, words.nearsideStaysCoolTheOther),
  van(6, 26, 'hose', HOT, words.fineTillIBrakeThen),
  van(7, 20, 'stepped hot', TIGHT, words.afterThePassItWas, words.justClicked),
  van(8, 14, 'port shut', HOT, words.allOfThemWarmWorse),
  van(9, 33, 'oval drum', RUBS, words.throbsThroughThePedalRubs),
  van(10, 41, 'drum off centre', RUBS, words.swishSwishOnceEachTurn),
  van(11, 12, 'bearing', RUBS, words.spinsFreeOnTheJack),
  van(12, 14, 'lip', HELD, words.comesABitThenIts),
  van(13, 10, 'hub rust', HELD, words.hitItAllDayNot),
  van(14, 14, 'short cable', HELD, words.cameOffLastYearAnd),
  van(15, 20, 'stuck piston', PULLS, words.pullsLeftForwardsButBacking),
  van(16, 35, 'fluid on linings', PULLS, words.pulledLeftSinceTheWinter),
  van(17, 23, 'other bore', PULLS, words.alwaysPulledRightSinceThe),
  van(18, 13, 'glazed', RAMP, words.creepsEitherWayUpAnd),
  van(19, 13, 'oil on one lining', RAMP, words.holdsFacingTheSeaSlides),
  van(20, 25, 'stiff pivot', RAMP, words.holdsOnTheFlatBeen),
];
