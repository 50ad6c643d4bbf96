import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { soon } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** What can be read and switched in a station as it stands. */
const counted = (page: Page) =>
  page.evaluate(() => {
    const root = document.querySelector('takeup-app')?.shadowRoot;
    const all = (selector: string) => [...(root?.querySelectorAll(selector) ?? [])];
    return {
      readings: all('.rd .c').length,
      layers: all('.show button[aria-pressed]').length,
      sentences: (all('.h p')[0]?.textContent?.match(/[.!?](\s|$)/g) ?? []).length,
    };
  });

it('shows three readings, four layers and one sentence at first; one key shows all, and is remembered', async () => {
  const { page, errors, shot, close } = await browser.open({ few: true });
  await page.locator('takeup-stage canvas').waitFor();
  await page.keyboard.press('1');
  await page.locator('main[data-station="apply"]').waitFor();
  await soon(async () =>
    expect(await counted(page)).toEqual({ readings: 3, layers: 4, sentences: 1 }),
  );
  await page.keyboard.down(' ');
  await expect
    .poll(() => page.locator('[data-key="brakeFactor"] .v').innerText())
    .toMatch(/^2\.\d\d/);
  await soon(async () =>
    expect(await counted(page)).toEqual({ readings: 3, layers: 4, sentences: 1 }),
  );
  await shot('few-apply');
  await page.keyboard.up(' ');
  for (const [key, id] of [
    ['2', 'wear'],
    ['4', 'park'],
  ] as const) {
    await page.keyboard.press(key);
    await page.locator(`main[data-station="${id}"]`).waitFor();
    await soon(async () => expect((await counted(page)).readings, id).toBe(3));
  }
  // What a rule asks for, and how sure that is, stands behind "Why".
  const rule = page.locator('[data-rule]');
  expect(await rule.isVisible()).toBe(false);
  await page.locator('.why summary').click();
  await rule.waitFor();

  const address = page.url();
  const steps = () =>
    page.evaluate(`document.querySelector('takeup-app').session.history.past.length`);
  const before = await steps();
  await page.keyboard.press('m');
  await expect.poll(async () => (await counted(page)).readings).toBeGreaterThan(4);
  expect([page.url(), await steps()]).toEqual([address, before]);
  await page.keyboard.press('1');
  await expect.poll(async () => (await counted(page)).layers).toBe(8);
  await page.reload();
  await page.locator('takeup-stage canvas').waitFor();
  await expect.poll(async () => (await counted(page)).layers).toBe(8);
  // Back by its button, with the keys.
  await page.locator('[data-more]').focus();
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await counted(page)).layers).toBe(4);
  expect(errors).toEqual([]);
  await close();
});

it('leaves a layer that is on in the row, so that it can be switched off', async () => {
  const { page, errors, close } = await browser.open({ few: true, path: '?station=apply' });
  await page.locator('takeup-stage canvas').waitFor();
  await page.keyboard.press('m');
  await page.getByRole('button', { name: 'Heat', exact: true }).click();
  await page.keyboard.press('m');
  await expect.poll(async () => (await counted(page)).layers).toBe(5);
  await page.getByRole('button', { name: 'Heat', exact: true }).click();
  await expect.poll(async () => (await counted(page)).layers).toBe(4);
  expect(errors).toEqual([]);
  await close();
});
