import * as v from 'valibot';
import { type StrutPart, strutGives, strutYields } from '../brake/strut-path.ts';
import type { Brake, StrutPath } from '../brake/types.ts';
import { labelWords, sceneStrutPath as words } from '../words/en.ts';
import type { Finding } from './finding.ts';
import { num, part, size } from './parts.ts';

/**
 * What bears the strut's force, in a scene file. Without it all of that is rigid and nothing yields, which no
 * brake is: a strut a tooth too long would clamp its drum ten times as hard as it can.
 */
const plate = {
  thickness: size(words.thicknessOfItsPlate, 'mm', 30),
  depth: size(words.depthInThePlaneOf, 'mm', 100),
};

export const strutPath = part(words.sizesOfWhatBearsThe, {
  bar: part(words.barOfTheStrut, {
    width: size(labelWords.width, 'mm', 100),
    thickness: size(labelWords.thickness, 'mm', 50),
    slotWidth: v.optional(num(words.widthOfItsSlot0, 'mm', 0, 100), 0),
    slotLength: v.optional(num(words.lengthOfItsSlot, 'mm', 0, 500), 0),
  }),
  lever: v.optional(
    part(words.adjusterLeverWhereTheAdjuster, {
      ...plate,
      nose: size(words.fromItsPinToIts, 'mm', 200),
      arm: size(words.fromItsPinToIts2, 'mm', 200),
    }),
  ),
  edgeRadius: size(words.roundingOfEdgesAndNotches, 'mm', 50),
  parkingLever: part(words.parkingLeverAsABeam, {
    ...plate,
    toStop: size(words.fromTheSeatOfThe, 'mm', 500),
  }),
  pins: v.optional(
    part(words.anchorPinsWhereTheShoes, {
      diameter: size(labelWords.diameter, 'mm', 50),
      webOff: size(words.fromThePlateToThe, 'mm', 100),
      heldAt: size(words.radiusAroundThePinAt, 'mm', 300),
    }),
  ),
  shoesGive: num(words.giveOfBothSteelShoes, 'mm/N', 0, 0.001),
  drumGive: num(words.giveOfTheDrumFelt, 'mm/N', 0, 0.001),
  yield: size(words.yieldOfLeversAndPins, 'MPa', 3000),
  barYield: v.optional(size(words.yieldOfTheStrutsBar, 'MPa', 3000), 350),
  source: v.optional(
    v.pipe(v.string('text'), v.maxLength(2000), v.description(words.whereTheSizesComeFrom)),
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
    add('bar.slotWidth', `${bar.slotWidth} mm`, words.lessThanTheBarMm(bar.width));
  }
  if (!(bar.slotLength < brake.adjuster.lengthAtZero)) {
    add('bar.slotLength', `${bar.slotLength} mm`, words.shorterThanTheStrut);
  }
  if (out.length > 0) return out;
  for (const { part: name, give } of strutGives(brake)) {
    if (give >= 0 && give <= MOST_GIVE) continue;
    const at = KEYS[name];
    add(at, words.sizesByWhichItGives(give.toPrecision(3)), words.atMostMmN(MOST_GIVE));
  }
  for (const { part: name, force } of strutYields(brake)) {
    if (force >= LEAST_FORCE) continue;
    const found = words.found(name, force.toPrecision(3));
    add('yield', found, words.atLeastN(LEAST_FORCE));
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
