import { expect, it } from 'vitest';
import { freshState, parkedReadings, slopeReadings } from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';
import { takeup } from '../takeup.ts';

it('tells the parked brake as the mechanics have it, and on a slope what that asks for', async () => {
  const args = ['park', 'quay-van', '--cable', '300', '--slope', '20'];
  const { readings, cable, slope } = JSON.parse((await takeup(...args, '--json')).out);
  expect([cable, slope]).toEqual([
    { value: 300, unit: 'N' },
    { value: 20, unit: '%' },
  ]);
  const { brake, rig } = quay();
  const state = freshState(brake);
  for (const r of [...parkedReadings(rig, state, 300), ...slopeReadings(rig, state, 0.2, 300)])
    expect(readings[r.key].value, r.key).toBe(r.value);
  // m·g·sin(atan 0.2)·r/n by hand, of the scene's own figures.
  const { mass, tyreRadius, brakes } = brake.vehicle;
  const need = (mass * 1000 * 9.80665 * (0.2 / Math.sqrt(1.04)) * (tyreRadius / 1000)) / brakes;
  near(readings.slopeTorque.value, need, { rel: 1e-9 }, 'N·m a wheel');
  const plain = await takeup(...args);
  expect(plain.out).toMatch(/300 N in the cable, on 20\.0 %/);
  expect(plain.out).toMatch(/Margin of the cable, nose down/);
  const level = await takeup('park', 'quay-van');
  expect(level.out).toMatch(/300 N in the cable\n/);
  expect(level.out).not.toMatch(/Margin/);
});

it('says what a pull may be', async () => {
  const { code, err } = await takeup('park', 'quay-van', '--cable', '9000');
  expect(code).toBe(2);
  expect(err).toMatch(/--cable.*9000/s);
});
