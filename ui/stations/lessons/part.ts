import * as v from 'valibot';
import { lessonsPart as words } from '../../../sim/words/en.ts';
import { intention } from '../../record/intention.ts';
import { type Moment, withPart } from '../../record/moment.ts';
import type { Part } from '../../record/part.ts';

/** What was answered at one step of a lesson. */
export interface Answer {
  /** Place of the choice that was committed to; null: none yet. */
  readonly choice: number | null;
  /** Hands of the class for each choice. */
  readonly votes: readonly number[];
  /** It has been shown what happens. */
  readonly told: boolean;
}

/** How far a lesson has been taken. */
export interface Progress {
  /** The step that is open; as many as there are steps: the end. */
  readonly step: number;
  readonly answers: readonly (Answer | null)[];
}

/** What the Lesson station remembers; the lesson that is open is the guest on the bench. */
export interface LessonsPart {
  readonly progress: Readonly<Record<string, Progress>>;
  /** Actions of the open step that the hand has done. */
  readonly done: number;
  /** Files of lessons that are not the page’s own, word for word: each is read where it is opened. */
  readonly shelf: readonly string[];
  /** The lesson being written: its file, word for word; null: none is. */
  readonly draft: string | null;
  /** Keys of one letter work while a lesson is open. */
  readonly keys: boolean;
  /** The wall is blank. */
  readonly blank: boolean;
}

/** Most lessons that are kept, and the most letters of one. */
export const MOST_KEPT = 30;
export const MOST_LETTERS = 200_000;

const whole = (most: number) => v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(most));
const file = v.pipe(v.string(), v.maxLength(MOST_LETTERS));
const answer = v.strictObject({
  choice: v.nullable(whole(3)),
  votes: v.pipe(v.array(whole(999)), v.maxLength(4)),
  told: v.boolean(),
});
const progress = v.strictObject({
  step: whole(60),
  answers: v.pipe(v.array(v.nullable(answer)), v.maxLength(60)),
});

/** As it begins: nothing was taken. */
export const NO_LESSONS: LessonsPart = {
  progress: {},
  done: 0,
  shelf: [],
  draft: null,
  keys: true,
  blank: false,
};

export const lessonsPart: Part<LessonsPart> = {
  anew: false,
  layers: {},
  initial: () => NO_LESSONS,
  // Lessons that were written or opened here, and how far they were taken, are not the link's.
  keeps: (here, linked) => ({
    ...linked,
    progress: { ...here.progress, ...linked.progress },
    shelf: [...here.shelf, ...linked.shelf.filter((text) => !here.shelf.includes(text))].slice(
      0,
      MOST_KEPT,
    ),
    draft: here.draft ?? linked.draft,
    keys: here.keys,
  }),
  schema: v.strictObject({
    progress: v.record(v.pipe(v.string(), v.maxLength(60)), progress),
    done: whole(200),
    shelf: v.pipe(v.array(file), v.maxLength(MOST_KEPT)),
    draft: v.nullable(file),
    keys: v.boolean(),
    blank: v.boolean(),
  }),
};

/** Name of the lesson whose brake stands on the bench; null: none does. */
export const lessonOf = ({ guest }: Moment): string | null =>
  guest?.call.kind === 'lesson' ? guest.call.id : null;

export const putLessons = (m: Moment, change: Partial<LessonsPart>): Moment =>
  withPart(m, 'lessons', change);

/** Keys of one letter on or off. */
export const presenterKeys = intention(
  'lessons.keys',
  (m: Moment, keys: boolean) => (keys === m.parts.lessons.keys ? m : putLessons(m, { keys })),
  words.keysOfTheLesson,
);
