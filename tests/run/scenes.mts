// npm run test:scenes: 50 000 changed scenes of each brake, or of one (npm run test:scenes -- runabout 50000).
// Batches go to as many processes as there are processors; a batch's seed is its number, so parts add up.
import { BATCH, type Batch, scenes, tryBatch } from '../changed-scenes.ts';
import { shareOut, work } from './share-out.mts';

/** What a process is told to try. */
interface Task {
  readonly name: string;
  readonly batch: number;
  readonly runs: number;
}

/** All batches of one scene, shared out; gives what was wrong. */
async function tryScene(name: string, count: number): Promise<readonly string[]> {
  const tasks: Task[] = [];
  for (let done = 0; done < count; done += BATCH) {
    tasks.push({ name, batch: done / BATCH, runs: Math.min(BATCH, count - done) });
  }
  const all = { accepted: 0, press: 0, road: 0 };
  const wrong: string[] = [];
  await shareOut<Task, Batch>(import.meta.url, tasks, (told, left) => {
    if ('wrong' in told) wrong.push(`${name}: ${told.wrong}`);
    else {
      all.accepted += told.answer.accepted;
      all.press = Math.max(all.press, told.answer.press);
      all.road = Math.max(all.road, told.answer.road);
    }
    if ('wrong' in told) console.log(told.wrong);
    console.log(`${name}: ${left} batches of ${BATCH} to go, ${all.accepted} accepted`);
  });
  console.log(
    `${name}: ${all.accepted} of ${count} accepted, ${wrong.length} batches with faults; ` +
      `slowest press ${all.press.toFixed(0)} ms, 3 000 km ${all.road.toFixed(0)} ms`,
  );
  return wrong;
}

async function main(names: readonly string[], count: number): Promise<void> {
  const wrong: string[] = [];
  for (const name of names) wrong.push(...(await tryScene(name, count)));
  for (const each of wrong) console.error(each);
  process.exitCode = wrong.length > 0 ? 1 : 0;
}

const [name, count = '50000'] = process.argv.slice(2);
if (name === 'work') work(({ name, batch, runs }: Task) => tryBatch(name, batch, runs, true));
else if (name && !(name in scenes)) {
  console.error(`scene: found ${name}; allowed: ${Object.keys(scenes).join(', ')}`);
  process.exitCode = 2;
} else if (!(Number(count) > 0)) {
  console.error(`how many: found ${count}; allowed: a number over 0`);
  process.exitCode = 2;
} else await main(name ? [name] : Object.keys(scenes), Number(count));
