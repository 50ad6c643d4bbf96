import { readFileSync } from 'node:fs';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** A lesson's file as far as these tests look at it. */
interface File {
  readonly name: string;
  readonly steps: readonly {
    readonly title?: string;
    readonly start?: readonly { readonly do: string }[];
    readonly hand: readonly { readonly do: string }[];
    readonly look: { readonly layers: readonly string[]; readonly readings: readonly string[] };
    readonly ask: string;
    readonly shows?: string;
    readonly choices: readonly { readonly says: readonly { readonly holds: boolean }[] }[];
  }[];
}

const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });
const type = async (field: Locator, text: string): Promise<void> => {
  await field.focus();
  await field.pressSequentially(text);
};

/** The file as it is saved, read at once: a browser may drop what it has downloaded with the page. */
async function saved(page: Page) {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save the file').press('Enter'),
  ]);
  const name = download.suggestedFilename();
  expect(name).toMatch(/^own-.*\.json$/);
  const buffer = readFileSync(await download.path());
  const file = JSON.parse(buffer.toString('utf8')) as File;
  return { file, download: { name, mimeType: 'application/json', buffer } };
}

it('a lesson is written by keys: begun, steps taken, asked, figures put in, saved, opened by another, played', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('l');
  // Who writes does not look for it under all lessons.
  const begin = page.getByRole('button', { name: 'Write a lesson' });
  await expect.poll(async () => (await begin.boundingBox())?.y ?? 9999).toBeLessThan(600);
  await begin.press('Enter');
  const found = page.locator('takeup-lesson-editor .found');
  await expect.poll(() => found.innerText()).toMatch(/Title: found/);
  const title = page.getByRole('textbox', { name: 'Title', exact: true });
  await type(title, 'The other way round');
  await button(page, 'To the stage: the next step').press('Enter');
  await button(page, 'Backward').press('Enter');
  await button(page, 'Step 1 begins like this').press('Enter');
  await expect
    .poll(() => page.locator('.writing p').first().innerText())
    .toMatch(/step 1 has its beginning/);
  // Driven on at another station: the life there is driven in pieces, and comes out of the file as the same.
  await page.keyboard.press('2');
  await button(page, 'Wear on').press('Enter');
  await expect.poll(() => page.locator('.rd').first().innerText()).toMatch(/\d/);
  await button(page, 'Wear on').waitFor();
  await button(page, 'Take this as step 1').press('Enter');
  await button(page, 'Write on').press('Enter');
  const step = page.locator('takeup-lesson-editor fieldset[data-step="1"]');
  await expect.poll(() => step.locator('[data-done="start"]').innerText()).toMatch(/backward/);
  await expect
    .poll(() => step.locator('[data-done="hand"]').innerText())
    .toMatch(/^Drives the brake on .*So far, km: \d/);
  expect(await step.locator('[data-untold]').count()).toBe(0);
  // Written on where it was left: the draft is in sight.
  await expect.poll(async () => (await title.boundingBox())?.y ?? 9999).toBeLessThan(600);
  // What is missing says where, and leads there.
  const missing = found.getByRole('button', { name: /^Step 1, Question: found/ });
  await missing.press('Enter');
  const ask = page.getByRole('textbox', { name: 'Step 1, Question' });
  await expect.poll(() => ask.evaluate((e) => e.matches(':focus'))).toBe(true);
  await page.keyboard.type('How far does the gap come?');
  await type(page.getByRole('textbox', { name: 'Step 1, choice A', exact: true }), 'Farther');
  await type(page.getByRole('textbox', { name: 'Step 1, choice B', exact: true }), 'Nearer');
  await button(page, 'Step 1: choice B, one more piece').press('Enter');
  await type(
    page.getByRole('textbox', { name: 'Step 1, choice B, piece 2' }),
    'because it is worn',
  );
  await expect.poll(() => found.count()).toBe(0);
  // Another reading is found by typing, and its figure goes where the cursor is.
  const readings = page.locator('takeup-picker[data-path="steps.0.look.readings"]');
  await readings.locator('.now').press('Enter');
  await readings.locator('input').pressSequentially('front lining');
  await readings.locator('input').press('Enter');
  await expect.poll(() => step.locator('.figures li').count()).toBe(3);
  const shows = page.getByRole('textbox', { name: 'Step 1, What it shows' });
  await type(shows, 'From  mm.');
  for (let i = 0; i < 4; i++) await page.keyboard.press('ArrowLeft');
  await step
    .locator('.figures li')
    .last()
    .getByRole('button', { name: /before/ })
    .press('Enter');
  await expect.poll(() => shows.inputValue()).toMatch(/^From \{before\.\w+=[\d.]+\} mm\.$/);
  await expect.poll(() => step.locator('[data-reads]').innerText()).toMatch(/From [\d.]+ mm\./);
  // Where to look stands in the step too, and is changed there.
  const layers = page.locator('takeup-picker[data-path="steps.0.look.layers"]');
  await layers.locator('.now').press('Enter');
  await layers.locator('input').pressSequentially('heat');
  await layers.locator('input').press('Enter');
  await expect.poll(() => layers.locator('#now').innerText()).toContain('heat');
  await shot('lesson-written');
  const { file, download } = await saved(page);
  expect(file.steps[0]?.look.layers).toContain('heat');
  expect(file.steps[0]?.look.readings.length).toBe(3);
  expect(file.steps[0]?.hand.map((a) => a.do)).toEqual(['wear']);
  expect(file.steps[0]?.start?.map((a) => a.do)).toEqual(['drum']);
  expect(file.steps[0]?.choices.map((c) => c.says.length)).toEqual([1, 2]);
  await page.reload();
  await expect.poll(() => ask.inputValue()).toBe('How far does the gap come?');
  await button(page, 'Try it').press('Enter');
  await page.locator('takeup-lesson').getByText('How far does the gap come?').first().waitFor();
  await shot('lesson-tried');
  expect(errors).toEqual([]);
  await close();

  // Whoever gets the file opens it, and plays it.
  const other = await browser.open({ reducedMotion: 'reduce', alone: true });
  await other.page.locator('takeup-stage canvas').first().waitFor();
  await other.page.keyboard.press('l');
  await other.page.getByLabel('Open a lesson file').setInputFiles(download);
  await button(other.page, 'Begin: The other way round').press('Enter');
  const lesson = other.page.locator('takeup-lesson');
  await lesson.getByText('How far does the gap come?').first().waitFor();
  await lesson
    .getByRole('button', { name: /Farther/ })
    .first()
    .press('Enter');
  await other.page.getByRole('button', { name: 'Show it' }).first().press('Enter');
  await lesson
    .getByText(/From [\d.]+\smm\./)
    .first()
    .waitFor();
  expect(other.errors).toEqual([]);
  await other.close();
});

it.each([
  [390, 844],
  [1366, 768],
])(
  'at %i px a lesson of the course is the beginning of one’s own: its steps are moved, doubled, taken away, and brought back',
  async (width, height) => {
    const { page, errors, shot, close } = await browser.open({
      reducedMotion: 'reduce',
      viewport: { width, height },
      path: '?station=lessons',
    });
    await button(page, /^Write from this one: /)
      .nth(3)
      .press('Enter');
    const editor = page.locator('takeup-lesson-editor');
    const legends = () => editor.locator('legend').allInnerTexts();
    await expect.poll(async () => (await legends()).length).toBeGreaterThan(2);
    const title = page.getByRole('textbox', { name: 'Title', exact: true });
    await expect.poll(() => title.evaluate((e) => e.matches(':focus'))).toBe(true);
    const name = (text: string): string => text.replace(/^Step \d+: /, '');
    const before = (await legends()).map(name);
    await button(page, 'Step 1: Down').press('Enter');
    await expect
      .poll(async () => (await legends()).map(name))
      .toEqual([before[1], before[0], ...before.slice(2)]);
    // The focus goes along with its step.
    await expect
      .poll(() => button(page, 'Step 2: Down').evaluate((e) => e.matches(':focus')))
      .toBe(true);
    await button(page, 'Step 2: Up').press('Enter');
    await button(page, 'Step 1: Double').press('Enter');
    await expect.poll(async () => (await legends()).map(name)).toEqual([before[0], ...before]);
    await button(page, 'Step 1: Away').press('Enter');
    await expect.poll(async () => (await legends()).map(name)).toEqual(before);
    await button(page, 'Step 1: Away').press('Enter');
    await expect.poll(async () => (await legends()).map(name)).toEqual(before.slice(1));
    await page.keyboard.press('Control+z');
    await expect.poll(async () => (await legends()).map(name)).toEqual(before);
    // Nothing of it reaches out at the side.
    expect(await editor.evaluate((e) => e.scrollWidth - e.clientWidth)).toBe(0);
    const { file } = await saved(page);
    expect(file.steps.map((s) => s.title)).toEqual(before);
    await shot(`lesson-own-${width}`);
    // Figures are worked out where the focus is.
    const readings = editor.locator('takeup-picker[data-path="steps.0.look.readings"]');
    await readings.locator('.now').focus();
    await editor.locator('fieldset[data-step="1"] .figures').waitFor();
    await readings.scrollIntoViewIfNeeded();
    await shot(`lesson-own-readings-${width}`);
    await editor.locator('details').nth(1).locator('summary').press('Enter');
    await shot(`lesson-own-more-${width}`);
    expect(errors).toEqual([]);
    await close();
  },
);

it('what was done and a lesson cannot say is told beside the stage and in the step', async () => {
  const { page, errors, shot, close } = await browser.open({
    reducedMotion: 'reduce',
    viewport: { width: 1366, height: 768 },
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('l');
  await button(page, 'Write a lesson').press('Enter');
  await button(page, 'To the stage: the next step').press('Enter');
  await page.locator('.writing').waitFor();
  await page.keyboard.press('b');
  await button(page, 'Take this as step 1').press('Enter');
  await expect.poll(() => page.locator('.writing').innerText()).toMatch(/shoes that bend/);
  await shot('lesson-untold-stage');
  await button(page, 'Write on').press('Enter');
  await expect
    .poll(() => page.locator('takeup-lesson-editor [data-untold]').innerText())
    .toMatch(/cannot say it: shoes that bend/);
  expect(errors).toEqual([]);
  await close();
});
