/** The mechanics' only door: codes and quantities. What they mean in a workshop, `workshop/index.ts` says. */
export { balance, rest } from './balance/balance.ts';
export { type BentPoints, bentPoints } from './balance/bent.ts';
export { drumRadiusNow } from './balance/dress.ts';
export { type Instant, isTold, type ShoeInstant, type ShoePose } from './balance/instant.ts';
export { lockedShoe } from './balance/lock.ts';
export { placePoint } from './balance/place.ts';
export { type Press, type Solved, solveBalance } from './balance/press.ts';
export { playToStep, teethPassed } from './balance/ratchet.ts';
export { createRig, type Rig, type RigOptions } from './balance/rig.ts';
export type { Hand, Holdable } from './balance/types.ts';
export {
  type Descent,
  type Duty,
  type Parkings,
  type Stops,
  usualPressure,
  usualSpeed,
  withReverse,
  withStops,
} from './brake/duty.ts';
export {
  type AdjusterOptions,
  adjusterKinds,
  HOT_LOCK,
  type KindLaw,
  kindLaws,
  STAR_WHEEL,
  type StrutSpring,
  toothAcross,
  WEDGE_SLOPE,
  WEDGE_STEP,
  withAdjuster,
} from './brake/kinds.ts';
export { bandOfLetters, type Letters, lettersOf } from './brake/letters.ts';
export {
  climbForceAt,
  growthAt,
  type LeverForm,
  leverForm,
  liftWork,
  noseAngle,
} from './brake/lever-form.ts';
export { leverMass, leverOutline, rowAngle } from './brake/lever-outline.ts';
export { pistonOutline, sickleOf } from './brake/part-outlines.ts';
export { type PedalStack, pedalFloor, pedalForceAt, pressureAt } from './brake/pedal.ts';
export {
  type BrakeState,
  type Condition,
  ELEMENTS,
  freshState,
  SOUND,
  startState,
  strutLength,
} from './brake/state.ts';
export { stopStiffness } from './brake/stop-contacts.ts';
export {
  axleForce,
  decelerationBy,
  roadPower,
  slidesAt,
  stoppingDistance,
  torqueFor,
} from './brake/stopping.ts';
export {
  firstToYield,
  lineContact,
  pinGive,
  pinShare,
  STRUT_PARTS,
  type StrutPart,
  strutGive,
  strutGives,
  strutYields,
  type Yielding,
} from './brake/strut-path.ts';
export { SURFACES, type Surface, surfaceFactor } from './brake/surface.ts';
export type {
  Adjuster,
  AdjusterKind,
  Brake,
  Drum,
  Lining,
  Point,
  ReturnSpring,
  Shoe,
  Side,
  StrutPath,
  ToothedLever,
  Turning,
  Wheel,
  WornAlong,
} from './brake/types.ts';
export { footFor, lineAt, masterAt, masterFor } from './brake/upstream.ts';
export { depthAt, depthsWithin, meanDepth } from './brake/worn-along.ts';
export { atan2, cos, sin } from './math/trig.ts';
export { type Drop, hitOf, leverAt, ringOf } from './motion/lever-body.ts';
export { createMotion, type Motion } from './motion/motion.ts';
export type { MotionPress, MotionRecord } from './motion/record.ts';
export { restingFrom } from './motion/resting.ts';
export { type RimHand, turningMass } from './motion/rim.ts';
export {
  dragOf,
  peak,
  shoeFactor,
  shoeFactorFull,
} from './readings/factors.ts';
export { pedalStack, runOutLeft } from './readings/pedal.ts';
export type { Reading, ReadingKey, ShoeReading } from './readings/reading.ts';
export { readingOf, readings } from './readings/readings.ts';
export { type Gaps, gapsOf, type Role, roleOf } from './readings/roles.ts';
export { type Finding, tellFinding } from './scene/finding.ts';
export { few, parseBy } from './scene/issues.ts';
export { VERSION as SCENE_VERSION } from './scene/migrations/migrate.ts';
export { nearest } from './scene/nearest.ts';
export { choice, count, list, part, words } from './scene/parts.ts';
export { type ReadResult, readScene, readSceneText } from './scene/read.ts';
export { type Scene, sceneSchema } from './scene/schema.ts';
export { type AtTravel, atTravel, pressedTo } from './study/at-travel.ts';
export {
  dutyEnergy,
  type SlowDowns,
  slowDownEnergy,
  slowDownsFor,
  slowDownsWarm,
  worthKm,
} from './study/bed-by-stops.ts';
export {
  type BedRow,
  bedIn,
  bedRow,
  type CableFirst,
  cableFirst,
  contactShare,
  type FirstPresses,
  PRESS,
  pressUntilSilent,
} from './study/bedding.ts';
export { type BothStates, wheelReadings } from './study/both-wheels.ts';
export {
  handForce,
  type LeverInHand,
  leverInHand,
  pressingHoldDown,
  pullOfHand,
  sentBack,
  type Unhooking,
  unhooking,
} from './study/by-hand.ts';
export {
  type Axle,
  type BothWays,
  boreCheck,
  CHECKED,
  DRIVE,
  dragHeat,
  FIRM,
  firstTouch,
  HAND,
  handTurn,
  LIGHT,
  leverOff,
  notchesAt,
  type PedalCheck,
  parkedRoller,
  pedalAt,
  pedalPulse,
  pressedOnce,
  pullDrum,
  ROLLER,
  type Rubbing,
  releaseTime,
  restGap,
  roller,
  rubbing,
  TOO_HOT,
  type WheelBrake,
} from './study/checks.ts';
export { type DrumInHand, type DrumPull, drumInHand } from './study/drum-by-hand.ts';
export { type Excess, excess } from './study/excess.ts';
export type { FaultChange } from './study/fault-types.ts';
export { axleWith, canFail, type FaultId, faultChanges, withFault } from './study/faults.ts';
export { type AdjusterFault, DESCENT } from './study/faults-adjuster.ts';
export type { CableFault } from './study/faults-cable.ts';
export type { DrumFault } from './study/faults-drum.ts';
export type { FrictionFault } from './study/faults-friction.ts';
export type { PistonFault } from './study/faults-pistons.ts';
export { type Fit, fitOf, type NewLining, withNewLinings } from './study/fit.ts';
export {
  BAND,
  type Forecast,
  type ForecastLine,
  forecast,
  type Measured,
} from './study/forecast.ts';
export { type BodyForce, type BodyKind, bodyGap, freeBody } from './study/free-body.ts';
export { type CableSet, cableAt, hookTravel, type Spent, spend } from './study/hand-lever.ts';
export {
  type HotParking,
  handLocked,
  hotParking,
  type LockedHand,
  takenUp,
} from './study/hand-locked.ts';
export { type Hill, type HotPress, hotPress } from './study/hot-press.ts';
export {
  openBrake,
  partToe,
  type ToothGives,
  type ToothLift,
  type TurnLimits,
  toothGives,
  toothLift,
  turnLimits,
} from './study/in-order.ts';
export type { LessonValue } from './study/lesson-stand.ts';
export { LessonValues } from './study/lesson-values.ts';
export { type LeverAlone, leverAlone } from './study/lever-alone.ts';
export {
  type BackOff,
  type LipFit,
  liningAt,
  lipFit,
  lipHeight,
  type Overlap,
  teethToBackOff,
} from './study/lip.ts';
export { HAND_PULL, type LipForce, lipForce, PULLER } from './study/lip-force.ts';
export { type DrumAnswers, likelyLocks } from './study/locks.ts';
export {
  boreFrom,
  type Filled,
  type LiningReading,
  type LoadResult,
  liningReading,
  loadMeasured,
  measure,
  type WheelReadings,
} from './study/measured.ts';
export { type NewFit, newFit } from './study/new-part.ts';
export { type OnHill, onHill } from './study/on-hill.ts';
export { answerKeys, type OwnAnswers, ownAnswers, varianceOf } from './study/own-answers.ts';
export {
  keyOfPath,
  nearestScene,
  type OwnKey,
  type OwnSizes,
  ownKeys,
  ownScene,
  sizeAt,
} from './study/own-brake.ts';
export { firstClick, type OwnFigures, ownFigures } from './study/own-figures.ts';
export {
  type Expected,
  expected,
  type FoundKey,
  foundKeys,
  type OwnFound,
  RULE,
  type Spread,
  wearRatio,
} from './study/own-found.ts';
export {
  type OwnPlaces,
  type OwnSeen,
  type PlaceKey,
  placeKeys,
  toReference,
} from './study/own-places.ts';
export { parkedAxle, type WheelFault, wheelWith } from './study/parked-axle.ts';
export { parkedReadings } from './study/parked-readings.ts';
export {
  cableFor,
  type Parked,
  parked,
  type Stance,
  slideSlope,
  slopeHeld,
  slopeTorque,
} from './study/parking.ts';
export { type Asked, ruleTorque } from './study/parking-rules.ts';
export {
  type PedalCurve,
  type PedalParts,
  type PedalPoint,
  pedalCurve,
  pedalParts,
} from './study/pedal-curve.ts';
export { curveReadings, partReadings } from './study/pedal-readings.ts';
export { type PresetRow, presetRow, presetRows, presetTooth } from './study/preset.ts';
export { type Pumped, pumped, QUICK, RETURN_TIME, stillOut } from './study/pump.ts';
export {
  FELT,
  type ForceLock,
  type Held,
  isForceLock,
  jackScrew,
  type Lock,
  letGo,
  type Removal,
  removal,
  rustTorque,
  UNHELD,
  unforced,
} from './study/removal.ts';
export { type RestFaces, restFaces } from './study/rest-faces.ts';
export { type RoadDrag, roadDrag } from './study/road-drag.ts';
export {
  HOT_DRUM,
  type OrderOutcome,
  type SettingOrder,
  setOrders,
} from './study/set-orders.ts';
export { slopeReadings } from './study/slope-readings.ts';
export { brakingTorque, pressureToSlow, type Stop, stopAt } from './study/stop.ts';
export { dragReadings, slowingReadings, stopReadings } from './study/stop-readings.ts';
export { holdDownPreload, type Tilt, type TiltCause, tiltOf, UPRIGHT } from './study/tilt.ts';

export { aroundTurn, boreDiameter, type TurnPoint, turnReadings } from './study/turn.ts';
export type { Answer } from './study/vary/answers.ts';
export type { Base, Press as VaryPress } from './study/vary/base.ts';
export {
  type Free,
  type Miss,
  missOf,
  roomOf,
  shareTorque,
  type Wish,
} from './study/vary/design.ts';
export {
  type MapAsk,
  type MapSide,
  mapping,
  NETS,
  netPlaces,
  sideValues,
} from './study/vary/map.ts';
export type { Mark } from './study/vary/marks.ts';
export { atLeast, type Judgement, type Odds, oddsOf } from './study/vary/odds.ts';
export { type Quantity, quantitiesOf } from './study/vary/quantities.ts';
export {
  type Band,
  bandOf,
  type SampleAsk,
  sampling,
  type Tolerance,
  valueAt,
} from './study/vary/sample.ts';
export { curveOf, type SweepAsk, sweep } from './study/vary/sweep.ts';
export { SET, type Setting, type Shown, Vary, type VaryPoint } from './study/vary/vary.ts';
export { FREE_COLD, type FreeRow, setTight, wearsFree } from './study/wear-free.ts';
export { nowWorkings } from './study/working/now.ts';
export type { Now } from './study/working/now-shoe.ts';
export { parkedWorkings, slopeWorkings } from './study/working/parked.ts';
export {
  curveWorkings,
  partWorkings,
} from './study/working/pedal.ts';
export {
  dragWorkings,
  slowingWorkings,
  stopWorkings,
  wheelWorkings,
} from './study/working/road.ts';
export {
  type Reason,
  type ShoeSteps,
  type Step,
  type StepCode,
  shoeSteps,
} from './study/working/shoe-factor.ts';
export {
  type From as WorkingFrom,
  type Given,
  givens,
  rounded,
  type Term,
} from './study/working/term.ts';
export { turnWorkings } from './study/working/turn.ts';
export {
  type Derivations,
  type Law,
  type Working,
  workingsOf,
} from './study/working/working.ts';
export { BAR, DEG, KM, KMH } from './units/units.ts';
export { application } from './wear/application.ts';
export {
  AIR,
  cooled,
  coolingAt,
  descended,
  descentForce,
  stopEnergyOf,
  stopRise,
  warmed,
} from './wear/heat.ts';
export { drumShareOf, flashRise, stopped } from './wear/interface.ts';
export { createLife, driveLife } from './wear/life.ts';
export { lifeAt, rowAt } from './wear/life-at.ts';
export type {
  Life,
  LifeEnd,
  LifeEvent,
  LifeEventKind,
  LifeOptions,
  LifeRow,
} from './wear/life-types.ts';
export { type PullResult, parkingPull } from './wear/parking-pull.ts';
export { lostVolume, type Rebedding, rebed, underShoes } from './wear/rebed.ts';
export { isDriven, standingDistance, standingState } from './wear/standing.ts';
export { swapShoes } from './wear/swap-shoes.ts';
export { suits, suitsShoes } from './wear/under.ts';
export {
  type TracePoint,
  thinnest,
  type WearResult,
  wearOn,
} from './wear/wear-on.ts';
