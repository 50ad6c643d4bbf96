import * as v from 'valibot';
import { evenGrowth, leverGrowth } from '../brake/adjuster.ts';
import { adjusterKinds } from '../brake/kinds.ts';
import type { Adjuster, AdjusterKind } from '../brake/types.ts';
import { DEG } from '../units/units.ts';
import type { Finding } from './finding.ts';
import { count, num, point, size } from './parts.ts';

/**
 * The adjuster in a scene file: a variant by its kind, so that no kind can be given another's parts.
 * A kind that is left out of the table below does not compile.
 */

/** What every kind has. */
const common = {
  lengthAtZero: size('Strut from seat to seat at tooth 0, mm'),
  lostMotion: num('Slot play, mm', 0, 50),
  teeth: count('Steps from zero to the end', 1, 2000),
  perApplication: v.optional(count('Most steps in one application', 1, 2000), 1),
  climbForce: v.optional(num('Force at the strut while a tooth is climbed, N', 0, 500), 0),
  hotLock: v.optional(num('Temperature above which the lever is held, °C', -50, 1000)),
  drivenBy: v.optional(
    v.picklist(['application', 'parking pull'], 'application or parking pull'),
    'application',
  ),
};

const pitch = size('Even growth of the strut a step, mm', 50);

/** A toothed lever's growth comes from its geometry, or is given as an even pitch: one of the two. */
const toothed = {
  ...common,
  pitch: v.optional(pitch),
  lever: v.optional(
    v.strictObject({
      pin: point('Lever pin in the zero position, mm'),
      nose: size('Pin to nose, mm', 200),
      startAngle: num('Nose from the strut axis at tooth 0, degrees', 0, 180),
      toothAngle: num('Turn of one tooth, degrees', -45, 45),
      toothRadius: size('Pin to tooth root, mm', 200),
      toothHeight: size('mm', 20),
      firstTooth: num('Direction of tooth 0 from the pin, degrees', -360, 360),
      window: v.strictTuple([size('Finger width, mm', 50), size('Window height, mm', 50)]),
    }),
  ),
};

const even = { ...common, pitch };

const kinds = {
  'toothed lever': v.strictObject({ kind: v.literal('toothed lever'), ...toothed }),
  incremental: v.strictObject({ kind: v.literal('incremental'), ...toothed }),
  'screw strut': v.strictObject({ kind: v.literal('screw strut'), ...even }),
  wedge: v.strictObject({ kind: v.literal('wedge'), ...even }),
} satisfies { [K in AdjusterKind]: v.GenericSchema<unknown, { readonly kind: K }> };

const list = adjusterKinds.map((kind) => kinds[kind]);
export const adjuster = v.variant('kind', list, `a kind: ${adjusterKinds.join(', ')}`);
type AdjusterPart = v.InferOutput<typeof adjuster>;

/** The toothed lever's geometry where it is given: the kinds without such a lever have no key for it. */
const leverOf = (part: AdjusterPart) => ('lever' in part ? part.lever : undefined);

/** From the file's units to inside units. */
export function toAdjuster(part: AdjusterPart): Adjuster {
  const lever = leverOf(part);
  return {
    kind: part.kind,
    lengthAtZero: part.lengthAtZero,
    lostMotion: part.lostMotion,
    teeth: part.teeth,
    growth: lever
      ? leverGrowth(lever.nose, lever.startAngle * DEG, lever.toothAngle * DEG, part.teeth)
      : evenGrowth(part.pitch ?? Number.NaN, part.teeth),
    perApplication: part.perApplication,
    climbForce: part.climbForce,
    hotLock: part.hotLock ?? Number.POSITIVE_INFINITY,
    drivenBy: part.drivenBy,
    lever: lever
      ? {
          pin: lever.pin,
          noseRadius: lever.nose,
          startAngle: lever.startAngle * DEG,
          toothAngle: lever.toothAngle * DEG,
          toothRadius: lever.toothRadius,
          toothHeight: lever.toothHeight,
          firstTooth: lever.firstTooth * DEG,
          window: { x: lever.window[0], y: lever.window[1] },
        }
      : null,
  };
}

/** Steps that have the right types and cannot be built: none told, told twice, or running backwards. */
export function impossibleSteps(part: AdjusterPart, add: (finding: Finding) => void): void {
  const lever = leverOf(part);
  if (lever && part.pitch !== undefined) {
    add({
      path: 'adjuster.pitch',
      found: 'pitch and lever both given',
      allowed: 'either a pitch or a lever, not both',
    });
  } else if (!lever && part.pitch === undefined) {
    add({
      path: 'adjuster',
      found: 'neither pitch nor lever',
      allowed: 'a pitch in mm a step, or the lever geometry',
    });
  }
  if (!lever) return;
  const end = lever.startAngle + part.teeth * lever.toothAngle;
  if (!(lever.toothAngle > 0)) {
    add({
      path: 'adjuster.lever.toothAngle',
      found: `${lever.toothAngle}°: the teeth would run backwards`,
      allowed: 'more than 0°',
    });
  } else if (end > 175) {
    add({
      path: 'adjuster.lever.toothAngle',
      found: `the last tooth at ${end.toFixed(1)}°`,
      allowed: 'at most 175°: past that the nose lets the strut shorten',
    });
  }
}
