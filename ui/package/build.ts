import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { engineWithoutShapes } from '../serve/engine.mjs';
import { root } from '../serve/install.mjs';
import { notices } from '../serve/notices.mjs';
import { sections } from '../serve/words.mjs';
import { pastTheDoor } from './doors.ts';
import { sceneType } from './scene-type.ts';

/** Makes the mechanics into a package for others: one folder that `npm pack` packs as it stands. */

const here = dirname(fileURLToPath(import.meta.url));

/** What can be loaded by name: its source, and what it is called by. */
const entries = {
  index: { source: 'sim/public.ts', as: '.' },
  'takeup-brake': { source: 'ui/embed/takeup-brake.ts', as: './element' },
} as const;

/** Told by the schema library's types; a plain type stands in its place. */
const SCENE = 'sim/scene/schema.d.ts';
const OPEN = 'sim/public.d.ts';
const DOOR = 'sim/index.d.ts';

/** What the types of a file are imported from. */
const FROM = /(\bfrom |\bimport\()'([^']+)'/g;

const typesOf = (source: string): string => source.replace(/\.ts$/, '.d.ts');

/** All types of the mechanics and the element, by the compiler, in a folder of their own. */
function emitTypes(folder: string): void {
  const config = join(folder, 'tsconfig.json');
  const told = {
    extends: join(root, 'tsconfig.json'),
    compilerOptions: {
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
      rootDir: root,
      outDir: folder,
      types: [],
    },
    include: [],
    files: Object.values(entries).map(({ source }) => join(root, source)),
  };
  writeFileSync(config, JSON.stringify(told));
  const tsc = join(root, 'node_modules/typescript/bin/tsc');
  const { status, stdout, stderr } = spawnSync(process.execPath, [tsc, '-p', config], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The types are not written:\n${stdout}${stderr}`);
}

/**
 * Takes over the types that the entries lead to, and no others, with imports as they are read outside this project.
 *
 * @throws Error where they name a package, which whoever takes this one would then need
 */
function takeTypes(from: string, to: string): void {
  const taken = new Set<string>();
  const written = (path: string): string => readFileSync(join(from, path), 'utf8');
  const read = (path: string): string => {
    if (path === SCENE) return sceneType();
    return path === OPEN ? pastTheDoor(written(OPEN), written(DOOR)) : written(path);
  };
  const ways = Object.values(entries).map(({ source }) => typesOf(source));
  for (let path = ways.pop(); path !== undefined; path = ways.pop()) {
    if (taken.has(path)) continue;
    taken.add(path);
    const folder = dirname(path);
    const text = read(path);
    const outside = text.replace(FROM, (_, word: string, name: string) => {
      if (!name.startsWith('.')) throw new Error(`${path} names the package ${name}`);
      ways.push(join(folder, typesOf(name)));
      return `${word}'${name.replace(/\.ts$/, '.js')}'`;
    });
    mkdirSync(join(to, folder), { recursive: true });
    writeFileSync(join(to, path), outside);
  }
}

/** Its own package.json: nothing has to be installed beside it. */
function manifest(): string {
  const { name, version, license, engines } = JSON.parse(
    readFileSync(join(root, 'package.json'), 'utf8'),
  ) as Record<string, unknown>;
  const exports = Object.entries(entries).map(([file, { source, as }]) => [
    as,
    { types: `./types/${typesOf(source)}`, default: `./${file}.js` },
  ]);
  const told = {
    name,
    version,
    description: 'The mechanics of a leading/trailing drum brake with its self-adjuster',
    license,
    type: 'module',
    engines,
    exports: {
      ...Object.fromEntries(exports),
      './scene.schema.json': './scene.schema.json',
      './scenes/*.json': './scenes/*.json',
      './package.json': './package.json',
    },
    types: `./types/${typesOf(entries.index.source)}`,
    dependencies: {},
  };
  return `${JSON.stringify(told, null, 2)}\n`;
}

/** Scripts of the page name the library as it lies beside them: a browser knows no names. */
function copyNotebook(to: string): void {
  mkdirSync(to);
  for (const file of readdirSync(join(here, 'notebook'))) {
    const text = readFileSync(join(here, 'notebook', file), 'utf8');
    writeFileSync(join(to, file), text.replaceAll("from 'takeup'", "from '../index.js'"));
  }
}

function copyScenes(to: string): void {
  mkdirSync(join(to, 'scenes'));
  const scenes = join(root, 'scenes');
  for (const file of readdirSync(scenes)) {
    if (file === 'scene.schema.json') cpSync(join(scenes, file), join(to, file));
    else if (/^[a-z-]+\.json$/.test(file)) cpSync(join(scenes, file), join(to, 'scenes', file));
  }
}

/** @param to folder, made anew */
export async function buildPackage(to: string): Promise<void> {
  rmSync(to, { recursive: true, force: true });
  mkdirSync(to, { recursive: true });
  const list = 'taken.json';
  const sources = Object.entries(entries).map(([name, { source }]) => [name, join(root, source)]);
  await build({
    configFile: false,
    root,
    publicDir: false,
    logLevel: 'warn',
    plugins: [sections(), engineWithoutShapes(), notices(list)],
    build: {
      outDir: to,
      emptyOutDir: false,
      target: 'es2022',
      minify: false,
      license: { fileName: list },
      lib: { entry: Object.fromEntries(sources), formats: ['es'] },
      rollupOptions: { checks: { pluginTimings: false } },
    },
  });
  const types = mkdtempSync(join(tmpdir(), 'takeup-types-'));
  try {
    emitTypes(types);
    takeTypes(types, join(to, 'types'));
  } finally {
    rmSync(types, { recursive: true });
  }
  writeFileSync(join(to, 'package.json'), manifest());
  cpSync(join(root, 'LICENSE'), join(to, 'LICENSE'));
  cpSync(join(here, 'README.md'), join(to, 'README.md'));
  cpSync(join(here, 'examples'), join(to, 'examples'), { recursive: true });
  copyNotebook(join(to, 'notebook'));
  copyScenes(to);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const to = process.argv[2] ?? join(root, 'dist-package', 'takeup');
  await buildPackage(to);
  process.stdout.write(`${relative(process.cwd(), to)}: ready for npm pack\n`);
}
