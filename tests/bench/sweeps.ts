/**
 * Ten thousand points, how they grow with the elements, what brakes and sweeps hold of memory, and how soon a worker
 * that is stopped stands still. Bundled and started by run.ts; hands its goals back to it.
 */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { isMainThread, Worker, workerData } from 'node:worker_threads';
import quayVan from '../../scenes/quay-van.json';
import { createRig, freshState, solveBalance, sweep, Vary } from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import { baseOf } from '../vary-base.ts';
import { type Goal, median } from './timing.ts';

const POINTS = 10_000;
const say = (text: string): void => console.log(text);

/** Processor time of a call, s: the least of some rounds. */
function seconds(call: () => void, rounds = 3): number {
  let least = Number.POSITIVE_INFINITY;
  for (let r = 0; r < rounds; r++) {
    const from = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(from);
    least = Math.min(least, (user + system) / 1e6);
  }
  return least;
}

/** Pressures from 1 to 5 MPa, each solved from the pose of the one before. */
function warmPoints(elements: number): () => void {
  const brake = mustRead(quayVan);
  const rig = createRig(brake, { elements });
  const state = freshState(brake, brake.drum.radiusNew, elements);
  return () => {
    let last = solveBalance(rig, state, { pressure: 1, turning: 1 });
    for (let n = 1; n < POINTS; n++) {
      const { strutOn, leverFree } = last.solution;
      const guess = { pose: last.pose, strutOn, leverFree };
      last = solveBalance(rig, state, { pressure: 1 + (4 * n) / POINTS, turning: 1 }, guess);
    }
  };
}

/** Points as What if makes them, each cold, so that any worker gets the same bits. */
function coldPoints(id: string, from: number, to: number): () => void {
  const vary = new Vary(baseOf(quayVan));
  return () => {
    for (let n = 0; n < POINTS; n++) {
      vary.point([[id, from + ((to - from) * n) / POINTS]], ['torque']);
    }
  };
}

function points(): Goal[] {
  say(`\n${POINTS} points on one core, processor time`);
  const counts = [12, 24, 48, 96, 192, 384];
  const all = counts.map((elements) => seconds(warmPoints(elements)));
  counts.forEach((elements, i) => {
    const [t, before] = [all[i] as number, all[i - 1]];
    const grows = before ? `, grows by the power ${Math.log2(t / before).toFixed(2)}` : '';
    say(
      `  Balance, ${String(elements).padStart(3)} elements a lining, warm   ${t.toFixed(3)} s${grows}`,
    );
  });
  const usual = all[2] as number;
  const pressed = seconds(coldPoints('pressure', 1, 5), 2);
  const built = seconds(coldPoints('shoes.lining.friction', 0.25, 0.45), 2);
  say(`  What if, another pressure each, read and told       ${pressed.toFixed(2)} s`);
  say(`  What if, another friction each: a brake built anew  ${built.toFixed(2)} s`);
  const growth = Math.log2((all[5] as number) / (all[3] as number)) / 2;
  const at = `${POINTS} points on one core in at most 1 s`;
  return [
    { name: `Balance, warm, 48 elements: ${at}`, reached: usual <= 1 },
    { name: `What if, another pressure each: ${at}`, reached: pressed <= 1 },
    { name: `What if, a brake built for each: ${at}`, reached: built <= 1 },
    { name: 'Balance grows at most in proportion to the elements', reached: growth <= 1.1 },
  ];
}

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;
/** What is held, with typed arrays, bytes. */
function held(): number {
  collect();
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

function memory(): void {
  const kB = (bytes: number): string => `${(bytes / 1024).toFixed(1)} kB`;
  const count = 200;
  const start = held();
  const kept: unknown[] = [];
  for (let n = 0; n < count; n++) {
    const brake = mustRead(quayVan);
    const rig = createRig(brake);
    // Pressed once: with the buffers that a first press makes.
    solveBalance(rig, freshState(brake), { pressure: 4, turning: 1 });
    kept.push(rig);
  }
  const each = (held() - start) / kept.length;
  kept.length = 0;
  const vary = new Vary(baseOf(quayVan));
  const ask = { id: 'shoes.lining.friction', from: 0.25, to: 0.45, keys: ['torque'], whole: false };
  [...sweep(vary, ask)];
  const empty = held();
  const found = [...sweep(vary, ask)];
  const swept = held() - empty;
  const more = (): number => {
    const before = held();
    for (let n = 0; n < 1000; n++) {
      vary.point([['shoes.lining.friction', 0.3 + n * 1e-4]], ['torque']);
    }
    return held() - before;
  };
  const [first, , third] = [more(), more(), more()];
  say('\nMemory held, heap and typed arrays');
  say(`  a brake read, built and pressed   ${kB(each)}`);
  say(`  a curve of ${found.length} points          ${kB(swept)}`);
  say(`  left behind by 1000 more points   ${kB(first)}; by the third thousand ${kB(third)}`);
}

/** Points without end, each told by its time in memory that both share. */
function work(shared: SharedArrayBuffer): void {
  const at = new Float64Array(shared);
  const vary = new Vary(baseOf(quayVan));
  for (let n = 0; ; n++) {
    vary.point([['shoes.lining.friction', 0.25 + (n % 2000) * 1e-4]], ['torque']);
    at[0] = performance.timeOrigin + performance.now();
  }
}

/** Stops a worker in the midst of its points: ms to its last point, and until it is gone. */
async function stopped(wait: number): Promise<readonly [last: number, gone: number]> {
  const shared = new SharedArrayBuffer(8);
  const at = new Float64Array(shared);
  const worker = new Worker(new URL(import.meta.url), { workerData: shared });
  while (at[0] === 0) await new Promise((r) => setTimeout(r, 10));
  await new Promise((r) => setTimeout(r, wait));
  const now = performance.timeOrigin + performance.now();
  await worker.terminate();
  const gone = performance.timeOrigin + performance.now() - now;
  const last = at[0] as number;
  await new Promise((r) => setTimeout(r, 100));
  if (at[0] !== last) throw new Error('a worker that was stopped went on');
  return [Math.max(0, last - now), gone];
}

async function cancel(): Promise<Goal[]> {
  const all = [];
  for (let n = 0; n < 15; n++) all.push(await stopped(50 + 7 * n));
  const gone = all.map(([, g]) => g);
  const most = Math.max(...gone);
  say(`\nA worker stopped in the midst of its points, ${all.length} times, wall time`);
  say(`  to its last point  at most ${Math.max(...all.map(([l]) => l)).toFixed(1)} ms`);
  say(`  until it is gone   median ${median(gone).toFixed(1)} ms, at most ${most.toFixed(1)} ms`);
  return [{ name: 'a stopped worker gone within 100 ms', reached: most <= 100 }];
}

if (isMainThread) {
  const goals = points();
  memory();
  goals.push(...(await cancel()));
  process.send?.(goals);
} else work(workerData as SharedArrayBuffer);
