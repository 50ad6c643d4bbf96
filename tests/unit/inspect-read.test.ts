import { beforeAll, describe, expect, it } from 'vitest';
import { judgeAxle } from '../../sim/workshop/index.ts';
import type { Paper } from '../../ui/stations/inspect/paper.ts';
import { toReadings, understand } from '../../ui/stations/inspect/read.ts';
import { loadReader } from '../../ui/typed-size.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

beforeAll(loadReader);

const { brake } = quay();
const paper = (over: Partial<Paper>): Paper => ({
  id: '',
  wheels: { left: {}, right: {} },
  parts: { left: {}, right: {} },
  axle: {},
  head: {},
  limitsFrom: 'teaching',
  limits: {},
  plain: 'mm',
  ...over,
});
const left = (texts: Paper['wheels']['left']) => ({ wheels: { left: texts, right: {} } });

describe('from the texts of the sheet to numbers', () => {
  it('reads each place in its own way', () => {
    const u = understand(
      paper({
        ...left({
          drumA: '7 57/64 in',
          leadThin: '1,98',
          leverOff: 'on its stop',
          tooth: '12',
          boots: 'bad',
        }),
        axle: { distance: '50 000', notchesBefore: '5,5' },
      }),
      brake,
    );
    near(u.found.left.sizes.drumA ?? 0, 200.421875, { abs: 1e-9 });
    expect(u.found.left.sizes).toMatchObject({ leadThin: 1.98, leverOff: 0, tooth: 12 });
    expect(u.found.left.looks).toEqual({ boots: 'bad' });
    expect(u.found.notchesBefore).toBe(5.5);
    expect(u.distance).toBe(50e9);
    expect(u.wrong).toBe(0);
  });
  it('a plain number is in inches where that was chosen', () => {
    const u = understand(paper({ ...left({ leadThin: '0.078' }), plain: 'in' }), brake);
    near(u.found.left.sizes.leadThin ?? 0, 1.9812, { abs: 1e-9 });
  });
  it.each(['12.5', '-1', '21', 'twelve', '1e1x'])(
    'tooth %s is refused with what is allowed',
    (tooth) => {
      const u = understand(paper(left({ tooth })), brake);
      expect(u.wrong).toBe(1);
      expect(u.sizes.left.tooth).toMatchObject({ ok: false, allowed: 'a whole number, 0 to 20' });
      expect(u.found.left.sizes.tooth).toBeUndefined();
    },
  );
  it('a size of another brake altogether is refused, not taken', () => {
    const u = understand(paper(left({ drumA: '7.89' })), brake);
    expect(u.sizes.left.drumA).toMatchObject({ ok: false, found: '"7.89", read as 7.89 mm' });
  });
  it.each([
    ['100', 100],
    ['183.4', 183.4],
    ['9 in', 228.6],
    ['19 1/2"', 495.3],
    ['500', 500],
  ])('a drum of %s is read whatever stands on the bench', (drumA, mm) => {
    const u = understand(paper(left({ drumA })), brake);
    near(u.found.left.sizes.drumA ?? 0, mm, { abs: 1e-9 });
  });
  it('a drum of 9 in, and its mark, where a plain number is in inches', () => {
    const u = understand(
      paper({ axle: { drumNew: '9' }, limits: { drumMax: '9.06' }, plain: 'in' }),
      brake,
    );
    near(u.asNew.drum ?? 0, 228.6, { abs: 1e-9 });
    near(u.limits.drumMax ?? 0, 230.124, { abs: 1e-9 });
  });
  it('a mark that is no larger than the new drum is a slip', () => {
    const u = understand(paper({ axle: { drumNew: '9 in' }, limits: { drumMax: '228' } }), brake);
    expect(u.limitReads.drumMax).toMatchObject({
      ok: false,
      allowed: 'more than 228.6 mm, the new Ø',
    });
    expect(u.limits.drumMax).toBeNull();
  });
  it('nothing is judged by another brake’s limit: not its drum, not its linings, not its teeth', () => {
    const texts = left({ drumA: '183.4', leadThin: '2.9', tooth: '12' });
    for (const limitsFrom of ['maker', 'teaching'] as const) {
      const u = understand(paper({ ...texts, limitsFrom }), brake);
      const v = judgeAxle(u.found, u.limits, u.asNew).wheels.left;
      expect([v.drum.level, v.leading.level, v.tooth.level]).toEqual(['none', 'none', 'none']);
      expect(u.otherDrum).toBe(limitsFrom === 'teaching');
    }
    const typed = understand(paper({ ...texts, limits: { drumMax: '184' } }), brake);
    const v = judgeAxle(typed.found, typed.limits, typed.asNew).wheels.left;
    expect([v.drum.words, v.leading.level]).toEqual(['0.60 left', 'none']);
    expect(typed.whose).toMatchObject({ drumMax: 'typed here', liningMin: 'not for this drum' });
  });
  it('a drum whose new diameter was typed as another is judged by nobody else’s limit', () => {
    const over = { axle: { drumNew: '203' }, ...left({ drumA: '202' }) };
    expect(understand(paper(over), brake).limits.drumMax).toBeNull();
    // Nominal 8 in, at 203.2, is the same drum as none of 200.
    expect(understand(paper({ ...over, axle: { drumNew: '200' } }), brake).limits.drumMax).toBe(
      201,
    );
  });
  it('a limit that cannot be read lets nothing pass, and whose it is follows the typing', () => {
    const texts = left({ leadToe: '3', leadThin: '2.9', leadHeel: '3' });
    const of = (liningMin?: string) => {
      const u = understand(
        paper({ ...texts, limits: liningMin === undefined ? {} : { liningMin } }),
        brake,
      );
      return [u.whose.liningMin, judgeAxle(u.found, u.limits, u.asNew).wheels.left.leading.level];
    };
    expect(of()).toEqual(['this teaching brake', 'good']);
    expect(of('three')).toEqual(['typed here', 'none']);
    expect(of('')).toEqual(['none', 'none']);
    expect(of('0.12 in')).toEqual(['typed here', 'bad']);
  });
  it('gives the brake what was measured and nothing else', () => {
    const u = understand(paper(left({ drumB: '200.4', leadThin: '2', adjuster: 'bad' })), brake);
    expect(toReadings(u, 'left')).toEqual({
      drum: [200.4],
      lining: { front: { thinnest: 2 }, rear: {} },
      adjusterSeized: true,
    });
  });
});
