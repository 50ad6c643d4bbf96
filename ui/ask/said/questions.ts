import { askSaidQuestions as texts } from '../../../sim/words/en.ts';
/** How people ask the questions, beside the question's own words. */
export const questionsSaid: Readonly<Record<string, readonly string[]>> = texts.questionsSaid;
