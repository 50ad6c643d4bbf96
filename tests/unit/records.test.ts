import { describe, expect, it } from 'vitest';
import farmTrailer from '../../scenes/farm-trailer.json';
import ferryRunabout from '../../scenes/ferry-runabout.json';
import quayVan from '../../scenes/quay-van.json';
import {
  type BrakeState,
  type Condition,
  createMotion,
  createRig,
  type MotionRecord,
  SOUND,
  startState,
} from '../../sim/index.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { mustRead } from '../brakes.ts';
import { near } from '../near.ts';

/** A moment kept and gone back to: nothing that a step depends on may be left out. */

const brakes = [quayVan, farmTrailer, ferryRunabout].map((scene) => mustRead(scene));

const conditions: Readonly<Record<string, Partial<Condition>>> = {
  sound: {},
  'grooved pads': { groove: 60 },
  'a drum not true, a stuck piston': {
    offCentre: 0.05,
    oval: 0.08,
    pistonStuck: { front: true, rear: false },
  },
  'kept pressure and cable, tired springs': {
    keptPressure: 0.3,
    keptCable: 60,
    springFactor: 0.5,
    cupExtra: 30,
  },
};

const put = (state: BrakeState, changed: Partial<Condition>): BrakeState => ({
  ...state,
  condition: { ...SOUND, ...changed },
});

/** A press with all that can happen: still, driven, free under a torque, the lever pulled, backward. */
const pressAt = (n: number) =>
  ({
    pressure: n < 70 ? n / 20 : Math.max(0, 3.5 - (n - 70) / 15),
    turning: n < 8 ? 0 : n < 95 ? 1 : -1,
    cable: n > 40 && n < 60 ? 250 : 0,
    ...(n > 62 && n < 80 ? { torque: 4e4 } : {}),
  }) as const;
const STEPS = 120;

type Path = readonly string[];

/** Where every number, and every yes or no, of a record stands; of a list's places the first three. */
function leaves(value: object, path: Path = []): Path[] {
  return Object.entries(value).flatMap(([key, v]) => {
    if (Number(key) > 2) return [];
    const here = [...path, key];
    if (typeof v === 'object' && v !== null) return leaves(v, here);
    return typeof v === 'number' || typeof v === 'boolean' ? [here] : [];
  });
}

/** A copy of a record in which one of them is another. */
function changedAt<T extends object>(record: T, path: Path): T {
  const copy = structuredClone(record);
  let at = copy as Record<string, unknown>;
  for (const key of path.slice(0, -1)) at = at[key] as Record<string, unknown>;
  const last = path.at(-1) as string;
  const v = at[last];
  at[last] = typeof v === 'boolean' ? !v : (v as number) + (path.at(-1) === 'tooth' ? 1 : 0.125);
  return copy;
}

describe('a moment of Motion', () => {
  for (const brake of brakes) {
    for (const flexible of [false, true]) {
      for (const [name, changed] of Object.entries(conditions)) {
        if (flexible && name !== 'grooved pads') continue;
        it(`goes on bit for bit in another Motion: ${brake.name}, ${flexible ? 'bending, ' : ''}${name}`, () => {
          const rig = createRig(brake, { flexible });
          const state = put(startState(brake), changed);
          const motion = createMotion(rig, state);
          const kept = new Map<number, MotionRecord>();
          for (let n = 0; n < STEPS; n++) {
            if (n % 20 === 0) kept.set(n, motion.snapshot());
            motion.step(pressAt(n));
          }
          const end = motion.snapshot();
          const shown = motion.instant();
          for (const [from, record] of kept) {
            const other = createMotion(rig, startState(brake));
            other.restore(record);
            for (let n = from; n < STEPS; n++) other.step(pressAt(n));
            expect(other.snapshot(), `kept at ${from}`).toEqual(end);
            expect(other.instant(), `kept at ${from}`).toEqual(shown);
          }
        });
      }
    }
  }

  it('shows again what it showed', () => {
    const brake = mustRead(quayVan);
    const motion = createMotion(createRig(brake), put(startState(brake), { groove: 60 }));
    for (let n = 0; n < 60; n++) motion.step(pressAt(n));
    const [record, before] = [motion.snapshot(), motion.instant()];
    for (let n = 60; n < STEPS; n++) motion.step(pressAt(n));
    motion.restore(record);
    const after = motion.instant();
    for (const side of ['front', 'rear'] as const) {
      const torque = before.shoes[side].torqueOnDrum;
      near(after.shoes[side].torqueOnDrum, torque, { rel: 1e-9 }, side);
      near(after.shoes[side].pistonForce, before.shoes[side].pistonForce, { rel: 1e-9 }, side);
    }
    expect(after.turning).toBe(before.turning);
    expect(after.residual).toBe(before.residual);
  });

  it('takes back every field, also into a state that was put on since', () => {
    const brake = mustRead(ferryRunabout);
    const state = put(startState(brake), { groove: 60 });
    const motion = createMotion(createRig(brake), state);
    for (let n = 0; n < 70; n++) motion.step(pressAt(n));
    const record = motion.snapshot();
    const paths = leaves(record);
    for (const path of paths) {
      const changed = changedAt(record, path);
      expect(changed, path.join('.')).not.toEqual(record);
      motion.restore(changed);
      expect(motion.snapshot(), path.join('.')).toEqual(changed);
    }
    const told = paths.map((path) => path.join('.'));
    for (const path of [
      'steps',
      'memory.front hold-down.2',
      'memory.rear heel.0',
      'bristles.1.deflection.0',
      'state.tooth',
    ])
      expect(told).toContain(path);
    motion.load(startState(brake));
    motion.restore(record);
    expect(motion.state).toBe(record.state);
  });

  it('of another brake is refused, with what does not fit', () => {
    const [one, other] = [mustRead(quayVan), mustRead(ferryRunabout)];
    const record = createMotion(createRig(other), startState(other)).snapshot();
    const motion = createMotion(createRig(one), startState(one));
    expect(() => motion.restore(record)).toThrow(
      'Record of another brake: the number of freedoms is 7; here it is 3',
    );
    const coarse = createMotion(createRig(one, { elements: 24 }), startState(one, 24)).snapshot();
    expect(() => motion.restore(coarse)).toThrow(
      'the number of elements on the front lining is 24; here it is 48',
    );
  });
});

describe('a moment of a brake that is driven', () => {
  const drive = (w: Wearing, warm: ReturnType<Wearing['makeWarm']>, presses: number): void => {
    for (let n = 0; n < presses; n++) {
      w.press(warm, 3, n % 5 === 4 ? -1 : 1, null, w.temperature);
      w.wearOff(2e5);
      w.distance += 1000;
      w.applications++;
    }
  };

  for (const brake of brakes) {
    for (const [name, changed] of Object.entries(conditions)) {
      it(`goes on bit for bit in another one: ${brake.name}, ${name}`, () => {
        const rig = createRig(brake);
        const w = new Wearing(rig, put(startState(brake), changed));
        drive(w, w.makeWarm(), 7);
        w.tooth++;
        w.leverOffStop += 0.5;
        w.temperature = 90;
        w.rest();
        drive(w, w.makeWarm(), 3);
        const record = w.record();
        const other = new Wearing(rig, startState(brake));
        other.restore(record);
        expect(other.record()).toEqual(record);
        drive(w, w.makeWarm(), 12);
        drive(other, other.makeWarm(), 12);
        expect(other.record()).toEqual(w.record());
        expect(other.record()).not.toEqual(record);
        expect(other.pistons.map((p) => p.push)).toEqual(w.pistons.map((p) => p.push));
      });
    }
  }

  it('takes back every field, and hands out copies', () => {
    const brake = mustRead(ferryRunabout);
    const w = new Wearing(createRig(brake), startState(brake));
    drive(w, w.makeWarm(), 3);
    const record = w.record();
    for (const path of leaves(record)) {
      const changed = changedAt(record, path);
      w.restore(changed);
      expect(w.record(), path.join('.')).toEqual(changed);
    }
    const before = structuredClone(record);
    drive(w, w.makeWarm(), 3);
    expect(record).toEqual(before);
  });

  it('is no state: what is dressed is kept by identity, and would be stale', () => {
    const brake = mustRead(quayVan);
    const w = new Wearing(createRig(brake), startState(brake));
    // Its wear is its own; state() gives a copy. The type check refuses this line where it is one.
    const isState: typeof w extends BrakeState ? true : false = false;
    expect(isState || 'wear' in w).toBe(false);
  });
});
