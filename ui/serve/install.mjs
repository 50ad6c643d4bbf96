// @ts-check
// Installs what the project needs, with nothing but Node itself.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

const least = 20;

/**
 * Runs a command in the project's folder and gives its exit code.
 *
 * @param {string} command
 * @param {readonly string[]} args
 * @param {import('node:child_process').SpawnSyncOptions} [options]
 */
export function run(command, args, options = {}) {
  const result = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
    ...options,
  });
  if (result.error) throw result.error;
  return result.status ?? 1;
}

/**
 * Runs a tool of the project's own packages. --no: a missing one must not be fetched by its name.
 *
 * @param {string} name
 * @param {readonly string[]} args
 * @param {import('node:child_process').SpawnSyncOptions} [options]
 */
export function tool(name, args, options) {
  return run('npx', ['--no', '--', name, ...args], options);
}

/** npm ci when node_modules is missing or older than the lock file. */
export function install() {
  const major = Number(process.versions.node.split('.')[0]);
  if (major < least) {
    console.error(`Takeup needs Node.js ${least} or newer; this is ${process.versions.node}.`);
    process.exit(1);
  }
  const mark = join(root, 'node_modules', '.package-lock.json');
  const lock = join(root, 'package-lock.json');
  if (existsSync(mark) && statSync(mark).mtimeMs >= statSync(lock).mtimeMs) return;
  // The build tool is a development dependency: --include=dev also where NODE_ENV says production.
  // No package needs its install script; npm 11 leaves them out with a warning, older ones run them.
  console.log('Installing what the project needs (npm ci)…');
  const options = ['--include=dev', '--ignore-scripts', '--no-audit', '--no-fund'];
  const code = run('npm', ['ci', ...options]);
  if (code !== 0) {
    console.error('npm ci failed: see above. A connection to the npm registry is needed once.');
    process.exit(code);
  }
}
