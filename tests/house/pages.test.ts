import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const read = (file: string): string => readFileSync(join(root, file), 'utf8');
const { scripts, dependencies } = JSON.parse(read('package.json')) as Record<
  'scripts' | 'dependencies',
  Record<string, string>
>;

const pages = ['README.md', 'DEVELOPERS.md'];

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

it.each(pages)('%s names files and folders that are there', (page) => {
  const made = read('.gitignore').split('\n');
  const paths = pathsIn(read(page));
  expect(paths.length).toBeGreaterThan(0);
  expect(paths.filter((path) => !existsSync(join(root, path)) && !made.includes(path))).toEqual([]);
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
});
