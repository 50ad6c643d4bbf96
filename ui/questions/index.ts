import { questionsOne } from './list-one.ts';
import { questionsTwo } from './list-two.ts';
import type { Question } from './types.ts';

/** All questions, as they stand on the page. */
export const questions: readonly Question[] = [...questionsOne, ...questionsTwo];
