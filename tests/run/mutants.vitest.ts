import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** For a part of the mechanics a part of the tests will do: `MUTANT_TESTS` names them, with commas between. */
const asked = process.env['MUTANT_TESTS']?.split(',');

/** Tests of the mechanics alone: what they do not notice, nothing else would. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: asked ?? ['tests/{unit,reference}/*.test.ts', 'tests/unit/study/*.test.ts'],
    // Golden hashes notice every bit and know of nothing what it should be.
    exclude: [
      'tests/unit/{command,golden,life-command,lanes,session,units,scene-json-schema}.test.ts',
    ],
    testTimeout: 0,
  },
});
