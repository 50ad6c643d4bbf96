import { lessonsWants as words } from '../../sim/words/en.ts';
import { released } from '../record/bench.ts';
import { arrive, leave, opened } from '../record/guest.ts';
import { intention } from '../record/intention.ts';
import { type Moment, stationIds } from '../record/moment.ts';
import { layersOf } from '../record/parts.ts';
import type { Layers } from '../record/view.ts';
import type { PartId } from '../stage/part-names.ts';
import {
  type Answer,
  lessonOf,
  MOST_KEPT,
  MOST_LETTERS,
  type Progress,
  putLessons,
} from '../stations/lessons/part.ts';
import type { Lesson, Step } from './format.ts';
import { type Beat, runStep } from './run.ts';

/** What can be wanted of a lesson. The lesson itself comes as an argument: it is loaded on demand. */

const NOTHING: Answer = { choice: null, votes: [], told: false };
const BEGUN: Progress = { step: 0, answers: [] };

export const progressOf = (m: Moment, name: string): Progress =>
  m.parts.lessons.progress[name] ?? BEGUN;

export const answerOf = (m: Moment, name: string, step: number): Answer =>
  progressOf(m, name).answers[step] ?? NOTHING;

function withProgress(m: Moment, name: string, change: Partial<Progress>): Moment {
  const progress = { ...progressOf(m, name), ...change };
  return putLessons(m, { progress: { ...m.parts.lessons.progress, [name]: progress } });
}

function withAnswer(m: Moment, name: string, step: number, change: Partial<Answer>): Moment {
  const { answers } = progressOf(m, name);
  const length = Math.max(answers.length, step + 1);
  const next = Array.from({ length }, (_, i) =>
    i === step ? { ...NOTHING, ...answers[i], ...change } : (answers[i] ?? null),
  );
  return withProgress(m, name, { answers: next });
}

/** Layers that tell nothing of the outcome: they may be on while the question is open. */
const PLAIN: readonly (keyof Layers)[] = ['names', 'loupe', 'edge'];

/** How the stage is looked at in a step: what would tell the answer is off while its question is open. */
function looked(m: Moment, { look }: Step, told: boolean): Moment {
  const on = (name: keyof Layers): boolean =>
    (look.layers.includes(name) || (name === 'names' && look.names !== undefined)) &&
    (told || PLAIN.includes(name));
  const all = layersOf(m, 'lessons');
  const layers = Object.fromEntries(
    Object.keys(all).map((name) => [name, on(name as keyof Layers)]),
  ) as unknown as Layers;
  const revealed = (look.names as readonly PartId[] | undefined) ?? null;
  return {
    ...m,
    view: { ...m.view, revealed, magnification: 20, layers: { ...m.view.layers, lessons: layers } },
  };
}

/** The brake and all around it as a moment of the script has it. */
export const onBench = (m: Moment, of: Moment): Moment => ({
  ...m,
  bench: of.bench,
  pedal: of.pedal,
  follows: false,
  turning: of.turning,
  parts: { ...m.parts, park: of.parts.park, 'drum-off': of.parts['drum-off'] },
});

/** The stage as a script's show of layers has it. */
const withShow = (m: Moment, of: Moment): Moment => ({
  ...m,
  view: {
    ...m.view,
    magnification: of.view.magnification,
    revealed: of.view.revealed ?? m.view.revealed,
    tilt: of.view.tilt,
    layers: { ...m.view.layers, lessons: { ...layersOf(m, 'lessons'), ...of.view.layers.lessons } },
  },
});

/** The bench as a step begins, or as it ends where that was told. */
function staged(m: Moment, lesson: Lesson, step: number, told: boolean): Moment {
  const of = lesson.steps[step];
  if (!of) return released(m);
  const ran = runStep(lesson, of);
  const here = looked(onBench(m, told ? ran.end : ran.start), of, told);
  if (!told) return putLessons(here, { done: 0 });
  const shown = ran.beats.filter((b) => b.action.do === 'show').at(-1);
  const end = shown ? withShow(here, shown.moments.at(-1) as Moment) : here;
  return putLessons(end, { done: ran.beats.length });
}

/** A lesson looks at the brake in its own way: the one before is kept with what it takes the place of. */
function withLook(m: Moment): Moment {
  const { guest } = m;
  if (!guest || guest.mine.look) return m;
  const { revealed, magnification, tilt } = m.view;
  return {
    ...m,
    guest: { ...guest, mine: { ...guest.mine, look: { revealed, magnification, tilt } } },
  };
}

/** Begins a lesson, or takes it up where it was left. */
export const openLesson = intention(
  'lessons.open',
  (m: Moment, lesson: Lesson) => {
    const { name } = lesson;
    const home = lessonOf(m) === null ? leave(m) : m;
    const here = opened(
      withLook(arrive(home, { kind: 'lesson', id: name }, stationIds)),
      'lessons',
    );
    const step = Math.min(progressOf(m, name).step, lesson.steps.length);
    const { told } = answerOf(m, name, step);
    const next = withProgress(here, name, { step });
    return staged(putLessons(next, { blank: false }), lesson, step, told);
  },
  (_before, _after, lesson) => `${lesson.kind}: ${lesson.title}`,
);

const clamp = (lesson: Lesson, step: number): number =>
  Math.max(0, Math.min(lesson.steps.length, Math.round(step)));

/** Goes to a step; one past the last is the end. */
export const goToStep = intention(
  'lessons.step',
  (m: Moment, lesson: Lesson, to: number) => {
    const step = clamp(lesson, to);
    if (lessonOf(m) !== lesson.name || step === progressOf(m, lesson.name).step) return m;
    const { told } = answerOf(m, lesson.name, step);
    return staged(withProgress(m, lesson.name, { step }), lesson, step, told);
  },
  (_before, _after, lesson, to) =>
    clamp(lesson, to) < lesson.steps.length
      ? words.step(clamp(lesson, to) + 1)
      : words.endOfTheLesson,
);

/** Commits to a choice of the open question. */
export const choose = intention(
  'lessons.choose',
  (m: Moment, lesson: Lesson, choice: number) => {
    const { step } = progressOf(m, lesson.name);
    const now = answerOf(m, lesson.name, step);
    const known = lesson.steps[step]?.choices?.[choice] !== undefined;
    if (lessonOf(m) !== lesson.name || !known || now.told || now.choice === choice) return m;
    return withAnswer(m, lesson.name, step, { choice });
  },
  (_before, _after, _lesson, choice) => words.choice('ABCD'[choice] ?? ''),
);

/** Counts a hand of the class for a choice, or takes one off. */
export const countHand = intention(
  'lessons.vote',
  (m: Moment, lesson: Lesson, choice: number, by: number) => {
    const { step } = progressOf(m, lesson.name);
    const choices = lesson.steps[step]?.choices ?? [];
    const { votes, told } = answerOf(m, lesson.name, step);
    // Who has seen the outcome does not vote any more.
    if (lessonOf(m) !== lesson.name || !choices[choice] || told) return m;
    const next = choices.map((_, i) => {
      const now = votes[i] ?? 0;
      return i === choice ? Math.max(0, Math.min(999, Math.round(now + by))) : now;
    });
    return next.every((n, i) => n === (votes[i] ?? 0))
      ? m
      : withAnswer(m, lesson.name, step, { votes: next });
  },
  words.handsOfTheClass,
  { joins: 'lessons.vote' },
);

/** Shows what happens: the hand begins. */
export const tell = intention(
  'lessons.tell',
  (m: Moment, lesson: Lesson) => {
    const { step } = progressOf(m, lesson.name);
    const of = lesson.steps[step];
    if (lessonOf(m) !== lesson.name || !of) return m;
    const here = looked(onBench(m, runStep(lesson, of).start), of, true);
    return putLessons(withAnswer(here, lesson.name, step, { told: true }), { done: 0 });
  },
  (_before, _after, lesson) => (lesson.kind === 'talk' ? words.talkGoesOn : words.whatHappens),
);

/** The question is open again, and what was chosen forgotten. */
export const askAgain = intention(
  'lessons.again',
  (m: Moment, lesson: Lesson) => {
    const { step } = progressOf(m, lesson.name);
    if (lessonOf(m) !== lesson.name || !lesson.steps[step]) return m;
    const next = withAnswer(m, lesson.name, step, NOTHING);
    return staged(next, lesson, step, false);
  },
  words.askedAgain,
);

/** The pedal as a moment of the script has it; the teeth that drop in at it are the moving brake's own. */
const pressed = (m: Moment, { pedal, turning }: Moment): Moment =>
  m.pedal === pedal && m.turning === turning ? m : { ...m, pedal, turning, follows: false };

/**
 * What the hand did by itself: it belongs to the step before.
 *
 * @param whole the brake as the script has it, a press's teeth too; else the moving brake presses
 */
export const handDid = intention(
  'lessons.hand',
  (m: Moment, beat: Beat, at: number, done: number, whole: boolean) => {
    const of = beat.moments[at];
    if (!of || lessonOf(m) === null) return m;
    const what = beat.action.do;
    const put =
      !whole && (what === 'pedal' || what === 'release') ? pressed(m, of) : onBench(m, of);
    const next = what === 'show' ? withShow(put, of) : put;
    return done === m.parts.lessons.done ? next : putLessons(next, { done });
  },
  words.whatHappens,
);

/** Back to the list; how far the lesson was taken is kept. */
export const leaveLesson = intention(
  'lessons.list',
  (m: Moment) => (lessonOf(m) === null ? m : { ...leave(m), station: 'lessons' as const }),
  words.lessonLeft,
);

const withoutProgress = (m: Moment, name: string): Moment => {
  if (!m.parts.lessons.progress[name]) return m;
  const { [name]: _gone, ...progress } = m.parts.lessons.progress;
  return putLessons(m, { progress });
};

/** Forgets how far a lesson was taken. */
export const forgetProgress = intention(
  'lessons.forget',
  (m: Moment, name: string) => withoutProgress(m, name),
  words.lessonFromItsStart,
);

/** Keeps a lesson's file, in the place of one of the same name; a lesson that is opened or tried begins at its start. */
export const keepLesson = intention(
  'lessons.keep',
  (m: Moment, text: string, name: string, before: string | null) => {
    const { shelf } = m.parts.lessons;
    if (text.length > MOST_LETTERS) return m;
    const anew = withoutProgress(m, name);
    if (shelf.includes(text)) return anew;
    const others = shelf.filter((t) => t !== before);
    return putLessons(anew, { shelf: [...others, text].slice(-MOST_KEPT) });
  },
  words.lessonKept,
);

const withDraft = (m: Moment, draft: string | null): Moment =>
  draft === m.parts.lessons.draft || (draft?.length ?? 0) > MOST_LETTERS
    ? m
    : putLessons(m, { draft });

/** What is typed into the lesson being written. */
export const writeDraft = intention(
  'lessons.write',
  (m: Moment, draft: string | null) => withDraft(m, draft),
  words.typedIntoYourLesson,
  { joins: 'lessons.write' },
);

/** A step or a choice more or less in the lesson being written; null: it is put away. */
export const takeStep = intention(
  'lessons.take-step',
  (m: Moment, draft: string | null) => withDraft(m, draft),
  (_before, after) => (after.parts.lessons.draft === null ? words.draftPutAway : words.yourLesson),
);

/** Takes a file off the shelf. */
export const dropLesson = intention(
  'lessons.drop',
  (m: Moment, text: string) => {
    const { shelf } = m.parts.lessons;
    return shelf.includes(text) ? putLessons(m, { shelf: shelf.filter((t) => t !== text) }) : m;
  },
  words.lessonTakenOffTheShelf,
);

/** The wall goes blank, or shows again. */
export const blank = intention(
  'lessons.blank',
  (m: Moment, on: boolean) => (on === m.parts.lessons.blank ? m : putLessons(m, { blank: on })),
  (_before, after) => (after.parts.lessons.blank ? words.wallBlank : words.wallShown),
);
