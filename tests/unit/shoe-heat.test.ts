import { describe, expect, it } from 'vitest';
import {
  faceGrowth,
  type Lumps,
  liningConductance,
  PINS_COLD,
  shoesShare,
  shoesTime,
  type Warmth,
  warmedBoth,
} from '../../sim/wear/shoe-heat.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const W = 1000;
/** The quay van: 1 564 J/K and 7.3 W/K at 40 km/h; two shoes of 0.62 kg of steel; 1.4 W/K in, 0.7 W/K out. */
const van: Lumps = {
  drumCapacity: 1564 * W,
  shoesCapacity: 595 * W,
  between: 1.4 * W,
  drumLoss: 7.3 * W,
  shoesLoss: 0.7 * W,
};
const AIR = 20;

/** The same equations by many small steps (classical Runge and Kutta), with what the air takes, N·mm. */
function stepped(l: Lumps, from: Warmth, power: number, time: number): Warmth & { air: number } {
  const slope = ({ drum, shoes }: Warmth) => ({
    drum: (power - l.drumLoss * (drum - AIR) - l.between * (drum - shoes)) / l.drumCapacity,
    shoes: (l.between * (drum - shoes) - l.shoesLoss * (shoes - AIR)) / l.shoesCapacity,
    air: l.drumLoss * (drum - AIR) + l.shoesLoss * (shoes - AIR),
  });
  type Y = ReturnType<typeof slope>;
  const moved = (y: Y, k: Y, h: number): Y => ({
    drum: y.drum + h * k.drum,
    shoes: y.shoes + h * k.shoes,
    air: y.air + h * k.air,
  });
  const n = 4000;
  const h = time / n;
  let y: Y = { ...from, air: 0 };
  for (let i = 0; i < n; i++) {
    const k1 = slope(y);
    const k2 = slope(moved(y, k1, h / 2));
    const k3 = slope(moved(y, k2, h / 2));
    const k4 = slope(moved(y, k3, h));
    for (const [k, by] of [
      [k1, h / 6],
      [k2, h / 3],
      [k3, h / 3],
      [k4, h / 6],
    ] as const)
      y = moved(y, k, by);
  }
  return y;
}

describe('shoes that warm with their drum', () => {
  it('come to G_in/(G_in + G_out) of its rise, within C_s/(G_in + G_out)', () => {
    near(shoesShare(van), 1.4 / 2.1, { rel: 1e-12 }, 'share');
    near(shoesTime(van), 595 / 2.1, { rel: 1e-12 }, 's');
    expect(shoesShare({ ...van, between: 0, shoesLoss: 0 })).toBe(0);
    // A drum without end: the shoes follow it by their own time constant.
    const held = { ...van, drumCapacity: 1e15 };
    const at = warmedBoth(held, { drum: 120, shoes: 20 }, 0, 595 / 2.1, AIR);
    near(at.shoes - AIR, 100 * (2 / 3) * (1 - Math.exp(-1)), { rel: 1e-6 }, 'one time constant');
  });

  it('takes the conductance of linings from their size', () => {
    const { lining } = quay().brake.shoes.front;
    const area = lining.width * 100 * (lining.to - lining.from);
    const one = { conductivity: 0.5, area, thickness: lining.thicknessNew };
    // 32 × 192 mm, 4.5 mm thick: 0.5·0.006144/0.0045 = 0.683 W/K each (hand sum).
    near(liningConductance([one, one]) / W, 1.365, { abs: 0.001 });
  });

  it('agrees with many small steps at any time, and its energy books close', () => {
    const from = { drum: 90, shoes: 35 };
    for (const time of [0.01, 1, 30, 600, 7200]) {
      for (const power of [0, 600 * W]) {
        const exact = warmedBoth(van, from, power, time, AIR);
        const many = stepped(van, from, power, time);
        near(exact.drum, many.drum, { abs: 1e-7 }, `drum ${time} s`);
        near(exact.shoes, many.shoes, { abs: 1e-7 }, `shoes ${time} s`);
        const kept =
          van.drumCapacity * (exact.drum - from.drum) +
          van.shoesCapacity * (exact.shoes - from.shoes);
        near(power * time, kept + many.air, { abs: 1e-6 * van.drumCapacity }, `books ${time} s`);
      }
    }
  });

  it('is the same however a time is cut', () => {
    const once = warmedBoth(van, { drum: 20, shoes: 20 }, 5e5, 1800, AIR);
    let many: Warmth = { drum: 20, shoes: 20 };
    for (let i = 0; i < 900; i++) many = warmedBoth(van, many, 5e5, 2, AIR);
    near(many.drum, once.drum, { rel: 1e-11 });
    near(many.shoes, once.shoes, { rel: 1e-11 });
  });

  it('comes to the balance of heat in and heat out', () => {
    // P = (G_d + f·G_out)·ΔT, f = 2/3: 700 W over 7.3 + 0.467 W/K.
    const end = warmedBoth(van, { drum: 20, shoes: 20 }, 700 * W, 1e6, AIR);
    near(end.drum - AIR, 700 / (7.3 + 0.7 * (2 / 3)), { rel: 1e-9 });
    near(end.shoes - AIR, (2 / 3) * (end.drum - AIR), { rel: 1e-9 });
  });

  it('is the drum alone where nothing goes through the linings', () => {
    const apart = { ...van, between: 0 };
    const at = warmedBoth(apart, { drum: 20, shoes: 50 }, 500 * W, 100, AIR);
    const q = 500 / 7.3;
    near(at.drum - AIR, q * (1 - Math.exp((-100 * 7.3) / 1564)), { rel: 1e-12 });
    near(at.shoes - AIR, 30 * Math.exp((-100 * 0.7) / 595), { rel: 1e-12 });
    // Two lumps of one time constant, and none that loses anything.
    const alike = { ...apart, shoesCapacity: van.drumCapacity, shoesLoss: van.drumLoss };
    near(
      warmedBoth(alike, { drum: 70, shoes: 70 }, 0, 50, AIR).shoes,
      20 + 50 * Math.exp((-50 * 7.3) / 1564),
      { rel: 1e-12 },
    );
    const none = { ...apart, drumLoss: 0, shoesLoss: 0 };
    near(warmedBoth(none, { drum: 20, shoes: 20 }, 1564 * W, 9, AIR).drum, 29, { rel: 1e-12 });
  });

  it('without losses shares what there is by capacity', () => {
    const closed = { ...van, drumLoss: 0, shoesLoss: 0 };
    const end = warmedBoth(closed, { drum: 120, shoes: 20 }, 0, 1e5, AIR);
    near(end.drum, 20 + (100 * 1564) / (1564 + 595), { rel: 1e-9 });
    near(end.shoes, end.drum, { rel: 1e-9 });
  });
});

it('a warm shoe fills the drum at a share of its rise that can be told by hand', () => {
  // The bore grows by 100 mm·11e-6/K. Steel alone: 11/(12·0.94) = 0.975 of its rise. With a lining of
  // 4.5 mm that swells 30e-6/K and is as warm as its shoe: 1.1/(1.128 + 0.135) = 0.871.
  near(PINS_COLD, 0.84 + (0.78 * 16) / 130, { abs: 0.005 }, 'pins cold');
  const steel = { expansion: 12e-6, liningExpansion: 0 };
  near(1.1e-3 / faceGrowth(100, 4.5, steel, { shoe: 1, lining: 1 }), 0.975, { abs: 1e-3 }, 'steel');
  const swelling = { ...steel, liningExpansion: 30e-6 };
  near(
    1.1e-3 / faceGrowth(100, 4.5, swelling, { shoe: 1, lining: 1 }),
    0.871,
    { abs: 1e-3 },
    'lining',
  );
});

it('scenes have cold shoes unless they say what their shoes lose', () => {
  const warm = quay((s) => {
    Object.assign(s, { heat: { shoes: { loss: 0.7 } } });
  });
  // Two shoes of 0.62 kg at 480 J/(kg·K).
  near(warm.brake.heat.shoes?.capacity ?? 0, 595.2 * W, { rel: 1e-12 });
  near(warm.brake.heat.shoes?.loss ?? 0, 0.7 * W, { rel: 1e-12 });
});
