import { keepQuestions } from './kept.ts';
import { questionsOne } from './list-one.ts';
import { questionsThree } from './list-three.ts';
import { questionsTwo } from './list-two.ts';
import type { Question } from './types.ts';

const all: readonly Question[] = [...questionsOne, ...questionsTwo, ...questionsThree];
const groups = [...new Set(all.map((q) => q.group))];

/** All questions, as they stand on the page: group by group. */
export const questions: readonly Question[] = groups.flatMap((g) =>
  all.filter((q) => q.group === g).sort((a, b) => (a.id < b.id ? -1 : 1)),
);
keepQuestions(questions);
