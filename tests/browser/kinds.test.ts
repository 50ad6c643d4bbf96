import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, type Opened, openBrowser } from './open.ts';
import { frames, noWider } from './soon.ts';

let browser: OpenBrowser;
/** One page for all sizes: it follows its window. */
let opened: Opened;
beforeAll(async () => {
  browser = await openBrowser();
  opened = await browser.open({ reducedMotion: 'reduce', path: '?station=kind' });
});
afterAll(() => browser.close());

it.each([
  [1920, 1080],
  [1366, 768],
  [1024, 768],
  [390, 844],
])('at %i × %i four kinds and six adjusters are drawn and told', async (width, height) => {
  const { page, errors, shot } = opened;
  await page.setViewportSize({ width, height });
  await frames(page, 3);
  const card = page.locator('[data-kinds]');
  await card.waitFor();
  await expect.poll(() => card.locator('svg.pic').count()).toBe(10);
  // Asked until it stands: the card is laid out anew after the window has changed its size.
  for (const [at, kind] of (await card.locator('svg.pic').all()).entries()) {
    await expect
      .poll(async () => (await kind.boundingBox())?.width ?? 0, { message: String(at) })
      .toBeGreaterThan(at < 4 ? 100 : 60);
  }
  await expect.poll(() => card.innerText()).toMatch(/directions.*shares.*what turns the adjuster/s);
  await expect.poll(() => card.innerText()).toMatch(/This bench\. All of it holds\./);
  await noWider(page, width);
  await shot(`kinds-${width}`);
  expect(errors).toEqual([]);
});

it('servo and drum in disc are found by the words people use', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
    path: '?station=ask',
  });
  for (const words of [
    'servo',
    'drum in disc',
    'handbrake shoes inside disc',
    'which kind is mine',
  ]) {
    await page.locator('#ask-field').fill(words);
    const first = page.locator('takeup-ask li').first();
    await expect
      .poll(() => first.getAttribute('data-entry'), { message: words })
      .toMatch(/^(not here:(servo|in disc)|station:kind)$/);
    await first.getByRole('button').click();
    await page.locator('[data-kinds]').waitFor();
    await page.getByLabel('Station').selectOption('ask');
  }
  expect(errors).toEqual([]);
  await close();
});

it('what does not carry over is said on each answer for a kind that is not the bench’s', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
    path: '?station=kind',
  });
  await page.locator('[data-kind="servo"]').click();
  await page.locator('[data-kind="reverse"]').click();
  const says = /Yours is a servo brake.*turned by stops in reverse/s;
  for (const [station, where] of [
    ['ask', 'takeup-ask .kindnote'],
    ['see', 'takeup-said .kindnote >> nth=0'],
    ['questions', 'takeup-questions .kindnote'],
  ] as const) {
    await page.getByLabel('Station').selectOption(station);
    await expect.poll(() => page.locator(where).innerText(), { message: station }).toMatch(says);
  }
  await page.locator('[data-question="q001"]').getByRole('button').click();
  await expect.poll(() => page.locator('.asked').innerText()).toMatch(says);
  // A kind of the bench's: nothing more is said.
  await page.getByLabel('Station').selectOption('kind');
  await page.locator('[data-kind="pins"]').click();
  await page.locator('[data-kind="toothed"]').click();
  await page.getByLabel('Station').selectOption('ask');
  await page.locator('takeup-ask').waitFor();
  await expect.poll(() => page.locator('takeup-ask .kindnote').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('Which is mine? leads there', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
    path: '?station=drum-off',
  });
  await page.getByRole('button', { name: 'Which is mine?' }).click();
  await page.locator('[data-which-kind]').click();
  await page.locator('[data-kinds]').waitFor();
  await expect
    .poll(() => page.locator('[data-kind="servo"]').innerText())
    .toMatch(/One pin at the top/);
  // The header's list names the station that one is in, and the way back is undo.
  await expect.poll(() => page.getByLabel('Station').inputValue()).toBe('kind');
  await page.getByLabel('Station').selectOption('drum-off');
  await expect.poll(() => page.getByLabel('Station').inputValue()).toBe('drum-off');
  expect(errors).toEqual([]);
  await close();
});
