import { describe, expect, it } from 'vitest';
import type { Point } from '../../../sim/index.ts';
import { flatten } from '../../../ui/stage/flatten.ts';
import { arcParts, mirrored, type Path, trace } from '../../../ui/stage/path.ts';

/** Directions of the pieces of a flattened path, rad. */
function headings(path: Path): number[] {
  const p = flatten(path, 1e-5)[0]?.points ?? [];
  return Array.from({ length: p.length / 2 - 1 }, (_, i) =>
    Math.atan2(
      (p[2 * i + 3] as number) - (p[2 * i + 1] as number),
      (p[2 * i + 2] as number) - (p[2 * i] as number),
    ),
  );
}

describe('a bend of two arcs', () => {
  const cases: [Point, Point, Point][] = [
    [
      [0, 0],
      [10, 0],
      [10, 10],
    ],
    [
      [0, 0],
      [10, 0],
      [25, 4],
    ],
    [
      [-49, 51],
      [-37, 62],
      [-31, 71],
    ],
  ];
  it.each(cases)('leaves %j towards %j, arrives at %j, without a kink', (a, c, p) => {
    const path = trace().move(a).bend(c, p).path;
    const turns = headings(path);
    const first = Math.atan2(c[1] - a[1], c[0] - a[0]);
    const last = Math.atan2(p[1] - c[1], p[0] - c[0]);
    expect(turns[0]).toBeCloseTo(first, 1);
    expect(turns.at(-1)).toBeCloseTo(last, 1);
    for (let i = 1; i < turns.length; i++) {
      expect(Math.abs((turns[i] as number) - (turns[i - 1] as number))).toBeLessThan(0.05);
    }
    const end = flatten(path, 1e-3)[0]?.points.slice(-2) ?? [];
    expect(end[0]).toBeCloseTo(p[0], 9);
    expect(end[1]).toBeCloseTo(p[1], 9);
  });
});

it('mirrors arcs and lines alike', () => {
  const path = trace().move([1, 2]).line([5, 3]).arc([2, 2], 4, 0.3, 2).path;
  const a = flatten(path, 0.01)[0]?.points ?? [];
  const b = flatten(mirrored(path), 0.01)[0]?.points ?? [];
  expect(b.length).toBe(a.length);
  a.forEach((v, i) => {
    expect(b[i]).toBeCloseTo(i % 2 === 0 ? -v : v, 10);
  });
});

it('tells an arc in as few pieces as parabolas follow within a fiftieth of a pixel', () => {
  const most: number[] = [];
  for (let n = 0; n < 200; n++) {
    const radius = 10 ** (n / 66);
    const turn = 2 * Math.PI * ((0.618 * n) % 1);
    const parts = arcParts(radius, turn);
    /** Farthest of a parabola (quadratic Bézier, tangents at its ends) from an arc of this angle, by points on it. */
    const beside = (angle: number): number => {
      const [c, s] = [Math.cos(angle / 2), Math.sin(angle / 2)];
      let far = 0;
      for (let t = 0; t <= 1; t += 1 / 64) {
        const u = 1 - t;
        const x = u * u * c + (2 * u * t) / c + t * t * c;
        const y = u * u * -s + t * t * s;
        far = Math.max(far, radius * Math.abs(Math.hypot(x, y) - 1));
      }
      return far;
    };
    expect(beside(turn / parts)).toBeLessThan(0.022);
    if (parts > 1) most.push(beside(turn / (parts - 1)));
  }
  // One piece fewer would mostly not do.
  expect(most.filter((far) => far > 0.019).length).toBeGreaterThan(0.9 * most.length);
});
