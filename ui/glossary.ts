import { glossary as said } from '../sim/words/en.ts';

/**
 * Words of the trade, each with one sentence, and where British and American workshops say it otherwise
 * both words (general knowledge of the trade, not checked against a list).
 */
type Id = keyof typeof said.terms;
export type Term = (typeof said.terms)[Id] & {
  /** The same in every language. */
  readonly id: Id;
};

export type Land = 'British' | 'American';

export const terms: readonly Term[] = (Object.keys(said.terms) as Id[]).map((id) => ({
  id,
  ...said.terms[id],
}));

/** Do two lands have different words in the page's language? */
export const hasPairs = terms.some(({ pair }) => pair);

/** Both words, the one of the chosen land first. */
export const named = ({ pair }: Term, first: Land): string => {
  if (!pair) return '';
  const [british, american] = pair;
  return first === 'British'
    ? said.britishAmerican(british, american)
    : said.americanBritish(american, british);
};

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const byForm: readonly (readonly [form: string, term: Term])[] = terms
  .flatMap((term) => [term.word, ...(term.forms ?? [])].map((form) => [form, term] as const))
  .sort((a, b) => b[0].length - a[0].length);

const pattern = new RegExp(
  `(?<![\\p{L}-])(?:${byForm.map(([form]) => escaped(form)).join('|')})(?![\\p{L}-])`,
  'giu',
);

/** A word of the trade in a text: where it begins, how long it is, and which. */
export interface Found {
  readonly at: number;
  readonly length: number;
  readonly term: Term;
}

/** Words of the trade in a text, each at its first place only; the longest form wins. */
export function wordsIn(text: string): Found[] {
  const seen: Found[] = [];
  for (const match of text.matchAll(pattern)) {
    const term = byForm.find(([form]) => form.toLowerCase() === match[0].toLowerCase())?.[1];
    if (term && !seen.some((f) => f.term === term))
      seen.push({ at: match.index, length: match[0].length, term });
  }
  return seen;
}
