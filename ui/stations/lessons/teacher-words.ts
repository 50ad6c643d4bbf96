import { labelWords, lessonsTeacherWords as said } from '../../../sim/words/en.ts';
import { number } from '../../format.ts';
import type { Choice, Step } from '../../lessons/format.ts';
import type { LessonDesk, Phase } from './desk.ts';

/** What the teacher's window is told: texts alone, as the lesson stands. Its notes are never on the wall. */
export interface TeacherWords {
  readonly title: string;
  readonly place: string;
  readonly at: number;
  readonly of: number;
  readonly phase: Phase;
  readonly talk: boolean;
  readonly wall: boolean;
  readonly blank: boolean;
  readonly ask: string;
  readonly choices: readonly {
    readonly letter: string;
    readonly words: string;
    readonly right: boolean;
    readonly mine: boolean;
    readonly hands: number;
    /** What choosing it shows, and the one sentence to give back. */
    readonly shows: string;
    readonly back: string;
  }[];
  readonly next: string;
  readonly button: string;
  readonly shows: string;
  readonly why: string;
  readonly behind: string;
  readonly point: string;
  readonly askNext: string;
  readonly minutes: number | null;
  readonly covered: string;
  readonly caution: string;
  /** Before the lesson, after it, and with ten minutes only. */
  readonly around: readonly (readonly [what: string, text: string])[];
  readonly steps: readonly string[];
  readonly values: readonly (readonly [name: string, before: string, now: string])[];
}

/** What the teacher's window may ask for. */
export const TEACHER_ASKS = [
  'next',
  'back',
  'choose',
  'count',
  'go',
  'again',
  'blank',
  'wall',
] as const;
export type TeacherAsk = {
  readonly ask: (typeof TEACHER_ASKS)[number];
  readonly n: number;
  readonly by: number;
};

const choiceOf = (
  desk: LessonDesk,
  choice: Choice,
  i: number,
): TeacherWords['choices'][number] => ({
  letter: 'ABCD'[i] ?? '',
  words: desk.says(choice),
  right: choice.says.every((s) => s.holds),
  mine: desk.answer.choice === i,
  hands: desk.answer.votes[i] ?? 0,
  shows: desk.text(choice.shows),
  back: desk.text(choice.back),
});

const titleOf = (step: Step, i: number): string => step.title ?? said.step(i + 1);

/** The lesson in words, as it stands; null while none is open. */
export function teacherWords(desk: LessonDesk): TeacherWords | null {
  const { at, lesson, phase, session, step } = desk;
  if (!lesson) return null;
  const of = lesson.steps.length;
  const following = lesson.steps[at + 1];
  return {
    title: `${lesson.number && !desk.talk ? said.lesson(lesson.number) : ''}${lesson.title}`,
    place: at < of ? said.of(desk.talk ? said.moment : said.step2, at + 1, of) : said.theEnd,
    at,
    of,
    phase,
    talk: desk.talk,
    wall: session.wall,
    blank: session.moment.parts.lessons.blank,
    ask: desk.text(step?.ask ?? step?.say),
    choices: (step?.choices ?? []).map((c, i) => choiceOf(desk, c, i)),
    next: following
      ? (following.ask ?? following.say ?? '').replace(/\{[^{}=]*=?([^{}]*)\}/g, '$1')
      : '',
    button: desk.nextSays,
    shows: desk.text(step?.shows),
    why: desk.text(step?.why),
    behind: desk.text(step?.notes?.behind),
    point: desk.text(step?.notes?.point),
    askNext: desk.text(step?.notes?.ask),
    minutes: step?.notes?.minutes ?? null,
    covered: desk.covered ? [...new Set(desk.told.map((t) => t.value.name))].join(', ') : '',
    caution: step?.caution ?? lesson.caution ?? '',
    around: [
      [said.beforeIt, lesson.starter ?? ''],
      [said.afterIt, lesson.exit ?? ''],
      [labelWords.shortly, lesson.shortly ?? ''],
      [said.whatIf, lesson.whatIf ?? ''],
    ],
    steps: lesson.steps.map(titleOf),
    values: desk.told.map(({ before, value }) => [
      value.unit ? `${value.name}, ${value.unit}` : value.name,
      before ? number(before.value, before.digits) : '',
      number(value.value, value.digits),
    ]),
  };
}
