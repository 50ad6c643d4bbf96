import { wordsPage as words } from '../sim/words/en.ts';
import type { LifeTrouble } from './life-messages.ts';

/** Texts of the page, in one place. */
export const applyHint = words.applyHint;

/** Said in place of forces where no balance was found. */
export const lostText = words.lostText;

/** Why a run ended, where that is not what was asked for. */
export const ends = words.ends;

const troubles: Readonly<Record<LifeTrouble['kind'], string>> = words.troubles;

/** Why a life is not driven on, and that nothing is lost. */
export const lifeTrouble = ({ kind, message }: LifeTrouble): string =>
  words.whatWasDrivenIsKept(troubles[kind], message ? `(${message}) ` : '');
