import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('a lesson is written without code: begun, a step taken from the stage, asked, kept over a reload, tried', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('l');
  // Who writes does not look for it under all lessons.
  const begin = page.getByRole('button', { name: 'Write a lesson' });
  await expect.poll(async () => (await begin.boundingBox())?.y ?? 9999).toBeLessThan(600);
  await begin.press('Enter');
  const found = page.locator('takeup-lesson-editor .found');
  await expect.poll(() => found.innerText()).toMatch(/title/);
  await page.getByLabel('Title').fill('The other way round');
  await page.getByRole('button', { name: 'To the stage: the next step' }).press('Enter');
  await page.getByRole('button', { name: 'Backward', exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Take this as step 1' }).press('Enter');
  await expect.poll(() => page.locator('.writing p').innerText()).toMatch(/1 step\./);
  await page.getByRole('button', { name: 'Write on' }).press('Enter');
  await expect
    .poll(() => page.locator('takeup-lesson-editor .done').innerText())
    .toMatch(/backward/);
  // Written on where it was left: the draft is in sight.
  const draft = page.getByLabel('Title');
  await expect.poll(async () => (await draft.boundingBox())?.y ?? 9999).toBeLessThan(600);
  await page.getByLabel('Question').fill('Which shoe leads now?');
  await page.getByLabel('Step 1, choice A').fill('The rear one');
  await page.getByLabel('Step 1, choice B').fill('The front one');
  await expect.poll(() => found.count()).toBe(0);
  await shot('lesson-written');
  await page.reload();
  await expect.poll(() => page.getByLabel('Question').inputValue()).toBe('Which shoe leads now?');
  await page.getByRole('button', { name: 'Try it' }).press('Enter');
  await page.locator('takeup-lesson').getByText('Which shoe leads now?').first().waitFor();
  await shot('lesson-tried');
  expect(errors).toEqual([]);
  await close();
});
