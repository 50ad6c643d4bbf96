// @ts-check
// npm test: installs what it needs, finds a browser, checks, builds, tests; counts at the end.
import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { install, root, run, tool } from '../../ui/serve/install.mjs';

install();
const reports = mkdtempSync(join(tmpdir(), 'takeup-reports-'));
let passed = 0;
let failed = 0;

/**
 * @param {string} name
 * @param {() => number} start gives the exit code
 */
function check(name, start) {
  console.log(`\n— ${name}`);
  const code = start();
  if (code === 0) passed++;
  else {
    failed++;
    console.log(`FAILED: ${name} (exit ${code})`);
  }
  return code === 0;
}

const { findBrowser } = await import('./browser.mjs');
let browser = '';
try {
  browser = await findBrowser();
  console.log(`Browser: ${browser}`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  failed++;
}

check('types', () => tool('tsc', ['-p', 'tsconfig.json']));
check('types of sim/ without DOM and Node', () => tool('tsc', ['-p', 'sim/tsconfig.json']));
check('lint', () =>
  tool('biome', ['check', '--config-path=tests/run/lint.jsonc', '--error-on-warnings', '.']),
);
check('unused files, exports and dependencies', () =>
  tool('knip', ['--config', 'tests/run/knip.jsonc']),
);
check('import order', () => run(process.execPath, ['tests/run/order.mjs']));
const built = check('build of the page', () => run('npm', ['run', '-s', 'build']));

/**
 * Starts the tests of a project.
 *
 * @param {string} project
 * @param {Record<string, string>} env
 * @param {boolean} aside what it says is kept until it has ended
 * @returns {Promise<void>}
 */
async function tests(project, env, aside) {
  const report = join(reports, `${project}.json`);
  const args = ['run', '--config', 'tests/vitest.config.ts', '--project', project];
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const child = spawn('npx', ['--no', '--', 'vitest', ...args, ...reporters], {
    cwd: root,
    stdio: aside ? ['ignore', 'pipe', 'pipe'] : 'inherit',
    shell: process.platform === 'win32',
    env: { ...process.env, ...env },
  });
  /** @type {Buffer[]} */
  const said = [];
  for (const out of [child.stdout, child.stderr]) out?.on('data', (part) => said.push(part));
  /** @type {number} */
  const code = await new Promise((done) => {
    child.on('error', () => done(1));
    child.on('close', (status) => done(status ?? 1));
  });
  if (aside) process.stdout.write(`\n— tests: ${project}\n${Buffer.concat(said)}`);
  try {
    const result = JSON.parse(readFileSync(report, 'utf8'));
    passed += result.numPassedTests;
    failed += result.numFailedTests;
    if (result.numPendingTests + result.numTodoTests > 0) {
      console.log(`FAILED: ${project} skipped tests`);
      failed++;
    }
    if (result.numTotalTests === 0 || (code !== 0 && result.numFailedTests === 0)) failed++;
  } catch (error) {
    console.log(`FAILED: ${project} left no report (${error})`);
    failed++;
  }
}

// Pages wait for their frames about as long as they work: sums in Node fill what they leave of the processors.
const cores = availableParallelism();
const inNode = tests('node', { TAKEUP_WORKERS: String(Math.ceil(cores / 2)) }, true);
if (browser && built) {
  console.log('\n— tests: browser');
  const pages = String(Math.min(cores + 1, 6));
  await tests('browser', { TAKEUP_BROWSER: browser, TAKEUP_WORKERS: pages }, false);
} else {
  console.log('FAILED: the browser tests could not run');
  failed++;
}
await inNode;

rmSync(reports, { recursive: true });
console.log('');
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
