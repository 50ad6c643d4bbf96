import * as v from 'valibot';
import { type StrutPart, strutGives, strutYields } from '../brake/strut-path.ts';
import type { Brake, StrutPath } from '../brake/types.ts';
import type { Finding } from './finding.ts';
import { num, part, size } from './parts.ts';

/**
 * What bears the strut's force, in a scene file. Without it all of that is rigid and nothing yields, which no
 * brake is: a strut a tooth too long would clamp its drum ten times as hard as it can.
 */
const plate = {
  thickness: size('Thickness of its plate', 'mm', 30),
  depth: size('Depth in the plane of bending', 'mm', 100),
};

export const strutPath = part('Sizes of what bears the force of the strut; rigid when left out', {
  bar: part('Bar of the strut', {
    width: size('Width', 'mm', 100),
    thickness: size('Thickness', 'mm', 50),
    slotWidth: v.optional(num('Width of its slot; 0 without one', 'mm', 0, 100), 0),
    slotLength: v.optional(num('Length of its slot', 'mm', 0, 500), 0),
  }),
  lever: v.optional(
    part('Adjuster lever, where the adjuster has one', {
      ...plate,
      nose: size('From its pin to its nose', 'mm', 200),
      arm: size('From its pin to its teeth', 'mm', 200),
    }),
  ),
  edgeRadius: size('Rounding of edges and notches that bear', 'mm', 50),
  parkingLever: part('Parking lever as a beam', {
    ...plate,
    toStop: size('From the seat of the strut to its stop', 'mm', 500),
  }),
  pins: v.optional(
    part('Anchor pins, where the shoes turn on pins', {
      diameter: size('Diameter', 'mm', 50),
      webOff: size('From the plate to the middle of the web', 'mm', 100),
      heldAt: size('Radius around the pin at which the plate is held', 'mm', 300),
    }),
  ),
  shoesGive: num('Give of both steel shoes, felt at the strut', 'mm/N', 0, 0.001),
  drumGive: num('Give of the drum, felt at the strut', 'mm/N', 0, 0.001),
  yield: size('Yield of levers and pins', 'MPa', 3000),
  barYield: v.optional(size('Yield of the strut’s bar', 'MPa', 3000), 350),
  source: v.optional(
    v.pipe(v.string('text'), v.maxLength(2000), v.description('Where the sizes come from')),
    '',
  ),
});

type Given = v.InferOutput<typeof strutPath>;

/** @param thickness of the backing plate, mm */
export function toStrutPath(given: Given | undefined, thickness: number): StrutPath | null {
  if (!given) return null;
  const { pins, lever } = given;
  return { ...given, lever: lever ?? null, pins: pins ? { ...pins, plate: thickness } : null };
}

/** Most that a part of it may give, mm/N, and least at which it may yield, N: a tenth and ten times of usual ones. */
const MOST_GIVE = 1e-3;
const LEAST_FORCE = 100;

/** What no strut could bear its force by. */
export function unbearable(brake: Brake): readonly Finding[] {
  const path = brake.strutPath;
  if (!path) return [];
  const { bar } = path;
  const out: Finding[] = [];
  const add = (key: string, found: string, allowed: string): void => {
    out.push({ path: `strutPath.${key}`, found, allowed });
  };
  if (!(bar.slotWidth < bar.width)) {
    add('bar.slotWidth', `${bar.slotWidth} mm`, `less than the bar, ${bar.width} mm`);
  }
  if (!(bar.slotLength < brake.adjuster.lengthAtZero)) {
    add('bar.slotLength', `${bar.slotLength} mm`, `shorter than the strut`);
  }
  if (out.length > 0) return out;
  for (const { part: name, give } of strutGives(brake)) {
    if (give >= 0 && give <= MOST_GIVE) continue;
    const at = KEYS[name];
    add(at, `sizes by which it gives ${give.toPrecision(3)} mm/N`, `at most ${MOST_GIVE} mm/N`);
  }
  for (const { part: name, force } of strutYields(brake)) {
    if (force >= LEAST_FORCE) continue;
    const found = `sizes by which the ${name} yield at ${force.toPrecision(3)} N`;
    add('yield', found, `at least ${LEAST_FORCE} N`);
  }
  return out;
}

const KEYS: Readonly<Record<StrutPart, string>> = {
  strut: 'bar',
  'lever arm': 'lever',
  'lever nose': 'lever',
  contacts: 'edgeRadius',
  'parking lever': 'parkingLever',
  'anchor pins': 'pins',
  shoes: 'shoesGive',
  drum: 'drumGive',
};
