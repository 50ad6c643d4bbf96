import type { Point, Shoe } from '../brake/types.ts';
import { cos, sin } from '../math/trig.ts';
import type { Instant, ShoePose } from './instant.ts';
import type { Placed, Rig, ShoeRig, Spot, Turns } from './types.ts';

/** Where a point of a shoe (reference coordinates, mm) stands in a pose. Bending is not included. */
export function placePoint(shoe: Shoe, pose: ShoePose, point: Point): Point {
  const [ax, ay] = shoe.anchor.at;
  const c = cos(pose.phi);
  const s = sin(pose.phi);
  const x = point[0] - ax;
  const y = point[1] - ay;
  return [ax + pose.ux + c * x - s * y, ay + pose.uy + s * x + c * y];
}

/** Turn of a shoe in a vector of all freedoms, rad. */
export const turnIn = ({ at, freedoms }: ShoeRig, y: Float64Array): number =>
  y[at + freedoms - 1] as number;

/** All freedoms as an instant has them. */
export function poseOf(rig: Rig, i: Instant): Float64Array {
  const y = new Float64Array(rig.n);
  for (const shoe of [rig.front, rig.rear]) {
    const { ux, uy, phi, modes } = i.shoes[shoe.side].pose;
    y.set(shoe.freedoms === 3 ? [ux, uy, phi, ...modes] : [phi, ...modes], shoe.at);
  }
  y[rig.leverAt] = i.leverAngle;
  return y;
}

export const makePlaced = (n: number): Placed => ({
  x: 0,
  y: 0,
  rx: 0,
  ry: 0,
  lx: 0,
  ly: 0,
  shoe: null,
  onLever: false,
  dx: new Float64Array(n),
  dy: new Float64Array(n),
  turning: null,
});

export function turnsOf(rig: Rig, y: Float64Array, out: Turns): Turns {
  const f = y[rig.front.at + rig.front.freedoms - 1] as number;
  const r = y[rig.rear.at + rig.rear.freedoms - 1] as number;
  const l = rig.leverSense * (y[rig.leverAt] as number);
  out.frontCos = cos(f);
  out.frontSin = sin(f);
  out.rearCos = cos(r);
  out.rearSin = sin(r);
  out.leverCos = cos(l);
  out.leverSin = sin(l);
  return out;
}

/**
 * Places a spot: anchor + shift + turn·(place + bending), where a spot on the parking lever is
 * first turned about the lever's pivot; the lever goes with the bent section at its pivot. Fills the motion of the spot in every freedom.
 */
export function place(rig: Rig, y: Float64Array, turns: Turns, spot: Spot, out: Placed): Placed {
  const shoe = spot.part === 'plate' ? null : spot.part === 'front' ? rig.front : rig.rear;
  if (out.shoe !== shoe || out.onLever !== spot.onLever) {
    out.dx.fill(0);
    out.dy.fill(0);
  }
  out.onLever = spot.onLever;
  out.turning = spot.turning;
  if (!shoe) {
    out.x = spot.x;
    out.y = spot.y;
    out.rx = 0;
    out.ry = 0;
    out.shoe = null;
    return out;
  }
  const c = spot.part === 'front' ? turns.frontCos : turns.rearCos;
  const s = spot.part === 'front' ? turns.frontSin : turns.rearSin;
  const at = shoe.at;
  let x = spot.x;
  let yy = spot.y;
  let leverX = 0;
  let leverY = 0;
  if (spot.onLever) {
    const qx = x - rig.pivot[0];
    const qy = yy - rig.pivot[1];
    leverX = turns.leverCos * qx - turns.leverSin * qy;
    leverY = turns.leverSin * qx + turns.leverCos * qy;
    x = rig.pivot[0] + leverX;
    yy = rig.pivot[1] + leverY;
  }
  if (spot.modes) {
    const { turning } = spot;
    for (let m = 0; m < shoe.modes; m++) {
      const z = y[at + shoe.freedoms + m] as number;
      let gx = spot.modes[2 * m] as number;
      let gy = spot.modes[2 * m + 1] as number;
      if (turning) {
        gx -= (turning[m] as number) * leverY;
        gy += (turning[m] as number) * leverX;
      }
      x += gx * z;
      yy += gy * z;
      out.dx[at + shoe.freedoms + m] = c * gx - s * gy;
      out.dy[at + shoe.freedoms + m] = s * gx + c * gy;
    }
  }
  const rx = c * x - s * yy;
  const ry = s * x + c * yy;
  const turnAt = at + shoe.freedoms - 1;
  out.dx[turnAt] = -ry;
  out.dy[turnAt] = rx;
  let ux = 0;
  let uy = 0;
  if (shoe.freedoms === 3) {
    ux = y[at] as number;
    uy = y[at + 1] as number;
    out.dx[at] = 1;
    out.dy[at + 1] = 1;
  }
  if (spot.onLever) {
    out.lx = c * leverX - s * leverY;
    out.ly = s * leverX + c * leverY;
    out.dx[rig.leverAt] = -rig.leverSense * out.ly;
    out.dy[rig.leverAt] = rig.leverSense * out.lx;
  }
  out.rx = rx;
  out.ry = ry;
  out.shoe = shoe;
  out.x = shoe.shoe.anchor.at[0] + ux + rx;
  out.y = shoe.shoe.anchor.at[1] + uy + ry;
  return out;
}
