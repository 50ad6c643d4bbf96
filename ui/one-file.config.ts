import { defineConfig, mergeConfig } from 'vite';
import { oneFile, workersWithin } from './serve/one-file.mjs';
import { building } from './vite.config.ts';

/** The whole bench as one file, beside the page in dist/. */
export default defineConfig(
  mergeConfig(building('one file'), {
    plugins: [workersWithin(), oneFile()],
    publicDir: false,
    // A browser refuses a module from a blob of a page without an origin.
    worker: { format: 'iife', rollupOptions: { output: { codeSplitting: false } } },
    build: {
      emptyOutDir: false,
      assetsInlineLimit: Number.MAX_SAFE_INTEGER,
      cssCodeSplit: false,
      chunkSizeWarningLimit: 5000,
      rollupOptions: { output: { codeSplitting: false } },
    },
  }),
);
