// npm run test:reads: 200 000 changed texts (or so many: npm run test:reads -- 5000) to everything that is read, shared
// out evenly among the readers; in as many processes as there are processors. A case's seed is its number within its
// reader, so the few of tests/unit/read-fuzz.test.ts are the first of them.
import { judged, makeReaders } from '../read-fuzz.ts';
import { shareOut, work } from './share-out.mts';

const BATCH = 500;

interface Task {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

async function tried({ name, from, to }: Task): Promise<readonly string[]> {
  const reader = (await ready).find((r) => r.name === name);
  if (!reader) throw new Error(`no reader ${name}`);
  const wrong: string[] = [];
  for (let seed = from; seed < to; seed++) {
    for (const why of await judged(reader, seed)) wrong.push(`${name}, case ${seed}: ${why}`);
  }
  return wrong;
}

async function main(count: number): Promise<void> {
  const names = (await ready).map((r) => r.name);
  const each = Math.ceil(count / names.length);
  const tasks: Task[] = names.flatMap((name) =>
    Array.from({ length: Math.ceil(each / BATCH) }, (_, n) => ({
      name,
      from: n * BATCH,
      to: Math.min(each, (n + 1) * BATCH),
    })),
  );
  let wrong = 0;
  await shareOut<Task, readonly string[]>(import.meta.url, tasks, (told, left) => {
    const list = 'wrong' in told ? [told.wrong] : told.answer;
    wrong += list.length;
    for (const why of list) console.error(why);
    if (left % 20 === 0) console.log(`${left} batches of ${BATCH} to go, ${wrong} faults`);
  });
  console.log(`${each * names.length} texts to ${names.length} readers, ${wrong} faults`);
  process.exitCode = wrong > 0 ? 1 : 0;
}

const [count = '200000'] = process.argv.slice(2);
const ready = makeReaders();
if (count === 'work') work(tried);
else if (!(Number(count) > 0)) {
  console.error(`how many: found ${count}; allowed: a number over 0`);
  process.exitCode = 2;
} else await main(Number(count));
