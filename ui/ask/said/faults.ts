import type { FaultId } from '../../../sim/index.ts';
import { askSaidFaults as words } from '../../../sim/words/en.ts';

/** What people say who have this fault, each line as it would be typed. */
export const faultsSaid: Readonly<Record<FaultId, readonly string[]>> = words.faultsSaid;
