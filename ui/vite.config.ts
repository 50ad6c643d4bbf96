import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { changes, notices } from './serve/notices.mjs';

/** The build tool's list of what it took in; it does not stay in what is served. */
const LIST = 'taken.json';

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  base: './',
  plugins: [notices(LIST), changes()],
  // The life run's worker is a module too.
  worker: { format: 'es' },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'es2022',
    license: { fileName: LIST },
    chunkSizeWarningLimit: 900,
  },
});
