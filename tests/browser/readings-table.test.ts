import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soon, soonNear } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

for (const [name, width, height] of [
  ['desk', 1920, 1080],
  ['phone', 390, 844],
] as const) {
  it(`lists every reading with its meaning and formula, ${name}`, async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
    });
    await page.locator('takeup-app canvas').first().waitFor();
    await page.keyboard.press('t');
    const rows = page.locator('takeup-readings tr[data-reading]');
    await expect.poll(() => rows.count()).toBeGreaterThan(50);
    for (const row of await rows.all()) {
      await soon(async () => {
        const [title, value, , formula] = await row.locator('td').allInnerTexts();
        const means = await row.locator('.m > span').innerText();
        expect(title?.length).toBeGreaterThan(3);
        expect(value?.length).toBeGreaterThan(0);
        expect(means, title).toMatch(/^[A-ZF].*\.$/s);
        expect(formula?.length, title).toBeGreaterThan(0);
      });
    }
    const figure = async (key: string): Promise<number> => {
      const text = await page.locator(`[data-reading="${key}"] .v`).innerText();
      return Number(text.replace(/[\u202f\u00a0]/g, '').replace(/[^\d.−-].*$/s, ''));
    };
    // Teaching tables: new, 0.30 mm at the centre; a sound drum is the same all round.
    await soonNear(() => figure('restClearanceMean'), 0.3, { abs: 0.01 }, 'clearance');
    await soonNear(() => figure('turnFrontLeast'), 0.3, { abs: 0.01 }, 'least in a turn');
    const least = await figure('turnFrontLeast');
    await expect.poll(() => figure('turnFrontGreatest')).toBe(least);
    await soonNear(() => figure('turnBoreLeast'), 200, { abs: 0.001 }, 'bore');
    // Stop, drag and pedal: hand sums stand in tests/unit/study/.
    await soonNear(
      () => figure('stopEnergy'),
      16.6,
      { abs: 0.05 },
      'energy of a stop from 50 km/h',
    );
    await expect.poll(() => figure('dragPower')).toBe(0);
    await soonNear(() => figure('pedalFloor'), 132, { abs: 0.05 }, 'floor of the pedal');
    const plot = page.getByRole('img', { name: 'Force of the foot against pedal travel' });
    await expect.poll(() => plot.locator('polyline').count()).toBe(1);
    // An index is set low, and still read aloud as it is written.
    const formula = page.getByRole('math', { name: 'C_lead = T_lead / (R · F_toe)', exact: true });
    await expect
      .poll(() => formula.locator('sub').allInnerTexts())
      .toEqual(['lead', 'lead', 'toe']);
    await noWider(page, width);
    await shot(`readings-${name}`);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('takeup-readings dialog').isVisible()).toBe(false);
    expect(errors).toEqual([]);
    await close();
  });
}
