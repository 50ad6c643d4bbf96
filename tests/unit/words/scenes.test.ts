import { expect, it } from 'vitest';
import benchBrake from '../../../scenes/bench-brake.json';
import farmTrailer from '../../../scenes/farm-trailer.json';
import ferryRunabout from '../../../scenes/ferry-runabout.json';
import quayVan from '../../../scenes/quay-van.json';
import german from '../../../sim/words/de.ts';
import { recordSceneNames as english, glossary } from '../../../sim/words/en.ts';

/** What the page shows of a scene file, and words that are looked for in its texts. */

const shown = [quayVan, benchBrake, farmTrailer, ferryRunabout].flatMap((scene) => [
  scene.title,
  scene.about,
  ...scene.states.map(({ name }) => name),
  ...scene.springs.map(({ name }) => name),
  ...scene.duties.flatMap(({ name, about }) => [name, about]),
]);

it('every text of a teaching brake is said in German, and in English as it stands there', () => {
  expect(shown.length).toBeGreaterThan(40);
  const { named } = german.recordSceneNames;
  expect(shown.filter((text) => named(text) === text)).toEqual([]);
  expect(shown.filter((text) => english.named(text) !== text)).toEqual([]);
  expect(named('A brake of one’s own')).toBe('A brake of one’s own');
});

it('words of the trade and their forms are told apart, in each language', () => {
  for (const terms of [glossary.terms, german.glossary.terms]) {
    const forms = Object.values(terms).flatMap(({ word, forms: more = [] }) =>
      [word, ...more].map((form) => form.toLowerCase()),
    );
    expect(forms.filter((form, i) => forms.indexOf(form) !== i)).toEqual([]);
  }
});
