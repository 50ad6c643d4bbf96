import type { Adjuster, Point, ToothedLever } from '../../../sim/index.ts';
import { polar } from '../geometry.ts';

/**
 * The teeth of strut and lever are one saw line. On the strut, seen from the lever's pin, it runs
 * between the root circle `toothRadius` and the crests `toothHeight` inside it: from each tooth's
 * root slowly inward to the next tooth's crest, where a steep flank facing the next higher tooth
 * drops back to the root. The lever carries the same line outward, so both flanks lie on each
 * other when the lever's tooth stands at the strut's, and the lever can step up but not slip back.
 */

/** Teeth that the lever carries on either side of its arm. */
export const LEVER_TEETH = 3;
/** Teeth of the strut beyond the first and the last place. */
export const SPARE = 4;

/** Radius of the saw line at `phase` teeth above some root: falls from the root circle to the crest. */
export function sawRadius({ toothRadius, toothHeight }: ToothedLever, phase: number): number {
  return toothRadius - toothHeight * (phase - Math.floor(phase));
}

/** Saw line of the strut about the lever's pin, from the highest tooth down. */
export function strutTeeth(lever: ToothedLever, adjuster: Adjuster): Point[] {
  const { firstTooth, pin, toothAngle, toothHeight, toothRadius } = lever;
  const points: Point[] = [];
  for (let k = adjuster.teeth + SPARE; k > -SPARE; k--) {
    const angle = firstTooth + k * toothAngle;
    points.push(
      polar(toothRadius - toothHeight, angle, pin),
      polar(toothRadius, angle - toothAngle, pin),
    );
  }
  return points;
}

/** Saw line of the lever in its own frame (pin at 0, arm along +x), from the lowest tooth up. */
export function leverTeeth({ toothAngle, toothHeight, toothRadius }: ToothedLever): Point[] {
  const points: Point[] = [];
  for (let k = -LEVER_TEETH; k < LEVER_TEETH; k++) {
    points.push(
      polar(toothRadius, k * toothAngle),
      polar(toothRadius - toothHeight, (k + 1) * toothAngle),
    );
  }
  return points;
}
