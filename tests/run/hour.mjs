// @ts-check
// npm run test:hour: rounds through the whole page for an hour, or as many minutes as are told
// (npm run test:hour -- 10), and what the page holds after each; fails where it grows.
import { install, run, tool } from '../../ui/serve/install.mjs';

const minutes = Number(process.argv[2] ?? 60);
if (!(minutes > 0)) {
  console.error(`minutes: found ${process.argv[2]}; allowed: a number over 0`);
  process.exit(2);
}
install();
const { findBrowser } = await import('./browser.mjs');
const browser = await findBrowser();
const built = run('npm', ['run', '-s', 'build']);
const tests = ['--project', 'browser', 'tests/browser/memory.test.ts'];
const watched = ['--testTimeout', '0', '--disable-console-intercept'];
process.exit(
  built ||
    tool('vitest', ['run', '--config', 'tests/vitest.config.ts', ...tests, ...watched], {
      env: { ...process.env, TAKEUP_BROWSER: browser, TAKEUP_MINUTES: String(minutes) },
    }),
);
