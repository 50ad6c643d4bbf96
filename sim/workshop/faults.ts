import { type FaultId, faultChanges } from '../index.ts';
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
  {
    name: 'Step too coarse for the gap',
    because:
      'the tooth belongs to the brake: choose one with finer teeth; on a drum that is not true it is shown as Drum oval',
  },
  {
    name: 'Bell-mouthed or tapered drum',
    because: 'the bore changes along the axle, and this view looks along it',
  },
  {
    name: 'Hold-down lost',
    because: 'the shoe tilts out of this plane: the layer Edge-on shows it',
  },
  {
    name: 'Lining loose on its table',
    because: 'a loose lining wedges anywhere; here linings are fast to their shoes',
  },
  {
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
