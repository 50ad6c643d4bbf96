import type { Point } from '../../../sim/index.ts';
import { direction, distance, polar } from '../geometry.ts';
import { type Path, polygon, trace } from '../path.ts';

/** Filled arrow from a to b, `width` mm over its shaft. */
export function arrowPath(a: Point, b: Point, width: number): Path {
  const length = distance(a, b);
  const u = direction(a, b);
  const head = Math.min(length * 0.6, width * 1.9);
  const q = (along: number, across: number): Point => [
    a[0] + u[0] * along - u[1] * across,
    a[1] + u[1] * along + u[0] * across,
  ];
  return polygon([
    q(0, width / 2),
    q(length - head, width / 2),
    q(length - head, width * 1.15),
    q(length, 0),
    q(length - head, -width * 1.15),
    q(length - head, -width / 2),
    q(0, -width / 2),
  ]);
}

/** Filled arrow along a circle about the drum's centre, from angle a to b. */
export function arcArrowPath(radius: number, a: number, b: number, width: number): Path {
  const sense = Math.sign(b - a);
  const head = Math.min(Math.abs(b - a) * 0.6, (width * 1.9) / radius);
  const neck = b - sense * head;
  return trace()
    .arc([0, 0], radius + width / 2, a, neck)
    .line(polar(radius + width * 1.2, neck), polar(radius, b), polar(radius - width * 1.2, neck))
    .arc([0, 0], radius - width / 2, neck, a)
    .close().path;
}
