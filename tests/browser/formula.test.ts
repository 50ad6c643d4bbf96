import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soonNear, thumbHigh } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const plain = (text: string): number =>
  Number(
    text
      .replace(/[\u202f\u00a0]/g, '')
      .replace('−', '-')
      .replace(/[^\d.-].*$/s, ''),
  );

for (const [name, width, height] of [
  ['desk', 1920, 1080],
  ['phone', 390, 844],
] as const) {
  it(`by keys: a formula typed, refused where it is wrong, read, plotted, tabulated, undone and kept, ${name}`, async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
      path: '?station=vary',
    });
    const field = page.locator('takeup-own-formula');
    const text = field.locator('input.text');
    await text.focus();
    await page.keyboard.type('torque / (drum.diameterNew / 2) + torqu');
    const said = field.getByRole('status');
    await expect
      .poll(() => said.innerText())
      .toMatch(/At character 35: found “torqu”; allowed: a reading, a size, or a unit/);
    const button = field.getByRole('button', { name: 'Read it' });
    expect(await button.isDisabled()).toBe(true);
    await text.fill('createUnit("mm", "5 m")');
    await expect.poll(() => said.innerText()).toMatch(/found “createUnit”; allowed: one of sqrt/);
    await text.fill('torque + pistonForce');
    await expect.poll(() => said.innerText()).toMatch(/units that go together/);
    await text.fill('torque / (drum.diameterNew / 2)');
    const torque = page.locator('.vary-read [data-key="torque"] td').first();
    await field.locator('input.name').fill('Drag of both shoes');
    await text.press('Enter');
    const own = page.locator('.vary-read [data-key="own Drag of both shoes"] td').first();
    await own.waitFor();
    // 220.2 N·m over 0.1 m; what the brake as new has at 40 bar (tests/unit/readings.test.ts has the tables').
    await soonNear(async () => plain(await own.innerText()), 2202, { rel: 0.005 }, 'N');
    expect(await torque.count()).toBe(0);
    await expect
      .poll(() => page.locator('takeup-curve svg').textContent())
      .toMatch(/Drag of both shoes, N/);
    await noWider(page, width);
    if (width < 900) await thumbHigh(page.locator('.vary-ready .btn'));
    await shot(`formula-${name}`);
    await page.keyboard.press('Control+z');
    await expect.poll(() => own.count()).toBe(0);
    await page.keyboard.press('Control+Shift+z');
    await own.waitFor();
    await page.reload();
    await own.waitFor();
    await page.keyboard.press('t');
    const row = page.locator('takeup-readings [data-own="Drag of both shoes"]');
    // The stage's own moment: the point of the curve as it is, pressed with 40 bar.
    await soonNear(
      async () => plain(await row.locator('.v').innerText()),
      2202,
      { rel: 0.005 },
      'row',
    );
    await page.keyboard.press('Escape');
    await field.getByRole('button', { name: 'Remove' }).click();
    await expect.poll(() => own.count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  });
}
