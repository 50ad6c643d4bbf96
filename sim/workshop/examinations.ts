import { workshopExaminations as words } from '../words/en.ts';
/** What a mechanic may look at, with the minutes it takes; in the order of the list on the page. */
export interface Examination {
  readonly id: ExaminationId;
  readonly name: string;
  readonly minutes: number;
  /** Must be taken before: the wheels must be up, or the drum off. */
  readonly needs: 'turn' | 'off' | null;
  /** What is done. */
  readonly how: string;
}

export type ExaminationId =
  | 'story'
  | 'pump'
  | 'notches'
  | 'heat'
  | 'turn'
  | 'rock'
  | 'press'
  | 'bleed'
  | 'lever'
  | 'roller'
  | 'off'
  | 'measure'
  | 'dial'
  | 'tooth'
  | 'boots'
  | 'bore';

const row = (
  id: ExaminationId,
  name: string,
  minutes: number,
  how: string,
  needs: Examination['needs'] = null,
): Examination => ({ id, name, minutes, needs, how });

/** Minutes are our own choice of what a good mechanic needs. */
export const examinations: readonly Examination[] = [
  row('story', words.storyAndFeel, 2, words.hearWhichWheelAndWhen),
  row('pump', words.pumpThePedal, 1, words.afterANightParkedMeasure),
  row('notches', words.notchesAt300N, 1, words.countTheHandLeversClicks),
  row('heat', words.heatOfTheDrumsAfter, 12, words.driveAt50KmH),
  row('turn', words.wheelsUpTurnBothWays, 8, words.onStandsTurnEachWheel),
  row('rock', words.rockTheWheelTapThe, 2, words.playAtTheRimA, 'turn'),
  row('press', words.treadSlowlyLetGo, 5, words.wheelsUpAGaugeIn, 'turn'),
  row('bleed', words.openTheBleedPoint, 4, words.withTheWheelsUpWhat, 'turn'),
  row('lever', words.seeAndFlexTheParking, 4, words.isItOnItsStop, 'turn'),
  row('roller', words.rollerTest20Bar, 10, words.eachWheelOnThePedal),
  row('off', words.drumOffAnd1A, 15, words.backOffAsFarAs, 'turn'),
  row('measure', words.measureDrumAndLinings, 8, words.twoPointGaugeAtSeveral, 'off'),
  row('dial', words.dialGaugeOnTheDrum, 8, words.swingOfTheBoreAs, 'off'),
  row('tooth', words.countTheTooth, 1, words.atWhichToothDoesThe, 'off'),
  row('boots', words.lookBehindTheBoots, 2, words.wetOrDryCylinderAnd, 'off'),
  row('bore', words.boreMarkBehindThePlate, 5, words.readTheMarkOnThe),
];
