import { describe, expect, it } from 'vitest';
import {
  type Brake,
  cooled,
  coolingAt,
  descended,
  descentForce,
  KM,
  KMH,
  stopEnergyOf,
  stopRise,
  warmed,
} from '../../sim/index.ts';
import { exp } from '../../sim/math/exp.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { brake } = quay();
const vehicle = (mass: number, drums: number, heat: number): Brake =>
  quay((s) => {
    Object.assign(s.vehicle, { mass, brakes: drums, share: 1 });
    s.drum.heatCapacity = heat;
  }).brake;

describe('the exponential', () => {
  it('agrees with the engine’s to the last digits', () => {
    for (let x = -40; x < 40; x += 0.37) near(exp(x), Math.exp(x), { rel: 1e-14 }, `${x}`);
    expect(exp(0)).toBe(1);
    expect(exp(-800)).toBe(0);
  });
});

describe('heat of a single stop', () => {
  it('1100 kg from 65 km/h with a tenth more for what rotates, four drums of 12 kg', () => {
    // U. C. Jindal, Machine Design, example 23-5 (read): 49 308 J in each drum, 8.93 K at 460 J/(kg·K).
    const b = vehicle(1100 * 1.1, 4, 12 * 460);
    near(stopEnergyOf(b, 65 * KMH) / 1000, 49307.97, { rel: 1e-5 }, 'J');
    near(stopRise(b, 65 * KMH), 8.93, { rel: 0.001 }, 'K');
  });
  it('1500 kg from 30 m/s into four drums of 8 kg', () => {
    // Serway & Vuille, College Physics, ch. 11 problem 24 (answer from memory, recomputed 47.08): 47.1 K.
    const b = vehicle(1500, 4, 8 * 448);
    near((4 * stopEnergyOf(b, 30000)) / 1000, 675000, { rel: 1e-9 }, 'J');
    near(stopRise(b, 30000), 47.1, { rel: 0.002 }, 'K');
  });
});

describe('cooling and heating', () => {
  it('cools along the exponential of its time constant C / G', () => {
    const tau = brake.drum.heatCapacity / coolingAt(brake, 40 * KMH);
    // 1564 J/K over 2.5 + 0.12·40 W/K (closed form).
    near(tau, 1564 / 7.3, { rel: 1e-12 }, 'time constant');
    for (const t of [1, 60, 600]) {
      near(
        cooled(brake, 320, 40 * KMH, t),
        20 + 300 * Math.exp(-t / tau),
        { rel: 1e-12 },
        `${t} s`,
      );
    }
  });
  it('does not depend on how a time is cut', () => {
    const once = warmed(brake, 50, 2e6, 40 * KMH, 300);
    let many = 50;
    for (let n = 0; n < 1000; n++) many = warmed(brake, many, 2e6, 40 * KMH, 0.3);
    near(many, once, { rel: 1e-12 });
  });
  it('a fast vehicle cools its drum faster', () => {
    expect(cooled(brake, 300, 80 * KMH, 60)).toBeLessThan(cooled(brake, 300, 10 * KMH, 60));
  });
  it('without cooling heat only gathers', () => {
    const b = quay((s) => {
      s.drum.cooling = { still: 0, perKmh: 0 };
    }).brake;
    near(warmed(b, 20, 1564e3, 40 * KMH, 7), 27, { rel: 1e-12 });
  });
});

describe('descents of the teaching tables', () => {
  for (const [slope, km, rise] of [
    [8, 3, 109],
    [12, 4, 206],
    [16, 4, 287],
  ] as const) {
    it(`${slope} % for ${km} km at 40 km/h: +${rise} K`, () => {
      const hill = { slope: slope / 100, length: km * KM, speed: 40 * KMH };
      near(descended(brake, 20, hill) - 20, rise, { abs: 0.6 });
    });
  }
  it('a slope that rolling and air hold alone asks nothing of the brake', () => {
    expect(descentForce(brake, 0.01, 40 * KMH)).toBe(0);
  });
});
