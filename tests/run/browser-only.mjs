// @ts-check
// npm run test:browser: builds the page and runs the browser tests alone.
import { install, run, tool } from '../../ui/serve/install.mjs';

install();
const { findBrowser } = await import('./browser.mjs');
const browser = await findBrowser();
const built = run('npm', ['run', '-s', 'build']);
process.exit(
  built ||
    tool('vitest', ['run', '--config', 'tests/vitest.config.ts', '--project', 'browser'], {
      env: { ...process.env, TAKEUP_BROWSER: browser },
    }),
);
