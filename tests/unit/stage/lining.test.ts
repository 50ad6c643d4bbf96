import { expect, it } from 'vitest';
import { ELEMENTS } from '../../../sim/index.ts';
import { flatten } from '../../../ui/stage/flatten.ts';
import { liningPath } from '../../../ui/stage/parts/lining.ts';
import { quayVan } from './bench.ts';

const { brake } = quayVan();

/** Distance from the drum's centre to the outline's outer side along a ray, mm. */
function reach(points: readonly number[], angle: number): number {
  const u = [Math.cos(angle), Math.sin(angle)] as const;
  let best = 0;
  const n = points.length / 2;
  for (let i = 0; i < n; i++) {
    const j = (i + 1) % n;
    const [ax, ay] = [points[2 * i] as number, points[2 * i + 1] as number];
    const [bx, by] = [points[2 * j] as number, points[2 * j + 1] as number];
    const across = (x: number, y: number) => -u[1] * x + u[0] * y;
    const a = across(ax, ay);
    const b = across(bx, by);
    if (a * b > 0 || a === b) continue;
    const t = a / (a - b);
    const along = u[0] * (ax + (bx - ax) * t) + u[1] * (ay + (by - ay) * t);
    best = Math.max(best, along);
  }
  return best;
}

it.each(['front', 'rear'] as const)('%s: the outline is the worn profile', (side) => {
  const { lining } = brake.shoes[side];
  const wear = Float64Array.from({ length: ELEMENTS }, (_, i) => 0.8 + 0.6 * Math.sin(i / 9));
  const points = flatten(liningPath(lining, wear), 0.001)[0]?.points ?? [];
  const step = (lining.to - lining.from) / ELEMENTS;
  for (let i = 0; i < ELEMENTS; i++) {
    const middle = lining.from + (i + 0.5) * step;
    const thickness = reach(points, middle) - (lining.groundRadius - lining.thicknessNew);
    expect(Math.abs(thickness - (lining.thicknessNew - (wear[i] as number)))).toBeLessThan(0.004);
  }
});

it('a new lining lies on the ground radius all along', () => {
  const { lining } = brake.shoes.front;
  const path = liningPath(lining, new Float64Array(ELEMENTS));
  const points = flatten(path, 0.02)[0]?.points ?? [];
  for (let a = lining.from + 0.01; a < lining.to; a += 0.05) {
    const off = lining.groundRadius - reach(points, a);
    expect(off).toBeGreaterThan(-1e-9);
    expect(off).toBeLessThanOrEqual(0.02);
  }
});

it('sloped ends are as deep as told', () => {
  const lining = { ...brake.shoes.front.lining, chamferArc: 0.06, chamferDepth: 2 };
  const wear = new Float64Array(ELEMENTS);
  const points = flatten(liningPath(lining, wear), 0.001)[0]?.points ?? [];
  expect(reach(points, lining.from + 1e-6)).toBeCloseTo(98, 2);
  expect(reach(points, lining.from + 0.03)).toBeCloseTo(99, 1);
  expect(reach(points, lining.from + 0.061)).toBeCloseTo(100, 2);
});
