import * as v from 'valibot';
import { evenGrowth, leverGrowth } from '../brake/adjuster.ts';
import { adjusterKinds, kindLaws } from '../brake/kinds.ts';
import type { Adjuster, AdjusterKind } from '../brake/types.ts';
import { DEG } from '../units/units.ts';
import { choice, count, keysOf, num, part, point, size } from './parts.ts';

/**
 * The adjuster in a scene file: a variant by its kind, so that no kind can be given another's parts.
 * A kind that is left out of the table below does not compile.
 */

/** What every kind has. */
const common = {
  lengthAtZero: size('Strut from seat to seat at tooth 0', 'mm'),
  lostMotion: num('Slot play', 'mm', 0, 50),
  teeth: count('Steps from zero to the end', 1, 2000),
  perApplication: v.optional(
    count('Most steps in one application; as its kind has it when left out', 1, 2000),
  ),
  climbForce: v.optional(num('Force at the strut while a tooth is climbed', 'N', 0, 500), 0),
  hotLock: v.optional(num('Temperature above which the lever is held', '°C', -50, 1000)),
  drivenBy: v.optional(choice('What it steps on', ['application', 'parking pull']), 'application'),
};

const pitch = size('Even growth of the strut a step', 'mm', 50);

/** A toothed lever's growth comes from its geometry, or is given as an even pitch: one of the two. */
const toothed = {
  ...common,
  spring: v.optional(
    part('Spring that presses the lever into its teeth; the climb force follows from it', {
      rate: num('Rate along the slot', 'N/mm', 0, 100),
      fitted: size('Force along the slot with the lever in its teeth', 'N', 500),
      at: v.optional(point('Where its coil sits on the strut, from the lever’s pin')),
    }),
  ),
  pitch: v.optional(pitch),
  lever: v.optional(
    part('Geometry of the toothed lever, in place of a pitch', {
      pin: point('Lever pin in the zero position'),
      nose: size('Pin to nose', 'mm', 200),
      startAngle: num('Nose from the strut axis at tooth 0', 'degrees', 0, 180),
      toothAngle: num('Turn of one tooth', 'degrees', -45, 45),
      toothRadius: size('Pin to tooth root', 'mm', 200),
      toothHeight: size('Height of a tooth', 'mm', 20),
      firstTooth: v.optional(
        num(
          'Direction of tooth 0 from the pin; read in old files, the teeth stand square to the strut',
          'degrees',
          -360,
          360,
        ),
      ),
      window: v.pipe(
        v.strictTuple([size('Finger width', 'mm', 50), size('Window height', 'mm', 50)]),
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
  const entries = { kind: v.pipe(v.literal(kind), v.description('Kind of adjuster')), ...keys };
  const own = keysOf(Object.keys(entries));
  return v.strictObject(entries, (issue) => {
    const foreign = issue.expected === 'never' && String(issue.input) in toothed;
    return foreign ? `no ${issue.input} in a ${kind}` : own(issue);
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
  v.variant('kind', list, `a kind: ${adjusterKinds.join(', ')}`),
  v.description('Strut and adjuster; which keys there are depends on its kind'),
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
