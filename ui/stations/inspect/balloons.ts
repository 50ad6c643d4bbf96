import type { Point } from '../../../sim/index.ts';
import { add, polar } from '../../stage/geometry.ts';
import { label, ownSize } from '../../stage/layers/label.ts';
import { nameSpots } from '../../stage/layers/names.ts';
import type { PartId } from '../../stage/part-names.ts';
import { drawingOf } from '../../stage/parts/adjuster.ts';
import { circlePath, polyline } from '../../stage/path.ts';
import { placesOf } from '../../stage/place.ts';
import type { StageInput } from '../../stage/scene.ts';
import type { Label, Shape } from '../../stage/shapes.ts';
import { toMm, toPx } from '../../stage/view.ts';
import type { Line } from './lines.ts';

/** Where each balloon stands around the brake, degrees from +x; clear of the zoom buttons, on either wheel. */
const STANDS: Readonly<Record<number, number>> = {
  1: 139,
  2: 41,
  3: -43,
  4: 180,
  5: 0,
  6: 92,
  7: 20,
  8: 156,
  9: -68,
};
const DEG = Math.PI / 180;
/** Size of a balloon's number, px, and the balloon's radius as a share of it. */
const NUMBER = 16;
const RADIUS = 0.88;

/** What each number points at, mm; the open line moves its point to the toe, the heel or the angle. */
function targets(input: StageInput, open: Line): ReadonlyMap<number, Point> {
  const { brake, instant } = input;
  const spots = nameSpots(brake, instant, placesOf(brake, instant));
  const part = (...ids: PartId[]): Point | undefined =>
    ids.map((id) => spots.find((s) => s.part === id)?.at).find((at) => at !== undefined);
  const bore = instant.drumRadius;
  const on = (side: 'front' | 'rear', key: string): Point => {
    const { from, to, thicknessNew } = brake.shoes[side].lining;
    // The front shoe's toe is at the arc's start, the rear's at its end.
    const inward = side === 'front' ? 1 : -1;
    const [toe, heel] = side === 'front' ? [from, to] : [to, from];
    const at = key.endsWith('Toe')
      ? toe + inward * 0.06
      : key.endsWith('Heel')
        ? heel - inward * 0.06
        : toe + 0.4 * (heel - toe);
    return polar(brake.drum.radiusNew - thicknessNew / 2, at);
  };
  const spring = instant.springs[0];
  const turned = { drumB: 60, drumC: 120 }[open.key as string] ?? 0;
  const all: readonly (readonly [number, Point | undefined])[] = [
    [1, polar(bore, (139 + (open.number === 1 ? turned : 0)) * DEG)],
    [2, polar(bore, 41 * DEG)],
    [3, polar(brake.drum.lipRadius, -43 * DEG)],
    [4, on('front', open.key)],
    [5, on('rear', open.key)],
    [6, part('boot', 'cylinder')],
    [
      7,
      spring
        ? add(spring.from, [spring.to[0] - spring.from[0], spring.to[1] - spring.from[1]], 0.8)
        : undefined,
    ],
    [8, part(drawingOf(brake).part, 'strut')],
    [9, part('lever stop', 'parking lever')],
  ];
  return new Map(all.filter((p): p is readonly [number, Point] => p[1] !== undefined));
}

/**
 * Numbered balloons with leaders; the open line's is filled.
 *
 * @param few the open one alone: where the drawing is small only it has room
 */
export function balloons(
  input: StageInput,
  open: Line,
  few = false,
): { shapes: Shape[]; labels: Label[] } {
  const { view, brake } = input;
  const rim = (brake.drum.radiusNew + brake.drum.rim) * view.scale;
  const radius = RADIUS * ownSize(view, NUMBER);
  const shapes: Shape[] = [];
  const labels: Label[] = [];
  for (const [number, target] of targets(input, open)) {
    const on = number === open.number;
    if (few && !on) continue;
    const angle = (STANDS[number] ?? 0) * DEG;
    const level = Math.abs(Math.sin(angle)) < 0.2;
    const far = rim + radius * (level ? (few ? 0.2 : 0.6) : few ? 1.6 : 2.6);
    const at = toMm(view, [
      view.origin[0] + far * Math.cos(angle),
      Math.min(
        view.height - radius - 3,
        Math.max(radius + 3, view.origin[1] - far * Math.sin(angle)),
      ),
    ]);
    const toward = toPx(view, target);
    const from = toPx(view, at);
    const away = Math.hypot(toward[0] - from[0], toward[1] - from[1]);
    const edge = toMm(view, [
      from[0] + (radius / away) * (toward[0] - from[0]),
      from[1] + (radius / away) * (toward[1] - from[1]),
    ]);
    const group = 'balloons';
    shapes.push(
      {
        key: `balloon line ${number}`,
        path: polyline(edge, target),
        style: { stroke: 'ink', width: on ? 1.9 : 1.1 },
        group,
      },
      {
        key: `balloon dot ${number}`,
        path: circlePath(target, (on ? 4.6 : 3.4) / view.scale),
        style: { fill: 'ink', stroke: 'sheet', width: 1.2 },
        group,
      },
      {
        key: `balloon ring ${number}`,
        path: circlePath(at, radius / view.scale),
        style: { fill: on ? 'ink' : 'sheet', stroke: 'ink', width: 2 },
        group,
      },
    );
    labels.push(
      label(view, {
        key: `balloon ${number}`,
        text: String(number),
        at,
        anchor: 'middle',
        style: 'name',
        size: NUMBER,
        colour: on ? 'sheet' : 'ink',
      }),
    );
  }
  return { shapes, labels };
}
