import { describe, expect, it } from 'vitest';
import runabout from '../../scenes/ferry-runabout.json';
import { bentPoints } from '../../sim/balance/bent.ts';
import { dress, workFor } from '../../sim/balance/dress.ts';
import { makeLink, measure } from '../../sim/balance/forces/sums.ts';
import { isTold } from '../../sim/balance/instant.ts';
import { makePlaced, place, placePoint, poseOf, turnsOf } from '../../sim/balance/place.ts';
import {
  climbedBy,
  playNow,
  playToStep,
  seatsToStep,
  strutTaken,
  teethPassed,
} from '../../sim/balance/ratchet.ts';
import type { ShoeRig } from '../../sim/balance/types.ts';
import { balance, createRig, freshState, SOUND, withAdjuster } from '../../sim/index.ts';
import { mustRead, quay } from '../brakes.ts';
import { near } from '../near.ts';

const { brake, rig, state } = quay();
const QUARTER = Math.PI / 2;

describe('where a point of a shoe stands', () => {
  it('is turned about its anchor and shifted with it', () => {
    // The front pin is at (−16, −78). A quarter turn brings (3, 4) from it to (−4, 3); shifted by (1, 2).
    const pose = { ux: 1, uy: 2, phi: QUARTER, modes: [] };
    const [x, y] = placePoint(brake.shoes.front, pose, [-13, -74]);
    near(x, -16 + 1 - 4, { abs: 1e-9 }, 'x');
    near(y, -78 + 2 + 3, { abs: 1e-9 }, 'y');
  });

  it('also by less than a quarter', () => {
    // Cosine 0.8 and sine 0.6 bring (3, 4) to (0, 5), (5, 0) to (4, 3).
    const pose = { ux: 0, uy: 0, phi: Math.atan2(3, 4), modes: [] };
    const turned = [
      placePoint(brake.shoes.front, pose, [-13, -74]),
      placePoint(brake.shoes.front, pose, [-11, -78]),
    ].flat();
    [-16, -73, -12, -75].forEach((v, i) => {
      near(turned[i] as number, v, { abs: 1e-9 }, `${i}`);
    });
  });

  const turns = { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 };
  const posed = (front: number, rear: number, lever: number) => {
    const y = new Float64Array(rig.n);
    y[rig.front.at] = front;
    y[rig.rear.at] = rear;
    y[rig.leverAt] = lever;
    return y;
  };
  const at = (y: Float64Array, spot: Parameters<typeof place>[3]) =>
    place(rig, y, turnsOf(rig, y, turns), spot, makePlaced(rig.n));

  it('in all freedoms of the brake: on its own shoe, and how it moves with its turn', () => {
    const y = posed(QUARTER, -QUARTER, 0);
    const front = at(y, rig.spotOn('front', [-13, -74]));
    expect([front.x, front.y].map((v) => v.toFixed(9))).toEqual(['-20.000000000', '-75.000000000']);
    // ẑ × (−4, 3).
    near(front.dx[rig.front.at] as number, -3, { abs: 1e-9 }, 'dx');
    near(front.dy[rig.front.at] as number, -4, { abs: 1e-9 }, 'dy');
    expect([front.dx[rig.rear.at], front.dx[rig.leverAt], front.shoe?.side]).toEqual([
      0,
      0,
      'front',
    ]);
    // (3, 4) from the rear pin at (16, −78), a quarter turn back: (4, −3).
    const rear = at(y, rig.spotOn('rear', [19, -74]));
    near(rear.x, 20, { abs: 1e-9 }, 'rear x');
    near(rear.y, -81, { abs: 1e-9 }, 'rear y');
    near(rear.dx[rig.rear.at] as number, 3, { abs: 1e-9 }, 'rear dx');
    near(rear.dy[rig.rear.at] as number, 4, { abs: 1e-9 }, 'rear dy');
  });

  it('on the parking lever first about its pivot, then with its shoe', () => {
    // Pivot (46, 68). The lever's turn has the sense in which a pull draws the hook: on this brake clockwise.
    expect(rig.leverSense).toBe(-1);
    const turned = at(posed(0, 0, QUARTER), rig.spotOn('lever', [49, 72]));
    // (3, 4) from the pivot, a quarter turn clockwise: (4, −3).
    near(turned.x, 50, { abs: 1e-9 }, 'x');
    near(turned.y, 65, { abs: 1e-9 }, 'y');
    // −ẑ × (4, −3).
    near(turned.dx[rig.leverAt] as number, -3, { abs: 1e-9 }, 'dx');
    near(turned.dy[rig.leverAt] as number, -4, { abs: 1e-9 }, 'dy');
    // With the rear shoe, ẑ × (34, 143) from its pin.
    near(turned.dx[rig.rear.at] as number, -143, { abs: 1e-9 }, 'dx of the shoe');
    near(turned.dy[rig.rear.at] as number, 34, { abs: 1e-9 }, 'dy of the shoe');
    // The shoe a quarter turn on as well: the pivot, (30, 146) from the pin, comes to (−146, 30) from it.
    const both = at(posed(0, QUARTER, QUARTER), rig.spotOn('lever', [49, 72]));
    near(both.x, 16 - 146 + 3, { abs: 1e-9 }, 'both x');
    near(both.y, -78 + 30 + 4, { abs: 1e-9 }, 'both y');
  });

  it('on the plate it stays, and a place used again forgets what it was on', () => {
    const y = posed(0.1, 0.2, 0.3);
    const out = at(y, rig.spotOn('lever', [49, 72]));
    const guide = place(rig, y, turns, rig.guide, out);
    expect([guide.x, guide.y, guide.rx, guide.ry, guide.shoe]).toEqual([9.4, -45, 0, 0, null]);
    expect([...guide.dx, ...guide.dy].every((v) => v === 0)).toBe(true);
  });

  it('a place used again moves with nothing that it was on', () => {
    const y = posed(0.1, 0.2, 0.3);
    const out = at(y, rig.spotOn('front', [-13, -74]));
    const again = (on: 'front' | 'rear' | 'lever') => {
      const spot = rig.spotOn(on, [49, 72]);
      const used = place(rig, y, turnsOf(rig, y, turns), spot, out);
      const fresh = at(y, spot);
      expect([...used.dx, ...used.dy], on).toEqual([...fresh.dx, ...fresh.dy]);
    };
    // From shoe to shoe, to the lever and back, and twice on the same.
    for (const on of ['rear', 'lever', 'rear', 'rear', 'front', 'lever', 'front'] as const)
      again(on);
  });

  it('on a bending shoe moves with its section, and on the lever turns with that at its pivot', () => {
    const bends = createRig(brake, { flexible: true, elements: 12 });
    const y = new Float64Array(bends.n);
    for (let j = 0; j < bends.n; j++) y[j] = 0.02 + 0.03 * (j % 4);
    y[bends.leverAt] = 0.4;
    const stand = (pose: Float64Array, on: 'front' | 'rear' | 'lever') =>
      place(
        bends,
        pose,
        turnsOf(bends, pose, turns),
        bends.spotOn(on, [on === 'front' ? -51 : 51, -41]),
        makePlaced(bends.n),
      );
    for (const on of ['front', 'rear', 'lever'] as const) {
      const here = stand(y, on);
      const h = 1e-6;
      // How the section turns a lever that is turned itself is left out of its own motion (place.ts).
      for (let j = 0; j < bends.leverAt; j++) {
        const moved = (by: number) => {
          const pose = y.slice();
          pose[j] = (pose[j] as number) + by;
          return stand(pose, on);
        };
        const [up, down] = [moved(h), moved(-h)];
        near(
          here.dx[j] as number,
          (up.x - down.x) / (2 * h),
          { rel: 1e-6, abs: 1e-6 },
          `${on} x ${j}`,
        );
        near(
          here.dy[j] as number,
          (up.y - down.y) / (2 * h),
          { rel: 1e-6, abs: 1e-6 },
          `${on} y ${j}`,
        );
      }
    }
    // Not turned, the hook goes as its pivot's section does, and by that section's turn about it: ẑ × (5, −109).
    const z = bends.rear.at + bends.rear.freedoms;
    const straight = new Float64Array(bends.n);
    straight[z] = 0.01;
    const { x, y: up } = stand(straight, 'lever');
    const [gx = 0, gy = 0] = bends.rear.flex?.move(brake.parkingLever.pivot) ?? [];
    const turn = bends.rear.flex?.turn(brake.parkingLever.pivot)[0] ?? 0;
    expect(Math.abs(turn)).toBeGreaterThan(0);
    near(x - 51, 0.01 * (gx + 109 * turn), { abs: 1e-12 }, 'hook x');
    near(up + 41, 0.01 * (gy + 5 * turn), { abs: 1e-12 }, 'hook y');
  });

  it('comes back from an instant on shoes that can slide', () => {
    const sliding = createRig(mustRead(runabout));
    const i = balance(sliding, freshState(sliding.brake), { pressure: 1, turning: 1 });
    const { front, rear } = i.shoes;
    const of = ({ pose }: typeof front) => [pose.ux, pose.uy, pose.phi];
    expect([...poseOf(sliding, i)]).toEqual([...of(front), ...of(rear), i.leverAngle]);
    expect(Math.abs(front.pose.ux)).toBeGreaterThan(0);
  });

  it('comes back from an instant', () => {
    const i = balance(rig, state, { pressure: 2, turning: 1, cable: 200 });
    const y = poseOf(rig, i);
    expect(y.length).toBe(3);
    expect([...y]).toEqual([i.shoes.front.pose.phi, i.shoes.rear.pose.phi, i.leverAngle]);
  });

  it('a bent one moves by its modes, and so many times as far where it is asked', () => {
    // 0.5·2 + 0.2·3 and 0.1·2 + 0.3·3.
    const flex = { move: () => Float64Array.of(0.5, 0.1, 0.2, 0.3) };
    const points = bentPoints({ flex } as unknown as ShoeRig, [[1, 2]]);
    const [[x, y] = [0, 0]] = points([2, 3]);
    near(x, 2.6, { abs: 1e-12 }, 'x');
    near(y, 3.1, { abs: 1e-12 }, 'y');
    const [[far, high] = [0, 0]] = points([2, 3], 10);
    near(far, 17, { abs: 1e-12 }, 'x tenfold');
    near(high, 13, { abs: 1e-12 }, 'y tenfold');
    expect(points([2])).toEqual([[2, 2.2]]);
    expect(bentPoints(rig.front, [[1, 2]])([])).toEqual([[1, 2]]);
  });

  it('a link has the length and direction of its ends', () => {
    const link = makeLink(1);
    Object.assign(link.a, { x: 1, y: 2 });
    Object.assign(link.b, { x: 4, y: -2 });
    const { length, ex, ey } = measure(link);
    expect([length, ex, ey]).toEqual([5, 0.6, -0.8]);
  });

  it('and the seats of the strut stand apart as the scene has them, before the strut is fitted', () => {
    const w = workFor(dress(rig, state));
    const y = posed(0, 0, 0);
    const [a, b] = [at(y, rig.front.seat), at(y, rig.rear.seat)];
    Object.assign(w.strut.a, a);
    Object.assign(w.strut.b, b);
    near(measure(w.strut).length, 104.2, { abs: 1e-9 });
  });
});

it('an instant is told where nothing locks, is lost or yields', () => {
  const i = balance(rig, state, { pressure: 2, turning: 1 });
  expect(isTold(i)).toBe(true);
  expect(isTold({ ...i, locked: 'front' })).toBe(false);
  expect(isTold({ ...i, lost: true })).toBe(false);
  expect(isTold({ ...i, yields: { part: 'strut', force: 1 } })).toBe(false);
});

describe('the ratchet', () => {
  // Even steps of 0.4 after 103.2, six of them, 0.9 of lost motion.
  const of = (kind: 'incremental' | 'wedge' | 'screw strut') =>
    quay((s) => {
      const even = { kind, lengthAtZero: 103.2, lostMotion: 0.9, teeth: 6, pitch: 0.4 };
      s.adjuster = even as unknown as typeof s.adjuster;
      s.states = [];
    }).brake;
  const loose = { ...SOUND, strutLoose: true };
  const at = (tooth: number, condition = SOUND) => ({ tooth, condition, temperature: 20 });

  it('has its lost motion; without the strut’s spring none on a wedge and no end of it on a lever', () => {
    expect(
      ['incremental', 'wedge', 'screw strut'].map((k) => playNow(of(k as 'wedge'), SOUND)),
    ).toEqual([0.9, 0.9, 0.9]);
    expect(playNow(of('incremental'), loose)).toBe(Number.POSITIVE_INFINITY);
    expect(playNow(of('wedge'), loose)).toBe(0);
    expect(playNow(of('screw strut'), loose)).toBe(0.9);
  });

  it('drops in at strut, lost motion and a whole tooth, later by what a weak spring lacks', () => {
    const b = of('incremental');
    near(seatsToStep(b, SOUND, 2), 103.2 + 0.8 + 0.9 + 0.4, { abs: 1e-9 }, 'sound');
    near(seatsToStep(b, { ...SOUND, leverSpring: 0.25 }, 2), 105.3 + 0.3, { abs: 1e-9 }, 'weak');
    near(seatsToStep(b, SOUND, 5), 106.5, { abs: 1e-9 }, 'last');
    expect(seatsToStep(b, SOUND, 6)).toBe(Number.POSITIVE_INFINITY);
    near(playToStep(b, at(2)), 1.3, { abs: 1e-9 }, 'play');
    expect(playToStep(b, at(6))).toBeNaN();
    expect(playToStep(b, at(2, { ...SOUND, leverSpring: 0 }))).toBeNaN();
    expect(playToStep(b, at(2, loose))).toBeNaN();
    near(climbedBy(b, SOUND, 103.2, 104.3), 0.2, { abs: 1e-9 }, 'climbed');
  });

  it('drops in from just where it should, by what drives it, and not too hot', () => {
    const b = of('incremental');
    const drop = seatsToStep(b, SOUND, 2);
    const passed = (separation: number, temperature = 20, by?: 'application' | 'parking pull') => {
      const { adjuster } = b;
      const locks = {
        ...b,
        adjuster: { ...adjuster, drivenBy: 'application', hotLock: 120 },
      } as const;
      return teethPassed(locks, { tooth: 2, condition: SOUND, temperature }, separation, 0, by);
    };
    expect([passed(drop), passed(drop - 1e-9)]).toEqual([1, 0]);
    expect([passed(drop, 120), passed(drop, 120.5)]).toEqual([1, 0]);
    expect([passed(drop, 20, 'application'), passed(drop, 20, 'parking pull')]).toEqual([1, 0]);
  });

  it('a lever draws its strut along by what the seats part beyond the lost motion, a wedge never', () => {
    const b = of('incremental');
    near(strutTaken(b, 103.2, 104.6), 0.5, { abs: 1e-9 }, 'drawn');
    expect(strutTaken(b, 103.2, 104)).toBe(0);
    expect(strutTaken(of('wedge'), 103.2, 104.6)).toBe(0);
    expect(createRig(withAdjuster(brake, 'wedge', {})).brake.adjuster.kind).toBe('wedge');
  });
});
