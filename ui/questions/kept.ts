import type { Question } from './types.ts';

/**
 * The questions, once their list is loaded (`index.ts` puts them here): the page begins without them,
 * and what speaks of one finds it here.
 */
const byId = new Map<string, Question>();

export function keepQuestions(all: readonly Question[]): void {
  for (const q of all) byId.set(q.id, q);
}

/** Undefined for one that there is not, and before the list is loaded. */
export const questionOf = (id: string | null): Question | undefined =>
  id === null ? undefined : byId.get(id);
