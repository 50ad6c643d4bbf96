import { describe, expect, it } from 'vitest';
import {
  balance,
  createMotion,
  type Instant,
  lockedShoe,
  shoeFactorFull,
} from '../../sim/index.ts';
import { near } from '../near.ts';
import { type SlidingPair, slidingPair } from '../sliding-pair.ts';

/**
 * Shoes with a round, frictionless heel on a flat square to the actuating force: a/r 0.8, h/r 1.6,
 * lining of 110 deg. Rigid shoe, elastic lining:
 *   factor = mu·(h/r)/((a/r)(1 + mu²)G ∓ mu), G = (arc + sin arc)/(4 sin(arc/2)), minus leading.
 * Derived from first principles; the same closed form as a handbook's parallel-abutment shoe (Limpert,
 * Brake Design and Safety; form from memory). It lets the lining pull at its unloaded end, which
 * happens above mu 0.24; the totals without pulling are of two independent element sums.
 */
const shape = { radius: 100, heel: 80, arm: 160, arc: 110, width: 40 };
const at = (pair: SlidingPair, pressure = 1, turning: 1 | -1 = 1): Instant => {
  const { rig, state } = slidingPair(pair);
  const i = balance(rig, state, { pressure, turning });
  expect(i.residual).toBeLessThan(1e-3);
  return i;
};
const touching = (i: Instant, side: 'front' | 'rear', arc: number): number => {
  const { pressure } = i.shoes[side];
  return (arc * pressure.filter((p) => p > 0).length) / pressure.length;
};
/** Degrees from the lining's middle towards the toe; a 0.05 of them come from the lining giving way. */
const peakAngle = (i: Instant, side: 'front' | 'rear'): number => {
  const { pressure, angle } = i.shoes[side];
  let c = 0;
  let s = 0;
  // p = P cos(theta − peak) over the arc: least squares on cos and sin, which are orthogonal there.
  let cc = 0;
  let ss = 0;
  for (let k = 0; k < pressure.length; k++) {
    const theta = side === 'rear' ? (angle[k] as number) : Math.PI - (angle[k] as number);
    c += (pressure[k] as number) * Math.cos(theta);
    s += (pressure[k] as number) * Math.sin(theta);
    cc += Math.cos(theta) ** 2;
    ss += Math.sin(theta) ** 2;
  }
  return (Math.atan2(s / ss, c / cc) * 180) / Math.PI;
};

describe('shoes that slide on a flat', () => {
  it('full contact: the closed form at friction 0.20', () => {
    const i = at({ ...shape, mu: 0.2, elements: 960 });
    near(shoeFactorFull(i, 'front'), 0.608247831660731, { rel: 1e-4 }, 'leading');
    near(shoeFactorFull(i, 'rear'), 0.3455345390127424, { rel: 1e-4 }, 'trailing');
    near(
      shoeFactorFull(i, 'front') + shoeFactorFull(i, 'rear'),
      0.9537823706734734,
      { rel: 1e-4 },
      'both',
    );
    // Leading presses towards its heel, trailing towards its toe.
    near(peakAngle(i, 'front'), -30.26277758668223, { abs: 0.05 }, 'peak leading');
    near(peakAngle(i, 'rear'), 30.26277758668223, { abs: 0.05 }, 'peak trailing');
  });

  it('one end unloads at friction 0.24', () => {
    const edge = 0.24001012766230115;
    for (const [mu, all] of [
      [edge - 0.002, true],
      [edge + 0.002, false],
    ] as const) {
      const i = at({ ...shape, mu, elements: 960 });
      for (const side of ['front', 'rear'] as const) {
        expect(touching(i, side, 110) === 110).toBe(all);
      }
    }
  });

  // Total and contact arc without pulling, at three decimals as known.
  for (const [mu, total, arc] of [
    [0.2, 0.954, 110],
    [0.3, 1.497, 103.2],
    [0.45, 2.501, 85.9],
  ] as const) {
    it(`lifts off rather than pulls at friction ${mu}`, () => {
      const i = at({ ...shape, mu, elements: 960 });
      const factor = shoeFactorFull(i, 'front') + shoeFactorFull(i, 'rear');
      near(factor, total, { abs: 6e-4 }, 'total');
      near(touching(i, 'front', 110), arc, { abs: 0.2 }, 'arc');
      if (mu > 0.24) {
        // The formula that lets it pull is not met.
        const a = (110 * Math.PI) / 180;
        const g = (a + Math.sin(a)) / (4 * Math.sin(a / 2));
        const pulling = (sign: number) => (mu * 1.6) / (0.8 * (1 + mu * mu) * g + sign * mu);
        expect(factor - pulling(-1) - pulling(1)).toBeGreaterThan(0.002);
      }
    });
  }

  it('never locks with this shape, as the closed form says', () => {
    // (a/r)(1 + mu²)G = mu has no real root at a/r 0.8.
    for (const mu of [0.3, 0.6, 1]) {
      const { rig, state } = slidingPair({ ...shape, mu });
      expect(lockedShoe(rig, state, 1)).toBe(null);
    }
  });

  it("locks when the drum's force points at the heel: a short lining", () => {
    // A frictionless flat takes no upright force, so the drum's force on the shoe (normal and drag together,
    // leaning by atan mu) is level, and acts R·sin(atan mu) below the centre. It needs no push when that
    // is the heel's height: mu = tan(asin(a/r)) = tan 30 deg at a/r 0.5.
    const short = { ...shape, heel: 50, arm: 130, arc: 4, middle: -30 };
    const lock = Math.tan(Math.PI / 6);
    const locks = (mu: number) => {
      const { rig, state } = slidingPair({ ...short, mu, elements: 96 });
      return lockedShoe(rig, state, 1);
    };
    // Its ends let the force wander by 2 deg, 3 % of the friction.
    expect(locks(lock * 0.97)).toBe(null);
    expect(locks(lock * 1.03)).toBe('front');
  });
});

describe('heel on its flat', () => {
  const van = { ...shape, modulus: 400, mu: 0.35 };

  for (const pair of [
    { ...van, slope: 0, heelFriction: 0.15 },
    { ...van, slope: 12, heelFriction: 0.2 },
    { ...van, slope: -5, heelFriction: 0.1 },
    { ...van, slope: 15, heelFriction: 0 },
  ]) {
    it(`forces and moments sum to nothing: slope ${pair.slope}, friction ${pair.heelFriction}`, () => {
      const i = at(pair, 3);
      for (const side of ['front', 'rear'] as const) {
        const s = i.shoes[side];
        const out = side === 'rear' ? 1 : -1;
        const largest = Math.max(s.normalSum, s.pistonForce);
        const sumX = s.normalForce[0] + s.frictionForce[0] + s.anchorForce[0] + out * s.pistonForce;
        const sumY = s.normalForce[1] + s.frictionForce[1] + s.anchorForce[1];
        expect(Math.abs(sumX) / largest).toBeLessThan(1e-6);
        expect(Math.abs(sumY) / largest).toBeLessThan(1e-6);
        // Coulomb's cone on the flat
        const angle = ((out > 0 ? pair.slope : 180 - pair.slope) * Math.PI) / 180;
        const n = s.anchorForce[0] * Math.cos(angle) + s.anchorForce[1] * Math.sin(angle);
        const t = -s.anchorForce[0] * Math.sin(angle) + s.anchorForce[1] * Math.cos(angle);
        expect(n).toBeGreaterThan(0);
        expect(Math.abs(t)).toBeLessThanOrEqual(pair.heelFriction * n * (1 + 1e-9) + 1e-9);
        // Drum torque against the moment of piston and heel about the drum's centre
        const heel = [s.pose.ux + out * 15, s.pose.uy - 80] as const;
        const r = 6;
        const foot = [heel[0] - r * Math.cos(angle), heel[1] - r * Math.sin(angle)] as const;
        const onShoe =
          -s.toe[1] * out * s.pistonForce +
          foot[0] * s.anchorForce[1] -
          foot[1] * s.anchorForce[0] -
          s.torqueOnDrum;
        expect(Math.abs(onShoe) / (largest * 100)).toBeLessThan(1e-6);
      }
    });
  }

  it('settles in time where the balance is, rigid and bending', () => {
    for (const flexible of [false, true]) {
      for (const pair of [
        { ...van, slope: 0, heelFriction: 0 },
        { ...van, slope: 12, heelFriction: 0.2 },
      ]) {
        const { rig, state } = slidingPair({ ...pair, flexible });
        for (const turning of [1, -1] as const) {
          const still = balance(rig, state, { pressure: 3, turning });
          const motion = createMotion(rig, state);
          for (let k = 0; k < 480; k++) {
            motion.step({ pressure: Math.min(3, (3 * k) / 60), turning });
          }
          const moved = motion.instant();
          for (const side of ['front', 'rear'] as const) {
            near(
              moved.shoes[side].torqueOnDrum,
              still.shoes[side].torqueOnDrum,
              { rel: 1e-3 },
              `${side} ${turning} slope ${pair.slope}`,
            );
          }
        }
      }
    }
  });
});
