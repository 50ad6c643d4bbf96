import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { frames, noWider } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Middle of a word where it stands in the sentence beside the stage, px. */
const place = (page: Page, word: string) =>
  page.evaluate((sought) => {
    const root = document.querySelector('takeup-app')?.shadowRoot;
    const p = root?.querySelector('.side .h p');
    const walker = document.createTreeWalker(p as Node, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const at = node.textContent?.indexOf(sought) ?? -1;
      if (at < 0) continue;
      const range = document.createRange();
      range.setStart(node, at);
      range.setEnd(node, at + sought.length);
      const box = range.getBoundingClientRect();
      return [box.left + box.width / 2, box.top + box.height / 2] as const;
    }
    return null;
  }, word);

it('a word of the trade is told where it stands, by a tap and by keys, with both countries’ words', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  // "Released: the springs hold both shoes on the strut, and the strut sets the gap."
  const card = page.locator('.wd');
  await expect
    .poll(() => page.evaluate(() => 'highlights' in CSS && CSS.highlights.get('trade')?.size))
    .toBeGreaterThan(2);
  const at = await place(page, 'springs');
  if (!at) throw new Error('no such word');
  // What lies over the word is what is pressed, not the word.
  const lies = await page.evaluateHandle(([x, y]) => {
    const over = document.createElement('button');
    over.style.cssText = `position:fixed;left:${x - 20}px;top:${y - 20}px;width:40px;height:40px`;
    document.querySelector('takeup-app')?.shadowRoot?.querySelector('main')?.append(over);
    return over;
  }, at);
  await page.mouse.click(at[0], at[1]);
  await frames(page, 10);
  expect(await card.count()).toBe(0);
  await lies.evaluate((over) => over.remove());
  await page.mouse.click(at[0], at[1]);
  await expect.poll(() => card.innerText()).toMatch(/return spring:?\s*Pulls the shoes together/);
  await expect
    .poll(() => card.innerText())
    .toMatch(/British: pull-off spring · American: return spring/);
  await card.getByRole('button', { name: 'American first' }).click();
  await expect.poll(() => card.innerText()).toMatch(/American: return spring · British/);
  await shot('words-tapped');
  await page.reload();
  await expect
    .poll(() => page.evaluate(() => 'highlights' in CSS && CSS.highlights.get('trade')?.size))
    .toBeGreaterThan(2);
  await page.keyboard.press('d');
  await expect.poll(() => card.locator('[data-term]').count()).toBeGreaterThan(2);
  await expect.poll(() => card.innerText()).toMatch(/American: return spring · British/);
  await expect
    .poll(() =>
      card
        .getByRole('button', { name: 'Close' })
        .evaluate((b) => (b.getRootNode() as ShadowRoot).activeElement === b),
    )
    .toBe(true);
  await shot('words-list');
  await page.keyboard.press('Escape');
  await expect.poll(() => card.count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('on a phone the list comes from Show, and Ask finds a term by the other country’s word', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  await expect
    .poll(() => page.evaluate(() => 'highlights' in CSS && CSS.highlights.get('trade')?.size))
    .toBeGreaterThan(2);
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  await page.getByRole('button', { name: 'Words of the trade here' }).click();
  await expect.poll(() => page.locator('.wd [data-term]').count()).toBeGreaterThan(2);
  await noWider(page, 390);
  await shot('words-phone');
  await page.getByRole('button', { name: 'Close' }).click();
  await page.locator('[data-to="ask"]').click();
  await page.locator('#ask-field').fill('cotter pin');
  await page.locator('takeup-ask').getByText('Split pin', { exact: true }).first().waitFor();
  expect(errors).toEqual([]);
  await close();
});
