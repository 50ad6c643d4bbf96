import { describe, expect, it } from 'vitest';
import {
  type BrakeState,
  createRig,
  freshState,
  KM,
  type LifeRow,
  lifeAt,
  startState,
  swapShoes,
} from '../../sim/index.ts';
import { DragShoes } from '../../sim/wear/drag-shoes.ts';
import { rowAt } from '../../sim/wear/life-at.ts';
import { PressHeat } from '../../sim/wear/life-heat.ts';
import { Limits } from '../../sim/wear/life-limits.ts';
import { parkingPull } from '../../sim/wear/parking-pull.ts';
import { Plan, wearStiffness } from '../../sim/wear/press-plan.ts';
import { lostVolume } from '../../sim/wear/rebed.ts';
import type { Kind } from '../../sim/wear/schedule.ts';
import { faceGrowth, gathered } from '../../sim/wear/shoe-heat.ts';
import { suits, suitsShoes, wornUnder } from '../../sim/wear/under.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { brake, rig } = quay();
const fresh = freshState(brake);
const filled = (depth: number) => new Float64Array(48).fill(depth);

/** Linings of the first teaching brake (4.5 mm, limit 1.5) worn down to these, its drum to a radius, mm. */
function worn(w: Wearing, front: number, rear: number, drumRadius = 100): Wearing {
  const record = w.record();
  const wear = { front: filled(4.5 - front), rear: filled(4.5 - rear) };
  w.restore({ ...record, state: { ...record.state, wear, drumRadius } });
  return w;
}

describe('lines that wear passes', () => {
  const standing = (front: number, rear: number, radius?: number) =>
    worn(new Wearing(rig, startState(brake)), front, rear, radius);

  it('share of the way: of the drum to 100.5, or of a lining from where it was to 1.5', () => {
    const w = standing(4.5, 4.5);
    const limits = new Limits(brake, w, true);
    near(limits.share(w), 0, { abs: 1e-9 }, 'new');
    near(limits.share(worn(w, 3, 4.5)), 0.5, { abs: 1e-9 }, 'front');
    near(limits.share(worn(w, 4.5, 3.6)), 0.3, { abs: 1e-9 }, 'rear');
    near(limits.share(worn(w, 3, 4.5, 100.4)), 0.8, { abs: 1e-9 }, 'drum');
    // From 2.5 on there is 1 to lose; a lining at its limit has no way left to tell of.
    const late = standing(2.5, 1.5);
    const left = new Limits(brake, late, true);
    near(left.share(worn(late, 2.3, 1.4)), 0.2, { abs: 1e-9 }, 'late');
  });

  it('tells each once, in its side, and what it ends', () => {
    const w = standing(4.5, 4.5);
    const stops = new Limits(brake, w, true);
    const goes = new Limits(brake, w, false);
    expect(stops.take(w)).toEqual([]);
    worn(w, 1.5, 4.5, 100.5);
    const told = [
      { kind: 'lining limit', side: 'front' },
      { kind: 'drum limit', side: null },
    ];
    expect(stops.take(w)).toEqual(told.map((one) => ({ ...one, end: one.kind })));
    expect(goes.take(w)).toEqual(told.map((one) => ({ ...one, end: null })));
    expect(goes.take(w)).toEqual([]);
    expect(goes.gone).toBe(false);
    // The table itself ends every life.
    worn(w, 0, 4.5, 100.5);
    expect(goes.take(w)).toEqual([{ kind: 'table contact', side: 'front', end: 'worn through' }]);
    expect(goes.gone).toBe(true);
    expect(new Limits(brake, w, false).gone).toBe(true);
    // The drum has no thickness that a lump could be cut by: the rear lining's limit is 3 away.
    near(goes.nearest(w), 3, { abs: 1e-9 }, 'nearest');
    expect(goes.overrun(w)).toBe(0);
  });

  it('rivets touch where there are any', () => {
    const riveted = quay((s) => {
      s.shoes.rear.lining = {
        ...s.shoes.rear.lining,
        rivetHeight: 2,
      } as typeof s.shoes.rear.lining;
    });
    const w = new Wearing(riveted.rig, startState(riveted.brake));
    const limits = new Limits(riveted.brake, w, true);
    worn(w, 4.5, 2.1);
    near(limits.nearest(w), 0.1, { abs: 1e-9 }, 'nearest');
    expect(limits.take(w)).toEqual([]);
    worn(w, 1.9, 1.9);
    near(limits.overrun(w), 0.1, { abs: 1e-9 }, 'overrun');
    expect(limits.take(w)).toEqual([{ kind: 'rivet contact', side: 'rear', end: null }]);
    expect(limits.gone).toBe(false);
  });
});

describe('a life between its rows', () => {
  const state = (depth: number, change: Partial<BrakeState>): BrakeState => ({
    ...fresh,
    wear: { front: filled(depth), rear: filled(2 * depth) },
    ...change,
  });
  const row = (distance: number, s: BrakeState) =>
    ({ distance, state: { ...s, distance } }) as unknown as LifeRow;
  const rows = [
    row(10, state(1, { drumRadius: 100.1, temperature: 20, applications: 3, tooth: 1 })),
    row(20, state(2, { drumRadius: 100.3, temperature: 60, applications: 6, tooth: 1 })),
    row(20, state(2, { drumRadius: 100.3, temperature: 60, applications: 6, tooth: 2 })),
    row(40, state(3, { drumRadius: 100.5, temperature: 60, applications: 6, tooth: 2 })),
  ];

  it('the row at or before, after a click the later of its two', () => {
    expect([5, 10, 15, 20, 39, 40, 50].map((at) => rowAt(rows, at))).toEqual([
      -1, 0, 0, 2, 2, 3, 3,
    ]);
    expect(rowAt([], 5)).toBe(-1);
  });

  it('goes on evenly from one to the next, its tooth stays', () => {
    const half = lifeAt(rows, 15);
    expect(half?.wear.front[7]).toBe(1.5);
    expect(half?.wear.rear[7]).toBe(3);
    near(half?.drumRadius ?? 0, 100.2, { abs: 1e-9 }, 'drum');
    expect(half).toMatchObject({ temperature: 40, distance: 15, applications: 5, tooth: 1 });
    near(lifeAt(rows, 25)?.wear.front[0] ?? 0, 2.25, { abs: 1e-12 }, 'a quarter');
  });

  it('holds its ends outside, and has none without rows', () => {
    expect(lifeAt(rows, 5)).toBe(rows[0]?.state);
    expect(lifeAt(rows, 10)).toBe(rows[0]?.state);
    expect(lifeAt(rows, 20)).toBe(rows[2]?.state);
    expect(lifeAt(rows, 99)).toBe(rows[3]?.state);
    expect(lifeAt([], 5)).toBeNull();
  });
});

describe('worn linings and their shoes', () => {
  it('suit rigid or bending ones as they wore; new ones and told depths suit both', () => {
    const wear = { front: filled(0), rear: filled(0.1) };
    const asked = (bending: boolean, change: object) =>
      suitsShoes(bending, { ...fresh, ...change });
    for (const bending of [false, true]) {
      expect(asked(bending, {})).toBe(true);
      expect(asked(bending, { wornBy: 'bending' })).toBe(true);
      expect(asked(bending, { wear, wornBy: 'neither' })).toBe(true);
      expect(asked(bending, { wear, wornBy: 'bending' })).toBe(bending);
      expect(asked(bending, { wear })).toBe(!bending);
      expect(asked(bending, { wear: { front: wear.rear, rear: wear.front } })).toBe(!bending);
    }
  });

  it('are asked of the rig that would bear them, and one worn place is enough', () => {
    const bending = createRig(brake, { flexible: true });
    expect([wornUnder(rig), wornUnder(bending)]).toEqual([undefined, 'bending']);
    const spot = filled(0);
    spot[5] = 0.1;
    for (const wear of [
      { front: spot, rear: filled(0) },
      { front: filled(0), rear: spot },
    ]) {
      const state = { ...fresh, wear };
      expect([suits(rig, state), suits(bending, state)]).toEqual([true, false]);
      const other = { ...state, wornBy: 'bending' as const };
      expect([suits(rig, other), suits(bending, other)]).toEqual([false, true]);
    }
  });

  it('swapped, each keeps its toe end and its glaze', () => {
    const wear = { front: Float64Array.of(1, 2, 3), rear: Float64Array.of(4, 5, 6) };
    const swapped = swapShoes({ ...fresh, wear });
    expect([...swapped.wear.front]).toEqual([6, 5, 4]);
    // What it was given stays as it was.
    expect([...wear.front, ...wear.rear]).toEqual([1, 2, 3, 4, 5, 6]);
    expect([...swapped.wear.rear]).toEqual([3, 2, 1]);
    expect(swapped.film).toBeUndefined();
    const film = { water: 0.1, rust: 0.2, glaze: { front: 0.3, rear: 0.4 } };
    expect(swapShoes({ ...fresh, wear, film }).film).toEqual({
      water: 0.1,
      rust: 0.2,
      glaze: { front: 0.4, rear: 0.3 },
    });
  });

  it('have lost the ring between the new face and the worn one', () => {
    // 110° of 32 mm between 99 and 100: 1.919862·(100² − 99²)/2·32 = 6112.84, and half as deep 3071.8 more.
    const arc = (110 * Math.PI) / 180;
    near(lostVolume(rig, { front: filled(1), rear: filled(0) }), (arc * 199 * 32) / 2, {
      rel: 1e-9,
    });
    near(lostVolume(rig, { front: filled(0), rear: filled(1) }), (arc * 199 * 32) / 2, {
      rel: 1e-9,
    });
    near(
      lostVolume(rig, { front: filled(1), rear: filled(0.5) }),
      (arc * (199 + 0.5 * 199.5) * 32) / 2,
      { rel: 1e-9 },
    );
  });

  it('are soft by wear as E/t·k says, of the one that wears more', () => {
    // 400/1.5·1.2e-8.
    near(wearStiffness(rig), 3.2e-6, { rel: 1e-9 }, 'as the scene has it');
    const other = (change: (s: Parameters<NonNullable<Parameters<typeof quay>[0]>>[0]) => void) =>
      wearStiffness(quay(change).rig);
    near(
      other((s) => {
        s.shoes.rear.lining.modulus = 800;
      }),
      6.4e-6,
      { rel: 1e-9 },
      'rear',
    );
    near(
      other((s) => {
        s.shoes.front.lining.modulus = 800;
      }),
      6.4e-6,
      { rel: 1e-9 },
      'front',
    );
    // Never thinner than half a millimetre.
    near(
      other((s) => {
        s.shoes.front.lining.thicknessMin = 0.1;
      }),
      9.6e-6,
      { rel: 1e-9 },
      'thin',
    );
  });
});

describe('heat from press to press', () => {
  // 1564 J/K; at 36 km/h it loses 2.5 + 0.12·36 = 6.82 W/K: over 100 s e^(−0.436061) = 0.646578 of a rise is left,
  // over 50 s 0.804101.
  const stop = { energy: 15640e3, speed: 10000, length: 0, foot: false } as Kind;
  const cool = (temperature: number) => ({ temperature }) as Wearing;
  const MM = KM;

  it('a stop warms the drum by E/C after it has cooled on its way', () => {
    const heat = new PressHeat(brake, true, 20, 0);
    const w = cool(20);
    heat.warm(w, stop, MM);
    expect([heat.middle, heat.after, heat.factor, heat.hottest, heat.lastAt]).toEqual([
      25,
      30,
      1,
      30,
      MM,
    ]);
    expect(w.temperature).toBe(30);
    heat.warm(w, stop, 2 * MM);
    near(heat.middle, 20 + 6.46578 + 5, { abs: 1e-4 }, 'middle');
    near(w.temperature, 20 + 6.46578 + 10, { abs: 1e-4 }, 'after');
    // At the foot of a hill nothing cools first.
    heat.warm(w, { ...stop, foot: true }, 3 * MM);
    near(w.temperature, 20 + 6.46578 + 20, { abs: 1e-4 }, 'foot');
    heat.park(w, 4 * MM);
    expect([w.temperature, heat.lastAt, heat.rest(w)]).toEqual([20, 4 * MM, 20]);
    near(heat.hottest, 20 + 6.46578 + 20, { abs: 1e-4 }, 'hottest');
    expect([heat.swell, heat.swellAfter]).toEqual([0, 0]);
  });

  it('a descent goes towards its own end, and wears by the table along it', () => {
    // Held at 300 K over the air; from 200 °C: 320 − 120·0.804101 and 320 − 120·0.646578. The wear table goes from
    // 1 at 200 °C to 2 at 300: 1, 1.23508, 1.42411, by Simpson 1.22740.
    const heat = new PressHeat(brake, true, 20, 0);
    const w = cool(200);
    heat.warm(w, { ...stop, length: MM, energy: 300 * 6820 * 100 }, MM);
    near(heat.middle, 223.508, { abs: 1e-3 }, 'middle');
    near(heat.after, 242.411, { abs: 1e-3 }, 'after');
    near(heat.factor, 1.2274, { abs: 1e-4 }, 'factor');
    // After a kilometre on the road first: 20 + 222.411·0.646578 as it begins.
    heat.warm(w, { ...stop, length: MM, energy: 0 }, 3 * MM);
    near(heat.after, 20 + 222.411 * 0.646578 * 0.646578, { abs: 1e-3 }, 'cooled twice');
  });

  it('shoes that warm swell by what they and their linings have, and cool on the way', () => {
    // Shoes of 595.2 J/K that lose 0.7 W/K; linings of 0.5 W/(m·K), 32 × 191.99 mm and 4.5 thick: 1.3652 W/K of both.
    const shoes = { loss: 0.7, liningExpansion: 30e-6 };
    const { brake: warm } = quay((s) => {
      Object.assign(s, { heat: { shoes } });
    });
    const drag = new DragShoes(warm, 20);
    near(drag.between, 1365.2, { abs: 0.1 }, 'between');
    // 100·12e-6·0.94·40 + 4.5·30e-6·60: the lining is between 60 and 100 °C.
    near(drag.growth(100, 60), 0.05322, { abs: 1e-6 }, 'growth');
    // Towards (1.3652·100 + 0.7·20)/2.0652 = 72.884 with 595.2/2.0652 s.
    drag.after(100, 100, 20);
    near(drag.temperature, 35.504, { abs: 1e-3 }, 'held on the drum');
    drag.temperature = 60;
    drag.after(100, null, 20);
    near(drag.temperature, 55.5617, { abs: 1e-3 }, 'free');

    const heat = new PressHeat(warm, true, 20, 0);
    heat.shoes.temperature = 60;
    heat.warm(cool(20), stop, MM);
    near(heat.shoes.temperature, 55.5617, { abs: 1e-3 }, 'after the way');
    // Shoes at 55.5617 and a drum at 25 in the middle, at 30 at the end.
    near(heat.swell, 0.0401136 + 0.0027379, { abs: 1e-6 }, 'swell');
    near(heat.swellAfter, 0.0401136 + 0.0030754, { abs: 1e-6 }, 'swell after');
    heat.warm(cool(20), { ...stop, foot: true }, 2 * MM);
    near(heat.shoes.temperature, 55.5617, { abs: 1e-3 }, 'foot');
    heat.park(cool(20), 3 * MM);
    expect(heat.shoes.temperature).toBe(20);
    // Down a hill the linings lie on the drum: its heat comes in, and the shoes take their part.
    const hill = { ...stop, length: MM, energy: 100 * 6820 * 100 };
    heat.warm(cool(20), hill, 4 * MM);
    expect(heat.shoes.temperature).toBeGreaterThan(20.5);
    expect(heat.after).toBeLessThan(55.34);
    const cold = new DragShoes(brake, 20);
    expect([cold.between, cold.growth(100, 60), cold.patience(100, 20)]).toEqual([0, 0, Infinity]);
    expect(cold.together(100, 0, 1, 1, 20)).toBeNull();
    cold.after(100, 100, 20);
    expect(cold.temperature).toBe(20);
  });

  it('sums and growths that small or large numbers have', () => {
    // (e^x − 1)/x by the engine's own function, which keeps its digits.
    for (const x of [9.9e-4, -9.9e-4, 1.1e-3, 0.5, -3])
      near(gathered(x, 1), Math.expm1(x) / x, { rel: Math.abs(x) < 1e-3 ? 2e-15 : 1e-12 }, `${x}`);
    expect(gathered(0, 7)).toBe(7);
    const steel = { expansion: 12e-6, liningExpansion: 30e-6 };
    near(faceGrowth(100, 4.5, steel, { shoe: 50, lining: 30 }), 0.0564 + 0.00405, { abs: 1e-9 });
  });

  it('a stop wears by the table in its middle', () => {
    const heat = new PressHeat(brake, true, 20, 0);
    heat.warm(cool(245), { ...stop, foot: true }, MM);
    near(heat.factor, 1.5, { abs: 1e-9 });
  });

  it('not followed, the drum is found as it stands', () => {
    const heat = new PressHeat(brake, false, 20, 0);
    const w = cool(250);
    heat.warm(w, stop, MM);
    expect([heat.middle, heat.after, w.temperature]).toEqual([250, 250, 250]);
    near(heat.factor, 1.5, { abs: 1e-9 });
    heat.park(w, 2 * MM);
    expect([w.temperature, heat.rest(w), heat.lastAt]).toEqual([250, 250, 2 * MM]);
  });
});

it('a plan adds up its presses, and means over them', () => {
  const kind = { energy: 5, asked: { by: 'pressure', pressure: 3 } } as Kind;
  const warm = new Wearing(rig, fresh).makeWarm();
  const plan = new Plan(kind, 1, null, warm, warm);
  expect(plan.pressure).toBe(3);
  expect([plan.swell, plan.films]).toEqual([0, undefined]);
  const films = (by: number) => ({
    water: by,
    rust: 2 * by,
    glaze: { front: 3 * by, rear: 4 * by },
  });
  plan.add(10, { middle: 30, after: 40, swell: 0.25, swellAfter: 0.5 }, true, films(0.1));
  plan.add(20, { middle: 50, after: 35, swell: 0.75, swellAfter: 1 }, false, films(0.2));
  const { count, energy, worn: lost, middle, hottest, swellHottest, hot } = plan;
  expect([count, energy, lost, middle, hottest, swellHottest, hot]).toEqual([
    2, 10, 30, 80, 40, 0.5, 5,
  ]);
  expect(plan.swell).toBe(0.5);
  near(plan.films?.water ?? 0, 0.15, { abs: 1e-12 }, 'water');
  near(plan.films?.rust ?? 0, 0.3, { abs: 1e-12 }, 'rust');
  near(plan.films?.glaze.front ?? 0, 0.45, { abs: 1e-12 }, 'front');
  near(plan.films?.glaze.rear ?? 0, 0.6, { abs: 1e-12 }, 'rear');
  plan.clear();
  expect([plan.count, plan.energy, plan.worn, plan.middle, plan.hot]).toEqual([0, 0, 0, 0, 0]);
  expect([plan.swell, plan.swellHottest, plan.films]).toEqual([0, 0, undefined]);
  // One that bears no film counts none.
  plan.add(10, { middle: 30, after: 40, swell: 0.2, swellAfter: 0.4 }, false);
  expect([plan.hottest, plan.hot, plan.films]).toEqual([40, 0, undefined]);
});

it('a pull lets one worn tooth go where the strut bears more than it holds', () => {
  const pulled = (teethHold: number | null, tooth: number, cable = 300) => {
    const state = { ...fresh, tooth, condition: { ...fresh.condition, teethHold } };
    return parkingPull(rig, state, cable);
  };
  const sound = pulled(null, 1);
  // The hook's arm over the notch's is about 109/16: some 2 kN.
  expect(sound.strutForce).toBeGreaterThan(1000);
  expect([sound.lost, sound.clicked, sound.state.tooth]).toEqual([0, 0, 1]);
  const slips = pulled(sound.strutForce - 1, 1);
  expect([slips.lost, slips.state.tooth]).toEqual([1, 0]);
  expect(pulled(sound.strutForce + 1, 1).lost).toBe(0);
  expect(pulled(sound.strutForce, 1).lost).toBe(0);
  expect(pulled(100, 0).lost).toBe(0);
  expect(createRig(brake).hookArm).toBeGreaterThan(100);
});
