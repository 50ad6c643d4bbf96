import { expect, it } from 'vitest';
import {
  type BrakeState,
  balance,
  KM,
  onHill,
  parked,
  parkedAxle,
  ruleTorque,
  slopeHeld,
  spend,
  wearOn,
} from '../../sim/index.ts';
import { parkingRules } from '../../sim/workshop/index.ts';
import { quay, rigidQuay } from '../brakes.ts';
import { near } from '../near.ts';

/** Table 11 of the teaching tables, and its vans 9 to 11 and 18 to 20: quay van, worn in, 300 N in each cable; parts that do not give. */
const { rig, state } = rigidQuay();
const worn = wearOn(rig, state, { distance: 20000 * KM }).state;
const twenty = { kind: 'slope', percent: 20 } as const;

it('what the notches are spent on: slack 1.0, stretch 2.5, turning the lever 7.1', () => {
  const p = parked(rig, worn, 300);
  const s = spend(rig, worn, 300, p.hookTravel);
  near(s.slack, 1, { abs: 1e-9 }, 'slack');
  near(s.stretch, 2.5, { abs: 1e-9 }, 'stretch');
  near(s.turning, 7.1, { abs: 0.1 }, 'turning');
  near(s.notches, 5.3, { abs: 0.06 }, 'notches');
  near(
    spend(rig, worn, 300, p.hookTravel, { moreSlack: 10 }).notches,
    10.3,
    { abs: 0.06 },
    'slack',
  );
  const held = parked(rig, { ...worn, leverOffStop: 6 }, 300);
  near(held.notches, 1.7, { abs: 0.2 }, 'lever 6 mm off its stop');
});

it('a tooth frozen at 0 takes 13.6 notches', () => {
  const frozen: BrakeState = {
    ...state,
    condition: { ...state.condition, adjusterSeized: true },
  };
  const late = wearOn(rig, frozen, { distance: 20000 * KM }).state;
  expect(late.tooth).toBe(0);
  // The table's 13.6 takes the hook's travel as 6.81 times the strut's; here the hook also goes back
  // with its own shoe: 37 mm over the pin by the shoe's turn of 0.018, 0.67 mm or 0.33 of a notch.
  near(parked(rig, late, 300).notches, 13.6 - 0.33, { abs: 0.1 }, 'notches');
});

it('slope held with its margin, both ways', () => {
  const p = parked(rig, worn, 300);
  const down = onHill(rig, [p], twenty, 'down');
  const up = onHill(rig, [p], twenty, 'up');
  near(down.can / 1000, 344, { rel: 0.02 }, 'nose down');
  near(up.can / 1000, 339, { rel: 0.02 }, 'nose up');
  near(down.need / 1000, 299, { rel: 0.002 }, 'need');
  near(down.slope, 0.232, { rel: 0.02 }, 'slope nose down');
  near(up.slope, 0.228, { rel: 0.02 }, 'slope nose up');
  expect(down.holds && up.holds).toBe(true);
  near(down.margin, down.can - down.need, { abs: 1e-9 }, 'margin');
  expect(onHill(rig, [p], { kind: 'slope', percent: 30 }, 'down').holds).toBe(false);
});

it('a hook that sits higher parts the two ways by cable pull × its height over the pins', () => {
  // Hook height over the pins: 78 mm level with the axle, 98 another 20 above it. At the same strut
  // force the teaching tables say 9 and 17 per cent; of the weaker way, two figures.
  for (const [y, share] of [
    [0, 9],
    [20, 17],
  ] as const) {
    const high = quay((s) => {
      s.parkingLever.hook[1] = y;
      // Level, and clear of the hub.
      s.parkingLever.cableGuide = [35, y];
    });
    // Arm of the cable over the 16 mm of the strut: the pull for a strut force of 2 047 N.
    const cable = (2047 * 16) / (68 - y);
    const p = parked(high.rig, worn, cable);
    near(p.strutForce, 2047, { rel: 0.03 }, `strut at ${y}`);
    near((100 * (p.forward - p.backward)) / p.backward, share, { abs: 1 }, `hook at ${y}`);
    // Shoe moments differ by that couple; with a and b the torques of a leading and a trailing shoe
    // for a unit of moment, the ways differ by (a − b)·couple (mu·M_F against M_N of a hinged shoe).
    const i = balance(high.rig, worn, { pressure: 0, turning: 1, cable });
    const j = balance(high.rig, worn, { pressure: 0, turning: -1, cable });
    const t = (at: typeof i, side: 'front' | 'rear') => Math.abs(at.shoes[side].torqueOnDrum);
    const couple = cable * (y + 78);
    const a = (t(i, 'front') - t(j, 'rear')) / couple;
    const b = (t(j, 'front') - t(i, 'rear')) / couple;
    near(p.forward - p.backward, (a - b) * couple, { rel: 1e-6 }, 'the couple');
    near(a / b, 1.72 / 0.57, { rel: 0.08 }, 'shares as on the pedal');
  }
});

it('cases of one wheel out of order, and what the van then holds', () => {
  const cases = [
    // fault of one wheel or both, its torque nose down and up (N·m), the van's slopes (per cent)
    [['none', 'stiff lever'], 153, 150, 16.5, 16.3],
    [['none', 'oil on rear'], 310, 171, 22.0, 17.0],
    [['glazed', 'glazed'], 225, 222, 14.9, 14.8],
  ] as const;
  for (const [faults, down, up, slopeDown, slopeUp] of cases) {
    const wheels = parkedAxle(rig, worn, 300, faults);
    const bad = wheels[1] as (typeof wheels)[number];
    near(bad.forward / 1000, down, { rel: 0.02 }, `${faults[1]} down`);
    near(bad.backward / 1000, up, { rel: 0.02 }, `${faults[1]} up`);
    near(100 * onHill(rig, wheels, twenty, 'down').slope, slopeDown, { rel: 0.025 }, 'van down');
    near(100 * onHill(rig, wheels, twenty, 'up').slope, slopeUp, { rel: 0.025 }, 'van up');
  }
  const front = parkedAxle(rig, worn, 300, ['none', 'oil on front'])[1];
  near((front?.forward ?? 0) / 1000, 171, { rel: 0.02 }, 'oil on the front one, nose down');
  near((front?.backward ?? 0) / 1000, 303, { rel: 0.02 }, 'and nose up');
});

it('rules ask what their arithmetic says', () => {
  // 1300 kg, 20 %, two brakes, wheel 0.30 m: 375.03 N·m a brake (references, GRD-04).
  const { rig: other } = quay((s) => {
    s.vehicle.mass = 1300;
    s.vehicle.tyreRadius = 300;
  });
  near(ruleTorque(other, twenty) / 1000, 375.032, { rel: 1e-5 }, 'GRD-04');
  near(slopeHeld(other, ruleTorque(other, twenty)), 0.2, { rel: 1e-9 }, 'there and back');
  // Force over weight 0.18: 0.18·m·g·r/2.
  const efficiency = { kind: 'force over weight', percent: 18 } as const;
  near(ruleTorque(rig, efficiency), 0.18 * 1.15 * 9806.65 * 270 * 0.5, { rel: 1e-9 }, '18 %');
  for (const r of parkingRules) expect(r.what.length).toBeGreaterThan(10);
  expect(new Set(parkingRules.map((r) => r.id)).size).toBe(parkingRules.length);
});
