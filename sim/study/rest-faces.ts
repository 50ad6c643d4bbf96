import { dress } from '../balance/dress.ts';
import { makePlaced, place, turnsOf } from '../balance/place.ts';
import { makeRestRig, seatsApart, turnPair } from '../balance/rest.ts';
import type { Rig } from '../balance/rig.ts';
import { MODE_PLACES } from '../brake/flex.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import type { WornBed } from '../contact/bed.ts';
import { along } from './lip.ts';

/** Distance of each lining's face from the drum axis with the drum away, mm, at the arc's places. */
export interface RestFace {
  readonly toe: number;
  readonly centre: number;
  readonly heel: number;
  /** Farthest of the arc that can catch a lip: without the ends that are cut back. */
  readonly most: number;
  readonly radius: Float64Array;
}

export type RestFaces = Readonly<Record<Side, RestFace>>;

/** How a bending shoe's modes move an element's face, (x, y) of each; null on a rigid one. */
function faceModes({ bed, modes }: WornBed, i: number): Float64Array | null {
  if (!modes) return null;
  const [ex, ey] = [bed.dirX[i] as number, bed.dirY[i] as number];
  const out = new Float64Array(2 * modes.count);
  for (let m = 0; m < modes.count; m++) {
    const gr = modes.face[2 * MODE_PLACES * i + m] as number;
    const gt = modes.face[(2 * i + 1) * MODE_PLACES + m] as number;
    out[2 * m] = gr * ex - gt * ey;
    out[2 * m + 1] = gr * ey + gt * ex;
  }
  return out;
}

function faceOf(rig: Rig, state: BrakeState, pose: Float64Array, side: Side): RestFace {
  const shoe = rig[side];
  const d = dress(rig, state);
  const worn = side === 'front' ? d.front : d.rear;
  const turns = { frontCos: 1, frontSin: 0, rearCos: 1, rearSin: 0, leverCos: 1, leverSin: 0 };
  turnsOf(rig, pose, turns);
  const { angle } = shoe.bed;
  const radius = new Float64Array(shoe.bed.count);
  const at = makePlaced(rig.n);
  for (let i = 0; i < radius.length; i++) {
    const modes = faceModes(worn, i);
    const spot = { ...shoe.hold, x: worn.x[i] as number, y: worn.y[i] as number, modes };
    const p = place(rig, pose, turns, spot, at);
    radius[i] = Math.sqrt(p.x * p.x + p.y * p.y);
  }
  const { lining } = shoe.shoe;
  const r = (a: number): number => along(radius, angle, a);
  const [toe, heel] = side === 'front' ? [lining.from, lining.to] : [lining.to, lining.from];
  const from = lining.from + lining.cutEdgeArc;
  const to = lining.to - lining.cutEdgeArc;
  let most = Math.max(r(from), r(to));
  for (let i = 0; i < radius.length; i++) {
    const a = angle[i] as number;
    if (a > from && a < to) most = Math.max(most, radius[i] as number);
  }
  return { toe: r(toe), centre: r((lining.from + lining.to) / 2), heel: r(heel), most, radius };
}

/**
 * Faces of both linings with the brake released and the drum off: on the strut, and either both
 * middles alike or the pair moved sideways on its pins, bent as it was. Moving it turns the front shoe
 * by a little and the rear one so that the strut's seats keep their distance.
 *
 * @param sideways how far the front lining's middle stands out beyond the central place, mm
 */
export function restFaces(rig: Rig, state: BrakeState, sideways = 0): RestFaces {
  const { restPose } = dress(rig, state);
  const pose = restPose.slice();
  if (sideways !== 0) shift(rig, state, pose, sideways);
  return { front: faceOf(rig, state, pose, 'front'), rear: faceOf(rig, state, pose, 'rear') };
}

/** Turns the pair until the front lining's middle stands farther out by `sideways`, strut clamped. */
function shift(rig: Rig, state: BrakeState, pose: Float64Array, sideways: number): void {
  const on = makeRestRig(rig);
  const centre = (): number => faceOf(rig, state, pose, 'front').centre;
  const aim = centre() + sideways;
  turnPair(on, pose, seatsApart(on, pose), () => centre() - aim);
}
