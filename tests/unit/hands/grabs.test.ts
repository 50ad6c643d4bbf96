import { describe, expect, it } from 'vitest';
import { parkingLeverMass, pistonMass, strutMass } from '../../../sim/brake/part-masses.ts';
import { createMotion, type Point } from '../../../sim/index.ts';
import { tablesQuay } from '../../brakes.ts';
import { drawn, toes } from '../../hands.ts';
import { near } from '../../near.ts';
import { BATCH, type Grab, tryGrabs, tryOne } from '../../random-grabs.ts';
import { samples } from '../../samples.ts';

describe('a random grab', () => {
  it('is balanced at every step from 5 to 500 N/mm, goes through nothing, and comes out in the same bits', () => {
    const of = samples('grabs');
    for (let done = 0; done < of; done += BATCH) {
      expect(tryGrabs(done / BATCH, Math.min(BATCH, of - done))).toEqual([]);
    }
  });
});

it('where the friction of both hold-downs turns round within a step, it is found between sliding either way', () => {
  // Shoes that swing beside a piston come to rest; their hold-downs, let go, rub by half a newton, over 0.1 µm.
  const held = { t: 0, to: [0, 0], rate: 5 } as const;
  const off: Omit<Grab, 'parts'> = {
    ...{ which: 1, jumps: false, drumOff: true, bar: 0 },
    ...{ unhooked: [], unheld: ['front', 'rear'] },
  };
  for (const on of ['front piston', 'rear piston'] as const) {
    tryOne({ ...off, parts: [{ on, ...held }] }, false);
  }
});

describe('taking hold and letting go', () => {
  // Measured without a spring of the toothed lever, which helps them home.
  const { rig, state, brake } = tablesQuay();
  const still = { pressure: 0, turning: 0 } as const;

  it('a hand that takes hold where the part stands moves nothing', () => {
    const motion = createMotion(rig, state);
    for (let n = 0; n < 60; n++) motion.step(still);
    const before = motion.snapshot();
    const at = brake.shoes.front.toe;
    const now = motion.instant().shoes.front.toe;
    motion.step({ ...still, hands: [{ on: 'front', at, to: now, rate: 50, limit: 200 }] });
    const after = motion.snapshot();
    after.pose.forEach((v, j) => {
      near(v, before.pose[j] as number, { abs: 1e-9 }, `${j}`);
    });
  });

  /** Both toes pulled apart to the drum, then let go, at a step; seats' distance after each. */
  function letGo(dt: number, seconds: number): { apart: number[]; home: number } {
    const slow = createMotion(rig, state);
    const hands = toes(brake, 200, 'apart');
    for (let n = 1; n <= 144; n++)
      slow.step({ ...still, hands: drawn(hands, Math.min(1, n / 72)) });
    const motion = createMotion(rig, state);
    motion.restore(slow.snapshot());
    motion.setStep(dt);
    const { strutLength: home } = motion.instant();
    const apart = [motion.instant().separation - home];
    for (let t = 0; t < seconds; t += dt) {
      motion.step(still);
      apart.push(motion.instant().separation - home);
    }
    return { apart, home };
  }

  it('let go, toes that were pulled apart start from rest: no jump, way as the square of the time', () => {
    const dt = 1 / 24000;
    const { apart } = letGo(dt, 8 * dt);
    const way = (n: number): number => (apart[0] as number) - (apart[n] as number);
    near(apart[0] as number, 1, { abs: 0.005 }, 'parted');
    // Backward Euler under a constant force goes a·h²·n(n + 1)/2; the lining that bore lets go in the first steps.
    for (const n of [2, 4, 8]) near(way(n) / way(1), (n * (n + 1)) / 2, { rel: 0.15 }, `${n}`);
    expect(way(1)).toBeLessThan(2e-3);
  });

  it('and are home on the strut in 1.6 ms as shoes alone would be, and later by what rides along', () => {
    // Springs of 155 N each on shoes of 0.6 kg alone: measured on prototypes at 1/6000 to 1/24000 s as 1.58 to 1.67 ms.
    // Home from rest under forces that hardly change, s = F·t²/2m: the time grows as the root of what is moved. Both
    // shoes carry a piston and half of the strut, the rear one the parking lever too (weighed in carried.test.ts).
    const { front, rear } = brake.shoes;
    const about = (mass: number, [x, y]: Point): number =>
      mass * ((x - front.anchor.at[0]) ** 2 + (y - front.anchor.at[1]) ** 2);
    const carried =
      pistonMass(brake) * (front.toe[1] - front.anchor.at[1]) ** 2 +
      about(strutMass(brake) / 2, front.strutSeat);
    const lever = parkingLeverMass(brake);
    const { anchor } = rear;
    const fromPin: Point = [
      front.anchor.at[0] + lever.middle[0] - anchor.at[0],
      front.anchor.at[1] + lever.middle[1] - anchor.at[1],
    ];
    const moved = carried + (lever.inertia + about(lever.mass, fromPin)) / 2;
    const late = Math.sqrt(1 + moved / front.inertia);
    expect(late).toBeGreaterThan(1.05);
    for (const dt of [1 / 6000, 1 / 24000]) {
      const { apart } = letGo(dt, 0.004);
      const n = apart.findIndex((d) => d < 1e-6);
      near(n * dt, 1.6e-3 * late, { rel: 0.05 }, `${dt}`);
    }
  });

  it('a pair carried sideways stays there when let go, until the turning drum is pressed', () => {
    const motion = createMotion(rig, state);
    const hands = [
      { on: 'front', at: brake.shoes.front.toe, to: [-600, 78], rate: 5, limit: 60 },
    ] as const;
    for (let n = 1; n <= 144; n++)
      motion.step({ ...still, hands: drawn(hands, Math.min(1, n / 72)) });
    for (let n = 0; n < 240; n++) motion.step(still);
    const rest = createMotion(rig, state).instant().shoes.front.toe[0];
    const off = () => motion.instant().shoes.front.toe[0] - rest;
    expect(off()).toBeLessThan(-0.4);
    for (let n = 0; n < 480; n++) motion.step({ pressure: n < 240 ? 2 : 0, turning: 1 });
    expect(Math.abs(off())).toBeLessThan(0.1);
  });
});
