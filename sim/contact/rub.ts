import type { WornBed } from './bed.ts';
import { bentTangent } from './bent-tangent.ts';
import { type DrumNow, radiusTowards } from './drum.ts';
import {
  BEYOND,
  FOLLOWS,
  type Friction,
  HOLDS,
  type Sticking,
  shearOf,
  slopes,
  stickOn,
} from './friction.ts';
import {
  ARM_DRAG,
  ARM_NORMAL,
  bendFaces,
  COLUMN,
  CURVE,
  FOLLOW,
  FRICTION,
  type Gather,
  HOLD,
  makeGather,
  NORMAL,
  NX,
  NY,
  OWN_DRAG,
  OWN_NORMAL,
  STIFFNESS,
  sumForces,
  sumTangent,
  tangentIsKnown,
} from './gather.ts';

/** Where a shoe stands. */
export interface ShoeStance {
  /** Rigid freedoms: 1 (turn about the pin) or 3 (shift of the heel centre, turn). */
  readonly freedoms: 1 | 3;
  /** Index of this shoe's first freedom: [turn] or [ux, uy, turn], then mode amplitudes. */
  readonly at: number;
  /** All freedoms. */
  q: Float64Array;
  /** The tangent is asked for too. */
  slopes: boolean;
  /** Of its turn. */
  cos: number;
  sin: number;
}

/** Results of one evaluation; arrays are reused. */
export interface Rub {
  /** Generalised force, one entry a freedom of the shoe; N, N·mm or √(N·mm). */
  readonly force: Float64Array;
  /**
   * dQ/dq, row-major; left as it is while the same elements bear in the same way since
   * forgetTangent().
   */
  readonly tangent: Float64Array;
  readonly normal: Float64Array;
  readonly gap: Float64Array;
  readonly friction: Float64Array;
  readonly faceX: Float64Array;
  readonly faceY: Float64Array;
  /** Bristle deflection after the step, mm. */
  readonly deflection: Float64Array;
  /** By how much a bristle would pull beyond its limit, N; 0 where it holds. Of bearing elements only. */
  readonly beyond: Float64Array;
  /** Sums of a shoe with more than its turn; also remembers its last tangent. */
  readonly gather: Gather;
}

/** @param freedoms of the shoe: turn, or shift and turn, and modes */
export function makeRub(count: number, freedoms: number): Rub {
  const make = () => new Float64Array(count);
  return {
    force: new Float64Array(freedoms),
    tangent: new Float64Array(freedoms * freedoms),
    normal: make(),
    gap: make(),
    friction: make(),
    faceX: make(),
    faceY: make(),
    deflection: make(),
    beyond: make(),
    gather: makeGather(freedoms, count),
  };
}

/**
 * Torque of a lining on the drum about its axis, N·mm, counter-clockwise positive: each friction force
 * at its element's distance, −Σ T_i·|x_i|.
 */
export function torqueOnDrum(out: Rub, drum: DrumNow): number {
  const { friction, faceX, faceY } = out;
  let sum = 0;
  for (let i = 0; i < friction.length; i++) {
    const t = friction[i] as number;
    if (t === 0) continue;
    const x = (faceX[i] as number) - drum.x;
    const y = (faceY[i] as number) - drum.y;
    sum -= t * Math.sqrt(x * x + y * y);
  }
  return sum;
}

/** No face that bears lies so much farther out than the drum. */
const OUTERMOST = 1.01;

/**
 * Would a lining surely rub just so if the drum had turned otherwise in the step? It does where each bristle is at its
 * limit and a change of turn Δ, which stretches it by ρ·Δ or less, does not take it back from there. Asked of the last
 * evaluation of its bristles.
 *
 * @param change of the drum's turn over the step, rad
 */
export function rubsAlike(drum: DrumNow, change: number, out: Rub): boolean {
  const { normal, gap, beyond } = out;
  const most = Math.abs(change) * OUTERMOST * (drum.radius + Math.abs(drum.oval));
  for (let i = 0; i < normal.length; i++) {
    // An element's stiffness is its force over its penetration.
    const n = normal[i] as number;
    if (n !== 0 && !(shearOf(n) * most < (beyond[i] as number) * -(gap[i] as number))) return false;
  }
  return true;
}

/** Asks the bristle of a bearing element again, of the last evaluation. @returns its friction, N; slopes in `slopes` */
function askAgain(law: Sticking, drum: DrumNow, i: number, out: Rub): number {
  const x = (out.faceX[i] as number) - drum.x;
  const y = (out.faceY[i] as number) - drum.y;
  const rho = Math.sqrt(x * x + y * y);
  const radius = radiusTowards(drum, x / rho, y / rho);
  return stickOn(law, i, drum, x, y, rho, radius, (out.normal[i] as number) / (rho - radius));
}

/**
 * How stiffly the bristles that hold keep the drum from turning, N·mm/rad: friction T = −B·(ρ·turn − …) at the distance
 * ρ gives Σ −B·ρ², shoes standing still. Asked of the last evaluation.
 */
export function holdOnDrum(drum: DrumNow, law: Sticking, out: Rub): number {
  let sum = 0;
  for (let i = 0; i < out.normal.length; i++) {
    if (out.normal[i] === 0) continue;
    askAgain(law, drum, i, out);
    const x = (out.faceX[i] as number) - drum.x;
    const y = (out.faceY[i] as number) - drum.y;
    sum -= (slopes[HOLDS] as number) * (x * x + y * y);
  }
  return sum;
}

/** To be called before a solve: no tangent is known yet. */
export function forgetTangent(rub: Rub): void {
  rub.gather.knownTurn = null;
}

/**
 * Forces of the drum on one lining at a pose: the shoe's generalised force and tangent.
 *
 * Free body of element i: x_i its face, e_r = x_i/|x_i| from the drum centre, e_t a quarter turn
 * counter-clockwise. Penetration = |x_i| − R; N = k·penetration, never negative, on the shoe along
 * −e_r; friction T on the shoe along e_t. With J_j the motion of x_i in freedom j,
 *   Q_j += −N e_r·J_j + T e_t·J_j,   dN = k e_r·dx,   dT = A e_r·dx + B e_t·dx
 * (A = ±mu·k sliding; B = −k_t sticking). e_r and e_t turn with x: de_r = e_t (e_t·dx)/|x|,
 * de_t = −e_r (e_t·dx)/|x|; that is in the tangent too (for other shoes than a hinged one see gather.ts).
 *
 * @param out force, tangent and what each element does
 */
export function rub(
  worn: WornBed,
  stance: ShoeStance,
  drum: DrumNow,
  law: Friction,
  out: Rub,
): void {
  const { freedoms, q, at, slopes: asked, cos: cosTurn, sin: sinTurn } = stance;
  const { force, tangent } = out;
  const { bed, stiffness, modes } = worn;
  const extra = modes ? modes.count : 0;
  const ux = freedoms === 3 ? (q[at] as number) : 0;
  const uy = freedoms === 3 ? (q[at + 1] as number) : 0;
  const cx = bed.anchor[0] + ux - drum.x;
  const cy = bed.anchor[1] + uy - drum.y;
  const single = freedoms + extra === 1;
  let force0 = 0;
  let tangent0 = 0;
  const { dirX, dirY, count } = bed;
  const { gather } = out;
  const { touch, element, columns } = gather;
  let c = 0;
  if (modes) bendFaces(gather, worn, modes, q, at + freedoms);
  const x = modes ? gather.bentX : worn.x;
  const y = modes ? gather.bentY : worn.y;
  const {
    gap,
    faceX,
    faceY,
    normal: normals,
    friction: frictions,
    deflection: deflections,
    beyond,
  } = out;
  const bristles = law.kind === 'stick' ? law : null;
  const shares = law.kind === 'press' ? law.start : null;
  const slide = law.kind === 'slide' ? law.mu * law.sense : 0;
  for (let i = 0; i < count; i++) {
    const lx = x[i] as number;
    const ly = y[i] as number;
    const rx = cosTurn * lx - sinTurn * ly;
    const ry = sinTurn * lx + cosTurn * ly;
    const px = cx + rx;
    const py = cy + ry;
    const rho = Math.sqrt(px * px + py * py);
    const nx = px / rho;
    const ny = py / rho;
    const radius = radiusTowards(drum, nx, ny);
    const penetration = rho - radius;
    gap[i] = -penetration;
    faceX[i] = px + drum.x;
    faceY[i] = py + drum.y;
    if (penetration <= 0) {
      touch[i] = 0;
      normals[i] = 0;
      frictions[i] = 0;
      deflections[i] = 0;
      continue;
    }
    const k = stiffness[i] as number;
    const normal = k * penetration;
    let friction = 0;
    let a = 0;
    let b = 0;
    if (bristles) {
      friction = stickOn(bristles, i, drum, px, py, rho, radius, k);
      a = slopes[FOLLOWS] as number;
      b = slopes[HOLDS] as number;
      deflections[i] = friction / shearOf(k);
      beyond[i] = slopes[BEYOND] as number;
    } else {
      const share = shares ? (shares[i] as number) : slide;
      friction = share * normal;
      a = share * k;
    }
    normals[i] = normal;
    frictions[i] = friction;
    if (single) {
      // One freedom, the turn: the same sums without the small matrices.
      const n0 = rx * ny - ry * nx;
      const t0 = ry * ny + rx * nx;
      force0 += friction * t0 - normal * n0;
      // With the turn of e_r, e_t and of the arm r itself (d²x/dphi² = −r): an exact tangent spares
      // an iteration of three.
      tangent0 +=
        (a * t0 - k * n0) * n0 +
        b * t0 * t0 -
        ((friction * n0 + normal * t0) * t0) / rho -
        friction * (nx * ry - ny * rx) +
        normal * (nx * rx + ny * ry);
      continue;
    }
    touch[i] = b !== 0 ? 3 : a < 0 ? 2 : 1;
    element[c] = i;
    const col = c * COLUMN;
    columns[col + NX] = nx;
    columns[col + NY] = ny;
    columns[col + ARM_NORMAL] = rx * nx + ry * ny;
    columns[col + ARM_DRAG] = ry * nx - rx * ny;
    // The element's own radius, turned with the shoe
    const ex = dirX[i] as number;
    const ey = dirY[i] as number;
    const wx = cosTurn * ex - sinTurn * ey;
    const wy = sinTurn * ex + cosTurn * ey;
    columns[col + OWN_NORMAL] = wx * nx + wy * ny;
    columns[col + OWN_DRAG] = wy * nx - wx * ny;
    columns[col + NORMAL] = normal;
    columns[col + FRICTION] = friction;
    columns[col + STIFFNESS] = k;
    columns[col + FOLLOW] = a;
    columns[col + HOLD] = b;
    columns[col + CURVE] = 1 / rho;
    c++;
  }
  if (single) {
    force[0] = force0;
    tangent[0] = tangent0;
    return;
  }
  gather.count = c;
  const turn = q[at + freedoms - 1] as number;
  sumForces(gather, modes, force);
  if (!asked || tangentIsKnown(gather, turn)) return;
  if (modes) bentTangent(gather, modes, turn, tangent);
  else sumTangent(gather, turn, tangent);
}
