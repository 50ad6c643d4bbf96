import { rest } from '../balance/balance.ts';
import { drumRadiusNow } from '../balance/dress.ts';
import type { Instant, ShoePose } from '../balance/instant.ts';
import { placePoint, poseOf, turnIn } from '../balance/place.ts';
import { makeRestRig, seatsApart, turnPair } from '../balance/rest.ts';
import { createRig, type Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Lining, Point, Side } from '../brake/types.ts';
import { cos, sin } from '../math/trig.ts';

/**
 * The wear lip: linings wear the bore larger and leave the drum's edge as it was. At rest a lining
 * that stands outside the edge is caught by it. With h the lip's height and g the gap of lining to
 * bore, both radial at the same angle, the lining stands outside the edge by
 *
 *   overlap = (bore − g) − (bore − h) = h − g,
 *
 * wherever the drum's centre is and however oval it has gone, since bore and edge go together.
 * Negative: so much in hand. Plane geometry; g is the gap of the solved rest pose, worn shape and
 * all. Where the lining's edge is cut back at its ends nothing can catch.
 */
export interface Overlap {
  /** mm at the ends of the arc that can catch, and at its middle. */
  readonly toe: number;
  readonly centre: number;
  readonly heel: number;
  /** Largest over the arc that can catch, mm, and the angle where it is, rad (reference pose). */
  readonly greatest: number;
  readonly at: number;
  /** Along the arc: angle, rad, and overlap, mm; the first and last are the ends that can catch. */
  readonly angle: Float64Array;
  readonly overlap: Float64Array;
  /** Face of the edge that bears on the lip, mm²: overlap × arc, where there is overlap. */
  readonly area: number;
}

export interface LipFit {
  /** Height of the lip, mm; 0 on a drum that is not worn. */
  readonly height: number;
  readonly front: Overlap;
  readonly rear: Overlap;
  /** The worse of the two shoes, mm. */
  readonly toe: number;
  readonly centre: number;
  readonly heel: number;
  readonly greatest: number;
}

/** Edge radius now, mm: an unworn ring that grows by heat as the bore does. */
export function lipRadiusNow(rig: Rig, state: BrakeState): number {
  return (rig.brake.drum.lipRadius * drumRadiusNow(rig, state)) / state.drumRadius;
}

/** Height of the lip over the bore, mm. */
export function lipHeight(rig: Rig, state: BrakeState): number {
  return Math.max(0, drumRadiusNow(rig, state) - lipRadiusNow(rig, state));
}

/** Value at an angle, straight on between the elements and past the outer ones. */
export function along(values: Float64Array, angles: Float64Array, angle: number): number {
  const n = values.length;
  const step = ((angles[n - 1] as number) - (angles[0] as number)) / (n - 1);
  const at = (angle - (angles[0] as number)) / step;
  const i = Math.max(0, Math.min(n - 2, Math.floor(at)));
  const low = values[i] as number;
  return low + ((values[i + 1] as number) - low) * (at - i);
}

const square = (x: number): number => (x > 0 ? x * x : 0);

function overlapOf(
  lining: Lining,
  side: Side,
  height: number,
  radius: number,
  gap: Float64Array,
  angles: Float64Array,
): Overlap {
  const from = lining.from + lining.cutEdgeArc;
  const to = lining.to - lining.cutEdgeArc;
  const inside = Array.from(angles).filter((a) => a > from && a < to);
  const angle = Float64Array.from([from, ...inside, to]);
  const overlap = angle.map((a) => height - along(gap, angles, a));
  let greatest = Number.NEGATIVE_INFINITY;
  let where = from;
  let area = 0;
  for (let i = 0; i < angle.length; i++) {
    const o = overlap[i] as number;
    if (o > greatest) {
      greatest = o;
      where = angle[i] as number;
    }
    if (i === 0) continue;
    const step = o - (overlap[i - 1] as number);
    const arc = radius * ((angle[i] as number) - (angle[i - 1] as number));
    // A straight piece from o − step to o: its part above nothing.
    area += arc * (step === 0 ? Math.max(0, o) : (square(o) - square(o - step)) / (2 * step));
  }
  const first = overlap[0] as number;
  const last = overlap[overlap.length - 1] as number;
  return {
    toe: side === 'front' ? first : last,
    centre: height - along(gap, angles, (lining.from + lining.to) / 2),
    heel: side === 'front' ? last : first,
    greatest,
    at: where,
    angle,
    overlap,
    area,
  };
}

/** Gap of each element after the shoe has turned on by `more`, mm: the face goes out, the gap shrinks. */
function turnedGap(
  rig: Rig,
  side: Side,
  state: BrakeState,
  i: Instant,
  more: number,
): Float64Array {
  const { gap, pose, angle } = i.shoes[side];
  if (more === 0) return gap;
  const { bed, shoe } = rig[side];
  const turned: ShoePose = { ...pose, phi: pose.phi + more };
  return gap.map((g, e) => {
    const r = (bed.face[e] as number) - (state.wear[side][e] as number);
    const face: Point = [r * cos(angle[e] as number), r * sin(angle[e] as number)];
    const [x0, y0] = placePoint(shoe, pose, face);
    const [x1, y1] = placePoint(shoe, turned, face);
    return g + Math.sqrt(x0 * x0 + y0 * y0) - Math.sqrt(x1 * x1 + y1 * y1);
  });
}

/**
 * Turns by which the pair stands aside on its strut. Both shoes turn about their heels, front outward
 * and rear inward, so that the strut's seats stay as far apart as they are. The pair stands `aside` mm
 * towards the front when half the difference of the centre overlaps is that.
 */
function asideTurns(rig: Rig, state: BrakeState, i: Instant, aside: number): Record<Side, number> {
  if (aside === 0) return { front: 0, rear: 0 };
  const on = makeRestRig(rig);
  const pose = poseOf(rig, i);
  const more = (side: Side): number => turnIn(rig[side], pose) - i.shoes[side].pose.phi;
  const middle = (side: Side): number => {
    const { lining } = rig[side].shoe;
    const gap = turnedGap(rig, side, state, i, more(side));
    return along(gap, i.shoes[side].angle, (lining.from + lining.to) / 2);
  };
  const stands = (): number => (middle('rear') - middle('front')) / 2;
  const aim = stands() + aside;
  turnPair(on, pose, seatsApart(on, pose), () => stands() - aim);
  return { front: more('front'), rear: more('rear') };
}

const rigids = new WeakMap<Rig, Rig>();

/** The same brake with a strut that nothing shortens. */
function rigid(rig: Rig): Rig {
  if (rig.strutGive === 0) return rig;
  const made = rigids.get(rig) ?? createRig(rig.brake, { ...rig.options, strutGive: 0 });
  rigids.set(rig, made);
  return made;
}

/**
 * How linings and lip stand to each other at rest, by the size that the shoes have on their strut: where a
 * drum squeezes them they are smaller, as long as it is on, and no nearer to coming off.
 *
 * @param aside how far the pair of shoes stands off centre towards the front shoe, mm at the linings' middle
 */
export function lipFit(given: Rig, state: BrakeState, aside = 0): LipFit {
  const rig = rigid(given);
  const i = rest(rig, state);
  const height = lipHeight(rig, state);
  const turns = asideTurns(rig, state, i, aside);
  const of = (side: Side): Overlap =>
    overlapOf(
      rig[side].shoe.lining,
      side,
      height,
      i.drumRadius,
      turnedGap(rig, side, state, i, turns[side]),
      i.shoes[side].angle,
    );
  const front = of('front');
  const rear = of('rear');
  return {
    height,
    front,
    rear,
    toe: Math.max(front.toe, rear.toe),
    centre: Math.max(front.centre, rear.centre),
    heel: Math.max(front.heel, rear.heel),
    greatest: Math.max(front.greatest, rear.greatest),
  };
}

/** Lining left at the ends of the arc that can catch and at its middle, mm. */
export function liningAt(
  rig: Rig,
  state: BrakeState,
  side: Side,
): Pick<Overlap, 'toe' | 'centre' | 'heel'> {
  const { bed, shoe } = rig[side];
  const { from, to, cutEdgeArc } = shoe.lining;
  const left = bed.thickness.map((t, e) => t - (state.wear[side][e] as number));
  const first = along(left, bed.angle, from + cutEdgeArc);
  const last = along(left, bed.angle, to - cutEdgeArc);
  const [toe, heel] = side === 'front' ? [first, last] : [last, first];
  return { toe, centre: along(left, bed.angle, (from + to) / 2), heel };
}

/** One line of the table of teeth: overlaps after so many teeth back, mm. */
export interface TeethRow {
  readonly back: number;
  readonly toe: number;
  readonly centre: number;
  readonly heel: number;
  readonly greatest: number;
}

export interface BackOff {
  /** Teeth to back off until the drum passes; null when even tooth 0 does not clear the lip. */
  readonly teeth: number | null;
  /** From the present tooth to the one that clears, or to tooth 0. */
  readonly rows: readonly TeethRow[];
}

/** Steps the adjuster back tooth by tooth and solves the rest pose anew, until nothing overlaps. */
export function teethToBackOff(rig: Rig, state: BrakeState, aside = 0): BackOff {
  const rows: TeethRow[] = [];
  for (let back = 0; back <= state.tooth; back++) {
    const { toe, centre, heel, greatest } = lipFit(
      rig,
      { ...state, tooth: state.tooth - back },
      aside,
    );
    rows.push({ back, toe, centre, heel, greatest });
    if (greatest <= 0) return { teeth: back, rows };
  }
  return { teeth: null, rows };
}
