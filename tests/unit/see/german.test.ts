import { afterAll, expect, it } from 'vitest';
import german from '../../../sim/words/de.ts';
import { speak } from '../../../sim/words/section.ts';

/** What I see, and what an examination finds, in German: shown so, while every code stays what it was. */

speak(german);
afterAll(() => speak(null));
const { examinations, examine, faults, isFigure, signs, told } = await import(
  '../../../sim/workshop/index.ts'
);
const { axleWith } = await import('../../../sim/index.ts');
const { vanRig, vanState } = await import('../../../ui/stations/faults/van.ts');
const { line } = await import('../../../ui/stations/faults/text.ts');
const { groups, titles, typedText, valueText } = await import('../../../ui/stations/see/words.ts');
const { sentenceOf } = await import('../../../ui/stations/see/sentences.ts');
const { default: stored } = await import('../../../ui/stations/see/van-signs.json');

/** Words that German does not have, of those that the station's English is made of. */
const ENGLISH =
  /(?<![\p{L}.-])(the|of|with|and|is|are|from|that|this|its|not|when|than|by|at|on|off|for|each|how|does|which|wheel|drum|drums|shoes|lining|pedal goes|lever|none|both|alike|dull|freely|left|right|dry|stiff|pads|turns|teeth|tooth|bore|swing|notches|bleed|trouble)(?![\p{L}-])/u;

it('asks, names and answers nothing in English', () => {
  const texts = [
    ...Object.values(titles),
    ...groups.map(([title]) => title),
    ...signs.flatMap((s) => [
      ...[s.name, s.ask, s.how],
      ...(isFigure(s.values)
        ? [valueText(s.key, '3.5'), sentenceOf(s.key, '3.5')]
        : s.values.flatMap(([code, label]) => [label, sentenceOf(s.key, [code, code])])),
    ]),
    ...told.flatMap((t) => [t.name, t.ask, ...t.values.map(([, label]) => label)]),
  ];
  expect(texts.length).toBeGreaterThan(250);
  expect(texts.filter((t) => ENGLISH.test(t) || t === '')).toEqual([]);
  expect(typedText('3.5')).toBe('3,5');
  expect(valueText('hot', ['one', 'both'])).toBe('eine hinten oder beide hinten');
});

it('keeps the codes of answers: cases, links and the stored table have them', () => {
  const rows = [stored.sound, ...Object.values(stored.faults)] as Record<string, unknown>[];
  const unknown = signs.flatMap((s) => {
    if (isFigure(s.values)) return [];
    const codes = s.values.map(([code]) => code);
    return rows.flatMap((row) => row[s.key] as string[]).filter((code) => !codes.includes(code));
  });
  expect(unknown).toEqual([]);
  expect(signs.find((s) => s.key === 'turns')?.values).toContainEqual([
    'jerk',
    'nicht, dann ein Ruck',
  ]);
});

it('tells what an examination finds, compared by its codes', () => {
  const worn = { rig: vanRig(), state: vanState('Worn-in') };
  const lines = [null, ...faults.slice(0, 12)].flatMap((fault) => {
    const axle = axleWith(worn, fault);
    return examinations.map((e) => line(examine(axle, e.id)));
  });
  expect(lines.filter((l) => ENGLISH.test(l) || /undefined/.test(l) || l === '')).toEqual([]);
  const sound = examine(axleWith(worn, null), 'boots');
  expect(sound).toEqual([{ kind: 'words', name: 'both', says: 'dry' }]);
  expect(line(sound)).toBe('trocken');
});
