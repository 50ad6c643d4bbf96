import type { Point } from '../../../sim/index.ts';
import { direction, distance } from '../geometry.ts';
import type { PartId } from '../part-names.ts';
import { circlePath, type Path, trace } from '../path.ts';
import type { Shape } from '../shapes.ts';
import { maker } from './make.ts';

export interface CoilForm {
  /** mm of straight wire before and after the coil. */
  readonly lead: readonly [number, number];
  readonly turns: number;
  readonly radius: number;
  /** Wire size: 1 is 1.2 mm. */
  readonly wire: number;
  /** Ends hook into holes: draws a dot at each. */
  readonly hooks?: boolean;
}

/**
 * A spring as a coil of tube-like wire with straight ends. Stretching it pulls the turns apart and
 * leaves the ends as they are. Half turns behind are painted first.
 */
export function coil(key: string, part: PartId, from: Point, to: Point, form: CoilForm): Shape[] {
  const { behind, front } = coilPaths(from, to, form);
  const make = maker('springs', part, ` ${key}`);
  const { wire } = form;
  const width = { mm: 1.2 * wire, least: 3.15 * wire, inset: 0 };
  const shapes = [
    make(behind, {
      stroke: 'wireBehind',
      width: { mm: 0.96 * wire, least: 2.5 * wire, inset: 0 },
      round: true,
    }),
    make(front, { stroke: 'ink', width, round: true }),
    make(front, { stroke: 'wire', width: { ...width, inset: 1.9 }, round: true }),
  ];
  if (form.hooks) {
    for (const end of [from, to]) shapes.push(make(circlePath(end, 0.8), { fill: 'ink' }));
  }
  return shapes;
}

export function coilPaths(from: Point, to: Point, form: CoilForm): { behind: Path; front: Path } {
  const { turns, radius } = form;
  const u = direction(from, to);
  const at = (along: number, across: number): Point => [
    from[0] + u[0] * along - u[1] * across,
    from[1] + u[1] * along + u[0] * across,
  ];
  const length = distance(from, to);
  const start = Math.min(form.lead[0], length * 0.48);
  const end = length - Math.min(form.lead[1], length * 0.48);
  const pitch = (end - start) / turns;
  const behind = trace();
  const front = trace()
    .move(from)
    .line(at(start - 0.6 * pitch, 0), at(start - 0.1 * pitch, -0.55 * radius));
  front.line(at(start, -radius));
  for (let i = 0; i < turns; i++) {
    const s = start + i * pitch;
    behind.move(at(s + 0.5 * pitch, radius)).line(at(s + pitch, -radius));
    if (i > 0) front.move(at(s, -radius));
    front.line(at(s + 0.5 * pitch, radius));
  }
  front
    .move(at(end, -radius))
    .line(at(end + 0.2 * pitch, -0.5 * radius), at(end + 0.7 * pitch, 0), to);
  return { behind: behind.path, front: front.path };
}
