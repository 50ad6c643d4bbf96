import { describe, expect, it } from 'vitest';
import {
  balance,
  decelerationBy,
  drumShareOf,
  flashRise,
  KMH,
  readingOf,
  readings,
  rest,
  stopped,
  stopRise,
} from '../../sim/index.ts';
import { drumShare } from '../../sim/wear/interface.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const van = quay();
const { brake } = van;

describe('the drum’s face in a stop', () => {
  // By hand: 1 150 kg, a share of 0.3, two brakes; bore 200 × 32 mm, 0.020106 m². 40 km/h: 10 648 J in
  // 3.704 s, q0 = 286.0 kW/m², 0.53192·286 000·√3.704/12 824 = 22.8 K; mean 10 648/1 564 = 6.8 K.
  for (const [kmh, deceleration, face, mean] of [
    [40, 3, 22.8, 6.8],
    [80, 6, 91.3, 27.2],
    [100, 5, 116.5, 42.6],
  ] as const) {
    it(`${kmh} km/h at ${deceleration} m/s²: ${face} K over a mean of ${mean} K`, () => {
      const stop = stopped(brake, kmh * KMH, deceleration * 1000);
      near(flashRise(brake, stop, 1), face, { abs: 0.06 }, 'face');
      near(stopRise(brake, kmh * KMH), mean, { abs: 0.05 }, 'mean');
    });
  }

  it('is the greatest of the flux gathered over the half-space, in the middle of the stop', () => {
    // θ(t) = ∫ q0(1 − τ/t_s)/(e·√(π(t − τ))) dτ summed by t − τ = u², which takes the pole away.
    const stop = { energy: 10648e3, time: 3.704 };
    const e = Math.sqrt(50 * 7150e-12 * 460e6);
    const q0 = (2 * stop.energy) / (stop.time * 2 * Math.PI * 100 * 32);
    const at = (t: number): number => {
      const [n, top] = [2000, Math.sqrt(t)];
      let sum = 0;
      for (let i = 0; i < n; i++) {
        const u = ((i + 0.5) / n) * top;
        sum += (2 * q0 * (1 - (t - u * u) / stop.time) * (top / n)) / (e * Math.sqrt(Math.PI));
      }
      return sum;
    };
    const half = at(stop.time / 2);
    near(flashRise(brake, stop, 1), half, { rel: 1e-5 });
    for (const share of [0.45, 0.55]) expect(at(share * stop.time)).toBeLessThan(half);
    // Limpert's constant, √(5/18) (Brake Design and Safety, from memory).
    near(half / ((q0 * Math.sqrt(stop.time)) / e), Math.sqrt(5 / 18), { rel: 0.01 }, 'Limpert');
  });

  it('is less for a drum that takes less of the heat, and for a wider lining', () => {
    const stop = { energy: 10648e3, time: 3.704 };
    near(flashRise(brake, stop, 0.5), flashRise(brake, stop, 1) / 2, { rel: 1e-12 });
    const wide = quay((s) => {
      s.shoes.rear.lining.width = 40;
    });
    near(flashRise(wide.brake, stop, 1), (32 / 40) * flashRise(brake, stop, 1), { rel: 1e-12 });
  });

  it('says nothing where the heat is through the rim before the stop ends', () => {
    // a = 50/(7 150·460) = 15.2 mm²/s: 10 mm in 6.6 s.
    expect(flashRise(brake, { energy: 1e7, time: 6.5 })).toBeGreaterThan(0);
    expect(flashRise(brake, { energy: 1e7, time: 6.6 })).toBeNaN();
  });

  it('shares the heat by effusivity and by how much of the circle is lined', () => {
    // e_d = √(50·7 150·460) = 12 824, e_l = √(0.5·2 000·1 000) = 1 000: 12 824/13 824; with 220 of 360°
    // 12 824/(12 824 + 611).
    near(drumShare(brake, 2 * Math.PI), 0.928, { abs: 5e-4 }, 'whole round');
    near(drumShareOf(brake), 0.955, { abs: 5e-4 }, '220°');
  });
});

it('is read beside the drum’s temperature, for a stop with the torque of the press', () => {
  const i = balance(van.rig, van.state, { pressure: 4, turning: 1 });
  const list = readings(brake, van.state, i, rest(van.rig, van.state), 50 * KMH);
  // Both brakes with 227 N·m at 270 mm are 1 681 N, and that is 0.3 of 1 150 kg's share: 4.87 m/s².
  const torque = readingOf(list, 'torque').value * 1000;
  near(decelerationBy(brake.vehicle, torque), (2 * torque) / 270 / 0.345, { rel: 1e-12 });
  const stop = stopped(brake, 50 * KMH, decelerationBy(brake.vehicle, torque));
  near(readingOf(list, 'stopFace').value, 20 + flashRise(brake, stop), { rel: 1e-12 });
  const still = balance(van.rig, van.state, { pressure: 4, turning: 0 });
  const standing = readings(brake, van.state, still, rest(van.rig, van.state));
  expect(readingOf(standing, 'stopFace').value).toBeNaN();
  // Nor has a drum that turns and is not held.
  const free = { ...i, torqueOnDrum: 0 };
  const rolling = readings(brake, van.state, free, rest(van.rig, van.state));
  expect(readingOf(rolling, 'stopFace').value).toBeNaN();
});

it('reads a scene’s own stuffs, and takes usual ones where it has none', () => {
  const soft = quay((s) => {
    Object.assign(s, { heat: { lining: { conductivity: 2 }, source: 'own' } });
  });
  // √(2·2 000·1 000) = 2 000.
  near(drumShare(soft.brake, 2 * Math.PI), 12824 / 14824, { rel: 1e-4 });
  expect(brake.heat.shoes).toBeNull();
  expect(brake.heat.source).toMatch(/memory/);
});
