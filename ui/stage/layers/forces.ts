import type { Brake, Instant, Point, Side } from '../../../sim/index.ts';
import { dragOf, isTold } from '../../../sim/index.ts';
import { stageLayersForces as words } from '../../../sim/words/en.ts';
import { fixed } from '../../format.ts';
import type { Token } from '../../theme.ts';
import { add, apply, clamp, degrees, type Frame, polar } from '../geometry.ts';
import { webRadius } from '../parts/web.ts';
import type { Path } from '../path.ts';
import type { Label, Shape } from '../shapes.ts';
import type { View } from '../view.ts';
import { arcArrowPath, arrowPath } from './arrows.ts';
import { lookOf, SIDES } from './band.ts';
import { label } from './label.ts';

/** Length of an arrow, mm per N: 12.5 mm for each kilonewton. */
export const FORCE_SCALE = 0.0125;
/** Width of an arrow's shaft, mm per N, and its bounds. */
const WIDTH = 0.003;
const width = (force: number): number => clamp(force * WIDTH, 1.6, 9);
/** Share of its length that an arrow's head takes, in widths of the shaft (arrowPath). */
const HEAD = 1.9;
/** Shorter than its own head it is no arrow, and its value would stand by itself. */
const isSeen = (force: number): boolean => force * FORCE_SCALE > HEAD * width(force);

/** "1.70 kN", "570 N". */
export function forceText(newton: number): string {
  const tens = Math.round(newton / 10) * 10;
  return tens >= 1000 ? `${fixed(newton / 1000, 2)}\u00a0kN` : `${tens}\u00a0N`;
}

interface Arrows {
  readonly shapes: Shape[];
  readonly labels: Label[];
}

function put(out: Arrows, key: string, path: Path, fill: Token, role?: Shape['role']): void {
  out.shapes.push({
    key,
    path,
    style: { fill, stroke: 'sheet', width: 1.2 },
    group: 'forces',
    ...(role ? { role } : {}),
  });
}

/**
 * Forces as filled arrows at one scale with their values: what is left of the piston's push on each
 * toe, the drum's drag on each lining, the anchor's force on each shoe.
 *
 * @param values false where names stand on the same places
 */
export function forces(
  brake: Brake,
  instant: Instant,
  frames: Readonly<Record<Side, Frame>>,
  view: View,
  values = true,
): Arrows {
  const out: Arrows = { shapes: [], labels: [] };
  if (!isTold(instant)) return out;
  for (const side of SIDES) {
    toePush(out, brake, instant, side, frames[side], view);
    drag(out, brake, instant, side, view);
    anchorForce(out, brake, instant, side, view);
  }
  return values ? out : { ...out, labels: [] };
}

function toePush(
  out: Arrows,
  brake: Brake,
  instant: Instant,
  side: Side,
  frame: Frame,
  view: View,
): void {
  const force = instant.shoes[side].toeForce;
  if (!isSeen(force)) return;
  const sense = side === 'front' ? -1 : 1;
  const [x, y] = apply(frame, brake.shoes[side].toe);
  const start: Point = [x + sense * 2.5, y];
  put(
    out,
    words.toe(side),
    arrowPath(start, add(start, [sense, 0], force * FORCE_SCALE), width(force)),
    'fluid',
  );
  out.labels.push(
    label(view, {
      key: `toe ${side}`,
      text: forceText(force),
      at: [x + sense * 0.8, y + brake.cylinder.bore * 0.535],
      anchor: side === 'front' ? 'end' : 'start',
      style: 'force',
      colour: 'fluid',
    }),
  );
}

/** Drag of the drum on a lining, along the turning, in the middle of the rim. */
function drag(out: Arrows, brake: Brake, instant: Instant, side: Side, view: View): void {
  const force = dragOf(instant, side) / instant.drumRadius;
  if (!isSeen(force)) return;
  const look = lookOf(side, instant);
  const middle = side === 'front' ? degrees(170) : degrees(10);
  const radius = brake.drum.radiusNew + brake.drum.rim / 2;
  const half = ((force * FORCE_SCALE) / radius / 2) * instant.turning;
  put(
    out,
    words.drag(side),
    arcArrowPath(radius, middle - half, middle + half, width(force)),
    look.colour,
    look.role,
  );
  const inside = webRadius(brake.shoes[side]) - brake.shoes[side].steel.webDepth / 2;
  out.labels.push(
    label(view, {
      key: `drag ${side}`,
      text: forceText(force),
      // Words for a wall are wider than the web: they begin beside the arrow.
      at: polar(view.wall ? radius - brake.drum.rim : inside, middle),
      anchor: !view.wall ? 'middle' : side === 'front' ? 'start' : 'end',
      style: 'force',
      colour: look.colour,
    }),
  );
}

function anchorForce(out: Arrows, brake: Brake, instant: Instant, side: Side, view: View): void {
  const vector = instant.shoes[side].anchorForce;
  const force = Math.hypot(...vector);
  if (!isSeen(force)) return;
  const look = lookOf(side, instant);
  const at = brake.shoes[side].anchor.at;
  const tip = add(at, vector, FORCE_SCALE);
  put(out, words.anchor(side), arrowPath(at, tip, width(force * 0.8)), look.colour, look.role);
  const [ux, uy] = [vector[0] / force, vector[1] / force];
  out.labels.push(
    label(view, {
      key: `anchor ${side}`,
      text: forceText(force),
      at: add(tip, [ux * 3, uy * 4]),
      anchor: ux < -0.3 && !view.wall ? 'end' : ux > 0.3 ? 'start' : 'middle',
      dy: uy < 0 ? 10 : view.wall ? -30 : 0,
      style: 'force',
      colour: look.colour,
    }),
  );
}
