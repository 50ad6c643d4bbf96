import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { expect, it } from 'vitest';
import words from '../../../sim/words/de.ts';
import { germanTexts } from '../../../ui/lessons/german.ts';
import { readLesson } from '../../../ui/lessons/read.ts';
import { figuresOf } from '../../../ui/lessons/text.ts';
import { textAt, textsSchema, translated } from '../../../ui/lessons/translated.ts';

/** The lessons in German: the same texts, with the same figures, and nothing else of a lesson. */

const folder = fileURLToPath(new URL('../../../scenes/lessons/', import.meta.url));
const read = (path: string): unknown => JSON.parse(readFileSync(`${folder}${path}`, 'utf8'));
const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
const lessons = new Map(names.map((name) => [(read(name) as { name: string }).name, read(name)]));
const german = germanTexts.map((file) => v.parse(textsSchema, file));

/** Keys whose strings are told to people; the others are codes. */
const TOLD =
  /(^|\.)(title|idea|who|caution|starter|exit|shortly|whatIf|ask|button|shows|why|next|say|tryIt|behind|point|back|words)$/;

function* textsIn(value: unknown, path: string): Generator<[path: string, text: string]> {
  if (typeof value === 'string') {
    if (TOLD.test(path)) yield [path, value];
  } else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value))
      yield* textsIn(inner, path === '' ? key : `${path}.${key}`);
}

it('every lesson of the page has its texts in German, and every file there is used', () => {
  expect(german.map((g) => g.lesson).sort()).toEqual([...lessons.keys()].sort());
  expect(germanTexts).toHaveLength(readdirSync(`${folder}de`).length);
  expect(new Set(german.map((g) => g.language))).toEqual(new Set(['de']));
});

it.each(german.map((g) => [g.lesson, g] as const))(
  '%s: the same paths, the same figures',
  (_, g) => {
    const lesson = lessons.get(g.lesson);
    const english = [...textsIn(lesson, '')].filter(([path]) => path !== 'who');
    expect(english.length).toBeGreaterThan(10);
    const paths = Object.keys(g.texts).filter((path) => path !== 'who');
    expect(paths.sort()).toEqual(english.map(([path]) => path).sort());
    const figures = (text: string): string[] =>
      figuresOf(text)
        .map((f) => f.text)
        .sort();
    for (const [path, text] of Object.entries(g.texts))
      expect(figures(text), path).toEqual(figures(textAt(lesson, path) ?? ''));
    expect(readLesson(translated(lesson, g))).toMatchObject({ ok: true });
  },
);

it('Ask tells a lesson by the same title and idea', () => {
  const asked = Object.values(words.askSaidLessons) as { title: string; idea: string }[];
  expect(asked.map(({ title, idea }) => [title, idea]).sort()).toEqual(
    german.map(({ texts }) => [texts['title'], texts['idea']]).sort(),
  );
});

it('a text that the lesson does not have is refused, and the English lesson stays as it is', () => {
  const lesson = { title: 'One', steps: [{ ask: 'Two' }] };
  const texts = (of: Record<string, string>) =>
    v.parse(textsSchema, {
      format: 'takeup-lesson-texts',
      version: 1,
      lesson: 'x',
      language: 'de',
      texts: of,
    });
  expect(translated(lesson, texts({ 'steps.0.ask': 'Zwei' }))).toEqual({
    title: 'One',
    steps: [{ ask: 'Zwei' }],
  });
  expect(lesson.steps[0]?.ask).toBe('Two');
  expect(() => translated(lesson, texts({ 'steps.1.ask': 'Drei' }))).toThrow('steps.1.ask');
  expect(() => texts({ 'steps..ask': 'Drei' })).toThrow();
});
