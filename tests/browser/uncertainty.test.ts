import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soonNear } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const plain = (text: string): number =>
  Number(text.replace(/[\u202f\u00a0]/g, '').replace('−', '-'));

for (const [name, width, height] of [
  ['desk', 1920, 1080],
  ['phone', 390, 844],
] as const) {
  it(`friction known to ten per cent: bands on the curve and in figures, ranked, undone and kept, ${name}`, async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
      path: '?station=vary',
    });
    const pick = async (which: string, typed: string, what: RegExp): Promise<void> => {
      const picker = page.locator(`[data-pick="${which}"]`);
      await picker.locator('.now').click();
      await page.keyboard.type(typed);
      await picker.locator('li button').filter({ hasText: what }).first().click();
    };
    await pick('of', 'line pressure', /Line pressure/);
    await pick('known', 'friction both', /Friction/);
    await pick('known', 'bore cylinder', /Bore/);
    const band = (key: string, n: number) => async (): Promise<number> =>
      plain(await page.locator(`[data-band="${key}"] td`).nth(n).innerText());
    // 0.342 to 0.418, of which 95 of 100 lie within 0.3439 and 0.4161: the leading shoe by the closed form of a
    // pinned shoe, C = μ·156·1.6049/(110.82 − μ·145.76): 1.42 and 2.08.
    await soonNear(band('shoeFactorLeading', 0), 1.42, { abs: 0.02 }, 'from');
    await soonNear(band('shoeFactorLeading', 2), 2.08, { abs: 0.03 }, 'to');
    await soonNear(band('shoeFactorLeading', 1), 1.72, { abs: 0.02 }, 'middle');
    await expect.poll(() => page.locator('takeup-curve path.band').count()).toBe(3);
    await expect
      .poll(() => page.locator('.vary-rank li span').allInnerTexts())
      .toEqual([expect.stringMatching(/^Friction/), expect.stringMatching(/^Bore/)]);
    await noWider(page, width);
    await page.locator('.vary-rank').scrollIntoViewIfNeeded();
    await shot(`uncertainty-${name}`);
    const by = page.locator('[data-known="shoes.lining.friction"] input');
    await by.fill('400');
    await by.press('Enter');
    await expect
      .poll(() => page.locator('.undone').innerText())
      .toMatch(/By: found “400”; allowed: a number from 0 to 90 %/);
    await by.fill('0');
    await by.press('Enter');
    await soonNear(band('shoeFactorLeading', 0), 1.72, { abs: 0.02 }, 'exact');
    await page.reload();
    await soonNear(band('shoeFactorLeading', 2), 1.72, { abs: 0.02 }, 'after a reload');
    await page
      .locator('[data-known="cylinder.bore"]')
      .getByRole('button', { name: 'Remove' })
      .click();
    await expect.poll(() => page.locator('[data-known]').count()).toBe(1);
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.locator('[data-known]').count()).toBe(2);
    // How likely it is: friction so known locks no shoe; known to two and a half times it locks in one brake of eight
    // (ln 0.7603/0.38 of ln 2.5, by the closed form of the lock: 24.3 of 200).
    await expect
      .poll(() => page.locator('[data-odds="never"]').innerText())
      .toMatch(/a shoe locks by itself/);
    await page.locator('[data-known="shoes.lining.friction"] select').selectOption('times');
    await by.fill('2.5');
    await by.press('Enter');
    const odds = (n: number) => async (): Promise<number> =>
      plain(await page.locator('[data-odds="locks"] td').nth(n).innerText());
    await soonNear(odds(1), 200, { abs: 0 }, 'drawn');
    await soonNear(odds(0), 24.3, { abs: 1.5 }, 'lock');
    await page.locator('[data-odds="locks"]').scrollIntoViewIfNeeded();
    await noWider(page, width);
    await shot(`odds-${name}`);
    expect(errors).toEqual([]);
    await close();
  });
}

it('from a size in My brake it is one tap to what follows from it', async () => {
  const { page, errors, close } = await browser.open({
    reducedMotion: 'reduce',
    path: '?station=own',
  });
  await page.getByRole('button', { name: 'Make it mine' }).click();
  const size = page.locator('[data-own="bore"]');
  await size.getByRole('button', { name: /^What if/ }).press('Enter');
  await page.locator('main[data-station="vary"]').waitFor();
  await expect.poll(() => page.locator('[data-pick="of"] .now').innerText()).toMatch(/^Bore/);
  expect(errors).toEqual([]);
  await close();
});
