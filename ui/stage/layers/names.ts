import type { Brake, Instant, Point } from '../../../sim/index.ts';
import { add, polar, segmentsCross } from '../geometry.ts';
import { nameOf, type PartId } from '../part-names.ts';
import { drawingOf } from '../parts/adjuster.ts';
import { anchorSpots } from '../parts/anchors.ts';
import { cylinderSpots } from '../parts/cylinder.ts';
import { rimRadius } from '../parts/drum.ts';
import { parkingSpots } from '../parts/parking.ts';
import { springPart } from '../parts/return-springs.ts';
import { shoeSpots } from '../parts/shoe.ts';
import { circlePath, type Path, polyline } from '../path.ts';
import type { Places } from '../place.ts';
import type { Label, Shape } from '../shapes.ts';
import { toMm, toPx, type View } from '../view.ts';
import { label, sizeOf, textWidth } from './label.ts';

export interface Spot {
  readonly part: PartId;
  /** mm */
  readonly at: Point;
  readonly column: 'left' | 'right';
}

/** Parts of the adjuster whose names stand on the right. */
const RIGHT: ReadonlySet<PartId> = new Set(['strut', 'strut spring', 'sleeve', 'screw']);

/** A dot on every part that has a name, and the column its name stands in. */
export function nameSpots(brake: Brake, instant: Instant, places: Places): Spot[] {
  const cyl = cylinderSpots(brake, places.out);
  const parking = parkingSpots(brake, places.parking);
  const left = (part: PartId, at: Point): Spot => ({ part, at, column: 'left' });
  const right = (part: PartId, at: Point): Spot => ({ part, at, column: 'right' });
  const drum = rimRadius(brake) - brake.drum.rim / 2;
  const front = shoeSpots(brake, 'front', places.shoes.front);
  const rear = shoeSpots(brake, 'rear', places.shoes.rear);
  const anchors = anchorSpots(brake);
  const named = instant.springs.map((s, i): Spot => {
    const at = add(s.from, [s.to[0] - s.from[0], s.to[1] - s.from[1]], 0.2);
    return left(springPart(brake, i), at);
  });
  return [
    left('bleed port', cyl.port),
    left('boot', cyl.boot),
    left('piston', cyl.piston),
    ...named,
    ...drawingOf(brake)
      .spots(brake, instant, places)
      .map(({ part, at }) => (RIGHT.has(part) ? right(part, at) : left(part, at))),
    left('web', front.web),
    left('table', front.table),
    left('lining', front.lining),
    left('drum', polar(drum, (Math.PI * 217) / 180)),
    ...anchors.map(({ part, at }) => (part === 'keeper' ? right(part, at) : left(part, at))),
    right('cylinder', cyl.housing),
    right('cup', cyl.cup),
    right('cup spring', cyl.spring),
    right('lever pivot', parking.pivot),
    right('access hole', brake.look.accessHole.at),
    right('parking lever', parking.lever),
    right('hold-down', rear.holdDown),
    right('hub', polar(brake.look.hubRadius * 0.95, (-19 * Math.PI) / 180)),
    right('plate', polar(brake.look.plateRadius * 0.49, (-28 * Math.PI) / 180)),
    right('cable', parking.cable),
    right('cable guide', parking.guide),
  ];
}

export interface NumberedName {
  readonly number: number;
  readonly part: PartId;
  readonly name: string;
}

interface Leader {
  readonly spot: Spot;
  /** px: where the name's line bends, and the dot. */
  elbow: Point;
  readonly dot: Point;
}

/**
 * Gives each dot a row of its column so that no two leaders cross. Dots are taken from the top
 * down; then any two leaders that cross exchange their rows. Each exchange shortens the leaders'
 * total length (the sides of a quadrangle against its diagonals), so this comes to an end.
 */
export function untangle(leaders: Leader[]): Leader[] {
  for (let again = true; again; ) {
    again = false;
    for (let i = 0; i < leaders.length; i++) {
      for (let j = i + 1; j < leaders.length; j++) {
        const a = leaders[i] as Leader;
        const b = leaders[j] as Leader;
        if (!segmentsCross(a.elbow, a.dot, b.elbow, b.dot)) continue;
        [a.elbow, b.elbow] = [b.elbow, a.elbow];
        again = true;
      }
    }
  }
  return leaders.sort((a, b) => a.elbow[1] - b.elbow[1]);
}

/**
 * Names with leaders in two columns; numbers instead where there is no room for words.
 *
 * @param revealed where names are asked for one by one: those told so far; the rest stand as numbers
 */
export function names(
  spots: readonly Spot[],
  brake: Brake,
  view: View,
  revealed?: ReadonlySet<PartId>,
): { shapes: Shape[]; labels: Label[]; list: NumberedName[]; numbered: boolean } {
  const rim = rimRadius(brake) * view.scale;
  const size = sizeOf(view, 'name');
  const widest = Math.max(...spots.map((s) => textWidth(nameOf(s.part), size)));
  const [from, to] = view.room ?? [0, view.width];
  const room = Math.min(view.origin[0] - from, to - view.origin[0]) - rim;
  const words = !view.narrow && room > widest * 0.8 + 40 * view.text;
  // Numbers keep off the frame of zones that a large stage has.
  const beside = view.narrow ? 16 : 40;
  const columns = (['left', 'right'] as const).map((column) => {
    const chosen = spots.filter((s) => s.column === column);
    const edge = words ? Math.max(16, Math.min(58 * view.text, room - widest * 0.8 - 30)) : beside;
    const bend = words ? Math.min(edge + widest + 20, edge + room) : beside + 16;
    const x = column === 'left' ? from + bend : to - bend;
    const rows = rowHeights(chosen.length, view, size);
    const leaders = chosen
      .map((spot): Leader => ({ spot, dot: toPx(view, spot.at), elbow: [x, 0] }))
      .sort((a, b) => a.dot[1] - b.dot[1]);
    leaders.forEach((leader, i) => {
      leader.elbow = [x, rows[i] as number];
    });
    return { column, edge, leaders: untangle(leaders) };
  });
  return written(columns, words, view, revealed);
}

/** Heights of the rows, px: around the brake's middle, as far apart as the stage allows. */
function rowHeights(count: number, view: View, size: number): number[] {
  const head = headOf(view);
  const free = view.height - (view.narrow ? (view.foot ?? 0) + head + 2.8 * size : 190 * view.text);
  const step = Math.min(size * 3.4, free / Math.max(1, count - 1));
  const top = Math.max(head, size * 1.4, view.origin[1] - (step * (count - 1)) / 2);
  return Array.from({ length: count }, (_, i) => top + i * step);
}

/** Kept free above the columns, px: for the zoom's buttons, which a phone has elsewhere. */
const headOf = (view: View): number => (view.upper ? 0 : view.narrow ? 56 : 78 * view.text);

interface Column {
  readonly column: 'left' | 'right';
  readonly edge: number;
  readonly leaders: readonly Leader[];
}

/** Numbers run clockwise from the top left: down the right column, up the left one. */
function written(
  columns: readonly Column[],
  words: boolean,
  view: View,
  revealed?: ReadonlySet<PartId>,
) {
  const [from, to] = view.room ?? [0, view.width];
  const told = (part: PartId): boolean => words && (!revealed || revealed.has(part));
  const lines: Path = columns.flatMap(({ leaders, column, edge }) =>
    leaders.flatMap(({ spot, elbow, dot }): Path => {
      const size = sizeOf(view, told(spot.part) ? 'name' : 'number');
      const inward = column === 'left' ? 1 : -1;
      const far = column === 'left' ? from + edge : to - edge;
      const reach = told(spot.part) ? textWidth(nameOf(spot.part), size) * 0.94 + 10 : size * 0.7;
      const start = far + inward * reach;
      const begin: Point = inward * (elbow[0] - start) > 0 ? [start, elbow[1]] : elbow;
      return polyline(toMm(view, begin), toMm(view, elbow), toMm(view, dot));
    }),
  );
  const radius = (4.2 * Math.max(0.8, view.k)) / view.scale;
  const dots: Path = columns.flatMap(({ leaders }) =>
    leaders.flatMap(({ spot }) => [...circlePath(spot.at, radius)]),
  );
  const [left, right] = columns as [Column, Column];
  const inOrder = [...right.leaders, ...[...left.leaders].reverse()];
  const list = inOrder.map(({ spot }, i) => ({
    number: i + 1,
    part: spot.part,
    name: nameOf(spot.part),
  }));
  const labels = columns.flatMap(({ column, edge, leaders }) =>
    leaders.map(({ spot, elbow }) => {
      const at = toMm(view, [column === 'left' ? from + edge : to - edge, elbow[1]]);
      const number = inOrder.findIndex((l) => l.spot === spot) + 1;
      return label(view, {
        key: `name ${spot.part}`,
        text: told(spot.part) ? nameOf(spot.part) : String(number),
        at,
        anchor: words ? (column === 'left' ? 'start' : 'end') : 'middle',
        style: told(spot.part) ? 'name' : 'number',
        colour: 'ink',
        part: spot.part,
      });
    }),
  );
  const shapes: Shape[] = [
    { key: 'names lines', path: lines, style: { stroke: 'ink', width: 1.1 }, group: 'names' },
    {
      key: 'names dots',
      path: dots,
      style: { fill: 'ink', stroke: 'sheet', width: 1.2 },
      group: 'names',
    },
  ];
  return { shapes, labels, list: words && !revealed ? [] : list, numbered: !words };
}
