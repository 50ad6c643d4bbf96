import { expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { type Free, missOf, shareTorque, Vary, type Wish } from '../../../sim/index.ts';
import { type DesignFound, leansOn, searchDesign } from '../../../ui/vary-seek.ts';
import { near } from '../../near.ts';
import { baseOf } from '../../vary-base.ts';

const base = baseOf(quayVan);
const vary = new Vary(base);
const bore: Free = { id: 'cylinder.bore', from: 15, to: 23, whole: false };
const friction: Free = { id: 'shoes.lining.friction', from: 0.25, to: 0.5, whole: false };
const wish = (key: string, least: number | null, most: number | null, hot?: number): Wish => ({
  key,
  least,
  most,
  hot: hot ?? null,
});

const search = (free: readonly Free[], wishes: readonly Wish[]): DesignFound => {
  const all = [...searchDesign({ base, free, wishes })];
  expect(all.slice(0, -1).every((f) => !f.done)).toBe(true);
  return all.at(-1) as DesignFound;
};

/** Every so many of each size by brute force: how far those that do reach. */
function byForce(free: readonly [Free, Free], wishes: readonly Wish[], n: number) {
  const step = ({ from, to }: Free, k: number) => from + ((to - from) * k) / (n - 1);
  const met: [number, number][] = [];
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      const at = [step(free[0], i), step(free[1], j)] as [number, number];
      if (missOf(vary, free, wishes, at).all === 0) met.push(at);
    }
  return [0, 1].map((k) => {
    const all = met.map((p) => p[k] as number);
    return [Math.min(...all), Math.max(...all)] as const;
  });
}

it('the region of two sizes reaches as far as a brute-force grid has it', () => {
  const free = [bore, friction] as const;
  const wishes = [wish('torque', 180, 260), wish('brakeFactor', null, 2.6)];
  const { reach, points } = search(free, wishes);
  const n = 17;
  const grid = byForce(free, wishes, n);
  for (const [k, size] of free.entries()) {
    const field = (size.to - size.from) / (n - 1);
    for (const end of [0, 1] as const)
      near(reach?.[k]?.[end] as number, grid[k]?.[end] as number, { abs: 1.5 * field }, size.id);
  }
  // Whatever is called good is: pressed once more, each keeps both wishes.
  const good = points.filter((p) => p.miss.all === 0);
  expect(good.length).toBeGreaterThan(10);
  for (const { at } of good.slice(0, 40)) {
    const p = vary.point(
      [
        ['cylinder.bore', at[0] as number],
        ['shoes.lining.friction', at[1] as number],
      ],
      ['torque', 'brakeFactor'],
    );
    const [torque = Number.NaN, factor = Number.NaN] = p.values;
    expect(torque >= 180 && torque <= 260 && factor <= 2.6).toBe(true);
  }
});

it('a thin region between two places of the net is found, and followed to its ends', () => {
  const { brake } = vary;
  // 30 % of a stop at 3 m/s², within half a per cent: m·a·s·r / n by hand.
  const torque = shareTorque(brake, 0.3, 3);
  const { mass, tyreRadius, brakes } = brake.vehicle;
  near(torque, (0.3 * mass * 1000 * 3 * tyreRadius) / 1000 / brakes, { rel: 1e-12 }, 'N·m');
  const { reach, best } = search(
    [bore, friction],
    [wish('torque', 0.995 * torque, 1.005 * torque)],
  );
  expect(best.miss.all).toBe(0);
  // A thin band across: its least bore goes with the most friction, and the other way round.
  const along = (mu: number): readonly [number, number] => {
    const ends = [0.995 * torque, 1.005 * torque].map((goal) => {
      let [low, high] = [15, 23];
      for (let n = 0; n < 30; n++) {
        const middle = (low + high) / 2;
        const set = [
          ['cylinder.bore', middle],
          ['shoes.lining.friction', mu],
        ] as const;
        const [value = 0] = vary.point(set, ['torque']).values;
        if (value < goal) low = middle;
        else high = middle;
      }
      return low;
    });
    return ends as [number, number];
  };
  near(reach?.[0]?.[0] as number, along(0.5)[0], { abs: 0.1 }, 'mm');
  near(reach?.[0]?.[1] as number, along(0.25)[1], { abs: 0.1 }, 'mm');
  expect(leansOn([bore, friction], best).length).toBeLessThan(2);
});

it('one size: ends of its stretch are those of single presses', () => {
  const { reach } = search([bore], [wish('torque', 200, 240)]);
  for (const [end, torque] of [
    [0, 200],
    [1, 240],
  ] as const) {
    const x = reach?.[0]?.[end] as number;
    near(
      vary.point([['cylinder.bore', x]], ['torque']).values[0] as number,
      torque,
      { abs: 0.2 },
      'N·m',
    );
  }
});

it('infeasible: the brake that misses least, by how much, and the bound it leans on', () => {
  const { reach, best } = search([bore], [wish('torque', 900, null)]);
  expect(reach).toBeNull();
  expect(leansOn([bore], best)).toEqual([{ id: 'cylinder.bore', end: 'most', value: 23 }]);
  const most = vary.point([['cylinder.bore', 23]], ['torque']).values[0] as number;
  near(best.miss.each[0] as number, (900 - most) / 900, { rel: 1e-3 }, 'share');
});

it('after a descent: no tooth too many on a hot drum, and a clearance that is wished cold', () => {
  const tooth: Free = { id: 'tooth', from: 0, to: 20, whole: true };
  const wishes = [wish('restClearanceMean', null, 0.4), wish('teethTaken', null, 0, 300)];
  const { points } = search([tooth], wishes);
  for (const { at, miss } of points) {
    const [x = Number.NaN] = at;
    const cold = vary.point([['tooth', x]], ['restClearanceMean']).values[0] as number;
    const hot = vary.point(
      [
        ['tooth', x],
        ['temperature', 300],
      ],
      ['teethTaken'],
    ).values[0] as number;
    if (Number.isFinite(cold)) expect(miss.all === 0).toBe(cold <= 0.4 && hot === 0);
  }
});
