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

interface Cruise {
  modules: unknown[];
  summary: {
    totalCruised: number;
    violations: { rule: { name: string }; from: string; to: string }[];
  };
}

function cruise(folder: string, ...targets: string[]): Cruise {
  const result = spawnSync(
    process.execPath,
    [
      join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs'),
      '--config',
      join(root, 'tests/run/order.cjs'),
      '--output-type',
      'json',
      ...targets,
    ],
    { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 28 },
  );
  expect(result.stdout, result.stderr).toMatch(/^\{/);
  return JSON.parse(result.stdout) as Cruise;
}

it('keeps the import order, and was read at all', () => {
  const { summary } = cruise(root, 'sim', 'ui');
  expect(summary.totalCruised).toBeGreaterThan(30);
  expect(summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}`)).toEqual([]);
});

it('finds a planted import against the order, type imports too', () => {
  const folder = mkdtempSync(join(tmpdir(), 'takeup-order-'));
  try {
    cpSync(join(root, 'sim'), join(folder, 'sim'), { recursive: true });
    mkdirSync(join(folder, 'ui'));
    writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
    writeFileSync(
      join(folder, 'sim/brake/planted.ts'),
      "import type { Instant } from '../balance/instant.ts';\nexport type Planted = Instant;\n",
    );
    writeFileSync(
      join(folder, 'ui/planted.ts'),
      "import { rub } from '../sim/contact/rub.ts';\nexport const planted = rub;\n",
    );
    const names = cruise(folder, 'sim', 'ui').summary.violations.map((v) => v.rule.name);
    expect(names).toContain('sim-brake-imports-later');
    expect(names).toContain('ui-imports-past-the-door');
  } finally {
    rmSync(folder, { recursive: true });
  }
});

/** Functions whose last digits the language leaves to the engine, and what is not reproducible at all. */
const banned =
  /\bMath\.(sin|cos|tan|asin|acos|atan|atan2|hypot|pow|exp|expm1|log|log2|log10|log1p|sinh|cosh|tanh|asinh|acosh|atanh|cbrt|random)\b|\*\*|\bDate\b|\bperformance\b/;

it('uses no engine-dependent functions in sim/', () => {
  const files = readdirSync(join(root, 'sim'), { recursive: true, encoding: 'utf8' }).filter(
    // The one place that lends the own sine and cosine to the engine.
    (file) => file.endsWith('.ts') && !/trig-(in|out)\.ts$/.test(file),
  );
  expect(files.length).toBeGreaterThan(20);
  const found = files.flatMap((file) =>
    readFileSync(join(root, 'sim', file), 'utf8')
      .replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')
      .split('\n')
      .flatMap((line) => (banned.test(line) ? [`${file}: ${line.trim()}`] : [])),
  );
  expect(found).toEqual([]);
  expect(banned.test('Math.hypot(1, 2)')).toBe(true);
});
