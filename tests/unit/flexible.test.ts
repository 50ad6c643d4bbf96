import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { condense } from '../../sim/brake/flex.ts';
import { sectionOf } from '../../sim/brake/section.ts';
import {
  balance,
  createMotion,
  createRig,
  freshState,
  lockedShoe,
  peak,
  rest,
  shoeFactor,
  solveBalance,
  wearOn,
} from '../../sim/index.ts';
import { KM } from '../../sim/units/units.ts';
import { type AnyBrake, built, onAbutments, onPins } from '../any-brake.ts';
import { both } from '../bending-pair.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';
import { samples } from '../samples.ts';

const steel = {
  tableThickness: 3,
  tableArc: [-3, 3],
  webThickness: 5,
  webDepth: 29.5,
  webCount: 1,
  modulus: 210000,
  poisson: 0.3,
} as const;

describe('section of a curved bar', () => {
  it('a rectangle: r_n = h / ln(r2/r1), e = r_c − r_n', () => {
    // Winkler's curved bar, any advanced strength-of-materials text.
    const s = sectionOf({ ...steel, tableThickness: 0 }, 100, 0);
    const neutral = 29.5 / Math.log(100 / 70.5);
    near(s.neutral, neutral, { rel: 1e-12 }, 'r_n');
    const area = 5 * 29.5;
    near(s.bending, 1 / (210000 * area * (85.25 - neutral)), { rel: 1e-9 }, '1/EJ2');
    near(s.stretching, neutral / (210000 * area), { rel: 1e-12 }, '1/EJ0');
  });

  it('a slender one bends like a straight one', () => {
    // J2 tends to I/r: a turn for a unit moment along a unit angle of r/(E I).
    const s = sectionOf({ ...steel, tableThickness: 0, webDepth: 1 }, 100, 0);
    near(s.bending, 99.5 / (210000 * (5 / 12)), { rel: 1e-4 }, 'r/EI');
  });

  it('table and web: the axis lies between their middles, nearer to the stiffer', () => {
    const s = sectionOf(steel, 110.5, 40);
    expect(s.neutral).toBeGreaterThan(110.5 - 3 - 29.5 / 2);
    expect(s.neutral).toBeLessThan(110.5 - 1.5);
  });
});

describe('beam', () => {
  it('gives a quarter circle the deflection of the textbooks', () => {
    // Slender quarter circle, clamped at one end, radial force F at the other: pi·F·R³/(4 E I) along it and
    // F·R³/(2 E I) along the tangent (Castigliano; any strength-of-materials text).
    const { brake } = quay();
    const shoe = brake.shoes.rear;
    const slender = {
      ...shoe,
      anchor: { kind: 'pin', at: [0, -95.5 + 0.5] },
      toe: [95.5 - 0.5, 0],
      lining: { ...shoe.lining, from: -1.2, to: -0.1 },
      steel: { ...steel, tableThickness: 1, webDepth: 1, tableArc: [3, 4] },
    } as const;
    const angle = Float64Array.from({ length: 12 }, (_, i) => -1.15 + 0.09 * i);
    const face = new Float64Array(12).fill(100);
    const at = [94, 0] as const;
    const flex = condense(slender, 100, angle, face, [
      { at, along: [1, 0] },
      { at, along: [0, 1] },
    ]);
    const move = flex.move(at);
    const compliance = (a: 0 | 1, b: 0 | 1): number => {
      let sum = 0;
      for (let m = 0; m < move.length / 2; m++) {
        sum += (move[2 * m + a] as number) * (move[2 * m + b] as number);
      }
      return sum;
    };
    const bar = 94 ** 3 / (210000 * (5 / 12));
    near(compliance(0, 0), (Math.PI / 4) * bar, { rel: 0.005 }, 'along the force');
    near(Math.abs(compliance(0, 1)), bar / 2, { rel: 0.005 }, 'across it');
  });

  it('has seven modes; a place moves by none of the loads inside it', () => {
    const { brake } = quay();
    const rig = createRig(brake, { flexible: true });
    expect(rig.front.modes).toBe(7);
    expect(rig.rear.n).toBe(8);
    // Displacement at the pin itself is none: the beam starts there.
    const flex = condense(brake.shoes.rear, 100, rig.rear.bed.angle, rig.rear.bed.face, [
      { at: brake.shoes.rear.toe, along: [1, 0] },
    ]);
    expect(flex.move(brake.shoes.rear.anchor.at).every((v) => v === 0)).toBe(true);
  });
});

const factorAt = (rigs: ReturnType<typeof both>, bends: boolean, pressure: number) =>
  balance(bends ? rigs.bending : rigs.rigid, rigs.state, { pressure, turning: 1 });

describe('the bending brake', () => {
  const van = quay();
  const rigs = both(van.brake);

  it('stands still where it was built', () => {
    const i = rest(rigs.bending, rigs.state);
    for (const side of ['front', 'rear'] as const) {
      near(i.shoes[side].pistonTravel, 0, { abs: 1e-3 }, side);
      expect(i.shoes[side].normalSum).toBe(0);
      expect(i.shoes[side].pose.modes.some((z) => z !== 0)).toBe(true);
    }
    near(i.separation, i.strutLength, { abs: 1e-9 }, 'clamped');
  });

  it('travels 1.4 to 2.8 times as far at the strut and 1.6 to 3.5 at the toes from 20 to 80 bar', () => {
    // Ranges found with plane-stress finite elements over several shoes.
    const travel = (bends: boolean) => {
      const [a, b] = [factorAt(rigs, bends, 2), factorAt(rigs, bends, 8)];
      return {
        strut: b.separation - a.separation,
        front: b.shoes.front.pistonTravel - a.shoes.front.pistonTravel,
        rear: b.shoes.rear.pistonTravel - a.shoes.rear.pistonTravel,
      };
    };
    const [stiff, bent] = [travel(false), travel(true)];
    const ratio = (k: 'strut' | 'front' | 'rear') => bent[k] / stiff[k];
    for (const [k, from, to] of [
      ['strut', 1.4, 2.8],
      ['front', 1.6, 3.5],
      ['rear', 1.6, 3.5],
    ] as const) {
      expect(ratio(k)).toBeGreaterThan(from);
      expect(ratio(k)).toBeLessThan(to);
    }
  });

  it('a hard press takes a third to a half of a fine tooth more', () => {
    // On a screw strut of 0.05 mm a tooth.
    const screw = both(
      quay((scene) => {
        Object.assign(scene, {
          adjuster: {
            kind: 'screw strut',
            lengthAtZero: 103.2,
            lostMotion: 0.9,
            teeth: 40,
            pitch: 0.05,
            perApplication: 1,
            climbForce: 0,
          },
        });
      }).brake,
    );
    const gain = (bends: boolean) =>
      (factorAt(screw, bends, 8).separation - factorAt(screw, bends, 2).separation) / 0.05;
    expect(gain(true) - gain(false)).toBeGreaterThan(0.33);
    expect(gain(true) - gain(false)).toBeLessThan(0.55);
  });

  it('presses its ends harder than the rigid shoe when new', () => {
    const ends = (bends: boolean) => {
      const p = factorAt(rigs, bends, 4).shoes.front.pressure;
      return ((p[1] as number) + (p[46] as number)) / (2 * (p[24] as number));
    };
    expect(ends(true)).toBeGreaterThan(1.3 * ends(false));
  });

  it('mirrors: backward is forward with the shoes swapped, but for the parking lever', () => {
    const swapped = both(van.brake);
    const f = balance(swapped.bending, rigs.state, { pressure: 3, turning: 1 });
    const b = balance(swapped.bending, rigs.state, { pressure: 3, turning: -1 });
    near(
      Math.abs(b.shoes.rear.torqueOnDrum),
      Math.abs(f.shoes.front.torqueOnDrum),
      { rel: 2e-3 },
      'leading',
    );
  });

  it('balances the same from any start, bit for bit from the same one', () => {
    const press = { pressure: 3, turning: 1 } as const;
    const cold = solveBalance(rigs.bending, rigs.state, press);
    const a = cold.pose.slice();
    const again = solveBalance(rigs.bending, rigs.state, press);
    expect(Array.from(again.pose)).toEqual(Array.from(a));
    const far = solveBalance(rigs.bending, rigs.state, { pressure: 7, turning: -1 });
    const warm = solveBalance(rigs.bending, rigs.state, press, {
      pose: far.pose,
      strutOn: false,
      leverFree: false,
    });
    near(warm.work.strut.length, cold.work.strut.length, { abs: 1e-9 }, 'separation');
  });

  it('parks: the strut carries the cable times the lever, bending or not', () => {
    const strut = (bends: boolean) =>
      balance(bends ? rigs.bending : rigs.rigid, rigs.state, {
        pressure: 0,
        turning: 1,
        cable: 500,
      }).strutForce;
    near(strut(true), strut(false), { rel: 1e-3 }, 'strut');
  });

  it('settles in time where the balance is', () => {
    for (const [pressure, turning] of [
      [1, 1],
      [4, 1],
      [4, -1],
      [8, 1],
    ] as const) {
      const motion = createMotion(rigs.bending, rigs.state);
      for (let k = 0; k < 360; k++) {
        motion.step({ pressure: Math.min(pressure, (pressure * k) / 60), turning });
      }
      const moved = motion.instant();
      const still = balance(rigs.bending, motion.state, { pressure, turning });
      for (const side of ['front', 'rear'] as const) {
        near(
          moved.shoes[side].torqueOnDrum,
          still.shoes[side].torqueOnDrum,
          { rel: 1e-3 },
          `${side} at ${pressure} MPa`,
        );
      }
      near(moved.separation, still.separation, { abs: 1e-5 }, 'separation');
    }
  });

  it('presses a standing drum in time as in balance', () => {
    const motion = createMotion(rigs.bending, rigs.state);
    for (let k = 0; k < 360; k++) motion.step({ pressure: Math.min(2, k / 60), turning: 0 });
    const still = balance(rigs.bending, rigs.state, { pressure: 2, turning: 0 });
    for (const side of ['front', 'rear'] as const) {
      near(
        motion.instant().shoes[side].torqueOnDrum,
        still.shoes[side].torqueOnDrum,
        { rel: 2e-3 },
        side,
      );
    }
  });
});

describe('wear of the bending shoe', () => {
  const van = quay();
  const rigs = both(van.brake);
  const worn = (bends: boolean, km: number) =>
    wearOn(bends ? rigs.bending : rigs.rigid, rigs.state, { distance: km * KM }).state;
  const at = (bends: boolean, state: ReturnType<typeof worn>, pressure: number) =>
    balance(bends ? rigs.bending : rigs.rigid, state, { pressure, turning: 1 });

  it('ends where the rigid one ends: p as the sine of the angle from the pin, the same factor', () => {
    // Archard wear on a hinge: depth and so pressure can only keep their shape as r·sin(angle).
    const bent = at(true, worn(true, 24000), 2);
    const stiff = at(false, worn(false, 24000), 2);
    for (const side of ['front', 'rear'] as const) {
      near(shoeFactor(bent, side), shoeFactor(stiff, side), { rel: 0.003 }, `${side} factor`);
      const top = peak(stiff.shoes[side].pressure);
      bent.shoes[side].pressure.forEach((p, i) => {
        near(p, stiff.shoes[side].pressure[i] as number, { abs: 0.015 * top }, `${side} ${i}`);
      });
    }
    const pin = van.brake.shoes.front.anchor.at;
    const { pressure, angle } = bent.shoes.front;
    const share = (i: number) =>
      (pressure[i] as number) /
      Math.abs(Math.sin((angle[i] as number) - Math.atan2(pin[1], pin[0])));
    for (const i of [4, 12, 18, 30]) near(share(i) / share(24), 1, { abs: 0.03 }, `sine at ${i}`);
  });

  it('after a dip, and then depends on the force: weak at light pressure in reverse early on', () => {
    const early = worn(true, 2000);
    const late = worn(true, 12000);
    const fresh = freshState(van.brake);
    const lead = (state: typeof fresh) => shoeFactor(at(true, state, 2), 'front');
    expect(lead(early)).toBeLessThan(lead(fresh));
    expect(lead(early)).toBeLessThan(lead(late));
    const reverse = (bends: boolean, state: typeof fresh) =>
      shoeFactor(
        balance(bends ? rigs.bending : rigs.rigid, state, { pressure: 0.8, turning: -1 }),
        'rear',
      );
    expect(reverse(true, early)).toBeLessThan(0.92 * reverse(false, worn(false, 2000)));
  });

  it('a lining worn under one model is wrong under the other', () => {
    const state = worn(false, 20000);
    const own = shoeFactor(at(false, state, 2), 'front');
    const other = shoeFactor(at(true, state, 2), 'front');
    expect(Math.abs(other / own - 1)).toBeGreaterThan(0.05);
  });
});

const settles = (b: AnyBrake, flexible: boolean): void => {
  const { brake, state } = built(b);
  const rig = createRig(brake, { flexible });
  for (const [pressure, turning] of [
    [0, 0],
    [b.pressure, 1],
    [b.pressure, -1],
    [b.pressure, 0],
  ] as const) {
    if (turning !== 0 && lockedShoe(rig, state, turning, pressure)) continue;
    const { solution, pose } = solveBalance(rig, state, { pressure, turning });
    expect(solution.residual).toBeLessThan(1e-3);
    expect(pose.every(Number.isFinite)).toBe(true);
  }
};

describe('any sound brake finds its balance from cold', () => {
  for (const [name, brakes, flexible, test] of [
    ['bending, on pins', onPins, true, 'settlesOnPins'],
    ['rigid, on abutments', onAbutments, false, 'settlesRigid'],
    ['bending, on abutments', onAbutments, true, 'settlesOnAbutments'],
  ] as const) {
    it(name, () => {
      fc.assert(
        fc.property(brakes, (b) => settles(b, flexible)),
        { seed: 20261125, numRuns: samples(test) },
      );
    });
  }
});
