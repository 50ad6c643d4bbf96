import jsQR from 'jsqr';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

/** The dialog by which everything leaves the bench, and what it shares. */
let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const dialogOf = (page: Page) => page.getByRole('dialog', { name: 'Take away' });

/** What a code on the screen says, read by a decoder that has nothing to do with its maker; empty: nothing. */
async function readCode(page: Page, code: string): Promise<string> {
  const { data, width, height } = PNG.sync.read(await page.locator(code).screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data ?? '';
}

it('opens by its key, from the head and from the phone’s menu; its keys are its own, and the same key closes it', async () => {
  const { page, errors, close } = await browser.open({ viewport: { width: 1366, height: 768 } });
  await page.locator('takeup-stage canvas').first().waitFor();
  const dialog = dialogOf(page);
  await page.keyboard.press('e');
  await dialog.waitFor();
  // T opens the table on the page behind, 2 leads to Wear there.
  for (const key of ['t', '2']) await page.keyboard.press(key);
  expect(await page.locator('dialog[open]').count()).toBe(1);
  expect(await page.locator('main').getAttribute('data-station')).toBe('apply');
  await page.keyboard.press('e');
  await dialog.waitFor({ state: 'hidden' });
  await page.getByRole('button', { name: 'Take away' }).click();
  await dialog.waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
  expect(errors).toEqual([]);
  await close();

  const phone = await browser.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
  await phone.page.getByRole('button', { name: 'Show', exact: true }).click();
  await phone.page.getByRole('button', { name: 'Take away…' }).click();
  await dialogOf(phone.page).waitFor();
  await dialogOf(phone.page).getByRole('button', { name: 'Done' }).click();
  await dialogOf(phone.page).waitFor({ state: 'hidden' });
  expect(phone.errors).toEqual([]);
  await phone.close();
});

it('the code in the dialog, read by an independent decoder, is the link, and opens the same moment', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?station=wear&state=Worn-in',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('n');
  await page.keyboard.press('e');
  const link = dialogOf(page).getByLabel(/^Link, /);
  const address = await link.inputValue();
  expect(address).toContain('station=wear');
  expect(await readCode(page, 'takeup-away-share .code')).toBe(address);
  // On the machine itself a phone could not follow it, and that is said.
  await dialogOf(page).getByText('runs on this computer alone').waitFor();
  const other = await browser.open({ path: address.slice(browser.address.length) });
  const state = (p: Page) =>
    p.evaluate(() => {
      interface App {
        readonly session: { readonly moment: { readonly bench: object; readonly station: string } };
      }
      const { bench, station } = (document.querySelector('takeup-app') as unknown as App).session
        .moment;
      return JSON.stringify([bench, station]);
    });
  await expect.poll(() => state(other.page)).toBe(await state(page));
  await other.close();
  expect(errors).toEqual([]);
  await close();
});
