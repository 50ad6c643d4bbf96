import { instantOf } from '../balance/build.ts';
import type { Instant } from '../balance/instant.ts';
import { placePoint } from '../balance/place.ts';
import { type Press, solveBalance } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Point } from '../brake/types.ts';
import { rootBetween, type Until } from '../math/root.ts';
import { cos, sin } from '../math/trig.ts';

/**
 * The hand lever's travel as cable, mm at each brake: what it takes before anything pushes (slack),
 * what the pull stretches (pull over stiffness, Hooke), and what turns the parking lever (travel of
 * its hook along the cable). All three lie in one line, so they add.
 */
export interface Spent {
  readonly slack: number;
  readonly stretch: number;
  readonly turning: number;
  readonly total: number;
  /** Of the hand lever: total over cable a notch. */
  readonly notches: number;
}

/** What stands about the cable beside the scene's own. */
export interface CableSet {
  /** Slack beyond the scene's, mm. */
  readonly moreSlack?: number;
}

/** A cable so short that it holds the lever off its stop has no slack left. */
export function slackOf(rig: Rig, state: BrakeState, set: CableSet = {}): number {
  if (state.leverOffStop > 0) return 0;
  return Math.max(0, rig.brake.parkingLever.slack + (set.moreSlack ?? 0));
}

export function spend(
  rig: Rig,
  state: BrakeState,
  cable: number,
  turning: number,
  set: CableSet = {},
): Spent {
  const lever = rig.brake.parkingLever;
  const slack = slackOf(rig, state, set);
  const stretch = cable / lever.stiffness;
  const total = slack + stretch + turning;
  return { slack, stretch, turning, total, notches: total / lever.perNotch };
}

/** Free length of the cable from the hook to where its pull comes from, mm (bending left out). */
function freeCable(rig: Rig, i: Instant): number {
  const { hook, pivot, pullFrom } = rig.brake.parkingLever;
  const c = cos(rig.leverSense * i.leverAngle);
  const s = sin(rig.leverSense * i.leverAngle);
  const x = hook[0] - pivot[0];
  const y = hook[1] - pivot[1];
  const turned: Point = [pivot[0] + c * x - s * y, pivot[1] + s * x + c * y];
  const { rear } = rig.brake.shoes;
  const at = placePoint(rear, i.shoes.rear.pose, turned);
  const [dx, dy] = [pullFrom[0] - at[0], pullFrom[1] - at[1]];
  return Math.sqrt(dx * dx + dy * dy);
}

/**
 * Travel of the hook towards its guide from where the released lever stands, mm, in an instant of the
 * same state. The lever's turn about its pivot makes most of it; its own shoe, moving out to the drum,
 * takes a little back.
 */
export function hookTravelOf(rig: Rig, state: BrakeState, i: Instant): number {
  const released = { pressure: 0, turning: 0 } as const;
  const rest = instantOf(solveBalance(rig, state, released), released);
  return Math.max(0, freeCable(rig, rest) - freeCable(rig, i));
}

/**
 * The same at a cable pull (N). Without friction at the drum (turning 0), the middle of what a drum
 * about to slip either way gives.
 */
export function hookTravel(
  rig: Rig,
  state: BrakeState,
  cable: number,
  turning: Press['turning'] = 0,
): number {
  const press = { pressure: 0, turning, cable };
  return hookTravelOf(rig, state, instantOf(solveBalance(rig, state, press), press));
}

/** Strongest cable pull that is looked for, N: above it a real cable or lever has given way. */
export const MOST_CABLE = 5000;

/** Cable taken up, mm, and pulls, N, that are alike. Halving, since a slack cable takes up much for little. */
const TAKEN_ALIKE: Until = {
  near: 1e-5,
  apart: (a, b) => Math.abs(b - a) <= 0.01,
  trials: 60,
  halving: true,
};

/**
 * The cable pull at which the cable taken up is a given length, N: the inverse of what the notches
 * are spent on. Taken-up length grows with the pull. 0 while it is within slack.
 *
 * @param total cable taken up by the hand lever, mm
 * @returns NaN when 5 kN do not take up so much
 */
export function cableAt(
  rig: Rig,
  state: BrakeState,
  total: number,
  set: CableSet = {},
  turning: Press['turning'] = 0,
): number {
  const over = (cable: number): number =>
    spend(rig, state, cable, hookTravel(rig, state, cable, turning), set).total - total;
  const short = over(0);
  if (short >= 0) return 0;
  const long = over(MOST_CABLE);
  if (long < 0) return Number.NaN;
  return rootBetween(over, [0, short], [MOST_CABLE, long], TAKEN_ALIKE)[0];
}
