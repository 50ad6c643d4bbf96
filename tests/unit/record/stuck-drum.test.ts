import { describe, expect, it } from 'vitest';
import { questions } from '../../../ui/questions/index.ts';
import { backToMine } from '../../../ui/record/guest.ts';
import { fromText, toText } from '../../../ui/record/json.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import {
  answer,
  backOne,
  likelyOf,
  type Mine,
  nextQuestion,
  openPage,
  tryWorn,
} from '../../../ui/stations/drum-off/part.ts';
import { showQuestion } from '../../../ui/stations/questions/part.ts';

const start = openPage.does(plainMoment('drum-off'), 'mine');
const mine = (m: Moment): Mine => m.parts['drum-off'].mine;
const answered = (given: Partial<Mine>): Moment => answer.does(start, given);
const lip: Partial<Mine> = {
  fastening: 'studs',
  turns: 'freely',
  slides: 'a little',
  slack: 'no change',
};

describe('a stuck drum’s questions', () => {
  it('every answer that can be given is kept over a reload', () => {
    for (const turns of ['freely', 'lightly', 'one way', 'not at all'] as const) {
      const r = fromText(toText(answered({ turns, hole: 'none' })));
      expect(r.ok && mine(r.moment)).toMatchObject({ turns, hole: 'none' });
    }
  });

  it('a record from before the access hole was asked about is read', () => {
    const text = toText(answered(lip)).replace(/,?"hole":null/, '');
    expect(text).not.toContain('"hole"');
    const r = fromText(text);
    expect(r.ok && mine(r.moment)).toEqual({ ...lip, hole: null });
  });

  it('dragging one way alone points to a part that leans on a shoe', () => {
    const m = answered({ ...lip, turns: 'one way' });
    // One lining leads one way and trails the other: table of signs in sim/study/locks.ts.
    expect(likelyOf(mine(m))[0]).toBe('part leans on a shoe');
  });

  it('the hole is asked about where the adjuster is to be backed off, and only there', () => {
    expect(nextQuestion(mine(answered(lip)))).toBe('hole');
    const none = answer.does(answered(lip), { hole: 'none' });
    expect(nextQuestion(mine(none))).toBeNull();
    expect(nextQuestion(mine(backOne.does(none)))).toBe('hole');
    expect(nextQuestion(mine(answered({ ...lip, turns: 'one way', slack: 'helps' })))).toBeNull();
  });
});

describe('a worn drum to try', () => {
  it('comes as a guest in one step, and one’s own is back as it was', () => {
    const plain = plainMoment('drum-off');
    const worn = tryWorn.does(plain);
    expect(worn.bench.standing).toBe('Near the limit');
    expect(worn.guest?.stands).toEqual(['drum-off', 'order']);
    const back = backToMine.does(worn);
    expect(back.bench).toEqual(plain.bench);
    expect(back.guest).toBeNull();
    expect(fromText(toText(worn)).ok).toBe(true);
  });

  it('shows one’s own brake worn, also where the guest before does not stand at the drum', () => {
    // A question's brake stands in the station that answers it alone.
    const own = plainMoment('questions', { kind: 'scene', name: 'ferry-runabout' });
    const asked = questions
      .map((q) => showQuestion.does(own, q.id))
      .find(
        (m) => m.guest && !m.guest.stands.includes('drum-off') && m.bench.brake !== own.bench.brake,
      );
    if (!asked) throw new Error('no question brings a brake that does not stand at the drum');
    const worn = tryWorn.does(asked);
    expect(worn.bench.brake).toEqual(own.bench.brake);
    expect(worn.bench.standing).toBe('Half worn');
    expect(fromText(toText(worn)).ok).toBe(true);
    expect(backToMine.does(worn).bench).toEqual(own.bench);
  });
});
