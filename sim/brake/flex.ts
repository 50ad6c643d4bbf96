import { atan2, cos, sin } from '../math/trig.ts';
import { type Section, sectionOf } from './section.ts';
import type { Point, Shoe } from './types.ts';

/**
 * A steel shoe that bends, as a curved beam condensed to a few modes.
 *
 * Free body: cut the shoe at angle phi. Seen from the anchor's angle outwards, the part beyond the cut
 * carries the loads f at X that reach past it, so (statically determinate) about the section's r_n
 *   M = (X − r_n e_r) × f,  N = f·e_t,  V = f·e_r.
 * Friction acts at the rubbing face, so its moment is in M. The turn of the whole shoe about its pin
 * is not part of this: it is the shoe's own freedom, and is exact. By Castigliano's theorem a unit
 * load a moves the place and direction of another, b, by
 *   C_ab = sum over segments of dphi (M_a M_b/(E J2) + N_a N_b/(E J0) + V_a V_b r_n/(G A_s)) = B_a·B_b,
 * each B a row of three entries a segment. Few load shapes are enough for what a brake does to a shoe:
 * the pushes at single points, and the lining's pressure and drag as smooth curves along the arc. Their
 * rows, made orthonormal (q_m), give modes G = B·q: displacement G z, and the work stored is z²/2, so
 * the modes' stiffness is the identity. A load f does G·f on z. (Reduction on load-dependent vectors,
 * after Ritz 1909.) One shape left out costs: without the fourth pressure curve a worn lining's
 * pressure is 12 to 23 % off.
 */
export interface BedModes {
  readonly count: number;
  /**
   * Displacement of each element's face by unit mode, mm/√(N·mm). A row of 2·MODE_PLACES an element: along its
   * radius by each mode, then along its tangent; 0 in places without a mode.
   */
  readonly face: Float64Array;
  /** Turn of the shoe's section behind each element by unit mode, rad/√(N·mm): a row of MODE_PLACES an element. */
  readonly turning: Float64Array;
}

/** Places for modes in a row: single forces (two), pressure curves (four) and a drag make seven at most. Eight load fast. */
export const MODE_PLACES = 8;

/** A single force: where it acts, which way (unit vector), and where the shoe takes it over. */
export interface Push {
  readonly at: Point;
  readonly along: Point;
}

export interface Flex {
  readonly bed: BedModes;
  /** Greatest displacement that a unit of each mode makes at lining or pushes, mm/√(N·mm). */
  readonly reach: Float64Array;
  /** Interleaved (x, y) displacement of a point by unit mode, reference axes. */
  move(point: Point): Float64Array;
  /** Turn of the section at a point by unit mode. */
  turn(point: Point): Float64Array;
}

/** Segments from one end of the beam to the other; 24 are within 0.1 % of the shoe factor. */
const SEGMENTS = 96;
/** Pressure curves along the lining: Legendre polynomials of degree 0 to 3. */
const PRESSURE_CURVES = 4;
/** A load shape is dropped when less than this share of it is new. */
const NOTHING_NEW = 1e-8;

const legendre = [
  () => 1,
  (s: number) => s,
  (s: number) => (3 * s * s - 1) / 2,
  (s: number) => (5 * s * s * s - 3 * s) / 2,
] as const;

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
};

const add = (to: Float64Array, from: Float64Array, factor: number): void => {
  for (let i = 0; i < to.length; i++) to[i] = (to[i] as number) + factor * (from[i] as number);
};

/** Angle of a point as seen from the drum axis, within half a turn of the middle of the lining. */
function angleNear(point: Point, middle: number): number {
  const a = atan2(point[1], point[0]);
  return a + 2 * Math.PI * Math.round((middle - a) / (2 * Math.PI));
}

/** The beam cut into segments; gives the row B of any load. */
class Beam {
  readonly #start: number;
  readonly #step: number;
  readonly #anchor: number;
  readonly #middle: number;
  readonly #cos = new Float64Array(SEGMENTS);
  readonly #sin = new Float64Array(SEGMENTS);
  readonly #section: readonly Section[];

  constructor(shoe: Shoe, outer: number, from: number, to: number, anchor: number, middle: number) {
    const { steel } = shoe;
    const whole = sectionOf(steel, outer, shoe.lining.width);
    const webOnly = sectionOf(steel, outer, 0);
    this.#start = from;
    this.#step = (to - from) / SEGMENTS;
    this.#anchor = anchor;
    this.#middle = middle;
    const half = middle - (steel.tableArc[0] + steel.tableArc[1]) / 2;
    const turns = 2 * Math.PI * Math.round(half / (2 * Math.PI));
    this.#section = Array.from({ length: SEGMENTS }, (_, i) => {
      const phi = this.#phi(i);
      this.#cos[i] = cos(phi);
      this.#sin[i] = sin(phi);
      const inTable = phi > steel.tableArc[0] + turns && phi < steel.tableArc[1] + turns;
      return inTable ? whole : webOnly;
    });
  }

  #phi(i: number): number {
    return this.#start + (i + 0.5) * this.#step;
  }

  /** Fills the segments between the anchor's angle and the load's. */
  #row(
    angle: number,
    forces: (s: Section, c: number, si: number) => readonly [m: number, n: number, v: number],
  ): Float64Array {
    const row = new Float64Array(3 * SEGMENTS);
    for (let i = 0; i < SEGMENTS; i++) {
      const phi = this.#phi(i);
      if ((phi - this.#anchor) * (phi - angle) >= 0) continue;
      const section = this.#section[i] as Section;
      const [m, n, v] = forces(section, this.#cos[i] as number, this.#sin[i] as number);
      row[3 * i] = m * Math.sqrt(this.#step * section.bending);
      row[3 * i + 1] = n * Math.sqrt(this.#step * section.stretching);
      row[3 * i + 2] = v * Math.sqrt(this.#step * section.shearing);
    }
    return row;
  }

  /** Force (fx, fy) at (x, y), taken over by the section at an angle. */
  force(angle: number, x: number, y: number, fx: number, fy: number): Float64Array {
    return this.#row(angle, (s, c, si) => [
      (x - s.neutral * c) * fy - (y - s.neutral * si) * fx,
      -fx * si + fy * c,
      fx * c + fy * si,
    ]);
  }

  at(point: Point, fx: number, fy: number): Float64Array {
    return this.force(angleNear(point, this.#middle), point[0], point[1], fx, fy);
  }

  /** Unit couple on the section at a point or an angle. */
  couple(angle: number): Float64Array {
    return this.#row(angle, () => [1, 0, 0]);
  }

  coupleAt(point: Point): Float64Array {
    return this.couple(angleNear(point, this.#middle));
  }
}

/** Orthonormal vectors that span the rows (Gram-Schmidt, done twice against rounding). */
function orthonormal(rows: readonly Float64Array[]): Float64Array[] {
  const basis: Float64Array[] = [];
  for (const row of rows) {
    const q = row.slice();
    const size = Math.sqrt(dot(q, q));
    for (let pass = 0; pass < 2; pass++) for (const b of basis) add(q, b, -dot(b, q));
    const left = Math.sqrt(dot(q, q));
    if (!(left > NOTHING_NEW * size)) continue;
    for (let i = 0; i < q.length; i++) q[i] = (q[i] as number) / left;
    basis.push(q);
  }
  return basis;
}

/**
 * @param drumRadius of the new drum, mm
 * @param angle middle of each lining element, rad, rising
 * @param face radius of each element's unworn face, mm
 * @param pushes single forces that bend the shoe: piston, strut or lever pivot
 */
export function condense(
  shoe: Shoe,
  drumRadius: number,
  angle: Float64Array,
  face: Float64Array,
  pushes: readonly Push[],
): Flex {
  const { lining } = shoe;
  const middle = (lining.from + lining.to) / 2;
  const anchor = angleNear(shoe.anchor.at, middle);
  const ends = [anchor, lining.from, lining.to, ...pushes.map((p) => angleNear(p.at, middle))];
  const beam = new Beam(
    shoe,
    drumRadius - lining.thicknessNew,
    Math.min(...ends),
    Math.max(...ends),
    anchor,
    middle,
  );
  const radialRow = (i: number): Float64Array => {
    const a = angle[i] as number;
    const [c, s, r] = [cos(a), sin(a), face[i] as number];
    return beam.force(a, r * c, r * s, c, s);
  };
  const tangentialRow = (i: number): Float64Array => {
    const a = angle[i] as number;
    const [c, s, r] = [cos(a), sin(a), face[i] as number];
    return beam.force(a, r * c, r * s, -s, c);
  };
  const elements = angle.length;
  const radials = Array.from({ length: elements }, (_, i) => radialRow(i));
  const tangentials = Array.from({ length: elements }, (_, i) => tangentialRow(i));

  const shapes = pushes.map((p) => beam.at(p.at, p.along[0], p.along[1]));
  const curve = (rows: readonly Float64Array[], f: (s: number) => number): Float64Array => {
    const sum = new Float64Array(3 * SEGMENTS);
    rows.forEach((row, i) => {
      add(sum, row, f((2 * i + 1) / elements - 1));
    });
    return sum;
  };
  for (const f of legendre.slice(0, PRESSURE_CURVES)) shapes.push(curve(radials, f));
  shapes.push(curve(tangentials, legendre[0]));
  const basis = orthonormal(shapes);
  const count = basis.length;

  const reach = new Float64Array(count);
  const project = (row: Float64Array, to: Float64Array, at: number, stride: number): void => {
    for (let m = 0; m < count; m++) to[at + m * stride] = dot(row, basis[m] as Float64Array);
  };
  const farthest = (values: Float64Array, at: number): void => {
    for (let m = 0; m < count; m++) {
      reach[m] = Math.max(reach[m] as number, Math.abs(values[at + m] as number));
    }
  };
  const bed = {
    count,
    face: new Float64Array(elements * 2 * MODE_PLACES),
    turning: new Float64Array(elements * MODE_PLACES),
  };
  for (let i = 0; i < elements; i++) {
    const at = 2 * MODE_PLACES * i;
    project(radials[i] as Float64Array, bed.face, at, 1);
    project(tangentials[i] as Float64Array, bed.face, at + MODE_PLACES, 1);
    project(beam.couple(angle[i] as number), bed.turning, MODE_PLACES * i, 1);
    farthest(bed.face, at);
    farthest(bed.face, at + MODE_PLACES);
  }
  const pushed = new Float64Array(count);
  for (let k = 0; k < pushes.length; k++) {
    project(shapes[k] as Float64Array, pushed, 0, 1);
    farthest(pushed, 0);
  }
  return {
    bed,
    reach,
    move: (point) => {
      const out = new Float64Array(2 * count);
      project(beam.at(point, 1, 0), out, 0, 2);
      project(beam.at(point, 0, 1), out, 1, 2);
      return out;
    },
    turn: (point) => {
      const out = new Float64Array(count);
      project(beam.coupleAt(point), out, 0, 1);
      return out;
    },
  };
}
