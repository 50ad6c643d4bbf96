import type { Brake, Point, Shoe } from '../../../sim/index.ts';
import {
  add,
  angleOf,
  clamp,
  crossing,
  degrees,
  distance,
  nearAngle,
  polar,
  touchPoint,
} from '../geometry.ts';
import { mirrored, type Path, trace } from '../path.ts';

/** The web's outline follows from table, web depth, toe and anchor. */
export interface WebShape {
  readonly outer: number;
  readonly inner: number;
  /** Ends of the table, toe first, rad. */
  readonly from: number;
  readonly to: number;
  readonly toe: Point;
  /** Half the height of the face that the piston pushes on. */
  readonly toeHalf: number;
  readonly heel: Point;
  readonly heelRadius: number;
}

/** Share of the bore that the toe's face is high: it stands in the fork of the piston. */
const TOE_SHARE = 0.577;

/** Radius of the web's outer edge, under the table. */
export const webRadius = ({ lining, steel }: Shoe): number =>
  lining.groundRadius - lining.thicknessNew - steel.tableThickness;

export const heelRadius = (brake: Brake, shoe: Shoe): number =>
  shoe.anchor.kind === 'pin' ? brake.look.eyeRadius : shoe.anchor.heelRadius;

/** Sizes of a web as of a shoe on the left; a rear shoe is seen in the mirror. */
export function webShape(brake: Brake, shoe: Shoe): WebShape {
  const outer = webRadius(shoe);
  const rear = shoe.side === 'rear';
  const flip = ([x, y]: Point): Point => (rear ? [-x, y] : [x, y]);
  const [a, b] = shoe.steel.tableArc;
  return {
    outer,
    inner: outer - shoe.steel.webDepth,
    from: nearAngle(rear ? Math.PI - b : a, Math.PI),
    to: nearAngle(rear ? Math.PI - a : b, Math.PI),
    toe: flip(shoe.toe),
    toeHalf: (TOE_SHARE * brake.cylinder.bore) / 2,
    heel: flip(shoe.anchor.at),
    heelRadius: heelRadius(brake, shoe),
  };
}

/** How far before the anchor the inner edge leaves its arc for the heel. */
const HEEL_RUN = degrees(39.4);

/** Outline of a web on the left, counter-clockwise from the table's toe end. */
export function webOutline(w: WebShape): Path {
  const start = polar(w.outer, w.from);
  const t = trace().move(start).arc([0, 0], w.outer, w.from, w.to);

  // down to the heel's round, on a tangent of both, and around it
  const end = polar(w.outer, w.to);
  const outerCorner = add(end, [-Math.sin(w.to), Math.cos(w.to)], 0.3 * distance(end, w.heel));
  const below = touchPoint(outerCorner, w.heel, w.heelRadius, 1);
  const leave = clamp(nearAngle(angleOf(w.heel), w.to) - HEEL_RUN, Math.PI, w.to);
  const inside = polar(w.inner, leave);
  const innerCorner = add(
    inside,
    [-Math.sin(leave), Math.cos(leave)],
    0.485 * distance(inside, w.heel),
  );
  const above = touchPoint(innerCorner, w.heel, w.heelRadius, -1);
  const around = angleOf(below, w.heel);
  t.bend(outerCorner, below);
  t.arc(w.heel, w.heelRadius, around, nearAngle(angleOf(above, w.heel), around + Math.PI));
  t.bend(innerCorner, inside);

  // back along the inner edge to the toe
  const u = w.toeHalf / 5.5;
  const under: Point = [w.toe[0] - 3.5 * u, w.toe[1] - w.toeHalf - 1.5 * u];
  const reach = Math.hypot(...under);
  const open = reach > w.inner ? 0.87 * Math.acos(w.inner / reach) : degrees(15);
  const turn = Math.min(angleOf(under) + open, leave);
  const last = polar(w.inner, turn);
  t.arc([0, 0], w.inner, leave, turn);
  t.bend(add(last, [Math.sin(turn), -Math.cos(turn)], 0.6 * distance(last, under)), under);

  // the face for the piston, and over the toe to the table
  const over: Point = [w.toe[0] - 1.5 * u, w.toe[1] + w.toeHalf + 1.1 * u];
  t.line([w.toe[0], w.toe[1] - w.toeHalf], [w.toe[0], w.toe[1] + w.toeHalf], over);
  const corner = crossing(start, [Math.sin(w.from), -Math.cos(w.from)], over, [-1, 0.1]);
  if (corner && corner[0] > start[0] && corner[0] < over[0]) t.bend(corner, start);
  return t.close().path;
}

/** Web of a shoe in reference coordinates. */
export function webPath(brake: Brake, shoe: Shoe): Path {
  const path = webOutline(webShape(brake, shoe));
  return shoe.side === 'rear' ? mirrored(path) : path;
}
