import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { freshState, KM, type LifeRow, readSceneText } from '../../sim/index.ts';
import {
  axisEnd,
  keptOf,
  keptText,
  laneOf,
  nearestRow,
  reaching,
  rowAt,
} from '../../ui/plot/lanes.ts';
import { Session } from '../../ui/session.ts';
import { haunt, keep } from '../../ui/stations/compare/wants.ts';
import { WearDesk } from '../../ui/stations/wear-desk.ts';

const file = new URL('../../scenes/quay-van.json', import.meta.url);
const read = readSceneText(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(JSON.stringify(read.findings));
const { brake } = read;
const state = freshState(brake);

const row = (km: number, more: Partial<LifeRow> = {}): LifeRow => ({
  distance: km * KM,
  at: 'run',
  clearance: 0.3,
  liningFront: 4.5,
  liningRear: 4.5,
  brakeFactor: 2.29,
  tooth: 0,
  temperature: 20,
  pedalTravel: 14,
  drumRadius: 100,
  lip: 0,
  drag: { torque: 0, power: 0 },
  state,
  ...more,
});

/** One tooth of the sawtooth, from new. */
const run = [
  row(0),
  row(2900, { clearance: 0.4 }),
  row(3000, { at: 'before click', clearance: 0.42 }),
  row(3000, { at: 'after click', clearance: 0.27, tooth: 1 }),
  row(4000, { clearance: 0.31, tooth: 1, liningFront: 4.3999, liningRear: 4.49 }),
];

it('writes the limit of a lane where the run itself clicked', () => {
  expect(laneOf('clearance', brake, run.slice(0, 2)).limits).toEqual([]);
  const [next] = laneOf('clearance', brake, run).limits;
  expect(next).toMatchObject({ at: 0.42, text: 'next tooth 0.42' });
});

it('rounds linings down at the end of their curves, as the readings do', () => {
  const { limits, series } = laneOf('lining', brake, run);
  const last = run.at(-1) as LifeRow;
  expect(series.map((s) => s.end(s.value(last)))).toEqual(['front 4.3', 'rear 4.4']);
  expect(limits.map((l) => l.text)).toEqual(['limit 1.5']);
});

it('keeps every value of every lane inside its scale', () => {
  const hot = [...run, row(5000, { clearance: -0.03, temperature: 310, pedalTravel: 26 })];
  for (const id of ['clearance', 'lining', 'factor', 'tooth', 'heat', 'pedal'] as const) {
    const { high, low, series } = laneOf(id, brake, hot);
    for (const s of series) {
      for (const value of hot.map(s.value).filter(Number.isFinite)) {
        expect(value).toBeGreaterThan(low);
        expect(value).toBeLessThan(high);
      }
    }
  }
});

it('tells no brake factor while the strut pushes the linings onto the drum', () => {
  const [factor] = laneOf('factor', brake, run).series;
  expect(factor?.value(row(0, { clearance: -0.01, brakeFactor: 36 }))).toBeNaN();
  expect(factor?.value(row(0))).toBe(2.29);
});

it('finds the row of a place, both sides of a click', () => {
  expect(rowAt(run, 2950 * KM)).toBe(1);
  expect(rowAt(run, 3000 * KM)).toBe(3);
  expect(rowAt(run, -1)).toBe(0);
  expect(nearestRow(run, 3700 * KM)).toBe(4);
  expect(nearestRow(run, 3300 * KM)).toBe(3);
  expect(nearestRow(run, 9e9)).toBe(4);
});

it('leaves room ahead on the axis', () => {
  for (const km of [0, 900, 4700, 38600, 59500, 131000]) {
    expect(axisEnd(km)).toBeGreaterThan(km);
    expect(axisEnd(km)).toBeLessThan(Math.max(1001, 3 * km));
  }
});

it('a kept moment stands in the lanes that one moment tells, within their scale, and is told in words', () => {
  const kept = row(1200, { clearance: 0.71, liningFront: 3.99, liningRear: 4.2, tooth: 2 });
  for (const id of ['clearance', 'lining', 'tooth', 'heat'] as const) {
    const values = keptOf(id, kept);
    expect(values.length, id).toBe(laneOf(id, brake, run).series.length);
    const { high, low } = reaching(laneOf(id, brake, run), values);
    for (const v of values) {
      expect(v, id).toBeLessThan(high);
      expect(v, id).toBeGreaterThan(low);
    }
  }
  // 0.71 is beyond what the run itself came to.
  expect(laneOf('clearance', brake, run).high).toBeLessThan(0.71);
  for (const id of ['factor', 'pedal', 'drag'] as const) expect(keptOf(id, kept)).toEqual([]);
  const plain = laneOf('clearance', brake, run);
  expect(reaching(plain, keptOf('clearance', null))).toBe(plain);
  // A lining is rounded down, never towards good.
  expect(keptText(kept)).toContain('1 200 km, clearance 0.71 mm, linings 3.9 and 4.2 mm, tooth 2');
  expect(keptText(null)).toBe('');
});

it('Wear has the kept moment of the record while it is to be seen', () => {
  const session = Session.of(JSON.parse(readFileSync(file, 'utf8')), true);
  const desk = new WearDesk(session);
  expect(desk.kept).toBe(null);
  session.do(keep);
  // A new van: 0.30 mm of gap (README), tooth 0, nothing driven.
  expect(desk.kept).toMatchObject({ distance: 0, tooth: 0, temperature: 20 });
  expect(desk.kept?.clearance).toBeCloseTo(0.3, 2);
  expect(desk.kept).toBe(desk.kept);
  session.do(haunt, false);
  expect(desk.kept).toBe(null);
});
