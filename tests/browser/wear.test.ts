import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { near } from '../near.ts';
import { type OpenBrowser, type Opened, openBrowser } from './open.ts';
import { frames, noWider, placeOf, soon, soonNear, steady, thumbHigh } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

type Options = Parameters<OpenBrowser['open']>[0];

async function wearStation(options: Options = {}): Promise<Opened> {
  const opened = await browser.open({ reducedMotion: 'reduce', ...options });
  await opened.page.locator('takeup-app canvas').first().waitFor();
  await opened.page.keyboard.press('2');
  await opened.page.getByRole('heading', { name: 'Wear' }).waitFor();
  return opened;
}

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: true });
const tooth = (page: Page): Promise<string> => page.locator('[data-tooth]').innerText();
const slider = (page: Page) => page.getByRole('slider', { name: /Moment of the run/ });
const said = async (page: Page): Promise<string> =>
  ((await slider(page).getAttribute('aria-valuetext')) ?? '').replace(/[\u202f\u00a0]/g, '');

async function distance(page: Page): Promise<number> {
  const text = await page.locator('[data-key="distance"]').innerText();
  return Number(text.replace(/[^\d.]/g, ''));
}

async function toTheLimit(page: Page): Promise<void> {
  await button(page, 'to the limit').click();
  await button(page, 'Wear on').click();
  await page.getByText('Ended: a lining is at its limit.').waitFor();
}

it('drives a life to its limit in a worker; every event leads back to its moment', async () => {
  const { page, errors, shot, close } = await wearStation();
  const workers: string[] = [];
  page.on('worker', (w) => workers.push(w.url()));
  await toTheLimit(page);
  expect(workers.map((url) => /life-worker/.test(url))).toEqual([true]);
  // Teaching tables: lining at its limit at 59 500 km, tooth 15 of 20.
  await soonNear(() => distance(page), 59500, { rel: 0.005 }, 'distance to the limit');
  await expect.poll(() => tooth(page)).toBe('15');
  await expect.poll(() => page.locator('[data-mark]').count()).toBe(15);
  await shot('wear-limit');

  await button(page, /^Events/).click();
  const list = page.getByRole('region', { name: 'Events' }).getByRole('button');
  await expect
    .poll(() => list.first().innerText())
    .toMatch(/Front lining at its limit of 1.5 mm at/);
  const ninth = list.filter({ hasText: /^Click: tooth 9 at/ });
  await expect.poll(() => ninth.innerText()).toMatch(/at [\d\s\u202f]+ km/);
  const told = Number(
    /at ([\d\s\u202f]+) km/.exec(await ninth.innerText())?.[1]?.replace(/\D/g, ''),
  );
  await ninth.click();
  await expect.poll(() => tooth(page)).toBe('9');
  await expect.poll(() => ninth.getAttribute('aria-current')).toBe('true');
  await button(page, 'Readings').click();
  await expect.poll(() => distance(page)).toBe(told);
  // Driving on from there forgets what came after.
  await button(page, '100 km').click();
  await button(page, 'Wear on from here').click();
  await expect.poll(() => distance(page)).toBe(told + 100);
  await expect.poll(() => page.locator('[data-mark]').count()).toBe(9);
  expect(errors).toEqual([]);
  await close();
});

it('goes along the run by keys alone: rows, events, both ends', async () => {
  const { page, errors, close } = await wearStation();
  await button(page, '1\u202f000 km').click();
  for (let i = 1; i <= 4; i++) {
    await button(page, 'Wear on').click();
    await expect.poll(() => distance(page)).toBe(1000 * i);
  }
  await slider(page).focus();
  await page.keyboard.press('Home');
  await expect.poll(() => said(page)).toMatch(/^0 km, clearance 0\.30 mm, tooth 0$/);
  await expect.poll(() => distance(page)).toBe(0);
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => slider(page).getAttribute('aria-valuenow')).toBe('1');
  await page.keyboard.press('PageDown');
  await expect.poll(() => said(page)).toMatch(/tooth 1$/);
  await expect.poll(() => tooth(page)).toBe('1');
  // One row back is the same place, before the tooth dropped in: the gap was wider.
  const gap = async (): Promise<number> => Number(/clearance ([\d.]+)/.exec(await said(page))?.[1]);
  const after = await gap();
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => said(page)).toMatch(/tooth 0$/);
  await soonNear(
    async () => (await gap()) - after,
    0.15,
    { abs: 0.012 },
    'a tooth is worth 0.15 mm at the linings',
  );
  await page.keyboard.press('End');
  await expect.poll(() => distance(page)).toBe(4000);
  expect(errors).toEqual([]);
  await close();
});

it('stops a running stretch where it is shown, and the page stays alive meanwhile', async () => {
  const { page, errors, close } = await wearStation({ reducedMotion: 'no-preference' });
  await button(page, 'to the limit').click();
  await button(page, 'Wear on').click();
  const stop = page.getByRole('button', { name: /^Stop here/ });
  await stop.waitFor();
  // The page draws on while the stretch runs: three frames, and it is not over.
  await frames(page, 3);
  expect(await stop.isVisible()).toBe(true);
  await expect.poll(() => distance(page)).toBeGreaterThan(200);
  await stop.click();
  await button(page, 'Wear on').waitFor();
  const at = await steady(page, () => distance(page));
  expect(at).toBeLessThan(59000);
  // The run ends where the stage stands: nothing is left beyond it.
  await slider(page).focus();
  await page.keyboard.press('End');
  await expect.poll(() => distance(page)).toBe(at);
  expect(errors).toEqual([]);
  await close();
});

it('switches the kind of adjuster: its parts, its counter, its words', async () => {
  const { page, errors, shot, close } = await wearStation();
  await button(page, 'Set up').click();
  const kind = page.getByLabel('Adjuster', { exact: true });
  await kind.selectOption('screw strut');
  await expect.poll(() => page.locator('main').innerText()).toMatch(/turns the star wheel: click/);
  await expect.poll(() => page.locator('.card').innerText()).toMatch(/of 194/);
  await shot('wear-screw');
  await kind.selectOption('wedge');
  await expect
    .poll(() => page.locator('.card').innerText())
    .toMatch(/Strut longer by[\s\S]*of 9\.7 mm/);
  await button(page, 'On, above 120 °C').click();
  await expect
    .poll(() => button(page, 'On, above 120 °C').getAttribute('aria-pressed'))
    .toBe('true');
  await shot('wear-wedge');
  await kind.selectOption('toothed lever');
  await expect.poll(() => page.locator('.card').innerText()).toMatch(/of 20/);
  expect(errors).toEqual([]);
  await close();
});

it('goes to a place and to an event of the run by pointing at the chart', async () => {
  const { page, errors, close } = await wearStation();
  await toTheLimit(page);
  const box = await placeOf(slider(page));
  // The axis runs from 0 to 65 000 km between the titles and the words at its end.
  const x = (km: number): number => box.x + 150 + ((box.width - 150 - 164) * km) / 65000;
  await page.mouse.move(x(20000), box.y + 120);
  await page.mouse.down();
  await expect.poll(() => said(page)).toMatch(/^(19|20)\d{3} km/);
  await page.mouse.move(x(40000), box.y + 120, { steps: 4 });
  await expect.poll(() => said(page)).toMatch(/^(39|40)\d{3} km/);
  await page.mouse.up();
  // Teaching tables: the first click at 3 000 km, then one in 4 000: the third near 11 000.
  await page.mouse.click(x(10870), box.y + 20);
  await expect.poll(() => tooth(page)).toBe('3');
  await expect.poll(() => said(page)).toMatch(/^10\d{3} km, clearance 0\.27 mm, tooth 3$/);
  expect(errors).toEqual([]);
  await close();
});

it('presses at the foot of a pass: two steps, drags in the morning; a hot lock prevents it', async () => {
  const { page, errors, shot, close } = await wearStation();
  await button(page, 'Set up').click();
  await page.getByLabel('Start from').selectOption('Just clicked');
  await expect.poll(() => tooth(page)).toBe('10');
  const pass = async (): Promise<void> => {
    await button(page, 'Hot press').click();
    await button(page, '16 %, 4 km').click();
    await button(page, 'Drive down, press at the foot, let it cool').click();
    await page.locator('[data-verdict]').waitFor();
  };
  await pass();
  // Teaching tables: at +287 K two clicks, tooth 12, −0.03 mm cold.
  await expect.poll(() => tooth(page)).toBe('12');
  const verdict = page.locator('[data-verdict]');
  await expect
    .poll(() => verdict.innerText())
    .toMatch(/Drags cold[\s\S]*0\.03 mm inside the cold drum/);
  const part = async (key: string): Promise<number> => {
    const text = await page.locator(`[data-part="${key}"] td`).innerText();
    return Number(text.replace('\u2212', '-'));
  };
  const keys = ['gap', 'linings', 'drum', 'takenUp', 'growth', 'elasticity'];
  await soon(async () => {
    let sum = 0;
    for (const key of keys) sum += await part(key);
    near(sum, await part('sensed'), { abs: 0.031 }, 'the parts as written add up');
  });
  await shot('wear-hot-press');
  await button(page, 'Before').click();
  await expect.poll(() => tooth(page)).toBe('10');

  await button(page, 'Set up').click();
  await button(page, 'On, above 120 °C').click();
  await pass();
  await expect.poll(() => verdict.innerText()).toMatch(/Free cold[\s\S]*0\.2[67] mm/);
  await expect
    .poll(() => page.locator('.hotdid').innerText())
    .toMatch(/the hot lock held it: no step/);
  expect(errors).toEqual([]);
  await close();
});

it('shows no bare forecast: a band and what it rests on', async () => {
  const { page, close } = await wearStation();
  const cell = page.locator('[data-key="forecast"]');
  await expect.poll(() => cell.innerText()).toMatch(/None yet/);
  await button(page, 'Set up').click();
  await page.getByLabel('Start from').selectOption('Near the limit');
  await button(page, 'Readings').click();
  await expect.poll(() => distance(page)).toBe(50000);
  await soon(async () => {
    const text = (await cell.innerText()).replace(/[\u202f\u00a0]/g, '');
    const [, left, low, high] = (/about (\d+)\s*km\s*band (\d+) to (\d+) km/.exec(text) ?? []).map(
      Number,
    );
    // Teaching tables: 9 500 km, band 4 800 to 19 000.
    near(left ?? Number.NaN, 9500, { rel: 0.12 }, 'distance left');
    near(low ?? Number.NaN, (left ?? 0) / 2, { abs: 100 });
    near(high ?? Number.NaN, 2 * (left ?? 0), { abs: 200 });
    expect(text).toMatch(/mm lost in 50000 km .* the rate may be half or twice that/);
  });
  await close();
});

it('fits a phone: every control of the station is a thumb wide', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByLabel('Station').selectOption('wear');
  await button(page, 'to next click').click();
  await button(page, 'Wear on').click();
  await expect.poll(() => tooth(page)).toBe('1');
  for (const tab of ['Readings', /^Events/, 'Set up']) {
    await button(page, tab).click();
    await expect.poll(() => button(page, tab).getAttribute('aria-pressed')).toBe('true');
    await thumbHigh(page.locator('aside').locator('button, select'));
  }
  await shot('wear-phone-set-up');
  await noWider(page, 390);
  expect(errors).toEqual([]);
  await close();
});

it('drives a road that was changed: twice the stops, half the distance to a click', async () => {
  const { page, errors, shot, close } = await wearStation();
  await button(page, 'Set up').click();
  await page.getByText('Change the road’s stops').click();
  const stops = page.getByLabel('Stops, per km');
  await stops.fill('99');
  await stops.press('Tab');
  await expect
    .poll(() => page.getByRole('alert').innerText())
    .toBe('stop, stops: found “99”; allowed: 0.01 to 50 per km.');
  await expect.poll(() => stops.inputValue()).toBe('99');
  await stops.fill('2');
  await stops.press('Tab');
  await expect.poll(() => page.getByRole('alert').count()).toBe(0);
  await shot('wear-road');
  await button(page, 'to next click').click();
  await button(page, 'Wear on').click();
  await expect.poll(() => tooth(page)).toBe('1');
  // Teaching tables: first click at 3 000 km with one stop a km; wear follows the energy (Archard).
  await button(page, 'Readings').click();
  await soonNear(() => distance(page), 1500, { abs: 50 }, 'first click');
  await button(page, 'Set up').click();
  await page.getByText('Change the road’s stops').click();
  await button(page, 'As the road has it').click();
  await expect.poll(() => stops.inputValue()).toBe('1');
  expect(errors).toEqual([]);
  await close();
});

it('lets the parking pull alone turn a screw strut', async () => {
  const { page, errors, close } = await wearStation();
  await button(page, 'Set up').click();
  await page.getByLabel('Adjuster', { exact: true }).selectOption('screw strut');
  await page.getByLabel('Turned by').selectOption('parking pull');
  await button(page, 'Readings').click();
  // This road never parks: nothing turns it, and the gap grows.
  await button(page, '1\u202f000 km').click();
  await button(page, 'Wear on').click();
  await expect.poll(() => distance(page)).toBe(1000);
  await expect.poll(() => tooth(page)).toBe('0');
  // A wedge has no such choice: the pedal moves it, here as far as the gap that has grown.
  await button(page, 'Set up').click();
  await page.getByLabel('Adjuster', { exact: true }).selectOption('wedge');
  await button(page, 'Readings').click();
  await button(page, 'Wear on').click();
  await expect.poll(() => distance(page)).toBe(2000);
  await expect.poll(async () => Number(await tooth(page))).toBeGreaterThan(0);
  expect(errors).toEqual([]);
  await close();
});
