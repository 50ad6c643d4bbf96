import { describe, expect, it } from 'vitest';
import type { Duty } from '../../sim/brake/duty.ts';
import type { Film } from '../../sim/brake/films.ts';
import { type Brake, KM, KMH, SOUND } from '../../sim/index.ts';
import { PressHeat } from '../../sim/wear/life-heat.ts';
import { Presses } from '../../sim/wear/lump.ts';
import { Plan } from '../../sim/wear/press-plan.ts';
import { type Kind, Schedule } from '../../sim/wear/schedule.ts';
import type { Wearing } from '../../sim/wear/wearing.ts';
import { quay, type quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * Presses one by one and in lumps, by hand sums: the brake itself is a stand-in that turns with a torque and parts
 * its seats by so much, as a test asks.
 */

const J = 1e3;
const read = (change: (s: ReturnType<typeof quayScene>) => void = () => {}): Brake =>
  quay(change).brake;
const brake = read();
/** Films that count whole at 20 and 1 µm, and glaze. */
const filmy = read((s) => {
  Object.assign(s, {
    films: { glaze: { above: 250, below: 0.2, energy: 1e6, depth: 15 }, source: 'own' },
  });
});

/** Stops at 20 bar and soft ones, a hill with a stop at its foot; a parking each 10 km. */
const duty: Duty = {
  name: 'by hand',
  about: '',
  heat: true,
  mass: null,
  stops: [
    {
      name: 'stop',
      speed: 36 * KMH,
      asked: { by: 'pressure', pressure: 2 },
      perKm: 1,
      reverse: 0,
    },
    {
      name: 'soft',
      speed: 36 * KMH,
      asked: { by: 'deceleration', deceleration: 2000 },
      perKm: 0.4,
      reverse: 0.5,
    },
  ],
  descents: [{ name: 'hill', slope: 0.1, length: 3 * KM, speed: 36 * KMH, perKm: 0.05 }],
  parking: { cable: 300, perKm: 0.1, tightened: 0 },
  weather: [],
};
const only = (change: Partial<Duty>): Duty => ({
  ...duty,
  stops: duty.stops.slice(0, 1),
  descents: [],
  parking: null,
  ...change,
});

interface Asked {
  readonly pressure: number;
  readonly turning: number;
  readonly surface: unknown;
  readonly temperature: number;
  readonly sliding: number;
  readonly ahead: number;
  readonly speed: number | undefined;
}

/** Stands for a brake that is driven: a torque and seats apart for each MPa, a bore of 100 mm. */
function standIn(of: Brake = brake) {
  const asked: Asked[] = [];
  const wornOff: number[] = [];
  const w = {
    tooth: 0,
    condition: SOUND,
    temperature: 20,
    distance: 0,
    applications: 0,
    lost: 0,
    film: undefined as Film | undefined,
    shares: undefined,
    speed: undefined as number | undefined,
    torque: 0,
    separation: 0,
    /** N·mm and mm for each MPa; mm that the bore loses in what is worn off. */
    torquePer: 20000,
    apart: 104,
    bore: 1e-4,
    rests: 0,
    /** On each of 48 elements, N. */
    normal: 10,
    makeWarm: () => ({}),
    radiusAt: (t: number) => 100 * (1 + 11e-6 * (t - 20)),
    press(
      _: unknown,
      pressure: number,
      turning: number,
      surface: unknown,
      temperature: number,
      sliding = 0,
      ahead = 0,
    ) {
      asked.push({
        pressure,
        turning,
        surface,
        temperature,
        sliding,
        ahead: ahead + 0,
        speed: w.speed,
      });
      w.torque = w.torquePer * pressure;
      w.separation = w.apart;
    },
    wearOff(sliding: number) {
      wornOff.push(sliding);
      return w.bore;
    },
    record: () => ({ state: { tooth: w.tooth }, lost: w.lost }),
    restore(r: { lost: number }) {
      w.lost = r.lost;
    },
    rest() {
      w.rests++;
    },
    get shoes() {
      const shoe = (side: 'front' | 'rear', by: number) => ({
        side,
        shoe: of.shoes[side],
        rub: { normal: new Float64Array(48).fill(by * w.normal) },
      });
      return { brake: of, front: shoe('front', 1), rear: shoe('rear', 0.5) };
    },
  };
  return { w, asked, wornOff, wearing: w as unknown as Wearing };
}

function bench(of: Brake, d: Duty, from = 0) {
  const s = standIn(of);
  const schedule = new Schedule(of, d, from);
  const heat = new PressHeat(of, d.heat, 20, from);
  return { ...s, schedule, heat, presses: new Presses(of, s.wearing, schedule, heat) };
}

/** A stop of the van from 36 km/h, N·mm: ½ · 1.15 · 10² · 0.15. */
const STOP = 8625 * J;

describe('plans of presses', () => {
  it('are one for each kind, direction and surface, and the same when asked again', () => {
    const d = only({
      stops: duty.stops,
      weather: [
        { surface: 'wet', share: 0.2 },
        { surface: 'damp', share: 0.2 },
      ],
    });
    const { presses, schedule } = bench(brake, d);
    const seen = new Set<Plan>();
    for (const kind of [0, 1]) {
      for (const turning of [1, -1] as const) {
        for (const [weather, surface] of [
          [-1, null],
          [0, 'wet'],
          [1, 'damp'],
        ] as const) {
          const plan = presses.plan(kind, turning, weather);
          expect(plan).toMatchObject({ kind: schedule.kinds[kind], turning, surface });
          expect(presses.plan(kind, turning, weather)).toBe(plan);
          seen.add(plan);
        }
      }
    }
    expect(seen.size).toBe(12);
    // In a list without names, for it is gone through in its order.
    expect(presses.plans.filter((p) => p).length).toBe(12);
    expect(Object.keys(presses.plans).every((key) => Number(key) >= 0)).toBe(true);
  });

  it('begin at the pressure asked for, and at 2 MPa where a torque is', () => {
    const { presses } = bench(brake, only({ stops: duty.stops }));
    expect([presses.plan(0, 1, -1).pressure, presses.plan(1, 1, -1).pressure]).toEqual([2, 2]);
    const hard = { asked: { by: 'pressure', pressure: 7 } } as Kind;
    expect(presses.newPlan(hard, -1, 'wet')).toMatchObject({
      pressure: 7,
      turning: -1,
      surface: 'wet',
    });
  });
});

describe('a press of a plan', () => {
  it('by pressure is pressed with it, at two thirds of its speed, on a bore that warm shoes leave', () => {
    const { wearing, asked } = standIn();
    const kind = { asked: { by: 'pressure', pressure: 3 }, speed: 9000, length: 0 } as Kind;
    const plan = new Plan(kind, -1, 'damp', {} as never, {} as never);
    plan.add(0, { middle: 20, after: 20, swell: 0.04, swellAfter: 0.05 }, false);
    plan.press(wearing, 120);
    const told = { pressure: 3, turning: -1, surface: 'damp', temperature: 120, speed: 6000 };
    expect(asked).toEqual([{ ...told, sliding: 0, ahead: -0.04 }]);
    // 60 N·m at 100.11 mm.
    near(plan.drag, 60000 / 100.11, { rel: 1e-12 }, 'drag');
    // Softened, on the bore that it will be: 2e-12 mm/(N·mm) of 5e9, less the swelling.
    plan.drumRate = 2e-12;
    plan.pressSoft(wearing, 220, 7e5, 5e9);
    expect(asked[1]).toMatchObject({ ...told, temperature: 220, sliding: 7e5 });
    near(asked[1]?.ahead ?? 0, 0.01 - 0.04, { rel: 1e-12 }, 'ahead');
    expect(plan.softApart).toBe(104);
    near(plan.drag, 60000 / 100.22, { rel: 1e-12 }, 'drag of the soft one');
  });

  it('by torque finds the pressure that makes it, within its bounds, and none for no torque', () => {
    const sought = (torque: number, torquePer: number) => {
      const { w, wearing, asked } = standIn();
      w.torquePer = torquePer;
      const kind = { asked: { by: 'torque', torque }, speed: 9000, length: 0 } as Kind;
      const plan = new Plan(kind, 1, null, {} as never, {} as never);
      plan.press(wearing, 20);
      return { plan, asked };
    };
    // 20 N·m for each MPa: 93 N·m by 4.65 MPa.
    const { plan } = sought(93000, 20000);
    near(plan.pressure, 4.65, { rel: 1e-9 }, 'pressure');
    near(plan.drag, 930, { rel: 0.005 }, 'drag');
    near(sought(93000, 2000).plan.pressure, 20, { rel: 1e-12 }, 'most');
    near(sought(93000, 2e7).plan.pressure, 0.05, { rel: 1e-12 }, 'least');
    const none = sought(0, 20000);
    expect([none.plan.pressure, none.asked.length]).toEqual([2, 1]);
  });
});

describe('the press that is due', () => {
  it('brings its heat and its energy times the wear table’s factor', () => {
    const { heat, presses, w } = bench(brake, only({}));
    w.temperature = 245;
    // At the foot of nothing: 100 s at 36 km/h and 6.82 W/K leave 0.646578 of the 225 K over the air (1 564 J/K).
    const plan = presses.take(true);
    near(heat.after, 20 + 225 * 0.646578 + 8625 / 1564, { abs: 1e-3 }, 'after');
    expect([plan.count, plan.energy, plan.worn]).toEqual([1, STOP, STOP]);
    near(w.temperature, heat.after, { rel: 1e-12 }, 'drum');
    // Taken again it is all that there is of its plan, taken together with others it is added.
    expect(presses.take(true).count).toBe(1);
    const both = presses.take(false);
    expect([both, both.count, both.energy]).toEqual([plan, 2, 2 * STOP]);
  });

  it('wears by the table where the drum is hot, and glazes above what the scene says', () => {
    const hot = (temperature: number) => {
      const { presses, w } = bench(filmy, only({ heat: false }));
      w.temperature = temperature;
      const { worn, hot: glazing } = presses.take(true);
      return [worn / STOP, glazing / STOP];
    };
    // Table: 1 at 200 °C, 2 at 300.
    expect(hot(200)).toEqual([1, 0]);
    expect(hot(250)).toEqual([1.5, 0]);
    expect(hot(251)[1]).toBe(1);
    // A scene without glaze has none.
    const { presses, w } = bench(brake, only({ heat: false }));
    w.temperature = 400;
    expect(presses.take(true).hot).toBe(0);
  });

  it('finds the weather’s surface, or its film on the drum and the brake’s own surface', () => {
    const all = (film?: number) => {
      const weather = [{ surface: 'wet' as const, share: 1, ...(film ? { film } : {}) }];
      return bench(brake, only({ weather }));
    };
    const surface = all();
    const plan = surface.presses.take(true);
    expect([plan.surface, plan.films, surface.w.film]).toEqual(['wet', undefined, undefined]);
    // 20 µm of water take 1 042 J of its 8 625: whole at first, half on the mean of that time, and then gone.
    const rain = all(0.02);
    const onFilm = rain.presses.take(true);
    expect([onFilm.surface, rain.w.film]).toEqual([null, undefined]);
    near(onFilm.films?.water ?? 0, (0.5 * 1042) / 8625, { rel: 1e-3 }, 'counts');
    expect(onFilm.films?.rust).toBe(0);
    // Of two weathers the one with a film leaves the brake its own surface all the same.
    const two = bench(
      brake,
      only({
        weather: [
          { surface: 'wet', share: 0.999, film: 0.02 },
          { surface: 'damp', share: 0.001 },
        ],
      }),
    );
    expect(two.presses.take(true).surface).toBeNull();
    // Thicker, what is left lies there; rain on rain is as thick as the thicker.
    const flood = all(0.5);
    flood.presses.take(true);
    const left = 0.5 - (0.02 * 8625) / 1042.2;
    near(flood.w.film?.water ?? 0, left, { rel: 2e-3 }, 'left');
    flood.presses.take(true);
    near(flood.w.film?.water ?? 0, left, { rel: 2e-3 }, 'left again');
    expect(flood.w.film?.rust).toBe(0);
    const thick = all(0.02);
    thick.w.film = { water: 0.6, rust: 0.003, glaze: { front: 0.1, rear: 0.2 } };
    thick.presses.take(true);
    near(thick.w.film.water, 0.6 - (0.02 * 8625) / 1042.2, { rel: 2e-3 }, 'the thicker one');
    expect(thick.w.film.glaze).toEqual({ front: 0.1, rear: 0.2 });
  });

  it('a film of rust is laid by such weather, and by standing where the duty says so', () => {
    const damp = bench(
      brake,
      only({ weather: [{ surface: 'damp', share: 1, film: 0.5 }], heat: false }),
    );
    damp.presses.take(true);
    expect(damp.w.film?.water).toBe(0);
    expect(damp.w.film?.rust).toBeGreaterThan(0.4);

    const parking = { cable: 300, perKm: 0.1, tightened: 0 };
    const stood = bench(brake, only({ parking }));
    stood.w.temperature = 150;
    stood.presses.park(only({ parking }), 7 * KM);
    expect([stood.w.temperature, stood.heat.lastAt, stood.w.film]).toEqual([20, 7 * KM, undefined]);
    const rust = only({ parking: { ...parking, rust: 0.002 } });
    stood.presses.park(rust, 8 * KM);
    expect(stood.w.film).toEqual({ water: 0, rust: 0.002, glaze: { front: 0, rear: 0 } });
    stood.w.film = { water: 0.1, rust: 0.003, glaze: { front: 0, rear: 0 } };
    stood.presses.park(rust, 9 * KM);
    expect(stood.w.film).toMatchObject({ water: 0.1, rust: 0.003 });
    // Who never parks lets nothing cool or rust.
    stood.w.temperature = 150;
    stood.presses.park(only({}), 10 * KM);
    expect([stood.w.temperature, stood.heat.lastAt]).toEqual([150, 9 * KM]);
  });

  it('glaze goes with what is worn off and comes with what glazes, each lining by its pressure', () => {
    const plan = { hot: 3e8 } as Plan;
    const before = { water: 0, rust: 0.001, glaze: { front: 0.5, rear: 0.5 } };
    const { presses, w } = bench(filmy, only({}));
    w.film = before;
    // 48 · 12 N over 32 · 191.986 mm² are 0.093757 MPa, and half of it: both light, 3e8 of 1e9 N·mm glaze 0.3.
    // Archard: 1.2e-8 · 5e5 · 0.093757 = 0.000563 mm of 15 µm take 0.0375, half of it on the rear one.
    w.normal = 12;
    presses.glaze(plan, 5e5);
    near(w.film.glaze.front, 0.8 - 0.037503, { abs: 1e-5 }, 'front');
    near(w.film.glaze.rear, 0.8 - 0.018751, { abs: 1e-5 }, 'rear');
    expect([w.film.rust, w.film.water]).toEqual([0.001, 0]);
    // Pressed harder than 0.2 MPa none comes: 0.3125 on the front one, 0.15626 on the rear.
    w.film = before;
    w.normal = 40;
    presses.glaze(plan, 5e5);
    near(w.film.glaze.front, 0.5 - 0.125, { abs: 1e-4 }, 'hard');
    near(w.film.glaze.rear, 0.8 - 0.0625, { abs: 1e-4 }, 'lighter');
    // From nothing, and in a scene that says nothing of it.
    w.film = undefined;
    presses.glaze(plan, 0);
    expect(w.film).toMatchObject({ rust: 0, glaze: { front: 0, rear: 0.3 } });
    const plain = bench(brake, only({}));
    plain.w.film = before;
    plain.presses.glaze(plan, 5e5);
    expect(plain.w.film).toBe(before);
  });
});

describe('a lump', () => {
  it('gathers what is due up to a distance, a parking among it, and counts stops alone', () => {
    const { heat, presses, schedule, w } = bench(brake, duty);
    // To 20 km: 20 stops, 8 soft ones, the hill with its foot, and a parking at 10 and at 20 km.
    expect(presses.gather(20 * KM, duty, false)).toEqual({ presses: 30, parked: false });
    expect([w.applications, w.distance, heat.lastAt]).toEqual([29, 20 * KM, 20 * KM]);
    expect(schedule.due.at).toBe(21 * KM);
    const of = (kind: number, turning: 1 | -1 = 1) => presses.plan(kind, turning, -1);
    expect([of(0).count, of(1).count, of(1, -1).count, of(2).count, of(3).count]).toEqual([
      20, 4, 4, 1, 1,
    ]);
    near(of(0).energy, 20 * STOP, { rel: 1e-12 }, 'energy');
    // The last that cooled was the parking.
    expect(w.temperature).toBe(20);
    // The next begins anew.
    expect(presses.gather(21.5 * KM, duty, false)).toEqual({ presses: 1, parked: false });
    expect([of(0).count, of(1).count, w.applications]).toEqual([1, 0, 30]);
    expect(presses.gather(21.9 * KM, duty, false)).toEqual({ presses: 0, parked: false });
  });

  it('ends at a parking where pulls matter, the parking counted', () => {
    const { presses, schedule, w } = bench(brake, duty);
    expect(presses.gather(20 * KM, duty, true)).toEqual({ presses: 15, parked: true });
    expect([w.applications, w.distance, schedule.due.at]).toEqual([14, 10 * KM, 11 * KM]);
  });

  it('wears off energy over drag, each plan on a bore softened by it', () => {
    const { asked, presses, w, wornOff } = bench(brake, only({ heat: false }));
    w.temperature = 120;
    presses.gather(10 * KM, only({}), false);
    presses.wear();
    // First pressed as it is, 40 N·m at 100.11 mm; then softened by all that it slides: ten stops over that drag.
    const sliding = (10 * STOP) / (40000 / 100.11);
    expect(asked.length).toBe(2);
    expect(asked[0]).toMatchObject({ pressure: 2, temperature: 120, sliding: 0, ahead: 0 });
    near(asked[1]?.sliding ?? 0, sliding, { rel: 1e-12 }, 'softened');
    expect(asked[1]).toMatchObject({ temperature: 120, ahead: 0 });
    near(wornOff[0] ?? 0, sliding, { rel: 1e-12 }, 'worn off');
    // What the bore lost for each of it is taken ahead next time, and no first press is needed.
    w.torquePer = 25000;
    presses.gather(15 * KM, only({}), false);
    presses.wear();
    expect([asked.length, wornOff.length]).toEqual([3, 2]);
    near(asked[2]?.ahead ?? 0, 1e-4 / 2, { rel: 1e-12 }, 'ahead');
    near(asked[2]?.sliding ?? 0, sliding / 2, { rel: 1e-12 }, 'by the drag of last time');
    near(wornOff[1] ?? 0, (5 * STOP) / (50000 / 100.11), { rel: 1e-12 }, 'by its own');
    // Without presses nothing is worn.
    presses.gather(15.5 * KM, only({}), false);
    presses.wear();
    expect([asked.length, wornOff.length]).toEqual([3, 2]);
  });

  it('wears each plan that has presses, and asks none of the others', () => {
    const { asked, presses, wornOff } = bench(brake, { ...duty, heat: false });
    presses.gather(20 * KM, duty, false);
    presses.wear();
    // Stops, soft ones forward and backward, the hill and its foot; the soft ones' pressure is sought first.
    expect(wornOff.length).toBe(5);
    expect(new Set(asked.map((a) => `${a.turning} ${a.speed}`))).toEqual(
      new Set([`1 ${(2 / 3) * 10000}`, `-1 ${(2 / 3) * 10000}`, '1 10000']),
    );
    const before = asked.length;
    for (const plan of presses.plans) if (plan) plan.drag = 0;
    presses.gather(21 * KM, duty, false);
    presses.wear();
    expect([asked.length - before, wornOff.length]).toEqual([2, 6]);
    expect(presses.toNextTooth()).toBe(Number.POSITIVE_INFINITY);
  });

  it('wears nothing off by what does not drag, at first or softened, nor without energy', () => {
    const free = bench(brake, only({ heat: false }));
    free.w.torquePer = 0;
    free.presses.gather(3 * KM, only({}), false);
    free.presses.wear();
    expect([free.asked.length, free.wornOff]).toEqual([1, []]);
    // It drags, and no more once it is softened.
    const off = bench(brake, only({ heat: false }));
    off.presses.gather(3 * KM, only({}), false);
    const plan = off.presses.plan(0, 1, -1);
    plan.drag = 400;
    off.w.torquePer = 0;
    off.presses.wear();
    expect([off.asked.length, off.wornOff]).toEqual([1, []]);
    const idle = bench(brake, only({ heat: false }));
    idle.presses.gather(3 * KM, only({}), false);
    idle.presses.plan(0, 1, -1).energy = 0;
    idle.presses.wear();
    expect([idle.asked.length, idle.wornOff]).toEqual([1, []]);
  });

  it('is taken back whole: presses due, heat, shoes, what was seen; what is lost counts on', () => {
    const { heat, presses, schedule, w } = bench(brake, duty);
    presses.gather(3 * KM, duty, false);
    const plan = presses.plan(0, 1, -1);
    const seen = { apart: 104, at: 3 * KM, rate: 1e-9 };
    plan.seen = seen;
    w.lost = 0.5;
    heat.shoes.temperature = 33;
    const { hottest } = heat;
    const mark = presses.mark();
    presses.gather(20 * KM, duty, false);
    const later = presses.plan(3, 1, -1);
    expect(heat.hottest).toBeGreaterThan(hottest);
    Object.assign(later, { seen });
    plan.seen = null;
    w.lost = 0.7;
    heat.shoes.temperature = 44;
    w.rests = 0;
    presses.takeBack(mark);
    expect(schedule.due.at).toBe(4 * KM);
    expect([heat.lastAt, heat.hottest, heat.shoes.temperature]).toEqual([3 * KM, hottest, 33]);
    expect([plan.seen, later.seen]).toEqual([seen, null]);
    expect([w.lost, w.rests]).toEqual([0.7, 1]);
  });
});

describe('what the ratchet senses', () => {
  it('is what the seats part, and what bore and shoes would part them at another temperature', () => {
    const { presses } = bench(brake, only({}));
    expect(presses.sensed(104, 120, 320, 0.05)).toBe(104);
    presses.gain = 0.8;
    // 200 K of 100 mm and 11e-6: 0.22 mm.
    near(presses.sensed(104, 120, 320, 0.05), 104 + 0.8 * 0.27, { rel: 1e-12 });
    near(presses.sensed(104, 320, 120, -0.05), 104 - 0.8 * 0.27, { rel: 1e-12 });
  });

  it('needs strut, lost motion and a tooth', () => {
    const { presses, w } = bench(brake, only({}));
    const { growth } = brake.adjuster;
    near(presses.needed(), 103.2 + 0.9 + (growth[1] as number), { rel: 1e-12 });
    w.tooth = 20;
    expect(presses.needed()).toBe(Number.POSITIVE_INFINITY);
  });

  /** A plan with ten presses at 120 °C, the hottest at 320 °C, on seats so far apart. */
  const judged = (softApart: number, apart: number, gain = 0) => {
    const b = bench(brake, only({}));
    b.presses.gain = gain;
    b.w.distance = 10 * KM;
    b.w.apart = apart;
    const plan = b.presses.plan(0, 1, -1);
    for (let n = 0; n < 10; n++)
      plan.add(
        1,
        {
          middle: n === 0 ? 210 : 110,
          after: n === 0 ? 320 : 115,
          swell: 0.02,
          swellAfter: n === 0 ? 0.03 : 0.02,
        },
        false,
      );
    plan.softApart = softApart;
    return { ...b, plan };
  };
  const next = 103.2 + 0.9 + (brake.adjuster.growth[1] as number);

  it('far from a tooth goes by the soft press, near to it by a press of its own', () => {
    const far = judged(next - 0.01, next + 1);
    expect(far.presses.judge().passed).toBe(0);
    expect(far.asked.length).toBe(0);
    expect(far.plan.seen).toEqual({ apart: next - 0.01, at: 10 * KM, rate: 0 });
    const close = judged(next - 0.003, next - 0.001);
    expect(close.presses.judge()).toMatchObject({ passed: 0, apart: 0, temperature: 20, swell: 0 });
    expect(close.asked.length).toBe(1);
    near(close.asked[0]?.temperature ?? 0, 120, { rel: 1e-12 }, 'middle of its presses');
    near(close.plan.seen?.apart ?? 0, next - 0.001, { rel: 1e-12 }, 'as pressed');
    const over = judged(next - 0.003, next + 0.001).presses.judge();
    expect(over).toMatchObject({ passed: 1, temperature: 320, swell: 0.03, share: 0.5 });
    near(over.apart, next + 0.001, { rel: 1e-12 }, 'apart');
  });

  it('counts the heat of the hottest press, and tells how they would part cold', () => {
    // From 120 to 320 °C the bore grows by 0.22 mm, and the shoes by 0.01 more than in the middle; cold 0.11 and 0.02.
    const { plan, presses } = judged(next - 0.25, next - 0.25, 0.8);
    expect(presses.judge().passed).toBe(0);
    near(plan.seen?.apart ?? 0, next - 0.25 + 0.8 * (-0.11 + 0.02), { rel: 1e-12 }, 'cold');
    near(plan.heated, 0.8 * (0.22 - 0.01 + 0.11 - 0.02), { rel: 1e-9 }, 'heated');
    const passes = judged(next - 0.16, next - 0.16, 0.8).presses.judge();
    near(passes.apart, next - 0.16 + 0.8 * 0.21, { rel: 1e-12 }, 'hot');
    expect(passes.passed).toBe(1);
  });

  it('foresees the next tooth by how the seats parted from lump to lump, and the share that passed it', () => {
    const { plan, presses, w } = judged(next - 0.2, 0);
    presses.judge();
    w.distance = 14 * KM;
    plan.softApart = next - 0.12;
    presses.judge();
    near(plan.seen?.rate ?? 0, 0.08 / (4 * KM), { rel: 1e-9 }, 'rate');
    near(presses.toNextTooth(), (0.12 / 0.08) * 4 * KM, { rel: 1e-9 }, 'to go');
    w.distance = 15 * KM;
    near(presses.toNextTooth(), 5 * KM, { rel: 1e-9 }, 'one kilometre on');
    // As hot as last time it comes sooner; where so much heat would have passed already, as if cool.
    plan.heated = 0.06;
    near(presses.toNextTooth(), 2 * KM, { rel: 1e-9 }, 'hot');
    plan.heated = 0.5;
    near(presses.toNextTooth(), 5 * KM, { rel: 1e-9 }, 'too hot');
    plan.heated = 0;
    // Asked at the same place it keeps its rate; passed a third of the way from there to 0.24 on.
    presses.judge();
    w.distance = 15 * KM;
    presses.judge();
    near(plan.seen?.rate ?? 0, 0, { abs: 1e-18 }, 'stood still');
    w.distance = 20 * KM;
    w.apart = next + 0.24;
    plan.softApart = next + 0.24;
    const passed = presses.judge();
    expect(passed.passed).toBe(1);
    near(passed.share, 0.12 / 0.36, { rel: 1e-9 }, 'share');
    // What has passed is not foreseen any more.
    expect(presses.toNextTooth()).toBe(Number.POSITIVE_INFINITY);
  });

  it('takes half of a lump where it cannot tell when in it the tooth was passed', () => {
    const passing = (apart: number, heat: number) => {
      const { plan, presses } = judged(next + 0.1, next + 0.1, 0.8);
      // What was sensed cold, 0.8 · (0.22 − 0.01 + 0.11 − 0.02) = 0.24 less than hot.
      plan.seen = { apart: apart - heat, at: 4 * KM, rate: 0 };
      return presses.judge();
    };
    // Hot it was 0.1 short of the tooth, and is 0.1 + 0.8 · 0.21 past it: after 0.1 of 0.368.
    const told = passing(next - 0.1, 0.24);
    near(told.apart, next + 0.268, { rel: 1e-12 }, 'hot');
    near(told.share, 0.1 / 0.368, { rel: 1e-9 }, 'share');
    // So hot it would have passed before; or it had been farther apart than now.
    expect(passing(next + 0.05, 0.24).share).toBe(0.5);
    expect(passing(next + 0.5, 0.24).share).toBe(0.5);
    expect(passing(next, 0.24).share).toBe(0.5);
  });

  it('asks a press of its own as near as 0.004 mm hot, shoes as swollen as after the hottest', () => {
    // 0.8 · (0.22 − 0.01) = 0.168: with the swelling added instead it would be 0.032 more.
    const far = judged(next - 0.168 - 0.005, 0, 0.8);
    far.presses.judge();
    expect(far.asked.length).toBe(0);
    const close = judged(next - 0.168 - 0.003, 0, 0.8);
    close.presses.judge();
    expect(close.asked.length).toBe(1);
  });

  it('keeps its rate where it is judged twice at one place, and foresees nothing from what shrinks', () => {
    const { plan, presses } = judged(next - 0.2, 0);
    plan.seen = { apart: next - 0.2, at: 10 * KM, rate: 3e-9 };
    presses.judge();
    expect(plan.seen?.rate).toBe(3e-9);
    near(presses.toNextTooth(), 0.2 / 3e-9, { rel: 1e-9 });
    plan.seen = { apart: next - 0.2, at: 10 * KM, rate: -3e-9 };
    expect(presses.toNextTooth()).toBe(Number.POSITIVE_INFINITY);
    plan.seen = null;
    expect(presses.toNextTooth()).toBe(Number.POSITIVE_INFINITY);
  });

  it('takes the plan that passes most teeth, and the nearest tooth of all', () => {
    const { plan, presses, w } = judged(next + 0.001, next + 0.001);
    const other = presses.plan(0, -1, -1);
    other.add(1, { middle: 20, after: 20, swell: 0, swellAfter: 0 }, false);
    // Pressed, both part the seats alike: one tooth, told by the first, which was hot.
    other.softApart = next + 0.001;
    expect(presses.judge()).toMatchObject({ passed: 1, temperature: 320 });
    // The other passes three, backward.
    w.apart = 103.2 + 0.9 + (brake.adjuster.growth[3] as number) + 0.001;
    plan.softApart = 0;
    expect(presses.judge()).toMatchObject({ passed: 3, temperature: 20 });
    plan.seen = { apart: next - 0.1, at: 10 * KM, rate: 1e-7 };
    other.seen = { apart: next - 0.1, at: 10 * KM, rate: 2e-7 };
    plan.heated = 0;
    other.heated = 0;
    near(presses.toNextTooth(), 0.1 / 2e-7, { rel: 1e-9 }, 'nearest');
    // One without presses in the lump is not asked.
    other.clear();
    other.softApart = w.apart;
    other.seen = null;
    expect(presses.judge().passed).toBe(0);
    expect(other.seen).toBeNull();
  });
});
