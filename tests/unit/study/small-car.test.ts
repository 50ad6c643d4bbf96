import { describe, expect, it } from 'vitest';
import {
  application,
  type BrakeState,
  createRig,
  freshState,
  gapsOf,
  ownScene,
  readScene,
  removal,
  rest,
} from '../../../sim/index.ts';
import { type Found, judgeAxle, limitSets } from '../../../sim/workshop/index.ts';
import { quayScene } from '../../brakes.ts';
import { near } from '../../near.ts';

/**
 * A small car's rear brake as it is met in workshops (common practice): a drum of 180 mm that is marked
 * 181, linings of 3.8 mm that are replaced at 2.0. What it has to lose, what its adjuster has to make
 * up, and what holds its drum, by hand sums on plane geometry.
 */
const DRUM = 180;
const MARK = 181;
const LINING = 3.8;
const LEAST = 2;

// Geometry alone: no spring of the lever holds the seats together.
const base = readScene({
  ...quayScene(),
  adjuster: { ...quayScene().adjuster, spring: undefined },
});
if (!base.ok) throw new Error('the van is read');
const made = (teeth: number) => {
  const scene = ownScene(
    base.scene,
    { drumNew: DRUM, drumMax: MARK, liningNew: LINING, liningMin: LEAST, teeth },
    { name: 'small-car', title: 'Small car', about: 'One.', source: 'Common practice.' },
  );
  const read = readScene(scene);
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  return { brake: read.brake, scene, rig: createRig(read.brake) };
};

type P = readonly [number, number];
const turn = (p: P, a: number, c: P): P => {
  const [x, y] = [p[0] - c[0], p[1] - c[1]];
  return [c[0] + Math.cos(a) * x - Math.sin(a) * y, c[1] + Math.sin(a) * x + Math.cos(a) * y];
};
/** The van's places, drawn to 180 of 200 mm. */
const K = DRUM / 200;
const PIN: P = [-16 * K, -78 * K];
const PIN_REAR: P = [16 * K, -78 * K];
const SEAT: P = [-59.2 * K, 52 * K];
const SEAT_REAR: P = [45 * K, 52 * K];
/** Both shoes turned out alike by `a`: between the seats, mm; and how far a lining worn by `w` reaches at its middle. */
const seats = (a: number): number => {
  const [f, r] = [turn(SEAT, a, PIN), turn(SEAT_REAR, -a, PIN_REAR)];
  return Math.hypot(r[0] - f[0], r[1] - f[1]);
};
const reach = (a: number, w: number): number => Math.hypot(...turn([-(DRUM / 2 - w), 0], a, PIN));
function solve(f: (a: number) => number, wanted: number): number {
  let [low, high] = [-0.2, 0.2];
  for (let n = 0; n < 60; n++) {
    const a = (low + high) / 2;
    if (f(a) < wanted) low = a;
    else high = a;
  }
  return low;
}
/** Between the seats when linings worn by `w` lie in a bore of radius R. */
const seatsAtBore = (w: number, R: number): number => seats(solve((a) => reach(a, w), R));
/** Strut at tooth 0: the van's slack of 1.0 mm between seats drawn to size; lost motion 0.9. */
const STRUT = 104.2 * K - 1;
const LOST = 0.9;
/** A nose of 12 mm that starts at 70° and turns 2.39° a tooth. */
const grown = (tooth: number): number =>
  12 * (Math.cos((70 * Math.PI) / 180) - Math.cos(((70 + 2.39 * tooth) * Math.PI) / 180));
/** Teeth that presses take up by themselves: as many as the seats part beyond the lost motion. */
const stepped = (w: number, R: number): number => {
  const parted = seatsAtBore(w, R) - STRUT;
  let tooth = 0;
  while (tooth < 40 && parted - LOST >= grown(tooth + 1)) tooth++;
  return tooth;
};

/** Both linings worn evenly, the drum worn evenly. */
const worn = (state: BrakeState, w: number, radius: number, tooth: number): BrakeState => ({
  ...state,
  drumRadius: radius,
  tooth,
  wear: { front: state.wear.front.map(() => w), rear: state.wear.rear.map(() => w) },
});
/** Presses of 40 bar until nothing steps any more. */
function pressedOut(rig: ReturnType<typeof createRig>, from: BrakeState): BrakeState {
  let state = from;
  for (let n = 0; n < 60; n++) {
    const { state: next, clicked } = application(rig, state, { pressure: 4, turning: 1 });
    if (clicked === 0) return next;
    state = next;
  }
  throw new Error('steps without end');
}

describe('a small car’s brake, 180 mm marked 181, linings of 3.8 replaced at 2.0', () => {
  const { brake, rig } = made(20);
  const fresh = freshState(brake);

  it('has half a millimetre on the drum’s radius and 1.8 mm of lining to lose', () => {
    near(brake.drum.radiusMax - brake.drum.radiusNew, 0.5, { abs: 1e-9 });
    const { lining } = brake.shoes.front;
    near(lining.thicknessNew - lining.thicknessMin, 1.8, { abs: 1e-9 });
    const { limits } = limitSets(brake).find((set) => set.id === 'teaching') ?? {};
    if (!limits) throw new Error('no limits of this brake');
    const judged = (drumA: number, leadThin: number) => {
      const found: Found = { sizes: { drumA, leadThin }, looks: {} };
      const asNew = { drum: DRUM, lining: LINING, teeth: 20 };
      return judgeAxle({ left: found, right: found }, limits, asNew).wheels.left;
    };
    near(judged(180.2, 3).drum.margin, 0.8, { abs: 1e-9 });
    near(judged(180.2, 3).leading.margin, 1, { abs: 1e-9 });
    expect(judged(181.02, 3).drum.level).toBe('bad');
    expect(judged(180.2, 1.9).leading.level).toBe('bad');
  });

  it('each wear finds the tooth that a hand sum gives, from new to all worn', () => {
    for (const share of [0, 0.25, 0.5, 0.75, 1]) {
      const [w, R] = [1.8 * share, 90 + 0.5 * share];
      const { tooth } = pressedOut(rig, worn(fresh, w, R, 0));
      expect(tooth, `share ${share}`).toBe(stepped(w, R));
    }
  });

  it('an adjuster that is all the way out belongs to linings that are all worn', () => {
    const most = stepped(1.8, 90.5);
    const just = made(most);
    const few = made(most - 1);
    const gap = (of: typeof just, state: BrakeState): number =>
      gapsOf(of.brake.shoes.front, rest(of.rig, state).shoes.front).centre;
    const atLimit = (of: typeof just): BrakeState =>
      pressedOut(of.rig, worn(freshState(of.brake), 1.8, 90.5, 0));
    expect(atLimit(just).tooth).toBe(most);
    // A tenth short of the limit it is not.
    const before = worn(freshState(just.brake), 1.8 * 0.9, 90 + 0.5 * 0.9, 0);
    expect(pressedOut(just.rig, before).tooth).toBeLessThan(most);
    // With a tooth too few it is all out too soon, and the gap keeps what that tooth would have taken.
    const [out, short] = [atLimit(just), atLimit(few)];
    expect(short.tooth).toBe(most - 1);
    const byHand = (tooth: number): number => 90.5 - reach(solve(seats, STRUT + grown(tooth)), 1.8);
    near(gap(just, out), byHand(most), { abs: 0.002 }, 'gap, all out');
    near(gap(few, short), byHand(most - 1), { abs: 0.002 }, 'gap, a tooth short');
  });

  it('its drum is held by a lip of half a millimetre until so many teeth are backed off', () => {
    const state = pressedOut(rig, worn(fresh, 1.8, 90.5, 0));
    // The lining catches up to where its edge is cut back, 3.2° from each end of its 110°.
    const overlap = (tooth: number): number => {
      const a = solve(seats, STRUT + grown(tooth));
      const at = (degrees: number): number => {
        const rad = (degrees * Math.PI) / 180;
        const r = DRUM / 2 - 1.8;
        return Math.hypot(...turn([r * Math.cos(rad), r * Math.sin(rad)], a, PIN)) - 90;
      };
      return Math.max(...Array.from({ length: 104 }, (_, i) => at(128.2 + (i * 103.6) / 103)));
    };
    let teeth = 0;
    while (overlap(state.tooth - teeth) > 0) teeth++;
    expect(teeth).toBeGreaterThan(0);
    const found = removal(rig, state);
    near(found.fit.height, 0.5, { abs: 1e-9 });
    expect(found.heldBy).toBe('lip');
    near(found.fit.greatest, overlap(state.tooth), { abs: 0.003 });
    expect(found.backOff.teeth).toBe(teeth);
    expect(removal(rig, { ...state, tooth: state.tooth - teeth }).heldBy).toBeNull();
  });
});
