import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Polyline } from '../../../ui/stage/flatten.ts';
import { meet, PATCH, type Patches, PatchGrid, without } from '../../../ui/stage/patches.ts';
import { Stains } from '../../../ui/stage/stains.ts';

const WIDTH = 1000;
const HEIGHT = 700;
const grid = new PatchGrid(WIDTH, HEIGHT);

/** Shapes of a whole brake. */
const STEPS = 140;

const closed = (...points: number[]): Polyline => ({ points, closed: true });
const square = (left: number, top: number, side: number): Polyline =>
  closed(left, top, left + side, top, left + side, top + side, left, top + side);

const listed = (patches: Patches): [number, number][] => {
  const out: [number, number][] = [];
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      if (grid.has(patches, column, row)) out.push([column, row]);
    }
  }
  return out;
};
const holds = (patches: Patches, x: number, y: number): boolean =>
  grid.has(patches, Math.floor(x / PATCH), Math.floor(y / PATCH));

/** Is a point inside, by the definition of the two rules: sides crossed by a ray to the right. */
function inside(lines: readonly Polyline[], x: number, y: number, rule: CanvasFillRule): boolean {
  let winding = 0;
  let crossed = 0;
  for (const { points } of lines) {
    const n = points.length;
    for (let i = 0; i < n; i += 2) {
      const [ax, ay, bx, by] = [0, 1, 2, 3].map((k) => points[(i + k) % n] as number) as [
        number,
        number,
        number,
        number,
      ];
      if (ay > y === by > y || ax + ((bx - ax) * (y - ay)) / (by - ay) <= x) continue;
      crossed++;
      winding += by > ay ? 1 : -1;
    }
  }
  return rule === 'evenodd' ? crossed % 2 === 1 : winding !== 0;
}

const corner = fc.tuple(
  fc.double({ min: -100, max: WIDTH + 100, noNaN: true }),
  fc.double({ min: -100, max: HEIGHT + 100, noNaN: true }),
);
const outline = fc
  .array(corner, { minLength: 3, maxLength: 9 })
  .map((points): Polyline => ({ points: points.flat(), closed: true }));

describe('patches that a shape touches', () => {
  it('a line: those along it, not those of the box around it', () => {
    const line: Polyline = { points: [16, 16, 16 + 10 * PATCH, 16 + 10 * PATCH], closed: false };
    const found = listed(grid.cover([line], 2, null));
    for (const [column, row] of found) expect(Math.abs(column - row)).toBeLessThanOrEqual(1);
    expect(found.filter(([column, row]) => column === row)).toHaveLength(11);
  });

  it('a wide line reaches to its sides', () => {
    const line: Polyline = { points: [0, 50, 300, 50], closed: false };
    const rows = new Set(listed(grid.cover([line], 20, null)).map(([, row]) => row));
    expect([...rows]).toEqual([0, 1, 2]);
  });

  it('a hole is not covered by either rule where the ring runs round it the other way', () => {
    const ring = [square(32, 32, 320), closed(96, 96, 96, 288, 288, 288, 288, 96)];
    for (const rule of ['evenodd', 'nonzero'] as const) {
      const cover = grid.cover(ring, 1, rule);
      expect(holds(cover, 192, 192)).toBe(false);
      expect(holds(cover, 64, 192)).toBe(true);
    }
    // Both ways round alike: only the even-odd rule leaves the hole.
    const alike = [square(32, 32, 320), square(96, 96, 192)];
    expect(holds(grid.cover(alike, 1, 'evenodd'), 192, 192)).toBe(false);
    expect(holds(grid.cover(alike, 1, 'nonzero'), 192, 192)).toBe(true);
  });

  it('every point that is filled or lined lies on one of them', () => {
    const spot = fc.tuple(
      fc.double({ min: 0, max: WIDTH - 1, noNaN: true }),
      fc.double({ min: 0, max: HEIGHT - 1, noNaN: true }),
    );
    fc.assert(
      fc.property(
        fc.array(outline, { minLength: 1, maxLength: 3 }),
        fc.constantFrom('evenodd' as const, 'nonzero' as const),
        fc.array(spot, { minLength: 40, maxLength: 40 }),
        (lines, rule, spots) => {
          const cover = grid.cover(lines, 1, rule);
          for (const [x, y] of spots) {
            if (inside(lines, x, y, rule)) expect(holds(cover, x, y)).toBe(true);
          }
          for (const { points } of lines) {
            for (let i = 0; i < points.length; i += 2) {
              const [ax, ay] = [points[i] as number, points[i + 1] as number];
              const bx = points[(i + 2) % points.length] as number;
              const by = points[(i + 3) % points.length] as number;
              for (const t of [0, 0.21, 0.5, 0.83]) {
                const [x, y] = [ax + (bx - ax) * t, ay + (by - ay) * t];
                if (x < 0 || y < 0 || x >= WIDTH || y >= HEIGHT) continue;
                expect(holds(cover, x, y)).toBe(true);
              }
            }
          }
        },
      ),
      { seed: 4, numRuns: 400 },
    );
  });
});

describe('rectangles to paint', () => {
  it('hold all that is stained, once, and leave nothing for the next frame', () => {
    const stains = new Stains();
    stains.resize(WIDTH, HEIGHT);
    expect(stains.take(STEPS).reduce((sum, { rect }) => sum + rect.width * rect.height, 0)).toBe(
      grid.columns * grid.rows * PATCH ** 2,
    );
    expect(stains.take(STEPS)).toEqual([]);
    fc.assert(
      fc.property(fc.array(corner, { minLength: 1, maxLength: 12 }), (spots) => {
        const all = grid.none();
        for (const [x, y] of spots) {
          const cover = grid.cover([square(x, y, 20)], 1, 'nonzero');
          stains.add(cover);
          for (const [column, row] of listed(cover)) {
            const bit = row * grid.columns + column;
            all[bit >> 5] = (all[bit >> 5] as number) | (1 << (bit & 31));
          }
        }
        const due = stains.take(STEPS);
        for (const [column, row] of listed(all)) {
          const over = due.filter((d) => grid.has(d.patches, column, row));
          expect(over).toHaveLength(1);
        }
        due.forEach((a, i) => {
          for (const b of due.slice(i + 1)) expect(meet(a.patches, b.patches)).toBe(false);
        });
      }),
      { seed: 5, numRuns: 400 },
    );
  });

  it('things far apart stay apart: the hub turns without the rim', () => {
    const stains = new Stains();
    stains.resize(WIDTH, HEIGHT);
    stains.take(STEPS);
    stains.add(grid.cover([square(64, 64, 30)], 1, 'nonzero'));
    stains.add(grid.cover([square(800, 600, 30)], 1, 'nonzero'));
    expect(stains.take(STEPS)).toHaveLength(2);
  });

  it('things a little apart stay apart where a rectangle is painted in few steps', () => {
    const take = (steps: number) => {
      const stains = new Stains();
      stains.resize(WIDTH, HEIGHT);
      stains.take(steps);
      stains.add(grid.cover([square(64, 64, 30)], 1, 'nonzero'));
      stains.add(grid.cover([square(300, 200, 30)], 1, 'nonzero'));
      return stains.take(steps);
    };
    expect(take(STEPS)).toHaveLength(1);
    expect(take(10)).toHaveLength(2);
  });
});

it('what one set has beside another', () => {
  const a = grid.cover([square(64, 64, 100)], 1, 'nonzero');
  const b = grid.cover([square(100, 100, 200)], 1, 'nonzero');
  const left = without(a, b);
  for (const [column, row] of listed(grid.all())) {
    const only = grid.has(a, column, row) && !grid.has(b, column, row);
    expect(grid.has(left, column, row)).toBe(only);
  }
  expect(listed(left)).not.toEqual([]);
});
