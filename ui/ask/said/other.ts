import { labelWords, askSaidOther as texts } from '../../../sim/words/en.ts';
/** What people say of stations, starts, words, cautions and of what is not on this bench. */

export const stationsSaid: Readonly<Record<string, readonly string[]>> = {
  apply: texts.apply,
  wear: texts.wear,
  'drum-off': texts.drumOff,
  park: texts.park,
  inspect: texts.inspect,
  'new-shoes': texts.newShoes,
  faults: texts.faults,
  own: texts.own,
  questions: texts.questions,
  see: texts.see,
  vary: texts.vary,
  apart: texts.apart,
  compare: texts.compare,
  kind: texts.kind,
  lessons: texts.lessons,
  start: ['start', 'beginning', texts.whereDoIBegin, texts.firstPage, 'menu', 'home'],
};

/** Ways into What I see, by its topics. */
export const topicsSaid: Readonly<Record<string, readonly string[]>> = texts.topicsSaid;

/** Figures that can be asked for by computing. */
export const computedSaid: Readonly<Record<string, readonly string[]>> = texts.computedSaid;

export interface NotHere {
  readonly id: string;
  readonly title: string;
  /** Why not, and what to do instead. */
  readonly text: string;
  readonly says: readonly string[];
  /** Stands above everything else. */
  readonly danger?: true;
}

const STAY = texts.stay;

/** Not on this bench: said in a line, with what helps instead. */
export const notHere: readonly NotHere[] = [
  {
    id: 'sinking',
    title: texts.sinkingTitle,
    danger: true,
    text: texts.sinkingText(STAY),
    says: texts.sinkingSays,
  },
  {
    id: 'safe',
    title: texts.safeTitle,
    danger: true,
    text: texts.safeText(STAY),
    says: texts.safeSays,
  },
  {
    id: 'loose lining',
    title: texts.looseLiningTitle,
    danger: true,
    text: texts.looseLiningText(STAY),
    says: texts.looseLiningSays,
  },
  {
    id: 'crack',
    title: texts.crackTitle,
    danger: true,
    text: texts.crackText,
    says: texts.crackSays,
  },
  texts.discs,
  {
    id: 'in disc',
    title: texts.inDiscTitle,
    text: texts.inDiscText,
    says: texts.inDiscSays,
  },
  {
    id: 'servo',
    title: texts.servoTitle,
    text: texts.servoText,
    says: texts.servoSays,
  },
  {
    id: 'other kinds',
    title: texts.otherKindsTitle,
    text: texts.otherKindsText,
    says: texts.otherKindsSays,
  },
  {
    id: 'booster',
    title: texts.boosterTitle,
    text: texts.boosterText(STAY),
    says: texts.boosterSays,
  },
  texts.lamp,
  texts.electric,
  texts.noise,
  texts.rattle,
  texts.clunk,
  texts.bell,
  texts.prices,
  {
    id: 'torque',
    title: texts.torqueTitle,
    text: texts.torqueText,
    says: texts.torqueSays,
  },
  texts.fluidGrade,
  texts.legal,
  texts.cleaning,
  {
    id: 'heat it',
    title: texts.heatItTitle,
    danger: true,
    text: texts.heatItText,
    says: texts.heatItSays,
  },
  texts.bleeding,
  {
    id: 'dust',
    title: texts.dustTitle,
    danger: true,
    text: texts.dustText,
    says: texts.dustSays,
  },
  texts.grease,
  texts.oneSide,
  texts.chamfer,
  texts.airBags,
];

/** Words of the trade, with one plain sentence. */
/** The switch of shoes that bend, which is no station. */
export const bendingSaid = texts.bendingSaid;

export const dialsSaid = {
  title: texts.dialsOnTheBrake,
  text: texts.handlesOnTheDrawingDrag,
  says: [
    'dials',
    texts.handlesOnTheDrawing,
    texts.dragAPin,
    texts.moveTheAnchorPin,
    texts.moveThePivotOfThe,
    texts.changeTheFriction,
    texts.whatIfTheFrictionWere,
    texts.changeTheBoreByHand,
    texts.turnASizeAndWatch,
    texts.slidersOnTheBrake,
    'knobs',
    texts.makeTheSpringStronger,
    texts.playWithTheSizes,
    texts.dragTheSizesOfThe,
  ],
} as const;

export const polygonsSaid = texts.polygonsSaid;

/** Words that people ask for, by ids that are the same in every language. */
type AskedWord =
  | 'leading shoe'
  | 'trailing shoe'
  | 'self-energising'
  | 'click'
  | 'notch'
  | 'clearance'
  | 'lost motion'
  | 'toe and heel'
  | 'lip'
  | 'hot lock'
  | 'run-out of a piston'
  | 'out of round'
  | 'fade'
  | 'bedding in'
  | 'brake factor'
  | 'equaliser'
  | 'lead and trail swap'
  | 'back off'
  | 'roller test';

export const glossary: readonly (readonly [
  id: AskedWord,
  word: string,
  means: string,
  ...says: string[],
])[] = [
  [
    'leading shoe',
    texts.leadingShoe,
    texts.theShoeThatTheTurning,
    texts.whatIsALeadingShoe,
    texts.primaryShoeMeaning,
    texts.whichShoeIsLeading,
    texts.frontShoeOrRearShoe,
  ],
  [
    'trailing shoe',
    texts.trailingShoe,
    texts.theShoeThatTheTurning2,
    texts.whatIsATrailingShoe,
    texts.secondaryShoeMeaning,
    texts.whyDoesOneShoeWear,
  ],
  [
    'self-energising',
    texts.selfEnergisingWord,
    texts.theDrumsDragPressesThe,
    texts.whatIsSelfEnergising,
    texts.servoEffectInDrumBrakes,
    texts.whyIsADrumBrake,
  ],
  [
    'click',
    labelWords.click,
    texts.theToothedLeverDropsInto,
    texts.whatIsTheClickWhen,
    texts.whyDoesItClick,
    texts.clickingWhenIPressThe,
  ],
  [
    'notch',
    labelWords.notch,
    texts.oneClickOfTheHand,
    texts.whatIsANotchOn,
    texts.howManyClicksIsNormal,
  ],
  [
    'clearance',
    labelWords.clearance,
    texts.theGapBetweenLiningAnd,
    texts.howMuchGapBetweenShoe,
    texts.runningClearance,
    texts.whatClearanceShouldBrakeShoes,
    texts.gapOfBrakeShoesIn,
  ],
  [
    'lost motion',
    texts.lostMotion,
    texts.playInTheSlotThat,
    texts.lostMotionMeaning,
    texts.slotPlay,
    texts.playInTheStrut,
    texts.strutEndPlay,
  ],
  [
    'toe and heel',
    texts.toeAndHeel,
    texts.toeTheEndOfA,
    texts.toeOfTheShoe,
    texts.heelOfTheShoe,
    texts.whichEndIsTheToe,
  ],
  ['lip', labelWords.lip, texts.theUnwornEdgeOfThe, texts.whatIsTheLip, texts.ridgeAtTheEdgeOf],
  [
    'hot lock',
    texts.hotLock,
    texts.aStripOfTwoMetals,
    texts.whatIsTheBimetalFor,
    texts.thermalClipOnTheAdjuster,
  ],
  [
    'run-out of a piston',
    texts.runOutOfAPiston,
    texts.soFarAPistonMay,
    texts.pistonComingOutOfCylinder,
  ],
  [
    'out of round',
    texts.outOfRound,
    texts.theBoreIsLongerOne,
    texts.whatDoesOvalityMean,
    texts.ovalityPercentOnTheBrake,
    texts.howMuchOutOfRound,
  ],
  ['fade', labelWords.fade, texts.frictionFallsAndTheDrum, texts.whatIsBrakeFade],
  [
    'bedding in',
    texts.beddingIn,
    texts.newLiningsWearUntilThey,
    texts.howToBedInBrake,
    texts.howLongDoesBeddingIn,
    texts.breakInNewShoes,
    texts.runningInNewBrakeShoes,
    texts.howManyStopsToBed,
    texts.driveGentlyForTheFirst,
  ],
  [
    'brake factor',
    texts.brakeFactor,
    texts.howManyNewtonsOfDrag,
    texts.whatIsBrakeFactor,
    texts.shoeFactor,
  ],
  [
    'equaliser',
    labelWords.equaliser,
    texts.theBarThatSharesThe,
    texts.whatIsTheEqualiser,
    texts.compensatorOnTheCable,
    texts.yPieceOfTheHandbrake,
  ],
  [
    'lead and trail swap',
    texts.leadAndTrailSwap,
    texts.backwardsTheRearShoeLeads,
    texts.whichShoeLeadsInReverse,
    texts.doTheShoesSwapIn,
  ],
  [
    'back off',
    texts.backOff,
    texts.makingTheAdjusterShorterLift,
    texts.whatDoesBackOffMean,
    texts.backOffTheAdjusterHow,
  ],
  [
    'roller test',
    texts.rollerTest,
    texts.eachWheelIsDrivenOn,
    texts.whatIsARollerTest,
    texts.rollingRoadBrakeTest,
    texts.howDoesTheBrakeTester,
    texts.brakeTestPrintOutExplained,
  ],
];
