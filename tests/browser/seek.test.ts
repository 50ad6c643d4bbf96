import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import { Vary } from '../../sim/index.ts';
import { baseOf } from '../vary-base.ts';
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
      .split('\n')[0]
      ?.replace(/[\u202f\u00a0]/g, '')
      .replace('−', '-'),
  );
const vary = new Vary(baseOf(quayVan));
const torque = (bar: number): number =>
  vary.point([['pressure', bar]], ['torque']).values[0] as number;
/** Pressure at which a torque is reached, by halving single presses. */
function where(goal: number): number {
  let [low, high] = [10, 80];
  for (let n = 0; n < 30; n++) {
    const middle = (low + high) / 2;
    if (torque(middle) < goal) low = middle;
    else high = middle;
  }
  return low;
}

async function pick(page: Page, which: string, typed: string, what: RegExp): Promise<void> {
  const picker = page.locator(`[data-pick="${which}"]`);
  await picker.locator('.now').press('Enter');
  await page.keyboard.type(typed);
  await picker.locator('li button').filter({ hasText: what }).first().press('Enter');
}

async function put(page: Page, row: string, name: RegExp, value: string): Promise<void> {
  const field = page.locator(row).getByLabel(name);
  await field.fill(value);
  await field.press('Enter');
}

for (const [name, width, height] of [
  ['desk', 1920, 1080],
  ['phone', 390, 844],
] as const) {
  it(`by keys alone: a size, a wish, the band where it does, the brake of it on the stage, kept and undone, ${name}`, async () => {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
      path: '?station=vary',
    });
    await page.getByRole('button', { name: 'Which sizes do it?' }).press('Enter');
    const go = page.locator('.seek-go');
    await expect.poll(() => go.isDisabled()).toBe(true);
    await pick(page, 'free', 'line pressure', /Line pressure/);
    await pick(page, 'wish', 'brake torque', /Brake torque/);
    await put(page, '[data-free="pressure"]', /^From/, '10');
    await put(page, '[data-free="pressure"]', /^To/, '80');
    await put(page, '[data-ask="torque"]', /^At least/, '200');
    await put(page, '[data-ask="torque"]', /^At most/, 'much');
    await expect
      .poll(() => page.locator('.undone').innerText())
      .toMatch(/At most: found “much”; allowed: a number/);
    await put(page, '[data-ask="torque"]', /^At most/, '240');
    await go.press('Enter');
    await expect.poll(() => go.innerText()).toBe('Look once more');
    const reach = (n: number) => async (): Promise<number> =>
      plain(await page.locator('[data-reach="pressure"] td').nth(n).innerText());
    await soonNear(reach(0), where(200), { abs: 0.1 }, 'bar from');
    await soonNear(reach(1), where(240), { abs: 0.1 }, 'bar to');
    await expect.poll(() => page.locator('takeup-region [data-band]').count()).toBe(1);
    await page
      .getByRole('button', { name: 'Put the one with most room on the stage' })
      .press('Enter');
    await page.locator('.asked.guest').waitFor();
    const stage = async (): Promise<number> =>
      plain(await page.locator('[data-wish="torque"] td.after').innerText());
    // As far from one end as from the other, in shares of each.
    await soonNear(stage, (2 * 200 * 240) / 440, { abs: 1.5 }, 'N·m on the stage');
    await noWider(page, width);
    if (name === 'phone') await thumbHigh(page.locator('.seek-ready, .seek-go'));
    await shot(`seek-${name}`);
    const region = page.locator('takeup-region svg');
    await region.focus();
    // Sixteen fiftieths of 70 bar more: no longer as wished.
    for (let n = 0; n < 16; n++) await page.keyboard.press('ArrowRight');
    await expect
      .poll(() => page.locator('[data-wish="torque"] td.after').innerText())
      .toMatch(/not as wished/);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.asked.guest').count()).toBe(0);
    // The question is in the record, its answer asked for again.
    await page.reload();
    await expect
      .poll(() =>
        page
          .locator('[data-ask="torque"]')
          .getByLabel(/^At most/)
          .inputValue(),
      )
      .toBe('240');
    await expect.poll(() => go.innerText()).toBe('Look for them');
    await put(page, '[data-ask="torque"]', /^At least/, '900');
    await put(page, '[data-ask="torque"]', /^At most/, '');
    await go.press('Enter');
    await expect
      .poll(() => page.locator('[data-in-the-way]').innerText())
      .toMatch(/In the way: line pressure at its most, 80 bar/);
    expect(errors).toEqual([]);
    await close();
  });
}

/** Counts the workers that are ended in the very task that hears a press: no frame, message or timer lies between. */
function countEndedAtOnce(): void {
  const { terminate } = Worker.prototype;
  const counts = { now: false, ended: 0 };
  Object.assign(window, { counts });
  addEventListener(
    'click',
    () => {
      counts.now = true;
      setTimeout(() => {
        counts.now = false;
      });
    },
    { capture: true },
  );
  Worker.prototype.terminate = function (this: Worker): void {
    if (counts.now) counts.ended++;
    terminate.call(this);
  };
}

it('ready made, two sizes: stopped at once, no worker stays, and another question answers anew', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    reducedMotion: 'reduce',
    path: '?station=vary',
    prepare: countEndedAtOnce,
  });
  await page.getByRole('button', { name: 'Which sizes do it?' }).click();
  const before = page.workers().length;
  await page.getByRole('button', { name: /^Which bore and arm/ }).click();
  const go = page.locator('.seek-go');
  await expect.poll(() => page.workers().length).toBe(before + 1);
  await expect.poll(() => page.locator('.seek-far').innerText()).toMatch(/brakes worked out/);
  const ended = (): Promise<number> =>
    page.evaluate(() => (window as unknown as { counts: { ended: number } }).counts.ended);
  const endedBefore = await ended();
  await go.click();
  await expect.poll(() => go.innerText()).toBe('Look once more');
  expect(await ended()).toBe(endedBefore + 1);
  // What worked is ended, not asked to end: nothing can come of it any more.
  await expect.poll(() => page.workers().length).toBe(before);
  expect(await page.locator('.seek-far').innerText()).toMatch(/stopped/);
  await expect.poll(() => page.getByLabel('Pressure bar').inputValue()).toMatch(/^1\d/);
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('[data-free]').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});
