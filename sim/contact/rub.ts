import type { WornBed } from './bed.ts';
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

/** Where the drum stands: centre, inner radius, and an oval part: r = radius + oval·cos 2(angle − phase). */
export interface DrumNow {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly oval: number;
  /** cos and sin of twice the phase. */
  readonly ovalCos: number;
  readonly ovalSin: number;
}

export const roundDrum = (radius: number): DrumNow => ({
  x: 0,
  y: 0,
  radius,
  oval: 0,
  ovalCos: 1,
  ovalSin: 0,
});

/**
 * A drum out of round, turned by an angle: its bore off centre by e, and oval by ±o (the slope of the
 * oval, at most 2·o/r of a few thousandths, is left out of the normal's direction).
 */
export function runningDrum(radius: number, e: number, o: number, c: number, s: number): DrumNow {
  return { x: e * c, y: e * s, radius, oval: o, ovalCos: c * c - s * s, ovalSin: 2 * s * c };
}

/**
 * Friction between lining and drum, one law in three uses:
 * - `slide`: the drum turns (or is about to): friction is mu·N along the turning;
 * - `stick`: bristles: an elastic deflection clamped at mu·N (Dahl's model as regularised by
 *   Haessig & Friedland 1991, "bristle" friction), for stick, slip, reversal and holding;
 * - `press`: standing drum, one press from rest without memory: a bristle grows from the touch in
 *   proportion to the penetration, so friction is a share of N between −mu and mu, element by element.
 */
export type Friction =
  | { readonly kind: 'slide'; readonly mu: number; readonly sense: -1 | 0 | 1 }
  | { readonly kind: 'press'; readonly mu: number; readonly start: Float64Array }
  | Sticking;

export interface Sticking {
  readonly kind: 'stick';
  readonly mu: number;
  /** Deflection of each bristle before the step, mm (drum ahead of the lining is positive). */
  readonly deflection: Float64Array;
  /** Place of each face before the step, mm. */
  readonly beforeX: Float64Array;
  readonly beforeY: Float64Array;
  /** Turn of the drum over the step, rad. */
  readonly turn: number;
}

/**
 * Shear stiffness of the lining over its compressive stiffness: G / E = 1 / (2(1 + nu)) with nu of
 * about 0.25 (Hooke's law of an isotropic solid; nu of lining material from memory).
 */
export const SHEAR_SHARE = 0.4;

/** Where a shoe stands. */
export interface ShoeStance {
  /** Rigid freedoms: 1 (turn about the pin) or 3 (shift of the heel centre, turn). */
  readonly freedoms: 1 | 3;
  /** Index of this shoe's first freedom: [turn] or [ux, uy, turn], then mode amplitudes. */
  readonly at: number;
  /** All freedoms. */
  q: Float64Array;
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

/** To be called before a solve: no tangent is known yet. */
export function forgetTangent(rub: Rub): void {
  rub.gather.knownTurn = null;
}

/** One bearing element: where it touches, and what a bristle makes of it. */
interface Touching {
  /** N/mm, mm, N */
  stiffness: number;
  penetration: number;
  normal: number;
  /** Of the drum there, mm. */
  radius: number;
  /** Face from the drum's centre, and how far it is, mm. */
  x: number;
  y: number;
  distance: number;
  /** Friction, N, and its slopes A and B (see rub), N/mm. */
  friction: number;
  follow: number;
  hold: number;
  /** mm */
  deflection: number;
}

const touching: Touching = {
  stiffness: 0,
  penetration: 0,
  normal: 0,
  radius: 0,
  x: 0,
  y: 0,
  distance: 1,
  friction: 0,
  follow: 0,
  hold: 0,
  deflection: 0,
};

/** The `stick` law on one element: its bristle stretches by what the drum ran ahead, up to mu·N. */
function hold(law: Sticking, i: number, drum: DrumNow, t: Touching): void {
  const { stiffness, penetration, radius, x, y, distance } = t;
  const kt = stiffness * SHEAR_SHARE;
  const bx = (law.beforeX[i] as number) - drum.x;
  const by = (law.beforeY[i] as number) - drum.y;
  const moved = -(y / distance) * (x - bx) + (x / distance) * (y - by);
  // A face that was clear before the step rubs only for the part of it after the touch.
  const clear = radius - Math.sqrt(bx * bx + by * by);
  const rubbed = clear > 0 ? penetration / (penetration + clear) : 1;
  const slid = law.turn * distance - moved;
  const friction = kt * ((law.deflection[i] as number) + rubbed * slid);
  const most = law.mu * t.normal;
  t.hold = 0;
  if (friction > most) {
    t.friction = most;
    t.follow = law.mu * stiffness;
  } else if (friction < -most) {
    t.friction = -most;
    t.follow = -law.mu * stiffness;
  } else {
    // A deeper face has rubbed for more of the step: d(rubbed) = clear/(penetration + clear)² of it.
    const way = penetration + clear;
    t.friction = friction;
    t.follow = clear > 0 ? (kt * slid * clear) / (way * way) : 0;
    t.hold = -kt * rubbed;
  }
  t.deflection = t.friction / kt;
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
  const { freedoms, q, at, cos: cosTurn, sin: sinTurn } = stance;
  const { force, tangent } = out;
  const { bed, stiffness, modes } = worn;
  const extra = modes ? modes.count : 0;
  const ux = freedoms === 3 ? (q[at] as number) : 0;
  const uy = freedoms === 3 ? (q[at + 1] as number) : 0;
  const cx = bed.anchor[0] + ux - drum.x;
  const cy = bed.anchor[1] + uy - drum.y;
  const slide = law.kind === 'slide' ? law.mu * law.sense : 0;
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
  const { gap, faceX, faceY, normal: normals, friction: frictions, deflection: deflections } = out;
  const stick = law.kind === 'stick' ? law : null;
  const press = law.kind === 'press' ? law : null;
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
    let radius = drum.radius;
    if (drum.oval !== 0) {
      radius += drum.oval * ((nx * nx - ny * ny) * drum.ovalCos + 2 * nx * ny * drum.ovalSin);
    }
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
    let friction = slide * normal;
    let a = slide * k;
    let b = 0;
    if (press) {
      const share = press.start[i] as number;
      friction = share * normal;
      a = share * k;
    } else if (stick) {
      touching.stiffness = k;
      touching.penetration = penetration;
      touching.normal = normal;
      touching.radius = radius;
      touching.x = px;
      touching.y = py;
      touching.distance = rho;
      hold(stick, i, drum, touching);
      friction = touching.friction;
      a = touching.follow;
      b = touching.hold;
      deflections[i] = touching.deflection;
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
  if (!tangentIsKnown(gather, turn)) sumTangent(gather, modes, turn, tangent);
}
