// @ts-check
// npm run test:firefox: the browser tests that Firefox can run (tests/browser-kinds.md says which, and why not the
// others), in Debian's own package or one that is told; finds it, or installs it. With names of files: those alone;
// with --built: in the page as it was built last. Closes with how many passed.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { install, run, tool } from '../../ui/serve/install.mjs';

/** @type {Partial<Record<NodeJS.Platform, string[]>>} */
const usual = {
  linux: ['/usr/bin/firefox-esr', '/usr/bin/firefox', '/snap/bin/firefox'],
  darwin: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
  win32: ['C:\\Program Files\\Mozilla Firefox\\firefox.exe'],
};

/** @param {string} path */
function executable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function findFirefox() {
  const told = process.env.FIREFOX_PATH;
  if (told) {
    if (!executable(told)) throw new Error(`FIREFOX_PATH is ${told}, which cannot be run`);
    return told;
  }
  const here = () => (usual[process.platform] ?? []).find(executable);
  const found = here();
  if (found) return found;
  if (process.getuid?.() === 0 && existsSync('/etc/debian_version')) {
    console.log('No Firefox found; installing Debian’s firefox-esr…');
    /** @type {import('node:child_process').SpawnSyncOptions} */
    const options = {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    };
    const name = ['install', '-y', '-qq', '--no-install-recommends', 'firefox-esr'];
    spawnSync('apt-get', ['update', '-qq'], options);
    spawnSync('apt-get', name, options);
    const path = here();
    if (path) return path;
  }
  throw new Error(
    'No Firefox for these tests. Install it, or set FIREFOX_PATH to an executable, and run npm run test:firefox again.',
  );
}

/** Files that the table says pass. */
const passing = readFileSync(new URL('../browser-kinds.md', import.meta.url), 'utf8')
  .split('\n')
  .flatMap((line) => /^\| ([\w-]+) \| passes/.exec(line)?.[1] ?? []);

install();
const firefox = findFirefox();
const told = process.argv.slice(2);
const names = told.filter((one) => one !== '--built');
const wanted = names.length > 0 ? names : passing;
if (!told.includes('--built') && run('npm', ['run', '-s', 'build']) !== 0) process.exit(1);

const folder = mkdtempSync(join(tmpdir(), 'takeup-firefox-'));
const report = join(folder, 'report.json');
const code = tool(
  'vitest',
  [
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--project',
    'browser',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
    ...wanted.map((name) => `tests/browser/${name}.test.ts`),
  ],
  { env: { ...process.env, TAKEUP_FIREFOX: firefox } },
);
if (existsSync(report)) {
  const { numPassedTests, numFailedTests, numPendingTests, testResults } = JSON.parse(
    readFileSync(report, 'utf8'),
  );
  console.log(
    `\nFirefox: ${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} Chromium’s alone, in ${testResults.length} files`,
  );
}
rmSync(folder, { recursive: true });
process.exit(code);
