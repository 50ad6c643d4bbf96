import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (file: string): string => readFileSync(join(root, file), 'utf8');
const { scripts, dependencies } = JSON.parse(read('package.json')) as Record<
  'scripts' | 'dependencies',
  Record<string, string>
>;

const pages = ['README.md', 'DEVELOPERS.md'];

const DECISIONS = ['sim/decisions', 'ui/decisions', 'tests/decisions'];
const inFolder = (folder: string): string[] =>
  readdirSync(join(root, folder)).map((file) => `${folder}/${file}`);
const decisions = DECISIONS.flatMap(inFolder);
/** What DEVELOPERS.md leads to. */
const further = [
  ...['sim/flow.md', 'ui/flow.md', 'sim/to-add.md', 'ui/to-add.md', 'tests/how-they-run.md'],
  'tests/mutants-left.md',
  ...decisions,
];

/** More than this nobody reads to the end. */
const MOST_WORDS = 1800;
const wordsIn = (text: string): number => text.split(/\s+/).filter((word) => word !== '').length;

/** Where a text leads to, within the project. */
const linksIn = (text: string): string[] =>
  [...text.matchAll(/\]\(([^)]+)\)/g)]
    .map(([, to]) => to as string)
    .filter((to) => !to.includes('://'));

/** Of a decision: a heading, its day as in its name, and what was decided. */
const isDecision = (file: string, text: string): boolean => {
  const day = /\/(\d{4}-\d\d-\d\d)-[a-z0-9-]+\.md$/.exec(file)?.[1];
  return day !== undefined && text.startsWith('# ') && text.includes(`\n\n${day}\n\n`);
};

/** Files and folders that a text names, from the top. */
const pathsIn = (text: string): string[] =>
  [...text.matchAll(/(?<![\w/.-])(?:sim|ui|tests|scenes)\/[\w./-]*/g)].map((m) =>
    m[0].replace(/\.$/, ''),
  );

/** Commands in fenced lines and between back-ticks: prose may speak of npm as it likes. */
const commandsIn = (text: string): string[] =>
  [...text.matchAll(/```[^`]*```|`[^`]+`/g)]
    .flatMap(([code]) => [...code.matchAll(/\bnpm (?:run (?:-s )?)?([a-z][a-z:]*)/g)])
    .map((m) => m[1] as string);

const made = read('.gitignore').split('\n');
const missingIn = (text: string): string[] =>
  pathsIn(text).filter((path) => !existsSync(join(root, path)) && !made.includes(path));
const deadIn = (file: string, text: string): string[] =>
  linksIn(text).filter((to) => !existsSync(join(root, dirname(file), to)));

it.each(pages)('%s names files and folders that are there', (page) => {
  expect(pathsIn(read(page)).length).toBeGreaterThan(0);
  expect(missingIn(read(page))).toEqual([]);
  expect(linksIn(read(page)).length).toBeGreaterThan(0);
  expect(deadIn(page, read(page))).toEqual([]);
});

it('the pages that DEVELOPERS.md leads to name files, links and commands that are there', () => {
  expect(decisions.length).toBeGreaterThan(40);
  expect(further.filter((page) => missingIn(read(page)).length > 0)).toEqual([]);
  expect(further.filter((page) => deadIn(page, read(page)).length > 0)).toEqual([]);
  const named = further.flatMap((page) => commandsIn(read(page)));
  expect(named.filter((name) => !(name in scripts))).toEqual([]);
});

it('every decision is a dated file', () => {
  expect(decisions.filter((file) => !isDecision(file, read(file)))).toEqual([]);
});

it('DEVELOPERS.md is short, and leads to all that was moved out of it', () => {
  const text = read('DEVELOPERS.md');
  expect(wordsIn(text)).toBeLessThanOrEqual(MOST_WORDS);
  const led = linksIn(text);
  expect(led).toEqual(expect.arrayContaining([...DECISIONS, 'ui/changes.md']));
  expect(led).toEqual(expect.arrayContaining(further.filter((f) => !decisions.includes(f))));
  expect(linksIn(read('README.md'))).toContain('ui/changes.md');
});

it.each(pages)('%s names commands that are there', (page) => {
  const names = commandsIn(read(page));
  expect(names).toContain('test');
  expect(names.filter((name) => !(name in scripts))).toEqual([]);
});

it('README lists every dependency of the page', () => {
  const text = read('README.md').toLowerCase().replaceAll(' ', '').replaceAll('.', '');
  const plain = (name: string) => (name.split('/').at(-1) as string).replaceAll(/[-.]/g, '');
  const missing = Object.keys(dependencies).filter(
    (name) => !text.replaceAll('-', '').includes(plain(name)),
  );
  expect(missing).toEqual([]);
});

it('finds a path and a command that are not there', () => {
  expect(pathsIn('see `sim/nowhere/none.ts`, and tests/')).toEqual([
    'sim/nowhere/none.ts',
    'tests/',
  ]);
  expect(commandsIn('`npm run -s nothing -- x`, an npm package\n```\nnpm start\n```')).toEqual([
    'nothing',
    'start',
  ]);
  expect(deadIn('ui/x.md', '[a](flow.md), [b](nowhere.md), [c](https://example.org)')).toEqual([
    'nowhere.md',
  ]);
  expect(wordsIn('one two\n three')).toBe(3);
  expect(isDecision('sim/decisions/2026-11-25-x.md', '# X\n\n2026-11-25\n\nSo.')).toBe(true);
  expect(isDecision('sim/decisions/2026-11-25-x.md', '# X\n\n2026-11-26\n\nSo.')).toBe(false);
  expect(isDecision('sim/decisions/x.md', '# X\n\n2026-11-26\n\nSo.')).toBe(false);
});
