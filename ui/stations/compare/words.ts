import type { Brake, BrakeState, Condition } from '../../../sim/index.ts';
import { labelWords, language, compareWords as texts } from '../../../sim/words/en.ts';
import { faultNames, isFault } from '../../../sim/workshop/index.ts';
import { wordsOf } from '../../adjusters.ts';
import { number } from '../../format.ts';
import { sceneName } from '../../record/scene-names.ts';
import type { One } from './one.ts';

/** What differs between two moments, and what is alike: in words, with the figure of each. */

export interface Difference {
  /** What it is of: "Adjuster". */
  readonly name: string;
  readonly a: string;
  readonly b: string;
  /** It follows from another that differs too. */
  readonly follows?: true;
}

/** mm of lining left, the thickness new less the mean of what its elements lost. */
const left = (brake: Brake, state: BrakeState, side: 'front' | 'rear'): number => {
  const worn = state.wear[side];
  return brake.shoes[side].lining.thicknessNew - worn.reduce((sum, w) => sum + w, 0) / worn.length;
};

const WAYS: Readonly<Record<One['kept']['turning'], string>> = texts.ways;

/** What can be out of order, as it stands in the list; null: as it should be. */
const conditions: {
  readonly [K in keyof Condition]-?: readonly [string, (c: Condition) => string];
} = {
  surface: [texts.rubbingFaces, (c) => texts.frontRear(c.surface.front, c.surface.rear)],
  pistonStuck: [
    labelWords.pistons,
    ({ pistonStuck: p }) =>
      p.front && p.rear
        ? texts.bothStuck
        : p.front
          ? texts.frontStuck
          : p.rear
            ? texts.rearStuck
            : texts.bothFree,
  ],
  cupExtra: [texts.extraFrictionOfACup, (c) => number(c.cupExtra, 0)],
  springFactor: [texts.returnSprings, (c) => `${number(100 * c.springFactor, 0)} %`],
  offCentre: [texts.drumOffCentreMm, (c) => number(c.offCentre, 2)],
  oval: [texts.drumOvalMm, (c) => number(c.oval, 2)],
  groove: [texts.grooveInThePlateHolds, (c) => number(c.groove, 0)],
  adjusterSeized: [labelWords.adjuster, (c) => (c.adjusterSeized ? texts.seized : texts.free)],
  teethHold: [
    texts.teethHold,
    (c) => (c.teethHold === null ? texts.all : `${number(c.teethHold, 0)} N`),
  ],
  leverSpring: [texts.springOfTheAdjuster, (c) => `${number(100 * c.leverSpring, 0)} %`],
  adjusterStep: [
    texts.aToothPassed,
    (c) =>
      c.adjusterStep === 1
        ? texts.stepsOut
        : c.adjusterStep === 0
          ? texts.doesNothing
          : texts.windsBack,
  ],
  keptPressure: [texts.pressureKeptInTheLine, (c) => number(10 * c.keptPressure, 1)],
  keptCable: [texts.pullKeptByTheCable, (c) => number(c.keptCable, 0)],
  leverLoss: [texts.pullLostInTheLevers, (c) => `${number(100 * c.leverLoss, 0)} %`],
  drumRise: [texts.playOfTheBearingMm, (c) => number(c.drumRise, 2)],
  lean: [texts.leaningOnTheShoesN, (c) => `${number(c.lean.front, 0)}, ${number(c.lean.rear, 0)}`],
  unhooked: [texts.returnSpringsUnhooked, (c) => number(c.unhooked?.length ?? 0, 0)],
  strutLoose: [texts.springOfTheStrut, (c) => (c.strutLoose ? texts.off : texts.on)],
  unheld: [
    texts.holdDownsOff,
    (c) => (c.unheld ? language.and(c.unheld.map((side) => texts.sides[side])) : texts.noneOff),
  ],
};

const called = (fault: string | null): string =>
  fault === null ? texts.noFault : isFault(fault) ? language.inside(faultNames[fault]) : fault;

const filmOf = ({ film }: BrakeState): string =>
  film
    ? texts.waterRustGlazeAnd(
        number(film.water, 2),
        number(film.rust, 2),
        number(film.glaze.front, 2),
        number(film.glaze.rear, 2),
      )
    : texts.nothingOn;

/** Every thing that two moments can differ in, with its figure for one of them. */
const things: readonly (readonly [name: string, told: (one: One) => string])[] = [
  [labelWords.brake, ({ brake }) => brake.title],
  [texts.faultBuiltIn, ({ kept }) => called(kept.bench.fault)],
  [
    texts.kindOfAdjuster,
    ({ brake }) =>
      `${wordsOf(brake).name}${Number.isFinite(brake.adjuster.hotLock) ? texts.hotLock : ''}`,
  ],
  [labelWords.shoes, ({ bends }) => (bends ? texts.bend : texts.rigid)],
  [texts.drumTurns, ({ kept }) => WAYS[kept.turning]],
  [
    texts.liningsMm,
    ({ brake, state }) =>
      texts.and(number(left(brake, state, 'front'), 1), number(left(brake, state, 'rear'), 1)),
  ],
  [texts.drumDiameterMm, ({ state }) => number(2 * state.drumRadius, 2)],
  [
    labelWords.friction,
    ({ brake: { shoes } }) =>
      shoes.front.lining.friction === shoes.rear.lining.friction
        ? number(shoes.front.lining.friction, 2)
        : texts.and2(number(shoes.front.lining.friction, 2), number(shoes.rear.lining.friction, 2)),
  ],
  [texts.warmthC, ({ state }) => number(state.temperature, 0)],
  [texts.onTheFaces, ({ state }) => filmOf(state)],
  [texts.cableHoldsTheLeverOff, ({ state }) => number(state.leverOffStop, 2)],
  ...Object.values(conditions).map(
    ([name, told]) => [name, ({ state }: One) => told(state.condition)] as const,
  ),
  [
    labelWords.tooth,
    ({ brake, state }) => `${wordsOf(brake).counter(brake.adjuster, state.tooth).value}`,
  ],
];

/** What an adjuster that does not work leaves behind: its tooth follows. */
const MAKES_TOOTH: readonly string[] = [
  texts.faultBuiltIn,
  labelWords.adjuster,
  texts.springOfTheAdjuster,
  texts.springOfTheStrut,
  texts.aToothPassed,
  texts.kindOfAdjuster,
];
/** Of another brake all of this is its own. */
const OF_BRAKE: readonly string[] = [
  texts.liningsMm,
  texts.drumDiameterMm,
  labelWords.friction,
  texts.kindOfAdjuster,
  labelWords.tooth,
];

/** What differs, causes first. */
export function differences(a: One, b: One): Difference[] {
  const all = things
    .map(([name, told]): Difference => ({ name, a: told(a), b: told(b) }))
    .filter((d) => d.a !== d.b);
  const has = (names: readonly string[]): boolean => all.some((d) => names.includes(d.name));
  const other = has([labelWords.brake]);
  // What a fault does to the brake is the fault's.
  const fault = has([texts.faultBuiltIn]);
  const faulty = Object.values(conditions).map(([name]) => name);
  return all.map((d) =>
    (other && OF_BRAKE.includes(d.name)) ||
    (fault && faulty.includes(d.name)) ||
    (d.name === labelWords.tooth && has(MAKES_TOOTH))
      ? { ...d, follows: true }
      : d,
  );
}

/** Always told of those that are alike. */
const ALIKE = [
  labelWords.brake,
  texts.liningsMm,
  texts.drumDiameterMm,
  labelWords.friction,
  texts.warmthC,
  labelWords.tooth,
  texts.drumTurns,
];

/** What is alike, in one line. */
export const alike = (a: One, b: One): string =>
  things
    .filter(([name, told]) => ALIKE.includes(name) && told(a) === told(b))
    .map(([name, told]) =>
      name === labelWords.brake ? told(a) : `${language.inside(name)} ${told(a)}`,
    )
    .map((text) => text.replace(/^(.*), (mm|°C) (.*)$/, (_, n, u, x) => `${n} ${x} ${u}`))
    .join('; ');

/** How one of the two is called: by its standing state and way. */
export function titleOf({ kept, state, brake }: One): string {
  const km = state.distance / 1e6;
  const { standing, fault } = kept.bench;
  const what =
    fault !== null ? called(fault) : standing === null ? brake.title : sceneName(standing);
  return `${what.charAt(0).toUpperCase()}${what.slice(1)}, ${number(km, 0)} km`;
}

/** The other one: the same but for what differs. */
export function otherTitle(one: One, all: readonly Difference[]): string {
  const causes = all.filter((d) => !d.follows);
  const only = causes[0];
  if (!only) return texts.theSame;
  if (causes.length > 1) return titleOf(one);
  const [name, unit] = only.name.split(', ');
  const said = `${language.inside(name ?? '')} ${only.b}${unit ? ` ${unit}` : ''}`;
  return only.name === labelWords.brake || only.name === texts.faultBuiltIn
    ? only.b
    : texts.theSame2(texts.drumTurning(said));
}
