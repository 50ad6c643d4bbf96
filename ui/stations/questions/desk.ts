import { questions } from '../../questions/index.ts';
import type { Question } from '../../questions/types.ts';
import { Kept } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { speaksOfKinds } from './kinds.ts';
import { backToList, closeQuestion, searchFor, showQuestion } from './part.ts';

/** Questions that are found, and the one whose answer is being shown. */
export class QuestionsDesk {
  readonly session: Session;
  readonly #found = new Kept<readonly Question[]>();

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

  /** Is it the kind of brake that is asked about? With no words everything is. */
  get kinds(): boolean {
    return speaksOfKinds(this.#words);
  }

  /** Questions in which every word searched for begins a word. */
  get found(): readonly Question[] {
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
