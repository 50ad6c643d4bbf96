import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { placeOf } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('names the part under the mouse and lets go beside the brake', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  const box = await placeOf(page.locator('takeup-stage'));
  // The hub's bore is the middle of the brake; the stage's corner is beside it.
  await page.mouse.move(box.x + box.width / 2, box.y + (box.height - 60) / 2 + 18);
  const card = page.locator('takeup-stage .part');
  await card.waitFor();
  await expect.poll(() => card.getAttribute('data-part')).toBe('hub');
  await shot('part-pointer');
  await page.mouse.move(box.x + 20, box.y + 200);
  await expect.poll(() => card.count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('goes from part to part by arrow keys and tells what is read off each', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.locator('takeup-stage #host').focus();
  const card = page.locator('takeup-stage .part');
  const said = page.locator('takeup-stage [role="status"]');
  const text = async (): Promise<string> => (await said.textContent()) ?? '';
  let last = await text();
  for (let i = 0; i < 40 && !last.startsWith('Lining, front'); i++) {
    await page.keyboard.press('ArrowRight');
    await expect.poll(text).not.toBe(last);
    last = await text();
  }
  // New linings stand 0.30 mm off the drum at their middle, within rounding.
  await expect
    .poll(text)
    .toMatch(/^Lining, front[\s\S]*Rubs on the drum and wears\.[\s\S]*0\.(29|30|31)\u00a0mm/);
  await shot('part-pointer-keys');
  await page.keyboard.press('Escape');
  await expect.poll(() => card.count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});
