import { LessonHand } from '../../lesson-hand.ts';
import type { Lesson, Step } from '../../lessons/format.ts';
import { runStep } from '../../lessons/run.ts';
import { filled } from '../../lessons/text.ts';
import { goToStep, openLesson, progressOf, tell } from '../../lessons/wants.ts';
import type { Film, Script } from './film.ts';

/** Films of a lesson's step, and of a whole talk with what is said. */

/** How long a sentence is read: so many letters a second, and some time to find it, s; "common practice" of captions is 15 to 20. */
const READ = { letters: 15, before: 1.2 };
const reading = (text: string): number =>
  text === '' ? 0 : READ.before + text.length / READ.letters;
/** Nothing that a hand does lasts longer than this, s. */
const MOST = 240;

/** The hand of a film: it asks for the film's pictures. */
function handOf(film: Film): LessonHand {
  return new LessonHand(film.session, {
    ask: (tick) => {
      film.ask = tick;
      return 1;
    },
    cancel: () => {
      film.ask = null;
    },
  });
}

/** What the hand does at the open step, to its end. */
function* done(film: Film, hand: LessonHand, lesson: Lesson): Script {
  film.session.do(tell, lesson);
  hand.begin(lesson);
  for (const end = film.now + MOST; hand.busy && film.now < end; ) {
    film.advance();
    yield;
  }
}

/** One step: its question, what happens, what it shows and why. */
export function* lessonStep(film: Film, lesson: Lesson, at: number): Script {
  const { session } = film;
  session.do(openLesson, lesson);
  if (progressOf(session.moment, lesson.name).step !== at) session.do(goToStep, lesson, at);
  const step = lesson.steps[at] as Step;
  const text = (t: string | undefined): string => filled(t ?? '', runStep(lesson, step));
  const ask = text(step.ask);
  film.say(ask);
  yield* film.go(Math.max(1, reading(ask)));
  film.say('');
  yield* done(film, handOf(film), lesson);
  for (const said of [text(step.shows), text(step.why)].filter((t) => t !== '')) {
    film.say(said);
    yield* film.go(reading(said));
  }
}

/** A talk from its first moment to its last, each as long as its sentence takes. */
export function* talk(film: Film, lesson: Lesson): Script {
  const { session } = film;
  session.do(openLesson, lesson);
  const hand = handOf(film);
  for (const [at, step] of lesson.steps.entries()) {
    if (progressOf(session.moment, lesson.name).step !== at) session.do(goToStep, lesson, at);
    film.say(filled(step.say ?? '', runStep(lesson, step)));
    yield* done(film, hand, lesson);
  }
  yield* film.hold(1);
}
