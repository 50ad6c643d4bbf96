import { describe, expect, it } from 'vitest';
import { createRig, freshState, KM, lostVolume, type Rig } from '../../sim/index.ts';
import { Drag } from '../../sim/wear/drag.ts';
import { DragShoes } from '../../sim/wear/drag-shoes.ts';
import { cooled, warmed } from '../../sim/wear/heat.ts';
import { LifeDrag, type Touch } from '../../sim/wear/life-drag.ts';
import { PressHeat } from '../../sim/wear/life-heat.ts';
import { warmedBoth } from '../../sim/wear/shoe-heat.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { onPaper, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * A released brake that rubs, where its equations have an end in closed form. A force that is left in the line
 * presses alike however the drum grows: so its friction gives an even power.
 */

type Scene = ReturnType<typeof quayScene>;
type State = ReturnType<typeof freshState>;

/** 36 km/h in mm/s, and the van's wheel: 10000/270 rad/s. */
const SPEED = 10000;
const TURN = SPEED / 270;
const AIR = 20;

/** The quay van whose drum does not grow and whose linings do not wear, a pressure of so many MPa left in its line. */
function held(kept: number, change: (s: Scene) => void = () => {}, drum: object = {}) {
  const scene = quayScene();
  scene.drum.expansion = 0;
  scene.drum.wearRate = 0;
  for (const side of ['front', 'rear'] as const) scene.shoes[side].lining.wearRate = 0;
  change(scene);
  const read = onPaper(scene);
  const brake = { ...read, drum: { ...read.drum, ...drum } };
  const rig = createRig(brake);
  const fresh = freshState(brake);
  const condition = { ...fresh.condition, keptPressure: kept };
  const w = new Wearing(rig, { ...fresh, condition });
  return { w, rig, brake, drag: new Drag(w) };
}

/** The van with a strut some teeth too long: its linings stand inside the drum while that is cold. */
function long(tooth: number, change: (s: Scene) => void = () => {}, state: Partial<State> = {}) {
  const scene = quayScene();
  change(scene);
  const brake = onPaper(scene);
  const rig = createRig(brake);
  const w = new Wearing(rig, { ...freshState(brake, 100.05), tooth, ...state });
  return { w, rig, brake, drag: new Drag(w) };
}

describe('an even power', () => {
  it('heats as one lump does, ϑ_end + (ϑ_0 − ϑ_end)·e^(−t·G/C), and does P·t of work', () => {
    for (const [from, time] of [
      [20, 0.5],
      [20, 100],
      [20, 5000],
      [300, 700],
    ] as const) {
      const { brake, drag, w } = held(1.2, (s) => {
        s.frictionAgainstTemperature = [[20, 1]];
      });
      w.temperature = from;
      const torque = drag.torqueAt(from);
      expect(torque).toBeGreaterThan(20e3);
      const power = TURN * torque;
      const on = drag.drive(time * SPEED, SPEED, AIR);
      const end = warmed(brake, from, power, SPEED, time, AIR);
      near(w.temperature, end, { abs: 5e-3 }, `${time} s`);
      near(on.energy, power * time, { rel: 1e-6 }, 'energy');
      near(on.power, power, { rel: 1e-6 }, 'power');
      near(on.torque, torque, { rel: 1e-6 }, 'torque');
      near(on.hottest, Math.max(from, end), { abs: 5e-3 }, 'hottest');
      expect(on.parts).toBeGreaterThan(0);
      expect(on.parts).toBeLessThan(60);
    }
  });

  it('comes in other air to P/G over that', () => {
    const { drag, w } = held(1.2, (s) => {
      s.frictionAgainstTemperature = [[20, 1]];
    });
    const power = TURN * drag.torqueAt(20);
    drag.drive(2e4 * SPEED, SPEED, 35);
    // G = 2.5 + 0.12 · 36 W/K.
    near(w.temperature, 35 + power / 6820, { abs: 5e-3 });
  });

  it('falls with friction as the table says: the drum settles where it loses as much', () => {
    const { brake, drag, w } = held(2.5);
    const at20 = drag.torqueAt(20);
    const on = drag.drive(3e4 * SPEED, SPEED, AIR);
    near(on.power, 6820 * (w.temperature - AIR), { rel: 1e-3 }, 'balance of heat');
    near(on.torque, drag.torqueAt(w.temperature), { rel: 1e-3 }, 'torque there');
    expect(w.temperature).toBeGreaterThan(220);
    expect(on.torque).toBeLessThan(0.99 * at20);
    // A way by pieces ends alike.
    const other = new Drag(new Wearing(createRig(brake), w.state()));
    near(other.torqueAt(w.temperature), on.torque, { rel: 1e-3 });
  });

  it('heats drum and shoes as two lumps', () => {
    const { brake, drag, w } = held(1.2, (s) => {
      s.frictionAgainstTemperature = [[20, 1]];
      Object.assign(s, { heat: { shoes: { loss: 0.7, expansion: 0 } } });
    });
    const shoes = brake.heat.shoes;
    if (!shoes) throw new Error('shoes that warm');
    const power = TURN * drag.torqueAt(20);
    const lumps = {
      drumCapacity: 1564e3,
      shoesCapacity: shoes.capacity,
      between: new DragShoes(brake, AIR).between,
      drumLoss: 6820,
      shoesLoss: 700,
    };
    const end = warmedBoth(lumps, { drum: 20, shoes: 20 }, power, 400, AIR);
    drag.drive(400 * SPEED, SPEED, AIR);
    near(w.temperature, end.drum, { rel: 0.01 }, 'drum');
    near(drag.shoes, end.shoes, { rel: 0.02 }, 'shoes');
    // For good: P over G + f·G_out, and f of that, f = G_in/(G_in + G_out).
    drag.drive(3e4 * SPEED, SPEED, AIR);
    const f = lumps.between / (lumps.between + 700);
    near(w.temperature - AIR, power / (6820 + 700 * f), { rel: 1e-3 }, 'drum at last');
    near(drag.shoes - AIR, (f * power) / (6820 + 700 * f), { rel: 2e-3 }, 'shoes at last');
  });
});

describe('what is worn off on the way', () => {
  it.each([
    [20, 1, 1],
    [250, 1.5, 0.96],
    [400, 5, 0.68],
  ])(
    'a drum held at %s °C: %s times k·N·s, by a friction of %s times its own',
    (temperature, more, less) => {
      // So much heat in it that nothing changes its temperature.
      const { drag, rig, w } = held(
        1.2,
        (s) => {
          s.drum.expansion = 11e-6;
          s.drum.wearRate = 3e-9;
          for (const side of ['front', 'rear'] as const) s.shoes[side].lining.wearRate = 1.2e-8;
        },
        { heatCapacity: 1e15 },
      );
      w.temperature = temperature;
      const { energy } = drag.drive(5 * KM, SPEED, AIR);
      near(w.temperature, temperature, { abs: 1e-3 }, 'held');
      // Archard: V = k·N·s, and E = mu·N·s; at 400 °C the bore at which it rubs is 0.4 % wider.
      const { wear, drumRadius } = w.state();
      near(
        lostVolume(rig, wear),
        (more * 1.2e-8 * energy) / (0.38 * less),
        { rel: 6e-3 },
        'lining',
      );
      const bore = 2 * Math.PI * 100 * 32 * (drumRadius - 100);
      near(bore, (more * 3e-9 * energy) / (0.38 * less), { rel: 6e-3 }, 'drum');
    },
  );

  it('a drum that does not grow is gone on with in parts as long as any', () => {
    const { drag, rig, w } = held(1.2, (s) => {
      s.frictionAgainstTemperature = [[20, 1]];
      s.wearAgainstTemperature = [[20, 1]];
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.wearRate = 1.2e-8;
    });
    const { energy, parts } = drag.drive(4 * KM, SPEED, AIR);
    near(lostVolume(rig, w.state().wear), (1.2e-8 * energy) / 0.38, { rel: 2e-3 }, 'volume');
    expect(parts).toBeLessThan(300);
  });

  it('is the same in one way and in many, and goes with the way', () => {
    const wears = (s: Scene): void => {
      s.drum.expansion = 11e-6;
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.wearRate = 1.2e-8;
    };
    const driven = (pieces: number): number => {
      const { drag, rig, w } = held(1.2, wears);
      for (let n = 0; n < pieces; n++) drag.drive((40 / pieces) * KM, SPEED, AIR);
      return lostVolume(rig, w.state().wear);
    };
    near(driven(8), driven(1), { rel: 2e-3 });
  });
});

describe('a drum that is hot enough is free of its linings', () => {
  it('cools as any drum until it touches, at the time that its heat takes', () => {
    const { brake, drag, w } = long(3);
    let touch = 20;
    while (drag.rubs(touch)) touch += 0.25;
    expect(touch).toBeGreaterThan(60);
    const from = touch + 100;
    // C/G·ln((ϑ_0 − air)/(ϑ − air)).
    const time = (1564 / 6.82) * Math.log((from - AIR) / (touch - AIR));
    w.temperature = from;
    const free = drag.drive(0.98 * time * SPEED, SPEED, AIR);
    expect(free).toEqual({ energy: 0, torque: 0, power: 0, hottest: from, parts: 0 });
    near(w.temperature, cooled(brake, from, SPEED, 0.98 * time, AIR), { abs: 1e-6 }, 'cooled');
    const on = drag.drive(0.1 * time * SPEED, SPEED, AIR);
    expect(on.energy).toBeGreaterThan(0);
    expect(on.parts).toBeGreaterThan(0);
    // It meets its linings there and is kept from cooling on.
    expect(w.temperature).toBeLessThan(touch + 0.3);
    expect(w.temperature).toBeGreaterThan(cooled(brake, from, SPEED, 1.08 * time, AIR) + 0.5);
  });

  it('in air as warm as it, or warmer than the touch, it never touches', () => {
    const { brake, drag, w } = long(3);
    w.temperature = 250;
    const warm = drag.drive(40 * KM, SPEED, 200);
    expect([warm.energy, warm.parts]).toEqual([0, 0]);
    near(w.temperature, cooled(brake, 250, SPEED, 4000, 200), { abs: 1e-6 }, 'cools');
    w.temperature = 200;
    drag.drive(40 * KM, SPEED, 230);
    near(w.temperature, cooled(brake, 200, SPEED, 4000, 230), { abs: 1e-6 }, 'warms');
  });

  it('without anything that cools it stays as it is', () => {
    const { drag, w } = long(3, (s) => {
      s.drum.cooling = { still: 0, perKmh: 0 };
    });
    w.temperature = 300;
    expect(drag.drive(40 * KM, SPEED, AIR).energy).toBe(0);
    expect(w.temperature).toBe(300);
  });
});

describe('linings that stand inside', () => {
  it('rub with a torque that falls as the drum grows, and settle where heat in is heat out', () => {
    const { drag, w } = long(3, (s) => {
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.wearRate = 0;
      s.drum.wearRate = 0;
    });
    const cold = drag.torqueAt(20);
    expect(drag.torqueAt(40)).toBeLessThan(0.9 * cold);
    const on = drag.drive(20 * KM, SPEED, AIR);
    near(on.power, 6820 * (w.temperature - AIR), { rel: 0.01 }, 'balance of heat');
    near(on.torque, drag.torqueAt(w.temperature), { rel: 0.02, abs: 100 }, 'torque');
    near(on.torque * TURN, on.power, { rel: 1e-9 }, 'power');
    expect(on.hottest).toBeGreaterThanOrEqual(w.temperature);
    // Nothing wears: cold it is as it was.
    near(drag.torqueAt(20), cold, { rel: 1e-9 }, 'cold');
  });

  it('the end of a way tells the power of its last tenth', () => {
    // C·ΔT and what the air takes over the tenth: the same way driven on by another to nine tenths, then by itself.
    const { drag, w } = long(3);
    const other = new Drag(w);
    const start = w.record();
    const whole = drag.drive(60 * SPEED, SPEED, AIR);
    w.restore(start);
    other.drive(54 * SPEED, SPEED, AIR);
    const before = w.temperature;
    const tenth = other.drive(6 * SPEED, SPEED, AIR);
    near(whole.power, tenth.energy / 6, { rel: 0.1 }, 'power');
    const stored = 1564e3 * (w.temperature - before);
    const air = 6820 * ((w.temperature + before) / 2 - AIR) * 6;
    near(tenth.energy, stored + air, { rel: 1e-3 }, 'books');
  });

  it('goes on where it was left as finely as before, in other parts after it has cooled', () => {
    const { drag, w } = long(3);
    const first = drag.drive(20 * KM, SPEED, AIR).parts;
    const on = drag.drive(20 * KM, SPEED, AIR).parts;
    expect(on).toBeLessThan(first / 2);
    w.temperature = 20;
    expect(drag.drive(20 * KM, SPEED, AIR).parts).toBeGreaterThan(on);
  });
});

describe('the drag of a life', () => {
  const lived = (rig: Rig, w: Wearing, followed = false) => {
    const heat = new PressHeat(rig.brake, followed, AIR, w.distance);
    return { heat, drag: new LifeDrag(rig, w, heat) };
  };

  it('tells where a lining begins to touch, once, and where it ceases', () => {
    const { rig, w } = long(0);
    const { drag } = lived(rig, w);
    const free = { torque: 0, power: 0 };
    expect([drag.look(), drag.on, drag.told(20)]).toEqual([null, false, free]);
    w.tooth = 3;
    const touch = drag.look() as Touch;
    expect([touch.kind, drag.on]).toEqual(['drag at rest', true]);
    w.restGap(20);
    expect(touch.gap).toBe(w.leastGap(20));
    expect(touch.gap).toBeLessThan(-0.08);
    const torque = new Drag(w).torqueAt(20);
    near(touch.torque, torque, { rel: 1e-6 }, 'torque');
    near(drag.told(20).torque, torque, { rel: 1e-6 }, 'told');
    expect(drag.told(20).power).toBe(0);
    expect([drag.look(), drag.on]).toEqual([null, true]);
    w.tooth = 0;
    const ends = drag.look() as Touch;
    expect([ends.kind, ends.torque + 0, drag.on, drag.told(20)]).toEqual([
      'drag ends',
      0,
      false,
      free,
    ]);
    expect(ends.gap).toBeGreaterThan(0.1);
  });

  it('begins 0.005 mm inside and ends where nothing is inside', () => {
    // A drum as warm as it stands: 1.1e-3 mm a kelvin.
    const { rig, w } = long(3);
    w.restGap(20);
    const at = (gap: number): void => {
      w.restGap(20);
      w.temperature = 20 + (gap - w.leastGap(20)) / 1.1e-3;
    };
    const { drag } = lived(rig, w);
    const kinds = [0.001, -0.0049, -0.0051, -0.0049, -0.0001, 0.0001, -0.0049, -0.0051].map(
      (gap) => {
        at(gap);
        return [drag.look()?.kind ?? '', drag.on];
      },
    );
    expect(kinds).toEqual([
      ['', false],
      ['', false],
      ['drag at rest', true],
      ['', true],
      ['', true],
      ['drag ends', false],
      ['', false],
      ['drag at rest', true],
    ]);
    // Where heat is followed, of the drum cooled down to the air.
    const cold = lived(rig, w, true).drag.look()?.gap;
    w.restGap(AIR);
    expect(cold).toBe(w.leastGap(AIR));
  });

  it('a sliding shoe is pushed clear of what brushes: there the middle has to be inside', () => {
    const { w, rig } = long(3);
    const shoe = (side: 'front' | 'rear') => ({
      ...rig[side],
      shoe: { ...rig[side].shoe, anchor: { kind: 'abutment' } },
    });
    const slides = { ...rig, front: shoe('front') } as unknown as Rig;
    const { drag } = lived(slides, w);
    for (const [middle, on] of [
      [0.001, false],
      [-0.004, false],
      [-0.006, true],
      [-0.004, false],
    ] as const) {
      w.temperature = 20;
      w.temperature = 20 + (middle - w.restGap(20)) / 1.1e-3;
      drag.look();
      expect(drag.on, `${middle}`).toBe(on);
    }
  });

  it('a force that is left makes it drag with room at rest, if it is enough', () => {
    const { rig, w } = long(0);
    const { condition } = freshState(rig.brake);
    const looked = (change: object) => {
      const state = { ...w.state(), condition: { ...condition, ...change } };
      const { drag } = lived(rig, new Wearing(rig, state));
      return [drag.look(), drag.on];
    };
    expect(looked({ keptPressure: 1.2 })).toEqual([null, true]);
    expect(looked({ keptPressure: 0.05 })).toEqual([null, false]);
    expect(looked({ keptCable: 200 })).toEqual([null, true]);
    expect(looked({ lean: { front: 600, rear: 0 } })).toEqual([null, true]);
    expect(looked({ lean: { front: 0, rear: 600 } })).toEqual([null, true]);
    expect(looked({ lean: { front: 1, rear: 1 } })).toEqual([null, false]);
  });

  it('rolls to where the next press begins; a drum whose heat is not followed is warm by it alone', () => {
    const { rig, w } = long(3);
    const { drag, heat } = lived(rig, w);
    drag.look();
    const only = new Wearing(rig, w.state());
    const same = new Drag(only);
    const driven = same.drive(2 * KM, SPEED, AIR);
    expect(drag.roll(2 * KM, SPEED)).toBeNull();
    expect([w.distance, heat.lastAt, w.temperature]).toEqual([2 * KM, 2 * KM, 20]);
    near(heat.hottest, driven.hottest, { abs: 1e-6 }, 'hottest');
    near(drag.told(20).power, driven.power, { rel: 1e-6 }, 'power');
    const lost = (of: Wearing) => lostVolume(rig, of.state().wear);
    near(lost(w), lost(only), { rel: 1e-6 }, 'worn');
    // Not farther than it is, nor back.
    const before = w.record();
    expect([drag.roll(2 * KM, SPEED), drag.roll(KM, SPEED)]).toEqual([null, null]);
    expect(w.record()).toEqual(before);
    // It goes on as warm as it was left: not as warm as cold once more.
    const again = same.drive(2 * KM, SPEED, AIR);
    drag.roll(4 * KM, SPEED);
    near(drag.told(20).power, again.power, { rel: 1e-6 }, 'goes on');
    expect(w.temperature).toBe(20);
    near(heat.hottest, Math.max(driven.hottest, again.hottest), { abs: 1e-6 }, 'of both');
    // Where it is followed the drum stays warm.
    const other = new Wearing(rig, { ...w.state(), temperature: 30 });
    const followed = lived(rig, other, true);
    followed.drag.look();
    followed.drag.roll(6 * KM, SPEED);
    expect(other.temperature).toBeGreaterThan(40);
  });

  it('cannot be turned where the wheel would slide, nor where a part gives way first', () => {
    const { rig, w } = long(4);
    const { drag, heat } = lived(rig, w);
    drag.look();
    const stuck = drag.roll(2 * KM, SPEED);
    // 0.8 · 0.4 · 1150 · 9.80665 · 270/2 N·mm; a strut of hardened steel bears more than that asks of it.
    expect(stuck?.kind).toBe('seized');
    expect(stuck?.value).toBeGreaterThan(487e3);
    near(stuck?.value ?? 0, new Drag(w).torqueAt(20), { rel: 1e-6 }, 'its torque');
    expect([w.distance, heat.lastAt]).toEqual([0, 0]);
    const weak = long(4, (s) => {
      s.strutPath.lever = { thickness: 3, depth: 10, nose: 12, arm: 27 };
      s.strutPath.yield = 350;
    });
    const soft = lived(weak.rig, weak.w).drag;
    soft.look();
    // 350 MPa on 3 · 10²/6 mm³ over 12 mm.
    const gave = soft.roll(2 * KM, SPEED);
    expect([gave?.kind, weak.w.distance]).toEqual(['gave way', 0]);
    near(gave?.value ?? 0, (350 * 50) / 12, { rel: 1e-9 }, 'nose');
  });
});
