import { expect, it } from 'vitest';
import { openedHere } from '../../../ui/record/parts.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { putLessons } from '../../../ui/stations/lessons/part.ts';

/** A link that is opened leaves what is a person's own. */

const start = plainMoment();
const taken = { step: 2, answers: [] };

it('lessons that are written or kept here, and how far they were taken, stay; the link’s come to them', () => {
  const here = putLessons(start, {
    draft: '{"mine":1}',
    shelf: ['mine'],
    progress: { both: { step: 0, answers: [] }, mine: taken },
  });
  const linked = putLessons(start, {
    draft: '{"theirs":1}',
    shelf: ['theirs', 'mine'],
    progress: { both: taken },
    done: 3,
  });
  const { lessons } = openedHere(linked, here).parts;
  expect(lessons.draft).toBe('{"mine":1}');
  expect(lessons.shelf).toEqual(['mine', 'theirs']);
  expect(lessons.progress).toEqual({ both: taken, mine: taken });
  expect(lessons.done).toBe(3);
});

it('a link without lessons takes none away; what is no person’s own is the link’s', () => {
  const here = putLessons({ ...start, pedal: 20 }, { draft: '{"mine":1}' });
  const opened = openedHere({ ...start, pedal: 40 }, here);
  expect(opened.parts.lessons.draft).toBe('{"mine":1}');
  expect(opened.pedal).toBe(40);
});
