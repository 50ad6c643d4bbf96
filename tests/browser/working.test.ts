import { all, create } from 'mathjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider } from './soon.ts';

if (!all) throw new Error('the library has its functions');
const math = create(all);

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const evaluated = (shown: string): number =>
  Number(
    math.evaluate(
      shown
        .replace(/−/g, '-')
        .replace(/·/g, '*')
        .replace(/²/g, '^2')
        .replace(/√\(/g, 'sqrt(')
        .replace(/;/g, ','),
    ),
  );
const plain = (text: string): string =>
  text
    .replace(/[\u202f\u00a0]/g, '')
    .replace('−', '-')
    .replace(/[^\d.-].*$/s, '');

it('every reading of the sheet has its working, and the numbers shown give the reading shown', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('t');
  const rows = page.locator('takeup-readings tr[data-reading]');
  await expect.poll(() => rows.count()).toBeGreaterThan(50);
  const keys = await rows.evaluateAll((all) =>
    all.map((r) => r.getAttribute('data-reading') ?? ''),
  );
  let seen = 0;
  for (const key of keys) {
    const row = page.locator(`tr[data-reading="${key}"]`);
    await row.locator('.wk').click();
    const work = page.locator(`tr[data-working="${key}"] takeup-working`);
    await work.waitFor();
    const value = await row.locator('.v').first().innerText();
    if (value.startsWith('–')) {
      await expect.poll(() => work.locator('p').first().innerText()).toMatch(/nothing to tell/);
    } else {
      const line = work.locator('.line').first();
      const shown = (await line.getAttribute('data-numbers')) ?? '';
      const digits = plain(value).split('.')[1]?.length ?? 0;
      const came = evaluated(shown);
      // A lining is told rounded down.
      const told = key.startsWith('lining')
        ? Math.floor(came * 10 ** digits + 1e-6) / 10 ** digits
        : came;
      expect(Number(told.toFixed(digits)) + 0, `${key}: ${shown}`).toBe(Number(plain(value)) + 0);
      expect(await work.locator('math').count(), key).toBeGreaterThan(1);
      seen++;
    }
    await row.locator('.wk').click();
    await expect.poll(() => work.count()).toBe(0);
  }
  expect(seen).toBeGreaterThan(45);
  expect(errors).toEqual([]);
  await close();
});

for (const [name, width, height] of [
  ['desk', 1920, 1080],
  ['phone', 390, 844],
] as const) {
  it(`by keys: the factor’s working, from pressure to factor, copied, and on to a number that it rests on, ${name}`, async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
      permissions: ['clipboard-read', 'clipboard-write'],
    });
    await page.locator('takeup-app canvas').first().waitFor();
    await page.keyboard.down('Space');
    await expect
      .poll(() => page.locator('[data-key="brakeFactor"] .v, .bf .v').first().innerText())
      .toMatch(/\d/);
    await page.keyboard.press('t');
    const button = page.locator('tr[data-reading="brakeFactor"] .wk');
    await button.focus();
    await page.keyboard.press('Enter');
    const work = page.locator('tr[data-working="brakeFactor"] takeup-working');
    await work.waitFor();
    // Found by what a screen reader reads: maths, not a picture of it.
    await expect.poll(() => work.locator('math').first().textContent()).toMatch(/C\*.*=/s);
    await expect.poll(() => work.locator('[data-step="closed factor"]').count()).toBe(2);
    await expect
      .poll(() => work.locator('[data-step="closed lock"]').innerText())
      .toMatch(/0\.760/);
    await expect
      .poll(() => work.locator('svg[role="img"]').first().getAttribute('aria-label'))
      .toMatch(/piston 1.140 N/);
    for (const gap of await work.locator('svg[data-gap]').all())
      await expect.poll(async () => Number(await gap.getAttribute('data-gap'))).toBeLessThan(1);
    await noWider(page, width);
    await shot(`working-${name}`);
    await work.getByRole('button', { name: 'Copy as LaTeX' }).press('Enter');
    await expect.poll(() => work.getByRole('status').innerText()).toBe('Copied as LaTeX.');
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied).toMatch(/^C\^\{\*\} = \\frac\{F_\{\\mathrm\{d,lead\}\}\}/m);
    // All of it, from the pressure on.
    expect(copied.split('\n').length).toBeGreaterThan(10);
    await work.getByRole('button', { name: 'Copy as text' }).press('Enter');
    await expect
      .poll(() => page.evaluate(() => navigator.clipboard.readText()))
      .toMatch(
        /^Brake factor[\s\S]*Front shoe, leading, by the closed form:[\s\S]*Numbers put in:[\s\S]*^C\* = F_d,lead \/ F_lead \+ /m,
      );
    await work.getByRole('button', { name: 'Drag of the leading shoe' }).press('Enter');
    await page.locator('tr[data-working="dragFront"] takeup-working').waitFor();
    await expect
      .poll(() =>
        page.locator('tr[data-reading="dragFront"] .wk').evaluate((b) => b.matches(':focus')),
      )
      .toBe(true);
    expect(errors).toEqual([]);
    await close();
  });
}
