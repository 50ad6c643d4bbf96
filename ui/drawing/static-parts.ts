import type { Brake } from '../../sim/index.ts';
import { EDGE, NARROW, Pen, WIDE } from './pen.ts';
import { arcPoints, circle, polar, polygon, type Shape, slotPoints, type XY } from './shapes.ts';

/** Parts that stand still: they change with the brake, the wear of the drum, and the zoom alone. */

const DEG = 180 / Math.PI;
const ring = (r: number, c: XY = [0, 0], step = 2): XY[] => arcPoints(r, 0, 360 - step, c, step);

export function backingPlate(brake: Brake): Shape[] {
  const { look } = brake;
  const r = look.plateRadius;
  const pen = new Pen();
  pen.disc([0, 0], r, 'plate', 0, null);
  pen.disc([0, 0], r * 0.594, null, 2.2, 'emboss').disc([0, 0], r * 0.443, null, 2.2, 'emboss');
  const bolt = r * 0.368;
  for (const a of [20, 160, 205, 335]) {
    pen.body(
      Array.from({ length: 6 }, (_, j) => polar(r * 0.0377, j * 60 + 30, polar(bolt, a))),
      'bolt',
      NARROW,
    );
    pen.disc(polar(bolt, a), r * 0.018, null, 0.9);
  }
  const h = look.accessHole;
  const half = h.length / 2;
  const a: XY = [h.at[0] - half * Math.cos(h.along), h.at[1] - half * Math.sin(h.along)];
  const b: XY = [h.at[0] + half * Math.cos(h.along), h.at[1] + half * Math.sin(h.along)];
  const outline = slotPoints(a, b, h.radius);
  pen.body(outline, 'rubberPale', 0.9);
  pen.hatch([outline], 45, 1.5, 'hatch', 0.9).hatch([outline], -45, 1.5, 'hatch', 0.9);
  pen.add({ path: polygon(slotPoints(a, b, h.radius * 0.6)), stroke: 'ink', width: 0.9 });
  return pen.shapes;
}

/** Hub with studs and nut; they turn with the drum, the axes stay. */
export function hub(brake: Brake, angle: number): Shape[] {
  const { look } = brake;
  const r = look.hubRadius;
  const pen = new Pen();
  pen.disc([0, 0], r, 'hub').disc([0, 0], r * 0.883, null, 0.9);
  for (let j = 0; j < look.studs; j++) {
    const c = polar(look.studCircle, 45 + (j * 360) / look.studs + angle * DEG);
    pen.disc(c, look.studRadius, 'bolt', NARROW).disc(c, look.studRadius * 0.61, null, 0.9);
  }
  pen.disc([0, 0], r * 0.483, 'plate', NARROW);
  pen.body(
    Array.from({ length: 6 }, (_, j) => polar(r * 0.287, j * 60 + angle * DEG)),
    'bolt',
    NARROW,
  );
  pen.disc([0, 0], r * 0.147, null, 0.9);
  return pen.axis([-r * 1.2, 0], [r * 1.2, 0]).axis([0, -r * 1.2], [0, r * 1.2]).shapes;
}

/** Drum in section: thickest outline, hatch that never turns, the unworn lip dashed once it stands. */
export function drumSection(brake: Brake, radius: number): Shape[] {
  const outer = brake.drum.radiusNew + brake.drum.rim;
  const pen = new Pen();
  pen.add({
    path: [...circle([0, 0], outer), ...circle([0, 0], radius)],
    fill: 'drum',
    stroke: 'ink',
    width: WIDE,
  });
  pen.hatch([ring(outer), ring(radius)], 45, 2.1, 'hatch', 1.15);
  if (radius > brake.drum.lipRadius + 0.005) {
    pen.add({
      path: circle([0, 0], brake.drum.lipRadius),
      stroke: 'ink',
      width: 1.2,
      dash: [6, 3],
    });
  }
  return pen.shapes;
}

/** One paint stroke on the rim's outer edge, to see it turn. */
export function paintStroke(brake: Brake, angle: number): Shape[] {
  const outer = brake.drum.radiusNew + brake.drum.rim;
  const pen = new Pen();
  const a = angle * DEG + 90;
  return pen.body(
    [...arcPoints(outer, a - 3, a + 3), ...arcPoints(outer - 2.2, a + 3, a - 3)],
    'ink',
    0.5,
  ).shapes;
}

/** Wheel cylinder in section with bore, bleed boss and port. */
export function cylinderHousing(brake: Brake): Shape[] {
  const c = brake.cylinder;
  const [x0, y] = c.at;
  const R = c.bore / 2;
  const O = c.outerRadius;
  const L = c.halfLength;
  const p = (x: number, dy: number): XY => [x0 + x, y + dy];
  const pen = new Pen();
  const boss = O + 3.9;
  const outline: XY[] = [
    p(-L, -O),
    p(-L, O - 1),
    p(-L + 1, O),
    p(-L / 3, O),
    p(-4.4, boss),
    p(4.4, boss),
    p(L / 3, O),
    p(L - 1, O),
    p(L, O - 1),
    p(L, -O + 1),
    p(L - 1, -O),
    p(-L + 1, -O),
  ];
  const bore: XY[] = [p(-L, -R), p(L, -R), p(L, R), p(-L, R)];
  pen.holed([outline, bore], 'cylinder', 1.7);
  pen.hatch([outline, bore], -45, 1.35, 'hatch', 1.1);
  pen.add({ path: polygon(bore), fill: 'hole' });
  pen.body(
    [p(-1.1, R - 0.2), p(1.1, R - 0.2), p(1.1, boss - 3.5), p(-1.1, boss - 3.5)],
    'fluidFill',
    0.9,
  );
  pen.disc(p(0, boss - 2.4), 2.1, 'hole', NARROW);
  return pen.shapes;
}

/** Anchor pins under their keeper, or the abutment block of sliding heels. */
export function anchors(brake: Brake): Shape[] {
  const pen = new Pen();
  const { front, rear } = brake.shoes;
  const [f, r] = [front.anchor.at, rear.anchor.at];
  if (front.anchor.kind === 'pin' && rear.anchor.kind === 'pin') {
    const w = brake.look.pinRadius * 1.43;
    const bar = w * 0.82;
    pen.body(
      [
        ...arcPoints(w, 90, 270, f, 12),
        [f[0] / 2, f[1] - bar],
        [r[0] / 2, r[1] - bar],
        ...arcPoints(w, -90, 90, r, 12),
        [r[0] / 2, r[1] + bar],
        [f[0] / 2, f[1] + bar],
      ],
      'keeper',
      EDGE,
    );
  } else {
    const inner = Math.max(6, Math.abs(r[0]) - 9);
    const top = Math.max(f[1], r[1]) + 9;
    pen.body(
      [
        [-inner, top],
        [inner, top],
        [inner, top - 20],
        [-inner, top - 20],
      ],
      'keeper',
      EDGE,
    );
  }
  for (const shoe of [front, rear]) {
    if (shoe.anchor.kind !== 'pin') continue;
    const q = shoe.anchor.at;
    const a = brake.look.pinRadius;
    pen.disc(q, a, 'bolt').disc(q, a * 0.57, null, 0.9);
    pen
      .axis([q[0] - a * 1.65, q[1]], [q[0] + a * 1.65, q[1]])
      .axis([q[0], q[1] - a * 1.65], [q[0], q[1] + a * 1.65]);
  }
  pen.disc([(f[0] + r[0]) / 2, (f[1] + r[1]) / 2], 2.2, 'bolt', NARROW);
  return pen.shapes;
}

/** Heavy arc arrow outside the rim. */
export function turnArrow(brake: Brake, turning: -1 | 0 | 1): Shape[] {
  if (turning === 0) return [];
  const r = brake.drum.radiusNew + brake.drum.rim + 7;
  const w = 3.1;
  const from = 90 - 17 * turning;
  const to = 90 + 17 * turning;
  const head = (w * 1.9 * DEG) / r;
  const neck = to - turning * head;
  return new Pen().add({
    path: polygon([
      ...arcPoints(r + w / 2, from, neck),
      polar(r + w * 1.2, neck),
      polar(r, to),
      polar(r - w * 1.2, neck),
      ...arcPoints(r - w / 2, neck, from),
    ]),
    fill: 'ink',
  }).shapes;
}
