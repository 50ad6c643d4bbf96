// @ts-check
// Licences of what is served, in what is served: made by the build from what it really took in.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './install.mjs';

/** Where the page finds them, in dist/; and what has changed for those who use it. */
export const NOTICES = 'licences.txt';
export const CHANGES = 'changes.txt';

/**
 * A package as the build tool lists it. `text`: its licence file, where it has one.
 *
 * @typedef {{ name: string, version: string, identifier?: string, text?: string }} Taken
 */

/** @param {string} file in the project's folder */
const read = (file) => readFileSync(join(root, file), 'utf8').trim();

/**
 * The licence in full. A package without a file of its own is under the licence that it names, with
 * its author as the holder; of those the words stand in the project's own file.
 *
 * @param {Taken} taken
 */
function licenceOf({ name, identifier = '', text }) {
  if (text) return text;
  const folder = join('node_modules', name);
  const readme = readdirSync(join(root, folder)).find((file) => /^readme/i.test(file));
  const told =
    readme &&
    /^#*\s*licen[cs]e\b.*(?:\n[-=]+)?\n+(Copyright[\s\S]*)/im.exec(read(join(folder, readme)));
  if (told?.[1]) return told[1].trim();
  const { author } = JSON.parse(read(join(folder, 'package.json')));
  const holder = typeof author === 'string' ? author : author?.name;
  if (identifier !== 'MIT' || !holder) {
    throw new Error(`${name}: found no licence text (${identifier || 'no licence named'})`);
  }
  return read('LICENSE').replace(/^Copyright.*$/m, `Copyright (c) ${holder}`);
}

/**
 * What a package asks to have told beside its licence (Apache-2.0, 4 d).
 *
 * @param {Taken} taken
 */
function noticeOf({ name }) {
  const folder = join('node_modules', name);
  const file = readdirSync(join(root, folder)).find((f) => /^notice/i.test(f));
  return file ? `\n\n${read(join(folder, file))}` : '';
}

/**
 * Where the source of a package stands whose licence asks for that to be told (MPL-2.0, 3.2 a).
 *
 * @param {Taken} taken
 */
function sourceOf({ name, identifier }) {
  if (identifier !== 'MPL-2.0') return '';
  const { repository } = JSON.parse(read(join('node_modules', name, 'package.json')));
  return `Its source: ${String(repository?.url ?? repository).replace(/^git\+/, '')}\n\n`;
}

const line = '\n\n'.padEnd(82, '-');

/**
 * The whole text, the project's own licence first. Throws where a package has none.
 *
 * @param {readonly Taken[]} all
 */
export function noticesOf(all) {
  const parts = all.map(
    (t) =>
      `${t.name} ${t.version} (${t.identifier})\n\n${sourceOf(t)}${licenceOf(t)}${noticeOf(t)}`,
  );
  const heading =
    'Takeup and what it is built with: the licences of all that this page consists of.';
  return `${[heading, `Takeup\n\n${read('LICENSE')}`, ...parts].join(`${line}\n\n`)}\n`;
}

/** Packages that workers took in: each worker is built apart, and the build tool's list knows nothing of it. */
const inWorkers = new Set();

/**
 * Remembers what a worker takes in, for the list of all.
 *
 * @returns {import('vite').Plugin}
 */
export const takenByWorkers = () => ({
  name: 'takeup:taken-by-workers',
  generateBundle(_, bundle) {
    for (const file of Object.values(bundle)) {
      for (const id of file.type === 'chunk' ? Object.keys(file.modules) : []) {
        const [, name] = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(id) ?? [];
        if (name) inWorkers.add(name);
      }
    }
  },
});

/**
 * @param {string} name
 * @returns {Taken}
 */
function takenOf(name) {
  const folder = join('node_modules', name);
  const { version, license } = JSON.parse(read(join(folder, 'package.json')));
  const file = readdirSync(join(root, folder)).find((f) => /^licen[cs]e/i.test(f));
  return {
    name,
    version,
    identifier: license,
    ...(file ? { text: read(join(folder, file)) } : {}),
  };
}

/**
 * Turns the build tool's own list, which `build.license` writes as JSON, into a text for people.
 *
 * @param {string} list file that the build tool writes
 * @returns {import('vite').Plugin}
 */
export function notices(list) {
  return {
    name: 'takeup:notices',
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        const listed = bundle[list];
        if (listed?.type !== 'asset') throw new Error(`the build has left no ${list}`);
        delete bundle[list];
        /** @type {Taken[]} */
        const known = JSON.parse(String(listed.source));
        const more = [...inWorkers].filter((name) => !known.some((t) => t.name === name));
        const all = [...known, ...more.map(takenOf)];
        const source = noticesOf(all.sort((a, b) => (a.name < b.name ? -1 : 1)));
        this.emitFile({ type: 'asset', fileName: NOTICES, source });
      },
    },
  };
}

/**
 * Puts what has changed beside the page, so that it is there without a network.
 *
 * @returns {import('vite').Plugin}
 */
export function changes() {
  return {
    name: 'takeup:changes',
    generateBundle() {
      this.emitFile({ type: 'asset', fileName: CHANGES, source: `${read('ui/changes.md')}\n` });
    },
  };
}
