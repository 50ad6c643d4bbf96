import { ask } from '../../ask/rank.ts';
import { questions } from '../../questions/index.ts';
import type { Question } from '../../questions/types.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { backToList, closeQuestion, searchFor, showQuestion } from './part.ts';

/** Where no question has all words: so many are shown, of so many that are found in all. */
const NEAREST = 6;
const NEAR_IN = 60;

/** Questions that are found, and the one whose answer is being shown. */
export class QuestionsDesk {
  readonly session: Session;
  readonly #found = new Kept<readonly Question[]>();
  readonly #nearest = new Kept<readonly Question[]>();

  constructor(session: Session) {
    this.session = session;
  }

  get search(): string {
    return this.session.moment.parts.questions.search;
  }
  get asked(): Question | null {
    const { asked } = this.session.moment.parts.questions;
    return questions.find((q) => q.id === asked) ?? null;
  }

  look(text: string): void {
    this.session.do(searchFor, text);
  }

  get #words(): readonly string[] {
    return this.search.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  }

  /** Questions with all of the words; where there is none, those that Ask finds nearest. */
  get found(): readonly Question[] {
    return this.near ?? this.#strict;
  }

  /** The nearest, where no question has all of the words. */
  get near(): readonly Question[] | null {
    if (this.#strict.length > 0) return null;
    return this.#nearest.of([this.search], () => {
      const ids = ask(this.search, NEAR_IN).found.map(({ entry }) =>
        entry.leads.to === 'question' || entry.kind === 'question' ? entry.key : '',
      );
      const all = ids.flatMap((key) => questions.find((q) => `question:${q.id}` === key) ?? []);
      return all.length > 0 ? all.slice(0, NEAREST) : questions;
    });
  }

  /** Questions in which every word searched for begins a word. */
  get #strict(): readonly Question[] {
    return this.#found.of([this.search], () => {
      const words = this.#words;
      return questions.filter((q) => {
        const text = ` ${q.group} ${q.ask} ${q.answer} ${q.steps}`
          .toLowerCase()
          .replace(/[^\p{L}\p{N}]+/gu, ' ');
        return words.every((w) => text.includes(` ${w}`));
      });
    });
  }

  show(q: Question): void {
    this.session.do(showQuestion, q.id);
  }
  back(): void {
    this.session.do(backToList);
  }
  close(): void {
    this.session.do(closeQuestion);
  }
}
