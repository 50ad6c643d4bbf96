import { describe, expect, it } from 'vitest';
import { entries } from '../../../ui/ask/entries.ts';
import { named, terms, wordsIn } from '../../../ui/glossary.ts';

describe('words of the trade', () => {
  it('are found in a text as whole words, the longest form first, each once', () => {
    const text = 'The return spring pulls the shoes; the shoe’s lining and a second lining.';
    expect(wordsIn(text).map((f) => text.slice(f.at, f.at + f.length))).toEqual([
      'return spring',
      'shoes',
      'lining',
    ]);
    expect(wordsIn('A drumstick in the tablet.')).toEqual([]);
  });

  it('give both countries’ words, in the order that was chosen', () => {
    const held = terms.find((t) => t.id === 'hold-down');
    if (!held) throw new Error('no hold-down');
    expect(named(held, 'British')).toBe('British: steady spring · American: hold-down');
    expect(named(held, 'American')).toBe('American: hold-down · British: steady spring');
  });

  it('each pair can be asked for by either word', () => {
    for (const { pair, id } of terms) {
      if (!pair) continue;
      const entry = entries.find((e) => e.key === `term:${id}`);
      expect(entry?.says).toEqual([...pair]);
      expect(entry?.text).toContain(pair[1]);
    }
  });
});
