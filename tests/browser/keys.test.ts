import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';

/** The list of the desk's keys, and the keys of its stations tried one by one. */
let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('? lists the keys of the desk and closes the list again; each station’s key leads to a station of its own', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('?');
  const sheet = page.getByRole('dialog', { name: 'Keys' });
  await sheet.waitFor();
  await shot('keys-desk');
  const rows = await sheet.locator('section').first().locator('dl div').allInnerTexts();
  expect(rows.length).toBeGreaterThanOrEqual(14);
  const text = await sheet.innerText();
  for (const word of ['undo', 'the wall', 'full screen', 'these keys'])
    expect(text).toContain(word);
  await page.keyboard.press('?');
  await sheet.waitFor({ state: 'hidden' });
  const heads: string[] = [];
  for (const row of rows) {
    const [key = '', name = ''] = row.split('\n');
    const before = heads.at(-1) ?? '';
    const station = () => page.locator('main[data-station]').getAttribute('data-station');
    // A field keeps its keys, and the last station's may take the focus late: it is left before each try.
    await soon(async () => {
      if ((await station()) === before || before === '') {
        await page.evaluate(() => {
          const deep = (root: Document | ShadowRoot): Element | null =>
            root.activeElement?.shadowRoot
              ? deep(root.activeElement.shadowRoot)
              : root.activeElement;
          (deep(document) as HTMLElement | null)?.blur();
        });
        await page.keyboard.press(key.toLowerCase());
        await frames(page, 20);
      }
      expect(await station(), `${key}: ${name}`).not.toBe(before);
    });
    heads.push((await station()) ?? '');
  }
  expect(new Set(heads).size).toBe(rows.length);
  expect(errors).toEqual([]);
  await close();
});

it('the Bench sheet leads to it too', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.getByRole('button', { name: 'Bench', exact: true }).click();
  await page.getByRole('button', { name: 'Keys (?)' }).click();
  await page.getByRole('dialog', { name: 'Keys' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('dialog', { name: 'Keys' }).waitFor({ state: 'hidden' });
  expect(errors).toEqual([]);
  await close();
});
