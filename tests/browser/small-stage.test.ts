import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const open = async (width: number, height: number) => {
  const opened = await browser.open({ viewport: { width, height }, reducedMotion: 'reduce' });
  await opened.page.locator('takeup-stage canvas').waitFor();
  return opened;
};
const station = (page: Page, name: string) =>
  expect.poll(() => page.locator('main').getAttribute('data-station')).toBe(name);

it('on a projector the brake stands in full, with its forces, and what lies beside it when asked for', async () => {
  const { page, errors, close } = await open(1024, 768);
  for (const [key, id, beside] of [
    ['3', 'drum-off', '.onstage'],
    ['4', 'park', '.park-over'],
    ['6', 'new-shoes', '.ns-over'],
  ] as const) {
    await page.keyboard.press(key);
    await station(page, id);
    const turn = page.locator('.one .turn');
    await turn.waitFor();
    expect(await page.locator(beside).isVisible()).toBe(false);
    if (id === 'park') {
      // The forces on both shoes and the cable's pull, with the lever drawn.
      const values = page.locator('takeup-stage text', { hasText: /(kN|\d\sN)$/ });
      await expect.poll(() => values.count()).toBeGreaterThanOrEqual(4);
    }
    await turn.click();
    await expect.poll(() => page.locator(beside).isVisible()).toBe(true);
    await turn.click();
    await expect.poll(() => page.locator(beside).isVisible()).toBe(false);
  }
  await page.keyboard.press('1');
  await page.getByRole('button', { name: 'Names', exact: true }).click();
  // Numbers need their list.
  await page
    .getByRole('region', { name: 'Names of the parts' })
    .getByText('Wheel cylinder')
    .waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('the browser’s own print puts the drawing and the readings on paper', async () => {
  const { page, errors, close } = await open(1366, 768);
  await page.keyboard.press('4');
  await station(page, 'park');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const paper = page.locator('#print-moment');
  await expect.poll(() => paper.isVisible()).toBe(true);
  expect(await paper.locator('h1').innerText()).toMatch(/^Park/);
  expect(await paper.locator('svg path').count()).toBeGreaterThan(50);
  expect(await paper.locator('dd').count()).toBeGreaterThan(10);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect.poll(() => paper.count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});
