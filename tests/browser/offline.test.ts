import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { serve } from '../../ui/serve/static.mjs';
import { allOfIt } from './all-of-it.ts';
import { hostFolder } from './host.ts';
import { builtPage, startBrowser } from './open.ts';
import { slowDown } from './slow.ts';
import { soon } from './soon.ts';

/** Without a network after one visit, under any path; and a newer page that is offered, not forced. */

let browser: Browser;
const older = mkdtempSync(join(tmpdir(), 'takeup-newer-'));
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
  rmSync(older, { recursive: true });
});

/** A context that keeps what the page asks it to keep, and every address that it asks for. */
async function visitor(): Promise<{ context: BrowserContext; hosts: Set<string> }> {
  const context = await browser.newContext({
    viewport: { width: 1366, height: 768 },
    reducedMotion: 'reduce',
  });
  // All that it can show, as in the other tests.
  await context.addInitScript(() => {
    try {
      localStorage.setItem('takeup-full', 'yes');
    } catch {
      // Firefox runs this in the empty page before it too, which may keep nothing.
    }
  });
  const hosts = new Set<string>();
  context.on('request', (r) => {
    if (!/^(blob|data):/.test(r.url())) hosts.add(new URL(r.url()).host);
  });
  return { context, hosts };
}

async function open(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await slowDown(page);
  await page.goto(address);
  return page;
}

/** The browser has kept the page, and answers for it. */
const kept = (page: Page): Promise<void> =>
  soon(async () => {
    const by = await page.evaluate(() => navigator.serviceWorker.controller?.state ?? '');
    expect(by).toBe('activated');
  });

const troublesOf = (page: Page): string[] => {
  const told: string[] = [];
  page.on('pageerror', (e) => told.push(String(e)));
  page.on('console', (m) => {
    // That the worker's own script cannot be asked for anew is what is tested.
    if (m.type() === 'error' && !m.location().url.endsWith('/offline.js')) told.push(m.text());
  });
  return told;
};

it('opens every station and lesson with the server gone and the network off, under a path', async () => {
  const host = await hostFolder(builtPage, '/courses/brakes/');
  const { context, hosts } = await visitor();
  const page = await open(context, host.address);
  await kept(page);
  await page.keyboard.press('2');
  await expect.poll(() => page.locator('main').getAttribute('data-station')).toBe('wear');
  expect(host.asked.every((path) => path.startsWith('/courses/brakes/'))).toBe(true);
  await host.stop();
  await context.setOffline(true);
  const troubles = troublesOf(page);
  await page.reload();
  await expect.poll(() => page.locator('main').getAttribute('data-station')).toBe('wear');
  await allOfIt(page);
  await page.goto(new URL('?station=park', host.address).href);
  await expect.poll(() => page.locator('main').getAttribute('data-station')).toBe('park');
  for (const file of ['changes.txt', 'licences.txt', 'icon-512.png', 'takeup.webmanifest']) {
    expect(await page.evaluate(async (f) => (await fetch(f)).ok, file), file).toBe(true);
  }
  expect(troubles).toEqual([]);
  expect(hosts).toEqual(new Set([new URL(host.address).host]));
  await context.close();
});

it('on this machine itself shows what the server has, and what is kept only when it is gone', async () => {
  cpSync(builtPage(), older, { recursive: true });
  const { server, address } = await serve(older, 0);
  const { context } = await visitor();
  const page = await open(context, address);
  await kept(page);
  const index = join(older, 'index.html');
  const before = readFileSync(index, 'utf8');
  writeFileSync(index, before.replace('<title>Takeup', '<title>Built anew'));
  await page.reload();
  await expect.poll(() => page.title()).toBe('Apply – Built anew');
  expect(await page.locator('.newer').count()).toBe(0);
  writeFileSync(index, before);
  server.close();
  server.closeAllConnections();
  await page.reload();
  await page.locator('takeup-stage canvas').first().waitFor();
  await expect.poll(() => page.title()).toBe('Apply – Takeup');
  await context.close();
});

it('offers a newer page in one sentence, puts it on when told, and nothing on the bench is lost', async () => {
  const built = builtPage();
  cpSync(built, older, { recursive: true });
  const worker = readFileSync(join(older, 'offline.js'), 'utf8');
  const [, version = ''] = /`takeup \$\{\w+\} `,\w+=\w+\+"([0-9a-f]{16})"/.exec(worker) ?? [];
  expect(version).not.toBe('');
  writeFileSync(join(older, 'offline.js'), worker.replace(version, '0123456789abcdef'));
  writeFileSync(join(older, 'changes.txt'), 'Newer');
  const changes = (page: Page) =>
    page.evaluate(async () => (await (await fetch('changes.txt')).text()).slice(0, 5));

  let folder = built;
  const host = await hostFolder(() => folder);
  const { context } = await visitor();
  const page = await open(context, host.address);
  await kept(page);
  await page.keyboard.press('4');
  await expect.poll(() => page.locator('main').getAttribute('data-station')).toBe('park');
  expect(await page.locator('.newer').count()).toBe(0);
  const other = await open(context, host.address);
  await other.locator('takeup-stage canvas').first().waitFor();

  folder = older;
  await page.reload();
  const offer = page.locator('.newer');
  await offer.waitFor();
  // Offered, not forced: this window and the next are still the older page.
  expect(await changes(page)).not.toBe('Newer');
  await page.reload();
  await offer.waitFor();
  expect(await changes(page)).not.toBe('Newer');
  await offer.getByRole('button', { name: 'Later' }).click();
  await expect.poll(() => offer.count()).toBe(0);
  await page.reload();
  await offer.waitFor();

  await page.keyboard.press('7');
  await expect.poll(() => page.locator('main').getAttribute('data-station')).toBe('faults');
  const undo = page.locator('button.undo');
  const said = await undo.getAttribute('aria-label');
  // Who presses has this window before them: a key goes to no other in Firefox.
  await page.bringToFront();
  const address = page.url();
  await page.screenshot({ path: 'tests/browser/shots/newer.png' });
  await page.evaluate(() => Object.assign(globalThis, { before: true }));
  await offer.getByRole('button', { name: 'Open it' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => page.evaluate(() => 'before' in globalThis)).toBe(false);
  await expect.poll(() => page.locator('main').getAttribute('data-station')).toBe('faults');
  expect(await changes(page)).toBe('Newer');
  expect(await undo.getAttribute('aria-label')).toBe(said);
  expect(page.url()).toBe(address);
  expect(await offer.count()).toBe(0);
  // The other window was not opened anew, and goes on.
  await other.bringToFront();
  await other.keyboard.press('2');
  await expect.poll(() => other.locator('main').getAttribute('data-station')).toBe('wear');
  await expect.poll(() => other.locator('.waiting').count()).toBe(0);
  await host.stop();
  await context.close();
});
