import * as v from 'valibot';
import { evenGrowth, leverGrowth } from '../brake/adjuster.ts';
import { adjusterKinds, kindLaws } from '../brake/kinds.ts';
import type { Adjuster, AdjusterKind } from '../brake/types.ts';
import { DEG } from '../units/units.ts';
import { sceneAdjuster as words } from '../words/en.ts';
import { choice, count, keysOf, num, part, point, size } from './parts.ts';

/**
 * The adjuster in a scene file: a variant by its kind, so that no kind can be given another's parts.
 * A kind that is left out of the table below does not compile.
 */

/** What every kind has. */
const common = {
  lengthAtZero: size(words.strutFromSeatToSeat, 'mm'),
  lostMotion: num(words.slotPlay, 'mm', 0, 50),
  teeth: count(words.stepsFromZeroToThe, 1, 2000),
  perApplication: v.optional(count(words.mostStepsInOneApplication, 1, 2000)),
  climbForce: v.optional(num(words.forceAtTheStrutWhile, 'N', 0, 500), 0),
  hotLock: v.optional(num(words.temperatureAboveWhichTheLever, '°C', -50, 1000)),
  drivenBy: v.optional(choice(words.whatItStepsOn, ['application', 'parking pull']), 'application'),
};

const pitch = size(words.evenGrowthOfTheStrut, 'mm', 50);

/** A toothed lever's growth comes from its geometry, or is given as an even pitch: one of the two. */
const toothed = {
  ...common,
  spring: v.optional(
    part(words.springThatPressesTheLever, {
      rate: num(words.rateAlongTheSlot, 'N/mm', 0, 100),
      fitted: size(words.forceAlongTheSlotWith, 'N', 500),
      at: v.optional(point(words.whereItsCoilSitsOn)),
    }),
  ),
  pitch: v.optional(pitch),
  lever: v.optional(
    part(words.geometryOfTheToothedLever, {
      pin: point(words.leverPinInTheZero),
      nose: size(words.pinToNose, 'mm', 200),
      startAngle: num(words.noseFromTheStrutAxis, 'degrees', 0, 180),
      toothAngle: num(words.turnOfOneTooth, 'degrees', -45, 45),
      toothRadius: size(words.pinToToothRoot, 'mm', 200),
      toothHeight: size(words.heightOfATooth, 'mm', 20),
      firstTooth: v.optional(num(words.directionOfTooth0From, 'degrees', -360, 360)),
      window: v.pipe(
        v.strictTuple([size(words.fingerWidth, 'mm', 50), size(words.windowHeight, 'mm', 50)]),
        v.description('[finger width, window height], mm'),
      ),
    }),
  ),
};

const even = { ...common, pitch };

/** The keys of one kind; a key that others have is told as theirs. */
const ofKind = <const K extends AdjusterKind, const T extends v.ObjectEntries>(
  kind: K,
  keys: T,
) => {
  const entries = { kind: v.pipe(v.literal(kind), v.description(words.kindOfAdjuster)), ...keys };
  const own = keysOf(Object.keys(entries));
  return v.strictObject(entries, (issue) => {
    const foreign = issue.expected === 'never' && String(issue.input) in toothed;
    return foreign ? words.noInA(issue.input, kind) : own(issue);
  });
};

const kinds = {
  'toothed lever': ofKind('toothed lever', toothed),
  incremental: ofKind('incremental', toothed),
  'screw strut': ofKind('screw strut', even),
  wedge: ofKind('wedge', even),
} satisfies { [K in AdjusterKind]: v.GenericSchema<unknown, { readonly kind: K }> };

const list = adjusterKinds.map((kind) => kinds[kind]);
export const adjuster = v.pipe(
  v.variant('kind', list, words.aKind(adjusterKinds.join(', '))),
  v.description(words.strutAndAdjusterWhichKeys),
);
type AdjusterPart = v.InferOutput<typeof adjuster>;

/** The toothed lever's geometry where it is given: the kinds without such a lever have no key for it. */
export const leverOf = (a: AdjusterPart) => ('lever' in a ? a.lever : undefined);

/** The lever's spring where it is told. */
export const springOf = (a: AdjusterPart) => ('spring' in a ? a.spring : undefined);

/** From the file's units to inside units. */
export function toAdjuster(a: AdjusterPart): Adjuster {
  const lever = leverOf(a);
  const spring = springOf(a);
  return {
    kind: a.kind,
    lengthAtZero: a.lengthAtZero,
    lostMotion: a.lostMotion,
    teeth: a.teeth,
    growth: lever
      ? leverGrowth(lever.nose, lever.startAngle * DEG, lever.toothAngle * DEG, a.teeth)
      : evenGrowth(a.pitch ?? Number.NaN, a.teeth),
    perApplication: a.perApplication ?? kindLaws[a.kind].atOnce(a.teeth),
    climbForce: a.climbForce,
    spring: spring ? { rate: spring.rate, fitted: spring.fitted, at: spring.at ?? null } : null,
    hotLock: a.hotLock ?? Number.POSITIVE_INFINITY,
    drivenBy: a.drivenBy,
    lever: lever
      ? {
          pin: lever.pin,
          noseRadius: lever.nose,
          startAngle: lever.startAngle * DEG,
          toothAngle: lever.toothAngle * DEG,
          toothRadius: lever.toothRadius,
          toothHeight: lever.toothHeight,
          window: { x: lever.window[0], y: lever.window[1] },
        }
      : null,
  };
}
