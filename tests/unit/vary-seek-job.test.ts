import { expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import { type Free, roomOf, Vary, type Wish } from '../../sim/index.ts';
import { bandsOf, regionPicture } from '../../ui/stations/vary/region.ts';
import { VaryJob } from '../../ui/vary-job.ts';
import type { SeekFound } from '../../ui/vary-seek.ts';
import { near } from '../near.ts';
import { baseOf } from '../vary-base.ts';

const base = baseOf(quayVan);
const vary = new Vary(base);
const pressure: Free = { id: 'pressure', from: 15, to: 60, whole: false };
const springs: Free = { id: 'springs', from: 50, to: 130, whole: false };
const torque = (least: number | null, most: number | null): Wish => ({
  key: 'torque',
  least,
  most,
  hot: null,
});

function search(free: readonly Free[], wishes: readonly Wish[]): SeekFound {
  const job = new VaryJob({ run: 7, seek: { base, free, wishes } });
  let found: SeekFound | undefined;
  let before = 0;
  while (!job.done) {
    const news = job.slice(() => true);
    expect(news.run).toBe(7);
    if (!news.found) continue;
    // It grows, and its stages follow one another.
    expect(news.found.brakes).toBeGreaterThanOrEqual(before);
    before = news.found.brakes;
    found = news.found;
  }
  if (!found) throw new Error('a search tells what it found');
  expect(found.stage).toBe('done');
  return found;
}

const pressed = (...at: readonly (readonly [string, number])[]): number =>
  vary.point(at, ['torque']).values[0] as number;

/** Value at which a torque is reached, by halving single presses. */
function where(set: (x: number) => readonly (readonly [string, number])[], goal: number): number {
  let [low, high] = [15, 60];
  for (let n = 0; n < 40; n++) {
    const middle = (low + high) / 2;
    if (pressed(...set(middle)) < goal) low = middle;
    else high = middle;
  }
  return low;
}

it('one size: the band’s ends are those of single presses', () => {
  const { slices, reach, best, leaning } = search([pressure], [torque(200, 240)]);
  const [band, ...others] = bandsOf(slices[0] as SeekFound['slices'][number]);
  expect(others).toEqual([]);
  const at = (goal: number): number => where((x) => [['pressure', x]], goal);
  near(band?.from as number, at(200), { abs: 0.01 }, 'bar');
  near(band?.to as number, at(240), { abs: 0.01 }, 'bar');
  near(reach?.[0]?.[0] as number, at(200), { abs: 0.01 }, 'bar');
  expect(leaning).toEqual([]);
  // The one with most room is as far from one end as from the other, in shares of each.
  near(best.miss.values[0] as number, (2 * 200 * 240) / (200 + 240), { rel: 0.01 }, 'N·m');
});

it('two sizes: the region’s edge is where single presses give what is wished, however thin it is', () => {
  // Two hundredths of the torque: a third of a field of the net.
  const wishes = [torque(218, 222)];
  const { slices } = search([pressure, springs], wishes);
  const [slice] = slices;
  if (!slice) throw new Error('two sizes have a map');
  const { does, untold } = regionPicture(slice, wishes);
  expect(untold).toEqual([]);
  // One piece: a band from the least springs to the most.
  expect(does.length).toBe(1);
  const all = does.flat();
  expect([Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))]).toEqual([
    50, 130,
  ]);
  const edge = all.filter(([, y], k) => k % 7 === 0 && y > 50.1 && y < 129.9);
  expect(edge.length).toBeGreaterThan(20);
  for (const [x, y] of edge) {
    const value = pressed(['pressure', x], ['springs', y]);
    expect(Math.min(Math.abs(value - 218), Math.abs(value - 222)) / 220).toBeLessThan(0.002);
  }
});

it('where no force is told any more the band ends', () => {
  const wide: Free = { id: 'shoes.lining.friction', from: 0.7, to: 0.85, whole: false };
  const { slices, reach } = search([wide], [torque(1, null)]);
  const [slice] = slices;
  if (!slice) throw new Error('one size has a line');
  let [told, not] = [0.7, 0.85];
  for (let n = 0; n < 20; n++) {
    const middle = (told + not) / 2;
    if (vary.point([['shoes.lining.friction', middle]], ['torque']).why === 'sound') told = middle;
    else not = middle;
  }
  near(reach?.[0]?.[1] as number, told, { abs: 1e-4 }, 'friction');
  // The picture's band ends at the last place of its net that does, at most a field before.
  const [band] = bandsOf(slice);
  const field = (0.85 - 0.7) / (slice.xs.length - 1);
  near(band?.to as number, told - field / 2, { abs: field / 2 }, 'friction');
  expect(Number.isNaN(slice.rooms.at(-1))).toBe(true);
});

it('a map says where nothing is told', () => {
  const rooms = [0.1, 0.2, Number.NaN, 0.1, -0.2, Number.NaN];
  const values = rooms.map((room) => [Number.isFinite(room) ? 1 + room : Number.NaN]);
  const slice = { third: null, xs: [0, 1, 2], ys: [0, 10], rooms, values };
  const { does, untold } = regionPicture(slice, [torque(1, null)]);
  expect(Math.min(...untold.flat().map(([x]) => x))).toBe(1.5);
  expect(Math.max(...does.flat().map(([x]) => x))).toBeLessThan(1.01);
  // Along the top the reading is 1 at a third of the way from 1.1 to 0.8.
  const top = does.flat().filter(([, y]) => y === 10);
  near(Math.max(...top.map(([x]) => x)), 1 / 3, { abs: 0.01 }, 'across');
});

it('three sizes: each slice is the map with the third standing still', () => {
  const tooth: Free = { id: 'tooth', from: 0, to: 9, whole: true };
  const wishes: Wish[] = [
    torque(200, 240),
    { key: 'restClearanceMean', least: null, most: 0.25, hot: null },
  ];
  const { slices, reach } = search([pressure, springs, tooth], wishes);
  expect(slices.length).toBeGreaterThan(1);
  for (const { third, xs, ys, rooms } of slices) {
    expect(Number.isInteger(third)).toBe(true);
    for (const [i, j] of [
      [0, 0],
      [6, 6],
      [9, 3],
      [12, 12],
    ] as const) {
      const { values } = vary.point(
        [
          ['pressure', xs[i] as number],
          ['springs', ys[j] as number],
          ['tooth', third as number],
        ],
        ['torque', 'restClearanceMean'],
      );
      const room = rooms[j * xs.length + i] as number;
      if (values.every(Number.isFinite)) near(room, roomOf(wishes, values), { rel: 1e-9 }, 'share');
      else expect(room).toBeNaN();
    }
  }
  // Clearance by tooth alone: the least tooth is that of single presses.
  const least = [...Array(10).keys()].find(
    (k) => (vary.point([['tooth', k]], ['restClearanceMean']).values[0] as number) <= 0.25,
  );
  expect(reach?.[2]?.[0]).toBe(least);
});

it('a wish that none keeps names the bound in its way', () => {
  const none = search([pressure], [torque(900, null)]);
  expect(none.reach).toBeNull();
  expect(none.leaning).toEqual([{ id: 'pressure', end: 'most', value: 60 }]);
  expect(bandsOf(none.slices[0] as SeekFound['slices'][number])).toEqual([]);
});

it('room is a share of the wished end, the least of all, and nought on the edge', () => {
  const wishes = [torque(200, 240), { ...torque(null, 0), key: 'teethTaken' }];
  near(roomOf(wishes, [210, -3]), 0.05, { abs: 1e-12 }, 'share');
  near(roomOf(wishes, [252, -3]), -0.05, { abs: 1e-12 }, 'share');
  expect(roomOf(wishes, [200, -3])).toBe(0);
  // A wished end of nought counts as one.
  expect(roomOf(wishes, [220, 2])).toBe(-2);
  expect(roomOf(wishes, [Number.NaN, 0])).toBeNaN();
});
