// @ts-check
// npm run budgets: what the page takes, in sizes and counts, beside what it may, as one table; fails where it is over.
import { install, run, tool } from '../../ui/serve/install.mjs';

install();
const { findBrowser } = await import('./browser.mjs');
const browser = await findBrowser();
const built = run('npm', ['run', '-s', 'build']);
const tests = ['--project', 'browser', 'tests/browser/budgets.test.ts'];
process.exit(
  built ||
    tool(
      'vitest',
      ['run', '--config', 'tests/vitest.config.ts', ...tests, '--disable-console-intercept'],
      { env: { ...process.env, TAKEUP_BROWSER: browser, TAKEUP_TABLE: '1' } },
    ),
);
