import { describe, expect, it } from 'vitest';
import {
  balance,
  createRig,
  descentForce,
  driveLife,
  freshState,
  KM,
  type Rig,
  stopEnergyOf,
} from '../../sim/index.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { mustRead, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * Wear against J. F. Archard 1953, "Contact and rubbing of flat surfaces": depth = k·p·s, whatever the
 * shape, and what follows from it.
 */
/** Between the new face and the worn one, both arcs about the axis: b·arc·(r·w − w²/2) (plane geometry). */
const volume = (rig: Rig, side: 'front' | 'rear', wear: Float64Array): number => {
  const { width, arc, face } = rig[side].bed;
  return wear.reduce((sum, w, i) => sum + width * arc * ((face[i] as number) * w - (w * w) / 2), 0);
};

function van(change: (s: ReturnType<typeof quayScene>) => void = () => {}) {
  const scene = quayScene();
  change(scene);
  const brake = mustRead(scene);
  const rig = createRig(brake);
  return { brake, rig, fresh: freshState(brake) };
}

describe('a plain block', () => {
  // A lining so short (6°) that its pressure is nearly even is a block pressed on a turning face.
  const block = van((s) => {
    for (const side of ['front', 'rear'] as const) {
      const middle = side === 'front' ? 180 : 0;
      Object.assign(s.shoes[side].lining, { from: middle - 3, to: middle + 3, cutEdgeArc: 0 });
    }
    s.drum.wearRate = 0;
    s.states = [];
  });
  it('loses k·p·s', () => {
    const w = new Wearing(block.rig, block.fresh);
    const warm = w.makeWarm();
    w.press(warm, 2, 1, null, 20);
    const before = balance(block.rig, block.fresh, { pressure: 2, turning: 1 });
    const sliding = 1e5;
    w.wearOff(sliding);
    const force = before.shoes.front.normalSum;
    const { width, from, to } = block.brake.shoes.front.lining;
    const even = force / (width * block.brake.drum.radiusNew * (to - from));
    const worn = w.state().wear.front;
    const mean = worn.reduce((a, b) => a + b, 0) / worn.length;
    near(mean, block.brake.shoes.front.lining.wearRate * even * sliding, { rel: 1e-9 }, 'mean');
    near(Math.max(...worn), mean, { rel: 0.15 }, 'nearly even');
  });
});

describe('what wears by energy', () => {
  const { brake, rig, fresh } = van();
  const km = 3000;
  const life = driveLife(rig, fresh, brake.duties[0], { distance: km * KM });
  const s = life.state();
  const energy = km * stopEnergyOf(brake, brake.duties[0].stops[0]?.speed ?? Number.NaN);

  it('volume of both linings = k · energy / mu; of the drum likewise', () => {
    // ∫ depth dA = k·s·∫ p dA = k·s·N and energy = mu·N·s: whatever the pressure's shape.
    const worn = volume(rig, 'front', s.wear.front) + volume(rig, 'rear', s.wear.rear);
    const { wearRate, friction, width } = brake.shoes.front.lining;
    near(worn, (wearRate * energy) / friction, { rel: 0.0005 }, 'linings');
    const bore = 2 * Math.PI * brake.drum.radiusNew * width * (s.drumRadius - fresh.drumRadius);
    near(bore, (brake.drum.wearRate * energy) / friction, { rel: 0.004 }, 'drum');
  });

  it.each([true, false])('descents are in that energy, one by one: %s', (oneByOne) => {
    // With the drum kept cool: stops and hills of 2000 km, each hill with the stop at its foot.
    const hills = brake.duties.find((d) => d.descents.length > 0);
    if (!hills) throw new Error('a duty with descents');
    const far = 2000;
    let sum = 0;
    for (const s of hills.stops) sum += s.perKm * far * stopEnergyOf(brake, s.speed);
    for (const h of hills.descents) {
      const each = descentForce(brake, h.slope, h.speed) * h.length + stopEnergyOf(brake, h.speed);
      sum += Math.round(h.perKm * far) * each;
    }
    const cool = { ...hills, heat: false };
    const run = driveLife(rig, fresh, cool, { distance: far * KM, oneByOne }).state();
    const { friction, width } = brake.shoes.front.lining;
    const bore = 2 * Math.PI * brake.drum.radiusNew * width * (run.drumRadius - fresh.drumRadius);
    near(bore, (brake.drum.wearRate * sum) / friction, { rel: 0.002 }, 'drum');
  });

  it('leading and trailing share it as (M_N + M_f) : (M_N − M_f)', () => {
    // Moments about the pins (Shigley, Mechanical Engineering Design, internal expanding rim brakes):
    // F·c = M_N − M_f leading and M_N + M_f trailing for equal pushes, each moment in proportion to its
    // lining's pressure. So pressures, and with them the wear, stand as (M_N + M_f) : (M_N − M_f).
    const moments = (side: 'front' | 'rear') => {
      const i = balance(rig, s, { pressure: 2, turning: 1 }).shoes[side];
      const { at } = brake.shoes[side].anchor;
      let normal = 0;
      let drag = 0;
      i.pressure.forEach((p, n) => {
        const a = i.angle[n] as number;
        const [x, y] = [100 * Math.cos(a), 100 * Math.sin(a)];
        normal += Math.abs(p * (-(x - at[0]) * Math.sin(a) + (y - at[1]) * Math.cos(a)));
        drag += 0.38 * p * ((x - at[0]) * Math.cos(a) + (y - at[1]) * Math.sin(a));
      });
      return { normal, drag };
    };
    const m = moments('front');
    const lost = (w: Float64Array): number => w.reduce((a, b) => a + b, 0);
    near(lost(s.wear.front) / lost(s.wear.rear), (m.normal + m.drag) / (m.normal - m.drag), {
      rel: 0.02,
    });
  });

  it('keeps the worn shape: a pressed worn lining bears over its whole arc, as the sine', () => {
    const i = balance(rig, s, { pressure: 2, turning: 1 }).shoes.front;
    expect(i.pressure.every((p) => p > 0)).toBe(true);
  });

  it('new linings in a larger drum bear on their crown and bed in', () => {
    const second = { ...fresh, drumRadius: 100.3 };
    const bearing = (state: typeof fresh): number =>
      balance(rig, state, { pressure: 4, turning: 1 }).shoes.front.pressure.filter((p) => p > 0)
        .length / 48;
    // Teaching tables: 42 % of the leading arc at first.
    near(bearing(second), 0.42, { abs: 0.03 }, 'at first');
    const after = [1000, 3000, 9000].map((far) =>
      bearing(driveLife(rig, second, brake.duties[0], { distance: far * KM }).state()),
    );
    expect(after[0]).toBeGreaterThan(0.6);
    expect(after[1]).toBeGreaterThan(after[0] as number);
    expect(after[2]).toBeGreaterThan(0.95);
  });

  it('wears faster on a hot drum, by its table', () => {
    const short = (temperature: number): number => {
      const run = driveLife(rig, { ...fresh, temperature }, brake.duties[0], {
        distance: 200 * KM,
      });
      return run.state().drumRadius - fresh.drumRadius;
    };
    // Table: 5 times at 400 °C, over a friction of 0.68: volume = k·energy/mu.
    near(short(400) / short(20), 5 / 0.68, { rel: 0.02 });
  });
});
