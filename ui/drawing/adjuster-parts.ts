import { type Instant, placePoint, type Rig } from '../../sim/index.ts';
import { NARROW, Pen } from './pen.ts';
import {
  arcPoints,
  curve,
  line,
  polar,
  polygon,
  type Shape,
  slotPoints,
  turned,
  type XY,
} from './shapes.ts';

/** Strut, toothed lever, parking lever and cable. */

const DEG = 180 / Math.PI;

/** Where a point of the parking lever (reference coordinates) stands: turned about its pivot, moved with the rear shoe. */
export function leverPoint(rig: Rig, i: Instant, p: XY): XY {
  const { pivot } = rig.brake.parkingLever;
  const onShoe = turned(p, rig.leverSense * i.leverAngle, pivot);
  return placePoint(rig.brake.shoes.rear, i.shoes.rear.pose, onShoe);
}

/** The strut rides on the lever's notch: shift of the whole strut from its reference place. */
export function strutShift(rig: Rig, i: Instant): XY {
  const seat = rig.brake.shoes.rear.strutSeat;
  const now = leverPoint(rig, i, seat);
  return [now[0] - seat[0], now[1] - seat[1]];
}

/** Turn and lift of the toothed lever, from the tooth and what is climbed of the next. */
export function leverPhase(rig: Rig, i: Instant): { angle: number; lift: number } | null {
  const { lever } = rig.brake.adjuster;
  if (!lever) return null;
  return {
    angle: lever.firstTooth + (i.tooth + i.climb) * lever.toothAngle,
    lift: Math.min(1, i.climb) * lever.toothHeight,
  };
}

/** Tooth tips of the lever's sector in its own frame (pin at 0, arm along +x): a saw, steep flank down. */
export function leverTeeth(r: number, h: number, toothAngle: number): XY[] {
  const out: XY[] = [];
  for (let k = -3; k < 3; k++) {
    out.push(polar(r, k * toothAngle * DEG), polar(r - h, (k + 1) * toothAngle * DEG));
  }
  return out;
}

/** Teeth of the strut's block about the lever pin, from top to bottom: steep flank up. */
export function strutTeeth(
  pin: XY,
  r: number,
  h: number,
  first: number,
  toothAngle: number,
  teeth: number,
): XY[] {
  const out: XY[] = [];
  for (let k = teeth + 4; k > -4; k--) {
    const a = (first + k * toothAngle) * DEG;
    out.push(polar(r - h, a, pin), polar(r, a - toothAngle * DEG + 0.02, pin));
  }
  return out;
}

export interface AdjusterDrawing {
  readonly shapes: Shape[];
  readonly pin: XY;
}

/** Toothed lever and strut with the block that its teeth mesh with. */
export function toothedStrut(rig: Rig, i: Instant): AdjusterDrawing | null {
  const { adjuster, shoes, springs } = rig.brake;
  const { lever } = adjuster;
  const phase = leverPhase(rig, i);
  if (!lever || !phase) return null;
  const shift = strutShift(rig, i);
  const on = (p: XY): XY => [p[0] + shift[0], p[1] + shift[1]];
  const P0 = lever.pin;
  const P = on(P0);
  const [sx, sy] = shoes.rear.strutSeat;
  const r = lever.toothRadius;
  const h = lever.toothHeight;
  const first = lever.firstTooth * DEG;
  const lv = (p: XY): XY => {
    const q = turned([p[0] - phase.lift, p[1]], phase.angle);
    return [P[0] + q[0], P[1] + q[1]];
  };
  const pen = new Pen();
  // Plate behind, that carries the pin.
  pen.body(
    [
      ...arcPoints(5.6, 110, 262, P0, 10),
      polar(r + 2, first - 4, P0),
      polar(r + 2, first + 32, P0),
      [P0[0] + 8.1, sy - 5.8],
    ].map((p) => on(p as XY)),
    'strutPlate',
    1.1,
  );
  const nose = polar(lever.noseRadius, 90);
  const half = lever.window.x / 2;
  // The finger's left side stands on the seat when the strut is clamped.
  const tip: XY = [nose[0], nose[1]];
  const seatX = shoes.front.strutSeat[0];
  const noseAtZero = P0[0] + lever.noseRadius * Math.cos(lever.startAngle);
  const inset = noseAtZero - half - seatX;
  const outline: XY[] = [
    polar(r - h, -3 * lever.toothAngle * DEG),
    ...leverTeeth(r, h, lever.toothAngle),
    polar(r - h, 3 * lever.toothAngle * DEG),
    ...curve(polar(r * 0.833, 9.5), [r * 0.48, 2.6], [r * 0.207, 4.6], 8),
    ...curve([4.2, 5.8], [2.8, 7.5], [half - inset * 0.94, tip[1] - 1.8], 5),
    ...arcPoints(half, 0, 180, [tip[0] - inset * 0.94, tip[1] - inset * 0.34], 10),
    ...curve([-half - inset * 0.94, tip[1] - 2], [-2.9 - inset * 0.6, 6.4], polar(5.2, 150), 8),
    ...arcPoints(5.2, 154, 258, [0, 0], 6),
    ...arcPoints(2.5, 205, 355, polar(8.6, -62), 10),
    ...curve([6.8, -6], [r * 0.48, -3.2], polar(r * 0.833, -9.5), 8),
  ];
  pen.body(outline.map(lv), 'adjFill', 2, 'adj');
  pen.body(slotPoints([-0.4, 0], [2.4, 0], 1.75).map(lv), 'hole', NARROW).disc(P, 1.6, 'bolt');
  const top = sy + 3.8;
  const low = sy - 3.8;
  const tab: XY = [P0[0] + 29.5, P0[1] - 18.4];
  const block: XY[] = [
    [sx + 8.5, sy + 2],
    [sx, sy + 2],
    [sx, top],
    [P0[0] + 38, top],
    ...curve([P0[0] + 36, top + 0.2], [P0[0] + 30, top + 3.6], polar(r + 4.2, 37.8, P0), 5),
    ...strutTeeth(P0, r, h, lever.firstTooth, lever.toothAngle, adjuster.teeth),
    [tab[0] - 3.6, tab[1] + 0.8],
    ...arcPoints(2.6, 200, 340, tab, 14),
    [tab[0] + 3, tab[1] + 5.4],
    ...arcPoints(r + 6.5, -19, 4, P0, 4),
    [P0[0] + 35.5, low - 1.2],
    [P0[0] + 38, low],
    [sx, low],
    [sx, sy - 2],
    [sx + 8.5, sy - 2],
  ];
  pen.holed(
    [
      block.map(on),
      slotPoints([sx - 55, sy], [sx - 25, sy], 1.7).map(on),
      arcPoints(1.5, 0, 340, [sx - 7, sy], 20).map(on),
    ],
    'strut',
  );
  const ear = lv(polar(8.6, -62));
  pen.disc(ear, 1.25, 'hole', NARROW).disc(on(tab), 1.25, 'hole', NARROW);
  pen.spring(ear, on(tab), 0.26, 0.72, 9, 1.8, 0.75);
  // Spring that holds strut and rear web together: drawn, its small force is not in the model.
  if (springs.length > 0) {
    const web = placePoint(shoes.rear, i.shoes.rear.pose, [sx + 16, sy - 8]);
    const hole = on([sx - 31, sy - 2.1]);
    pen.disc(hole, 1.1, 'hole', NARROW).disc(web, 1.5, 'hole', NARROW);
    pen.spring(hole, web, 0.34, 0.72, 11, 2.3, 0.8);
  }
  return { shapes: pen.shapes, pin: P };
}

/** Pointer on the lever and numbers of the teeth, for the loupe: places in mm. */
export function toothMarks(
  rig: Rig,
  i: Instant,
): { numbers: { n: number; at: XY }[]; pointer: XY[] } {
  const { adjuster } = rig.brake;
  const { lever } = adjuster;
  const phase = leverPhase(rig, i);
  if (!lever || !phase) return { numbers: [], pointer: [] };
  const shift = strutShift(rig, i);
  const P: XY = [lever.pin[0] + shift[0], lever.pin[1] + shift[1]];
  const numbers: { n: number; at: XY }[] = [];
  for (let n = 0; n <= adjuster.teeth; n += 5) {
    numbers.push({
      n,
      at: polar(lever.toothRadius + 2.4, (lever.firstTooth + n * lever.toothAngle) * DEG, P),
    });
  }
  const r = lever.toothRadius;
  const pointer = [polar(r - 2.6, 0), polar(r - 6, 3), polar(r - 6, -3)].map((p): XY => {
    const q = turned([p[0] - phase.lift, p[1]], phase.angle);
    return [P[0] + q[0], P[1] + q[1]];
  });
  return { numbers, pointer };
}

/** A plain bar from seat to seat, for the kinds whose own parts are not drawn in the whole brake. */
export function plainStrut(rig: Rig, i: Instant): Shape[] {
  const rear = leverPoint(rig, i, rig.brake.shoes.rear.strutSeat);
  const left: XY = [rear[0] - i.strutLength, rear[1]];
  const pen = new Pen();
  return pen.body(
    [
      [left[0], left[1] - 3.8],
      [rear[0], rear[1] - 3.8],
      [rear[0], rear[1] + 3.8],
      [left[0], left[1] + 3.8],
    ],
    'strut',
  ).shapes;
}

/** Outline of the parking lever: a long sickle from the pivot past the notch to the hook. */
function leverOutline(rig: Rig): XY[] {
  const { pivot: Q, hook: H } = rig.brake.parkingLever;
  const [nx, ny] = rig.brake.shoes.rear.strutSeat;
  const bulge = Math.max(Q[0], H[0]) + (Q[1] - H[1]) * 0.165;
  const mid = (Q[1] + H[1]) / 2;
  return [
    ...arcPoints(7, 200, 20, Q, 10),
    [Q[0] + 10.5, ny + 8],
    [Q[0] + 12.5, ny],
    ...curve([Q[0] + 15, ny - 8], [bulge + 6, mid + 9], [bulge + 4.5, mid - 11.5], 8),
    ...curve([bulge + 4.5, mid - 11.5], [bulge + 3, mid - 35], [H[0] + 6, H[1] + 2], 8),
    ...curve([H[0] + 5, H[1] - 2], [H[0] + 1, H[1] - 5.5], [H[0] - 3.5, H[1] - 3.5], 5),
    [H[0] - 4.5, H[1] - 0.5],
    [H[0] - 1.5, H[1] + 1],
    [H[0] + 0.5, H[1] + 4],
    ...curve([H[0] + 1, H[1] + 6], [bulge - 5, mid - 33], [bulge - 4, mid - 13.5], 8),
    ...curve([bulge - 4, mid - 13.5], [bulge - 3.5, mid + 6.5], [Q[0] + 5.5, ny - 10], 8),
    [nx + 3.6, ny - 4.8],
    [nx, ny - 4],
    [nx, ny + 4],
    [nx - 3, ny + 5.5],
    [Q[0] - 6.4, Q[1] - 5],
  ];
}

/** Stop tab on the lever, that rests on the inner edge of the web. */
const stopTab = (rig: Rig): XY[] => {
  const ri =
    rig.brake.drum.radiusNew -
    rig.brake.shoes.rear.lining.thicknessNew -
    rig.brake.shoes.rear.steel.tableThickness -
    rig.brake.shoes.rear.steel.webDepth;
  return [
    [ri - 3.1, -1.4],
    [ri - 0.3, -2.8],
    [ri - 0.5, -7.2],
    [ri - 3.8, -8.8],
  ];
};

/** Lever and cable, drawn under the shoes. */
export function parkingLever(rig: Rig, i: Instant): Shape[] {
  const { hook, cableGuide: g } = rig.brake.parkingLever;
  const at = (p: XY): XY => leverPoint(rig, i, p);
  const pen = new Pen();
  const h = at(hook);
  const cable = line([h[0] - 1, h[1] - 1.2], [g[0] - 8.4, g[1] - 0.2]);
  pen
    .add({ path: cable, stroke: 'ink', width: 4 })
    .add({ path: cable, stroke: 'wire', width: 2, dash: [3, 1.4] });
  pen.spring([h[0] - 5, h[1] - 1.6], [g[0] + 0.6, g[1] - 0.1], 0.06, 0.94, 17, 2.7, 0.85);
  pen.body(
    [
      [g[0] - 8.4, g[1] - 3.6],
      [g[0], g[1] - 3.6],
      [g[0], g[1] + 3.2],
      [g[0] - 8.4, g[1] + 3.2],
    ],
    'bolt',
    NARROW,
  );
  pen.body(
    [
      [g[0] - 12.4, g[1] - 2.4],
      [g[0] - 8.4, g[1] - 2.4],
      [g[0] - 8.4, g[1] + 2],
      [g[0] - 12.4, g[1] + 2],
    ],
    'bolt',
    NARROW,
  );
  pen.path(
    line([g[0] - 12.4, g[1] - 0.2], [g[0] - 21.4, g[1] - 1], [g[0] - 31.4, g[1] - 5]),
    'ink',
    NARROW,
    [5, 3],
  );
  pen.body(leverOutline(rig).map(at), 'parkLever');
  return pen.disc(h, 2.1, 'hole', NARROW).shapes;
}

/** What of the lever shows over the shoe: hidden outline dashed, stop tab, pivot. */
export function parkingLeverOver(rig: Rig, i: Instant): Shape[] {
  const at = (p: XY): XY => leverPoint(rig, i, p);
  const pen = new Pen();
  pen.add({
    path: polygon(leverOutline(rig).map(at)),
    stroke: 'ink',
    width: NARROW,
    dash: [5, 3],
    opacity: 0.8,
  });
  pen.body(stopTab(rig).map(at), 'parkLever');
  const q = at(rig.brake.parkingLever.pivot);
  return pen.disc(q, 4.4, 'bolt').disc(q, 1.7, null, 0.9).shapes;
}

/** Return springs, each between its two moved ends. The upper lies over the strut. */
export function returnSprings(i: Instant, which: (y: number) => boolean): Shape[] {
  const pen = new Pen();
  for (const s of i.springs) {
    const upper = s.from[1] > 0;
    if (!which(s.from[1])) continue;
    if (upper) pen.spring(s.from, s.to, 0.46, 0.74, 16, 2.3, 1.1);
    else pen.spring(s.from, s.to, 0.36, 0.64, 13, 2.9, 1.1);
    pen.disc(s.from, 0.8, 'ink', 0.5).disc(s.to, 0.8, 'ink', 0.5);
  }
  return pen.shapes;
}
