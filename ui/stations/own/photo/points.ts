import { ownPhotoPoints as words } from '../../../../sim/words/en.ts';
import type { PhotoPoint } from '../../../record/own-photo.ts';

/** Planes over the plate's face in which tapped parts lie. */
export type Depth = 'rim' | 'edge' | 'web' | 'lever' | 'hub';

export interface PointInfo {
  readonly id: PhotoPoint;
  readonly name: string;
  /** What exactly to tap. */
  readonly what: string;
  readonly depth: Depth;
  /** Its mirror image about the brake's upright. */
  readonly partner?: PhotoPoint;
  /** Asked for only if wished. */
  readonly extra?: true;
}

const p = (
  id: PhotoPoint,
  name: string,
  what: string,
  depth: Depth,
  more: Pick<PointInfo, 'partner' | 'extra'> = {},
): PointInfo => ({ id, name, what, depth, ...more });

const extra = true;
const END = words.end;
const RIM = words.rim;

/** In the order in which they are asked for. */
export const points: readonly PointInfo[] = [
  p('edgeF1', words.leadingLiningUpperEnd, END, 'edge'),
  p('edgeF2', words.leadingLiningMiddle, words.halfwayDownOnItsOuter, 'edge'),
  p('edgeF3', words.leadingLiningLowerEnd, END, 'edge'),
  p('edgeR1', words.trailingLiningLowerEnd, END, 'edge'),
  p('edgeR2', words.trailingLiningMiddle, words.halfwayUpOnItsOuter, 'edge'),
  p('edgeR3', words.trailingLiningUpperEnd, END, 'edge'),
  p('hub', words.middleOfTheHub, words.theMiddleOfItsFlat, 'hub'),
  p('rim1', words.platesRimUpperRight, RIM, 'rim'),
  p('rim2', words.platesRimTop, RIM, 'rim'),
  p('rim3', words.platesRimLeft, RIM, 'rim'),
  p('rim4', words.platesRimLowerLeft, RIM, 'rim'),
  p('rim5', words.platesRimLowerRight, RIM, 'rim'),
  p('heelF', words.leadingHeel, words.middleOfItsPinOr, 'web', {
    partner: 'heelR',
  }),
  p('heelR', words.trailingHeel, words.middleOfItsPinOr, 'web', {
    partner: 'heelF',
  }),
  p('toeF', words.leadingToe, words.whereThePistonBearsOn, 'web', { partner: 'toeR' }),
  p('toeR', words.trailingToe, words.whereThePistonBearsOn, 'web', {
    partner: 'toeF',
  }),
  p('seatR', words.strutsSeatAtTheParking, words.whereTheStrutsNotchBears, 'web'),
  p('pivot', words.parkingLeversPivot, words.middleOfThePinIt, 'web'),
  p('hook', words.cablesHook, words.whereTheCablesEndLies, 'lever'),
  p('seatF', words.strutsSeatOnTheLeading, words.itsHeightIsWhatCounts, 'web'),
  p('upperF', words.upperSpringLeadingHole, words.middleOfTheHoleIt, 'web', {
    partner: 'upperR',
    extra,
  }),
  p('upperR', words.upperSpringTrailingHole, words.middleOfTheHoleIt, 'web', {
    partner: 'upperF',
    extra,
  }),
  p('lowerF', words.lowerSpringLeadingHole, words.middleOfTheHoleIt, 'web', {
    partner: 'lowerR',
    extra,
  }),
  p('lowerR', words.lowerSpringTrailingHole, words.middleOfTheHoleIt, 'web', {
    partner: 'lowerF',
    extra,
  }),
  p('holdF', words.holdDownLeadingShoe, words.middleOfItsCup, 'web', { partner: 'holdR', extra }),
  p('holdR', words.holdDownTrailingShoe, words.middleOfItsCup, 'web', { partner: 'holdF', extra }),
  p('flatFA', words.leadingFlatOneEnd, words.onTheLineTheHeel, 'web', { extra }),
  p('flatFB', words.leadingFlatOtherEnd, words.onTheSameLine, 'web', { extra }),
  p('flatRA', words.trailingFlatOneEnd, words.onTheLineTheHeel, 'web', { extra }),
  p('flatRB', words.trailingFlatOtherEnd, words.onTheSameLine, 'web', { extra }),
];

export const pointOf = (id: PhotoPoint): PointInfo => points.find((x) => x.id === id) as PointInfo;
/** Its number on the picture. */
export const numberOf = (id: PhotoPoint): number => points.findIndex((x) => x.id === id) + 1;

/** Those asked of a brake: flats only of one whose heels slide on them. */
export const pointsFor = (flats: boolean): readonly PointInfo[] =>
  points.filter(({ id }) => flats || !id.startsWith('flat'));
