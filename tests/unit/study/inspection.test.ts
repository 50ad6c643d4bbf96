import { describe, expect, it } from 'vitest';
import { KM } from '../../../sim/index.ts';
import {
  axleForecast,
  type Found,
  holdsFor,
  judgeAxle,
  type LimitSet,
  limitSets,
} from '../../../sim/workshop/index.ts';
import { quay } from '../../brakes.ts';
import { near } from '../../near.ts';

const { brake } = quay();
const sets = limitSets(brake);
const setOf = (id: LimitSet['id']): LimitSet => {
  const set = sets.find((s) => s.id === id);
  if (!set) throw new Error(`no set ${id}`);
  return set;
};
const teaching = setOf('teaching');
const others = sets.filter((s) => s !== teaching);
const asNew = { drum: 200, lining: 4.5, teeth: 20 };

/** A whole, sound wheel; what a test changes laid over it. */
const wheel = (sizes: Found['sizes'] = {}, looks: Found['looks'] = {}): Found => ({
  sizes: {
    drumA: 200.2,
    drumB: 200.2,
    drumC: 200.2,
    drumDeep: 200.2,
    lip: 0.05,
    leadToe: 3.6,
    leadThin: 3.5,
    leadHeel: 4.1,
    trailToe: 4.3,
    trailThin: 4.2,
    trailHeel: 4.4,
    tooth: 5,
    leverOff: 0,
    ...sizes,
  },
  looks: { faces: 'good', boots: 'good', springs: 'good', adjuster: 'good', ...looks },
});
const judge = (left: Found, right: Found = wheel(), limits = teaching.limits) =>
  judgeAxle({ left, right }, limits, asNew);

describe('table 14 of the teaching tables', () => {
  it('1.98 of 1.5: 0.48 left, refit only with a date', () => {
    const v = judge(
      wheel({ leadToe: 2.68, leadThin: 1.98, leadHeel: 3.64 }),
      wheel({ leadThin: 1.99, leadToe: 2.6, leadHeel: 3.6 }),
    );
    expect(v.wheels.left.leading).toMatchObject({ level: 'watch', words: '0.48 left' });
    near(v.wheels.left.leading.margin, 0.48, { abs: 1e-9 });
    expect(v).toMatchObject({ level: 'watch', title: 'Refit only with a date' });
  });
  it('the thin end counts, not the thick one', () => {
    expect(judge(wheel({ leadHeel: 1.2 })).wheels.left.leading).toMatchObject({
      level: 'bad',
      words: '0.30 under the limit',
    });
  });
  it('drum 200.93 of 201.00: 0.07 left', () => {
    const d = { drumA: 200.93, drumB: 200.93, drumC: 200.93 };
    expect(judge(wheel(d)).wheels.left.drum).toMatchObject({ level: 'watch', words: '0.07 left' });
  });
  it('all in limits, cylinder wet: do not refit', () => {
    const v = judge(wheel({}, { boots: 'bad' }));
    expect(v).toMatchObject({ level: 'bad', title: 'Do not refit yet' });
    expect(v.reasons).toHaveLength(1);
    expect(v.reasons[0]).toMatch(/Cylinder, left: leaks.*both wheels/);
  });
  it('200.33 and 200.51: out of round 0.18, over 0.10, though the largest passes', () => {
    const { drumC: _, ...sizes } = wheel({ drumA: 200.33, drumB: 200.51 }).sizes;
    const v = judge({ ...wheel(), sizes });
    expect(v.wheels.left.round).toMatchObject({ level: 'bad', words: '0.18: 0.08 over the limit' });
    expect(v.wheels.left.drum).toMatchObject({ level: 'good', words: '0.49 left' });
    expect(v.level).toBe('bad');
  });
});

describe('never towards good', () => {
  it('what is left is rounded down: 7 57/64 in of 201.00 is 0.57 left, not 0.58', () => {
    const d = 200.421875;
    expect(judge(wheel({ drumA: d, drumB: d, drumC: d })).wheels.left.drum.words).toBe('0.57 left');
  });
  it('what is over is rounded up: 0.001 over reads 0.01', () => {
    expect(judge(wheel({ drumB: 201.001 })).wheels.left.drum).toMatchObject({
      level: 'bad',
      words: '0.01 over the limit',
    });
  });
  it('at the limit nothing is left', () => {
    expect(judge(wheel({ leadThin: 1.5 })).wheels.left.leading).toMatchObject({
      level: 'watch',
      words: '0.00 left',
    });
    expect(judge(wheel({ leadThin: 1.4999 })).wheels.left.leading).toMatchObject({
      level: 'bad',
      words: '0.01 under the limit',
    });
  });
  it('three angles that may have missed the widest one are only to be watched', () => {
    // An oval of 0.12 between greatest and least, met 0, 60 and 120 degrees from its long axis, shows 0.09.
    const at = (k: number) => 200.3 + 0.06 * Math.cos((2 * k * Math.PI) / 3);
    const v = judge(wheel({ drumA: at(0), drumB: at(1), drumC: at(2) }));
    expect(v.wheels.left.round.level).toBe('watch');
    expect(v.wheels.left.round.words).toMatch(/0\.09 seen, 0\.12 likely/);
  });
  it('a sheet with a gap does not pass, and says how many lines are missing', () => {
    const { boots: _, ...looks } = wheel().looks;
    expect(judge({ ...wheel(), looks })).toMatchObject({
      level: 'none',
      title: 'Not complete: 1 line to go',
      open: 1,
    });
    expect(judge({ sizes: {}, looks: {} }).open).toBe(9);
  });
  it('no limit, no pass', () => {
    const v = judge(wheel(), wheel(), setOf('maker').limits);
    expect(v.level).toBe('none');
    expect(v.wheels.left.leading.words).toBe('no limit set');
  });
  it('a failed line fails the sheet even where others are still missing', () => {
    expect(judge({ sizes: { leadThin: 1 }, looks: {} }).title).toBe('Do not refit yet');
  });
  it('the thinnest point must have been looked for', () => {
    const { leadThin: _, ...sizes } = wheel().sizes;
    expect(judge({ ...wheel(), sizes }).wheels.left.leading.level).toBe('none');
  });
});

describe('two wheels side by side', () => {
  it('a whole sound axle passes', () => {
    expect(judge(wheel())).toMatchObject({ level: 'good', reasons: [], open: 0 });
  });
  it('a wheel worn 1 mm more than the other is told, with what to look for', () => {
    const v = judge(wheel({ leadThin: 2.5 }));
    expect(v.differences.find((d) => d.line === 'leading')).toMatchObject({ uneven: true });
    near(v.differences.find((d) => d.line === 'leading')?.by ?? 0, -1, { abs: 1e-9 });
    expect(v.reasons.join(' ')).toMatch(/Leading lining differs by 1\.00 .* stuck piston/);
  });
  it('lever off its stop, lip, last tooth, notches', () => {
    const v = judgeAxle(
      {
        left: wheel({ leverOff: 3, lip: 0.21, tooth: 20 }),
        right: wheel(),
        notchesBefore: 9,
        notchesAfter: 6,
      },
      { ...teaching.limits, notches: 7 },
      asNew,
    );
    expect(v.wheels.left.lever).toMatchObject({ level: 'bad', words: '3.00 off its stop' });
    expect(v.wheels.left.lip).toMatchObject({ level: 'watch', words: 'back off before pulling' });
    expect(v.wheels.left.tooth).toMatchObject({ level: 'watch', words: '20 of 20: none left' });
    expect(v.notches).toMatchObject({ level: 'good', words: '6, 3 fewer: in limit' });
  });
});

describe('whose limits', () => {
  it('every set says whose it is, and only the teaching brake knows this drum', () => {
    for (const s of [teaching, ...others]) expect(s.whose.length).toBeGreaterThan(3);
    expect(teaching.limits).toMatchObject({ drumMax: 201, outOfRound: 0.1, liningMin: 1.5 });
    for (const s of others) expect(s.limits.drumMax).toBeNull();
  });
  it('the first to choose from sets nothing', () => {
    expect(sets[0]?.id).toBe('maker');
    expect(Object.values(sets[0]?.limits ?? {})).toEqual(Array(7).fill(null));
  });
  it('limits of one brake hold for its own drum: 200 new, to 2 past its mark of 201', () => {
    expect(holdsFor(teaching, 200, [200.42])).toBe(true);
    expect(holdsFor(teaching, null, [200.93, 202.9])).toBe(true);
    // A drum of 183.4 was once told as having 17.60 left of 201.
    expect(holdsFor(teaching, null, [183.4])).toBe(false);
    expect(holdsFor(teaching, 228.6, [])).toBe(false);
    expect(holdsFor(teaching, null, [229.1])).toBe(false);
    expect(holdsFor(setOf('regulation'), 228.6, [229.1])).toBe(true);
  });
  it('limits of one’s own brake are called that: what was typed, and nothing that was assumed', () => {
    const own = limitSets(brake, { drumNew: 228.6, drumMax: 230.1 }).find(
      (s) => s.id === 'teaching',
    );
    expect(own?.name).toBe('My brake: Quay van');
    expect(own?.whose).toBe('my brake, as typed');
    expect(own?.limits).toMatchObject({ drumMax: 230.1, liningMin: null, outOfRound: null });
    expect(own?.asNew).toEqual({ drum: 228.6, lining: null, teeth: null });
  });
});

describe('a brake of which only the limits are known', () => {
  const unknown = setOf('maker').asNew;
  const limits = { ...setOf('maker').limits, drumMax: 230.1, liningMin: 1.5 };
  const of = (sizes: Found['sizes']) =>
    judgeAxle({ left: { sizes, looks: {} }, right: wheel() }, limits, unknown).wheels.left;
  it('is to be watched under a third of a usual allowance of 2, of a usual lining of 5', () => {
    // Common practice: 2 mm of a drum, linings of 5 new; a third of 2 is 0.67, of 3.5 is 1.17.
    expect(of({ drumA: 229.4 }).drum).toMatchObject({ level: 'good', words: '0.70 left' });
    expect(of({ drumA: 229.5 }).drum).toMatchObject({ level: 'watch', words: '0.60 left' });
    expect(of({ leadThin: 2.6 }).leading.level).toBe('watch');
    expect(of({ leadThin: 2.7 }).leading.level).toBe('good');
  });
  it('has no verdict on its teeth, and no forecast of what was never new', () => {
    expect(of({ tooth: 25 }).tooth.level).toBe('none');
    const axle = { left: { sizes: { leadThin: 2, drumA: 229.5 }, looks: {} }, right: wheel() };
    expect(axleForecast(brake, axle, limits, 50000 * KM, unknown)).toBeNull();
    const fitted = { drum: null, lining: 5 };
    // 3.0 lost in 50 000 km; the right wheel, at 3.5, lost less: 0.5 left is 8 333 km.
    const told = axleForecast(brake, axle, limits, 50000 * KM, fitted);
    near((told?.left ?? 0) / KM, 8333, { abs: 1 });
    expect(told?.what).toBe('front lining');
  });
});

describe('distance left: teaching tables, tables 8 and 14', () => {
  const only = (sizes: Found['sizes']): Found => ({ sizes, looks: {} });
  it('1.98 of 4.5 after 50 000 km: 9 500 km to 1.5, band 4 800 to 19 000', () => {
    const axle = { left: only({ leadThin: 1.98 }), right: only({ leadThin: 2.1 }) };
    const told = axleForecast(brake, axle, teaching.limits, 50000 * KM, asNew);
    near((told?.left ?? 0) / KM, 9500, { abs: 50 });
    near((told?.low ?? 0) / KM, 4800, { abs: 50 });
    near((told?.high ?? 0) / KM, 19000, { abs: 50 });
    expect(told).toMatchObject({ wheel: 'left', what: 'front lining' });
  });
  it('second set, fitted at 200.60, 200.93 and 2.42 after 40 000 km: the drum first, near 48 000', () => {
    const wheelNow = only({ drumA: 200.93, leadThin: 2.42 });
    const axle = { left: wheelNow, right: only({}) };
    const told = axleForecast(brake, axle, teaching.limits, 40000 * KM, { ...asNew, drum: 200.6 });
    expect(told?.what).toBe('drum');
    near(40000 + (told?.left ?? 0) / KM, 48000, { abs: 600 });
  });
  it('a stricter limit typed over ends it sooner; without a limit nothing is told', () => {
    const axle = { left: only({ leadThin: 1.98 }), right: only({}) };
    const strict = axleForecast(
      brake,
      axle,
      { ...teaching.limits, liningMin: 1.9 },
      50000 * KM,
      asNew,
    );
    near((strict?.left ?? 0) / KM, (0.08 / 2.52) * 50000, { abs: 1 });
    expect(
      axleForecast(brake, axle, { ...teaching.limits, liningMin: null }, 50000 * KM, asNew),
    ).toBeNull();
    expect(axleForecast(brake, axle, teaching.limits, 0, asNew)).toBeNull();
  });
});
