import { describe, expect, it } from 'vitest';
import { apply, distance, type Frame } from '../../../ui/stage/geometry.ts';
import { circlePath, type Path, polygon } from '../../../ui/stage/path.ts';
import { changeOf, nearPath, shiftOf } from '../../../ui/stage/same.ts';
import type { Shape } from '../../../ui/stage/shapes.ts';
import { near } from '../../near.ts';

/** Not seen, mm. */
const SLACK = 0.01;
const square = polygon([
  [10, 10],
  [30, 10],
  [30, 20],
  [10, 20],
]);
const shape = (more: Partial<Shape> = {}): Shape => ({
  key: 'part',
  path: square,
  style: { fill: 'web', stroke: 'ink', width: 1.6 },
  group: 'shoe',
  ...more,
});
const at = (angle: number, x = 0, y = 0): Frame => ({ angle, x, y });

describe('what is painted anew', () => {
  it('nothing that goes less far than is seen, whether it shifts or turns', () => {
    const was = shape({ place: at(0) });
    const moved = (place: Frame) => changeOf(was, shape({ place }), SLACK);
    expect(moved(at(0, 0.9 * SLACK))).toBe('none');
    expect(moved(at(0, 1.1 * SLACK))).toBe('moved');
    // Its farthest corner lies √1300 mm from the origin.
    expect(moved(at((0.9 * SLACK) / Math.sqrt(1300)))).toBe('none');
    expect(moved(at((1.1 * SLACK) / Math.sqrt(1300)))).toBe('moved');
  });

  it('a shoe that turns about its pin goes as far as its points do, not as its frame’s origin', () => {
    const angle = 0.001;
    const pin = [20, 15] as const;
    const [x, y] = apply(at(angle), pin);
    const shift = shiftOf(square, at(0), at(angle, pin[0] - x, pin[1] - y));
    near(shift, distance([10, 10], pin) * 2 * Math.sin(angle / 2), { rel: 1e-9 });
  });

  it('an outline whose points or arcs go farther', () => {
    const nudged = (by: number): Path =>
      square.map((c, i) => (i === 1 && c[0] === 'L' ? (['L', c[1] + by, c[2]] as const) : c));
    expect(changeOf(shape(), shape({ path: nudged(0.9 * SLACK) }), SLACK)).toBe('none');
    expect(changeOf(shape(), shape({ path: nudged(1.1 * SLACK) }), SLACK)).toBe('built');
    const arc = (radius: number, to: number): Path => [['A', 0, 0, radius, 0, to]];
    expect(nearPath(arc(100, 1), arc(100, 1 + (0.9 * SLACK) / 100), SLACK)).toBe(true);
    expect(nearPath(arc(100, 1), arc(100, 1 + (1.1 * SLACK) / 100), SLACK)).toBe(false);
    expect(nearPath(arc(100, 1), arc(100 + 1.1 * SLACK, 1), SLACK)).toBe(false);
    expect(nearPath(circlePath([0, 0], 5), square, SLACK)).toBe(false);
  });

  it('another style, but no shade finer than a screen shows', () => {
    const tinted = (fillAlpha: number) => shape({ style: { fill: 'fluid', fillAlpha } });
    expect(changeOf(tinted(0.5), tinted(0.501), SLACK)).toBe('none');
    expect(changeOf(tinted(0.5), tinted(0.504), SLACK)).toBe('built');
    expect(changeOf(shape(), shape({ style: { fill: 'lining' } }), SLACK)).toBe('built');
  });

  it('what gets or loses a place of its own', () => {
    expect(changeOf(shape(), shape({ place: at(0) }), SLACK)).toBe('built');
    expect(changeOf(shape({ place: at(0) }), shape(), SLACK)).toBe('built');
  });
});
