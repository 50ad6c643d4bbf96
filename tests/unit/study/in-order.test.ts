import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import {
  type Brake,
  balance,
  bedIn,
  createRig,
  dutyEnergy,
  freshState,
  type Hand,
  KM,
  KMH,
  openBrake,
  partToe,
  presetRow,
  pressUntilSilent,
  readScene,
  rest,
  type SlowDowns,
  slowDownEnergy,
  slowDownsFor,
  slowDownsWarm,
  standingState,
  toothGives,
  toothLift,
  turnLimits,
  withNewLinings,
  worthKm,
} from '../../../sim/index.ts';
import { brakes } from '../../../ui/scenes.ts';

const built = (scene: unknown): Brake => {
  const read = readScene(scene);
  if (!read.ok) throw new Error('not a brake');
  return read.brake;
};
const van = built(quayVan);
const rig = createRig(van);
const moderate: SlowDowns = { from: 50 * KMH, to: 10 * KMH, between: 90, at: 50 * KMH };
const hard: SlowDowns = { from: 80 * KMH, to: 0, between: 60, at: 80 * KMH };

describe('backing off through the hole', () => {
  // By hand from the scene: at tooth 5 the nose points 70° + 5·2.39° = 81.95°, so 193 N of strut are
  // 193·12·sin 81.95°/27 = 84.9 N at the row, and 0.15 of them 12.7 N beside the spring's 15.
  it('a worn-in van: 15 N of spring and 12.7 of the loaded tooth', () => {
    const lift = toothLift(van, 5, 193);
    expect(lift?.spring).toBe(15);
    expect(lift?.friction).toBeCloseTo(12.7, 1);
    expect(lift?.total).toBeCloseTo(27.7, 1);
  });
  it('a strut stepped hot, of some 1.8 kN, hardly lifts; a broken spring leaves the friction', () => {
    expect(toothLift(van, 5, 1800)?.total).toBeGreaterThan(125);
    expect(toothLift(van, 5, 193, 0)?.total).toBeCloseTo(12.7, 1);
  });
  it('kinds without a toothed lever have none to lift', () => {
    for (const scene of brakes.slice(2)) expect(toothLift(built(scene), 3, 200)).toBeNull();
  });

  // The strut is seated 130 mm over the pins, the linings' middles stand 78 over them, on shoes that
  // turn about those pins: half a tooth's 0.494 mm at each seat is 0.494/2·78/130 = 0.148 at a middle.
  it('a tooth gives 0.15 mm of clearance, as the pins’ arms have it', () => {
    const state = standingState(rig, 'Worn-in');
    const g = toothGives(rig, state);
    expect(g?.clearance).toBeCloseTo((0.494 / 2) * (78 / 130), 2);
    expect(g?.lip).toBeGreaterThan(0);
    expect(g?.pedal).toBeCloseTo(4.04, 1);
    expect(g?.notches).toBeCloseTo(1.64, 1);
  });
  it('nothing is left to give at tooth 0, and two teeth give twice as much', () => {
    expect(toothGives(rig, freshState(van))).toBeNull();
    const state = standingState(rig, 'Worn-in');
    const one = toothGives(rig, state)?.clearance ?? Number.NaN;
    const two = toothGives(rig, state, 2)?.clearance ?? Number.NaN;
    expect(two / one).toBeCloseTo(2, 1);
  });
});

describe('taking apart', () => {
  // Moments about the pin: 170.9 N at 130 mm over 156 mm.
  it('a toe is eased off the strut with 142 N, as Balance has it with a hand at each toe', () => {
    const state = freshState(van);
    const held = openBrake(rig, state).strutForce;
    const by = partToe(van, held);
    expect(by).toBeCloseTo((170.9 * 130) / 156, 0);
    const hands = (limit: number): readonly Hand[] =>
      (['front', 'rear'] as const).map((side): Hand => {
        const { toe } = van.shoes[side];
        const out = side === 'front' ? -1 : 1;
        return {
          on: side,
          at: toe,
          to: [toe[0] + out * 200, toe[1]],
          rate: 5,
          limit,
        };
      });
    const left = (limit: number): number =>
      balance(rig, state, { pressure: 0, turning: 0, drumOff: true, hands: hands(limit) })
        .strutForce;
    expect(left(by - 10)).toBeGreaterThan(5);
    expect(left(by + 12)).toBeLessThan(1);
  });
  it('with every spring off nothing holds the strut', () => {
    for (const scene of brakes) {
      const brake = built(scene);
      const one = createRig(brake);
      const state = freshState(brake);
      const off = (unhooked: number[]) =>
        openBrake(one, {
          ...state,
          condition: { ...state.condition, unhooked, unheld: ['front', 'rear'] },
        }).strutForce;
      expect(off([]), brake.name).toBeGreaterThan(50);
      expect(off(brake.springs.map((_, i) => i)), brake.name).toBeLessThan(0.5);
    }
  });
});

// 0.5 and 30 N·m over the van's tyre of 270 mm, by division.
it('how stiff a wheel may turn, at the tyre: 1.9 and 111 N', () => {
  const { felt, stiff } = turnLimits(van);
  expect(felt).toBeCloseTo(500 / 270, 6);
  expect(stiff).toBeCloseTo(30000 / 270, 6);
});

describe('bedding in by stops', () => {
  // By hand: ½·1150·(13.889² − 2.778²)·0.3/2 = 15 972 J in a brake, over 1564 J/K: 10.2 K.
  it('a slow-down from 50 to 10 km/h warms a drum by 10.2 K', () => {
    expect(slowDownEnergy(van, moderate) / 1000).toBeCloseTo(15972, -1);
    expect(slowDownEnergy(van, moderate) / van.drum.heatCapacity).toBeCloseTo(10.21, 2);
  });
  // Between them 2.5 + 0.12·50 = 8.5 W/K for 90 s: exp(−90·8.5/1564) = 0.6132 of the rise is left, so ten
  // end at 20 + 10.21·(1 − 0.6132¹⁰)/(1 − 0.6132) = 46.2 °C, and never above 46.4.
  it('ten of them end at 46 °C, and a hundred no higher', () => {
    const after = slowDownsWarm(van, moderate, 10).map((r) => r.after);
    expect(after[0]).toBeCloseTo(30.2, 1);
    expect(after[9]).toBeCloseTo(46.2, 1);
    expect(slowDownsWarm(van, moderate, 100).at(-1)?.after).toBeLessThan(46.45);
  });
  // A stop from 40 km/h on each km: 10 648 J. Energy goes with the square of the speed: (80/40)²·200 = 800.
  it('ten are worth 15 km of the duty, two hundred hard stops 800', () => {
    expect(dutyEnergy(van) / 1000).toBeCloseTo(10648, 0);
    expect(worthKm(van, moderate, 10)).toBeCloseTo(15, 2);
    expect(worthKm(van, hard, 200)).toBeCloseTo(800, 6);
    expect(slowDownsFor(van, hard, 800 * KM)).toBeCloseTo(200, 6);
  });
  it('a duty’s descents count with its stops', () => {
    const hills = van.duties.find((d) => d.descents.length > 0);
    expect(hills && dutyEnergy(van, hills)).toBeGreaterThan(dutyEnergy(van));
  });
  // The model's own figures, held: no outside table has this brake.
  it('new linings in a bore of 200.6: 42 % of the leading arc before and after ten, 71 % after 800 km', () => {
    const { lining } = van.shoes.front;
    const linings = { thickness: lining.thicknessNew, groundRadius: lining.groundRadius };
    const set = pressUntilSilent(rig, withNewLinings(rig, linings, 100.3, 2)).state;
    const rows = bedIn(rig, set, [0, worthKm(van, moderate, 10), 800]);
    expect(rows.map((r) => Math.round(100 * r.contactFront))).toEqual([42, 42, 71]);
    expect(rows.map((r) => Math.round(100 * r.contactRear))).toEqual([29, 29, 50]);
    expect(presetRow(rig, set).slidesOn).toBe(true);
    expect(rest(rig, set).strutForce).toBeGreaterThan(100);
  });
});
