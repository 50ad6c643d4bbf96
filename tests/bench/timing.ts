/**
 * Times of contenders in one run. Rounds are interleaved, one contender after the other, so that a
 * machine that is slower for a while is slower for all of them, and ratios hold. Told is processor time, which holds
 * on a machine that others use too.
 */
export interface Contender {
  readonly name: string;
  readonly call: () => void;
}

export interface Timed {
  readonly name: string;
  /** One call, µs of the processor: each round's mean; their median and the fastest of them. */
  readonly rounds: readonly number[];
  readonly median: number;
  readonly fastest: number;
}

const ROUNDS = 15;
/** Each round of each contender, ms. */
const ROUND = 40;
/** Until the machine has compiled what it runs, ms. */
const WARM_UP = 800;

export const median = (values: readonly number[]): number => share(values, 0.5);

/** Value that this share of the values lies below. */
export const share = (values: readonly number[], part: number): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length * part)] ?? Number.NaN;

/** Runs for a time; gives calls a millisecond. */
function pace(call: () => void, time: number): number {
  const from = performance.now();
  let calls = 0;
  let now = from;
  while (now - from < time) {
    call();
    calls++;
    now = performance.now();
  }
  return calls / (now - from);
}

export function compare(contenders: readonly Contender[]): Timed[] {
  const batches = contenders.map(({ call }) => {
    pace(call, WARM_UP);
    return Math.max(1, Math.round(pace(call, 100) * ROUND));
  });
  const rounds = contenders.map((): number[] => []);
  for (let r = 0; r < ROUNDS; r++) {
    contenders.forEach(({ call }, i) => {
      const batch = batches[i] as number;
      const from = process.cpuUsage();
      for (let n = 0; n < batch; n++) call();
      const { user, system } = process.cpuUsage(from);
      rounds[i]?.push((user + system) / batch);
    });
  }
  return contenders.map(({ name }, i) => {
    const mine = rounds[i] as number[];
    return { name, rounds: mine, median: median(mine), fastest: Math.min(...mine) };
  });
}

/** Median of the ratios of two contenders, round by round. */
export const ratio = (a: Timed, b: Timed): number =>
  median(a.rounds.map((v, i) => v / (b.rounds[i] as number)));

const us = (v: number): string => `${v.toFixed(1).padStart(7)} µs`;
/** A contender's line. */
export const line = (t: Timed): string =>
  `  ${t.name.padEnd(34)}${us(t.median)}   fastest ${us(t.fastest)}`;

export interface Goal {
  readonly name: string;
  readonly reached: boolean;
}
