import * as v from 'valibot';
import { choice, count, list, part, words } from '../../sim/index.ts';
import { labelWords, lessonsFormat as texts } from '../../sim/words/en.ts';
import { layerNames } from '../record/view.ts';
import { partNames } from '../stage/part-names.ts';
import { action } from './actions.ts';

/**
 * The lesson file: JSON, own format, told to editors by the JSON Schema that is written out from this
 * same source. A text names a value as `{torque=227}`: its key, and what it is today, which a test
 * holds against the model; `{before.torque=…}` is that of the step's start, `{mine.torque=…}` that of a
 * moment noted as `mine`, and `{torque~10=1 140}` is told to 10. Every object is strict.
 */

/** Version that is written today. */
export const LESSON_VERSION = 1;

const maybe = v.optional;
/** Letters of a sentence or some, and of a few words. */
const TEXT = 700;
const SHORT = 160;
const text = (about: string) => words(about, TEXT);
const short = (about: string) => words(about, SHORT);
const layers = choice(texts.aLayerOfTheDrawing, layerNames);
const parts = Object.keys(partNames) as [string, ...string[]];

const pieces = list(
  texts.whatTheChoiceSaysPiece,
  part(texts.aPieceOfIt, {
    words: short(texts.theWords),
    holds: v.pipe(v.boolean(texts.trueOrFalse), v.description(texts.doTheseWordsHold)),
  }),
  6,
  1,
);

const oneChoice = part(texts.aChoice, {
  says: pieces,
  shows: maybe(short(texts.forTheTeacherWhatChoosing)),
  back: maybe(short(texts.forTheTeacherTheOne)),
});

const check = part(texts.aConditionWithoutWhichThe, {
  value: short(texts.keyOfTheValueWith),
  over: maybe(short(texts.aSecondKeyTheValue)),
  least: maybe(v.pipe(v.number(texts.aNumber), v.description(texts.atLeast))),
  most: maybe(v.pipe(v.number(texts.aNumber), v.description(texts.atMost))),
});

const look = part(texts.whereToLook, {
  layers: maybe(list(texts.layersThatAreOn, layers, layerNames.length), []),
  from: maybe(short(texts.theNotedMomentThatThey)),
  at: maybe(short(texts.theNotedMomentThatThey2)),
  readings: maybe(list(texts.valuesToldCoveredWhileThe, short(labelWords.key), 6), []),
  names: maybe(
    list(texts.partsNamedAllWithThe, v.picklist(parts, texts.aPartOfTheDrawing), parts.length),
  ),
  chart: maybe(v.pipe(v.boolean(texts.trueOrFalse), v.description(texts.theChartOfWhatIs))),
});

const notes = part(texts.forTheTeacher, {
  behind: maybe(short(texts.whatTheStepIsReally)),
  point: maybe(short(texts.whatToPointAt)),
  ask: maybe(short(texts.whatToAskNext)),
  minutes: maybe(
    v.pipe(
      v.number(texts.aNumber),
      v.minValue(0, texts.atLeast0),
      v.description(texts.withTheVote),
    ),
  ),
});

const step = part(texts.aStep, {
  title: maybe(short(texts.inTheListOfSteps)),
  stage: maybe(choice(texts.whichDrawing, ['brake', 'drum', 'park']), 'brake'),
  start: maybe(list(texts.howTheStepBeginsFrom, action, 40), []),
  hand: maybe(list(texts.whatIsDone, action, 60), []),
  look: maybe(look, { layers: [], readings: [] }),
  ask: maybe(text(texts.theQuestion)),
  choices: maybe(list(texts.whatOneMayChooseFrom, oneChoice, 4, 2)),
  button: maybe(short(texts.whatTheButtonSaysThat)),
  shows: maybe(text(texts.whatItShows)),
  why: maybe(text(labelWords.why)),
  next: maybe(text(texts.whatFollowsSaidOnceThe)),
  say: maybe(text(texts.whatIsSaidInA)),
  seconds: maybe(
    v.pipe(
      v.number(texts.aNumber),
      v.minValue(1, texts.atLeast1),
      v.maxValue(120, texts.atMost120),
      v.description(texts.howLongItTakesIn),
    ),
  ),
  tryIt: maybe(text(texts.whatOneMayTryWhen)),
  caution: maybe(text(labelWords.caution)),
  checks: maybe(list(texts.holdsIf, check, 20), []),
  notes: maybe(notes),
});
export type Step = v.InferOutput<typeof step>;
export type Choice = v.InferOutput<typeof oneChoice>;

export const lessonSchema = part(texts.aLessonOrATalk, {
  $schema: maybe(words(texts.whereEditorsFindTheSchema)),
  format: v.literal('takeup-lesson', 'takeup-lesson'),
  version: v.literal(LESSON_VERSION, `${LESSON_VERSION}`),
  name: v.pipe(
    v.string('text'),
    v.regex(/^[a-z0-9][a-z0-9-]{0,50}$/, texts.smallLettersFiguresAndHyphens),
    v.description(texts.itsNameAmongAllLessons),
  ),
  kind: maybe(choice(texts.aTalkHasNoQuestions, ['lesson', 'talk']), 'lesson'),
  number: maybe(count(texts.itsPlaceInACourse, 0, 999)),
  title: short(labelWords.title),
  idea: maybe(text(texts.itsOneIdea)),
  who: maybe(short(texts.forWhom)),
  minutes: maybe(count(texts.howLongItTakes, 1, 600)),
  brake: maybe(words(texts.aTeachingBrake)),
  scene: maybe(v.pipe(v.unknown(), v.description(texts.aWholeSceneInThe))),
  state: maybe(words(texts.theStandingStateItBegins)),
  caution: maybe(text(texts.cautionInViewAllThe)),
  starter: maybe(text(texts.forTheTeacherBeforeIt)),
  exit: maybe(text(texts.forTheTeacherAfterIt)),
  shortly: maybe(text(texts.forTheTeacherWithTen)),
  whatIf: maybe(text(texts.whatIfTheEndOf)),
  steps: list(texts.itsSteps, step, 60, 1),
});
export type Lesson = v.InferOutput<typeof lessonSchema>;
