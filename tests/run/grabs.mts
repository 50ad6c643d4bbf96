// npm run test:grabs: 10 000 random grabs (or so many: npm run test:grabs -- 500), in as many processes as there are
// processors; a batch's seed is its number, so the few of tests/unit/hands/grabs.test.ts are the first of them.
import { BATCH, tryGrabs, type Wrong } from '../random-grabs.ts';
import { shareOut, work } from './share-out.mts';

interface Task {
  readonly batch: number;
  readonly runs: number;
}

async function main(count: number): Promise<void> {
  const tasks: Task[] = [];
  for (let done = 0; done < count; done += BATCH) {
    tasks.push({ batch: done / BATCH, runs: Math.min(BATCH, count - done) });
  }
  let wrong = 0;
  await shareOut<Task, readonly Wrong[]>(import.meta.url, tasks, (told, left) => {
    const list = 'wrong' in told ? [{ why: told.wrong, grab: null }] : told.answer;
    wrong += list.length;
    for (const { why, grab } of list) console.error(`${why}: ${JSON.stringify(grab)}`);
    if (left % 10 === 0) console.log(`${left * BATCH} to go, ${wrong} with faults`);
  });
  console.log(`${count} grabs, ${wrong} with faults`);
  process.exitCode = wrong > 0 ? 1 : 0;
}

const [count = '10000'] = process.argv.slice(2);
if (count === 'work') work(({ batch, runs }: Task) => tryGrabs(batch, runs));
else if (!(Number(count) > 0)) {
  console.error(`how many: found ${count}; allowed: a number over 0`);
  process.exitCode = 2;
} else await main(Number(count));
