import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** Tests of the mechanics alone: what they do not notice, nothing else would. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: ['tests/{unit,reference}/*.test.ts', 'tests/unit/study/*.test.ts'],
    exclude: ['tests/unit/{command,life-command,lanes,session,units,scene-json-schema}.test.ts'],
    testTimeout: 0,
  },
});
