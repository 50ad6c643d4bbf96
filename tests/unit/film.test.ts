import { describe, expect, it } from 'vitest';
import {
  BARE,
  dryingEnergy,
  filmFactor,
  filmOrNone,
  filmShares,
  glazedBy,
  rubbedOff,
  rustEnergy,
} from '../../sim/brake/film.ts';
import type { Film } from '../../sim/brake/films.ts';
import {
  balance,
  driveLife,
  KM,
  readingOf,
  readings,
  rest,
  stopEnergyOf,
} from '../../sim/index.ts';
import { meaningOf } from '../../sim/workshop/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const van = quay();
const { brake } = van;
/** J to N·mm, µm to mm. */
const J = 1e3;
const UM = 1e-3;

const film = (change: Partial<Film>): Film => ({ ...BARE, ...change });

describe('films by hand', () => {
  // Track 2π·100 mm·32 mm = 20 106 mm². 20 µm of water on it are 0.4021 g, 80 K·4.187 + 2 257 J/g: 1 042 J.
  for (const [thick, energy] of [
    [20, 1042],
    [50, 2606],
    [100, 5211],
  ] as const)
    it(`${thick} µm of water take ${energy} J`, () => {
      near(dryingEnergy(brake) * thick * UM, energy * J, { rel: 5e-4 });
    });

  // 2 µm of rust are 40.2 mm³; times 0.38 over 1e-6 15.3 J·1000; over 3e-7 51 kJ.
  for (const [rate, energy] of [
    [1e-6, 15.3],
    [3e-7, 51],
  ] as const)
    it(`2 µm of rust take ${energy} kJ at ${rate} mm²/N`, () => {
      const rusty = quay((s) => {
        Object.assign(s, { films: { rust: { wearRate: rate } } });
      });
      near(rustEnergy(rusty.brake) * 2 * UM, energy * 1e6, { rel: 5e-3 });
    });

  it('a stop dries more than any film of rain, and counts what was wet meanwhile', () => {
    const energy = stopEnergyOf(brake, 40 * (1e6 / 3600));
    const { film: left, mean } = rubbedOff(brake, film({ water: 20 * UM }), energy);
    expect(left.water).toBe(0);
    // Whole at 20 µm, falling evenly to nothing over 1 042 of 10 648 J: half of 0.0979.
    near(mean.water, 0.5 * (1042 / 10648), { rel: 1e-3 });
    // 100 µm: whole down to 20 (4 169 J), then falling.
    near(rubbedOff(brake, film({ water: 100 * UM }), energy).mean.water, (4169 + 521) / 10648, {
      rel: 1e-3,
    });
  });

  it('the energy of many small presses takes as much as that of one', () => {
    let many = film({ water: 100 * UM, rust: 3 * UM });
    let wet = 0;
    for (let i = 0; i < 100; i++) {
      const { film: next, mean } = rubbedOff(brake, many, 40 * J);
      many = next;
      wet += mean.water / 100;
    }
    const once = rubbedOff(brake, film({ water: 100 * UM, rust: 3 * UM }), 4000 * J);
    near(many.water, once.film.water, { rel: 1e-12 });
    near(many.rust, once.film.rust, { rel: 1e-12 });
    near(wet, once.mean.water, { rel: 1e-12 });
    expect(rubbedOff(brake, film({ rust: UM / 2 }), 0).mean.rust).toBe(0.5);
  });

  it('a whole film is its surface, half a one half of what that does, a bare face nothing', () => {
    const of = (f: Partial<Film>, t = 20): number =>
      filmFactor(brake, 'front', filmShares(brake, film(f)), t);
    // The scene's tables: wet 0.4, damp 1.45, glazed 0.75 of a dry lining's.
    near(of({ water: UM * 20 }), 0.4, { rel: 1e-12 });
    near(of({ water: UM * 500 }), 0.4, { rel: 1e-12 });
    near(of({ water: UM * 10 }), 0.7, { rel: 1e-12 });
    near(of({ rust: UM }), 1.45, { rel: 1e-12 });
    near(of({ glaze: { front: 0.4, rear: 1 } }), 0.9, { rel: 1e-12 });
    expect(of({})).toBe(1);
    // Above 130 °C water and damp rust do nothing, as their tables say.
    near(of({ water: UM * 20, rust: UM }, 140), 1, { rel: 1e-12 });
    expect(filmOrNone(BARE)).toBeUndefined();
  });

  it('glaze comes with hot light braking alone, and goes with depth', () => {
    const glazes = quay((s) => {
      Object.assign(s, {
        films: { glaze: { above: 250, below: 0.2, energy: 1e6, depth: 15 }, source: 'own' },
      });
    }).brake;
    near(glazedBy(glazes, 0.1, 0.3e6 * J, 0.1, 0), 0.4, { rel: 1e-12 }, 'comes');
    expect(glazedBy(glazes, 0.1, 0.3e6 * J, 0.3, 0), 'pressed firmly').toBe(0.1);
    near(glazedBy(glazes, 0.8, 0, 0.3, 3 * UM), 0.6, { rel: 1e-12 }, '3 of 15 µm');
    expect(glazedBy(glazes, 0.1, 0, 0.3, 1)).toBe(0);
    expect(glazedBy(glazes, 0.9, 1e12, 0.1, 0)).toBe(1);
    expect(glazedBy(brake, 0.5, 1e12, 0.1, 1), 'a scene that says nothing of it').toBe(0.5);
  });
});

describe('a state with films', () => {
  it('brakes as its surface would when they are whole, and is read', () => {
    const press = { pressure: 4, turning: 1 } as const;
    const wet = { ...van.state, film: film({ water: 50 * UM }) };
    const surface = { front: 'wet', rear: 'wet' } as const;
    const same = { ...van.state, condition: { ...van.state.condition, surface } };
    const i = balance(van.rig, wet, press);
    near(i.torqueOnDrum, balance(van.rig, same, press).torqueOnDrum, { rel: 1e-12 });
    const list = readings(brake, wet, i, rest(van.rig, wet));
    near(readingOf(list, 'waterFilm').value, 50, { rel: 1e-12 });
    for (const key of ['waterFilm', 'rustFilm', 'glazeOfFront', 'glazeOfRear'])
      expect(meaningOf(readingOf(list, key))).toMatch(/^[A-Z].*\.$/);
    const bare = readings(brake, van.state, i, rest(van.rig, van.state));
    expect(bare.some((r) => r.key === 'waterFilm')).toBe(false);
  });
});

describe('a life with films', () => {
  /** Stops of 10.6 kJ, one in ten on a film; rust at each of 0.05 parkings a km. */
  const duty = (weather: object[], rust = 0) => {
    const built = quay((s) => {
      const [, round] = s.duties;
      Object.assign(round as object, {
        stops: [{ name: 'stop', speed: 40, pressure: 20, perKm: 1 }],
        weather,
        parking: { cable: 300, perKm: 0.05, rust },
      });
    });
    const [, asked] = built.brake.duties;
    if (!asked) throw new Error('no duty');
    return { ...built, asked };
  };
  const driven = (d: ReturnType<typeof duty>, km: number, oneByOne = true) =>
    driveLife(d.rig, d.state, d.asked, { distance: km * KM, oneByOne }).state();

  it('leaves the rust that the last stops have not worn off', () => {
    // One stop a km of 10 648 J; 7.64 kJ take 1 µm at 1e-6. Parked at 20, 40 … km, 5 µm each time: after 43 km,
    // stops at 41, 42 and 43 have taken 4.18 of the 5.
    const d = duty([], 5);
    const { film: left } = driven(d, 43);
    near(left?.rust ?? 0, 5 * UM - (3 * 10648) / (rustEnergy(d.brake) / J), { rel: 1e-3 });
    expect(driven(d, 45).film).toBeUndefined();
    near(driven(d, 43, false).film?.rust ?? 0, left?.rust ?? 1, { rel: 1e-9 }, 'in lumps');
  });

  it('soaked linings stay wet for as many stops as their water takes', () => {
    // 1 mm on the track: 52.1 kJ, 4.9 stops. One stop in a hundred, at the first place of the golden section.
    const d = duty([{ surface: 'wet', share: 0.01, film: 1000 }]);
    let first = 1;
    for (; (first * 0.6180339887498949) % 1 >= 0.01; first++);
    const water = (after: number): number => driven(d, first + after).film?.water ?? 0;
    expect(driven(d, first - 1).film).toBeUndefined();
    const perStop = 10648 / (dryingEnergy(d.brake) / J);
    near(water(0), 1 - perStop, { rel: 1e-3 }, 'after the first');
    near(water(3), 1 - 4 * perStop, { rel: 1e-3 }, 'after the fourth');
    expect(water(4)).toBe(0);
  });

  it('wears as the same brake does whose surface is only met', () => {
    // Energy is the same whatever the friction: a longer way at less. Depth k·E/(mu·…) differs by friction:
    // wet linings slide further for the same stop, so they wear more.
    const wet = duty([{ surface: 'wet', share: 0.3, film: 1000 }]);
    const dry = duty([]);
    const depth = (d: ReturnType<typeof duty>): number => Math.max(...driven(d, 300).wear.front);
    expect(depth(wet)).toBeGreaterThan(1.1 * depth(dry));
    const lumps = Math.max(...driven(wet, 300, false).wear.front);
    near(lumps, depth(wet), { rel: 0.03 }, 'in lumps');
  });

  it('glazes on long hills and is rubbed clean by firm stops', () => {
    const d = quay((s) => {
      Object.assign(s, {
        films: { glaze: { above: 150, below: 0.3, energy: 1e5, depth: 15 }, source: 'test' },
      });
      const [, round] = s.duties;
      Object.assign(round as object, {
        stops: [{ name: 'stop', speed: 40, pressure: 60, perKm: 1e-9 }],
        descents: [{ name: 'hill', slope: 16, length: 4, speed: 40, perKm: 0.02 }],
        weather: [],
      });
    });
    const [plain, hills] = d.brake.duties;
    if (!hills) throw new Error('no duty');
    const glazed = driveLife(d.rig, d.state, hills, { distance: 100 * KM, oneByOne: true }).state();
    expect(glazed.film?.glaze.front).toBeGreaterThan(0.2);
    const after = driveLife(d.rig, { ...glazed, temperature: 20 }, plain, {
      distance: 5000 * KM,
    }).state();
    expect(after.film).toBeUndefined();
  });
});
