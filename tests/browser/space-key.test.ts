import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const bar = (page: Page) => () =>
  page.getByRole('slider', { name: 'Pedal' }).getAttribute('aria-valuenow');
const layer = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const pressed = (page: Page, name: string) => () => layer(page, name).getAttribute('aria-pressed');

async function open() {
  const opened = await browser.open({
    viewport: { width: 1366, height: 768 },
    reducedMotion: 'reduce',
  });
  await opened.page.locator('takeup-app canvas').first().waitFor();
  return opened;
}

/** Goes to a control by the keyboard alone. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let n = 0; n < 80; n++) {
    await page.keyboard.press('Tab');
    if (await layer(page, name).evaluate((e) => e.matches(':focus'))) return;
  }
  throw new Error(`No way to "${name}" by Tab`);
}

it('after a click the space bar is the pedal’s: the button is not pressed again', async () => {
  const { page, errors, close } = await open();
  await layer(page, 'Loupe').click();
  await expect.poll(pressed(page, 'Loupe')).toBe('true');
  await page.keyboard.down(' ');
  await expect.poll(bar(page)).toBe('40');
  await page.keyboard.up(' ');
  await expect.poll(bar(page)).toBe('0');
  await expect.poll(pressed(page, 'Loupe')).toBe('true');
  expect(errors).toEqual([]);
  await close();
});

it('reached by keys, the button keeps its space bar, also when it was clicked before', async () => {
  const { page, errors, close } = await open();
  await layer(page, 'Loupe').click();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press(' ');
  await expect.poll(pressed(page, 'Loupe')).toBe('false');
  await expect.poll(bar(page)).toBe('0');
  await page.reload();
  await page.locator('takeup-app canvas').first().waitFor();
  await tabTo(page, 'Loupe');
  await page.keyboard.press(' ');
  await expect.poll(pressed(page, 'Loupe')).toBe('true');
  await expect.poll(bar(page)).toBe('0');
  // The mouse on the focused button gives the space bar back to the pedal.
  await layer(page, 'Loupe').click();
  await expect.poll(pressed(page, 'Loupe')).toBe('false');
  await page.keyboard.down(' ');
  await expect.poll(bar(page)).toBe('40');
  await page.keyboard.up(' ');
  await expect.poll(pressed(page, 'Loupe')).toBe('false');
  expect(errors).toEqual([]);
  await close();
});

it('a list that was clicked leaves the space bar to the pedal; where no pedal is, nothing is taken', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  const list = page.getByRole('combobox', { name: 'Brake' });
  await list.click();
  await page.keyboard.press('Escape');
  await expect.poll(() => list.evaluate((e) => e.matches(':focus'))).toBe(true);
  await page.keyboard.down(' ');
  await expect.poll(bar(page)).toBe('40');
  await page.keyboard.up(' ');
  // Park has no pedal: a button there is pressed by space after a click too.
  await page.keyboard.press('4');
  await page.locator('main[data-station="park"]').waitFor();
  const heavy = page.getByRole('button', { name: 'View: Sheet' });
  await heavy.click();
  const board = page.getByRole('button', { name: 'View: Board' });
  await board.waitFor();
  await page.keyboard.press(' ');
  await heavy.waitFor();
  // A text field keeps its letters.
  await page.keyboard.press('9');
  await page.locator('#ask').fill('');
  await page.locator('#ask').pressSequentially('a b');
  await expect.poll(() => page.locator('#ask').inputValue()).toBe('a b');
  expect(errors).toEqual([]);
  await close();
});
