import { expect, it } from 'vitest';
import { startState } from '../../sim/index.ts';
import { Limits } from '../../sim/wear/life-limits.ts';
import { Wearing } from '../../sim/wear/wearing.ts';
import { quay } from '../brakes.ts';
import { near } from '../near.ts';

const { brake, rig } = quay();
const { thicknessNew, thicknessMin } = brake.shoes.front.lining;
/** Leaves these thicknesses on the linings, mm. */
const leave = (w: Wearing, front: number, rear: number): void => {
  const record = w.record();
  const worn = (left: number) => new Float64Array(48).fill(thicknessNew - left);
  const wear = { front: worn(front), rear: worn(rear) };
  w.restore({ ...record, state: { ...record.state, wear } });
};

it('tells what is left before the nearest lining line, and by how much the farthest was overrun', () => {
  const w = new Wearing(rig, startState(brake));
  leave(w, thicknessMin + 0.05, thicknessMin + 0.2);
  const limits = new Limits(brake, w, true);
  near(limits.nearest(w), 0.05, { abs: 1e-9 }, 'nearest');
  expect(limits.overrun(w)).toBe(0);
  leave(w, thicknessMin - 0.03, thicknessMin - 0.01);
  near(limits.overrun(w), 0.03, { abs: 1e-9 }, 'overrun');
  const passed = limits.take(w).filter((l) => l.kind === 'lining limit');
  expect(passed.map((l) => [l.side, l.end])).toEqual([
    ['front', 'lining limit'],
    ['rear', 'lining limit'],
  ]);
  // Told once, and no overrun any more.
  expect(limits.overrun(w)).toBe(0);
  expect(limits.take(w)).toEqual([]);
});
