import { describe, expect, it } from 'vitest';
import runabout from '../../../scenes/ferry-runabout.json';
import {
  boreDiameter,
  boreFrom,
  createRig,
  freshState,
  type LiningReading,
  loadMeasured,
  measure,
  readings,
  rest,
  standingState,
} from '../../../sim/index.ts';
import { filledText } from '../../../sim/workshop/index.ts';
import { mustRead, quay } from '../../brakes.ts';
import { near } from '../../near.ts';

const { rig, brake } = quay();
const nearLimit = standingState(rig, 'Near the limit');

describe('what a rule finds on the brake', () => {
  // Teaching tables, table 14 step 1 and the measurements' answer page; its life may be off by 1 %,
  // 0.025 mm of the 2.5 worn off.
  const m = measure(brake, nearLimit);
  it('leading lining near the limit: toe 2.68, thinnest 1.98, heel 3.64', () => {
    near(m.lining.front?.toe ?? 0, 2.68, { abs: 0.03 });
    near(m.lining.front?.thinnest ?? 0, 1.98, { abs: 0.03 });
    near(m.lining.front?.heel ?? 0, 3.64, { abs: 0.03 });
  });
  it('trailing thinnest 3.64, drum 200.42, tooth 12', () => {
    near(m.lining.rear?.thinnest ?? 0, 3.64, { abs: 0.03 });
    near(m.drum[0] ?? 0, 200.42, { abs: 0.01 });
    expect(m.tooth).toBe(12);
  });
});

describe('a bore from its diameters', () => {
  it('an oval of ±0.12 on radius reads 199.93 to 200.41: teaching tables, fault 9', () => {
    const { mean, oval } = boreFrom([199.93, 200.41]);
    near(mean, 200.17, { abs: 1e-9 });
    near(oval, 0.12, { abs: 1e-9 });
  });
  it('three angles find mean and ovality wherever the long axis lies', () => {
    for (const turn of [0, 0.2, 0.7, 1.3, 2.9]) {
      const at = (k: number) => 200.3 + 0.24 * Math.cos(2 * (turn + (k * Math.PI) / 3));
      const { mean, oval } = boreFrom([at(0), at(1), at(2)]);
      near(mean, 200.3, { abs: 1e-9 }, `mean at ${turn}`);
      near(oval, 0.12, { abs: 1e-9 }, `oval at ${turn}`);
    }
  });
  it('one diameter is a round drum', () =>
    expect(boreFrom([200.4])).toEqual({ mean: 200.4, oval: 0 }));
});

const typed: readonly (readonly [string, LiningReading, LiningReading])[] = [
  ['table 14', { toe: 2.68, thinnest: 1.98, heel: 3.64 }, { toe: 4.0, thinnest: 3.64, heel: 4.2 }],
  ['even', { toe: 3, thinnest: 3, heel: 3 }, { toe: 4.5, thinnest: 4.5, heel: 4.5 }],
  ['thinnest at the toe', { toe: 2, thinnest: 2, heel: 3.5 }, { toe: 3.1, thinnest: 3.1, heel: 4 }],
  ['thinnest at the heel', { toe: 4, thinnest: 1.2, heel: 1.2 }, { toe: 4, thinnest: 3, heel: 3 }],
];
describe('the brake loaded from a sheet reads as typed', () => {
  for (const [name, front, rear] of typed) {
    it(name, () => {
      const loaded = loadMeasured(rig, {
        drum: [200.5, 200.42, 200.44],
        lining: { front, rear },
        tooth: 12,
        leverOffStop: 3,
        distance: 50e9,
      });
      if (!loaded.ok) throw new Error(JSON.stringify(loaded.findings));
      expect(loaded.notes).toEqual([]);
      const back = measure(brake, loaded.state);
      for (const [side, lining] of [
        ['front', front],
        ['rear', rear],
      ] as const) {
        for (const place of ['toe', 'thinnest', 'heel'] as const) {
          near(back.lining[side]?.[place] ?? 0, lining[place], { abs: 0.005 }, `${side} ${place}`);
        }
      }
      // Sum of three diameters and their spread come back, whichever way the drum lies.
      const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);
      near(sum(back.drum), 601.36, { abs: 1e-6 }, 'mean');
      near(boreFrom(back.drum).oval, boreFrom([200.5, 200.42, 200.44]).oval, { abs: 1e-9 }, 'oval');
      expect(back.tooth).toBe(12);
      expect(back.leverOffStop).toBe(3);
      // And by the other reader: what the bench itself says.
      const instant = rest(rig, loaded.state);
      const list = readings(brake, loaded.state, instant, instant);
      const value = (key: string) => list.find((r) => r.key === key)?.value ?? Number.NaN;
      near(value('liningFront'), front.thinnest, { abs: 1e-9 }, 'thinnest, front');
      near(value('liningRear'), rear.thinnest, { abs: 1e-9 }, 'thinnest, rear');
      near(value('drumDiameter'), 601.36 / 3, { abs: 0.001 }, 'diameter');
      near(
        boreDiameter(rig, loaded.state, 0) - boreDiameter(rig, loaded.state, Math.PI / 2),
        4 * boreFrom([200.5, 200.42, 200.44]).oval,
        { abs: 1e-6 },
        'long less short axis',
      );
    });
  }
  it('worn as the brake wears: the profile between the three places is right to 0.06 mm', () => {
    const m = measure(brake, nearLimit);
    const loaded = loadMeasured(rig, m);
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.findings));
    for (const side of ['front', 'rear'] as const) {
      loaded.state.wear[side].forEach((w, i) => {
        near(w, nearLimit.wear[side][i] ?? 0, { abs: 0.06 }, `${side} element ${i}`);
      });
    }
  });
  it('thinnest stands about 12° above the middle: teaching tables, table 14', () => {
    const loaded = loadMeasured(rig, {
      drum: [],
      lining: { front: typed[0]?.[1] ?? {} },
      tooth: 12,
    });
    if (!loaded.ok) throw new Error('not loaded');
    const { front } = loaded.state.wear;
    const at = front.indexOf(Math.max(...front));
    near(180 - (125 + ((at + 0.5) * 110) / front.length), 12, { abs: 1.5 });
  });
  it('shoes on abutments too: worn at the toe', () => {
    const other = createRig(mustRead(runabout));
    const reading = { toe: 3.8, thinnest: 3.1, heel: 4.2 };
    const loaded = loadMeasured(other, {
      drum: [190.4],
      lining: { front: reading, rear: reading },
      tooth: 0,
    });
    if (!loaded.ok) throw new Error(JSON.stringify(loaded.findings));
    near(measure(other.brake, loaded.state).lining.rear?.toe ?? 0, 3.8, { abs: 0.005 });
  });
});

describe('what was not measured', () => {
  it('is filled in and told', () => {
    const loaded = loadMeasured(rig, { drum: [], lining: { front: { thinnest: 3 } }, tooth: 0 });
    if (!loaded.ok) throw new Error('not loaded');
    expect(loaded.notes.map(filledText).join(' ')).toMatch(
      /drum.*new.*front lining.*even.*rear lining.*new/i,
    );
    near(Math.min(...loaded.state.wear.front), 1.5, { abs: 1e-12 });
    expect(loaded.state.wear.rear).toEqual(freshState(brake).wear.rear);
  });
  it('an uncounted tooth stands where presses fall silent: 12 near the limit', () => {
    const { tooth: _, ...m } = measure(brake, nearLimit);
    const loaded = loadMeasured(rig, m);
    if (!loaded.ok) throw new Error('not loaded');
    expect(loaded.state.tooth).toBe(12);
  });
});

describe('what cannot be is answered by place, found and allowed', () => {
  const wrong = loadMeasured(rig, {
    drum: [200.2, 205.4],
    lining: { front: { toe: 2.5, thinnest: 3, heel: 3.5 }, rear: { thinnest: 9 } },
    tooth: 21,
    leverOffStop: -1,
  });
  it('all at once', () => {
    expect(wrong.ok).toBe(false);
    if (wrong.ok) return;
    expect(wrong.findings.map((f) => f.path)).toEqual([
      'drum.1',
      'lining.front.thinnest',
      'lining.rear.thinnest',
      'tooth',
      'leverOffStop',
    ]);
    expect(wrong.findings[1]).toMatchObject({
      found: '3 mm',
      allowed: expect.stringMatching(/2.5 mm/),
    });
  });
});
