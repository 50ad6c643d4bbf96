// @ts-check
// npm run test:mutants: changes the mechanics one small thing at a time and asks whether a test notices.
// Without words of its own it goes through all of MUTATED, which takes a night; a part of it, with tests that bear on it
// (mutants-tests.mjs):
//   npm run test:mutants -- --mutate sim/contact/rub.ts          one file
//   npm run test:mutants -- --mutate sim/wear/life.ts:40-90      lines of it
import { spawnSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { install, root } from '../../ui/serve/install.mjs';

const MUTATED = ['sim/{contact,balance,wear,scene,readings}/**/*.ts'];

/** Least share of the mutants that tests must notice, %. */
const KILLED = 85;

/** Stryker's settings: it reads this very file. */
export default {
  plugins: [join(root, 'tests/run/mutants-runner.mjs')],
  testRunner: 'bundled',
  // It would rewrite the settings by TypeScript's classic programming interface, which 7 has not; none to rewrite.
  tsconfigFile: 'none.json',
  mutate: MUTATED,
  // A word of a message is no mechanics.
  mutator: { excludedMutations: ['StringLiteral'] },
  coverageAnalysis: 'perTest',
  // What runs once while a module loads would ask for all tests anew, each time.
  ignoreStatic: true,
  ignorePatterns: ['dist', 'tests/browser', 'tests/bench'],
  thresholds: { high: 95, low: KILLED, break: KILLED },
  reporters: ['progress', 'clear-text'],
  clearTextReporter: {
    allowColor: false,
    logTests: false,
    reportTests: false,
    reportScoreTable: true,
  },
  // Beside the project: its tools must not read the copies.
  tempDirName: join(tmpdir(), 'takeup-mutants'),
  allowConsoleColors: false,
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  install();
  const stryker = join(root, 'node_modules/@stryker-mutator/core/bin/stryker.js');
  const { status } = spawnSync(
    process.execPath,
    [stryker, 'run', 'tests/run/mutants.mjs', ...process.argv.slice(2)],
    { cwd: root, stdio: 'inherit' },
  );
  process.exit(status ?? 1);
}
