import {
  type BrakeState,
  type Instant,
  placePoint,
  type Rig,
  type Shoe,
  type Side,
} from '../../sim/index.ts';
import { NARROW, Pen } from './pen.ts';
import {
  arcPoints,
  type Command,
  curve,
  line,
  type Move,
  mirrored,
  polar,
  type Shape,
  slotPoints,
  type XY,
} from './shapes.ts';

/** Shoes, linings and what sits on them, at their true places. */

const DEG = 180 / Math.PI;

/** Moves a point of a shoe from the reference pose to where it stands now. */
export const mover = (rig: Rig, side: Side, i: Instant): Move => {
  const shoe = rig[side].shoe;
  const { pose } = i.shoes[side];
  return (p) => placePoint(shoe, pose, p);
};

/** Web outline in the reference pose, from anchor, toe, web depth and table arc. */
function webOutline(shoe: Shoe, back: number, eye: number): XY[] {
  const flip = shoe.side === 'front';
  const right = (p: XY): XY => (flip ? mirrored(p) : p);
  const [px, py] = right(shoe.anchor.at);
  const [tx, ty] = right(shoe.toe);
  const rw = back - shoe.steel.tableThickness;
  const ri = rw - shoe.steel.webDepth;
  const [f, t] = shoe.steel.tableArc.map((a) => a * DEG) as [number, number];
  const [low, high] = flip ? [180 - t, 180 - f] : [f, t];
  const toeAngle = Math.atan2(ty, tx) * DEG;
  const pinAngle = Math.atan2(py, px) * DEG;
  const bottom: XY = [px + eye * 0.47, py - eye * 0.88];
  const lowPoint = polar(rw, low);
  const points: XY[] = [
    ...arcPoints(rw, high, low),
    ...curve(
      lowPoint,
      [(lowPoint[0] + bottom[0]) / 2 + 1.5, (lowPoint[1] + bottom[1]) / 2 - 2],
      bottom,
      6,
    ),
    ...arcPoints(eye, -62, -250, [px, py], 8),
    ...curve(polar(eye, 68, [px, py]), [px + 24, py + 13], polar(ri, pinAngle + 40), 10),
    ...arcPoints(ri, pinAngle + 41, toeAngle - 25),
    ...curve(polar(ri, toeAngle - 25), [tx + 10.1, ty - 15.6], [tx + 3.5, ty - 7], 10),
    [tx, ty - 5.5],
    [tx, ty + 5.5],
    ...curve([tx + 1.5, ty + 6.6], [tx + 10.5, ty + 7.5], polar(rw, high), 6),
  ];
  return points.map(right);
}

const circlePoints = (c: XY, r: number): XY[] => arcPoints(r, 0, 350, c, 10);

/** Window in the front web that takes the finger of a toothed lever: its width plus the slot play. */
export function leverWindow(rig: Rig): XY[] | null {
  const { adjuster, shoes } = rig.brake;
  if (!adjuster.lever) return null;
  const [x, y] = shoes.front.strutSeat;
  const right = x + adjuster.lever.window.x + adjuster.lostMotion;
  const half = adjuster.lever.window.y / 2;
  return [
    [x, y - half - 1],
    [right, y - half - 1],
    [right, y + half - 1],
    [x, y + half - 1],
  ];
}

/** Lining outline from its true profile: the face of every element as worn. */
export function liningOutline(rig: Rig, state: BrakeState, side: Side): XY[] {
  const { bed, shoe } = rig[side];
  const back = rig.brake.drum.radiusNew - shoe.lining.thicknessNew;
  const from = shoe.lining.from * DEG;
  const to = shoe.lining.to * DEG;
  const face = (i: number): number => (bed.face[i] as number) - (state.wear[side][i] as number);
  const n = bed.count;
  const points: XY[] = [polar(back, from)];
  points.push(polar(face(0) + (face(0) - face(1)) / 2, from));
  for (let i = 0; i < n; i++) points.push(polar(face(i), (bed.angle[i] as number) * DEG));
  points.push(polar(face(n - 1) + (face(n - 1) - face(n - 2)) / 2, to));
  return [...points, ...arcPoints(back, to, from)];
}

/** Random grains of a lining, the same in every picture (fixed seed), kept inside the worn face. */
function grains(rig: Rig, state: BrakeState, side: Side): { at: XY; r: number }[] {
  const { bed, shoe } = rig[side];
  const back = rig.brake.drum.radiusNew - shoe.lining.thicknessNew;
  let seed = 7;
  const random = (): number => {
    seed = (seed * 16807) % 2147483647;
    return seed / 2147483647;
  };
  const out: { at: XY; r: number }[] = [];
  for (let j = 0; j < 420; j++) {
    const u = random();
    const r = 0.13 + random() * 0.22;
    const depth = random() * shoe.lining.thicknessNew;
    const i = Math.min(bed.count - 1, Math.floor(u * bed.count));
    const left = (bed.face[i] as number) - (state.wear[side][i] as number) - back;
    if (depth > left - 0.45 || depth < 0.4) continue;
    out.push({
      at: polar(back + depth, (shoe.lining.from + u * (shoe.lining.to - shoe.lining.from)) * DEG),
      r,
    });
  }
  return out;
}

const cache = new WeakMap<Rig, Record<Side, { web: XY[]; table: XY[]; holes: XY[][] }>>();

function outlines(rig: Rig) {
  const kept = cache.get(rig);
  if (kept) return kept;
  const make = (side: Side) => {
    const { shoe } = rig[side];
    const back = rig.brake.drum.radiusNew - shoe.lining.thicknessNew;
    const eye = shoe.anchor.kind === 'pin' ? rig.brake.look.eyeRadius : shoe.anchor.heelRadius;
    const [f, t] = shoe.steel.tableArc.map((a) => a * DEG) as [number, number];
    const holes = shoe.webHoles.map((h) => circlePoints(h.at, h.radius));
    const window = side === 'front' ? leverWindow(rig) : null;
    if (window) holes.push(window);
    return {
      web: webOutline(shoe, back, eye),
      table: [...arcPoints(back, f, t), ...arcPoints(back - shoe.steel.tableThickness, t, f)],
      holes,
    };
  };
  const made = { front: make('front'), rear: make('rear') };
  cache.set(rig, made);
  return made;
}

const grainCache = new WeakMap<BrakeState, Record<Side, { at: XY; r: number }[]>>();

export function shoe(rig: Rig, state: BrakeState, i: Instant, side: Side): Shape[] {
  const move = mover(rig, side, i);
  const { web, table, holes } = outlines(rig)[side];
  const pen = new Pen();
  pen.holed([web.map(move), ...holes.map((h) => h.map(move))], 'web', 1.7);
  for (const s of rig.brake.springs) {
    for (const end of s.ends) if (end.on === side) pen.disc(move(end.at), 2, 'hole', NARROW);
  }
  pen.body(table.map(move), 'table', 1.1);
  pen.body(liningOutline(rig, state, side).map(move), 'lining');
  let kept = grainCache.get(state);
  if (!kept) {
    kept = { front: grains(rig, state, 'front'), rear: grains(rig, state, 'rear') };
    grainCache.set(state, kept);
  }
  const path: Command[] = kept[side].flatMap(({ at, r }) => {
    const [x, y] = move(at);
    return line([x - r * 0.3, y], [x + r * 0.3, y]);
  });
  return pen.add({ path, stroke: 'grain', width: 0.4, mm: true, round: true }).shapes;
}

/** Hold-downs: a cup with one black slot; they stay with the shoe. */
export function holdDown(rig: Rig, i: Instant, side: Side): Shape[] {
  const c = mover(rig, side, i)(rig[side].shoe.holdDown.at);
  const pen = new Pen();
  pen.disc(c, 5.8, 'bolt', 1.2).disc(c, 3.6, null, 0.9);
  return pen.body(slotPoints([c[0] - 2, c[1]], [c[0] + 2, c[1]], 0.85), 'ink', 0.5).shapes;
}

/** Pistons, cups, boots, fluid and the spring between the cups; they follow the toes. */
export function pistons(rig: Rig, i: Instant): Shape[] {
  const { cylinder, shoes } = rig.brake;
  const [x0, y] = cylinder.at;
  const R = cylinder.bore / 2;
  const L = cylinder.halfLength;
  const pen = new Pen();
  const toe = { front: i.shoes.front.toe[0] - x0, rear: i.shoes.rear.toe[0] - x0 };
  // Fork 3 deep takes the toe; piston 17.5 long; cup 5 behind it. Kept within the bore's length.
  const length = Math.min(17.5, Math.abs(shoes.rear.toe[0]) * 0.62);
  const inner = { front: toe.front - 3 + length, rear: toe.rear + 3 - length };
  const fluid: XY[] = [
    [x0 + inner.front, y - R],
    [x0 + inner.rear, y - R],
    [x0 + inner.rear, y + R],
    [x0 + inner.front, y + R],
  ];
  pen.add({ path: polygonOf(fluid), fill: 'fluidFill' });
  const share = Math.min(1, i.pressure / 8);
  if (share > 0)
    pen.add({ path: polygonOf(fluid), fill: 'fluidDeep', opacity: 0.25 + 0.75 * share });
  // Rows of short dashes: fluid without colour.
  const rows: Command[] = [];
  for (let row = 0; row * 2 - R + 1.4 < R; row++) {
    const yy = y - R + 1.4 + row * 2;
    for (let x = inner.front + 3 + (row % 2) * 1.6; x + 1.7 < inner.rear - 2.4; x += 3.2) {
      rows.push(...line([x0 + x, yy], [x0 + x + 1.7, yy]));
    }
  }
  pen.add({ path: rows, stroke: 'fluid', width: 0.36, mm: true });
  for (const side of ['front', 'rear'] as const) {
    const s = side === 'front' ? -1 : 1;
    const at = (x: number, dy: number): XY => [x0 + toe[side] + s * x, y + dy];
    const r = R - 0.6;
    const body: XY[] = [
      at(3 - length, -r),
      at(0.7, -r),
      at(3, -r + 0.3),
      at(3, -6),
      at(0, -6),
      at(0, 6),
      at(3, 6),
      at(3, r - 0.3),
      at(0.7, r),
      at(-0.9, r),
      at(-0.9, r - 1.5),
      at(-2.9, r - 1.5),
      at(-2.9, r),
      at(3 - length, r),
    ];
    pen.body(body, 'piston', 1.3).hatch([body], 45, 2.6, 'hatch', NARROW);
    const c = 3 - length;
    pen.body(
      [
        at(c, -R + 0.1),
        at(c - 4.4, -R),
        at(c - 5, -R + 1.2),
        at(c - 2.4, -R + 3),
        at(c - 2.4, R - 3),
        at(c - 5, R - 1.2),
        at(c - 4.4, R),
        at(c, R - 0.1),
      ],
      'rubber',
      NARROW,
    );
    for (const q of [1, -1]) {
      const end = toe[side] * s - 1.9;
      const folds: XY[] = [
        [x0 + s * (L - 0.6), y + q * (R + 2.1)],
        [x0 + s * (L + (end - L) * 0.2), y + q * (R + 3.1)],
        [x0 + s * (L + (end - L) * 0.42), y + q * (R + 0.9)],
        [x0 + s * (L + (end - L) * 0.62), y + q * (R + 2.9)],
        [x0 + s * (L + (end - L) * 0.84), y + q * (R + 0.7)],
        [x0 + s * end, y + q * (R - 1.3)],
      ];
      pen.add({ path: line(...folds), stroke: 'ink', width: 1.5, mm: true, round: true });
      pen.add({ path: line(...folds), stroke: 'rubberPale', width: 0.8, mm: true, round: true });
    }
  }
  pen.spring([x0 + inner.front + 2.8, y], [x0 + inner.rear - 2.8, y], 0.03, 0.97, 5, R * 0.52, 1);
  return pen.axis([x0 - L * 1.9, y], [x0 + L * 1.9, y]).shapes;
}

function polygonOf(points: readonly XY[]): Command[] {
  return [...line(...points), { c: 'Z' }];
}
