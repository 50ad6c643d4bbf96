import { describe, expect, it } from 'vitest';
import {
  aroundTurn,
  BAR,
  balance,
  boreDiameter,
  climbForceAt,
  createMotion,
  freshState,
  gapsOf,
  type Instant,
  type Motion,
  rest,
  SOUND,
  standingState,
} from '../../sim/index.ts';
import { type Built, quay, tablesQuay } from '../brakes.ts';
import { near } from '../near.ts';

/** One force at a time: a number worked out by hand, and both solvers. */

const torque = (i: Instant): number =>
  Math.abs(i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum);

/** Lets the pressure go over from what it is within a second, then the brake settle. */
function settle(motion: Motion, pressure: number, turning: 1 | 0 | -1 = 1): Instant {
  const from = motion.instant().pressure;
  for (let n = 1; n <= 360; n++) {
    motion.step({ pressure: from + (pressure - from) * Math.min(1, n / 240), turning });
  }
  return motion.instant();
}

/** Arms about the pin of the first teaching brake, mm: toe and strut seat (pins at y −78). */
const TOE = 78 + 78;
const SEAT = 52 + 78;

describe('cup friction', () => {
  // Small enough for the elastic travel of a hard press to turn the cups round: 2F over their stiffness.
  const F = 10;
  const built = quay((s) => {
    s.cylinder.cupFriction = F;
  });
  const push = 2 * built.area;

  it('takes from the push going out and gives to it coming back', () => {
    const motion = createMotion(built.rig, built.state);
    const up = settle(motion, 2);
    near(up.shoes.front.pistonForce, push - F, { rel: 1e-6 }, 'going out');
    settle(motion, 8);
    const down = settle(motion, 2);
    near(down.shoes.front.pistonForce, push + F, { rel: 1e-6 }, 'coming back');
    // A brake's torque goes with the force left on its toes (shoe factors do not depend on it): the
    // loop is as wide as twice the friction.
    const left = up.shoes.front.toeForce;
    near(torque(down) / torque(up), (left + 2 * F) / left, { rel: 0.005 }, 'loop');
  });

  it('balance presses from rest: as motion going out', () => {
    const b = balance(built.rig, built.state, { pressure: 2, turning: 1 });
    near(b.shoes.front.pistonForce, push - F, { rel: 1e-6 }, 'push');
    const m = settle(createMotion(built.rig, built.state), 2);
    near(torque(m), torque(b), { rel: 1e-3 }, 'torque');
  });

  it('a sluggish piston is the same friction, in the state', () => {
    const van = quay();
    const sluggish = { ...van.state, condition: { ...SOUND, cupExtra: F } };
    const b = balance(van.rig, sluggish, { pressure: 2, turning: 1 });
    near(b.shoes.rear.pistonForce, push - F, { rel: 1e-6 }, 'push');
  });

  it('the spring between the cups pushes with what it has', () => {
    const sprung = quay((s) => {
      s.cylinder.centreSpring = 25;
    });
    const b = balance(sprung.rig, sprung.state, { pressure: 2, turning: 1 });
    near(b.shoes.front.pistonForce, push + 25, { rel: 1e-9 }, 'push');
  });
});

describe('a groove in the pads', () => {
  const press = { pressure: 4, turning: 1 } as const;
  /** The front hold-down beside its pin, or above it: a turn moves it up and down, or across. */
  const at = (place: readonly [number, number]) =>
    quay((s) => {
      for (const [side, x] of [
        ['front', 1],
        ['rear', -1],
      ] as const) {
        const [px, py] = s.shoes[side].anchor.at as [number, number];
        const hold = [px + x * place[0], py + place[1]] as [number, number];
        s.shoes[side].holdDown = { at: hold, friction: 5, shakenOff: 0 };
      }
    });
  const grooved = (built: Built, groove: number): Instant =>
    balance(built.rig, { ...built.state, condition: { ...SOUND, groove } }, press);
  // Half the turn of the front shoe below the level of its pin, so that it goes straight up or down.
  const level = at([-34, 0]);
  const turn =
    grooved(level, 0).shoes.front.pose.phi - rest(level.rig, level.state).shoes.front.pose.phi;
  const start = rest(level.rig, level.state).shoes.front.pose.phi;
  const tilt = -start - turn / 2;

  for (const [name, place] of [
    ['up and down', [-34 * Math.cos(tilt), -34 * Math.sin(tilt)]],
    ['across', [0, 45]],
  ] as const) {
    it(`holds a shoe that would slide ${name} until it breaks out, then no more`, () => {
      const built = at(place);
      const free = grooved(built, 0);
      const before = rest(built.rig, built.state).shoes.front.holdDown.at;
      const moved = free.shoes.front.holdDown.at.map((v, i) => Math.abs(v - (before[i] as number)));
      const [along, aside] = name === 'across' ? [0, 1] : [1, 0];
      expect(moved[along]).toBeGreaterThan(0.03);
      if (name !== 'across') expect(moved[aside]).toBeLessThan(1e-6);
      // 5000 N/mm against the 0.04 mm and more that the shoe moves there: 60 N is passed, 5 kN is not.
      near(torque(grooved(built, 60)), torque(free), { rel: 1e-9 }, 'broken out');
      expect(torque(grooved(built, 5000))).toBeLessThan(0.95 * torque(free));
      const motion = createMotion(built.rig, {
        ...built.state,
        condition: { ...SOUND, groove: 60 },
      });
      near(torque(settle(motion, 4)), torque(free), { rel: 1e-3 }, 'in time');
    });
  }
});

it('a tooth that drops in under the pedal puts no shoe back into its groove; its way home does', () => {
  const { rig } = quay();
  // A tooth short, so that a press steps: the shoes are out on the drum then, and no groove is there.
  const clickedOnce = standingState(rig, 'Just clicked');
  const state = { ...clickedOnce, tooth: clickedOnce.tooth - 1 };
  const motion = createMotion(rig, { ...state, condition: { ...SOUND, groove: 60 } });
  const broke = (): (number | undefined)[] => {
    const { memory } = motion.snapshot();
    return [memory['front hold-down']?.[2], memory['rear hold-down']?.[2]];
  };
  const press = { pressure: 4, turning: 1 } as const;
  let clicked = 0;
  for (let n = 0; n < 480 && clicked === 0; n++) clicked = motion.step(press).clicked;
  expect(clicked).toBe(1);
  expect(broke()).toEqual([1, 1]);
  for (let n = 0; n < 480; n++) motion.step(press);
  expect(broke()).toEqual([1, 1]);
  const free = createMotion(rig, { ...state, tooth: motion.tooth });
  near(torque(motion.instant()), torque(settle(free, 4)), { rel: 1e-3 }, 'as without a groove');
  for (let n = 0; n < 480; n++) motion.step({ pressure: 0, turning: 1 });
  expect(broke()).toEqual([0, 0]);
});

describe('springs', () => {
  const ends = (front: readonly [number, number], plate: readonly [number, number]) => [
    { on: 'front', at: [...front] },
    { on: 'plate', at: [...plate] },
  ];
  const mirrored = ([x, y]: readonly [number, number]): [number, number] => [-x, y];

  it('to the backing plate: the strut carries its moment about the pin', () => {
    const [hole, peg] = [
      [-58, 61],
      [-30, 61],
    ] as const;
    const built = quay((s) => {
      s.shoes.front.holdDown = { ...s.shoes.front.holdDown, friction: 0, shakenOff: 0 };
      s.shoes.rear.holdDown = { ...s.shoes.rear.holdDown, friction: 0, shakenOff: 0 };
      s.springs = [
        { name: 'front spring', ends: ends(hole, peg), rate: 0.001, fitted: 155 },
        {
          name: 'rear spring',
          ends: ends(mirrored(hole), mirrored(peg)).map((e) => ({
            ...e,
            on: e.on === 'front' ? 'rear' : e.on,
          })),
          rate: 0.001,
          fitted: 155,
        },
      ] as typeof s.springs;
    });
    // 155 N level at 61 + 78 = 139 mm over the pin; the strut level at 130 mm.
    near(rest(built.rig, built.state).strutForce, (155 * 139) / SEAT, { rel: 0.005 }, 'strut');
    for (const turning of [1, -1] as const) {
      const m = settle(createMotion(built.rig, built.state), 4, turning);
      const b = balance(built.rig, built.state, { pressure: 4, turning });
      near(m.shoes.front.torqueOnDrum, b.shoes.front.torqueOnDrum, { rel: 1e-3 }, 'front');
      // The climbing lever's 33 N on its first tooth go the same way.
      const climb = climbForceAt(built.brake, 0, 1) * SEAT;
      near(
        b.shoes.front.toeForce,
        4 * built.area - (155 * 139 + climb) / TOE,
        { rel: 0.003 },
        'toe',
      );
    }
  });

  it('pull, never push: one that hangs slack does nothing', () => {
    const slack = quay((s) => {
      const [upper, lower] = s.springs;
      if (!upper || !lower) throw new Error('two springs');
      // Half a newton at 10 N/mm is gone when the toes come together by a twentieth of a millimetre.
      s.springs = [{ ...upper, rate: 10, fitted: 0.5 }, lower];
      s.adjuster.lengthAtZero -= 1;
    });
    expect(rest(slack.rig, slack.state).springs[0]?.force).toBe(0);
  });
});

describe('a lever that climbs its tooth', () => {
  const CLIMB = 60;
  const before = (built: Built) => standingState(built.rig, 'Before a click');
  const plain = tablesQuay();
  const sprung = tablesQuay((s) => {
    Object.assign(s.adjuster, { climbForce: CLIMB });
  });

  it('pulls the seats together: the toes lose its moment, in both solvers', () => {
    const state = before(plain);
    const without = balance(plain.rig, state, { pressure: 4, turning: 1 });
    const b = balance(sprung.rig, state, { pressure: 4, turning: 1 });
    expect(b.climb).toBeGreaterThan(0.5);
    expect(b.climb).toBeLessThan(1);
    // Torque goes with what pushes the toes: the pull at the seats takes its moment from it.
    const left = without.shoes.front.toeForce;
    const pull = (CLIMB * SEAT) / TOE;
    near(torque(b) / torque(without), (left - pull) / left, { rel: 0.003 }, 'torque');
    const m = settle(createMotion(sprung.rig, state), 4);
    near(torque(m), torque(b), { rel: 1e-3 }, 'torque');
    near(m.climb, b.climb, { abs: 1e-3 }, 'climb');
    expect(m.tooth).toBe(state.tooth);
  });

  it('does nothing while the seats stay within the lost motion', () => {
    const state = freshState(sprung.brake);
    const low = 0.52;
    const b = balance(sprung.rig, state, { pressure: low, turning: 1 });
    expect(b.separation - b.strutLength).toBeLessThan(sprung.brake.adjuster.lostMotion);
    near(
      torque(b),
      torque(balance(plain.rig, state, { pressure: low, turning: 1 })),
      { abs: 1e-6 },
      'torque',
    );
  });
});

describe('pressure that stays in the line', () => {
  // Teaching tables: new, 4 bar: strut still clamped with 34 N; 6 bar: 5 N·m; 8 bar: 18 N·m.
  const van = tablesQuay();
  const at = (bar: number) => {
    const kept = { ...van.state, condition: { ...SOUND, keptPressure: bar * BAR } };
    const b = balance(van.rig, kept, { pressure: 0, turning: 1 });
    const m = settle(createMotion(van.rig, kept), 0);
    near(torque(m), torque(b), { abs: 10 }, `both solvers at ${bar} bar`);
    return b;
  };
  it('below the threshold it only unloads the strut, above it drags', () => {
    near(at(4).strutForce, 34, { abs: 1 }, 'strut at 4 bar');
    near(torque(at(4)), 0, { abs: 1e-6 }, 'torque at 4 bar');
    near(torque(at(6)) / 1000, 5, { abs: 0.6 }, 'torque at 6 bar');
    near(torque(at(8)) / 1000, 18, { abs: 0.6 }, 'torque at 8 bar');
  });
});

describe('a drum out of round', () => {
  const van = quay();
  const turn = (condition: Partial<typeof SOUND>) =>
    aroundTurn(
      van.rig,
      { ...van.state, condition: { ...SOUND, ...condition } },
      { pressure: 0, turning: 1 },
    );
  const swing = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

  it('off centre: one shoe gains what the other loses, once a turn; the gauge sees nothing', () => {
    const e = 0.12;
    const points = turn({ offCentre: e });
    near(swing(points.map((p) => p.frontGap)), 2 * e, { rel: 0.02 }, 'front gap');
    // A circle set aside is the same circle: across it the gaps' sum stays (to the sagitta e²/2R).
    near(swing(points.map((p) => p.frontGap + p.rearGap)), 0, { abs: 0.002 }, 'sum');
    const off = { ...van.state, condition: { ...SOUND, offCentre: e } };
    near(
      boreDiameter(van.rig, off, 0.3),
      boreDiameter(van.rig, off, 1.9),
      { abs: 1e-9 },
      'two-point gauge',
    );
  });

  it('oval: both gaps swing together, twice a turn; the gauge sees four times the amplitude', () => {
    const e = 0.12;
    const points = turn({ oval: e });
    const sums = points.map((p) => p.frontGap + p.rearGap);
    near(swing(sums), 4 * e, { rel: 0.02 }, 'sum');
    const half = sums.length / 2;
    sums.slice(0, half).forEach((s, i) => {
      near(s, sums[i + half] as number, { abs: 1e-6 }, 'again after half a turn');
    });
    const oval = { ...van.state, condition: { ...SOUND, oval: e } };
    // D = 2(R + e cos 2θ): from 2(R + e) to 2(R − e).
    near(
      boreDiameter(van.rig, oval, 0) - boreDiameter(van.rig, oval, Math.PI / 2),
      4 * e,
      { rel: 1e-9 },
      'two-point gauge',
    );
  });
});

describe('a lining that does not fit', () => {
  /** Share of the arc that bears, and whether its middle and its ends do, at a light press. */
  function contact(ground: number) {
    const built = quay((s) => {
      for (const side of ['front', 'rear'] as const) s.shoes[side].lining.groundRadius += ground;
    });
    // A drum as much larger or smaller as the linings were ground small or large.
    const p = balance(built.rig, built.state, { pressure: 1, turning: 1 }).shoes.front.pressure;
    const n = p.length;
    return {
      share: p.filter((v) => v > 0).length / n,
      middle: (p[n / 2] as number) > 0,
      ends: (p[1] as number) > 0 || (p[n - 2] as number) > 0,
    };
  }
  it('ground smaller than the drum it bears in the middle, larger at its ends', () => {
    const small = contact(-0.6);
    expect(small.middle).toBe(true);
    expect(small.ends).toBe(false);
    expect(small.share).toBeLessThan(0.7);
    const large = contact(0.3);
    expect(large.middle).toBe(false);
    expect(large.ends).toBe(true);
    const fit = contact(0);
    expect(fit.share).toBe(1);
  });

  it('a drum grown by heat opens both gaps by its growth', () => {
    const { rig, state, brake } = quay();
    const gap = (temperature: number): number => {
      const i = rest(rig, { ...state, temperature });
      return (
        gapsOf(brake.shoes.front, i.shoes.front).centre +
        gapsOf(brake.shoes.rear, i.shoes.rear).centre
      );
    };
    // ΔR = R·α·Δϑ = 100 · 11e-6 · 200 = 0.22 mm at each shoe (linear expansion).
    near(gap(220) - gap(20), 2 * 0.22, { abs: 0.002 }, 'growth');
  });
});
