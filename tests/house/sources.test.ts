import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const TABLES = 'tests/reference/teaching-tables.md';

/** Pages that are not in this repository: nobody could look them up. */
const OUTSIDE =
  /\breferences:|\bfault table\b|\btable of outcomes\b|\blessons? \d|\bteaching table\b/i;

const files = ['sim', 'ui', 'tests', 'scenes'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .map((file) => `${folder}/${file.replaceAll('\\', '/')}`)
    .filter((file) => /\.(ts|mjs|cjs|json|md)$/.test(file) && !file.startsWith('tests/house/')),
);
const pages = [...files, 'README.md', 'DEVELOPERS.md'];
const read = (file: string): string => readFileSync(join(root, file), 'utf8');

/** Lines that lean on what is not here. */
const leaning = (text: string): string[] => text.split('\n').filter((line) => OUTSIDE.test(line));

it('no figure leans on a page outside the repository', () => {
  expect(files.length).toBeGreaterThan(300);
  expect(pages.flatMap((file) => leaning(read(file)).map((line) => `${file}: ${line}`))).toEqual(
    [],
  );
});

it('every teaching table that is named stands in the file of them', () => {
  const there = new Set([...read(TABLES).matchAll(/^## Table (\d+):/gm)].map(([, n]) => n));
  const named = files
    .filter((file) => file.startsWith('tests/') && file !== TABLES)
    .flatMap((file) => {
      const text = read(file);
      return /teaching tables/i.test(text)
        ? [...text.matchAll(/\btable (\d+)/gi)].map(([, n]) => ({ file, n }))
        : [];
    });
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter(({ n }) => !there.has(n))).toEqual([]);
});

it.each(['// references: single stop', 'by its table of outcomes', 'Lesson 11: 344 and 339'])(
  'finds %s',
  (line) => {
    expect(leaning(line)).toEqual([line]);
  },
);
