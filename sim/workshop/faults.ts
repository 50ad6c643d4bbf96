import { type FaultId, faultChanges } from '../index.ts';
import { workshopFaults as texts } from '../words/en.ts';
import { faultNames } from './fault-names.ts';
import type { Fault, FaultGroup, FaultWords, NotShown } from './fault-types.ts';
import { adjusterFaults } from './faults-adjuster.ts';
import { cableFaults } from './faults-cable.ts';
import { drumFaults } from './faults-drum.ts';
import { frictionFaults } from './faults-friction.ts';
import { pistonFaults } from './faults-pistons.ts';

/** Words and changes of one group, put together. */
const group = <Id extends FaultId>(
  name: FaultGroup,
  words: Readonly<Record<Id, FaultWords>>,
): Fault[] =>
  (Object.keys(words) as Id[]).map((id) => ({
    id,
    name: faultNames[id],
    group: name,
    ...faultChanges[id],
    ...words[id],
  }));

/** Every fault that acts in this plane. */
export const faults: readonly Fault[] = [
  ...group('Adjuster', adjusterFaults),
  ...group('Cable and lever', cableFaults),
  ...group('Springs and pistons', pistonFaults),
  ...group('Friction', frictionFaults),
  ...group('Drum', drumFaults),
];

/** What else goes wrong with such a brake. */
export const notShown: readonly NotShown[] = [
  { id: 'step too coarse', ...texts.stepTooCoarse },
  { id: 'bell mouth', ...texts.bellMouthedOrTapered },
  { id: 'hold-down lost', ...texts.holdDownLost },
  { id: 'lining loose', ...texts.liningLooseOn },
  { id: 'pin or abutment', ...texts.pinOrAbutment },
];

/** A fault by its id; throws on an unknown one. */
export function faultOf(id: string): Fault {
  const found = faults.find((f) => f.id === id);
  if (!found) throw new Error(`No fault "${id}"`);
  return found;
}
