import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { tellFinding } from '../../../sim/index.ts';
import type { Lesson } from '../../../ui/lessons/format.ts';
import { untrue } from '../../../ui/lessons/holds.ts';
import { readLessonText } from '../../../ui/lessons/read.ts';
import { lessonStart, runStep, valuesOf } from '../../../ui/lessons/run.ts';
import { figuresOf } from '../../../ui/lessons/text.ts';

/** The lessons that come with the page: every step is run, and its text held against what came of it. */
const folder = fileURLToPath(new URL('../../../scenes/lessons/', import.meta.url));
const files = readdirSync(folder).filter((f) => f.endsWith('.json'));
const textOf = (file: string): string => readFileSync(folder + file, 'utf8');

function lessonOf(text: string): Lesson {
  const read = readLessonText(text);
  if (!read.ok) throw new Error(read.findings.map(tellFinding).join('\n'));
  return read.lesson;
}

it('has the fourteen lessons of the course, each with three to five steps', () => {
  const lessons = files.map((f) => lessonOf(textOf(f))).filter((l) => l.kind === 'lesson');
  expect(lessons.map((l) => l.number).sort((a = 0, b = 0) => a - b)).toEqual(
    Array.from({ length: 14 }, (_, i) => i + 1),
  );
  for (const { steps } of lessons) {
    expect(steps.length).toBeGreaterThanOrEqual(3);
    expect(steps.length).toBeLessThanOrEqual(5);
  }
});

describe.each(files)('%s', (file) => {
  const lesson = lessonOf(textOf(file));

  it('says what the model says', () => {
    expect(untrue(lesson).map(tellFinding)).toEqual([]);
  });

  it('takes the figures it shows from the model', () => {
    for (const { say = '', shows = '' } of lesson.steps) {
      const text = `${say} ${shows}`;
      const typed = figuresOf(text).reduce((t, f) => t.replace(f.text, ''), text);
      // What is set, such as 40 bar or 8 %, is a whole number; what is told has decimals.
      expect(typed).not.toMatch(/\d\.\d/);
    }
  });

  it('has values of the same names in its state as before it is driven there', () => {
    const { state: _, ...begins } = lesson;
    expect(valuesOf(lessonStart(lesson)).keys).toEqual(valuesOf(lessonStart(begins)).keys);
  });

  it('shows something for what it does', () => {
    for (const step of lesson.steps) {
      const { beats } = runStep(lesson, step);
      expect(beats.length).toBeGreaterThan(0);
      for (const { moments } of beats) expect(moments.length).toBeGreaterThan(0);
    }
  });
});

describe('a text that is no longer true', () => {
  const text = textOf('06-the-click.json');

  it('is found by its figure, with what the model has', () => {
    const wrong = lessonOf(text.replaceAll('{top.climb=80}', '{top.climb=35}'));
    const found = untrue(wrong).map(tellFinding);
    expect(found).toContain('steps.0.shows: found {top.climb=35}; allowed: 80');
  });

  it('is found by its condition', () => {
    const wrong = lessonOf(text.replace('"least": 50', '"least": 99'));
    expect(untrue(wrong).map((f) => f.path)).toContain('steps.0.checks.0');
  });

  it('is found where the brake is another', () => {
    const other = { ...lessonOf(text), brake: 'bench-brake', state: 'New' };
    expect(untrue(lessonOf(JSON.stringify(other))).length).toBeGreaterThan(5);
  });
});
