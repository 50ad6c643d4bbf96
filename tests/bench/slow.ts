import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import { serve } from '../../ui/serve/static.mjs';
import { findBrowser } from '../run/browser.mjs';
import { answers, apart, busy, HALF_PACE, paced, trace } from './slowed.ts';
import { type Goal, median, share } from './timing.ts';

/**
 * The built page on a slow machine: its processor at a sixth, no graphics card, a projector's 1366 × 768. What a key
 * on the pedal takes until its answer is painted, how many pictures a second come while drum and shoes move (both
 * reckoned from processor time, `slowed.ts`), and what memory the browser takes in all.
 */

const WIDTH = 1366;
const HEIGHT = 768;
const SHARE = 6;
/** Until its answer is seen an action may take so long, ms (J. Nielsen, Usability Engineering, 1993: seems at once). */
const AT_ONCE = 100;
/** Pictures a second that a slow machine has to show. */
const PACE = 30;
/** Memory of such a machine, MB. */
const MEMORY = 2048;
const PRESSES = 30;
/** Each stretch of pictures, ms. */
const STRETCH = 6000;

/** Keys on the pedal, while the brake comes to rest or moves. */
async function keys(page: Page): Promise<void> {
  await page.locator('takeup-pedal [role="slider"]').focus();
  for (let n = 0; n < PRESSES; n++) {
    await page.keyboard.press(n % 10 < 5 ? 'PageUp' : 'PageDown');
    // Not in step with the pictures.
    await page.waitForTimeout(240 + 3 * n);
  }
}

/** Every process that a process has started, and theirs. */
function familyOf(pid: number): number[] {
  const parents = readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .flatMap((name) => {
      try {
        const [, parent] =
          /^\d+ \(.*\) \S (\d+)/s.exec(readFileSync(`/proc/${name}/stat`, 'utf8')) ?? [];
        return [[Number(name), Number(parent)] as const];
      } catch {
        // It has ended meanwhile.
        return [];
      }
    });
  const found = [pid];
  for (const one of found)
    for (const [child, parent] of parents) if (parent === one) found.push(child);
  return found;
}

/** Memory of the browser with all its processes, what they share counted once, MB; null where it is told by no /proc. */
function memoryOf(pid: number): number | null {
  let kB = 0;
  for (const one of familyOf(pid)) {
    try {
      const [, pss] =
        /^Pss:\s+(\d+) kB/m.exec(readFileSync(`/proc/${one}/smaps_rollup`, 'utf8')) ?? [];
      kB += Number(pss ?? 0);
    } catch {
      if (one === pid) return null;
    }
  }
  return kB / 1024;
}

/** @param folder where the page is built to */
export async function slow(folder: string): Promise<Goal[]> {
  await build({
    configFile: fileURLToPath(new URL('../../ui/vite.config.ts', import.meta.url)),
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true },
  });
  const { server, address } = await serve(folder, 0);
  const executablePath = await findBrowser();
  const launched = await chromium.launchServer({ executablePath, args: ['--disable-gpu'] });
  const browser = await chromium.connect(launched.wsEndpoint());
  try {
    const page = await browser.newPage({ viewport: { width: WIDTH, height: HEIGHT } });
    // What runs these scripts gives functions their names by this, which pages do not know.
    await page.addInitScript('globalThis.__name = (one) => one');
    await page.addInitScript(paced, HALF_PACE);
    const client = await page.context().newCDPSession(page);
    const opening = await trace(client, async () => {
      await page.goto(new URL('?station=apply', address).href);
      await page.locator('takeup-stage canvas').first().waitFor();
    });
    // All that comes by itself has come.
    await page.waitForTimeout(8000);
    const took = answers(await trace(client, () => keys(page)), SHARE);
    for (let n = 0; n < 4; n++) await page.keyboard.press('PageUp');
    await page.waitForTimeout(500);
    const moving = apart(await trace(client, () => page.waitForTimeout(STRETCH)), SHARE);
    const memory = process.platform === 'linux' ? memoryOf(launched.process().pid as number) : null;
    console.log(
      `\nThe page at ${WIDTH}×${HEIGHT}, painted in software, reckoned for a processor at a sixth from what each task takes of this one`,
    );
    console.log(`  the brake stands there after ${busy(opening, SHARE).toFixed(1)} s of its time`);
    const most = share(took, 0.95);
    console.log(
      `  a key on the pedal is answered in ${median(took).toFixed(0)} ms (95 % within ${most.toFixed(0)} ms; ${took.length} of ${PRESSES} keys)`,
    );
    const pace = 1000 / median(moving);
    console.log(
      `  pressed, the drum turning: ${pace.toFixed(0)} pictures a second, 95 % of them within ${share(moving, 0.95).toFixed(0)} ms (${moving.length} pictures)`,
    );
    console.log(
      memory === null
        ? '  memory: not told on this system'
        : `  memory of the whole browser: ${memory.toFixed(0)} MB`,
    );
    return [
      {
        name: `on a processor at a sixth a key is answered within ${AT_ONCE} ms`,
        reached: took.length === PRESSES && most <= AT_ONCE,
      },
      { name: `there ${PACE} pictures a second while it moves`, reached: Math.round(pace) >= PACE },
      {
        name: `the whole browser in less than ${MEMORY / 2} MB, half of such a machine’s`,
        reached: memory === null || memory < MEMORY / 2,
      },
    ];
  } finally {
    await browser.close();
    await launched.close();
    server.close();
  }
}
