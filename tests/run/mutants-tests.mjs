// @ts-check
// Which tests `npm run test:mutants` asks.
import { readdirSync } from 'node:fs';

/**
 * Golden hashes notice every bit and know of nothing what it should be; the page's readers read more than
 * brakes, and wait for one another while they are loaded.
 */
const LEFT = [
  'command',
  'golden',
  'life-command',
  'lanes',
  'read-fuzz',
  'session',
  'units',
  'scene-json-schema',
].map((name) => `tests/unit/${name}.test.ts`);

/** Tests of the mechanics alone: what they do not notice, nothing else would. */
const FOLDERS = ['tests/unit', 'tests/unit/study', 'tests/reference'];

/** `MUTANT_MS`: tests that take longer are not asked, since each mutant that lives has all that reach it run, ms. */
export const LONGEST = Number(process.env['MUTANT_MS'] ?? Number.POSITIVE_INFINITY);

/** For a part of the mechanics a part of the tests will do: `MUTANT_TESTS` names them, with commas between. */
export function files() {
  const asked = process.env['MUTANT_TESTS'];
  if (asked) return asked.split(',');
  return FOLDERS.flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => `${folder}/${name}`),
  ).filter((file) => !LEFT.includes(file));
}
