import { expect, it } from 'vitest';
import runabout from '../../../scenes/ferry-runabout.json';
import {
  balance,
  createRig,
  curveReadings,
  firstTouch,
  freshState,
  pedalCurve,
  pedalFloor,
  pedalStack,
  readingOf,
} from '../../../sim/index.ts';
import { meaningOf, pedalNotes } from '../../../sim/workshop/index.ts';
import { mustRead, tablesQuay } from '../../brakes.ts';
import { near } from '../../near.ts';

const { rig, brake, state } = tablesQuay();
const curve = pedalCurve(rig, state, 4);

it('goes through the very points of single presses, farther and harder at each', () => {
  for (const p of curve.points) {
    const i = balance(rig, state, { pressure: p.pressure, turning: 1 });
    expect(p).toMatchObject(pedalStack(brake, i));
  }
  curve.points.forEach((p, k) => {
    const before = curve.points[k - 1];
    if (!before) return;
    expect(p.total).toBeGreaterThan(before.total);
    expect(p.force).toBeGreaterThan(before.force);
  });
});

it('finds where the linings touch: springs first, then the gap', () => {
  // Free play 4 mm at the pedal (1 mm, 4 : 1). In the gaps the pistons go 0.60 mm each: 4 · 0.6 · 285.02
  // mm² over 334.59 mm² and by 4 are 8.18 mm; the circuit gives 120 mm³/MPa at 5.3 bar: 0.76 mm.
  near(curve.touch?.total ?? 0, 4 + 8.18 + 0.76, { abs: 0.05 }, 'pedal');
  // The same pressure at which a hand that turns the wheel begins to feel it, to what 500 N·mm are of it.
  near(curve.touch?.pressure ?? 0, firstTouch({ rig, state }), { abs: 0.02 }, 'pressure');
  // Foot: 0.527 MPa · 334.59 mm² / 4.
  near(curve.touch?.force ?? 0, 44.1, { abs: 0.2 }, 'foot');
});

it('beyond the touch the pedal goes by what gives: circuit, and a little of the linings', () => {
  const last = curve.points.at(-1);
  const more = (last?.total ?? 0) - (curve.seated?.total ?? 0);
  // 120 mm³/MPa over 4 − 0.527 MPa: 416.8 mm³, over 334.59 mm² and by 4: 4.98 mm.
  near(more, 4.98, { abs: 0.25 });
  expect(more).toBeGreaterThan(4.98);
});

it('a shoe that slides touches at one end before it lies on the drum', () => {
  const b = mustRead(runabout);
  const c = pedalCurve(createRig(b), freshState(b), 4);
  const [touch, seated] = [c.touch?.total ?? 0, c.seated?.total ?? 0];
  expect(touch).toBeLessThan(seated - 3);
  // From where both lie the curve is as straight as its springs: half the force, half the way.
  const last = c.points.at(-1)?.total ?? 0;
  const half = c.points.find((p) => p.pressure >= 2)?.total ?? 0;
  const start = (c.seated?.pressure ?? 0) / 4;
  near((half - seated) / (last - seated), (0.5 - start) / (1 - start), { abs: 0.03 });
});

it('the floor is where the master cylinder ends', () => {
  // 4 · (1 + 32) mm.
  near(pedalFloor(brake), 132, { abs: 1e-9 });
  near(curve.reserve, 132 - (curve.points.at(-1)?.total ?? 0), { abs: 1e-9 });
  const short = tablesQuay((s) => {
    Object.assign(s.hydraulics, { masterStroke: 3 });
  });
  const c = pedalCurve(short.rig, short.state, 4);
  expect(c.reserve).toBeLessThan(0);
  expect(pedalNotes(c)).toEqual([expect.stringMatching(/on its floor/)]);
});

it('tells nothing of a touch that is not there', () => {
  const c = pedalCurve(rig, state, 0.4);
  expect([c.touch, c.seated]).toEqual([null, null]);
  expect(readingOf(curveReadings(c), 'pedalTouch').value).toBeNaN();
  expect(pedalNotes(c)).toEqual([expect.stringMatching(/No lining touches/)]);
  for (const r of curveReadings(c)) expect(meaningOf(r), r.key).toMatch(/^[A-Z].*\.$/);
});
