import { parentPort } from 'node:worker_threads';
import { Vary } from '../../sim/index.ts';
import type { JobNews, JobOrder } from './jobs.ts';
import { type Plan, workOut } from './vary-plan.ts';

/** A worker of `vary --jobs`: the plan once, then pieces of it. */
let plan: Plan | null = null;
let vary: Vary | null = null;

parentPort?.on('message', (order: JobOrder) => {
  if ('plan' in order) {
    plan = order.plan;
    vary = new Vary(plan.base);
    return;
  }
  const [mine, of] = [vary, plan];
  if (!mine || !of) throw new Error('a worker is told its plan first');
  const news: JobNews = order.units.map((unit) => workOut(mine, of, unit));
  parentPort?.postMessage(news);
});
