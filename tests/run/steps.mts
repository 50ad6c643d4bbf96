// npm run test:steps: a million random steps of Motion (or so many: npm run test:steps -- 50000), on scenes and random
// brakes; in as many processes as there are processors. A walk's seed is its number, so the few of
// tests/unit/random-steps.test.ts are the first of them.
import { WALK, walkOf } from '../any-walk.ts';
import { shareOut, work } from './share-out.mts';

const BATCH = 20;

interface Task {
  readonly from: number;
  readonly to: number;
}
interface Batch {
  readonly steps: number;
  readonly clicks: number;
  /** Longest walk, µs of a processor a step. */
  readonly slowest: number;
  /** What the worst walk's energy books are open by. */
  readonly open: number;
  readonly wrong: readonly string[];
}

function tried({ from, to }: Task): Batch {
  let [steps, clicks, slowest, open] = [0, 0, 0, 0];
  const wrong: string[] = [];
  for (let seed = from; seed < to; seed++) {
    const start = process.cpuUsage();
    const w = walkOf(seed);
    const { user, system } = process.cpuUsage(start);
    steps += w.steps;
    clicks += w.clicks;
    slowest = Math.max(slowest, (user + system) / w.steps);
    open = Math.max(open, w.open);
    wrong.push(...w.wrong.map((why) => `walk ${seed}, ${why}`));
  }
  return { steps, clicks, slowest, open, wrong };
}

async function main(count: number): Promise<void> {
  const walks = Math.ceil(count / WALK);
  const tasks: Task[] = [];
  for (let from = 0; from < walks; from += BATCH) {
    tasks.push({ from, to: Math.min(walks, from + BATCH) });
  }
  let [steps, clicks, slowest, open, wrong] = [0, 0, 0, 0, 0];
  await shareOut<Task, Batch>(import.meta.url, tasks, (told, left) => {
    const list = 'wrong' in told ? [told.wrong] : told.answer.wrong;
    wrong += list.length;
    for (const why of list) console.error(why);
    if ('answer' in told) {
      steps += told.answer.steps;
      clicks += told.answer.clicks;
      slowest = Math.max(slowest, told.answer.slowest);
      open = Math.max(open, told.answer.open);
    }
    if (left % 10 === 0) console.log(`${steps} steps, ${left} batches to go, ${wrong} faults`);
  });
  console.log(
    `${steps} steps in ${walks} walks, ${clicks} clicks, ${wrong} faults; ` +
      `slowest walk ${slowest.toFixed(0)} µs a step; energy books open by ${open.toExponential(1)} at most`,
  );
  process.exitCode = wrong > 0 ? 1 : 0;
}

const [count = '1000000'] = process.argv.slice(2);
if (count === 'work') work(tried);
else if (!(Number(count) > 0)) {
  console.error(`how many: found ${count}; allowed: a number over 0`);
  process.exitCode = 2;
} else await main(Number(count));
