// @ts-check
// Prints every import that breaks the rules of order.cjs. Reading nothing is a failure too: the
// tool calls a project clean when it cannot read its language.
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');

/**
 * Reads sim/ and ui/ of a folder.
 *
 * @param {string} folder
 * @returns {{ read: number, broken: string[] }} modules read; broken rules with both files
 */
export function cruise(folder) {
  const tool = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const rules = join(here, 'order.cjs');
  const result = spawnSync(
    process.execPath,
    [tool, '--config', rules, '--output-type', 'json', 'sim', 'ui'],
    { cwd: folder, encoding: 'utf8', maxBuffer: 2 ** 28 },
  );
  if (!result.stdout.startsWith('{')) {
    throw new Error(`dependency-cruiser failed: ${result.stderr}${result.stdout}`);
  }
  const { modules, summary } = JSON.parse(result.stdout);
  return {
    read: modules.filter((/** @type {{ source: string }} */ m) => /^(sim|ui)\//.test(m.source))
      .length,
    broken: summary.violations.map(
      (/** @type {{ rule: { name: string }, from: string, to: string }} */ v) =>
        `${v.rule.name}: ${v.from} -> ${v.to}`,
    ),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { read, broken } = cruise(process.argv[2] ?? root);
  for (const line of broken) console.error(line);
  console.log(`${read} modules read, ${broken.length} imports against the order`);
  if (read === 0) console.error('No module was read: the order was not checked.');
  process.exit(read > 0 && broken.length === 0 ? 0 : 1);
}
