import * as v from 'valibot';
import type { BrakeState, Free, Scene, Tolerance, Wish } from '../../../sim/index.ts';
import { varyPart as words } from '../../../sim/words/en.ts';
import { type BrakeRef, freshBench, released } from '../../record/bench.ts';
import { arrive, leave, opened } from '../../record/guest.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';

/** What is asked of the brake: what is varied, over which range, and what is read. */
export interface VaryPart {
  /** Id of the quantity; that of a brake that has none of it is answered with friction. */
  readonly of: string;
  /** Ends of the range in its unit; null: the usual ones. */
  readonly range: readonly [number, number] | null;
  /** Keys of what is read, three at most. */
  readonly read: readonly string[];
  /** A second quantity, a curve for each of its values. */
  readonly and: { readonly id: string; readonly values: readonly number[] } | null;
  /** The second goes over its values as the first does: a map, not a curve for each. */
  readonly map: boolean;
  /** Another brake beside this one. */
  readonly beside: BrakeRef | null;
  /** Line pressure of the press, bar, and pull of the cable, N. */
  readonly bar: number;
  readonly cable: number;
  /** The adjuster does what it does in such a press. */
  readonly steps: boolean;
  /** Quantities of one's own: sums of readings and sizes, as typed. */
  readonly formulas: readonly OwnFormula[];
  /** What is not known exactly, and the seed of what is drawn from it. */
  readonly spread: { readonly known: readonly Tolerance[]; readonly seed: number };
  /** The question turned round: which sizes give what is wished. */
  readonly seek: SeekPart;
}

export interface SeekPart {
  /** It is what is asked; else one thing is varied. */
  readonly on: boolean;
  /** Sizes that may be chosen, and between what. */
  readonly free: readonly Omit<Free, 'whole'>[];
  readonly wishes: readonly Wish[];
}

export interface OwnFormula {
  readonly name: string;
  readonly text: string;
}

/** Most sizes that may be chosen at once, most wishes. */
export const MOST_FREE = 3;
export const MOST_WISHES = 4;
/** Of a drum's heat that a wish may name, °C. */
export const WISH_HEAT = [-40, 900] as const;
/** Most that is read, most curves of a family. */
export const MOST_READ = 3;
export const MOST_CURVES = 6;
/** Most formulas of one's own, and their longest name and text. */
export const MOST_FORMULAS = 6;
const LONGEST_NAME = 40;
export const LONGEST_TEXT = 200;
/** Most tolerances, and the largest seed. */
export const MOST_KNOWN = 12;
export const MOST_SEED = 999999;
/** What a tolerance may be, by its kind. */
export const AMOUNTS: Readonly<Record<Tolerance['kind'], readonly [number, number]>> = {
  percent: [0, 90],
  gauge: [0, 1000],
  times: [1, 10],
};
/** A formula's key among what is read. */
export const ownKey = (name: string): string => words.own(name);
const MOST_BAR = 200;
const MOST_PULL = 5000;

const id = v.pipe(v.string(), v.minLength(1), v.maxLength(80));
const finite = v.pipe(v.number(), v.finite(), v.minValue(-1e9), v.maxValue(1e9));
const within = (most: number) => v.pipe(v.number(), v.minValue(0), v.maxValue(most));

export const FACTOR = ['shoeFactorLeading', 'shoeFactorTrailing', 'brakeFactor'] as const;
/** What is asked first, and of a brake that lacks what was asked. */
export const FRICTION = 'shoes.lining.friction';

const NO_SEEK: SeekPart = { on: false, free: [], wishes: [] };

const initial = (): VaryPart => ({
  of: FRICTION,
  range: null,
  read: FACTOR,
  and: null,
  map: false,
  beside: null,
  bar: 40,
  cable: 0,
  steps: false,
  formulas: [],
  spread: { known: [], seed: 1 },
  seek: NO_SEEK,
});

/** Of a record from before there was such a station. */
export const NO_VARY: VaryPart = initial();

const fits = (kind: Tolerance['kind'], amount: number): boolean =>
  amount >= AMOUNTS[kind][0] && amount <= AMOUNTS[kind][1];

export const varyPart: Part<VaryPart> = {
  anew: false,
  layers: { forces: true },
  initial,
  schema: v.strictObject({
    of: id,
    range: v.nullable(v.strictTuple([finite, finite])),
    read: v.pipe(v.array(id), v.minLength(1), v.maxLength(MOST_READ)),
    and: v.nullable(
      v.strictObject({
        id,
        values: v.pipe(v.array(finite), v.minLength(1), v.maxLength(MOST_CURVES)),
      }),
    ),
    map: v.optional(v.boolean(), false),
    beside: v.nullable(
      v.variant('kind', [
        v.strictObject({ kind: v.literal('scene'), name: id }),
        v.strictObject({ kind: v.literal('own'), name: id }),
      ]),
    ),
    bar: within(MOST_BAR),
    cable: within(MOST_PULL),
    steps: v.boolean(),
    // Links from before there were any.
    formulas: v.optional(
      v.pipe(
        v.array(
          v.strictObject({
            name: v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_NAME)),
            text: v.pipe(v.string(), v.maxLength(LONGEST_TEXT)),
          }),
        ),
        v.maxLength(MOST_FORMULAS),
      ),
      [],
    ),
    spread: v.optional(
      v.strictObject({
        known: v.pipe(
          v.array(
            v.pipe(
              v.strictObject({
                id,
                kind: v.picklist(['percent', 'gauge', 'times']),
                amount: v.pipe(v.number(), v.finite()),
              }),
              v.check(({ kind, amount }) => fits(kind, amount), words.aToleranceWithinItsBounds),
            ),
          ),
          v.maxLength(MOST_KNOWN),
        ),
        seed: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(MOST_SEED)),
      }),
      { known: [], seed: 1 },
    ),
    seek: v.optional(
      v.strictObject({
        on: v.boolean(),
        free: v.pipe(
          v.array(
            v.pipe(
              v.strictObject({ id, from: finite, to: finite }),
              v.check(({ from, to }) => from < to, words.twoEndsApart),
            ),
          ),
          v.maxLength(MOST_FREE),
        ),
        wishes: v.pipe(
          v.array(
            v.strictObject({
              key: id,
              least: v.nullable(finite),
              most: v.nullable(finite),
              hot: v.nullable(
                v.pipe(v.number(), v.minValue(WISH_HEAT[0]), v.maxValue(WISH_HEAT[1])),
              ),
            }),
          ),
          v.maxLength(MOST_WISHES),
        ),
      }),
      NO_SEEK,
    ),
  }),
};

const isVaried = (m: Moment): boolean => m.guest?.call.kind === 'varied';

/** Something else is asked: the brake of the point that was looked at leaves the stage. */
export function ask(m: Moment, change: Partial<VaryPart>): Moment {
  const home = isVaried(m) ? leave(m) : m;
  return withPart(home, 'vary', change);
}

export const varyOf = intention(
  'vary.of',
  (m: Moment, of: string) =>
    of === m.parts.vary.of ? m : ask(m, { of: of.slice(0, 80), range: null, and: null }),
  words.whatIsVaried,
);

export const varyRange = intention(
  'vary.range',
  (m: Moment, from: number, to: number) =>
    Number.isFinite(from) && Number.isFinite(to) && Math.abs(from) <= 1e9 && Math.abs(to) <= 1e9
      ? ask(m, { range: [Math.min(from, to), Math.max(from, to)] })
      : m,
  'range',
  { joins: 'vary.range' },
);

export const varyRead = intention(
  'vary.read',
  (m: Moment, keys: readonly string[]) =>
    keys.length === 0 ? m : ask(m, { read: keys.slice(0, MOST_READ).map((k) => k.slice(0, 80)) }),
  words.whatIsRead,
);

/** A second quantity with its values; none: one curve again. */
export const varyAnd = intention(
  'vary.and',
  (m: Moment, and: VaryPart['and']) =>
    ask(m, {
      and:
        and && and.values.length > 0
          ? {
              id: and.id.slice(0, 80),
              values: and.values.filter(Number.isFinite).slice(0, MOST_CURVES),
            }
          : null,
      beside: null,
    }),
  words.aSecondThingVaried,
  { joins: 'vary.and' },
);

/** A map of both, or a curve for each value of the second. */
export const varyMap = intention(
  'vary.map',
  (m: Moment, map: boolean) => ask(m, { map }),
  (_before, after) => (after.parts.vary.map ? words.aMap : 'curves'),
);

export const varyBeside = intention(
  'vary.beside',
  (m: Moment, beside: VaryPart['beside']) => ask(m, { beside, and: null }),
  words.aBrakeBesideIt,
);

const clamp = (x: number, most: number): number =>
  Number.isFinite(x) ? Math.max(0, Math.min(most, x)) : 0;

export const varyPress = intention(
  'vary.press',
  (m: Moment, bar: number, cable: number) =>
    ask(m, { bar: clamp(bar, MOST_BAR), cable: clamp(cable, MOST_PULL) }),
  words.howItIsPressed,
  { joins: 'vary.press' },
);

export const varySteps = intention(
  'vary.steps',
  (m: Moment, steps: boolean) => ask(m, { steps }),
  (_before, after) => (after.parts.vary.steps ? words.theAdjusterAtWork : words.theAdjusterHeld),
);

/** A formula of one's own put among the others, under its name; read from then on. */
export const varyFormula = intention(
  'vary.formula',
  (m: Moment, name: string, text: string) => {
    const { formulas, read } = m.parts.vary;
    const called = name.trim().slice(0, LONGEST_NAME);
    if (called === '') return m;
    const made = { name: called, text: text.slice(0, LONGEST_TEXT) };
    const others = formulas.filter((f) => f.name !== called);
    if (others.length >= MOST_FORMULAS) return m;
    const key = ownKey(called);
    return ask(m, {
      formulas: [...others, made],
      read: [...read.filter((k) => k !== key), key].slice(-MOST_READ),
    });
  },
  (_before, _after, name) => words.formula(name.slice(0, LONGEST_NAME)),
);

/** Away with a formula. */
export const varyForget = intention(
  'vary.forget',
  (m: Moment, name: string) => {
    const { formulas, read } = m.parts.vary;
    if (!formulas.some((f) => f.name === name)) return m;
    const left = read.filter((k) => k !== ownKey(name));
    return ask(m, {
      formulas: formulas.filter((f) => f.name !== name),
      read: left.length > 0 ? left : FACTOR,
    });
  },
  words.aFormulaLess,
);

/** How well things are known, and the seed. The brake of a point stays: it is told of with its band. */
export const varySpread = intention(
  'vary.spread',
  (m: Moment, known: readonly Tolerance[], seed: number) =>
    known.every((t) => fits(t.kind, t.amount) && t.id.length > 0) && Number.isInteger(seed)
      ? withPart(m, 'vary', {
          spread: {
            known: known.slice(0, MOST_KNOWN).map((t) => ({ ...t, id: t.id.slice(0, 80) })),
            seed: Math.max(1, Math.min(MOST_SEED, seed)),
          },
        })
      : m,
  words.howWellItIsKnown,
  { joins: 'vary.spread' },
);

/** All that is asked at once: a ready-made question, or one that another station leads to. */
export const varyAsk = intention(
  'vary.ask',
  (
    m: Moment,
    asked: Partial<
      Pick<VaryPart, 'of' | 'range' | 'read' | 'and' | 'map' | 'bar' | 'cable' | 'steps'>
    >,
  ) =>
    ask(opened(m, 'vary'), {
      ...initial(),
      formulas: m.parts.vary.formulas,
      spread: m.parts.vary.spread,
      seek: { ...m.parts.vary.seek, on: false },
      ...asked,
    }),
  words.whatIf,
);

/** The brake of a point as it was built for the curve. */
export interface VariedBrake {
  readonly scene: Scene;
  readonly state: BrakeState;
}

/** Puts the brake of a point onto the stage, as a guest. */
export const varyPick = intention(
  'vary.pick',
  (
    m: Moment,
    of: string,
    value: number,
    { scene, state }: VariedBrake,
    and?: { readonly id: string; readonly value: number },
    third?: { readonly id: string; readonly value: number },
  ) => {
    const more = { ...(and ? { and } : {}), ...(third ? { third } : {}) };
    const call = { kind: 'varied', of, value, ...more } as const;
    const here = arrive(opened(m, 'vary'), call, ['vary', 'apply']);
    return released({ ...here, bench: freshBench({ kind: 'whole', scene }, state) });
  },
  (_before, after) =>
    after.guest?.call.kind === 'varied' ? `${after.guest.call.value}` : words.aPointOfTheCurve,
  { joins: (of) => words.varyPick(of) },
);

/** The brake as it was before a point was looked at. */
export const varyHome = intention(
  'vary.home',
  (m: Moment) => (isVaried(m) ? leave(m) : m),
  words.asItWas,
);
