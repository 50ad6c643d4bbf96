import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  balance,
  freshState,
  type Instant,
  peak,
  rest,
  type Side,
  SOUND,
  standingState,
} from '../../sim/index.ts';
import { pinnedPair, quay, tablesQuay } from '../brakes.ts';
import { leftOver } from '../left-over.ts';
import { near } from '../near.ts';
import { samples } from '../samples.ts';

const van = quay();
/** The first teaching brake without hold-down friction: nothing then takes up what is left over. */
const free = quay((s) => {
  s.shoes.front.holdDown = { ...s.shoes.front.holdDown, friction: 0, shakenOff: 0 };
  s.shoes.rear.holdDown = { ...s.shoes.rear.holdDown, friction: 0, shakenOff: 0 };
});

describe('balance', () => {
  it('forces on each shoe sum to nothing, pressed', () => {
    for (const turning of [1, -1, 0] as const) {
      for (const pressure of [0.6, 1, 2, 4, 8]) {
        const i = balance(van.rig, van.state, { pressure, turning });
        for (const side of ['front', 'rear'] as const) {
          const { force, largest } = leftOver(van.brake, i, side);
          // Hold-downs shaken free keep a formal pull of under 0.05 N; standing they carry 12 N.
          const held = turning === 0 ? 12.01 : 0.05;
          expect(force, `${side} at ${pressure}`).toBeLessThan(1e-6 * largest + held);
        }
      }
    }
  });

  it('with no hold-down friction forces and moments sum to a millionth of the largest', () => {
    for (const pressure of [0.1, 0.3, 1, 4, 8]) {
      for (const turning of [1, -1, 0] as const) {
        const i = balance(free.rig, free.state, { pressure, turning });
        for (const side of ['front', 'rear'] as const) {
          const { force, moment, largest } = leftOver(free.brake, i, side);
          expect(force, `${side} force at ${pressure}`).toBeLessThan(1e-6 * largest);
          expect(moment, `${side} moment at ${pressure}`).toBeLessThan(1e-6 * largest);
        }
      }
    }
  });

  it('the same over random presses, frictions and standing states, old and new', () => {
    const states = free.brake.states.map(({ name }) => standingState(free.rig, name));
    let bearing = 0;
    fc.assert(
      fc.property(
        // Evenly spread: floating generators crowd about nought, where no lining touches.
        fc.integer({ min: 0, max: 1000 }).map((n) => n / 100),
        fc.integer({ min: 5, max: 60 }).map((n) => n / 100),
        fc.constantFrom(...states),
        fc.constantFrom(1 as const, -1 as const, 0 as const),
        (pressure, mu, state, turning) => {
          const built = quay((s) => {
            for (const side of ['front', 'rear'] as const) {
              s.shoes[side].lining.friction = mu;
              s.shoes[side].holdDown = { ...s.shoes[side].holdDown, friction: 0, shakenOff: 0 };
            }
          });
          const i = balance(built.rig, state, { pressure, turning });
          expect(i.locked).toBe(null);
          expect(i.residual).toBeLessThan(1e-4);
          for (const side of ['front', 'rear'] as const) {
            const { force, moment, largest } = leftOver(built.brake, i, side);
            expect(Math.max(force, moment) / largest).toBeLessThan(1e-6);
            if (i.shoes[side].normalSum > 0) bearing++;
          }
        },
      ),
      { seed: 20261125, numRuns: samples('quayVan') },
    );
    // Most of them really press on the drum.
    expect(bearing).toBeGreaterThan(1.3 * samples('quayVan'));
  });

  it('reversing the drum swaps leading and trailing exactly', () => {
    for (const pressure of [1, 4]) {
      const f = balance(van.rig, van.state, { pressure, turning: 1 });
      const b = balance(van.rig, van.state, { pressure, turning: -1 });
      // The seats are not quite mirrored (parking lever), which the parted strut does not feel.
      near(f.shoes.front.torqueOnDrum, -b.shoes.rear.torqueOnDrum, { rel: 1e-6 }, 'leading');
      near(f.shoes.rear.torqueOnDrum, -b.shoes.front.torqueOnDrum, { rel: 1e-6 }, 'trailing');
    }
  });

  it('on a brake that is its own mirror image it swaps as closely as it is solved', () => {
    // Not bit for bit: the solver stops at a millionth of a newton, 2e-10 of this push.
    const pair = pinnedPair({
      mu: 0.38,
      width: 40,
      radius: 100,
      pin: 80,
      arm: 160,
      from: 35,
      to: 145,
    });
    const f = balance(pair.rig, pair.state, { pressure: 4, turning: 1 });
    const b = balance(pair.rig, pair.state, { pressure: 4, turning: -1 });
    for (const [one, other] of [
      ['front', 'rear'],
      ['rear', 'front'],
    ] as const) {
      near(f.shoes[one].torqueOnDrum, -b.shoes[other].torqueOnDrum, { rel: 1e-9 }, one);
      near(peak(f.shoes[one].pressure), peak(b.shoes[other].pressure), { rel: 1e-9 }, one);
    }
  });

  it('no friction, equal shoes and no torque', () => {
    const slick = quay((s) => {
      s.shoes.front.lining.friction = 0;
      s.shoes.rear.lining.friction = 0;
    });
    const i = balance(slick.rig, slick.state, { pressure: 4, turning: 1 });
    near(i.shoes.front.normalSum, i.shoes.rear.normalSum, { rel: 1e-6 });
    expect(Math.abs(i.shoes.front.torqueOnDrum)).toBe(0);
    expect(Math.abs(i.shoes.rear.torqueOnDrum)).toBe(0);
  });

  it('no pressure, no torque; the strut carries the springs', () => {
    for (const turning of [1, 0, -1] as const) {
      const i = balance(van.rig, van.state, { pressure: 0, turning });
      expect(Math.abs(i.shoes.front.torqueOnDrum) + Math.abs(i.shoes.rear.torqueOnDrum)).toBe(0);
      expect(i.strutForce).toBeGreaterThan(150);
      near(i.separation, i.strutLength, { abs: 1e-9 }, 'on the strut');
    }
  });

  it('standing drum: both linings press alike and the drum feels nothing', () => {
    const i = balance(van.rig, van.state, { pressure: 4, turning: 0 });
    near(i.shoes.front.normalSum, i.shoes.rear.normalSum, { rel: 1e-6 });
    near(i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum, 0, {
      abs: 1e-3 * i.shoes.front.normalSum,
    });
  });

  it('more pressure never less torque, in every standing state', () => {
    for (const { name } of van.brake.states) {
      const state = standingState(van.rig, name);
      let before = -1;
      for (let pressure = 0; pressure <= 10; pressure += 0.25) {
        const i = balance(van.rig, state, { pressure, turning: 1 });
        expect(i.residual).toBeLessThan(1e-4);
        const torque = -(i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum);
        expect(torque).toBeGreaterThanOrEqual(before);
        before = torque;
      }
    }
  });

  it('rest pose: both centre gaps alike on a fresh build', () => {
    const r = rest(van.rig, van.state);
    const middle = (side: Side) =>
      ((r.shoes[side].gap[23] as number) + (r.shoes[side].gap[24] as number)) / 2;
    // Hold-downs give a thousandth of a millimetre to the uneven seats.
    near(middle('front'), middle('rear'), { abs: 1e-3 });
  });

  it('a stuck piston idles its shoe: the other brakes alone, far better backing up', () => {
    const van = tablesQuay();
    const stuck = {
      ...van.state,
      condition: { ...SOUND, pistonStuck: { front: true, rear: false } },
    };
    const sound = balance(van.rig, van.state, { pressure: 2, turning: 1 });
    const forward = balance(van.rig, stuck, { pressure: 2, turning: 1 });
    const backward = balance(van.rig, stuck, { pressure: 2, turning: -1 });
    expect(forward.shoes.front.normalSum).toBe(0);
    near(
      forward.shoes.rear.torqueOnDrum,
      sound.shoes.rear.torqueOnDrum,
      { rel: 0.03 },
      'trailing alone',
    );
    near(
      backward.shoes.rear.torqueOnDrum,
      -sound.shoes.front.torqueOnDrum,
      { rel: 0.03 },
      'leading alone',
    );
  });

  it('a grooved pad holds its shoe back until it snaps out', () => {
    const grooved = { ...van.state, condition: { ...SOUND, groove: 60 } };
    const gap = (pressure: number) => {
      const i = balance(van.rig, grooved, { pressure, turning: 0 });
      return i.separation - i.strutLength;
    };
    // Sound shoes touch at 5.5 bar standing (hold-down friction counts then).
    expect(gap(0.6)).toBeLessThan(0.5);
    expect(gap(0.72)).toBeGreaterThan(0.95);
  });
});

describe('any sound brake on pins', () => {
  const brakes = fc.record({
    mu: fc.double({ min: 0.05, max: 0.45, noNaN: true }),
    width: fc.double({ min: 20, max: 80, noNaN: true }),
    radius: fc.double({ min: 70, max: 250, noNaN: true }),
    pin: fc.double({ min: 0.7, max: 0.88, noNaN: true }),
    arm: fc.double({ min: 1.35, max: 1.65, noNaN: true }),
    from: fc.double({ min: 12, max: 45, noNaN: true }),
    arc: fc.double({ min: 60, max: 110, noNaN: true }),
    pressure: fc.double({ min: 0.2, max: 8, noNaN: true }),
  });

  it('balances, mirrors, grows with pressure, and has no NaN', () => {
    fc.assert(
      fc.property(brakes, (b) => {
        const built = pinnedPair({
          mu: b.mu,
          width: b.width,
          radius: b.radius,
          pin: b.pin * b.radius,
          arm: b.arm * b.radius,
          from: b.from,
          to: b.from + b.arc,
        });
        const state = freshState(built.brake);
        const press = (pressure: number, turning: 1 | -1) =>
          balance(built.rig, state, { pressure, turning });
        const f = press(b.pressure, 1);
        if (f.locked) return;
        const r = press(b.pressure, -1);
        const more = press(b.pressure * 1.1, 1);
        const torque = (i: Instant) =>
          Math.abs(i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum);
        for (const side of ['front', 'rear'] as const) {
          const { force, moment, largest } = leftOver(built.brake, f, side);
          expect(force / largest).toBeLessThan(1e-6);
          expect(moment / largest).toBeLessThan(1e-6);
          expect(f.shoes[side].pressure.every((p) => Number.isFinite(p) && p >= 0)).toBe(true);
        }
        near(torque(r), torque(f), { rel: 1e-6 }, 'mirror');
        expect(torque(more)).toBeGreaterThan(torque(f));
      }),
      { seed: 20261125, numRuns: samples('randomPairs') },
    );
  });
});
