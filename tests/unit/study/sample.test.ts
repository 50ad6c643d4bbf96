import { expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  atLeast,
  bandOf,
  oddsOf,
  type SampleAsk,
  sampling,
  type Tolerance,
  Vary,
  valueAt,
} from '../../../sim/index.ts';
import { VaryJob } from '../../../ui/vary-job.ts';
import { near } from '../../near.ts';
import { baseOf } from '../../vary-base.ts';

const base = baseOf(quayVan);
const vary = new Vary(base);
const ask = (tolerances: readonly Tolerance[], change: Partial<SampleAsk> = {}): SampleAsk => ({
  tolerances,
  seed: 1,
  samples: 200,
  keys: ['pistonForce', 'brakeFactor'],
  ...change,
});
const values = (asked: SampleAsk, k = 0): number[] =>
  [...sampling(vary, asked)].map((p) => p.values[k] as number);
const deviation = (all: readonly number[]): number => {
  const mean = all.reduce((a, b) => a + b, 0) / all.length;
  return Math.sqrt(all.reduce((s, x) => s + (x - mean) ** 2, 0) / (all.length - 1));
};

const friction = { id: 'shoes.lining.friction', kind: 'percent', amount: 10 } as const;
const bore = { id: 'cylinder.bore', kind: 'gauge', amount: 0.1 } as const;
const pressure = { id: 'pressure', kind: 'gauge', amount: 2 } as const;

it('a seed repeats to the bit, in a worker’s slices too; another seed does not', () => {
  const asked = ask([friction, bore], { samples: 30 });
  const once = [...sampling(vary, asked)];
  expect([...sampling(new Vary(base), asked)]).toEqual(once);
  expect([...sampling(vary, { ...asked, seed: 2 })]).not.toEqual(once);
  const job = new VaryJob({ run: 1, curves: [{ base, ask: asked }] });
  const sliced = [];
  while (!job.done) for (const { points } of job.slice(() => true).fresh) sliced.push(...points);
  expect(sliced).toEqual(once);
});

it('a product’s spread is that of linear propagation', () => {
  // F = p·π·d²/4: (s_F/F)² = (s_p/p)² + (2·s_d/d)², first order (JCGM 100:2008, 5.1.2): 1/40 and 2·0.05/19.05.
  const all = values(ask([pressure, bore], { samples: 400 }));
  const force = 4 * (Math.PI / 4) * 19.05 ** 2;
  const expected = force * Math.sqrt((1 / 40) ** 2 + ((2 * 0.05) / 19.05) ** 2);
  near(deviation(all), expected, { rel: 0.02 }, 'deviation');
  const band = bandOf(all);
  // Nearly normal: 1.960 deviations to either side of the middle. A quantile of 400 samples is known to
  // √(0.975·0.025/400)/φ(1.96) = 0.13 of them, 5 % of half the band for both ends: twice that is allowed.
  near(band.middle, force, { rel: 0.002 }, 'middle');
  near((band.high - band.low) / 2, 1.96 * expected, { rel: 0.1 }, 'half the band');
  expect(band.told).toBe(1);
});

it('of one thing that all rises with, the band’s ends are the readings at the ends of its tolerance', () => {
  // A rising function takes quantiles to quantiles.
  const band = bandOf(values(ask([friction]), 1));
  for (const [u, came] of [
    [0.025, band.low],
    [0.5, band.middle],
    [0.975, band.high],
  ] as const) {
    const at = vary.point([[friction.id, valueAt(friction, 0.38, u)]], ['brakeFactor']);
    near(came, at.values[0] as number, { rel: 0.004 }, `${u}`);
  }
});

it('draws what each kind says', () => {
  expect(valueAt(friction, 0.4, 0.5)).toBe(0.4);
  near(valueAt(friction, 0.4, 1 - 1e-12), 0.44, { rel: 1e-9 }, 'ten per cent more');
  // Half of ± 0.1 is the deviation: 1.959964 of it above 97.5 of 100.
  near(valueAt(bore, 20, 0.975), 20 + 0.05 * 1.959964, { abs: 1e-6 }, 'gauge');
  const wear = { id: 'x', kind: 'times', amount: 2 } as const;
  near(valueAt(wear, 3, 0.75), 3 * Math.SQRT2, { rel: 1e-9 }, 'half way to twice');
  near(valueAt(wear, 3, 1e-12), 1.5, { rel: 1e-9 }, 'half of it');
});

it('spreads evenly: one in each part of a tolerance', () => {
  const set = [...sampling(vary, ask([friction], { samples: 50 }))].map((p) => p.at[0] as number);
  const parts = set.map((mu) => Math.floor(((mu / 0.38 - 0.9) / 0.2) * 50));
  expect([...parts].sort((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, k) => k));
  expect(parts).not.toEqual([...parts].sort((a, b) => a - b));
});

it('tells each tolerance alone at both ends, and the same brakes at every place of a curve', () => {
  const alone = [...sampling(vary, ask([friction, bore], { alone: true }))];
  expect(alone.map((p) => p.at)).toEqual([
    [0, 0],
    [0, 1],
    [1, 0],
    [1, 1],
  ]);
  const swing = (k: number, which: number) =>
    (alone[2 * which + 1]?.values[k] as number) - (alone[2 * which]?.values[k] as number);
  // Friction does nothing to the piston, the bore nothing to speak of to the factor.
  expect(swing(0, 0)).toBe(0);
  expect(swing(0, 1)).toBeGreaterThan(5);
  expect(Math.abs(swing(1, 1))).toBeLessThan(0.1 * swing(1, 0));
  const over = [
    ...sampling(
      vary,
      ask([friction, bore], { samples: 4, over: { id: bore.id, values: [18, 20] } }),
    ),
  ];
  expect(over.map((p) => p.at[0])).toEqual([18, 20, 18, 20, 18, 20, 18, 20]);
  expect(over.every((p) => p.at.length === 2)).toBe(true);
  expect(over[0]?.at[1]).toBe(over[1]?.at[1]);
});

it('over a quantity that is itself not known exactly, its band is about each place', () => {
  const over = { id: friction.id, values: [0.25, 0.4] };
  const all = [...sampling(vary, ask([friction], { over }))];
  for (const x of over.values) {
    const band = bandOf(all.filter((p) => p.at[0] === x).map((p) => p.values[1] as number));
    for (const [u, came] of [
      [0.025, band.low],
      [0.975, band.high],
    ] as const) {
      const at = vary.point([[friction.id, valueAt(friction, x, u)]], ['brakeFactor']);
      near(came, at.values[0] as number, { rel: 0.004 }, `${x} ${u}`);
    }
  }
});

it('counts what cannot be told', () => {
  const band = bandOf([1, 2, 3, Number.NaN]);
  expect(band).toEqual({ low: 1.05, middle: 2, high: 2.95, told: 0.75 });
  expect(bandOf([]).told).toBe(0);
});

/** Share of a sampling of one tolerance that lies beyond a value of it, where its values come as u. */
const beyond = (n: number, u: number): number => n * (1 - u);

it('a shoe locks in as many brakes as have friction beyond the lock', () => {
  // A pinned shoe locks at μ = 110.82/145.76 (moments about its pin; the closed form of any handbook, as in the page's
  // own check). From 0.38/2.5 to 0.38·2.5, its logarithm alike likely: u = (ln(μ/0.38)/ln 2.5 + 1)/2.
  const wide = { id: friction.id, kind: 'times', amount: 2.5 } as const;
  const points = [...sampling(vary, ask([wide]))];
  const lock = (Math.log(110.82 / 145.76 / 0.38) / Math.log(2.5) + 1) / 2;
  const locks = oddsOf(points).find((o) => o.judgement === 'locks');
  expect(locks?.of).toBe(200);
  near(locks?.count ?? 0, beyond(200, lock), { abs: 1.5 }, 'lock');
  // What locks cannot be judged by its marks.
  expect(oddsOf(points).find((o) => o.judgement === 'clicks')?.of).toBe(200 - (locks?.count ?? 0));
});

it('a slope is held in as many brakes as have friction enough, judged by single presses', () => {
  const parked = new Vary(baseOf(quayVan, { press: { ...base.press, pressure: 0, cable: 300 } }));
  const loose = { id: friction.id, kind: 'percent', amount: 30 } as const;
  const points = [...sampling(parked, ask([loose], { keys: ['slopeUp'] }))];
  const held = (mu: number): number =>
    parked.point([[friction.id, mu]], ['slopeUp']).values[0] as number;
  const least = held(0.38 * 1.1);
  const { count, of } = atLeast(points, 0, least);
  // It rises with friction throughout, so it is held from 1.1 of it on: a third of a band of ± 30 %.
  expect(held(0.38)).toBeLessThan(least);
  expect(of).toBe(200);
  near(count, beyond(200, (1.1 - 0.7) / 0.6), { abs: 1.5 }, 'held');
});

it('a worn lining is under its limit in as many brakes as its gauge leaves there', () => {
  // A limit read by a gauge that is right within ± 0.2 in 95 of 100 is normal with a deviation of 0.1 (JCGM 101:2008).
  // Half a deviation over it, as thin as the lining or thicker in P(z > 0.5) = 0.3085 (any table of the normal).
  const { thicknessNew, thicknessMin } = vary.brake.shoes.front.lining;
  const worn = (depth: Float64Array) => depth.map(() => thicknessNew - thicknessMin - 0.05);
  const { front, rear } = base.state.wear;
  const state = { ...base.state, wear: { front: worn(front), rear: worn(rear) } };
  const limit = { id: 'shoes.lining.thicknessMin', kind: 'gauge', amount: 0.2 } as const;
  const points = [...sampling(new Vary({ ...base, state }), ask([limit]))];
  const under = oddsOf(points).find((o) => o.judgement === 'lining limit');
  expect(under?.of).toBe(200);
  near(under?.count ?? 0, 200 * 0.3085, { abs: 1.5 }, 'under it');
});
