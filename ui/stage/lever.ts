import { type Brake, kindLaws, type ToothedLever } from '../../sim/index.ts';
import { degrees } from './geometry.ts';
import { perBrake } from './parts/make.ts';
import { LEVER_TEETH } from './parts/teeth.ts';

/** Middle of the row of teeth about the lever's pin; the finger stands upright in mid-life. */
const MIDDLE = degrees(3.9);

/**
 * The toothed lever as drawn: the scene's own, or, where the scene tells only the growth a tooth,
 * one of a usual form in the brake's size. Its finger swings to both sides of the upright, so that
 * even teeth give an even growth within a few hundredths; null for other kinds of adjuster.
 */
export const drawnLever = perBrake((brake: Brake): ToothedLever | null => {
  const { growth, kind, lengthAtZero, lever, teeth } = brake.adjuster;
  if (!kindLaws[kind].toothedLever) return null;
  if (lever) return lever;
  const { front, rear } = brake.shoes;
  const u = front.lining.groundRadius / 100;
  const most = growth.at(-1) ?? 0;
  const nose = Math.max(12 * u, most * 1.5);
  const start = Math.acos(Math.min(0.95, most / (2 * nose)));
  const toothAngle = (Math.PI - 2 * start) / Math.max(1, teeth);
  const toothRadius = 26 * u;
  const window = { x: 4.4 * u, y: 11 * u };
  // At rest the finger's outer side stands where the strut's length is reckoned from.
  const x = rear.strutSeat[0] - lengthAtZero + window.x / 2 - nose * Math.cos(start);
  return {
    pin: [x, front.strutSeat[1] - nose],
    noseRadius: nose,
    startAngle: start,
    toothAngle,
    toothRadius,
    toothHeight: Math.min(1.3 * u, toothRadius * toothAngle * 0.88),
    firstTooth: MIDDLE - (teeth / 2) * toothAngle,
    window,
  };
});

/**
 * How far the lever slides back to pass over one tooth, mm. A tooth at the angle a beside the arm
 * moves radially by s·cos a and along the row by s·sin a, and along the row the flank rises by one
 * height h in one pitch r·d: s·(cos a − sin a·h/(r·d)) = h for the outermost tooth.
 */
export function slide({ toothAngle, toothHeight, toothRadius }: ToothedLever): number {
  const a = LEVER_TEETH * toothAngle;
  const rise = toothHeight / (toothRadius * toothAngle);
  return toothHeight / (Math.cos(a) - rise * Math.sin(a));
}
