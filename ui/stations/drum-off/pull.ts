import type { Brake, Instant, LipFit, Point } from '../../../sim/index.ts';
import { drumOffPull as words } from '../../../sim/words/en.ts';
import { mix } from '../../stage/geometry.ts';
import { bandRadius, SIDES } from '../../stage/layers/band.ts';
import { label } from '../../stage/layers/label.ts';
import { drawingOf } from '../../stage/parts/adjuster.ts';
import { drum } from '../../stage/parts/drum.ts';
import { type Path, polygon, polyline, trace } from '../../stage/path.ts';
import { placesOf } from '../../stage/place.ts';
import { type Label, type Shape, stroked, WEIGHT } from '../../stage/shapes.ts';
import type { View } from '../../stage/view.ts';

/** The pull on the stage: the rim comes towards whoever pulls it, and what catches it flashes. */

/** A drum is pulled with the eyes so far before it, mm: what comes nearer looks larger. */
const EYES = 600;

/** How much larger a rim looks that has come so far towards the eye. */
export const nearer = (slide: number): number => EYES / (EYES - slide);

const scaled = (path: Path, by: number): Path =>
  path.map((c) => {
    if (c[0] === 'Z') return c;
    if (c[0] === 'A') return ['A', c[1] * by, c[2] * by, c[3] * by, c[4], c[5]];
    return [c[0], c[1] * by, c[2] * by];
  });

/**
 * The rim on its way.
 *
 * @param slide mm along the axle
 * @param leaves it comes off: it fades as it goes
 */
export function rimPulled(
  brake: Brake,
  instant: Instant,
  cold: number,
  slide: number,
  leaves: boolean,
): Shape[] {
  const by = nearer(slide);
  const left = leaves ? Math.max(0.15, 1 - slide / 90) : 1;
  return drum(brake, instant.drumRadius, cold).map((s) => ({
    ...s,
    path: scaled(s.path, by),
    style: leaves ? { stroke: 'ink', width: 2.4, strokeAlpha: left } : s.style,
  }));
}

/** Where the lip has caught the linings, lit. */
export function caughtFlash(brake: Brake, fit: LipFit, times: number, flash: number): Shape[] {
  const base = bandRadius(brake);
  return SIDES.flatMap((side): Shape[] => {
    const o = fit[side];
    if (o.greatest <= 0) return [];
    const edge = Array.from(o.angle, (a, i): Point => {
      const r = base + Math.max(0, o.overlap[i] as number) * times + 1.2;
      return [r * Math.cos(a), r * Math.sin(a)];
    });
    const path = trace()
      .line(...edge)
      .arc([0, 0], base - 1.2, o.angle[o.angle.length - 1] as number, o.angle[0] as number)
      .close().path;
    return [
      { key: `caught ${side}`, path, style: { fill: 'bad', fillAlpha: flash }, group: 'overlap' },
    ];
  });
}

/** The tool ends so far on the way from the hole to the middle of what it works on. */
const REACH = 0.72;
/** Half the blade's width, mm. */
const BLADE = 2.2;

/**
 * The access hole by name, and, while the adjuster is backed off, the tool that reaches through it.
 *
 * @param used a tool reaches through it
 */
export function accessHole(
  brake: Brake,
  instant: Instant,
  used: boolean,
  view: View,
): { shapes: Shape[]; labels: Label[] } {
  const { at } = brake.look.accessHole;
  const shapes: Shape[] = [];
  if (used) {
    const { look } = drawingOf(brake).sight(brake, instant, placesOf(brake, instant));
    const tip = mix(at, look, REACH);
    const [dx, dy] = [tip[0] - at[0], tip[1] - at[1]];
    const long = Math.hypot(dx, dy) || 1;
    const off: Point = [(-dy / long) * BLADE, (dx / long) * BLADE];
    const side = (p: Point, way: 1 | -1): Point => [p[0] + way * off[0], p[1] + way * off[1]];
    const blade = polygon([
      side(at, 1),
      side(mix(at, tip, 0.86), 1),
      tip,
      side(mix(at, tip, 0.86), -1),
      side(at, -1),
    ]);
    shapes.push({
      key: 'tool blade',
      path: blade,
      style: { fill: 'sheet', stroke: 'ink', width: 2 },
      group: 'tool',
    });
  }
  if (view.narrow || view.wall) return { shapes, labels: [] };
  const beside: Point = [at[0] + 9, at[1] + 5];
  const line = polyline(at, [at[0] + 6, at[1] + 5], [at[0] + 8.4, at[1] + 5]);
  shapes.push({
    key: 'leader access hole',
    path: line,
    style: stroked('ink', WEIGHT.narrow),
    group: 'tool',
  });
  const name = label(view, {
    key: 'access hole',
    text: words.accessHole,
    at: beside,
    anchor: 'start',
    style: 'name',
    colour: 'ink',
  });
  return { shapes, labels: [name] };
}
