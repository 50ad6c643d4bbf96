import { inspectHows as words } from '../../../sim/words/en.ts';
import type { AxleLine, Line } from './lines.ts';

/** Where each line of the sheet is measured, and with what. */
const drumHow = words.drumHow;
const liningHow = words.liningHow;

export const hows: Readonly<Record<Line['key'] | AxleLine['key'], string>> = {
  drumNew: words.firstOfAllWhichDrum,
  drumMax: words.castOrStampedOnThe,
  drumCut: words.theMakersFigureForA,
  drumA: drumHow,
  drumB: drumHow,
  drumC: drumHow,
  drumDeep: words.theSameGaugeNearThe,
  largest: words.theLargestOfThoseAbove,
  round: words.greatestLessLeastOfThe,
  lip: words.stepFromTheSweptFace,
  score: words.ruleAcrossTheBoreAnd,
  leadToe: words.leadingIsTheShoeTowards(liningHow),
  leadThin: words.lookAlongTheWholeArc(liningHow),
  leadHeel: words.atTheEndWhereThe(liningHow),
  trailToe: words.atTheCylindersEnd(liningHow),
  trailThin: words.lookAlongTheWholeArc(liningHow),
  trailHeel: words.atTheEndWhereThe(liningHow),
  faces: words.byEyeAndLampCracks,
  boots: words.liftTheEdgeOfEach,
  springs: words.coilsClosedHooksWholeNo,
  tooth: words.countTheTeethThatThe,
  adjuster: words.liftTheLeverMoveIt,
  leverOff: words.gapAtTheCablesHook,
  notchesBefore: words.countTheClicksToA,
  notchesAfter: words.theSamePullWhenAll,
  odometer: words.whatItShowsTodayWith,
  distance: words.fromTheServiceBookWithout,
  drumFitted: words.newDiameterWhenLeftOut,
  liningFitted: words.newThicknessWhenLeftOut,
};
