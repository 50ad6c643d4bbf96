import { makePull, pullOf } from '../balance/forces/hands.ts';
import type { Instant } from '../balance/instant.ts';
import type { Hand } from '../balance/types.ts';
import { leverForm } from '../brake/lever-form.ts';
import type { Brake, Point, Side } from '../brake/types.ts';
import { sin } from '../math/trig.ts';
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

/** What one hand of several pulls at its place, which stands there now, N. */
export function pullOfHand(hand: Hand, at: Point): number {
  const { x, y } = pullOf(hand, at[0], at[1], makePull());
  return Math.sqrt(x * x + y * y);
}

/** The toothed lever as it is in a hand that pulls it along its slot. */
export interface LeverInHand {
  /** Up its slot from the root of its tooth, mm, and the hand's pull, N. */
  readonly lift: number;
  readonly pull: number;
  /** It has cleared the tooth of its block, so that it turns: nothing but the hand holds the strut's length. */
  readonly free: boolean;
  /** What the strut's clamp asks of a hand at the row of teeth that holds it there, N. */
  readonly holds: number;
}

/** The slot is so many teeth high: over its tooth and a bit (drawn so, from memory). */
const SLOT = 2;

/**
 * A soft hand against the lever's spring: r·(d − s) = F0 + k·s, so s = (r·d − F0)/(r + k), from the root of the tooth
 * to the end of its slot. It is too light for a spring of the hand's in time (50 N/mm on some grams), so it goes along
 * as it balances. Freed, the strut's clamp S turns it back: by virtual work (the strut grows by nose·sin angle for each
 * radian, brake/lever-form.ts) the row of teeth asks S·nose·sin angle / row of the hand. Without friction at pin and
 * edge, which on a real one adds to both.
 *
 * @param strength of its spring, 1 sound
 * @param rate of the hand, N/mm; @param reach how far the hand is up the slot from where the lever lies, mm
 * @param limit the most that it pulls, N
 */
export function leverInHand(
  brake: Brake,
  { strutForce, tooth }: Pick<Instant, 'strutForce' | 'tooth'>,
  strength: number,
  rate: number,
  reach: number,
  limit: number,
): LeverInHand | null {
  const form = leverForm(brake);
  if (!form) return null;
  const { angles, noseRadius, spring, toothHeight, toothRadius } = form;
  const [force, k] = [strength * spring.fitted, strength * spring.rate];
  const most = k > 0 ? (limit - force) / k : SLOT * toothHeight;
  const by = Math.min(most, (rate * reach - force) / (rate + k));
  const lift = Math.max(0, Math.min(SLOT * toothHeight, by));
  const pull = Math.min(limit, rate * Math.max(0, reach - lift));
  const angle = angles[tooth] ?? form.startAngle;
  return {
    lift,
    pull,
    free: lift >= toothHeight,
    holds: (strutForce * noseRadius * sin(angle)) / toothRadius,
  };
}
