// @ts-check
// npm run test:long: the tests in Node with thousands of random brakes (tests/samples.ts), for the night.
import { install, tool } from '../../ui/serve/install.mjs';

install();
const tests = ['--config', 'tests/vitest.config.ts', '--project', 'node'];
process.exit(
  tool('vitest', ['run', ...tests, ...process.argv.slice(2)], {
    env: { ...process.env, TAKEUP_SAMPLES: 'many' },
  }),
);
