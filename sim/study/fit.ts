import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import type { Lining } from '../brake/types.ts';
import { cos } from '../math/trig.ts';

/** New linings as one holds them in the hand. */
export interface NewLining {
  /** mm */
  readonly thickness: number;
  /** Radius to which the rubbing face is ground, mm. */
  readonly groundRadius: number;
}

/** How a lining of one radius lies in a bore of another. */
export interface Fit {
  /** Where it touches first as it is pressed out along its middle. */
  readonly where: 'all along' | 'crown' | 'ends';
  /** Gap left then at the other place (ends or crown), mm. */
  readonly gap: number;
}

/** Radii that differ by no more than this are taken as a match, mm: a hundredth on the diameter. */
const MATCH = 0.005;

/**
 * A lining ground to r_g, pressed out along its middle into a bore of radius R > 0; β its half arc.
 * Its circle's centre then stands off the drum's by c along the middle, and a ray at angle d meets
 * the face at c·cos d + sqrt(r_g² − c²·sin² d) ≈ r_g + c·cos d (plane trigonometry; the square of
 * c/r_g left out, under 1e-4 of a millimetre).
 * r_g < R: the middle touches, c = R − r_g, and the ends are off by (R − r_g)(1 − cos β): crown.
 * r_g > R: the ends touch, c·cos β = R − r_g, and the middle is off by (r_g − R)(1/cos β − 1).
 */
export function fitOf(lining: Pick<Lining, 'from' | 'to'>, ground: number, bore: number): Fit {
  const half = (lining.to - lining.from) / 2;
  const off = bore - ground;
  if (Math.abs(off) <= MATCH) return { where: 'all along', gap: 0 };
  if (off > 0) return { where: 'crown', gap: off * (1 - cos(half)) };
  return { where: 'ends', gap: -off * (1 / cos(half) - 1) };
}

/**
 * The brake with new linings on its shoes, as a state. Depth worn is counted from the scene's own new
 * lining, so a thicker one stands out by a negative depth, and one ground to another radius by a
 * depth that changes along the arc: its circle's middle stands at R_new + t − t_new, so its centre is
 * off the reference axis by c = R_new + t − t_new − r_g along the middle (face as in contact/bed.ts).
 */
export function withNewLinings(
  rig: Rig,
  lining: NewLining,
  drumRadius: number,
  tooth: number,
): BrakeState {
  const fresh = freshState(rig.brake, drumRadius, rig.front.bed.count);
  const ground = lining.groundRadius;
  const depth = (side: 'front' | 'rear'): Float64Array => {
    const { bed, shoe } = rig[side];
    const own = shoe.lining;
    const middle = (own.from + own.to) / 2;
    const off = rig.brake.drum.radiusNew + lining.thickness - own.thicknessNew - ground;
    return fresh.wear[side].map((_, i) => {
      const c = cos((bed.angle[i] as number) - middle);
      const face = c * off + Math.sqrt(ground * ground - off * off * (1 - c * c));
      return (bed.face[i] as number) - face;
    });
  };
  return { ...fresh, tooth, wear: { front: depth('front'), rear: depth('rear') } };
}
