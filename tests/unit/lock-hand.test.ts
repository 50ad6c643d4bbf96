import { describe, expect, it } from 'vitest';
import { type System, settle } from '../../sim/balance/newton.ts';
import { shakenTo, stillTouch } from '../../sim/balance/shaken.ts';
import type { Acting, Force, Work } from '../../sim/balance/types.ts';
import { makeWork } from '../../sim/balance/work.ts';
import { createRig, freshState, lockedShoe } from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';
import { slidingPair } from '../sliding-pair.ts';

/**
 * How far a turning drum shakes the shoes' hold-downs off, on the first teaching brake whose shoes have nothing but
 * springs of 1e6 N·mm a radian: its seats are level and 130 mm over the pins, so they part by 130·(front − rear) turn
 * and every answer is one of straight lines.
 */
describe('the part shaken off', () => {
  const rig = createRig(quay().brake, { strutGive: 0 });
  const law = { kind: 'slide', mu: 0, sense: 1 } as const;
  const STIFFNESS = 1e6;

  /** Moment on a freedom by the part shaken off, N·mm, and the slope that is told of it. */
  type Moment = (part: number) => readonly [moment: number, slope: number];
  const none: Moment = () => [0, 0];

  function made(front: Moment, rear = none, lever = none, strutLength = 104.2) {
    const asked: { part: number; turns: readonly number[] }[] = [];
    const force: Force = {
      ...{ name: 'springs', remembers: 0, slot: 0 },
      prepare: () => undefined,
      add: (to, y, { shaken }) => {
        asked.push({ part: shaken, turns: [...y] });
        [front, rear, lever].forEach((moment, j) => {
          const [m, slope] = moment(shaken);
          to.q[j] = (to.q[j] as number) + m - STIFFNESS * (y[j] as number);
          to.k[4 * j] = (to.k[4 * j] as number) - STIFFNESS;
          to.byShaken[j] = (to.byShaken[j] as number) + slope;
        });
      },
      arrows: () => [],
      energy: () => null,
    };
    const w: Work = { ...makeWork(rig), forces: [force] };
    const act: Acting = {
      ...{ pressure: 0, cable: 0, frontLaw: law, rearLaw: law, drum: { radius: 200 } as never },
      ...{ memory: w.memory, home: w.memory, strutLength, strutRest: 0, shaken: 1 },
    };
    const held = Uint8Array.of(0, 0, 1);
    const x: System = { rig, w, act, inertia: null, bound: null, force: 0, held };
    const s = { residual: 0, iterations: 0, converged: false, strutOn: false, clamp: 7 };
    return { x, w, act, s, asked };
  }

  /** From where all is shaken off; the parts that are asked one by one, and where each begins. */
  function sought(...of: Parameters<typeof made>) {
    const { x, w, act, s, asked } = made(...of);
    const y = new Float64Array(3);
    settle(x, y, s);
    const letGo = Float64Array.of(4e-4, 0, 0);
    const found = shakenTo(x, y, s, letGo);
    // The Newton that seeks it with the pose begins at all; by itself it is sought from nothing on.
    const alone = asked.slice(asked.findIndex(({ part }) => part === 0));
    const each = alone.filter(({ part }, i) => i === 0 || part !== alone[i - 1]?.part);
    const parting = w.strut.length - act.strutLength;
    return { s, y, found, each, parts: each.map(({ part }) => part), parting, part: act.shaken };
  }

  /** By this up to a part of 0.9; from there on so much is off, and less the more is shaken: Newton from all ends there. */
  const turnedBack =
    (moment: Moment, off: number): Moment =>
    (part) =>
      part < 0.9 ? moment(part) : [off - 1000 * (0.9 - part), 1000];

  /** What is sought ends where the strut is touched without force. */
  const touches = ({ s, found, parting }: ReturnType<typeof sought>) => {
    expect([found, s.strutOn, s.clamp, s.converged]).toEqual([true, true, 0, true]);
    expect(Math.abs(parting)).toBeLessThan(1e-7);
  };

  it('is found in one step by its slope where that is straight, both shoes and a held lever asked', () => {
    // 200 − 500·p on the front shoe, 100·p on the rear one: alike at p = 1/3. The lever is on its stop, whatever acts.
    const of = sought(
      turnedBack((p) => [200 - 500 * p, -500], -520),
      (p) => [100 * p, 100],
      (p) => [3000 * p, 3000],
    );
    touches(of);
    near(of.part, 1 / 3, { abs: 1e-4 }, 'part');
    near(of.parts[1] as number, 1 / 3, { abs: 1e-4 }, 'at once');
    // The pose is taken along to where both are then in balance.
    for (const j of [0, 1])
      near(of.each[1]?.turns[j] as number, 100 / 3 / STIFFNESS, { rel: 1e-3 }, `shoe ${j}`);
    for (const { turns } of of.each) near(turns[2] as number, 0, { abs: 1e-12 }, 'lever');
  });

  it('is halved first where all and nothing part them alike, then goes by slope', () => {
    // 200 part them, −200 at all. Half: 75; by −500: 0.65, −11.25; by −650: 0.6327; sqrt 0.4 = 0.63246.
    const of = sought(turnedBack((p) => [200 - 500 * p * p, -1000 * p], -280));
    touches(of);
    const trace = [0, 0.5, 0.65, 0.65 - 11.25 / 650, Math.sqrt(0.4)];
    expect(of.parts.length).toBe(trace.length);
    trace.forEach((part, i) => {
      near(of.parts[i] as number, part, { abs: 1e-4 }, `${i}`);
    });
    // The half begins where the strut is free, what goes by slope where the straight line touches it.
    near(of.each[1]?.turns[0] as number, 2e-4, { rel: 1e-3 }, 'half');
    for (const i of [2, 3, 4]) near(of.each[i]?.turns[0] as number, 0, { abs: 2e-8 }, `touch ${i}`);
  });

  it('is halved once where nothing shaken off parts them by more than half of what all presses them', () => {
    // 200 and −300; half: 75, and 250·0.3 are left.
    const of = sought(turnedBack((p) => [200 - 250 * p, -250], -400));
    touches(of);
    expect(of.parts.slice(0, 2)).toEqual([0, 0.5]);
    near(of.parts[2] as number, 0.8, { abs: 1e-4 }, 'by slope');
  });

  it('is halved as long as what parts them is not', () => {
    // 200 − 500·p⁸: half 198.05, three quarters 149.9, seven eighths 28.2, which by its slope of −1570.8 is 0.018 more.
    const of = sought(turnedBack((p) => [200 - 500 * p ** 8, -4000 * p ** 7], -280));
    touches(of);
    [0, 0.5, 0.75, 0.875].forEach((part, i) => {
      expect(of.parts[i]).toBe(part);
    });
    near(of.parts[4] as number, 0.875 + 28.2 / 1570.8, { abs: 1e-4 }, 'by slope');
    near(of.part, 0.4 ** (1 / 8), { abs: 1e-5 }, 'part');
    // Each half begins where the last free one was.
    near(of.each[3]?.turns[0] as number, 149.94e-6, { rel: 1e-3 }, 'from three quarters');
  });

  it('never leaves the bracket, where a slope would lead out of it', () => {
    // 50 − 74·p, told to fall by 10: from half, 13, to 1.8; from three quarters, −5.5, to 0.2. Touched at 25/37.
    const of = sought(turnedBack((p) => [50 - 74 * p, -10], -250));
    touches(of);
    // Five eighths: 3.75, more than half of 5.5.
    expect(of.parts.slice(0, 5)).toEqual([0, 0.5, 0.75, 0.625, 0.6875]);
    expect(of.parts.every((p) => p >= 0 && p < 1)).toBe(true);
    near(of.part, 25 / 37, { abs: 2e-5 }, 'part');
  });

  it('is closed in on by nineteen halvings where they jump past the strut, and is a whole hair before', () => {
    // 2^-19 is the first below a quarter of 1e-5. No slope is told. Free of the strut by 150 less 20 a part.
    for (const jump of [0.3, 0.7251234, 0.999996, 3e-6]) {
      const free = (p: number) => 150 - 20 * p;
      const of = sought((p) => [p < jump ? free(p) : -250, 0]);
      expect([of.found, of.s.strutOn, of.s.clamp], `${jump}`).toEqual([true, false, 0]);
      expect(of.parts.length).toBeLessThanOrEqual(21);
      let [low, high] = [0, 1];
      for (let n = 1; n <= 19; n++) {
        const middle = (low + high) / 2;
        expect(of.parts[n], `${jump}: ${n}`).toBe(middle);
        near(of.each[n]?.turns[0] as number, free(low) / STIFFNESS, { rel: 1e-6 }, `${n}`);
        if (middle < jump) low = middle;
        else high = middle;
      }
      const hairs = of.part / 1e-5;
      near(hairs, Math.round(hairs), { abs: 1e-6 }, 'whole');
      expect(of.part).toBeLessThan(jump);
      expect(of.part).toBeGreaterThan(jump - 1.3e-5);
      // From where nothing is shaken off, so that it does not hang on the way there.
      near(of.each.at(-1)?.turns[0] as number, free(0) / STIFFNESS, { rel: 1e-6 }, 'first');
      near(of.y[0] as number, free(of.part) / STIFFNESS, { rel: 1e-6 }, 'ends there');
    }
  });

  it('is nothing where the shoes part by less than a ten millionth of a millimetre with none', () => {
    // 5e-4 N·mm are 6.5e-8 mm; 2e-3 are 2.6e-7, and of those that much has to go: 200 times as much at all.
    const at = (off: number) => sought((p) => [off - (p > 0 ? 0.4 : 0), 0]);
    const [touching, parted] = [at(5e-4), at(2e-3)];
    touches(touching);
    expect([touching.part, touching.parts]).toEqual([0, [0]]);
    expect([parted.found, parted.s.strutOn]).toEqual([true, false]);
    expect(parted.parts.length).toBeGreaterThan(19);
    // And there is none where they are pressed on the strut with none shaken off.
    const pressed = sought((p) => [-50 - 100 * p, 0]);
    expect(pressed.found).toBe(false);
    expect(pressed.parts).toEqual([0]);
    near(pressed.y[0] as number, -50 / STIFFNESS, { rel: 1e-9 }, 'pressed');
  });

  it('is sought with the pose, from all, where straight lines tell it', () => {
    // 200 = 500·0.4.
    const { x, s, asked, act } = made((p) => [200 - 500 * p, -500]);
    const y = new Float64Array(3);
    settle(x, y, s);
    const begins = asked.length;
    expect(shakenTo(x, y, s, new Float64Array(3))).toBe(true);
    expect([s.strutOn, s.clamp, asked[begins]?.part]).toEqual([true, 0, 1]);
    expect(asked.every(({ part }) => part > 0)).toBe(true);
    near(act.shaken, 0.4, { abs: 1e-9 }, 'part');
    near(y[0] as number, 0, { abs: 1e-11 }, 'touch');
  });

  it('known before is asked a thousandth of what is left further on', () => {
    const still = (moment: number, before: number) => {
      const { x, s, asked, act } = made((p) => [moment - 500 * p, -500]);
      const y = Float64Array.of(3e-6, 2e-6, 0);
      const found = stillTouch(x, y, s, before);
      return { found, y, clamp: s.clamp, begins: asked[0]?.part as number, part: act.shaken };
    };
    for (const before of [0.2, 0.39]) {
      const of = still(200, before);
      expect([of.found, of.clamp]).toEqual([true, 0]);
      near(of.begins, before + 1e-3 * (1 - before), { abs: 1e-12 }, 'begins');
      near(of.part, 0.4, { abs: 1e-7 }, 'part');
      near(of.y[0] as number, 0, { abs: 1e-11 }, 'touch');
    }
    // Where less than nothing would be shaken off, or more than all, or just all (4e-8 too little, which is balanced):
    // no longer, and they lie where they lay.
    for (const moment of [-130, 620, 500 + 2e-5, -2e-5]) {
      const of = still(moment, 0.5);
      expect(of.found, `${moment}`).toBe(false);
      expect([...of.y]).toEqual([3e-6, 2e-6, 0]);
    }
  });
});

/**
 * A shoe on a smooth upright flat takes no upright force there, so the drum's force on it is level: it leans by
 * atan mu, and a narrow patch lies so far below the drum's axis. It needs no push where that force points at the heel:
 * sin(atan mu) = height of the heel under the axis / radius.
 */
describe('a shoe that slides locks by itself', () => {
  interface Shape {
    readonly sin: number;
    readonly rear?: number;
    readonly ground?: number;
    readonly drum?: number;
    readonly arc?: number;
    readonly modulus?: number;
    readonly times?: number;
  }
  const HEEL = 50;
  const ASIDE = 15;
  /** Friction whose angle has this sine. */
  const friction = (sin: number) => Math.tan(Math.asin(sin));

  function built({ sin, rear = sin, ground = 99, arc = 110, modulus = 5e4, times = 1 }: Shape) {
    const { brake } = slidingPair({
      ...{ mu: friction(sin), radius: 100 * times, heel: HEEL * times, arm: 130 * times },
      ...{ arc, width: 40, modulus },
    });
    const shoe = (side: 'front' | 'rear', of: number) => {
      const { lining } = brake.shoes[side];
      const own = { ...lining, groundRadius: ground * times, friction: friction(of) };
      return { ...brake.shoes[side], lining: own };
    };
    const shoes = { front: shoe('front', sin), rear: shoe('rear', rear) };
    const rig = createRig({ ...brake, shoes }, { elements: 12 });
    return { rig, state: freshState(brake, brake.drum.radiusNew, 12), brake };
  }

  /** @param push up to which it is asked, N */
  const locked = (shape: Shape, turning: -1 | 0 | 1 = 1, push = 1000) => {
    const { rig, state, brake } = built(shape);
    const drumRadius = shape.drum ?? state.drumRadius;
    return lockedShoe(rig, { ...state, drumRadius }, turning, push / brake.cylinder.area);
  };

  /**
   * Where it locks. A face that is ground smaller is a circle whose middle touches the new drum: its centre stands
   * 100 − ground out of the axis. Where it touches, `smaller` than the drum, that centre has gone to smaller·(cos, −sin)
   * of the patch's angle, and the heel, as far from it as before, along its flat.
   */
  function statics(ground: number, drum = 100) {
    const smaller = drum - ground;
    const apart = Math.hypot(ASIDE - (100 - ground), HEEL);
    let sin = HEEL / drum;
    for (let i = 0; i < 30; i++) {
      const level = ASIDE - smaller * Math.sqrt(1 - sin * sin);
      sin = (smaller * sin + Math.sqrt(apart * apart - level * level)) / drum;
    }
    return sin;
  }

  it.each([
    [99.5, 100],
    [99, 100],
    [99, 100.5],
    [99, 101],
  ])('where the force points at the heel: ground to %s in a drum of %s', (ground, drum) => {
    const sin = statics(ground, drum);
    expect(sin).toBeGreaterThan(0.5);
    const at = (times: number) => ({ sin: times * sin, ground, drum });
    expect(locked(at(0.99))).toBeNull();
    expect(locked(at(1.01))).toBe('front');
  });

  it.each([
    [1.01, 1.01, 1, 'front'],
    [1.01, 1.01, -1, 'rear'],
    [0.99, 0.99, 1, null],
    [0.99, 0.99, -1, null],
    [1.01, 0.6, -1, null],
    [0.6, 1.01, 1, null],
    [0.6, 1.01, -1, 'rear'],
    [1.2, 1.2, 0, null],
  ] as const)(
    'the leading one alone: front %s, rear %s of what it takes, turning %s: %s',
    (front, rear, turning, side) => {
      const sin = statics(99);
      expect(locked({ sin: front * sin, rear: rear * sin }, turning)).toBe(side);
    },
  );

  it.each([0.8, 2])('alike in a brake %s times as large', (times) => {
    const sin = statics(99);
    expect(locked({ sin: 0.99 * sin, times })).toBeNull();
    expect(locked({ sin: 1.01 * sin, times })).toBe('front');
  });

  it('the sooner the more it is pressed, where a soft lining then bears over a wide arc', () => {
    // A pressure of 1 − (t/b)² over ±b: the normal forces' sum is 1/(1 − b²/10) of their resultant, and drag by as
    // much more. At a newton b is a tenth or two, at tons more than a half: 2 % lie between.
    const sin = statics(99) * 0.98;
    const soft = { sin, modulus: 100 };
    expect([locked(soft, 1, 1), locked(soft, -1, 1)]).toEqual([null, null]);
    expect([locked(soft, 1, 1e5), locked(soft, -1, 1e5)]).toEqual(['front', 'rear']);
    // As a cosine over the whole arc of ±a their sum is 2·sin a, their resultant a + sin a·cos a: at 0.96 14.6 % apart.
    for (const push of [1e5, Number.POSITIVE_INFINITY])
      expect(locked({ sin: 0.85 * statics(99), modulus: 100 }, 1, push)).toBeNull();
  });

  it('nowhere if its lining ends before the place at which the force would be level', () => {
    // 20° down; at a sine of 0.6 the place is 37°.
    expect([locked({ sin: 0.6, arc: 40 }), locked({ sin: 0.6, arc: 110 })]).toEqual([
      null,
      'front',
    ]);
  });
});
