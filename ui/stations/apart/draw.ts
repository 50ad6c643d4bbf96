import type { Point } from '../../../sim/index.ts';
import { apartDraw as texts } from '../../../sim/words/en.ts';
import type { Session } from '../../session.ts';
import { flatten } from '../../stage/flatten.ts';
import { apply, IDENTITY } from '../../stage/geometry.ts';
import { label, sizeOf, textWidth } from '../../stage/layers/label.ts';
import { mirrorDrawing } from '../../stage/mirror.ts';
import { nameOf, type PartId } from '../../stage/part-names.ts';
import { DASH, type Drawing, type Label, type Shape, stroked } from '../../stage/shapes.ts';
import { toMm, type View, weightFor } from '../../stage/view.ts';
import type { StageSize } from '../station.ts';
import type { ApartDesk } from './desk.ts';

/** The adjuster's parts, together and laid out, from outside the wheel and from behind. */

interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function boxOf(shapes: readonly Shape[]): Box {
  let [left, right, low, high] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const s of shapes)
    for (const { points } of flatten(s.path, 0.2))
      for (let i = 0; i < points.length; i += 2) {
        const [x, y] = apply(s.place ?? IDENTITY, [points[i] as number, points[i + 1] as number]);
        left = Math.min(left, x);
        right = Math.max(right, x);
        low = Math.min(low, y);
        high = Math.max(high, y);
      }
  return { left, right, low, high };
}

const shifted = (s: Shape, [dx, dy]: Point): Shape => {
  const { angle, x, y } = s.place ?? IDENTITY;
  return { ...s, place: { angle, x: x + dx, y: y + dy } };
};

/** Right of the zoom's buttons, px. */
const BESIDE_ZOOM = 190;
/** Between loose parts, mm. */
const APART = 15;
/** Least width that a loose part has, for its name, mm. */
const LEAST = 34;

interface Laid {
  readonly shapes: readonly Shape[];
  readonly box: Box;
  /** Middle of a part's lower edge, mm, where its number or name goes; and whether it is loose. */
  readonly spots: readonly {
    readonly part: PartId;
    readonly at: Point;
    readonly loose: boolean;
    /** Width that a name has, mm. */
    readonly room: number;
  }[];
}

/** Loose parts in rows: beside the adjuster where the stage is wide, else below it. */
function rowsOf(desk: ApartDesk, loose: readonly PartId[], whole: Box, wide: boolean) {
  const left = wide ? whole.right + 2 * APART : whole.left;
  const right = wide ? left + 1.15 * (whole.right - whole.left) : whole.right + 4;
  const shapes: Shape[] = [];
  const spots: { part: PartId; at: Point; loose: true; room: number }[] = [];
  const box = { ...whole };
  let [x, y, row] = [left, wide ? whole.high : whole.low - APART, 0];
  for (const part of loose) {
    const own = desk.shapes.filter((s) => s.part === part);
    const around = boxOf(own);
    const [across, high] = [around.right - around.left, around.high - around.low];
    if (x > left && x + across > right) {
      x = left;
      y -= row + APART;
      row = 0;
    }
    shapes.push(...own.map((s) => shifted(s, [x - around.left, y - around.high])));
    const room = Math.max(across, LEAST);
    spots.push({ part, at: [x + across / 2, y - high - 5], loose: true, room });
    box.low = Math.min(box.low, y - high - 9);
    box.right = Math.max(box.right, x + across);
    row = Math.max(row, high + 6);
    x += room + APART;
  }
  return { shapes, spots, box };
}

/** Parts that are together as they stand in the brake, the places of the others dashed, and those laid out. */
function laidOut(desk: ApartDesk, wide: boolean): Laid {
  const { order, fitted, shapes } = desk;
  const whole = boxOf(shapes);
  const missing = desk.away;
  const together = order.slice(0, fitted).filter((p) => p !== missing);
  const isOn = ({ part }: Shape): boolean => part !== undefined && together.includes(part);
  const dashed = shapes
    .filter((s) => !isOn(s))
    .map((s): Shape => {
      const { part: _part, ...rest } = s;
      return {
        ...rest,
        key: `place ${s.key}`,
        style: stroked('ink2', 1, DASH.hidden),
        group: 'place',
      };
    });
  const loose = rowsOf(
    desk,
    order.filter((p) => !together.includes(p)),
    whole,
    wide,
  );
  const middle = (part: PartId): Point => {
    const { left, right, low, high } = boxOf(shapes.filter((s) => s.part === part));
    return [(left + right) / 2, (low + high) / 2];
  };
  const on = together.map((part) => ({
    part,
    at: desk.spots.get(part) ?? middle(part),
    loose: false,
    room: 0,
  }));
  return {
    shapes: [...dashed, ...shapes.filter(isOn), ...loose.shapes],
    // As large as with all of them apart, so that nothing jumps from step to step.
    box: rowsOf(desk, order, whole, wide).box,
    spots: [...on, ...loose.spots],
  };
}

/** From behind, what lay in front lies behind: runs of one part's shapes keep their order, the runs are painted the other way round. */
function behind(shapes: readonly Shape[]): Shape[] {
  const runs: Shape[][] = [];
  for (const s of shapes) {
    const last = runs.at(-1);
    if (last?.[0] && last[0].part === s.part && last[0].group === s.group) last.push(s);
    else runs.push([s]);
  }
  return runs.reverse().flat();
}

function one(
  session: Session,
  desk: ApartDesk,
  laid: Laid,
  stage: StageSize,
  [top, high]: readonly [number, number],
  from: 'outside' | 'behind',
): Drawing {
  const { width } = stage;
  const { wall } = session;
  const narrow = width < 560;
  const k = wall ? 1.5 : weightFor(Math.min(width, high + 200));
  const text = wall ? 2 * Math.min(1, stage.height / 1080) : narrow ? 0.8 : 1;
  const head = wall ? 70 * (text / 2) : 44;
  const { box } = laid;
  const [wide, tall] = [box.right - box.left, box.high - box.low];
  const scale = Math.max(0.05, Math.min((width - 60) / wide, (high - head - 26) / tall));
  const middle: Point = [(box.left + box.right) / 2, (box.low + box.high) / 2];
  const view: View = {
    width,
    height: stage.height,
    scale,
    origin: [width / 2 - scale * middle[0], top + head + (high - head) / 2 + scale * middle[1]],
    k,
    text,
    narrow: false,
    ...(wall ? { wall } : {}),
  };
  const shapes = from === 'behind' ? behind(laid.shapes) : laid.shapes;
  const words = !narrow && !wall;
  const size = sizeOf(view, 'number');
  /** Where numbers stand already: parts on one axis would have theirs on one another. */
  const taken: Point[] = [];
  const beside = ([x, y]: Point): number => {
    const near = taken.some(
      ([u, v]) => Math.abs(u - x) * scale < 1.5 * size && Math.abs(v - y) * scale < 1.2 * size,
    );
    taken.push([x + (near ? (1.6 * size) / scale : 0), y]);
    return near ? 1.6 * size : 0;
  };
  const labels = laid.spots.flatMap(({ part, at, loose, room }): Label[] => {
    const number = String(desk.order.indexOf(part) + 1);
    const name = nameOf(part);
    // A name that is wider than its place stands as its number; the list has them all.
    const named =
      words &&
      loose &&
      textWidth(`${number} ${name}`, sizeOf(view, 'name')) < (room + APART) * scale;
    return [
      label(view, {
        key: `part ${part}`,
        text: named ? `${number} ${name}` : number,
        at,
        dx: named ? 0 : beside(at),
        anchor: 'middle',
        style: named ? 'name' : 'number',
        colour: 'ink',
      }),
    ];
  });
  const drawn: Drawing = { shapes: [...shapes], labels, view };
  // The right-hand brake is the left-hand one's mirror image; from behind once more.
  const turned = (session.wheel === 'right') !== (from === 'behind') ? mirrorDrawing(drawn) : drawn;
  const title = label(turned.view, {
    key: `from ${from}`,
    text: from === 'outside' ? texts.fromOutsideTheWheel : texts.fromBehindThisSideLies,
    at: toMm(turned.view, [wall ? 24 : narrow || top > 0 ? 20 : BESIDE_ZOOM, top + head / 2]),
    anchor: 'start',
    style: 'role note',
    colour: 'ink',
  });
  return {
    ...turned,
    shapes: turned.shapes.map((s) => ({ ...s, key: `${from} ${s.key}` })),
    labels: [...turned.labels, title],
  };
}

export function drawApart(session: Session, desk: ApartDesk, stage: StageSize): Drawing[] {
  const half = (stage.height - stage.foot) / 2;
  const laid = laidOut(desk, stage.width > 1.7 * half);
  return [
    one(session, desk, laid, stage, [0, half], 'outside'),
    one(session, desk, laid, stage, [half, half], 'behind'),
  ];
}
