// @ts-check
// npm run plates: makes the pictures of the stage anew, and the page that lays them side by side.
import { install, run, tool } from '../../ui/serve/install.mjs';

install();
const { findBrowser } = await import('./browser.mjs');
const browser = await findBrowser();
const built = run('npm', ['run', '-s', 'build']);
const tests = ['--project', 'browser', 'tests/browser/plates.test.ts'];
process.exit(
  built ||
    tool('vitest', ['run', '--config', 'tests/vitest.config.ts', ...tests], {
      env: { ...process.env, TAKEUP_BROWSER: browser, PLATES: 'write' },
    }),
);
