import * as v from 'valibot';
import type { Surface } from '../brake/surface.ts';
import { labelWords, sceneSchema as texts } from '../words/en.ts';
import { adjuster } from './adjuster.ts';
import { dutyPart } from './duty.ts';
import { filmsPart } from './films.ts';
import { heatPart } from './heat.ts';
import { hydraulicsPart } from './hydraulics.ts';
import { VERSION } from './migrations/migrate.ts';
import { choice, count, LONG, list, num, part, point, size, words } from './parts.ts';
import { liningFriction, rubbingPart } from './rubbing.ts';
import { startPart } from './start.ts';
import { statePart } from './states.ts';
import { strutPath } from './strut-path.ts';

/**
 * The scene file: JSON, own format. One fixed unit for each key, told here in its description; the
 * JSON Schema for editors is written out from this same source. Every object is strict: an unknown
 * key is a finding. Files of older versions are brought to this one first, by `migrations/`.
 */
const table = (about: string, most: number) =>
  list(
    texts.rowsCFactorStraightBetween(about),
    v.strictTuple([
      num(labelWords.temperature, '°C', -60, 1500),
      num(labelWords.factor, 'plain number', 0, most),
    ]),
    50,
    1,
  );
/** Most that heat or a surface makes of a lining's friction, and heat of its wear: two orders of magnitude. */
const FRICTION = 3;
const WEAR = 100;

/** One surface of the linings: its factors and where they come from; common practice when left out. */
const surface = (name: Surface) =>
  v.optional(
    part(texts.liningsThatAreCommonPractice(name), {
      factorAgainstTemperature: table(texts.factorOnTheFrictionOf(name), FRICTION),
      source: words(texts.whereTheFactorsComeFrom, LONG),
    }),
  );

const anchor = v.pipe(
  v.variant(
    'kind',
    [
      part(texts.heelOnAPin, {
        kind: v.pipe(v.literal('pin'), v.description(texts.hingedOnAPin)),
        at: point(texts.pinCentre),
      }),
      part(texts.heelOnAnAbutment, {
        kind: v.pipe(v.literal('abutment'), v.description(texts.slidingOnAnAbutment)),
        at: point(texts.centreOfTheRoundHeel),
        heelRadius: size(texts.radiusOfTheHeel, 'mm', 100),
        normal: num(texts.directionFromTheFlatTowards, 'degrees', -360, 360),
        friction: num(texts.frictionOfHeelOnFlat, 'plain number', 0, 1),
        // A 2.5 mm edge on a 4 mm web is 1.7e5 to 2.2e5 N/mm by line contact (K. L. Johnson, Contact
        // Mechanics); with its bracket half of that.
        stiffness: v.optional(num(texts.stiffnessOfHeelAndBracket, 'N/mm', 2e4, 3e5), 1e5),
      }),
    ],
    texts.aKindPinOrAbutment,
  ),
  v.description(texts.whatHoldsTheHeel),
);

const lining = part(labelWords.lining, {
  from: num(texts.firstEndOfTheArc, 'degrees', -360, 360),
  to: num(texts.otherEndOfTheArc, 'degrees', -360, 720),
  width: size(texts.widthAlongTheAxle, 'mm', 500),
  thicknessNew: size(texts.thicknessWhenNew, 'mm', 50),
  thicknessMin: num(texts.limitOfTheLining, 'mm', 0, 50),
  groundRadius: size(texts.radiusTheRubbingFaceIs, 'mm', 500),
  chamferArc: v.optional(num(texts.arcOfTheSlopedEnds, 'degrees', 0, 45), 0),
  chamferDepth: v.optional(num(texts.depthOfTheSlopeAt, 'mm', 0, 20), 0),
  cutEdgeArc: v.optional(num(texts.arcAtEachEndWhere, 'degrees', 0, 45), 0),
  modulus: size(texts.compressiveModulusAsPressed, 'MPa', 1e5),
  friction: liningFriction,
  wearRate: num(texts.archardCoefficient, 'mm²/N', 0, 1e-3),
  rivetHeight: v.optional(num(texts.rivetHeadsOverTheTable, 'mm', 0, 20), 0),
});

const shoe = (side: string) =>
  part(texts.theShoe(side), {
    anchor,
    toe: point(texts.whereThePistonPushes),
    strutSeat: point(texts.whereTheStrutPushesOn),
    holdDown: part(texts.holdDown, {
      at: point(texts.whereItPresses),
      friction: num(texts.frictionOfHoldDownAnd, 'N', 0, 1000),
      // From memory of metal on metal: 0.002 mm before it slips; only the slip is felt.
      stiffness: v.optional(num(texts.itsGripBeforeItSlips, 'N/mm', 500, 2e4), 5000),
      shakenOff: num(texts.shareOfItATurning, 'plain number', 0, 1),
    }),
    lining,
    steel: part(texts.webAndTable, {
      tableThickness: size(texts.thicknessOfTheTable, 'mm', 20),
      tableArc: v.pipe(
        v.strictTuple([
          num(texts.firstEnd, 'degrees', -360, 720),
          num(texts.otherEnd, 'degrees', -360, 720),
        ]),
        v.description('Ends of the table from +x: [from, to], degrees'),
      ),
      webThickness: size(texts.thicknessOfAWeb, 'mm', 50),
      webDepth: size(texts.depthOfTheWebUnder, 'mm', 200),
      webCount: v.optional(count(texts.numberOfWebs, 1, 4), 1),
      modulus: v.optional(size(texts.elasticModulus, 'MPa', 1e7), 210000),
      poisson: v.optional(num(texts.poissonRatio, 'plain number', 0, 0.5), 0.3),
    }),
    mass: size(texts.massWithItsLining, 'kg', 100),
    inertia: size(texts.momentOfInertiaAboutPin, 'kg·mm²', 1e7),
    webHoles: v.optional(
      list(
        texts.holesInTheWebDrawn,
        part(texts.aHole, { at: point(texts.itsCentre), radius: size(texts.itsRadius, 'mm', 50) }),
        20,
      ),
      [],
    ),
  });

const springEnd = part(texts.oneEnd, {
  on: choice(texts.whatItIsHookedTo, ['front', 'rear', 'plate']),
  at: point(texts.springHole),
});

export const sceneSchema = part(texts.aBrakeHowItIs, {
  $schema: v.optional(words(texts.whereAnEditorFindsThe)),
  format: v.pipe(
    v.literal('takeup-scene', texts.theTextTakeupScene),
    v.description(texts.whatKindOfFileThis),
  ),
  version: v.pipe(
    v.literal(VERSION, texts.theNumber(VERSION)),
    v.description(texts.versionOfTheFormatOlder),
  ),
  name: v.pipe(words(texts.shortName), v.regex(/^[a-z0-9-]{1,40}$/, texts.smallLettersDigitsAnd)),
  title: words(texts.nameShown),
  about: words(texts.whatThisBrakeIs, LONG),
  source: words(texts.whereItsValuesComeFrom, LONG),
  wheel: choice(texts.onWhichSideOfThe, ['left', 'right']),
  drum: part(labelWords.drum, {
    diameterNew: size(texts.innerDiameterWhenNew, 'mm', 1000),
    diameterMax: size(texts.discardDiameter, 'mm', 1000),
    lipDiameter: size(texts.innerDiameterOfTheUnworn, 'mm', 1000),
    outOfRoundMax: num(texts.largestOutOfRoundAllowed, 'mm', 0, 10),
    rim: size(texts.radialThicknessOfTheRim, 'mm', 100),
    inertia: size(texts.momentOfInertiaOfThe, 'kg·mm²', 1e9),
    heatCapacity: size(texts.heatCapacity, 'J/K', 1e6),
    cooling: part(texts.heatGivenToTheAir, {
      still: num(texts.atRest, 'W/K', 0, 1e4),
      perKmh: num(texts.growthWithSpeed, 'W/K for each km/h', 0, 1e3),
    }),
    expansion: num(texts.thermalExpansion, '1/K', 0, 1e-4),
    wearRate: num(texts.archardCoefficient, 'mm²/N', 0, 1e-3),
  }),
  shoes: part(texts.bothShoes, { front: shoe('front'), rear: shoe('rear') }),
  cylinder: part(texts.wheelCylinder, {
    at: point(texts.middleOfTheWheelCylinder),
    bore: size(labelWords.bore, 'mm', 100),
    stroke: size(texts.strokeOfEachPistonTo, 'mm', 100),
    cupFriction: num(texts.frictionOfEachCup, 'N', 0, 2000),
    // From memory of rubber lips; only the slip is felt.
    cupStiffness: v.optional(num(texts.gripOfACupBefore, 'N/mm', 200, 2e4), 2000),
    centreSpring: num(texts.pushOfTheSpringBetween, 'N', 0, 500),
    outerDiameter: size(texts.outerDiameterDrawnOnly, 'mm', 200),
    length: size(texts.lengthDrawnOnly, 'mm', 300),
  }),
  springs: list(
    texts.returnSprings,
    part(texts.aReturnSpring, {
      name: words(labelWords.name),
      ends: v.pipe(v.strictTuple([springEnd, springEnd]), v.description(texts.itsTwoEnds)),
      rate: num(labelWords.rate, 'N/mm', 0, 1000),
      fitted: num(texts.forceAsFittedReferencePose, 'N', 0, 5000),
    }),
    12,
  ),
  adjuster,
  parkingLever: part(texts.parkingLeverAndItsCable, {
    pivot: point(texts.pivotOnTheRearWeb),
    hook: point(texts.cableHook),
    cableGuide: point(texts.whereTheCableLeaves),
    pullDirection: v.optional(num(texts.directionOfThePullFrom, 'degrees', -360, 360)),
    handRatio: size(texts.ratioOfTheHandLever, 'plain number', 100),
    handEfficiency: num(texts.efficiencyOfLeverAndCable, 'plain number', 0.01, 1),
    perNotch: size(texts.cableForOneNotch, 'mm', 50),
    slack: num(texts.slackOfTheCable, 'mm', 0, 200),
    stiffness: size(texts.stiffnessOfEachCable, 'N/mm', 1e6),
  }),
  strutPath: v.optional(strutPath),
  hydraulics: hydraulicsPart,
  vehicle: part(labelWords.vehicle, {
    mass: size(labelWords.mass, 'kg', 1e5),
    tyreRadius: size(texts.rollingRadiusOfTheTyre, 'mm', 2000),
    brakes: count(texts.numberOfSuchBrakes, 1, 12),
    share: num(texts.shareOfTheBrakingOn, 'plain number', 0, 1),
    rolling: v.optional(num(texts.rollingResistanceOverWeight, 'plain number', 0, 0.2), 0.015),
    air: v.optional(num(texts.dragOfTheAirOver, 'N/(m/s)²', 0, 10), 0.54),
  }),
  duties: list(texts.whatItIsDrivenBy, dutyPart, 30, 1),
  frictionAgainstTemperature: table(texts.factorOnFriction, FRICTION),
  wearAgainstTemperature: table(texts.factorOnWear, WEAR),
  frictionAgainstPressureAndSpeed: v.optional(rubbingPart),
  frictionOfSurfaces: v.optional(
    part(texts.frictionOfLiningsThatAre, {
      damp: surface('damp'),
      wet: surface('wet'),
      glazed: surface('glazed'),
      greasy: surface('greasy'),
    }),
    {},
  ),
  films: v.optional(filmsPart, {}),
  heat: v.optional(heatPart, {}),
  across: v.optional(
    part(texts.sizesAlongTheAxleOutward, {
      plate: v.optional(size(texts.thicknessOfTheBackingPlate, 'mm', 50), 3),
      liningOff: v.optional(size(texts.fromThePlateToThe, 'mm', 200), 7.5),
      lipWidth: v.optional(size(texts.widthOfTheDrumsUnworn, 'mm', 100), 4.1),
      lipGap: v.optional(num(texts.playBetweenThatEdgeAnd, 'mm', 0, 50), 0.8),
      discOff: v.optional(size(texts.fromTheLiningsToThe, 'mm', 100), 3.2),
      disc: v.optional(size(texts.thicknessOfTheDisc, 'mm', 100), 6.3),
      holdDown: v.optional(
        part(texts.springAndPinOfA, {
          rate: size(texts.rateOfItsSpring, 'N/mm', 1000),
          travel: num(texts.travelOfThatSpringUntil, 'mm', 0, 50),
          pin: size(texts.diameterOfItsPin, 'mm', 20),
        }),
        { rate: 10, travel: 5.2, pin: 4 },
      ),
    }),
    {},
  ),
  look: part(texts.sizesThatCarryNoForce, {
    plateRadius: size(texts.radiusOfTheBackingPlate, 'mm'),
    hubRadius: size(texts.radiusOfTheHub, 'mm'),
    studCircle: size(texts.radiusOfTheCircleOf, 'mm'),
    studRadius: size(texts.radiusOfAStud, 'mm', 50),
    studs: count(texts.numberOfStuds, 1, 12),
    pinRadius: size(texts.radiusOfAnAnchorPin, 'mm', 50),
    eyeRadius: size(texts.radiusOfTheEyeAround, 'mm', 100),
    accessHole: part(texts.holeThatAToolReaches, {
      at: point(texts.itsMiddle),
      along: num(texts.directionOfItsLengthFrom, 'degrees', -360, 360),
      length: size(texts.itsLength, 'mm', 100),
      radius: size(texts.radiusOfItsEnds, 'mm', 50),
    }),
  }),
  start: v.optional(startPart(texts.howTheBrakeStandsWhen), {}),
  otherWheel: v.optional(startPart(texts.howTheBrakeOfThe)),
  states: list(texts.standingStatesEachMadeFrom, statePart, 40),
});

/** A scene as it was read: trade units, one for each key, with what was left out filled in. */
export type Scene = v.InferOutput<typeof sceneSchema>;
