import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import { assemble } from '../../sim/balance/assemble.ts';
import { dress, drumAt, noDrum, workFor } from '../../sim/balance/dress.ts';
import { makePull, pullOf } from '../../sim/balance/forces/hands.ts';
import { makeForces, memorySize } from '../../sim/balance/forces/list.ts';
import { faceAt, makeRestRig, reach, seatsApart, turnPair } from '../../sim/balance/rest.ts';
import { atSpeed, type Mus, meanPressure, settleFriction } from '../../sim/balance/rubbing.ts';
import type { Acting, Hand, ShoeRig } from '../../sim/balance/types.ts';
import { condense } from '../../sim/brake/flex.ts';
import { stopStiffness } from '../../sim/brake/stop-contacts.ts';
import { roundDrum } from '../../sim/contact/drum.ts';
import { type BrakeState, createRig, freshState, type Rig, SOUND } from '../../sim/index.ts';
import { mustRead, onPaper, quay, quayScene } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * What the solver of the brake is made of, piece by piece, on the first teaching brake: pins at (±16, −78), drum of
 * 100 mm, linings over 110°, 32 mm wide. By hand, at the scene's pose or turned a little from it.
 */

const all = (actual: readonly number[], expected: readonly number[], abs: number, what: string) => {
  expect(actual.length, what).toBe(expected.length);
  expected.forEach((value, i) => {
    near(actual[i] as number, value, { abs }, `${what} ${i}`);
  });
};

const DEG = Math.PI / 180;
const FACE = 32 * 100 * 110 * DEG;

describe('friction that hangs on pressure', () => {
  const { rig } = quay();
  const law = (pressureExponent: number) =>
    ({
      pressureExponent,
      speedExponent: 0.5,
      atPressure: 0.5,
      atSpeed: 1000,
      source: 'test',
    }) as const;
  const bear = ({ rub }: ShoeRig, pressure: number) => {
    rub.normal.fill((pressure * FACE) / 48);
  };

  it('asks for all that presses on a lining over its new face', () => {
    bear(rig.front, 3);
    near(meanPressure(rig, rig.front), 3, { rel: 1e-12 });
    rig.front.rub.normal.fill(0, 0, 24);
    near(meanPressure(rig, rig.front), 1.5, { rel: 1e-12 }, 'on a half of it');
  });

  it('goes with the root of the speed where that is told so', () => {
    const base = { front: 0.4, rear: 0.2 };
    const found = atSpeed(law(1), base, 4000);
    all([found.front, found.rear], [0.8, 0.4], 1e-12, 'mu');
    expect(atSpeed(law(1), base, undefined)).toBe(base);
  });

  /** Pressures by the frictions solved with. @returns all frictions that were asked */
  const settled = (exponent: number, press: (mus: Mus) => readonly [number, number]) => {
    const asked: Mus[] = [];
    const base = { front: 0.4, rear: 0.3 };
    const found = settleFriction(rig, law(exponent), base, (mus) => {
      asked.push(mus);
      const [front, rear] = press(mus);
      bear(rig.front, front);
      bear(rig.rear, rear);
    });
    const { front, rear } = asked.at(-1) as Mus;
    return { found, front, rear, rounds: asked.length };
  };

  it('is at once what pressures ask for that do not hang on it', () => {
    // 2 MPa is four times, 0.5 as it is told: 4^−0.2 and 1.
    const { found, front, rear, rounds } = settled(0.8, () => [2, 0.5]);
    expect(found).toBe(true);
    all([front, rear], [0.4 * 4 ** -0.2, 0.3], 1e-12, 'mu');
    expect(rounds).toBe(2);
    const other = settled(0.8, () => [0.5, 2]);
    all([other.front, other.rear], [0.4, 0.3 * 4 ** -0.2], 1e-12, 'the other way');
  });

  it('drives pressure up that goes with it: r = (4·r)^0.2 is r = √√4, by secants', () => {
    const { found, front, rear, rounds } = settled(1.2, ({ front: mu }) => [(2 * mu) / 0.4, 2]);
    expect(found).toBe(true);
    near(front, 0.4 * Math.SQRT2, { rel: 1e-8 }, 'front');
    near(rear, 0.3 * 4 ** 0.2, { rel: 1e-8 }, 'rear');
    // From one to the next without secants a fifth of what is off would be left: thirteen rounds.
    expect(rounds).toBeLessThan(9);
  });

  it('runs away from where more of it asks for more yet, up to where the law is level', () => {
    // r = (1.1·r^6)^0.2 holds at 1/1.1 too, but from 1 on asks for more than it has: until ten times, 10^0.2.
    const { found, front } = settled(1.2, ({ front: mu }) => [0.55 * (mu / 0.4) ** 6, 0.5]);
    expect(found).toBe(true);
    near(front, 0.4 * 10 ** 0.2, { rel: 1e-8 });
  });

  it('is not found where it comes to no end', () => {
    let n = 0;
    const { found, rounds } = settled(1.2, () => [n++ % 2 === 0 ? 1 : 2, 0.5]);
    expect([found, rounds]).toEqual([false, 60]);
  });
});

/** One force alone on the first teaching brake or another, shoes turned so far from the scene's pose, rad. */
function alone(
  name: string,
  turned: readonly number[],
  more: (slot: number, home: Float64Array) => Partial<Acting>,
  change: (s: ReturnType<typeof quayScene>) => void = () => {},
) {
  const scene = quayScene();
  change(scene);
  const rig = createRig(onPaper(scene));
  const d = dress(rig, freshState(rig.brake));
  const w = workFor(d);
  const force = w.forces.find((f) => f.name === name);
  if (!force) throw new Error(`no ${name}`);
  const home = d.home.slice();
  const law = { kind: 'slide', mu: 0, sense: 1 } as const;
  const act: Acting = {
    ...{ pressure: 0, cable: 0, drum: drumAt(d, 0), frontLaw: law, rearLaw: law },
    ...{ memory: home, home, strutLength: d.strutLength, strutRest: 0, shaken: 0 },
    ...more(force.slot, home),
  };
  assemble(rig, { ...w, forces: [force] }, Float64Array.from(turned), act);
  return { rig, w, d, force, q: [...w.q], k: [...w.k], outer: [...w.outer] };
}

describe('a hand', () => {
  it('draws by its spring up to its limit, and stores what it has drawn', () => {
    const pull = (limit: number) => {
      const hand: Hand = { on: 'front', at: [0, 0], to: [13, 24], rate: 20, limit };
      const { x, y, xx, xy, yy, energy } = pullOf(hand, 10, 20, makePull());
      return [x, y, xx, xy, yy, energy];
    };
    // 5 mm off by (3, 4): 100 N.
    all(pull(200), [60, 80, -20, 0, -20, 250], 1e-12, 'within');
    all(pull(100), [60, 80, -20, 0, -20, 250], 1e-12, 'just');
    // 50 N round 5 mm: 10 N/mm across, none along. 50·5 − 50²/40.
    all(pull(50), [30, 40, -6.4, 4.8, -3.6, 187.5], 1e-12, 'all it can');
  });

  const held = (...hands: Hand[]) => alone('hand', [0, 0, 0], () => ({ hands }));
  const hand = (on: Hand['on'], [x, y]: readonly [number, number]): Hand => ({
    ...{ on, at: [x, y], to: [x + 3, y + 4] },
    ...{ rate: 20, limit: 200 },
  });

  it('on the strut is borne by its seats, by the lever law', () => {
    // A quarter of 104.2 from the front seat: 45 and 60 N there, at (−43.2, 130) from the pin; 15 and 20 at the
    // rear one, (29, 130) from its pin and (−1, −16) from the lever's pivot, whose sense is clockwise.
    const { q, outer, force } = held(hand('strut', [-59.2 + 26.05, 52]));
    all(outer, [45, 60, 15, 20], 1e-9, 'on');
    const moments = [-43.2 * 60 - 130 * 45, 29 * 20 - 130 * 15, -(-1 * 20 + 16 * 15)];
    all(q, moments, 1e-6, 'Q');
    const [front, rear] = force.arrows();
    expect([front?.name, front?.on, rear?.name, rear?.on]).toEqual([
      'hand',
      'front',
      'hand',
      'rear',
    ]);
    all([...(front?.at ?? []), ...(front?.force ?? [])], [-59.2, 52, 45, 60], 1e-9, 'front');
    all([...(rear?.at ?? []), ...(rear?.force ?? [])], [45, 52, 15, 20], 1e-9, 'rear');
    near(force.energy() ?? 0, 250, { rel: 1e-9 }, 'energy');
  });

  it('beside a strut that slants holds it where it is nearest', () => {
    // From (−59.2, 40) to (40.8, 65): a place 3 to the right and 12 down of three fifths of it is square to it.
    const off = { on: 'strut', at: [0.8 + 3, 55 - 12], to: [3.8, 53] } as const;
    const { outer } = alone(
      'hand',
      [0, 0, 0],
      () => ({ hands: [{ ...off, rate: 20, limit: 100 }] }),
      (s) => {
        s.shoes.front.strutSeat = [-59.2, 40];
        s.shoes.rear.strutSeat = [40.8, 65];
      },
    );
    // It pulls from three fifths of the strut, (0.8, 55), to (3.8, 53): by 3 and −2, 72.1 N.
    all(outer, [0.4 * 60, 0.4 * -40, 0.6 * 60, 0.6 * -40], 1e-6, 'on');
  });

  it('off the strut’s end holds the seat there', () => {
    all(held(hand('strut', [-80, 52])).outer.slice(2), [0, 0], 1e-12, 'before it');
    all(held(hand('strut', [80, 52])).outer.slice(0, 2), [0, 0], 1e-12, 'behind it');
  });

  it('on a part is borne by that; one on a piston, by that alone', () => {
    const on = (part: Hand['on'], at: readonly [number, number]) => held(hand(part, at)).outer;
    all(on('front', [-60, 0]), [60, 80, 0, 0], 1e-9, 'front');
    all(on('rear', [60, 0]), [0, 0, 60, 80], 1e-9, 'rear');
    const lever = held(hand('lever', [51, -41]));
    all(lever.outer, [0, 0, 60, 80], 1e-9, 'lever');
    // (35, 37) from the pin, (5, −109) from the pivot.
    all(lever.q, [0, 35 * 80 - 37 * 60, -(5 * 80 + 109 * 60)], 1e-6, 'lever Q');
    const piston = held(hand('front piston', [-27.5, 78]), hand('rear piston', [27.5, 78]));
    all(piston.outer, [0, 0, 0, 0], 1e-12, 'piston');
    expect([piston.force.arrows().length, piston.force.energy()]).toEqual([0, 0]);
    const two = held(hand('front', [-60, 0]), hand('front', [-60, 20]));
    all([...two.outer, two.force.energy() ?? 0], [120, 160, 0, 0, 500], 1e-9, 'two');
  });

  it('let go is gone', () => {
    const { rig, w, d, force } = held(hand('front', [-60, 0]));
    const law = { kind: 'slide', mu: 0, sense: 1 } as const;
    const act = { pressure: 0, cable: 0, drum: d.drum, frontLaw: law, rearLaw: law } as const;
    const memory = { memory: d.home, home: d.home, strutLength: 103.2, strutRest: 0, shaken: 0 };
    assemble(rig, { ...w, forces: [force] }, new Float64Array(3), { ...act, ...memory });
    expect([...w.q, force.arrows().length, force.energy()]).toEqual([0, 0, 0, 0, 0]);
  });
});

describe('the stops of shoes whose drum is off', () => {
  const off = (slot: number, home: Float64Array): Partial<Acting> => {
    // Hold-downs at home in the scene's pose.
    home.set([-82.5, -3.5, 82.5, -3.5], slot);
    return { drumOff: true };
  };
  const bears = (force: ReturnType<typeof alone>['force'], kind: string) =>
    force.arrows().filter((a) => a.name === `stop: ${kind}`);

  it('are not asked under the drum', () => {
    const { force, q } = alone('stop', [-0.05, 0.05, 0], () => ({}));
    expect([...q.map(Math.abs), force.arrows().length, force.energy()]).toEqual([0, 0, 0, 0, 0]);
  });

  it('the cylinder’s end stops a toe, its boot of 2 mm between', () => {
    // Half of 36 and 2 are 20 mm; the toe, (−11.5, 156) from the pin, turned inward by 0.05.
    const out = 16 + 11.5 * Math.cos(0.05) - 156 * Math.sin(0.05);
    const up = 156 * Math.cos(0.05) + 11.5 * Math.sin(0.05);
    const { rig, force, q, outer } = alone('stop', [-0.05, 0, 0], off);
    const push = stopStiffness(rig.brake, 'front', 'cylinder') * (20 - out);
    expect(20 - out).toBeGreaterThan(0.3);
    all(outer, [-push, 0, 0, 0], 1e-6 * push, 'on');
    near(q[0] as number, up * push, { rel: 1e-9 }, 'Q');
    near(force.energy() ?? 0, (push * (20 - out)) / 2, { rel: 1e-9 }, 'energy');
    const arrows = force.arrows();
    expect(arrows.map((a) => [a.name, a.on])).toEqual([['stop: cylinder', 'front']]);
    all([...(arrows[0]?.at ?? [])], [-out, -78 + up], 1e-9, 'at');
  });

  it('with no more room from the start a toe is stopped where it stood', () => {
    // At 15 mm from the cylinder’s middle already: 0.05 inward is stopped by all of it.
    const near15 = (s: ReturnType<typeof quayScene>) => {
      s.shoes.front.toe = [-15, 78];
    };
    const { rig, outer } = alone('stop', [-0.01, 0, 0], off, near15);
    const out = 16 - Math.cos(0.01) - 156 * Math.sin(0.01);
    const stiff = stopStiffness(rig.brake, 'front', 'cylinder');
    near(outer[0] as number, -stiff * (15 - out), { rel: 1e-6 });
  });

  it('a hold-down lets its shoe go 8 mm off, and draws it back', () => {
    // (−66.5, 74.5) from the pin, turned outward by 0.1: a chord of 2·99.86·sin 0.05.
    const r = Math.hypot(66.5, 74.5);
    const chord = 2 * r * Math.sin(0.05);
    const { rig, force, q } = alone('stop', [0.1, -0.05, 0], off);
    const push = stopStiffness(rig.brake, 'front', 'pads') * (chord - 8);
    const [only] = bears(force, 'pads');
    expect(force.arrows().length).toBe(1);
    expect(only?.on).toBe('front');
    near(Math.hypot(...(only?.force ?? [0, 0])), push, { rel: 1e-9 }, 'push');
    // Along the chord, which stands r·cos 0.05 from the pin: clockwise.
    near(q[0] as number, -push * r * Math.cos(0.05), { rel: 1e-9 }, 'Q');
    const [x = 0, y = 0] = only?.force ?? [];
    const c = [Math.cos(0.1) - 1, Math.sin(0.1)] as const;
    const went = [-66.5 * c[0] - 74.5 * c[1], -66.5 * c[1] + 74.5 * c[0]] as const;
    all([x, y], [(-push * went[0]) / chord, (-push * went[1]) / chord], 1e-6 * push, 'back');
    near(force.energy() ?? 0, (push * (chord - 8)) / 2, { rel: 1e-9 }, 'energy');
    // The rear one by its own home.
    const rear = bears(alone('stop', [0, -0.1, 0], off).force, 'pads');
    expect(rear.map((a) => a.on)).toEqual(['rear']);
    near(Math.hypot(...(rear[0]?.force ?? [0, 0])), push, { rel: 1e-9 }, 'rear');
  });

  it('a web’s inner edge lies on the hub, at nine places along it', () => {
    // Edge at 71 mm over 117°; a hub of 69.5 mm, the shoe 0.03 inward about its pin.
    const hub = (s: ReturnType<typeof quayScene>) => {
      s.look.hubRadius = 69.5;
    };
    const { rig, force } = alone('stop', [-0.03, 0, 0], off, hub);
    const stiff = stopStiffness(rig.brake, 'front', 'hub');
    const [c, s] = [Math.cos(-0.03), Math.sin(-0.03)];
    const places = Array.from({ length: 9 }, (_, i) => {
      const angle = (121.5 + (117 * i) / 8) * DEG;
      const x = 71 * Math.cos(angle) + 16;
      const y = 71 * Math.sin(angle) + 78;
      return [c * x - s * y - 16, s * x + c * y - 78] as const;
    }).filter((at) => Math.hypot(...at) < 69.5);
    const arrows = bears(force, 'hub').filter((a) => a.on === 'front');
    expect(places.length).toBeGreaterThan(2);
    expect(arrows.length).toBe(places.length);
    arrows.forEach((a, i) => {
      const [x, y] = places[i] as readonly [number, number];
      const d = Math.hypot(x, y);
      const push = stiff * (69.5 - d);
      const told = [...a.at, ...a.force];
      all(told, [x, y, (push * x) / d, (push * y) / d], 1e-6 * (push + 1), `${i}`);
    });
  });

  it('the parking lever lies on the hub with its edge, half its depth from its middle, at quarters of its length', () => {
    // From (46, 68) to (51, −41): (48.5, 13.5) is 50.34 off, (49.75, −13.75) 51.62; depth 14 on a hub of 44.
    const { rig, force, q } = alone('stop', [0, 0, 0], off, (s) => {
      s.look.hubRadius = 44;
    });
    const d = Math.hypot(48.5, 13.5);
    const push = stopStiffness(rig.brake, 'rear', 'lever') * (51 - d);
    const arrows = force.arrows();
    expect(arrows.map((a) => [a.name, a.on])).toEqual([['stop: lever', 'rear']]);
    const told = [...(arrows[0]?.at ?? []), ...(arrows[0]?.force ?? [])];
    all(told, [48.5, 13.5, (push * 48.5) / d, (push * 13.5) / d], 1e-6 * push, 'arrow');
    // (2.5, −54.5) from the pivot, clockwise.
    near(q[2] as number, (-push * (2.5 * 13.5 + 54.5 * 48.5)) / d, { rel: 1e-9 }, 'Q');
  });

  it('remember where their hold-downs rest, and hand it on', () => {
    const { w, force } = alone('stop', [0, 0, 0], off);
    all([...w.after.subarray(force.slot, force.slot + 4)], [-82.5, -3.5, 82.5, -3.5], 0, 'after');
    const memory = new Float64Array(99).fill(5);
    force.rest?.(w, new Float64Array(3), memory);
    all([...memory.subarray(force.slot, force.slot + 4)], [-82.5, -3.5, 82.5, -3.5], 1e-9, 'rest');
    expect(memory.filter((v) => v === 5).length).toBe(95);
  });
});

describe('the lever that climbs its tooth', () => {
  // Seats 104.2 apart, 0.9 of lost motion. A first tooth is 12·(cos 70° − cos 72.39°) of growth, over which 15 N and
  // 1.5 N/mm lift it by 1 mm: 15.75 mJ.
  const MOST = 15.75 / (12 * (Math.cos(70 * DEG) - Math.cos(72.39 * DEG)));
  const climbs = (by: number) =>
    alone('climbing lever', [0, 0, 0], () => ({ strutLength: 104.2 - 0.9 - by }));

  it('draws the seats together by its spring’s work over its growth', () => {
    const { q, outer, w, force } = climbs(0.1);
    near(MOST, 33.2, { abs: 0.1 });
    all(outer, [MOST, 0, -MOST, 0], 1e-6, 'on');
    all(q, [-130 * MOST, 130 * MOST, 0], 1e-4, 'Q');
    all([...w.springMoment], [-130 * MOST, 130 * MOST], 1e-4, 'moment');
    const [front, rear] = force.arrows();
    expect([front?.on, rear?.on, front?.name]).toEqual(['front', 'rear', 'climbing lever']);
    const told = [front?.at, front?.force, rear?.at, rear?.force].flatMap((p) => [...(p ?? [])]);
    all(told, [-59.2, 52, MOST, 0, 45, 52, -MOST, 0], 1e-6, 'arrows');
  });

  it('comes up over five thousandths of a millimetre, as stiff as that, and not within the lost motion', () => {
    const { outer, k } = climbs(0.002);
    all(outer, [0.4 * MOST, 0, -0.4 * MOST, 0], 1e-6, 'two');
    // Each shoe's own slope: 130² of it, and the turn of a pull of 0.4, less than 1e-3 of that.
    near(k[0] as number, (-(130 ** 2) * MOST) / 0.005, { rel: 1e-3 }, 'slope');
    near(k[1] as number, (130 ** 2 * MOST) / 0.005, { rel: 1e-3 }, 'slope of the other');
    all(climbs(0.005).outer, [MOST, 0, -MOST, 0], 1e-6, 'five');
    expect(Math.abs(climbs(0.005).k[0] as number)).toBeLessThan(1e4);
    all([...climbs(0).outer, ...climbs(-0.1).outer], [0, 0, 0, 0, 0, 0, 0, 0], 1e-6, 'none');
  });
});

describe('a lining and its steel', () => {
  it('pressed evenly stores half its force by its penetration, and nothing that is known where it rubs', () => {
    // 0.1 mm into a drum of 99.9 mm: 400 MPa over 4.5 mm.
    const rub = (side: 'front' | 'rear') => {
      const drum = roundDrum(99.9);
      const rearLaw = { kind: 'slide', mu: 0.3, sense: 1 } as const;
      return alone(`${side} lining`, [0, 0, 0], () => ({ drum, rearLaw })).force;
    };
    const stiff = (400 / 4.5) * FACE;
    near(rub('front').energy() ?? 0, (stiff * 0.1 * 0.1) / 2, { rel: 1e-9 }, 'energy');
    expect(rub('rear').energy()).toBeNull();
    expect(rub('front').arrows()).toEqual([]);
  });

  it('bent by a unit of a mode stores a half of one', () => {
    const rig = createRig(quay().brake, { flexible: true, elements: 12 });
    const d = dress(rig, freshState(rig.brake, 100, 12));
    const w = workFor(d);
    const bending = w.forces.find((f) => f.name === 'rear shoe’s bending');
    const law = { kind: 'slide', mu: 0, sense: 1 } as const;
    const act: Acting = {
      ...{ pressure: 0, cable: 0, drum: d.drum, frontLaw: law, rearLaw: law, memory: d.home },
      ...{ home: d.home, strutLength: d.strutLength, strutRest: 0, shaken: 0 },
    };
    const y = new Float64Array(rig.n);
    const at = rig.rear.at + rig.rear.freedoms;
    y[at] = 3;
    y[at + 1] = -4;
    assemble(rig, { ...w, forces: bending ? [bending] : [] }, y, act);
    expect(bending?.energy()).toBe(12.5);
    expect([w.q[at], w.q[at + 1]]).toEqual([-3, 4]);
    expect(w.q.filter((v) => v !== 0).length).toBe(2);
    // −1 for each of its modes, and nothing else.
    const n = rig.n;
    const slopes = [...w.k].flatMap((v, i) => (v === 0 ? [] : [[v, Math.floor(i / n), i % n]]));
    expect(slopes).toEqual(Array.from({ length: 7 }, (_, m) => [-1, at + m, at + m]));
    expect(bending?.arrows()).toEqual([]);
  });
});

describe('the list of forces', () => {
  const names = (rig: Rig) => makeForces(rig).map((f) => f.name);
  const own = ['lining', 'piston', 'hold-down'];
  const both = (parts: readonly string[]) =>
    ['front', 'rear'].flatMap((side) => parts.map((part) => `${side} ${part}`));
  const last = ['climbing lever', 'parking cable', 'stop', 'hand'];

  it('has a heel where shoes stand on abutments, and bending where they bend', () => {
    const { brake, rig } = quay();
    const springs = ['upper return spring', 'lower return spring'];
    expect(names(rig)).toEqual([...both(own), ...springs, ...last]);
    const bent = ['lining', 'shoe’s bending', 'piston', 'hold-down'];
    expect(names(createRig(brake, { flexible: true }))).toEqual([
      ...both(bent),
      ...springs,
      ...last,
    ]);
    const on = mustRead(runabout);
    const heels = both([...own, 'heel']);
    const theirs = on.springs.map((s) => s.name);
    expect(names(createRig(on))).toEqual([...heels, ...theirs, ...last]);
  });

  it('gives each its own place in the memory, one after another', () => {
    const forces = makeForces(createRig(mustRead(runabout)));
    let slot = 0;
    for (const force of forces) {
      expect(force.slot, force.name).toBe(slot);
      slot += force.remembers;
    }
    // Piston 4, hold-down 3, heel 1 a shoe; the stops 4.
    expect([slot, memorySize(forces)]).toEqual([20, 20]);
  });
});

describe('a rig', () => {
  it('has its spots from the anchors, and its lever by the pull on its hook', () => {
    const { rig } = quay();
    const at = ({ part, x, y, onLever }: (typeof rig)['hook']) => [part, x, y, onLever];
    expect(at(rig.front.toe)).toEqual(['front', -11.5, 156, false]);
    expect(at(rig.rear.toe)).toEqual(['rear', 11.5, 156, false]);
    expect([at(rig.front.seat)[3], at(rig.rear.seat)[3], at(rig.rear.webSeat)[3]]).toEqual([
      false,
      true,
      false,
    ]);
    expect(at(rig.hook)).toEqual(['rear', 35, 37, true]);
    expect(at(rig.guide)).toEqual(['plate', 9.4, -45, false]);
    expect(rig.pivot).toEqual([30, 146]);
    // (−41.6, −4) of 41.79 at (5, −109): 109·41.6 + 5·4, clockwise.
    const arm = (109 * 41.6 + 5 * 4) / Math.hypot(41.6, 4);
    near(rig.hookArm, arm, { rel: 1e-9 }, 'arm');
    expect(rig.leverSense).toBe(-1);
    expect([rig.front.outward, rig.front.opening, rig.rear.outward, rig.rear.opening]).toEqual([
      -1, 1, 1, -1,
    ]);
    expect([rig.front.at, rig.rear.at, rig.leverAt, rig.n]).toEqual([0, 1, 2, 3]);
  });

  it('turns its lever the other way where the cable draws outward', () => {
    const other = createRig(
      onPaper({
        ...quayScene(),
        parkingLever: { ...quayScene().parkingLever, cableGuide: [91, -41] },
      }),
    );
    expect(other.leverSense).toBe(1);
    near(other.hookArm, 109, { rel: 1e-9 });
  });

  it('gives between its shoes as its parts do, less the shoes’ own where these bend, or as it is told', () => {
    const { brake } = quay();
    const give = createRig(brake).strutGive;
    expect(give).toBeGreaterThan(1e-4);
    near(give - createRig(brake, { flexible: true }).strutGive, 1.7e-5, { rel: 1e-9 }, 'shoes');
    expect(createRig(brake, { strutGive: 0 }).strutGive).toBe(0);
    expect(createRig(brake, { flexible: true, strutGive: 3 }).strutGive).toBe(3);
  });

  it('bends under the single forces that it bears: of the piston, and of the strut where and as that pushes', () => {
    // A strut that slants; the rear shoe's stands on the parking lever, and pushes at its pivot.
    const scene = quayScene();
    scene.shoes.front.strutSeat = [-59.2, 40];
    scene.shoes.rear.strutSeat = [40.8, 65];
    const brake = onPaper(scene);
    const rig = createRig(brake, { flexible: true, elements: 12 });
    const along = [100 / Math.hypot(100, 25), 25 / Math.hypot(100, 25)] as const;
    for (const [side, seat] of [
      ['front', brake.shoes.front.strutSeat],
      ['rear', brake.parkingLever.pivot],
    ] as const) {
      const { shoe, bed, flex } = rig[side];
      const piston = { at: shoe.toe, along: [1, 0] } as const;
      const pushes = [piston, { at: seat, along }];
      const beam = condense(shoe, brake.drum.radiusNew, bed.angle, bed.face, pushes);
      for (const at of [shoe.toe, seat, shoe.holdDown.at]) {
        const [told, own] = [[...(flex?.move(at) ?? [])], [...beam.move(at)]];
        expect(Math.max(...own.map(Math.abs))).toBeGreaterThan(0);
        all(told, own, 1e-9, side);
      }
      expect(bed.modes).not.toBeNull();
    }
  });

  it('has three freedoms a shoe on abutments, and the modes behind them', () => {
    const { brake } = quay();
    const bent = createRig(mustRead(runabout), { flexible: true, elements: 24 });
    const { front, rear } = bent;
    expect([front.freedoms, front.n - front.modes, rear.at]).toEqual([3, 3, front.n]);
    expect(bent.n).toBe(front.n + rear.n + 1);
    expect([front.bed.count, front.rub.normal.length]).toEqual([24, 24]);
    expect(createRig(brake).front.bed.count).toBe(48);
  });
});

describe('the pose of the released brake', () => {
  const fitted = () => {
    const { rig, state } = quay();
    return { rig, d: dress(rig, state), on: makeRestRig(rig) };
  };

  it('a face is as far from the axis as its turn about the pin leaves it', () => {
    const { rig, d } = fitted();
    // The middle of the front lining at (−100, 0), (−84, 78) from the pin: 3-4-5 turns it to (−114, 12).
    const { bed } = d.front;
    const face = { ...d.front, x: bed.angle.map(() => -84), y: bed.angle.map(() => 78) };
    const y = new Float64Array(3);
    near(faceAt(rig.front, face, y, 0.8, 0.6, 7), Math.hypot(-16 - 114, -78 + 12), { rel: 1e-12 });
    near(faceAt(rig.front, face, y, 1, 0, 7), 100, { rel: 1e-12 }, 'at home');
    // The two middle ones of 48: 23 and 24.
    face.x[23] = -83;
    face.x[24] = -86;
    face.y.fill(78);
    near(reach(rig.front, face, y, 1, 0), (99 + 102) / 2, { rel: 1e-12 }, 'mean');
  });

  it('has its seats on the strut, and stands sideways where it is told', () => {
    const { on } = fitted();
    const y = new Float64Array(3);
    near(seatsApart(on, y), 104.2, { abs: 1e-9 }, 'apart');
    let asked = 0;
    const off = () => {
      asked++;
      return (y[0] as number) + (y[1] as number) - 2e-3;
    };
    expect(turnPair(on, y, 103.2, off)).toBe(true);
    near(seatsApart(on, y), 103.2, { abs: 1e-9 }, 'on the strut');
    near((y[0] as number) + (y[1] as number), 2e-3, { abs: 1e-11 }, 'sideways');
    expect(asked).toBeGreaterThan(3);
  });

  it('has both gaps alike and the strut between its seats', () => {
    const { rig, d, on } = fitted();
    const y = d.restPose;
    near(seatsApart(on, y), 103.2, { abs: 1e-9 }, 'strut');
    const gap = (side: 'front' | 'rear', shoe: ShoeRig) => {
      const turn = y[shoe.at] as number;
      return 100 - reach(shoe, d[side], y, Math.cos(turn), Math.sin(turn));
    };
    near(gap('front', rig.front), d.restGap, { abs: 1e-9 }, 'front');
    near(gap('rear', rig.rear), d.restGap, { abs: 1e-9 }, 'rear');
    // 1 mm at the strut, 130 over the pins, is 0.5·78/130 at each middle.
    near(d.restGap, 0.3, { abs: 0.005 }, 'gap');
  });
});

describe('the pose of the released brake whose shoes bend', () => {
  const bent = () => {
    const rig = createRig(quay().brake, { flexible: true, elements: 12 });
    const d = dress(rig, freshState(rig.brake, 100, 12));
    const w = workFor(d);
    const law = { kind: 'slide', mu: 0, sense: 1 } as const;
    const act: Acting = {
      ...{ pressure: 0, cable: 0, drum: noDrum(rig), frontLaw: law, rearLaw: law, memory: d.home },
      ...{ home: d.home, strutLength: d.strutLength, strutRest: 0, shaken: 0 },
    };
    return { rig, d, w, evaluate: (y: Float64Array) => assemble(rig, w, y, act) };
  };

  it('a face stands where the contact has it, bent in any way', () => {
    const { rig, d, evaluate } = bent();
    const y = d.restPose.map((v, j) => v + 1e-3 * (1 + (j % 5)) * (j % 2 ? -1 : 1));
    evaluate(y);
    for (const side of ['front', 'rear'] as const) {
      const shoe = rig[side];
      const turn = y[shoe.at] as number;
      for (let i = 0; i < 12; i++) {
        const there = Math.hypot(shoe.rub.faceX[i] as number, shoe.rub.faceY[i] as number);
        const told = faceAt(shoe, d[side], y, Math.cos(turn), Math.sin(turn), i);
        near(told, there, { abs: 1e-9 }, `${side} ${i}`);
      }
    }
  });

  it('is bent by springs and strut as they are in balance, its gaps alike, on its strut', () => {
    const { rig, d, w, evaluate } = bent();
    const y = d.restPose;
    evaluate(y);
    const modes = [rig.front, rig.rear].flatMap(({ at, n }) =>
      Array.from({ length: n - 1 }, (_, m) => at + 1 + m),
    );
    // One clamp of the strut must do for all fourteen modes.
    const [q, g] = [w.q, w.seatGradient].map((v) => modes.map((j) => v[j] as number));
    const dot = (a: readonly number[] = [], b: readonly number[] = []) =>
      a.reduce((sum, v, j) => sum + v * (b[j] as number), 0);
    const clamp = -dot(q, g) / dot(g, g);
    // Shoes 0.5/130 rad inward each: springs of 8 and 12 N/mm shorter by 139/130 and 12/130 mm, 146.4 and 153.9 N at 139
    // and 12 over the pins; 130 at the strut.
    near(clamp, (146.4 * 139 + 153.9 * 12) / 130, { rel: 5e-3 }, 'clamp');
    const most = Math.max(...modes.map((j) => Math.abs(y[j] as number)));
    expect(most).toBeGreaterThan(0.05);
    modes.forEach((j, m) => {
      const left = (w.q[j] as number) + clamp * (w.seatGradient[j] as number);
      // Hold-downs, which keep the shoes at home meanwhile, bear a little: a thousandth.
      near(left, 0, { abs: 2e-3 * most }, `mode ${m}`);
    });
    near(w.strut.length, 103.2, { abs: 1e-9 }, 'strut');
    const gap = ({ rub }: ShoeRig) => ((rub.gap[5] as number) + (rub.gap[6] as number)) / 2;
    near(gap(rig.front), gap(rig.rear), { abs: 1e-9 }, 'gaps');
    near(gap(rig.front) - 101, d.restGap, { abs: 1e-9 }, 'gap');
    expect(w.turns.frontCos).toBeLessThan(1);
  });

  it('is clamped by its springs’ moments over the strut’s, nought where nothing gives', () => {
    const { brake } = quay();
    // 0.5/130 rad inward each: springs of 8 and 12 N/mm nearer by that at 139 and 12 over the pins.
    const near2 = (at: number, rate: number) => (155 - (rate * at) / 130) * at;
    near(
      dress(createRig(brake), freshState(brake)).strutRest,
      (near2(139, 8) + near2(12, 12)) / 130,
      {
        rel: 5e-3,
      },
    );
    expect(dress(createRig(brake, { strutGive: 0 }), freshState(brake)).strutRest).toBe(0);
  });
});

describe('a brake dressed', () => {
  const { brake, rig } = quay();
  const state = (more: Partial<BrakeState>): BrakeState => ({ ...freshState(brake), ...more });

  it('has strut, next tooth and lever stop of its state, once for the same state', () => {
    const tooth = (n: number) => 12 * (Math.cos(70 * DEG) - Math.cos((70 + 2.39 * n) * DEG));
    const one = state({ tooth: 3, leverOffStop: 2 });
    const d = dress(rig, one);
    near(d.strutLength, 103.2 + tooth(3), { abs: 1e-9 }, 'strut');
    near(d.nextTooth, tooth(4) - tooth(3), { abs: 1e-9 }, 'next');
    near(d.climbForce, 15.75 / (tooth(4) - tooth(3)), { rel: 1e-9 }, 'climb');
    near(d.leverStop, 2 / rig.hookArm, { rel: 1e-12 }, 'lever');
    near(d.restPose[2] as number, 2 / rig.hookArm, { rel: 1e-12 }, 'its pose');
    expect(dress(rig, one)).toBe(d);
    const other = dress(rig, state({ tooth: 20 }));
    expect(other).not.toBe(d);
    expect([other.nextTooth, other.climbForce]).toEqual([0, 0]);
    expect(dress(rig, one)).not.toBe(other);
  });

  it('rubs by what heat and surface leave of its friction', () => {
    // 0.92 at 300 °C; glazed three quarters.
    const condition = { ...SOUND, surface: { front: 'dry', rear: 'glazed' } } as const;
    const { friction } = dress(rig, state({ temperature: 300, condition }));
    all([friction.front, friction.rear], [0.38 * 0.92, 0.38 * 0.92 * 0.75], 1e-12, 'mu');
  });

  it('has its drum grown warm, out of round as it turns, and risen', () => {
    // 100·(1 + 11e-6·100).
    const warm = dress(rig, state({ temperature: 120 }));
    near(warm.drum.radius, 100.11, { abs: 1e-9 }, 'radius');
    near(warm.restGap - dress(rig, state({})).restGap, 0.11, { abs: 1e-9 }, 'gap');
    expect(drumAt(warm, 0.3)).toBe(warm.drum);
    const at = (more: Partial<typeof SOUND>, angle: number) => {
      const condition = { ...SOUND, ...more };
      const { x, y, radius, oval, ovalCos, ovalSin } = drumAt(
        dress(rig, state({ condition })),
        angle,
      );
      return [x, y, radius, oval, ovalCos, ovalSin];
    };
    const [c, s] = [Math.cos(0.3), Math.sin(0.3)];
    const both = [0.1 * c, 0.1 * s + 0.2, 100, 0.05, Math.cos(0.6), Math.sin(0.6)];
    all(at({ offCentre: 0.1, oval: 0.05, drumRise: 0.2 }, 0.3), both, 1e-12, 'both');
    all(at({ offCentre: 0.1 }, 0.3).slice(0, 4), [0.1 * c, 0.1 * s, 100, 0], 1e-12, 'off');
    all(at({ oval: 0.05 }, 0.3), [0, 0, 100, 0.05, Math.cos(0.6), Math.sin(0.6)], 1e-12, 'oval');
    all(at({ drumRise: 0.2 }, 0.3), [0, 0.2, 100, 0, 1, 0], 1e-12, 'risen');
    // Off it is twice its greatest.
    expect(noDrum(rig).radius).toBe(201);
  });
});
