import { describe, expect, it } from 'vitest';
import type { Lining } from '../../sim/brake/types.ts';
import { buildBed, wornBed } from '../../sim/contact/bed.ts';
import { radiusTowards, roundDrum, runningDrum } from '../../sim/contact/drum.ts';
import {
  FOLLOWS,
  type Friction,
  HOLDS,
  type Sticking,
  slopes,
  stickOn,
} from '../../sim/contact/friction.ts';
import { makeGather, tangentIsKnown } from '../../sim/contact/gather.ts';
import {
  forgetTangent,
  holdOnDrum,
  makeRub,
  rub,
  rubsAlike,
  type ShoeStance,
  torqueOnDrum,
} from '../../sim/contact/rub.ts';
import { stickForce } from '../../sim/contact/stick.ts';
import { createRig } from '../../sim/index.ts';
import { chance } from '../../sim/math/chance.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const unit = (degrees: number): readonly [number, number] => [
  Math.cos((degrees * Math.PI) / 180),
  Math.sin((degrees * Math.PI) / 180),
];

describe('a drum out of round', () => {
  // By hand: off centre by 0.2 mm and oval by ±0.12 mm, turned by 30°. Along 30° and 210° it is widest, across
  // narrowest, half way between as new; at 50° it is 100 + 0.12 · cos 40° = 100.0919 mm.
  const drum = runningDrum(100, 0.2, 0.12, ...unit(30));
  it('has its centre aside and its radius by the direction', () => {
    near(drum.x, 0.2 * 0.8660254, { abs: 1e-7 }, 'x');
    near(drum.y, 0.1, { abs: 1e-12 }, 'y');
    for (const [degrees, radius] of [
      [30, 100.12],
      [210, 100.12],
      [120, 99.88],
      [75, 100],
      [-15, 100],
      [50, 100.0919253],
    ] as const)
      near(radiusTowards(drum, ...unit(degrees)), radius, { abs: 1e-6 }, `${degrees}°`);
  });
  it('is round where nothing is wrong with it', () => {
    for (const degrees of [0, 40, 135])
      expect(radiusTowards(roundDrum(100), ...unit(degrees))).toBe(100);
    expect([roundDrum(100).x, roundDrum(100).y]).toEqual([0, 0]);
  });
  it('turns under the friction at each face’s own distance: 3 N at 100 mm less 1 N at 50 mm', () => {
    const rub = makeRub(3, 1);
    rub.friction.set([3, -1, 0]);
    rub.faceX.set([100.5, 0.5, 70]);
    rub.faceY.set([0.2, 50.2, 0]);
    near(torqueOnDrum(rub, { ...roundDrum(100), x: 0.5, y: 0.2 }), -250, { abs: 1e-9 }, 'N·mm');
  });
});

describe('a bristle of the lining', () => {
  // 1 000 N/mm, pressed 0.01 mm into a drum of 100 mm: 10 N, of which friction can be 4 N at 0.4. Its shear
  // stiffness is 0.4 of that: 400 N/mm.
  const stick = (change: Partial<Sticking>, drum = roundDrum(100), y = 0): number => {
    const law: Sticking = {
      kind: 'stick',
      mu: 0.4,
      turn: 0,
      deflection: Float64Array.of(0),
      beforeX: Float64Array.of(100.005 + drum.x),
      beforeY: Float64Array.of(drum.y),
      ...change,
    };
    return stickOn(law, 0, drum, 100.01, y, Math.hypot(100.01, y), 100, 1000);
  };
  const told = (): readonly [number, number] => [
    slopes[FOLLOWS] as number,
    slopes[HOLDS] as number,
  ];

  it('stretches by what the drum runs ahead: 0.001 mm are 0.4 N', () => {
    near(stick({ turn: 1e-5 }), 0.40004, { abs: 1e-9 });
    expect(told()).toEqual([0, -400]);
    near(stick({ turn: -1e-5 }), -0.40004, { abs: 1e-9 });
    // From a deflection of 0.002 mm: 0.8 N more; and the same on a drum whose centre is elsewhere.
    const held = Float64Array.of(0.002);
    near(stick({ turn: 1e-5, deflection: held }), 1.20004, { abs: 1e-9 });
    near(stick({ turn: 1e-5 }, { ...roundDrum(100), x: 0.5, y: -0.3 }), 0.40004, { abs: 1e-9 });
  });
  it('less what its own face went along with it', () => {
    // The drum stands; the face goes 0.001 mm up and 0.005 mm out. Along the drum, where it is then, that is
    // 0.001 − 0.005 · 0.001/100.01 mm: it is held back by 400 times that.
    near(stick({}, roundDrum(100), 0.001), -0.39998, { abs: 1e-8 });
  });
  it('slips at 4 N, either way, and follows the normal force then', () => {
    expect(stick({ turn: 1e-3 })).toBeCloseTo(4, 9);
    near(told()[0], 400, { abs: 1e-9 }, 'follows');
    expect(told()[1]).toBe(0);
    expect(stick({ turn: -1e-3 })).toBeCloseTo(-4, 9);
    near(told()[0], -400, { abs: 1e-9 }, 'follows');
  });
  it('that was clear before the step rubs for the part of it after the touch', () => {
    // 0.01 mm clear before and 0.01 mm deep after: half the way. d/d(depth) of p/(p + c) is c/(p + c)² = 25.
    const before = { beforeX: Float64Array.of(99.99), turn: 1e-5 };
    near(stick(before), 0.20002, { abs: 1e-9 });
    near(told()[0], 400 * 1.0001e-3 * 25, { abs: 1e-6 }, 'follows');
    near(told()[1], -200, { abs: 1e-9 }, 'holds');
  });
});

describe('the same bristle anywhere on a drum whose centre is elsewhere', () => {
  it('rubs alike, before and after the touch', () => {
    // Turned by 40° about the centre: 0.01 mm clear before, 0.01 mm deep after, as above.
    const [c, s] = unit(40);
    const drum = { ...roundDrum(100), x: 0.5, y: -0.3 };
    const law: Sticking = {
      kind: 'stick',
      mu: 0.4,
      turn: 1e-5,
      deflection: Float64Array.of(0),
      beforeX: Float64Array.of(99.99 * c + drum.x),
      beforeY: Float64Array.of(99.99 * s + drum.y),
    };
    near(stickOn(law, 0, drum, 100.01 * c, 100.01 * s, 100.01, 100, 1000), 0.20002, { abs: 1e-9 });
  });
});

describe('a lining whose drum turns a little otherwise in a step', () => {
  const { brake } = quay();
  const { front } = brake.shoes;
  const drum = roundDrum(brake.drum.radiusNew);
  const bed = buildBed(front.lining, brake.drum, front.anchor.at, 48);
  const worn = wornBed(bed, new Float64Array(48));
  const stance = (angle: number): ShoeStance => ({
    freedoms: 1,
    at: 0,
    q: Float64Array.of(angle),
    slopes: true,
    cos: Math.cos(angle),
    sin: Math.sin(angle),
  });
  // The shoe turns by a little out of 0.2 mm of press; its bristles are wound as its seed says.
  const at = (seed: number) => {
    const random = chance(seed);
    const out = makeRub(48, 1);
    const law: Sticking = {
      kind: 'stick',
      mu: 0.4,
      turn: (random() - 0.5) * 10 ** (-1 - 3 * random()),
      deflection: Float64Array.from({ length: 48 }, () => (random() - 0.5) * 0.02),
      beforeX: new Float64Array(48),
      beforeY: new Float64Array(48),
    };
    rub(worn, stance(pressesAt * 0.0015), drum, { kind: 'slide', mu: 0, sense: 0 }, out);
    law.beforeX.set(out.faceX);
    law.beforeY.set(out.faceY);
    const angle = pressesAt * (0.0015 + 0.001 * random());
    const ask = (turn: number): number => {
      law.turn = turn;
      rub(worn, stance(angle), drum, law, out);
      return torqueOnDrum(out, drum);
    };
    return { law, out, ask, random, turn: law.turn };
  };
  // Which way the shoe goes out: the one in which it bears.
  const pressesAt = [1, -1].find((way) => {
    const out = makeRub(48, 1);
    rub(worn, stance(way * 0.0015), drum, { kind: 'slide', mu: 0, sense: 0 }, out);
    return out.normal.some((n) => n > 0);
  }) as number;

  it('rubs the very same where it is said to, and else some bristle holds or would', () => {
    let alike = 0;
    for (let seed = 1; seed <= 400; seed++) {
      const { out, ask, random, turn } = at(seed);
      const before = ask(turn);
      const change = (random() - 0.5) * 10 ** (-2 - 3 * random());
      const surely = rubsAlike(drum, change, out);
      const after = ask(turn + change);
      if (!surely) continue;
      alike++;
      near(after, before, { rel: 1e-12 }, `seed ${seed}`);
    }
    expect(alike).toBeGreaterThan(40);
    expect(alike).toBeLessThan(360);
  });

  it('is held by the bristles that stick, as the torque’s difference quotient says', () => {
    let held = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const { law, out, ask, turn } = at(seed);
      const slight = 1e-10;
      const slope = (ask(turn + slight) - ask(turn - slight)) / (2 * slight);
      ask(turn);
      const hold = holdOnDrum(drum, law, out);
      if (hold > 0) held++;
      near(hold, -slope, { abs: 1e-4 * Math.abs(slope) + 1 }, `seed ${seed}, N·mm/rad`);
    }
    expect(held).toBeGreaterThan(20);
  });
});

describe('the lining as a bed', () => {
  const { lining } = quay().brake.shoes.front;
  const { drum } = quay().brake;
  const arc: Lining = {
    ...lining,
    from: (30 * Math.PI) / 180,
    to: (130 * Math.PI) / 180,
    width: 40,
    groundRadius: 99,
    chamferArc: 0,
    chamferDepth: 0,
    thicknessNew: 4.5,
    modulus: 200,
  };
  const bed = buildBed(arc, drum, [-16, -78], 50);

  it('is ground round its own middle: 80° touches, 31° lies 0.347 mm lower', () => {
    // Plane trigonometry at 49° from the middle: 1 · cos 49° + sqrt(99² − sin² 49°) = 99.65318 mm.
    near(bed.face[0] as number, 99.65318, { abs: 1e-5 }, '31°');
    near(bed.face[49] as number, 99.65318, { abs: 1e-5 }, '129°');
    // The two elements at the middle stand 1° off it.
    near(bed.face[24] as number, 99.99985, { abs: 1e-5 }, 'middle');
    near(bed.thickness[0] as number, 4.5 - 0.34682, { abs: 1e-5 }, 'thickness');
  });
  it('has elements of 40 mm by a fiftieth of 100° at 100 mm: 139.6 mm²', () => {
    // The middle stands at 99.99985 mm, the ends at 99.65318 mm.
    const { area } = wornBed(bed, new Float64Array(50));
    near(area[24] as number, 139.62634, { abs: 3e-4 }, 'middle');
    near(area[0] as number, 139.1421, { abs: 1e-4 }, 'end');
  });
  it('goes back and stiffens as it wears, down to the last twentieth of a millimetre', () => {
    const wear = new Float64Array(50).fill(0.5);
    wear[49] = 4.48;
    const worn = wornBed(bed, wear);
    // 31°: 99.15318 mm from the axis, its pin at (−16, −78).
    near(worn.x[0] as number, 99.15318 * Math.cos((31 * Math.PI) / 180) + 16, { abs: 1e-5 }, 'x');
    near(worn.y[0] as number, 99.15318 * Math.sin((31 * Math.PI) / 180) + 78, { abs: 1e-5 }, 'y');
    // 40 mm by 2° at that radius: 138.44394 mm²; at the other end, 95.17318 mm from the axis, 132.8867.
    near(worn.area[0] as number, 138.44394, { abs: 1e-4 }, 'area');
    // E·A/t: 200 · 138.44394 / 3.65318 N/mm, and at the other end over 0.05 mm.
    near(worn.stiffness[0] as number, 7579.37, { abs: 0.1 }, 'stiffness');
    near(worn.stiffness[49] as number, 531547, { abs: 1 }, 'worn through');
    // Softer by 0.01 mm/MPa: A / (t/E + 0.01).
    near(wornBed(bed, wear, 0.01).stiffness[0] as number, 4897.91, { abs: 0.05 }, 'softened');
  });
  it('drags a worn face along less, as it lies nearer to the steel that turns', () => {
    const modes = {
      count: 2,
      face: new Float64Array(50 * 2 * 8).fill(3),
      turning: new Float64Array(50 * 8).fill(2),
    };
    const wear = new Float64Array(50);
    wear[7] = 0.5;
    const { modes: worn } = wornBed({ ...bed, modes }, wear);
    // 3 − 0.5 · 2, of each mode along the tangent; elsewhere and else as it was.
    const row = 7 * 16;
    expect(Array.from(worn?.face.subarray(row, row + 16) ?? [])).toEqual([
      ...[3, 3, 3, 3, 3, 3, 3, 3],
      ...[2, 2, 3, 3, 3, 3, 3, 3],
    ]);
    expect(worn?.face.filter((v) => v !== 3).length).toBe(2);
    expect([worn?.count, worn?.turning]).toEqual([2, modes.turning]);
  });
});

describe('dry friction at one place', () => {
  const out = { force: 0, slope: 0, anchor: 0 };
  it('pulls back by its stiffness, up to its limit, and drags its anchor along', () => {
    // 2 000 N/mm, at most 30 N: it gives way at 0.015 mm.
    expect({ ...stickForce(1.01, 1, 2000, 30, out) }).toEqual({
      force: expect.closeTo(-20, 9),
      slope: -2000,
      anchor: 1,
    });
    expect({ ...stickForce(1.1, 1, 2000, 30, out) }).toEqual({
      force: -30,
      slope: 0,
      anchor: expect.closeTo(1.085, 12),
    });
    expect({ ...stickForce(0.9, 1, 2000, 30, out) }).toEqual({
      force: 30,
      slope: 0,
      anchor: expect.closeTo(0.915, 12),
    });
  });
  it('without a limit pulls at nothing and goes along', () => {
    expect({ ...stickForce(1.1, 1, 2000, 0, out) }).toEqual({ force: 0, slope: 0, anchor: 1.1 });
    expect({ ...stickForce(1.1, 1, 2000, -1, out) }).toEqual({ force: 0, slope: 0, anchor: 1.1 });
  });
});

describe('the tangent of a lining', () => {
  const { brake } = quay();
  const { front } = brake.shoes;
  const bed = buildBed(front.lining, brake.drum, front.anchor.at, 24);
  const worn = wornBed(bed, new Float64Array(24));
  // The drum stands a little off, so that a shift of the shoe is no shift along the axes of its elements.
  const drum = { ...roundDrum(brake.drum.radiusNew), x: 0.05, y: -0.03 };
  const press = {
    kind: 'press',
    mu: 0.4,
    start: Float64Array.from({ length: 24 }, (_, i) => 0.3 - i / 40),
  } as const;
  const stick = (turn: number): Sticking => ({
    kind: 'stick',
    mu: 0.4,
    turn,
    deflection: Float64Array.from({ length: 24 }, (_, i) => 0.001 * Math.sin(i)),
    beforeX: Float64Array.from(
      { length: 24 },
      (_, i) => 100.01 * Math.cos(bed.angle[i] as number) + 0.05,
    ),
    beforeY: Float64Array.from(
      { length: 24 },
      (_, i) => 100.01 * Math.sin(bed.angle[i] as number) - 0.03,
    ),
  });
  it.each([
    ['sliding on', { kind: 'slide', mu: 0.4, sense: 1 } as const],
    ['sliding back', { kind: 'slide', mu: 0.4, sense: -1 } as const],
    ['pressed on a standing drum', press],
    // A bristle that holds leaves out that the drum's tangent turns as the face goes: some tenths of a mm over 100.
    ['held by its bristles', stick(2e-5), 2e-3],
    ['slipping', stick(0.01)],
  ])(
    'is the difference quotient of its force, with one freedom and with three: %s',
    (_, law, exact = 1e-6) => {
      for (const freedoms of [1, 3] as const) {
        const out = makeRub(24, freedoms);
        const at = (q: readonly number[]) => {
          const turn = q.at(-1) as number;
          forgetTangent(out);
          const stance: ShoeStance = {
            ...{ freedoms, at: 0, q: Float64Array.from(q), slopes: true },
            ...{ cos: Math.cos(turn), sin: Math.sin(turn) },
          };
          rub(worn, stance, drum, law, out);
          return {
            force: [...out.force],
            tangent: [...out.tangent],
            bears: out.normal.filter((n) => n > 0).length,
          };
        };
        // 0.2 mm outward, and turned so that the faces go on a little: some of them bear, whichever way is out.
        const turn = freedoms === 3 ? 1e-3 : [2e-3, -2e-3].find((t) => at([t]).bears > 0);
        const pose = freedoms === 3 ? [-0.2, 0.02, turn as number] : [turn as number];
        const here = at(pose);
        expect(here.bears).toBeGreaterThan(6);
        const greatest = Math.max(...here.tangent.map(Math.abs));
        pose.forEach((_, l) => {
          const step = l === freedoms - 1 ? 1e-8 : 1e-6;
          const by = (d: number) => at(pose.map((q, j) => (j === l ? q + d : q))).force;
          const [up, down] = [by(step), by(-step)];
          pose.forEach((_, j) => {
            const quotient = ((up[j] as number) - (down[j] as number)) / (2 * step);
            near(
              here.tangent[j * freedoms + l] as number,
              quotient,
              { abs: exact * greatest },
              `${freedoms}: ${j} ${l}`,
            );
          });
        });
      }
    },
  );
});

describe('a tangent that is kept', () => {
  it('serves while the turn and what bears, and how, stay; never where a bristle holds', () => {
    const g = makeGather(3, 4);
    const now = [1, 0, 2, 1];
    g.touch.set(now);
    g.knownTouch.set(now);
    expect(tangentIsKnown(g, 0.1)).toBe(false);
    g.knownTurn = 0.1;
    for (const turn of [0.1, 0.1009, 0.0991]) expect(tangentIsKnown(g, turn)).toBe(true);
    for (const turn of [0.1011, 0.0989, -0.1]) expect(tangentIsKnown(g, turn)).toBe(false);
    for (const place of [0, 3]) {
      g.touch.set(now);
      g.touch[place] = 2;
      expect(tangentIsKnown(g, 0.1)).toBe(false);
    }
    g.touch.set([1, 0, 3, 1]);
    g.knownTouch.set([1, 0, 3, 1]);
    expect(tangentIsKnown(g, 0.1)).toBe(false);
  });

  const { brake } = quay();
  const slide = { kind: 'slide', mu: 0.4, sense: 1 } as const;
  const drum = roundDrum(brake.drum.radiusNew);
  const stance = (freedoms: 1 | 3, q: readonly number[], asked = true): ShoeStance => {
    const turn = q[freedoms - 1] as number;
    return {
      ...{ freedoms, at: 0, q: Float64Array.from(q), slopes: asked },
      ...{ cos: Math.cos(turn), sin: Math.sin(turn) },
    };
  };

  it('is made anew for a shoe that slides around its drum, and left alone where none is asked', () => {
    const bed = buildBed(brake.shoes.front.lining, brake.drum, brake.shoes.front.anchor.at, 24);
    const worn = wornBed(bed, new Float64Array(24));
    const [out, fresh] = [makeRub(24, 3), makeRub(24, 3)];
    rub(worn, stance(3, [-0.2, 0, 0]), drum, slide, out);
    const before = [...out.tangent];
    rub(worn, stance(3, [-0.2, 0, 5e-4], false), drum, slide, out);
    expect([...out.tangent]).toEqual(before);
    rub(worn, stance(3, [-0.2, 0, 5e-4]), drum, slide, out);
    rub(worn, stance(3, [-0.2, 0, 5e-4]), drum, slide, fresh);
    expect([...out.tangent]).toEqual([...fresh.tangent]);
    expect([...out.tangent]).not.toEqual(before);
    // How each element bears: 1 dragged on, 2 dragged back, 3 held, 0 clear of the drum.
    const some = [-0.05, 0.2, 0];
    const touches = (law: Friction, q: readonly number[] = some) => {
      rub(worn, stance(3, q), drum, law, fresh);
      return [...new Set(fresh.gather.touch)].sort();
    };
    // Up and outward a part of the arc leaves the drum.
    rub(worn, stance(3, some), drum, slide, out);
    const all = {
      deflection: new Float64Array(24),
      beforeX: out.faceX.slice(),
      beforeY: out.faceY.slice(),
    };
    expect(touches(slide)).toEqual([0, 1]);
    expect(touches({ ...slide, sense: -1 })).toEqual([0, 2]);
    expect(touches({ ...slide, mu: 0 })).toEqual([0, 1]);
    expect(touches({ kind: 'stick', mu: 0.4, turn: 1e-7, ...all })).toEqual([0, 3]);
    expect(touches(slide, [0.3, 0, 0])).toEqual([0]);
  });

  it('serves a hinged shoe that bends over a thousandth of a radian', () => {
    const { front } = createRig(brake, { flexible: true });
    const worn = wornBed(front.bed, new Float64Array(front.bed.count));
    const out = makeRub(front.bed.count, front.n);
    const at = (turn: number) => {
      rub(worn, stance(1, [turn, ...new Array<number>(front.modes).fill(0)]), drum, slide, out);
      return [...out.tangent];
    };
    const out1 = front.opening * 0.012;
    const kept = at(out1);
    expect(out.gather.knownTurn).toBe(out1);
    expect(at(out1 + 1e-7)).toEqual(kept);
    expect(at(out1 + front.opening * 2e-3)).not.toEqual(kept);
  });
});

it('bristles hold a drum that is off centre and oval by their shear at its distance', () => {
  const { brake } = quay();
  const bed = buildBed(brake.shoes.front.lining, brake.drum, brake.shoes.front.anchor.at, 24);
  const worn = wornBed(bed, new Float64Array(24));
  const drum = runningDrum(100, 0.05, 0.02, ...unit(30));
  const out = makeRub(24, 3);
  const q = Float64Array.of(-0.2, 0, 0);
  const stance: ShoeStance = { freedoms: 3, at: 0, q, slopes: false, cos: 1, sin: 0 };
  rub(worn, stance, drum, { kind: 'slide', mu: 0, sense: 0 }, out);
  const law: Sticking = {
    ...{ kind: 'stick', mu: 0.4, turn: 2e-7, deflection: new Float64Array(24) },
    ...{ beforeX: out.faceX.slice(), beforeY: out.faceY.slice() },
  };
  rub(worn, stance, drum, law, out);
  let held = 0;
  out.normal.forEach((n, i) => {
    if (n === 0) return;
    // Shear is 0.4 of an element's stiffness, its force over its penetration; each slides turn·ρ.
    const shear = (0.4 * n) / -(out.gap[i] as number);
    const rho = Math.hypot((out.faceX[i] as number) - drum.x, (out.faceY[i] as number) - drum.y);
    held += shear * rho * rho;
    near(out.deflection[i] as number, 2e-7 * rho, { rel: 1e-6 }, `deflection ${i}`);
    near(out.friction[i] as number, shear * 2e-7 * rho, { rel: 1e-6 }, `friction ${i}`);
  });
  expect(held).toBeGreaterThan(0);
  near(holdOnDrum(drum, law, out), held, { rel: 1e-9 }, 'all');
});

it('a drum that is aside with its shoe presses alike; its faces stand where they are', () => {
  const { brake } = quay();
  const bed = buildBed(brake.shoes.front.lining, brake.drum, brake.shoes.front.anchor.at, 24);
  const worn = wornBed(bed, new Float64Array(24));
  const start = Float64Array.from({ length: 24 }, (_, i) => 0.3 - i / 40);
  const at = (x: number, y: number) => {
    const out = makeRub(24, 3);
    const q = Float64Array.of(x - 0.2, y, 0);
    const stance: ShoeStance = { freedoms: 3, at: 0, q, slopes: false, cos: 1, sin: 0 };
    rub(worn, stance, { ...roundDrum(100), x, y }, { kind: 'press', mu: 0.4, start }, out);
    return out;
  };
  const [home, aside] = [at(0, 0), at(3, -2)];
  home.normal.forEach((n, i) => {
    near(aside.normal[i] as number, n, { rel: 1e-9 }, `normal ${i}`);
    near((aside.faceX[i] as number) - (home.faceX[i] as number), 3, { abs: 1e-9 }, `x ${i}`);
    near((aside.faceY[i] as number) - (home.faceY[i] as number), -2, { abs: 1e-9 }, `y ${i}`);
    // Pressed on a standing drum each bristle has its own share of the force.
    near(home.friction[i] as number, (start[i] as number) * n, { abs: 1e-9 * n }, `friction ${i}`);
  });
  expect(home.normal.every((n) => n > 0)).toBe(true);
});
