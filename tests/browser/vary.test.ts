import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import { BAR, balance, createRig, freshState, readingOf, readings, rest } from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soon, soonNear, thumbHigh } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** A reading of the quay van with friction or bore otherwise, pressed at 40 bar. */
function told(key: string, change: (scene: typeof quayVan) => void): number {
  const scene = structuredClone(quayVan);
  change(scene);
  const brake = mustRead(scene);
  const rig = createRig(brake);
  const state = freshState(brake);
  const i = balance(rig, state, { pressure: 40 * BAR, turning: 1 });
  return readingOf(readings(brake, state, i, rest(rig, state)), key).value;
}
const friction = (mu: number) =>
  told('brakeFactor', ({ shoes }) => {
    shoes.front.lining.friction = mu;
    shoes.rear.lining.friction = mu;
  });

const plain = (text: string): number =>
  Number(text.replace(/[\u202f\u00a0]/g, '').replace('−', '-'));
/** A figure of what is read: as it is (0), or at the point on the stage (1). */
const figure = (page: Page, key: string, at: 0 | 1) => async (): Promise<number> =>
  plain(await page.locator(`.vary-read [data-key="${key}"] td`).nth(at).innerText());
const lines = (page: Page) => page.locator('takeup-curve path[stroke-width="3.5"]').count();

it('by keys: a point of the curve stands on the stage, and its figures are the mechanics’', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('v');
  const curve = page.locator('takeup-curve svg');
  await curve.waitFor();
  await expect.poll(() => lines(page)).toBe(1);
  await soonNear(figure(page, 'brakeFactor', 0), friction(0.38), { abs: 0.006 }, 'as it is');
  await expect
    .poll(() => page.locator('takeup-curve svg').textContent())
    .toMatch(/front shoe locks/);
  await curve.focus();
  // Ten fiftieths of 0.15 to 0.85.
  for (let n = 0; n < 10; n++) await page.keyboard.press('ArrowRight');
  await soonNear(figure(page, 'brakeFactor', 1), friction(0.52), { abs: 0.006 }, 'at the point');
  await expect.poll(() => page.locator('.asked.guest').innerText()).toMatch(/friction.*0\.52/);
  const box = { width: 1920, height: 1080 };
  await noWider(page, box.width);
  await shot('vary-desk');
  // What is drawn is that brake, pressed: the drag on its leading shoe is larger than the van's.
  await page.keyboard.press('End');
  await expect.poll(() => page.locator('.vary-read').innerText()).toMatch(/front shoe locks/);
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('.asked.guest').count()).toBe(0);
  await page.keyboard.press('Control+z');
  await page.locator('.asked.guest').waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('on a phone: ready-made questions, a range that cannot be, and all of it after a reload', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
    path: '?station=vary',
  });
  await page.getByRole('button', { name: 'Torque against bore' }).click();
  await expect.poll(() => lines(page)).toBe(1);
  const bore = (mm: number) =>
    told('torque', ({ cylinder }) => {
      cylinder.bore = mm;
    });
  await soonNear(figure(page, 'torque', 0), bore(19.05), { abs: 0.06 }, 'N·m');
  await expect
    .poll(() => page.locator('takeup-curve svg').textContent())
    .toMatch(/no such brake from 23\.4/);
  const to = page.getByLabel('To mm');
  await to.fill('-4 bananas');
  await to.blur();
  await expect
    .poll(() => page.locator('.undone').innerText())
    .toMatch(/To: found “-4 bananas”; allowed: a number from 0 to 100 mm/);
  await expect.poll(() => to.inputValue()).toBe('28.6');
  await to.fill('24');
  await to.blur();
  const curve = page.locator('takeup-curve svg');
  const box = await curve.boundingBox();
  if (!box) throw new Error('the curve has a place');
  await curve.click({ position: { x: box.width * 0.5, y: box.height * 0.5 } });
  await page.locator('.asked.guest').waitFor();
  const at = Number(await curve.getAttribute('aria-valuenow'));
  await soonNear(figure(page, 'torque', 1), bore(at), { abs: 0.06 }, 'N·m there');
  await noWider(page, 390);
  await thumbHigh(page.locator('.vary-ready .btn'));
  await shot('vary-phone');
  await page.reload();
  await expect.poll(() => page.getByLabel('To mm').inputValue()).toBe('24');
  await soonNear(figure(page, 'torque', 1), bore(at), { abs: 0.06 }, 'after a reload');
  expect(errors).toEqual([]);
  await close();
});

it('a size found by typing, a curve for each of three teeth, another brake beside, and the way in from a reading', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('t');
  await page.locator('takeup-readings tr[data-reading="pedalTravel"] .if:not(.wk)').click();
  await page.locator('main[data-station="vary"]').waitFor();
  await expect.poll(() => page.locator('.vary-read').innerText()).toMatch(/Pedal travel/);
  const pick = async (which: string, typed: string, name: RegExp): Promise<void> => {
    const picker = page.locator(which);
    await picker.locator('.now').click();
    await page.keyboard.type(typed);
    await picker.locator('li button').filter({ hasText: name }).first().click();
  };
  await pick('[data-pick="of"]', 'master bore', /Bore of the master/);
  await expect.poll(() => lines(page)).toBe(1);
  await pick('takeup-picker >> nth=2', 'tooth adj', /Tooth of the adjuster/);
  const values = page.getByLabel('Its values');
  await values.fill('0 1 2');
  await values.blur();
  await expect.poll(() => lines(page)).toBe(3);
  // Who types on while the page is still to be drawn keeps what is typed.
  await values.evaluate((field: HTMLInputElement) => {
    const put = (text: string, ...told: string[]): void => {
      field.value = text;
      for (const name of told) field.dispatchEvent(new Event(name, { bubbles: true }));
    };
    put('0 2', 'input', 'change');
    put('0 2 3 4', 'input');
  });
  await expect.poll(() => lines(page)).toBe(2);
  expect(await values.inputValue()).toBe('0 2 3 4');
  await values.fill('0 99');
  await values.blur();
  await expect
    .poll(() => page.locator('.undone').innerText())
    .toMatch(/found “99”; allowed: 1 to 6 whole numbers from 0 to 20/);
  await page.getByLabel('Beside it').selectOption('scene ferry-runabout');
  await expect.poll(() => lines(page)).toBe(2);
  await expect
    .poll(() => page.locator('takeup-curve svg').textContent())
    .toMatch(/Ferry runabout|runabout/i);
  await shot('vary-beside');
  expect(errors).toEqual([]);
  await close();
});

it('a map of two things: by keys, with its regions and figures, a point on the stage, after a reload too', async () => {
  const { page, errors, shot, close } = await browser.open({
    reducedMotion: 'reduce',
    path: '?station=vary',
  });
  await page.getByRole('button', { name: 'Map: torque over friction and bore' }).click();
  const map = page.locator('takeup-map svg');
  await map.waitFor();
  await expect.poll(() => map.getAttribute('aria-busy')).toBe('false');
  const words = await map.textContent();
  for (const told of ['no such brake', 'front shoe locks', 'Bore, mm'])
    expect(words).toContain(told);
  expect(await page.locator('takeup-map [data-level] .line').count()).toBeGreaterThan(5);
  await map.focus();
  // Five fiftieths of 0.15 to 0.85, and of 15 to 25 mm downwards.
  for (let n = 0; n < 5; n++) await page.keyboard.press('ArrowRight');
  for (let n = 0; n < 5; n++) await page.keyboard.press('ArrowDown');
  const torque = told('torque', ({ cylinder, shoes }) => {
    cylinder.bore = 18.05;
    shoes.front.lining.friction = 0.45;
    shoes.rear.lining.friction = 0.45;
  });
  await soonNear(figure(page, 'torque', 1), torque, { abs: 0.06 }, 'N·m');
  await shot('vary-map');
  await page.reload();
  await map.waitFor();
  await soonNear(figure(page, 'torque', 1), torque, { abs: 0.06 }, 'N·m');
  await page.getByRole('button', { name: 'A curve for each value' }).click();
  await page.locator('takeup-curve svg').waitFor();
  await expect.poll(() => page.locator('.asked.guest').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('one tap from a line of Inspect, from a reading and from a size of New shoes; a refused word is offered names', async () => {
  const { page, errors, close } = await browser.open({
    reducedMotion: 'reduce',
    viewport: { width: 1366, height: 768 },
    path: '?station=inspect',
  });
  const varied = () => page.locator('[data-pick="of"] .now').innerText();
  await page.locator('tr[data-line="tooth"] .whatif').click();
  await expect.poll(varied).toMatch(/Tooth of the adjuster/);
  await page.goto(`${browser.address}?station=new-shoes`);
  await page.locator('.rd [data-key="bore"] .whatif').click();
  await expect.poll(varied).toMatch(/Diameter of the drum/);
  await page.goto(`${browser.address}?station=new-shoes`);
  await page.getByRole('button', { name: /^Lining thick ?: what if/ }).click();
  await expect.poll(varied).toMatch(/Thickness when new/);
  await page.getByRole('button', { name: /^Own formula/ }).click();
  await page.locator('takeup-own-formula input.text').fill('2 * torqe');
  await page.getByRole('button', { name: 'torque Brake torque' }).click();
  await expect
    .poll(() => page.locator('takeup-own-formula input.text').inputValue())
    .toBe('2 * torque');
  expect(errors).toEqual([]);
  await close();
});

it('pickers by keys alone: found by typing, gone through by arrows, chosen by Enter; what makes room is said', async () => {
  const { page, errors, close } = await browser.open({
    reducedMotion: 'reduce',
    path: '?station=vary',
  });
  const now = (which: string) => page.locator(`[data-pick="${which}"] .now`);
  const focused = (which: string) => () =>
    now(which).evaluate((e) => (e.getRootNode() as ShadowRoot).activeElement === e);
  await now('of').focus();
  await page.keyboard.press('ArrowDown');
  await page.locator('[data-pick="of"] input').waitFor();
  await page.keyboard.type('bore whee');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Enter');
  await expect.poll(() => now('of').innerText()).toMatch(/Bore/);
  await expect.poll(focused('of')).toBe(true);
  await now('read').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('torq');
  await page.keyboard.press('ArrowDown');
  // A letter on the list goes on in the field, and opens no station.
  await page.keyboard.type('ue');
  await expect.poll(() => page.locator('[data-pick="read"] input').inputValue()).toBe('torque');
  await page.keyboard.press('Enter');
  await expect.poll(() => now('read').innerText()).toMatch(/torque/i);
  await expect
    .poll(() => page.locator('.undone').innerText())
    .toMatch(/leading.* made room: 3 things are read at most/i);
  expect(await page.locator('main').getAttribute('data-station')).toBe('vary');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('[data-pick="read"] input').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('at 1366 no two texts of a map lie on each other, and what “no such brake” means is told', async () => {
  const { page, errors, shot, close } = await browser.open({
    reducedMotion: 'reduce',
    viewport: { width: 1366, height: 768 },
    path: '?station=vary',
  });
  await page.getByRole('button', { name: 'Map: torque over friction and bore' }).click();
  const map = page.locator('takeup-map svg');
  await map.waitFor();
  await expect.poll(() => map.getAttribute('aria-busy')).toBe('false');
  await expect.poll(() => page.locator('[data-none]').innerText()).toMatch(/Allowed is, of /);
  const laid = await map.evaluate((svg) => {
    const all = [...svg.querySelectorAll('text.figure, text.bad, text.quiet, text.now')].map(
      (t) => ({
        text: t.textContent,
        box: t.getBoundingClientRect(),
      }),
    );
    const out: string[] = [];
    all.forEach((a, i) => {
      for (const b of all.slice(i + 1)) {
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        // Boxes of letters are higher than the letters by a quarter.
        if (across > 1 && down > 5) out.push(`${a.text} on ${b.text}`);
      }
    });
    return { out, figures: svg.querySelectorAll('text.figure').length };
  });
  expect(laid.out).toEqual([]);
  expect(laid.figures).toBeGreaterThan(3);
  await shot('vary-map-laptop');
  expect(errors).toEqual([]);
  await close();
});

it('on the wall the curve has the wall’s sizes, and no word lies on another', async () => {
  const { page, errors, shot, close } = await browser.open({
    path: '?station=vary',
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-curve svg').waitFor();
  await page.keyboard.press('w');
  const texts = page.locator('.wall takeup-curve svg text');
  for (const [width, height] of [
    [1920, 1080],
    [1366, 768],
    [1280, 800],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    const u = Math.min(width / 1920, height / 1080);
    await soon(async () => {
      const all = await texts.evaluateAll((found) =>
        found.map((e) => {
          const { left, top, right, bottom } = e.getBoundingClientRect();
          // A turned text has its scale in both.
          const { a = 0, b = 0 } = (e as SVGTextElement).getScreenCTM() ?? {};
          const times = Math.hypot(a, b);
          const size = Number.parseFloat(getComputedStyle(e).fontSize) * times;
          // Letters fill two thirds of their line's height.
          const cut = (bottom - top) / 6;
          return { text: e.textContent, left, top: top + cut, right, bottom: bottom - cut, size };
        }),
      );
      expect(all.length, String(width)).toBeGreaterThan(8);
      expect(Math.min(...all.map((t) => t.size)), String(width)).toBeGreaterThanOrEqual(
        34 * u - 0.1,
      );
      const hits = all.flatMap((a, i) =>
        all
          .slice(i + 1)
          .filter(
            (b) => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom,
          )
          .map((b) => `${a.text} on ${b.text}`),
      );
      expect(hits, String(width)).toEqual([]);
      const out = all.filter((t) => t.left < 0 || t.bottom > height || t.right > width);
      expect(out, String(width)).toEqual([]);
    });
    await shot(`vary-wall-${width}`);
  }
  await page.getByRole('button', { name: 'Brake', exact: true }).click();
  await expect.poll(() => texts.count()).toBe(0);
  await page.getByRole('button', { name: 'Curves', exact: true }).click();
  await texts.first().waitFor();
  expect(errors).toEqual([]);
  await close();
});
