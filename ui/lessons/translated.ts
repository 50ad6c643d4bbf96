import * as v from 'valibot';
import { choice, part } from '../../sim/index.ts';
import { lessonsTranslated as words } from '../../sim/words/en.ts';
import { languages } from '../language.ts';

/**
 * A lesson's texts in another language: a file that names the lesson and gives each of its texts by its path
 * (`steps.0.ask`). What a lesson does, and the values that it names, stand in the lesson alone.
 */
export const textsSchema = part(words.textsOfALesson, {
  format: v.literal('takeup-lesson-texts', 'takeup-lesson-texts'),
  version: v.literal(1, '1'),
  lesson: v.pipe(v.string('text'), v.description(words.nameOfTheLesson)),
  language: choice(words.language, languages),
  texts: v.pipe(
    v.record(
      v.pipe(v.string('text'), v.regex(/^\w+(\.\w+)*$/, words.aPath)),
      v.pipe(v.string('text'), v.minLength(1, words.atLeastOneLetter)),
    ),
    v.description(words.textsByTheirPaths),
  ),
});
export type LessonTexts = v.InferOutput<typeof textsSchema>;

type Node = Record<string, unknown>;

/** What a path leads to, and its last key; null where the lesson has no text. */
function placeOf(lesson: Node, path: string): { readonly at: Node; readonly key: string } | null {
  const keys = path.split('.');
  const key = keys.pop() ?? '';
  let at: unknown = lesson;
  for (const k of keys) at = typeof at === 'object' && at !== null ? (at as Node)[k] : null;
  if (typeof at !== 'object' || at === null) return null;
  return typeof (at as Node)[key] === 'string' ? { at: at as Node, key } : null;
}

/** The text of a lesson's file at a path; null where there is none. */
export function textAt(lesson: unknown, path: string): string | null {
  const place = placeOf(lesson as Node, path);
  return place ? (place.at[place.key] as string) : null;
}

/**
 * A lesson's file with the texts of another language in place of its own.
 *
 * @param lesson as parsed; it stays as it is
 */
export function translated(lesson: unknown, { texts }: LessonTexts): unknown {
  const copy = structuredClone(lesson) as Node;
  for (const [path, text] of Object.entries(texts)) {
    const place = placeOf(copy, path);
    if (!place) throw new Error(`A lesson has no text at ${path}`);
    place.at[place.key] = text;
  }
  return copy;
}
