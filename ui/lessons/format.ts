import * as v from 'valibot';
import { choice, count, list, part, words } from '../../sim/index.ts';
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
const layers = choice('A layer of the drawing', layerNames);
const parts = Object.keys(partNames) as [string, ...string[]];

const pieces = list(
  'What the choice says, piece by piece',
  part('A piece of it', {
    words: short('The words'),
    holds: v.pipe(v.boolean('true or false'), v.description('Do these words hold?')),
  }),
  6,
  1,
);

const oneChoice = part('A choice', {
  says: pieces,
  shows: maybe(short('For the teacher: what choosing it shows')),
  back: maybe(short('For the teacher: the one sentence to give back')),
});

const check = part('A condition without which the step is not true', {
  value: short('Key of the value, with the name of a noted moment and a point before it'),
  over: maybe(short('A second key: the value is divided by its')),
  least: maybe(v.pipe(v.number('a number'), v.description('At least'))),
  most: maybe(v.pipe(v.number('a number'), v.description('At most'))),
});

const look = part('Where to look', {
  layers: maybe(list('Layers that are on', layers, layerNames.length), []),
  from: maybe(short('The noted moment that they are told before; the step’s start when left out')),
  at: maybe(short('The noted moment that they are told at; the end when left out')),
  readings: maybe(list('Values told, covered while the question is open', short('Key'), 6), []),
  names: maybe(
    list(
      'Parts named; all with the layer of names, where it is left out',
      v.picklist(parts, 'a part of the drawing'),
      parts.length,
    ),
  ),
  chart: maybe(v.pipe(v.boolean('true or false'), v.description('The chart of what is driven'))),
});

const notes = part('For the teacher', {
  behind: maybe(short('What the step is really about')),
  point: maybe(short('What to point at')),
  ask: maybe(short('What to ask next')),
  minutes: maybe(
    v.pipe(v.number('a number'), v.minValue(0, 'at least 0'), v.description('With the vote')),
  ),
});

const step = part('A step', {
  title: maybe(short('In the list of steps')),
  stage: maybe(choice('Which drawing', ['brake', 'drum', 'park']), 'brake'),
  start: maybe(list('How the step begins, from the lesson’s own start', action, 40), []),
  hand: maybe(list('What is done', action, 60), []),
  look: maybe(look, { layers: [], readings: [] }),
  ask: maybe(text('The question')),
  choices: maybe(list('What one may choose from', oneChoice, 4, 2)),
  button: maybe(short('What the button says that does it')),
  shows: maybe(text('What it shows')),
  why: maybe(text('Why')),
  next: maybe(text('What follows: said once the step is told')),
  say: maybe(text('What is said, in a talk')),
  seconds: maybe(
    v.pipe(
      v.number('a number'),
      v.minValue(1, 'at least 1'),
      v.maxValue(120, 'at most 120'),
      v.description('How long it takes, in a talk, s'),
    ),
  ),
  tryIt: maybe(text('What one may try when the talk is stopped here')),
  caution: maybe(text('Caution')),
  checks: maybe(list('Holds if', check, 20), []),
  notes: maybe(notes),
});
export type Step = v.InferOutput<typeof step>;
export type Choice = v.InferOutput<typeof oneChoice>;

export const lessonSchema = part('A lesson, or a talk', {
  $schema: maybe(words('Where editors find the schema')),
  format: v.literal('takeup-lesson', 'takeup-lesson'),
  version: v.literal(LESSON_VERSION, `${LESSON_VERSION}`),
  name: v.pipe(
    v.string('text'),
    v.regex(/^[a-z0-9][a-z0-9-]{0,50}$/, 'small letters, figures and hyphens'),
    v.description('Its name among all lessons'),
  ),
  kind: maybe(choice('A talk has no questions and plays by itself', ['lesson', 'talk']), 'lesson'),
  number: maybe(count('Its place in a course', 0, 999)),
  title: short('Title'),
  idea: maybe(text('Its one idea')),
  who: maybe(short('For whom')),
  minutes: maybe(count('How long it takes', 1, 600)),
  brake: maybe(words('A teaching brake')),
  scene: maybe(
    v.pipe(v.unknown(), v.description('A whole scene, in the place of a teaching brake')),
  ),
  state: maybe(words('The standing state it begins in')),
  caution: maybe(text('Caution, in view all the time')),
  starter: maybe(text('For the teacher: before it')),
  exit: maybe(text('For the teacher: after it')),
  shortly: maybe(text('For the teacher: with ten minutes only')),
  whatIf: maybe(text('What if: the end of the lesson')),
  steps: list('Its steps', step, 60, 1),
});
export type Lesson = v.InferOutput<typeof lessonSchema>;
