import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

/** What the page takes from the device that it runs on: its light or dark setting, its sharing, that it has no keys. */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const theme = (page: Page) =>
  page.evaluate(
    () =>
      (document.querySelector('takeup-app') as unknown as { session: { theme: string } }).session
        .theme,
  );

it('is light or dark as the device is set, until the reader chooses; the choice is kept', async () => {
  const { page, errors, close } = await browser.open({ colorScheme: 'dark', alone: true });
  await page.locator('takeup-stage canvas').first().waitFor();
  expect(await theme(page)).toBe('board');
  await page.emulateMedia({ colorScheme: 'light' });
  await expect.poll(() => theme(page)).toBe('sheet');
  await page.emulateMedia({ colorScheme: 'dark' });
  await expect.poll(() => theme(page)).toBe('board');
  // It was no step: there is nothing to undo.
  expect(await page.getByRole('button', { name: /^Undo/ }).first().isDisabled()).toBe(true);
  await page.getByRole('button', { name: /^View: / }).click();
  await expect.poll(() => theme(page)).toBe('sheet');
  await page.waitForTimeout(500);
  await page.reload();
  await page.locator('takeup-stage canvas').first().waitFor();
  await expect.poll(() => theme(page)).toBe('sheet');
  await page.emulateMedia({ colorScheme: 'light' });
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await theme(page)).toBe('sheet');
  expect(errors).toEqual([]);
  await close();
});

/** A phone whose system shares: what it was handed stands on the body, what it answers in `how`. */
const phone = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
  prepare: () => {
    // By the standard (W3C, Web Share) a refusal is an AbortError where the reader left it, another one else.
    Object.defineProperty(navigator, 'canShare', { value: () => true });
    Object.defineProperty(navigator, 'share', {
      value: async (data: ShareData) => {
        const files = await Promise.all(
          (data.files ?? []).map(async (f) => [f.name, f.type, await f.text()]),
        );
        const { dataset } = document.documentElement;
        dataset['shared'] = JSON.stringify({ title: data.title, url: data.url, files });
        const how = dataset['how'];
        if (how) throw new DOMException('no', how);
      },
    });
  },
};
const answers = (page: Page, how: string) =>
  page.evaluate((name) => {
    document.documentElement.dataset['how'] = name;
  }, how);
const shared = (page: Page) =>
  page.evaluate(() => JSON.parse(document.documentElement.dataset['shared'] ?? 'null'));

async function openShare(page: Page): Promise<void> {
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('e');
  await page.locator('takeup-away dialog').waitFor();
  await page.keyboard.press('s');
  await page.locator('takeup-away-share').waitFor();
}

it('where it is too much for a link a phone is handed the file', async () => {
  const { page, errors, close } = await browser.open({ ...phone, alone: true });
  await page.locator('takeup-stage canvas').first().waitFor();
  // Words that cannot be packed: a sheet’s remarks, each letter by chance from a fixed seed.
  await page.evaluate(() => {
    interface Wear {
      readonly moment: { readonly parts: { readonly lessons: object } };
      put(moment: object, said: string): void;
    }
    const { session } = document.querySelector('takeup-app') as unknown as { session: Wear };
    let seed = 7;
    const letter = (): string => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return String.fromCharCode(33 + ((seed >>> 16) % 90));
    };
    const much = Array.from({ length: 20000 }, letter).join('');
    const { moment } = session;
    const { parts } = moment;
    session.put(
      { ...moment, parts: { ...parts, lessons: { ...parts.lessons, draft: much } } },
      'much',
    );
  });
  await openShare(page);
  const share = page.getByRole('button', { name: 'Share the file…' });
  const said = page.locator('takeup-away-share .said').last();
  await answers(page, 'AbortError');
  await share.click();
  await expect.poll(async () => (await shared(page))?.files.length ?? 0).toBe(1);
  const [[name, type, text]] = (await shared(page)).files;
  expect(name).toMatch(/^takeup-quay-van-apply\.json$/);
  expect(type).toBe('application/json');
  expect(JSON.parse(text)).toBeTypeOf('object');
  await page.waitForTimeout(300);
  expect(await said.innerText()).toBe('');
  await answers(page, 'NotAllowedError');
  await share.click();
  await expect.poll(() => said.innerText()).toMatch(/did not take it/);
  await answers(page, '');
  await share.click();
  await expect.poll(() => said.innerText()).toBe('Handed to the system.');
  expect(errors).toEqual([]);
  await close();
});

it('names no key where there is no keyboard', async () => {
  const { page, errors, close } = await browser.open({ ...phone, alone: true });
  await page.locator('takeup-stage canvas').first().waitFor();
  const caps = page.locator('kbd');
  await expect.poll(() => caps.count()).toBeGreaterThan(0);
  expect(await caps.filter({ visible: true }).count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});
