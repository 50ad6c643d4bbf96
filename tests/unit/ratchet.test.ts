import { describe, expect, it } from 'vitest';
import {
  balance,
  type Condition,
  climbForceAt,
  createMotion,
  KM,
  readingOf,
  readings,
  rest,
  SOUND,
  teethPassed,
  wearOn,
} from '../../sim/index.ts';
import { quay, tablesQuay } from '../brakes.ts';
import { near } from '../near.ts';

/** Even teeth of 0.4 mm, 0.9 mm of lost motion, six of them, two at most in one application. */
const even = quay((s) => {
  s.adjuster = {
    kind: 'incremental',
    lengthAtZero: 103.2,
    lostMotion: 0.9,
    teeth: 6,
    pitch: 0.4,
    perApplication: 2,
  } as unknown as typeof s.adjuster;
  // The standing states ask for clicks that six teeth do not have.
  s.states = [];
});

const at = (tooth: number, changed: Partial<Condition> = {}) => ({
  ...even.state,
  tooth,
  condition: { ...SOUND, ...changed },
});
/** Steps taken with the seats this far beyond the strut, mm. */
const steps = (play: number, state: ReturnType<typeof at>, taken = 0): number =>
  teethPassed(even.brake, state, 103.2 + 0.4 * state.tooth + play, taken);

describe('the ratchet steps', () => {
  it('when lost motion and a whole tooth are passed: 0.9 + 0.4', () => {
    expect(steps(1.299, at(2))).toBe(0);
    expect(steps(1.301, at(2))).toBe(1);
    expect(steps(1.699, at(2))).toBe(1);
    expect(steps(1.701, at(2))).toBe(2);
  });
  it('twice at most in one application, what it has taken already counted', () => {
    expect(steps(9, at(2))).toBe(2);
    expect(steps(9, at(2), 1)).toBe(1);
    expect(steps(9, at(2), 2)).toBe(0);
  });
  it('not past its last tooth', () => {
    expect(steps(9, at(5))).toBe(1);
    expect(steps(9, at(6))).toBe(0);
  });
  it('later with a weak spring, by what it lacks of the tooth; never with a broken one', () => {
    expect(steps(1.399, at(2, { leverSpring: 0.75 }))).toBe(0);
    expect(steps(1.401, at(2, { leverSpring: 0.75 }))).toBe(1);
    expect(steps(9, at(2, { leverSpring: 0 }))).toBe(0);
  });
  it('back by one with parts of the other side, once an application, and not below zero', () => {
    const wrong = { adjusterStep: -1 } as const;
    expect(steps(1.299, at(2, wrong))).toBe(0);
    expect(steps(1.301, at(2, wrong))).toBe(-1);
    expect(steps(9, at(2, wrong))).toBe(-1);
    expect(steps(9, at(2, wrong), 1)).toBe(0);
    expect(steps(9, at(1, wrong))).toBe(-1);
    expect(steps(9, at(0, wrong))).toBe(0);
    expect(steps(9, at(2, { adjusterStep: 0 }))).toBe(0);
  });
});

describe('wound back by parts of the other side', () => {
  const back = at(3, { adjusterStep: -1 });
  it('one tooth at each press that parts the seats far enough, down to none', () => {
    // So far worn that every press passes a tooth, also on the longest strut.
    const worn = { front: new Float64Array(48).fill(1.6), rear: new Float64Array(48).fill(1.6) };
    const motion = createMotion(even.rig, { ...back, wear: worn });
    const clicks: number[] = [];
    for (let press = 0; press < 5; press++) {
      let clicked = 0;
      for (let n = 0; n < 120; n++) {
        const pressure = n < 60 ? n / 15 : Math.max(0, 4 - (n - 60) / 10);
        clicked += motion.step({ pressure, turning: 1 }).clicked;
      }
      clicks.push(clicked);
    }
    expect(clicks).toEqual([-1, -1, -1, 0, 0]);
  });
  it('a life told by it loses the tooth that it had', () => {
    const life = wearOn(even.rig, { ...back, tooth: 1 }, { distance: 40000 * KM });
    expect(life.events.filter((e) => e.kind === 'click').map((e) => e.tooth)).toEqual([0]);
    expect(life.state.tooth).toBe(0);
  });
});

describe('play needed for the next tooth, as read', () => {
  const needed = (state: ReturnType<typeof at>): number => {
    const press = balance(even.rig, state, { pressure: 2, turning: 1 });
    return readingOf(readings(even.brake, state, press, rest(even.rig, state)), 'toNextTooth')
      .value;
  };
  it('is where it steps: 0.9 + 0.4, and 0.9 + 1.5 · 0.4 with a spring of half its strength', () => {
    near(needed(at(2)), 1.3, { abs: 1e-9 }, 'sound');
    near(needed(at(2, { leverSpring: 0.5 })), 1.5, { abs: 1e-9 }, 'weak');
    const weak = at(2, { leverSpring: 0.5 });
    expect(steps(needed(weak) - 1e-6, weak)).toBe(0);
    expect(steps(needed(weak) + 1e-6, weak)).toBe(1);
  });
  it('is none where it never does: at the last tooth, with a broken spring', () => {
    expect(needed(at(6))).toBeNaN();
    expect(needed(at(2, { leverSpring: 0 }))).toBeNaN();
  });
});

describe('the lever’s spring', () => {
  const van = quay();
  const tooth = (n: number): number =>
    (van.brake.adjuster.growth[n + 1] as number) - (van.brake.adjuster.growth[n] as number);

  it.each([
    // By hand: F·h + k·h²/2 on a tooth of 1 mm: 5.25, 15.75 and 26.25 mJ.
    [5, 0.5, 5.25],
    [15, 1.5, 15.75],
    [25, 2.5, 26.25],
  ])('%i N gives its lift out again: climb force × growth at every tooth', (fitted, rate, work) => {
    const { brake } = quay((s) => {
      s.adjuster.spring = { ...s.adjuster.spring, fitted, rate };
    });
    for (let n = 0; n < brake.adjuster.teeth; n++) {
      near(climbForceAt(brake, n, 1) * tooth(n), work, { rel: 1e-12 }, `tooth ${n}`);
    }
    // Some 11, 32 and 54 N at the seats, on teeth of 0.45 to 0.50 mm.
    near(climbForceAt(brake, 8, 1), work / 0.494, { rel: 0.02 });
    expect(climbForceAt(brake, brake.adjuster.teeth, 1)).toBe(0);
    near(climbForceAt(brake, 3, 0.3), 0.3 * climbForceAt(brake, 3, 1), {
      rel: 1e-12,
    });
  });

  it('is put in by the shoes: force over the way of a tooth, summed along it in Balance’s own steps', () => {
    // Without hold-downs, pushed on slowly: what the seats' pull does over a tooth is the drop's energy.
    const rig = van.rig;
    const slack = { ...van.state, drumRadius: 102 };
    let work = 0;
    let before = { way: 0, pull: 0 };
    for (let bar = 5; bar < 12; bar += 0.002) {
      const i = balance(rig, slack, { pressure: bar / 10, turning: 0 });
      const pull = i.forces
        .filter((f) => f.name === 'climbing lever' && f.on === 'front')
        .map((f) => Math.hypot(...f.force))[0] as number;
      const way = i.separation - i.strutLength - van.brake.adjuster.lostMotion;
      if (way > tooth(0)) {
        const share = (tooth(0) - before.way) / (way - before.way);
        work += share * (way - before.way) * pull;
        break;
      }
      if (way > 0) work += ((way - Math.max(0, before.way)) * (pull + before.pull)) / 2;
      before = { way, pull };
    }
    near(work, 15.75, { rel: 0.01 });
  });

  it('is none where no scene tells it: the climb costs what is named, nothing by default', () => {
    const { brake } = tablesQuay();
    expect(brake.adjuster.spring).toBeNull();
    expect(climbForceAt(brake, 3, 1)).toBe(0);
    const named = tablesQuay((s) => Object.assign(s.adjuster, { climbForce: 30 }));
    expect(climbForceAt(named.brake, 3, 0.3)).toBe(30);
  });
});
