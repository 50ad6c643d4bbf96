import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, type Opened, openBrowser } from './open.ts';
import { soon, steady } from './soon.ts';
import { endWorker, holdWorkers } from './workers.ts';

/** The life driven so far is in the record; what drives it may be missing, or die. */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

async function wearStation(options: Parameters<OpenBrowser['open']>[0] = {}): Promise<Opened> {
  const opened = await browser.open({ reducedMotion: 'reduce', ...options });
  await opened.page.locator('takeup-app canvas').first().waitFor();
  await opened.page.keyboard.press('2');
  await opened.page.getByRole('heading', { name: 'Wear' }).waitFor();
  return opened;
}

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: true });
const slider = (page: Page) => page.getByRole('slider', { name: /Moment of the run/ });
const alert = (page: Page) => page.getByRole('alert');
const WORKER = '**/life-worker*';

async function distance(page: Page): Promise<number> {
  const text = await page.locator('[data-key="distance"]').innerText();
  return Number(text.replace(/[^\d.]/g, ''));
}

/** What the chart holds: rows, the one shown and its words, clicks. */
const chart = async (page: Page) => ({
  last: await slider(page).getAttribute('aria-valuemax'),
  at: await slider(page).getAttribute('aria-valuenow'),
  says: await slider(page).getAttribute('aria-valuetext'),
  marks: await page.locator('[data-mark]').allInnerTexts(),
});

it('says that the worker is missing, keeps what was driven, and tries again', async () => {
  const { page, errors, shot, close } = await wearStation({ alone: true, prepare: holdWorkers });
  await button(page, 'Wear on').click();
  await expect.poll(() => distance(page)).toBe(1000);
  // The page was renewed while it was open: its worker is not there any more.
  await endWorker(page);
  await page.route(WORKER, (route) => route.fulfill({ status: 404, body: 'gone' }));
  await button(page, 'Wear on').click();
  await expect.poll(() => alert(page).innerText()).toMatch(/does not answer.*is kept/);
  await button(page, 'Wear on').click();
  await expect.poll(() => alert(page).innerText()).toMatch(/did not load.*is kept/);
  expect(await distance(page)).toBe(1000);
  await shot('wear-no-worker');
  await page.unroute(WORKER);
  await button(page, 'Wear on').click();
  await expect.poll(() => distance(page)).toBe(2000);
  await expect.poll(() => alert(page).count()).toBe(0);
  // Nothing but the missing file is an error of the page: nothing was thrown.
  expect(errors.filter((e) => !/life-worker|404/.test(e))).toEqual([]);
  await close();
});

it('says at first that the worker cannot be fetched', async () => {
  const { page, errors, close } = await wearStation();
  await page.route(WORKER, (route) => route.abort());
  await button(page, 'Wear on').click();
  await expect.poll(() => alert(page).innerText()).toMatch(/did not load/);
  expect(await distance(page)).toBe(0);
  await page.unroute(WORKER);
  await button(page, 'Wear on').click();
  await expect.poll(() => distance(page)).toBe(1000);
  expect(errors.filter((e) => !/life-worker|ERR_FAILED/.test(e))).toEqual([]);
  await close();
});

it('says that the worker died in the middle of a stretch; the next one goes on from there', async () => {
  const { page, errors, close } = await wearStation();
  // It loads, hears what is asked, tells two news, and is no more.
  const dies = `const post = self.postMessage.bind(self);
    let said = 0;
    self.postMessage = (what) => { post(what); if (++said === 4) self.close(); };`;
  await page.route(WORKER, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: `${dies}\n${await response.text()}` });
  });
  await button(page, 'to the limit').click();
  await button(page, 'Wear on').click();
  await expect.poll(() => alert(page).innerText()).toMatch(/does not answer/);
  await page.unroute(WORKER);
  const kept = await steady(page, () => distance(page));
  expect(kept).toBeGreaterThan(100);
  expect(kept).toBeLessThan(50000);
  await button(page, '100 km').click();
  await button(page, 'Wear on').click();
  await expect.poll(() => distance(page)).toBe(kept + 100);
  await expect.poll(() => alert(page).count()).toBe(0);
  await slider(page).focus();
  await page.keyboard.press('Home');
  await expect.poll(() => distance(page)).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('comes back after a reload with its chart, in the middle of a life', async () => {
  const { page, errors, close } = await wearStation();
  await button(page, 'to the limit').click();
  await button(page, 'Wear on').click();
  await page.getByText('Ended: a lining is at its limit.').waitFor();
  await button(page, /^Events/).click();
  await page.getByRole('button', { name: /^Click: tooth 9 at/ }).click();
  const before = await steady(page, () => chart(page));
  expect(before.marks).toHaveLength(15);
  // Kept half a second after the last change at the latest; leaving the page keeps at once.
  await page.reload({ waitUntil: 'load' });
  await page.getByRole('heading', { name: 'Wear' }).waitFor();
  await soon(async () => expect(await chart(page)).toEqual(before));
  await expect.poll(() => button(page, /^Events/).getAttribute('aria-pressed')).toBe('true');
  // And it is driven on from there.
  await button(page, 'Readings').click();
  const here = await distance(page);
  await button(page, '100 km').click();
  await button(page, 'Wear on from here').click();
  await expect.poll(() => distance(page)).toBe(here + 100);
  await expect.poll(() => page.locator('[data-mark]').count()).toBe(9);
  expect(errors).toEqual([]);
  await close();
});

it('ends a stretch with its station, without a replay in the next one', async () => {
  const { page, errors, close } = await wearStation({ reducedMotion: 'no-preference' });
  await button(page, 'to the limit').click();
  await button(page, 'Wear on').click();
  await expect.poll(() => distance(page)).toBeGreaterThan(200);
  await page.keyboard.press('1');
  await page.getByRole('heading', { name: 'Apply' }).waitFor();
  await page.getByRole('button', { name: 'Loupe', exact: true }).click();
  const tooth = await page.locator('[data-tooth]').innerText();
  // As long as a stretch to the limit would go on for.
  await page.waitForTimeout(7000);
  expect(await page.locator('[data-tooth]').innerText()).toBe(tooth);
  await page.keyboard.press('2');
  await button(page, 'Wear on').waitFor();
  const there = await distance(page);
  expect(there).toBeGreaterThan(200);
  // Three steps back over the stations and the loupe, and one over the stretch.
  for (let n = 0; n < 3; n++) await page.keyboard.press('Control+z');
  await page.getByRole('heading', { name: 'Wear' }).waitFor();
  await expect.poll(() => distance(page)).toBe(there);
  await page.keyboard.press('Control+z');
  await expect.poll(() => distance(page)).toBe(0);
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(() => distance(page)).toBe(there);
  expect(errors).toEqual([]);
  await close();
});
