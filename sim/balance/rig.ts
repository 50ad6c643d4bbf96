import { condense, type Flex, type Push } from '../brake/flex.ts';
import { ELEMENTS } from '../brake/state.ts';
import { strutGive } from '../brake/strut-path.ts';
import type { Brake, Point, Shoe, Side, SpringEnd } from '../brake/types.ts';
import { buildBed } from '../contact/bed.ts';
import { makeRub } from '../contact/rub.ts';
import type { Rig, RigOptions, ShoeRig, Spot } from './types.ts';

export type { Rig, RigOptions, ShoeRig } from './types.ts';

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
    flex,
    reach: flex ? flex.reach : new Float64Array(0),
    toe: spot(shoe.toe),
    seat: spot(shoe.strutSeat, side === 'rear'),
    webSeat: spot(shoe.strutSeat),
    hold: spot(shoe.holdDown.at),
    rub: makeRub(elements, freedoms + modes),
  };
  return { rig, spot };
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
    spotOn: (on, at) => (on === 'front' ? onFront(at) : onRear(at, on === 'lever')),
    guide: onPlate(lever.pullFrom),
    pivot: [
      lever.pivot[0] - brake.shoes.rear.anchor.at[0],
      lever.pivot[1] - brake.shoes.rear.anchor.at[1],
    ],
    leverSense: along >= 0 ? 1 : -1,
    hookArm: Math.abs(along),
    strutGive: options.strutGive ?? strutGive(brake, options.flexible === true),
    n: front.n + rear.n + 1,
    leverAt: front.n + rear.n,
  };
}
