// @ts-check
// Stryker's runner of tests for `npm run test:mutants`. Vitest takes more than a second to begin anew for every
// mutant, nearly all of it loading. Here each test file is bundled once, and for a mutant its code is only run
// again, in some milliseconds: all modules are fresh each time, so that nothing that one mutant has left in a
// table reaches the next. Of vitest it knows what tests of the mechanics ask for.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { format } from 'node:util';
import { Script } from 'node:vm';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';
import { spyOn } from '@vitest/spy';
import * as chai from 'chai';
import { build } from 'vite';
import { files, LONGEST } from './mutants-tests.mjs';

const { NAMESPACE } = INSTRUMENTER_CONSTANTS;

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
const matchers = Reflect.get(globalThis, ASYMMETRIC_MATCHERS_OBJECT);
const expect = Object.assign(
  (/** @type {unknown} */ value, /** @type {string | undefined} */ message) =>
    chai.expect(value, message),
  chai.expect,
  matchers,
);
setState(
  { assertionCalls: 0, expectedAssertionsNumber: null, isExpectingAssertions: false },
  expect,
);

/**
 * @typedef {{ name: string, parent: Suite | null, before: Function[], after: Function[], each: Function[],
 *   eachAfter: Function[], begun: boolean, inside: (Suite | Test)[] }} Suite
 * @typedef {{ name: string, parent: Suite, run: Function }} Test
 */

/** @returns {Suite} */
const suite = (/** @type {string} */ name, /** @type {Suite | null} */ parent) => ({
  name,
  parent,
  before: [],
  after: [],
  each: [],
  eachAfter: [],
  begun: false,
  inside: [],
});

/** As vitest fills in the name of a case: %s and the like, then $key of an object. */
function nameOf(
  /** @type {string} */ name,
  /** @type {readonly unknown[]} */ args,
  /** @type {number} */ i,
) {
  const counted = name.replaceAll('%#', `${i}`).replaceAll('%$', `${i + 1}`);
  const places = counted.split('%').length - 1;
  return format(counted, ...args.slice(0, places));
}

/** What a test file gets for vitest's words, and the tests it tells with them. */
function collector() {
  const root = suite('', null);
  let now = root;
  const it = (/** @type {string} */ name, /** @type {any} */ a, /** @type {any} */ b) => {
    const run = typeof a === 'function' ? a : b;
    now.inside.push({ name: String(name), parent: now, run });
  };
  const describe = (/** @type {string} */ name, /** @type {any} */ a, /** @type {any} */ b) => {
    const inner = suite(String(name), now);
    now.inside.push(inner);
    now = inner;
    (typeof a === 'function' ? a : b)();
    now = /** @type {Suite} */ (inner.parent);
  };
  const each =
    (/** @type {Function} */ tell) =>
    (/** @type {readonly unknown[]} */ cases) =>
    (/** @type {string} */ name, /** @type {any} */ a, /** @type {any} */ b) => {
      const run = typeof a === 'function' ? a : b;
      cases.forEach((one, i) => {
        const args = Array.isArray(one) ? one : [one];
        tell(nameOf(name, args, i), () => run(...args));
      });
    };
  it.each = each(it);
  describe.each = each(describe);
  const spies = /** @type {{ mockRestore(): void }[]} */ ([]);
  const words = {
    it,
    test: it,
    describe,
    expect,
    vi: {
      spyOn(/** @type {any} */ of, /** @type {any} */ key) {
        const spy = spyOn(of, key);
        spies.push(spy);
        return spy;
      },
      restoreAllMocks() {
        for (const spy of spies.splice(0)) spy.mockRestore();
      },
    },
    beforeAll: (/** @type {Function} */ f) => now.before.push(f),
    afterAll: (/** @type {Function} */ f) => now.after.push(f),
    beforeEach: (/** @type {Function} */ f) => now.each.push(f),
    afterEach: (/** @type {Function} */ f) => now.eachAfter.push(f),
  };
  return { root, words, end: words.vi.restoreAllMocks };
}

/** @returns {Test[]} */
const testsOf = (/** @type {Suite} */ s) =>
  s.inside.flatMap((one) => ('run' in one ? [one] : testsOf(one)));

function lineage(/** @type {Test} */ test) {
  /** @type {Suite[]} */
  const all = [];
  for (let s = /** @type {Suite | null} */ (test.parent); s; s = s.parent) all.unshift(s);
  return all;
}

const fullName = (/** @type {Test} */ test) =>
  [...lineage(test).map((s) => s.name), test.name].join(' ').trim();

/** The process has run for so long, ms. On a machine that has other things to do its time on the clock says little. */
const spent = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** A mutant may take so much longer than what it stands for, and ms more: past that it turns in a circle. */
const SLOWER = 3;
const PATIENCE = 1000;

/** What stops it then. */
const LATE = 'ERR_SCRIPT_EXECUTION_TIMEOUT';

/** In the copy of the project that mutants are tried in. */
const TIMES = 'mutant-times.json';

const watched = new Script('globalThis.watchedByRunner()');

/** @returns {unknown} */
const codeOf = (/** @type {unknown} */ error) => /** @type {any} */ (error)?.code;

/**
 * Runs what may not end; from outside nothing but the end of the process would stop it. Where the machine let the
 * process run for less than that, it is begun again with more patience. @param ms 0: waits for ever
 */
function within(/** @type {number} */ ms, /** @type {() => unknown} */ what) {
  if (ms === 0) return what();
  Reflect.set(globalThis, 'watchedByRunner', what);
  for (let patience = Math.ceil(ms); ; patience *= 2) {
    const start = spent();
    try {
      return watched.runInThisContext({ timeout: patience });
    } catch (error) {
      if (codeOf(error) !== LATE || spent() - start >= ms) throw error;
    }
  }
}

class Runner {
  /** @type {Map<string, Script>} */
  scripts = new Map();

  /** How long each test took unchanged, ms. @type {Map<string, number>} */
  times = new Map();

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    process.env['NODE_ENV'] = 'test';
    process.env['VITEST'] = '1';
    // A process that follows one that had to be ended.
    if (existsSync(TIMES)) this.times = new Map(JSON.parse(readFileSync(TIMES, 'utf8')));
    for (const file of files()) {
      const made = /** @type {any} */ (
        await build({
          configFile: false,
          logLevel: 'error',
          ssr: { noExternal: true, external: ['vitest'] },
          build: {
            ssr: file,
            write: false,
            minify: false,
            rolldownOptions: { output: { format: 'cjs', codeSplitting: false } },
          },
        })
      );
      const { code } = made.output[0];
      const text = `(function (require, module, exports, __filename, __dirname) {${code}\n})`;
      this.scripts.set(file, new Script(text, { filename: `${resolve(file)}.cjs` }));
    }
  }

  get ns() {
    const all = /** @type {any} */ (globalThis);
    all[NAMESPACE] ??= {};
    return all[NAMESPACE];
  }

  /** The tests of a file, its modules fresh. */
  load(/** @type {string} */ file) {
    const { root, words, end } = collector();
    const system = createRequire(join(process.cwd(), file));
    const require = (/** @type {string} */ name) => (name === 'vitest' ? words : system(name));
    const script = /** @type {Script} */ (this.scripts.get(file));
    const module = { exports: {} };
    script.runInThisContext()(
      require,
      module,
      module.exports,
      resolve(file),
      dirname(resolve(file)),
    );
    return { root, end };
  }

  /**
   * @param {Map<string, Set<string> | null>} wanted names by file; null: all
   * @param {boolean} stop at the first that fails
   * @param {(id: string | undefined) => void} at told before each test, and after it
   * @param {(all: readonly string[], what: () => Promise<void>) => Promise<void>} before runs what is done once
   * @param {(on: boolean) => void} testing told when a file is loaded, and before
   */
  async go(wanted, stop, at, before, testing) {
    /** @type {any[]} */
    const tests = [];
    for (const [file, names] of wanted) {
      testing(false);
      const { root, end } = this.load(file);
      testing(true);
      const time = (/** @type {Test} */ t) => this.times.get(`${file}#${fullName(t)}`) ?? 0;
      const all = testsOf(root)
        .filter((t) => !names || names.has(fullName(t)))
        .sort((a, b) => time(a) - time(b));
      /** @type {Suite[]} */
      const begun = [];
      for (const test of all) {
        const name = fullName(test);
        const id = `${file}#${name}`;
        const line = lineage(test);
        const start = spent();
        /** @type {any} */
        let failed;
        try {
          for (const s of line) {
            if (s.begun) continue;
            s.begun = true;
            begun.push(s);
            const inside = testsOf(s).map((t) => `${file}#${fullName(t)}`);
            if (s.before.length > 0)
              await before(inside, async () => {
                for (const f of s.before) await f();
              });
          }
          at(id);
          for (const s of line) for (const f of s.each) await f();
          const known = this.times.get(id);
          await within(stop && known ? PATIENCE + SLOWER * known : 0, () => test.run());
          for (const s of line) for (const f of s.eachAfter) await f();
        } catch (error) {
          failed = error instanceof Error ? error : new Error(String(error));
        }
        at(undefined);
        tests.push({
          late: codeOf(failed) === LATE,
          id,
          name,
          fileName: resolve(file),
          timeSpentMs: spent() - start,
          ...(failed
            ? { status: 1, failureMessage: failed.message || String(failed) }
            : { status: 0 }),
        });
        if (failed && stop) break;
      }
      for (const s of begun) for (const f of s.after) await f();
      end();
      if (stop && tests.some((t) => t.status === 1)) break;
    }
    return tests;
  }

  async dryRun() {
    const { ns } = this;
    ns.activeMutant = undefined;
    const wanted = new Map([...this.scripts.keys()].map((file) => [file, null]));
    ns.mutantCoverage ??= { static: {}, perTest: {} };
    const { mutantCoverage } = ns;
    const { perTest } = mutantCoverage;
    const tests = await this.go(
      wanted,
      false,
      (id) => {
        ns.currentTestId = id;
      },
      async (inside, what) => {
        ns.currentTestId = 'before';
        await what();
        ns.currentTestId = undefined;
        for (const id of inside) {
          perTest[id] ??= {};
          const mine = perTest[id];
          for (const [key, times] of Object.entries(perTest['before'] ?? {}))
            mine[key] = (mine[key] ?? 0) + times;
        }
        delete perTest['before'];
      },
      () => {},
    );
    for (const { id, timeSpentMs } of tests) this.times.set(id, timeSpentMs);
    writeFileSync(TIMES, JSON.stringify([...this.times]));
    const asked = tests.filter(({ timeSpentMs }) => timeSpentMs <= LONGEST);
    for (const id of Object.keys(perTest)) if (!asked.some((t) => t.id === id)) delete perTest[id];
    return { status: 'complete', tests: asked, mutantCoverage };
  }

  async mutantRun(/** @type {any} */ { activeMutant, testFilter, hitLimit, mutantActivation }) {
    const { ns } = this;
    /** @type {Map<string, Set<string> | null>} */
    const wanted = new Map();
    // Most mutants are killed at once: the quickest tests first.
    const time = (/** @type {string} */ id) => this.times.get(id) ?? 0;
    for (const id of [...(testFilter ?? [])].sort((a, b) => time(a) - time(b))) {
      const [file, ...name] = id.split('#');
      const names = wanted.get(file) ?? new Set();
      names.add(name.join('#'));
      wanted.set(file, names);
    }
    if (!testFilter) for (const file of this.scripts.keys()) wanted.set(file, null);
    ns.hitLimit = hitLimit;
    ns.hitCount = 0;
    const whileLoading = mutantActivation === 'static' ? activeMutant.id : undefined;
    const tests = await this.go(
      wanted,
      true,
      () => {},
      (_, what) => what(),
      (on) => {
        ns.activeMutant = on ? activeMutant.id : whileLoading;
      },
    );
    ns.activeMutant = undefined;
    if (hitLimit !== undefined && ns.hitCount > hitLimit) {
      return { status: 'timeout', reason: `Hit limit reached (${ns.hitCount}/${hitLimit})` };
    }
    if (tests.some((t) => t.late)) return { status: 'timeout' };
    const killers = tests.filter((t) => t.status === 1);
    return killers.length > 0
      ? {
          status: 'killed',
          killedBy: killers.map((t) => t.id),
          failureMessage: killers[0].failureMessage,
          nrOfTests: tests.length,
        }
      : { status: 'survived', nrOfTests: tests.length };
  }
}

export const strykerPlugins = [
  declareClassPlugin(PluginKind.TestRunner, 'bundled', /** @type {any} */ (Runner)),
];
