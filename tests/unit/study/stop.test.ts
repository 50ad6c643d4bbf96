import { expect, it } from 'vitest';
import {
  aroundTurn,
  decelerationBy,
  dragReadings,
  handTurn,
  KMH,
  pressureAt,
  pressureToSlow,
  readingOf,
  roadDrag,
  slowingReadings,
  stopAt,
  stopEnergyOf,
  stoppingDistance,
  stopReadings,
  torqueFor,
} from '../../../sim/index.ts';
import { meaningOf, stopNotes } from '../../../sim/workshop/index.ts';
import { tablesQuay } from '../../brakes.ts';
import { near } from '../../near.ts';

const { rig, brake, state } = tablesQuay();

it('stops by hand sums', () => {
  // Kinematics, by hand: from 50 km/h = 13.8889 m/s at 5 m/s² in 192.901/10 = 19.2901 m.
  near(stoppingDistance(50 * KMH, 5000) / 1000, 19.2901, { abs: 1e-4 }, 'distance');
  // Quay van, from its scene: 1 150 kg, 0.27 m, 2 brakes, 0.3. At 3 m/s² each brake gives
  // 1 150 · 3 · 0.3 · 0.27 / 2 = 139.725 N·m, and back again.
  near(torqueFor(brake.vehicle, 3000) / 1000, 139.725, { abs: 1e-9 }, 'torque');
  near(decelerationBy(brake.vehicle, 139725), 3000, { abs: 1e-9 }, 'deceleration');
  // Table 0 of the teaching tables: 227 N·m at 40 bar. Two of them over 0.27 m push 1 681 N, over
  // 345 kg (0.3 of the mass) 4.87 m/s²; from 13.8889 m/s 19.8 m in 2.85 s. Tyres need 4.87/9.81.
  const s = stopAt(rig, state, 50 * KMH, 4);
  near(s.force, 1681, { rel: 0.005 }, 'force');
  near(s.deceleration / 1000, 4.87, { rel: 0.005 }, 'slows');
  near(s.distance / 1000, 19.8, { rel: 0.005 }, 'in');
  near(s.time, 2.85, { rel: 0.005 }, 'time');
  near(s.grip, 0.497, { rel: 0.005 }, 'grip');
  // ½ · 1 150 · 13.8889² · 0.3 / 2 = 16 638 J.
  near(s.energy / 1e6, 16.638, { abs: 1e-3 }, 'energy');
});

it('tells the drum’s face by the half-space, not where the heat is through the rim', () => {
  // 0.53192·0.955·2·16.638 kJ/(2.85 s·0.020106 m²)·√2.85/12 824, from the sums above: 38.8 K.
  near(stopAt(rig, state, 50 * KMH, 4).faceRise, 38.8, { rel: 0.01 }, 'face');
  // At 10 bar some 20 N·m each: far longer than the 6.6 s of 10 mm of iron.
  expect(stopAt(rig, state, 80 * KMH, 1).faceRise).toBeNaN();
});

it('what the drum takes up is what the vehicle loses', () => {
  for (const [speed, pressure] of [
    [30, 2],
    [80, 6],
  ] as const) {
    const s = stopAt(rig, state, speed * KMH, pressure);
    // Work of the torque over the turns of the wheel: T · d/r.
    const work = (s.torque * s.distance) / brake.vehicle.tyreRadius;
    near(work, stopEnergyOf(brake, speed * KMH), { rel: 1e-12 }, 'work');
    near(s.rise * brake.drum.heatCapacity, s.energy, { rel: 1e-12 }, 'rise');
  }
});

it('finds the pressure for a deceleration, and none where none does', () => {
  const pressure = pressureToSlow(rig, state, 3000, 50 * KMH);
  near(stopAt(rig, state, 50 * KMH, pressure).deceleration, 3000, { abs: 1e-3 });
  expect(pressureToSlow(rig, state, 0, 50 * KMH)).toBe(0);
  expect(pressureToSlow(rig, state, 30000, 50 * KMH)).toBeNaN();
  const list = slowingReadings(rig, state, 3000, 50 * KMH);
  near(readingOf(list, 'stopTorque').value, 139.725, { abs: 1e-9 });
  // Master 20.64 mm, 4 : 1: 334.59 mm² and so many N for each MPa and 4.
  near(readingOf(list, 'stopPedal').value, (pressure * 334.59) / 4, { rel: 1e-4 });
  near(pressureAt(brake, readingOf(list, 'stopPedal').value), pressure, { rel: 1e-12 });
});

it('backward the same brake stops alike, its shoes changed over', () => {
  const [there, back] = [1, -1].map((way) => stopAt(rig, state, 3000, 4, way as 1 | -1));
  near(back?.distance ?? 0, there?.distance ?? 1, { rel: 1e-6 });
});

it('an oval drum stops by the mean of its turn', () => {
  const out = { ...state, condition: { ...state.condition, oval: 0.05 } };
  const turn = aroundTurn(rig, out, { pressure: 4, turning: 1 });
  const mean = turn.reduce((sum, p) => sum + p.torque, 0) / turn.length;
  near(stopAt(rig, out, 3000, 4).torque, mean, { rel: 0.01 }, 'of 72 places');
});

it('friction that hangs on speed is that of two thirds of the first', () => {
  const b = tablesQuay((q) =>
    Object.assign(q, {
      frictionAgainstPressureAndSpeed: {
        pressureExponent: 1,
        speedExponent: -0.1,
        atPressure: 1,
        atSpeed: 40,
        source: 'made up',
      },
    }),
  );
  // From 60 km/h: the mean over the way is 40 km/h, where the friction is told.
  near(
    stopAt(b.rig, b.state, 60 * KMH, 4).torque,
    stopAt(rig, state, 60 * KMH, 4).torque,
    { rel: 1e-9 },
    'as told',
  );
  expect(stopAt(b.rig, b.state, 120 * KMH, 4).torque).toBeLessThan(
    0.95 * stopAt(rig, state, 120 * KMH, 4).torque,
  );
});

it('without a press nothing stops; a shoe that locks tells nothing', () => {
  expect(stopAt(rig, state, 3000, 0)).toMatchObject({ distance: Number.POSITIVE_INFINITY });
  const locking = tablesQuay((s) => {
    s.shoes.front.lining.friction = 0.9;
  });
  for (const r of stopReadings(locking.rig, locking.state, 3000, 4)) {
    if (!/Energy|stopRise|Share/.test(r.key)) expect(r.value, r.key).toBeNaN();
  }
  expect(roadDrag(locking.rig, locking.state, 3000).torque).toBeNaN();
});

it('a released brake that touches costs its torque times the turning of the drum', () => {
  expect(roadDrag(rig, state, 50 * KMH)).toEqual({
    seized: false,
    torque: 0,
    force: 0,
    power: 0,
  });
  // Tooth 3 in a new drum would be seized (487 N·m slide the wheel): in a wider one it drags.
  const tight = { ...state, tooth: 3, drumRadius: state.drumRadius + 0.1 };
  const d = roadDrag(rig, tight, 50 * KMH);
  expect(d.torque).toBe(handTurn({ rig, state: tight }).forward);
  // ω = 13.8889 m/s / 0.27 m = 51.440 rad/s; N·mm · rad/s is mW.
  near(d.power, d.torque * 51.4403, { rel: 1e-6 }, 'power');
  near(d.force, d.torque / 270, { rel: 1e-12 }, 'at the tyre');
  const list = dragReadings(rig, tight, 50 * KMH);
  near(
    readingOf(list, 'dragPower').value,
    (readingOf(list, 'dragForce').value * 50) / 3.6,
    { rel: 1e-12 },
    'W from N and m/s',
  );
  // Of an even road: 0.015 · 1150 · 9.80665 + 0.54 · 13.89² = 273.3 N at 13.89 m/s, both brakes.
  near(
    readingOf(list, 'dragShare').value,
    (100 * 2 * readingOf(list, 'dragPower').value) / (273.3 * 13.889),
    { rel: 0.001 },
    'share',
  );
});

it('says what is assumed of the other axle, and when no tyre could', () => {
  const notes = (pressure: number) =>
    stopNotes(brake, stopAt(rig, state, 50 * KMH, pressure)).join(' ');
  expect(notes(4)).toMatch(/30 % of the braking/);
  expect(notes(4)).not.toMatch(/wheels slide/);
  expect(notes(8)).toMatch(/asks for a grip of 1\.0\d.*wheels slide/);
  for (const r of [
    ...stopReadings(rig, state, 3000, 4),
    ...slowingReadings(rig, state, 3000, 50 * KMH),
    ...dragReadings(rig, state, 3000),
  ])
    expect(meaningOf(r), r.key).toMatch(/^[A-Z].*\.$/);
});
