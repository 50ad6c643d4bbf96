import { describe, expect, it } from 'vitest';
import { createRig, driveLife, freshState, KM, KMH, type LifeEvent } from '../../sim/index.ts';
import { PressHeat } from '../../sim/wear/life-heat.ts';
import { type Kind, kindsOf } from '../../sim/wear/schedule.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { mustRead, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * Shoes that take heat while linings are held on the drum: two lumps, C_d dT_d = P − G_d (T_d − air) − G_in (T_d − T_s)
 * and C_s dT_s = G_in (T_d − T_s) − G_out (T_s − air) (sim/wear/shoe-heat.ts), here by small steps of their own.
 */
const AIR = 20;
const [C, G] = [1564e3, 7.3e3];
/** 1.4 W/K through the linings (0.5 W/(m·K)), as drag.test.ts has it, 0.7 W/K to the air. */
const OUT = 0.7e3;

const van = (warm: boolean) => {
  const scene = quayScene();
  if (warm) Object.assign(scene, { heat: { shoes: { loss: 0.7 } } });
  const brake = mustRead(scene);
  const duty = brake.duties.find((d) => d.name === 'Hill descents');
  if (!duty) throw new Error('the van has hills');
  const rig = createRig(brake);
  const kinds = kindsOf(brake, duty);
  return { brake, duty, rig, pass: kinds.find((k) => k.name === 'the pass') as Kind };
};

/** Drum and shoes down a hill of a power, N·mm/s, for a time, s, in steps of a hundredth of a second. */
function down(
  power: number,
  time: number,
  capacity: number,
  between: number,
  drum = AIR,
  shoes = AIR,
) {
  const dt = 0.01;
  for (let n = 0; n < time / dt; n++) {
    const flow = between * (drum - shoes);
    drum += ((power - G * (drum - AIR) - flow) * dt) / C;
    shoes += ((flow - OUT * (shoes - AIR)) * dt) / capacity;
  }
  return { drum, shoes };
}

describe('shoes that warm in presses', () => {
  const { brake, pass, rig } = van(true);
  const capacity = brake.heat.shoes?.capacity ?? 0;
  const heat = new PressHeat(brake, true, AIR, 0);
  const { between } = heat.shoes;

  it('take heat down a hill: both temperatures at the foot of the pass, and how far the shoes have swollen', () => {
    near(between, 1.4e3, { rel: 0.03 }, 'through the linings');
    const w = new Wearing(rig, freshState(brake));
    heat.warm(w, pass, 8 * KM);
    const time = (4 * KM) / (40 * KMH);
    const own = down(pass.energy / time, time, capacity, between);
    near(w.temperature, own.drum, { abs: 0.3 }, 'drum');
    near(heat.shoes.temperature, own.shoes, { abs: 0.3 }, 'shoes');
    // The drum gives to the shoes what would have made it hotter.
    const alone = down(pass.energy / time, time, capacity, 0);
    expect(w.temperature).toBeLessThan(alone.drum - 20);
    // 0.94 · R · 12e-6 of the steel; a lining's stuff swells where the scene says so, and this one does not.
    expect(brake.heat.shoes?.liningExpansion).toBe(0);
    const swell = 0.94 * 100 * 12e-6 * (own.shoes - AIR);
    near(heat.swellAfter, swell, { rel: 0.01 }, 'swollen');
    // A fair part of what the drum has grown: no press there may leave it out.
    expect(swell / (100 * 11e-6 * (own.drum - AIR))).toBeGreaterThan(0.2);
  });

  it('are cold again after parking, and cool on the way by e^(−t·G_out/C_s)', () => {
    const w = new Wearing(rig, freshState(brake));
    const one = new PressHeat(brake, true, AIR, 0);
    one.warm(w, pass, 8 * KM);
    const hot = one.shoes.temperature - AIR;
    const first = kindsOf(brake, brake.duties[0])[0] as Kind;
    one.warm(w, first, 18 * KM);
    const time = (10 * KM) / first.speed;
    near(one.shoes.temperature - AIR, hot * Math.exp((-time * OUT) / capacity), { rel: 1e-6 });
    one.park(w, 18 * KM);
    expect(one.shoes.temperature).toBe(AIR);
  });

  it('take next to nothing in a stop: it is over in 4 s', () => {
    // From 40 km/h at 3 m/s² 3.7 s; the drum some 20 K over the shoes in town.
    const rise = (between * 20 * 3.7) / capacity;
    expect(rise).toBeLessThan(0.3);
    // On the face: 0.94 · 100 · 12e-6 mm a kelvin, a fiftieth of what a gauge shows (0.01 mm).
    expect(0.94 * 100 * 12e-6 * rise).toBeLessThan(0.0005);
  });

  it('part the seats less at the foot of the pass: the adjuster is not led as far astray', () => {
    const hot = (warm: boolean): LifeEvent[] => {
      const v = van(warm);
      const life = driveLife(v.rig, freshState(v.brake), v.duty, { distance: 2010 * KM });
      return life.events.filter((e) => e.kind === 'stepped hot');
    };
    const [cold, warm] = [hot(false), hot(true)];
    // Cold shoes: 0.10 mm inside the next morning (tests/unit/dragging.test.ts).
    const worst = (list: LifeEvent[]): number => Math.min(0, ...list.map((e) => e.value));
    expect(worst(cold)).toBeLessThan(-0.05);
    expect(worst(warm)).toBeGreaterThan(worst(cold) + 0.05);
  });

  it('stay as they are where the scene says nothing of their heat', () => {
    const v = van(false);
    const w = new Wearing(v.rig, freshState(v.brake));
    const one = new PressHeat(v.brake, true, AIR, 0);
    one.warm(w, v.pass, 8 * KM);
    expect([one.shoes.temperature, one.swell, one.swellAfter]).toEqual([AIR, 0, 0]);
    const time = (4 * KM) / (40 * KMH);
    near(w.temperature, down(v.pass.energy / time, time, 1, 0).drum, { abs: 0.3 }, 'drum');
  });
});
