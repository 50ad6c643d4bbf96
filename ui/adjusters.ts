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
const inPresses = (n: number): string => `in ${many(n, 'press', 'presses')}`;
const minus = (n: number): string => (n < 0 ? `\u2212${-n}` : String(n));

/** Steps that are teeth, taken one by one. */
const teeth =
  (task: string) =>
  (brake: Brake): Steps => ({
    press: 1,
    task,
    head: 'Teeth back',
    back: 'One tooth back',
    on: 'One tooth on again',
    now: 'Tooth now',
    amount: (_, back) => minus(back),
    of: (_, back) => (back === 1 ? 'of 1 tooth' : `of ${back} teeth`),
    at: (tooth) => String(tooth),
    after: `of ${brake.adjuster.teeth}`,
  });

/** Told in teeth, each of them a click. */
const clicking = {
  timbre: 'plate',
  step: 'click',
  next: 'next tooth',
  unlisted: '',
  byLever: false,
  counter: (adjuster, tooth) => ({
    head: 'Tooth',
    value: String(tooth),
    after: `of ${adjuster.teeth}`,
  }),
  longCounter: false,
  did: (_, from, to) => (to - from === 1 ? 'one step' : `${to - from} steps`),
  steps: teeth('Back off the adjuster through the access hole'),
  setBack: 'Back it off',
  byHand: 'lift',
  column: 'tooth',
  named: (at) => `tooth ${at}`,
  pressed: (steps, presses) =>
    steps === 0 ? 'no click' : `${many(steps, 'click', 'clicks')} ${inPresses(presses)}`,
} as const satisfies Partial<AdjusterWords>;

/** What a hand pushes a wedge by at once: a tenth of a millimetre. */
const WEDGE_PRESS = 5;

function wedgeSteps(brake: Brake): Steps {
  const shorter = (tooth: number, back: number): string =>
    number(strutLength(brake, tooth) - strutLength(brake, tooth - back), 2);
  return {
    press: WEDGE_PRESS,
    task: 'Push the wedge up through the access hole; it shortens the strut',
    head: 'Shorter by, mm',
    back: 'A little back',
    on: 'A little on again',
    now: 'Strut now',
    amount: shorter,
    of: (tooth, back) => `of ${shorter(tooth, back)}\u00a0mm`,
    at: (tooth) => number(strutLength(brake, tooth), 2),
    after: 'mm',
  };
}

export const adjusterWords: Readonly<Record<AdjusterKind, AdjusterWords>> = {
  'toothed lever': {
    ...clicking,
    name: 'Toothed lever, all passed teeth',
    idea: 'When a stroke carries the shoe past the slot play by a whole tooth, the lever drops into the next one',
  },
  incremental: {
    ...clicking,
    name: 'Toothed lever, one a press',
    idea: 'When a stroke carries the shoe past the slot play by a whole tooth, the lever drops in, one tooth a press',
  },
  'screw strut': {
    ...clicking,
    timbre: 'pawl',
    name: 'Screw strut, star wheel',
    idea: 'When a stroke passes the play by a whole tooth, the lever catches and turns the star wheel',
    byLever: true,
    byHand: 'wheel',
    steps: teeth('Turn the star wheel back through the access hole, its lever held away'),
  },
  wedge: {
    name: 'Wedge, stepless',
    idea: 'When a stroke has used the play behind the hook, the wedge drops as far as there is room: no teeth, no click',
    timbre: null,
    step: 'step',
    next: 'next step',
    unlisted: 'The wedge moves in steps too small to tell one by one; the chart shows them.',
    byLever: false,
    counter: ({ growth }, tooth) => ({
      head: 'Strut longer by',
      value: number(growth[tooth] ?? 0, 2),
      after: `of ${number(growth.at(-1) ?? 0, 1)} mm`,
    }),
    longCounter: true,
    did: ({ growth }, from, to) =>
      `the wedge made the strut ${number((growth[to] ?? 0) - (growth[from] ?? 0), 2)} mm longer`,
    steps: wedgeSteps,
    setBack: 'Push the wedge up',
    byHand: 'wedge',
    column: 'strut',
    named: (at) => `strut ${at} mm`,
    pressed: (steps, presses, longer) =>
      steps === 0 ? 'no step' : `strut ${longer} mm longer ${inPresses(presses)}`,
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
