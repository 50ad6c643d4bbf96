import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const sim = fileURLToPath(new URL('../../sim', import.meta.url));

/**
 * Where sentences may stand: among the words themselves; the workshop gives meaning, and a scene's findings and hints
 * speak to whoever writes the file.
 */
const SPEAKS = /^(words|workshop|scene)[/\\]/;

/** Strings of code without its comments, with what is put into a template left out. */
function stringsOf(text: string): string[] {
  const out: string[] = [];
  const token =
    /\/\*[\s\S]*?\*\/|\/\/[^\n]*|'((?:[^'\\\n]|\\.)*)'|"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g;
  for (const [, one, two, template] of text.matchAll(token)) {
    const found = one ?? two ?? template?.replace(/\$\{[^}]*\}/g, 'x');
    if (found !== undefined) out.push(found);
  }
  return out;
}

/** A sentence: three words or more that end in a stop, or so many words that somebody is spoken to. */
const isSentence = (text: string): boolean => {
  const words = text.split(/\s+/).filter((word) => /\p{L}{2}/u.test(word)).length;
  return (words >= 3 && /[.!?…]$/.test(text.trim())) || words >= 10;
};

const sentencesIn = (text: string): string[] => stringsOf(text).filter(isSentence);

it('the mechanics give codes and numbers, no sentence', () => {
  const files = readdirSync(sim, { recursive: true, encoding: 'utf8' }).filter(
    (file) => file.endsWith('.ts') && !SPEAKS.test(file),
  );
  expect(files.length).toBeGreaterThan(60);
  const found = files.flatMap((file) =>
    sentencesIn(readFileSync(join(sim, file), 'utf8')).map((text) => `${file}: ${text}`),
  );
  expect(found).toEqual([]);
});

it.each([
  "const remedy = 'Renew the cable.';",
  'const words = "Is it on its stop?";',
  // biome-ignore lint/suspicious/noTemplateCurlyInString: it is the code that is looked through
  'tell(`Loaded as new: ${side} lining.`);',
  "const short = 'a stuck part pushes the front toe out of its place until it is freed';",
])('finds the sentence in %s', (code) => {
  expect(sentencesIn(code)).toHaveLength(1);
});

it.each([
  "import { row } from './reading.ts';",
  "const lock = 'lever off its stop';",
  "/* It's on. */ // 'Renew the cable.'",
  "const formula = 'F_d = Σ μ N / 2.';",
])('finds none in %s', (code) => {
  expect(sentencesIn(code)).toEqual([]);
});
