import { describe, expect, it } from 'vitest';
import {
  type BrakeState,
  type DrumAnswers,
  type ForceLock,
  freshState,
  type Held,
  KM,
  letGo,
  likelyLocks,
  lipFit,
  lipForce,
  lipHeight,
  removal,
  rustTorque,
  standingState,
  strutLength,
  teethToBackOff,
  UNHELD,
  wearOn,
} from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { rig, brake, state: fresh } = quay();
/** The teaching tables allow 0.01 mm on clearance, and its figures are rounded to 0.01. */
const TABLE = { abs: 0.015 };
const second = standingState(rig, 'Second set');
const worn = standingState(rig, 'Worn-in');
const back = (state: BrakeState, teeth: number): BrakeState => ({
  ...state,
  tooth: state.tooth - teeth,
});

/**
 * The same by hand: new linings of the drum's first radius turn about their pins until the strut
 * fits; two unknown turns are one by symmetry only where the seats are alike, so the front's is
 * found by bisection and the rear's by the rule that both centres reach equally far.
 */
function byHand(tooth: number, bore: number, lip: number) {
  const R = 100;
  const pin = [-16, -78] as const;
  const seat = [-59.2, 52] as const;
  const seatRear = [45, 52] as const;
  const turn = (p: readonly [number, number], a: number, c: readonly [number, number]) => {
    const [x, y] = [p[0] - c[0], p[1] - c[1]];
    return [
      c[0] + Math.cos(a) * x - Math.sin(a) * y,
      c[1] + Math.sin(a) * x + Math.cos(a) * y,
    ] as const;
  };
  // Mirror images: both turn alike outward, and the centres reach alike.
  const length = (a: number): number => {
    const f = turn(seat, a, pin);
    const r = turn(seatRear, -a, [16, -78]);
    return Math.hypot(r[0] - f[0], r[1] - f[1]);
  };
  let [low, high] = [-0.1, 0.1];
  for (let n = 0; n < 60; n++) {
    const a = (low + high) / 2;
    if (length(a) < strutLength(brake, tooth)) low = a;
    else high = a;
  }
  // Positive turns the front shoe counter-clockwise, outward at the toe.
  const at = (degrees: number): number => {
    const face = [R * Math.cos((degrees * Math.PI) / 180), R * Math.sin((degrees * Math.PI) / 180)];
    const p = turn([face[0] as number, face[1] as number], low, pin);
    return Math.hypot(p[0], p[1]) - lip;
  };
  return { toe: at(125 + 3.2), centre: at(180), heel: at(235 - 3.2), height: bore - lip };
}

describe('lip and linings by hand', () => {
  for (const tooth of [0, 2, 5, 15]) {
    it(`new linings in a drum of Ø 200.60, tooth ${tooth}`, () => {
      const fit = lipFit(rig, { ...freshState(brake, 100.3), tooth });
      const hand = byHand(tooth, 100.3, 100);
      near(fit.height, hand.height, { abs: 1e-12 }, 'height');
      // The bed knows faces at element middles; straight lines between: under 0.002 mm off.
      const close = { abs: 0.002, rel: 0.001 };
      near(fit.front.toe, hand.toe, close, 'toe');
      near(fit.front.centre, hand.centre, close, 'centre');
      near(fit.front.heel, hand.heel, close, 'heel');
      near(fit.rear.toe, hand.toe, close, 'rear toe');
      expect(fit.greatest).toBeGreaterThanOrEqual(Math.max(fit.toe, fit.centre, fit.heel));
    });
  }

  it('a lining end that is not cut back catches where it is nearest to the lip: at its very end', () => {
    const square = quay((s) => {
      s.shoes.front.lining.cutEdgeArc = 0;
      s.shoes.rear.lining.cutEdgeArc = 0;
    });
    const state: BrakeState = { ...second };
    const whole = lipFit(square.rig, state);
    const cut = lipFit(rig, state);
    // Second set: the heel's overlap rises on to the end.
    expect(whole.heel).toBeGreaterThan(cut.heel + 0.01);
    near(whole.front.centre, cut.front.centre, { abs: 1e-9 });
  });

  it('no wear of the drum, no lip; a hot drum carries its lip out with it', () => {
    expect(lipHeight(rig, fresh)).toBe(0);
    const cold = { ...fresh, drumRadius: 100.45 };
    near(lipHeight(rig, cold), 0.45, { abs: 1e-9 });
    // Both radii grow by 11e-6 a kelvin.
    near(lipHeight(rig, { ...cold, temperature: 220 }), 0.45 * (1 + 11e-6 * 200), { abs: 1e-9 });
  });

  it('a pair that stands aside: one shoe out by it, the other in by it', () => {
    const straight = lipFit(rig, second);
    const aside = lipFit(rig, second, 0.1);
    near(aside.front.centre - straight.front.centre, 0.1, { abs: 0.002 }, 'front');
    near(aside.rear.centre - straight.rear.centre, -0.1, { abs: 0.002 }, 'rear');
    near(
      (aside.front.centre - aside.rear.centre - straight.front.centre + straight.rear.centre) / 2,
      0.1,
      { abs: 1e-8 },
      'half the difference',
    );
  });
});

describe('teaching tables, drum off', () => {
  it('second set: overlap at toe, centre and heel', () => {
    const fit = lipFit(rig, second);
    expect(second.tooth).toBe(11);
    near(fit.height, 0.45, { abs: 0.01 }, 'lip');
    near(fit.front.toe, 0.16, TABLE, 'toe');
    near(fit.front.centre, 0.09, TABLE, 'centre');
    near(fit.front.heel, 0.29, TABLE, 'heel');
  });

  it('second set: five teeth back, the heel last', () => {
    const { teeth, rows } = teethToBackOff(rig, second);
    expect(teeth).toBe(5);
    [0.29, 0.22, 0.15, 0.08, 0.02].forEach((heel, n) => {
      near(rows[n]?.heel ?? Number.NaN, heel, TABLE, `${n} back`);
    });
    expect(rows[5]?.greatest).toBeLessThan(0);
    expect(lipFit(rig, back(second, 4)).greatest).toBeGreaterThan(0);
  });

  it('lever 3 mm off its stop: six', () => {
    const off = { ...second, leverOffStop: 3 };
    near(lipFit(rig, off).heel, 0.35, TABLE, 'heel');
    near(lipFit(rig, back(off, 5)).heel, 0.01, TABLE, 'after five');
    expect(teethToBackOff(rig, off).teeth).toBe(6);
  });

  it('first set at 59 500 km: lip 0.25, 0.12 at the heel, two teeth', () => {
    const first = wearOn(rig, fresh, { distance: 59500 * KM }).state;
    const fit = lipFit(rig, first);
    near(fit.height, 0.25, { abs: 0.01 }, 'lip');
    near(fit.heel, 0.12, TABLE, 'heel');
    near(fit.greatest, fit.heel, { abs: 1e-9 });
    const r = removal(rig, first);
    expect(r.backOff.teeth).toBe(2);
    expect(r.heldBy).toBe('lip');
    expect(r.signs).toMatchObject({ turns: 'freely', rocks: true, slides: 'a little' });
  });

  it('rust at the hub on the worn-in brake: nothing overlaps, 0.06 in hand', () => {
    const r = removal(rig, worn, { ...UNHELD, hubRust: true });
    near(r.fit.greatest, -0.06, TABLE);
    expect(r.heldBy).toBe('rust at the hub');
    expect(r.signs).toMatchObject({
      turns: 'freely',
      rocks: false,
      slides: 'not at all',
      slide: 0,
    });
  });

  it('lever 6 mm off its stop: 0.06 overlap, the cable slackened clears it by 0.06', () => {
    const r = removal(rig, { ...worn, leverOffStop: 6 });
    near(r.fit.greatest, 0.06, TABLE, 'overlap');
    near(r.leverHome, -0.06, TABLE, 'lever home');
    expect(r.heldBy).toBe('lever off its stop');
    expect(r.signs).toMatchObject({ turns: 'lightly', rocks: true, slides: 'a little' });
  });

  it('new shoes on Ø 200.60 with the strut left at tooth 15: 1.9 too big; at tooth 2 passes with 0.01', () => {
    const relined = freshState(brake, 100.3);
    near(lipFit(rig, { ...relined, tooth: 15 }).centre, 1.9, { abs: 0.05 });
    const two = lipFit(rig, { ...relined, tooth: 2 });
    near(two.greatest, -0.01, { abs: 0.01 });
    expect(two.greatest).toBeLessThan(0);
    expect(lipFit(rig, { ...relined, tooth: 3 }).greatest).toBeGreaterThan(0);
    // What stands behind the lip when it just passes.
    near(two.height - two.centre, 0.31, { abs: 0.01 }, 'gap');
    expect(teethToBackOff(rig, { ...relined, tooth: 15 }).teeth).toBe(13);
  });
});

describe('other locks', () => {
  it('linings rusted on: shear strength × both areas × radius, once', () => {
    const r = removal(rig, worn, { ...UNHELD, liningsRusted: true });
    // 0.1 MPa on two linings of 32 mm × 110°, each face as far from the axis as its wear leaves it, at the
    // bore's radius.
    const face = (side: 'front' | 'rear'): number =>
      100 - worn.wear[side].reduce((a, b) => a + b, 0) / worn.wear[side].length;
    const arc = (110 * Math.PI) / 180;
    const hand = 0.1 * 32 * arc * (face('front') + face('rear')) * worn.drumRadius;
    near(rustTorque(rig, worn), hand, { rel: 1e-9 });
    expect(r.heldBy).toBe('linings rusted on');
    expect(r.signs).toMatchObject({ turns: 'not at all', rocks: false, slides: 'not at all' });
  });

  it('stepped two teeth too far: it is the adjuster, and it drags', () => {
    const r = removal(rig, { ...worn, tooth: worn.tooth + 2 });
    expect(r.heldBy).toBe('adjuster too far out');
    expect(r.signs.turns).toBe('lightly');
    expect(r.tooFar).toBe(true);
    expect(removal(rig, second).tooFar).toBe(false);
  });

  it('lightly, stiffly, not at all: told by the torque that hands have, 200 N at the tyre', () => {
    const turns = (torque: number): string => {
      // A press at which the drum asks for so much: the rest pose with the lever drawn further and further.
      let [low, high] = [6, 9];
      for (let n = 0; n < 30; n++) {
        const off = (low + high) / 2;
        if (removal(rig, { ...worn, leverOffStop: off }).signs.forward < torque) low = off;
        else high = off;
      }
      return removal(rig, { ...worn, leverOffStop: high }).signs.turns;
    };
    expect(turns(5e3)).toBe('lightly');
    expect(turns(45e3)).toBe('stiffly');
    // 200 N × 270 mm = 54 N·m.
    expect(turns(56e3)).toBe('not at all');
  });

  it('three teeth too far: the linings press, no hand turns it or pulls it', () => {
    const r = removal(rig, { ...worn, tooth: worn.tooth + 3 });
    expect(r.heldBy).toBe('adjuster too far out');
    expect(r.signs).toMatchObject({ turns: 'not at all', slides: 'not at all', rocks: false });
  });

  it('shoes not centred: centring alone is enough', () => {
    const state = back(second, 5);
    expect(removal(rig, state).heldBy).toBe(null);
    const r = removal(rig, state, { ...UNHELD, aside: 0.15 });
    expect(r.heldBy).toBe('shoes not centred');
    expect(r.centred).toBeLessThan(0);
  });

  it('two locks: the one felt first in front, and the other stays when it is gone', () => {
    const r = removal(rig, second, { ...UNHELD, hubRust: true });
    expect(r.locks).toEqual(['rust at the hub', 'lip']);
    expect(r.signs.slides).toBe('not at all');
    expect(removal(rig, second).locks).toEqual(['lip']);
  });

  describe('forces that are left hold before teeth do', () => {
    const ill = (change: Partial<BrakeState['condition']>, on = worn): BrakeState => ({
      ...on,
      condition: { ...on.condition, ...change },
    });
    // The worn-in brake passes its lip with 0.06 mm in hand: what holds it is the force alone.
    const forces: readonly [ForceLock, Partial<BrakeState['condition']>][] = [
      ['pressure in the line', { keptPressure: 0.8 }],
      ['cable keeps its pull', { keptCable: 40 }],
      ['part leans on a shoe', { lean: { front: 100, rear: 0 } }],
    ];
    for (const [lock, change] of forces) {
      it(`${lock}: it is named, no tooth is asked for, and letting it go frees the drum`, () => {
        const state = ill(change);
        const r = removal(rig, state);
        expect(r.locks).toEqual([lock]);
        expect(r.backOff.teeth).toBe(0);
        const after = removal(rig, letGo(state, lock));
        expect(after.heldBy).toBe(null);
        near(after.fit.greatest, -0.06, TABLE);
      });
      it(`${lock} over a lip that would catch: both, the force first`, () => {
        const r = removal(rig, ill(change, second));
        expect(r.locks).toEqual([lock, 'lip']);
        expect(r.backOff.teeth).toBe(5);
      });
    }
    it('two forces: both are named; a pressure that the springs hold back is none', () => {
      expect(removal(rig, ill({ keptPressure: 0.8, keptCable: 40 })).locks).toEqual([
        'pressure in the line',
        'cable keeps its pull',
      ]);
      // The springs let the linings touch at 5.9 bar on the worn-in brake: 3 bar do nothing.
      expect(removal(rig, ill({ keptPressure: 0.3 })).heldBy).toBe(null);
      expect(removal(rig, ill({ keptPressure: 0.3 }, second)).locks).toEqual(['lip']);
    });
  });

  it('a brake that nothing holds comes off, and is the only one that does', () => {
    const r = removal(rig, worn);
    expect(r.heldBy).toBe(null);
    expect(r.signs).toMatchObject({ turns: 'freely', rocks: true, slides: 'off' });
  });
});

describe('pulling against the lip', () => {
  const fit = lipFit(rig, second);
  it('the force goes through both shoes to their pins', () => {
    const f = lipForce(brake, fit, 5000);
    near(f.onShoe, 2500, { abs: 1e-9 });
    // Pin of 4 mm: 2500 / (π/4 · 16) = 199 MPa.
    near(f.pinStress, 199, { abs: 0.1 });
    expect(f.solid).toBe(true);
    near(f.edgePressure * Math.min(fit.front.area, fit.rear.area), 2500, { rel: 1e-9 });
  });

  it('bears on overlap × arc: a triangle from nothing to h has h/2 of its length', () => {
    // Second set four teeth back: only the heel's last degrees are caught, nearly a straight rise.
    const four = lipFit(rig, back(second, 4));
    const o = four.front.overlap;
    const first = o.findIndex((x) => x > 0);
    const a = four.front.angle;
    const rise = (o[first] as number) - (o[first - 1] as number);
    const zero =
      (a[first] as number) -
      ((o[first] as number) / rise) * ((a[first] as number) - (a[first - 1] as number));
    const arc = ((a[a.length - 1] as number) - zero) * second.drumRadius;
    near(four.front.area, (arc * four.front.heel) / 2, { rel: 0.05 });
  });

  it('both hands: the shoe comes off its pads against its spring until the coils stand', () => {
    // Friction 12 N on both sides at 0.15: 40 N of preload; (100 − 40) / 10 = 6, but 5.2 is all.
    const f = lipForce(brake, fit, 200);
    near(f.give, 5.2, { abs: 1e-9 });
    near(lipForce(brake, fit, 120).give, 2, { abs: 1e-9 });
    near(removal(rig, second).signs.slide, 0.8 + 5.2, { abs: 1e-9 });
  });

  it('nothing caught, nothing carried', () => {
    const f = lipForce(brake, lipFit(rig, worn), 5000);
    expect(f.onShoe).toBe(0);
    expect(Number.isNaN(f.edgePressure)).toBe(true);
  });
});

describe('which is mine', () => {
  /** The answers that someone would give who stands before this brake. */
  const answersFor = (state: BrakeState, held: Held): DrumAnswers => {
    const r = removal(rig, state, held);
    const eased = removal(rig, { ...state, leverOffStop: 0 }, held);
    const { turns, slides, forward, backward } = r.signs;
    return {
      // Somebody feels one way stiffer than the other from about twice on (from memory).
      turns:
        Math.max(forward, backward) > 2 * Math.min(forward, backward) &&
        turns !== 'freely' &&
        turns !== 'not at all'
          ? 'one way'
          : turns === 'stiffly'
            ? 'lightly'
            : turns,
      slides: slides === 'off' ? 'a little' : slides,
      slack: state.leverOffStop === 0 || eased.heldBy === r.heldBy ? 'no change' : 'helps',
    };
  };
  const ailing = (change: Partial<BrakeState['condition']>): BrakeState => ({
    ...worn,
    condition: { ...worn.condition, ...change },
  });
  const cases: readonly [string, BrakeState, Held][] = [
    ['lip', second, UNHELD],
    ['lever off its stop', { ...worn, leverOffStop: 6 }, UNHELD],
    ['rust at the hub', worn, { ...UNHELD, hubRust: true }],
    ['linings rusted on', worn, { ...UNHELD, liningsRusted: true }],
    ['adjuster too far out', { ...worn, tooth: 7 }, UNHELD],
    ['shoes not centred', back(second, 5), { ...UNHELD, aside: 0.15 }],
    ['pressure in the line', ailing({ keptPressure: 0.8 }), UNHELD],
    ['cable keeps its pull', ailing({ keptCable: 40 }), UNHELD],
    ['part leans on a shoe', ailing({ lean: { front: 100, rear: 0 } }), UNHELD],
  ];
  for (const [lock, state, held] of cases) {
    it(`${lock}: it is what holds, and its signs lead to it`, () => {
      expect(removal(rig, state, held).heldBy).toBe(lock);
      const told = likelyLocks(answersFor(state, held));
      // Linings that are rusted on, pressed on by a force, or held out by teeth feel alike to hands: then
      // the cheaper release stands first.
      expect(told.slice(0, 4)).toContain(lock);
    });
  }

  it('who cannot tell about the cable is sent to the cable first where it drags', () => {
    const told = likelyLocks({ turns: 'lightly', slides: 'a little', slack: 'cannot tell' });
    expect(told[0]).toBe('lever off its stop');
    expect(told).toContain('adjuster too far out');
  });

  it('free to turn and not a hair to pull: the hub alone', () => {
    expect(likelyLocks({ turns: 'freely', slides: 'not at all', slack: 'no change' })[0]).toBe(
      'rust at the hub',
    );
  });
});

describe('any scene', () => {
  it('sizes along the axle may be left out; a lining cannot be cut back over half its arc', () => {
    expect(quay((s) => Reflect.deleteProperty(s, 'across')).brake.across.lipGap).toBe(0.8);
    expect(() =>
      quay((s) => {
        s.shoes.front.lining.cutEdgeArc = 44;
        s.shoes.front.lining.to = 200;
      }),
    ).toThrow('cutEdgeArc');
  });
});
