import { cautions as words } from '../sim/words/en.ts';
/**
 * Cautions, in view at the hazard and never a dialog. Two sentences at most. Wording of the teaching
 * content; every station takes its own from here.
 */
export const cautions = words.cautions;
