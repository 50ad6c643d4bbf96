import { type Brake, gapsOf, type Instant, type Point } from '../../../sim/index.ts';
import { fixed } from '../../format.ts';
import { polar } from '../geometry.ts';
import { type Path, polyline, trace } from '../path.ts';
import { DASH, type Label, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { toMm, toPx, type View } from '../view.ts';
import { along, bandRadius, lookOf, SIDES } from './band.ts';
import { label, sizeOf } from './label.ts';

/** Steps of the fan's edge for each lining. */
const STEPS = 56;
/** A lining that touches from end to end has no fan, mm. */
const SEEN = 0.002;
/** Where toe and heel are marked, from the lining's ends, rad. */
const INSIDE = (3 * Math.PI) / 180;

/** A value that would hang over the stage's edge is kept inside, over the fan. */
function held(at: Point, front: boolean, view: View): Point {
  const [x, y] = toPx(view, at);
  // Four figures, each about six tenths as wide as high.
  const room = 4 + 4 * 0.6 * sizeOf(view, 'gap');
  return toMm(view, [front ? Math.max(x, room) : Math.min(x, view.width - room), y]);
}

/**
 * Gap fan: outside the rim a band as high as the gap is wide, times the magnification, with the
 * true millimetres at toe, centre and heel. No gap, no fan.
 */
export function fan(
  brake: Brake,
  instant: Instant,
  magnification: number,
  view: View,
): { shapes: Shape[]; labels: Label[] } {
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  const base = bandRadius(brake);
  for (const side of SIDES) {
    const shoe = brake.shoes[side];
    const now = instant.shoes[side];
    const look = lookOf(side, instant);
    const { from, to } = shoe.lining;
    const height = (angle: number) => Math.max(0, along(now.gap, now.angle, angle)) * magnification;
    const edge = Array.from({ length: STEPS + 1 }, (_, i): Point => {
      const angle = from + ((to - from) * i) / STEPS;
      return polar(base + height(angle), angle);
    });
    const outline = trace()
      .line(...edge)
      .arc([0, 0], base, to, from)
      .close().path;
    const gaps = gapsOf(shoe, now);
    if (Math.max(gaps.toe, gaps.centre, gaps.heel) < SEEN) continue;
    const front = side === 'front';
    const marks = [
      { word: 'toe', gap: gaps.toe, angle: front ? from + INSIDE : to - INSIDE },
      { word: 'centre', gap: gaps.centre, angle: (from + to) / 2 },
      { word: 'heel', gap: gaps.heel, angle: front ? to - INSIDE : from + INSIDE },
    ];
    const ticks: Path = marks.flatMap(({ angle }) =>
      polyline(polar(base, angle), polar(base + height(angle), angle)),
    );
    const make = (name: string, path: Path, style: Shape['style']): Shape => ({
      key: `fan ${side} ${name}`,
      path,
      style,
      ...(look.role ? { role: look.role } : {}),
      group: 'fan',
    });
    shapes.push(
      make('area', outline, { fill: look.fill, fillAlpha: look.solid ? 0.55 : 0.6 }),
      make('edge', polyline(...edge), {
        ...stroked(look.colour, 2.4, look.solid ? undefined : DASH.trailing),
      }),
      make('base', trace().arc([0, 0], base, from, to).path, stroked(look.colour, 1.2)),
      make('ticks', ticks, stroked(look.colour, WEIGHT.wide)),
    );
    for (const { word, gap, angle } of marks) {
      const at = held(polar(base + height(angle) + 2.6, angle), front, view);
      labels.push(
        label(view, {
          key: `fan ${side} ${word}`,
          text: fixed(gap, 2),
          at,
          anchor: front ? 'end' : 'start',
          style: 'gap',
          colour: look.colour,
        }),
      );
    }
  }
  return { shapes, labels };
}
