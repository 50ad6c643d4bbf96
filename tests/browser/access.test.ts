import { expect, it } from 'vitest';
import { seriousFaults } from './axe.ts';
import { openBrowser } from './open.ts';

/** What axe-core calls serious or critical; texts over the canvas it cannot judge are looked at by hand. */
it('Apply, Wear, Park and New shoes have no serious fault of access, light and dark', async () => {
  const browser = await openBrowser();
  const { page, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  const check = () => seriousFaults(page);
  expect(await check()).toEqual([]);
  await page.keyboard.press('2');
  await page.locator('takeup-chart').waitFor();
  expect(await check()).toEqual([]);
  await page.getByRole('button', { name: /^View/ }).click();
  await page.getByRole('button', { name: 'View: Board' }).waitFor();
  expect(await check()).toEqual([]);
  for (const [key, ready] of [
    ['4', '[data-verdict]'],
    ['6', '.ns-over'],
  ] as const) {
    await page.keyboard.press(key);
    await page.locator(ready).first().waitFor();
    expect(await check(), `station ${key}`).toEqual([]);
  }
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('heading', { name: 'Bench' }).waitFor();
  expect(await check()).toEqual([]);
  await close();
  await browser.close();
});

it('opens a station by its key from a list too, save where the key could find an entry', async () => {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open();
  const tab = page.locator('nav.tabs [aria-current="page"]');
  await page.getByLabel('Brake', { exact: true }).focus();
  await page.keyboard.press('4');
  await expect.poll(() => tab.innerText()).toContain('Park');
  const rules = page.getByLabel('Judged by');
  await rules.focus();
  expect(await rules.locator('option').allInnerTexts()).toContainEqual(expect.stringMatching(/^2/));
  await page.keyboard.press('2');
  await page.waitForTimeout(300);
  expect(await tab.innerText()).toContain('Park');
  await page.keyboard.press('9');
  await expect.poll(() => tab.innerText()).toContain('Questions');
  expect(errors).toEqual([]);
  await close();
  await browser.close();
});
