import { createRig, type Rig } from '../../sim/index.ts';
import { type Arguments, choiceOf, UsageError } from './args.ts';

/** The brake with one of its two circuits failed, as told; as its scene has it otherwise. */
export function withCircuit(args: Arguments, rig: Rig): Rig {
  if (!args.options.has('failed')) return rig;
  const failed = choiceOf(args, 'failed', ['none', 'this', 'other'], 'none');
  const { hydraulics } = rig.brake;
  const { circuits } = hydraulics;
  if (!circuits) {
    throw new UsageError('--failed', 'a scene without circuits', 'one whose hydraulics has them');
  }
  const brake = { ...rig.brake, hydraulics: { ...hydraulics, circuits: { ...circuits, failed } } };
  return createRig(brake, rig.options);
}
