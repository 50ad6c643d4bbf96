import { balance } from '../balance/balance.ts';
import type { Rig } from '../balance/rig.ts';
import { type PedalStack, pedalFloor, pedalFrom } from '../brake/pedal.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side, Turning } from '../brake/types.ts';
import { lineAt } from '../brake/upstream.ts';
import { runOutLeft } from '../readings/pedal.ts';
import { gapsOf } from '../readings/roles.ts';
import { BAR } from '../units/units.ts';

/** One point of the way down: what the foot pushes, and how far the pedal is. */
export interface PedalPoint extends PedalStack {
  /** Of the master cylinder, and in this axle's wheel cylinders, MPa. */
  readonly pressure: number;
  readonly line: number;
  /** Travel of the farther piston to run-out, mm. */
  readonly runOut: number;
  /** Push of the drum on each lining, N, and the gap at its middle, mm. */
  readonly normal: Readonly<Record<Side, number>>;
  readonly middle: Readonly<Record<Side, number>>;
}

/** The pedal pushed from released to a pressure, slowly, the pistons of all brakes of the axle alike. */
export interface PedalCurve {
  /** By rising pressure, released first. */
  readonly points: readonly PedalPoint[];
  /** A lining begins to rub, be it at one end alone; null where none does up to that pressure. */
  readonly touch: PedalPoint | null;
  /** Both linings lie on the drum: from here on the pedal only grows hard. */
  readonly seated: PedalPoint | null;
  /** Travel of the pedal with the master cylinder's piston at its end, mm. */
  readonly floor: number;
  /** Pedal travel left to there at the last point, mm; negative: the pedal stands on its floor before. */
  readonly reserve: number;
}

/** Points between released and the whole pressure. */
const STEPS = 24;
/** Pressures this near are one, MPa: a hundredth of a bar. */
const ALIKE = 0.01 * BAR;
/** A lining rubs from here on, N: far below what a finger feels. */
const RUBS = 1e-3;
/** A lining lies on the drum once its middle is so near where the whole pressure brings it, mm. */
const NEAR = 0.01;

/**
 * Pedal force against pedal travel. Where a lining begins to rub, and where it lies, is found by
 * halving: once it does at a pressure it does at every higher one.
 *
 * @param most pressure of the master cylinder that the curve ends at, MPa
 */
export function pedalCurve(
  rig: Rig,
  state: BrakeState,
  most: number,
  turning: Turning = 1,
): PedalCurve {
  const { brake } = rig;
  const at = (pressure: number): PedalPoint => {
    const i = balance(rig, state, { pressure: lineAt(brake, pressure), turning });
    const { front, rear } = i.shoes;
    const middle = (side: Side): number => gapsOf(brake.shoes[side], i.shoes[side]).centre;
    return {
      ...pedalFrom(brake, front.pistonTravel, rear.pistonTravel, i.pressure, 0, pressure),
      pressure,
      line: i.pressure,
      runOut: runOutLeft(brake, i),
      normal: { front: front.normalSum, rear: rear.normalSum },
      middle: { front: middle('front'), rear: middle('rear') },
    };
  };
  const points = Array.from({ length: STEPS + 1 }, (_, k) => at((most * k) / STEPS));
  const firstOf = (is: (p: PedalPoint) => boolean): PedalPoint | null => {
    const k = points.findIndex(is);
    let high = points[k];
    if (!high) return null;
    let low = points[k - 1];
    while (low && high.pressure - low.pressure > ALIKE) {
      const middle: PedalPoint = at((low.pressure + high.pressure) / 2);
      if (is(middle)) high = middle;
      else low = middle;
    }
    return high;
  };
  const last = points[STEPS] as PedalPoint;
  const lies = (p: PedalPoint, side: Side): boolean =>
    p.normal[side] > RUBS && p.middle[side] < last.middle[side] + NEAR;
  const touch = firstOf((p) => p.normal.front > RUBS || p.normal.rear > RUBS);
  const seated = firstOf((p) => lies(p, 'front') && lies(p, 'rear'));
  const floor = pedalFloor(brake);
  const found = [touch, seated].filter((p) => p !== null);
  const all = [...points, ...found]
    .sort((a, b) => a.pressure - b.pressure)
    .filter((p, k, sorted) => p.pressure !== sorted[k - 1]?.pressure);
  return { points: all, touch, seated, floor, reserve: floor - last.total };
}

/** Pedal travel parted by where it goes, mm at the pedal. */
export interface PedalParts {
  readonly freePlay: number;
  readonly booster: number;
  /** To the end of the stroke of a circuit that has failed. */
  readonly lost: number;
  /** This axle's: pistons that seals drew back, shoes on their way to the drum, what shoes and linings give, lines. */
  readonly rollBack: number;
  readonly toDrum: number;
  readonly elastic: number;
  readonly ownLines: number;
  /** The rest of the circuit: the other axle's brakes, hoses, fluid; without circuits in the scene this axle's lines too. */
  readonly rest: number;
  readonly total: number;
  /** Of it this axle's, 0 to 1. */
  readonly own: number;
}

/** Which part of the travel at the curve's end is this axle's. What the pistons go after both linings lie is give. */
export function pedalParts(curve: PedalCurve): PedalParts {
  const last = curve.points.at(-1) as PedalPoint;
  const toDrum = curve.seated ? curve.seated.gaps : last.gaps;
  const elastic = last.gaps - toDrum;
  const { freePlay, booster, lost, rollBack, ownLines, total } = last;
  return {
    freePlay,
    booster,
    lost,
    rollBack,
    toDrum,
    elastic,
    ownLines,
    rest: last.circuit - ownLines + last.air,
    total,
    own: (rollBack + last.gaps + ownLines) / total,
  };
}
