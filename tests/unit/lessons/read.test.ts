import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tellFinding } from '../../../sim/index.ts';
import { readLesson, readLessonText } from '../../../ui/lessons/read.ts';

/** A lesson file is a stranger's: whatever is wrong with it is told, each place by its path. */

const plain = JSON.parse(
  readFileSync(new URL('../../../scenes/lessons/06-the-click.json', import.meta.url), 'utf8'),
) as Record<string, unknown> & { steps: Record<string, unknown>[] };

/** The lesson with its first step changed. */
const withStep = (change: Record<string, unknown>): unknown => ({
  ...plain,
  steps: [{ ...plain.steps[0], ...change }, ...plain.steps.slice(1)],
});

function findings(data: unknown): readonly string[] {
  const read = readLesson(data);
  return read.ok ? [] : read.findings.map(tellFinding);
}

it('is read where nothing is wrong', () => {
  expect(findings(plain)).toEqual([]);
});

describe('what is wrong with a lesson', () => {
  it.each<[string, unknown, string]>([
    ['a key that it does not have', { ...plain, tittle: 'x' }, 'the nearest is title'],
    ['a key of a step', withStep({ shos: 'x' }), 'steps.0.shos: found an unknown key'],
    ['no steps', { ...plain, steps: [] }, 'steps: found'],
    ['another version', { ...plain, version: 9 }, 'version: found 9; allowed: 1'],
    ['a brake that is not there', { ...plain, brake: 'quay-vam' }, 'the nearest is quay-van'],
    ['a state', { ...plain, state: 'Worn in' }, 'the nearest is Worn-in'],
    ['a value that is not told', withStep({ shows: '{tork=5}' }), 'steps.0.shows: found tork'],
    ['a moment', withStep({ shows: '{tp.climb=5}' }), 'the nearest is top'],
    ['a brace', withStep({ shows: 'so {it is' }), 'steps.0.shows: found so {it is'],
    ['an action', withStep({ hand: [{ do: 'pedel', bar: 4 }] }), 'steps.0.hand.0'],
    ['a pressure', withStep({ hand: [{ do: 'pedal', bar: 4000 }] }), 'steps.0.hand.0.bar'],
    ['a reading to look at', withStep({ look: { readings: ['climp'] } }), 'the nearest is climb'],
    [
      'two choices that hold',
      withStep({
        choices: [{ says: [{ words: 'a', holds: true }] }, { says: [{ words: 'b', holds: true }] }],
      }),
      'steps.0.choices: found 2 that hold in all their words; allowed: exactly one',
    ],
    ['no question', withStep({ ask: undefined }), 'steps.0.ask: found nothing'],
    ['a question in a talk', { ...plain, kind: 'talk' }, 'steps.0.ask: found a question'],
    ['a scene that cannot be built', { ...plain, scene: { format: 'x' } }, 'scene.'],
  ])('%s', (_what, data, told) => {
    expect(findings(data).join('\n')).toContain(told);
  });

  it('names every place at once', () => {
    const both = { ...plain, tittle: 'x', steps: [{ ...plain.steps[0], shos: 1, lok: 2 }] };
    const all = findings(both).join('\n');
    for (const key of ['tittle', 'steps.0.shos', 'steps.0.lok']) expect(all).toContain(key);
  });
});

it.each([
  ['no JSON', '{', '(file)'],
  ['nothing', 'null', '(file)'],
  ['a list', '[]', 'format: found nothing'],
  ['a picture', '\u0000\u0001', '(file)'],
  ['too much of it', `"${'x'.repeat(300_000)}"`, 'at most'],
])('%s is no lesson', (_what, text, told) => {
  const read = readLessonText(text);
  expect(read.ok).toBe(false);
  if (!read.ok) expect(read.findings.map(tellFinding).join('\n')).toContain(told);
});

it('runs into no markup: texts stay texts', () => {
  const read = readLesson(withStep({ why: '<img src=x onerror=alert(1)>' }));
  expect(read.ok && read.lesson.steps[0]?.why).toBe('<img src=x onerror=alert(1)>');
});
