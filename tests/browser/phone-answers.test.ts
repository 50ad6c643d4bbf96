import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const phone = { viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' } as const;

it('Which is mine? lies under nothing: every answer can be pressed where it stands', async () => {
  const { page, errors, close } = await browser.open({ ...phone, path: '?station=drum-off' });
  await page.getByRole('button', { name: 'Which is mine?' }).click();
  for (const given of ['studs', 'freely', 'a little', 'no change', 'there']) {
    const answers = page.locator('.quiz [data-answer]');
    await page.locator(`.quiz [data-answer="${given}"]`).waitFor();
    for (const button of await answers.all()) await button.click({ trial: true });
    await page.locator(`.quiz [data-answer="${given}"]`).click();
  }
  await page.locator('[data-likely]').first().waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('a question’s band stands in its own station alone, and the header’s list names where one is', async () => {
  const { page, errors, close } = await browser.open({ ...phone, path: '?station=questions' });
  const list = page.getByLabel('Station');
  const band = page.locator('.asked');
  await expect.poll(() => list.inputValue()).toBe('questions');
  await page.locator('[data-question="q001"]').getByRole('button').click();
  await band.waitFor();
  await expect.poll(() => list.inputValue()).toBe('drum-off');
  // Words of a few lines, then the drawing: the band takes no more than a quarter of the phone.
  await expect.poll(async () => (await band.boundingBox())?.height).toBeLessThan(844 / 4);
  await list.selectOption('wear');
  await page.locator('main[data-station="wear"]').waitFor();
  await expect.poll(() => band.count()).toBe(0);
  await expect.poll(() => list.inputValue()).toBe('wear');
  expect(errors).toEqual([]);
  await close();
});
