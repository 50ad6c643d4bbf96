// @ts-check
// npm run test:day: eight hours of class, or so many (npm run test:day -- 1), at thirty times their speed or more; what
// the page holds after each period, and which pictures took long; fails where it grows, says something or is slow.
import { install, run, tool } from '../../ui/serve/install.mjs';

const hours = Number(process.argv[2] ?? 8);
if (!(hours > 0)) {
  console.error(`hours: found ${process.argv[2]}; allowed: a number over 0`);
  process.exit(2);
}
install();
const { findBrowser } = await import('./browser.mjs');
const browser = await findBrowser();
const built = run('npm', ['run', '-s', 'build']);
const tests = ['--project', 'browser', 'tests/browser/class.day.ts'];
const watched = ['--testTimeout', '0', '--disable-console-intercept'];
process.exit(
  built ||
    tool('vitest', ['run', '--config', 'tests/vitest.config.ts', ...tests, ...watched], {
      env: { ...process.env, TAKEUP_BROWSER: browser, TAKEUP_HOURS: String(hours) },
    }),
);
