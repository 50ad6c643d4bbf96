import type { FaultId } from '../index.ts';
import { workshopFaultNames as words } from '../words/en.ts';

/** What each fault is called, apart from all that is said of it: titles and the way back need no more. */
export const faultNames: Readonly<Record<FaultId, string>> = words.faultNames;

/** All faults, in the order of their groups. */
export const faultIds = Object.keys(faultNames) as readonly FaultId[];

export const isFault = (id: string): id is FaultId => Object.hasOwn(faultNames, id);
