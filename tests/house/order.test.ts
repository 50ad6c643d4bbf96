import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, expect, it } from 'vitest';
import { cruise } from '../run/order.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Written out once more: a change of the rules' own list alone must not pass. */
const order =
  'units math words brake scene contact balance motion wear readings study index.ts public.ts workshop'.split(
    ' ',
  );

/** A folder for planted files, with the project's packages at hand. */
function plant(files: Record<string, string>): string {
  const folder = mkdtempSync(join(tmpdir(), 'takeup-order-'));
  mkdirSync(join(folder, 'sim'));
  mkdirSync(join(folder, 'ui'));
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}

function brokenIn(files: Record<string, string>): string[] {
  const folder = plant(files);
  try {
    return cruise(folder).broken;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

it('keeps the import order, and was read at all', () => {
  const { read, broken } = cruise(root);
  expect(broken).toEqual([]);
  expect(read).toBeGreaterThan(30);
});

it('finds an import of the next folder in every folder, for types alone too', () => {
  const isFile = (at: number) => order[at]?.endsWith('.ts') === true;
  const file = (at: number) => `sim/${order[at]}${isFile(at) ? '' : '/planted.ts'}`;
  const files: Record<string, string> = {
    'sim/workshop/planted.ts': 'export type Planted = 1;\n',
  };
  for (let at = 0; at < order.length - 1; at++) {
    files[file(at)] =
      `export type { Planted } from '${isFile(at) ? '' : '.'}./${file(at + 1).slice(4)}';\n`;
  }
  const expected = order
    .slice(0, -1)
    .map((folder, at) => `sim-${folder}-imports-later: ${file(at)} -> ${file(at + 1)}`);
  // What comes just before the words may not say any, which is a rule of its own.
  const broken = brokenIn(files).filter((line) => !line.startsWith('sim-mechanics-import-words'));
  expect(broken.sort()).toEqual(expected.sort());
});

/** One file of each place of the page, in its order, and the place's name. */
const page = [
  ['words', 'format.ts'],
  ['stage', 'stage/planted.ts'],
  ['record', 'stations/planted/part.ts'],
  ['session', 'record/home.ts'],
  ['pieces', 'pieces/planted.ts'],
  ['stations', 'stations/planted/index.ts'],
  ['away', 'away/planted.ts'],
  ['app', 'app/planted.ts'],
  ['main', 'main.ts'],
] as const;

it('finds an import of the next place of the page in every place, and of none that came before', () => {
  const away = (file: string) => '../'.repeat(file.split('/').length - 1) || './';
  const files: Record<string, string> = {};
  const expected: string[] = [];
  page.forEach(([place, file], at) => {
    const next = page[at + 1]?.[1];
    const before = page[at - 1]?.[1];
    files[`ui/${file}`] =
      `${next ? `export type { Planted as Next } from '${away(file)}${next}';\n` : ''}${before ? `export type { Planted as Before } from '${away(file)}${before}';\n` : ''}export type Planted = 1;\n`;
    if (next) expected.push(`ui-${place}-imports-later: ui/${file} -> ui/${next}`);
  });
  // Two that import one another are a circle besides.
  const broken = brokenIn(files).filter((line) => !line.startsWith('no-cycles'));
  expect(broken.sort()).toEqual(expected.sort());
});

it('allows imports of earlier folders', () => {
  const files: Record<string, string> = { 'sim/units/planted.ts': 'export type Planted = 1;\n' };
  for (const folder of order.slice(1, -3)) {
    files[`sim/${folder}/planted.ts`] = "export type { Planted } from '../units/planted.ts';\n";
  }
  files['sim/index.ts'] = "export type { Planted } from './study/planted.ts';\n";
  files['sim/workshop/index.ts'] = "export type { Planted } from '../index.ts';\n";
  files['ui/app/planted.ts'] =
    "export type { Planted } from '../../sim/index.ts';\nexport type { Planted as P } from '../../sim/workshop/index.ts';\n";
  expect(brokenIn(files)).toEqual([]);
});

/** A rule, a file that breaks it by an import, and what it imports. */
const planted = [
  ['ui-imports-past-the-door', 'ui/planted.ts', '../sim/units/there.ts'],
  ['ui-imports-past-the-door', 'ui/command/planted.ts', '../../sim/workshop/there.ts'],
  ['sim-workshop-imports-past-the-door', 'sim/workshop/planted.ts', '../units/there.ts'],
  ['sim-mechanics-import-words', 'sim/balance/planted.ts', '../words/en.ts'],
  ['ui-imports-past-the-door', 'ui/app/planted.ts', '../../sim/words/there.ts'],
  ['only-pixi-files-import-pixi', 'ui/stage/parts/planted.ts', 'pixi.js'],
  ['page-imports-node', 'ui/app/planted.ts', 'node:fs'],
  ['ui-imports-tests', 'ui/planted.ts', '../tests/there.ts'],
  ['sim-imports-node', 'sim/study/planted.ts', 'node:process'],
  ['sim-imports-a-package', 'sim/balance/planted.ts', 'planck-js'],
  ['sim-scene-imports-a-package', 'sim/scene/planted.ts', 'lit'],
  ['sim-motion-imports-a-package', 'sim/motion/planted.ts', 'valibot'],
  ['sim-imports-outside', 'sim/study/planted.ts', '../../ui/there.ts'],
  ['sim-without-a-place', 'sim/study/planted.ts', '../more/there.ts'],
  ['sim-without-a-place-imports', 'sim/planted.ts', './units/there.ts'],
  ['ui-without-a-place', 'ui/planted/planted.ts', '../there.ts'],
] as const;

/** All of them lie in one folder and are read at once; each has a name of its own there. */
const own = (from: string, at: number): string => from.replace('planted.ts', `planted-${at}.ts`);
let broken: readonly string[] = [];
beforeAll(() => {
  const there = 'export type Planted = 1;\n';
  const files: Record<string, string> = {
    'sim/units/there.ts': there,
    'sim/workshop/there.ts': there,
    'sim/words/there.ts': there,
    'sim/words/en.ts': there,
    'sim/more/there.ts': there,
    'ui/there.ts': there,
    'tests/there.ts': there,
  };
  planted.forEach(([, from, to], at) => {
    files[own(from, at)] = `export type * as planted from '${to}';\n`;
  });
  broken = brokenIn(files);
});

it.each(planted.map(([rule, from], at) => [rule, own(from, at)]))(
  'finds what breaks %s',
  (rule, from) => {
    expect(broken.map((line) => line.split(' -> ')[0])).toContain(`${rule}: ${from}`);
  },
);

it('fails where no module is read', () => {
  const folder = plant({});
  try {
    const script = join(root, 'tests/run/order.mjs');
    const result = spawnSync(process.execPath, [script, folder], { encoding: 'utf8' });
    expect(result.stderr).toContain('No module was read');
    expect(result.status).toBe(1);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
