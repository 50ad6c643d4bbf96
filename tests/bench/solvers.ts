/** What the solvers cost. Bundled and started by run.ts; hands the goals back to it. */
import quayVan from '../../scenes/quay-van.json';
import {
  balance,
  createMotion,
  createRig,
  freshState,
  type Rig,
  sin,
  solveBalance,
} from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import { BOXES, engineLoads } from './engines.ts';
import { compare, type Goal, ratio, type Timed } from './timing.ts';

const say = (text: string): void => console.log(text);
const us = (v: number): string => `${v.toFixed(1).padStart(7)} µs`;
const line = (t: Timed): string =>
  `  ${t.name.padEnd(34)}${us(t.median)}   fastest ${us(t.fastest)}`;

const brake = mustRead(quayVan);
const rig = createRig(brake);
const fresh = freshState(brake);

/** Balance from a pose near the answer, a Motion step, and the engines' steps: µs and ratios. */
async function steps(): Promise<Goal[]> {
  const press = (n: number) => ({ pressure: 4 + (n % 10) * 1e-3, turning: 1 }) as const;
  const warm = (on: Rig): (() => void) => {
    const near = solveBalance(on, fresh, press(0));
    const { strutOn, leverFree } = near.solution;
    const guess = { pose: near.pose.slice(), strutOn, leverFree };
    let n = 0;
    return () => solveBalance(on, fresh, press(n++), guess);
  };
  const motion = createMotion(rig, fresh);
  const engines = await engineLoads();
  let m = 0;
  const timed = compare([
    { name: 'Balance, one warm solve', call: warm(rig) },
    {
      name: 'Motion, one step (the brake)',
      call: () => motion.step({ pressure: 4 + sin(m++ / 20), turning: 1 }),
    },
    { name: 'Balance with bending shoes', call: warm(createRig(brake, { flexible: true })) },
    ...engines.map(({ name, step }) => ({ name, call: step })),
  ]);
  const [solve, step, bent, own] = timed as [Timed, Timed, Timed, Timed];
  say(`Solvers and engines; steps of 1/240 s, medians of ${solve.rounds.length} rounds by turns`);
  timed.forEach((t, i) => {
    const load = engines[i - 3];
    if (!load) say(line(t));
    else {
      const what = `${BOXES} bodies, ${load.joints()} joints, ${load.contacts()} contacts`;
      say(`${line(t)}   ${what}; Motion is ${ratio(step, t).toFixed(2)} of it`);
    }
  });
  say(`  Balance is ${ratio(solve, own).toFixed(3)} of the engine’s own step`);
  return [
    { name: 'a warm Balance solve in at most 15 µs', reached: solve.median <= 15 },
    { name: 'a warm Balance with bending shoes in at most 45 µs', reached: bent.median <= 45 },
    {
      name: 'a Motion step in at most 0.5 of the engine’s own with 60 contacts',
      reached: engines[0]?.contacts() === 60 && ratio(step, own) <= 0.5,
    },
  ];
}

function convergence(): void {
  const press = { pressure: 4, turning: 1 } as const;
  const torque = (i: ReturnType<typeof balance>): number =>
    i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum;
  const percent = (part: number): string => `${(part * 100).toExponential(1)} %`;
  const at = (elements: number): number => {
    const state = freshState(brake, brake.drum.radiusNew, elements);
    return torque(balance(createRig(brake, { elements }), state, press));
  };
  const fine = at(768);
  say('\nConvergence of the torque at 4 MPa: elements of a lining, against 768');
  for (const elements of [12, 24, 48, 96, 192]) {
    say(`  ${String(elements).padStart(6)}   ${percent(at(elements) / fine - 1)}`);
  }
  const still = torque(balance(rig, fresh, press));
  say('Step of Motion, settled for a second, against Balance');
  for (const rate of [60, 120, 240, 480, 960]) {
    const motion = createMotion(rig, fresh, 1 / rate);
    for (let n = 0; n < rate; n++) motion.step(press);
    say(`  1/${String(rate).padEnd(4)} s ${percent(torque(motion.instant()) / still - 1)}`);
  }
}

const goals = await steps();
convergence();
process.send?.(goals);
