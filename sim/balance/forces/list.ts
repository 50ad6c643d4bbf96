import type { BrakeForce, Force, Rig, ShoeForce, ShoeRig } from '../types.ts';
import { Bending } from './bending.ts';
import { Cable } from './cable.ts';
import { Climb } from './climb.ts';
import { Hands } from './hands.ts';
import { Heel } from './heel.ts';
import { HoldDown } from './hold-down.ts';
import { Lining } from './lining.ts';
import { Piston } from './piston.ts';
import { Spring } from './spring.ts';
import { Stops } from './stops.ts';

/** Every force of the brake stands in one of these two lists, and nowhere else. Sums are made in this order. */
const onShoes: readonly ShoeForce[] = [
  (rig, shoe) => new Lining(rig, shoe),
  (rig, shoe) => (shoe.modes > 0 ? new Bending(rig, shoe) : null),
  (rig, shoe) => new Piston(rig, shoe),
  (rig, shoe) => new HoldDown(rig, shoe),
  (rig, shoe) => {
    const { anchor } = shoe.shoe;
    return anchor.kind === 'abutment' ? new Heel(rig, shoe, anchor) : null;
  },
];

const onBrake: readonly BrakeForce[] = [
  (rig) =>
    rig.brake.springs.flatMap((spring, i) => {
      const ends = rig.springs[i];
      return ends ? [new Spring(rig, spring, i, ends.a, ends.b)] : [];
    }),
  (rig) => [new Climb(rig)],
  (rig) => [new Cable(rig)],
  (rig) => [new Stops(rig)],
  (rig) => [new Hands(rig)],
];

/** The forces of a rig, each with its place in the memory. */
export function makeForces(rig: Rig): readonly Force[] {
  const of = (shoe: ShoeRig): readonly (Force | null)[] => onShoes.map((make) => make(rig, shoe));
  const own = [...of(rig.front), ...of(rig.rear), ...onBrake.flatMap((make) => make(rig))];
  const more = (rig.options.more ?? []).flatMap((make) => make(rig));
  let slot = 0;
  return [...own, ...more].flatMap((force) => {
    if (!force) return [];
    force.slot = slot;
    slot += force.remembers;
    return [force];
  });
}

/** Numbers that all of them remember. */
export const memorySize = (forces: readonly Force[]): number =>
  forces.reduce((sum, f) => sum + f.remembers, 0);

/** The forces of one kind, in the order of the list. */
export const ofKind = <F extends Force>(
  forces: readonly Force[],
  kind: new (...args: never[]) => F,
): readonly F[] => forces.filter((f): f is F => f instanceof kind);
