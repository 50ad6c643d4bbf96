import { expect, it } from 'vitest';
import { dashes, flatten, tolerance } from '../../../ui/stage/flatten.ts';
import { circlePath, moved, trace } from '../../../ui/stage/path.ts';

/** Largest distance of a chord's middle from the circle about 0, mm. */
function sagitta(points: readonly number[], radius: number, closed: boolean): number {
  let worst = 0;
  const n = points.length / 2;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const j = (i + 1) % n;
    const x = ((points[2 * i] as number) + (points[2 * j] as number)) / 2;
    const y = ((points[2 * i + 1] as number) + (points[2 * j + 1] as number)) / 2;
    worst = Math.max(worst, radius - Math.hypot(x, y));
  }
  return worst;
}

it('keeps arcs within 0.02 mm or a quarter pixel, whichever is finer, at any zoom', () => {
  for (const scale of [0.8, 1.42, 3.54, 11.6, 40]) {
    for (const radius of [1, 8.6, 30, 100, 113.5]) {
      const [line] = flatten(circlePath([0, 0], radius), tolerance(scale));
      const off = sagitta(line?.points ?? [], radius, true);
      expect(off).toBeGreaterThan(0);
      expect(off).toBeLessThanOrEqual(Math.min(0.02, 0.25 / scale) + 1e-12);
    }
  }
});

it('keeps an open arc within the tolerance and on its ends', () => {
  const [line] = flatten(trace().arc([0, 0], 100, 2.1, 4.1).path, 0.02);
  const points = line?.points ?? [];
  expect(line?.closed).toBe(false);
  expect(sagitta(points, 100, false)).toBeLessThanOrEqual(0.02);
  expect(points[0]).toBeCloseTo(100 * Math.cos(2.1), 12);
  expect(points.at(-1)).toBeCloseTo(100 * Math.sin(4.1), 12);
});

it('does not repeat the point where an arc goes on from a line', () => {
  const [line] = flatten(trace().move([10, 0]).arc([0, 0], 10, 0, 1).path, 0.02);
  const p = line?.points ?? [];
  expect(Math.hypot((p[2] as number) - 10, p[3] as number)).toBeGreaterThan(0.1);
});

it('turns and shifts an outline without changing its size', () => {
  const arc = trace().arc([3, 4], 5, 0.2, 1.7).path;
  const [before] = flatten(arc, 0.01);
  const [after] = flatten(moved(arc, { angle: 0.7, x: -2, y: 9 }), 0.01);
  const c = Math.cos(0.7);
  const s = Math.sin(0.7);
  (before?.points ?? []).forEach((v, i, all) => {
    if (i % 2 === 1) return;
    const y = all[i + 1] as number;
    expect(after?.points[i]).toBeCloseTo(-2 + c * v - s * y, 10);
    expect(after?.points[i + 1]).toBeCloseTo(9 + s * v + c * y, 10);
  });
});

it('cuts dashes of the told lengths', () => {
  const cut = dashes({ points: [0, 0, 30, 0], closed: false }, [5, 3]);
  expect(cut.map(([from, , to]) => [from, to])).toEqual([
    [0, 5],
    [8, 13],
    [16, 21],
    [24, 29],
  ]);
  const around = dashes({ points: [0, 0, 10, 0, 10, 10, 0, 10], closed: true }, [9, 1]);
  const inked = around.reduce((sum, p) => {
    for (let i = 2; i < p.length; i += 2) {
      sum += Math.hypot(
        (p[i] as number) - (p[i - 2] as number),
        (p[i + 1] as number) - (p[i - 1] as number),
      );
    }
    return sum;
  }, 0);
  expect(inked).toBeCloseTo(36, 9);
});
