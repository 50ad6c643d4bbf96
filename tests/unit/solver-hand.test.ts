import { describe, expect, it } from 'vitest';
import { addClampTangent, assemble } from '../../sim/balance/assemble.ts';
import {
  type Bound,
  type Ended,
  fillMatrix,
  residualOf,
  type System,
  settle,
  solveBound,
} from '../../sim/balance/newton.ts';
import { acting, type Path, pressInSteps, remembers } from '../../sim/balance/press.ts';
import {
  balances,
  type Settling,
  type Solution,
  type Supports,
  solvePose,
} from '../../sim/balance/solve.ts';
import type { Acting, Force, Work } from '../../sim/balance/types.ts';
import { gaveWay, makeWork } from '../../sim/balance/work.ts';
import { createRig, SOUND } from '../../sim/index.ts';
import { onPaper, quay, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * The solver on the first teaching brake, whose only forces are springs that turn its parts: Q = m − k·(y − 0) for
 * each of its three freedoms, front shoe, rear shoe, lever. So every answer is one of straight lines, by hand.
 */
class Turning implements Force {
  readonly name = 'turning';
  readonly remembers = 0;
  slot = 0;
  readonly m: readonly number[];
  readonly k: readonly number[];
  /** What it changes by when all is shaken off that can be. */
  readonly shaken: readonly number[];
  constructor(m: readonly number[], k: readonly number[], shaken: readonly number[] = []) {
    this.m = m;
    this.k = k;
    this.shaken = shaken;
  }
  prepare(): void {}
  add(w: Work, y: Float64Array, act: Acting): void {
    const { length } = this.m;
    for (let j = 0; j < length; j++) {
      const k = this.k[j] as number;
      const c = this.shaken[j] ?? 0;
      w.q[j] = (w.q[j] as number) + (this.m[j] as number) - k * (y[j] as number) + c * act.shaken;
      w.k[(length + 1) * j] = (w.k[(length + 1) * j] as number) - k;
      w.byShaken[j] = (w.byShaken[j] as number) + c;
    }
  }
  arrows(): readonly [] {
    return [];
  }
  energy(): null {
    return null;
  }
}

const { brake } = quay();
const rig = createRig(brake, { strutGive: 0 });
/** The seats at (−59.2, 52) and (45, 52). */
const APART = 104.2;
const law = { kind: 'slide', mu: 0, sense: 1 } as const;

function made(
  m: readonly number[],
  k: readonly number[],
  more: Partial<Acting> = {},
  change: readonly number[] = [],
  on = rig,
) {
  const w: Work = { ...makeWork(on), forces: [new Turning(m, k, change)] };
  const act: Acting = {
    ...{ pressure: 0, cable: 0, frontLaw: law, rearLaw: law },
    drum: { radius: 200 } as Acting['drum'],
    ...{ memory: w.memory, home: w.memory, strutLength: APART, strutRest: 0, shaken: 0 },
    ...more,
  };
  const held = new Uint8Array(on.n);
  const x: System = { rig: on, w, act, inertia: null, bound: null, force: 0, held };
  return { w, act, x };
}

/** On abutments, by their heels' friction, their hold-downs' and what of that a drum shakes off. */
const sliding = (heel: number, friction: number, shakenOff: number) => {
  const scene = quayScene();
  for (const [side, normal] of [
    ['front', 180],
    ['rear', 0],
  ] as const) {
    const shoe = scene.shoes[side];
    const flat = { kind: 'abutment', at: shoe.anchor.at, heelRadius: 6, normal, friction: heel };
    Object.assign(shoe, { anchor: flat, holdDown: { ...shoe.holdDown, friction, shakenOff } });
  }
  return createRig(onPaper(scene));
};

const by = (gradient: readonly number[], more: Partial<Bound> = {}): Bound => ({
  ...{ by: 'force', give: 0, from: 0, gradient: Float64Array.from(gradient), excess: () => 0 },
  ...more,
});

describe('what is left unbalanced', () => {
  const y = new Float64Array(3);

  it('is the greatest force, moments over 100 mm; what is held bears anything', () => {
    const { x, w } = made([1000, -2000, 50], [0, 0, 0]);
    expect(residualOf(x, y)).toBe(20);
    expect([...w.rhs.subarray(0, 3)]).toEqual([-1000, 2000, -50]);
    x.held[1] = 1;
    expect(residualOf(x, y)).toBe(10);
    expect(w.rhs[1]).toBeCloseTo(0, 12);
    expect(residualOf(x, y, false)).toBe(10);
    expect(w.slopes).toBe(true);
  });

  it('less what inertia takes, M·(y − free)/h²', () => {
    // 2000·0.1 + 1000·0.3, 3000·0.2, 1000·0.1 + 4000·0.3.
    const { x, w } = made([1000, -2000, 50], [0, 0, 0]);
    const massOverH2 = Float64Array.of(2000, 0, 1000, 0, 3000, 0, 1000, 0, 4000);
    const inertia = { massOverH2, free: Float64Array.of(-0.1, -0.2, -0.3) };
    near(residualOf({ ...x, inertia }, y), 26, { rel: 1e-12 });
    [-500, 2600, 1250].forEach((r, j) => {
      near(w.rhs[j] as number, r, { rel: 1e-12 }, `${j}`);
    });
  });

  it('with a bound’s force on its gradient, and what its length is off by; beyond its rest it gives', () => {
    const { x, w } = made([1000, -2000, 50], [0, 0, 0]);
    x.bound = by([10, 20, 0], { give: 1e-3, from: 5, excess: () => 0.02 });
    x.force = 15;
    // 0.02 + 10 N · 0.001 mm/N, as a lining's 1e4 N/mm; 1000 + 150, −2000 + 300.
    near(residualOf(x, y), 300, { rel: 1e-12 });
    [-1150, 1700, -50, -0.03].forEach((r, j) => {
      near(w.rhs[j] as number, r, { rel: 1e-12 }, `${j}`);
    });
    x.force = 4;
    near(residualOf(x, y), 200, { rel: 1e-12 }, 'not beyond');
  });

  it('a part shaken off is told to the forces, and pushes nothing itself', () => {
    const { x, w, act } = made([1000, -2000, 50], [0, 0, 0]);
    x.bound = by([10, 20, 0], { by: 'shaken', excess: () => -1e-4 });
    x.force = 0.25;
    expect(residualOf(x, y)).toBe(20);
    expect(act.shaken).toBe(0.25);
    near(w.rhs[3] as number, 1e-4, { rel: 1e-12 });
  });
});

describe('the matrix of a step', () => {
  const K = [1, 2, 3, 4, -5, 6, 7, 8, -9];
  const filled = (change: (x: System) => void, steady = false) => {
    const { x, w } = made([1, 1, 1], [0, 0, 0]);
    w.k.set(K);
    w.byShaken.set([0.1, 0.2, 0.3]);
    w.rhs.fill(9);
    change(x);
    const size = fillMatrix(x, steady);
    return { size, a: [...w.matrix.subarray(0, size * size)], rhs: [...w.rhs] };
  };

  it('is the tangent, less mass; a diagonal that would run the wrong way is turned where that is asked', () => {
    expect(filled(() => {})).toMatchObject({ size: 3, a: K });
    expect(filled(() => {}, true).a).toEqual([-1, 2, 3, 4, -5, 6, 7, 8, -9]);
    const massOverH2 = Float64Array.of(2, 0, 1, 0, 3, 0, 1, 0, 4);
    const inertia = { massOverH2, free: new Float64Array(3) };
    expect(filled((x) => Object.assign(x, { inertia })).a).toEqual([-1, 2, 2, 4, -8, 6, 6, 8, -13]);
  });

  it('has a bound’s gradient at its edges, and what it gives beyond its rest in the corner', () => {
    const told: number[] = [];
    const bound = by([10, 20, 30], { give: 1e-3, from: 5, addTangent: (f) => told.push(f) });
    const at = (force: number) => filled((x) => Object.assign(x, { bound, force }));
    expect(at(6)).toMatchObject({
      size: 4,
      a: [1, 2, 3, 10, 4, -5, 6, 20, 7, 8, -9, 30, 10, 20, 30, 1e-3],
    });
    expect(at(5).a[15]).toBe(0);
    expect(told).toEqual([6, 5]);
    const shaken = by([10, 20, 30], { by: 'shaken' });
    expect(filled((x) => Object.assign(x, { bound: shaken })).a).toEqual([
      ...[1, 2, 3, 0.1, 4, -5, 6, 0.2, 7, 8, -9, 0.3],
      ...[10, 20, 30, 0],
    ]);
  });

  it('leaves what is held where it is', () => {
    const bound = by([10, 20, 30]);
    const { a, rhs } = filled((x) => {
      x.bound = bound;
      x.held[1] = 1;
    });
    // Its equation is that its step is nought.
    expect(a).toEqual([1, 2, 3, 10, 0, 1, 0, 0, 7, 8, -9, 30, 10, 20, 30, 0]);
    expect(rhs).toEqual([9, 0, 9, 9]);
  });
});

describe('Newton', () => {
  const ended = (): Ended => ({ residual: 0, iterations: 0, converged: false });

  it('finds straight lines in one step, and goes no farther in one than 1.5 mrad a shoe, 0.1 a lever', () => {
    const run = (m: readonly number[], k: readonly number[]) => {
      const { x } = made(m, k);
      const y = new Float64Array(3);
      const s = ended();
      settle(x, y, s);
      expect(s.converged).toBe(true);
      expect(s.residual).toBeLessThan(1e-6);
      m.forEach((v, j) => {
        near(y[j] as number, v / (k[j] as number), { rel: 1e-9 }, `${j}`);
      });
      return s.iterations;
    };
    expect(run([1000, -3000, 50], [1e6, 2e6, 1e4])).toBe(1);
    // 20 mrad are thirteen whole steps and a third; 0.55 of a lever five and a half.
    expect(run([0, 2000, 0], [1e6, 1e5, 1e4])).toBe(14);
    expect(run([0, 0, 5500], [1e6, 1e5, 1e4])).toBe(6);
  });

  it('weighs shifts as they are, and goes no farther in one step than 0.15 mm', () => {
    // Front heel x, y, turn; rear heel; lever.
    const on = sliding(0, 0, 0);
    const k = [1e3, 1e3, 1e6, 1e3, 1e3, 1e6, 1e4];
    const left = (j: number) => {
      const m = k.map((_, i) => (i === j ? 300 : 0));
      const { x } = made(m, k, {}, [], on);
      const y = new Float64Array(7);
      const before = residualOf(x, y);
      const s = ended();
      settle(x, y, s);
      near(y[j] as number, 300 / (k[j] as number), { rel: 1e-9 }, `${j}`);
      return [before, s.iterations];
    };
    // 0.3 mm in two steps, 0.3 mrad and 30 mrad of the lever in one.
    expect([0, 1, 2, 3, 4, 5, 6].map(left)).toEqual([
      ...[
        [300, 2],
        [300, 2],
        [3, 1],
        [300, 2],
        [300, 2],
        [3, 1],
        [3, 1],
      ],
    ]);
  });

  it('weighs a bending shoe by its greatest displacement, and bends it no farther in one step than 0.15 mm', () => {
    const on = createRig(brake, { flexible: true, elements: 12, strutGive: 0 });
    const k = Array.from({ length: on.n }, (_, j) => {
      if (j === on.leverAt) return 1e4;
      return j === on.front.at || j === on.rear.at ? 1e6 : 1;
    });
    for (const shoe of [on.front, on.rear])
      for (const [mode, reach] of shoe.reach.entries()) {
        const at = shoe.at + 1 + mode;
        // 0.4 mm at the place that it moves most, by its own stiffness of one: three steps.
        const m = k.map((_, j) => (j === at ? 0.4 / reach : 0));
        const { x } = made(m, k, {}, [], on);
        const y = new Float64Array(on.n);
        near(residualOf(x, y), 0.4 / reach / reach, { rel: 1e-12 }, `${shoe.side} ${mode}`);
        const s = ended();
        settle(x, y, s);
        near(y[at] as number, 0.4 / reach, { rel: 1e-9 }, `${shoe.side} ${mode}`);
        expect(s.iterations).toBe(3);
      }
  });

  it('of shoes that bend uses a matrix on where it is near, and asks for no slopes it does not need', () => {
    for (const flexible of [false, true]) {
      const on = createRig(brake, { flexible, elements: 12, strutGive: 0 });
      const none = new Array<number>(on.n).fill(0);
      const k = none.map((_, j): number => (j === on.leverAt ? 1e4 : j === on.rear.at ? 1e6 : 1));
      k[0] = 0;
      for (const [m, c] of [
        [4000, 0.02],
        [4000, 0.3],
        [4000, 5],
        [4e4, 0.3],
        [4e5, 3],
      ] as const) {
        const { x, w } = made(none, k, {}, [], on);
        let asked = 0;
        let sloped = 0;
        const front: Force = {
          ...{ name: 'front', remembers: 0, slot: 0 },
          prepare: () => undefined,
          add: (to, y) => {
            asked++;
            if (to.slopes) sloped++;
            // A spring that stiffens: m − 1e6·y − c·1e9·y².
            const at = y[0] as number;
            to.q[0] = (to.q[0] as number) + m - 1e6 * at - c * 1e9 * at * at;
            to.k[0] = (to.k[0] as number) - 1e6 - 2 * c * 1e9 * at;
          },
          arrows: () => [],
          energy: () => null,
        };
        const y = new Float64Array(on.n);
        const s = ended();
        settle({ ...x, w: { ...w, forces: [...w.forces, front] } }, y, s);
        const label = `${flexible} ${m} ${c}`;
        expect(s.converged, label).toBe(true);
        expect(s.residual, label).toBeLessThan(flexible ? 1e-5 : 1e-6);
        const root = (-1e6 + Math.sqrt(1e12 + 4e9 * c * m)) / (2e9 * c);
        near(y[0] as number, root, { abs: 1e-9 }, label);
        // No step of these has to be halved: one evaluation for each, and one before. Where it bends, 50 N and less
        // that are left are first looked at without slopes, which are asked for again where that step was not good.
        if (!flexible) expect([asked, sloped], label).toEqual([s.iterations + 1, s.iterations + 1]);
        else {
          expect(asked, label).toBeGreaterThan(s.iterations);
          expect(sloped, label).toBeLessThan(asked - 2);
          expect(sloped, label).toBeLessThan(s.iterations + 1);
        }
      }
    }
  });

  it('finds a part shaken off between none and all, and none beyond', () => {
    // 1e6·y = 500·part, 100·y = 0.02: 0.4; 0.08 would take 1.6.
    const solved = (off: number) => {
      const { x, w } = made([0, 0, 0], [1e6, 1e6, 1e4], {}, [500]);
      const y = new Float64Array(3);
      const excess = (at: Float64Array) => 100 * (at[0] as number) - off;
      const s = ended();
      const bound = by([100, 0, 0], { by: 'shaken', excess });
      const sought = { ...x, bound, force: 1 };
      settle(sought, y, s);
      return { s, force: sought.force, y, w };
    };
    const { s, force, y } = solved(0.02);
    expect(s.converged).toBe(true);
    near(force, 0.4, { abs: 1e-9 }, 'part');
    near(y[0] as number, 2e-4, { rel: 1e-9 }, 'turn');
    for (const [off, end] of [
      [0.08, 1],
      [-0.02, 0],
    ] as const) {
      const beyond = solved(off);
      expect(beyond.s.converged, `${off}`).toBe(false);
      expect(beyond.force).toBe(end);
      // It stays at its end three times, and is marched after for 80 steps: it can be sought otherwise.
      expect(beyond.s.iterations).toBeGreaterThan(80);
      expect(beyond.s.iterations).toBeLessThan(86);
    }
  });

  it('says when there is no balance', () => {
    const { x } = made([1000, 0, 0], [0, 1, 1]);
    const s = ended();
    settle(x, new Float64Array(3), s);
    expect(s.converged).toBe(false);
    near(s.residual, 10, { rel: 1e-9 });
  });

  it('keeps a length by a force; one that gives is shorter by what it bears beyond its rest', () => {
    // 100·Δ = 0.01, 5000 − 1e7·Δ + 100·F = 0.
    const solved = (more: Partial<Bound>) => {
      const { x } = made([5000, -3000, 200], [1e7, 2e7, 1e4]);
      const y = new Float64Array(3);
      const excess = (at: Float64Array) => 100 * (at[0] as number) - 0.01;
      const held = Uint8Array.of(0, 1, 0);
      const s = solveBound({ ...x, held, bound: by([100, 0, 0], { excess, ...more }) }, y);
      expect(s.residual).toBeLessThan(1e-6);
      return { ...s, y };
    };
    const firm = solved({});
    near(firm.force, -40, { abs: 1e-6 }, 'firm');
    near(firm.y[0] as number, 1e-4, { abs: 1e-12 }, 'kept');
    expect(firm.y[1]).toBe(0);
    near(firm.y[2] as number, 0.02, { abs: 1e-9 }, 'the other');
    // 100·Δ − 0.01 + 1e-4·(F + 100) = 0: F = −50/1.1.
    const soft = solved({ give: 1e-4, from: -100 });
    near(soft.force, -50 / 1.1, { abs: 1e-6 }, 'soft');
    near(soft.y[0] as number, (5000 - 5000 / 1.1) / 1e7, { abs: 1e-12 }, 'shorter');
    near(solved({ give: 1e-4, from: 0 }).force, -40, { abs: 1e-6 }, 'not beyond its rest');
  });
});

describe('where Newton alone would jump to and fro', () => {
  /** Force and slope on the front shoe by its turn; rear shoe and lever on springs. */
  type Law = (y: number) => readonly [force: number, slope: number];
  const settled = (law: Law, inTime = false, on = rig) => {
    const k = Array.from({ length: on.n }, (_, j) => {
      if (j === on.leverAt) return 1e4;
      return j === on.rear.at ? 1e6 : Math.min(1, j);
    });
    const { x, w } = made(new Array<number>(on.n).fill(0), k, {}, [], on);
    let asked = 0;
    const front: Force = {
      ...{ name: 'front', remembers: 0, slot: 0 },
      prepare: () => undefined,
      add: (to, y) => {
        asked++;
        const [force, slope] = law(y[0] as number);
        to.q[0] = (to.q[0] as number) + force;
        to.k[0] = (to.k[0] as number) + slope;
      },
      arrows: () => [],
      energy: () => null,
    };
    const inertia = inTime
      ? { massOverH2: new Float64Array(on.n * on.n), free: new Float64Array(on.n) }
      : x.inertia;
    const y = new Float64Array(on.n);
    const s = ended();
    settle({ ...x, inertia, w: { ...w, forces: [...w.forces, front] } }, y, s);
    return { ...s, asked, at: y[0] as number };
  };
  const ended = (): Ended => ({ residual: 0, iterations: 0, converged: false });

  it('a bristle of dry friction that turns round within a step is closed in on by halving', () => {
    // 1000 − 1e6·y − f·(y − y0)/w within w of y0, else ±f: held in it where 1000 − 1e6·y0 is less than f.
    for (const [reach, y0, held] of [
      [1e-7, 1e-4, true],
      [1e-7, 3e-4, true],
      [1e-6, 3e-4, true],
      [1e-5, 1e-4, true],
      [1e-6, 1e-4, false],
    ] as const) {
      const f = held ? 2000 : 500;
      const s = settled((y) => {
        const d = (y - y0) / reach;
        const slope = Math.abs(d) < 1 ? f / reach : 0;
        return [1000 - 1e6 * y - f * Math.max(-1, Math.min(1, d)), -1e6 - slope];
      });
      expect(s.converged).toBe(true);
      const at = held ? (1000 + (f * y0) / reach) / (1e6 + f / reach) : 500 / 1e6;
      near(s.at, at, { abs: 1e-12 }, `${reach} ${y0}`);
      // Eight whole steps at the most, then halvings of what is left.
      expect(s.iterations).toBeLessThan(held ? 24 : 3);
      expect(s.asked).toBeLessThan(held ? 90 : 4);
    }
  });

  // Newton on an arctangent runs away from 1.39 of its widths on, farther each time (C. T. Kelley, Iterative Methods for
  // Linear and Nonlinear Equations, chapter 8, has it as the example of that).
  const arctangent =
    (most: number, width: number, y0: number): Law =>
    (y) => {
      const d = (y - y0) / width;
      return [-most * Math.atan(d), -most / width / (1 + d * d)];
    };

  it('an arctangent is marched to against a drag, slower where it runs past', () => {
    for (const [most, width, y0] of [
      [100, 1e-4, 4e-3],
      [100, 1e-6, 1e-3],
      [1000, 1e-4, 1e-3],
      [1000, 1e-4, 4e-3],
      [1000, 1e-5, 1e-3],
      [1000, 1e-5, 4e-3],
      [1000, 1e-6, 4e-3],
      [1e4, 1e-5, 4e-3],
    ] as const) {
      const label = `${most} ${width} ${y0}`;
      const s = settled(arctangent(most, width, y0));
      expect(s.converged, label).toBe(true);
      near(s.at, y0, { abs: width }, label);
      expect(s.residual, label).toBeLessThan(1e-6);
      // Half of the steps that a march may take.
      expect(s.iterations, label).toBeLessThan(200);
    }
  });

  it('a pinned shoe that tips goes the way it is pushed, to the wall; one that bends to where it is in balance', () => {
    // 100 + 1e6·y tips about −0.1 mrad; a wall of 1e9 stands at 1 mrad, where 1100 push.
    const tips: Law = (y) => {
      const past = y > 1e-3;
      return [100 + 1e6 * y - (past ? 1e9 * (y - 1e-3) : 0), 1e6 - (past ? 1e9 : 0)];
    };
    const rigid = settled(tips);
    expect(rigid.converged).toBe(true);
    near(rigid.at, 1e-3 + 1100 / (1e9 - 1e6), { abs: 1e-9 }, 'wall');
    const bent = createRig(brake, { flexible: true, elements: 12, strutGive: 0 });
    const tipped = settled(tips, false, bent);
    expect(tipped.converged).toBe(true);
    near(tipped.at, -1e-4, { abs: 1e-9 }, 'tips');
  });

  it('what rounding leaves over, less than a ten thousandth of a newton, is a balance; more is none', () => {
    // Pushed to and fro by as much wherever it goes; moments over 100 mm.
    const stays = (moment: number) => settled((y) => [y < 1e-3 ? moment : -moment, -1e6]);
    const little = stays(9e-3);
    expect(little.converged).toBe(true);
    near(little.residual, 9e-5, { rel: 1e-9 });
    expect(stays(1.1e-2).converged).toBe(false);
    expect(stays(1.1e-2).residual).toBeGreaterThan(1e-4);
  });

  it('marches no farther than 400 steps; a step in time goes on from there by descent', () => {
    // So steep that the march jumps over it to the end.
    const steep = arctangent(1e4, 1e-6, 1e-3);
    const rest = settled(steep);
    expect(rest.iterations).toBeGreaterThan(400);
    expect(rest.iterations).toBeLessThan(420);
    const moving = settled(steep, true);
    expect(moving.converged).toBe(true);
    near(moving.at, 1e-3, { abs: 1e-9 });
    // A root has no slope that leads to it: Newton goes from side to side as far as it came.
    for (const power of [0.35, 0.5]) {
      const root: Law = (y) => {
        const d = Math.abs(y - 3e-4);
        return [
          -1000 * Math.sign(y - 3e-4) * d ** power,
          -1000 * power * Math.max(d, 1e-30) ** (power - 1),
        ];
      };
      const s = settled(root, true);
      expect(s.converged, `${power}`).toBe(true);
      near(s.at, 3e-4, { abs: 1e-9 }, `${power}`);
    }
  });
});

describe('which supports act', () => {
  // Seats level: the front one 130 above its pin, the rear one too, and 16 below the lever's pivot: a turn of the
  // front shoe parts them by 130 a radian, of the rear shoe and of the lever on its pull they come nearer by 130, 16.
  const STIFF = 1e13;
  const solved = (
    m: readonly number[],
    from: Supports,
    more: Partial<Acting> = {},
    under: Partial<Settling> = {},
    change: readonly number[] = [],
  ): { s: Solution; y: Float64Array } => {
    const { w, act } = made(m, [1e6, STIFF, 1e4], more, change);
    const y = new Float64Array(3);
    const settling = { inertia: null, leverStop: 0, shaken: 'not', ...under } as const;
    return { s: solvePose(rig, w, y, act, settling, from), y };
  };
  const ON = { strutOn: true, leverFree: false };
  const OFF = { strutOn: false, leverFree: false };

  it('a strut is clamped by what presses the shoes on it, met or not before; and let go where it would pull', () => {
    for (const from of [ON, OFF]) {
      const { s, y } = solved([-13000, 0, 0], from);
      expect(s).toMatchObject({ strutOn: true, leverFree: false, settled: true, converged: true });
      near(s.clamp, 100, { rel: 1e-6 }, 'clamp');
      // Its rear shoe, as stiff as it is, by 13000/1e13 rad.
      near(y[0] as number, 0, { abs: 1e-8 }, 'stays');
    }
    for (const from of [ON, OFF]) {
      const { s, y } = solved([1000, 0, 0], from);
      expect(s).toMatchObject({ strutOn: false, clamp: 0, settled: true });
      near(y[0] as number, 1e-3, { rel: 1e-9 }, 'parts');
    }
  });

  it('a cable or a hand frees the lever from where it beats the clamp at the lever’s seat, 16 mm·100 N', () => {
    const lever = [{ on: 'lever', at: [0, 0], to: [0, 0], rate: 1, limit: 1 }] as const;
    const front = [{ ...lever[0], on: 'front' }] as const;
    const free = (m: number, more: Partial<Acting>, under: Partial<Settling> = {}) =>
      solved([-13000, 0, m], ON, more, under).s.leverFree;
    expect(free(1599, { cable: 1 })).toBe(false);
    expect(free(1601, { cable: 1 })).toBe(true);
    expect(free(1601, {})).toBe(false);
    expect(free(1599, { hands: lever })).toBe(false);
    expect(free(1601, { hands: lever })).toBe(true);
    expect(free(1601, { hands: front })).toBe(false);
    // What the lever's own inertia takes, or gives: 1e4 · (0 − 0.01) is 100 the other way.
    const massOverH2 = Float64Array.of(0, 0, 0, 0, 0, 0, 0, 0, 1e4);
    const inertia = (at: number) => ({ massOverH2, free: Float64Array.of(0, 0, at) });
    expect(free(1550, { cable: 1 }, { inertia: inertia(0.01) })).toBe(true);
    expect(free(1650, { cable: 1 }, { inertia: inertia(-0.01) })).toBe(false);
    expect(free(1750, { cable: 1 }, { inertia: inertia(-0.01) })).toBe(true);
  });

  it('off its stop the lever presses the seats apart', () => {
    const { s, y } = solved([-13000, 0, 2600], ON, { cable: 1 });
    expect(s).toMatchObject({ strutOn: true, leverFree: true, settled: true });
    const [front = 0, rear = 0, lever = 0] = y;
    // The seats by plane trigonometry: (−43.2, 130) about (−16, −78); (−1, −16) about the lever's pivot (46, 68).
    const apart = (f: number, l: number): number => {
      const xf = -16 - 43.2 * Math.cos(f) - 130 * Math.sin(f);
      const yf = -78 - 43.2 * Math.sin(f) + 130 * Math.cos(f);
      const xr = 46 - Math.cos(l) - 16 * Math.sin(l);
      const yr = 68 + Math.sin(l) - 16 * Math.cos(l);
      return Math.hypot(xr - xf, yr - yf);
    };
    near(rear, 0, { abs: 1e-7 }, 'rear shoe');
    near(apart(front, lever), APART, { abs: 1e-6 }, 'on the strut');
    const h = 1e-6;
    const byFront = (apart(front + h, lever) - apart(front - h, lever)) / (2 * h);
    const byLever = (apart(front, lever + h) - apart(front, lever - h)) / (2 * h);
    near(-13000 - 1e6 * front + s.clamp * byFront, 0, { abs: 0.02 }, 'front shoe');
    near(2600 - 1e4 * lever + s.clamp * byLever, 0, { abs: 0.02 }, 'lever');
    expect(lever).toBeGreaterThan(0.03);
  });

  it('a lever drawn back comes to its stop, where that is; without strut, cable and hand it is there', () => {
    const back = solved([-13000, 0, -50], { strutOn: true, leverFree: true }, { cable: 1 });
    expect(back.s).toMatchObject({ leverFree: false, strutOn: true, settled: true });
    near(back.y[2] as number, 0, { abs: 1e-12 }, 'at its stop');
    const stopped = solved(
      [1000, 0, 50],
      { strutOn: false, leverFree: true },
      {},
      { leverStop: -0.02 },
    );
    expect(stopped.s).toMatchObject({ leverFree: false, strutOn: false, settled: true });
    expect(stopped.y[2]).toBe(-0.02);
  });

  it('let go the strut leaves the lever on its cable or in a hand, and else at its stop', () => {
    // 1 mrad of the front shoe parts the seats by 0.13 mm, 5 of the lever bring them 0.08 nearer.
    const lever = { on: 'lever', at: [0, 0], to: [0, 0], rate: 1, limit: 1 } as const;
    const hands = [{ ...lever, on: 'front' } as const, lever];
    for (const more of [{ cable: 1 }, { hands }])
      for (const strutOn of [true, false])
        for (const leverFree of [true, false]) {
          const { s, y } = solved([1000, 0, 50], { strutOn, leverFree }, more);
          const label = `${strutOn} ${leverFree}`;
          expect(s, label).toMatchObject({ strutOn: false, leverFree: true, settled: true });
          near(y[2] as number, 0.005, { rel: 1e-6 }, label);
        }
    for (const leverFree of [true, false]) {
      const { s, y } = solved([1000, 0, 50], { strutOn: true, leverFree });
      expect(s).toMatchObject({ strutOn: false, leverFree: false, settled: true });
      near(y[2] as number, 0, { abs: 1e-12 });
    }
  });

  it('shoes that part held and fall back shaken lie on the strut without force, shaken just so far', () => {
    // 200 N·mm part them, 500 are shaken off: 200 = 500·0.4; and the same again from there, or from elsewhere.
    const shaken = { shaken: 'off the strut' } as const;
    for (const shakenPart of [undefined, 0, 0.39, 0.9, 1]) {
      const from = { ...ON, ...(shakenPart === undefined ? {} : { shakenPart }) };
      const { s, y } = solved([200, 0, 0], from, {}, shaken, [-500]);
      expect(s, `${shakenPart}`).toMatchObject({ strutOn: true, clamp: 0, settled: true });
      near(s.shakenPart as number, 0.4, { abs: 1e-6 }, `${shakenPart}`);
      near(y[0] as number, 0, { abs: 1e-9 }, 'touch');
    }
    // From a part nearly known it is one straight line; without it at least three: on the strut, off it, between.
    const steps = (shakenPart: number) =>
      solved([200, 0, 0], { ...ON, shakenPart }, {}, shaken, [-500]).s.iterations;
    expect([steps(0.4), steps(0.9)]).toEqual([1, 1]);
    expect(Math.min(steps(0), steps(1))).toBeGreaterThan(2);
    // A part is nothing where none is shaken off, or all along.
    const part = { ...ON, shakenPart: 0.4 };
    const held = solved([200, 0, 0], part, {}, {}, [-500]);
    expect(held.s).toMatchObject({ strutOn: false, shakenPart: 0 });
    near(held.y[0] as number, 2e-4, { rel: 1e-9 }, 'held');
    const all = solved([200, 0, 0], part, {}, { shaken: 'all along' }, [-500]);
    expect(all.s).toMatchObject({ strutOn: true, shakenPart: 1 });
    near(all.s.clamp, 300 / 130, { rel: 1e-6 }, 'all along');
    // A lever 0.05 mrad on, by its cable or on its stop, parts the front shoe by 16/130 of that from its place.
    const parted = (200 - (1e6 * 5e-5 * 16) / 130) / 500;
    const drawn = solved([200, 0, 0.5], { ...part, leverFree: true }, { cable: 1 }, shaken, [-500]);
    const stopped = solved([200, 0, 0], part, {}, { ...shaken, leverStop: 5e-5 }, [-500]);
    for (const { s, y } of [drawn, stopped]) {
      near(s.shakenPart as number, parted, { abs: 1e-5 }, 'with the lever');
      near(y[2] as number, 5e-5, { rel: 1e-6 }, 'lever');
    }
    // What lay on the strut before may not any more: less is shaken off than parts them, or they are pressed on it.
    for (const shakenPart of [0.3, 0.8]) {
      const parts = solved([200, 0, 0], { ...ON, shakenPart }, {}, shaken, [-150]);
      expect(parts.s).toMatchObject({ strutOn: false, clamp: 0, shakenPart: 1, settled: true });
      near(parts.y[0] as number, 5e-5, { rel: 1e-9 }, 'parts');
      const pressed = solved([-130, 0, 0], { ...ON, shakenPart }, {}, shaken, [-500]);
      expect(pressed.s).toMatchObject({ strutOn: true, shakenPart: 0, settled: true });
      near(pressed.s.clamp, 1, { rel: 1e-6 }, 'pressed');
    }
    // Nothing falls back where less is shaken off than parts them.
    const free = solved([200, 0, 0], ON, {}, shaken, [-150]);
    expect(free.s).toMatchObject({ strutOn: false, shakenPart: 1 });
    near(free.y[0] as number, 5e-5, { rel: 1e-9 }, 'free');
  });

  describe('where shaking does not do as it is told by its slope', () => {
    /** 200 part the front shoe, and up to 500 are shaken off. @param share of them, and its slope, by the part shaken */
    const sought = (share: (part: number) => readonly [number, number]) => {
      const { w, act } = made([200, 0, 0], [1e6, STIFF, 1e4]);
      const shakes: Force = {
        ...{ name: 'shakes', remembers: 0, slot: 0 },
        prepare: () => undefined,
        add: (to, _, { shaken }) => {
          const [off, slope] = share(shaken);
          to.q[0] = (to.q[0] as number) - 500 * off;
          to.byShaken[0] = (to.byShaken[0] as number) - 500 * slope;
        },
        arrows: () => [],
        energy: () => null,
      };
      const y = new Float64Array(3);
      const under = { inertia: null, leverStop: 0, shaken: 'off the strut' } as const;
      const s = solvePose(rig, { ...w, forces: [...w.forces, shakes] }, y, act, under, ON);
      return { s, y, part: s.shakenPart as number };
    };

    it('finds the part by halving', () => {
      // All of it comes within a few thousandths of one part: two fifths are off at (tan(0.4·3 − 1.5) + …) of them.
      for (const [at, width] of [
        [0.4, 1e-3],
        [0.85, 1e-3],
        [0.1, 4e-3],
        [0.6, 1e-4],
      ] as const) {
        const law = (part: number) => Math.atan((part - at) / width) / 3 + 0.5;
        const { s, y, part } = sought((p) => [
          law(p),
          1 / (3 * width * (1 + ((p - at) / width) ** 2)),
        ]);
        expect(s, `${at}`).toMatchObject({
          strutOn: true,
          clamp: 0,
          settled: true,
          converged: true,
        });
        near(part, at + width * Math.tan(3 * (0.4 - 0.5)), { abs: 2e-3 * width }, `${at}`);
        // Newton gives up after some 85 steps; by slopes and halvings it is near within twenty more.
        expect(s.iterations).toBeLessThan(104);
        // A ten millionth of a millimetre, at 130 over the pin.
        near(y[0] as number, 0, { abs: 1e-9 }, 'touch');
      }
    });

    it('stops a hair before a part at which the shoes jump past the strut, free of it', () => {
      for (const jump of [0.3, 0.7251234]) {
        const { s, y, part } = sought((p) => [p < jump ? 0.1 : 0.9, 0]);
        expect(s).toMatchObject({ strutOn: false, settled: true, converged: true });
        expect(part).toBeLessThan(jump);
        expect(part).toBeGreaterThan(jump - 2.1e-5);
        near(y[0] as number, 150e-6, { abs: 1e-12 }, 'free');
        // A quarter of a hair takes nineteen halvings, of which those that leave it free take no step.
        expect(s.iterations).toBeLessThan(19);
      }
    });
  });

  it('is a balance where it settled and leaves less than half a newton', () => {
    const { s } = solved([-13000, 0, 0], ON);
    expect(balances(s)).toBe(true);
    expect(balances({ ...s, residual: 0.49 })).toBe(true);
    expect(balances({ ...s, residual: 0.51 })).toBe(false);
    expect(balances({ ...s, settled: false })).toBe(false);
  });

  it('a strut that gives is clamped less: it shortens by what it bears beyond its rest', () => {
    // 130·Δ + give·(S − 40) = 0, −13000 − 1e6·Δ + 130·S = 0.
    const give = 1e-4;
    const soft = createRig(brake, { strutGive: give });
    const { w, act } = made([-13000, 0, 0], [1e6, STIFF, 1e4], { strutRest: 40 });
    const y = new Float64Array(3);
    const s = solvePose(soft, w, y, act, { inertia: null, leverStop: 0, shaken: 'not' }, ON);
    const clamp = (13000 + (1e6 * give * 40) / 130) / (130 + (1e6 * give) / 130);
    near(s.clamp, clamp, { rel: 1e-5 }, 'clamp');
    near(y[0] as number, (-give * (clamp - 40)) / 130, { rel: 1e-3 }, 'shorter');
  });

  it('a turning drum shakes hold-downs off where the strut lets go, or all along', () => {
    const part = (m: number, shaken: Settling['shaken']) =>
      solved([m, 0, 0], ON, {}, { shaken }).s.shakenPart;
    expect([part(-13000, 'not'), part(1000, 'not')]).toEqual([0, 0]);
    expect([part(-13000, 'off the strut'), part(1000, 'off the strut')]).toEqual([0, 1]);
    expect([part(-13000, 'all along'), part(1000, 'all along')]).toEqual([1, 1]);
  });
});

describe('a press', () => {
  it('acts with what line and cable keep, less what a stiff lever pivot loses', () => {
    const ill = { ...SOUND, keptPressure: 0.3, keptCable: 60, leverLoss: 0.25 };
    const press = { pressure: 2, turning: -1, cable: 200, drumAngle: 0.7 } as const;
    expect(acting(brake, ill, press)).toEqual({
      ...{ pressure: 2, turning: -1, cable: 150, drumAngle: 0.7 },
    });
    expect(acting(brake, ill, { pressure: 0.1, turning: 0 })).toEqual({
      ...{ pressure: 0.3, turning: 0, cable: 60, drumAngle: 0 },
    });
    expect(acting(brake, SOUND, { pressure: 0, turning: 0 }).cable).toBe(0);
  });

  it('remembers its way where dry friction holds a shoe that can slide', () => {
    expect(remembers(rig, 0)).toBe(false);
    expect([remembers(sliding(0.1, 0, 0), 1), remembers(sliding(0.1, 0, 0), 0)]).toEqual([
      true,
      true,
    ]);
    expect([remembers(sliding(0, 0, 0), 1), remembers(sliding(0, 0, 0), 0)]).toEqual([
      false,
      false,
    ]);
    // All shaken off by a turning drum; a part.
    expect([remembers(sliding(0, 12, 1), 1), remembers(sliding(0, 12, 1), 0)]).toEqual([
      false,
      true,
    ]);
    expect(remembers(sliding(0, 12, 0.5), 1)).toBe(true);
  });

  const stepped = (
    on: typeof rig,
    letsGo: number,
    path?: Path,
    touch: readonly [front: number, rear: number] = [2, 2],
  ) => {
    const at = new Float64Array(on.n);
    const w = makeWork(on);
    const hand = { on: 'front', at: [0, 0], to: [1, 0], rate: 6, limit: 60 } as const;
    const act: Acting = {
      ...{ pressure: 8, cable: 80, frontLaw: law, rearLaw: law, memory: w.memory, home: w.memory },
      ...{ drum: {} as Acting['drum'], strutLength: 0, strutRest: 0, shaken: 0, hands: [hand] },
    };
    const shares: number[] = [];
    const starts: number[] = [];
    /** What the bristles hold at before each step: all of a step that was taken over. */
    const held: number[] = [];
    const solve = (): Solution => {
      const share = act.pressure / 8;
      expect(act.cable).toBeCloseTo(80 * share, 9);
      expect(act.hands?.[0]).toMatchObject({ on: 'front', rate: 6 * share, limit: 60 * share });
      shares.push(share);
      starts.push(at[0] as number);
      held.push(act.memory[0] ?? share);
      w.after.fill(share);
      on.front.rub.normal[5] = share >= touch[0] ? 1 : 0;
      on.rear.rub.normal[5] = share >= touch[1] ? 1 : 0;
      at[0] = share;
      const ended = { residual: 0, iterations: 1, converged: true, settled: true };
      const supports = { strutOn: share < letsGo, leverFree: false, shakenPart: share / 2 };
      return { ...ended, ...supports, clamp: share };
    };
    const none = {} as never;
    const asked = {
      rig: on,
      work: w,
      act,
      worn: { front: none, rear: none },
      turning: 1,
      pose: at,
    };
    const s = pressInSteps({ ...asked, turning: 1, solve, ...(path ? { path } : {}) });
    return { shares, starts, held, s };
  };
  const steps = (n: number) => Array.from({ length: n + 1 }, (_, i) => i / n);

  it('goes by quarters, and where friction holds by sixteenths, the one parted finer in which the strut lets go', () => {
    expect(stepped(rig, 0.4).shares).toEqual(steps(4));
    const on = sliding(0.1, 12, 1);
    expect(stepped(on, 2).shares).toEqual(steps(16));
    // It lets go between 8 and 9 sixteenths: back to 8, and on by 256ths.
    const fine = Array.from({ length: 16 }, (_, k) => 8 / 16 + (k + 1) / 256);
    const found = stepped(on, 0.53);
    expect(found.shares).toEqual([...steps(16).slice(0, 10), ...fine, ...steps(16).slice(10)]);
    expect(found.starts.slice(9, 12)).toEqual([8 / 16, 8 / 16, 8 / 16 + 1 / 256]);
    expect(found.s).toMatchObject({ strutOn: false, clamp: 1 });
    // The step that is parted leaves nothing behind.
    expect(found.held).toEqual(found.starts);
  });

  it('is parted finer where a lining touches, of either shoe', () => {
    const on = sliding(0.1, 12, 1);
    const fine = (from: number) => Array.from({ length: 16 }, (_, k) => from / 16 + (k + 1) / 256);
    const [coarse, expected] = [steps(16), [] as number[]];
    // Between 3 and 4 sixteenths the front one, between 10 and 11 the rear one.
    expected.push(...coarse.slice(0, 5), ...fine(3), ...coarse.slice(5, 12), ...fine(10));
    expected.push(...coarse.slice(12));
    expect(stepped(on, 2, undefined, [0.21, 0.65]).shares).toEqual(expected);
    on.front.rub.normal.fill(0);
    on.rear.rub.normal.fill(0);
  });

  it('a press nearly like the one before starts each step as far on as that one went', () => {
    const path: Path = new Map();
    expect(stepped(rig, 2, path).starts).toEqual([0, 0, 0.25, 0.5, 0.75]);
    expect(path.size).toBe(5);
    expect(stepped(rig, 2, path).starts).toEqual([0, 0.25, 0.5, 0.75, 1]);
    // Each on the supports that it ended on; fine steps beside the coarse one that they part.
    expect([...path.values()].map(({ clamp, shakenPart }) => [clamp, shakenPart])).toEqual(
      steps(4).map((share) => [share, share / 2]),
    );
    const parted: Path = new Map();
    stepped(sliding(0.1, 12, 1), 0.53, parted);
    expect(parted.size).toBe(17 + 16);
    expect(new Set(parted.keys()).size).toBe(33);
  });
});

it('an evaluation begins anew: what stood in the work before is gone', () => {
  const { w, act } = made([7, 8, 9], [1, 1, 1]);
  for (const v of [w.q, w.k, w.byShaken, w.outer, w.springMoment]) v.fill(5);
  assemble(rig, w, new Float64Array(3), act);
  expect([...w.q]).toEqual([7, 8, 9]);
  expect([...w.k]).toEqual([-1, 0, 0, 0, -1, 0, 0, 0, -1]);
  expect([...w.byShaken, ...w.outer, ...w.springMoment].every((v) => v === 0)).toBe(true);
  [130, -130, -16].forEach((v, j) => {
    near(w.seatGradient[j] as number, v, { abs: 1e-9 }, `gradient ${j}`);
  });
  near(w.strut.length, APART, { abs: 1e-9 }, 'seats');
});

it('the clamp’s own slope is that of its force on the seats, whose direction turns', () => {
  const { w, act } = made([0, 0, 0], [0, 0, 0]);
  const y = Float64Array.of(0.02, -0.03, 0.2);
  const at = (j: number, by: number): Float64Array => {
    const moved = y.slice();
    moved[j] = (moved[j] as number) + by;
    assemble(rig, w, moved, act);
    return w.seatGradient.slice();
  };
  const h = 1e-6;
  const quotients = [0, 1, 2].map((j) => {
    const [up, down] = [at(j, h), at(j, -h)];
    return up.map((v, i) => (50 * (v - (down[i] as number))) / (2 * h));
  });
  at(0, 0);
  addClampTangent(rig, w, 50);
  for (let j = 0; j < 3; j++)
    for (let l = 0; l < 3; l++)
      near(w.k[3 * j + l] as number, quotients[l]?.[j] as number, { abs: 1e-3 }, `${j} ${l}`);
});

it('something gave way where one force of all did, and all are asked', () => {
  const asked: string[] = [];
  const force = (name: string, gave?: boolean): Force => {
    const plain = new Turning([], []);
    if (gave === undefined) return plain;
    const gaveWay = (): boolean => asked.push(name) > 0 && gave;
    return Object.assign(plain, { gaveWay });
  };
  const { w, act } = made([0, 0, 0], [0, 0, 0]);
  const gave = (...forces: Force[]) => gaveWay({ ...w, forces }, act);
  expect(gave(force('a', false), force('b'), force('c', false))).toBe(false);
  expect(gave(force('d', true), force('e', false), force('f', true))).toBe(true);
  expect(asked).toEqual(['a', 'c', 'd', 'e', 'f']);
});
