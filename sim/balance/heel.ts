import type { Anchor } from '../brake/types.ts';
import { type StickForce, stickForce } from '../contact/stick.ts';
import { cos, sin } from '../math/trig.ts';

/** Heel on its flat: normal and sticking stiffness, N/mm (stiff against a lining, soft enough for the step). */
export const HEEL_NORMAL = 1e5;
const HEEL_STICK = 2e4;

/** Force of the flat on the heel, its moment about the heel's centre, and the tangent over (x, y, turn). */
export interface HeelForce {
  x: number;
  y: number;
  moment: number;
  /** Where the friction's bristle holds after it, mm. */
  held: number;
  readonly tangent: Float64Array;
}

export const makeHeelForce = (): HeelForce => ({
  x: 0,
  y: 0,
  moment: 0,
  held: 0,
  tangent: new Float64Array(9),
});

const stick: StickForce = { force: 0, slope: 0, anchor: 0 };
const normalMotion = new Float64Array(3);
const slipMotion = new Float64Array(3);

/**
 * Round heel on its flat: pushes only, N = k·max(0, −u·n), with friction against the slip of its
 * lowest point, u·t − r·turn: an elastic bristle clamped at mu·N (the same law as in contact/).
 *
 * @param held where the bristle holds before, mm of slip
 */
export function heelForce(
  anchor: Extract<Anchor, { kind: 'abutment' }>,
  ux: number,
  uy: number,
  turn: number,
  held: number,
  out: HeelForce,
): void {
  const nx = cos(anchor.normal);
  const ny = sin(anchor.normal);
  const tx = -ny;
  const ty = nx;
  const depth = -(ux * nx + uy * ny);
  const push = HEEL_NORMAL * Math.max(0, depth);
  const slip = ux * tx + uy * ty - anchor.heelRadius * turn;
  stickForce(slip, held, HEEL_STICK, anchor.friction * push, stick);
  const f = stick.force;
  out.held = stick.anchor;
  out.x = push * nx + f * tx;
  out.y = push * ny + f * ty;
  out.moment = -f * anchor.heelRadius;
  const kn = depth > 0 ? HEEL_NORMAL : 0;
  // Slipping friction follows the normal force: df = sign(f)·mu·dN.
  const coupled = stick.slope === 0 && f !== 0 ? (f > 0 ? 1 : -1) * anchor.friction * kn : 0;
  normalMotion[0] = nx;
  normalMotion[1] = ny;
  normalMotion[2] = 0;
  slipMotion[0] = tx;
  slipMotion[1] = ty;
  slipMotion[2] = -anchor.heelRadius;
  for (let j = 0; j < 3; j++) {
    const nj = normalMotion[j] as number;
    const tj = slipMotion[j] as number;
    for (let l = 0; l < 3; l++) {
      const nl = normalMotion[l] as number;
      out.tangent[3 * j + l] =
        -kn * nj * nl + stick.slope * tj * (slipMotion[l] as number) - coupled * tj * nl;
    }
  }
}
