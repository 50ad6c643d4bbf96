import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

interface Cruise {
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

it('finds planted imports against the order, type imports too', () => {
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
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'));
    writeFileSync(
      join(folder, 'ui/planted-stage.ts'),
      "import type { Container } from 'pixi.js';\nexport type Planted = Container;\n",
    );
    writeFileSync(join(folder, 'sim/planted.ts'), "export { cwd } from 'node:process';\n");
    const names = cruise(folder, 'sim', 'ui').summary.violations.map((v) => v.rule.name);
    expect(names).toContain('sim-brake-imports-later');
    expect(names).toContain('ui-imports-past-the-door');
    expect(names).toContain('only-pixi-files-import-pixi');
    expect(names).toContain('sim-imports-node');
  } finally {
    rmSync(folder, { recursive: true });
  }
});
