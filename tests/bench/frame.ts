import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { serve } from '../../ui/serve/static.mjs';
import { findBrowser } from '../run/browser.mjs';
import type { FrameTimes } from './page.ts';
import { type Goal, median, share } from './timing.ts';

const here = fileURLToPath(new URL('.', import.meta.url));
const WIDTH = 1920;
const HEIGHT = 1080;
/** Most JavaScript in a frame, ms. */
const MOST = 4;
/** The same on the WebGL path, ms: half a frame, so that the card has the other half. */
const MOST_WEBGL = 8;
/** A frame that took longer to come missed its turn at 60 a second, ms. */
const LATE = 25;

async function times(
  page: Page,
  frames: number,
  magnified: boolean,
  filled = false,
): Promise<FrameTimes> {
  const r = await page.evaluate(([n, m, f]) => window.bench?.(n, m, f), [
    frames,
    magnified,
    filled,
  ] as const);
  if (!r) throw new Error('the page gave no figures');
  return r;
}

/**
 * In the page: calls that hand work to a graphics card are answered at once. A card takes them and goes
 * its own way; the browser's software makes the page wait while it fills pixels. What is left is the
 * page's own work.
 */
function answerAtOnce(): void {
  const card = WebGL2RenderingContext.prototype as unknown as Record<string, () => void>;
  for (const call of [
    'clear',
    'drawArrays',
    'drawElements',
    'drawArraysInstanced',
    'drawElementsInstanced',
    'bufferData',
    'bufferSubData',
    'texImage2D',
    'texSubImage2D',
  ]) {
    card[call] = () => {};
  }
}

function told(r: FrameTimes, magnified: boolean): { js: number; onTime: boolean } {
  const all = r.motion.map((m, i) => m + (r.shapes[i] as number) + (r.paint[i] as number));
  console.log(
    `  ${magnified ? 'with the loupe' : 'whole brake'}: ${r.count.shapes} shapes, ${r.count.labels} texts, painted by ${r.kind}`,
  );
  const parts = { motion: r.motion, shapes: r.shapes, paint: r.paint, 'in all': all };
  for (const [name, values] of Object.entries(parts)) {
    const [mid, most] = [median(values), share(values, 0.95)].map((v) => v.toFixed(2));
    console.log(`    ${name.padEnd(8)} ${mid} ms   (95 % under ${most} ms)`);
  }
  console.log(`    ${paceOf(r.gap)}`);
  return { js: median(all), onTime: median(r.gap) < 18 };
}

function paceOf(gaps: readonly number[]): string {
  const late = gaps.filter((g) => g > LATE).length / gaps.length;
  return `a frame every ${median(gaps).toFixed(1)} ms, ${(100 * late).toFixed(0)} % of them late`;
}

/** Cost of a frame in a headless browser that paints in software. */
export async function frame(folder: string): Promise<Goal[]> {
  await build({
    configFile: false,
    logLevel: 'warn',
    root: here,
    base: './',
    build: {
      emptyOutDir: true,
      outDir: folder,
      target: 'es2022',
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      rollupOptions: { input: join(here, 'page.html') },
      chunkSizeWarningLimit: 2000,
    },
  });
  const { server, address } = await serve(folder, 0);
  const browser = await chromium.launch({ executablePath: await findBrowser() });
  try {
    console.log(
      `\nFrame at ${WIDTH}×${HEIGHT} in a headless browser, everything moving, all layers on; JavaScript, medians`,
    );
    const measured = async (kind: 'canvas' | 'webgl', frames: number, waits = true) => {
      const page = await browser.newPage({ viewport: { width: WIDTH, height: HEIGHT } });
      if (!waits) await page.addInitScript(answerAtOnce);
      page.on('pageerror', (error) => console.error(error));
      await page.goto(`${address}page.html#${kind}`);
      await page.waitForFunction(() => window.bench !== undefined);
      if (kind === 'canvas') {
        const gaps = await page.evaluate((n) => window.empty?.(n), frames);
        if (!gaps) throw new Error('the page gave no figures');
        console.log(`  a canvas of that size that is only cleared: ${paceOf(gaps)}`);
      }
      const all = [];
      for (const magnified of [false, true]) {
        await times(page, frames / 3, magnified);
        all.push(told(await times(page, frames, magnified), magnified));
        if (kind === 'webgl') continue;
        const { fill } = await times(page, frames / 3, magnified, true);
        console.log(`    the browser then fills the canvas for ${median(fill).toFixed(1)} ms`);
      }
      await page.close();
      return all;
    };
    const results = await measured('canvas', 300);
    // Software fills pixels slowly, so its rate says nothing of a card.
    await measured('webgl', 60);
    console.log('  the same with a card’s calls answered at once: the page’s own work');
    const webgl = await measured('webgl', 120, false);
    return [
      {
        name: `a frame’s JavaScript in at most ${MOST} ms`,
        reached: results.every((r) => r.js <= MOST),
      },
      {
        name: `the page’s own on the WebGL path in at most ${MOST_WEBGL} ms of a frame’s 16.7`,
        reached: webgl.every((r) => r.js <= MOST_WEBGL),
      },
      {
        name: '60 frames a second on the WebGL path, as far as the page’s own work goes',
        reached: webgl.every((r) => r.onTime),
      },
      {
        name: '60 frames a second, painted in software',
        reached: results.every((r) => r.onTime),
      },
    ];
  } finally {
    await browser.close();
    server.close();
  }
}
