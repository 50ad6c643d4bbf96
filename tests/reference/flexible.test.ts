import { describe, expect, it } from 'vitest';
import { balance, createRig, freshState, lockedShoe, shoeFactorFull } from '../../sim/index.ts';
import { bendingPair, both, stiffer } from '../bending-pair.ts';
import { near } from '../near.ts';

/**
 * Shoe factors (drum drag over toe force) of one steel shoe. Source of the steel shoe's: own plane-stress
 * finite elements of table, web and lining, agreeing with a second general-purpose finite-element
 * program to 0.15 % at equal friction. Source of the rigid shoe's: closed form of the hinged shoe,
 * mu·(h/r)/(X ∓ mu·Y).
 */
const rows = [
  { mu: 0.2, rigid: [0.6494, 0.354], steel: [0.7092, 0.3606] },
  { mu: 0.3, rigid: [1.2309, 0.4768], steel: [1.3129, 0.4708] },
  { mu: 0.4, rigid: [2.2286, 0.5768], steel: [2.2119, 0.5513] },
] as const;

describe('a steel shoe against finite elements', () => {
  for (const { mu, rigid, steel } of rows) {
    for (const turning of [1, -1] as const) {
      it(`friction ${mu}, ${turning > 0 ? 'forward' : 'backward'}`, () => {
        const rigs = both(bendingPair(mu));
        const [leading, trailing] =
          turning > 0 ? (['front', 'rear'] as const) : (['rear', 'front'] as const);
        const stiff = balance(rigs.rigid, rigs.state, { pressure: 2, turning });
        const bent = balance(rigs.bending, rigs.state, { pressure: 2, turning });
        // The table's last digit
        near(shoeFactorFull(stiff, leading), rigid[0], { abs: 6e-5 }, 'rigid leading');
        near(shoeFactorFull(stiff, trailing), rigid[1], { abs: 6e-5 }, 'rigid trailing');
        // The goal of a beam with seven modes; it is within 0.35 %
        near(shoeFactorFull(bent, leading), steel[0], { rel: 0.01 }, 'steel leading');
        near(shoeFactorFull(bent, trailing), steel[1], { rel: 0.01 }, 'steel trailing');
        // and far enough from the rigid one to tell them apart.
        expect(Math.abs(shoeFactorFull(bent, trailing) - rigid[1])).toBeGreaterThan(0.005);
      });
    }
  }

  it('is the rigid shoe when its steel is a million times stiffer', () => {
    for (const { mu } of rows) {
      const rigs = both(bendingPair(mu, stiffer(1e6)));
      for (const pressure of [0.5, 2, 8]) {
        const press = { pressure, turning: 1 } as const;
        const stiff = balance(rigs.rigid, rigs.state, press);
        const bent = balance(rigs.bending, rigs.state, press);
        for (const side of ['front', 'rear'] as const) {
          near(bent.shoes[side].torqueOnDrum, stiff.shoes[side].torqueOnDrum, { rel: 1e-4 }, side);
          near(bent.shoes[side].pistonTravel, stiff.shoes[side].pistonTravel, { rel: 1e-4 }, side);
        }
      }
    }
  });
});

describe('locking by itself', () => {
  // Hinged shoe, closed form: locks at mu = X/Y with X = (a/r)(arc − sin arc·cos A3)/(4 sin(arc/2)·sin(A3/2)),
  // Y = 1 − (a/r)·cos(arc/2)·cos(A3/2), angles from the pin, A3 the sum of the lining's ends.
  const pin = Math.atan2(-84, 18);
  const from = (-52 * Math.PI) / 180 - pin;
  const to = (62 * Math.PI) / 180 - pin;
  const [arc, sum, a] = [to - from, to + from, Math.hypot(18, 84) / 115];
  const x =
    (a * (arc - Math.sin(arc) * Math.cos(sum))) / (4 * Math.sin(arc / 2) * Math.sin(sum / 2));
  const y = 1 - a * Math.cos(arc / 2) * Math.cos(sum / 2);

  const locks = (mu: number, times: number, flexible: boolean) => {
    const brake = bendingPair(mu, stiffer(times));
    return lockedShoe(createRig(brake, { flexible }), freshState(brake), 1);
  };

  it('comes at X/Y for a rigid shoe, bending or not', () => {
    for (const flexible of [false, true]) {
      expect(locks((x / y) * 0.998, 1e6, flexible)).toBe(null);
      expect(locks((x / y) * 1.002, 1e6, flexible)).toBe('front');
    }
  });

  it('comes at a higher friction for a steel shoe on a lining that fits, and is never a number', () => {
    expect(locks((x / y) * 1.02, 1, true)).toBe(null);
    let low = x / y;
    let high = 1.1;
    expect(locks(high, 1, true)).toBe('front');
    while (high - low > 0.01) {
      const mu = (low + high) / 2;
      if (locks(mu, 1, true)) high = mu;
      else low = mu;
    }
    expect(low / (x / y)).toBeGreaterThan(1.3);
    // Far beyond, where even a held toe would not hold the shoe, it still says so.
    expect(locks(1.4, 1, true)).toBe('front');
    const brake = bendingPair(high);
    const i = balance(createRig(brake, { flexible: true }), freshState(brake), {
      pressure: 2,
      turning: 1,
    });
    expect(i.locked).toBe('front');
    // Just below it holds a finite balance.
    const below = bendingPair(low - 0.02);
    const j = balance(createRig(below, { flexible: true }), freshState(below), {
      pressure: 2,
      turning: 1,
    });
    expect(j.locked).toBe(null);
    expect(j.residual).toBeLessThan(1e-3);
  });
});
