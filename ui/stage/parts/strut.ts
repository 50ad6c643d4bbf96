import {
  type Brake,
  type LeverForm,
  leverForm,
  leverOutline,
  type Point,
  rowAngle,
} from '../../../sim/index.ts';
import { add, apply, degrees, type Frame, mix, polar } from '../geometry.ts';
import { type Block, blockOf } from '../lever.ts';
import type { PartId } from '../part-names.ts';
import { circlePath, type Path, polygon, slotPath, trace } from '../path.ts';
import type { Places } from '../place.ts';
import { outlined, type Shape, WEIGHT } from '../shapes.ts';
import { coil } from './coil.ts';
import { hairpin } from './hairpin.ts';
import { hasHotLock, hotStrip, STRIP_LENGTH, tipTravel } from './hot-lock.ts';
import { maker, perBrake } from './make.ts';
import { windowBox } from './shoe.ts';
import type { StepMarks } from './step-marks.ts';

/** Half the height of the strut's bar, mm; its tongue reaches through the notch. Drawn only. */
const BAR = 3.8;
const TONGUE = { half: 2, length: 8.5 };

/** Sizes scale with the radius of the teeth: u = 1 at 27 mm. */
const unit = (lever: LeverForm): number => lever.toothRadius / 27;

/** The strut's own outlines, in the reference pose; the lever's in its own frame. */
export interface StrutPaths {
  /** Behind the lever: from the bar down to the block. */
  readonly plate: Path;
  readonly block: Path;
  /** Before the lever: the bar, and its cheek with the slot. */
  readonly bar: Path;
  readonly slot: Path;
  readonly pin: Path;
  readonly lever: Path;
  /** Along the steep face of the strut's tooth, on the strut's side of it: lit when the lever hits. */
  readonly edge: Path;
  readonly window: Path;
  /** Middle lines of the slot for the lever's pin, and of the long hole in the bar. */
  readonly ways: Readonly<Record<'pin' | 'bar', readonly [Point, Point]>>;
  /** Coil of the lever's spring, on the strut. */
  readonly stud: Point;
  /** Ends of the strut spring: on the strut, and on the rear web. */
  readonly spring: readonly [Point, Point];
}

/** Where the coil of the lever's spring sits, from the pin, where no scene tells it. */
const STUD: Point = [17.5, -1];

export const strutPaths = perBrake((brake: Brake): StrutPaths | null => {
  const lever = leverForm(brake);
  const block = blockOf(brake);
  if (!lever || !block) return null;
  const u = unit(lever);
  const { pin, toothHeight } = lever;
  const from = ([x, y]: Point): Point => [pin[0] + x * u, pin[1] + y * u];
  const at = ([x, y]: Point): Point => [pin[0] + x, pin[1] + y];
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const start = from([13, 0])[0];
  const { outer, hole } = leverOutline(lever);
  const ways = {
    pin: [at([0, -0.2]), at([0, toothHeight + 0.7])],
    bar: [mix([start, ny], [nx, ny], 0.2), mix([start, ny], [nx, ny], 0.63)],
  } as const;
  return {
    plate: polygon([
      [start, ny + BAR],
      [start, pin[1] + 4.4 * u],
      from([3, 3.2]),
      from([-3, 3.2]),
      at([-block.half, block.top]),
      at([block.half, block.top]),
      from([13, -17]),
      from([22, -7]),
      [from([24, 0])[0], ny + BAR],
    ]),
    block: [
      ...trace()
        .line(at([-block.half, block.top]), ...block.tooth.map(at))
        .line(at([block.half, block.top]), at([block.half, block.foot]))
        .line(at([-block.half, block.foot]))
        .close().path,
    ],
    bar: barPath(brake, lever, start, ways.bar),
    slot: slotPath(...ways.pin, 1.75 * u),
    pin: circlePath([0, 0], PIN * u),
    lever: [...polygon(outer), ...(hole.length ? polygon(hole) : [])],
    edge: polygon(edgeOf(block.tooth).map(at)),
    window: windowPath(brake),
    ways,
    stud: lever.spring.at ? at(lever.spring.at) : from(STUD),
    spring: [
      [mix([start, ny], [nx, ny], 0.537)[0], ny - 2.1],
      [nx + 16, ny - 8],
    ],
  };
});

/** How wide the lit edge is, as a share of the strut's tooth, and how far below its tip it begins. */
const EDGE = { wide: 0.34, below: 0.3 };

/** The lit edge of the strut's tooth: within it, clear of its tip. */
function edgeOf([foot, tip, face]: Block['tooth']): readonly Point[] {
  if (!foot || !tip || !face) return [];
  const upper = mix(tip, face, EDGE.below);
  const width = EDGE.wide * (tip[0] - foot[0]);
  const slope = (tip[1] - foot[1]) / (tip[0] - foot[0]);
  return [
    upper,
    face,
    [face[0] - width, face[1]],
    [upper[0] - width, Math.min(upper[1], tip[1] - width * slope)],
  ];
}

/** Bar to the rear seat, and below its front end the cheek over the lever, with the slot for its pin. */
function barPath(
  brake: Brake,
  lever: LeverForm,
  start: number,
  hole: StrutPaths['ways']['bar'],
): Path {
  const u = unit(lever);
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const [px, py] = lever.pin;
  const at = (x: number, y: number): Point => [px + x * u, py + y * u];
  const middle: Point = [px, py + lever.toothHeight / 2];
  const round = 4.3 * u;
  return [
    ...trace()
      .line([nx + TONGUE.length, ny + TONGUE.half], [nx, ny + TONGUE.half])
      .line([nx, ny + BAR], [start, ny + BAR])
      .line([start, middle[1] + round])
      .line([px, middle[1] + round])
      .arc(middle, round, degrees(90), degrees(270))
      .line(at(19, -4.6))
      .line([px + 24 * u, ny - BAR])
      .line([nx, ny - BAR])
      .line([nx, ny - TONGUE.half], [nx + TONGUE.length, ny - TONGUE.half])
      .close().path,
    ...slotPath(...hole, 1.7),
    ...circlePath(mix([start, ny], [nx, ny], 0.9), 1.5),
  ];
}

/**
 * The window about the web's seat, where its edges meet the finger: square to the strut, so that what is
 * drawn is what the law measures between the seats.
 */
function windowPath(brake: Brake): Path {
  const box = windowBox(brake);
  const lever = leverForm(brake);
  if (!box || !lever) return [];
  const half = lever.window.y / 2;
  return polygon([
    [box.left, box.y - half],
    [box.right, box.y - half],
    [box.right, box.y + half],
    [box.left, box.y + half],
  ]);
}

/** The pin's radius at u = 1; the nib's near face above the pin at rest, and its height. */
const PIN = 1.6;
const NIB_AT = 1.7;
const NIB = 1.15;

/** Length of the strip beside the slot: from below up to the nib. */
const stripLength = (lever: LeverForm): number =>
  Math.min(STRIP_LENGTH, lever.toothRadius - lever.toothHeight - NIB_AT - 2.4);

/** Distance of the nib's end from the slot's middle: at the lock's temperature a lift of one tooth just passes. */
function nibFrom(brake: Brake, lever: LeverForm, temperature: number): number {
  const length = stripLength(lever);
  const free = NIB_AT - Math.min(lever.toothHeight, NIB_AT);
  const passes = Math.sqrt(PIN * PIN - Math.min(free, PIN) ** 2);
  return passes + tipTravel(brake.adjuster.hotLock, length) - tipTravel(temperature, length);
}

/**
 * Share of a tooth that the lever can climb: the whole, but above the hot lock's temperature only
 * until the pin meets the nib.
 *
 * @param temperature °C
 */
export function liftLimit(brake: Brake, temperature: number): number {
  const lever = leverForm(brake);
  if (!lever || temperature <= brake.adjuster.hotLock) return 1;
  const from = Math.max(0, nibFrom(brake, lever, temperature));
  const reach = from < PIN ? Math.sqrt(PIN * PIN - from * from) : 0;
  return Math.max(0, Math.min(1, (NIB_AT - reach) / lever.toothHeight));
}

/** The strip stands on the strut beside the slot, and its nib bends over the pin. */
function lock(brake: Brake, lever: LeverForm, temperature: number, strut: Frame): Shape[] {
  if (!hasHotLock(brake.adjuster)) return [];
  const length = stripLength(lever);
  const cold = nibFrom(brake, lever, 20);
  const [x, y] = apply(strut, add(lever.pin, [cold + NIB, NIB_AT + 0.7 - length]));
  const at = { angle: Math.PI / 2 + strut.angle, x, y };
  return hotStrip(temperature, {
    at,
    nib: NIB,
    most: cold,
    length,
    towards: 1,
  });
}

/** The window's frame: it goes with the web's seat and stays square to the strut. */
export function windowFrame(brake: Brake, { shoes, strut }: Places): Frame {
  const seat = brake.shoes.front.strutSeat;
  const [x, y] = apply(shoes.front, seat);
  return { angle: strut.angle, x: x - seat[0], y: y - seat[1] };
}

/**
 * Strut, toothed lever in its slot, and the springs that hold them.
 *
 * @param temperature °C, for the hot lock
 * @param flash strength of the click's flash, 0 to 1
 */
export function toothedStrut(
  brake: Brake,
  places: Places,
  temperature: number,
  flash: number,
): Shape[] {
  const { shoes, strut, lever: leverAt } = places;
  const p = strutPaths(brake);
  const form = leverForm(brake);
  if (!p || !form || !leverAt) return [];
  const body = maker('strut', 'strut');
  const tooth = maker('strut', 'toothed lever');
  const pin = maker('strut', 'lever pin');
  const [onStrut, onWeb] = [apply(strut, p.spring[0]), apply(shoes.rear, p.spring[1])];
  const hole = maker('strut', 'strut spring');
  const window = maker('shoe', 'lever window');
  return [
    window(p.window, outlined('plate', 1.3), {
      place: windowFrame(brake, places),
    }),
    body(p.plate, outlined('strutPlate', 1.1), { place: strut }),
    body(p.block, outlined('strut'), { place: strut }),
    ...(flash > 0 ? [body(p.edge, { fill: 'adj', fillAlpha: flash }, { place: strut })] : []),
    tooth(p.lever, outlined('adjFill', WEIGHT.adjuster, 'adj'), {
      place: leverAt,
      evenOdd: true,
    }),
    body(p.bar, outlined('strut'), { place: strut, evenOdd: true }),
    pin(p.slot, outlined('hole', 1), { place: strut }),
    pin(p.pin, outlined('bolt', 1.3), { place: leverAt }),
    ...lock(brake, form, temperature, strut),
    ...hairpin(apply(strut, p.stud), [leverAt.x, leverAt.y], PIN * unit(form), unit(form)),
    hole(circlePath(onStrut, 1.1), outlined('hole', 1)),
    hole(circlePath(onWeb, 1.5), outlined('hole', 1)),
    ...coil('strut', 'strut spring', onStrut, onWeb, {
      lead: [16, 13.2],
      turns: 11,
      radius: 2.3,
      wire: 0.66,
    }),
  ];
}

/** Points for the names layer. */
export function strutSpots(brake: Brake, places: Places): { part: PartId; at: Point }[] {
  const { strut, shoes, lever } = places;
  const p = strutPaths(brake);
  const [nx, ny] = brake.shoes.rear.strutSeat;
  const box = windowBox(brake);
  const form = leverForm(brake);
  if (!p || !form || !box || !lever) return [];
  const middle = rowAngle(form, (form.angles.length - 1) / 2);
  const spots: { part: PartId; at: Point }[] = [
    { part: 'strut', at: apply(strut, [nx - 15, ny]) },
    {
      part: 'strut spring',
      at: mix(apply(strut, p.spring[0]), apply(shoes.rear, p.spring[1]), 0.62),
    },
    {
      part: 'lever window',
      at: apply(windowFrame(brake, places), [
        (box.left + box.right) / 2,
        box.y + form.window.y * 0.44,
      ]),
    },
    {
      part: 'toothed lever',
      at: apply(lever, polar(form.toothRadius * 0.76, middle)),
    },
    { part: 'lever pin', at: [lever.x, lever.y] },
    { part: 'lever spring', at: apply(strut, p.stud) },
  ];
  if (hasHotLock(brake.adjuster)) {
    const off = nibFrom(brake, form, 20) + NIB;
    const up = NIB_AT - stripLength(form) * 0.5;
    spots.push({
      part: 'hot lock',
      at: apply(strut, add(form.pin, [off, up])),
    });
  }
  return spots;
}

/** Radius of what the loupe sees, mm, on teeth of 27 mm radius: the row in the tooth's place, and the lever's pin. */
const SEEN = 21.2;

/** Where the loupe looks, in the world, and how much it sees, mm. */
/** What the loupe looks at: middle and radius, mm; and the tooth that counts, with its pitch, mm, where there is one. */
export interface Sight {
  readonly look: Point;
  readonly radius: number;
  readonly tooth?: { readonly at: Point; readonly pitch: number };
}

export function toothedSight(brake: Brake, places: Places): Sight {
  const lever = leverForm(brake);
  if (!lever) return { look: [0, 0], radius: SEEN };
  const u = unit(lever);
  return {
    look: apply(places.strut, add(lever.pin, [0, -11.8 * u])),
    radius: SEEN * u,
    tooth: {
      at: apply(places.strut, add(lever.pin, [0, -lever.toothRadius])),
      pitch: lever.toothRadius * lever.toothAngle,
    },
  };
}

/** Pointer on the block under its tooth, and the numbers of the teeth on the lever. */
export function toothedMarks(brake: Brake, places: Places): StepMarks {
  const lever = leverForm(brake);
  const block = blockOf(brake);
  const frame = places.lever;
  if (!lever || !block || !frame) return { shapes: [], numbers: [] };
  const u = unit(lever);
  const at = (x: number, y: number): Point => add(lever.pin, [x * u, block.top + y * u]);
  const pointer: Shape = {
    key: 'pointer',
    path: polygon([at(0, -0.7), at(-1.2, -3.7), at(1.2, -3.7)]),
    place: places.strut,
    style: { fill: 'adj' },
    group: 'teeth',
  };
  const numbers: StepMarks['numbers'] = [];
  for (let tooth = 0; tooth <= brake.adjuster.teeth; tooth += 5) {
    const place = polar(lever.toothRadius - 2.9 * u, rowAngle(lever, tooth));
    numbers.push({
      key: `tooth ${tooth}`,
      text: String(tooth),
      at: apply(frame, place),
    });
  }
  return { shapes: [pointer], numbers };
}
