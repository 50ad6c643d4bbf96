import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import pixelmatch from 'pixelmatch';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { samples } from '../samples.ts';
import { inChromiumAlone } from './firefox.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { steady } from './soon.ts';
import { openStation } from './tour.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('loads without an error or a warning, and draws something', async () => {
  const { page, errors, warnings, close } = await browser.open();
  await page.locator('takeup-app canvas').first().waitFor();
  await expect.poll(() => page.title()).toBe('Apply – Takeup');
  await expect.poll(async () => (await page.screenshot()).length).toBeGreaterThan(20_000);
  expect(errors).toEqual([]);
  await page.keyboard.press('2');
  await expect.poll(() => page.title()).toBe('Wear – Takeup');
  await page.goBack();
  await expect.poll(() => page.title()).toBe('Apply – Takeup');
  // What the graphics driver says of its own speed is not the page's.
  expect(warnings.filter((text) => !text.includes('GL Driver Message'))).toEqual([]);
  await close();
});

it('paints as many pixels as the screen has, an emulated one too', async () => {
  for (const deviceScaleFactor of [1, 2, 2.625]) {
    const { page, close } = await browser.open({
      viewport: { width: 1001, height: 701 },
      deviceScaleFactor,
    });
    const canvas = page.locator('takeup-stage canvas').first();
    await canvas.waitFor();
    const scale = () =>
      canvas.evaluate((c) => (c as HTMLCanvasElement).width / c.getBoundingClientRect().width);
    // A pixel more or less on some hundreds.
    await expect.poll(scale).toBeCloseTo(deviceScaleFactor, 1);
    await close();
  }
});

it('draws the page and its chart where the language is no valid tag', async () => {
  const { page, errors, close } = await browser.open({ language: 'en-US@posix' });
  expect(await page.evaluate(() => navigator.language)).toBe('en-US@posix');
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.getByRole('button', { name: 'Wear' }).click();
  await expect.poll(() => page.locator('takeup-chart .uplot canvas').count()).toBeGreaterThan(0);
  expect(await page.evaluate(() => navigator.language)).toBe('en-US@posix');
  expect(errors).toEqual([]);
  await close();
});

it('asks for nothing from another host', async () => {
  const { page, close } = await browser.open();
  const hosts: string[] = [];
  page.on('request', (request) => hosts.push(new URL(request.url()).host));
  await page.reload({ waitUntil: 'networkidle' });
  expect(hosts.length).toBeGreaterThan(1);
  expect(new Set(hosts)).toEqual(new Set([new URL(browser.address).host]));
  await close();
});

/**
 * Bytes of script that the page loads until the brake moves, as the server packs them: 232 300 on
 * 2026-11-28, and a little. With the painting library in it, and all of the engine, it was 334 000. Since 2026-11-29 its
 * texts stand apart from its code, so that another language can take their place: 3 bytes for each of 2 260, 6 600 in all.
 */
const SCRIPTS = 243_000;

/** The scripts of the page that stands now, in the order in which they were asked for. */
const scriptsOf = (page: Page): Promise<{ url: string; bytes: number; early: boolean }[]> =>
  page.evaluate(() => {
    const [moves] = performance.getEntriesByName('takeup moves');
    return (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
      .filter((e) => e.name.endsWith('.js'))
      .map((e) => ({
        url: e.name,
        bytes: e.encodedBodySize,
        early: moves !== undefined && e.startTime < moves.startTime,
      }));
  });

it('opens with few scripts; sizes are read and curves drawn by what comes when needed', async () => {
  const { page, close } = await browser.open();
  await page.locator('takeup-stage canvas').first().waitFor();
  const early = async () => (await scriptsOf(page)).filter((s) => s.early);
  await expect.poll(async () => (await early()).length).toBeGreaterThan(1);
  const bytes = (await early()).reduce((sum, s) => sum + s.bytes, 0);
  expect(bytes).toBeLessThan(SCRIPTS);
  expect(bytes).toBeGreaterThan(SCRIPTS / 2);
  const texts = new Map<string, string>();
  /** Is a word that only one library has in a script that was loaded? */
  const has = async (word: string): Promise<boolean> => {
    for (const { url } of await scriptsOf(page)) {
      if (!texts.has(url)) texts.set(url, await (await fetch(url)).text());
    }
    return [...texts.values()].some((text) => text.includes(word));
  };
  expect([await has('fluidounce'), await has('dppxchange')]).toEqual([false, false]);
  await page.keyboard.press('2');
  await expect.poll(() => has('dppxchange')).toBe(true);
  expect(await has('fluidounce')).toBe(false);
  await page.keyboard.press('5');
  await expect.poll(() => has('fluidounce')).toBe(true);
  await close();
});

/** Lets the browser's software pass for a graphics card. */
function passForCard(): void {
  const card = WebGL2RenderingContext.prototype;
  const asked = card.getParameter;
  // 0x9246: who draws, by WEBGL_debug_renderer_info.
  card.getParameter = function (what) {
    return what === 0x9246 ? 'A card' : asked.call(this, what);
  };
}

inChromiumAlone(
  'begins on a 2D canvas; where there is a graphics card, it takes over with the same picture',
  async () => {
    const { page, errors, close } = await browser.open({
      viewport: { width: 1001, height: 701 },
      reducedMotion: 'reduce',
      prepare: passForCard,
    });
    const stage = page.locator('takeup-stage');
    const painter = () => stage.evaluate((e) => (e as HTMLElement & { painter: string }).painter);
    await expect.poll(painter).toBe('webgl');
    const early = (await scriptsOf(page)).filter((s) => s.early);
    expect(early.reduce((sum, s) => sum + s.bytes, 0)).toBeLessThan(SCRIPTS);
    expect(early.filter((s) => s.url.includes('pixi'))).toEqual([]);
    expect(await stage.locator('canvas').count()).toBe(1);
    const byCard = await steady(page, () => stage.locator('canvas').screenshot());
    const plain = await browser.open({
      viewport: { width: 1001, height: 701 },
      reducedMotion: 'reduce',
    });
    const canvas = plain.page.locator('takeup-stage canvas');
    await canvas.waitFor();
    const byPen = await steady(plain.page, () => canvas.screenshot());
    const [a, b] = [PNG.sync.read(byCard), PNG.sync.read(byPen)];
    expect([a.width, a.height]).toEqual([b.width, b.height]);
    // Edges are smoothed differently, and the drum may stand elsewhere: a share of the picture.
    const off = pixelmatch(a.data, b.data, undefined, a.width, a.height, { threshold: 0.1 });
    expect(off / (a.width * a.height)).toBeLessThan(0.03);
    expect(errors).toEqual([]);
    await plain.close();
    await close();
  },
);

it('opens every station at once from its address, and all of them without the server', async () => {
  const { page, errors, close } = await browser.open();
  const main = page.locator('main');
  const entries = page.locator('nav.tabs button');
  await entries.first().waitFor();
  // The rest of the page has come.
  const whole = () => page.evaluate(() => performance.getEntriesByName('takeup whole').length);
  await expect.poll(whole).toBe(1);
  // And last of all what keeps it for later.
  const keeps = async () => (await scriptsOf(page)).some((s) => /\/offline-[^/]*\.js$/.test(s.url));
  await expect.poll(keeps).toBe(true);
  expect((await scriptsOf(page)).filter((s) => !s.early).length).toBeGreaterThan(5);
  const ids: string[] = [];
  // What reads sizes (with what it shares with formulas) and what draws curves comes when it is first wanted.
  const cut = /\/(units|create|uPlot)[^/]*\.js$/;
  await page.route('**/*.js', (route) =>
    cut.test(route.request().url()) ? route.continue() : route.abort(),
  );
  for (const at of (await entries.all()).keys()) {
    ids.push(await openStation(page, at));
    expect(await page.locator('main .waiting').count(), ids[at]).toBe(0);
  }
  await page.unroute('**/*.js');
  for (const id of ids.filter((_, i) => i % samples('stationsInOne') === 0)) {
    await page.goto(new URL(`?station=${id}`, browser.address).href);
    await expect.poll(() => main.getAttribute('data-station')).toBe(id);
    expect(await page.locator('main .waiting').count(), id).toBe(0);
    // Fonts that are still on their way would be broken off by the next; stations may be (open.ts).
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
  }
  expect(errors).toEqual([]);
  await close();
});

it('shows no sheet before it can be read, and says when it cannot', async () => {
  const { page, close } = await browser.open();
  let come: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    come = resolve;
  });
  await page.route('**/units-*.js', async (route) => {
    await held;
    await route.continue();
  });
  const sheet = page.locator('takeup-inspect');
  const main = page.locator('main');
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('5');
  await expect.poll(() => main.getAttribute('data-station')).toBe('inspect');
  await expect.poll(() => page.locator('.waiting').count()).toBe(1);
  expect(await sheet.count()).toBe(0);
  come();
  await sheet.waitFor();
  expect(await page.locator('.waiting').count()).toBe(0);
  await close();

  const cut = await browser.open();
  await cut.page.route('**/units-*.js', (route) => route.abort());
  await cut.page.locator('takeup-stage canvas').first().waitFor();
  await cut.page.keyboard.press('8');
  await cut.page.getByText('What was typed is kept; open it again').waitFor();
  await cut.page.keyboard.press('1');
  await expect.poll(() => cut.page.locator('main').getAttribute('data-station')).toBe('apply');
  await cut.close();
});

/** What the command line alone asks for: it comes with its own licence in node_modules, and no page holds it. */
const IN_NODE_ALONE = ['ml-direct'];

it('leads to the licences of all that is served, served with it', async () => {
  const { page, errors, close } = await browser.open();
  await page.getByRole('button', { name: 'Bench' }).click();
  const link = page.getByRole('link', { name: /^Licences/ });
  const href = await link.evaluate((a) => (a as HTMLAnchorElement).href);
  const answer = await fetch(href);
  expect(answer.headers.get('content-type')).toBe('text/plain; charset=utf-8');
  const text = await answer.text();
  const read = (file: string): string => readFileSync(join(root, file), 'utf8');
  expect(text).toContain(read('LICENSE').trim());
  const { dependencies } = JSON.parse(read('package.json')) as {
    dependencies: Record<string, string>;
  };
  const served = Object.keys(dependencies).filter((name) => !IN_NODE_ALONE.includes(name));
  for (const name of served) {
    const file = readdirSync(join(root, 'node_modules', name)).find((f) => /^licen[cs]e/i.test(f));
    expect(text, name).toContain(read(join('node_modules', name, file ?? 'LICENSE')).trim());
  }
  expect(errors).toEqual([]);
  await close();
});

it('leads to what has changed, served with the page', async () => {
  const { page, errors, shot, close } = await browser.open();
  await page.getByRole('button', { name: 'Bench' }).click();
  const link = page.getByRole('link', { name: 'What has changed on this bench' });
  const answer = await fetch(await link.evaluate((a) => (a as HTMLAnchorElement).href));
  expect(answer.headers.get('content-type')).toBe('text/plain; charset=utf-8');
  expect(await answer.text()).toBe(readFileSync(join(root, 'ui/changes.md'), 'utf8'));
  await link.scrollIntoViewIfNeeded();
  await shot('bench-changes');
  expect(errors).toEqual([]);
  await close();
});

it('notices an error of the page', async () => {
  const { page, errors, close } = await browser.open();
  await page.evaluate(() => {
    console.error('planted');
    setTimeout(() => {
      throw new Error('thrown on purpose');
    });
  });
  await expect.poll(() => errors.length).toBe(2);
  expect(errors[0]).toContain('planted');
  expect(errors[1]).toContain('thrown on purpose');
  await close();
});
