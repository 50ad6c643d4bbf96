import { type Brake, type Instant, type Point, peak } from '../../../sim/index.ts';
import { fixed } from '../../format.ts';
import { degrees, polar } from '../geometry.ts';
import { type Command, type Path, polyline, trace } from '../path.ts';
import { DASH, type Label, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { toMm, toPx, type View } from '../view.ts';
import { along, bandRadius, lookOf, SIDES } from './band.ts';
import { label, sizeOf } from './label.ts';

/** Height of a bar, mm per MPa. */
export const COMB_SCALE = 26;
/** The same on a wall, where the brake takes the room beside it: the pedal's hardest press, some 1.9 MPa, has 26 mm. */
const ON_WALL = 11.5;
const EVERY = degrees(4);
const HALF_WIDTH = 1.25;
/** Pressure below which nothing is drawn, MPa. */
const SEEN = 0.002;

/** Pressure comb: bars every 4° as high as the pressure there, an envelope over them, the peak once. */
export function comb(
  brake: Brake,
  instant: Instant,
  view: View,
  values: boolean,
): { shapes: Shape[]; labels: Label[] } {
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  const base = bandRadius(brake);
  for (const side of SIDES) {
    const { lining } = brake.shoes[side];
    const now = instant.shoes[side];
    const look = lookOf(side, instant);
    const highest = peak(now.pressure);
    if (!(highest > SEEN)) continue;
    const scale = view.wall ? ON_WALL : COMB_SCALE;
    const top = (angle: number) =>
      base + scale * Math.max(0, along(now.pressure, now.angle, angle));
    const bars: Command[] = [];
    for (let a = lining.from + degrees(1.5); a <= lining.to - degrees(1.4); a += EVERY) {
      if (top(a) - base < SEEN * scale) continue;
      const across: Point = [-Math.sin(a) * HALF_WIDTH, Math.cos(a) * HALF_WIDTH];
      const corner = (r: number, s: 1 | -1): Point => {
        const [x, y] = polar(r, a);
        return [x + s * across[0], y + s * across[1]];
      };
      const outer = top(a);
      bars.push(
        ...trace().line(corner(base, 1), corner(outer, 1), corner(outer, -1), corner(base, -1))
          .path,
        ['Z'],
      );
    }
    const n = now.pressure.length;
    const edge = Array.from({ length: n + 1 }, (_, i): Point => {
      const a = lining.from + ((lining.to - lining.from) * i) / n;
      return polar(top(a), a);
    });
    const make = (name: string, path: Path, style: Shape['style']): Shape => ({
      key: `comb ${side} ${name}`,
      path,
      style,
      ...(look.role ? { role: look.role } : {}),
      group: 'comb',
    });
    shapes.push(
      make(
        'bars',
        bars,
        look.solid
          ? { fill: look.colour, stroke: look.colour, width: 1.2 }
          : { fill: 'sheet', stroke: look.colour, width: WEIGHT.wide },
      ),
      make(
        'envelope',
        polyline(...edge),
        stroked(look.colour, 2.4, look.solid ? undefined : DASH.trailing),
      ),
      make(
        'base',
        trace().arc([0, 0], base, lining.from, lining.to).path,
        stroked(look.colour, 1.2),
      ),
    );
    if (values && !view.narrow && !view.wall)
      labels.push(peakLabel(side === 'front', highest, now, top, view, look.colour));
  }
  return { shapes, labels };
}

function peakLabel(
  front: boolean,
  highest: number,
  now: Instant['shoes']['front'],
  top: (angle: number) => number,
  view: View,
  colour: Label['colour'],
): Label {
  const at = now.pressure.reduce((best, p, i, all) => (p > (all[best] as number) ? i : best), 0);
  const angle = now.angle[at] as number;
  const text = `${fixed(highest, 2)}\u00a0MPa`;
  // A comb that reaches the stage's edge keeps its value inside, over the bars.
  const [x, y] = toPx(view, polar(top(angle) + 5, angle));
  const room = 30 + 0.6 * sizeOf(view, 'peak') * text.length;
  const held = front ? Math.max(x, room) : Math.min(x, view.width - room);
  return label(view, {
    key: `peak ${front ? 'front' : 'rear'}`,
    text,
    at: toMm(view, [held, y]),
    anchor: front ? 'end' : 'start',
    style: 'peak',
    colour,
  });
}
