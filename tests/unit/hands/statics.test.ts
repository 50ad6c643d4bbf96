import { describe, expect, it } from 'vitest';
import {
  balance,
  createMotion,
  createRig,
  type Hand,
  type Instant,
  type Rig,
  restingFrom,
  stopStiffness,
} from '../../../sim/index.ts';
import { quay, rigidQuay } from '../../brakes.ts';
import { drawn, pulling, stopsDeep, toes } from '../../hands.ts';
import { near } from '../../near.ts';

const { rig, state, brake } = rigidQuay();
const { front, rear } = brake.shoes;
const still = { pressure: 0, turning: 0 } as const;
const home = balance(rig, state, still);
/** Radius of a toe and of a strut seat about the pin, upright, mm. */
const TOE = front.toe[1] - front.anchor.at[1];
const SEAT = front.strutSeat[1] - front.anchor.at[1];
const moved = (i: Instant, side: 'front' | 'rear' = 'front'): number =>
  i.shoes[side].toe[0] - home.shoes[side].toe[0];
const by = (hands: readonly Hand[], drumOff = false): Instant =>
  balance(rig, state, { ...still, hands, drumOff });

/** Motion with the hand drawn out over 0.3 s and kept for a second. */
function inTime(hands: readonly Hand[], drumOff = false, on: Rig = rig) {
  const motion = createMotion(on, state);
  for (let n = 1; n <= 312; n++) {
    motion.step({ ...still, drumOff, hands: drawn(hands, Math.min(1, n / 72)) });
  }
  return motion;
}

describe('one hand on a pair at rest', () => {
  it('carries the pair over until a lining meets the drum: its whole play, twice the centre gap, at the toe', () => {
    // Both centre gaps 0.3 mm at 78 over the pin; the toe stands at twice that: 2 × 0.3 mm (similar triangles).
    for (const newton of [50, 100, 200]) {
      near(moved(by([pulling('front', front.toe, newton, -1)])), -0.6, { abs: 2e-3 }, 'out');
      near(moved(by([pulling('front', front.toe, newton, 1)])), 0.6, { abs: 2e-3 }, 'in');
      near(moved(by([pulling('front', [-100, 0], newton, -1)])), -0.6, { abs: 2e-3 }, 'middle');
    }
    // What hold-downs hold at the toe: 2 × 12 N at (82.5 over, 74.5 up), moments about the pins, over 156: 15.3 N.
    const grip = (2 * 12 * Math.hypot(82.5 - 16, 78 - 3.5)) / TOE;
    expect(grip).toBeGreaterThan(15);
    expect(Math.abs(moved(by([pulling('front', front.toe, 0.9 * grip, -1)])))).toBeLessThan(0.01);
    expect(Math.abs(moved(by([pulling('front', front.toe, 1.1 * grip, -1)])))).toBeGreaterThan(0.5);
  });

  it('pulled out it takes nothing off the strut beyond the springs; pushed in, its force passes through it', () => {
    for (const newton of [50, 100, 200]) {
      near(by([pulling('front', front.toe, newton, -1)]).strutForce, 162, { abs: 1 }, 'out');
      // Moments about the rear pin: pushed by F at the toe, the strut bears F × toe over seat besides.
      const in_ = by([pulling('front', front.toe, newton, 1)]).strutForce;
      near(in_, 162 + (newton * TOE) / SEAT, { abs: 1.5 }, 'in');
    }
  });
});

describe('two hands on the toes', () => {
  it('part the shoes from the strut only where their moments beat its clamp: 142 N each', () => {
    // About each pin: F × toe = clamp × seat.
    const needed = (home.strutForce * SEAT) / TOE;
    near(needed, 142, { abs: 1 }, 'hand sum');
    for (const newton of [20, 50, 100]) {
      const i = by(toes(brake, newton, 'apart'));
      near(i.strutForce, home.strutForce - (newton * TOE) / SEAT, { abs: 0.5 }, 'clamp');
      near(i.separation, i.strutLength, { abs: 1e-9 }, 'still on the strut');
    }
    // Hold-downs hold too, 8 N each at the toe, and springs grow as they are drawn.
    expect(by(toes(brake, needed - 2, 'apart')).separation).toBeCloseTo(home.separation, 9);
    const apart = by(toes(brake, needed + 50, 'apart'));
    // To the drum: 0.3 mm at the middle, times seat over middle height, on both sides.
    near(apart.separation - home.separation, (2 * 0.3 * SEAT) / 78, { abs: 2e-3 }, 'parted');
    expect(apart.strutForce).toBe(0);
  });

  it('pushed together nothing gives; the force passes through the strut', () => {
    for (const newton of [20, 50, 100, 200]) {
      const i = by(toes(brake, newton, 'together'));
      near(moved(i), 0, { abs: 1e-3 }, 'place');
      near(i.strutForce, home.strutForce + (newton * TOE) / SEAT, { abs: 0.6 }, 'clamp');
    }
  });
});

describe('the parking lever at its hook', () => {
  const { pivot, hook } = brake.parkingLever;
  it('is freed from its stop by a hand without any cable, and multiplies by its arms', () => {
    // About its pivot: F × 109 = clamp × 16.
    const ratio = (pivot[1] - hook[1]) / (pivot[1] - rear.strutSeat[1]);
    near(ratio, 6.81, { abs: 0.01 }, 'arms');
    expect(by([pulling('lever', hook, 20, -1)]).leverAngle).toBeLessThan(1e-12);
    for (const newton of [50, 100, 200]) {
      const i = by([pulling('lever', hook, newton, -1)]);
      // Turned by 3.5°, both arms are another by under 1 %.
      near(i.strutForce, ratio * newton, { rel: 0.01 }, `clamp ${newton}`);
      // The two gaps closed at the seats, through the same arms: 2 × 0.3 × 130/78 × 6.81.
      const way = ((2 * 0.3 * SEAT) / 78) * ratio;
      near(Math.sin(i.leverAngle) * (pivot[1] - hook[1]), way, { rel: 0.015 }, `hook ${newton}`);
    }
  });
});

describe('a piston by hand', () => {
  const sticky = createRig({ ...brake, cylinder: { ...brake.cylinder, cupFriction: 30 } });
  const push = (newton: number) => [pulling('front piston', front.toe, newton, 1)];
  it('goes back off its toe against its cup and the fluid, and stays where it is let go', () => {
    for (const [pressure, on, needed] of [
      [0, sticky, 30],
      [0.1, rig, 0.1 * brake.cylinder.area],
      [0.1, sticky, 0.1 * brake.cylinder.area + 30],
    ] as const) {
      const at = (newton: number) =>
        balance(on, state, { pressure, turning: 0, hands: push(newton) }).shoes.front;
      // The cup's lip only bends: 30 N.
      expect(at(0.97 * needed).pistonBehind ?? 0).toBeLessThan(0.02);
      // Cup lips meet in the middle: 27.5 − 19.5 mm.
      const { pistonTravel, pistonBehind, pistonForce } = at(1.03 * needed);
      near(pistonTravel - (pistonBehind ?? 0), -8, { abs: 1e-9 }, `${pressure} ${needed}`);
      expect(pistonForce).toBe(0);
      // Where cups hold nothing, the other piston's fluid has carried the pair over meanwhile.
      near(pistonTravel, pressure > 0 && on === rig ? -0.6 : 0, { abs: 0.05 }, 'toe');
    }
    const motion = inTime(push(60), false, sticky);
    const back = motion.instant().shoes.front.pistonBehind ?? 0;
    near(back, 8, { abs: 0.05 }, 'in time');
    for (let n = 0; n < 60; n++) motion.step(still);
    near(
      motion.instant().shoes.front.pistonBehind ?? 0,
      back,
      { abs: 0.02 },
      'let go, but for the lip of its cup',
    );
    // Fluid brings it back to its toe as soon as it beats the cup.
    for (let n = 0; n < 60; n++) motion.step({ pressure: 0.3, turning: 0 });
    expect(motion.instant().shoes.front.pistonBehind ?? 0).toBe(0);
  });
});

describe('with the drum off', () => {
  it('the shoes stop at cylinder, pads and hub, none deeper than 0.01 mm', () => {
    for (const sense of [-1, 1] as const) {
      for (const newton of [50, 100]) {
        const i = by([pulling('front', front.toe, newton, sense)], true);
        expect(i.lost).toBe(false);
        const stops = stopsDeep(brake, i);
        expect(stops.length).toBeGreaterThan(0);
        for (const { deep } of stops) expect(deep).toBeLessThan(0.01);
        // Toe from 27.5 to the cylinder's end at 18 and a folded boot of 2.
        expect(Math.abs(moved(i))).toBeGreaterThan(6);
        expect(Math.abs(moved(i))).toBeLessThan(7.5);
      }
    }
  });
});

it('a stop is as stiff as its contact, by the parts’ sizes', () => {
  // Steel, 210 000 MPa and 0.3: 2(1 − ν²)/πEl = 6.90e-7 mm/N on a web of 4 mm; ν/(1 − ν) = 0.4286. Load 1.5 kN and
  // 5 mm behind it, b² = 8·1500·r·0.91/(π·210 000·l), as K. L. Johnson, Contact Mechanics, has line contact.
  const byHand = (r: number, l: number): number => {
    const b = Math.sqrt((8 * 1500 * r * 0.91) / (Math.PI * 210000 * l));
    return 1 / (((2 * 0.91) / (Math.PI * 210000 * l)) * (2 * Math.log(10 / b) - 0.3 / 0.7));
  };
  const van = quay().brake;
  // The van: edges of 2.25 mm, web 4, hub 30, the web's inner edge on 100 − 4.5 − 2 − 22.5 = 71, lever of 5.
  near(stopStiffness(van, 'front', 'cylinder'), byHand(2.25, 4), { rel: 1e-9 }, 'toe');
  near(stopStiffness(van, 'rear', 'pads'), byHand(2.25, 4), { rel: 1e-9 }, 'hold-down');
  near(stopStiffness(van, 'front', 'hub'), byHand((30 * 71) / 41, 4), { rel: 1e-9 }, 'web');
  near(stopStiffness(van, 'rear', 'lever'), byHand(30, 5), { rel: 1e-9 }, 'lever');
  near(byHand(2.25, 4), 1.64e5, { rel: 0.01 }, 'in numbers');
});

it('both pistons and a hand on one stop, a spring unhooked: 1.16 kN, less than 0.01 mm deep', () => {
  const condition = { ...state.condition, unhooked: [0] };
  const held = balance(
    rig,
    { ...state, condition },
    { pressure: 2, turning: 0, drumOff: true, hands: [pulling('front', front.toe, 200, -1)] },
  );
  const most = Math.max(
    ...held.forces.filter((f) => f.name.startsWith('stop')).map((f) => Math.hypot(...f.force)),
  );
  // Two pistons of 19.05 mm at 20 bar push 1.14 kN, which one stop bears.
  expect(most).toBeGreaterThan((2 * 2 * Math.PI * 19.05 ** 2) / 4);
  for (const { name, deep } of stopsDeep(brake, held)) expect(deep, name).toBeLessThan(0.01);
});

describe('springs and hold-downs taken off', () => {
  it('are missing to all that computes: without both springs nothing clamps the strut', () => {
    const off = (unhooked: readonly number[], unheld: readonly ('front' | 'rear')[] = []) => ({
      ...state,
      condition: { ...state.condition, unhooked, unheld },
    });
    const lower = balance(rig, off([0]), still);
    expect(lower.springs[0]?.force).toBe(0);
    near(lower.springs[1]?.force ?? 0, home.springs[1]?.force ?? 0, { abs: 1e-9 }, 'the other');
    expect(lower.strutForce).toBeLessThan(0.4 * home.strutForce);
    expect(balance(rig, off([0, 1]), still).strutForce).toBeLessThan(1e-6);
    // Without hold-downs a finger carries the pair over.
    const light = [pulling('front', front.toe, 4, -1)];
    const loose = balance(rig, off([], ['front', 'rear']), { ...still, hands: light });
    near(moved(loose), -0.6, { abs: 5e-3 }, 'loose');
    expect(Math.abs(moved(by(light)))).toBeLessThan(0.01);
  });
});

describe('Motion and Balance with a hand', () => {
  it('agree from rest within 0.1 % wherever no hold-down slips on the way', () => {
    for (const newton of [20, 50, 100]) {
      for (const hands of [toes(brake, newton, 'apart'), toes(brake, newton, 'together')]) {
        const m = inTime(hands).instant();
        near(m.strutForce, by(hands).strutForce, { rel: 1e-3 }, `toes ${newton}`);
      }
    }
    for (const newton of [50, 100, 200]) {
      const hands = [pulling('lever', brake.parkingLever.hook, newton, -1)];
      const m = inTime(hands).instant();
      near(m.strutForce, by(hands).strutForce, { rel: 1e-3 }, `hook ${newton}`);
      near(m.leverAngle, by(hands).leverAngle, { rel: 1e-3 }, `lever ${newton}`);
    }
  });

  it('Balance asked from Motion’s own pose and bristles stays there, drum on and off', () => {
    const other = createRig(brake);
    const kinds: readonly (readonly Hand[])[] = [
      [pulling('front', front.toe, 60, -1)],
      [pulling('rear', [100, 0], 90, 1)],
      toes(brake, 100, 'apart'),
      toes(brake, 180, 'apart'),
      [pulling('lever', brake.parkingLever.hook, 80, -1)],
      [pulling('strut', [0, 52], 70, 1)],
    ];
    for (const drumOff of [false, true]) {
      for (const hands of kinds) {
        const motion = inTime(hands, drumOff);
        for (let n = 0; n < 480; n++) motion.step({ ...still, drumOff, hands });
        const m = motion.instant();
        const b = restingFrom(other, motion.snapshot());
        for (const side of ['front', 'rear'] as const) {
          near(b.shoes[side].pose.phi, m.shoes[side].pose.phi, { abs: 1e-8 }, side);
        }
        near(b.strutForce, m.strutForce, { rel: 1e-6, abs: 1e-4 }, 'clamp');
        near(b.leverAngle, m.leverAngle, { abs: 1e-6 }, 'lever');
      }
    }
  });
});
