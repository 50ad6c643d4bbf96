import { condense, type Flex, type Push } from '../brake/flex.ts';
import { ELEMENTS } from '../brake/state.ts';
import type { Brake, Point, Shoe, Side, SpringEnd } from '../brake/types.ts';
import { type Bed, buildBed } from '../contact/bed.ts';
import { makeRub, type Rub } from '../contact/rub.ts';

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
  /** Turn of the shoe's section at the lever's pivot by unit mode, which carries the lever along. */
  readonly turning: Float64Array | null;
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
  /** Greatest displacement by a unit of each mode, mm/√(N·mm): brings modes to a scale of mm and N. */
  readonly reach: Float64Array;
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

type SpotOf = (point: Point, onLever?: boolean) => Spot;

/** Spots of a shoe. What rides on the lever goes with the section at the lever's pivot. */
const spotsOf =
  (shoe: Shoe, flex: Flex | null, pivot: Point): SpotOf =>
  (point, onLever = false) => ({
    part: shoe.side,
    x: point[0] - shoe.anchor.at[0],
    y: point[1] - shoe.anchor.at[1],
    onLever,
    modes: flex?.move(onLever ? pivot : point) ?? null,
    turning: onLever ? (flex?.turn(pivot) ?? null) : null,
  });

/** Every single force that bends a shoe: piston, and strut, which pushes the rear one at the lever's pivot. */
function pushesOn(brake: Brake, side: Side): readonly Push[] {
  const { front, rear } = brake.shoes;
  const dx = rear.strutSeat[0] - front.strutSeat[0];
  const dy = rear.strutSeat[1] - front.strutSeat[1];
  const length = Math.sqrt(dx * dx + dy * dy);
  return [
    { at: brake.shoes[side].toe, along: [1, 0] },
    {
      at: side === 'rear' ? brake.parkingLever.pivot : front.strutSeat,
      along: [dx / length, dy / length],
    },
  ];
}

function shoeRig(
  brake: Brake,
  side: Side,
  at: number,
  options: RigOptions,
): { readonly rig: ShoeRig; readonly spot: SpotOf } {
  const shoe = brake.shoes[side];
  const elements = options.elements ?? ELEMENTS;
  const freedoms = shoe.anchor.kind === 'pin' ? 1 : 3;
  const bed = buildBed(shoe.lining, brake.drum, shoe.anchor.at, elements);
  const flex = options.flexible
    ? condense(shoe, brake.drum.radiusNew, bed.angle, bed.face, pushesOn(brake, side))
    : null;
  const spot = spotsOf(shoe, flex, brake.parkingLever.pivot);
  const modes = flex ? flex.bed.count : 0;
  const rig: ShoeRig = {
    shoe,
    side,
    outward: side === 'front' ? -1 : 1,
    opening: side === 'front' ? 1 : -1,
    freedoms,
    modes,
    n: freedoms + modes,
    at,
    bed: { ...bed, modes: flex?.bed ?? null },
    reach: flex ? flex.reach : new Float64Array(0),
    toe: spot(shoe.toe),
    seat: spot(shoe.strutSeat, side === 'rear'),
    hold: spot(shoe.holdDown.at),
    rub: makeRub(elements, freedoms + modes),
  };
  return { rig, spot };
}

export interface RigOptions {
  /** Elements of each lining; the state's wear arrays must be as long. */
  readonly elements?: number;
  /** Steel shoes that bend (see brake/flex.ts); rigid when left out. Wear of one kind does not suit the other. */
  readonly flexible?: boolean;
}

const onPlate = (at: Point): Spot => ({
  part: 'plate',
  x: at[0],
  y: at[1],
  onLever: false,
  modes: null,
  turning: null,
});

/** Builds what the solvers need once for a brake. */
export function createRig(brake: Brake, options: RigOptions = {}): Rig {
  const { rig: front, spot: onFront } = shoeRig(brake, 'front', 0, options);
  const { rig: rear, spot: onRear } = shoeRig(brake, 'rear', front.n, options);
  const on = (end: SpringEnd): Spot =>
    end.on === 'plate' ? onPlate(end.at) : (end.on === 'front' ? onFront : onRear)(end.at);
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
    hook: onRear(lever.hook, true),
    guide: onPlate(lever.pullFrom),
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
