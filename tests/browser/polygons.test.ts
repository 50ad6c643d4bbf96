import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

for (const [name, width, height] of [
  ['laptop', 1366, 768],
  ['phone', 390, 844],
] as const) {
  it(`all forces on each shoe beside the brake, by key, kept by a reload and undone: ${name}`, async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
      path: '?station=apply',
    });
    await page.locator('takeup-stage canvas').first().waitFor();
    await page.keyboard.press('p');
    const texts = () => page.locator('.stage-labels').textContent();
    await expect.poll(texts).toMatch(/Front shoe, left over \d+\.\d\sN/);
    await page.keyboard.down(' ');
    // 4 MPa on a bore of 19.05 mm: 1 140 N, by hand.
    const piston = () => page.locator('[data-body="front"] li').first().innerText();
    await expect.poll(piston).toMatch(/piston\s*1\s140\sN/);
    const gap = async (): Promise<number> =>
      Number(await page.locator('[data-body="front"]').getAttribute('data-gap'));
    await expect.poll(gap).toBeLessThan(1);
    await expect.poll(texts).toMatch(/Rear shoe, left over 0\.\d\sN/);
    await noWider(page, width);
    await shot(`polygons-${name}`);
    await page.keyboard.up(' ');
    await page.reload();
    await expect.poll(texts).toMatch(/Front shoe, left over/);
    await page.keyboard.press('p');
    await expect.poll(texts).not.toMatch(/left over/);
    await page.keyboard.press('Control+z');
    await expect.poll(texts).toMatch(/left over/);
    expect(errors).toEqual([]);
    await close();
  });
}
