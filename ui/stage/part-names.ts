import { stagePartNames as words } from '../../sim/words/en.ts';
/** The parts as the trade names them, with one sentence on what each does. */
export const partNames = words.partNames;

export type PartId = keyof typeof partNames;

export const nameOf = (part: PartId): string => partNames[part][0];
