import { askPatterns } from '../../sim/words/en.ts';

/** The word without its ending, by the language that is spoken. */
export const stem = (word: string): string => askPatterns.stem(word);
