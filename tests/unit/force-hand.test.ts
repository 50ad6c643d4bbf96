import { describe, expect, it } from 'vitest';
import { assemble } from '../../sim/balance/assemble.ts';
import { dress, drumAt, workFor } from '../../sim/balance/dress.ts';
import { HoldDown } from '../../sim/balance/forces/hold-down.ts';
import { Piston } from '../../sim/balance/forces/piston.ts';
import { makePistonByHand, pistonByHand } from '../../sim/balance/forces/piston-by-hand.ts';
import type { Acting, Force, Work } from '../../sim/balance/types.ts';
import { type Condition, createRig, freshState, SOUND } from '../../sim/index.ts';
import { onPaper, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * Forces one by one on the first teaching brake, its shoes as the scene has them or turned a little, by hand. Pins
 * at (±16, −78), both shoes with one freedom, their turn: Q is the moment about the pin, counter-clockwise.
 */
function put(
  change: (s: ReturnType<typeof quayScene>) => void = () => {},
  ill: Partial<Condition> = {},
) {
  const scene = quayScene();
  change(scene);
  const brake = onPaper(scene);
  const rig = createRig(brake);
  const d = dress(rig, { ...freshState(brake), condition: { ...SOUND, ...ill } });
  const w = workFor(d);
  const law = { kind: 'slide', mu: 0, sense: 1 } as const;
  const home = d.home.slice();
  const act: Acting = {
    ...{ pressure: 0, cable: 0, drum: drumAt(d, 0), frontLaw: law, rearLaw: law },
    ...{ memory: home, home, strutLength: d.strutLength, strutRest: d.strutRest, shaken: 0 },
  };
  const find = (name: string): Force => {
    const force = w.forces.find((f) => f.name === name);
    if (!force) throw new Error(`${name} is none of ${w.forces.map((f) => f.name).join(', ')}`);
    return force;
  };
  /** Of one force alone, shoes turned so far from the scene's pose, rad. */
  const alone = (name: string, more: Partial<Acting> = {}, turned: readonly number[] = [0, 0]) => {
    const force = find(name);
    assemble(rig, { ...w, forces: [force] }, Float64Array.of(...turned, 0), { ...act, ...more });
    return {
      force,
      w,
      q: [...w.q],
      k: [...w.k],
      outer: [...w.outer],
      moment: [...w.springMoment],
      after: w.after,
    };
  };
  return { alone, find, act };
}

const all = (actual: readonly number[], expected: readonly number[], abs: number, what: string) => {
  expect(actual.length).toBe(expected.length);
  expected.forEach((value, i) => {
    near(actual[i] as number, value, { abs }, `${what} ${i}`);
  });
};

describe('a return spring', () => {
  const UPPER = 'upper return spring';

  it('pulls its shoes together with what it was fitted with', () => {
    // 155 N level, 61 + 78 = 139 over the pins: 21545 N·mm, clockwise on the front shoe.
    const { force, q, outer, moment } = put().alone(UPPER);
    all(outer, [155, 0, -155, 0], 1e-9, 'on');
    all(moment, [-21545, 21545], 1e-6, 'moment');
    all(q, [-21545, 21545, 0], 1e-6, 'Q');
    const [front, rear] = force.arrows();
    expect(front).toMatchObject({ name: UPPER, on: 'front', at: [-58, 61], force: [155, 0] });
    expect(rear).toMatchObject({ name: UPPER, on: 'rear', at: [58, 61], force: [-155, -0] });
    // T²/2k.
    near(force.energy() ?? 0, 155 ** 2 / 16, { rel: 1e-12 }, 'energy');
  });

  it('pulls more by its rate as it is drawn out, less where it is weak, nothing unhooked or slack', () => {
    // Both shoes opened by 0.01 rad: ends at (42, 139) from the pins go out by 1.39 − 42·5e-5 each, and down alike.
    const out = 2 * (139 * Math.sin(0.01) - 42 * (1 - Math.cos(0.01)));
    const pull = (ill: Partial<Condition>, turned: readonly [number, number]) => {
      const { force } = put(() => {}, ill).alone(UPPER, {}, turned);
      return Math.hypot(...(force.arrows()[0]?.force ?? [0, 0]));
    };
    near(pull({}, [0.01, -0.01]), 155 + 8 * out, { abs: 1e-6 }, 'drawn out');
    near(pull({ springFactor: 0.5 }, [0.01, -0.01]), (155 + 8 * out) / 2, { abs: 1e-6 }, 'weak');
    expect(pull({ unhooked: [0] }, [0.01, -0.01])).toBe(0);
    near(pull({ unhooked: [1] }, [0, 0]), 155, { abs: 1e-9 }, 'the other');
    // 155/8 = 19.4 mm nearer it hangs: 0.1 rad inward is 27.8.
    expect(pull({}, [-0.1, 0.1])).toBe(0);
    expect(
      put(() => {}, { unhooked: [0] })
        .alone(UPPER)
        .force.energy(),
    ).toBeNull();
  });

  it('to the plate pulls one shoe alone', () => {
    const { force, outer, moment } = put((s) => {
      s.springs[0] = {
        ...{ name: 'slanting', rate: 8, fitted: 100 },
        ends: [
          { on: 'plate', at: [16, -8] },
          { on: 'rear', at: [46, -48] },
        ],
      };
    }).alone('slanting');
    // By 3 and 4 up to the left: (−60, 80); at (30, 30) from the pin 30·80 + 30·60.
    all(outer, [0, 0, -60, 80], 1e-9, 'on');
    all(moment, [0, 4200], 1e-9, 'moment');
    expect(force.arrows().map((a) => a.on)).toEqual(['rear']);
  });
});

describe('the parking cable', () => {
  const guide = (at: [number, number]) =>
    put((s) => {
      s.parkingLever.cableGuide = at;
    });

  it('draws the hook to its guide, by the lever on its pivot', () => {
    // From (51, −41) by 3 to the left and 4 down: (−120, −160) N; on the rear shoe at (35, 37) from the pin
    // −35·160 + 37·120, on the lever at (5, −109) from the pivot −5·160 − 109·120, which is its sense.
    const { force, q, outer } = guide([21, -81]).alone('parking cable', { cable: 200 });
    all(outer, [0, 0, -120, -160], 1e-9, 'on');
    all(q, [0, -1160, 13880], 1e-6, 'Q');
    expect(force.arrows()).toEqual([
      {
        name: 'parking cable',
        on: 'rear',
        at: [51, -41],
        force: [expect.closeTo(-120, 9), expect.closeTo(-160, 9)],
      },
    ]);
    near(force.energy() ?? 0, 200 * 50, { rel: 1e-12 }, 'energy');
  });

  it('pulls less where its nipple meets the sheath, 5 mm before the guide', () => {
    const near3 = guide([49.2, -38.6]).alone('parking cable', { cable: 200 });
    // 3 left of 5: 120 N by (−3, 4)/5.
    all(near3.outer, [0, 0, -72, 96], 1e-9, 'on');
    near(near3.force.energy() ?? 0, (120 * 3 + 200 * 5) / 2, { rel: 1e-9 }, 'energy');
    all(
      guide([48, -37]).alone('parking cable', { cable: 200 }).outer,
      [0, 0, -120, 160],
      1e-9,
      'five',
    );
  });

  it('stands so near as on a spring of 200 N over 5 mm', () => {
    // The hook at (5, −109) from the pivot, drawn by (−72, 96): −40·(5² + 109²) + 5·72 + 109·96.
    const { k } = guide([49.2, -38.6]).alone('parking cable', { cable: 200 });
    near(k[8] as number, -465416, { abs: 1e-6 }, 'slope of the lever');
  });

  it('does nothing let go', () => {
    const { force, q, outer } = guide([21, -81]).alone('parking cable');
    expect([...q, ...outer].every((v) => v === 0)).toBe(true);
    expect(force.arrows()).toEqual([]);
  });
});

describe('a hold-down', () => {
  /** At home in the scene's pose: at (−82.5, −3.5), (−66.5, 74.5) from the pin. */
  const held = (turn: number, more: Partial<Acting> = {}, ill: Partial<Condition> = {}) => {
    const brake = put((s) => {
      s.shoes.front.holdDown.shakenOff = 0.5;
    }, ill);
    const force = brake.find('front hold-down') as HoldDown;
    const { slot } = force;
    const memory = brake.act.memory.slice();
    memory.set([-82.5, -3.5, 0], slot);
    const found = brake.alone('front hold-down', { memory, home: memory, ...more }, [turn, 0]);
    return { ...found, force, at: [...found.after.subarray(slot, slot + 3)] };
  };

  it('holds as stiff as 5000 N/mm up to its 12 N, then slides', () => {
    // 1e-5 rad move it by (−74.5, −66.5)·1e-5 mm: 3.725 and 3.325 N back, 4.993 N.
    const sticks = held(1e-5);
    all([sticks.force.fx, sticks.force.fy], [3.725, 3.325], 1e-3, 'sticks');
    near(sticks.q[0] as number, -66.5 * 3.325 - 74.5 * 3.725, { abs: 0.1 }, 'Q');
    all(sticks.at, [-82.5, -3.5, 0], 1e-12, 'remembers');
    near(sticks.force.energy() ?? 0, (4.993 * 4.993) / 10000, { rel: 1e-3 }, 'energy');
    // 1e-3 rad are 0.09986 mm: 12 N by (74.5, 66.5)/99.86, and it holds 12/5000 behind.
    const slides = held(1e-3);
    all([slides.force.fx, slides.force.fy], [8.9525, 7.9911], 0.01, 'slides');
    near(Math.hypot(slides.force.fx, slides.force.fy), 12, { rel: 1e-9 }, 'size');
    const [x = 0, y = 0] = slides.at;
    near(Math.hypot(x + 82.5, y + 3.5), 0.09986 - 0.0024, { abs: 1e-5 }, 'went');
    expect(slides.force.energy()).toBeNull();
    expect(slides.force.arrows()).toMatchObject([{ name: 'front hold-down', on: 'front' }]);
  });

  it('loses the part that a turning drum shakes off, and is drawn home a little', () => {
    // Half shaken off of the half that can be: 9 N; and 0.05 N/mm of 0.09986.
    const shaken = held(1e-3, { shaken: 0.5 });
    near(Math.hypot(shaken.force.fx, shaken.force.fy), 9 + 0.05 * 0.09986, { abs: 1e-5 }, 'size');
  });

  it('drawn home from 50 mm off has that in store besides', () => {
    // Held 1e-5 rad from its anchor, home (−30, 40) from there: 0.05 N/mm by (30, −40), less than a µm elsewhere.
    const force = put((s) => {
      s.shoes.front.holdDown.shakenOff = 0.5;
    });
    const hold = force.find('front hold-down') as HoldDown;
    const memory = force.act.memory.slice();
    memory.set([-82.5, -3.5, 0], hold.slot);
    const home = memory.slice();
    home.set([-112.5, 36.5, 0], hold.slot);
    force.alone('front hold-down', { memory, home, shaken: 0.5 }, [1e-5, 0]);
    all([hold.fx, hold.fy], [3.725 - 1.5, 3.325 + 2], 1e-3, 'on');
    near(hold.energy() ?? 0, 62.5 + 4.993 ** 2 / 1e4, { abs: 1e-3 }, 'energy');
  });

  it('notes where it rests, whole again, and nothing of another force', () => {
    const brake = put();
    const hold = brake.find('front hold-down') as HoldDown;
    const { w } = brake.alone('front hold-down');
    const memory = new Float64Array(brake.act.memory.length).fill(5);
    hold.rest(w, new Float64Array(3), memory);
    all([...memory.subarray(hold.slot, hold.slot + 3)], [-82.5, -3.5, 0], 1e-9, 'rests');
    expect(memory.filter((v) => v === 5).length).toBe(memory.length - 3);
  });

  it('that rubs nothing stores nothing, and slides without losing any', () => {
    const brake = put((s) => {
      Object.assign(s.shoes.front.holdDown, { friction: 0, shakenOff: 0 });
    });
    const { force, q } = brake.alone('front hold-down', {}, [1e-3, 0]);
    expect([force.energy(), ...q.map(Math.abs)]).toEqual([0, 0, 0, 0]);
  });

  it('without its spring rubs by half a newton; a groove holds besides until the edge breaks out', () => {
    near(
      Math.hypot(
        held(1e-3, {}, { unheld: ['front'] }).force.fx,
        held(1e-3, {}, { unheld: ['front'] }).force.fy,
      ),
      0.5,
      { rel: 1e-9 },
    );
    near(
      Math.hypot(
        held(1e-3, {}, { unheld: ['rear'] }).force.fx,
        held(1e-3, {}, { unheld: ['rear'] }).force.fy,
      ),
      12,
      { rel: 1e-9 },
    );
    const grooved = held(1e-3, {}, { groove: 30 }).force;
    near(Math.hypot(grooved.fx, grooved.fy), 42, { rel: 1e-9 });
    expect(grooved).toBeInstanceOf(HoldDown);
  });
});

describe('a groove in the pads', () => {
  it('is broken out of once, by an edge that slid, and takes hold again at home', () => {
    const brake = put(() => {}, { groove: 30 });
    const force = brake.find('front hold-down') as HoldDown;
    const { slot } = force;
    const at = (turn: number) => {
      const memory = brake.act.memory.slice();
      memory.set([-82.5, -3.5, 0], slot);
      const { after } = brake.alone('front hold-down', { memory, home: memory }, [turn, 0]);
      const gave = force.gaveWay({ after } as Work, { memory } as Acting);
      return { gave, memory, after };
    };
    // 42 N at 5000 N/mm are 8.4 µm: 1e-5 rad, 1 µm, is held, 1e-3 is not.
    const held = at(1e-5);
    expect([held.gave, held.memory[slot + 2], held.after[slot + 2]]).toEqual([false, 0, 0]);
    const broke = at(1e-3);
    expect([broke.gave, broke.memory[slot + 2], broke.after[slot + 2]]).toEqual([true, 1, 1]);
    // Broken out it slides by its friction alone, and does not break out twice.
    const { memory, after } = broke;
    memory.set([-82.5, -3.5], slot);
    brake.alone('front hold-down', { memory, home: memory }, [1e-3, 0]);
    near(Math.hypot(force.fx, force.fy), 12, { rel: 1e-9 }, 'out');
    expect(force.gaveWay({ after } as Work, { memory } as Acting)).toBe(false);
    force.takeHold(memory);
    expect(memory[slot + 2]).toBe(0);
    brake.alone('front hold-down', { memory, home: memory }, [1e-3, 0]);
    near(Math.hypot(force.fx, force.fy), 42, { rel: 1e-9 }, 'in');
  });
});

describe('a piston on its toe', () => {
  // The front toe at (−27.5, 78), (−11.5, 156) from the pin; bore 19.05 mm.
  const AREA = (Math.PI / 4) * 19.05 ** 2;
  const travelAt = (turn: number) => 11.5 * Math.cos(turn) + 156 * Math.sin(turn) - 11.5;
  const pressed = (
    turn: number,
    pressure: number,
    ill: Partial<Condition> = {},
    cup = { cupFriction: 0, centreSpring: 0 },
  ) => {
    const brake = put((s) => {
      Object.assign(s.cylinder, cup);
    }, ill);
    const force = brake.find('front piston');
    if (!(force instanceof Piston)) throw new Error('no piston');
    const { slot } = force;
    const memory = brake.act.memory.slice();
    memory.set([0, -27.5, 0, 0], slot);
    const found = brake.alone('front piston', { pressure, memory, home: memory }, [turn, 0]);
    return { ...found, force, slot, held: [...found.after.subarray(slot, slot + 4)] };
  };

  it('pushes by pressure and area, whatever its travel', () => {
    const { force, q, outer } = pressed(0, 2);
    near(force.push, 2 * AREA, { rel: 1e-12 }, 'push');
    all(outer, [-2 * AREA, 0, 0, 0], 1e-9, 'on');
    all(q, [2 * AREA * 156, 0, 0], 1e-6, 'Q');
    const out = pressed(1e-3, 2);
    near(out.force.push, 2 * AREA, { rel: 1e-12 }, 'push, out');
    near(out.force.travel, travelAt(1e-3), { abs: 1e-12 }, 'travel');
    near(out.force.energy() ?? 0, -2 * AREA * travelAt(1e-3), { rel: 1e-9 }, 'energy');
  });

  it('less what its cup holds, more by the spring between the cups; and never draws', () => {
    const cup = { cupFriction: 30, centreSpring: 20 };
    // 5e-5 rad are 7.8 µm, 15.6 N of its lip at 2000 N/mm; 1e-4 are 31.2, and it slides.
    const grip = 2000 * travelAt(5e-5);
    const sticks = pressed(5e-5, 1, {}, cup);
    near(sticks.force.push, AREA + 20 - grip, { rel: 1e-9 }, 'sticks');
    const stored = grip ** 2 / 4000 - (AREA + 20) * travelAt(5e-5);
    near(sticks.force.energy() ?? 0, stored, { rel: 1e-9 }, 'energy');
    const slides = pressed(1e-4, 1, {}, cup);
    near(slides.force.push, AREA + 20 - 30, { rel: 1e-12 }, 'slides');
    all(slides.held, [travelAt(1e-4) - 0.015, -27.5, 0, 0], 1e-12, 'held');
    expect(slides.force.energy()).toBeNull();
    near(pressed(1e-4, 1, { cupExtra: 40 }, cup).force.push, AREA + 20 - 2000 * travelAt(1e-4), {
      rel: 1e-9,
    });
    expect(pressed(1e-3, 0, {}, cup).force.push).toBe(0);
  });

  it('rusted in it bears the fluid itself, and stops its toe; what leans on the toe adds', () => {
    const stuck = { pistonStuck: { front: true, rear: false } };
    const behind = pressed(-1e-4, 3, stuck);
    const depth = -travelAt(-1e-4);
    near(behind.force.push, 1e5 * depth, { rel: 1e-9 }, 'stop');
    near(behind.force.energy() ?? 0, (1e5 * depth ** 2) / 2, { rel: 1e-9 }, 'energy');
    expect(pressed(1e-4, 3, stuck).force.push).toBe(0);
    expect(behind.force.standsOff(new Float64Array(99))).toBe(true);
    const lean = pressed(0, 1, { lean: { front: 12, rear: -5 } });
    near(lean.force.push, AREA + 12, { rel: 1e-12 }, 'lean');
  });

  it('in a hand pushes less by what that draws it in; drawn off its toe it stays where it was left', () => {
    const drawn = (pressure: number, inward: number | null, left = [0, -27.5, 0, 0]) => {
      const brake = put();
      const force = brake.find('front piston');
      if (!(force instanceof Piston)) throw new Error('no piston');
      const memory = brake.act.memory.slice();
      const home = memory.slice();
      home.set([0, -27.5, 0, 0], force.slot);
      memory.set(left, force.slot);
      const at = [-27.5, 78] as const;
      const to = [-27.5 + (inward ?? 0), 78] as const;
      const other = {
        on: 'rear piston',
        at: [27.5, 78],
        to: [20, 78],
        rate: 50,
        limit: 99,
      } as const;
      const hand = { on: 'front piston', at, to, rate: 20, limit: 200 } as const;
      const hands = inward === null ? [other] : [other, hand];
      const found = brake.alone('front piston', { pressure, memory, home, hands });
      return { ...found, force, held: [...found.after.subarray(force.slot, force.slot + 4)] };
    };
    // 1 mm inward of its toe: 20 N less.
    const on = drawn(2, 1);
    all([on.force.push, on.force.hand, on.force.behind], [2 * AREA - 20, -20, 0], 1e-9, 'on');
    all(on.outer, [20 - 2 * AREA, 0, 0, 0], 1e-9, 'outer');
    all(on.held, [0, -27.5, 0, 0], 1e-12, 'held');
    // Its slope on the turn: 20 N/mm at 156, and 11.5 mm of the push, which stays level.
    near(on.k[0] as number, -20 * 156 ** 2 - 11.5 * (2 * AREA - 20), { rel: 1e-9 }, 'slope');
    expect(on.force.energy()).toBeNull();
    // Without fluid it follows the hand, 5 mm; and is there yet when that is gone.
    const off = drawn(0, 5);
    all([off.force.push, off.force.hand, off.force.behind], [0, 0, 5], 1e-9, 'off');
    all(off.held, [-5, -27.5, 1, -5], 1e-9, 'left');
    expect(off.force.energy()).toBeNull();
    const stays = drawn(0, null, [-5, -27.5, 1, -5]);
    all([stays.force.push, stays.force.behind], [0, 5], 1e-9, 'stays');
    all(stays.held, [-5, -27.5, 1, -5], 1e-9, 'stays there');
    near(drawn(2, null).force.push, 2 * AREA, { rel: 1e-12 }, 'the hand on the other');
  });

  it('goes along with a rest pose that moves: its cup holds where it is', () => {
    const { force, slot } = pressed(0, 1);
    const home = (x: number) => {
      const memory = new Float64Array(99);
      memory[slot + 1] = x;
      return memory;
    };
    const moved = (loose: number) => {
      const memory = home(-27.5);
      memory.set([1, -27.5, loose, 3], slot);
      expect(force.standsOff(memory)).toBe(loose === 1);
      force.moved(memory, home(-27.5), home(-27.7));
      return [...memory.subarray(slot, slot + 4)];
    };
    // The toe rests 0.2 mm farther out: travel counts from there.
    all(moved(0), [0.8, -27.7, 0, 3], 1e-12, 'on its toe');
    all(moved(1), [0.8, -27.7, 1, 2.8], 1e-12, 'off it');
  });
});

describe('a piston in a hand', () => {
  const found = (about: Partial<Parameters<typeof pistonByHand>[0]>) => {
    const a = { toe: 2, place: 2, anchor: 2, grip: 2000, friction: 0, fluid: 100, hand: null };
    const { place, anchor, push, slope, hand } = pistonByHand(
      { ...a, ...about },
      makePistonByHand(-8),
    );
    return [place, anchor, push, slope, hand];
  };
  const hand = (at: number, limit = 200) => ({ at, rate: 20, limit });

  it('is pushed less on its toe, by spring and limit of the hand', () => {
    all(found({}), [2, 2, 100, 0, 0], 1e-12, 'let go');
    all(found({ hand: hand(1) }), [2, 2, 80, -20, -20], 1e-12, 'inward');
    all(found({ hand: hand(5) }), [2, 2, 160, -20, 60], 1e-12, 'outward');
    all(found({ hand: hand(-10, 50) }), [2, 2, 50, 0, -50], 1e-12, 'all it can');
    all(found({ hand: hand(30, 50) }), [2, 2, 150, 0, 50], 1e-12, 'all it can, out');
    // Its cup bends besides: 1 µm are 2 N.
    all(found({ anchor: 1.999, friction: 10 }), [2, 1.999, 98, -2000, 0], 1e-9, 'cup');
  });

  it('goes off it to where fluid, cup and hand balance, at most until the cups meet', () => {
    // 30 = 20·x.
    all(found({ fluid: 30, hand: hand(0) }), [1.5, 1.5, 0, 0, -30], 1e-9, 'off');
    all(found({ fluid: 30, hand: hand(-20, 50) }), [-8, -8, 0, 0, -50], 1e-9, 'met');
    // Drawn in the cup holds outward: 30 + 10 = 20·x, its anchor 10/2000 farther out.
    const cup = { ...{ toe: 3, place: 3, anchor: 3 }, friction: 10, fluid: 30, hand: hand(0) };
    all(found(cup), [2, 2.005, 0, 0, -40], 1e-9, 'with its cup');
  });

  it('stays there let go, as far as the cup holds it: 5 N bend it by 2.5 µm', () => {
    const left = { toe: 3, place: 1, anchor: 1, friction: 10 };
    all(found({ ...left, fluid: 5 }), [1.0025, 1, 0, 0, 0], 1e-9, 'stays');
    // 15 N carry it to its toe, 5 N beyond what the cup holds.
    all(found({ ...left, fluid: 15 }), [3, 2.995, 5, 0, 0], 1e-9, 'carried');
    all(found({ ...left, toe: 0, fluid: 5 }), [0, 0.005, 15, 0, 0], 1e-9, 'pushed in');
  });
});

describe('a heel on its flat', () => {
  // Upright flats, heels of 6 mm pressed inward on them: 1e5 N/mm, along the flat a fifth of it, friction 0.2.
  const on = (ux: number, uy: number, turn: number, held = 0, slant = 0) => {
    const brake = put((s) => {
      for (const [side, normal] of [
        ['front', 180 - slant],
        ['rear', slant],
      ] as const) {
        const { at } = s.shoes[side].anchor;
        const flat = { kind: 'abutment', at, heelRadius: 6, normal, stiffness: 1e5, friction: 0.2 };
        Object.assign(s.shoes[side], { anchor: flat });
      }
    });
    const { slot } = brake.find('front heel');
    const memory = brake.act.memory.slice();
    memory[slot] = held;
    const found = brake.alone('front heel', { memory }, [ux, uy, turn, 0, 0, 0]);
    return { ...found, q: found.q.slice(0, 3), held: found.after[slot] as number };
  };

  it('is pushed out, and held along it as it slips, by 0.2 of the push at most', () => {
    // 0.01 mm: 1000 N. 4 µm up: 80 N down, 6 mm outward of the heel's centre.
    const sticks = on(0.01, 0.004, 0);
    all(sticks.q, [-1000, -80, -480], 1e-6, 'sticks');
    expect(sticks.held).toBe(0);
    near(sticks.force.energy() ?? 0, (1000 * 0.01 + 80 ** 2 / 2e4) / 2, { rel: 1e-9 }, 'energy');
    expect(sticks.force.arrows()).toMatchObject([{ name: 'front heel', on: 'front' }]);
    const [{ at, force } = { at: [], force: [] }] = sticks.force.arrows();
    all([...at, ...force], [-9.99, -77.996, -1000, -80], 1e-6, 'arrow');
    // Rolled by 1 mrad its lowest point slips by 6 µm.
    all(on(0.01, 0, 0.001).q, [-1000, -120, -720], 1e-6, 'rolls');
    all(on(0.01, 0.004, 0, -0.003).q, [-1000, -20, -120], 1e-6, 'held before');
    // 20 µm would be 400 N: it slides at 200, held 10 µm behind.
    const slides = on(0.01, 0.02, 0);
    all(slides.q, [-1000, -200, -1200], 1e-6, 'slides');
    near(slides.held, -0.01, { abs: 1e-9 }, 'held');
    expect(slides.force.energy()).toBeNull();
    all(on(0.01, -0.02, 0).q, [-1000, 200, 1200], 1e-6, 'slides back');
  });

  it('slants with it: along a flat of 30° as along an upright one', () => {
    // Pressed in by 0.01 along (−cos 30°, sin 30°), slid by s along (−sin 30°, −cos 30°): the same forces there.
    const [c, s] = [Math.cos(Math.PI / 6), 0.5];
    for (const [slip, friction] of [
      [-0.004, 80],
      [0.004, -80],
      [0.02, -200],
      [-0.02, 200],
    ] as const) {
      const { q, force } = on(0.01 * c - slip * s, -0.01 * s - slip * c, 0, 0, 30);
      all(q, [-1000 * c - friction * s, 1000 * s - friction * c, -6 * friction], 1e-6, `${slip}`);
      const [{ at } = { at: [0, 0] as const }] = force.arrows();
      const heel = [-16 + 0.01 * c - slip * s, -78 - 0.01 * s - slip * c] as const;
      all([...at], [heel[0] + 6 * c, heel[1] - 6 * s], 1e-9, 'touches');
    }
  });

  it('has the slope of its force and the force of its energy, sticking, sliding either way, and off', () => {
    for (const slant of [0, 25])
      for (const [ux, uy, turn] of [
        [0.01, 0.003, 1e-4],
        [0.01, 0.03, -2e-4],
        [0.012, -0.03, 3e-4],
        [-0.05, 0.002, 1e-4],
      ] as const) {
        const here = on(ux, uy, turn, 0, slant);
        const scale = [1e-6, 1e-6, 1e-7];
        for (let l = 0; l < 3; l++) {
          const by = [0, 0, 0].map((_, j) => (j === l ? (scale[l] as number) : 0));
          const [a = 0, b = 0, c = 0] = by;
          const up = on(ux + a, uy + b, turn + c, 0, slant);
          const down = on(ux - a, uy - b, turn - c, 0, slant);
          const h = 2 * (scale[l] as number);
          const label = `${slant} ${ux} ${uy} ${l}`;
          for (let j = 0; j < 3; j++) {
            const quotient = ((up.q[j] as number) - (down.q[j] as number)) / h;
            near(here.k[7 * j + l] as number, quotient, { rel: 1e-5, abs: 1 }, `${label} ${j}`);
          }
          const [e, f] = [up.force.energy(), down.force.energy()];
          if (e === null || f === null) continue;
          near((f - e) / h, here.q[l] as number, { rel: 1e-4, abs: 1e-2 }, `${label} energy`);
        }
      }
  });

  it('is free off it', () => {
    const { q, force, held } = on(-0.01, 0.004, 0);
    all(q, [0, 0, 0], 1e-12, 'off');
    expect(force.energy()).toBe(0);
    near(held, -0.004, { abs: 1e-12 }, 'goes along');
  });

  it('rolls where it rests: no force where it stands turned', () => {
    const memory = new Float64Array(99);
    const { force, w } = on(0, 0, 0);
    force.rest?.(w, Float64Array.of(0, 0, 0.1, 0, 0, 0, 0), memory);
    near(memory[force.slot] as number, -0.6, { abs: 1e-12 }, 'rest');
  });
});
