import { copyFileSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { allOfIt } from './all-of-it.ts';
import { builtPage, startBrowser } from './open.ts';
import { slowDown } from './slow.ts';

/** The whole bench as one file on a memory stick, with nothing beside it and no network. */

let browser: Browser;
/** A name as people give it: with a space, and a letter that an address escapes. */
const stick = mkdtempSync(join(tmpdir(), 'memory stick ü-'));
const file = join(stick, 'takeup.html');
const address = pathToFileURL(file).href;
beforeAll(async () => {
  browser = await startBrowser();
  copyFileSync(join(builtPage(), 'takeup.html'), file);
});
afterAll(async () => {
  await browser.close();
  rmSync(stick, { recursive: true });
});

async function openFile() {
  const context = await browser.newContext({
    viewport: { width: 1366, height: 768 },
    reducedMotion: 'reduce',
    offline: true,
  });
  await context.addInitScript(() => {
    try {
      localStorage.setItem('takeup-full', 'yes');
    } catch {
      // Firefox runs this in the empty page before it too, which may keep nothing.
    }
  });
  // Not every browser tells of it as of a request.
  await context.addInitScript(() => {
    const made: string[] = [];
    const own = new Proxy(Worker, {
      construct(target, [url, how]: [string | URL, WorkerOptions?]) {
        made.push(String(url));
        return new target(url, how);
      },
    });
    Object.assign(globalThis, { Worker: own, made });
  });
  const asked: string[] = [];
  context.on('request', (r) => asked.push(r.url()));
  const page = await context.newPage();
  await slowDown(page);
  const errors: string[] = [];
  page.on('pageerror', (e) => errors.push(String(e)));
  page.on('console', (m) => {
    if (m.type() === 'error') errors.push(m.text());
  });
  await page.goto(address);
  return { context, page, asked, errors };
}

it('opens every station, brakes, wears on and teaches, and asks for nothing beside itself', async () => {
  const { context, page, asked, errors } = await openFile();
  await allOfIt(page);
  expect(errors).toEqual([]);
  const elsewhere = asked.filter((url) => !/^(blob|data):/.test(url) && !url.startsWith(address));
  expect(elsewhere).toEqual([]);
  // Its workers are made of its own text.
  const made = await page.evaluate(() => (globalThis as unknown as { made: string[] }).made);
  expect(made.length).toBeGreaterThan(0);
  expect(made.filter((url) => !url.startsWith('blob:'))).toEqual([]);
  await page.screenshot({ path: 'tests/browser/shots/one-file.png' });
  await context.close();
});

it('keeps what stands on the bench over a reload, and walks back', async () => {
  const { context, page, errors } = await openFile();
  const station = () => page.locator('main').getAttribute('data-station');
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('4');
  await expect.poll(station).toBe('park');
  await page.keyboard.press('7');
  await expect.poll(station).toBe('faults');
  await page.reload();
  await expect.poll(station).toBe('faults');
  await page.goBack();
  await expect.poll(station).toBe('park');
  expect(errors).toEqual([]);
  await context.close();
});

it('has its changes and licences within it', async () => {
  const { context, page } = await openFile();
  await page.getByRole('button', { name: 'Bench' }).click();
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const read = (name: string): string => readFileSync(join(root, name), 'utf8').trim();
  for (const [name, has] of [
    ['What has changed on this bench', read('ui/changes.md')],
    [/^Licences/, read('LICENSE')],
  ] as const) {
    const [text] = await Promise.all([
      context.waitForEvent('page'),
      page.getByRole('link', { name }).click(),
    ]);
    await expect.poll(() => text.locator('body').innerText()).toContain(has.slice(-200));
    await text.close();
  }
  expect(await page.getByRole('link', { name: /one file/ }).count()).toBe(0);
  await context.close();
});

it('lets in these very scripts and rules alone', () => {
  const text = readFileSync(file, 'utf8');
  const [, policy = ''] = /content="(default-src[^"]*)"/.exec(text) ?? [];
  const named = new Map(policy.split('; ').map((rule) => [rule.split(' ')[0], rule]));
  expect(named.get('default-src')).toBe("default-src 'none'");
  expect(named.get('script-src')).toMatch(/^script-src 'sha256-[\w+/]{43}='$/);
  expect(named.get('style-src')).toMatch(/^style-src 'sha256-[\w+/]{43}='$/);
  expect(named.get('worker-src')).toBe('worker-src blob:');
  expect(named.has('connect-src')).toBe(false);
  expect(policy).not.toMatch(/unsafe|\*|https?:/);
  expect(text.match(/<script/g)?.length).toBe(1);
  expect(text).not.toMatch(/<(script|link)[^>]+(src|href)="(?!data:)/);
});
