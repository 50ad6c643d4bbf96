import { describe, expect, it } from 'vitest';
import { balance, freshState, readingOf, readings, rest } from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { takeup } from '../takeup.ts';

describe('vary', () => {
  it('JSON and CSV have the same numbers, those of single presses', async () => {
    const asked = ['vary', 'quay-van', '--of', 'pressure', '--from', '10', '--to', '40'];
    const more = ['--points', '4', '--read', 'torque,pedalTravel'];
    const json = JSON.parse((await takeup(...asked, ...more, '--json')).out);
    const csv = (await takeup(...asked, ...more, '--csv')).out.trim().split('\n');
    expect(csv[0]).toBe('pressure [bar],torque [N·m],pedalTravel [mm],told');
    const [curve] = json.curves as { points: { at: number; values: number[]; told: null }[] }[];
    expect(curve?.points.map((p) => p.at)).toEqual([10, 20, 30, 40]);
    const { brake, rig } = quay();
    const state = freshState(brake);
    for (const [k, p] of (curve?.points ?? []).entries()) {
      const i = balance(rig, state, { pressure: p.at * 0.1, turning: 1 });
      const list = readings(brake, state, i, rest(rig, state));
      const values = ['torque', 'pedalTravel'].map((key) => readingOf(list, key).value);
      expect(p.values).toEqual(values);
      expect(csv[k + 1]?.split(',').map(Number)).toEqual([p.at, ...values, 0]);
    }
  });

  it('a family has a curve for each value, and says why nothing is told', async () => {
    const args = [
      'vary',
      'quay-van',
      '--of',
      'shoes.lining.friction',
      '--from',
      '0.7',
      '--to',
      '0.8',
    ];
    const { out } = await takeup(
      ...args,
      '--points',
      '2',
      '--and',
      'tooth',
      '--values',
      '0,20',
      '--json',
    );
    const { curves } = JSON.parse(out);
    expect(curves.map((c: { also: unknown }) => c.also)).toEqual([
      { id: 'tooth', value: 0 },
      { id: 'tooth', value: 20 },
    ]);
    expect(curves[0].points.map((p: { told: unknown }) => p.told)).toEqual([
      null,
      'front shoe locks',
    ]);
    expect(curves[0].points[1].values).toEqual([null, null]);
    const bore = await takeup(
      'vary',
      'quay-van',
      '--of',
      'cylinder.bore',
      '--from',
      '26',
      '--points',
      '1',
    );
    expect(bore.out).toMatch(/cannot be: cylinder\.bore: found 26 mm/);
  });

  it('lists what there is, with units and ranges', async () => {
    const { code, out } = await takeup('vary', 'quay-van', '--list');
    expect(code).toBe(0);
    expect(out).toMatch(/cylinder\.bore {2}Bore \(Wheel cylinder\): 19\.05 mm, 0 to 100/);
    expect(out).toMatch(/nextClick {2}Driven to the next click, km/);
  });

  it.each([
    [
      ['--of', 'cylinder.boer'],
      /--of: found "cylinder\.boer"; allowed: cylinder\.bore, or another of --list/,
    ],
    [[], /--of: found nothing; allowed: what to vary/],
    [
      ['--of', 'tooth', '--from', '1.5'],
      /--from: found "1\.5"; allowed: a whole number from 0 to 20/,
    ],
    [
      ['--of', 'pressure', '--to', 'high'],
      /--to: found "high"; allowed: a number from 0 to 200 bar/,
    ],
    [['--of', 'pressure', '--points', '0'], /--points: found "0"; allowed: 1 to 20000/],
    [['--of', 'pressure', '--read', 'torqe'], /--read: found "torqe"; allowed: torque, or another/],
    [['--of', 'pressure', '--and', 'tooth'], /--and: found no --values; allowed: both or neither/],
    [
      ['--of', 'pressure', '--and', 'tooth', '--values', '1,x'],
      /--values: found "x"; allowed: a whole number/,
    ],
  ])('%j is no call', async (args, told) => {
    const { code, err } = await takeup('vary', 'quay-van', ...args);
    expect(code).toBe(2);
    expect(err).toMatch(told);
  });
});
