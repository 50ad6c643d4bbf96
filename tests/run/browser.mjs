// @ts-check
// Finds a Chromium-like browser, or installs one; says what to do when none can be had.
import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';

/** @type {Partial<Record<NodeJS.Platform, string[]>>} */
const usual = {
  linux: [
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/usr/bin/microsoft-edge',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((key) => {
    const folder = process.env[key];
    return folder
      ? [
          join(folder, 'Google', 'Chrome', 'Application', 'chrome.exe'),
          join(folder, 'Microsoft', 'Edge', 'Application', 'msedge.exe'),
        ]
      : [];
  }),
};
const names = ['chromium', 'chromium-browser', 'google-chrome', 'chrome', 'msedge'];

/** @param {string} path */
function executable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function onPath() {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of names) {
      const path = join(folder, process.platform === 'win32' ? `${name}.exe` : name);
      if (existsSync(path) && executable(path)) return path;
    }
  }
  return null;
}

async function own() {
  const { chromium } = await import('playwright-core');
  const path = chromium.executablePath();
  return path && existsSync(path) ? path : null;
}

function installed() {
  return (usual[process.platform] ?? []).find((path) => executable(path)) ?? onPath();
}

/** Path of a browser's executable. Throws with what to do when there is none. */
export async function findBrowser() {
  const told = process.env.CHROME_PATH;
  if (told) {
    if (!executable(told)) throw new Error(`CHROME_PATH is ${told}, which cannot be run`);
    return told;
  }
  const here = (await own()) ?? installed();
  if (here) return here;
  if (
    process.platform === 'linux' &&
    process.getuid?.() === 0 &&
    existsSync('/etc/debian_version')
  ) {
    console.log('No browser found; installing Debian’s chromium…');
    /** @type {import('node:child_process').SpawnSyncOptions} */
    const options = {
      stdio: 'inherit',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    };
    spawnSync('apt-get', ['update', '-qq'], options);
    spawnSync(
      'apt-get',
      ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-dejavu-core'],
      options,
    );
    const path = installed();
    if (path) return path;
  }
  console.log('No browser found; trying the test tool’s own download…');
  const cli = join(
    dirname(createRequire(import.meta.url).resolve('playwright-core/package.json')),
    'cli.js',
  );
  spawnSync(process.execPath, [cli, 'install', 'chromium'], { stdio: 'inherit' });
  const path = await own();
  if (path) return path;
  throw new Error(
    'No browser for the page’s tests. Install Chromium or Chrome, or set CHROME_PATH to an executable, and run npm test again.',
  );
}
