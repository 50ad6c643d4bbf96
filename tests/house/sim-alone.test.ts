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
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * All of Math but what the language fixes to the last digit: the rest (sin, pow, hypot, …) differs
 * between engines. So does `**`. What tells the time, the place or chance gives another answer each
 * time. Math under another name would hide its functions, so it may only stand before a dot.
 */
const banned =
  /\bMath\b(?!\.(abs|ceil|floor|imul|max|min|round|sign|sqrt|trunc|PI)\b)|\*\*|\b(Date|Intl|performance|crypto)\b|\.(toLocale\w*|localeCompare)\b/;

/** Lines of code, without comments, that the rule refuses. */
const refused = (text: string): string[] =>
  text
    .replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')
    .split('\n')
    .filter((line) => banned.test(line));

it('uses no engine-dependent functions in sim/', () => {
  const files = readdirSync(join(root, 'sim'), { recursive: true, encoding: 'utf8' }).filter(
    // The one place that lends the own sine and cosine to the engine; and texts, where Date is a word.
    (file) => file.endsWith('.ts') && !/^(motion.trig-(in|out)|words.[a-z]{2})\.ts$/.test(file),
  );
  expect(files.length).toBeGreaterThan(20);
  const found = files.flatMap((file) =>
    refused(readFileSync(join(root, 'sim', file), 'utf8')).map((line) => `${file}: ${line.trim()}`),
  );
  expect(found).toEqual([]);
});

it.each([
  'Math.hypot(1, 2)',
  'Math.sinh(1)',
  'a ** 2',
  'const { sin } = Math;',
  "Math['pow'](2, 3)",
  'twist(Math)',
  'angle **= 2',
  'new Date()',
  'performance.now()',
  'force.toLocaleString()',
  'Math.random()',
])('refuses %s', (line) => {
  expect(refused(line)).toEqual([line]);
});

it.each(['Math.sqrt(2)', 'Math.abs(x) // Math.sin', '/* a ** b */ x * x'])('allows %s', (line) => {
  expect(refused(line)).toEqual([]);
});

it('does not compile where sim/ uses the DOM, Node or a timer', () => {
  const folder = mkdtempSync(join(tmpdir(), 'takeup-alone-'));
  try {
    mkdirSync(join(folder, 'sim'));
    cpSync(join(root, 'tsconfig.json'), join(folder, 'tsconfig.json'));
    cpSync(join(root, 'sim/tsconfig.json'), join(folder, 'sim/tsconfig.json'));
    const compile = (body: string) => {
      writeFileSync(join(folder, 'sim/planted.ts'), `export const planted = () => ${body};\n`);
      return spawnSync(
        process.execPath,
        [join(root, 'node_modules/typescript/bin/tsc'), '-p', join(folder, 'sim/tsconfig.json')],
        { encoding: 'utf8' },
      );
    };
    const good = compile('Math.sqrt(2)');
    expect(good.status, good.stdout + good.stderr).toBe(0);
    for (const name of ['document', 'window', 'process', 'Buffer', 'setTimeout', 'console']) {
      const bad = compile(name);
      expect(bad.stdout, name).toMatch(/error TS\d+: Cannot find name/);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});
