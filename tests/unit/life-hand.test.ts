import { describe, expect, it } from 'vitest';
import { pedalFrom } from '../../sim/brake/pedal.ts';
import {
  application,
  type BrakeState,
  balance,
  createLife,
  createRig,
  type Duty,
  driveLife,
  freshState,
  isDriven,
  KM,
  KMH,
  type Life,
  type LifeOptions,
  lostVolume,
  type Rig,
  rest,
  standingDistance,
  standingState,
  stopEnergyOf,
  thinnest,
  wearOn,
} from '../../sim/index.ts';
import { lockedWhenDriven } from '../../sim/wear/life-locks.ts';
import { rebed, underShoes } from '../../sim/wear/rebed.ts';
import { Schedule } from '../../sim/wear/schedule.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { quay, type quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/** Short lives by what a stop does: Archard's law, the ratchet at the very press, limits where they are. */

const { brake, rig, state: fresh } = quay();
const [plain] = brake.duties;
/** A stop of the van from 40 km/h, N·mm. */
const STOP = stopEnergyOf(brake, 40 * KMH);
const drive = (options: LifeOptions, state: BrakeState = fresh, duty: Duty = plain): Life =>
  driveLife(rig, state, duty, options);
const filled = (depth: number) => new Float64Array(48).fill(depth);
const worn = (front: number, rear = front): Pick<BrakeState, 'wear'> => ({
  wear: { front: filled(front), rear: filled(rear) },
});
const kinds = (l: Life): string[] => l.events.map((e) => e.kind);
const ill = (change: Partial<BrakeState['condition']>, s = fresh): BrakeState => ({
  ...s,
  condition: { ...s.condition, ...change },
});

/** A brake in a drum so wide that the duty's press parts its seats to within so much of the next tooth, mm. */
function shortOfTooth(by: number, on: Rig = rig, from: BrakeState = fresh): BrakeState {
  const needed = 103.2 + 0.9 + (on.brake.adjuster.growth[from.tooth + 1] as number) - by;
  const at = (radius: number) => ({ ...from, drumRadius: radius });
  const off = (radius: number) =>
    balance(on, at(radius), { pressure: 2, turning: 1 }).separation - needed;
  let [a, b] = [100, 100.3];
  for (let n = 0; n < 12; n++) {
    const [p, q] = [off(a), off(b)];
    if (Math.abs(q) < 1e-9) break;
    [a, b] = [b, b - (q * (b - a)) / (q - p)];
  }
  return at(b);
}

describe('the way of a life', () => {
  it('stops at its distance, each kilometre one stop, and tells where it is', () => {
    for (const oneByOne of [true, false]) {
      const life = createLife(rig, fresh, plain, { distance: 5 * KM, oneByOne });
      expect([life.done, life.end, life.distance, life.progress]).toEqual([false, null, 0, 0]);
      expect(life.rows.map((r) => [r.at, r.distance])).toEqual([['run', 0]]);
      life.advance(0);
      expect(life.distance).toBe(0);
      life.advance(2 * KM);
      expect(life.distance).toBeGreaterThanOrEqual(2 * KM);
      near(life.progress, life.distance / (5 * KM), { rel: 1e-12 }, 'progress');
      while (!life.done) life.advance(KM);
      expect([life.end, life.distance, life.progress]).toEqual(['distance', 5 * KM, 1]);
      expect(life.state()).toMatchObject({ applications: 5, distance: 5 * KM, tooth: 0 });
      expect(life.rows.at(-1)).toMatchObject({ at: 'run', distance: 5 * KM });
      const after = life.state();
      life.advance(5 * KM);
      expect(life.state()).toEqual(after);
      expect(life.events).toEqual([]);
    }
  });

  it('ends between two stops where it is to end there, and goes on from any distance', () => {
    for (const oneByOne of [true, false]) {
      const half = drive({ distance: 2.5 * KM, oneByOne });
      expect([half.distance, half.state().applications]).toEqual([2.5 * KM, 2]);
      const on = drive({ distance: 5 * KM, oneByOne }, half.state());
      expect([on.distance, on.state().applications, on.rows[0]?.distance]).toEqual([
        5 * KM,
        5,
        2.5 * KM,
      ]);
    }
    const late = createLife(rig, { ...fresh, distance: 7 * KM }, plain, {
      distance: 9 * KM,
      oneByOne: true,
    });
    late.advance(KM);
    expect([late.distance, late.progress]).toEqual([8 * KM, 0.5]);
  });

  it('takes all stops that come where it ends, and a hill as one that is held and no stop', () => {
    const [stop] = plain.stops;
    const twice: Duty = { ...plain, stops: [stop, { ...stop, name: 'other' }] as Duty['stops'] };
    const hilly: Duty = {
      ...plain,
      descents: [{ name: 'hill', slope: 0.08, length: 2 * KM, speed: 40 * KMH, perKm: 0.2 }],
    };
    for (const oneByOne of [true, false]) {
      const both = drive({ distance: 3 * KM, oneByOne }, fresh, twice).state();
      expect([both.distance, both.applications]).toEqual([3 * KM, 6]);
      const once = createLife(rig, fresh, twice, { distance: 3 * KM, oneByOne, rowEvery: KM });
      once.advance(3 * KM);
      expect([once.end, once.rows.at(-1)?.state.applications]).toEqual(['distance', 6]);
      // Five stops, and one at the foot of the hill.
      const hill = drive({ distance: 5 * KM, oneByOne }, fresh, hilly).state();
      expect([hill.distance, hill.applications]).toEqual([5 * KM, 6]);
    }
  });

  it('goes in lumps as deep as asked, each at most three times as long as the last', () => {
    /** Of each lump: where it ended, km, and its deepest wear, mm. */
    const lumps = (options: LifeOptions, from = fresh) => {
      const life = drive({ ...options, rowEvery: 1 }, from);
      const depth = (s: BrakeState) => Math.max(...s.wear.front, ...s.wear.rear);
      return life.rows.slice(1).map((row, n) => {
        const before = life.rows[n] as typeof row;
        return {
          km: (row.distance - before.distance) / KM,
          deep: depth(row.state) - depth(before.state),
        };
      });
    };
    for (const [lump, most] of [
      [undefined, 0.01],
      [0.003, 0.003],
    ] as const) {
      const found = lumps({ distance: 900 * KM, ...(lump ? { lump } : {}) }).slice(0, -1);
      // Two kilometres, thrice: at first nothing is known of how it wears.
      near(found[0]?.km ?? 0, 6, { abs: 1 }, 'first');
      found.forEach(({ km, deep }, n) => {
        expect(deep, `${n}`).toBeLessThan(1.1 * most);
        if (n > 0) expect(km).toBeLessThanOrEqual(3 * (found[n - 1]?.km ?? 0) + 1);
      });
      // Once worn in they are as deep as they may be.
      for (const { deep } of found.slice(4)) near(deep, most, { rel: 0.1 }, 'deep');
      expect(found.length).toBeGreaterThan(4);
    }
    // Late in a life no click needs to be placed within less than a thousandth: a lump is half of that at least.
    const late = lumps({ distance: 100400 * KM, lump: 1e-5 }, { ...fresh, distance: 1e5 * KM });
    for (const { km } of late.slice(0, -1)) near(km, 50, { rel: 0.01, abs: 1 }, 'late');
    expect(late.length).toBeGreaterThan(5);
  });

  it('is over at once where there is no way left', () => {
    for (const distance of [0, 3 * KM]) {
      const life = createLife(rig, { ...fresh, distance: 3 * KM }, plain, { distance });
      expect([life.end, life.distance, life.rows.length]).toEqual(['distance', 3 * KM, 1]);
    }
  });

  it('wears off k·E/mu, stop by stop and in lumps: Archard', () => {
    for (const oneByOne of [true, false]) {
      const { wear, drumRadius } = drive({ distance: 20 * KM, oneByOne }).state();
      near(lostVolume(rig, wear), (1.2e-8 * 20 * STOP) / 0.38, { rel: 2e-3 }, 'linings');
      const bore = 2 * Math.PI * 100 * 32 * (drumRadius - 100);
      near(bore, (3e-9 * 20 * STOP) / 0.38, { rel: 2e-3 }, 'drum');
    }
  });

  it('wears at the drum’s own temperature where its heat is not followed, and leaves it so', () => {
    // The tables: five times as fast at 400 °C, at 0.68 of the friction.
    for (const oneByOne of [true, false]) {
      const life = drive({ distance: 20 * KM, oneByOne }, { ...fresh, temperature: 400 });
      const { wear, temperature } = life.state();
      expect(temperature).toBe(400);
      near(lostVolume(rig, wear), (5 * 1.2e-8 * 20 * STOP) / (0.38 * 0.68), { rel: 4e-3 });
      expect(life.rows.at(-1)?.temperature).toBe(400);
    }
  });

  it('stays stable where a press wears as much as the lining gives: a rate a thousandfold', () => {
    // (E/t)·k·s would be some 20: explicit steps fall into stripes, each taking what the last left.
    const soft = quay((s) => {
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.wearRate = 1.2e-5;
    });
    // In a drum that is wider than they are ground they bear on their crown at first.
    const wide = { ...soft.state, drumRadius: 100.3 };
    const life = driveLife(soft.rig, wide, plain, { distance: 3 * KM, oneByOne: true });
    const { wear } = life.state();
    near(lostVolume(soft.rig, wear), (1.2e-5 * 3 * STOP) / 0.38, { rel: 0.02 }, 'volume');
    for (const side of ['front', 'rear'] as const) {
      // No stripes: it is deepest in one place and less and less away from it.
      const w = wear[side];
      let turns = 0;
      for (let i = 2; i < w.length; i++) {
        const [a, b, c] = [w[i - 2], w[i - 1], w[i]] as [number, number, number];
        if ((b - a) * (c - b) < 0) turns++;
      }
      expect(turns, side).toBeLessThanOrEqual(1);
    }
  });

  it('wears such a lining alike by few hard stops and by many of as much energy', () => {
    const soft = quay((s) => {
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.wearRate = 1.2e-5;
    });
    const worn = (often: number) => {
      const stops = plain.stops.map((s) => ({
        ...s,
        perKm: often,
        speed: s.speed / Math.sqrt(often),
      }));
      const options = { distance: 2 * KM, oneByOne: true };
      return driveLife(soft.rig, soft.state, { ...plain, stops }, options).state().wear.front;
    };
    const [few, many] = [worn(1), worn(64)];
    const most = Math.max(...many);
    few.forEach((w, i) => {
      near(w, many[i] ?? 0, { abs: 0.15 * most }, `${i}`);
    });
  });

  it('has rows as far apart as asked, the hottest since the last in each', () => {
    const rows = (rowEvery: number) =>
      drive({ distance: 12 * KM, rowEvery, oneByOne: true }).rows.map((r) => r.distance / KM);
    expect(rows(3 * KM)).toEqual([0, 3, 6, 9, 12]);
    expect(rows(5 * KM)).toEqual([0, 5, 10, 12]);
    const hot: Duty = { ...plain, heat: true };
    const life = drive({ distance: 4 * KM, rowEvery: KM, oneByOne: true }, fresh, hot);
    // A stop warms the drum by 10 648/1 564 K; a kilometre on the road, 90 s at 7.3 W/K, leaves 0.657.
    const left = Math.exp((-90 * 7.3) / 1564);
    let rise = 0;
    for (const row of life.rows.slice(1)) {
      rise = rise * left + 10648 / 1564;
      near(row.temperature, 20 + rise, { abs: 0.01 }, `${row.distance}`);
    }
    expect(life.rows[0]?.temperature).toBe(20);
  });

  it('without a distance goes by what is worn', () => {
    // Front 4.5 − 2.25: three quarters of the 3 mm that it may lose are gone, none of the way from there.
    const life = createLife(rig, { ...fresh, ...worn(2.25) }, plain, {});
    near(life.progress, 0, { abs: 1e-4 }, 'at first');
    const drum = createLife(rig, { ...fresh, drumRadius: 100.2 }, plain, {});
    near(drum.progress, 0.4, { rel: 1e-9 }, 'of the drum');
    // One that stops at no limit goes a million kilometres.
    const far = createLife(rig, { ...fresh, drumRadius: 100.2 }, plain, { stopAtLimit: false });
    far.advance(KM);
    near(far.progress, far.distance / (1e6 * KM), { rel: 1e-9 }, 'of the way');
  });
});

describe('a row', () => {
  it('is the brake at rest and one press of the duty', () => {
    const state = { ...fresh, ...worn(0.1, 0.05), tooth: 1, drumRadius: 100.02 };
    const life = createLife(rig, state, plain, { distance: 0 });
    const row = life.rows[0];
    if (!row) throw new Error('a first row');
    const i = balance(rig, state, { pressure: 2, turning: 1 });
    const still = rest(rig, state).shoes;
    const middle = (g: ArrayLike<number>) => ((g[23] as number) + (g[24] as number)) / 2;
    near(row.clearance, (middle(still.front.gap) + middle(still.rear.gap)) / 2, { abs: 1e-4 });
    expect([row.liningFront, row.liningRear]).toEqual([4.4, 4.45].map((t) => expect.closeTo(t, 9)));
    const push = (i.shoes.front.toeForce + i.shoes.rear.toeForce) / 2;
    near(row.brakeFactor, -i.torqueOnDrum / 100.02 / push, { rel: 1e-6 }, 'factor');
    const { front, rear } = i.shoes;
    const pedal = pedalFrom(brake, front.pistonTravel, rear.pistonTravel, 2).total;
    near(row.pedalTravel, pedal, { rel: 1e-6 }, 'pedal');
    near(row.lip, 0.02, { abs: 1e-9 }, 'lip');
    expect(row).toMatchObject({ at: 'run', tooth: 1, temperature: 20, drumRadius: 100.02 });
    expect(row.state).toEqual(life.state());
    expect(row.drag).toEqual({ torque: 0, power: 0 });
  });

  it('has no factor where nothing is pressed hard enough to brake', () => {
    // 0.1 bar push 3 N, the springs pull 140 N and more.
    const soft: Duty = {
      ...plain,
      stops: plain.stops.map((s) => ({ ...s, asked: { by: 'pressure', pressure: 0.01 } })),
    };
    for (const oneByOne of [true, false]) {
      const life = drive({ distance: 3 * KM, oneByOne }, fresh, soft);
      expect(life.rows[0]?.brakeFactor).toBeNaN();
      expect(lostVolume(rig, life.state().wear)).toBe(0);
      expect(life.state().applications).toBe(3);
    }
    // Nor where a cable alone presses the linings on, against the springs at the toes.
    const pulled = drive({ distance: 0 }, ill({ keptCable: 200 }), soft);
    expect(pulled.rows[0]?.drag.torque).toBeGreaterThan(10e3);
    expect(pulled.rows[0]?.brakeFactor).toBeNaN();
  });
});

describe('a click', () => {
  /** Stops to the first at which the seats stand a tooth apart, pressed and worn off one by one. */
  function stopsTo(state: BrakeState): number {
    const w = new Wearing(rig, state);
    const warm = w.makeWarm();
    const needed = 103.2 + 0.9 + (brake.adjuster.growth[1] as number);
    for (let n = 1; n < 400; n++) {
      w.press(warm, 2, 1, null, 20);
      if (w.separation >= needed) return n;
      w.wearOff(STOP / (w.torque / w.drumRadius));
    }
    return Number.NaN;
  }

  it('comes at the very stop that parts the seats so far, with a row before and one after', () => {
    const state = shortOfTooth(0.004);
    const stops = stopsTo(state);
    expect(stops).toBeGreaterThan(10);
    const single = drive({ toNextClick: true, oneByOne: true }, state);
    expect([single.end, single.distance]).toEqual(['click', stops * KM]);
    const lumps = drive({ toNextClick: true }, state);
    // Placed to within 2e-3 of its distance: to the stop.
    expect([lumps.end, Math.abs(lumps.distance / KM - stops) <= 1]).toEqual(['click', true]);
    for (const life of [single, lumps]) {
      expect(kinds(life)).toEqual(['click']);
      expect(life.events[0]).toMatchObject({
        distance: life.distance,
        tooth: 1,
        value: 1,
        side: null,
        temperature: 0,
        torque: 0,
      });
      expect(life.state().tooth).toBe(1);
      expect(life.events[0]?.state.tooth).toBe(1);
      const told = life.rows.slice(-2).map((r) => [r.at, r.tooth, r.distance === life.distance]);
      expect(told).toEqual([
        ['before click', 0, true],
        ['after click', 1, true],
      ]);
      const [before, after] = life.rows.slice(-2);
      // A tooth of 0.49 mm at the seats moves both linings' middles out by some 0.15 mm.
      near((before?.clearance ?? 0) - (after?.clearance ?? 0), 0.15, { abs: 0.03 }, 'taken up');
    }
    // Driven on it clicks no more there.
    expect(kinds(drive({ distance: single.distance + 20 * KM }, single.state()))).toEqual([]);
  });

  it('of a brake that is due at once comes before driving off, all teeth that are passed', () => {
    const state = { ...fresh, drumRadius: 101 };
    const { clicked } = application(rig, state, { pressure: 2, turning: 1 });
    expect(clicked).toBeGreaterThan(1);
    const life = createLife(rig, state, plain, { toNextClick: true });
    expect([life.end, life.distance, life.state().tooth]).toEqual(['click', 0, clicked]);
    expect(life.events.map((e) => [e.kind, e.tooth, e.value])).toEqual(
      Array.from({ length: clicked }, (_, n) => ['click', n + 1, 1]),
    );
    expect(life.rows.map((r) => r.at)).toEqual(['before click', 'after click']);
    const both = createLife(rig, state, plain, { toNextClick: true, distance: 0 });
    expect([both.end, both.rows.length]).toEqual(['click', 2]);
    // With the last tooth it is told that there is no more.
    const single = createRig({ ...brake, adjuster: { ...brake.adjuster, teeth: 1 } });
    const last = createLife(single, state, plain, { distance: 0 });
    expect(last.events.slice(0, 2).map((e) => [e.kind, e.tooth])).toEqual([
      ['click', 1],
      ['teeth used up', 1],
    ]);
  });

  it('winds back by one where it is fitted on the wrong side', () => {
    const state = ill({ adjusterStep: -1 }, { ...fresh, tooth: 1, drumRadius: 101 });
    const life = createLife(rig, state, plain, { toNextClick: true });
    expect([life.end, life.state().tooth]).toEqual(['click', 0]);
    expect(life.events.map((e) => [e.kind, e.value, e.tooth])).toEqual([['click', -1, 0]]);
  });

  it('on a hot drum comes where a press at that heat parts the seats so far', () => {
    // A stop from 100 km/h at the foot of nothing: 66 550 J warm the drum by 42.55 K, in its middle by half.
    const hot: Duty = {
      ...plain,
      heat: true,
      stops: [{ name: 'hard', ...plain.stops[0], speed: 100 * KMH } as Duty['stops'][number]],
    };
    const start = { ...shortOfTooth(0.1), temperature: 60 };
    const rise = (0.5 * 1.15 * (100 * KMH) ** 2 * 0.15) / 1564e3;
    // 36 s at 14.5 W/K leave e^(−0.33375).
    const end = 20 + 40 * Math.exp((-36 * 14.5) / 1564) + rise;
    const parted = (temperature: number) =>
      balance(rig, { ...start, temperature }, { pressure: 2, turning: 1 }).separation;
    const gained = parted(end) - parted(20);
    for (const [short, clicks] of [
      [0.985 * gained, ['click']],
      [1.015 * gained, []],
    ] as const) {
      for (const oneByOne of [true, false]) {
        const state = { ...shortOfTooth(short), temperature: 60 };
        const life = drive({ distance: KM, oneByOne }, state, hot);
        near(life.state().temperature, end, { abs: 0.01 }, 'heat');
        expect(
          kinds(life).filter((k) => k === 'click'),
          `${short}, ${oneByOne}`,
        ).toEqual(clicks);
      }
    }
  });

  it('that a cold press would not have taken is told where it lacked a good part of it, with what is left cold', () => {
    const hill: Duty = {
      ...plain,
      heat: true,
      descents: [{ name: 'pass', slope: 0.16, length: 4 * KM, speed: 40 * KMH, perKm: 0.2 }],
    };
    const near1 = drive({ distance: 5 * KM }, shortOfTooth(0.2), hill);
    const told = near1.events.find((e) => e.kind === 'stepped hot');
    expect(told?.distance).toBe(5 * KM);
    expect(told?.temperature).toBeGreaterThan(300);
    const cold = new Wearing(rig, { ...near1.state(), temperature: 20 });
    near(told?.value ?? 0, cold.restGap(20), { abs: 1e-4 }, 'clearance cold');
    // A hair short it would have stepped by the next cold stops anyway.
    const click = drive({ distance: 5 * KM }, shortOfTooth(0.05), hill);
    expect(kinds(click)).toContain('click');
    expect(click.events.filter((e) => e.kind === 'stepped hot').map((e) => e.tooth)).not.toContain(
      1,
    );
    // Nothing is told of a step that is not hot.
    expect(kinds(drive({ distance: 30 * KM }, shortOfTooth(0.001)))).toEqual(['click']);
  });
});

describe('what ends a life', () => {
  /** A lining a hair before a line. */
  const short = (left: number, rearLeft = 4.5): BrakeState => ({
    ...fresh,
    ...worn(4.5 - left, 4.5 - rearLeft),
    condition: { ...fresh.condition, adjusterSeized: true },
  });
  /** Of the front lining, mm for each stop: what one stop takes where it takes most. */
  const each = (state: BrakeState): number => {
    const w = new Wearing(rig, state);
    w.press(w.makeWarm(), 2, 1, null, 20);
    const before = w.thinnest('front');
    w.wearOff(STOP / (w.torque / w.drumRadius));
    return before - w.thinnest('front');
  };

  it('a lining at its limit, at the stop that passes it', () => {
    const state = short(1.5 + 1e-3);
    const stops = Math.ceil(1e-3 / each(state));
    for (const oneByOne of [true, false]) {
      const life = drive({ oneByOne, distance: 400 * KM }, state);
      expect([life.end, kinds(life), life.events[0]?.side]).toEqual([
        'lining limit',
        ['lining limit'],
        'front',
      ]);
      // Each stop takes a little less than the first.
      near(life.distance / KM, stops, { rel: 0.1, abs: 1 }, 'stops');
      near(life.rows.at(-1)?.liningFront ?? 0, 1.5, { abs: 1.1 * each(state) }, 'at it');
      expect(life.rows.at(-1)?.distance).toBe(life.distance);
    }
  });

  it('not where it is to go on past its limits, but the table itself', () => {
    const on = drive(
      { stopAtLimit: false, distance: 60 * KM, rowEvery: 500 * KM },
      short(1.5 + 1e-4),
    );
    expect([on.end, on.distance, kinds(on)]).toEqual(['distance', 60 * KM, ['lining limit']]);
    expect(on.rows.map((r) => r.distance)).toEqual([0, 60 * KM]);
    const gone = drive({ stopAtLimit: false, distance: 400 * KM }, short(1e-4));
    expect([gone.end, kinds(gone), gone.distance < 60 * KM]).toEqual([
      'worn through',
      ['table contact'],
      true,
    ]);
    const through = createLife(rig, short(0), plain, {});
    expect([through.end, through.distance]).toEqual(['worn through', 0]);
  });

  it('a drum at its limit', () => {
    const state = ill({ adjusterSeized: true }, { ...fresh, drumRadius: 100.5 - 1e-6 });
    const life = drive({ distance: 400 * KM, oneByOne: true }, state);
    expect([life.end, kinds(life), life.events[0]?.side]).toEqual([
      'drum limit',
      ['drum limit'],
      null,
    ]);
    expect(life.distance).toBeLessThan(10 * KM);
  });

  it('the first of two that come with one stop', () => {
    const state = { ...short(1.5 + 1e-7), drumRadius: 100.5 - 1e-7 };
    const life = drive({ distance: 400 * KM, oneByOne: true }, state);
    expect([life.end, kinds(life)]).toEqual(['lining limit', ['lining limit', 'drum limit']]);
  });

  it('a piston that leaves its bore, which of them, at the first press or later', () => {
    const travels = (state: BrakeState) => {
      const { front, rear } = balance(rig, state, { pressure: 2, turning: 1 }).shoes;
      return [front.pistonTravel, rear.pistonTravel] as const;
    };
    // At rest the pair stands with both gaps alike: the toe of the shoe that is not worn is then farther out.
    for (const [front, rear, side] of [
      [2, 0, 'rear'],
      [0, 2, 'front'],
    ] as const) {
      const state = ill({ adjusterSeized: true }, { ...fresh, ...worn(front, rear) });
      const [a, b] = travels(state);
      const most = Math.max(a, b);
      const stroke = (mm: number) => {
        const short = { ...brake, cylinder: { ...brake.cylinder, stroke: mm } };
        return createLife(createRig(short), state, plain, { distance: 0 });
      };
      const out = stroke(most - 1e-3);
      expect([out.end, kinds(out), out.events[0]?.side, out.rows.length]).toEqual([
        'piston run-out',
        ['piston run-out'],
        side,
        1,
      ]);
      expect(stroke(most + 1e-3).end).toBe('distance');
    }
    const state = ill({ adjusterSeized: true });
    const short = {
      ...brake,
      cylinder: { ...brake.cylinder, stroke: Math.max(...travels(state)) + 1e-4 },
    };
    for (const oneByOne of [true, false]) {
      const life = driveLife(createRig(short), state, plain, { distance: 100 * KM, oneByOne });
      expect([life.end, life.events[0]?.side]).toEqual(['piston run-out', 'front']);
      expect(life.distance).toBeGreaterThan(0);
    }
  });

  it('pressure and friction that drive each other up: no balance', () => {
    const { rig: steep, state } = quay((s) => {
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.friction = 0.6;
      Object.assign(s, {
        frictionOfSurfaces: { damp: { factorAgainstTemperature: [[20, 1]], source: 'test' } },
        frictionAgainstPressureAndSpeed: {
          ...{ pressureExponent: 1.25, speedExponent: 0, atPressure: 0.5, atSpeed: 40 },
          source: 'test',
        },
      });
    });
    const hard: Duty = {
      ...plain,
      stops: plain.stops.map((s) => ({ ...s, asked: { by: 'pressure', pressure: 8 } })),
    };
    const life = createLife(steep, state, hard, { distance: 5 * KM, askLocks: false });
    expect([life.end, kinds(life), life.distance]).toEqual(['no balance', ['no balance'], 0]);
    expect(life.rows.length).toBe(1);
  });

  it('a shoe that locks: nothing is driven, nor pressed', () => {
    const { rig: grips, state } = quay((s) => {
      s.shoes.front.lining.friction = 0.9;
    });
    const life = createLife(grips, state, plain, { distance: 5 * KM });
    expect([life.end, life.done, life.progress, life.rows.length]).toEqual(['locks', true, 1, 0]);
    expect(life.events).toMatchObject([{ kind: 'locks', side: 'front', distance: 0 }]);
    expect(createLife(grips, state, plain, { distance: 0, askLocks: false }).end).not.toBe('locks');
  });
});

describe('which shoe locks when driven', () => {
  const asked = (friction: readonly [number, number], change: Partial<Duty>, state = fresh) => {
    const { rig: of } = quay((s) => {
      s.shoes.front.lining.friction = friction[0];
      s.shoes.rear.lining.friction = friction[1];
    });
    return lockedWhenDriven(of, state, new Schedule(of.brake, { ...plain, ...change }, 0));
  };
  const reverse = (share: number) => ({
    stops: plain.stops.map((s) => ({ ...s, reverse: share })),
  });

  it('is the one that leads: the front one forward, the rear one backward', () => {
    expect(asked([0.9, 0.38], {})).toBe('front');
    expect(asked([0.38, 0.9], {})).toBeNull();
    expect(asked([0.38, 0.9], reverse(0.5))).toBe('rear');
    expect(asked([0.9, 0.38], reverse(1))).toBeNull();
    expect(asked([0.9, 0.38], reverse(0.99))).toBe('front');
    expect(asked([0.38, 0.38], reverse(0.5))).toBeNull();
  });

  it('in any of its weathers, or under what lies on it as it stands', () => {
    // Damp: 1.45 times 0.6 is 0.87; it locks from 0.75 or 0.8 on.
    expect(asked([0.6, 0.38], {})).toBeNull();
    expect(asked([0.6, 0.38], { weather: [{ surface: 'damp', share: 0.1 }] })).toBe('front');
    expect(asked([0.6, 0.38], { weather: [{ surface: 'wet', share: 0.1 }] })).toBeNull();
    const rusty = { ...fresh, film: { water: 0, rust: 1, glaze: { front: 0, rear: 0 } } };
    expect(asked([0.6, 0.38], {}, rusty)).toBe('front');
    // A wet lining of 0.9 does not; a surface met stands for any film.
    const wet = ill({ surface: { front: 'wet', rear: 'wet' } });
    expect(asked([0.9, 0.38], {}, wet)).toBeNull();
    expect(asked([0.9, 0.38], { weather: [{ surface: 'damp', share: 0.1 }] }, wet)).toBe('front');
    const washed = { ...fresh, film: { water: 1, rust: 0, glaze: { front: 0, rear: 0 } } };
    expect(asked([0.6, 0.38], { weather: [{ surface: 'damp', share: 0.1 }] }, washed)).toBe(
      'front',
    );
  });

  it('at the slowest of its stops, where friction falls with speed', () => {
    // 0.5 told at 300 km/h with b −0.25: over 0.78 below some 50 km/h; two thirds of a stop's speed count.
    const { rig: of, state } = quay((s) => {
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.friction = 0.5;
      Object.assign(s, {
        frictionOfSurfaces: { damp: { factorAgainstTemperature: [[20, 1]], source: 'test' } },
        frictionAgainstPressureAndSpeed: {
          ...{ pressureExponent: 1, speedExponent: -0.25, atPressure: 0.5, atSpeed: 300 },
          source: 'test',
        },
      });
    });
    const at = (...kmh: number[]) => {
      const [stop] = plain.stops;
      const stops = kmh.map((v) => ({ ...stop, speed: v * KMH }) as Duty['stops'][number]);
      return lockedWhenDriven(of, state, new Schedule(of.brake, { ...plain, stops }, 0));
    };
    expect([at(120), at(60), at(120, 60), at(60, 120)]).toEqual([null, 'front', 'front', 'front']);
  });
});

describe('parking in a life', () => {
  const parked = (change: object) => ({
    ...plain,
    parking: { cable: 300, perKm: 0.1, tightened: 0, ...change },
  });

  it('a lever off its stop is told as it is; one that goes on being tightened, the first time', () => {
    const off = createLife(rig, { ...fresh, leverOffStop: 2 }, plain, { distance: 0 });
    expect(off.events).toMatchObject([{ kind: 'lever off its stop', value: 2, distance: 0 }]);
    for (const oneByOne of [true, false]) {
      const life = drive({ distance: 35 * KM, oneByOne }, fresh, parked({ tightened: 1e-3 }));
      // 1e-3 mm a km, a parking each ten: a hundredth of a millimetre each.
      near(life.state().leverOffStop, 0.03, { rel: 1e-9 }, 'taken up');
      expect(life.events).toMatchObject([{ kind: 'lever off its stop', distance: 10 * KM }]);
      near(life.events[0]?.value ?? 0, 0.01, { rel: 1e-9 }, 'the first');
      expect(life.state().applications).toBe(35);
    }
  });

  it('a worn tooth lets go at each pull, with a row before and after it', () => {
    for (const oneByOne of [true, false]) {
      const state = ill({ teethHold: 100, adjusterSeized: true }, { ...fresh, tooth: 1 });
      const life = drive({ distance: 25 * KM, oneByOne, rowEvery: 500 * KM }, state, parked({}));
      expect(life.events).toMatchObject([
        { kind: 'tooth lost', value: 1, tooth: 0, distance: 10 * KM },
      ]);
      expect(life.rows.map((r) => [r.at, r.distance / KM, r.tooth])).toEqual([
        ['run', 0, 1],
        ['before click', 10, 1],
        ['after click', 10, 0],
        ['run', 25, 0],
      ]);
    }
    // Sound teeth hold, and the pull is only a pause.
    const sound = drive({ distance: 25 * KM }, { ...fresh, tooth: 1 }, parked({}));
    expect([kinds(sound), sound.state().tooth]).toEqual([[], 1]);
  });

  it('an adjuster that the lever drives steps at the pull, and by no stop', () => {
    const of = createRig({ ...brake, adjuster: { ...brake.adjuster, drivenBy: 'parking pull' } });
    const state = { ...fresh, drumRadius: 100.5 };
    for (const oneByOne of [true, false]) {
      const options = { distance: 25 * KM, oneByOne, stopAtLimit: false };
      const life = driveLife(of, state, parked({}), options);
      const clicks = life.events.filter((e) => e.kind === 'click');
      expect(clicks.length).toBeGreaterThan(0);
      for (const click of clicks) expect([10 * KM, 20 * KM]).toContain(click.distance);
      expect(driveLife(of, state, plain, options).state().tooth).toBe(0);
    }
  });

  it('cools the drum where its heat is followed', () => {
    const hot: Duty = { ...parked({}), heat: true };
    const life = drive({ distance: 10 * KM, oneByOne: true }, fresh, hot);
    expect(life.state().temperature).toBe(20);
    const warm = drive({ distance: 10 * KM, oneByOne: true, air: 35 }, fresh, hot);
    expect(warm.state().temperature).toBe(35);
  });
});

describe('a life that drags', () => {
  it('tells it at first, drives press by press, and every row has what turns the drum', () => {
    const long = { ...fresh, tooth: 3, drumRadius: 100.05 };
    const life = drive({ distance: 3 * KM, rowEvery: KM }, long);
    expect(kinds(life)[0]).toBe('drag at rest');
    const first = life.events[0];
    expect(first?.distance).toBe(0);
    expect(first?.value).toBeLessThan(-0.05);
    expect(first?.torque).toBeGreaterThan(10e3);
    expect(life.rows.length).toBeGreaterThanOrEqual(4);
    near(life.rows[0]?.drag.torque ?? 0, first?.torque ?? 0, { rel: 1e-6 }, 'row');
    expect(life.rows[0]?.drag.power).toBe(0);
    for (const row of life.rows.slice(1)) expect(row.drag.power).toBeGreaterThan(0);
    // The way rubs too: more is worn off than by the stops alone.
    const stops = (1.2e-8 * 3 * STOP) / 0.38;
    expect(lostVolume(rig, life.state().wear)).toBeGreaterThan(1.5 * stops);
    expect(life.state().applications).toBe(3);
    // And as far as it goes, not to where the next stop would be.
    const lost = (km: number) => lostVolume(rig, drive({ distance: km * KM }, long).state().wear);
    expect(lost(2.9)).toBeGreaterThan(1.05 * lost(2.1));
  });

  it('is over where the drum cannot be turned', () => {
    const life = drive({ distance: 3 * KM }, { ...fresh, tooth: 12 });
    expect(['seized', 'gave way', 'no balance']).toContain(life.end);
    expect(life.distance).toBe(0);
    expect(kinds(life).at(-1)).toBe(life.end);
  });
});

describe('wearing on', () => {
  it('goes so far on, past limits and without asking whether it locks', () => {
    const from = { ...fresh, distance: 3 * KM };
    const on = wearOn(rig, from, { distance: 4 * KM });
    expect([on.state.distance, on.state.applications, on.events, on.trace[0]?.distance]).toEqual([
      7 * KM,
      4,
      [],
      3 * KM,
    ]);
    const past = wearOn(rig, ill({ adjusterSeized: true }, { ...fresh, ...worn(3 - 1e-6, 0) }), {
      distance: 20 * KM,
    });
    expect([past.state.distance, past.events.map((e) => e.kind)]).toEqual([
      20 * KM,
      ['lining limit'],
    ]);
    const grips = quay((s) => {
      s.shoes.front.lining.friction = 0.9;
    });
    const kept = wearOn(grips.rig, grips.state, { distance: KM }).events.map((e) => e.kind);
    expect(kept).not.toContain('locks');
  });

  it('to the next click, or to a limit before it', () => {
    const state = shortOfTooth(0.002);
    const click = wearOn(rig, state, { distance: 200 * KM, toNextClick: true });
    expect([click.state.tooth, click.state.distance < 100 * KM]).toEqual([1, true]);
    const on = wearOn(rig, state, { distance: 100 * KM });
    expect([on.state.tooth, on.state.distance]).toEqual([1, 100 * KM]);
    const limit = ill({ adjusterSeized: true }, { ...fresh, ...worn(3 - 1e-6, 0) });
    const stops = wearOn(rig, limit, { distance: 200 * KM, toNextClick: true });
    expect(stops.state.distance).toBeLessThan(20 * KM);
    // Rows each fifty kilometres.
    const rows = wearOn(rig, fresh, { distance: 160 * KM }).trace.map((r) => r.distance / KM);
    expect(rows.length).toBeGreaterThanOrEqual(3);
    for (const [n, at] of rows.slice(0, -1).entries())
      if (n > 0) expect(at - (rows[n - 1] as number)).toBeGreaterThanOrEqual(50);
    near(thinnest(rig, { ...fresh, ...worn(0.7, 0.2) }, 'front'), 3.8, { abs: 1e-9 });
    near(thinnest(rig, { ...fresh, ...worn(0.7, 0.2) }, 'rear'), 4.3, { abs: 1e-9 });
  });
});

it('one application clicks what is passed and leaves a state of its own; else the same one', () => {
  const none = application(rig, fresh, { pressure: 2, turning: 1 });
  expect([none.clicked, none.state]).toEqual([0, fresh]);
  expect(none.state).toBe(fresh);
  const state = { ...shortOfTooth(-0.001), distance: 5 };
  const one = application(rig, state, { pressure: 2, turning: 1 });
  expect([one.clicked, one.state]).toEqual([1, { ...state, tooth: 1 }]);
  near(one.solved.work.strut.length, balance(rig, state, { pressure: 2, turning: 1 }).separation, {
    rel: 1e-9,
  });
  const back = ill({ adjusterStep: -1 }, { ...state, tooth: 1, drumRadius: 101 });
  expect(application(rig, back, { pressure: 2, turning: 1 })).toMatchObject({
    clicked: -1,
    state: { tooth: 0 },
  });
});

describe('standing states', () => {
  /** Wears tenfold, so that a tooth comes within some 350 km. */
  const fast = (recipe: object, change: (s: ReturnType<typeof quayScene>) => void = () => {}) => {
    const { rig: of } = quay((s) => {
      s.drum.wearRate *= 10;
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.wearRate *= 10;
      s.states = [{ name: 'x', ...recipe }] as typeof s.states;
      change(s);
    });
    return of;
  };

  it('by distance, less or more, to a whole number, and never before new', () => {
    const km = (recipe: object) => standingDistance(fast(recipe), 'x') / KM;
    expect(km({ until: 'distance', distance: 120, more: 34 })).toBe(154);
    expect(km({ until: 'distance', distance: 120, less: 34 })).toBe(86);
    expect(km({ until: 'distance', distance: 100, less: 250 })).toBe(0);
    expect(km({ until: 'distance', distance: 120, round: 50 })).toBe(100);
    const at = fast({ until: 'distance', distance: 12 });
    expect(standingState(at, 'x')).toMatchObject({ distance: 12 * KM, applications: 12, tooth: 0 });
    const states = (recipe: object) => fast(recipe).brake.states[0] as never;
    expect(isDriven(states({ until: 'distance', distance: 12 }))).toBe(true);
    expect(isDriven(states({ until: 'distance', distance: 0 }))).toBe(false);
    expect(isDriven(states({ until: 'distance', distance: 0, more: 5 }))).toBe(true);
    expect(isDriven(states({ until: 'click', click: 1 }))).toBe(true);
  });

  it('in a drum of its own', () => {
    const of = fast({ until: 'distance', distance: 0, drumDiameter: 200.6 });
    expect(standingState(of, 'x')).toEqual(freshState(of.brake, 100.3));
  });

  it('to a click: that tooth and no other', () => {
    const first = fast({ until: 'click', click: 1 });
    const second = fast({ until: 'click', click: 2 });
    const [a, b] = [standingDistance(first, 'x'), standingDistance(second, 'x')];
    expect([standingState(first, 'x').tooth, standingState(second, 'x').tooth]).toEqual([1, 2]);
    expect(b).toBeGreaterThan(a + 100 * KM);
    // Asked again it is known.
    expect(standingDistance(first, 'x')).toBe(a);
    expect(() => standingDistance(first, 'y')).toThrow('No state "y"; this scene has x');
    expect(() => standingState(first, 'y')).toThrow('No state "y"');
  });

  it('to a limit, and past it to what comes later', () => {
    // A tenth of a millimetre to lose, some 200 km of it.
    const thin = (recipe: object) =>
      fast(recipe, (s) => {
        for (const side of ['front', 'rear'] as const) s.shoes[side].lining.thicknessMin = 4.4;
      });
    const limit = thin({ until: 'lining limit' });
    near(thinnest(limit, standingState(limit, 'x'), 'front'), 4.4, { abs: 2e-3 }, 'limit');
    const click = thin({ until: 'click', click: 1 });
    expect(standingState(click, 'x').tooth).toBe(1);
    expect(standingDistance(click, 'x')).toBeGreaterThan(standingDistance(limit, 'x') + 50 * KM);
    // One that has clicked before the drum's limit is not there yet.
    const drum = thin({ until: 'drum limit', drumDiameter: 200.998 });
    expect(standingState(drum, 'x').drumRadius).toBeGreaterThanOrEqual(100.5);
  });

  it('worn to a share: so much of the lining that has lost most is gone', () => {
    for (const share of [0.01, 0.1]) {
      const of = fast({ until: 'worn', share });
      near(
        thinnest(of, standingState(of, 'x'), 'front'),
        4.5 - 3 * share,
        { abs: 3e-3 },
        `${share}`,
      );
    }
    // Turned round, the rear one leads.
    const back = fast({ until: 'worn', share: 0.1 }, (s) => {
      Object.assign(s.duties[0]?.stops[0] as object, { reverse: 1 });
    });
    near(thinnest(back, standingState(back, 'x'), 'rear'), 4.2, { abs: 3e-3 }, 'rear');
    // More has gone from the other one where that may lose less.
    const thin = fast({ until: 'worn', share: 0.1 }, (s) => {
      s.shoes.rear.lining.thicknessMin = 4;
    });
    near(thinnest(thin, standingState(thin, 'x'), 'rear'), 4.45, { abs: 3e-3 }, 'rear first');
  });
});

describe('bedding in under other shoes', () => {
  /** The work of some kilometres, as depths that other shoes would have left: all of it on one strip. */
  const stripes = (km: number): BrakeState => {
    const volume = (km * 1.2e-8 * STOP) / 0.38;
    const { width, arc } = rig.front.bed;
    // b·arc·(r·w − w²/2) on each of four elements of either lining.
    const w = 100 - Math.sqrt(100 * 100 - (2 * volume) / (8 * width * arc));
    const strip = filled(0);
    strip.fill(w, 20, 24);
    return {
      ...fresh,
      wear: { front: strip, rear: strip.slice() },
      wornBy: 'bending',
      distance: 900 * KM,
      applications: 77,
      tooth: 1,
    };
  };

  it('drives from new until as much is lost as of the state, its drum and way kept', () => {
    const state = stripes(700);
    near(lostVolume(rig, state.wear), (700 * 1.2e-8 * STOP) / 0.38, { rel: 1e-6 }, 'as given');
    const work = rebed(rig, state);
    expect([work.done, work.progress]).toEqual([false, 0]);
    expect(() => work.state()).toThrow('Not bedded in yet');
    let before = 0;
    for (let n = 0; !work.done; n++) {
      expect(n).toBeLessThan(9);
      work.advance();
      expect(work.progress).toBeGreaterThan(before);
      expect(work.progress).toBeLessThanOrEqual(1);
      before = work.progress;
    }
    expect(before).toBe(1);
    const bedded = work.state();
    near(lostVolume(rig, bedded.wear), lostVolume(rig, state.wear), { rel: 3e-3 }, 'volume');
    expect(bedded).toEqual({ ...state, wear: bedded.wear, tooth: 0, wornBy: undefined });
    expect('wornBy' in bedded).toBe(false);
    // The same as 700 km driven from new, in a drum that was so much narrower: Archard.
    const own = wearOn(rig, fresh, { distance: 700 * KM }).state;
    near(bedded.wear.front[24] ?? 0, own.wear.front[24] ?? 0, { rel: 0.02 }, 'front');
    near(bedded.wear.rear[24] ?? 0, own.wear.rear[24] ?? 0, { rel: 0.02 }, 'rear');
    expect(underShoes(rig, state).wear).toEqual(bedded.wear);
  });

  it('under shoes that bend it is theirs', () => {
    const bending = createRig(brake, { flexible: true });
    const { wornBy: _, ...state } = stripes(20);
    const bedded = underShoes(bending, state);
    expect([bedded.wornBy, bedded.distance]).toEqual(['bending', 900 * KM]);
    near(lostVolume(bending, bedded.wear), lostVolume(rig, state.wear), { rel: 0.1 }, 'volume');
  });

  it('in a wider drum bears on the crown, as new linings do there', () => {
    const wide = underShoes(rig, { ...stripes(100), drumRadius: 100.3 });
    expect(wide.wear.front[0]).toBe(0);
    expect(wide.wear.front[24]).toBeGreaterThan(0);
    expect(wide.drumRadius).toBe(100.3);
    const same = underShoes(rig, stripes(100));
    expect(same.wear.front[0]).toBeGreaterThan(0);
  });

  it('a half-way look takes the share of it that was asked for', () => {
    // 100 of the first 500 km: a fifth.
    const state = stripes(100);
    const work = rebed(rig, state);
    work.advance();
    expect([work.done, work.progress]).toEqual([false, 0.5]);
    work.advance();
    expect([work.done, work.progress]).toEqual([true, 1]);
    near(lostVolume(rig, work.state().wear), lostVolume(rig, state.wear), { rel: 0.02 });
  });

  it('leaves what suits as it is, done at once', () => {
    const state = { ...fresh, ...worn(0.1) };
    const work = rebed(rig, state);
    expect([work.done, work.progress, work.state()]).toEqual([true, 1, state]);
    work.advance();
    expect(work.state()).toBe(state);
  });
});
