import { expect, it } from 'vitest';
import german from '../../../sim/words/de.ts';
import * as english from '../../../sim/words/en.ts';

/** The second language says what the first says: the compiler holds names and kinds together, this the rest. */

type Text = string | readonly Text[] | ((...parts: unknown[]) => unknown) | { [key: string]: Text };

/** What people say or type for a thing is another thing in another language, as are its measures. */
const SAID = /^ask/;

/** A comma joins it to what stands before, where English has a space. */
const JOINED = new Set(['orderSetting.evenAtTheFirst']);

const all: { at: string; en: Text; de: Text }[] = [];
function pair(at: string, en: Text, de: Text): void {
  // What people say beside the lists, and how that is read, is each language's own.
  if (at === 'askMore.lines' || at === 'askPatterns') return;
  all.push({ at, en, de });
  // Forms of a word are each language's own, and only English has two lands that say it otherwise.
  if (/^glossary\.terms\.[^.]+$/.test(at)) {
    for (const key of ['word', 'means'])
      pair(
        `${at}.${key}`,
        (en as Record<string, Text>)[key] as Text,
        (de as Record<string, Text>)[key] as Text,
      );
    return;
  }
  if (typeof en !== 'object') return;
  for (const key of Object.keys(en))
    pair(
      `${at}.${key}`,
      (en as Record<string, Text>)[key] as Text,
      (de as Record<string, Text>)[key] as Text,
    );
}
for (const [name, texts] of Object.entries(english))
  pair(name, texts as Text, (german as unknown as Record<string, Text>)[name] as Text);

/** Figures in a text, in whatever way they are set: 1.5 and 1,5, 1 000 and 1000. */
const figures = (text: string): string[] =>
  (text.replace(/(\d)[ \u00a0\u202f\u2009](?=\d{3})/g, '$1').match(/\d+(?:[.,]\d+)*/g) ?? [])
    .map((figure) => figure.replaceAll(',', '.'))
    .sort();

it('has the same kinds of text in the same places', () => {
  expect(Object.keys(german).sort()).toEqual(Object.keys(english).sort());
  expect(all.length).toBeGreaterThan(7000);
  const kind = (t: Text): string =>
    Array.isArray(t)
      ? `${t.length} texts`
      : typeof t === 'function'
        ? `${t.length} parts`
        : typeof t === 'object' && 'word' in t && 'means' in t
          ? 'a word of the trade'
          : typeof t === 'object'
            ? Object.keys(t).sort().join()
            : typeof t;
  expect(all.filter(({ en, de }) => kind(en) !== kind(de)).map(({ at }) => at)).toEqual([]);
});

it('begins and ends with the same space, and names the same figures', () => {
  const told = all.filter(({ en, at }) => typeof en === 'string' && !SAID.test(at)) as {
    at: string;
    en: string;
    de: string;
  }[];
  const edges = (t: string): string => `${/^\s*/.exec(t)?.[0]}|${/\s*$/.exec(t)?.[0]}`;
  const cut = told.filter(({ en, de, at }) => edges(en) !== edges(de) && !JOINED.has(at));
  expect(cut.map(({ at }) => at)).toEqual([]);
  const other = told.filter(({ en, de }) => figures(en).join() !== figures(de).join());
  expect(other.map(({ at, en, de }) => `${at}: ${en} | ${de}`)).toEqual([]);
});

/** Parts of a text, and what is made of them. */
function madeOf(text: Text): { parts: string[]; body: string } {
  const [, parts = '', body = ''] = /^\(?([^)=]*)\)?\s*=>([\s\S]*)$/.exec(String(text)) ?? [];
  return { parts: parts.split(',').map((part) => part.trim().replace(/\s*=.*/, '')), body };
}

it('makes something of every part that English makes something of', () => {
  const says = (body: string, part: string): boolean => new RegExp(`\\b${part}\\b`).test(body);
  const lost: string[] = [];
  let asked = 0;
  for (const { at, en, de } of all) {
    if (typeof en !== 'function') continue;
    const [here, there] = [madeOf(en), madeOf(de)];
    asked++;
    here.parts.forEach((part, i) => {
      if (says(here.body, part) && !says(there.body, there.parts[i] ?? ''))
        lost.push(`${at}: ${part}`);
    });
  }
  expect(asked).toBeGreaterThan(1000);
  expect(lost).toEqual([]);
});
