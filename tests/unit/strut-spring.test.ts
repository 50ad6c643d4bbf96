import { describe, expect, it } from 'vitest';
import {
  adjusterKinds,
  type BrakeState,
  balance,
  createMotion,
  createRig,
  kindLaws,
  playToStep,
  pressUntilSilent,
  readingOf,
  readings,
  rest,
  strutLength,
  withAdjuster,
} from '../../sim/index.ts';
import { drawingOf } from '../../ui/stage/parts/adjuster.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

/** What the spring of the strut does, by its free body: see `strutSpring` of sim/brake/kinds.ts. */

const { brake, state: fresh } = quay();
const press = { pressure: 4, turning: 1 } as const;
/** Linings worn by 0.6 mm, tooth 0; the spring on, or off. */
const worn = (strutLoose?: true): BrakeState => ({
  ...fresh,
  wear: { front: new Float64Array(48).fill(0.6), rear: new Float64Array(48).fill(0.6) },
  condition: { ...fresh.condition, ...(strutLoose ? { strutLoose } : {}) },
});
const rigOf = (kind: (typeof adjusterKinds)[number]) => createRig(withAdjuster(brake, kind));

describe.each(adjusterKinds)('%s', (kind) => {
  const rig = rigOf(kind);
  const law = kindLaws[kind].strutSpring;

  it('has a spring on its strut in the law where the drawing has one', () => {
    expect(drawingOf(rig.brake).springs.includes('strut spring')).toBe(law !== null);
  });

  it('in time as at rest: as many steps in one press', () => {
    const state = worn(true);
    const { clicks } = pressUntilSilent(rig, state, press);
    const motion = createMotion(rig, state);
    let clicked = 0;
    // The pedal comes up over 80 steps, and stays until the brake is at rest.
    for (let i = 0; i < 240; i++)
      clicked += motion.step({ pressure: Math.min(4, i * 0.05), turning: 1 }).clicked;
    if (law === 'holds it back') expect([clicked, clicks[0] ?? 0]).toEqual([0, 0]);
    else expect(clicked).toBeGreaterThan(0);
  });
});

const toothed = adjusterKinds.filter((k) => kindLaws[k].strutSpring === 'holds it back');
describe.each(toothed)('%s without it', (kind) => {
  const rig = rigOf(kind);
  const [on, off] = [balance(rig, worn(), press), balance(rig, worn(true), press)];

  it('climbs no tooth, and nothing pulls on it', () => {
    // The sound one stands a whole tooth up its flank, and its lever's spring draws the seats together.
    expect(on.climb).toBe(1);
    const pull = (i: typeof on) =>
      i.forces
        .filter((f) => f.name === 'climbing lever')
        .reduce((sum, f) => sum + Math.abs(f.force[0]), 0);
    expect(pull(on)).toBeGreaterThan(1);
    expect(pull(off)).toBe(0);
    expect(off.climb).toBe(0);
    expect(Number.isNaN(playToStep(rig.brake, worn(true)))).toBe(true);
  });

  it('goes to the front with the lever by what the shoes part beyond the lost motion', () => {
    // By hand: seats apart, less the strut, less 0.9 mm.
    near(off.strutOff ?? Number.NaN, off.separation - off.strutLength - 0.9, { abs: 1e-12 });
    expect(off.strutOff).toBeGreaterThan(0.5);
    expect(on.strutOff).toBe(undefined);
  });

  it('takes nothing up, however often it is pressed: 0.30 mm of gap and 0.60 worn off', () => {
    const { state } = pressUntilSilent(rig, worn(true), press);
    expect(state.tooth).toBe(0);
    near(readingOf(told(rig, state), 'restClearanceMean').value, 0.9, { abs: 0.01 });
  });
});

const told = (rig: ReturnType<typeof rigOf>, state: BrakeState) => {
  const i = rest(rig, state);
  return readings(rig.brake, state, i, i);
};

describe('a wedge without it', () => {
  const rig = rigOf('wedge');
  const sound = pressUntilSilent(rig, worn(), press).state;
  const loose = pressUntilSilent(rig, worn(true), press).state;
  const longer = (s: BrakeState): number => strutLength(rig.brake, s.tooth) - 103.2;

  it('takes up the play behind its hook too: 0.9 mm more', () => {
    // Each within one step of 0.02 mm; and a strut that is clamped at 40 bar gives a little more.
    near(longer(loose) - longer(sound), 0.9, { abs: 0.021 });
  });

  it('leaves no gap: with the pedal up the linings lie on the drum', () => {
    expect(readingOf(told(rig, sound), 'restClearanceMean').value).toBeGreaterThan(0.2);
    expect(readingOf(told(rig, loose), 'restClearanceMean').value).toBeLessThan(0.01);
    const drag = (s: BrakeState) =>
      Math.abs(balance(rig, s, { pressure: 0, turning: 1 }).torqueOnDrum) / 1000;
    near(drag(sound), 0, { abs: 1e-9 });
    expect(drag(loose)).toBeGreaterThan(5);
  });

  it('stays on its rear seat; what the next step needs is the step alone', () => {
    const i = balance(rig, worn(true), press);
    expect(i.strutOff).toBe(0);
    near(playToStep(rig.brake, worn(true)), 0.02, { abs: 1e-9 });
  });
});

it('a screw strut has none: nothing changes', () => {
  const rig = rigOf('screw strut');
  const [a, b] = [worn(), worn(true)].map((s) => pressUntilSilent(rig, s, press).state);
  expect(b?.tooth).toBe(a?.tooth);
  near(playToStep(rig.brake, worn(true)), playToStep(rig.brake, worn()), { abs: 1e-12 });
});
