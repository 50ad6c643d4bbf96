import { rub } from '../contact/rub.ts';
import { type StickForce, stickForce } from '../contact/stick.ts';
import { heelForce, makeHeelForce } from './heel.ts';
import { type Placed, place, turnsOf } from './place.ts';
import type { Rig, ShoeRig } from './rig.ts';
import type { Load, Work } from './work.ts';

/**
 * Every force of the brake at a pose, as generalised forces Q and tangent K = dQ/dy over all
 * freedoms (front shoe, rear shoe, parking lever). The strut's clamp is not in Q: it is a
 * multiplier on the seat distance, whose value and gradient are left in the work buffers.
 *
 * A force F at a point with motion J_j does Q_j = F·J_j (virtual work). A link of length s under
 * tension T does Q_j = −T ds/dy_j. Both solvers use this one function.
 */

/** Elastic grip of a hold-down and of a cup before they slip, N/mm: stiff against the motions that matter (0.01 mm). From memory of metal on metal and rubber lips; only the slip limit is felt. */
const HOLD_STIFFNESS = 5000;
const CUP_STIFFNESS = 2000;
/** Formal pull back to the built rest place of a shoe shaken free of friction, N/mm: decides the sideways float alone (below 0.05 N at any reading). */
export const CENTRING = 0.05;
/** A piston rusted into its bore as a stop for its toe, N/mm: as stiff as a heel on its flat. */
const STUCK_STOP = 1e5;
/** Climb force of the lever's spring comes up over this part of a tooth, mm. */
const CLIMB_RISE = 0.02;

const onHeel = makeHeelForce();
const stick: StickForce = { force: 0, slope: 0, anchor: 0 };

/** Adds a force that does not depend on the pose, with its geometric tangent. */
function addForce(rig: Rig, w: Work, p: Placed, fx: number, fy: number): void {
  const from = p.shoe ? p.shoe.at : 0;
  const to = p.shoe && !p.onLever ? p.shoe.at + p.shoe.n : rig.n;
  for (let j = from; j < to; j++) {
    w.q[j] = (w.q[j] as number) + fx * (p.dx[j] as number) + fy * (p.dy[j] as number);
  }
  addBend(rig, w, p, fx, fy);
}

/**
 * Second derivatives of a turned place times a force: d²x/dphi² = −r; a bent place turns with its
 * shoe, d²x/dphi dz = ẑ×dx/dz; a lever, with the section that carries it.
 */
function addBend(rig: Rig, w: Work, p: Placed, fx: number, fy: number): void {
  const { shoe } = p;
  if (!shoe) return;
  const n = rig.n;
  const t = shoe.at + shoe.freedoms - 1;
  w.k[t * n + t] = (w.k[t * n + t] as number) - (p.rx * fx + p.ry * fy);
  const l = rig.leverAt;
  const b = -(p.lx * fx + p.ly * fy);
  if (p.onLever) {
    w.k[l * n + l] = (w.k[l * n + l] as number) + b;
    w.k[l * n + t] = (w.k[l * n + t] as number) + rig.leverSense * b;
    w.k[t * n + l] = (w.k[t * n + l] as number) + rig.leverSense * b;
  }
  for (let m = 0; m < shoe.modes; m++) {
    const z = shoe.at + shoe.freedoms + m;
    const c = (p.dx[z] as number) * fy - (p.dy[z] as number) * fx;
    w.k[t * n + z] = (w.k[t * n + z] as number) + c;
    w.k[z * n + t] = (w.k[z * n + t] as number) + c;
    if (p.turning) {
      const carried = rig.leverSense * b * (p.turning[m] as number);
      w.k[l * n + z] = (w.k[l * n + z] as number) + carried;
      w.k[z * n + l] = (w.k[z * n + l] as number) + carried;
    }
  }
}

/** How each freedom moves b against a: along (ex, ey) and across it. */
function motions(n: number, w: Work, a: Placed, b: Placed, ex: number, ey: number): void {
  for (let j = 0; j < n; j++) {
    const x = (b.dx[j] as number) - (a.dx[j] as number);
    const y = (b.dy[j] as number) - (a.dy[j] as number);
    w.along[j] = ex * x + ey * y;
    w.across[j] = -ey * x + ex * y;
  }
}

/** Adds a link from a to b with tension T(s) and slope dT/ds. Length and direction are given. */
function addLink(
  rig: Rig,
  w: Work,
  a: Placed,
  b: Placed,
  tension: number,
  slope: number,
  length: number,
  ex: number,
  ey: number,
): void {
  const n = rig.n;
  const { along, across } = w;
  motions(n, w, a, b, ex, ey);
  const round = tension / length;
  for (let j = 0; j < n; j++) {
    const stretch = along[j] as number;
    const swing = across[j] as number;
    if (stretch === 0 && swing === 0) continue;
    w.q[j] = (w.q[j] as number) - tension * stretch;
    for (let l = 0; l < n; l++) {
      w.k[j * n + l] =
        (w.k[j * n + l] as number) -
        slope * stretch * (along[l] as number) -
        round * swing * (across[l] as number);
    }
  }
  addBend(rig, w, b, -tension * ex, -tension * ey);
  addBend(rig, w, a, tension * ex, tension * ey);
}

function lining(rig: Rig, w: Work, y: Float64Array, load: Load, shoe: ShoeRig, index: 0 | 1): void {
  const front = index === 0;
  const stance = w.stance[index];
  stance.q = y;
  stance.cos = front ? w.turns.frontCos : w.turns.rearCos;
  stance.sin = front ? w.turns.frontSin : w.turns.rearSin;
  const worn = front ? load.frontWorn : load.rearWorn;
  rub(worn, stance, load.drum, front ? load.frontLaw : load.rearLaw, shoe.rub);
  const { force, tangent } = shoe.rub;
  for (let j = 0; j < shoe.n; j++) {
    w.q[shoe.at + j] = (w.q[shoe.at + j] as number) + (force[j] as number);
    for (let l = 0; l < shoe.n; l++) {
      const at = (shoe.at + j) * rig.n + shoe.at + l;
      w.k[at] = (w.k[at] as number) + (tangent[j * shoe.n + l] as number);
    }
  }
  // Bending modes are orthonormal: their own stiffness is the identity (see brake/flex.ts).
  for (let m = 0; m < shoe.modes; m++) {
    const at = shoe.at + shoe.freedoms + m;
    w.q[at] = (w.q[at] as number) - (y[at] as number);
    w.k[at * rig.n + at] = (w.k[at * rig.n + at] as number) - 1;
  }
}

function piston(rig: Rig, w: Work, load: Load, shoe: ShoeRig, index: 0 | 1): void {
  const { cylinder } = rig.brake;
  const toe = w.toe[index];
  const travel = shoe.outward * (toe.x - (load.toeRest[index] as number));
  stickForce(
    travel,
    load.memory.cup[index] as number,
    CUP_STIFFNESS,
    cylinder.cupFriction + load.cupExtra,
    stick,
  );
  // Fluid only pushes. A piston that is stuck bears it itself and is a stop for its toe.
  let push = Math.max(0, load.pressure * cylinder.area + cylinder.centreSpring + stick.force);
  if (push === 0) stick.slope = 0;
  if (load.stuck[index]) {
    push = STUCK_STOP * Math.max(0, -travel);
    stick.slope = travel < 0 ? -STUCK_STOP : 0;
  }
  push += load.lean[index];
  w.after.cup[index] = stick.anchor;
  w.piston[index] = push;
  w.travel[index] = travel;
  addForce(rig, w, toe, shoe.outward * push, 0);
  w.outer[2 * index] = (w.outer[2 * index] as number) + shoe.outward * push;
  if (stick.slope !== 0) {
    for (let j = shoe.at; j < shoe.at + shoe.n; j++) {
      const dj = toe.dx[j] as number;
      if (dj === 0) continue;
      for (let l = shoe.at; l < shoe.at + shoe.n; l++) {
        w.k[j * rig.n + l] =
          (w.k[j * rig.n + l] as number) + stick.slope * dj * (toe.dx[l] as number);
      }
    }
  }
}

/** Hold-down: a bristle in the plane, clamped radially at its friction. */
function holdDown(rig: Rig, w: Work, load: Load, shoe: ShoeRig, index: 0 | 1): void {
  const p = w.hold[index];
  const n = rig.n;
  const from = shoe.at;
  const to = shoe.at + shoe.n;
  const share = index === 0 ? load.holdShareFront : load.holdShareRear;
  const limit = shoe.shoe.holdDown.friction * share + load.groove[index];
  const ax = load.memory.hold[2 * index] as number;
  const ay = load.memory.hold[2 * index + 1] as number;
  const x = p.x - ax;
  const y = p.y - ay;
  const d = Math.sqrt(x * x + y * y);
  let fx = -HOLD_STIFFNESS * x;
  let fy = -HOLD_STIFFNESS * y;
  let slope = -HOLD_STIFFNESS;
  w.after.hold[2 * index] = ax;
  w.after.hold[2 * index + 1] = ay;
  if (HOLD_STIFFNESS * d > limit) {
    const c = limit / (HOLD_STIFFNESS * d);
    w.after.hold[2 * index] = p.x - c * x;
    w.after.hold[2 * index + 1] = p.y - c * y;
    fx = -c * HOLD_STIFFNESS * x;
    fy = -c * HOLD_STIFFNESS * y;
    slope = 0;
    // Sliding: constant size, direction turns across the motion only.
    const round = d > 0 ? limit / d : 0;
    for (let j = from; j < to; j++) {
      const cj = d > 0 ? (-y * (p.dx[j] as number) + x * (p.dy[j] as number)) / d : 0;
      if (cj === 0) continue;
      for (let l = from; l < to; l++) {
        const cl = (-y * (p.dx[l] as number) + x * (p.dy[l] as number)) / d;
        w.k[j * n + l] = (w.k[j * n + l] as number) - round * cj * cl;
      }
    }
  }
  if (share < 1) {
    fx -= CENTRING * (p.x - (load.home[2 * index] as number));
    fy -= CENTRING * (p.y - (load.home[2 * index + 1] as number));
    slope -= CENTRING;
  }
  addForce(rig, w, p, fx, fy);
  w.held[2 * index] = fx;
  w.held[2 * index + 1] = fy;
  w.outer[2 * index] = (w.outer[2 * index] as number) + fx;
  w.outer[2 * index + 1] = (w.outer[2 * index + 1] as number) + fy;
  if (slope !== 0) {
    for (let j = from; j < to; j++) {
      const jx = slope * (p.dx[j] as number);
      const jy = slope * (p.dy[j] as number);
      if (jx === 0 && jy === 0) continue;
      for (let l = from; l < to; l++) {
        w.k[j * n + l] =
          (w.k[j * n + l] as number) + jx * (p.dx[l] as number) + jy * (p.dy[l] as number);
      }
    }
  }
}

function heel(rig: Rig, w: Work, y: Float64Array, load: Load, shoe: ShoeRig, index: 0 | 1): void {
  const { anchor } = shoe.shoe;
  if (anchor.kind !== 'abutment') return;
  const at = shoe.at;
  const held = load.memory.heel[index] as number;
  heelForce(anchor, y[at] as number, y[at + 1] as number, y[at + 2] as number, held, onHeel);
  w.after.heel[index] = onHeel.held;
  w.heel[2 * index] = onHeel.x;
  w.heel[2 * index + 1] = onHeel.y;
  w.q[at] = (w.q[at] as number) + onHeel.x;
  w.q[at + 1] = (w.q[at + 1] as number) + onHeel.y;
  w.q[at + 2] = (w.q[at + 2] as number) + onHeel.moment;
  for (let j = 0; j < 3; j++) {
    for (let l = 0; l < 3; l++) {
      const i = (at + j) * rig.n + at + l;
      w.k[i] = (w.k[i] as number) + (onHeel.tangent[3 * j + l] as number);
    }
  }
}

/** Books a spring's pull on its shoe: force and moment about the anchor. */
function springOn(rig: Rig, w: Work, p: Placed, fx: number, fy: number): void {
  if (!p.shoe) return;
  const o = p.shoe === rig.front ? 0 : 1;
  w.outer[2 * o] = (w.outer[2 * o] as number) + fx;
  w.outer[2 * o + 1] = (w.outer[2 * o + 1] as number) + fy;
  w.springMoment[o] = (w.springMoment[o] as number) + p.rx * fy - p.ry * fx;
}

function springs(rig: Rig, w: Work, y: Float64Array, load: Load): void {
  for (let i = 0; i < rig.springs.length; i++) {
    const spring = rig.brake.springs[i];
    const link = rig.springs[i];
    if (!spring || !link) continue;
    const a = place(rig, y, w.turns, link.a, w.springA);
    const b = place(rig, y, w.turns, link.b, w.springB);
    const dx = b.x - a.x;
    const dy = b.y - a.y;
    const s = Math.sqrt(dx * dx + dy * dy);
    // Tension only (an extension spring pulls with its initial tension + rate × stretch: Shigley, Mechanical Engineering Design, extension springs).
    const factor = load.springFactor;
    const pull = factor * (spring.fitted + spring.rate * (s - spring.fittedLength));
    const tension = Math.max(0, pull);
    w.springForce[i] = tension;
    w.springEnds[4 * i] = a.x;
    w.springEnds[4 * i + 1] = a.y;
    w.springEnds[4 * i + 2] = b.x;
    w.springEnds[4 * i + 3] = b.y;
    const ex = dx / s;
    const ey = dy / s;
    addLink(rig, w, a, b, tension, pull > 0 ? factor * spring.rate : 0, s, ex, ey);
    springOn(rig, w, a, tension * ex, tension * ey);
    springOn(rig, w, b, -tension * ex, -tension * ey);
  }
}

/** Distance of the strut seats, its gradient, and the pull of a climbing lever. */
function strut(rig: Rig, w: Work, y: Float64Array, load: Load): void {
  const a = place(rig, y, w.turns, rig.front.seat, w.seat[0]);
  const b = place(rig, y, w.turns, rig.rear.seat, w.seat[1]);
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const s = Math.sqrt(dx * dx + dy * dy);
  const ex = dx / s;
  const ey = dy / s;
  w.separation = s;
  w.seatX = ex;
  w.seatY = ey;
  for (let j = 0; j < rig.n; j++) {
    w.seatGradient[j] =
      ex * ((b.dx[j] as number) - (a.dx[j] as number)) +
      ey * ((b.dy[j] as number) - (a.dy[j] as number));
  }
  const { adjuster } = rig.brake;
  const climbed = s - load.strutLength - adjuster.lostMotion;
  w.climbForce = 0;
  if (adjuster.climbForce > 0 && climbed > 0 && load.nextTooth > 0) {
    const rising = climbed < CLIMB_RISE;
    w.climbForce = adjuster.climbForce * (rising ? climbed / CLIMB_RISE : 1);
    addLink(rig, w, a, b, w.climbForce, rising ? adjuster.climbForce / CLIMB_RISE : 0, s, ex, ey);
    w.outer[0] = (w.outer[0] as number) + w.climbForce * ex;
    w.outer[1] = (w.outer[1] as number) + w.climbForce * ey;
    w.outer[2] = (w.outer[2] as number) - w.climbForce * ex;
    w.outer[3] = (w.outer[3] as number) - w.climbForce * ey;
  }
}

/** Adds the geometric tangent of the strut's clamp force (compression S: Q = S·gradient). */
export function addClampTangent(rig: Rig, w: Work, clamp: number): void {
  const n = rig.n;
  const a = w.seat[0];
  const b = w.seat[1];
  const round = clamp / w.separation;
  const { across } = w;
  motions(n, w, a, b, w.seatX, w.seatY);
  for (let j = 0; j < n; j++) {
    const swing = across[j] as number;
    if (swing === 0) continue;
    for (let l = 0; l < n; l++) {
      w.k[j * n + l] = (w.k[j * n + l] as number) + round * swing * (across[l] as number);
    }
  }
  addBend(rig, w, b, clamp * w.seatX, clamp * w.seatY);
  addBend(rig, w, a, -clamp * w.seatX, -clamp * w.seatY);
}

function shoeForces(
  rig: Rig,
  w: Work,
  y: Float64Array,
  load: Load,
  shoe: ShoeRig,
  index: 0 | 1,
): void {
  lining(rig, w, y, load, shoe, index);
  place(rig, y, w.turns, shoe.toe, w.toe[index]);
  piston(rig, w, load, shoe, index);
  place(rig, y, w.turns, shoe.hold, w.hold[index]);
  holdDown(rig, w, load, shoe, index);
  heel(rig, w, y, load, shoe, index);
}

/** Fills w.q and w.k for pose y under the load. */
export function assemble(rig: Rig, w: Work, y: Float64Array, load: Load): void {
  const { q, k } = w;
  for (let j = 0; j < q.length; j++) q[j] = 0;
  for (let j = 0; j < k.length; j++) k[j] = 0;
  for (let j = 0; j < 4; j++) w.outer[j] = 0;
  w.springMoment[0] = 0;
  w.springMoment[1] = 0;
  turnsOf(rig, y, w.turns);
  shoeForces(rig, w, y, load, rig.front, 0);
  shoeForces(rig, w, y, load, rig.rear, 1);
  springs(rig, w, y, load);
  strut(rig, w, y, load);
  if (load.cable > 0) {
    const hook = place(rig, y, w.turns, rig.hook, w.hook);
    const guide = place(rig, y, w.turns, rig.guide, w.guide);
    const dx = guide.x - hook.x;
    const dy = guide.y - hook.y;
    const s = Math.sqrt(dx * dx + dy * dy);
    // A cable pulls straight towards its guide, with the force it is given.
    addLink(rig, w, hook, guide, load.cable, 0, s, dx / s, dy / s);
    w.outer[2] = (w.outer[2] as number) + (load.cable * dx) / s;
    w.outer[3] = (w.outer[3] as number) + (load.cable * dy) / s;
  }
}
