import type { Film } from './films.ts';
import type { Surface } from './surface.ts';
import type { Brake, Side, Wheel } from './types.ts';
import { wornElements } from './worn-along.ts';

/** Number of lining elements along an arc. 48 stays within 0.02 % of a fine mesh. */
export const ELEMENTS = 48;

/** What is out of order; a sound brake has none of it. */
export interface Condition {
  readonly surface: Readonly<Record<Side, Surface>>;
  /** A piston that does not move: it pushes nothing. */
  readonly pistonStuck: Readonly<Record<Side, boolean>>;
  /** Friction of each cup beyond the scene's, N: a sluggish piston. */
  readonly cupExtra: number;
  /** On rate and force of all return springs. */
  readonly springFactor: number;
  /** Drum off centre by this much, mm on radius (once a turn). */
  readonly offCentre: number;
  /** Drum oval: radius varies by ± this, mm (twice a turn). */
  readonly oval: number;
  /** Grooved plate pad: force at which a shoe's edge breaks out of its groove, N. */
  readonly groove: number;
  readonly adjusterSeized: boolean;
  /** Load at the strut above which worn teeth let one go, N; null when they hold any. */
  readonly teethHold: number | null;
  /** Strength of the spring that pulls the lever into its next tooth: 1 sound, 0 broken. */
  readonly leverSpring: number;
  /** What one passed tooth does: 1 steps out, 0 nothing, -1 winds back (fitted on the wrong side). */
  readonly adjusterStep: 1 | 0 | -1;
  /** Pressure that stays in the line after release, MPa: a hose shut on the way back, a covered port. */
  readonly keptPressure: number;
  /** Pull that a cable keeps at the hook after release, N. */
  readonly keptCable: number;
  /** Share of the cable's pull lost in a stiff pivot of the parking lever, 0..1. */
  readonly leverLoss: number;
  /** How far a worn bearing lets the loaded drum rise against the plate, mm. */
  readonly drumRise: number;
  /** Push of a stuck part on a toe, N. */
  readonly lean: Readonly<Record<Side, number>>;
  /** Return springs that are unhooked, by their place in the brake's list; none when left out. */
  readonly unhooked?: readonly number[] | undefined;
  /** Shoes whose hold-down is taken off; none when left out. */
  readonly unheld?: readonly Side[] | undefined;
  /** The spring that holds the strut is taken off; it is on when left out. See `strutSpring` of kinds.ts. */
  readonly strutLoose?: boolean | undefined;
}

export const SOUND: Condition = {
  surface: { front: 'dry', rear: 'dry' },
  pistonStuck: { front: false, rear: false },
  cupExtra: 0,
  springFactor: 1,
  offCentre: 0,
  oval: 0,
  groove: 0,
  adjusterSeized: false,
  teethHold: null,
  leverSpring: 1,
  adjusterStep: 1,
  keptPressure: 0,
  keptCable: 0,
  leverLoss: 0,
  drumRise: 0,
  lean: { front: 0, rear: 0 },
};

/**
 * What changes and lasts. Pure data, copied by value; the wear step makes a new one.
 */
export interface BrakeState {
  readonly tooth: number;
  /** Depth worn off each lining element, mm; index 0 at the arc's `from` end. */
  readonly wear: Readonly<Record<Side, Float64Array>>;
  /** Present inner radius of the cold drum, mm. */
  readonly drumRadius: number;
  /** °C */
  readonly temperature: number;
  /** mm driven. */
  readonly distance: number;
  readonly applications: number;
  /** How far the cable holds the parking lever off its stop, mm at the hook. */
  readonly leverOffStop: number;
  readonly condition: Condition;
  /**
   * The linings wore under shoes that bend; under rigid ones, or not at all, when left out. Each wears its lining
   * to its own shape, which is wrong under the other: see wear/under.ts. Neither: their depths were measured, or
   * are those of other new linings, and nothing has been driven on them since.
   */
  readonly wornBy?: 'bending' | 'neither' | undefined;
  /** What lies on the rubbing faces and goes with use; nothing when left out. */
  readonly film?: Film | undefined;
}

/** A freshly built brake: new linings, tooth 0. Drum radius in mm, new when left out. */
export function freshState(
  brake: Brake,
  drumRadius = brake.drum.radiusNew,
  elements = ELEMENTS,
): BrakeState {
  return {
    tooth: 0,
    wear: { front: new Float64Array(elements), rear: new Float64Array(elements) },
    drumRadius,
    temperature: 20,
    distance: 0,
    applications: 0,
    leverOffStop: 0,
    condition: SOUND,
  };
}

/** The brake as its scene starts it; that of the wheel that the scene is told of when none is named. */
export function startState(
  brake: Brake,
  elements = ELEMENTS,
  wheel: Wheel = brake.wheel,
): BrakeState {
  const start = wheel === brake.wheel ? brake.start : (brake.otherStart ?? brake.start);
  const worn = (side: Side): Float64Array => {
    const told = start.wear[side];
    return typeof told === 'number'
      ? new Float64Array(elements).fill(told)
      : wornElements(told, side, elements);
  };
  const wear = { front: worn('front'), rear: worn('rear') };
  const measured = wear.front.some((w) => w !== 0) || wear.rear.some((w) => w !== 0);
  return {
    ...freshState(brake, start.drumRadius, elements),
    tooth: start.tooth,
    wear,
    temperature: start.temperature,
    leverOffStop: start.leverOffStop,
    ...(measured ? { wornBy: 'neither' } : {}),
  };
}

/** Length of the strut from seat to seat at the present tooth, mm. */
export function strutLength(brake: Brake, tooth: number): number {
  return brake.adjuster.lengthAtZero + (brake.adjuster.growth[tooth] ?? Number.NaN);
}
