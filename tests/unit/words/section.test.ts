import { afterEach, expect, it } from 'vitest';
import { section, speak } from '../../../sim/words/section.ts';

afterEach(() => speak(null));

const english = { done: 'Done', toGo: (km: number) => `${km} km to go` };

it('a section is English until another language is spoken', () => {
  expect(section('planted', english)).toBe(english);
  speak({ planted: { done: 'Fertig', toGo: (km: number) => `noch ${km} km` } });
  expect(section('planted', english).done).toBe('Fertig');
  expect(section('planted', english).toGo(3)).toBe('noch 3 km');
});

it('a section that the other language does not have stays English', () => {
  speak({ elsewhere: { done: 'Fertig' } });
  expect(section('planted', english)).toBe(english);
});
