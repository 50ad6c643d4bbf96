import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '../../../sim/index.ts';
import { segmentsCross } from '../../../ui/stage/geometry.ts';
import { untangle } from '../../../ui/stage/layers/names.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import type { Shape } from '../../../ui/stage/shapes.ts';
import { fitView } from '../../../ui/stage/view.ts';
import { inputFor, quayVan, shapeOf } from './bench.ts';

const van = quayVan();

function segments({ path }: Shape): [Point, Point][] {
  const out: [Point, Point][] = [];
  let at: Point | null = null;
  for (const c of path) {
    if (c[0] !== 'M' && c[0] !== 'L') continue;
    const p: Point = [c[1], c[2]];
    if (c[0] === 'L' && at) out.push([at, p]);
    at = p;
  }
  return out;
}

function crossings(lines: readonly [Point, Point][]): number {
  let n = 0;
  for (let i = 0; i < lines.length; i++) {
    for (let j = i + 1; j < lines.length; j++) {
      const [a, b] = lines[i] as [Point, Point];
      const [c, d] = lines[j] as [Point, Point];
      if (segmentsCross(a, b, c, d)) n++;
    }
  }
  return n;
}

describe('leaders', () => {
  it.each([
    [1370, 992, false],
    [918, 692, false],
    [390, 410, true],
  ])('do not cross on a stage of %i × %i', (width, height, narrow) => {
    for (const pressure of [undefined, 4]) {
      const view = fitView(van.brake, { width, height, narrow, band: narrow ? 14 : 24 });
      const input = inputFor(van, {
        layers: { names: true },
        view,
        ...(pressure ? { pressure } : {}),
      });
      const lines = segments(shapeOf(drawBrake(input), 'names lines'));
      expect(lines.length).toBeGreaterThan(40);
      expect(crossings(lines)).toBe(0);
    }
  });

  it('come untangled wherever the dots are', () => {
    const dots = fc.array(
      fc.tuple(
        fc.double({ min: 60, max: 400, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
      ),
      { minLength: 2, maxLength: 16 },
    );
    fc.assert(
      fc.property(dots, (points) => {
        const leaders = points.map((dot, i) => ({
          spot: { part: 'hub' as const, at: dot as Point, column: 'left' as const },
          dot: dot as Point,
          elbow: [40, i * 30] as Point,
        }));
        const lines = untangle(leaders).map(({ elbow, dot }): [Point, Point] => [elbow, dot]);
        expect(crossings(lines)).toBe(0);
        expect(new Set(lines.map(([e]) => e[1])).size).toBe(points.length);
      }),
      { seed: 11, numRuns: 200 },
    );
  });
});

it('a narrow stage numbers the names clockwise and lists them', () => {
  const view = fitView(van.brake, { width: 390, height: 410, narrow: true });
  const drawing = drawBrake(inputFor(van, { layers: { names: true }, view }));
  const numbers = drawing.labels.filter((l) => l.style === 'number').map((l) => Number(l.text));
  expect([...numbers].sort((a, b) => a - b)).toEqual(drawing.names.map((n) => n.number));
  expect(drawing.names.map((n) => n.name)).toContain('Toothed lever');
  const wide = drawBrake(inputFor(van, { layers: { names: true } }));
  expect(wide.names).toEqual([]);
  expect(wide.labels.map((l) => l.text)).toContain('Toothed lever');
});

describe('names told one by one', () => {
  const van = quayVan();
  const drawn = (revealed?: ReadonlySet<'strut' | 'lining'>) =>
    drawBrake({ ...inputFor(van, { layers: { names: true } }), ...(revealed ? { revealed } : {}) });

  it('stand as numbers until they are asked for', () => {
    const none = drawn(new Set());
    const texts = none.labels.filter((l) => l.key.startsWith('name ')).map((l) => l.text);
    expect(texts.length).toBeGreaterThan(20);
    expect(texts.every((t) => /^\d+$/.test(t))).toBe(true);
    expect(new Set(texts).size).toBe(texts.length);
    expect(none.names.length).toBe(texts.length);
    const one = drawn(new Set(['strut']));
    const words = one.labels.filter((l) => l.key.startsWith('name ') && !/^\d+$/.test(l.text));
    expect(words.map((l) => l.text)).toEqual(['Strut']);
  });

  it('are all told when none is held back', () => {
    const all = drawn();
    expect(all.names).toEqual([]);
    expect(all.labels.some((l) => l.text === 'Lining')).toBe(true);
  });
});
