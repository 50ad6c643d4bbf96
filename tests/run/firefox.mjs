// @ts-check
// npm run test:firefox: the browser tests that Firefox can run (tests/browser-kinds.md says which, and why not the
// others), in Debian's own package or one that is told; finds it, or installs it. With names of files: those alone.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
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
const wanted = process.argv.length > 2 ? process.argv.slice(2) : passing;
const built = run('npm', ['run', '-s', 'build']);
const files = wanted.map((name) => `tests/browser/${name}.test.ts`);
process.exit(
  built ||
    tool(
      'vitest',
      ['run', '--config', 'tests/vitest.config.ts', '--project', 'browser', ...files],
      {
        env: { ...process.env, TAKEUP_FIREFOX: firefox },
      },
    ),
);
