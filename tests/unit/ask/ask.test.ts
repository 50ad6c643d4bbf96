import { describe, expect, it } from 'vitest';
import { entries } from '../../../ui/ask/entries.ts';
import { ask } from '../../../ui/ask/rank.ts';
import { slip, termsOf } from '../../../ui/ask/read.ts';
import { NEVER_MIXED, synonyms } from '../../../ui/ask/words.ts';
import { main } from '../../../ui/command/main.ts';
import { questions } from '../../../ui/questions/index.ts';
import { type Phrasing, phrasings } from './phrasings.ts';
import { heldOut, mendedFor } from './phrasings-later.ts';
import { everyday, further, noticed } from './phrasings-spoken.ts';

const keysOf = (text: string, most = 3): string[] =>
  ask(text)
    .found.slice(0, most)
    .map((f) => f.entry.key);
const read = (text: string): string[] => termsOf(text).map((t) => t.term);

describe('phrasings', () => {
  it('are 300 at the least, each once, and lead to what there is', () => {
    expect(phrasings.length).toBeGreaterThanOrEqual(300);
    expect(new Set(phrasings.map((p) => p.said)).size).toBe(phrasings.length);
    const known = new Set(entries.map((e) => e.key));
    expect(phrasings.flatMap((p) => p.leads).filter((k) => !known.has(k))).toEqual([]);
  });
  const missed = (all: readonly Phrasing[]) =>
    all.filter((p) => !keysOf(p.said).some((k) => p.leads.includes(k))).map((p) => p.said);
  // Each set apart, so that none hides behind another.
  it.each([
    ['first', phrasings],
    ['later', mendedFor],
    ['held out once', heldOut],
    ['everyday', everyday],
    ['noticed', noticed],
    ['further', further],
  ])('%s: 95 of 100 lead among the first three to what helps', (_name, all) => {
    const lost = missed(all);
    expect(1 - lost.length / all.length, lost.join('\n')).toBeGreaterThanOrEqual(0.95);
  });
  it('the later ones lead to what there is, but for what figures make of themselves', () => {
    const known = new Set(entries.map((e) => e.key));
    const named = [mendedFor, heldOut, everyday, noticed, further].flat().flatMap((p) => p.leads);
    expect(named.filter((k) => !known.has(k) && !k.startsWith('figures:'))).toEqual([]);
  });
});

it('every entry has a key of its own, a title, a text and what people say', () => {
  expect(new Set(entries.map((e) => e.key)).size).toBe(entries.length);
  for (const e of entries) {
    expect(e.title, e.key).not.toBe('');
    expect(e.text, e.key).not.toBe('');
    expect(e.says.length, e.key).toBeGreaterThan(0);
  }
  // Of every kind that the bench has.
  const kinds = new Set(entries.map((e) => e.kind));
  for (const kind of [
    'question',
    'fault',
    'station',
    'check',
    'reading',
    'part',
    'word',
    'lesson',
    'caution',
  ])
    expect(kinds.has(kind as never), kind).toBe(true);
});

it('what an entry says of itself finds it among the first three', () => {
  const lost = entries.flatMap((e) =>
    e.says.filter((s) => !keysOf(s).includes(e.key)).map((s) => `${e.key}: ${s}`),
  );
  const all = entries.reduce((n, e) => n + e.says.length, 0);
  expect(lost.length / all, lost.join('\n')).toBeLessThan(0.08);
});

describe('the list is never empty', () => {
  it.each(['', '   ', 'xyzzy', '1987', '🛞', '<b>', 'a'.repeat(5000)])('for "%s"', (text) => {
    expect(ask(text).found.length).toBeGreaterThan(0);
  });
  it('and leads to What I see where nothing is known', () => {
    expect(keysOf('xyzzy')[0]).toBe('station:see');
  });
  it('names of vehicles and years cost nothing', () => {
    const plain = keysOf('handbrake too many clicks');
    expect(keysOf('1998 Zyxomobile GTX handbrake too many clicks')).toEqual(plain);
  });
});

describe('reading', () => {
  it('takes words that every object of the language has for words', () => {
    for (const word of ['constructor', 'toString', 'valueOf', '__proto__', 'hasOwnProperty']) {
      for (const { term } of termsOf(word)) expect(typeof term, word).toBe('string');
      expect(() => ask(word), word).not.toThrow();
    }
  });
  it('apostrophes of any kind, or none', () => {
    const all = ["won't hold", 'won’t hold', 'wont hold', 'won t hold', 'WON`T HOLD'].map(read);
    for (const one of all) expect(one).toEqual(['hold', 'not_hold']);
  });
  it('both dialects and joined or apart are one term', () => {
    for (const text of [
      'handbrake',
      'hand brake',
      'hand-brake',
      'parking brake',
      'e-brake',
      'P-brake',
    ])
      expect(read(text), text).toEqual(['handbrake']);
    expect(read('equalizer')).toEqual(read('equaliser'));
    expect(read('off-center')).toEqual(read('off centre'));
  });
  it('what is spoken in several countries, and "will not" as "won’t"', () => {
    expect(read('cannae get it aff')).toEqual(read("can't get it off"));
    expect(read('the drum will not come off')).toEqual(read("the drum won't come off"));
    expect(read('get ma rear drum oot')).toEqual(read('get my rear drum out'));
  });
  it('small words may stand inside a phrase', () => {
    expect(read('get the bloody rear drum off')).toEqual(read('get drum off'));
  });
  it('a click beside the hand lever is a notch, beside the pedal the adjuster’s', () => {
    expect(read('handbrake 9 clicks')).toContain('notch');
    expect(read('clicks when I press the pedal')).toContain('click');
  });
  it('slips of people’s words too', () => {
    for (const [slipped, right] of [
      ['squeel', 'squeal'],
      ['siezed', 'seized'],
      ['cilinder', 'cylinder'],
      ['handbrak', 'handbrake'],
      ['adjsuter', 'adjuster'],
      ['peddal', 'pedal'],
    ] as const)
      expect(read(slipped), slipped).toEqual(read(right));
  });
  it('no slip makes one known word another', () => {
    for (const [a, b] of NEVER_MIXED) expect(read(a), `${a} ${b}`).not.toEqual(read(b));
  });
  it('a negation stays with its word', () => {
    expect(read("won't click")).toContain('not_click');
    expect(read('keeps clicking')).not.toContain('not_click');
    expect(keysOf("won't come off", 1)).not.toEqual(keysOf("won't go on", 1));
  });
  it('counts edits: one letter other, more, less, or two changed about', () => {
    expect(slip('brake', 'brakes', 1)).toBe(true);
    expect(slip('brake', 'barke', 1)).toBe(true);
    expect(slip('brake', 'bark', 1)).toBe(false);
    expect(slip('adjuster', 'ajusterr', 2)).toBe(true);
  });
  it('no phrase means two things', () => {
    const seen = new Map<string, string>();
    const twice: string[] = [];
    for (const { term, said } of synonyms)
      for (const s of said) {
        const before = seen.get(s);
        if (before !== undefined && before !== term) twice.push(`${s}: ${before}, ${term}`);
        seen.set(s, term);
      }
    expect(twice).toEqual([]);
  });
});

it('a danger that is meant stands above everything else', () => {
  for (const text of ['can I drive with grinding brakes', 'pedal sinks to the floor slowly'])
    expect(ask(text).found[0]?.entry.danger, text).toBe(true);
});

it('of two topics one of each stands first', () => {
  const keys = keysOf('handbrake too many clicks and cracked drum');
  expect(keys).toContain('not here:crack');
  expect(keys.some((k) => k !== 'not here:crack' && /lever|cable|park|q097|q099/.test(k))).toBe(
    true,
  );
});

it('the command line gives the same list', async () => {
  const told: string[] = [];
  const code = await main(
    ['ask', 'drum', 'stuck', '--json'],
    (t) => told.push(t),
    (t) => told.push(t),
  );
  expect(code).toBe(0);
  const { found } = JSON.parse(told.join('')) as {
    found: { kind: string; title: string }[];
  };
  expect(found.map((f) => f.title)).toEqual(ask('drum stuck', 10).found.map((f) => f.entry.title));
  expect(found[0]).toMatchObject({ kind: 'Station', leads: 'Drum off' });
  const bare: string[] = [];
  expect(
    await main(
      ['ask'],
      (t) => bare.push(t),
      (t) => bare.push(t),
    ),
  ).toBe(2);
  expect(bare[0]).toContain('WORDS');
});

describe('all kinds of question of the trade’s list', () => {
  it('are 118, each answered, or told why not and what to do instead', () => {
    expect(questions).toHaveLength(118);
    expect(new Set(questions.map((q) => q.id)).size).toBe(118);
    for (const q of questions) {
      if (q.station) {
        expect(q.answer, q.id).not.toBe('');
        expect(q.steps, q.id).not.toBe('');
        continue;
      }
      expect(q.steps, q.id).toMatch(/^Not covered: /);
      // What to do instead: something that is done, or "do not drive it".
      expect(q.steps, q.id).toMatch(/[Dd]o not drive it|[Ll]ook|roll a little|rock each|film of/);
    }
  });
  it('are found by their own words, and as people put them', () => {
    const lost = questions.filter((q) => !keysOf(q.ask).includes(`question:${q.id}`));
    expect(lost.map((q) => q.id)).toEqual([]);
  });
  it('of as many of each group as are asked', () => {
    const of = (group: string) => questions.filter((q) => q.group === group).length;
    // How often each was asked, in the list of the trade's questions.
    const asked: Readonly<Record<string, number>> = {
      'Parking brake': 14,
      'Drag and heat': 12,
      'Drum will not come off': 9,
      'How the adjuster works': 9,
      Noises: 9,
      'Forwards and backwards': 8,
      'Adjusted too far': 7,
      Pedal: 7,
      'Drum will not go on': 6,
      Wear: 6,
      Setting: 5,
      'Grabbing and locking': 5,
      'Pulling to one side': 5,
      'Drum worn or not round': 5,
      'Limits and life': 4,
      'Which shoe where': 4,
      'Cylinder and leaks': 3,
    };
    expect(Object.fromEntries(Object.keys(asked).map((g) => [g, of(g)]))).toEqual(asked);
  });
});
