import { ELEMENTS } from '../brake/state.ts';
import type { Brake, Point, Shoe, Side } from '../brake/types.ts';
import { type Bed, buildBed } from '../contact/bed.ts';
import { type BedModes, makeRub, type Rub } from '../contact/rub.ts';

/**
 * A point of a shoe that carries a concentrated force: its place from the anchor in the shoe's
 * frame, and how the bending modes move it (null on a rigid shoe).
 */
export interface Spot {
  readonly part: 'front' | 'rear' | 'plate';
  readonly x: number;
  readonly y: number;
  /** Rides on the parking lever: turns with it about the lever's pivot. */
  readonly onLever: boolean;
  /** Interleaved (x, y) displacement of this point by unit mode, shoe frame; null when it does not bend. */
  readonly modes: Float64Array | null;
}

export interface ShoeRig {
  readonly shoe: Shoe;
  readonly side: Side;
  /** Outward along x: -1 front, +1 rear. */
  readonly outward: -1 | 1;
  /** Turning sense that moves the toe outward: +1 front, -1 rear. */
  readonly opening: -1 | 1;
  readonly freedoms: 1 | 3;
  readonly modes: number;
  readonly n: number;
  /** First index of this shoe in the vector of all freedoms. */
  readonly at: number;
  readonly bed: Bed;
  readonly bedModes: BedModes | null;
  readonly toe: Spot;
  readonly seat: Spot;
  readonly hold: Spot;
  readonly rub: Rub;
}

export interface Rig {
  readonly brake: Brake;
  readonly options: RigOptions;
  readonly front: ShoeRig;
  readonly rear: ShoeRig;
  readonly springs: readonly { readonly a: Spot; readonly b: Spot }[];
  readonly hook: Spot;
  /** Where the cable's pull comes from: its guide, or far away along a given direction. */
  readonly guide: Spot;
  /** Lever pivot from the rear anchor, mm. */
  readonly pivot: Point;
  /** Sense of the lever's turn under the cable's pull: +1 counter-clockwise, -1 clockwise. */
  readonly leverSense: -1 | 1;
  /** Hook travel along the pull for a unit turn of the lever, mm/rad. */
  readonly hookArm: number;
  /** All freedoms: front, rear, lever turn. */
  readonly n: number;
  readonly leverAt: number;
}

const spot = (shoe: Shoe, point: Point, onLever = false): Spot => ({
  part: shoe.side,
  x: point[0] - shoe.anchor.at[0],
  y: point[1] - shoe.anchor.at[1],
  onLever,
  modes: null,
});

function shoeRig(brake: Brake, side: Side, at: number, elements: number): ShoeRig {
  const shoe = brake.shoes[side];
  const freedoms = shoe.anchor.kind === 'pin' ? 1 : 3;
  return {
    shoe,
    side,
    outward: side === 'front' ? -1 : 1,
    opening: side === 'front' ? 1 : -1,
    freedoms,
    modes: 0,
    n: freedoms,
    at,
    bed: buildBed(shoe.lining, brake.drum, shoe.anchor.at, elements),
    bedModes: null,
    toe: spot(shoe, shoe.toe),
    seat: spot(shoe, shoe.strutSeat, side === 'rear'),
    hold: spot(shoe, shoe.holdDown.at),
    rub: makeRub(elements),
  };
}

export interface RigOptions {
  /** Elements of each lining; the state's wear arrays must be as long. */
  readonly elements?: number;
}

/** Builds what the solvers need once for a brake. */
export function createRig(brake: Brake, options: RigOptions = {}): Rig {
  const elements = options.elements ?? ELEMENTS;
  const front = shoeRig(brake, 'front', 0, elements);
  const rear = shoeRig(brake, 'rear', front.n, elements);
  const on = (end: { on: Side | 'plate'; at: Point }): Spot =>
    end.on === 'plate'
      ? { part: 'plate', x: end.at[0], y: end.at[1], onLever: false, modes: null }
      : spot(brake.shoes[end.on], end.at);
  const lever = brake.parkingLever;
  const armX = lever.hook[0] - lever.pivot[0];
  const armY = lever.hook[1] - lever.pivot[1];
  // Hook travel along the pull for a counter-clockwise turn: pull · (ẑ × arm).
  const along = -armY * lever.pull[0] + armX * lever.pull[1];
  return {
    brake,
    options,
    front,
    rear,
    springs: brake.springs.map((s) => ({ a: on(s.ends[0]), b: on(s.ends[1]) })),
    hook: spot(brake.shoes.rear, lever.hook, true),
    guide: {
      part: 'plate',
      x: lever.pullFrom[0],
      y: lever.pullFrom[1],
      onLever: false,
      modes: null,
    },
    pivot: [
      lever.pivot[0] - brake.shoes.rear.anchor.at[0],
      lever.pivot[1] - brake.shoes.rear.anchor.at[1],
    ],
    leverSense: along >= 0 ? 1 : -1,
    hookArm: Math.abs(along),
    n: front.n + rear.n + 1,
    leverAt: front.n + rear.n,
  };
}
