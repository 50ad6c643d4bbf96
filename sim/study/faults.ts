import { createRig } from '../balance/rig.ts';
import type { Axle, WheelBrake } from './checks.ts';
import type { FaultChange } from './fault-types.ts';
import { type AdjusterFault, adjusterFaults } from './faults-adjuster.ts';
import { type CableFault, cableFaults } from './faults-cable.ts';
import { type DrumFault, drumFaults } from './faults-drum.ts';
import { type FrictionFault, frictionFaults } from './faults-friction.ts';
import { type PistonFault, pistonFaults } from './faults-pistons.ts';

export type FaultId = AdjusterFault | CableFault | PistonFault | FrictionFault | DrumFault;

/** Every fault that acts in this plane. */
export const faultChanges: Readonly<Record<FaultId, FaultChange>> = {
  ...adjusterFaults,
  ...cableFaults,
  ...pistonFaults,
  ...frictionFaults,
  ...drumFaults,
};

/** A wheel with a fault put in. */
export function withFault(wheel: WheelBrake, fault: FaultChange): WheelBrake {
  const { brake, state, held, wet } = fault.apply(wheel.rig, wheel.state);
  return {
    rig: brake ? createRig(brake, wheel.rig.options) : wheel.rig,
    state,
    ...(held ? { held } : {}),
    ...(wet ? { wet } : {}),
  };
}

/** An axle of two sound wheels with a fault put in: on the right one, or on both. */
export function axleWith(sound: WheelBrake, fault: FaultChange | null): Axle {
  if (!fault) return { left: sound, right: sound };
  const faulty = withFault(sound, fault);
  return { left: fault.wheels === 'both' ? faulty : sound, right: faulty };
}
