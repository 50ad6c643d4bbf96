import { describe, expect, it } from 'vitest';
import {
  adjusterKinds,
  application,
  type BrakeState,
  canFail,
  createRig,
  descended,
  gapsOf,
  KM,
  KMH,
  parkingPull,
  rest,
  standingState,
  strutLength,
  toothAcross,
  withAdjuster,
} from '../../sim/index.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { rig, brake, state: fresh } = quay();
const press = { pressure: 4, turning: 1 } as const;
const centre = (r: typeof rig, s: BrakeState): number => {
  const i = rest(r, s);
  return (
    (gapsOf(r.brake.shoes.front, i.shoes.front).centre +
      gapsOf(r.brake.shoes.rear, i.shoes.rear).centre) /
    2
  );
};
const bent = (change: Partial<BrakeState['condition']>, s = fresh): BrakeState => ({
  ...s,
  condition: { ...s.condition, ...change },
});

describe('another kind of adjuster on the same brake', () => {
  it.each(adjusterKinds)('%s reaches as far, from the same length', (kind) => {
    const b = withAdjuster(brake, kind);
    expect(b.adjuster.kind).toBe(kind);
    expect(b.adjuster.growth.length).toBe(b.adjuster.teeth + 1);
    near(strutLength(b, 0), strutLength(brake, 0), { rel: 1e-12 }, 'at zero');
    const step = (b.adjuster.growth[1] as number) - (b.adjuster.growth[0] as number);
    near(strutLength(b, b.adjuster.teeth), strutLength(brake, 20), { abs: step }, 'at the end');
  });
  it.each(adjusterKinds)(
    '%s, worn with its tooth at zero, takes up what its kind takes',
    (kind) => {
      const b = withAdjuster(brake, kind);
      const r = createRig(b);
      const worn = { ...standingState(rig, 'Worn-in'), tooth: 0 };
      const { clicked } = application(r, worn, press);
      // One press of the toothed lever clicks five teeth (teaching tables); the wedge drops by as much
      // at once, the others one step a press.
      if (kind === 'toothed lever') expect(clicked).toBe(5);
      else if (kind === 'wedge') {
        const taken = b.adjuster.growth[clicked] as number;
        expect(taken).toBeGreaterThanOrEqual(brake.adjuster.growth[5] as number);
        expect(taken).toBeLessThan(brake.adjuster.growth[6] as number);
      } else expect(clicked).toBe(1);
    },
  );
  it('a tooth is put across as long as it was, or a little shorter', () => {
    const screw = withAdjuster(brake, 'screw strut');
    const n = toothAcross(brake, screw, 5);
    const off = strutLength(brake, 5) - strutLength(screw, n);
    expect(off).toBeGreaterThanOrEqual(-1e-9);
    expect(off).toBeLessThan(0.05);
  });
  it.each([
    ['toothed lever', ['worn teeth', 'broken lever spring', 'wrong side']],
    ['incremental', ['worn teeth', 'broken lever spring', 'wrong side']],
    ['screw strut', ['wrong side']],
    ['wedge', []],
  ] as const)('%s: of the faults of one part alone it has those of its own parts', (kind, has) => {
    const ofParts = ['worn teeth', 'broken lever spring', 'wrong side'] as const;
    expect(ofParts.filter((id) => canFail(kind, id))).toEqual(has);
    expect(canFail(kind, 'seized short') && canFail(kind, 'stepped hot')).toBe(true);
  });
  it('its own kind keeps its numbers', () => {
    expect(withAdjuster(brake, 'toothed lever').adjuster).toEqual(brake.adjuster);
  });
});

describe('stepping on a hot drum (teaching tables, just clicked, descents at 40 km/h)', () => {
  const clicked = standingState(rig, 'Just clicked');
  const story = (r: typeof rig, slope: number, km: number, presses = 1) => {
    const hill = { slope: slope / 100, length: km * KM, speed: 40 * KMH };
    let s: BrakeState = { ...clicked, temperature: descended(r.brake, 20, hill) };
    const before = centre(r, s);
    let teeth = 0;
    for (let n = 0; n < presses; n++) {
      const a = application(r, s, press);
      teeth += a.clicked;
      s = a.state;
    }
    const i = rest(r, { ...s, temperature: 20 });
    const cold = { ...s, temperature: 20 };
    return { teeth, before, cold, drags: i.shoes.front.gap.some((g) => g < 0) };
  };
  it('8 % for 3 km: clearance 0.27 to 0.39, no click', () => {
    near(centre(rig, clicked), 0.27, { abs: 0.01 }, 'cold');
    const s = story(rig, 8, 3);
    near(s.before, 0.39, { abs: 0.01 }, 'hot');
    expect(s.teeth).toBe(0);
  });
  it('12 % for 4 km: one click, cold again 0.12', () => {
    const s = story(rig, 12, 4);
    expect(s.teeth).toBe(1);
    near(centre(rig, s.cold), 0.12, { abs: 0.01 }, 'cold');
    expect(s.drags).toBe(false);
  });
  it('16 % for 4 km: two clicks, 0.59 before, and cold it drags', () => {
    const s = story(rig, 16, 4);
    expect(s.teeth).toBe(2);
    near(s.before, 0.59, { abs: 0.012 }, 'hot');
    expect(s.drags).toBe(true);
  });
  it('one tooth a press: cold 0.12 after one hot press', () => {
    const s = story(createRig(withAdjuster(brake, 'incremental')), 16, 4);
    expect(s.teeth).toBe(1);
    near(centre(rig, s.cold), 0.12, { abs: 0.01 });
  });
  it('with a hot lock: no step, 0.27', () => {
    const s = story(createRig(withAdjuster(brake, 'toothed lever', { hotLock: 120 })), 16, 4, 5);
    expect(s.teeth).toBe(0);
    near(centre(rig, s.cold), 0.27, { abs: 0.01 });
  });
});

describe('adjusters out of order', () => {
  const worn = standingState(rig, 'Worn-in');
  const short = { ...worn, tooth: 0 };
  it('seized, with a broken spring, or on the wrong side it never steps', () => {
    for (const change of [
      { adjusterSeized: true },
      { leverSpring: 0 },
      { adjusterStep: 0 as const },
    ]) {
      expect(application(rig, bent(change, short), press).clicked).toBe(0);
    }
  });
  it('on the wrong side it can wind back, one step a press, not below zero', () => {
    const back = bent({ adjusterStep: -1 }, { ...worn, tooth: 2 });
    const once = application(rig, back, press);
    expect(once.clicked).toBe(-1);
    expect(application(rig, { ...back, tooth: 0 }, press).clicked).toBe(0);
  });
  it('a weak spring drops in late by what it lacks', () => {
    // Separation 1.05 + teeth 0..5 (about 2.4): needs 0.90 + 0.5 a tooth, and half a tooth more.
    const sound = application(rig, short, press).clicked;
    const weak = application(rig, bent({ leverSpring: 0.5 }, short), press).clicked;
    expect(sound - weak).toBeGreaterThanOrEqual(0);
    expect(sound - weak).toBeLessThanOrEqual(1);
    const edge = { ...standingState(rig, 'Before a click') };
    const later = { ...edge, drumRadius: edge.drumRadius + 0.04 };
    expect(application(rig, later, press).clicked).toBe(1);
    expect(application(rig, bent({ leverSpring: 0.5 }, later), press).clicked).toBe(0);
  });
  it('worn teeth hold on the pedal, lose one at each parking pull, and click again next press', () => {
    // Teaching tables: 5, 4, 3; clearance 0.31, 0.46, 0.61; two clicks at the next press.
    let s = bent({ teethHold: 1000 }, worn);
    expect(s.tooth).toBe(5);
    near(centre(rig, s), 0.31, { abs: 0.01 });
    expect(application(rig, s, press).clicked).toBe(0);
    for (const [tooth, gap] of [
      [4, 0.46],
      [3, 0.61],
    ] as const) {
      const pull = parkingPull(rig, s, 265);
      expect(pull.lost).toBe(1);
      near(pull.strutForce, 1805, { rel: 0.02 }, 'strut');
      s = pull.state;
      expect(s.tooth).toBe(tooth);
      near(centre(rig, s), gap, { abs: 0.01 });
    }
    expect(application(rig, s, press).clicked).toBe(2);
  });
  it('sound teeth hold any pull', () => {
    expect(parkingPull(rig, worn, 600).lost).toBe(0);
  });
  it('driven by the parking pull: never on the pedal, one step at each pull until it is close', () => {
    const r = createRig(withAdjuster(brake, 'screw strut', { drivenBy: 'parking pull' }));
    let s: BrakeState = { ...fresh, drumRadius: fresh.drumRadius + 0.1 };
    expect(application(r, s, press).clicked).toBe(0);
    let pulls = 0;
    for (; pulls < 60; pulls++) {
      const p = parkingPull(r, s, 265);
      if (p.clicked === 0) break;
      expect(p.clicked).toBe(1);
      s = p.state;
    }
    expect(pulls).toBeGreaterThan(3);
    expect(pulls).toBeLessThan(30);
    // As close as the pedal would have set it, give or take a step.
    const pedal = createRig(withAdjuster(brake, 'screw strut'));
    let t: BrakeState = { ...fresh, drumRadius: fresh.drumRadius + 0.1 };
    for (let n = 0; n < 60; n++) t = application(pedal, t, press).state;
    near(s.tooth, t.tooth, { abs: 1 });
  });
});
