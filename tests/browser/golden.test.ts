import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { expect, it } from 'vitest';
import { engineWithoutShapes } from '../../ui/serve/engine.mjs';
import { serve } from '../../ui/serve/static.mjs';
import { goldenRuns } from '../golden/golden.ts';
import { type Walked, walk } from '../random-steps.ts';
import { startBrowser } from './open.ts';

it('golden runs of every scene end in the same bits in Node and in the browser', async () => {
  const here = goldenRuns();
  expect(goldenRuns()).toEqual(here);
  expect(here.every((g) => g.clicks >= 1 && g.steps === 720)).toBe(true);
  expect(new Set(here.map((g) => g.hash)).size).toBe(here.length);
  const folder = mkdtempSync(join(tmpdir(), 'takeup-golden-'));
  const root = fileURLToPath(new URL('../golden/', import.meta.url));
  try {
    await build({
      configFile: false,
      logLevel: 'error',
      root,
      base: './',
      // As the page is built.
      plugins: [engineWithoutShapes()],
      build: {
        emptyOutDir: true,
        outDir: folder,
        target: 'es2022',
        modulePreload: { polyfill: false },
      },
    });
    const { server, address } = await serve(folder, 0);
    const browser = await startBrowser();
    const page = await browser.newPage();
    await page.goto(address);
    await page.waitForFunction(() => window.goldenRuns !== undefined);
    const there = await page.evaluate(() => window.goldenRuns?.());
    // At random too: pedal, cable, hands, faults, on every scene.
    const seeds = Array.from({ length: 16 }, (_, n) => n);
    const walked = await page.evaluate((all) => all.map((s) => window.walk?.(s, 300)), seeds);
    await browser.close();
    server.close();
    expect(there).toEqual(here);
    // What the books are open by is the test's own sum, by sines of the engine; that it is small is in `wrong`.
    const bits = (w: Walked | undefined) => ({ ...w, open: 0 });
    expect(walked.map(bits)).toEqual(seeds.map((s) => bits(walk(s, 300))));
    expect(walked.flatMap((w) => w?.wrong)).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
