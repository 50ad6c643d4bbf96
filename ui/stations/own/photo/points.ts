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
const END = 'Where its outer edge, the one nearest to you, ends.';
const RIM = 'Anywhere on the backing plate’s outermost edge, all round.';

/** In the order in which they are asked for. */
export const points: readonly PointInfo[] = [
  p('edgeF1', 'Leading lining, upper end', END, 'edge'),
  p('edgeF2', 'Leading lining, middle', 'Halfway down, on its outer edge.', 'edge'),
  p('edgeF3', 'Leading lining, lower end', END, 'edge'),
  p('edgeR1', 'Trailing lining, lower end', END, 'edge'),
  p('edgeR2', 'Trailing lining, middle', 'Halfway up, on its outer edge.', 'edge'),
  p('edgeR3', 'Trailing lining, upper end', END, 'edge'),
  p('hub', 'Middle of the hub', 'The middle of its flat face.', 'hub'),
  p('rim1', 'Plate’s rim, upper right', RIM, 'rim'),
  p('rim2', 'Plate’s rim, top', RIM, 'rim'),
  p('rim3', 'Plate’s rim, left', RIM, 'rim'),
  p('rim4', 'Plate’s rim, lower left', RIM, 'rim'),
  p('rim5', 'Plate’s rim, lower right', RIM, 'rim'),
  p('heelF', 'Leading heel', 'Middle of its pin, or of the round heel.', 'web', {
    partner: 'heelR',
  }),
  p('heelR', 'Trailing heel', 'Middle of its pin, or of the round heel.', 'web', {
    partner: 'heelF',
  }),
  p('toeF', 'Leading toe', 'Where the piston bears on the shoe’s web.', 'web', { partner: 'toeR' }),
  p('toeR', 'Trailing toe', 'Where the piston bears on the shoe’s web.', 'web', {
    partner: 'toeF',
  }),
  p('seatR', 'Strut’s seat at the parking lever', 'Where the strut’s notch bears.', 'web'),
  p('pivot', 'Parking lever’s pivot', 'Middle of the pin it turns on.', 'web'),
  p('hook', 'Cable’s hook', 'Where the cable’s end lies in the lever.', 'lever'),
  p('seatF', 'Strut’s seat on the leading shoe', 'Its height is what counts.', 'web'),
  p('upperF', 'Upper spring, leading hole', 'Middle of the hole it hooks into.', 'web', {
    partner: 'upperR',
    extra,
  }),
  p('upperR', 'Upper spring, trailing hole', 'Middle of the hole it hooks into.', 'web', {
    partner: 'upperF',
    extra,
  }),
  p('lowerF', 'Lower spring, leading hole', 'Middle of the hole it hooks into.', 'web', {
    partner: 'lowerR',
    extra,
  }),
  p('lowerR', 'Lower spring, trailing hole', 'Middle of the hole it hooks into.', 'web', {
    partner: 'lowerF',
    extra,
  }),
  p('holdF', 'Hold-down, leading shoe', 'Middle of its cup.', 'web', { partner: 'holdR', extra }),
  p('holdR', 'Hold-down, trailing shoe', 'Middle of its cup.', 'web', { partner: 'holdF', extra }),
  p('flatFA', 'Leading flat, one end', 'On the line the heel slides on.', 'web', { extra }),
  p('flatFB', 'Leading flat, other end', 'On the same line.', 'web', { extra }),
  p('flatRA', 'Trailing flat, one end', 'On the line the heel slides on.', 'web', { extra }),
  p('flatRB', 'Trailing flat, other end', 'On the same line.', 'web', { extra }),
];

export const pointOf = (id: PhotoPoint): PointInfo => points.find((x) => x.id === id) as PointInfo;
/** Its number on the picture. */
export const numberOf = (id: PhotoPoint): number => points.findIndex((x) => x.id === id) + 1;

/** Those asked of a brake: flats only of one whose heels slide on them. */
export const pointsFor = (flats: boolean): readonly PointInfo[] =>
  points.filter(({ id }) => flats || !id.startsWith('flat'));
