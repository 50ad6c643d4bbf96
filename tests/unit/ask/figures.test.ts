import { describe, expect, it } from 'vitest';
import { figureEntries, readFigures } from '../../../ui/ask/figures.ts';
import { ask } from '../../../ui/ask/rank.ts';
import type { Entry, Figures } from '../../../ui/ask/types.ts';
import { main } from '../../../ui/command/main.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { carryFigures } from '../../../ui/stations/ask/wants.ts';
import { lines } from '../../../ui/stations/inspect/lines.ts';

/** What was read, as "drum 183.4". */
const read = (text: string): string[] => readFigures(text).map(([what, n]) => `${what} ${n.text}`);

/** As people write them beside a wheel; what each number is of follows from its noun and its size. */
it.each([
  ['drum 183.4 mark 184', ['drum 183.4', 'mark 184']],
  ['203.4 drum, max dia 204', ['drum 203.4', 'mark 204']],
  ['my drum measures 230,15 mm, stamped 231', ['drum 230,15', 'mark 231']],
  ['drum 183.4, it says 184, score 0.3', ['drum 183.4', 'mark 184', 'score 0.3']],
  ['drum says MAX 229 and I got 228.7 with verniers', ['mark 229', 'drum 228.7']],
  ['drum 203.4 one way and 203.6 the other', ['drum 203.4', 'drum2 203.6']],
  ['leading lining 3.1 mm, trailing lining 4.4 mm', ['lining 3.1', 'trailing 4.4']],
  ['a 0.4 mm groove in the drum', ['score 0.4']],
  ['the lip is 0.6 mm', ['lip 0.6']],
  ['drum is 9 inch', ['drum 9']],
  ['drum 8" max 8.09"', ['drum 8', 'mark 8.09']],
  ['lining 2 mm', ['lining 2']],
  ['1.8mm left on the shoes', ['lining 1.8']],
  ['drum 203.1 and lining 3.2', ['drum 203.1', 'lining 3.2']],
  ['handbrake 9 clicks', ['notches 9']],
  ['lever comes up 11 notches', ['notches 11']],
  ['holds on a 20 % hill?', ['slope 20']],
  ['hill of 1 in 5', ['slope 20']],
  ['50 N to turn the wheel', ['turn 50']],
  ['imbalance 34 %', ['unlike 34']],
  ['ovality 22 %', ['swing 22']],
] as const)('%s', (text, what) => {
  expect(read(text)).toEqual(what);
});

it.each([
  '1998 van drum stuck',
  'drum stuck after 3 weeks',
  'press it 10 times',
  'which of the 2 shoes is leading',
  'lining 200 mm',
  'drum 12 mm wide',
  'handbrake 60 clicks',
  'q 4',
  '',
])('no figure in "%s"', (text) => {
  expect(read(text)).toEqual([]);
});

describe('carried along', () => {
  const carried = (text: string) => {
    const [entry] = figureEntries(text);
    expect(entry?.leads.to, text).toBe('figures');
    const { figures } = (entry as Entry).leads as { figures: Figures };
    return carryFigures.does(plainMoment('ask'), figures);
  };
  it('sizes to the sheet, its first place open, mm said', () => {
    const m = carried('drum 183.4 mark 184');
    expect(m.station).toBe('inspect');
    const { paper, wheel, line } = m.parts.inspect;
    expect(paper.wheels.left).toEqual({ drumA: '183.4 mm' });
    expect(paper.limits).toEqual({ drumMax: '184 mm' });
    expect([wheel, lines[line]?.key]).toEqual(['left', 'drumA']);
  });
  it('inches as inches; the right wheel and the trailing shoe where they are said', () => {
    const m = carried('right drum 9 in, trailing lining 3/32 in');
    expect(m.parts.inspect.paper.wheels.right).toEqual({
      drumA: '9 in',
      trailThin: '3/32 in',
    });
  });
  it('all figures of a sentence, a score and both wheels with them', () => {
    const { paper } = carried('drum 183.4, it says 184, score 0.3').parts.inspect;
    expect(paper.wheels.left).toEqual({ drumA: '183.4 mm', score: '0.3 mm' });
    expect(paper.limits).toEqual({ drumMax: '184 mm' });
    const both = carried('left drum 203.1, right drum 203.9, max 204').parts.inspect.paper;
    expect([both.wheels.left, both.wheels.right]).toEqual([
      { drumA: '203.1 mm' },
      { drumA: '203.9 mm' },
    ]);
    expect(both.limits).toEqual({ drumMax: '204 mm' });
  });
  it('notches, a pull at the tyre and figures of rollers to What I see', () => {
    const lever = carried('handbrake 9 clicks');
    expect([lever.station, lever.parts.see.topic]).toEqual(['see', 'lever']);
    expect(lever.parts.see.said).toEqual({ notches: '9' });
    expect(carried('takes 50 N to turn the wheel').parts.see).toMatchObject({
      topic: 'drag',
      said: { force: '50' },
    });
    expect(carried('imbalance 34 %, ovality 22 %').parts.see).toMatchObject({
      topic: 'braking',
      said: { unlike: '34', swing: '22' },
    });
  });
  it('a slope to Park', () => {
    const m = carried('hill of 1 in 5, will the handbrake hold');
    expect([m.station, m.parts.park.rule, m.parts.park.slope]).toEqual(['park', 'own', 20]);
  });
});

it('stands first in the list, before what the words alone would find', () => {
  const [first, second] = ask('drum 183.4 mark 184').found;
  expect(first?.entry).toMatchObject({
    key: 'figures:sheet',
    title: 'Judge it: drum 183.4 mm, mark 184 mm',
  });
  expect(second?.entry.key).not.toMatch(/^figures/);
});

it('is told on the command line, with where it leads', async () => {
  const told: string[] = [];
  await main(['ask', 'lining 2 mm', '--json'], (t) => told.push(t), console.error);
  const { found } = JSON.parse(told.join('')) as {
    found: { title: string; leads: string }[];
  };
  expect(found[0]).toMatchObject({
    title: 'Judge it: lining 2 mm',
    leads: 'Inspect',
  });
});
