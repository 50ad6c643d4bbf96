import { balance } from '../balance/balance.ts';
import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import { cos } from '../math/trig.ts';
import { BAR } from '../units/units.ts';

/** New linings as one holds them in the hand. */
export interface NewLining {
  /** mm */
  readonly thickness: number;
  /** Radius to which the rubbing face is ground, mm. */
  readonly groundRadius: number;
}

/** How a new lining lies in a bore. */
export interface Fit {
  /** Where it bears. */
  readonly where: 'all along' | 'crown' | 'ends' | 'toe' | 'heel';
  /** Greatest gap left, mm. */
  readonly gap: number;
  /** Gap left at each element from toe to heel, mm; 0 where it bears. */
  readonly along: Float64Array;
}

/** A gap up to this is no gap: a feeler finds none, and the first stops wear it off, mm. */
const MATCH = 0.01;
/** The press by which a fit is judged: 40 bar, the drum standing, so that friction takes no side. */
const PRESS = { pressure: 40 * BAR, turning: 0 } as const;

/**
 * How the front lining lies in a bore. The radii alone do not tell: a pinned shoe swings out about its
 * pin, so a lining of the bore's own radius that is thinner than what the pin was placed for comes to
 * it toe first, while a shoe on an abutment shifts until it lies. So the balance is asked: the brake
 * with the lining on, its strut short, pressed.
 *
 * @param bore inner radius of the drum, mm
 */
export function fitOf(rig: Rig, lining: NewLining, bore: number): Fit {
  const { gap } = balance(rig, withNewLinings(rig, lining, bore, 0), PRESS).shoes.front;
  const along = gap.map((g) => Math.max(0, g));
  const greatest = Math.max(...along);
  if (greatest <= MATCH) return { where: 'all along', gap: 0, along };
  const bears = (at: number): boolean => (gap[at] as number) <= 0;
  const [toe, heel] = [bears(0), bears(gap.length - 1)];
  const where = toe && heel ? 'ends' : toe ? 'toe' : heel ? 'heel' : 'crown';
  return { where, gap: greatest, along };
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
  const wear = { front: depth('front'), rear: depth('rear') };
  return { ...fresh, tooth, wear, wornBy: 'neither' };
}
