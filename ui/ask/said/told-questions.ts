import { askSaidToldQuestions as words } from '../../../sim/words/en.ts';
/** More of how people ask the questions, by their ids, each line as it would be said. */
export const toldQuestions: Readonly<Record<string, string>> = words.toldQuestions;
