import * as v from 'valibot';
import talk from '../../scenes/lessons/00-how-this-brake-works.json';
import partsAndNames from '../../scenes/lessons/01-parts-and-names.json';
import restPosition from '../../scenes/lessons/02-rest-position.json';
import thePress from '../../scenes/lessons/03-the-press.json';
import selfEnergising from '../../scenes/lessons/04-self-energising.json';
import whyItGrows from '../../scenes/lessons/05-why-it-grows.json';
import theClick from '../../scenes/lessons/06-the-click.json';
import holdingTheTooth from '../../scenes/lessons/07-holding-the-tooth.json';
import wearAndLimits from '../../scenes/lessons/08-wear-and-limits.json';
import drumOff from '../../scenes/lessons/09-drum-off.json';
import newShoes from '../../scenes/lessons/10-new-shoes.json';
import parkingBothWays from '../../scenes/lessons/11-parking-both-ways.json';
import heat from '../../scenes/lessons/12-heat.json';
import cheapestReading from '../../scenes/lessons/13-cheapest-reading.json';
import verdict from '../../scenes/lessons/14-verdict.json';
import type { Moment } from '../record/moment.ts';
import type { Lesson } from './format.ts';
import { lessonTexts } from './in-language.ts';
import { type ReadLesson, readLesson, readLessonText } from './read.ts';
import { type LessonTexts, textsSchema, translated } from './translated.ts';

/** The lessons there are: those that come with the page, and those that were opened or written. */

const files: readonly unknown[] = [
  talk,
  partsAndNames,
  restPosition,
  thePress,
  selfEnergising,
  whyItGrows,
  theClick,
  holdingTheTooth,
  wearAndLimits,
  drumOff,
  newShoes,
  parkingBothWays,
  heat,
  cheapestReading,
  verdict,
];

function must(read: ReadLesson): Lesson {
  if (read.ok) return read.lesson;
  const [first] = read.findings;
  throw new Error(`A lesson of the page cannot be read: ${first?.path} ${first?.found}`);
}

/** The texts of the page's language, by the names of their lessons. */
const told = new Map<string, LessonTexts>();
for (const file of lessonTexts()) {
  const texts = v.parse(textsSchema, file);
  told.set(texts.lesson, texts);
}

/** A lesson of the page, in its language. */
function inLanguage(file: unknown): unknown {
  const texts = told.get((file as { name: string }).name);
  return texts ? translated(file, texts) : file;
}

/** Those that come with the page: talks first, then in the order of the course. */
export const shipped: readonly Lesson[] = files.map((f) => must(readLesson(inLanguage(f))));

/** The file of a lesson that comes with the page. */
export const shippedFile = (lesson: Lesson): unknown => files[shipped.indexOf(lesson)];

const texts = new Map<string, ReadLesson>();
/** A lesson being written is another text with each letter: those long gone are not kept. */
const MOST_TEXTS = 100;

/** A file of the shelf read, once for each text. */
export function readKept(text: string): ReadLesson {
  const known = texts.get(text);
  if (known) return known;
  const read = readLessonText(text);
  if (texts.size >= MOST_TEXTS) texts.clear();
  texts.set(text, read);
  return read;
}

/** Lessons on the shelf that can be read, in their order. */
export const keptLessons = (m: Moment): readonly Lesson[] =>
  m.parts.lessons.shelf.flatMap((text) => {
    const read = readKept(text);
    return read.ok ? [read.lesson] : [];
  });

/** The lesson of a name: one that comes with the page before one of the shelf. */
export const lessonNamed = (m: Moment, name: string): Lesson | null =>
  [...shipped, ...keptLessons(m)].find((l) => l.name === name) ?? null;
