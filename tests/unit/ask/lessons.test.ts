import { expect, it } from 'vitest';
import { entries } from '../../../ui/ask/entries.ts';
import { ask } from '../../../ui/ask/rank.ts';
import { lessonTexts } from '../../../ui/ask/said/lessons.ts';
import { shipped } from '../../../ui/lessons/library.ts';

it('every lesson of the page is told as it calls itself', () => {
  expect(Object.entries(lessonTexts).map(([name, { title, idea }]) => [name, title, idea])).toEqual(
    shipped.map((l) => [l.name, l.title, l.idea]),
  );
});

it('and leads to itself by its name', () => {
  for (const { name } of shipped)
    expect(entries.find((e) => e.key === `lesson:${name}`)?.leads).toEqual({ to: 'lesson', name });
});

it('who asks for a lesson gets one first', () => {
  for (const text of ['lesson about the click', 'a talk about how a drum brake works'])
    expect(ask(text).found[0]?.entry.kind, text).toBe('lesson');
});
