import { expect, it } from 'vitest';
import {
  cableAt,
  handLocked,
  hookTravel,
  hotParking,
  KM,
  leverAlone,
  parked,
  spend,
  takenUp,
  wearOn,
} from '../../sim/index.ts';
import { quay, rigidQuay } from '../brakes.ts';
import { near } from '../near.ts';

const build = (stiffness?: number) => {
  const b = quay((s) => {
    if (stiffness) s.parkingLever.stiffness = stiffness;
  });
  return { ...b, worn: wearOn(b.rig, b.state, { distance: 20000 * KM }).state };
};

it('pull and cable taken up are each other’s inverse', () => {
  const { rig, worn } = build();
  for (const cable of [60, 150, 300, 600]) {
    near(cableAt(rig, worn, takenUp(rig, worn, cable)), cable, { abs: 0.05 }, `${cable} N`);
  }
  expect(cableAt(rig, worn, 0.9)).toBe(0);
  expect(cableAt(rig, worn, 1000)).toBeNaN();
  // 10 mm more slack takes 10 mm more cable for the same pull.
  const more = takenUp(rig, worn, 300, { moreSlack: 10 });
  near(more, takenUp(rig, worn, 300) + 10, { abs: 1e-9 }, 'more slack');
});

it('a locked hand lever keeps the length, and slips a little below the constant pull', () => {
  const { rig, worn } = build();
  const taken = takenUp(rig, worn, 300);
  const l = handLocked(rig, worn, taken);
  near(l.standing, 300, { abs: 0.05 }, 'standing');
  for (const [way, turning] of [
    ['forward', 1],
    ['backward', -1],
  ] as const) {
    const { cable } = l[way];
    const all = spend(rig, worn, cable, hookTravel(rig, worn, cable, turning)).total;
    near(all, taken, { abs: 1e-3 }, `length ${way}`);
  }
  const p = parked(rig, worn, 300);
  // The stiffer the cable, the more: up to 11 per cent for 30 to 300 N/mm.
  let before = 0;
  for (const stiffness of [30, 120, 300]) {
    const b = build(stiffness);
    const locked = handLocked(b.rig, b.worn, takenUp(b.rig, b.worn, 300));
    const below = 1 - locked.forward.torque / p.forward;
    expect(below, `${stiffness} N/mm`).toBeGreaterThan(before);
    expect(below, `${stiffness} N/mm`).toBeLessThan(0.11);
    before = below;
  }
});

it('parked hot and cooled: the drum shrinks onto the shoes and the cable is drawn tighter', () => {
  const { rig, worn } = build();
  const h = hotParking(rig, worn, 300, 100);
  // By hand: the radius grows by 100·11e-6·100 = 0.11 mm; at the strut each shoe's middle (78 over
  // its pin) makes 130/78 of it, both shoes twice, and the hook 109/16 of that: 2.5 mm.
  const extra = hookTravel(rig, { ...worn, temperature: 120 }, 300) - hookTravel(rig, worn, 300);
  near(extra, ((2 * 0.11 * 130) / 78) * (109 / 16), { rel: 0.08 }, 'hook travel of the growth');
  near(h.hot.standing, 300, { abs: 0.05 }, 'drawn to');
  expect(h.cooled.taken).toBe(h.hot.taken);
  // Two springs in line: ΔF = Δh / (1/k + h'), h' the brake's own give between the two pulls.
  const give =
    (hookTravel(rig, worn, h.cooled.standing) - hookTravel(rig, worn, 300)) /
    (h.cooled.standing - 300);
  near(h.cooled.standing - 300, extra / (1 / 120 + give), { rel: 0.001 }, 'rise of the pull');
  expect(h.cooled.forward.torque).toBeGreaterThan(h.hot.forward.torque);
  // A soft spring in the line keeps the force instead: 0.1 N/mm, rise under 0.3 N.
  const soft = build(0.1);
  const s = hotParking(soft.rig, soft.worn, 300, 100);
  near(s.cooled.standing, 300, { abs: 0.3 }, 'soft cable');
  near(s.usualNotch.standing, 300, { abs: 0.3 }, 'soft cable, usual notch');
});

it('parked hot by the usual notch: most of the pull is missing and the van may roll', () => {
  const { rig, worn } = build();
  const h = hotParking(rig, worn, 300, 100);
  expect(h.usualNotch.taken).toBe(h.cold.taken);
  expect(h.usualNotch.standing).toBeLessThan(0.5 * h.cold.standing);
  expect(h.usualNotch.forward.torque).toBeLessThan(0.5 * h.cold.forward.torque);
});

it('the parking lever alone is in balance, 109 to 16 at rest', () => {
  // The table knows no parts that give.
  const { rig, state } = rigidQuay();
  const worn = wearOn(rig, state, { distance: 20000 * KM }).state;
  for (const turning of [-1, 0, 1] as const) {
    const l = leverAlone(rig, worn, 300, turning);
    near(l.ratioAtRest, 109 / 16, { rel: 0.002 }, 'ratio at rest');
    near(Math.hypot(...l.cable), 300, { abs: 1e-6 }, 'cable');
    near(300 * l.cableArm, Math.hypot(...l.strut) * l.strutArm, { rel: 1e-6 }, 'moments');
    for (const k of [0, 1] as const) {
      near(l.cable[k] + l.strut[k] + l.pivotOnLever[k], 0, { abs: 1e-9 }, 'forces');
    }
    // table 11 of the teaching tables: 2 047 N at the strut, about 1 750 at the pivot, 3.8° turned.
    near(Math.hypot(...l.strut), 2047, { rel: 0.005 }, 'strut');
    near(Math.hypot(...l.pivotOnLever), 1750, { rel: 0.005 }, 'pivot');
    near((l.turn * 180) / Math.PI, 3.8, { abs: 0.1 }, 'turn');
  }
});
