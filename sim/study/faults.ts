import { createRig } from '../balance/rig.ts';
import { adjusterKinds, type KindFault, kindLaws } from '../brake/kinds.ts';
import type { AdjusterKind } from '../brake/types.ts';
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

/** Faults that need a part which only some kinds of adjuster have. */
const partial: readonly KindFault[] = adjusterKinds.flatMap((kind) => kindLaws[kind].faults);

/** Whether a brake with such an adjuster can have a fault: no tooth of a wedge lets go. */
export function canFail(kind: AdjusterKind, id: FaultId): boolean {
  const needs: readonly FaultId[] = partial;
  const has: readonly FaultId[] = kindLaws[kind].faults;
  return !needs.includes(id) || has.includes(id);
}

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
