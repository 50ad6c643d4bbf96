import type { Brake, BrakeState, Rig } from '../../../sim/index.ts';
import { read, rigOfBrake, standingOf } from '../../record/derive.ts';
import { brakes } from '../../scenes.ts';

/** The van that faults are shown on. */
export const VAN = { kind: 'scene', name: brakes[0].name } as const;

export const vanBrake = (): Brake => read(brakes[0]).brake;
export const vanRig = (): Rig => rigOfBrake(vanBrake());
export const vanState = (name: string): BrakeState => standingOf(vanBrake(), name);
