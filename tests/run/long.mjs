// @ts-check
// npm run test:long: all tests with thousands of random brakes and every view (tests/samples.ts), for the night.
import { install, run, tool } from '../../ui/serve/install.mjs';

install();
const { findBrowser } = await import('./browser.mjs');
const browser = await findBrowser();
const built = run('npm', ['run', '-s', 'build']);
process.exit(
  built ||
    tool('vitest', ['run', '--config', 'tests/vitest.config.ts', ...process.argv.slice(2)], {
      env: { ...process.env, TAKEUP_BROWSER: browser, TAKEUP_SAMPLES: 'many' },
    }),
);
