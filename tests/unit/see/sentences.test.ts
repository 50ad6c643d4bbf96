import { expect, it } from 'vitest';
import { isFigure, type SignTable, signs, told } from '../../../sim/workshop/index.ts';
import { alsoText, caseText, sentenceOf } from '../../../ui/stations/see/sentences.ts';
import stored from '../../../ui/stations/see/van-signs.json' with { type: 'json' };

const table = stored as unknown as SignTable;

it('every answer that can be given, and all that a fault shows, is a sentence with a verb', () => {
  const verb =
    /\b(is|are|was|were|has|goes|gets?|get|takes?|stays?|stands?|brings|changes|turns|rubs|does|cannot|slides|rocks|rings|sounds|comes|came|follows|brakes|grabs|pulls|holds|move|measures?|swings|drops|gives|lacks|touch|let|frees|will|have|pulses|sinks|clicks?|squeals|grinds|groans|clunks|rattles|pops|smells|stood|got)\b/;
  const odd: string[] = [];
  for (const s of signs) {
    const values = isFigure(s.values) ? [] : s.values.map(([id]) => sentenceOf(s.key, id));
    const shown = Object.values(table.faults).map((f) =>
      alsoText(s.key, f[s.key], table.sound[s.key]),
    );
    odd.push(...[...values, ...shown].filter((t) => !verb.test(t)).map((t) => `${s.key}: ${t}`));
  }
  for (const t of told)
    odd.push(...t.values.map(([id]) => sentenceOf(t.key, id)).filter((x) => !verb.test(x)));
  expect(odd).toEqual([]);
});

it('figures stand with their unit, and beside what a sound brake shows', () => {
  expect(sentenceOf('notches', '4')).toBe('the hand lever takes 4 notches');
  // Stored of the quay van: 3.6 notches with a cable that keeps its pull, 5.3 sound (the teaching tables).
  const kept = table.faults['kept pull']?.notches ?? Number.NaN;
  expect(alsoText('notches', kept, table.sound.notches)).toMatch(
    /^the hand lever takes \d\.\d notches, a sound one \d\.\d$/,
  );
  expect(sentenceOf('force', '40')).toBe(
    'it takes 40\u00a0N at the tyre to keep the wheel turning',
  );
});

it('several stand in the band over another station', () => {
  expect(caseText({ hot: 'one', turns: '?', slides: 'some' })).toBe(
    'one rear drum gets hot · the drum slides a few millimetres and stops',
  );
  expect(caseText({})).toBe('nothing said yet');
});
