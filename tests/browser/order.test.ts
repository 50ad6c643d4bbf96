import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, thumbHigh } from './soon.ts';

// Figures of the steps are those of tests/unit/order and tests/unit/study/in-order.test.ts, where their sums stand.

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const desk = { width: 1366, height: 768 };
const phone = { width: 390, height: 844 };
const openStep = (page: Page) => page.locator('.or-list .on').getAttribute('data-step');
const next = (page: Page) => page.locator('[data-next]');
const held = (page: Page, name: string) =>
  page.locator('.or-holds div', { hasText: name }).locator('dd');

it('by keyboard alone: opened, gone through both ways, a check ticked, kept over a reload, undone', async () => {
  const { page, errors, shot, close } = await browser.open({ viewport: desk });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('o');
  await page.getByRole('heading', { name: 'In order', exact: true }).waitFor();
  expect(await openStep(page)).toBe('before');
  await page.locator('.or-list .on button').focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press('ArrowDown');
  await expect.poll(() => openStep(page)).toBe('upper');
  await expect.poll(() => held(page, 'It holds').innerText()).toMatch(/^146/);
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => openStep(page)).toBe('shorten');
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => openStep(page)).toBe('upper');
  await shot('order-apart');

  await page.locator('.or-over [data-check="1"]').focus();
  await page.keyboard.press('Space');
  await expect.poll(() => page.locator('.or-over [data-check="1"]').isChecked()).toBe(true);
  await next(page).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => openStep(page)).toBe('clamp');

  await page.reload();
  await expect.poll(() => openStep(page)).toBe('clamp');
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect.poll(() => page.locator('.or-over [data-check="1"]').isChecked()).toBe(true);
  await page.keyboard.press('Control+z');
  await expect.poll(() => openStep(page)).toBe('clamp');
  expect(errors).toEqual([]);
  await close();
});

it('on a phone: from Fitting shoes part by part, to the end and on to setting and bedding in', async () => {
  const { page, errors, shot, close } = await browser.open({ viewport: phone, path: '' });
  let taps = 0;
  const tap = async (what: string): Promise<void> => {
    taps++;
    await page.locator(what).first().click();
  };
  await tap('[data-way="shoes"]');
  await tap('[data-to="order"]');
  await page.getByRole('heading', { name: 'In order', exact: true }).waitFor();
  // A tap of Start, and one more.
  expect(taps).toBe(2);
  await noWider(page, phone.width);
  await thumbHigh(
    page.locator('.or-ctl button, .or-pages button, .or-list button, .or-checks label'),
  );
  await tap('[data-page="together"]');
  await page.locator('.or-list [data-step="centre"]').waitFor();
  const steps = await page.locator('.or-list li').count();
  for (let i = 1; i < steps; i++) {
    await next(page).click();
    await noWider(page, phone.width);
  }
  await expect.poll(() => openStep(page)).toBe('centre');
  await shot('order-phone-together');
  await next(page).click();
  await page.locator('.or-list [data-step="turn"]').waitFor();
  for (let i = 0; i < 6; i++) await next(page).click();
  await expect.poll(() => openStep(page)).toBe('turn');
  await expect.poll(() => held(page, 'Wrong: over').innerText()).toMatch(/^111/);
  await next(page).click();
  await page.locator('.or-bed tbody tr').first().waitFor();
  await expect
    .poll(() => page.locator('.or-bed [data-km="15"] td').first().innerText())
    .toBe('42 / 29');
  await expect
    .poll(() => page.locator('.or-bed [data-km="800"] td').first().innerText())
    .toBe('71 / 50');
  await noWider(page, phone.width);
  await shot('order-phone-bed');
  expect(errors).toEqual([]);
  await close();
});

describe('backing off', () => {
  it('a stuck drum with a hole leads to it; five teeth back the second set comes free', async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: phone,
      path: '?station=drum-off&state=Second+set',
    });
    await page.getByRole('button', { name: 'Which is mine?' }).click();
    for (const given of ['studs', 'freely', 'a little', 'no change', 'there'])
      await page.locator(`.quiz [data-answer="${given}"]`).click();
    await page.locator('[data-to="order"]').click();
    await page.locator('.or-list [data-step="way-out"]').waitFor();
    for (let i = 0; i < 2; i++) await next(page).click();
    // 15 N of spring and what the loaded tooth's friction adds.
    await expect.poll(() => held(page, 'of it its spring').innerText()).toMatch(/^15/);
    await next(page).click();
    await expect.poll(() => held(page, 'Clearance').innerText()).toMatch(/^0\.15/);
    const back = page.getByRole('button', { name: 'One tooth back' });
    for (let i = 0; i < 5; i++) await back.click();
    await expect.poll(() => page.locator('.or-step').innerText()).toMatch(/5\s+comes free/);
    await shot('order-phone-back');
    expect(errors).toEqual([]);
    await close();
  });
});

it('other kinds have their own steps: heels on flats, a wedge', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: desk,
    path: '?station=order&brake=ferry-runabout',
  });
  await page.locator('.or-list [data-step="lower"]').waitFor();
  const ids = await page
    .locator('.or-list li')
    .evaluateAll((all) => all.map((li) => (li as HTMLElement).dataset['step']));
  expect(ids.indexOf('lower')).toBeLessThan(ids.indexOf('shoes'));
  expect(ids.indexOf('shoes')).toBeLessThan(ids.indexOf('upper'));
  await page.locator('.or-list [data-step="shorten"] button').click();
  await expect.poll(() => page.locator('.or-list .on').innerText()).toMatch(/push the wedge up/);
  await shot('order-flats');
  expect(errors).toEqual([]);
  await close();
});

it('asked for: the work in its order, a lesson, and figures that are judged', async () => {
  const { page, errors, close } = await browser.open({ viewport: phone, path: '?station=ask' });
  const field = page.locator('#ask-field');
  await field.fill('in what order do the parts come off');
  await page.locator('[data-entry="order:apart"] button').click();
  await page.getByRole('heading', { name: 'In order', exact: true }).waitFor();

  await page.locator('[data-to="ask"]').click();
  await field.fill('drum 183.4 mark 184');
  await page.locator('[data-entry="figures:sheet"] button').click();
  await page.locator('main[data-station="inspect"]').waitFor();
  await expect
    .poll(() =>
      page
        .locator('main input')
        .evaluateAll((all) => all.map((e) => (e as HTMLInputElement).value)),
    )
    .toContain('183.4 mm');

  await page.locator('[data-to="ask"]').click();
  await field.fill('lesson about the click');
  await page.locator('[data-entry="lesson:the-click"] button').click();
  await page.locator('main[data-station="lessons"]').waitFor();
  await page
    .locator('takeup-lesson')
    .getByText(/The click and the lost motion/)
    .first()
    .waitFor();
  expect(errors).toEqual([]);
  await close();
});
