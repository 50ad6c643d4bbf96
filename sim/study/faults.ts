import { createRig } from '../balance/rig.ts';
import type { Axle, Wheel } from './checks.ts';
import type { Fault, NotShown } from './fault-types.ts';
import { adjusterFaults } from './faults-adjuster.ts';
import { cableFaults } from './faults-cable.ts';
import { drumFaults } from './faults-drum.ts';
import { frictionFaults } from './faults-friction.ts';
import { pistonFaults } from './faults-pistons.ts';

/** Every fault that acts in this plane. */
export const faults: readonly Fault[] = [
  ...adjusterFaults,
  ...cableFaults,
  ...pistonFaults,
  ...frictionFaults,
  ...drumFaults,
];

/** The rest of the table. */
export const notShown: readonly NotShown[] = [
  {
    row: 5,
    name: 'Step too coarse for the gap',
    because:
      'the tooth belongs to the brake: choose one with finer teeth; on a drum that is not true it is shown as Drum oval',
  },
  {
    row: 26,
    name: 'Bell-mouthed or tapered drum',
    because: 'the bore changes along the axle, and this view looks along it',
  },
  {
    row: 30,
    name: 'Hold-down lost',
    because: 'the shoe tilts out of this plane: the layer Edge-on shows it',
  },
  {
    row: 34,
    name: 'Lining loose on its table',
    because: 'a loose lining wedges anywhere; here linings are fast to their shoes',
  },
  {
    row: 36,
    name: 'Pin or abutment worn',
    because: 'pins have no play here; the single clunk after a change of direction is its sign',
  },
];

/** A fault by its id; throws on an unknown one. */
export function faultOf(id: string): Fault {
  const found = faults.find((f) => f.id === id);
  if (!found) throw new Error(`No fault "${id}"`);
  return found;
}

/** A wheel with a fault put in. */
export function withFault(wheel: Wheel, fault: Fault): Wheel {
  const { brake, state, held, wet } = fault.apply(wheel.rig, wheel.state);
  return {
    rig: brake ? createRig(brake, wheel.rig.options) : wheel.rig,
    state,
    ...(held ? { held } : {}),
    ...(wet ? { wet } : {}),
  };
}

/** An axle of two sound wheels with a fault put in: on the right one, or on both. */
export function axleWith(sound: Wheel, fault: Fault | null): Axle {
  if (!fault) return { left: sound, right: sound };
  const faulty = withFault(sound, fault);
  return { left: fault.wheels === 'both' ? faulty : sound, right: faulty };
}
