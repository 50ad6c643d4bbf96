import { fileURLToPath } from 'node:url';
import { defineConfig, mergeConfig, type Plugin, type UserConfig } from 'vite';
import { engineWithoutShapes } from './serve/engine.mjs';
import { hosting } from './serve/hosting.mjs';
import { changes, notices, takenByWorkers } from './serve/notices.mjs';
import { offline, WORKER } from './serve/offline.mjs';
import { sections } from './serve/words.mjs';

/** The build tool's list of what it took in; it does not stay in what is served. */
const LIST = 'taken.json';

/**
 * Of the painting library what the stage does not use: it registers itself when it is loaded, so that no tool could
 * leave it out by itself. The stage is made of containers, graphics and textures; words are the page's own.
 */
const UNUSED =
  /pixi\.js\/lib\/(accessibility|advanced-blend-modes|app|compressed-textures|dom|events|filters|gif|html-source|prepare|spritesheet|scene\/(mesh|particle-container|sprite-nine-slice|sprite-tiling|text|text-bitmap|text-html))\//;

const withoutUnused = (): Plugin => ({
  name: 'painting-without-unused',
  transform(code, id) {
    return UNUSED.test(id) ? { code, map: null, moduleSideEffects: false } : null;
  },
});

/** What other pages load to place the embedded view. */
const ELEMENT = 'takeup-brake';

/**
 * Not of what stands alone, nor of the build tool's own; nor what begins the page: it waits for later parts, and they
 * would wait for it, were it in the file that they use.
 */
const ofThePage = (id: string): boolean =>
  /\.(ts|js|mjs|json)$/.test(id) &&
  !/\/(ui\/(offline\/|embed\/|main\.ts)|sim\/words\/embed\.ts)/.test(id);

const here = (file: string): string => fileURLToPath(new URL(file, import.meta.url));

/** What the library of pages would load to turn whole web pages into pictures: the model is lines and words. */
const PICTURES = /^(?:html2canvas|dompurify|canvg)$/;
const NONE = '\0none';

const pagesWithoutPictures = (): Plugin => ({
  name: 'pages-without-pictures',
  enforce: 'pre',
  resolveId: { filter: { id: PICTURES }, handler: () => NONE },
  load: { filter: { id: /^\0none$/ }, handler: () => 'export default null;' },
});

/** What the page (this file) and the one file of it (one-file.config.ts) are built by alike. */
export const building = (what: 'page' | 'one file'): UserConfig => ({
  root: here('.'),
  base: './',
  plugins: [
    sections(what),
    withoutUnused(),
    pagesWithoutPictures(),
    engineWithoutShapes(),
    notices(LIST),
    changes(),
  ],
  // The life run's worker is a module too.
  worker: {
    format: 'es',
    plugins: () => [sections('worker'), takenByWorkers()],
    rollupOptions: { checks: { pluginTimings: false } },
  },
  build: {
    outDir: '../dist',
    modulePreload: { polyfill: false },
    target: 'es2022',
    license: { fileName: LIST },
    chunkSizeWarningLimit: 900,
    // On a busy machine it would tell how long it took.
    rollupOptions: { checks: { pluginTimings: false } },
  },
});

export default defineConfig(
  mergeConfig(building('page'), {
    plugins: [hosting(), offline()],
    build: {
      emptyOutDir: true,
      assetsInlineLimit: 0,
      rollupOptions: {
        input: {
          index: here('index.html'),
          [ELEMENT]: here('embed/takeup-brake.ts'),
          offline: here('offline/worker.ts'),
        },
        output: {
          // What the page loads before anything else is one file: else it is cut into a file for each set of later
          // parts that share some of it, and 68 small files pack a tenth worse than one.
          codeSplitting: {
            groups: [
              { name: 'bench', tags: ['$initial'], test: ofThePage },
              // A few lines that what reads sizes shares with what writes pages: they come with the former.
              { name: 'create-shared', test: /@babel\/runtime/ },
            ],
          },
          // A worker is known by its address, and so is what other pages load: it may not change with its content.
          entryFileNames: ({ name }: { name: string }) =>
            name === 'offline'
              ? WORKER
              : name === ELEMENT
                ? '[name].js'
                : 'assets/[name]-[hash].js',
        },
      },
    },
  }),
);
