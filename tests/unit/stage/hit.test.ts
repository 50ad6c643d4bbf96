import { expect, it } from 'vitest';
import { outlineOf, partAt, partsOf } from '../../../ui/stage/hit.ts';
import { polygon } from '../../../ui/stage/path.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import type { Drawing } from '../../../ui/stage/shapes.ts';
import { inputFor, quayVan } from './bench.ts';

const drawing = drawBrake(inputFor(quayVan()));

it('finds the part that a point lies on, with its shoe', () => {
  // Lining: 95.5 to 100 mm from the centre, about 180° and 0°; the rim is outside it.
  expect(partAt(drawing, [-97.5, 0])).toEqual({ part: 'lining', side: 'front' });
  expect(partAt(drawing, [97.5, 0])).toEqual({ part: 'lining', side: 'rear' });
  expect(partAt(drawing, [0, -105])).toEqual({ part: 'drum' });
  expect(partAt(drawing, [0, 26])).toEqual({ part: 'hub' });
  expect(partAt(drawing, [-90, -90])).toBeNull();
});

it('takes the topmost of two parts and looks through a hole', () => {
  const square = (half: number) =>
    polygon([
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ]);
  const two: Drawing = {
    ...drawing,
    shapes: [
      { key: 'a', path: square(40), style: { fill: 'plate' }, part: 'plate', group: 'a' },
      {
        key: 'b',
        path: [...square(20), ...square(10)],
        evenOdd: true,
        place: { angle: 0, x: 5, y: 0 },
        style: { fill: 'web' },
        part: 'web',
        group: 'b',
      },
    ],
  };
  expect(partAt(two, [20, 0])?.part).toBe('web');
  expect(partAt(two, [5, 0])?.part).toBe('plate');
  expect(partAt(two, [-30, 0])?.part).toBe('plate');
  expect(partAt(two, [-17, 0])?.part).toBe('plate');
  expect(partAt(two, [41, 0])).toBeNull();
});

it('lists every part once and outlines just the one asked for', () => {
  const parts = partsOf(drawing);
  const keys = parts.map((p) => `${p.part} ${p.side ?? ''}`);
  expect(new Set(keys).size).toBe(keys.length);
  for (const needed of ['lining front', 'lining rear', 'drum ', 'strut ', 'toothed lever ']) {
    expect(keys).toContain(needed);
  }
  const outline = outlineOf(drawing, { part: 'lining', side: 'front' });
  expect(outline.length).toBeGreaterThan(0);
  expect(outlineOf(drawing, { part: 'star wheel' })).toEqual([]);
});
