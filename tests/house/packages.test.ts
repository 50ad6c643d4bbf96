import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

/** What the lock file tells of a package. */
interface Locked {
  readonly license?: string;
  readonly dev?: boolean;
  readonly integrity?: string;
  readonly hasInstallScript?: boolean;
}

const read = (path: string): string =>
  readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const { packages } = JSON.parse(read('package-lock.json')) as {
  readonly packages: Readonly<Record<string, Locked>>;
};
/** All but the project itself: by the name that it is installed under. */
const all = Object.entries(packages).filter(([path]) => path !== '');
const nameOf = (path: string): string => path.slice(path.lastIndexOf('node_modules/') + 13);

/** Licences that let anybody use, change and pass on what is served; MPL asks for changes of its own files alone. */
const FREE = [
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BSL-1.0',
  'Zlib',
  'OFL-1.1',
  'MPL-2.0',
  'BlueOak-1.0.0',
  'Python-2.0',
  'CC0-1.0',
];
/** Data for building alone: its source is named with it. */
const FREE_TO_BUILD = [...FREE, 'CC-BY-4.0'];
/** Tells no licence in the lock file; a part of what reads files back in tests, and never served. */
const UNTOLD = ['buffers'];
/** They would compile or fetch when installed; neither is needed, and nothing of the kind is run (install.mjs). */
const WOULD_RUN = ['@swc/core', 'core-js', 'esbuild', 'fsevents'];

/** One that may be chosen, or all that hold at once. */
function free(license: string, among: readonly string[]): boolean {
  const plain = license.replace(/^\(|\)$/g, '');
  if (plain.includes(' OR ')) return plain.split(' OR ').some((l) => among.includes(l));
  return plain.split(' AND ').every((l) => among.includes(l));
}

it('every package has a licence that lets it be used and passed on', () => {
  const bad = all.filter(([path, { license = '', dev }]) => {
    if (dev === true && UNTOLD.includes(nameOf(path))) return false;
    return !free(license, dev === true ? FREE_TO_BUILD : FREE);
  });
  expect(bad.map(([path, { license }]) => `${nameOf(path)}: ${license}`)).toEqual([]);
  // The check itself can fail.
  expect(free('GPL-3.0-only', FREE)).toBe(false);
  expect(free('(MIT AND GPL-2.0)', FREE)).toBe(false);
});

it('no package runs anything when it is installed', () => {
  const would = all.filter(([, p]) => p.hasInstallScript === true).map(([path]) => nameOf(path));
  expect([...new Set(would)].filter((name) => !WOULD_RUN.includes(name))).toEqual([]);
  expect(read('ui/serve/install.mjs')).toContain("'--ignore-scripts'");
});

it('every package is known by what is in it', () => {
  expect(all.length).toBeGreaterThan(100);
  const loose = all.filter(([, { integrity = '' }]) => !/^sha512-/.test(integrity));
  expect(loose.map(([path]) => path)).toEqual([]);
});
