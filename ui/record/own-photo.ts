import * as v from 'valibot';
import { type OwnSeen, placeKeys } from '../../sim/index.ts';

/**
 * What was tapped in a picture of one's own brake, in pixels of the picture: places in mm are worked out
 * anew when a size is mended. The picture itself stays on the device and is in no record, file or link.
 */
export const circlePoints = [
  'edgeF1',
  'edgeF2',
  'edgeF3',
  'edgeR1',
  'edgeR2',
  'edgeR3',
  'hub',
  'rim1',
  'rim2',
  'rim3',
  'rim4',
  'rim5',
] as const;
/** Linings' ends are tapped as their edges. */
export type TappedPlace = Exclude<(typeof placeKeys)[number], `end${string}`>;
const isTapped = (k: (typeof placeKeys)[number]): k is TappedPlace => !k.startsWith('end');
export const photoPoints: readonly PhotoPoint[] = [...circlePoints, ...placeKeys.filter(isTapped)];
export type PhotoPoint = (typeof circlePoints)[number] | TappedPlace;

/** Sizes that are asked for beside the picture, as typed. */
export const photoSizes = ['across', 'plate', 'liningOff', 'drumNow'] as const;
export type PhotoSize = (typeof photoSizes)[number];

export type Tap = readonly [number, number];
export interface OwnPhoto {
  /** Of the upright picture, px. */
  readonly width: number;
  readonly height: number;
  readonly wheel: 'left' | 'right';
  readonly texts: Readonly<Partial<Record<PhotoSize, string>>>;
  readonly taps: Readonly<Partial<Record<PhotoPoint, Tap>>>;
  /** Points that cannot be seen in it: they stay assumed. */
  readonly unseen: readonly PhotoPoint[];
  /** The last places that made a sound brake; null before. */
  readonly seen: OwnSeen | null;
}

/** Most pixels of a side that are looked at. */
export const LONGEST_SIDE = 4096;

const finite = v.pipe(v.number(), v.finite());
const place = v.pipe(v.tuple([finite, finite]), v.readonly());
const pixel = v.pipe(finite, v.minValue(-LONGEST_SIDE), v.maxValue(2 * LONGEST_SIDE));
const side = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(LONGEST_SIDE));

const seenSchema: v.GenericSchema<unknown, OwnSeen> = v.strictObject({
  places: v.record(v.picklist(placeKeys), place),
  clearance: v.nullable(finite),
  plateRadius: v.nullable(finite),
});

export const photoSchema: v.GenericSchema<unknown, OwnPhoto> = v.strictObject({
  width: side,
  height: side,
  wheel: v.picklist(['left', 'right']),
  texts: v.record(v.picklist(photoSizes), v.pipe(v.string(), v.maxLength(200))),
  taps: v.record(v.picklist(photoPoints), v.pipe(v.tuple([pixel, pixel]), v.readonly())),
  unseen: v.pipe(v.array(v.picklist(photoPoints)), v.maxLength(photoPoints.length)),
  seen: v.nullable(seenSchema),
});
