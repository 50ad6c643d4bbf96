import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as open from '../../../sim/public.ts';
import { namesIn } from '../../../ui/package/doors.ts';
import { CLIMB_TAKES } from '../../brakes.ts';
import { near } from '../../near.ts';
import { type Packed, packed, ran } from './packed.ts';
import { PUBLIC, PUBLIC_TYPES } from './public-names.ts';

const root = join(import.meta.dirname, '../../..');
const read = (...path: string[]): string => readFileSync(join(...path), 'utf8');

let there: Packed;
beforeAll(async () => {
  there = await packed();
});
afterAll(() => there.remove());

const types = (): string => read(there.installed, 'types/sim/public.d.ts');
const example = (name: string): string =>
  ran(there.project, process.execPath, `node_modules/takeup/examples/${name}.mjs`);
/** A number of an example's line, by what stands before it. */
const told = (text: string, name: string): number =>
  Number(new RegExp(`^${name}: ([\\d.]+)`, 'm').exec(text)?.[1] ?? Number.NaN);

describe('what is public', () => {
  it('is what the list says, no name more and none less', () => {
    expect(Object.keys(open).sort()).toEqual([...PUBLIC].sort());
    const names = namesIn(types());
    const of = (kind: boolean) => names.filter((n) => n.isType === kind).map((n) => n.as);
    expect(of(true).sort()).toEqual([...PUBLIC_TYPES].sort());
    expect(of(false).sort()).toEqual([...PUBLIC].sort());
  });

  it('is there when the packed file is loaded by its name', () => {
    const list = "import('takeup').then((m) => console.log(JSON.stringify(Object.keys(m))))";
    const loaded: string[] = JSON.parse(ran(there.project, process.execPath, '-e', list));
    expect(loaded.sort()).toEqual([...PUBLIC].sort());
  });

  it('is told: each name has a sentence above it where it stands', () => {
    const isTold = (own: string, from: string): boolean => {
      const text = read(there.installed, 'types/sim', from.replace(/\.js$/, '.d.ts'));
      const on = namesIn(text).find((n) => n.as === own);
      if (on) return isTold(on.own, join(dirname(from), on.from));
      const at = `\\*/\\nexport (declare )?(const|function|class|interface|type) ${own}\\b`;
      return new RegExp(at).test(text);
    };
    const silent = namesIn(types()).filter(({ own, from }) => !isTold(own, from));
    expect(silent.map(({ as }) => as)).toEqual([]);
  });
});

describe('the packed file', () => {
  it('needs nothing beside it, and has licence, units and schema', () => {
    const { name, dependencies, exports, license } = JSON.parse(
      read(there.installed, 'package.json'),
    );
    expect([name, license, dependencies]).toEqual(['takeup', 'MIT', {}]);
    const files = Object.values(exports).flatMap((e) =>
      typeof e === 'string' ? [e] : Object.values(e as Record<string, string>),
    );
    const missing = files.filter((f) => !f.includes('*') && !existsSync(join(there.installed, f)));
    expect(missing).toEqual([]);
    expect(readdirSync(join(there.project, 'node_modules')).filter((n) => n[0] !== '.')).toEqual([
      'takeup',
    ]);
    expect(read(there.installed, 'LICENSE')).toBe(read(root, 'LICENSE'));
    expect(read(there.installed, 'licences.txt')).toMatch(/planck-js[\s\S]*valibot/);
    expect(read(there.installed, 'README.md')).toContain('N·mm');
    expect(read(there.installed, 'scene.schema.json')).toBe(read(root, 'scenes/scene.schema.json'));
    // Without the DOM and Node: what it loads is its own.
    expect(read(there.installed, 'index.js')).not.toMatch(/^import |\bdocument\.|\bprocess\./m);
  });

  it('names in its README only what is public', () => {
    const table = read(there.installed, 'README.md').split('## What there is')[1] ?? '';
    const named = [...table.matchAll(/`([a-z]\w+)`/gi)].map(([, name]) => name as string);
    expect(named.length).toBeGreaterThan(20);
    expect(
      named.filter((name) => !([...PUBLIC, ...PUBLIC_TYPES] as string[]).includes(name)),
    ).toEqual([]);
  });

  /** What the compiler says of a file of a project that has the package. */
  function compiled(name: string, text: string, options: object): string {
    writeFileSync(join(there.project, `${name}.ts`), text);
    const compilerOptions = {
      target: 'ES2022',
      module: 'ESNext',
      moduleResolution: 'bundler',
      types: [],
      strict: true,
      exactOptionalPropertyTypes: true,
      allowImportingTsExtensions: true,
      noEmit: true,
      ...options,
    };
    const config = `${name}.json`;
    const told = JSON.stringify({ compilerOptions, files: [`${name}.ts`] });
    writeFileSync(join(there.project, config), told);
    const tsc = join(root, 'node_modules/typescript/bin/tsc');
    return ran(there.project, process.execPath, tsc, '-p', config);
  }

  it('is typed: strictly, without the DOM, Node or another package', () => {
    const text = `import { balance, BAR, createRig, readSceneText, startState } from 'takeup';
export function torque(text: string): number {
  const read = readSceneText(text);
  if (!read.ok) return Number.NaN;
  const rig = createRig(read.brake);
  return balance(rig, startState(read.brake), { pressure: 40 * BAR, turning: 1 }).torqueOnDrum;
}
// @ts-expect-error a turning is -1, 0 or 1
export const wrong = (rig: import('takeup').Rig, s: import('takeup').BrakeState) => balance(rig, s, { pressure: 1, turning: 2 });
`;
    expect(compiled('strict', text, { lib: ['ES2022'] })).toBe('');
  });

  it('has a scene’s type as it is read, both ways', () => {
    const real = JSON.stringify(join(root, 'sim/scene/schema.ts'));
    const text = `import type { Scene } from 'takeup';
import type { Scene as Real } from ${real};
export const there = (real: Real): Scene => real;
export const back = (scene: Scene): Real => scene;
`;
    expect(compiled('scene', text, { skipLibCheck: true })).toBe('');
  });
});

// Figures of the quay van calculated apart from this program: tests/reference/teaching-tables.md, tables 0 and 4.
describe('the examples, from the packed file', () => {
  it('one press at 40 bar', () => {
    const text = example('press');
    near(told(text, 'brakeFactor'), 2.29, { rel: 0.01 }, 'factor');
    near(told(text, 'shoeFactorLeading'), 1.72, { rel: 0.01 }, 'leading');
    near(told(text, 'torque'), 227 - CLIMB_TAKES, { rel: 0.02 }, 'torque');
  });

  it('a life until the first click', () => {
    const text = example('life');
    expect(text).toContain('ended by: click');
    near(told(text, 'first click'), 3000, { abs: 100 }, 'km');
    expect(told(text, 'tooth')).toBe(1);
  });

  it('a sweep in a worker, to where the leading shoe locks', () => {
    const text = example('sweep');
    for (const [friction, torque] of [
      ['0.380', 227],
      ['0.450', 310],
      ['0.550', 516],
    ] as const) {
      // The lever's spring takes the same share of the toe's force at any friction.
      const expected = torque * (1 - CLIMB_TAKES / 227);
      near(told(text, friction), expected, { rel: 0.02 }, friction);
    }
    expect(text).toMatch(/^0\.750: \d/m);
    expect(text).toMatch(/^0\.770: locks$/m);
  });

  it('the same bits as from the sources', async () => {
    const path = pathToFileURL(join(there.installed, 'index.js')).href;
    const built = (await import(/* @vite-ignore */ path)) as typeof open;
    const text = read(there.installed, 'scenes/bench-brake.json');
    const [a, b] = [built, open].map((by) => {
      const scene = by.readSceneText(text);
      if (!scene.ok) throw new Error('no brake');
      const rig = by.createRig(scene.brake);
      return by.balance(rig, by.startState(scene.brake), { pressure: 3, turning: -1 }).torqueOnDrum;
    });
    expect(a).toBeGreaterThan(0);
    expect(a).toBe(b);
  });
});
