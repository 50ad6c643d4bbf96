import { expect, it } from 'vitest';
import { actionText } from '../../../ui/lessons/action-text.ts';
import { action } from '../../../ui/lessons/actions.ts';

/** What a lesson does, as whoever writes it reads it: in words, not in the keys of its file. */

it('tells each action and each of its values by what they are', () => {
  expect(actionText({ do: 'pedal', bar: 40, seconds: 1.5 })).toBe(
    'Presses the pedal and holds it · Line pressure, bar: 40 · How long the pedal takes, s: 1.5',
  );
  expect(actionText({ do: 'drum', way: 'backward' })).toMatch(/^Turns the drum · backward$/);
  expect(actionText({ do: 'condition', adjusterSeized: true })).toMatch(
    /The adjuster is stuck where it stands$/,
  );
  expect(actionText({ do: 'show', on: ['fan', 'edge'], names: ['star wheel'] })).toMatch(
    / · on: gap fan, edge-on · names: Star wheel$/,
  );
});

it('no action is told by its key alone', () => {
  for (const { entries } of action.options) {
    const what = entries.do.literal;
    expect(actionText({ do: what }), what).not.toBe(what);
    // These keys are the words for it.
    for (const key of Object.keys(entries).filter((k) => !['do', 'on', 'off', 'names'].includes(k)))
      expect(actionText({ do: what, [key]: 7 }), `${what} ${key}`).not.toContain(` · ${key}: `);
  }
});

it('a stranger’s action that the format does not know stands as it is', () => {
  expect(actionText({ do: 'explode', constructor: 3, __proto__: 1 })).toBe(
    'explode · constructor: 3',
  );
  expect(actionText(null)).toBe('null');
});
