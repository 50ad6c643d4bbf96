import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const question = (page: Page) => page.locator('.nm-q b').innerText();

/** Goes by the arrow keys to the part that is asked for, by what the page says each does, and takes it. */
async function findByKeys(page: Page, sentence: string): Promise<void> {
  const said = page.locator('takeup-stage [role="status"]');
  for (let n = 0; n < 80; n++) {
    await page.keyboard.press('ArrowRight');
    if ((await said.textContent())?.startsWith(sentence)) break;
  }
  await page.keyboard.press('Enter');
}

it('asks for parts by name: by keys alone, with the score, and undone', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByRole('button', { name: 'Names', exact: true }).press('Enter');
  const list = page.getByRole('region', { name: 'Names of the parts' });
  // Beside the full stage too, with what lines and hatches mean.
  await list.getByText('Toothed lever', { exact: true }).waitFor();
  await list.getByText('Friction lining').waitFor();
  await shot('names-list');
  await list.getByRole('button', { name: 'Ask me' }).press('Enter');
  await expect.poll(() => question(page)).toMatch(/^Tap the /);
  const first = await question(page);
  // The names are gone, and no card gives one away.
  await expect
    .poll(() => page.locator('takeup-stage text', { hasText: /^Strut$/ }).count())
    .toBe(0);
  await page.locator('takeup-stage #host').focus();
  await page.keyboard.press('ArrowRight');
  expect(await page.locator('takeup-stage .part').count()).toBe(0);
  // A pass: the part is shown, not counted as a hit.
  await list.getByRole('button', { name: 'Show it' }).press('Enter');
  await expect.poll(() => question(page)).not.toBe(first);
  await expect
    .poll(() => page.locator('.nm-q span').innerText())
    .toMatch(/^0 of 1 at the first tap/);
  // Sentences of some parts as they stand in the list of names.
  const does: Readonly<Record<string, string>> = {
    'wheel cylinder': 'Turns fluid pressure into push on both toes.',
    'toothed lever': 'Steps to the next tooth when the shoes travel too far.',
    strut: 'Holds the shoes apart; its length sets the clearance.',
    hub: 'Turns with the wheel and carries the drum.',
    lining: 'Rubs on the drum and wears.',
    'parking lever': 'Spreads the shoes when the cable pulls.',
  };
  let found = 1;
  for (let n = 0; n < 40; n++) {
    const sought = (await question(page)).replace('Tap the ', '');
    const sentence = does[sought];
    if (sentence) {
      await page.locator('takeup-stage #host').focus();
      await findByKeys(page, sentence);
      await expect
        .poll(() => page.locator('.nm-q span').innerText())
        .toMatch(new RegExp(`^1 of ${found + 1} at the first tap`));
      break;
    }
    await list.getByRole('button', { name: 'Show it' }).press('Enter');
    found++;
    await expect.poll(() => question(page)).not.toBe(`Tap the ${sought}`);
  }
  await shot('names-asked');
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('.nm-q span').innerText()).toMatch(/^0 of /);
  await page.reload();
  await expect.poll(() => question(page)).toMatch(/^Tap the /);
  await list.getByRole('button', { name: 'Stop asking' }).press('Enter');
  await page.locator('takeup-stage text', { hasText: /^Strut$/ }).waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('a wrong tap is told by its name, and counts as no hit; the wall asks in large type', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByRole('button', { name: 'Names', exact: true }).click();
  await page.getByRole('button', { name: 'Ask me' }).click();
  await expect.poll(() => question(page)).toMatch(/^Tap the /);
  if ((await question(page)) === 'Tap the hub')
    await page.getByRole('button', { name: 'Show it' }).click();
  const box = await page.locator('takeup-stage').boundingBox();
  if (!box) throw new Error('no stage');
  // The hub's bore is the middle of the brake.
  await page.mouse.click(box.x + box.width / 2, box.y + (box.height - 60) / 2 + 18);
  await expect.poll(() => page.locator('.nm-q span').innerText()).toMatch(/^That is the hub\./);
  await page.keyboard.press('w');
  await page.locator('.wall .nm-q').waitFor();
  const size = await page
    .locator('.wall .nm-q span')
    .evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize));
  expect(size).toBeGreaterThanOrEqual(34);
  await shot('names-asked-wall');
  expect(errors).toEqual([]);
  await close();
});

it('a phone has the list, the question and the legend, no wider than it is', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  await page.getByRole('button', { name: 'Names' }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Ask me' }).click();
  await expect.poll(() => question(page)).toMatch(/^Tap the /);
  await noWider(page, 390);
  await shot('names-asked-phone');
  expect(errors).toEqual([]);
  await close();
});
