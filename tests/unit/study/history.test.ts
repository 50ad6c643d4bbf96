import { describe, expect, it } from 'vitest';
import { type Found, historyOf, type Limits, type PastSheet } from '../../../sim/workshop/index.ts';
import { near } from '../../near.ts';

const limits: Limits = {
  drumMax: 204.7,
  drumCut: null,
  score: null,
  outOfRound: null,
  taper: null,
  liningMin: 1.5,
  notches: null,
};
const wheel = (lead?: number, trail?: number, drumA?: number): Found => ({
  sizes: {
    ...(lead === undefined ? {} : { leadThin: lead }),
    ...(trail === undefined ? {} : { trailThin: trail }),
    ...(drumA === undefined ? {} : { drumA }),
  },
  looks: {},
});
const sheet = (day: number, km: number, left: Found): PastSheet => ({
  day,
  km,
  found: { left, right: wheel() },
});

describe('two sheets of one vehicle', () => {
  // 3.9 mm at 61 200 km, 3.1 at 84 600, 1.5 the least: by hand.
  const h = historyOf(sheet(0, 61200, wheel(3.9)), sheet(400, 84600, wheel(3.1)), limits);
  const first = h?.first;

  it('a straight line through both and on to the limit', () => {
    near((first?.rate ?? 0) * 1000, 0.8 / 23.4, { abs: 1e-9 }, 'mm in 1 000 km');
    near(first?.left?.as ?? 0, (1.6 / 0.8) * 23400, { abs: 1e-6 }, 'km');
  });

  it('its band: each reading off by 0.1, the shortest and the longest way', () => {
    // 4.0 and 3.0 read as 3.9 and 3.1: 1.5 left at 1.0 in 23 400; 3.8 and 3.2: 1.7 at 0.6.
    near(first?.left?.least ?? 0, 1.5 * 23400, { abs: 1e-6 });
    near(first?.left?.most ?? 0, (1.7 / 0.6) * 23400, { abs: 1e-6 });
  });

  it('the next look is at half of the shorter way, at the pace so far', () => {
    near(h?.next?.km ?? 0, 84600 + 17550, { abs: 1e-6 });
    // 23 400 km in 400 days: 17 550 km in 300.
    expect(h?.next?.day).toBe(700);
    expect(h?.reached).toEqual({ least: 1000, most: Math.ceil(400 + (66300 * 400) / 23400) });
  });

  it('less lost than the rule may be off by: a shortest way, no longest', () => {
    const few = historyOf(sheet(0, 0, wheel(3.9)), sheet(100, 10000, wheel(3.8)), limits);
    expect(few?.trends[0]?.state).toBe('too little to tell');
    // 2.3 − 0.1 left at 0.1 + 0.2 in 10 000 km.
    near(few?.first?.left?.least ?? 0, (2.2 / 0.3) * 10000, { abs: 1e-6 });
    expect(few?.first?.left?.most).toBe(Number.POSITIVE_INFINITY);
    expect(few?.reached?.most).toBe(Number.POSITIVE_INFINITY);
  });

  it('of several lines the one that may end first; a drum wears the other way', () => {
    // Drum by 0.4 in 20 000 km with 0.6 left, 0.05 off each: 0.55 / 0.5 · 20 000 = 22 000. Linings: longer.
    const both = historyOf(
      sheet(0, 0, wheel(4.4, 4.5, 203.7)),
      sheet(0, 20000, wheel(4, 4.4, 204.1)),
      limits,
    );
    expect(both?.first).toMatchObject({ line: 'drum', wheel: 'left', state: 'worn' });
    near(both?.first?.left?.least ?? 0, 22000, { abs: 1e-6 });
    expect(both?.next?.day).toBeNull();
    expect(both?.reached).toBeNull();
  });

  it('thicker than before is new parts, no rate; no limit, no distance; no way, nothing', () => {
    const fresh = historyOf(sheet(0, 0, wheel(2)), sheet(1, 9000, wheel(4.5)), limits);
    expect(fresh?.trends[0]).toMatchObject({ state: 'renewed between', left: null });
    expect(fresh?.first).toBeNull();
    const none = historyOf(sheet(0, 0, wheel(4)), sheet(1, 9000, wheel(3)), {
      ...limits,
      liningMin: null,
    });
    expect(none?.trends[0]).toMatchObject({ state: 'worn', left: null });
    expect(historyOf(sheet(0, 5000, wheel(4)), sheet(9, 5000, wheel(3)), limits)).toBeNull();
  });

  it('past the limit nothing is left', () => {
    const past = historyOf(sheet(0, 0, wheel(2)), sheet(10, 10000, wheel(1.4)), limits);
    expect(past?.first?.left).toMatchObject({ least: 0, as: 0 });
  });
});
