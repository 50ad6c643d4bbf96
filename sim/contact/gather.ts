import type { BedModes } from '../brake/flex.ts';
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
  /** Motion of each freedom, freedoms × capacity. */
  readonly normalMotion: Float64Array;
  readonly dragMotion: Float64Array;
  readonly slope: Float64Array;
  /** Of all elements: force (or bending) along its own radius and tangent; face as bent, from the anchor. */
  readonly own: Float64Array;
  readonly across: Float64Array;
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
    normalMotion: new Float64Array(freedoms * capacity),
    dragMotion: new Float64Array(freedoms * capacity),
    slope: new Float64Array(capacity),
    own: new Float64Array(capacity),
    across: new Float64Array(capacity),
    bentX: new Float64Array(capacity),
    bentY: new Float64Array(capacity),
  };
}

/** Q_j = Σ (−N e_r + T e_t)·J_j */
export function sumForces(g: Gather, modes: BedModes | null, force: Float64Array): void {
  const { count, columns, own, across, capacity } = g;
  const extra = modes ? modes.count : 0;
  const rigid = g.freedoms - extra;
  if (modes && count < capacity) {
    own.fill(0);
    across.fill(0);
  }
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
    if (!modes) continue;
    const rr = columns[at + OWN_NORMAL] as number;
    const rt = columns[at + OWN_DRAG] as number;
    own[g.element[c] as number] = t * rt - n * rr;
    across[g.element[c] as number] = n * rt + t * rr;
  }
  for (let m = 0; m < extra; m++) {
    const { radial, tangential } = modes as BedModes;
    const row = m * capacity;
    let sum = 0;
    for (let i = 0; i < capacity; i++) {
      sum +=
        (own[i] as number) * (radial[row + i] as number) +
        (across[i] as number) * (tangential[row + i] as number);
    }
    force[rigid + m] = sum;
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

/** Motion of each bearing face in each freedom, along e_r and e_t: shift, turn, modes. */
function motions(g: Gather, modes: BedModes | null): void {
  const { count, capacity, columns, normalMotion, dragMotion } = g;
  const extra = modes ? modes.count : 0;
  const rigid = g.freedoms - extra;
  const turn = (rigid - 1) * capacity;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    if (rigid === 3) {
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
  for (let m = 0; m < extra; m++) {
    const { radial, tangential } = modes as BedModes;
    const row = (rigid + m) * capacity;
    for (let c = 0; c < count; c++) {
      const i = m * capacity + (g.element[c] as number);
      const gr = radial[i] as number;
      const gt = tangential[i] as number;
      const rr = columns[c * COLUMN + OWN_NORMAL] as number;
      const rt = columns[c * COLUMN + OWN_DRAG] as number;
      normalMotion[row + c] = gr * rr - gt * rt;
      dragMotion[row + c] = gr * rt + gt * rr;
    }
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
  const { bentX, bentY, own, across, capacity } = g;
  const { x, y, bed } = worn;
  own.fill(0);
  across.fill(0);
  for (let m = 0; m < modes.count; m++) {
    const z = q[at + m] as number;
    const { radial, tangential } = modes;
    const row = m * capacity;
    for (let i = 0; i < capacity; i++) {
      own[i] = (own[i] as number) + z * (radial[row + i] as number);
      across[i] = (across[i] as number) + z * (tangential[row + i] as number);
    }
  }
  for (let i = 0; i < capacity; i++) {
    const ex = bed.dirX[i] as number;
    const ey = bed.dirY[i] as number;
    const r = own[i] as number;
    const t = across[i] as number;
    bentX[i] = (x[i] as number) + r * ex - t * ey;
    bentY[i] = (y[i] as number) + r * ey + t * ex;
  }
}

/**
 * What motion along the drum does to row j: sticking bristles, and, on a shoe that can slip around the
 * drum, the turn of the normal that goes with it, de_r = e_t (e_t·dx)/rho, de_t = −e_r (e_t·dx)/rho:
 * Σ (B t_j − (N t_j + T n_j)/rho) t_l.
 */
function addAlong(g: Gather, j: number, slips: boolean, tangent: Float64Array): void {
  const { freedoms: n, capacity, count, columns, normalMotion, dragMotion, slope } = g;
  const own = j * capacity;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    const t = dragMotion[own + c] as number;
    slope[c] = (columns[at + HOLD] as number) * t;
    if (!slips) continue;
    slope[c] =
      (slope[c] as number) -
      (columns[at + CURVE] as number) *
        ((columns[at + NORMAL] as number) * t +
          (columns[at + FRICTION] as number) * (normalMotion[own + c] as number));
  }
  for (let l = 0; l < n; l++) {
    const other = l * capacity;
    let sum = 0;
    for (let c = 0; c < count; c++) {
      sum += (slope[c] as number) * (dragMotion[other + c] as number);
    }
    tangent[j * n + l] = (tangent[j * n + l] as number) + sum;
  }
}

/** The arm of a turning shoe turns with it, d²x/dphi² = −r: Σ N e_r·r − T e_t·r. */
function turningArm(g: Gather): number {
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

/** K_jl = Σ (−k n_j + A t_j) n_l, and what addAlong says. */
export function sumTangent(
  g: Gather,
  modes: BedModes | null,
  turn: number,
  tangent: Float64Array,
): void {
  const { freedoms: n, capacity, count, columns, normalMotion, dragMotion, slope } = g;
  motions(g, modes);
  const slips = n - (modes ? modes.count : 0) === 3;
  let sticks = false;
  for (let c = 0; c < count; c++) sticks ||= columns[c * COLUMN + HOLD] !== 0;
  for (let j = 0; j < n; j++) {
    const own = j * capacity;
    for (let c = 0; c < count; c++) {
      slope[c] =
        (columns[c * COLUMN + FOLLOW] as number) * (dragMotion[own + c] as number) -
        (columns[c * COLUMN + STIFFNESS] as number) * (normalMotion[own + c] as number);
    }
    // Two sums at a time keep the processor's adders busy.
    for (let l = 0; l < n; l += 2) {
      const first = l * capacity;
      const second = (l + 1 < n ? l + 1 : l) * capacity;
      let a = 0;
      let b = 0;
      for (let c = 0; c < count; c++) {
        const s = slope[c] as number;
        a += s * (normalMotion[first + c] as number);
        b += s * (normalMotion[second + c] as number);
      }
      tangent[j * n + l] = a;
      if (l + 1 < n) tangent[j * n + l + 1] = b;
    }
    if (sticks || slips) addAlong(g, j, slips, tangent);
  }
  if (slips) tangent[2 * n + 2] = (tangent[2 * n + 2] as number) + turningArm(g);
  g.knownTurn = slips ? null : turn;
  g.knownTouch.set(g.touch);
}
