import { labelWords, inspectLines as words } from '../../../sim/words/en.ts';
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
    name: words.askName,
    unit: 'mm',
  },
  {
    kind: 'ask',
    key: 'drumMax',
    number: 1,
    name: words.askName2,
    unit: 'mm',
  },
  {
    kind: 'ask',
    key: 'drumCut',
    number: 1,
    name: words.askName3,
    unit: 'mm',
  },
  {
    kind: 'size',
    key: 'drumA',
    number: 1,
    name: words.sizeName,
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumB',
    number: 1,
    name: words.sizeName2,
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumC',
    number: 1,
    name: words.sizeName3,
    unit: 'mm',
    digits: 2,
    step: 0.01,
  },
  {
    kind: 'size',
    key: 'drumDeep',
    number: 1,
    name: words.sizeName4,
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
    name: words.workedName,
    verdict: 'drum',
    limit: 'drumMax',
  },
  {
    kind: 'worked',
    key: 'round',
    number: 2,
    name: words.workedName2,
    verdict: 'round',
    limit: 'outOfRound',
  },
  {
    kind: 'size',
    key: 'lip',
    number: 3,
    name: words.sizeName5,
    unit: 'mm',
    digits: 2,
    step: 0.01,
    verdict: 'lip',
  },
  {
    kind: 'size',
    key: 'score',
    number: 2,
    name: words.sizeName6,
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
    name: words.sizeName7,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'leadThin',
    number: 4,
    name: words.sizeName8,
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
    name: words.sizeName9,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'trailToe',
    number: 5,
    name: words.sizeName10,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'size',
    key: 'trailThin',
    number: 5,
    name: words.sizeName11,
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
    name: words.sizeName12,
    unit: 'mm',
    digits: 2,
    step: 0.1,
  },
  {
    kind: 'look',
    key: 'faces',
    number: 5,
    name: words.lookName,
    short: words.lookShort,
    good: words.soundWord,
    bad: words.lookBad,
    verdict: 'faces',
  },
  {
    kind: 'look',
    key: 'boots',
    number: 6,
    name: words.lookName2,
    short: words.lookShort2,
    good: words.dry,
    bad: words.wet,
    verdict: 'boots',
  },
  {
    kind: 'look',
    key: 'springs',
    number: 7,
    name: words.lookName3,
    good: words.soundWord,
    bad: words.lookBad2,
    verdict: 'springs',
  },
  {
    kind: 'size',
    key: 'tooth',
    number: 8,
    name: words.sizeName13,
    unit: '',
    digits: 0,
    step: 1,
    verdict: 'tooth',
  },
  {
    kind: 'look',
    key: 'adjuster',
    number: 8,
    name: words.lookName4,
    short: labelWords.adjuster,
    good: words.yes,
    bad: words.no,
    verdict: 'adjuster',
  },
  {
    kind: 'size',
    key: 'leverOff',
    number: 9,
    name: words.sizeName14,
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
    name: words.notchesBeforeName,
    unit: '',
  },
  {
    key: 'notchesAfter',
    name: words.notchesAfterName,
    unit: '',
  },
  {
    key: 'odometer',
    name: words.odometerName,
    unit: 'km',
  },
  {
    key: 'distance',
    name: words.distanceName,
    unit: 'km',
  },
  {
    key: 'drumFitted',
    name: words.drumFittedName,
    unit: 'mm',
  },
  {
    key: 'liningFitted',
    name: words.liningFittedName,
    unit: 'mm',
  },
];

/** Of new parts, on each wheel; sizes and for which side. */
export const newPartNames = words.newPartNames;
export type PartKey = keyof typeof newPartNames;

/** What the sheet can be headed with. */
export const heads = [
  ['name', labelWords.name],
  ['vehicle', labelWords.vehicle],
  ['date', labelWords.date],
] as const;
export type HeadKey = (typeof heads)[number][0];

/** Limits with the sense in which they hold. */
export const limitWords: Readonly<Record<LimitKey, readonly [sense: string, name: string]>> = {
  drumMax: ['max', words.largestDrumDiameterMm],
  drumCut: ['max', words.machinedToDiameterMm],
  score: ['max', words.deepestScoreThatMayStay],
  outOfRound: ['max', words.outOfRoundMm],
  taper: ['max', words.differenceOfTwoDepthsMm],
  liningMin: ['min', words.leastLiningMm],
  notches: ['max', labelWords.notches],
};
