import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { soon } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('shows the class nothing small: no text under 34 px on the wall, and Escape leads back', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('w');
  await page.locator('main.wall').waitFor();
  await page.keyboard.down(' ');
  const factor = page.locator('[data-key="brakeFactor"]');
  await expect.poll(() => factor.innerText()).toMatch(/2\.\d\d/);
  // Rule of the wall: 34 px at least for whatever is meant for the class.
  const texts = () =>
    page.evaluate(() => {
      const sizes: number[] = [];
      const walk = (root: ParentNode): void => {
        for (const e of root.querySelectorAll('*')) {
          if (e.shadowRoot) walk(e.shadowRoot);
          const own = [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim());
          const box = e.getBoundingClientRect();
          if (own && box.width > 2 && box.height > 2 && e.tagName !== 'STYLE')
            sizes.push(Number.parseFloat(getComputedStyle(e).fontSize));
        }
      };
      walk(document.body);
      return { least: Math.min(...sizes), count: sizes.length };
    });
  await soon(async () => {
    const { least, count } = await texts();
    expect(count).toBeGreaterThan(10);
    expect(least).toBeGreaterThanOrEqual(34);
  });
  await shot('wall-apply');
  await page.keyboard.up(' ');
  await page.keyboard.press('2');
  await expect.poll(() => page.locator('[data-key="distance"]').innerText()).toContain('km');
  await shot('wall-wear');
  await page.keyboard.press('Escape');
  await page.locator('main.work').waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('has room for its words and buttons in every station where a guest stands, on every projector', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('7');
  await page.getByLabel('Fault', { exact: true }).selectOption('stuck piston');
  await page.getByLabel('Guest on the bench').waitFor();
  await page.keyboard.press('w');
  const leave = page.locator('.wall .hands button', { hasText: 'Leave the wall' });
  await leave.waitFor();
  for (const [width, height] of [
    [1920, 1080],
    [1366, 768],
    [1280, 800],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const [key, id] of [
      ['7', 'faults'],
      ['1', 'apply'],
      ['2', 'wear'],
      ['3', 'drum-off'],
      ['4', 'park'],
    ] as const) {
      await page.keyboard.press(key);
      await page.locator(`main.wall[data-station="${id}"]`).waitFor();
      await soon(async () => {
        const box = await leave.boundingBox();
        expect((box?.y ?? height) + (box?.height ?? 0), `${width}, station ${key}`).toBeLessThan(
          height,
        );
        const over = await page
          .locator('.wall .words')
          .evaluate((e) => [e.scrollHeight - e.clientHeight, e.scrollWidth - e.clientWidth]);
        expect(over, `${width}, station ${key}`).toEqual([0, 0]);
      });
    }
  }
  expect(errors).toEqual([]);
  await close();
});

it('turns to a right-hand wheel: forward is clockwise, the leading shoe on the right', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('button', { name: 'Right-hand' }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  const pedal = page.locator('takeup-pedal [role="slider"]');
  await pedal.press('PageUp');
  const leading = page.locator('takeup-stage text', { hasText: 'Leading shoe' });
  await leading.waitFor();
  await expect.poll(async () => (await leading.boundingBox())?.x ?? 0).toBeGreaterThan(700);
  await shot('right-hand');
  await pedal.press('Home');
  expect(errors).toEqual([]);
  await close();
});
