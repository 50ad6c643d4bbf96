import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  test: {
    projects: [
      {
        root,
        test: {
          name: 'node',
          include: ['tests/{unit,reference,house}/**/*.test.ts'],
          testTimeout: 300000,
        },
      },
      {
        root,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          testTimeout: 60000,
          hookTimeout: 60000,
          fileParallelism: false,
        },
      },
    ],
  },
});
