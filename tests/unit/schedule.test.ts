import { describe, expect, it } from 'vitest';
import type { Duty } from '../../sim/brake/duty.ts';
import { KM, KMH } from '../../sim/index.ts';
import { kindsOf, Schedule, waySpeed } from '../../sim/wear/schedule.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { brake } = quay();
const stop = { name: 'stop', speed: 40 * KMH, perKm: 1, reverse: 0.25 };
const week: Duty = {
  name: 'week',
  about: '',
  heat: true,
  mass: null,
  stops: [
    { ...stop, asked: { by: 'pressure', pressure: 2 } },
    {
      name: 'soft',
      speed: 36 * KMH,
      asked: { by: 'deceleration', deceleration: 2000 },
      perKm: 0.4,
      reverse: 0,
    },
  ],
  descents: [{ name: 'hill', slope: 0.1, length: 3 * KM, speed: 36 * KMH, perKm: 0.1 }],
  parking: { cable: 300, perKm: 0.3, tightened: 0 },
  weather: [
    { surface: 'wet', share: 0.25, film: 0.02 },
    { surface: 'damp', share: 0.5 },
  ],
};

describe('kinds of press of a duty', () => {
  it('are its stops, then each descent with a stop at its foot', () => {
    const [first, soft, hill, foot, ...others] = kindsOf(brake, week);
    expect(others).toEqual([]);
    // 1.15 t with 0.3 of the braking on two such brakes: ½·1.15·v²·0.15, in N·mm with v in mm/s.
    near(first?.energy ?? 0, 0.5 * 1.15 * 11111.11 ** 2 * 0.15, { rel: 1e-6 }, '40 km/h');
    near(soft?.energy ?? 0, 8625e3, { rel: 1e-9 }, '36 km/h, 10 m/s');
    expect(first).toMatchObject({
      asked: { by: 'pressure', pressure: 2 },
      length: 0,
      perKm: 1,
      reverse: 0.25,
      foot: false,
    });
    // 1.15 t · 2 m/s² · 0.3 · 270 mm / 2.
    expect(soft?.asked).toEqual({ by: 'torque', torque: expect.closeTo(93150, 6) });
    // Weight 11 278 N; of it 0.1/√1.01 down the hill and 0.015/√1.01 for rolling, 0.54·10² for the air:
    // 1122.2 − 168.3 − 54 = 899.8 N, of which this brake has 0.15.
    near(hill?.energy ?? 0, 134.98 * 3e6, { rel: 1e-3 }, 'hill');
    const { asked } = hill ?? {};
    near(asked?.by === 'torque' ? asked.torque : 0, 134.98 * 270, { rel: 1e-3 }, 'its torque');
    expect(hill).toMatchObject({
      speed: 36 * KMH,
      length: 3 * KM,
      perKm: 0.1,
      reverse: 0,
      foot: false,
    });
    expect(foot).toMatchObject({
      asked: { by: 'pressure', pressure: 2 },
      speed: 36 * KMH,
      length: 0,
      perKm: 0.1,
      reverse: 0,
      foot: true,
    });
    near(foot?.energy ?? 0, 8625e3, { rel: 1e-9 }, 'foot');
  });

  it('of descents alone have no stop at their foot, and a duty of nothing has none', () => {
    const alone = kindsOf(brake, { ...week, stops: [] });
    expect(alone.map(({ name, foot }) => [name, foot])).toEqual([['hill', false]]);
    const nothing = new Schedule(brake, { ...week, stops: [], descents: [], parking: null }, 0);
    const never = { kind: -1, at: Number.POSITIVE_INFINITY, turning: 1, weather: -1 };
    expect(nothing.due).toEqual(never);
    nothing.advance();
    expect(nothing.due).toEqual(never);
    expect(nothing.mark()).toEqual([0]);
    expect(new Schedule(brake, { ...week, stops: [], parking: null }, 0).due.kind).toBe(0);
  });

  it('take the mass that a duty has of its own', () => {
    const [, soft, hill, foot] = kindsOf(brake, { ...week, mass: 2.3 });
    near(soft?.energy ?? 0, 2 * 8625e3, { rel: 1e-9 }, 'stop');
    near(foot?.energy ?? 0, 2 * 8625e3, { rel: 1e-9 }, 'foot');
    expect(soft?.asked).toEqual({ by: 'torque', torque: expect.closeTo(2 * 93150, 6) });
    // Twice 1122.2 − 168.3, and the same air: 1853.7 N.
    near(hill?.energy ?? 0, 1853.7 * 0.15 * 3e6, { rel: 1e-3 }, 'hill');
  });

  it('go over their way at two thirds of the speed before a stop, down a hill at its own', () => {
    const [first, , hill] = kindsOf(brake, week);
    if (!first || !hill) throw new Error('a stop and a hill');
    near(waySpeed(first), (2 / 3) * 40 * KMH, { rel: 1e-12 }, 'stop');
    expect(waySpeed(hill)).toBe(36 * KMH);
  });
});

/** What comes next, and so on: place in the kinds and kilometres. */
function coming(schedule: Schedule, count: number): [kind: number, km: number][] {
  return Array.from({ length: count }, () => {
    const { kind, at } = schedule.due;
    schedule.advance();
    return [kind, at / KM];
  });
}

describe('when presses come', () => {
  it('the n-th of a kind at n over how often, kinds in their order where they meet, parking last', () => {
    expect(coming(new Schedule(brake, week, 0), 21)).toEqual([
      [0, 1],
      [0, 2],
      [1, 2.5],
      [0, 3],
      [-1, 3.333333],
      [0, 4],
      [0, 5],
      [1, 5],
      [0, 6],
      [-1, 6.666667],
      [0, 7],
      [1, 7.5],
      [0, 8],
      [0, 9],
      [0, 10],
      [1, 10],
      [2, 10],
      [3, 10],
      [-1, 10],
      [0, 11],
      [0, 12],
    ]);
  });

  it('is taken up anywhere, and what came just there is not due again', () => {
    expect(coming(new Schedule(brake, week, 2.2 * KM), 3)).toEqual([
      [1, 2.5],
      [0, 3],
      [-1, 3.333333],
    ]);
    expect(coming(new Schedule(brake, week, 3 * KM), 1)).toEqual([[-1, 3.333333]]);
    expect(coming(new Schedule(brake, week, 3333333), 1)).toEqual([[0, 4]]);
    expect(coming(new Schedule(brake, week, 10 * KM), 1)).toEqual([[0, 11]]);
    expect(coming(new Schedule(brake, { ...week, parking: null }, 3 * KM), 2)).toEqual([
      [0, 4],
      [0, 5],
    ]);
  });

  it('every fourth in reverse is the fourth, the eighth and so on', () => {
    const schedule = new Schedule(
      brake,
      { ...week, stops: week.stops.slice(0, 1), descents: [], parking: null },
      0,
    );
    const turnings = Array.from({ length: 8 }, () => {
      const { turning } = schedule.due;
      schedule.advance();
      return turning;
    });
    expect(turnings).toEqual([1, 1, 1, -1, 1, 1, 1, -1]);
  });

  it('weather goes by multiples of the golden section', () => {
    const schedule = new Schedule(
      brake,
      { ...week, stops: week.stops.slice(0, 1), descents: [], parking: null },
      0,
    );
    expect(schedule.weather).toEqual(['wet', 'damp']);
    expect(schedule.films).toEqual([0.02, undefined]);
    const found = Array.from({ length: 10 }, () => {
      const { weather } = schedule.due;
      schedule.advance();
      return weather;
    });
    // Parts of n·0.618: .618 .236 .854 .472 .090 .708 .326 .944 .562 .180; wet under 0.25, damp up to 0.75.
    expect(found).toEqual([1, 0, -1, 1, 0, 1, 1, -1, 1, 0]);
    expect(new Schedule(brake, { ...week, weather: [] }, 0).due.weather).toBe(-1);
  });

  it('the foot of a descent turns forward, and is come back to', () => {
    const schedule = new Schedule(brake, week, 9 * KM);
    coming(schedule, 3);
    // Its stop is the tenth of nothing that goes backward; the descent before it neither.
    expect(schedule.due).toMatchObject({ kind: 3, at: 10 * KM, turning: 1 });
    const mark = schedule.mark();
    expect(coming(schedule, 2)).toEqual([
      [3, 10],
      [-1, 10],
    ]);
    schedule.reset(mark);
    expect(schedule.due).toMatchObject({ kind: 3, at: 10 * KM, turning: 1 });
    expect(coming(schedule, 3)).toEqual([
      [3, 10],
      [-1, 10],
      [0, 11],
    ]);
    const later = schedule.mark();
    coming(schedule, 4);
    schedule.reset(later);
    expect(coming(schedule, 1)).toEqual([[0, 12]]);
  });
});
