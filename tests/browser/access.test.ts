import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Moment } from '../../ui/record/moment.ts';
import { samples } from '../samples.ts';
import { lookRoundTheWall, lookThrough } from './look-round.ts';
import { openBrowser } from './open.ts';
import { frames } from './soon.ts';

/** The windows between: `look-laptop.test.ts` and `look-phone.test.ts` look at the drawings on their way too. */
it('at 1920 and 1024, light and dark, no station, view or dialog has a serious fault of access, and each one h1', () =>
  lookThrough({
    sizes: [
      { width: 1920, height: 1080 },
      { width: 1024, height: 768 },
    ],
    leap: samples('stationsInOne'),
  }));

it(
  'on the wall no station has a serious fault of access, each has one h1, and every text on a drawing stands out',
  lookRoundTheWall,
);

/** Every line that comes to stand in the page's live region, in its order. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(globalThis, { heard });
    const region = document.querySelector('takeup-app')?.shadowRoot?.querySelector('[data-told]');
    if (!region) throw new Error('no live region');
    new MutationObserver(() => {
      const text = region.textContent?.trim() ?? '';
      if (text !== '' && heard.at(-1) !== text) heard.push(text);
    }).observe(region, { characterData: true, childList: true, subtree: true });
  });
  return () => page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard);
}

it('tells a press that is held, its release and a click once each, in words', async () => {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open({ path: '?state=Just+clicked' });
  const pedal = page.locator('takeup-pedal [role="slider"]');
  await pedal.waitFor();
  expect(await page.locator('[data-told]').getAttribute('role')).toBe('status');
  // A tooth taken back is taken up again by the next press.
  await page.evaluate(() => {
    interface App {
      readonly session: { readonly moment: Moment; put(moment: Moment, said: string): void };
    }
    const { session } = document.querySelector('takeup-app') as unknown as App;
    const { bench } = session.moment;
    const state = { ...bench.state, tooth: bench.state.tooth - 1 };
    session.put({ ...session.moment, bench: { ...bench, state } }, 'a tooth back');
  });
  const heard = await listen(page);
  await pedal.focus();
  await page.keyboard.press('Enter');
  await expect.poll(heard).toContain('Pedal pressed: 40 bar');
  await page.keyboard.press('Enter');
  await expect.poll(heard).toContain('Pedal released');
  const all = await heard();
  expect(all.filter((line) => line.startsWith('Click: tooth'))).toHaveLength(1);
  expect(all).toHaveLength(3);
  expect(errors).toEqual([]);
  await close();
  await browser.close();
});

/** A drag that makes no way for so long stands, ms: half of what the page waits for. */
const STANDS = 200;

it('tells a drag along the pedal where it stops', async () => {
  const browser = await openBrowser();
  const { page, close } = await browser.open();
  const box = await page.locator('takeup-pedal [role="slider"]').boundingBox();
  if (!box) throw new Error('no pedal');
  const heard = await listen(page);
  const y = box.y + box.height / 2;
  await page.mouse.move(box.x + 10, y);
  await page.mouse.down();
  /** How often the drag stood still for a while, since the machine was busy: each is a stop, and told as one. */
  let stood = 0;
  for (let share = 0.05; share < 0.5; share += 0.01) {
    const before = performance.now();
    await page.mouse.move(box.x + share * box.width, y);
    await frames(page, 1);
    if (performance.now() - before > STANDS) stood++;
  }
  await expect.poll(heard).toContainEqual(expect.stringMatching(/^Pedal pressed: \d+ bar$/));
  await page.mouse.up();
  await expect.poll(heard).toContain('Pedal released');
  // Forty-five places were gone through.
  expect((await heard()).length).toBeLessThanOrEqual(4 + stood);
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
  // Of a list that is closed not every browser has its entries as text that is shown.
  expect(await rules.locator('option').allTextContents()).toContainEqual(
    expect.stringMatching(/^2/),
  );
  await page.keyboard.press('2');
  await page.waitForTimeout(300);
  expect(await tab.innerText()).toContain('Park');
  await page.keyboard.press('9');
  await expect.poll(() => tab.innerText()).toContain('Questions');
  expect(errors).toEqual([]);
  await close();
  await browser.close();
});
