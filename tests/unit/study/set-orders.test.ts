import { expect, it } from 'vitest';
import { type OrderOutcome, type SettingOrder, setOrders } from '../../../sim/index.ts';
import { brakeOf, rigOf } from '../../../ui/record/derive.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { setUp } from '../../../ui/stations/order/part.ts';
import { near } from '../../near.ts';

/** The quay van with new linings in its worn drum, as New shoes takes it. */
const moment = plainMoment('order');
const rig = rigOf(moment);
const { preset, back } = setUp(moment);
const rows = setOrders(rig, preset, back, 300);
const of = (order: SettingOrder) => rows.find((r) => r.order === order) as OrderOutcome;

it('the right order leaves a gap that the adjuster set: free by hand, silent', () => {
  const right = of('right');
  expect(right.turns).toBe(0);
  expect(right.off).toBe(0);
  // 5 to 9 notches is the usual count of a lever (common practice; the teaching tables have 5.3).
  expect(right.notches).toBeGreaterThan(5);
  expect(right.notches).toBeLessThan(9);
});

it('a cable drawn up first gives the right count of notches, and the adjuster never steps', () => {
  const first = of('cable first');
  near(first.notches, of('right').notches, { abs: 0.05 });
  expect(first.teeth).toBe(0);
  expect(first.off).toBeGreaterThan(1);
  // Let off, the strut is where it was: by hand, each tooth that is missing leaves its growth as gap,
  // 0.145 mm a lining and tooth (the table of New shoes: clearance −1.32 at tooth 13, −1.47 at 14, −1.62 at 15).
  const missing = preset.tooth - back.tooth;
  near(of('let off').gap - of('right').gap, 0.1475 * missing, {
    abs: 0.01 * missing,
  });
  expect(of('let off').notches).toBeGreaterThan(of('right').notches + 1);
  expect(of('let off').pedal).toBeGreaterThan(of('right').pedal + 3);
});

it('pressed hot it steps too far by what the drum grew, and is tight when it is cold', () => {
  const hot = of('hot');
  // By hand: cast iron grows 10 to 12 millionths a kelvin (handbooks), so 180 K make 0.18 to 0.22 mm of
  // a radius of 100: one tooth of 0.145 at the least, two at the most.
  expect(hot.teeth - of('right').teeth).toBeGreaterThanOrEqual(1);
  expect(hot.teeth - of('right').teeth).toBeLessThanOrEqual(2);
  near(of('right').gap - hot.gap, 0.1475 * (hot.teeth - of('right').teeth), { abs: 0.01 });
  expect(brakeOf(moment).drum.radiusNew).toBeGreaterThan(90);
});
