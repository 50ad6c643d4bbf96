import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readSceneText } from '../../sim/index.ts';
import { seriousFaults } from './axe.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soonNear, thumbHigh } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const laptop = { viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce' } as const;
const phone = { viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' } as const;

async function start(page: Page): Promise<void> {
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('8');
  await page.locator('takeup-own').waitFor();
}
const field = (page: Page, key: string) => page.locator(`[data-own="${key}"] input`);
const told = (page: Page, key: string) => page.locator(`[data-own="${key}"] .told`);
const sum = (page: Page) => page.locator('[data-sum]');
/** Keys of the stations are taken only outside a field. */
async function goTo(page: Page, station: string): Promise<void> {
  await page.locator('nav button', { hasText: station }).click();
}

it('makes a brake from the nearest, keeps it over a reload, shows it in the choice and on the bench', async () => {
  const { page, errors, shot, close } = await browser.open(laptop);
  await start(page);
  await page.getByLabel('Drum Ø of yours, new').fill('8"');
  // 203.2 mm: the quay van's 200 is the nearest of 165, 190, 200 and 250.
  await expect.poll(() => page.locator('#from option:checked').innerText()).toMatch(/Quay van/);
  await page.getByRole('button', { name: 'Make it mine' }).click();
  await expect.poll(() => told(page, 'drumNew').innerText()).toMatch(/read as 8" = 203\.2 mm/);
  await expect.poll(() => told(page, 'bore').innerText()).toMatch(/assumed 19\.05 mm/);
  // Similar figures have the same shoe factors: the teaching tables' 2.29.
  await soonNear(async () => Number(await page.locator('[data-factor]').innerText()), 2.29, {
    rel: 0.015,
  });
  await field(page, 'bore').fill('13/16 in');
  await expect
    .poll(() => told(page, 'bore').innerText())
    .toMatch(/read as 13\/16 in = 20\.6375 mm/);
  await page.getByRole('textbox', { name: 'Name', exact: true }).fill('Old trailer');
  await page.getByRole('textbox', { name: 'Name', exact: true }).press('Tab');
  await shot('own-brake-laptop');
  expect(await seriousFaults(page)).toEqual([]);
  // On the bench: at 40 bar a piston of 20.6375 mm pushes with 4 N/mm² on 334.51 mm².
  await goTo(page, 'Apply');
  await page.locator('takeup-pedal [role="slider"]').focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('PageUp');
  await expect
    .poll(() => page.locator('[data-key="pistonForce"]').innerText())
    .toMatch(/1[\u202f\u00a0]?338/);
  await page.reload();
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByRole('button', { name: 'Bench', exact: true }).click();
  await page.getByLabel('Brake on the bench').selectOption('Old trailer');
  await page.getByRole('button', { name: 'Done' }).click();
  await goTo(page, 'My brake');
  await expect.poll(() => field(page, 'bore').inputValue()).toBe('13/16 in');
  await expect.poll(() => field(page, 'drumNew').inputValue()).toBe('8"');
  expect(errors).toEqual([]);
  await close();
});

it('tells what is wrong at its field; the last sound brake stays on the bench', async () => {
  const { page, errors, close } = await browser.open(laptop);
  await start(page);
  await page.getByRole('button', { name: 'Make it mine' }).click();
  await field(page, 'bore').fill('22.2');
  await expect.poll(() => sum(page).innerText()).toMatch(/clearance/);
  await field(page, 'bore').fill('wide');
  await expect.poll(() => told(page, 'bore').innerText()).toMatch(/found "wide"; allowed/);
  await expect
    .poll(() => sum(page).innerText())
    .toMatch(/1 place to mend.*last sound brake stays/s);
  await field(page, 'drumMax').fill('199');
  await field(page, 'bore').fill('23');
  await expect
    .poll(() => told(page, 'drumMax').innerText())
    .toMatch(/found 199 mm; allowed: at least the new diameter, 200 mm/);
  await expect.poll(() => sum(page).innerText()).toMatch(/1 place to mend/);
  await page.reload();
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByRole('button', { name: 'Bench', exact: true }).click();
  await page.getByLabel('Brake on the bench').selectOption('My brake 1');
  await page.getByRole('button', { name: 'Done' }).click();
  await goTo(page, 'Apply');
  // 22.2 was the last sound one: 4 N/mm² on 387.08 mm²; and the unsound text is still there.
  await page.locator('takeup-pedal [role="slider"]').focus();
  for (let i = 0; i < 4; i++) await page.keyboard.press('PageUp');
  await expect
    .poll(() => page.locator('[data-key="pistonForce"]').innerText())
    .toMatch(/1[\u202f\u00a0]?548/);
  await goTo(page, 'My brake');
  await expect.poll(() => field(page, 'drumMax').inputValue()).toBe('199');
  expect(errors).toEqual([]);
  await close();
});

it('saves a scene file, reads it back, refuses a bad one by place, deletes and brings back', async () => {
  const { page, errors, close } = await browser.open(laptop);
  await start(page);
  await page.getByRole('button', { name: 'Make it mine' }).click();
  await field(page, 'bore').fill('22.2');
  await expect.poll(() => told(page, 'bore').innerText()).toMatch(/22\.2/);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a scene file' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('my-brake-1.json');
  const text = readFileSync(await download.path(), 'utf8');
  const read = readSceneText(text);
  expect(read.ok && read.brake.cylinder.bore).toBe(22.2);
  const file = page.getByLabel('Read a scene file').last();
  await file.setInputFiles({
    name: 'bad.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text.replace('"bore": 22.2', '"bore": -3')),
  });
  await expect
    .poll(() => page.locator('[data-said]').innerText())
    .toMatch(/bad\.json was not taken[\s\S]*cylinder\.bore: found -3; allowed: more than 0/);
  await expect.poll(() => field(page, 'bore').inputValue()).toBe('22.2');
  await file.setInputFiles({
    name: 'good.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text.replace('"title": "My brake 1"', '"title": "From a file"')),
  });
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Name', exact: true }).inputValue())
    .toBe('From a file');
  await expect.poll(() => told(page, 'bore').innerText()).toMatch(/assumed 22\.20 mm/);
  await page.getByRole('button', { name: 'Delete From a file' }).click();
  await page.getByRole('button', { name: 'Keep it' }).waitFor();
  await page.getByRole('button', { name: 'Delete From a file' }).click();
  await expect.poll(() => page.locator('.kept').innerText()).not.toMatch(/From a file/);
  await page.reload();
  await start(page);
  await page.getByRole('button', { name: 'Bring back From a file' }).click();
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Name', exact: true }).inputValue())
    .toBe('From a file');
  expect(errors).toEqual([]);
  await close();
});

it('works on the phone, with the thumb', async () => {
  const { page, errors, shot, close } = await browser.open(phone);
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByLabel('Station').selectOption('My brake');
  await page.getByLabel('Drum Ø of yours, new').fill('165');
  await page.getByRole('button', { name: 'Make it mine' }).click();
  await expect.poll(() => sum(page).innerText()).toMatch(/brake factor/);
  await field(page, 'liningWidth').fill('1 1/4 in');
  await expect.poll(() => told(page, 'liningWidth').innerText()).toMatch(/= 31\.75 mm/);
  await noWider(page, 390);
  await thumbHigh(page.locator('takeup-own').locator('button, input, select'));
  await shot('own-brake-phone');
  expect(await seriousFaults(page)).toEqual([]);
  expect(errors).toEqual([]);
  await close();
});
