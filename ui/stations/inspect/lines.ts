import type { LimitKey, LookKey, SizeKey, WheelLine } from '../../../sim/workshop/index.ts';

/** What is measured, where, and with what: the lines of the sheet in their order. */
interface Common {
  /** Balloon on the drawing. */
  readonly number: number;
  readonly name: string;
  /** Shorter, for the phone. */
  readonly short?: string;
  /** Where and with what. */
  readonly how: string;
  /** Verdict shown in its row. */
  readonly verdict?: WheelLine;
  readonly limit?: LimitKey;
}
export interface SizeLine extends Common {
  readonly kind: 'size';
  readonly key: SizeKey;
  readonly unit: 'mm' | '';
  /** Digits shown, and what − and + change on the phone. */
  readonly digits: number;
  readonly step: number;
}
export interface LookLine extends Common {
  readonly kind: 'look';
  readonly key: LookKey;
  readonly good: string;
  readonly bad: string;
}
/** Worked out from other lines. */
export interface WorkedLine extends Common {
  readonly kind: 'worked';
  readonly key: 'largest' | 'round';
}
/** Asked once, for both wheels, before anything is measured. */
export interface AskLine extends Common {
  readonly kind: 'ask';
  readonly key: 'drumNew' | 'drumMax';
  readonly unit: 'mm';
}
export type Line = AskLine | SizeLine | LookLine | WorkedLine;

const drumHow =
  'Inside gauge or drum micrometer, a third of the width in from the edge. Mark the drum, turn the gauge by 60° each time.';
const liningHow =
  'Lining only, without the steel table; on a riveted one down to the rivet head. Steel rule, depth gauge or caliper.';

export const lines: readonly Line[] = [
  {
    kind: 'ask',
    key: 'drumNew',
    number: 1,
    name: 'Drum Ø, new',
    how: 'First of all: which drum is it? From the parts list, or at the unworn edge outside the lip with an inside caliper.',
    unit: 'mm',
  },
  {
    kind: 'ask',
    key: 'drumMax',
    number: 1,
    name: 'Mark cast on it, max Ø',
    how: 'Cast or stamped on the drum itself, “max dia” or “discard”: the largest Ø allowed. No drum is judged without it.',
    unit: 'mm',
  },
  {
    kind: 'size',
    key: 'drumA',
    number: 1,
    name: 'Drum Ø, angle 1',
    how: drumHow,
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumB',
    number: 1,
    name: 'Drum Ø, angle 2',
    how: drumHow,
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumC',
    number: 1,
    name: 'Drum Ø, angle 3',
    how: drumHow,
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumDeep',
    number: 1,
    name: 'Drum Ø, deeper in',
    how: 'The same gauge, near the closed end of the swept face. Tells a bore that widens inwards.',
    unit: 'mm',
    digits: 2,
    step: 0.01,
    verdict: 'taper',
    limit: 'taper',
  },
  {
    kind: 'worked',
    key: 'largest',
    number: 1,
    name: 'Drum Ø, largest',
    how: 'The largest of those above. The limit is the maximum cast on the drum itself.',
    verdict: 'drum',
    limit: 'drumMax',
  },
  {
    kind: 'worked',
    key: 'round',
    number: 2,
    name: 'Out of round',
    how: 'Greatest less least of the angles. Two readings should be the greatest and the least.',
    verdict: 'round',
    limit: 'outOfRound',
  },
  {
    kind: 'size',
    key: 'lip',
    number: 3,
    name: 'Lip height',
    how: 'Step from the swept face to the unworn edge: depth gauge, or half of swept Ø less edge Ø.',
    unit: 'mm',
    digits: 2,
    step: 0.01,
    verdict: 'lip',
  },
  {
    kind: 'size',
    key: 'leadToe',
    number: 4,
    name: 'Leading lining, toe',
    how: `Leading is the shoe towards the front of the vehicle. At the cylinder’s end. ${liningHow}`,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'leadThin',
    number: 4,
    name: 'Leading lining, thinnest',
    how: `Look along the whole arc for it. ${liningHow}`,
    unit: 'mm',
    digits: 2,
    step: 0.1,
    verdict: 'leading',
    limit: 'liningMin',
  },
  {
    kind: 'size',
    key: 'leadHeel',
    number: 4,
    name: 'Leading lining, heel',
    how: `At the end where the shoe is held. ${liningHow}`,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'trailToe',
    number: 5,
    name: 'Trailing lining, toe',
    how: `At the cylinder’s end. ${liningHow}`,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'trailThin',
    number: 5,
    name: 'Trailing lining, thinnest',
    how: `Look along the whole arc for it. ${liningHow}`,
    unit: 'mm',
    digits: 2,
    step: 0.1,
    verdict: 'trailing',
    limit: 'liningMin',
  },
  {
    kind: 'size',
    key: 'trailHeel',
    number: 5,
    name: 'Trailing lining, heel',
    how: `At the end where the shoe is held. ${liningHow}`,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'look',
    key: 'faces',
    number: 5,
    name: 'Faces of drum and linings',
    short: 'Faces',
    how: 'By eye and lamp: cracks, deep scores, loose rivets, edges lifting, any trace of fluid or grease.',
    good: 'sound',
    bad: 'not sound',
    verdict: 'faces',
  },
  {
    kind: 'look',
    key: 'boots',
    number: 6,
    name: 'Cylinder behind the boots',
    short: 'Cylinder, boots',
    how: 'Lift the edge of each dust boot with a blunt pick. Any wet behind it is a leak.',
    good: 'dry',
    bad: 'wet',
    verdict: 'boots',
  },
  {
    kind: 'look',
    key: 'springs',
    number: 7,
    name: 'Springs',
    how: 'Coils closed, hooks whole, no rust pits. Dropped on the bench a sound spring thuds, a tired one rings.',
    good: 'sound',
    bad: 'gaps, bent or broken',
    verdict: 'springs',
  },
  {
    kind: 'size',
    key: 'tooth',
    number: 8,
    name: 'Adjuster tooth',
    how: 'Count the teeth that the lever has passed, from the shortest setting.',
    unit: '',
    digits: 0,
    step: 1,
    verdict: 'tooth',
  },
  {
    kind: 'look',
    key: 'adjuster',
    number: 8,
    name: 'Adjuster moves and holds',
    short: 'Adjuster',
    how: 'Lift the lever, move it by hand, let go: it must slide freely and hold each tooth.',
    good: 'yes',
    bad: 'no',
    verdict: 'adjuster',
  },
  {
    kind: 'size',
    key: 'leverOff',
    number: 9,
    name: 'Lever off its stop',
    how: 'Gap at the cable’s hook until the parking lever rests on its stop: 0 when home. Steel rule or feeler.',
    unit: 'mm',
    digits: 1,
    step: 0.5,
    verdict: 'lever',
  },
];

export type AxleKey =
  | 'notchesBefore'
  | 'notchesAfter'
  | 'distance'
  | 'drumFitted'
  | 'liningFitted'
  | 'drumNew';
export interface AxleLine {
  readonly key: Exclude<AxleKey, 'drumNew'>;
  readonly name: string;
  readonly how: string;
  readonly unit: 'mm' | 'km' | '';
}
/** Once for the axle. */
export const axleLines: readonly AxleLine[] = [
  {
    key: 'notchesBefore',
    name: 'Hand lever, notches before',
    how: 'Count the clicks to a firm hold before anything is touched.',
    unit: '',
  },
  {
    key: 'notchesAfter',
    name: 'Notches after',
    how: 'The same pull, when all is back together.',
    unit: '',
  },
  {
    key: 'distance',
    name: 'Driven on these linings',
    how: 'From the service book. Without it no distance left can be told.',
    unit: 'km',
  },
  {
    key: 'drumFitted',
    name: 'Drum Ø when they were fitted',
    how: 'New diameter when left out.',
    unit: 'mm',
  },
  {
    key: 'liningFitted',
    name: 'Lining when they were fitted',
    how: 'New thickness when left out, where the limits’ owner tells it.',
    unit: 'mm',
  },
];

/** What the sheet can be headed with. */
export const heads = [
  ['name', 'Name'],
  ['vehicle', 'Vehicle'],
  ['date', 'Date'],
] as const;
export type HeadKey = (typeof heads)[number][0];

/** Limits with the sense in which they hold. */
export const limitWords: Readonly<Record<LimitKey, readonly [sense: string, name: string]>> = {
  drumMax: ['max', 'Largest drum Ø, mm'],
  outOfRound: ['max', 'Out of round, mm'],
  taper: ['max', 'Difference of two depths, mm'],
  liningMin: ['min', 'Least lining, mm'],
  notches: ['max', 'Notches'],
};
