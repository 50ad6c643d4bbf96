import type { Brake, Point, Side } from '../../../sim/index.ts';
import { add, angleOf, distance, type Frame, mix, polar } from '../geometry.ts';
import type { PartId } from '../part-names.ts';
import { circlePath, moved, type Path, polygon, polyline, trace } from '../path.ts';
import { DASH, outlined, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { maker, perBrake } from './make.ts';

const SIDES: readonly Side[] = ['front', 'rear'];

/** Keeper over both pins: round ends, a narrower bar between. */
function keeperPath(a: Point, b: Point, pinRadius: number): Path {
  const end = pinRadius + 2;
  const half = end * 0.82;
  const span = distance(a, b) / 2;
  const waist = Math.max(0, span - end - 1.4);
  const open = Math.asin(half / end);
  const path = trace()
    .arc([-span, 0], end, open, 2 * Math.PI - open)
    .line([-waist, -half], [waist, -half])
    .arc([span, 0], end, Math.PI + open, 3 * Math.PI - open)
    .line([waist, half], [-waist, half])
    .close().path;
  const [x, y] = mix(a, b, 0.5);
  return moved(path, { angle: angleOf(b, a), x, y });
}

function pin(brake: Brake, side: Side): Shape[] {
  const at = brake.shoes[side].anchor.at;
  const { pinRadius, eyeRadius } = brake.look;
  const make = maker('anchors', 'anchor pin', ` ${side}`);
  const reach = eyeRadius * 0.9;
  const [x, y] = at;
  return [
    make(circlePath(at, pinRadius), outlined('bolt')),
    make(circlePath(at, pinRadius * 0.565), stroked('ink', 0.9)),
    make(
      [...polyline([x - reach, y], [x + reach, y]), ...polyline([x, y - reach], [x, y + reach])],
      stroked('ink2', WEIGHT.axis, DASH.axis),
    ),
  ];
}

/** Block with the flat that a round heel slides on, in its own frame, and where it stands. */
export function abutmentBlock(brake: Brake, side: Side): { path: Path; place: Frame } | null {
  const { anchor } = brake.shoes[side];
  if (anchor.kind !== 'abutment') return null;
  const across = anchor.heelRadius * 1.5;
  const deep = anchor.heelRadius * 1.1;
  const block = polygon([
    [0, -across],
    [0, across],
    [-deep, across],
    [-deep, -across],
  ]);
  const [x, y] = add(anchor.at, polar(1, anchor.normal), -anchor.heelRadius);
  return { path: block, place: { angle: anchor.normal, x, y } };
}

function abutment(brake: Brake, side: Side): Shape[] {
  const block = abutmentBlock(brake, side);
  const make = maker('anchors', 'abutment', ` ${side}`);
  return block ? [make(block.path, outlined('keeper', 1.7), { place: block.place })] : [];
}

/** What the heels stand on: pins under a keeper, or abutments. */
export const anchors = perBrake((brake: Brake): Shape[] => {
  const kinds = SIDES.map((side) => brake.shoes[side].anchor.kind);
  const shapes = SIDES.flatMap((side) => abutment(brake, side));
  const pins = SIDES.filter((side) => brake.shoes[side].anchor.kind === 'pin');
  if (kinds.every((kind) => kind === 'pin')) {
    const [a, b] = [brake.shoes.front.anchor.at, brake.shoes.rear.anchor.at];
    const make = maker('anchors', 'keeper');
    shapes.push(make(keeperPath(a, b, brake.look.pinRadius), outlined('keeper')));
    shapes.push(make(circlePath(mix(a, b, 0.5), brake.look.pinRadius * 0.48), outlined('bolt', 1)));
  }
  return [...shapes, ...pins.flatMap((side) => pin(brake, side))];
});

/** Points for the names layer. */
export function anchorSpots(brake: Brake): { part: PartId; at: Point }[] {
  const { front, rear } = brake.shoes;
  const at = front.anchor.at;
  if (front.anchor.kind === 'abutment') return [{ part: 'abutment', at }];
  const spots: { part: PartId; at: Point }[] = [{ part: 'anchor pin', at }];
  if (rear.anchor.kind === 'pin') {
    const [x, y] = mix(at, rear.anchor.at, 0.74);
    spots.push({ part: 'keeper', at: [x, y - brake.look.pinRadius * 0.5] });
  }
  return spots;
}
