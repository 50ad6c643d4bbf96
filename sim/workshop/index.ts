/** The workshop's only door: what the mechanics' codes and numbers mean to people at a brake. */
export {
  type AxleForecast,
  type AxleFound,
  type AxleVerdict,
  axleForecast,
  judgeAxle,
  wheels,
} from './axle.ts';
export { type Case, cases } from './cases.ts';
export { type Cut, type CutVerdict, cutOf, judgeCut } from './cut.ts';
export { type Examination, type ExaminationId, examinations } from './examinations.ts';
export { examine, minutesOf, parted } from './examine.ts';
export { faultIds, faultNames, isFault } from './fault-names.ts';
export type { Fault, FaultGroup, NotShown } from './fault-types.ts';
export { faultOf, faults, notShown } from './faults.ts';
export { type FindingOf, findingText, foundText, type Observed } from './finding-text.ts';
export { restsOn } from './forecast-text.ts';
export {
  type History,
  historyOf,
  type PastSheet,
  READS,
  type Trend,
  type TrendLine,
} from './history.ts';
export {
  boresOf,
  type Found,
  type Level,
  type LookKey,
  largestBore,
  outOfRound,
  type SizeKey,
  thinnestOf,
  type Verdict,
  type WheelLine,
} from './inspection.ts';
export { type Against, Investigation } from './investigation.ts';
export { lettersText } from './letters-text.ts';
export { eventText, type ToldEvent, toldEvent } from './life-text.ts';
export {
  type AsNew,
  holdsFor,
  type LimitKey,
  type LimitSet,
  type Limits,
  limitSets,
  voided,
} from './limits.ts';
export { filledText } from './measured-notes.ts';
export {
  judgePart,
  type NewPart,
  type PartVerdict,
  unlikeSides,
} from './new-parts.ts';
export { ownWords } from './own-brake.ts';
export { ownSays, type Say } from './own-says.ts';
export { type ParkingRule, parkingRules } from './parking-rules.ts';
export { meaningOf } from './reading-text.ts';
export {
  alsoShows,
  type Cause,
  figureOf,
  type Judged,
  judgeSaid,
  type NextCheck,
  nextCheck,
  type Said,
} from './see/rank.ts';
export { type RollerFigures, saidByRollers } from './see/roller.ts';
export { isFigure, type Sign, type SignKey, type SignValue, signOf, signs } from './see/signs.ts';
export { type Bases, type SignTable, shownByTwo, signTable, tableWork } from './see/table.ts';
export { neverSeen, told, unseen } from './see/told.ts';
export { DRY_ROAD, dragNotes, pedalNotes, stopNotes } from './stop-text.ts';
export { ALIKE_TEXT, fromText, lawText, reasonText, stepText } from './working-text.ts';
export { yieldText } from './yield-text.ts';
