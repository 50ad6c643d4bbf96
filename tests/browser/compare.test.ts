import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const figures = (page: Page, row: string) =>
  page.locator(`.cmp-t tr[data-row="${row}"] td`).allInnerTexts();

it('by keyboard: a moment is kept as a ghost, and both stand side by side under one pedal', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('g');
  await expect.poll(() => page.locator('.kept p').innerText()).toMatch(/Nothing differs yet/);
  await page.getByRole('button', { name: 'Backward', exact: true }).press('Enter');
  await expect
    .poll(() => page.locator('.kept p').innerText())
    .toMatch(/One thing differs: drum turns/);
  await shot('compare-ghost');
  await page.keyboard.press('x');
  await page.getByRole('heading', { name: 'Compare', exact: true }).waitFor();
  await expect.poll(() => page.locator('.cmp-n h2').innerText()).toBe('One thing differs');
  const pedal = page.locator('#one-pedal');
  await pedal.focus();
  await pedal.press('End');
  await expect.poll(() => page.locator('.cmp-s b').innerText()).not.toBe('0.0 mm');
  // Forward and backward of equal linings: the same torque (closed form of equal shoes and forces).
  await expect
    .poll(async () => {
      const [a, b] = await figures(page, 'Brake torque, N·m');
      return Number(a) > 100 && Math.abs(Number(a) - Number(b)) <= 2;
    })
    .toBe(true);
  await page.locator('[data-choice="wear"]').press('Enter');
  await expect.poll(() => page.locator('.cmp-n h2').innerText()).toBe('3 things differ');
  await noWider(page, 1920);
  await shot('compare-desk');
  // A reload and the way back keep both.
  await page.reload();
  await expect.poll(() => page.locator('.cmp-n h2').innerText()).toBe('3 things differ');
  await page.locator('body').press('Control+z');
  await expect.poll(() => page.locator('.cmp-n h2').innerText()).toBe('One thing differs');
  expect(errors).toEqual([]);
  await close();
});

it('on the wall both are large, and no word is under 34 px', async () => {
  const { page, errors, shot, close } = await browser.open({ path: '?station=compare' });
  await page.locator('[data-choice="tooth"]').click();
  await page.keyboard.press('w');
  await page.locator('.cmp-w').waitFor();
  await page.keyboard.press('PageDown');
  await expect.poll(() => page.locator('.cmp-w').innerText()).toMatch(/Tooth\s+0\s+1/);
  const least = await page.evaluate(() => {
    const root = document.querySelector('takeup-app')?.shadowRoot;
    const texts = [...(root?.querySelectorAll('main .words *') ?? [])].filter(
      (e) => e.children.length === 0 && e.textContent?.trim() && e.getClientRects().length > 0,
    );
    return Math.min(...texts.map((e) => Number.parseFloat(getComputedStyle(e).fontSize)));
  });
  expect(least).toBeGreaterThanOrEqual(34);
  await shot('compare-wall');
  expect(errors).toEqual([]);
  await close();
});

it('a phone shows both and all there is to choose, no wider than it is', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    path: '?station=compare',
  });
  await page.locator('[data-choice="heat"]').click();
  await page.getByRole('button', { name: 'Press both' }).click();
  await expect.poll(() => page.locator('.cmp-n h2').innerText()).toBe('One thing differs');
  await noWider(page, 390);
  await shot('compare-phone');
  expect(errors).toEqual([]);
  await close();
});
