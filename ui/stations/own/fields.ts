import type { FoundKey, OwnKey } from '../../../sim/index.ts';
import { ownFields as words } from '../../../sim/words/en.ts';

/**
 * Names of what can be measured on one's own brake. Names alone, since the record speaks of them: how each
 * is measured comes with the station (`measures.ts`, `found-fields.ts`).
 */
export const ownNames: Readonly<Record<OwnKey, string>> = words.ownNames;

/** What is measured on one's own brake as it is now: names alone, since the record speaks of them. */
export const foundNames: Readonly<Record<FoundKey, string>> = words.foundNames;
