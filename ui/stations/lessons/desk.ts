import type { LessonValue } from '../../../sim/index.ts';
import { labelWords, lessonsDesk as texts } from '../../../sim/words/en.ts';
import { LessonHand } from '../../lesson-hand.ts';
import type { Choice, Lesson, Step } from '../../lessons/format.ts';
import { lessonNamed } from '../../lessons/library.ts';
import { type Ran, runStep } from '../../lessons/run.ts';
import { filled } from '../../lessons/text.ts';
import {
  answerOf,
  askAgain,
  choose,
  countHand,
  goToStep,
  leaveLesson,
  openLesson,
  progressOf,
  tell,
} from '../../lessons/wants.ts';
import { KeptFor } from '../../record/kept.ts';
import type { Session } from '../../session.ts';
import { type Answer, lessonOf } from './part.ts';

/** Where a lesson stands: the list of lessons, a question that is open, its outcome, the end. */
export type Phase = 'list' | 'ask' | 'showing' | 'told' | 'end';

/** A value told in a step, before and now; covered while the question is open. */
export interface Told {
  readonly value: LessonValue;
  readonly before: LessonValue | null;
}

/** A figure with its unit behind it, which stay on one line. */
const UNIT = /(\d) (?=(?:mm|cm|km|m|g|kg|N|N·m|MPa|bar|s|h|%|°C|K)(?![\p{L}\d]))/gu;

/** The lesson that is open, and what can be done with it. */
export class LessonDesk {
  readonly session: Session;
  readonly hand: LessonHand;
  readonly #told = new KeptFor<Ran, readonly Told[]>();

  constructor(session: Session) {
    this.session = session;
    this.hand = new LessonHand(session);
  }

  get lesson(): Lesson | null {
    const { moment } = this.session;
    const name = lessonOf(moment);
    return name === null ? null : lessonNamed(moment, name);
  }

  /** Number of the open step; as many as there are: the end. */
  get at(): number {
    const { lesson } = this;
    return lesson ? progressOf(this.session.moment, lesson.name).step : 0;
  }

  get step(): Step | null {
    return this.lesson?.steps[this.at] ?? null;
  }

  get talk(): boolean {
    return this.lesson?.kind === 'talk';
  }

  get answer(): Answer {
    const { lesson, at } = this;
    return answerOf(this.session.moment, lesson?.name ?? '', at);
  }

  get phase(): Phase {
    const { lesson, step } = this;
    if (!lesson) return 'list';
    if (!step) return 'end';
    if (this.hand.busy) return 'showing';
    return this.answer.told ? 'told' : 'ask';
  }

  answerAt(step: number): Answer {
    return answerOf(this.session.moment, this.lesson?.name ?? '', step);
  }

  /** While a question is open nothing is told that would answer it. */
  get covered(): boolean {
    return !this.talk && this.step !== null && !this.answer.told;
  }

  /** The open step as the mechanics have it. */
  get ran(): Ran | null {
    const { lesson, step } = this;
    return lesson && step ? runStep(lesson, step) : null;
  }

  /** A text with the model's figures. */
  text(text: string | undefined): string {
    return text === undefined ? '' : filled(text, this.ran).replace(UNIT, '$1\u00a0');
  }

  says(choice: Choice): string {
    return choice.says.map((s) => this.text(s.words)).join(' ');
  }

  /** The values that the step looks at. */
  get told(): readonly Told[] {
    const { ran, step } = this;
    if (!ran || !step) return [];
    return this.#told.of(ran, () =>
      step.look.readings.flatMap((key) => {
        const { at = 'now', from = 'before' } = step.look;
        const value = ran.notes.get(at)?.of(key);
        return value ? [{ value, before: ran.notes.get(from)?.of(key) ?? null }] : [];
      }),
    );
  }

  /** May it be shown? Somebody has to have guessed first. */
  get mayTell(): boolean {
    const { choice, votes } = this.answer;
    return this.talk || choice !== null || votes.some((n) => n > 0);
  }

  open(lesson: Lesson): void {
    this.session.do(openLesson, lesson);
  }
  close(): void {
    this.hand.stop();
    this.session.do(leaveLesson);
  }

  choose(choice: number): void {
    const { lesson } = this;
    if (lesson) this.session.do(choose, lesson, choice);
  }

  /** Marks the next choice, as a remote without letters does. */
  chooseNext(): void {
    const n = this.step?.choices?.length ?? 0;
    if (n > 0) this.choose(((this.answer.choice ?? -1) + 1) % n);
  }

  count(choice: number, by: number): void {
    const { lesson } = this;
    if (lesson) this.session.do(countHand, lesson, choice, by);
  }

  /** Shows what happens, from its beginning. */
  show(): void {
    const { lesson } = this;
    if (!lesson) return;
    this.hand.stop();
    this.session.do(tell, lesson);
    this.hand.begin(lesson, () => this.#after(lesson));
  }

  /** A talk goes on to its next moment by itself. */
  #after(lesson: Lesson): void {
    if (lesson.kind !== 'talk' || lesson !== this.lesson) return;
    const next = this.at + 1;
    this.session.amend(goToStep, lesson, next);
    if (next >= lesson.steps.length) return;
    this.session.amend(tell, lesson);
    this.hand.begin(lesson, () => this.#after(lesson));
  }

  ask(): void {
    const { lesson } = this;
    this.hand.stop();
    if (lesson) this.session.do(askAgain, lesson);
  }

  go(to: number): void {
    const { lesson } = this;
    this.hand.stop();
    if (lesson) this.session.do(goToStep, lesson, to);
  }

  /** The one thing that comes next, as one button or one key does it. */
  next(): void {
    const { phase } = this;
    if (phase === 'ask') {
      if (this.mayTell) this.show();
      else this.session.say(texts.firstAGuessAB);
    } else if (phase === 'showing') {
      if (this.talk) this.hand.stop();
      else this.hand.finish();
    } else if (phase === 'told') {
      if (this.talk) this.show();
      else this.go(this.at + 1);
    } else if (phase === 'end') this.close();
    this.session.changed();
  }

  /** One step back: to the question of an outcome, or to the step before. */
  back(): void {
    if (this.at > 0) this.go(this.at - 1);
  }

  /** What the button says that does the next thing. */
  get nextSays(): string {
    const { phase, step } = this;
    if (phase === 'end') return texts.backToTheLessons;
    if (this.talk)
      return phase === 'showing' ? labelWords.stop : this.at === 0 ? labelWords.begin : texts.goOn;
    if (phase === 'ask') return this.mayTell ? (step?.button ?? texts.showIt) : texts.firstAGuess;
    if (phase === 'showing') return texts.toItsEnd;
    return this.at + 1 < (this.lesson?.steps.length ?? 0) ? texts.nextStep : texts.toTheEnd;
  }
}
