/**
 * How much slower than the clock the brake's time runs. Slow motion is finer steps of the moving brake, one a
 * picture, never pictures in between: at 1/240 s a shoe that is let go is home in one step.
 */
export const PACES = [1, 20, 100, 400] as const;
export type Pace = (typeof PACES)[number];

/** Step of the moving brake at a pace, s: the time of a picture on a screen of 60 a second, 1/240 s at most. */
export const stepAt = (pace: number): number => 1 / Math.max(240, 60 * pace);

/** ×1, ×1/20. */
export const paceName = (pace: number): string => (pace <= 1 ? `×${1 / pace}` : `×1/${pace}`);

/** The next slower pace, or with −1 the next faster one. */
export const slower = (pace: Pace, by: 1 | -1): Pace =>
  PACES[Math.max(0, Math.min(PACES.length - 1, PACES.indexOf(pace) + by))] as Pace;
