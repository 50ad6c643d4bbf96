import { type BedModes, MODE_PLACES } from '../brake/flex.ts';
import {
  ARM_DRAG,
  ARM_NORMAL,
  block,
  COLUMN,
  CURVE,
  FOLLOW,
  FRICTION,
  type Gather,
  HOLD,
  modeSums,
  NORMAL,
  NX,
  NY,
  OWN_DRAG,
  OWN_NORMAL,
  STIFFNESS,
  SUMS,
  turningArm,
} from './gather.ts';

/**
 * Tangent of the lining of a bending shoe. Of element c, K_jl = v_j·M v_l, v = (n, t) the motion of its face along
 * e_r and e_t, M = [[−k, −T/rho], [A, B − N/rho]] (see sumTangent in gather.ts). The modes are told along the
 * element's own radius and tangent, g = (g_r, g_t), v = R g with R the turn from there to the drum's normal. So
 * K = g_j·(Rᵀ M R) g_l: four numbers an element are turned instead of the motions of seven modes. That the bent shape
 * turns with its shoe, d²x/dphi dz = ẑ×J_z, adds F·(ẑ×J_z) to the turn's row and to the mode's: (f_t, −f_r)·g with
 * F = (f_r, f_t) along radius and tangent.
 */

/** Rows of elements: RᵀMR by columns. */
const M11 = 0;
const M21 = 1;
const M12 = 2;
const M22 = 3;

/** Fills RᵀMR and the motion of each freedom along radius and tangent. @param rigid 1 (turn) or 3 (shift, turn) */
function turnInto(g: Gather, modes: BedModes, rigid: number): void {
  const { count, capacity, columns, element, own, normalMotion, dragMotion } = g;
  const { face } = modes;
  const turn = (rigid - 1) * capacity;
  for (let c = 0; c < count; c++) {
    const at = c * COLUMN;
    const rr = columns[at + OWN_NORMAL] as number;
    const rt = columns[at + OWN_DRAG] as number;
    const curve = columns[at + CURVE] as number;
    const n = columns[at + NORMAL] as number;
    const t = columns[at + FRICTION] as number;
    const nn = -(columns[at + STIFFNESS] as number);
    const nt = -curve * t;
    const tn = columns[at + FOLLOW] as number;
    const tt = (columns[at + HOLD] as number) - curve * n;
    const p1 = nn * rr + nt * rt;
    const p2 = tn * rr + tt * rt;
    const q1 = nt * rr - nn * rt;
    const q2 = tt * rr - tn * rt;
    own[M11 * capacity + c] = rr * p1 + rt * p2;
    own[M21 * capacity + c] = rr * p2 - rt * p1;
    own[M12 * capacity + c] = rr * q1 + rt * q2;
    own[M22 * capacity + c] = rr * q2 - rt * q1;
    const armN = -(columns[at + ARM_DRAG] as number);
    const armT = columns[at + ARM_NORMAL] as number;
    normalMotion[turn + c] = armN * rr + armT * rt;
    dragMotion[turn + c] = armT * rr - armN * rt;
    if (rigid === 3) {
      const nx = columns[at + NX] as number;
      const ny = columns[at + NY] as number;
      normalMotion[c] = nx * rr - ny * rt;
      dragMotion[c] = -ny * rr - nx * rt;
      normalMotion[capacity + c] = ny * rr + nx * rt;
      dragMotion[capacity + c] = nx * rr - ny * rt;
    }
  }
  for (let m = 0; m < modes.count; m++) {
    const to = (rigid + m) * capacity;
    for (let c = 0; c < count; c++) {
      const row = 2 * MODE_PLACES * (element[c] as number) + m;
      normalMotion[to + c] = face[row] as number;
      dragMotion[to + c] = face[row + MODE_PLACES] as number;
    }
  }
}

/** What motion of each element along radius and tangent does to rows j and j + 1. */
function slopesOf(g: Gather, j: number): void {
  const { capacity, count, own, normalMotion, dragMotion, slope } = g;
  const first = j * capacity;
  const second = first + capacity;
  for (let c = 0; c < count; c++) {
    const m11 = own[c] as number;
    const m21 = own[M21 * capacity + c] as number;
    const m12 = own[M12 * capacity + c] as number;
    const m22 = own[M22 * capacity + c] as number;
    const r0 = normalMotion[first + c] as number;
    const t0 = dragMotion[first + c] as number;
    const r1 = normalMotion[second + c] as number;
    const t1 = dragMotion[second + c] as number;
    slope[c] = m11 * r0 + m21 * t0;
    slope[capacity + c] = m12 * r0 + m22 * t0;
    slope[2 * capacity + c] = m11 * r1 + m21 * t1;
    slope[3 * capacity + c] = m12 * r1 + m22 * t1;
  }
}

const ALONG = new Float64Array(8);
const ACROSS = new Float64Array(8);

/** Rows j and j + 1, by their slopes, with every freedom. */
function pairOf(g: Gather, j: number, tangent: Float64Array): void {
  const { freedoms: n, capacity, normalMotion, dragMotion } = g;
  const first = j * n;
  const second = first + n;
  const both = j + 1 < n;
  for (let l = 0; l < n; l += 4) {
    block(g, 0, normalMotion, l, ALONG);
    block(g, capacity, dragMotion, l, ACROSS);
    const columns = Math.min(4, n - l);
    for (let k = 0; k < columns; k++) {
      tangent[first + l + k] = (ALONG[k] as number) + (ACROSS[k] as number);
      if (both) tangent[second + l + k] = (ALONG[k + 4] as number) + (ACROSS[k + 4] as number);
    }
  }
}

/** The bent shape turns with its shoe: into the turn's row and each mode's. */
function addBentTurn(g: Gather, modes: BedModes, turn: number, tangent: Float64Array): void {
  const { freedoms: n } = g;
  modeSums(g, modes, true);
  for (let m = 0; m < modes.count; m++) {
    const z = turn + 1 + m;
    const sum = SUMS[m] as number;
    tangent[turn * n + z] = (tangent[turn * n + z] as number) + sum;
    tangent[z * n + turn] = (tangent[z * n + turn] as number) + sum;
  }
}

/** dQ/dq of a bending shoe's lining, row-major, exact; as sumTangent does it for a rigid one. @param angle of the shoe, rad */
export function bentTangent(
  g: Gather,
  modes: BedModes,
  angle: number,
  tangent: Float64Array,
): void {
  const { freedoms: n } = g;
  const rigid = n - modes.count;
  const turn = rigid - 1;
  turnInto(g, modes, rigid);
  for (let j = 0; j < n; j += 2) {
    slopesOf(g, j);
    pairOf(g, j, tangent);
  }
  addBentTurn(g, modes, turn, tangent);
  tangent[turn * n + turn] = (tangent[turn * n + turn] as number) + turningArm(g);
  // A shoe that slides around the drum changes it too much.
  g.knownTurn = rigid === 3 ? null : angle;
  g.knownTouch.set(g.touch);
}
