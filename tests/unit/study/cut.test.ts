import { describe, expect, it } from 'vitest';
import { cutOf, type Found, judgeCut, type Limits } from '../../../sim/workshop/index.ts';
import { near } from '../../near.ts';

const NONE: Limits = {
  drumMax: null,
  drumCut: null,
  score: null,
  outOfRound: null,
  taper: null,
  liningMin: null,
  notches: null,
};
const drum = (bore: number, score?: number): Found => ({
  sizes: { drumA: bore, drumB: bore - 0.05, ...(score === undefined ? {} : { score }) },
  looks: {},
});
const verdict = (left: Found, right: Found, limits: Limits) =>
  judgeCut({ left: cutOf(left, limits), right: cutOf(right, limits) });

describe('cut it or renew it', () => {
  const limits = { ...NONE, drumMax: 204.7, drumCut: 204.2 };

  it('a cut takes the depth of the score on both sides', () => {
    // Hand sum: 203.62 + 2 · 0.35 = 204.32: 0.38 to the mark, 0.12 past the machining limit.
    const cut = cutOf(drum(203.62, 0.35), limits);
    near(cut?.after ?? 0, 204.32, { abs: 1e-9 });
    near(cut?.toMark ?? 0, 0.38, { abs: 1e-9 });
    near(cut?.toMachined ?? 0, -0.12, { abs: 1e-9 });
    const end = verdict(drum(203.62, 0.35), drum(203.58, 0.1), limits);
    expect(end).toMatchObject({
      level: 'bad',
      title: 'Renew the left drum, and the right with it',
    });
    expect(end?.why).toMatch(/machining limit by 0\.12\./);
  });

  it('both are cut alike, to the one that needs more; what is left to wear is told', () => {
    // Hand sum: 203.40 + 0.60 = 204.00 on the right, 0.70 to the mark.
    const end = verdict(drum(203.5, 0.1), drum(203.4, 0.3), limits);
    expect(end).toMatchObject({ level: 'good', title: 'Both drums can be cut, alike, to 204.00' });
    expect(end?.why).toMatch(/^0\.70 is then left/);
  });

  it('a US rule for shops: new and 1.52 may be cut to, 0.76 of it is left for wear', () => {
    const us = { ...NONE, drumMax: 228.6 + 2.29, drumCut: 228.6 + 1.52 };
    expect(verdict(drum(228.6, 0.76), drum(228.6), us)).toMatchObject({ level: 'good' });
    expect(verdict(drum(228.6, 0.76), drum(228.6), us)?.why).toMatch(/^0\.77 is then left/);
    expect(verdict(drum(228.6, 0.77), drum(228.6), us)).toMatchObject({ level: 'bad' });
  });

  it('past the mark it is the mark that is told', () => {
    expect(verdict(drum(204, 0.5), drum(204), limits)?.why).toMatch(/mark on the drum by 0\.30/);
  });

  it('a limit that nobody owns gives no verdict, and a sheet without a score none at all', () => {
    const end = verdict(drum(203.5, 0.1), drum(203.5), { ...NONE, drumMax: 204.7 });
    expect(end).toMatchObject({ level: 'none' });
    expect(end?.why).toMatch(/^Not set: the machining limit\./);
    expect(verdict(drum(203.5, 0.1), drum(203.5), NONE)?.why).toMatch(
      /mark on the drum and the mach/,
    );
    expect(verdict(drum(203.5), drum(203.5, 0), limits)).toBeNull();
    expect(cutOf({ sizes: { score: 0.2 }, looks: {} }, limits)).toBeNull();
  });
});
