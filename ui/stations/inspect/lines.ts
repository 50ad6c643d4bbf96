import type { LimitKey, LookKey, SizeKey, WheelLine } from '../../../sim/workshop/index.ts';

/** What is measured: the lines of the sheet in their order. Where and with what, `hows.ts` says, which the record does without. */
interface Common {
  /** Balloon on the drawing. */
  readonly number: number;
  readonly name: string;
  /** Shorter, for the phone. */
  readonly short?: string;
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
  readonly key: 'drumNew' | 'drumMax' | 'drumCut';
  readonly unit: 'mm';
}
export type Line = AskLine | SizeLine | LookLine | WorkedLine;

export const lines: readonly Line[] = [
  {
    kind: 'ask',
    key: 'drumNew',
    number: 1,
    name: 'Drum Ø, new',
    unit: 'mm',
  },
  {
    kind: 'ask',
    key: 'drumMax',
    number: 1,
    name: 'Mark cast on it, max Ø',
    unit: 'mm',
  },
  {
    kind: 'ask',
    key: 'drumCut',
    number: 1,
    name: 'Machined to, max Ø',
    unit: 'mm',
  },
  {
    kind: 'size',
    key: 'drumA',
    number: 1,
    name: 'Drum Ø, angle 1',
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumB',
    number: 1,
    name: 'Drum Ø, angle 2',
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumC',
    number: 1,
    name: 'Drum Ø, angle 3',
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumDeep',
    number: 1,
    name: 'Drum Ø, deeper in',
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
    verdict: 'drum',
    limit: 'drumMax',
  },
  {
    kind: 'worked',
    key: 'round',
    number: 2,
    name: 'Out of round',
    verdict: 'round',
    limit: 'outOfRound',
  },
  {
    kind: 'size',
    key: 'lip',
    number: 3,
    name: 'Lip height',
    unit: 'mm',
    digits: 2,
    step: 0.01,
    verdict: 'lip',
  },
  {
    kind: 'size',
    key: 'score',
    number: 2,
    name: 'Deepest score',
    unit: 'mm',
    digits: 2,
    step: 0.05,
    verdict: 'score',
    limit: 'score',
  },
  {
    kind: 'size',
    key: 'leadToe',
    number: 4,
    name: 'Leading lining, toe',
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'leadThin',
    number: 4,
    name: 'Leading lining, thinnest',
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
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'trailToe',
    number: 5,
    name: 'Trailing lining, toe',
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'trailThin',
    number: 5,
    name: 'Trailing lining, thinnest',
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
    good: 'dry',
    bad: 'wet',
    verdict: 'boots',
  },
  {
    kind: 'look',
    key: 'springs',
    number: 7,
    name: 'Springs',
    good: 'sound',
    bad: 'gaps, bent or broken',
    verdict: 'springs',
  },
  {
    kind: 'size',
    key: 'tooth',
    number: 8,
    name: 'Adjuster tooth',
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
    good: 'yes',
    bad: 'no',
    verdict: 'adjuster',
  },
  {
    kind: 'size',
    key: 'leverOff',
    number: 9,
    name: 'Lever off its stop',
    unit: 'mm',
    digits: 1,
    step: 0.5,
    verdict: 'lever',
  },
];

export type AxleKey =
  | 'notchesBefore'
  | 'notchesAfter'
  | 'odometer'
  | 'distance'
  | 'drumFitted'
  | 'liningFitted'
  | 'drumNew';
export interface AxleLine {
  readonly key: Exclude<AxleKey, 'drumNew'>;
  readonly name: string;
  readonly unit: 'mm' | 'km' | '';
}
/** Once for the axle. */
export const axleLines: readonly AxleLine[] = [
  {
    key: 'notchesBefore',
    name: 'Hand lever, notches before',
    unit: '',
  },
  {
    key: 'notchesAfter',
    name: 'Notches after',
    unit: '',
  },
  {
    key: 'odometer',
    name: 'Odometer',
    unit: 'km',
  },
  {
    key: 'distance',
    name: 'Driven on these linings',
    unit: 'km',
  },
  {
    key: 'drumFitted',
    name: 'Drum Ø when they were fitted',
    unit: 'mm',
  },
  {
    key: 'liningFitted',
    name: 'Lining when they were fitted',
    unit: 'mm',
  },
];

/** Of new parts, on each wheel; sizes and for which side. */
export const newPartNames = {
  lining: 'Lining, thickness',
  ground: 'Ground radius of its face',
  width: 'Lining, width',
  bore: 'Cylinder, bore',
  hand: 'Made for',
} as const;
export type PartKey = keyof typeof newPartNames;

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
  drumCut: ['max', 'Machined to, Ø, mm'],
  score: ['max', 'Deepest score that may stay, mm'],
  outOfRound: ['max', 'Out of round, mm'],
  taper: ['max', 'Difference of two depths, mm'],
  liningMin: ['min', 'Least lining, mm'],
  notches: ['max', 'Notches'],
};
