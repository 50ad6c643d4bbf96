import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { near } from '../near.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, placeOf, soon, soonNear, thumbHigh } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** All figures in a text, thousands joined. */
const figures = (text: string): number[] =>
  (text.replace(/[\u202f\u00a0]/g, '').match(/−?\d+(?:\.\d+)?/g) ?? []).map((n) =>
    Number(n.replace('−', '-')),
  );
/** The verdict's words, spaces plain. */
const verdictOf = async (page: Page): Promise<string> =>
  (await page.locator('[data-verdict]').innerText()).replace(/\u00a0/g, ' ');
const first = async (page: Page, selector: string): Promise<number> =>
  figures(await page.locator(selector).first().innerText())[0] ?? Number.NaN;
const key = (page: Page, name: string): Promise<number> =>
  page
    .locator(`[data-key="${name}"] .v`)
    .first()
    .innerText()
    .then((t) => figures(t)[0] ?? Number.NaN);

/** Opens the first teaching brake worn in (20 000 km), then Park. */
async function wornIn(page: Page): Promise<void> {
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('3');
  await page.getByRole('button', { name: 'Set another fault' }).click();
  await page.getByLabel('Brake as it stands').selectOption('Worn-in');
  await page.keyboard.press('4');
  await page.locator('[data-verdict]').waitFor();
}

it('parks the worn-in van at 300 N: verdict, both ways, lever alone, notches', async () => {
  const { page, errors, shot, close } = await browser.open();
  await wornIn(page);
  // Teaching tables, table 11: 344 and 339 N·m, 23.2 and 22.8 %, 2 047 N, 5.3 notches, 299 asked for. Its
  // parts do not give; ours do, by 0.8 of a notch (tests/reference/give.test.ts).
  await expect.poll(() => verdictOf(page)).toContain('Holds on 20 %');
  await soonNear(() => first(page, '[data-torque="down"]'), 344, { rel: 0.02 }, 'nose down');
  await soonNear(() => first(page, '[data-torque="up"]'), 339, { rel: 0.02 }, 'nose up');
  await soonNear(() => first(page, '[data-need]'), 299, { abs: 1 }, 'asked for');
  await soonNear(() => key(page, 'slope-down'), 23.2, { rel: 0.02 }, 'steepest nose down');
  await soonNear(() => key(page, 'slope-up'), 22.8, { rel: 0.02 }, 'steepest nose up');
  await soonNear(() => key(page, 'notches'), 6.1, { abs: 0.1 }, 'notches');
  const spent = (on: string) => () => first(page, `[data-spent="${on}"]`);
  await soonNear(spent('slack'), 1, { abs: 0.05 }, 'slack');
  await soonNear(spent('stretch'), 2.5, { abs: 0.05 }, 'stretch');
  await soonNear(spent('turning'), 8.7, { abs: 0.15 }, 'turning the lever');
  // The sum under the lever's picture: cable × arm ÷ arm = strut; strut − cable = pivot.
  await soon(async () => {
    const [cable = 0, arm = 0, short = 1, strut = 0, again = 0, less = 0, pivot = 0] = figures(
      await page.locator('[data-sum]').innerText(),
    );
    near((cable * arm) / short, strut, { abs: 1 }, 'sum of moments');
    expect([again, less]).toEqual([strut, 300]);
    near(pivot, strut - 300, { abs: 1 }, 'pivot');
    near(strut, 2047, { rel: 0.01 }, 'strut');
  });
  await shot('park');
  expect(errors).toEqual([]);
  await close();
});

it('rolls on 30 %, and says so with a mark, a word and a number; judged by other rules', async () => {
  const { page, errors, close } = await browser.open();
  await wornIn(page);
  await page.getByLabel('Judged by').selectOption('30');
  const verdict = page.locator('[data-verdict]');
  await expect.poll(() => verdictOf(page)).toContain('Rolls on 30 %');
  await expect.poll(() => verdictOf(page)).toMatch(/\d+ N·m a wheel short, nose down/);
  await expect.poll(() => verdict.locator('svg rect').count()).toBe(1);
  await page.getByLabel('Judged by').selectOption('18w');
  await expect.poll(() => verdictOf(page)).toContain('Holds 18 % of its weight');
  await expect.poll(() => page.locator('[data-rule]').innerText()).toContain('read');
  await page.getByLabel('Judged by').selectOption('16w');
  await expect.poll(() => page.locator('[data-rule]').innerText()).toContain('from memory');
  // One's own slope by the stepper: it goes on from the rule that was chosen.
  await page.getByLabel('Judged by').selectOption('20');
  for (let i = 0; i < 4; i++) await page.getByRole('button', { name: 'Slope: more' }).click();
  await expect.poll(() => verdictOf(page)).toContain('Rolls on 24 %');
  expect(errors).toEqual([]);
  await close();
});

it('the hand lever by keys: five newtons, a notch, let go', async () => {
  const { page, errors, close } = await browser.open();
  await wornIn(page);
  const pad = page.getByRole('slider', { name: 'Parking lever' });
  await pad.focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => pad.getAttribute('aria-valuenow')).toBe('305');
  await page.keyboard.press('PageUp');
  await expect.poll(() => key(page, 'notches')).toBe(7);
  await page.keyboard.press('Home');
  await expect.poll(() => pad.getAttribute('aria-valuenow')).toBe('0');
  await expect.poll(() => verdictOf(page)).toContain('Rolls on 20 %');
  await page.getByLabel('Pull in each cable, N').fill('450');
  await page.keyboard.press('Enter');
  await expect.poll(() => pad.getAttribute('aria-valuenow')).toBe('450');
  expect(errors).toEqual([]);
  await close();
});

it('each notch takes more pull than the last, also where the lever turns at one', async () => {
  const { page, close } = await browser.open();
  await page.keyboard.press('4');
  const pull = page.getByLabel('Pull in each cable, N');
  await pull.fill('0');
  await page.keyboard.press('Enter');
  let before = 0;
  for (let n = 0; n < 6; n++) {
    await page.getByRole('button', { name: 'One notch on' }).click();
    await expect.poll(async () => Number(await pull.inputValue())).toBeGreaterThan(before);
    before = Number(await pull.inputValue());
  }
  expect(before).toBeGreaterThan(100);
  await close();
});

it('slack takes notches, a cable too tight takes clearance', async () => {
  const { page, errors, close } = await browser.open();
  await wornIn(page);
  const more = page.getByRole('button', { name: 'Cable slack: more' });
  for (let i = 0; i < 10; i++) await more.click();
  // Teaching tables: slack +10 mm, 10.3 notches, and 0.8 by what gives.
  await expect.poll(() => key(page, 'notches')).toBeGreaterThan(11);
  await soonNear(() => key(page, 'notches'), 11.1, { abs: 0.1 }, 'notches');
  const tight = page.getByRole('button', { name: 'Cable too tight: more' });
  for (let i = 0; i < 3; i++) await tight.click();
  // 0.31 on its stop, 0.18 held 3 mm off it.
  const held = page.locator('.park-stops figure').nth(1);
  await expect.poll(() => held.innerText()).toContain('3 mm off: 0.18');
  await expect.poll(() => page.locator('.park-stops').innerText()).toContain('clearance 0.31');
  await expect.poll(() => page.locator('.note').innerText()).toContain('cable last');
  expect(errors).toEqual([]);
  await close();
});

it('one wheel out of order, and a hot drum', async () => {
  const { page, errors, shot, close } = await browser.open();
  await wornIn(page);
  await page.getByRole('button', { name: 'Both wheels' }).click();
  await page.getByLabel('One out of order').selectOption('stiff lever');
  const right = page.locator('.park-wheel').nth(1);
  // Teaching tables, van 20: 153 / 150 N·m at that wheel, the van 16.5 and 16.3 %.
  await soon(async () => {
    const [down = 0, up = 0] = figures(await right.innerText());
    near(down, 153, { rel: 0.025 }, 'down');
    near(up, 150, { rel: 0.025 }, 'up');
  });
  await soonNear(() => key(page, 'slope-down'), 16.5, { rel: 0.03 }, 'the van');
  await expect.poll(() => verdictOf(page)).toContain('Rolls on 20 %');
  await page.getByLabel('One out of order').selectOption('none');
  await page.getByRole('button', { name: 'Hot drum' }).click();
  const row = async (name: string) =>
    figures(await page.locator(`[data-hot="${name}"]`).innerText()).slice(2, 4);
  await soon(async () => {
    const [hot, cooled, notch] = [await row('hot'), await row('cooled'), await row('notch')];
    expect(hot[0]).toBe(300);
    expect(cooled[0]).toBeGreaterThan(400);
    expect(notch[0]).toBeLessThan(150);
  });
  await expect.poll(() => page.locator('[data-hot="notch"]').innerText()).toContain('rolls');
  await expect.poll(() => page.locator('[data-hot="cooled"]').innerText()).toContain('holds');
  await shot('park-hot');
  expect(errors).toEqual([]);
  await close();
});

for (const [name, width, height] of [
  ['laptop', 1366, 768],
  ['phone', 390, 844],
] as const) {
  it(`works on a ${name}: nothing hangs over, verdict and hand lever in view`, async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
    });
    await page.locator('takeup-app canvas').first().waitFor();
    if (name === 'phone') await page.getByLabel('Station').selectOption('park');
    else await page.keyboard.press('4');
    await page.locator('[data-verdict]').waitFor();
    await noWider(page, width);
    const pad = page.getByRole('slider', { name: 'Parking lever' });
    for (const part of [pad, page.locator('[data-verdict]')]) {
      const box = await placeOf(part);
      expect(box.y + box.height).toBeLessThanOrEqual(height);
    }
    const box = await placeOf(pad);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width * 0.75, box.y - 30);
    await page.mouse.up();
    // It stays where it was drawn to: three quarters of 600 N.
    await expect.poll(() => pad.getAttribute('aria-valuenow')).toBe('450');
    await page.getByRole('button', { name: 'Nose up' }).click();
    await expect.poll(() => verdictOf(page)).toContain('nose up');
    if (name === 'phone') {
      await thumbHigh(page.locator('main button:visible'));
    }
    await shot(`park-${name}`);
    expect(errors).toEqual([]);
    await close();
  });
}
