import type { FaultId } from '../index.ts';

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
