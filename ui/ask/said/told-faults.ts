import type { FaultId } from '../../../sim/index.ts';
import { askSaidToldFaults as words } from '../../../sim/words/en.ts';

/**
 * What is noticed of each fault, as it is told: by the pedal, the lever, the wheel in the hand, heat,
 * smell, noise, the rollers, the drum off, and what was done before. Written from what each fault shows.
 */
const told: Readonly<Record<FaultId, string>> = words.told;

/** Lines of a text, each without its margin. */
export const linesOf = (text: string): string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

export const toldOf = (id: FaultId): readonly string[] => linesOf(told[id]);
