import { expect, it } from 'vitest';
import german from '../../../sim/words/de.ts';
import { language as english } from '../../../sim/words/en.ts';

/** A name inside a sentence: what each language makes of its beginning. */

it.each([
  ['Hold-down pin', 'hold-down pin'],
  ['Adjuster seized, too short', 'adjuster seized, too short'],
  ['US road rule, trucks and trailers', 'US road rule, trucks and trailers'],
  ['Ø of the drum', 'Ø of the drum'],
  ['Drum Ø, new', 'drum Ø, new'],
  ['N·m at 40 bar', 'N·m at 40 bar'],
  ['A piston stuck', 'a piston stuck'],
  ['Quay van worn', 'quay van worn'],
  ['', ''],
])('English: %s', (name, inside) => {
  expect(english.inside(name)).toBe(inside);
});

it.each([
  // Nouns.
  ['Bremshebel', 'Bremshebel'],
  ['Seilzug zu kurz eingestellt', 'Seilzug zu kurz eingestellt'],
  ['Bolzen oder Widerlager verschlissen', 'Bolzen oder Widerlager verschlissen'],
  ['Breite des Belags', 'Breite des Belags'],
  ['Ende Ferse', 'Ende Ferse'],
  ['Wasser in der Trommel', 'Wasser in der Trommel'],
  ['Zähne oder Schritte', 'Zähne oder Schritte'],
  ['US-Verkehrsvorschrift, Lkw und Anhänger', 'US-Verkehrsvorschrift, Lkw und Anhänger'],
  ['N·m bei 40 bar', 'N·m bei 40 bar'],
  // Words of other kinds before them.
  ['Vordere Backe', 'vordere Backe'],
  ['Obere Rückzugfeder', 'obere Rückzugfeder'],
  ['Ein Kolben fest', 'ein Kolben fest'],
  ['Falscher Radzylinder: Bohrung zu groß', 'falscher Radzylinder: Bohrung zu groß'],
  ['Auflaufender Belag, Spitze', 'auflaufender Belag, Spitze'],
  ['Zu meiner machen', 'zu meiner machen'],
  ['Über die Beläge', 'über die Beläge'],
  ['Meine Bremse', 'meine Bremse'],
  ['Neue Backen', 'neue Backen'],
  // The polite form is capital wherever it stands.
  ['Ihre Maße aus einem Bild', 'Ihre Maße aus einem Bild'],
  ['', ''],
])('German: %s', (name, inside) => {
  expect(german.language.inside(name)).toBe(inside);
});

it('no word of German that is a noun elsewhere loses its capital before a lower one', () => {
  const strings: string[] = [];
  const gather = (texts: unknown): void => {
    if (typeof texts === 'string') strings.push(texts);
    else if (typeof texts === 'object' && texts) Object.values(texts).forEach(gather);
  };
  gather(german);
  // A word behind an article is a noun, or an adjective that is made one.
  const nouns = new Set(
    strings.flatMap((t) =>
      [...t.matchAll(/\b(?:der|die|das|den|dem|des|ein|eine|einen) (\p{Lu}\p{Ll}+)\b/gu)].map(
        ([, noun = '']) => noun,
      ),
    ),
  );
  expect(nouns.size).toBeGreaterThan(300);
  const lost = [...nouns].filter(
    (noun) => german.language.inside(`${noun} am Rad`) !== `${noun} am Rad`,
  );
  expect(
    lost.filter(
      (noun) =>
        !/^(Sein|Gerade|Links|Nichts|Mehr|Ganze|Andere|Was|Zu|Wann|Wo|Warum|Gut|Offene)$/.test(
          noun,
        ),
    ),
  ).toEqual([]);
});
