import { describe, expect, it } from 'vitest';
import {
  type Brake,
  balance,
  createRig,
  firstToYield,
  freshState,
  isTold,
  lineContact,
  parked,
  pinGive,
  pinShare,
  rest,
  standingState,
  strutGive,
  strutGives,
  strutYields,
} from '../../sim/index.ts';
import { mustRead, quay, quayScene, rigidQuay, tablesQuay } from '../brakes.ts';
import { standingInside } from '../inside.ts';
import { near } from '../near.ts';

/**
 * A strut that is too long, and what bears its force. Clamps and torques by a solver written apart from this
 * project (rigid shoes, elements by the worn face's area, one spring in line with the strut), its own
 * tolerance 1 %; gives and yields by hand from the formulas told beside each.
 */
const { brake, rig, state } = quay();
const jam = (give: number, tooth: number) => {
  const on = createRig(brake, { strutGive: give });
  const s = { ...state, tooth };
  const i = balance(on, s, { pressure: 0, turning: 1 });
  const away = rest(on, { ...s, drumRadius: 110 });
  return { i, clamp: i.strutForce - away.strutForce };
};

describe('a strut too long for its drum', () => {
  it.each([
    { tooth: 3, front: 3503, rear: 1168.5, strut: 24510, peak: 17.948 },
    { tooth: 6, front: 15323, rear: 5113.9, strut: 107430, peak: 78.491 },
  ])('tooth $tooth, rigid parts: $strut N in the strut', ({ tooth, front, rear, strut, peak }) => {
    const { i, clamp } = jam(0, tooth);
    near(-i.shoes.front.torqueOnDrum / 1000, front, { rel: 0.01 }, 'front');
    near(-i.shoes.rear.torqueOnDrum / 1000, rear, { rel: 0.01 }, 'rear');
    near(clamp, strut, { rel: 0.01 }, 'strut');
    near(Math.max(...i.shoes.front.pressure), peak, { rel: 0.02 }, 'peak');
  });

  it('with 1.71e-4 mm/N in line: 444 N·m and 2.33 kN on tooth 3, 1.94 kN·m and 10.2 kN on tooth 6', () => {
    const three = jam(1.7095e-4, 3);
    near(-three.i.torqueOnDrum / 1000, 444, { rel: 0.01 }, 'torque on tooth 3');
    near(three.clamp, 2330, { rel: 0.01 }, 'strut on tooth 3');
    const six = jam(1.7095e-4, 6);
    near(-six.i.torqueOnDrum / 1000, 1939, { rel: 0.01 }, 'torque on tooth 6');
    near(six.clamp, 10200, { rel: 0.01 }, 'strut on tooth 6');
  });

  it('a tenth of a millimetre inside, by a longer strut', () => {
    const tenth = (give: number) => {
      const { rig: on, away } = standingInside(0.1, give);
      const i = balance(on, freshState(on.brake), { pressure: 0, turning: 1 });
      return { i, clamp: i.strutForce - away() };
    };
    const rigid = tenth(0);
    near(-rigid.i.shoes.front.torqueOnDrum / 1000, 2656.3, { rel: 0.01 }, 'rigid, front');
    near(-rigid.i.shoes.rear.torqueOnDrum / 1000, 886.05, { rel: 0.01 }, 'rigid, rear');
    near(rigid.clamp, 18582, { rel: 0.01 }, 'rigid, strut');
    const soft = tenth(1.7095e-4);
    near(-soft.i.shoes.front.torqueOnDrum / 1000, 252.34, { rel: 0.01 }, 'front');
    near(-soft.i.shoes.rear.torqueOnDrum / 1000, 84.162, { rel: 0.01 }, 'rear');
    near(soft.clamp, 1764.5, { rel: 0.01 }, 'strut');
    near(Math.max(...soft.i.shoes.front.pressure), 1.293, { rel: 0.02 }, 'peak');
  });

  it('gives the force one would believe by the scene’s own sizes: 444 N·m within 35 %', () => {
    const i = balance(rig, { ...state, tooth: 3 }, { pressure: 0, turning: 1 });
    near(-i.torqueOnDrum / 1000, 444, { rel: 0.35 }, 'torque');
    const six = balance(rig, { ...state, tooth: 6 }, { pressure: 0, turning: 1 });
    near(-six.torqueOnDrum / 1000, 2010, { rel: 0.35 }, 'torque on tooth 6');
  });

  it('changes nothing while the strut bears no more than its springs’ clamp', () => {
    const { rig, state } = tablesQuay();
    const stiff = rigidQuay();
    for (const pressure of [0, 0.3, 2, 8]) {
      for (const turning of [1, -1] as const) {
        const a = balance(rig, state, { pressure, turning });
        const b = balance(stiff.rig, stiff.state, { pressure, turning });
        near(a.torqueOnDrum, b.torqueOnDrum, { rel: 1e-9, abs: 1e-6 }, 'torque');
        near(a.separation, b.separation, { abs: 1e-9 }, 'seats');
      }
    }
  });
});

describe('what each part gives and bears', () => {
  const gives = (b: Brake) => Object.fromEntries(strutGives(b).map((g) => [g.part, g.give]));
  const of = gives(brake);
  /** A lever of 3 × 10, as the fuller model has it. */
  const light = (strength: number): Brake => {
    const scene = quayScene();
    scene.strutPath.lever = { thickness: 3, depth: 10, nose: 12, arm: 27 };
    scene.strutPath.yield = strength;
    return mustRead(scene);
  };
  const usual = gives(light(600));
  it('by hand', () => {
    // L/EA: 68.2 mm of 48 mm² and 35 mm of 28 mm².
    near(of['strut'] as number, 68.2 / (210000 * 48) + 35 / (210000 * 28), { rel: 1e-9 }, 'strut');
    // l³/3EI + 1.2·l/GA of 3 × 10: 12 mm long 1.69e-5; 27 mm long 1.384e-4, by (12·sin 70°/27)².
    near(usual['lever nose'] as number, 1.691e-5, { rel: 0.001 }, 'nose');
    near(usual['lever arm'] as number, 1.384e-4 * 0.4176 ** 2, { rel: 0.002 }, 'arm');
    // 5 × 14 on 46 mm, the seat 16 mm from the pivot: 6.95e-6 bending, 2.2e-6 shear.
    near(of['parking lever'] as number, 9.2e-6, { rel: 0.01 }, 'parking lever');
    // Pin of 9.2, 9 mm off a plate of 3 mm held at 30: 3.3e-6 bending, 1.71e-5 tilt.
    const pins = brake.strutPath?.pins;
    if (!pins) throw new Error('the van has pins');
    near(pinGive(pins), 2.04e-5, { rel: 0.01 }, 'a pin');
    // A 2.25 mm edge on 4 mm at 1.5 kN: half-width 0.0966 mm by hand.
    near(
      lineContact(2.25, 4),
      6.93e-7 * (2 * Math.log(10 / 0.0966) - 0.4286),
      { rel: 0.01 },
      'edge',
    );
    // The whole, and without the shoes where they bend by themselves.
    const sum = strutGives(brake).reduce((a, { give }) => a + give, 0);
    near(strutGive(brake), sum, { rel: 1e-12 }, 'whole');
    near(strutGive(brake, true), sum - 1.7e-5, { rel: 1e-9 }, 'without shoes');
    near(strutGive(light(600)), 1.71e-4, { rel: 0.1 }, 'as the same sizes give by a fuller model');
  });

  it('a pin bears 1.8 newtons for one of strut on the leading side, 0.2 on the trailing', () => {
    // Moments about the pin, all pressure in the middle of the arc: N·(78 ∓ 0.38·84) = 130.
    near(pinShare(brake, 'front'), 130 / (78 - 0.38 * 84) - 1, { rel: 0.001 }, 'front');
    near(pinShare(brake, 'rear'), 130 / (78 + 0.38 * 84) - 1, { rel: 0.001 }, 'rear');
  });

  it('yields where the handbook’s section moduli say, at 350 and at 600 MPa', () => {
    const mild = Object.fromEntries(strutYields(light(350)).map((y) => [y.part, y.force]));
    near(mild['lever nose'] as number, (350 * 50) / 12, { rel: 1e-9 }, 'nose: 6M/th²');
    near(mild['lever arm'] as number, (350 * 50) / (0.4176 * 27), { rel: 0.001 }, 'arm');
    near(mild['strut'] as number, 9800, { rel: 1e-9 }, 'bar: 350 MPa on 28 mm²');
    // Three teeth of 2.39° on 27 mm under a finger of 4.4, 3 thick, in shear.
    near(
      mild['lever teeth'] as number,
      ((350 / Math.sqrt(3)) * 3 * 1.1263 * 3) / 0.4176,
      { rel: 0.001 },
      'teeth',
    );
    const first = firstToYield(light(600));
    expect(first?.part).toBe('lever nose');
    near(first?.force ?? 0, 2500, { rel: 1e-9 }, 'hardened');
    // 220 to 475 N·m of drag is all that such a lever holds.
    const i = balance(createRig(light(350)), { ...state, tooth: 3 }, { pressure: 0, turning: 1 });
    expect([i.yields?.part, isTold(i)]).toEqual(['lever nose', false]);
    // The van's own bears what 400 N at the hand lever put on it, the most that regulations let one need
    // (UN R13-H; from memory): 400 · 6.5 · 0.85 / 2 cables.
    const handed = parked(rig, state, (400 * 6.5 * 0.85) / 2);
    expect(handed.yields).toBeNull();
  });
});

describe('parked', () => {
  it('takes as much more cable as the path gives: by hand, a notch of it at 300 N', () => {
    const stiff = rigidQuay();
    const worn = standingState(stiff.rig, 'Worn-in');
    const a = parked(stiff.rig, worn, 300);
    const b = parked(rig, worn, 300);
    near(b.strutForce, a.strutForce, { rel: 0.01 }, 'strut');
    near(b.forward, a.forward, { rel: 0.01 }, 'slip torque');
    // Lever 109 : 16; the springs' 190 N clamp it already.
    const clamp = rest(rig, worn).strutForce;
    const more = strutGive(brake) * (b.strutForce - clamp) * (109 / 16);
    near(b.hookTravel - a.hookTravel, more, { rel: 0.05 }, 'hook');
    near(b.notches - a.notches, more / 2, { rel: 0.05 }, 'notches');
  });
});
