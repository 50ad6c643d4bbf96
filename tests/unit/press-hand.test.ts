import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import { asideOf, dress, workFor } from '../../sim/balance/dress.ts';
import { type Drive, driveToe } from '../../sim/balance/drive.ts';
import { actingOn } from '../../sim/balance/press.ts';
import { type Supports, solvePose } from '../../sim/balance/solve.ts';
import type { ShoeRig } from '../../sim/balance/types.ts';
import { SHEAR_SHARE } from '../../sim/contact/friction.ts';
import { torqueOnDrum } from '../../sim/contact/rub.ts';
import {
  balance,
  createRig,
  firstToYield,
  freshState,
  lockedShoe,
  placePoint,
  rest,
  SOUND,
  solveBalance,
} from '../../sim/index.ts';
import { mustRead, pinnedPair, quay, tablesQuay } from '../brakes.ts';
import { leftOver } from '../left-over.ts';
import { near } from '../near.ts';

/**
 * What a press of a whole brake owes mechanics, asked of what the solver leaves behind: friction of a standing drum by
 * the way each place of a lining went, the push that a held toe needs, where friction alone holds the drum, and what an
 * instant tells.
 */

const SIDES = ['front', 'rear'] as const;

/** The runabout with nothing that rubs but its linings. */
const slick = (friction = 0.37) => {
  const scene = structuredClone(runabout);
  for (const side of SIDES) {
    scene.shoes[side].lining.friction = friction;
    Object.assign(scene.shoes[side].holdDown, { friction: 0, shakenOff: 0 });
  }
  const brake = mustRead(scene);
  return { brake, rig: createRig(brake), state: freshState(brake) };
};

describe('a standing drum', () => {
  /** Friction of each element that bears over its normal force. */
  const shares = ({ rub }: ShoeRig) =>
    Array.from(rub.normal, (n, i) => (n > 0 ? (rub.friction[i] as number) / n : Number.NaN));

  it('holds each place of a pinned lining by the way that went about the pin, at most by its friction', () => {
    const { rig, state } = quay();
    solveBalance(rig, state, { pressure: 4, turning: 0 });
    for (const side of SIDES) {
      const { bed, ...shoe } = rig[side];
      let within = 0;
      shares(rig[side]).forEach((share, i) => {
        // At 100 mm along e_r, (rx, ry) from the pin: a turn moves it by (−ry, rx), its friction is a part of the
        // stiffness across to that along e_r, whatever the turn.
        const [nx, ny] = [Math.cos(bed.angle[i] as number), Math.sin(bed.angle[i] as number)];
        const [rx, ry] = [100 * nx - shoe.shoe.anchor.at[0], 100 * ny + 78];
        const slope = (-SHEAR_SHARE * (ry * ny + rx * nx)) / (rx * ny - ry * nx);
        if (Math.abs(slope) < 0.38) within++;
        near(share, Math.max(-0.38, Math.min(0.38, slope)), { abs: 1e-6 }, `${side} ${i}`);
      });
      expect(within).toBeGreaterThan(10);
      expect(within).toBeLessThan(48);
    }
  });

  it('holds a shoe that slides by the way that each place went from rest', () => {
    const { rig, state } = slick();
    const { pose, dressed } = solveBalance(rig, state, { pressure: 4, turning: 0 });
    for (const side of SIDES) {
      const { bed, at, shoe } = rig[side];
      const gone = [0, 1, 2].map(
        (j) => (pose[at + j] as number) - (dressed.restPose[at + j] as number),
      );
      const [ux = 0, uy = 0, turn = 0] = gone;
      expect(Math.hypot(ux, uy)).toBeGreaterThan(0.003);
      let bears = 0;
      shares(rig[side]).forEach((share, i) => {
        if (Number.isNaN(share)) return;
        bears++;
        const [nx, ny] = [Math.cos(bed.angle[i] as number), Math.sin(bed.angle[i] as number)];
        const r = bed.face[i] as number;
        const x = ux - turn * (r * ny - shoe.anchor.at[1]);
        const y = uy + turn * (r * nx - shoe.anchor.at[0]);
        const slope = (-SHEAR_SHARE * (y * nx - x * ny)) / (x * nx + y * ny);
        near(share, Math.max(-0.37, Math.min(0.37, slope)), { abs: 1e-3 }, `${side} ${i}`);
      });
      expect(bears).toBeGreaterThan(20);
    }
  });
});

describe('shoes that dry friction holds', () => {
  const rough = structuredClone(runabout);
  for (const side of SIDES) {
    rough.shoes[side].anchor.friction = 0.2;
    Object.assign(rough.shoes[side].holdDown, { friction: 20, shakenOff: 0.5 });
  }
  const brake = mustRead(rough);
  const rig = createRig(brake, { elements: 24 });
  const state = freshState(brake, 95, 24);
  const at = brake.shoes.front.holdDown.at;
  const hand = (part: number) =>
    ({ on: 'front', at, to: [at[0] - 300, at[1]], rate: 5 * part, limit: 400 * part }) as const;
  /** The press in very many small steps, each solved from the last, whose bristles it takes over. */
  const slowly = (pressure: number, cable: number, pulled: boolean, many: number) => {
    const d = dress(rig, state);
    const w = workFor(d);
    const law = { kind: 'slide', mu: 0.37, sense: 1 } as const;
    const act = actingOn(d, { pressure: 0, cable: 0 }, w.memory, law, law);
    const pose = d.restPose.slice();
    let s: Supports = { strutOn: true, leverFree: false };
    for (let n = 0; n <= many; n++) {
      const part = n / many;
      act.pressure = pressure * part;
      act.cable = cable * part;
      if (pulled) act.hands = [hand(part)];
      s = solvePose(rig, w, pose, act, { inertia: null, leverStop: 0, shaken: 'off the strut' }, s);
      act.memory.set(w.after);
    }
    return [torqueOnDrum(rig.front.rub, d.drum), torqueOnDrum(rig.rear.rub, d.drum)];
  };

  it.each([
    ['pedal', 4, 0, false],
    ['cable', 0, 300, false],
    ['hand', 0, 0, true],
  ] as const)('are pressed by a %s as in very many small steps', (_, pressure, cable, pulled) => {
    const fine = slowly(pressure, cable, pulled, 400);
    const hands = pulled ? [hand(1)] : undefined;
    const { act } = solveBalance(rig, state, { pressure, turning: 1, cable, hands });
    const { front, rear } = rig;
    const told = [torqueOnDrum(front.rub, act.drum), torqueOnDrum(rear.rub, act.drum)];
    expect(Math.abs(fine[0] as number)).toBeGreaterThan(3000);
    // Half a part in a hundred of its torque either way, by the steps in which heels turn round.
    for (const k of [0, 1] as const)
      near(told[k] as number, fine[k] as number, { rel: 2e-3, abs: 5 }, `${k}`);
  });
});

describe('a bending shoe on a standing drum', () => {
  const { brake } = quay();
  const rig = createRig(brake, { flexible: true, elements: 12 });
  const state = freshState(brake, 100, 12);
  /** Bristles of a lining, which go along with it from step to step. */
  const bristles = (shoe: ShoeRig) => ({
    ...({ kind: 'stick', mu: 0.38, turn: 0 } as const),
    deflection: new Float64Array(12),
    beforeX: shoe.rub.faceX.slice(),
    beforeY: shoe.rub.faceY.slice(),
  });

  it('is dragged as in very many small steps', () => {
    const pressure = 3;
    const d = dress(rig, state);
    const w = workFor(d);
    const law = { kind: 'slide', mu: 0, sense: 1 } as const;
    const act = actingOn(d, { pressure: 0, cable: 0 }, w.memory, law, law);
    const pose = d.restPose.slice();
    const under = { inertia: null, leverStop: 0, shaken: 'not' } as const;
    let s: Supports = solvePose(rig, w, pose, act, under, { strutOn: true, leverFree: false });
    const laws = [bristles(rig.front), bristles(rig.rear)] as const;
    act.frontLaw = laws[0];
    act.rearLaw = laws[1];
    for (let n = 1; n <= 100; n++) {
      act.pressure = (pressure * n) / 100;
      s = solvePose(rig, w, pose, act, under, s);
      act.memory.set(w.after);
      for (const [k, shoe] of [rig.front, rig.rear].entries()) {
        laws[k as 0 | 1].deflection.set(shoe.rub.deflection);
        laws[k as 0 | 1].beforeX.set(shoe.rub.faceX);
        laws[k as 0 | 1].beforeY.set(shoe.rub.faceY);
      }
    }
    const read = () =>
      [rig.front, rig.rear].flatMap(({ rub }) => [
        torqueOnDrum(rub, d.drum),
        ...rub.normal,
        ...rub.friction,
      ]);
    const fine = read();
    const most = Math.max(...fine.map(Math.abs).slice(1, 13));
    expect(most).toBeGreaterThan(50);
    solveBalance(rig, state, { pressure, turning: 0 });
    // Torques of both directions nearly cancel: a part in a thousand of all of it is 100 mm times that of a force.
    read().forEach((v, i) => {
      const torque = i % 25 === 0;
      near(v, fine[i] as number, { abs: (torque ? 100 : 1) * 5e-3 * most }, `${i}`);
    });
  });
});

describe('a solve from a pose that is near', () => {
  it('ends in the same balance, in fewer steps', () => {
    const { rig, state } = quay();
    const press = { pressure: 4, turning: 1 } as const;
    const cold = solveBalance(rig, state, press);
    const { strutOn, leverFree, iterations } = cold.solution;
    const torque = (of: typeof cold) => rig.front.rub.normal.reduce((a, b) => a + b, of.act.cable);
    const was = torque(cold);
    const warm = solveBalance(rig, state, press, { pose: cold.pose, strutOn, leverFree });
    near(torque(warm), was, { rel: 1e-9 }, 'normal force');
    expect(warm.solution.iterations).toBeLessThan(iterations);
    // The guess is not touched.
    expect(warm.pose).not.toBe(cold.pose);
  });

  it('a pull that beats the clamp at the notch frees the lever, one that does not leaves it', () => {
    // The springs clamp the strut with some 190 N at 16 mm from the pivot; the cable pulls at 109.
    const { rig, state } = quay();
    const clamp = rest(rig, state).strutForce;
    const limit = (clamp * 16) / rig.hookArm;
    const free = (cable: number) =>
      solveBalance(rig, state, { pressure: 0, turning: 1, cable }).solution.leverFree;
    expect([free(0.98 * limit), free(1.02 * limit)]).toEqual([false, true]);
  });
});

describe('a toe held at a place, its drum turning', () => {
  const begun = (pose: Float64Array): Drive => ({
    pose: pose.slice(),
    push: 0,
    bearing: 0,
    gap: 0,
  });
  /** What the drum does to a lining: force, and moment about a place. */
  const lining = ({ rub, bed }: ShoeRig, mu: number, about: readonly [number, number]) => {
    const sum = { x: 0, y: 0, moment: 0, bearing: 0, deepest: 0 };
    for (let i = 0; i < bed.count; i++) {
      const [x, y] = [rub.faceX[i] as number, rub.faceY[i] as number];
      const [n, rho] = [rub.normal[i] as number, Math.hypot(x, y)];
      const fx = (-n * x - mu * n * y) / rho;
      const fy = (-n * y + mu * n * x) / rho;
      sum.x += fx;
      sum.y += fy;
      sum.moment += (x - about[0]) * fy - (y - about[1]) * fx;
      sum.bearing += n;
      if (n > 0) sum.deepest = Math.max(sum.deepest, rho);
    }
    return sum;
  };

  it('on a pin is pushed by what friction leaves of its lining’s moment', () => {
    const { rig, state } = quay();
    const d = dress(rig, state);
    const aside = asideOf(rig).rig;
    for (const side of SIDES)
      for (const turning of [1, -1] as const) {
        const shoe = aside[side];
        const label = `${side} ${turning}`;
        const toe = (turn: number) => 16 + 11.5 * Math.cos(turn) + 156 * Math.sin(turn);
        const home = shoe.opening * (d.restPose[shoe.at] as number);
        const drive = begun(d.restPose);
        // The middle has 0.3 mm to go, half as far as the toe; 0.4 mm more press it in.
        const target = toe(home) + 1;
        expect(driveToe(d, shoe, turning, target, drive), label).toBe(true);
        const turn = shoe.opening * (drive.pose[shoe.at] as number);
        near(toe(turn), target, { abs: 1e-9 }, `${label} toe`);
        const pin = [shoe.outward * 16, -78] as const;
        const { moment, bearing, deepest } = lining(shoe, 0.38 * turning, pin);
        // The toe as high over the pin as it stands turned; the thread's hundredth of a newton beside.
        const high = 156 * Math.cos(turn) - 11.5 * Math.sin(turn);
        near(drive.push * high * shoe.opening + moment, 0, { abs: 5 }, `${label} moments`);
        near(drive.bearing, bearing, { rel: 1e-12 }, `${label} bearing`);
        expect(bearing).toBeGreaterThan(500);
        near(drive.gap, 100 - deepest, { abs: 1e-9 }, `${label} gap`);
        // Nothing else moved.
        const other = side === 'front' ? 1 : 0;
        expect(drive.pose[other]).toBe(d.restPose[other]);
        expect(drive.pose[2]).toBe(d.restPose[2]);
      }
  });

  it('before its lining touches needs next to nothing, by a thread of 0.05 N/mm at its hold-down', () => {
    const { rig, state } = quay();
    const d = dress(rig, state);
    const shoe = asideOf(rig).rig.front;
    const drive = begun(d.restPose);
    const from =
      16 + 11.5 * Math.cos(d.restPose[0] as number) + 156 * Math.sin(d.restPose[0] as number);
    expect(driveToe(d, shoe, 1, from + 0.3, drive)).toBe(true);
    expect(drive.bearing).toBe(0);
    expect(drive.gap).toBeGreaterThan(0);
    // 0.3 mm at the toe are 0.3/156 rad: 0.05·(66.5² + 74.5²) of it about the pin, over 156 at the toe.
    near(drive.push, (0.05 * (66.5 ** 2 + 74.5 ** 2) * 0.3) / 156 ** 2, { rel: 0.02 }, 'push');
  });

  it('on an abutment all forces on it balance: lining, heel, push and thread', () => {
    const { brake, rig, state } = slick();
    const d = dress(rig, state);
    const aside = asideOf(rig).rig;
    for (const side of SIDES) {
      const shoe = aside[side];
      const { anchor, toe, holdDown } = brake.shoes[side];
      if (anchor.kind !== 'abutment') throw new Error('no abutment');
      const pose = (y: Float64Array) => {
        const [ux = 0, uy = 0, phi = 0] = y.subarray(shoe.at, shoe.at + 3);
        return { ux, uy, phi, modes: [] };
      };
      const from = shoe.outward * placePoint(brake.shoes[side], pose(d.restPose), toe)[0];
      const drive = begun(d.restPose);
      let target = from;
      for (let n = 0; n < 12; n++) {
        target += 0.1;
        expect(driveToe(d, shoe, 1, target, drive)).toBe(true);
      }
      const at = pose(drive.pose);
      const [tx, ty] = placePoint(brake.shoes[side], at, toe);
      near(shoe.outward * tx, target, { abs: 1e-9 }, 'toe');
      const { x, y, moment, bearing } = lining(shoe, 0.37, [0, 0]);
      expect(bearing).toBeGreaterThan(500);
      // Frictionless: along its normal, as far as the heel is pressed in, through its centre.
      const n = [Math.cos(anchor.normal), Math.sin(anchor.normal)] as const;
      const heel = anchor.stiffness * Math.max(0, -(at.ux * n[0] + at.uy * n[1]));
      const [hx, hy] = [anchor.at[0] + at.ux, anchor.at[1] + at.uy];
      const held = placePoint(brake.shoes[side], at, holdDown.at);
      const was = placePoint(brake.shoes[side], pose(d.restPose), holdDown.at);
      const thread = [-0.05 * (held[0] - was[0]), -0.05 * (held[1] - was[1])] as const;
      const push = shoe.outward * drive.push;
      near(x + heel * n[0] + push + thread[0], 0, { abs: 2e-3 }, `${side} x`);
      near(y + heel * n[1] + thread[1], 0, { abs: 2e-3 }, `${side} y`);
      const turning =
        moment +
        heel * (hx * n[1] - hy * n[0]) -
        ty * push +
        held[0] * thread[1] -
        held[1] * thread[0];
      near(turning, 0, { abs: 0.5 }, `${side} moments`);
    }
  });
});

describe('a shoe locks by itself', () => {
  /** From 35 to 145° from its pin at 80 mm. */
  const pair = (front: number, rear = front) => {
    const built = pinnedPair({
      ...{ mu: front, width: 40, radius: 100, pin: 80, arm: 160, from: 35, to: 145 },
    });
    const { shoes } = built.brake;
    const lining = { ...shoes.rear.lining, friction: rear };
    const brake = { ...built.brake, shoes: { ...shoes, rear: { ...shoes.rear, lining } } };
    return { rig: createRig(brake), state: built.state };
  };
  // Handbook, p as sin θ: M_N = a·∫sin², M_F = mu·(r·∫sin − a·∫sin·cos), the last of which is nought about 90°.
  const DEG = Math.PI / 180;
  const sin2 = (110 * DEG) / 2 - (Math.sin(290 * DEG) - Math.sin(70 * DEG)) / 4;
  const LOCKS = (80 * sin2) / (100 * (Math.cos(35 * DEG) - Math.cos(145 * DEG)));

  it('on a pin where the moment of friction is that of the normal forces, on the leading side alone', () => {
    const locked = (mu: number, turning: 1 | 0 | -1) => {
      const { rig, state } = pair(mu);
      return lockedShoe(rig, state, turning);
    };
    near(LOCKS, 0.698, { abs: 1e-3 });
    expect([1, -1].map((t) => locked(0.995 * LOCKS, t as 1))).toEqual([null, null]);
    expect([1, -1].map((t) => locked(1.005 * LOCKS, t as 1))).toEqual(['front', 'rear']);
    expect(locked(1.5, 0)).toBeNull();
  });

  it('by its own lining’s friction', () => {
    const both = (front: number, rear: number) => {
      const { rig, state } = pair(front, rear);
      return [lockedShoe(rig, state, 1), lockedShoe(rig, state, -1)];
    };
    expect(both(0.3, 0.8)).toEqual([null, 'rear']);
    expect(both(0.8, 0.3)).toEqual(['front', null]);
  });

  it('from where it touches, however far that is; not where it passes the drum by', () => {
    // The van's linings have 0.3 mm to go and touch all at once: 23.4 to 133.4° from the pins' line, these 79.6 mm off.
    const a = Math.hypot(16, 78);
    const from = Math.atan2(78, 16) - 55 * DEG;
    const to = from + 110 * DEG;
    const squares = (to - from) / 2 - (Math.sin(2 * to) - Math.sin(2 * from)) / 4;
    const products = (Math.sin(to) ** 2 - Math.sin(from) ** 2) / 2;
    const locks = (a * squares) / (100 * (Math.cos(from) - Math.cos(to)) - a * products);
    const van = (mu: number) => {
      const { brake } = quay();
      const shoe = (side: 'front' | 'rear') => {
        const { lining } = brake.shoes[side];
        return { ...brake.shoes[side], lining: { ...lining, friction: mu } };
      };
      const shoes = { front: shoe('front'), rear: shoe('rear') };
      return { rig: createRig({ ...brake, shoes }), state: freshState(brake) };
    };
    const locked = (mu: number, turning: 1 | -1, radius = 100) => {
      const { rig, state } = van(mu);
      return lockedShoe(rig, { ...state, drumRadius: radius }, turning);
    };
    expect(locks).toBeGreaterThan(0.7);
    expect([locked(0.99 * locks, 1), locked(0.99 * locks, -1)]).toEqual([null, null]);
    expect([locked(1.01 * locks, 1), locked(1.01 * locks, -1)]).toEqual(['front', 'rear']);
    // Turned by 20 mm at the drum, its middle has gone out by some 16.
    expect(locked(2 * locks, 1, 105)).toBe('front');
    expect(locked(2 * locks, 1, 140)).toBeNull();
  });

  it('also where its lining stands in the drum from the start', () => {
    const { rig, state } = pair(0.8);
    const inside = { ...state, drumRadius: 96 };
    expect(dress(rig, inside).restGap).toBeLessThan(0);
    expect(lockedShoe(rig, inside, 1)).toBe('front');
    const less = pair(0.6);
    expect(lockedShoe(less.rig, { ...less.state, drumRadius: 99.9 }, 1)).toBeNull();
  });

  it('where it can slide at the friction of plane statics, whichever side leads', () => {
    // On smooth flats, in a narrow patch 75.2 mm up a drum of 95: from sin(atan mu) = 75.2/95 on, mu 1.295 (derived in
    // locks-sweep.test.ts).
    const scene = structuredClone(runabout);
    const locked = (friction: number, turning: 1 | -1) => {
      for (const side of SIDES) {
        scene.shoes[side].lining.groundRadius = 94;
        scene.shoes[side].lining.friction = friction;
      }
      const brake = mustRead(scene);
      return lockedShoe(createRig(brake, { elements: 24 }), freshState(brake, 95, 24), turning);
    };
    expect([locked(1.27, 1), locked(1.27, -1)]).toEqual([null, null]);
    expect([locked(1.32, 1), locked(1.32, -1)]).toEqual(['front', 'rear']);
  });

  it('bending on a pin, its steel so stiff that it hardly does, where a rigid one locks', () => {
    const bends = (mu: number, stiff: number) => {
      const { brake } = pinnedPair({
        ...{ mu, width: 40, radius: 100, pin: 80, arm: 160, from: 35, to: 145 },
      });
      const shoe = (side: 'front' | 'rear') => {
        const { lining, steel, ...rest } = brake.shoes[side];
        // 400 MPa, as linings are, and steel a thousand times as stiff as it is.
        return {
          ...rest,
          lining: { ...lining, modulus: 400 },
          steel: { ...steel, modulus: steel.modulus * stiff },
        };
      };
      const shoes = { front: shoe('front'), rear: shoe('rear') };
      const rig = createRig({ ...brake, shoes }, { flexible: true, elements: 12 });
      return lockedShoe(rig, freshState(brake, 100, 12), 1);
    };
    expect(bends(0.96 * LOCKS, 1000)).toBeNull();
    expect(bends(1.04 * LOCKS, 1000)).toBe('front');
    // Far beyond, even a held toe would not hold it.
    expect(bends(1.5, 1)).toBe('front');
  });

  it('is then shown as the drum stands, and no force is told', () => {
    const { rig, state } = pair(0.8);
    const press = { pressure: 2, turning: 1 } as const;
    const told = balance(rig, state, press);
    expect([told.locked, told.lost, told.turning]).toEqual(['front', false, 1]);
    const still = balance(rig, state, { ...press, turning: 0 });
    expect(still.locked).toBeNull();
    expect(told.shoes.front.pose).toEqual(still.shoes.front.pose);
    expect(told.torqueOnDrum).toBe(still.torqueOnDrum);
  });
});

it('where nothing balances the standing brake is shown, and told as lost', () => {
  // A friction of 0.6 carries the leading shoe three times its push already; with an exponent of 1.25 more pressure
  // asks for more friction, and that for more pressure.
  const { rig, state } = tablesQuay((s) => {
    for (const side of SIDES) s.shoes[side].lining.friction = 0.6;
    const damp = { factorAgainstTemperature: [[20, 1]], source: 'test' };
    const law = { pressureExponent: 1.25, speedExponent: 0, atPressure: 0.5, atSpeed: 40 };
    Object.assign(s, {
      frictionOfSurfaces: { damp },
      frictionAgainstPressureAndSpeed: { ...law, source: 'test' },
    });
  });
  const lost = balance(rig, state, { pressure: 8, turning: 1 });
  expect([lost.lost, lost.locked, lost.turning]).toEqual([true, null, 1]);
  const still = balance(rig, state, { pressure: 8, turning: 0 });
  expect(still.lost).toBe(false);
  expect(lost.shoes.front.pose).toEqual(still.shoes.front.pose);
  // Less does find it.
  const less = balance(rig, state, { pressure: 0.7, turning: 1 });
  expect([less.lost, less.locked]).toEqual([false, null]);
  expect(less.torqueOnDrum).toBeLessThan(-1000);
});

describe('an instant', () => {
  const { brake, rig, state } = quay();

  it('tells forces that are one another’s: friction by the normal force, torque, pressure, toe', () => {
    for (const turning of [1, -1] as const) {
      const i = balance(rig, state, { pressure: 3, turning });
      for (const side of SIDES) {
        const s = i.shoes[side];
        const label = `${side} ${turning}`;
        const [nx, ny] = s.normalForce;
        // Friction stands across each normal force, the way the drum turns.
        near(s.frictionForce[0], 0.38 * turning * ny, { rel: 1e-9 }, `${label} x`);
        near(s.frictionForce[1], -0.38 * turning * nx, { rel: 1e-9 }, `${label} y`);
        near(s.torqueOnDrum, -0.38 * turning * s.normalSum * 100, { rel: 1e-3 }, `${label} torque`);
        const sum = s.pressure.reduce((a, p) => a + p, 0);
        near((sum * 32 * 100 * 110 * Math.PI) / 180 / 48, s.normalSum, { rel: 1e-4 }, label);
        near(s.gap[24] as number, (-(s.pressure[24] as number) * 4.5) / 400, { rel: 1e-3 }, label);
        // Toe's height over the pin.
        const piston = 3 * brake.cylinder.area;
        near(s.pistonForce, piston, { rel: 1e-9 }, `${label} piston`);
        const out = side === 'front' ? -1 : 1;
        let moment = (s.toe[1] + 78) * piston;
        i.springs.forEach(({ force, from, to }, k) => {
          const [a, b] = side === 'front' ? [from, to] : [to, from];
          const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
          const pull = [
            (force * (b[0] - a[0])) / length,
            (force * (b[1] - a[1])) / length,
          ] as const;
          const m = (a[0] - 16 * out) * pull[1] - (a[1] + 78) * pull[0];
          expect(brake.springs[k]?.ends.map((e) => e.on)).toEqual(['front', 'rear']);
          moment -= out * m;
        });
        for (const { name, on, at, force } of i.forces)
          if (name === 'climbing lever' && on === side)
            moment -= out * ((at[0] - 16 * out) * force[1] - (at[1] + 78) * force[0]);
        near(s.toeForce, moment / 156, { rel: 1e-9 }, `${label} toe`);
      }
      expect(i.torqueOnDrum).toBe(i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum);
      expect([i.locked, i.lost, i.turning, i.drumAngle, i.pressure]).toEqual([
        null,
        false,
        turning,
        0,
        3,
      ]);
    }
  });

  it('tells strut, climb and lever by where the seats stand', () => {
    const pressed = balance(rig, state, { pressure: 3, turning: 1 });
    near(pressed.strutLength, 103.2, { abs: 1e-12 }, 'strut');
    const tooth = 12 * (Math.cos((70 * Math.PI) / 180) - Math.cos((72.39 * Math.PI) / 180));
    const climbed = (pressed.separation - 103.2 - 0.9) / tooth;
    expect(climbed).toBeGreaterThan(0.2);
    near(pressed.climb, Math.min(1, climbed), { rel: 1e-9 }, 'climb');
    expect([pressed.strutForce, pressed.leverAngle, pressed.tooth]).toEqual([0, 0, 0]);
    expect(pressed.strutOff).toBeUndefined();
    const still = rest(rig, state);
    expect([still.climb, still.pressure, still.turning, still.yields]).toEqual([0, 0, 0, null]);
    near(still.separation, 103.2, { abs: 1e-9 }, 'on the strut');
    // (155 + 8·d)·139 and (155 + 12·d)·12 about the pins, over 130: shoes 1/130 rad together by half of it each.
    const moment = (155 - (8 * 139) / 130) * 139 + (155 - (12 * 12) / 130) * 12;
    near(still.strutForce, moment / 130, { rel: 0.01 }, 'clamp');
  });

  it('tells what is too weak for the strut’s force, from there on', () => {
    const weakest = firstToYield(brake);
    if (!weakest) throw new Error('sizes are told');
    const at = (cable: number) => balance(rig, state, { pressure: 0, turning: 1, cable });
    for (const cable of [100, 900, 1700, 2000]) {
      const i = at(cable);
      expect(i.yields, `${i.strutForce}`).toEqual(i.strutForce > weakest.force ? weakest : null);
      expect(i.cableForce).toBe(cable);
      expect(i.leverAngle).toBeGreaterThan(0);
    }
    expect(at(2000).yields).toEqual(weakest);
    expect(at(100).yields).toBeNull();
  });

  it('of a brake without its drum tells gaps to where that would be', () => {
    const on = balance(rig, state, { pressure: 0, turning: 0 });
    const off = balance(rig, state, { pressure: 0, turning: 0, drumOff: true });
    for (const side of SIDES)
      on.shoes[side].gap.forEach((g, i) => {
        near(off.shoes[side].gap[i] as number, g, { abs: 1e-9 }, `${side} ${i}`);
      });
    expect(off.drumRadius).toBe(100);
  });

  it('off its drum is stopped by its hold-downs’ pins, 8 mm from where they rest', () => {
    const still = rest(rig, state);
    const off = balance(rig, state, { pressure: 2, turning: 0, drumOff: true });
    for (const side of SIDES) {
      const s = off.shoes[side];
      expect(s.normalSum).toBe(0);
      const [x, y] = still.shoes[side].holdDown.at;
      const far = Math.hypot(s.holdDown.at[0] - x, s.holdDown.at[1] - y);
      // Pressed in by its contact: 570 N of the piston at 1e5 N/mm and more.
      near(far, 8, { abs: 0.02 }, side);
      expect(Math.max(...s.gap)).toBeLessThan(0);
    }
  });

  it('tells a heel’s force by its flat: what the others leave over', () => {
    const sliding = slick();
    const eccentric = { ...sliding.state, condition: { ...SOUND, offCentre: 0.2, drumRise: 0.1 } };
    for (const turning of [1, -1] as const)
      for (const press of [
        { pressure: 3, turning, drumAngle: 0.8 },
        { pressure: 3, turning, drumAngle: 2.5 },
      ]) {
        const i = balance(sliding.rig, eccentric, press);
        expect([i.drumAngle, i.turning]).toEqual([press.drumAngle, turning]);
        for (const side of SIDES) {
          const { force, largest } = leftOver(sliding.brake, i, side);
          expect(largest).toBeGreaterThan(300);
          expect(force, `${side} ${turning}`).toBeLessThan(1e-6 * largest);
          const { anchor } = sliding.brake.shoes[side];
          if (anchor.kind !== 'abutment') throw new Error('no abutment');
          // Smooth: square to its flat, outward.
          const [x, y] = i.shoes[side].anchorForce;
          const [nx, ny] = [Math.cos(anchor.normal), Math.sin(anchor.normal)];
          near(x * ny - y * nx, 0, { abs: 1e-6 * largest }, side);
          expect(x * nx + y * ny).toBeGreaterThan(10);
        }
      }
  });

  it('tells a shoe’s shift and turn as they were solved, and each lining rubs by its own friction', () => {
    const scene = structuredClone(runabout);
    scene.shoes.front.lining.friction = 0.25;
    scene.shoes.rear.lining.friction = 0.4;
    const own = mustRead(scene);
    const sliding = createRig(own);
    const press = { pressure: 3, turning: 1 } as const;
    const i = balance(sliding, freshState(own), press);
    const { pose } = solveBalance(sliding, freshState(own), press);
    for (const [side, mu] of [
      ['front', 0.25],
      ['rear', 0.4],
    ] as const) {
      const s = i.shoes[side];
      const { at } = sliding[side];
      expect([s.pose.ux, s.pose.uy, s.pose.phi]).toEqual([...pose.subarray(at, at + 3)]);
      expect(Math.min(Math.abs(s.pose.ux), Math.abs(s.pose.uy))).toBeGreaterThan(0);
      near(Math.hypot(...s.frictionForce) / Math.hypot(...s.normalForce), mu, { rel: 1e-9 }, side);
    }
  });

  it('tells a hand on a piston, and how far that has drawn it off its toe', () => {
    const at = brake.shoes.front.toe;
    const drawn = (pressure: number, by: number) => {
      const to = [at[0] + by, at[1]] as const;
      const hand = { on: 'front piston', at, to, rate: 20, limit: 200 } as const;
      return balance(rig, state, { pressure, turning: 0, hands: [hand] }).shoes;
    };
    // Without fluid it follows the hand inward, whose spring is then slack.
    const off = drawn(0, 3);
    const out = -rest(rig, state).shoes.front.toe[0] - 27.5;
    near(off.front.pistonBehind ?? 0, 3 + out, { abs: 0.01 }, 'behind');
    expect(off.front.pistonForce).toBe(0);
    near(off.front.pistonHand ?? 0, 0, { abs: 1e-9 }, 'slack');
    expect(off.rear.pistonBehind).toBeUndefined();
    // Pressed it stays at its toe and loses what the hand draws: 20 N/mm.
    const on = drawn(2, 3);
    const hand = -20 * (3 + (-on.front.toe[0] - 27.5));
    near(on.front.pistonHand ?? 0, hand, { rel: 0.01 }, 'hand');
    near(on.front.pistonForce, 2 * brake.cylinder.area + hand, { rel: 0.001 }, 'push');
    expect([on.front.pistonBehind, on.rear.pistonHand]).toEqual([undefined, undefined]);
  });

  it('tells how far a strut without its spring has gone along', () => {
    const loose = { ...state, condition: { ...SOUND, strutLoose: true } };
    const i = balance(rig, loose, { pressure: 4, turning: 1 });
    near(i.strutOff ?? 0, i.separation - 103.2 - 0.9, { abs: 1e-12 });
    expect(i.climb).toBe(0);
  });

  it('tells where toe and hold-down stand, and how far the piston went', () => {
    const still = rest(rig, state);
    const i = balance(rig, state, { pressure: 3, turning: 1 });
    for (const side of SIDES) {
      const shoe = brake.shoes[side];
      const s = i.shoes[side];
      const toe = placePoint(shoe, s.pose, shoe.toe);
      near(Math.hypot(toe[0] - s.toe[0], toe[1] - s.toe[1]), 0, { abs: 1e-9 }, 'toe');
      const hold = placePoint(shoe, s.pose, shoe.holdDown.at);
      const { at } = s.holdDown;
      near(Math.hypot(hold[0] - at[0], hold[1] - at[1]), 0, { abs: 1e-9 }, 'hold-down');
      const out = side === 'front' ? -1 : 1;
      const went = out * (s.toe[0] - still.shoes[side].toe[0]);
      // At rest the hold-downs give by less than a µm.
      near(s.pistonTravel, went, { abs: 2e-3 }, 'travel');
      expect([s.side, s.pose.ux, s.pose.uy, s.pose.modes.length]).toEqual([side, 0, 0, 0]);
    }
  });
});
