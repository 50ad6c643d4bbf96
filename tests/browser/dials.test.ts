import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import { BAR, balance, createRig, freshState, readingOf, readings, rest } from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import { near } from '../near.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soon, soonNear, thumbHigh } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Factor of the van with its file changed, at 40 bar. */
function factor(change: (scene: typeof quayVan) => void): number {
  const scene = structuredClone(quayVan);
  change(scene);
  const brake = mustRead(scene);
  const rig = createRig(brake);
  const state = freshState(brake);
  const i = balance(rig, state, { pressure: 40 * BAR, turning: 1 });
  return readingOf(readings(brake, state, i, rest(rig, state)), 'brakeFactor').value;
}

const handle = (page: Page, id: string) => page.locator(`[data-dial="${id}"]`);
const now = (page: Page) => async (): Promise<number> =>
  Number(await page.locator('.dials [data-factor]').innerText());
/** Two figures of the pin are told in tenths: where it is, mm. */
async function pinAt(page: Page): Promise<[number, number]> {
  const told = (await handle(page, 'front anchor').getAttribute('aria-valuetext')) ?? '';
  const [x = Number.NaN, y = Number.NaN] = told
    .split(/[,\s;]+/)
    .map((t) => Number(t.replace('−', '-')));
  return [x, y];
}

it('by keys alone: switched on, a pin stepped, the factor is the mechanics’; snapped back, undone, and all of it after a reload', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('u');
  const pedal = handle(page, 'pressure');
  await expect.poll(() => pedal.evaluate((e) => e.matches(':focus-visible'))).toBe(true);
  // The pedal's own step is a bar: 40 of them, four by ten.
  for (let n = 0; n < 4; n++) await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(() => page.locator('.dials .fac').innerText()).toMatch(/at 40 bar/);
  for (let n = 0; n < 10; n++) {
    if (await handle(page, 'front anchor').evaluate((e) => e.matches(':focus'))) break;
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Shift+ArrowUp');
  const moved = factor(({ shoes }) => {
    shoes.front.anchor.at = [-16.5, -73];
  });
  await soonNear(now(page), moved, { abs: 0.006 }, 'factor');
  expect(await page.locator('.dials li').innerText()).toMatch(/−16, −78\smm → −16\.5, −73\smm/);
  await expect
    .poll(() => page.locator('.stage-labels').textContent())
    .toMatch(/Front pin −16\.5, −73/);
  await shot('dials-laptop');
  await page.reload();
  await soonNear(now(page), moved, { abs: 0.006 }, 'after a reload');
  await handle(page, 'front anchor').focus();
  await page.keyboard.press('Backspace');
  await soonNear(
    now(page),
    factor(() => undefined),
    { abs: 0.006 },
    'snapped back',
  );
  await expect.poll(() => page.locator('.dials li').count()).toBe(0);
  await page.keyboard.press('Control+z');
  await soonNear(now(page), moved, { abs: 0.006 }, 'undone');
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('.dials li').count()).toBe(0);
  await page.keyboard.press('u');
  await expect.poll(() => page.locator('[data-dial]').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('by pointer: a pin goes where it is dragged, and stops where a rule refuses it; a double click brings it back', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('u');
  await handle(page, 'front anchor').waitFor();
  await page.getByRole('button', { name: 'Press it' }).click();
  const box = await handle(page, 'front anchor').boundingBox();
  if (!box) throw new Error('the pin has a handle');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - 8, y - 12, { steps: 4 });
  await expect.poll(async () => (await pinAt(page))[1]).toBeGreaterThan(-76);
  // The pointer comes in steps: where the pin is and what is told of it are read together.
  await soon(async () => {
    const at = await pinAt(page);
    const there = factor(({ shoes }) => {
      shoes.front.anchor.at = at;
    });
    near(await now(page)(), there, { abs: 0.006 }, 'while it is dragged');
    expect(await pinAt(page)).toEqual(at);
  });
  // The handle is where the pointer is.
  const follows = async (): Promise<number> => {
    const b = await handle(page, 'front anchor').boundingBox();
    return b ? Math.hypot(b.x + b.width / 2 - (x - 8), b.y + b.height / 2 - (y - 12)) : Number.NaN;
  };
  await soonNear(follows, 0, { abs: 2 }, 'px from the pointer');
  await page.mouse.move(x + 200, y - 12, { steps: 3 });
  await expect
    .poll(() => page.locator('.dials .refused').innerText())
    .toMatch(/No further: .*shoes\.front\.anchor\.at: found .*; allowed: .*left of the axle/);
  await page.mouse.up();
  expect((await pinAt(page))[0]).toBeLessThanOrEqual(0);
  await shot('dials-refused');
  const stopped = await handle(page, 'front anchor').boundingBox();
  if (!stopped) throw new Error('the pin has a handle');
  await page.mouse.dblclick(stopped.x + stopped.width / 2, stopped.y + stopped.height / 2);
  await expect.poll(() => pinAt(page)).toEqual([-16, -78]);
  expect(await page.locator('.dials .refused').innerText()).toBe('');
  await noWider(page, 1920);
  expect(errors).toEqual([]);
  await close();
});

it('on a phone: handles that a finger takes, friction dragged across; out of the way of hands', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
    hasTouch: true,
    path: '?station=apply',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('u');
  const friction = handle(page, 'shoes.lining.friction');
  await friction.waitFor();
  const boxes = await page.locator('[data-dial]').evaluateAll((all) =>
    all.map((e) => {
      const { x, y, width } = e.getBoundingClientRect();
      return [x + width / 2, y + width / 2, width] as const;
    }),
  );
  // No two of them under one finger: 24 px between middles at the least (WCAG 2.2, 2.5.8).
  boxes.forEach(([x, y], i) => {
    for (const [u, v] of boxes.slice(i + 1)) expect(Math.hypot(u - x, v - y)).toBeGreaterThan(24);
  });
  const box = await friction.boundingBox();
  if (!box) throw new Error('friction has a handle');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 23, y, { steps: 4 });
  await page.mouse.up();
  // Read together: the page may still be on the way.
  await soon(async () => {
    const told = await friction.getAttribute('aria-valuetext');
    expect(told).toMatch(/^0\.4\d.*yours 0\.38/);
    const mu = Number((await friction.getAttribute('aria-valuenow')) ?? '');
    const there = factor(({ shoes }) => {
      shoes.front.lining.friction = mu;
      shoes.rear.lining.friction = mu;
    });
    near(await now(page)(), there, { abs: 0.006 }, 'factor');
    expect(await friction.getAttribute('aria-valuetext')).toBe(told);
  });
  await thumbHigh(page.locator('.dials .btn'));
  await noWider(page, 390);
  await shot('dials-phone');
  await page.getByRole('button', { name: 'Hands' }).first().click();
  await expect.poll(() => page.locator('[data-dial]').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});
