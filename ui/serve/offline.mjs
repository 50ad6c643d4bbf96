// @ts-check
// What a browser keeps of the page to open it without a network: the list of its files, put into the worker that keeps them.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { HEADERS_FILE, HOSTING_FILE } from './hosting.mjs';
import { root } from './install.mjs';
import { POLICY } from './policy.mjs';

export const WORKER = 'offline.js';

/** For the host, not for who visits it; and the list itself. */
const notKept = new Set([HEADERS_FILE, HOSTING_FILE, WORKER]);

/** @param {string | Uint8Array} text */
const hashOf = (text) => createHash('sha256').update(text).digest('hex').slice(0, 16);

/** Files that the build takes as they are: icons, and what says that the page is an app. */
const plainFiles = () => {
  const folder = join(root, 'ui/public');
  return readdirSync(folder).map((name) => [name, readFileSync(join(folder, name))]);
};

/** A script that has nothing in it but what one language needs. */
const OF_LANGUAGE =
  /\/(?:sim\/words|scenes\/lessons)\/([a-z]{2})(?:\.ts$|\/)|\/ui\/(?:decimal-comma|lessons\/german)\.ts$/;

/**
 * The language whose own script this is; none: it is everybody's. Such scripts are kept once the language is chosen.
 *
 * @param {import('vite').Rollup.OutputBundle[string]} file
 */
function languageOf(file) {
  if (file.type !== 'chunk' || file.isEntry || file.moduleIds.length === 0) return null;
  const all = file.moduleIds.map((id) => OF_LANGUAGE.exec(id));
  const found = all.every((one) => one !== null) ? all.map((one) => one?.[1] ?? 'de') : [];
  return found[0] !== undefined && found[0] !== 'en' ? found[0] : null;
}

/**
 * Puts policy and manifest into each page, and the list of all files into the worker. Stands last among the plugins:
 * what comes after it would not be kept.
 *
 * @returns {import('vite').Plugin}
 */
export const offline = () => ({
  name: 'takeup:offline',
  transformIndexHtml: (html) => html.replace('%POLICY%', POLICY),
  generateBundle: {
    order: 'post',
    handler(_, bundle) {
      const worker = bundle[WORKER];
      if (worker?.type !== 'chunk') throw new Error(`the build has left no ${WORKER}`);
      if (worker.imports.length > 0) throw new Error(`${WORKER} must stand alone`);
      /** @type {Record<string, string[]>} */
      const languages = {};
      const built = Object.values(bundle).flatMap((file) => {
        const language = languageOf(file);
        if (language !== null) {
          languages[language] = [...(languages[language] ?? []), file.fileName];
          return [];
        }
        return [[file.fileName, file.type === 'chunk' ? file.code : file.source]];
      });
      const files = [...built, ...plainFiles()]
        .filter(([name]) => !notKept.has(String(name)))
        .map(([name, text]) => [String(name), hashOf(/** @type {string} */ (text))])
        .sort(([a = ''], [b = '']) => (a < b ? -1 : 1));
      if (!files.some(([name]) => name === 'index.html')) throw new Error('no page in the list');
      const list = JSON.stringify(files);
      worker.code = worker.code
        .replaceAll('TAKEUP_FILES', () => list)
        .replaceAll('TAKEUP_LANGUAGES', () => JSON.stringify(languages))
        .replaceAll('TAKEUP_VERSION', `"${hashOf(list + JSON.stringify(languages))}"`);
    },
  },
});
