// @ts-check
// npm start: installs, builds, serves, prints the address, opens the browser where there is one.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { install, root, run } from './install.mjs';
import { serve } from './static.mjs';

const port = Number(process.env.PORT || 4747);
if (!Number.isInteger(port) || port < 0 || port > 65535) {
  console.error(`PORT is ${process.env.PORT}; allowed are whole numbers from 0 to 65535.`);
  process.exit(1);
}
install();
const code = run('npm', ['run', '-s', 'build']);
if (code !== 0) process.exit(code);
const { address } = await serve(join(root, 'dist'), port);
console.log(`Takeup runs at ${address} (Ctrl+C ends it)`);

// A signal sent to npm ends npm, and may leave this server behind on its port: go when npm goes.
if (process.env.npm_lifecycle_event === 'start') {
  const npm = process.ppid;
  setInterval(() => {
    if (process.ppid !== npm) process.exit(0);
  }, 500).unref();
}

/** @param {string} url */
function open(url) {
  if (process.env.CI) return;
  const { platform } = process;
  if (platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return;
  const [command, ...args] =
    platform === 'darwin'
      ? ['open', url]
      : platform === 'win32'
        ? ['cmd', '/c', 'start', '', url]
        : ['xdg-open', url];
  // Without a browser the printed address is enough.
  spawn(command, args, { stdio: 'ignore', detached: true })
    .on('error', () => {})
    .unref();
}
open(address);
