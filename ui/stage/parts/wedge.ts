import { type Brake, type Instant, type Point, WEDGE_SLOPE } from '../../../sim/index.ts';
import { after, apply, type Frame, mix, polar } from '../geometry.ts';
import type { PartId } from '../part-names.ts';
import { circlePath, type Path, polygon, polyline } from '../path.ts';
import type { Places } from '../place.ts';
import { outlined, type Shape, stroked, WEIGHT } from '../shapes.ts';
import { coil } from './coil.ts';
import { hasHotLock, hotStrip, reachAt, STRIP_LENGTH } from './hot-lock.ts';
import { maker, perBrake } from './make.ts';
import { leverEdge } from './parking.ts';
import type { StepMarks } from './step-marks.ts';
import { webRadius } from './web.ts';

/**
 * Wedge between the strut and a seat on the front web: thicker end up, pulled down by its spring,
 * serrated so that it holds what it has taken up. A spring keeps strut, wedge and web together; a
 * hook behind the parking lever takes the strut along once the play, the lost motion, is used, and
 * the wedge drops into the room that opens. Drawn in a frame whose 0 is the front seat, y up.
 */

/** The seat's upright face stands this far in from the strut's seat; half the strut's height. */
const FACE = 18;
const BAR = 3.8;
/** Wedge: thickness between the strut's lower corner and the face at tooth 0; ends beyond the strut. */
const THIN = 2.4;
const END = 1.6;
/** Kept free between the wedge's top and the table of the shoe. */
const FREE = 2;
/** Distance of the serrations along the wedge, mm. */
const SERRATION = 1.2;
/** Strut spring: its hole in the seat, and its tab under the strut, from the seat's face. */
const STRUT_SPRING = { seat: [-3.5, -15.6], tab: [33, -7.2] } as const;
/** Hook over the parking lever: from 7.2 to 10.5 above the axis, its tine 4 wide. */
const HOOK = { low: 7.2, high: 10.5, foot: -3.5, wide: 4 };

interface Form {
  /** Rise of the flank a mm of height. */
  readonly flank: number;
  /** Whole way down of the wedge, mm. */
  readonly way: number;
  readonly seat: Path;
  readonly wedge: Path;
  readonly serrations: Path;
  readonly marks: Path;
  /** Hole of the wedge's spring in the wedge and in the web. */
  readonly eye: Point;
  readonly hole: Point;
}

/** Thickness of the wedge at a height over the strut's axis after it has dropped by so much. */
const thickness = (flank: number, y: number): number => THIN + flank * (y + BAR);

/**
 * A wedge of 1 in 8 needs 8 mm of way for each mm. Its thick end must stand under the shoe's table
 * when the linings are new; where that leaves less room, the flank is as much steeper.
 */
export function wedgeFlank(brake: Brake): { flank: number; way: number } {
  const { front } = brake.shoes;
  const [sx, sy] = front.strutSeat;
  const most = brake.adjuster.growth.at(-1) ?? 0;
  const inside = webRadius(front) - FREE;
  const x = sx + FACE;
  const room = Math.sqrt(Math.max(0, inside * inside - x * x)) - sy - BAR - END;
  const flank = Math.max(WEDGE_SLOPE, most / Math.max(8, room));
  return { flank, way: most / flank };
}

const formOf = perBrake((brake: Brake): Form => {
  const { flank, way } = wedgeFlank(brake);
  const { front } = brake.shoes;
  const [sx, sy] = front.strutSeat;
  const top = BAR + END + way;
  const foot = -BAR - END;
  const at = (y: number): Point => [FACE + thickness(flank, y), y];
  const lines: Path[] = [];
  for (let y = foot + SERRATION; y < top; y += SERRATION) {
    const [x] = at(y);
    lines.push(polyline([x, y], [x - 1.1, y]));
  }
  const marks: Path[] = [];
  for (let mm = 0; mm <= flank * way + 1e-9; mm++) {
    const [x, y] = at(mm / flank);
    marks.push(polyline([x, y], [x - (mm % 2 === 0 ? 3 : 2.1), y]));
  }
  const inner = webRadius(front) - front.steel.webDepth;
  const [hx, hy] = polar(inner + 4, Math.PI + 0.78);
  return {
    flank,
    way,
    // A bracket on the web: its foot riveted on, its face upright.
    seat: polygon([
      [-4, -8],
      [FACE - 7, -18.5],
      [FACE, -18.5],
      [FACE, 8.5],
      [FACE - 3.5, 8.5],
      [-4, 6],
    ]),
    wedge: polygon([[FACE, foot - 4], [FACE + 2, foot - 4], at(foot), at(top), [FACE, top]]),
    serrations: lines.flat(),
    marks: marks.flat(),
    eye: [FACE + 1, foot - 2.6],
    hole: [hx - sx, hy - sy],
  };
});

interface Frames {
  readonly web: Frame;
  readonly wedge: Frame;
  /** 0 at the strut's rear end. */
  readonly strut: Frame;
  /** Room that has opened between strut and wedge, mm. */
  readonly open: number;
}

/** While the play lasts the strut goes out with the front web; then the hook holds it. */
function framesOf(brake: Brake, instant: Instant, places: Places): Frames {
  const { growth, lostMotion, lengthAtZero } = brake.adjuster;
  const [sx, sy] = brake.shoes.front.strutSeat;
  const step = (growth[instant.tooth + 1] ?? Number.NaN) - (growth[instant.tooth] ?? 0);
  const grown = instant.strutLength - lengthAtZero + (step > 0 ? step * instant.climb : 0);
  const { flank } = formOf(brake);
  const web = after(places.shoes.front, { angle: 0, x: sx, y: sy });
  const apart = Math.max(0, instant.separation - instant.strutLength);
  // Its spring takes the strut along; without it the strut stays behind.
  const along = instant.strutOff === undefined ? Math.min(apart, lostMotion) : 0;
  const [x, y] = apply(places.strut, brake.shoes.rear.strutSeat);
  return {
    web,
    wedge: after(web, { angle: 0, x: 0, y: -grown / flank }),
    strut: { angle: places.strut.angle, x: x - along, y },
    open: apart - along,
  };
}

/**
 * The strut from its sloped end to the hook behind the parking lever. The end lies along the wedge's
 * flank as it stands (the web tilts a little), off it by the room that has opened.
 */
function strutPath(brake: Brake, at: Frames, length: number): Path {
  const { flank } = formOf(brake);
  const on = (y: number): Point => {
    const [x, h] = apply(at.wedge, [FACE + thickness(flank, y), y]);
    return apply({ angle: -at.strut.angle, x: 0, y: 0 }, [x - at.strut.x, h - at.strut.y]);
  };
  const [low, high] = [on(0), on(20)];
  const end = (y: number): number =>
    low[0] + ((high[0] - low[0]) * (y - low[1])) / (high[1] - low[1]) + at.open;
  const [nx] = brake.shoes.rear.strutSeat;
  const tab = FACE - length + STRUT_SPRING.tab[0];
  const tabY = STRUT_SPRING.tab[1];
  const tine = leverEdge(brake, 1) - nx + brake.adjuster.lostMotion;
  return polygon([
    [tab + 4, -BAR],
    [tab + 2.4, tabY - 1.8],
    [tab - 2.4, tabY - 1.8],
    [tab - 4, -BAR],
    [end(-BAR), -BAR],
    [end(BAR), BAR],
    [-9, BAR],
    [-6, HOOK.high],
    [tine + HOOK.wide, HOOK.high],
    [tine + HOOK.wide, HOOK.foot],
    [tine, HOOK.foot],
    [tine, HOOK.low],
    [0, HOOK.low],
    [0, -BAR],
  ]);
}

/**
 * Seat, wedge, strut with its hook, and their springs.
 *
 * @param temperature °C, for the hot lock
 * @param flash strength of the click's flash, 0 to 1
 */
export function wedgeStrut(
  brake: Brake,
  instant: Instant,
  places: Places,
  temperature: number,
  flash: number,
): Shape[] {
  const form = formOf(brake);
  const at = framesOf(brake, instant, places);
  const seat = maker('strut', 'wedge seat');
  const wedge = maker('strut', 'wedge');
  const strut = maker('strut', 'strut');
  const hole = maker('strut', 'wedge spring');
  const bar = maker('strut', 'strut spring');
  const eye = apply(at.wedge, form.eye);
  const below = apply(at.web, form.hole);
  const onStrut = apply(at.strut, [
    FACE - instant.strutLength + STRUT_SPRING.tab[0],
    STRUT_SPRING.tab[1],
  ]);
  const onSeat = apply(at.web, [FACE + STRUT_SPRING.seat[0], STRUT_SPRING.seat[1]]);
  return [
    seat(form.seat, outlined('keeper', WEIGHT.medium), { place: at.web }),
    seat(circlePath([0.5, -1.5], 1.9), outlined('bolt', 1), { place: at.web }),
    strut(strutPath(brake, at, instant.strutLength), outlined('strut'), { place: at.strut }),
    ...(flash > 0
      ? [wedge(form.wedge, { stroke: 'adj', strokeAlpha: flash, width: 9 }, { place: at.wedge })]
      : []),
    wedge(form.wedge, outlined('adjFill', WEIGHT.adjuster, 'adj'), { place: at.wedge }),
    wedge(form.serrations, stroked('adj', 0.8), { place: at.wedge }),
    wedge(form.marks, stroked('adj', 1.6), { place: at.wedge }),
    ...lock(brake, temperature, at.web),
    hole(circlePath(form.eye, 0.8), outlined('hole', 1), { place: at.wedge }),
    hole(circlePath(form.hole, 1.3), outlined('hole', 1), { place: at.web }),
    ...coil('wedge', 'wedge spring', eye, below, {
      lead: [30, 9],
      turns: 24,
      radius: 2.1,
      wire: 0.66,
    }),
    bar(circlePath(onStrut, 1), outlined('hole', 1)),
    bar(circlePath(onSeat, 1.3), outlined('hole', 1)),
    ...coil('strut', 'strut spring', onStrut, onSeat, {
      lead: [4.5, 13],
      turns: 9,
      radius: 2,
      wire: 0.62,
    }),
  ];
}

/** The strip stands upright on the wedge's seat; its nib bites the wedge's back. */
function lock(brake: Brake, temperature: number, web: Frame): Shape[] {
  if (!hasHotLock(brake.adjuster)) return [];
  const reach = reachAt(brake.adjuster);
  const nib = 1.6;
  return hotStrip(temperature, {
    at: after(web, { angle: Math.PI / 2, x: FACE - nib - reach, y: 3.5 - STRIP_LENGTH }),
    nib,
    most: reach + 0.15,
  });
}

/** Points for the names layer. */
export function wedgeSpots(
  brake: Brake,
  instant: Instant,
  places: Places,
): { part: PartId; at: Point }[] {
  const form = formOf(brake);
  const at = framesOf(brake, instant, places);
  const spots: { part: PartId; at: Point }[] = [
    { part: 'strut', at: apply(at.strut, [-16, 0]) },
    { part: 'wedge', at: apply(at.wedge, [FACE + 1.6, BAR + form.way * 0.93]) },
    { part: 'wedge seat', at: apply(at.web, [4, 3]) },
    {
      part: 'wedge spring',
      at: mix(apply(at.wedge, form.eye), apply(at.web, form.hole), 0.7),
    },
    { part: 'strut spring', at: apply(at.web, [FACE + 20, -10.3]) },
  ];
  if (hasHotLock(brake.adjuster)) {
    spots.push({ part: 'hot lock', at: apply(at.web, [FACE - 1.6 - reachAt(brake.adjuster), -9]) });
  }
  return spots;
}

/** Marks of the wedge, mm made longer, where they stand now: read at the strut's axis. */
export function wedgeMarks(brake: Brake, instant: Instant, places: Places): StepMarks {
  const { flank } = formOf(brake);
  const at = framesOf(brake, instant, places);
  const most = brake.adjuster.growth.at(-1) ?? 0;
  const numbers: StepMarks['numbers'] = [];
  for (let mm = 0; mm <= most + 1e-9; mm += 2) {
    const y = mm / flank;
    numbers.push({
      key: `wedge ${mm}`,
      text: String(mm),
      at: apply(at.wedge, [FACE + thickness(flank, y) + 2.2, y]),
    });
  }
  return { shapes: [], numbers };
}

/** Where the loupe looks, in the world, and how much it sees, mm. */
export function wedgeSight(brake: Brake, instant: Instant, places: Places) {
  const at = framesOf(brake, instant, places);
  return { look: apply(at.web, [FACE + 4, 0]), radius: 27 };
}
