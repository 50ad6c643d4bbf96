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
