import { type BedModes, MODE_PLACES } from '../brake/flex.ts';
import type { WornBed } from './bed.ts';

/**
 * Sums over the bearing elements of a lining, for a shoe with several freedoms. Each bearing element
 * leaves a column: where it stands, how it is turned, its forces and slopes. Forces are summed from
 * these; the motion of each freedom is only written out when a tangent has to be made.
 */
export interface Gather {
  readonly freedoms: number;
  readonly capacity: number;
  /** Bearing elements now, and which. */
  count: number;
  readonly element: Int32Array;
  /** Entries of each column in a row (one array is faster than one for each): see NX to HOLD. */
  readonly columns: Float64Array;
  /** 0 clear, 1 slides, 2 slides the other way, 3 sticks: of all elements. */
  readonly touch: Uint8Array;
  /** Turn and touch at which the kept tangent was made; null: none. */
  knownTurn: number | null;
  readonly knownTouch: Uint8Array;
  /** Motion of each freedom: a row of elements each, and rows of nothing up to whole blocks of the product. */
  readonly normalMotion: Float64Array;
  readonly dragMotion: Float64Array;
  /** What motion along e_r and along e_t does to two rows of the tangent: four rows of elements. */
  readonly slope: Float64Array;
  /** Of a bending shoe: each bearing element turned to its own radius, see bent-tangent.ts. */
  readonly own: Float64Array;
  /** Faces of all elements as bent, from the anchor. */
  readonly bentX: Float64Array;
  readonly bentY: Float64Array;
}

/** Normal e_r of the drum at the face. */
export const NX = 0;
export const NY = 1;
/** Face from the pin or heel centre along e_r and e_t. */
export const ARM_NORMAL = 2;
export const ARM_DRAG = 3;
/** Element's own radius, turned with the shoe, along e_r and e_t. */
export const OWN_NORMAL = 4;
export const OWN_DRAG = 5;
export const NORMAL = 6;
export const FRICTION = 7;
/** dN = STIFFNESS·(normal motion); dT = FOLLOW·(normal motion) + HOLD·(motion along the drum). */
export const STIFFNESS = 8;
export const FOLLOW = 9;
export const HOLD = 10;
/** 1 / distance from the drum's centre. */
export const CURVE = 11;
export const COLUMN = 12;
/** Of a row of `own`. */
export const ENTRIES = 4;

/** Rows of the tangent's product are taken by fours. */
const whole = (freedoms: number): number => 4 * Math.ceil(freedoms / 4);

export function makeGather(freedoms: number, capacity: number): Gather {
  return {
    freedoms,
    capacity,
    count: 0,
    element: new Int32Array(capacity),
    columns: new Float64Array(COLUMN * capacity),
    touch: new Uint8Array(capacity),
    knownTurn: null,
    knownTouch: new Uint8Array(capacity),
    normalMotion: new Float64Array(whole(freedoms) * capacity),
    dragMotion: new Float64Array(whole(freedoms) * capacity),
    slope: new Float64Array(4 * capacity),
    own: new Float64Array(freedoms > 3 ? ENTRIES * capacity : 0),
    bentX: new Float64Array(capacity),
    bentY: new Float64Array(capacity),
  };
}

/** Of each mode, from one call to the next. */
export const SUMS = new Float64Array(MODE_PLACES);

/**
 * Forces of the bearing elements on the modes, Σ F·J_z with F = −N e_r + T e_t along each element's own radius
 * and tangent, into SUMS; turned, F a quarter turn back: F·(ẑ×J_z). Each sum has a variable of its own, which the
 * processor keeps out of memory.
 */
export function modeSums(g: Gather, { face }: BedModes, turned: boolean): void {
  const { count, columns, element } = g;
  let a = 0;
  let b = 0;
  let d = 0;
  let e = 0;
  let f = 0;
  let h = 0;
  let i = 0;
  let k = 0;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    const n = columns[at + NORMAL] as number;
    const t = columns[at + FRICTION] as number;
    const rr = columns[at + OWN_NORMAL] as number;
    const rt = columns[at + OWN_DRAG] as number;
    const radial = t * rt - n * rr;
    const tangential = n * rt + t * rr;
    const own = turned ? tangential : radial;
    const across = turned ? -radial : tangential;
    const r = 2 * MODE_PLACES * (element[c] as number);
    a += own * (face[r] as number) + across * (face[r + 8] as number);
    b += own * (face[r + 1] as number) + across * (face[r + 9] as number);
    d += own * (face[r + 2] as number) + across * (face[r + 10] as number);
    e += own * (face[r + 3] as number) + across * (face[r + 11] as number);
    f += own * (face[r + 4] as number) + across * (face[r + 12] as number);
    h += own * (face[r + 5] as number) + across * (face[r + 13] as number);
    i += own * (face[r + 6] as number) + across * (face[r + 14] as number);
    k += own * (face[r + 7] as number) + across * (face[r + 15] as number);
  }
  SUMS[0] = a;
  SUMS[1] = b;
  SUMS[2] = d;
  SUMS[3] = e;
  SUMS[4] = f;
  SUMS[5] = h;
  SUMS[6] = i;
  SUMS[7] = k;
}

/** Q_j = Σ (−N e_r + T e_t)·J_j */
export function sumForces(g: Gather, modes: BedModes | null, force: Float64Array): void {
  const { count, columns } = g;
  const extra = modes ? modes.count : 0;
  const rigid = g.freedoms - extra;
  let x = 0;
  let y = 0;
  let turn = 0;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    const n = columns[at + NORMAL] as number;
    const t = columns[at + FRICTION] as number;
    const nx = columns[at + NX] as number;
    const ny = columns[at + NY] as number;
    x -= n * nx + t * ny;
    y += t * nx - n * ny;
    turn += n * (columns[at + ARM_DRAG] as number) + t * (columns[at + ARM_NORMAL] as number);
  }
  if (modes) {
    modeSums(g, modes, false);
    for (let m = 0; m < extra; m++) force[rigid + m] = SUMS[m] as number;
  }
  if (rigid === 3) {
    force[0] = x;
    force[1] = y;
  }
  force[rigid - 1] = turn;
}

/** Turn past which a tangent is made anew although the same elements bear, rad: 0.1 mm at a 100 mm radius. */
const SAME_TURN = 1e-3;

/** The tangent changes so little while the same elements slide that it serves a whole solve. */
export function tangentIsKnown(g: Gather, turn: number): boolean {
  if (g.knownTurn === null || !(Math.abs(turn - g.knownTurn) < SAME_TURN)) return false;
  const { touch, knownTouch } = g;
  for (let i = 0; i < touch.length; i++) {
    if (touch[i] !== knownTouch[i] || touch[i] === 3) return false;
  }
  return true;
}

/** Motion of each bearing face in each freedom, along e_r and e_t: shift, turn. */
function motions(g: Gather): void {
  const { count, capacity, columns, freedoms, normalMotion, dragMotion } = g;
  const turn = (freedoms - 1) * capacity;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    if (freedoms === 3) {
      const nx = columns[at + NX] as number;
      const ny = columns[at + NY] as number;
      normalMotion[c] = nx;
      dragMotion[c] = -ny;
      normalMotion[capacity + c] = ny;
      dragMotion[capacity + c] = nx;
    }
    normalMotion[turn + c] = -(columns[at + ARM_DRAG] as number);
    dragMotion[turn + c] = columns[at + ARM_NORMAL] as number;
  }
}

/** Faces of a bent shoe, from its anchor, shoe frame: x + G z. @param at index of the first mode in q */
export function bendFaces(
  g: Gather,
  worn: WornBed,
  modes: BedModes,
  q: Float64Array,
  at: number,
): void {
  const { bentX, bentY, capacity } = g;
  const { x, y, bed } = worn;
  const { dirX, dirY } = bed;
  const { face, count } = modes;
  for (let m = 0; m < MODE_PLACES; m++) SUMS[m] = m < count ? (q[at + m] as number) : 0;
  const a = SUMS[0] as number;
  const b = SUMS[1] as number;
  const c = SUMS[2] as number;
  const d = SUMS[3] as number;
  const e = SUMS[4] as number;
  const f = SUMS[5] as number;
  const h = SUMS[6] as number;
  const k = SUMS[7] as number;
  for (let i = 0; i < capacity; i++) {
    const to = 2 * MODE_PLACES * i;
    const r =
      a * (face[to] as number) +
      b * (face[to + 1] as number) +
      c * (face[to + 2] as number) +
      d * (face[to + 3] as number) +
      (e * (face[to + 4] as number) +
        f * (face[to + 5] as number) +
        h * (face[to + 6] as number) +
        k * (face[to + 7] as number));
    const t =
      a * (face[to + 8] as number) +
      b * (face[to + 9] as number) +
      c * (face[to + 10] as number) +
      d * (face[to + 11] as number) +
      (e * (face[to + 12] as number) +
        f * (face[to + 13] as number) +
        h * (face[to + 14] as number) +
        k * (face[to + 15] as number));
    const ex = dirX[i] as number;
    const ey = dirY[i] as number;
    bentX[i] = (x[i] as number) + r * ex - t * ey;
    bentY[i] = (y[i] as number) + r * ey + t * ex;
  }
}

/** What motion of element c along e_r and e_t does to row j: see sumTangent. @param to its place in `slope` */
function slopesOf(g: Gather, j: number, to: number): void {
  const { capacity, count, columns, normalMotion, dragMotion, slope } = g;
  const own = j * capacity;
  const along = to + capacity;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    const n = normalMotion[own + c] as number;
    const t = dragMotion[own + c] as number;
    slope[to + c] = (columns[at + FOLLOW] as number) * t - (columns[at + STIFFNESS] as number) * n;
    slope[along + c] =
      (columns[at + HOLD] as number) * t -
      (columns[at + CURVE] as number) *
        ((columns[at + NORMAL] as number) * t + (columns[at + FRICTION] as number) * n);
  }
}

/**
 * Two rows by four columns of a product, summed over the bearing elements: so many sums at a time keep the
 * processor's adders busy.
 *
 * @param from where the slopes of the first row begin; those of the second follow two rows of elements later
 * @param motion of the freedoms, and the column at which to begin
 * @param out 2 × 4
 */
export function block(
  g: Gather,
  from: number,
  motion: Float64Array,
  column: number,
  out: Float64Array,
): void {
  const { capacity, count, slope } = g;
  const second = from + 2 * capacity;
  const m0 = column * capacity;
  const m1 = m0 + capacity;
  const m2 = m1 + capacity;
  const m3 = m2 + capacity;
  let a0 = 0;
  let a1 = 0;
  let a2 = 0;
  let a3 = 0;
  let b0 = 0;
  let b1 = 0;
  let b2 = 0;
  let b3 = 0;
  for (let c = 0; c < count; c++) {
    const a = slope[from + c] as number;
    const b = slope[second + c] as number;
    const x0 = motion[m0 + c] as number;
    const x1 = motion[m1 + c] as number;
    const x2 = motion[m2 + c] as number;
    const x3 = motion[m3 + c] as number;
    a0 += a * x0;
    a1 += a * x1;
    a2 += a * x2;
    a3 += a * x3;
    b0 += b * x0;
    b1 += b * x1;
    b2 += b * x2;
    b3 += b * x3;
  }
  out[0] = a0;
  out[1] = a1;
  out[2] = a2;
  out[3] = a3;
  out[4] = b0;
  out[5] = b1;
  out[6] = b2;
  out[7] = b3;
}

/** The arm of a turning shoe turns with it, d²x/dphi² = −r: Σ N e_r·r − T e_t·r. */
export function turningArm(g: Gather): number {
  const { count, columns } = g;
  let sum = 0;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    sum +=
      (columns[at + NORMAL] as number) * (columns[at + ARM_NORMAL] as number) -
      (columns[at + FRICTION] as number) * (columns[at + ARM_DRAG] as number);
  }
  return sum;
}

const PRESSED = new Float64Array(8);
const DRAGGED = new Float64Array(8);

/**
 * How Q_j changes with freedom l: dN = k n_l, dT = A n_l + B t_l, and the drum's normal turns as the face moves
 * along it, de_r = e_t (e_t·dx)/rho, de_t = −e_r (e_t·dx)/rho. So
 * K_jl = Σ (−k n_j + A t_j) n_l + Σ (B t_j − (N t_j + T n_j)/rho) t_l,
 * and what turningArm says: exact. (Of a bending shoe see bent-tangent.ts.)
 */
export function sumTangent(g: Gather, turn: number, tangent: Float64Array): void {
  const { freedoms: n, capacity, normalMotion, dragMotion } = g;
  motions(g);
  const arm = n - 1;
  for (let j = 0; j < n; j += 2) {
    slopesOf(g, j, 0);
    slopesOf(g, j + 1, 2 * capacity);
    for (let l = 0; l < n; l += 4) {
      block(g, 0, normalMotion, l, PRESSED);
      block(g, capacity, dragMotion, l, DRAGGED);
      for (let k = 0; k < 8; k++) {
        const row = k < 4 ? j : j + 1;
        const column = l + (k & 3);
        if (row < n && column < n) {
          tangent[row * n + column] = (PRESSED[k] as number) + (DRAGGED[k] as number);
        }
      }
    }
  }
  tangent[arm * n + arm] = (tangent[arm * n + arm] as number) + turningArm(g);
  // A shoe that slides around the drum changes it too much.
  g.knownTurn = arm === 2 ? null : turn;
  g.knownTouch.set(g.touch);
}
