import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, type Opened, openBrowser } from './open.ts';
import { frames, noWider } from './soon.ts';

let browser: OpenBrowser;
/** One page for all sizes: it follows its window. */
let opened: Opened;
beforeAll(async () => {
  browser = await openBrowser();
  opened = await browser.open({ reducedMotion: 'reduce', path: '?station=questions' });
});
afterAll(() => browser.close());

it.each([
  [1920, 1080],
  [1366, 768],
  [1024, 768],
  [390, 844],
])(
  'at %i × %i servo and drum in disc are told and drawn, found by the words people use',
  async (width, height) => {
    const { page, errors, shot } = opened;
    await page.setViewportSize({ width, height });
    await frames(page, 3);
    const card = page.locator('[data-kinds]');
    await card.waitFor();
    await expect.poll(() => card.locator('svg.pic').count()).toBe(3);
    for (const kind of await card.locator('svg.pic').all()) {
      const box = await kind.boundingBox();
      expect(box?.width).toBeGreaterThan(100);
    }
    for (const words of ['servo', 'drum in disc', 'handbrake shoes inside disc', 'primary shoe']) {
      await page.locator('#ask').fill(words);
      await expect.poll(() => page.locator('#ask').inputValue()).toBe(words);
      await expect
        .poll(() => card.innerText(), { message: words })
        .toMatch(/directions .*shares.*what turns the adjuster/s);
      await expect.poll(() => card.innerText()).toMatch(/This bench\. All of it holds\./);
    }
    await page.locator('#ask').fill('squeal');
    await expect.poll(() => card.count()).toBe(0);
    await page.locator('#ask').fill('servo');
    await card.waitFor();
    await noWider(page, width);
    await shot(`kinds-${width}`);
    expect(errors).toEqual([]);
  },
);

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
  await expect.poll(() => page.getByLabel('Station').inputValue()).toBe('questions');
  await page.getByLabel('Station').selectOption('drum-off');
  await expect.poll(() => page.getByLabel('Station').inputValue()).toBe('drum-off');
  expect(errors).toEqual([]);
  await close();
});
