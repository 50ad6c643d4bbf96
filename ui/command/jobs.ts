import { Worker } from 'node:worker_threads';
import { Vary } from '../../sim/index.ts';
import { type Plan, type ToldPoint, type Unit, workOut } from './vary-plan.ts';

/** What a worker is given at first, then piece by piece; and what it says to each. */
export type JobOrder = { readonly plan: Plan } | { readonly units: readonly Unit[] };
export type JobNews = readonly (readonly ToldPoint[])[];

/** Units that a worker is given at once: enough that messages cost little. */
const PIECE = 8;

/** All units here, one after the other. */
function here(plan: Plan, units: readonly Unit[], tick: (done: number) => void): JobNews {
  const vary = new Vary(plan.base);
  return units.map((unit, k) => {
    tick(k);
    return workOut(vary, plan, unit);
  });
}

/**
 * All units by so many workers of this machine, in the order of the units. Who works what does not
 * matter to what comes out.
 */
export async function work(
  plan: Plan,
  units: readonly Unit[],
  jobs: number,
  tick: (done: number) => void,
): Promise<JobNews> {
  if (jobs === 1) return here(plan, units, tick);
  const found: (readonly ToldPoint[])[] = new Array(units.length);
  let next = 0;
  let done = 0;
  const one = (): Promise<void> =>
    new Promise((end, fail) => {
      const worker = new Worker(new URL('./job-start.mjs', import.meta.url));
      const send = (order: JobOrder): void => worker.postMessage(order);
      let at = 0;
      const more = (): void => {
        at = next;
        const piece = units.slice(at, at + PIECE);
        next += piece.length;
        if (piece.length > 0) send({ units: piece });
        else worker.terminate().then(() => end(), fail);
      };
      worker.on('error', fail);
      worker.on('message', (news: JobNews) => {
        for (const [k, points] of news.entries()) found[at + k] = points;
        done += news.length;
        tick(done);
        more();
      });
      send({ plan });
      more();
    });
  const count = Math.min(jobs, Math.ceil(units.length / PIECE));
  await Promise.all(Array.from({ length: count }, one));
  return found;
}
