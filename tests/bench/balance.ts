/**
 * What Balance costs, rigid and bending side by side. Bundled and started by run.ts, in a process of its own as the
 * page is: what hands or other engines make the compiler believe costs both a tenth. Hands the goals back to it.
 */
import quayVan from '../../scenes/quay-van.json';
import { createRig, freshState, type Rig, solveBalance } from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import { compare, type Goal, line, ratio, type Timed } from './timing.ts';

const brake = mustRead(quayVan);
const fresh = freshState(brake);

/** From a pose near the answer. */
function warm(on: Rig): () => void {
  const press = (n: number) => ({ pressure: 4 + (n % 10) * 1e-3, turning: 1 }) as const;
  const near = solveBalance(on, fresh, press(0));
  const { strutOn, leverFree } = near.solution;
  const guess = { pose: near.pose.slice(), strutOn, leverFree };
  let n = 0;
  return () => solveBalance(on, fresh, press(n++), guess);
}

const timed = compare([
  { name: 'Balance, one warm solve', call: warm(createRig(brake)) },
  { name: 'the same with bending shoes', call: warm(createRig(brake, { flexible: true })) },
]);
const [rigid, bent] = timed as [Timed, Timed];
console.log(`Balance, medians of ${rigid.rounds.length} rounds by turns, processor time`);
for (const t of timed) console.log(line(t));
console.log(`  bending is ${ratio(bent, rigid).toFixed(1)} times rigid`);
const goals: Goal[] = [
  { name: 'a warm Balance solve in at most 15 µs', reached: rigid.median <= 15 },
  { name: 'a warm Balance with bending shoes in at most 45 µs', reached: bent.median <= 45 },
];
process.send?.(goals);
