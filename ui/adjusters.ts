import {
  type Adjuster,
  type AdjusterKind,
  type Brake,
  type BrakeState,
  kindLaws,
  leverForm,
  liftWork,
  strutLength,
} from '../sim/index.ts';
import { labelWords, adjusters as texts } from '../sim/words/en.ts';
import { number } from './format.ts';
import type { Timbre } from './sound.ts';

/**
 * Everything that the page says and sounds by the kind of adjuster: one row a kind, and a kind left
 * out does not compile. How each is drawn is the table of `stage/parts/adjuster.ts`.
 */

/** How an adjuster is backed off by hand: in teeth, or a wedge by a tenth of a millimetre or so. */
export interface Steps {
  /** Steps of the adjuster that one press takes. */
  readonly press: number;
  readonly task: string;
  readonly head: string;
  readonly back: string;
  readonly on: string;
  readonly now: string;
  /** So many steps back from a tooth, as a figure. */
  amount(tooth: number, back: number): string;
  /** "of 5 teeth", "of 0.60 mm". */
  of(tooth: number, back: number): string;
  /** The same by itself, as what it takes to come free. */
  taken(tooth: number, back: number): string;
  /** Where the adjuster stands, as a figure, and what stands after it. */
  readonly at: (tooth: number) => string;
  readonly after: string;
}

/** The loupe's counter: words over the figure, and what stands after it. */
interface Counter {
  readonly head: string;
  readonly value: string;
  readonly after: string;
}

export interface AdjusterWords {
  /** In the list of kinds. */
  readonly name: string;
  /** What the Wear station shows of it. */
  readonly idea: string;
  /** How its steps sound, which are seen as a flash too; null where nothing is heard. */
  readonly timbre: Timbre | null;
  /** One of its steps, and the one that comes. */
  readonly step: 'click' | 'step';
  readonly next: 'next tooth' | 'next step';
  /** Said in place of its steps where those are not listed. */
  readonly unlisted: string;
  /** It can be had turned by the pull of the parking lever alone. */
  readonly byLever: boolean;
  readonly counter: (adjuster: Adjuster, tooth: number) => Counter;
  /** The counter's words are long: they reach over the loupe's rim, not over the brake's gaps. */
  readonly longCounter: boolean;
  /** What it did from one tooth to another, in the middle of a sentence. */
  readonly did: (adjuster: Adjuster, from: number, to: number) => string;
  readonly steps: (brake: Brake) => Steps;
  /** What a hand does with it before new shoes go in. */
  readonly setBack: string;
  /** What a hand has to do with it: lift a lever, turn a wheel, push a wedge. */
  readonly byHand: 'lift' | 'wheel' | 'wedge';
  /** What a figure of `steps` is the measure of, and that figure with it. */
  readonly column: 'tooth' | 'strut';
  readonly named: (at: string) => string;
  /** What presses of the pedal did: its steps, the presses that took one, and how much longer it is. */
  readonly pressed: (steps: number, presses: number, longer: string) => string;
}

const many = (n: number, one: string, more: string): string => `${n} ${n === 1 ? one : more}`;
const inPresses = (n: number): string => texts.inWord(many(n, 'press', 'presses'));
const minus = (n: number): string => (n < 0 ? `\u2212${-n}` : String(n));

/** Steps that are teeth, taken one by one. */
const teeth =
  (task: string) =>
  (brake: Brake): Steps => ({
    press: 1,
    task,
    head: texts.teethBack,
    back: texts.oneToothBack,
    on: texts.oneToothOnAgain,
    now: texts.toothNow,
    amount: (_, back) => minus(back),
    of: (_, back) => (back === 1 ? texts.of1Tooth : texts.ofTeeth(back)),
    taken: (_, back) => (back === 1 ? texts.by1Tooth : texts.byTeeth(back)),
    at: (tooth) => String(tooth),
    after: texts.of(brake.adjuster.teeth),
  });

/** Told in teeth, each of them a click. */
const clicking = {
  timbre: 'plate',
  step: 'click',
  next: 'next tooth',
  unlisted: '',
  byLever: false,
  counter: (adjuster, tooth) => ({
    head: labelWords.tooth,
    value: String(tooth),
    after: texts.of(adjuster.teeth),
  }),
  longCounter: false,
  did: (_, from, to) => (to - from === 1 ? texts.oneStep : texts.steps(to - from)),
  steps: teeth(texts.backOffTheAdjusterThrough),
  setBack: texts.backItOff,
  byHand: 'lift',
  column: 'tooth',
  named: (at) => texts.tooth(at),
  pressed: (steps, presses) =>
    steps === 0 ? texts.noClick : `${many(steps, 'click', 'clicks')} ${inPresses(presses)}`,
} as const satisfies Partial<AdjusterWords>;

/** What a hand pushes a wedge by at once: a tenth of a millimetre. */
const WEDGE_PRESS = 5;

function wedgeSteps(brake: Brake): Steps {
  const shorter = (tooth: number, back: number): string =>
    number(strutLength(brake, tooth) - strutLength(brake, tooth - back), 2);
  return {
    press: WEDGE_PRESS,
    task: texts.pushTheWedgeUpThrough,
    head: texts.shorterByMm,
    back: texts.aLittleBack,
    on: texts.aLittleOnAgain,
    now: texts.strutNow,
    amount: shorter,
    of: (tooth, back) => texts.ofMm(shorter(tooth, back)),
    taken: (tooth, back) => texts.byMm(shorter(tooth, back)),
    at: (tooth) => number(strutLength(brake, tooth), 2),
    after: 'mm',
  };
}

export const adjusterWords: Readonly<Record<AdjusterKind, AdjusterWords>> = {
  'toothed lever': {
    ...clicking,
    name: texts.toothedLeverName,
    idea: texts.toothedLeverIdea,
  },
  incremental: {
    ...clicking,
    name: texts.incrementalName,
    idea: texts.incrementalIdea,
  },
  'screw strut': {
    ...clicking,
    timbre: 'pawl',
    name: texts.screwStrutName,
    idea: texts.screwStrutIdea,
    byLever: true,
    byHand: 'wheel',
    steps: teeth(texts.turnTheStarWheelBack),
  },
  wedge: {
    name: texts.wedgeName,
    idea: texts.wedgeIdea,
    timbre: null,
    step: 'step',
    next: 'next step',
    unlisted: texts.wedgeUnlisted,
    byLever: false,
    counter: ({ growth }, tooth) => ({
      head: texts.strutLongerBy,
      value: number(growth[tooth] ?? 0, 2),
      after: texts.ofMm2(number(growth.at(-1) ?? 0, 1)),
    }),
    longCounter: true,
    did: ({ growth }, from, to) =>
      texts.theWedgeMadeTheStrut(number((growth[to] ?? 0) - (growth[from] ?? 0), 2)),
    steps: wedgeSteps,
    setBack: texts.wedgeSetBack,
    byHand: 'wedge',
    column: 'strut',
    named: (at) => texts.strutMm(at),
    pressed: (steps, presses, longer) =>
      steps === 0 ? texts.noStep : texts.strutMmLonger(longer, inPresses(presses)),
  },
};

/** The words for a brake's adjuster, and whether its steps can be told one by one. */
export const wordsOf = ({ adjuster }: Brake): AdjusterWords => adjusterWords[adjuster.kind];
export const isCountable = ({ adjuster }: Brake): boolean => kindLaws[adjuster.kind].countable;

/** A pawl of spring steel bent by half a millimetre and 5 N, which snaps over a tooth of the star wheel, mJ (from memory). */
const PAWL = 2.5;

/** Energy of a step's hit where no fall is known: what the lever's spring gives out over its lift, mJ. */
export function stepEnergy(brake: Brake, { condition }: BrakeState): number {
  const form = leverForm(brake);
  return form ? condition.leverSpring * liftWork(form) : PAWL;
}

export const stepsOf = (brake: Brake): Steps => wordsOf(brake).steps(brake);
