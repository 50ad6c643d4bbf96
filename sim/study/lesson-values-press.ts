import { balance, rest } from '../balance/balance.ts';
import type { Instant } from '../balance/instant.ts';
import { strutLength } from '../brake/state.ts';
import { dragOf, peak } from '../readings/factors.ts';
import { BAR, DEG } from '../units/units.ts';
import { studyLessonValuesPress as words } from '../words/en.ts';
import { contactShare } from './bedding.ts';
import { HAND, handTurn } from './checks.ts';
import { hookTravel, spend } from './hand-lever.ts';
import type { Stand, ValueRows } from './lesson-stand.ts';
import { tiltOf } from './tilt.ts';

/** Values of a press, of the strut, of the hand lever, and of a shoe seen edge-on. */

/** N·mm to N·m. */
const NM = 1e-3;
/** Highest pressure that is looked at, MPa. */
const MOST = 40 * BAR;
/** Pressures nearer than this are the same, MPa. */
const FINE = 0.005 * BAR;

/**
 * Lowest line pressure, bar, at which something holds that holds from there on: by halving.
 * @returns NaN where 40 bar do not make it
 */
function pressureWhere({ rig, state, turning }: Stand, holds: (i: Instant) => boolean): number {
  const at = (pressure: number): boolean => holds(balance(rig, state, { pressure, turning }));
  if (at(0)) return 0;
  if (!at(MOST)) return Number.NaN;
  let [low, high] = [0, MOST];
  while (high - low > FINE) {
    const middle = (low + high) / 2;
    if (at(middle)) high = middle;
    else low = middle;
  }
  return high / BAR;
}

const touches = (i: Instant, side: 'front' | 'rear'): boolean => peak(i.shoes[side].pressure) > 0;

/** Notches of the hand lever at the cable's pull, or at a hand's where it is let go: slack, stretch and what turns the lever. */
function notchesOf({ rig, state, cable: set, moreSlack }: Stand): number {
  const cable = set > 0 ? set : HAND;
  const way = (hookTravel(rig, state, cable, 1) + hookTravel(rig, state, cable, -1)) / 2;
  return spend(rig, state, cable, way, { moreSlack }).notches;
}

const shareOf = (i: Instant, part: number): number => {
  const sum = dragOf(i, 'front') + dragOf(i, 'rear');
  return sum > 0 ? (100 * part) / sum : Number.NaN;
};

export const pressValues: ValueRows = {
  touchPressure: [
    words.bothTouchAt,
    'bar',
    1,
    (s) => pressureWhere(s, (i) => touches(i, 'front') && touches(i, 'rear')),
  ],
  firstTouchPressure: [
    words.firstTouchesAt,
    'bar',
    1,
    (s) => pressureWhere(s, (i) => touches(i, 'front') || touches(i, 'rear')),
  ],
  strutFreePressure: [
    words.strutUnloadedAt,
    'bar',
    1,
    (s) => pressureWhere(s, (i) => i.strutForce <= 0),
  ],
  lostMotion: [words.lostMotion, 'mm', 2, ({ rig }) => rig.brake.adjuster.lostMotion],
  teeth: [words.teeth, '', 0, ({ rig }) => rig.brake.adjuster.teeth],
  strutLength: [
    words.strutLength,
    'mm',
    2,
    ({ rig, state }) => strutLength(rig.brake, state.tooth),
  ],
  strutGrowth: [
    words.strutLongerBy,
    'mm',
    1,
    ({ rig, state }) => strutLength(rig.brake, state.tooth) - strutLength(rig.brake, 0),
  ],
  leadingShare: [
    words.dragOfLeading,
    '%',
    0,
    (s, i) => shareOf(i, dragOf(i, s.turning < 0 ? 'rear' : 'front')),
  ],
  contactFront: [words.arcFront, '%', 0, (_s, i) => 100 * contactShare(i.shoes.front)],
  contactRear: [words.arcRear, '%', 0, (_s, i) => 100 * contactShare(i.shoes.rear)],
  handForward: [words.handForward, 'N·m', 0, (s) => NM * handTurn(s).forward],
  handBackward: [words.handBackward, 'N·m', 0, (s) => NM * handTurn(s).backward],
  cable: [words.pullInCable, 'N', 0, (s) => s.cable],
  leverNotches: [words.leverNotches, '', 1, notchesOf],
  tipMoment: [
    words.springsTip,
    'N·m',
    1,
    (s) => NM * tiltOf(s.rig.brake, rest(s.rig, s.state), 'front').moment,
  ],
  rightMoment: [
    words.holdDownRights,
    'N·m',
    1,
    (s) => NM * tiltOf(s.rig.brake, rest(s.rig, s.state), 'front').righting,
  ],
  lostAngle: [
    words.leansWithout,
    '°',
    1,
    (s) =>
      tiltOf(s.rig.brake, rest(s.rig, s.state), 'front', { holdDown: 'lost', groove: 0 }).angle /
      DEG,
  ],
};
