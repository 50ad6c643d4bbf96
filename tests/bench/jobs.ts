import { isDeepStrictEqual } from 'node:util';
import quayVan from '../../scenes/quay-van.json';
import { quantitiesOf, Vary } from '../../sim/index.ts';
import { work } from '../../ui/command/jobs.ts';
import { type Plan, unitsOf } from '../../ui/command/vary-plan.ts';
import { baseOf } from '../vary-base.ts';
import { type Goal, median } from './timing.ts';

/** Workers are cold when they begin: their compiler has to have done its work before what is counted. */
const FEW = 1500;
const MANY = 3500;
const ROUNDS = 1;

const base = baseOf(quayVan);
const friction = quantitiesOf(base, new Vary(base).brake).find(
  (q) => q.id === 'shoes.lining.friction',
);

/** What a sweep took, s: on the wall, and of all processors together. */
interface Took {
  readonly wall: number;
  readonly processor: number;
  readonly found: unknown;
}

/** A sweep of so many points by so many workers, as `vary --jobs` does it. */
async function swept(count: number, jobs: number): Promise<Took> {
  if (!friction) throw new Error('a teaching brake has friction');
  const plan: Plan = {
    base,
    of: friction,
    from: 0.25,
    to: 0.45,
    count,
    also: [null],
    keys: ['torque'],
  };
  const from = performance.now();
  const used = process.cpuUsage();
  const found = await work(plan, unitsOf(plan), jobs, () => {});
  const { user, system } = process.cpuUsage(used);
  return { wall: (performance.now() - from) / 1000, processor: (user + system) / 1e6, found };
}

/** What a long sweep takes more than a short one, a point: without the workers' start. */
async function each(jobs: number): Promise<Took> {
  const few = await swept(FEW, jobs);
  const many = await swept(MANY, jobs);
  const per = (what: 'wall' | 'processor'): number => (many[what] - few[what]) / (MANY - FEW);
  return { wall: per('wall'), processor: per('processor'), found: many.found };
}

/**
 * Sweep throughput in one process and in two workers. On a machine that others use the wall's time says who else was
 * there; what two workers cost more than one, the processors' time says.
 */
export async function jobs(): Promise<Goal[]> {
  const rounds: (readonly [Took, Took])[] = [];
  await swept(FEW, 1);
  for (let r = 0; r < ROUNDS; r++) rounds.push([await each(1), await each(2)]);
  console.log(
    `\nSweep as vary --jobs does it, a brake built for each point; from ${FEW} points on`,
  );
  for (const i of [0, 1] as const) {
    const wall = median(rounds.map((r) => r[i].wall));
    const processor = median(rounds.map((r) => r[i].processor));
    console.log(
      `  --jobs ${i + 1}   ${(1 / wall).toFixed(0)} points a second, ${(1000 * processor).toFixed(2)} ms of a processor each; ${(processor / wall).toFixed(2)} processors were had`,
    );
  }
  const dearer = median(rounds.map(([one, two]) => two.processor / one.processor));
  const gain = median(rounds.map(([one, two]) => one.wall / two.wall));
  console.log(
    `  two came to ${gain.toFixed(2)} times one on the wall; a point costs them ${dearer.toFixed(2)} times the processor's time`,
  );
  return [
    {
      name: 'a sweep by two workers equals that by one to the bit',
      reached: rounds.every(([one, two]) => isDeepStrictEqual(one.found, two.found)),
    },
    {
      name: 'a point by two workers in at most 1.2 times the processor’s time of one',
      reached: dearer <= 1.2,
    },
  ];
}
