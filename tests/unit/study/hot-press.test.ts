import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import {
  balance,
  createRig,
  hotPress,
  KM,
  KMH,
  readSceneText,
  standingState,
  withAdjuster,
} from '../../../sim/index.ts';
import { near } from '../../near.ts';

const file = new URL('../../../scenes/quay-van.json', import.meta.url);
const read = readSceneText(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(JSON.stringify(read.findings));
const { brake } = read;
const rig = createRig(brake);
const clicked = standingState(rig, 'Just clicked');
const hill = (percent: number, km: number) => ({
  slope: percent / 100,
  length: km * KM,
  speed: 40 * KMH,
});

it('as the teaching tables: 109 K no step, 206 K one, 287 K two and then it drags', () => {
  const gentle = hotPress(rig, clicked, hill(8, 3));
  near(gentle.temperature - 20, 109, { abs: 2 }, '8 % for 3 km');
  near(gentle.gapBefore, 0.27, { abs: 0.01 });
  near(gentle.gapHot, 0.39, { abs: 0.01 });
  expect(gentle.stepped).toBe(0);
  near(gentle.gapCold, gentle.gapBefore, { abs: 1e-12 });

  const steep = hotPress(rig, clicked, hill(12, 4));
  near(steep.temperature - 20, 206, { abs: 3 }, '12 % for 4 km');
  expect([steep.stepped, steep.cold.tooth]).toEqual([1, 11]);
  near(steep.gapCold, 0.12, { abs: 0.01 });

  const pass = hotPress(rig, clicked, hill(16, 4));
  near(pass.temperature - 20, 287, { abs: 3 }, '16 % for 4 km');
  expect([pass.stepped, pass.cold.tooth]).toEqual([2, 12]);
  near(pass.gapHot, 0.59, { abs: 0.012 });
  near(pass.gapCold, -0.03, { abs: 0.01 });
  expect(pass.cold.temperature).toBe(20);
});

it('a hot lock takes no step, one tooth a press takes one: 0.27 and 0.12 mm cold', () => {
  const locked = createRig(withAdjuster(brake, 'toothed lever', { hotLock: 120 }));
  const held = hotPress(locked, clicked, hill(16, 4));
  expect([held.held, held.stepped]).toEqual([true, 0]);
  near(held.gapCold, 0.27, { abs: 0.01 });
  const single = createRig(withAdjuster(brake, 'incremental'));
  const one = hotPress(single, clicked, hill(16, 4));
  expect(one.stepped).toBe(1);
  near(one.gapCold, 0.12, { abs: 0.01 });
});

it('the excess is the sum of its parts, and the drum has grown by what the gap says', () => {
  const { excess } = hotPress(rig, clicked, hill(16, 4));
  const { drum, elasticity, gap, growth, linings, needed, sensed, takenUp } = excess;
  near(gap + linings + drum + growth + elasticity - takenUp, sensed, { abs: 1e-9 });
  // Teaching tables: seats of the new brake part by 1.01 mm at the press; by 0.90 just after a click.
  near(gap, 1.0, { abs: 0.03 });
  const cool = hotPress(rig, clicked, { ...hill(16, 4), length: 1 }).excess;
  near(cool.sensed, 0.9, { abs: 0.02 });
  near(cool.growth, 0, { abs: 1e-3 });
  // A wider drum lets both shoes turn further about their pins. Teaching tables: +287 K open the gap
  // at the middle by 0.32 mm; the strut stands 130 over the pins, the middle 78: 2 · 0.32 · 130/78.
  near(growth, (2 * 0.32 * 130) / 78, { abs: 0.06 });
  expect(sensed).toBeGreaterThan(needed + 0.4);
  near(takenUp, brake.adjuster.growth[10] as number, { abs: 1e-12 });
  // Lost motion and the eleventh tooth; a lever spring at half its force is late by half a tooth.
  const { growth: lengths, lostMotion } = brake.adjuster;
  const step = (lengths[11] as number) - (lengths[10] as number);
  near(needed, lostMotion + step, { abs: 1e-12 }, 'needed');
  const weak = { ...clicked, condition: { ...clicked.condition, leverSpring: 0.5 } };
  const late = hotPress(rig, weak, hill(16, 4)).excess.needed;
  near(late, lostMotion + 1.5 * step, { abs: 1e-12 }, 'weak spring');
});

it('shoes that warm take from the drum’s growth: a cooler drum, swollen shoes, no second tooth', () => {
  const warm = createRig({
    ...brake,
    heat: { ...brake.heat, shoes: { ...warmShoes(), loss: 0.7e3 } },
  });
  const cool = hotPress(rig, clicked, hill(16, 4));
  const pass = hotPress(warm, clicked, hill(16, 4));
  // Two lumps by small steps of their own, as tests/unit/warm-presses.test.ts has them.
  const shoes = warm.brake.heat.shoes;
  const { conductivity } = warm.brake.heat.lining;
  const { front, rear } = brake.shoes;
  const between = [front, rear].reduce(
    (sum, { lining: l }) => sum + (conductivity * l.width * 100 * (l.to - l.from)) / l.thicknessNew,
    0,
  );
  const c = 1 / Math.sqrt(1 + 0.16 ** 2);
  const v = 40 * KMH;
  const power = (1.15 * 9806.65 * c * (0.16 - 0.015) - 0.54e-6 * v * v) * 0.15 * v;
  let [drum, shoe] = [20, 20];
  for (let n = 0; n < 36_000; n++) {
    const flow = between * (drum - shoe);
    drum += ((power - 7.3e3 * (drum - 20) - flow) * 0.01) / 1564e3;
    shoe += ((flow - 0.7e3 * (shoe - 20)) * 0.01) / (shoes?.capacity ?? 0);
  }
  near(pass.temperature, drum, { abs: 0.3 }, 'drum');
  expect(pass.temperature).toBeLessThan(cool.temperature - 20);
  // The drum 1.1e-3 mm/K, the shoes' steel 0.94 · 100 · 12e-6 mm/K, for both shoes alike.
  const room = 1.1e-3 * (drum - cool.temperature) - 0.94 * 100 * 12e-6 * (shoe - 20);
  near(pass.gapHot - cool.gapHot, room, { abs: 0.003 }, 'room');
  expect([cool.stepped, pass.stepped]).toEqual([2, 1]);
  expect(pass.cold.drumRadius).toBe(clicked.drumRadius);
  const { elasticity, gap, growth, linings, drum: bore, sensed, takenUp } = pass.excess;
  near(gap + linings + bore + growth + elasticity - takenUp, sensed, { abs: 1e-9 }, 'sum');
  expect(growth).toBeLessThan(cool.excess.growth);
  // A single balance knows no warm shoes: at 40 bar its torque hangs on them by little, its piston travel by the gap.
  const at = { pressure: 4, turning: 1 } as const;
  const foot = { ...clicked, temperature: pass.temperature };
  const swell = 0.94 * 100 * 12e-6 * (shoe - 20);
  const [cold, swollen] = [0, swell].map((by) =>
    balance(rig, { ...foot, drumRadius: foot.drumRadius - by }, at),
  );
  near(swollen?.torqueOnDrum ?? 0, cold?.torqueOnDrum ?? 1, { rel: 0.02 }, 'torque');
});

/** The shoes' heat as a scene that names their loss is read. */
function warmShoes() {
  const scene = JSON.parse(readFileSync(file, 'utf8'));
  const made = readSceneText(JSON.stringify({ ...scene, heat: { shoes: { loss: 0.7 } } }));
  if (!made.ok || !made.brake.heat.shoes) throw new Error('not read');
  return made.brake.heat.shoes;
}
