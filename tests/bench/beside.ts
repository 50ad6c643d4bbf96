/**
 * Balance and Motion beside general tools on the same equations: a Levenberg–Marquardt solver (ml-levenberg-marquardt)
 * on the sum of forces, Q(y) = 0, and a Dormand–Prince integrator (mathjs, solveODE) on M·y″ = Q(y). Accuracy reached
 * against time. Bundled and started by run.ts; hands its goals back to it.
 */
import { all, create, type FactoryFunctionMap } from 'mathjs';
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import quayVan from '../../scenes/quay-van.json';
import { assemble } from '../../sim/balance/assemble.ts';
import { solvePose } from '../../sim/balance/solve.ts';
import { createRig, freshState, solveBalance } from '../../sim/index.ts';
import { Masses } from '../../sim/motion/carried.ts';
import { mustRead } from '../brakes.ts';
import { compare, type Goal, ratio, type Timed } from './timing.ts';

const brake = mustRead(quayVan);
const rig = createRig(brake);
/** 40 bar with the drum turning: the strut is let go and the parking lever on its stop, so two turns are left. */
const {
  act,
  dressed,
  pose: found,
  solution,
  work,
} = solveBalance(rig, freshState(brake), { pressure: 4, turning: 1 });
if (solution.strutOn || rig.front.freedoms !== 1 || rig.rear.freedoms !== 1) {
  throw new Error('the equations compared are those of two shoes on pins, free of their strut');
}
act.shaken = 1;
/** Turns are told at the toes, mm: of arm 100 in the equations, so that all tools see sizes near one. */
const ARM = 100;
const free = [rig.front.at, rig.rear.at] as const;
const rest = dressed.restPose;
const pose = rest.slice();

/** Forces on the shoes at two moved ends, N on the arm. @param x from the rest pose, mm on the arm */
function forces(x: readonly number[], slopes = false): void {
  free.forEach((at, i) => {
    pose[at] = (rest[at] as number) + (x[i] as number) / ARM;
  });
  work.slopes = slopes;
  assemble(rig, work, pose, act);
  work.slopes = true;
}
const force = (i: number): number => (work.q[free[i] as number] as number) / ARM;
const both = (x: readonly number[]): readonly [number, number] => {
  forces(x);
  return [force(0), force(1)];
};
const unbalanced = (x: readonly number[]): number => Math.max(...both(x).map(Math.abs));

/** Slopes of both forces by both ends, N/mm, as Newton has them. */
function slopesAt(x: readonly number[]): (row: number) => number[] {
  forces(x, true);
  const k = free.map((j) => free.map((l) => (work.k[j * rig.n + l] as number) / (ARM * ARM)));
  return (row) => k[row] as number[];
}

/** So far an end may be sought from where it rests, mm: thrice its clearance. */
const MOST = 1;

/**
 * Both forces brought to nothing by the general solver, from where our own begins.
 *
 * @param near the sum of squares with which it is content, N²
 * @param known it is given our slopes instead of finding them by differences
 */
function general(near: number, known: boolean): number[] {
  const at = (x: number[]) => {
    const f = both(x);
    return (row: number): number => f[row] as number;
  };
  const { parameterValues } = levenbergMarquardt({ x: [0, 1], y: [0, 0] }, at, {
    initialValues: [0, 0],
    // Without bounds its first step from a shoe that touches nothing goes right through the drum, to roots that are none.
    minValues: [-MOST, -MOST],
    maxValues: [MOST, MOST],
    // Its usual difference, a tenth, would reach right through a lining.
    gradientDifference: 1e-6,
    maxIterations: 500,
    errorTolerance: near,
    ...(known ? { jacobianFunction: slopesAt } : {}),
  });
  return parameterValues;
}

const START = { strutOn: false, leverFree: false } as const;
const still = {
  inertia: null,
  leverStop: dressed.leverStop,
  shaken: 'off the strut',
} as const;
const own = rest.slice();
function ours(): number[] {
  own.set(rest);
  solvePose(rig, work, own, act, still, START);
  return ends(own);
}
const ends = (y: Float64Array): number[] =>
  free.map((at) => ((y[at] as number) - (rest[at] as number)) * ARM);

const power = (x: number): string => x.toExponential(1).padStart(8);
const apart = (a: readonly number[], b: readonly number[]): number =>
  Math.max(...a.map((v, i) => Math.abs(v - (b[i] as number))));

const told = (name: string, t: Timed, rest: string): void =>
  console.log(`  ${name.padEnd(54)}${t.median.toFixed(1).padStart(10)} µs   ${rest}`);

function roots(): Goal[] {
  const asks = [1, 1e-4, 1e-8, 1e-12].flatMap((near) =>
    [false, true].map((known) => ({ near, known })),
  );
  const timed = compare([
    { name: 'own', call: ours },
    ...asks.map(({ near, known }) => ({ name: '', call: () => general(near, known) })),
  ]);
  console.log('\nThe balance at 40 bar from the rest pose: what is left unbalanced against time');
  const [mine, ...theirs] = timed as [Timed, ...Timed[]];
  const left = unbalanced(ours());
  told('Balance’s own Newton', mine, `${power(left)} N`);
  const reached = asks.map(({ near, known }, i) => {
    const x = general(near, known);
    const away = unbalanced(x);
    const name = `Levenberg–Marquardt, ${known ? 'our slopes' : 'by differences'}, asked ${power(Math.sqrt(near))} N`;
    const t = theirs[i] as Timed;
    told(
      name,
      t,
      `${power(away)} N, ${power(apart(x, ends(found)))} mm from Balance; ${ratio(t, mine).toFixed(1)} times`,
    );
    return { t, same: apart(x, ends(found)) < 1e-7 };
  });
  const same = reached.filter((r) => r.same);
  return [
    {
      name: 'a general root finder comes to the same balance',
      reached: same.length > 0,
    },
    {
      name: 'Balance’s own Newton quicker than it to that balance',
      reached: same.every(({ t }) => ratio(t, mine) > 1),
    },
  ];
}

/** As mathjs documents it; its types leave it out. */
interface Integrator {
  solveODE(
    rates: (t: number, y: [number, number, number, number]) => number[],
    span: [number, number],
    y0: number[],
    options: { method: 'RK45'; tol: number; firstStep: number; maxIter: number },
  ): { readonly t: number[]; readonly y: number[][] };
}
const math = create(all as FactoryFunctionMap) as unknown as Integrator;
const mass = new Masses(rig).matrix;
const [mf, mr] = free.map((at) => (mass[at * rig.n + at] as number) / (ARM * ARM)) as [
  number,
  number,
];
/** What is looked at after the press: the first touch and some swings, ms. */
const SPAN = 2;

/** Of ends and their speeds, mm and mm/ms: a tonne times mm/s² is a newton. */
function rates(_t: number, [a, b, va, vb]: [number, number, number, number]): number[] {
  const [fa, fb] = both([a, b]);
  return [va, vb, (1e-6 * fa) / mf, (1e-6 * fb) / mr];
}

/** @param near its tolerance, on rates */
function dormandPrince(near: number, span = SPAN): { at: number[]; steps: number } {
  const { t, y } = math.solveODE(rates, [0, span], [0, 0, 0, 0], {
    method: 'RK45',
    tol: near,
    firstStep: 1e-4,
    maxIter: 1e7,
  });
  return { at: (y.at(-1) as number[]).slice(0, 2), steps: t.length - 1 };
}

const moving = rest.slice();
const before = new Float64Array(rig.n);
const inertia = { massOverH2: new Float64Array(rig.n * rig.n), free: new Float64Array(rig.n) };
/** Motion's step, backward Euler by Balance's Newton, so many of them. */
function backward(steps: number, span = SPAN): number[] {
  const h = span / 1000 / steps;
  for (const at of free)
    inertia.massOverH2[at * rig.n + at] = (mass[at * rig.n + at] as number) / (h * h);
  moving.set(rest);
  before.set(rest);
  for (let n = 0; n < steps; n++) {
    for (const at of free) inertia.free[at] = 2 * (moving[at] as number) - (before[at] as number);
    before.set(moving);
    solvePose(rig, work, moving, act, { ...still, inertia }, START);
  }
  return ends(moving);
}

function times(): Goal[] {
  const exact = dormandPrince(1e-9).at;
  const asks = [1e-1, 1e-2, 1e-3, 1e-5, 1e-7];
  const counts = [8, 32, 128, 512, 2048, 8192];
  const timed = compare([
    ...asks.map((near) => ({ name: '', call: () => dormandPrince(near) })),
    ...counts.map((steps) => ({ name: '', call: () => backward(steps) })),
  ]);
  console.log(
    `\nThe first ${SPAN} ms of that press from rest, M·y″ = Q(y): toes’ places against Dormand–Prince at 1e-9`,
  );
  asks.forEach((near, i) => {
    const { at, steps } = dormandPrince(near);
    told(
      `Dormand–Prince, tolerance ${power(near)}, ${steps} steps`,
      timed[i] as Timed,
      `${power(apart(at, exact))} mm`,
    );
  });
  const errors = counts.map((steps, i) => {
    const away = apart(backward(steps), exact);
    told(
      `Motion’s backward Euler, ${steps} steps`,
      timed[asks.length + i] as Timed,
      `${power(away)} mm`,
    );
    return away;
  });
  const [coarse = 0, fine = 1] = errors.slice(-2);
  const long = 100;
  const balanced = ends(found);
  const settled = apart(backward(24, long), balanced);
  const { at, steps } = dormandPrince(1e-2, long);
  const [quick, dear] = compare([
    { name: '', call: () => backward(24, long) },
    { name: '', call: () => dormandPrince(1e-2, long) },
  ]) as [Timed, Timed];
  console.log(`After ${long} ms: how far from the balance`);
  told('Motion’s backward Euler, 24 steps of 1/240 s', quick, `${power(settled)} mm`);
  told(
    `Dormand–Prince, tolerance 1e-2, ${steps} steps`,
    dear,
    `${power(apart(at, balanced))} mm: nothing damps it`,
  );
  return [
    {
      name: 'Motion’s steps come to what a general integrator says, four times finer three to five times nearer',
      reached: coarse / fine > 3 && coarse / fine < 5,
    },
    {
      name: 'Motion’s steps of 1/240 s settle where Balance is, to 1e-6 mm',
      reached: settled < 1e-6,
    },
  ];
}

process.send?.([...roots(), ...times()]);
