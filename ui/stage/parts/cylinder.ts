import { type Brake, type Point, pistonOutline, type Side } from '../../../sim/index.ts';
import { IDENTITY } from '../geometry.ts';
import { circlePath, type Path, polygon, polyline, trace } from '../path.ts';
import { DASH, hatched, outlined, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { coil } from './coil.ts';
import { maker, perBrake } from './make.ts';

/** Sizes that follow from the bore; u = 1 on a bore of 19.05 mm. */
interface Sizes {
  readonly u: number;
  readonly bore: number;
  readonly outer: number;
  readonly half: number;
  /** Distance of the toe's face from the middle in the reference pose. */
  readonly toe: Readonly<Record<Side, number>>;
}

function sizes(brake: Brake): Sizes {
  const { bore, outerRadius, halfLength, at } = brake.cylinder;
  const toe = (side: Side) => Math.abs(brake.shoes[side].toe[0] - at[0]);
  return {
    u: bore / 19.05,
    bore: bore / 2,
    outer: outerRadius,
    half: halfLength,
    toe: { front: toe('front'), rear: toe('rear') },
  };
}

/** Housing in section with its bleed boss. */
function housing({ u, bore, outer, half }: Sizes): { wall: Path; bore: Path } {
  const c = Math.min(1, outer - bore);
  const boss = outer + 3.9 * u;
  const inside: Point[] = [
    [-half, -bore],
    [half, -bore],
    [half, bore],
    [-half, bore],
  ];
  const wall = polygon([
    [-half, -outer + c],
    [-half, outer - c],
    [-half + c, outer],
    [-6 * u, outer],
    [-4.4 * u, boss],
    [4.4 * u, boss],
    [6 * u, outer],
    [half - c, outer],
    [half, outer - c],
    [half, -outer + c],
    [half - c, -outer],
    [-half + c, -outer],
  ]);
  return { wall: [...wall, ...polygon(inside)], bore: polygon(inside) };
}

/** Piston with the fork that takes the toe, and its cup; outward is +x, the toe's face at x = 0. */
function piston({ u, bore }: Sizes): { body: Path; cup: Path } {
  const both = (upper: readonly Point[]): Point[] => [
    ...upper,
    ...[...upper].reverse().map(([x, y]): Point => [x, -y]),
  ];
  const cup: readonly Point[] = [
    [-14.5, 9.4],
    [-18.9, 9.5],
    [-19.5, 8.3],
    [-16.9, 6.6],
  ];
  return {
    body: polygon(both(pistonOutline(2 * bore))),
    cup: polygon(both(cup.map(([x, y]): Point => [x * u, y * u]))),
  };
}

/** Folded outline of a boot from the housing to the piston's groove; upper side, outward +x. */
function boot({ u, outer, half }: Sizes, groove: number): Path {
  const h = (y: number) => outer + y * u;
  return trace().line(
    [half - 0.6 * u, h(-1.1)],
    [half + 1.2 * u, h(-0.1)],
    [half + 3 * u, h(-2.3)],
    [half + 5 * u, h(-0.3)],
    [half + 6.8 * u, h(-2.5)],
    [groove, 8.2 * u],
  ).path;
}

/** Path with x and y flipped by signs, then shifted. */
const flipped = (path: Path, sx: 1 | -1, sy: 1 | -1, [x, y]: Point): Path =>
  path.map((c) => (c[0] === 'M' || c[0] === 'L' ? [c[0], x + sx * c[1], y + sy * c[2]] : c));

/** What does not change its form: housing, and pistons and cups to be shifted. */
const forms = perBrake((brake) => {
  const z = sizes(brake);
  const { body, cup } = piston(z);
  const paths = housing(z);
  const place = { ...IDENTITY, x: brake.cylinder.at[0], y: brake.cylinder.at[1] };
  const make = maker('cylinder', 'cylinder');
  return {
    z,
    housing: [
      make(paths.wall, hatched('cylinder', 1.7), { place, evenOdd: true }),
      make(paths.bore, { fill: 'hole' }, { place }),
    ],
    axis: make(
      polyline([-z.toe.front - 6.5, 0], [z.toe.rear + 6.5, 0]),
      stroked('ink2', WEIGHT.axis, DASH.axis),
      { place },
    ),
    front: { body: flipped(body, -1, 1, [0, 0]), cup: flipped(cup, -1, 1, [0, 0]) },
    rear: { body, cup },
  };
});

/** How deep the fluid's tint is at a pressure (MPa): near its darkest at a hard stop of 8. */
export const tint = (pressure: number): number => (0.7 * pressure) / (pressure + 2.7);

/**
 * The wheel cylinder. Pistons, cups and boots follow the toes; the fluid fills what is between the
 * cups and darkens with pressure.
 *
 * @param out outward travel of each toe from the reference pose, mm
 */
export function cylinder(
  brake: Brake,
  out: Readonly<Record<Side, number>>,
  pressure: number,
): Shape[] {
  const form = forms(brake);
  const { z } = form;
  const at = brake.cylinder.at;
  const shapes = [...form.housing, ...fluid(z, out, pressure, at)];
  for (const side of ['front', 'rear'] as const) {
    const sign = side === 'front' ? -1 : 1;
    const place = { angle: 0, x: at[0] + sign * (z.toe[side] + out[side]), y: at[1] };
    const rod = maker('cylinder', 'piston', ` ${side}`);
    shapes.push(rod(form[side].body, hatched('piston', WEIGHT.medium), { place }));
    const cup = maker('cylinder', 'cup', ` ${side}`);
    shapes.push(cup(form[side].cup, outlined('rubber', 1), { place }));
    const fold = maker('cylinder', 'boot', ` ${side}`);
    const groove = z.toe[side] + out[side] - 1.9 * z.u;
    for (const up of [1, -1] as const) {
      const path = flipped(boot(z, groove), sign, up, at);
      const width = { mm: 1.75 * z.u, least: 3, inset: 0 };
      shapes.push(fold(path, { stroke: 'ink', width, round: true }));
      shapes.push(fold(path, { stroke: 'rubberSeen', width: { ...width, inset: 2.2 } }));
    }
  }
  const [left, right] = cupFaces(z, out);
  shapes.push(
    ...coil('cups', 'cup spring', [at[0] + left + 0.6, at[1]], [at[0] + right - 0.6, at[1]], {
      lead: [0.6, 0.6],
      turns: 5,
      radius: 5 * z.u,
      wire: 0.62,
    }),
    form.axis,
  );
  return shapes;
}

/** x of the two faces that hold the fluid, from the cylinder's middle. */
const cupFaces = ({ u, toe }: Sizes, out: Readonly<Record<Side, number>>): [number, number] => [
  -toe.front - out.front + 16.7 * u,
  toe.rear + out.rear - 16.7 * u,
];

/** Fluid between the cups and in the port, its tint over it, and the port's walls. */
function fluid(
  z: Sizes,
  out: Readonly<Record<Side, number>>,
  pressure: number,
  at: Point,
): Shape[] {
  const { u, bore, outer } = z;
  const [left, right] = cupFaces(z, out);
  const box = (x0: number, x1: number, y0: number, y1: number): Path =>
    polygon([
      [at[0] + x0, at[1] + y0],
      [at[0] + x1, at[1] + y0],
      [at[0] + x1, at[1] + y1],
      [at[0] + x0, at[1] + y1],
    ]);
  const make = maker('cylinder', 'fluid');
  const port = maker('cylinder', 'bleed port');
  const chamber = box(left, right, -bore, bore);
  const channel = box(-1.1 * u, 1.1 * u, bore - 0.2, outer - 0.7 * u);
  const wall = (x: number) => polyline([at[0] + x, at[1] + bore], [at[0] + x, at[1] + outer - u]);
  const shapes = [make(chamber, { hatch: 'fluid' })];
  if (pressure > 0) shapes.push(make(chamber, { fill: 'fluid', fillAlpha: tint(pressure) }));
  shapes.push(
    port(channel, { hatch: 'fluid' }),
    port([...wall(-1.1 * u), ...wall(1.1 * u)], stroked('ink', 0.9)),
    port(circlePath([at[0], at[1] + outer + 0.5 * u], 2.1 * u), outlined('hole', 1)),
  );
  return shapes;
}

/** Points of the cylinder's parts for the names layer. */
export function cylinderSpots(brake: Brake, out: Readonly<Record<Side, number>>) {
  const z = sizes(brake);
  const [x, y] = brake.cylinder.at;
  const front = x - z.toe.front - out.front;
  return {
    housing: [x + 10.3 * z.u, y + (z.bore + z.outer) / 2] as Point,
    port: [x, y + z.outer + 0.5 * z.u] as Point,
    boot: [x - z.half - 3 * z.u, y + z.outer - 1.6 * z.u] as Point,
    piston: [front + 8 * z.u, y + 2 * z.u] as Point,
    cup: [x + z.toe.rear + out.rear - 15.6 * z.u, y + 2 * z.u] as Point,
    spring: [x + 2.8 * z.u, y - 3.5 * z.u] as Point,
  };
}
