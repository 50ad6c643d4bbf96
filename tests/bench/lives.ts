/** What a life costs: every stop on its own against lumps, and how both grow. */
import quayVan from '../../scenes/quay-van.json';
import { createRig, driveLife, freshState, KM, type Life, thinnest } from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import type { Goal } from './timing.ts';

const say = (text: string): void => console.log(text);

/** Wall and processor time, ms: the second holds on a machine that others use too. */
interface Cost {
  readonly wall: number;
  readonly processor: number;
}

/** The cheapest of some rounds. */
function cheapest(rounds: number, call: () => void): Cost {
  let best: Cost = { wall: Number.POSITIVE_INFINITY, processor: Number.POSITIVE_INFINITY };
  for (let r = 0; r < rounds; r++) {
    const from = performance.now();
    const used = process.cpuUsage();
    call();
    const { user, system } = process.cpuUsage(used);
    const cost = { wall: performance.now() - from, processor: (user + system) / 1000 };
    if (cost.processor < best.processor) best = cost;
  }
  return best;
}

const kmOf = (l: Life, kind: string): number[] =>
  l.events.filter((e) => e.kind === kind).map((e) => e.distance / KM);

/** Wears a little: a hundred thousand stops must not use the lining up. */
function lasting(elements: number): ReturnType<typeof createRig> {
  const slow = structuredClone(quayVan);
  for (const side of ['front', 'rear'] as const) slow.shoes[side].lining.wearRate *= 0.5;
  slow.drum.wearRate *= 0.5;
  return createRig(mustRead(slow), { elements });
}

function lifeBench(): Goal[] {
  const rig = lasting(48);
  const drive = (on: typeof rig, stops: number, oneByOne: boolean): Life => {
    const elements = on.front.bed.count;
    const fresh = freshState(on.brake, on.brake.drum.radiusNew, elements);
    const distance = stops * KM;
    return driveLife(on, fresh, on.brake.duties[0], { distance, oneByOne, rowEvery: 500 * KM });
  };
  const STOPS = 100_000;
  let single: Life | null = null;
  let lumped: Life | null = null;
  const slow = cheapest(3, () => {
    single = drive(rig, STOPS, true);
  });
  const quick = cheapest(10, () => {
    lumped = drive(rig, STOPS, false);
  });
  const [a, b] = [single, lumped] as unknown as [Life, Life];
  const clicks = [kmOf(a, 'click'), kmOf(b, 'click')] as const;
  const alike = clicks[0].length === clicks[1].length;
  const worst = Math.max(
    ...clicks[0].map((km, i) => Math.abs((clicks[1][i] ?? Number.NaN) - km) / km),
  );
  const left = [a, b].map((l) => thinnest(rig, l.state(), 'front')) as [number, number];
  const off = Math.abs(left[1] - left[0]) / left[0];
  const times = slow.processor / quick.processor;
  say(`\nA life of ${STOPS} stops (processor time, cheapest of some rounds; wall beside it)`);
  say(
    `  one by one ${slow.processor.toFixed(0)} ms (wall ${slow.wall.toFixed(0)}), ${((1000 * slow.processor) / STOPS).toFixed(1)} µs each`,
  );
  say(
    `  in lumps   ${quick.processor.toFixed(0)} ms (wall ${quick.wall.toFixed(0)}), ${times.toFixed(0)} times faster`,
  );
  say(
    `  ${clicks[0].length} and ${clicks[1].length} clicks, farthest apart ${(100 * worst).toFixed(3)} % of their distance; lining left apart by ${(100 * off).toFixed(4)} %`,
  );
  say('  growth: stops, one by one and in lumps, ms');
  for (const stops of [12_500, 25_000, 50_000, 100_000]) {
    const one = cheapest(1, () => void drive(rig, stops, true));
    const many = cheapest(3, () => void drive(rig, stops, false));
    say(
      `    ${String(stops).padStart(7)}  ${one.processor.toFixed(0).padStart(6)}  ${many.processor.toFixed(1).padStart(7)}`,
    );
  }
  say('  growth: elements of a lining, 20 000 stops one by one, µs a stop; lumps, ms');
  for (const elements of [24, 48, 96, 192]) {
    const on = lasting(elements);
    const one = cheapest(2, () => void drive(on, 20_000, true));
    const many = cheapest(3, () => void drive(on, 20_000, false));
    say(
      `    ${String(elements).padStart(7)}  ${(one.processor / 20).toFixed(1).padStart(6)}  ${many.processor.toFixed(1).padStart(7)}`,
    );
  }
  return [
    { name: '100 000 stops one by one in at most 2 s', reached: slow.processor <= 2000 },
    { name: 'lumps at least 10 times faster than stops one by one', reached: times >= 10 },
    { name: 'clicks of lumps within 0.5 % of their distance', reached: alike && worst <= 0.005 },
    { name: 'lining left after lumps within 0.1 %', reached: off <= 0.001 },
  ];
}

process.send?.(lifeBench());
