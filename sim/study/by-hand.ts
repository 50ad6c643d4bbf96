import type { Instant } from '../balance/instant.ts';
import type { Brake, Side } from '../brake/types.ts';
import { holdDownPreload } from './tilt.ts';

/** What a spring takes to be unhooked, and what it holds. */
export interface Unhooking {
  /** Its pull now, and what draws its hook over the edge of its hole, N. */
  readonly now: number;
  readonly takes: number;
  /** What it would give back if it flew off, N·mm. */
  readonly stored: number;
}

/** A hook is drawn out by its own height to come over the edge of its hole, mm: a usual hook of 3 mm wire; from memory. */
const HOOK = 4;

/**
 * T + k·h over the hook's height h (an extension spring's pull grows with its stretch; Shigley, Mechanical
 * Engineering Design). It stores T²/2k at most: initial tension, of which no scene tells, stores nothing.
 *
 * @param index in the brake's list; one that is off now takes what it pulled as fitted
 */
export function unhooking(brake: Brake, instant: Instant, index: number): Unhooking | null {
  const spring = brake.springs[index];
  if (!spring) return null;
  const now = instant.springs[index]?.force ?? 0;
  const pull = now > 0 ? now : spring.fitted;
  const { rate } = spring;
  return { now, takes: pull + rate * HOOK, stored: rate > 0 ? (pull * pull) / (2 * rate) : 0 };
}

/** A cup is pressed so far beyond where it stands that the pin's head comes free to be turned, mm: from memory. */
const PRESSED = 2;

/** What presses a hold-down's cup down until its pin can be turned, N: its preload and its rate over the way. */
export const pressingHoldDown = (brake: Brake, side: Side): number =>
  holdDownPreload(brake, side) + brake.across.holdDown.rate * PRESSED;

/** Fluid that a piston pushed back sends home to the reservoir, mm³. */
export const sentBack = (brake: Brake, behind: number): number => brake.cylinder.area * behind;

/** What a hand in the brake feels: its pull on the parts, N; the drum's is told by Motion. */
export function handForce(instant: Instant): number {
  const pulls = instant.forces.filter((f) => f.name === 'hand');
  // On a strut the two seats share one hand.
  const x = pulls.reduce((sum, { force }) => sum + force[0], 0);
  const y = pulls.reduce((sum, { force }) => sum + force[1], 0);
  const pistons = (['front', 'rear'] as const).map((s) =>
    Math.abs(instant.shoes[s].pistonHand ?? 0),
  );
  return Math.max(
    Math.sqrt(x * x + y * y),
    ...pistons,
    ...pulls.map(({ force }) => Math.sqrt(force[0] * force[0] + force[1] * force[1])),
  );
}
