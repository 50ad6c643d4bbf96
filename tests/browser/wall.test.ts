import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { soon } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('shows the class nothing small: no text under 34 px on the wall, and Escape leads back', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('w');
  await page.locator('main.wall').waitFor();
  await page.keyboard.down(' ');
  const factor = page.locator('[data-key="brakeFactor"]');
  await expect.poll(() => factor.innerText()).toMatch(/2\.\d\d/);
  // Rule of the wall: 34 px at least for whatever is meant for the class.
  const texts = () =>
    page.evaluate(() => {
      const sizes: number[] = [];
      const walk = (root: ParentNode): void => {
        for (const e of root.querySelectorAll('*')) {
          if (e.shadowRoot) walk(e.shadowRoot);
          const own = [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim());
          const box = e.getBoundingClientRect();
          if (own && box.width > 2 && box.height > 2 && e.tagName !== 'STYLE')
            sizes.push(Number.parseFloat(getComputedStyle(e).fontSize));
        }
      };
      walk(document.body);
      return { least: Math.min(...sizes), count: sizes.length };
    });
  await soon(async () => {
    const { least, count } = await texts();
    expect(count).toBeGreaterThan(10);
    expect(least).toBeGreaterThanOrEqual(34);
  });
  await shot('wall-apply');
  await page.keyboard.up(' ');
  await page.keyboard.press('2');
  await expect.poll(() => page.locator('[data-key="distance"]').innerText()).toContain('km');
  await shot('wall-wear');
  await page.keyboard.press('Escape');
  await page.locator('main.work').waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('has room for its words and buttons in every station where a guest stands, on every projector', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('7');
  await page.getByLabel('Fault', { exact: true }).selectOption('stuck piston');
  await page.getByLabel('Guest on the bench').waitFor();
  await page.keyboard.press('w');
  const leave = page.getByRole('button', { name: 'Leave the wall' });
  await leave.waitFor();
  for (const [width, height] of [
    [1920, 1080],
    [1366, 768],
    [1280, 800],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    for (const [key, id] of [
      ['7', 'faults'],
      ['1', 'apply'],
      ['2', 'wear'],
      ['3', 'drum-off'],
      ['4', 'park'],
    ] as const) {
      await page.keyboard.press(key);
      await page.locator(`main.wall[data-station="${id}"]`).waitFor();
      await soon(async () => {
        const box = await leave.boundingBox();
        expect((box?.y ?? height) + (box?.height ?? 0), `${width}, station ${key}`).toBeLessThan(
          height,
        );
        const over = await page
          .locator('.wall .words')
          .evaluate((e) => [e.scrollHeight - e.clientHeight, e.scrollWidth - e.clientWidth]);
        expect(over, `${width}, station ${key}`).toEqual([0, 0]);
      });
    }
  }
  expect(errors).toEqual([]);
  await close();
});

it('turns to a right-hand wheel: forward is clockwise, the leading shoe on the right', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('button', { name: 'Right-hand' }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  const pedal = page.locator('takeup-pedal [role="slider"]');
  await pedal.press('PageUp');
  const leading = page.locator('takeup-stage text', { hasText: 'Leading shoe' });
  await leading.waitFor();
  await expect.poll(async () => (await leading.boundingBox())?.x ?? 0).toBeGreaterThan(700);
  await shot('right-hand');
  await pedal.press('Home');
  expect(errors).toEqual([]);
  await close();
});

const STATIONS = [
  ['1', 'apply'],
  ['3', 'drum-off'],
  ['4', 'park'],
  ['5', 'inspect'],
  ['6', 'new-shoes'],
  ['7', 'faults'],
] as const;

/** px a mm at which the brake is drawn. */
const scaleOf = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const stage = document
      .querySelector('takeup-app')
      ?.shadowRoot?.querySelector('takeup-stage') as unknown as {
      drawings: readonly { view: { scale: number } }[];
    };
    return stage.drawings[0]?.view.scale ?? 0;
  });

it('shows the brake 1.3 to 1.4 times as large as the desk does, in every station', async () => {
  for (const [width, height] of [
    [1920, 1080],
    [1366, 768],
  ] as const) {
    const { page, errors, shot, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
      path: '?station=apply&state=Second+set',
    });
    await page.locator('takeup-app canvas').first().waitFor();
    await expect.poll(() => scaleOf(page)).toBeGreaterThan(1);
    const desk = await scaleOf(page);
    await page.keyboard.press('w');
    for (const [key, id] of STATIONS) {
      await page.keyboard.press(key);
      await page.locator(`main.wall[data-station="${id}"]`).waitFor();
      await soon(async () => {
        const times = (await scaleOf(page)) / desk;
        expect(times, `${id} at ${width}`).toBeGreaterThanOrEqual(1.3);
        expect(times, `${id} at ${width}`).toBeLessThanOrEqual(1.42);
        const over = await page
          .locator('.wall .words')
          .evaluate((e) => [e.scrollHeight - e.clientHeight, e.scrollWidth - e.clientWidth]);
        expect(over, `${id} at ${width}`).toEqual([0, 0]);
      });
      await shot(`wall-${id}-${width}`);
    }
    expect(errors).toEqual([]);
    await close();
  }
});

it('works by its large buttons, by keys, and by the four of a remote; letters can be switched off', async () => {
  const { page, errors, shot, close } = await browser.open({
    reducedMotion: 'reduce',
    path: '?station=apply&state=Second+set',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  const ask = (what: string) =>
    page.evaluate(`document.querySelector('takeup-app').session.${what}`);
  await page.keyboard.press('w');
  const acts = page.locator('.wall .act');
  await expect.poll(() => acts.allInnerTexts()).toEqual(['Press\nSpace', 'Turn round\nB']);
  await page.keyboard.press('PageDown');
  await expect.poll(() => ask('pedal')).toBe(40);
  await page.keyboard.press('PageDown');
  await expect.poll(() => ask('pedal')).toBe(0);
  await page.keyboard.press('b');
  await expect.poll(() => ask('turning')).toBe(-1);
  await page.keyboard.press('PageUp');
  await expect.poll(() => ask('turning')).toBe(1);
  for (const [key, layer] of [
    ['u', 'fan'],
    ['p', 'comb'],
    ['j', 'forces'],
    ['y', 'ghost'],
  ]) {
    const before = await ask(`layers.${layer}`);
    await page.keyboard.press(key as string);
    await expect.poll(() => ask(`layers.${layer}`)).toBe(!before);
    await page.keyboard.press(key as string);
  }
  // The loupe: its bar tells how far a press came.
  await page.keyboard.press('z');
  await page.locator('.wall takeup-press').waitFor();
  await page.keyboard.press('z');
  // G keeps the moment, as at the desk.
  expect(await ask('moment.parts.compare.kept')).toBe(null);
  await page.keyboard.press('g');
  await expect.poll(() => ask('moment.parts.compare.kept === null')).toBe(false);
  await page.keyboard.press('Control+z');

  await page.keyboard.press('3');
  await expect.poll(() => acts.first().innerText()).toContain('Pull the drum');
  await page.keyboard.press('Space');
  await expect.poll(() => page.locator('.wall .says').innerText()).toContain('held by the lip');
  const tooth = (await ask('state.tooth')) as number;
  await page.keyboard.press('b');
  await expect.poll(() => ask('state.tooth')).toBe(tooth - 1);
  await page.keyboard.press('4');
  await expect.poll(() => acts.first().innerText()).toContain('notch');
  const slope = acts.nth(1);
  const asked = await slope.innerText();
  await page.keyboard.press('ArrowLeft');
  await expect.poll(() => slope.innerText()).not.toBe(asked);
  await page.keyboard.press('2');
  await expect.poll(() => acts.first().innerText()).toContain('next click');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => ask('state.tooth')).toBe(tooth);

  await page.keyboard.press('.');
  await page.locator('main.wall.blank').waitFor();
  await page.keyboard.press('.');
  await page.locator('main.wall:not(.blank)').waitFor();
  await page.keyboard.press('?');
  const card = page.getByRole('dialog', { name: 'Keys of the wall' });
  await card.waitFor();
  await shot('wall-keys');
  expect(await card.innerText()).toContain('Page Down');
  // Esc closes what lies over the wall, not the wall.
  await page.keyboard.press('Escape');
  await card.waitFor({ state: 'detached' });
  expect(await page.locator('main.wall').count()).toBe(1);
  await page.keyboard.press('?');
  await card.waitFor();
  await card.getByRole('checkbox').uncheck();
  await page.keyboard.press('?');
  await card.waitFor({ state: 'detached' });
  const fan = await ask('layers.fan');
  await page.keyboard.press('u');
  await page.keyboard.press('.');
  await page.keyboard.press('PageDown');
  await expect.poll(() => ask('moment.parts.lessons.keys')).toBe(false);
  expect(await ask('layers.fan')).toBe(fan);
  expect(await page.locator('main.wall.blank').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it.each([
  [1920, 1080],
  [1366, 768],
])('with names the wall at %i x %i still has all its keys in sight', async (width, height) => {
  const { page, errors, close } = await browser.open({ viewport: { width, height } });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('w');
  await page.locator('.wall .act').first().waitFor();
  await page.keyboard.press('n');
  const list = page.locator('.wall .nameslist li');
  await expect.poll(() => list.count()).toBeGreaterThan(20);
  await soon(async () => {
    const low = await page
      .locator('.wall .words button, .wall .nameslist li')
      .evaluateAll(
        (all) =>
          all
            .map((e) => e.getBoundingClientRect())
            .filter((b) => b.height > 0 && (b.bottom > innerHeight || b.right > innerWidth)).length,
      );
    expect(low).toBe(0);
  });
  await page.getByRole('button', { name: /keys$/ }).click();
  const card = page.getByRole('dialog', { name: 'Keys of the wall' });
  await soon(async () => {
    const box = await card.evaluate((e) => [
      e.scrollHeight - e.clientHeight,
      e.getBoundingClientRect().bottom - innerHeight,
    ]);
    expect(Math.max(...box)).toBeLessThanOrEqual(0);
  });
  expect(errors).toEqual([]);
  await close();
});

it('chooses ghost and compare by a large button and by keys, at every size of projector', async () => {
  const { page, errors, shot, close } = await browser.open({
    reducedMotion: 'reduce',
    path: '?station=apply&state=Second+set',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  const ask = (what: string) =>
    page.evaluate(`document.querySelector('takeup-app').session.${what}`);
  await page.keyboard.press('w');
  const card = page.getByRole('dialog', { name: 'Ghost and compare' });
  const open = page.getByRole('button', { name: 'M compare and ghost' });
  await open.click();
  await card.waitFor();
  // By key: the first keeps the moment, and the card goes.
  await page.keyboard.press('1');
  await expect.poll(() => ask('moment.parts.compare.kept === null')).toBe(false);
  await card.waitFor({ state: 'detached' });
  await page.keyboard.press('m');
  await card.waitFor();
  for (const [width, height] of [
    [1920, 1080],
    [1366, 768],
    [1280, 800],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    const u = Math.min(width / 1920, height / 1080);
    await soon(async () => {
      const { over, least, low } = await card.evaluate((e) => ({
        over: [e.scrollHeight - e.clientHeight, e.scrollWidth - e.clientWidth],
        least: Math.min(
          ...[...e.querySelectorAll('button, kbd')].map((b) =>
            Number.parseFloat(getComputedStyle(b).fontSize),
          ),
        ),
        low: Math.min(
          ...[...e.querySelectorAll('button')].map((b) => b.getBoundingClientRect().height),
        ),
      }));
      expect(Math.max(...over), String(width)).toBeLessThanOrEqual(0);
      expect(least).toBeGreaterThanOrEqual(34 * u - 0.01);
      expect(low).toBeGreaterThanOrEqual(80 * u);
    });
    await shot(`wall-ghost-${width}`);
  }
  // By button: hidden, and drawn again.
  await card.getByRole('button', { name: /^Hide the ghost/ }).click();
  await expect.poll(() => ask('moment.parts.compare.ghost')).toBe(false);
  await open.click();
  await card.getByRole('button', { name: /^Draw the ghost/ }).click();
  await expect.poll(() => ask('moment.parts.compare.ghost')).toBe(true);
  // Escape closes the card, not the wall.
  await page.keyboard.press('m');
  await card.waitFor();
  await page.keyboard.press('Escape');
  await card.waitFor({ state: 'detached' });
  expect(await page.locator('main.wall').count()).toBe(1);
  await open.click();
  await card.getByRole('button', { name: /^Compare: cold against hot/ }).click();
  await page.locator('main.wall[data-station="compare"]').waitFor();
  await expect.poll(() => page.locator('.wall .says').innerText()).toMatch(/Warmth.*20.*250/);
  expect(errors).toEqual([]);
  await close();
});
