import type { Yielding } from '../brake/strut-path.ts';
import type { Point, Side, Turning } from '../brake/types.ts';

/**
 * One instant of the brake: where every part sits and what pushes. Both solvers give it, so the
 * drawing, the plots, the readings and the command line show the same equilibrium.
 */

/** A concentrated force on a shoe, for a drawing. */
export interface Arrow {
  readonly name: string;
  readonly on: Side;
  /** Where it acts, mm, and what it is, N. */
  readonly at: Point;
  readonly force: Point;
}

/** Rigid place of a shoe: shift of its pin or heel centre and turn (counter-clockwise), and its bending. */
export interface ShoePose {
  readonly ux: number;
  readonly uy: number;
  readonly phi: number;
  /** Elastic mode amplitudes; empty on a rigid shoe. */
  readonly modes: readonly number[];
}

/** One shoe at one instant: where it stands and what acts on it. */
export interface ShoeInstant {
  readonly side: Side;
  readonly pose: ShoePose;
  /** MPa on each lining element, index 0 at the arc's `from` end. */
  readonly pressure: Float64Array;
  /** Radial gap of each element to the drum, mm; negative by the lining's compression. */
  readonly gap: Float64Array;
  /** Angle of each element's middle in the reference pose, rad. */
  readonly angle: Float64Array;
  /** Resultant of the normal forces of the drum on the lining, N. */
  readonly normalForce: Point;
  /** Resultant of the friction forces of the drum on the lining, N. */
  readonly frictionForce: Point;
  /** Sum of the normal forces without regard to direction, N. */
  readonly normalSum: number;
  /** Torque of this shoe on the drum about its axis, N·mm, counter-clockwise positive. */
  readonly torqueOnDrum: number;
  /** Force of the pin or abutment on the shoe, N. */
  readonly anchorForce: Point;
  /** Push of the piston on the toe, N. */
  readonly pistonForce: number;
  /** Where the hold-down bears now, mm, and its friction on the shoe in the brake's plane, N. */
  readonly holdDown: { readonly at: Point; readonly force: Point };
  /** Push left on the toe after the springs (moment about the anchor over the toe's height), N. */
  readonly toeForce: number;
  /** Outward travel of the piston from the built pose at rest, mm. */
  readonly pistonTravel: number;
  /** How far the piston stands behind its toe, mm, where a hand has pushed it off; 0 when left out. */
  readonly pistonBehind?: number;
  /** Of a hand on the piston, outward, N. */
  readonly pistonHand?: number;
  /** Where the toe contact stands now, mm. */
  readonly toe: Point;
}

/** Where the toothed lever stands: teeth and share of the next one, and how far it is off its root, mm. */
export interface LeverPlace {
  readonly phase: number;
  readonly lift: number;
}

/** One instant of the brake: where every part stands and what pushes. Drawing and readings need nothing else. */
export interface Instant {
  /** MPa */
  readonly pressure: number;
  readonly turning: Turning;
  /** Turn of the drum, rad: as asked of Balance; in Motion since the start. */
  readonly drumAngle: number;
  /** Inner radius now, with wear and heat, mm. */
  readonly drumRadius: number;
  readonly shoes: Readonly<Record<Side, ShoeInstant>>;
  /** Torque of both shoes on the drum about its axis, N·mm, counter-clockwise positive. */
  readonly torqueOnDrum: number;
  /**
   * Gap of the linings' middle in the built rest pose, the drum away, both shoes alike, mm; negative: so far they stand
   * inside the drum that they are squeezed into.
   */
  readonly restGap: number;
  readonly tooth: number;
  readonly strutLength: number;
  /** Distance of the two strut seats, mm: strutLength when clamped, more when the shoes part. */
  readonly separation: number;
  /** Clamp force in the strut, N (compression positive). */
  readonly strutForce: number;
  /** How far the next tooth is climbed, 0..1. */
  readonly climb: number;
  /** How far the strut has left its rear seat, mm, where no spring holds it; left out where its spring does. */
  readonly strutOff?: number;
  /** Where the toothed lever is in time; left out, it stands on its flank as `climb` has it. */
  readonly lever?: LeverPlace;
  readonly springs: readonly {
    readonly force: number;
    readonly from: Point;
    readonly to: Point;
  }[];
  /** Every concentrated force on a shoe but those of strut and pin, as the forces themselves tell them. */
  readonly forces: readonly Arrow[];
  /** Turn of the parking lever off its stop, rad (0 on the stop). */
  readonly leverAngle: number;
  /** Cable pull at the hook, N. */
  readonly cableForce: number;
  /** A shoe that would hold the drum without any push: no force is told then. */
  readonly locked: Side | null;
  /** No balance was found (the drum carries a shoe off its anchor): no force is told either. */
  readonly lost: boolean;
  /** What the strut's force is too much for, and at which force it gives way: none beyond that is told. */
  readonly yields: Yielding | null;
  /** Greatest force left over by the solver, N: a check on the numbers. */
  readonly residual: number;
}

/** Can the forces of an instant be told? Not where a shoe locks by itself, where nothing balances, or a part yields. */
export const isTold = (i: Instant): boolean => i.locked === null && !i.lost && i.yields === null;
