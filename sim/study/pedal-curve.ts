import { balance } from '../balance/balance.ts';
import type { Rig } from '../balance/rig.ts';
import { type PedalStack, pedalFloor } from '../brake/pedal.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side, Turning } from '../brake/types.ts';
import { pedalStack, runOutLeft } from '../readings/pedal.ts';
import { gapsOf } from '../readings/roles.ts';
import { BAR } from '../units/units.ts';

/** One point of the way down: what the foot pushes, and how far the pedal is. */
export interface PedalPoint extends PedalStack {
  /** Line pressure, MPa. */
  readonly pressure: number;
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
 * @param most line pressure that the curve ends at, MPa
 */
export function pedalCurve(
  rig: Rig,
  state: BrakeState,
  most: number,
  turning: Turning = 1,
): PedalCurve {
  const at = (pressure: number): PedalPoint => {
    const i = balance(rig, state, { pressure, turning });
    const { front, rear } = i.shoes;
    const middle = (side: Side): number => gapsOf(rig.brake.shoes[side], i.shoes[side]).centre;
    return {
      ...pedalStack(rig.brake, i),
      pressure,
      runOut: runOutLeft(rig.brake, i),
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
  const floor = pedalFloor(rig.brake);
  const found = [touch, seated].filter((p) => p !== null);
  const all = [...points, ...found]
    .sort((a, b) => a.pressure - b.pressure)
    .filter((p, k, sorted) => p.pressure !== sorted[k - 1]?.pressure);
  return { points: all, touch, seated, floor, reserve: floor - last.total };
}
