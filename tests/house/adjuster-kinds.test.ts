import { spawnSync } from 'node:child_process';
import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { adjusterKinds } from '../../sim/index.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Where the kinds of adjuster are named; everything that differs between them is a row in one of these. */
const tables = [
  'sim/brake/types.ts',
  'sim/brake/kinds.ts',
  'sim/scene/adjuster.ts',
  'ui/adjusters.ts',
  'ui/stage/parts/adjuster.ts',
];

const one = `(['"\`])(${adjusterKinds.join('|')})\\1`;
const told = new RegExp(
  [
    // Compared with one kind, from either side, or told apart in a switch.
    `[!=]==?\\s*${one}`,
    `${one.replace('\\1', '\\3')}\\s*[!=]==?`,
    `\\bcase\\s+${one.replace('\\1', '\\5')}`,
    // Looked for in a list of kinds.
    `\\[[^\\]]*${one.replace('\\1', '\\7')}[^\\]]*\\]\\s*\\.(includes|indexOf|some|find)\\b`,
  ].join('|'),
  'g',
);

/** Places in a file's code, without comments, that tell kinds apart. */
const telling = (text: string): string[] =>
  [...text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '').matchAll(told)].map(([found]) => found);

function sources(folder: string): string[] {
  return ['sim', 'ui'].flatMap((top) =>
    readdirSync(join(folder, top), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.(ts|mjs)$/.test(file))
      .map((file) => `${top}/${file}`),
  );
}

describe('kinds of adjuster', () => {
  it('are told apart in their tables alone', () => {
    const files = sources(root);
    expect(files.length).toBeGreaterThan(200);
    const found = files
      .filter((file) => !tables.includes(file))
      .flatMap((file) =>
        telling(readFileSync(join(root, file), 'utf8')).map((line) => `${file}: ${line}`),
      );
    expect(found).toEqual([]);
    for (const file of tables) expect(files).toContain(file);
  });

  it.each([
    "if (brake.adjuster.kind === 'wedge') return;",
    "const many = kind !== 'toothed lever';",
    'return "screw strut" == kind;',
    "switch (kind) { case 'incremental': return 1; }",
    "const some = ['wedge', 'screw strut'].includes(kind);",
    "const some = [\n  'toothed lever',\n  'incremental',\n].some((k) => k === kind);",
  ])('are found told apart in %s', (line) => {
    expect(telling(line)).toHaveLength(1);
  });

  it.each([
    "// kind === 'wedge'",
    "const part: PartId = 'wedge';",
    "spots.push({ part: 'toothed lever', at });",
    'k === d.adjuster.kind',
  ])('are not told apart in %s', (line) => {
    expect(telling(line)).toEqual([]);
  });
});

/**
 * A kind that no brake has: a bar with teeth a quarter of a millimetre apart, one a press. What it
 * needs is put into a copy of the sources, before the last row of each table.
 */
const TRIAL = 'ratchet bar';
const rows: Readonly<Record<string, readonly [before: string, row: string]>> = {
  'sim/brake/types.ts': [" | 'wedge'", ` | '${TRIAL}'`],
  'sim/brake/kinds.ts': [
    '\n  wedge: {',
    `\n  '${TRIAL}': { countable: true, toothedLever: false, strutSpring: null, atOnce: one, steps: (own) => even(0.25, reach(own)), faults: [] },`,
  ],
  'sim/scene/adjuster.ts': ['\n  wedge: of', `\n  '${TRIAL}': ofKind('${TRIAL}', even),`],
  'ui/adjusters.ts': [
    '\n  wedge: {',
    `\n  '${TRIAL}': { ...clicking, name: 'Ratchet bar', idea: 'A pawl takes the next tooth' },`,
  ],
  'ui/stage/parts/adjuster.ts': [
    '\n  wedge: {',
    `\n  '${TRIAL}': { shapes: screwStrut, spots: screwSpots, sight: screwSight, marks: () => ({ shapes: [], numbers: [] }), part: 'screw', springs: [] },`,
  ],
};

/** Reads a brake with the trial kind, presses it, draws it, asks for its words. */
const script = `
import { readFileSync } from 'node:fs';
import { adjusterKinds, application, createRig, freshState, readScene, rest, withAdjuster } from './sim/index.ts';
import { wordsOf } from './ui/adjusters.ts';
import { usage } from './ui/command/help.ts';
import { loupe } from './ui/stage/loupe.ts';
import { drawBrake } from './ui/stage/scene.ts';
import { fitView } from './ui/stage/view.ts';
import { themes } from './ui/theme.ts';
const scene = JSON.parse(readFileSync('scenes/quay-van.json', 'utf8'));
const van = readScene(scene).brake;
const brake = withAdjuster(van, '${TRIAL}');
const rig = createRig(brake);
let state = freshState(brake, brake.drum.radiusNew + 0.6);
const clicks = [];
for (let n = 0; n < 3; n++) {
  const pressed = application(rig, state, { pressure: 4, turning: 1 });
  clicks.push(pressed.clicked);
  state = pressed.state;
}
const still = rest(rig, state);
const view = fitView(brake, { width: 1000, height: 800, band: 30 });
const input = { brake, state, instant: still, rest: still, layers: { names: true }, view, theme: themes.sheet };
const { lever, spring: _, ...own } = scene.adjuster;
const written = readScene({ ...scene, adjuster: { ...own, kind: '${TRIAL}', teeth: 38, pitch: 0.25 } });
const mixed = readScene({ ...scene, adjuster: { ...own, kind: '${TRIAL}', teeth: 38, pitch: 0.25, lever } });
console.log(JSON.stringify({
  known: adjusterKinds.includes('${TRIAL}') && usage.includes('"${TRIAL}"'),
  teeth: brake.adjuster.teeth,
  clicks,
  name: wordsOf(brake).name,
  drawn: drawBrake(input).shapes.filter((s) => s.group === 'strut').length,
  glass: loupe(input, { at: [200, 200], radius: 180 }).length,
  written: written.ok,
  mixed: mixed.ok ? [] : mixed.findings.map((f) => f.path),
}));
`;

describe('a trial kind of adjuster', () => {
  const copy = (): string => {
    const folder = mkdtempSync(join(tmpdir(), 'takeup-kind-'));
    for (const part of ['sim', 'ui', 'scenes', 'tsconfig.json', 'package.json']) {
      cpSync(join(root, part), join(folder, part), { recursive: true });
    }
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
    const own = { extends: './tsconfig.json', include: ['sim', 'ui'] };
    writeFileSync(join(folder, 'tsconfig.trial.json'), JSON.stringify(own));
    return folder;
  };
  const put = (folder: string, file: string): void => {
    const [before, row] = rows[file] ?? ['', ''];
    const text = readFileSync(join(folder, file), 'utf8');
    expect(text.split(before), file).toHaveLength(2);
    writeFileSync(join(folder, file), text.replace(before, `${row}${before}`));
  };
  const run = (folder: string, args: readonly string[]) =>
    spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' });
  const compile = (folder: string) =>
    run(folder, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.trial.json']);

  it('is asked for by the compiler in four tables, and needs no other file', () => {
    const folder = copy();
    try {
      put(folder, 'sim/brake/types.ts');
      const refused = compile(folder);
      const files = [...refused.stdout.matchAll(/^(\S+?)\(\d+,\d+\): error/gm)].map((m) => m[1]);
      const others = Object.keys(rows).filter((file) => file !== 'sim/brake/types.ts');
      // What reads a table that does not compile may be refused with it; it needs no change.
      expect(files, refused.stdout).toEqual(expect.arrayContaining(others));
      expect(others).toHaveLength(4);
      expect(Object.keys(rows).sort()).toEqual([...tables].sort());
      for (const file of others) put(folder, file);
      const whole = compile(folder);
      expect(whole.status, whole.stdout).toBe(0);
      writeFileSync(join(folder, 'trial.ts'), script);
      const ran = run(folder, ['node_modules/tsx/dist/cli.mjs', 'trial.ts']);
      expect(ran.status, ran.stderr).toBe(0);
      const said = JSON.parse(ran.stdout);
      // The van's lever makes the strut 12·(cos 70° − cos 117.8°) = 9.70 mm longer: 38 steps of 0.25.
      expect(said).toMatchObject({
        known: true,
        teeth: 38,
        clicks: [1, 1, 1],
        name: 'Ratchet bar',
        written: true,
        mixed: ['adjuster.lever'],
      });
      expect(said.drawn).toBeGreaterThan(5);
      expect(said.glass).toBe(3);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
