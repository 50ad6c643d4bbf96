/** npm run bench: what things cost, side by side in one run. Bundled first, as the page is. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { serve } from '../../ui/serve/static.mjs';
import { findBrowser } from '../run/browser.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'takeup-bench-'));

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
const late = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length * 0.95)] ?? Number.NaN;

try {
  await build({
    configFile: false,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      emptyOutDir: true,
      ssr: join(here, 'solvers.ts'),
      outDir: join(folder, 'solvers'),
      target: 'node20',
      rollupOptions: { output: { entryFileNames: 'solvers.mjs' } },
    },
  });
  const solvers = spawnSync(process.execPath, [join(folder, 'solvers', 'solvers.mjs')], {
    stdio: 'inherit',
  });
  if (solvers.status !== 0) process.exit(solvers.status ?? 1);

  await build({
    configFile: false,
    logLevel: 'warn',
    root: here,
    base: './',
    build: {
      emptyOutDir: true,
      outDir: join(folder, 'page'),
      target: 'es2022',
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      rollupOptions: { input: join(here, 'page.html') },
      chunkSizeWarningLimit: 2000,
    },
  });
  const { server, address } = await serve(join(folder, 'page'), 0);
  const browser = await chromium.launch({
    executablePath: await findBrowser(),
    args: [
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
  const page = await browser.newPage({ viewport: { width: 1920, height: 1080 } });
  page.on('pageerror', (error) => console.error(error));
  await page.goto(`${address}page.html`);
  await page.waitForFunction(() => window.bench !== undefined);
  await page.evaluate(() => window.bench?.(60));
  const r = await page.evaluate(() => window.bench?.(300));
  await browser.close();
  server.close();
  if (!r) throw new Error('the page gave no figures');
  const all = r.motion.map((m, i) => m + (r.shapes[i] ?? 0) + (r.paint[i] ?? 0));
  console.log(
    `\nFrame at 1920×1080 in headless Chromium (${r.kind}), everything moving, all layers on; JavaScript, median of ${all.length}`,
  );
  for (const [name, values] of [
    ['motion', r.motion],
    ['shapes', r.shapes],
    ['paint', r.paint],
    ['in all', all],
  ] as const) {
    console.log(
      `  ${name.padEnd(8)} ${median(values).toFixed(2)} ms   (95 %: ${late(values).toFixed(2)} ms)`,
    );
  }
  console.log(
    `  frames every ${median(r.gap).toFixed(1)} ms; goal 4 ms of JavaScript at 60 a second: ${median(all) <= 4 && median(r.gap) < 18 ? 'reached' : 'NOT reached'}`,
  );
} finally {
  rmSync(folder, { recursive: true, force: true });
}
