import { expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  curveOf,
  type MapAsk,
  mapping,
  quantitiesOf,
  sideValues,
  Vary,
  type VaryPoint,
} from '../../../sim/index.ts';
import { chance } from '../../../sim/math/chance.ts';
import { mapPicture } from '../../../ui/stations/vary/contours.ts';
import { regionsOf } from '../../../ui/stations/vary/scale.ts';
import { VaryJob } from '../../../ui/vary-job.ts';
import { near } from '../../near.ts';
import { baseOf } from '../../vary-base.ts';

const friction = { id: 'shoes.lining.friction', from: 0.15, to: 0.85, whole: false } as const;
const pressure = { id: 'pressure', from: 0, to: 80, whole: false } as const;
const ask: MapAsk = { across: friction, up: pressure, keys: ['brakeFactor', 'torque'] };
const vary = new Vary(baseOf(quayVan));
const points = [...mapping(vary, ask)];

/** Where a line of a map is crossed between two of its corners. */
type Place = readonly [number, number];

it('lines of one height: single presses at random places of them read that height', () => {
  const picture = mapPicture(points, friction, pressure, 1);
  const random = chance(41);
  expect(picture?.levels.length).toBeGreaterThan(5);
  const off: number[] = [];
  for (const { lines, value } of picture?.levels ?? []) {
    for (const line of lines) {
      for (let k = 0; k < 3; k++) {
        const i = Math.floor(random() * (line.length - 1));
        const [a, b] = [line[i] as Place, line[i + 1] as Place];
        const share = random();
        const at = [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])] as const;
        const [torque, beside] = [0, 1e-5].map(
          (more) =>
            vary.point(
              [
                ['shoes.lining.friction', at[0] + more],
                ['pressure', at[1]],
              ],
              ['torque'],
            ).values[0] as number,
        ) as [number, number];
        off.push(Math.abs(torque / value - 1));
        // Beside the lock it grows without bound: there the place tells, in fields of the finest net.
        const slope = (beside - torque) / 1e-5;
        near((torque - value) / slope / (0.7 / 48), 0, { abs: 0.1 }, `field at ${at}`);
      }
    }
  }
  expect(off.length).toBeGreaterThan(15);
  off.sort((a, b) => a - b);
  expect(off[Math.floor(0.8 * off.length)]).toBeLessThan(0.005);
});

it('the lock stands as a region from where a shoe of the curve locks', () => {
  const picture = mapPicture(points, friction, pressure, 0);
  const region = picture?.regions.find((r) => r.text === 'front shoe locks');
  // Pressed so little that the springs win, no shoe locks: the region's left edge at the top.
  const top = region?.rings.flat().filter(([, y]) => y > 70) ?? [];
  const edge = Math.min(...top.map(([x]) => x));
  const line = curveOf(vary, { ...friction, keys: ['brakeFactor'], also: [['pressure', 75]] });
  const lock = line.find((p) => p.why === 'locks')?.at[0] as number;
  // A field is a forty-eighth of 0.7; three halvings of it leave an eighth, which is told in its middle. The
  // curve itself is halved to a step of its own.
  near(edge, lock, { abs: 0.7 / 48 / 8 }, 'friction');
  expect(region?.at[0]).toBeGreaterThan(lock);
});

it('an edge goes along what is worked out: beside each of its corners single presses are of either side', () => {
  const picture = mapPicture(points, friction, pressure, 0);
  const region = picture?.regions.find((r) => r.text === 'front shoe locks');
  const field = 0.7 / 48;
  const locks = (x: number, y: number): boolean =>
    vary.point(
      [
        ['shoes.lining.friction', x],
        ['pressure', y],
      ],
      ['torque'],
    ).why === 'locks';
  // Corners on the rows of the net: those are crossed going to the right.
  const rows = sideValues(pressure);
  const corners = (region?.rings.flat() ?? []).filter(
    ([x, y]) => rows.includes(y) && x > 0.16 && x < 0.84,
  );
  expect(corners.length).toBeGreaterThan(20);
  for (const [x, y] of corners.slice(0, 24)) {
    expect(locks(x - field / 10, y) !== locks(x + field / 10, y), `${x}, ${y}`).toBe(true);
  }
});

it('a net is whole before the next begins; whole numbers stay whole, each once', () => {
  const tooth = { id: 'tooth', from: 0, to: 6, whole: true } as const;
  expect(sideValues(tooth)).toEqual([0, 1, 2, 3, 4, 5, 6]);
  const all = [...mapping(vary, { across: tooth, up: pressure, keys: ['torque'] })];
  const net = all.slice(0, 7 * 49);
  const rows = sideValues(pressure);
  expect(net.every((p) => rows.includes(p.at[1] as number))).toBe(true);
  expect(all.every((p) => Number.isInteger(p.at[0]))).toBe(true);
  expect(new Set(all.map((p) => p.at.join())).size).toBe(all.length);
  expect(mapPicture(points.slice(0, 168), friction, pressure, 0)).toBeNull();
  expect(mapPicture(points.slice(0, 169), friction, pressure, 0)?.net).toBe(13 * 13);
  expect(mapPicture(points.slice(0, 700), friction, pressure, 0)?.net).toBe(25 * 25);
  expect(mapPicture(points, friction, pressure, 0)?.net).toBe(49 * 49);
});

it('every point is the single press, whichever side the sizes are on', () => {
  const by = new Map(points.map((p) => [`${p.at[1]} ${p.at[0]}`, p.values]));
  let seen = 0;
  for (const p of mapping(vary, { ...ask, across: pressure, up: friction })) {
    expect(by.get(`${p.at[0]} ${p.at[1]}`)).toEqual(p.values);
    if (++seen === 13 * 13) break;
  }
});

it('a run that is given up works out one point more at most', () => {
  const job = new VaryJob({ run: 1, curves: [{ base: vary.base, ask }] });
  const { fresh } = job.slice(() => true);
  expect(fresh.flatMap((f) => f.points)).toHaveLength(1);
});

it('what is out of the way has its name: dragging linings, worn linings, wide drums', () => {
  const { brake } = vary;
  const far = curveOf(vary, { id: 'tooth', from: 0, to: 20, whole: true, keys: ['torque'] });
  const drags = regionsOf([far]).find((r) => r.text === 'linings drag at rest');
  // Dragged where the released brake's clearance is gone, by a reading of its own.
  const clear = (tooth: number): number =>
    vary.point([['tooth', tooth]], ['restClearanceMean']).values[0] as number;
  expect(drags?.soft).toBe(true);
  expect(clear(0)).toBeGreaterThan(0);
  expect(far.find((p) => p.at[0] === 0)?.marks).toEqual([]);
  expect(clear(drags?.from ?? 0)).toBeLessThan(clear(0));
  const { thicknessNew, thicknessMin } = brake.shoes.front.lining;
  const left = thicknessNew - thicknessMin;
  const marksAt = (id: string, x: number) => vary.point([[id, x]], ['torque']).marks;
  expect(marksAt('wear', left - 0.01)).not.toContain('lining limit');
  expect(marksAt('wear', left + 0.01)).toContain('lining limit');
  const most = 2 * brake.drum.radiusMax;
  expect(marksAt('drumDiameter', most - 0.01)).not.toContain('drum limit');
  expect(marksAt('drumDiameter', most + 0.01)).toContain('drum limit');
});

it('a press that springs win against leaves both shoes off the drum', () => {
  const usual = quantitiesOf(vary.base, vary.brake).find((q) => q.id === 'pressure');
  expect(usual?.range[0]).toBe(0);
  const told = (bar: number): VaryPoint => vary.point([['pressure', bar]], ['torque']);
  expect(told(0.5).marks).toEqual(['front off', 'rear off']);
  expect(Math.abs(told(0.5).values[0] as number)).toBe(0);
  expect(told(40).marks).toEqual([]);
});
