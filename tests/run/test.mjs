// @ts-check
// npm test: installs what it needs, finds a browser, checks, builds, tests; counts at the end.
// npm run test:all: the same with all files of tests, not those of every change alone (everyday.ts).
import { spawn } from 'node:child_process';
import { mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { install, root, run, tool } from '../../ui/serve/install.mjs';

install();
const everyday = process.argv[2] === 'all' ? '0' : '1';
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

// The page is built beside the checks: each of them has one core of the two that there are.
const buildLog = join(reports, 'build.log');
const log = openSync(buildLog, 'w');
const build = spawn('npm', ['run', '-s', 'build'], {
  cwd: root,
  stdio: ['ignore', log, log],
  shell: process.platform === 'win32',
});
/** @type {Promise<number>} */
const buildEnds = new Promise((resolve) => {
  build.on('error', () => resolve(1));
  build.on('exit', (code) => resolve(code ?? 1));
});

check('types', () => tool('tsc', ['-p', 'tsconfig.json']));
check('types of sim/ without DOM and Node', () => tool('tsc', ['-p', 'sim/tsconfig.json']));
check('lint', () =>
  tool('biome', ['check', '--config-path=tests/run/lint.jsonc', '--error-on-warnings', '.']),
);
check('unused files, exports and dependencies', () =>
  tool('knip', ['--config', 'tests/run/knip.jsonc']),
);
check('import order', () => run(process.execPath, ['tests/run/order.mjs']));
const code = await buildEnds;
const built = check('build of the page', () => {
  process.stdout.write(readFileSync(buildLog, 'utf8'));
  return code;
});

/**
 * @param {string} project
 * @param {Record<string, string>} [env]
 */
function vitest(project, env = {}) {
  console.log(`\n— tests: ${project}`);
  const report = join(reports, `${project.replace('*', '')}.json`);
  const code = tool(
    'vitest',
    [
      'run',
      '--config',
      'tests/vitest.config.ts',
      '--project',
      project,
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
    ],
    { env: { ...process.env, TAKEUP_EVERYDAY: everyday, ...env } },
  );
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
vitest('node*');
if (browser && built) vitest('browser', { TAKEUP_BROWSER: browser });
else {
  console.log('FAILED: the browser tests could not run');
  failed++;
}

rmSync(reports, { recursive: true });
console.log('');
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
