import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { openStation, stationCount } from './tour.ts';

/** Does the whole bench work where it stands? For pages without a network, and without a host. */

/** Every station opens, and what comes besides: its letters, typed sizes, curves from a worker. */
async function everyStation(page: Page): Promise<void> {
  const count = await stationCount(page);
  // Nine on the keys 1 to 9 (README) at least.
  expect(count).toBeGreaterThanOrEqual(9);
  const ids = new Set<string>();
  for (let at = 0; at < count; at++) ids.add(await openStation(page, at));
  expect(ids.size).toBe(count);
  await page.keyboard.press('1');
  await page.keyboard.press('v');
  await page.locator('takeup-curve path[stroke-width="3.5"]').first().waitFor();
  const fonts = await page.evaluate(async () => {
    await document.fonts.ready;
    return [...document.fonts].filter((f) => f.status === 'loaded').length;
  });
  expect(fonts).toBeGreaterThan(0);
}

/** The pedal is pressed, and the brake brakes: the van's 227 N·m at 40 bar (tests/reference/teaching-tables.md). */
async function press(page: Page): Promise<void> {
  await page.keyboard.press('1');
  await expect.poll(() => page.locator('main').getAttribute('data-station')).toBe('apply');
  const torque = async (): Promise<number> =>
    Number((await page.locator('[data-key="torque"]').first().innerText()).replace(/[^\d.]/g, ''));
  await page.keyboard.down(' ');
  await expect.poll(torque).toBeGreaterThan(200);
  await page.keyboard.up(' ');
  await expect.poll(torque).toBeLessThan(20);
}

/** A life to its limit: 59 500 km, tooth 15 (tests/reference/teaching-tables.md). */
async function wearOn(page: Page): Promise<void> {
  await page.keyboard.press('2');
  await page.getByRole('button', { name: 'to the limit', exact: true }).click();
  await page.getByRole('button', { name: 'Wear on', exact: true }).click();
  await page.getByText('Ended: a lining is at its limit.').waitFor();
  await expect.poll(() => page.locator('[data-tooth]').innerText()).toBe('15');
}

/** A lesson of the list, to the answer of its first step. */
async function takeLesson(page: Page): Promise<void> {
  await page.keyboard.press('l');
  await page
    .getByRole('button', { name: /^Begin: / })
    .first()
    .click();
  const phase = page.locator('takeup-lesson [aria-current="step"]');
  await expect.poll(() => phase.innerText()).toBe('Predict');
  await page.keyboard.press('b');
  await page.keyboard.press('PageDown');
  await expect.poll(() => phase.innerText()).toBe('Explain');
}

/** Everything, one after the other. */
export async function allOfIt(page: Page): Promise<void> {
  await everyStation(page);
  await press(page);
  await wearOn(page);
  await takeLesson(page);
}
