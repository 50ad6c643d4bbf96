// @ts-check
// npm run hashes -- OLD [NEW]: the golden runs of two commits side by side, each by its own sources with the
// packages that are installed now. Without NEW it is the working tree. Exit code 1 where a bit differs.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { install, root } from '../../ui/serve/install.mjs';

/** @typedef {{ scene: string, clicks: number, steps: number, hash: string }} Golden */

/**
 * Runs a command to its end and gives what it wrote; a failure ends this one.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {import('node:child_process').SpawnSyncOptions} [options]
 */
function must(command, args, options) {
  const { status, stdout, stderr, error } = spawnSync(command, args, {
    cwd: root,
    maxBuffer: 2 ** 30,
    ...options,
  });
  if (status === 0) return stdout;
  console.error(`${command} ${args.join(' ')}\n${error ?? stderr}`);
  process.exit(2);
}

/** @param {string} folder the sources @returns {Golden[]} */
function runsIn(folder) {
  const golden = pathToFileURL(join(folder, 'tests/golden/golden.ts')).href;
  // A version may print of its own: only the line that is asked for is read.
  const script = `import(${JSON.stringify(golden)}).then((m) => console.log('RUNS' + JSON.stringify(m.goldenRuns())))`;
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs');
  const told = String(must(process.execPath, [tsx, '-e', script], { cwd: folder }));
  const line = told.split('\n').find((l) => l.startsWith('RUNS')) ?? 'RUNS[]';
  return JSON.parse(line.slice(4));
}

/** @param {string} commit @returns {Golden[]} */
function runsAt(commit) {
  const folder = mkdtempSync(join(tmpdir(), 'takeup-hashes-'));
  try {
    const packed = must('git', ['archive', commit]);
    must('tar', ['-x', '-C', folder], { input: packed });
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction');
    return runsIn(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const [before, after] = process.argv.slice(2);
if (!before) {
  console.error('npm run hashes -- OLD [NEW]: two commits; without NEW, the working tree');
  process.exit(2);
}
install();
const old = runsAt(before);
const now = after ? runsAt(after) : runsIn(root);
const tell = (/** @type {Golden | undefined} */ g) =>
  (g ? `${g.hash} (${g.clicks} clicks, ${g.steps} steps)` : 'none').padEnd(36);
const scenes = [...new Set([...old, ...now].map((g) => g.scene))];
const wide = Math.max(...scenes.map((s) => s.length));
let differ = 0;
console.log(`${''.padEnd(wide)}  ${before.padEnd(36)}${after ?? 'working tree'}`);
for (const scene of scenes) {
  const was = tell(old.find((g) => g.scene === scene));
  const is = tell(now.find((g) => g.scene === scene));
  if (was !== is) differ++;
  console.log(`${scene.padEnd(wide)}  ${was}${is}${was === is ? 'same bits' : 'DIFFERS'}`);
}
process.exit(differ === 0 ? 0 : 1);
