import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { samples } from '../samples.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { frames, noWider, soon } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const open = async (width: number, height: number) => {
  const opened = await browser.open({ viewport: { width, height }, reducedMotion: 'reduce' });
  await opened.page.locator('takeup-stage canvas').waitFor();
  return opened;
};
const station = (page: Page, name: string) =>
  expect.poll(() => page.locator('main').getAttribute('data-station')).toBe(name);
const stations = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

it('on a projector the brake stands in full, with its forces, and what lies beside it when asked for', async () => {
  const { page, errors, close } = await open(1024, 768);
  for (const [key, id, beside] of [
    ['3', 'drum-off', '.onstage'],
    ['4', 'park', '.park-over'],
    ['6', 'new-shoes', '.ns-over'],
  ] as const) {
    await page.keyboard.press(key);
    await station(page, id);
    const turn = page.locator('.one .turn');
    await turn.waitFor();
    expect(await page.locator(beside).isVisible()).toBe(false);
    if (id === 'park') {
      // The forces on both shoes and the cable's pull, with the lever drawn.
      const values = page.locator('takeup-stage text', { hasText: /(kN|\d\sN)$/ });
      await expect.poll(() => values.count()).toBeGreaterThanOrEqual(4);
    }
    await turn.click();
    await expect.poll(() => page.locator(beside).isVisible()).toBe(true);
    await turn.click();
    await expect.poll(() => page.locator(beside).isVisible()).toBe(false);
  }
  await page.keyboard.press('1');
  await page.getByRole('button', { name: 'Names', exact: true }).click();
  // Numbers need their list.
  await page
    .getByRole('region', { name: 'Names of the parts' })
    .getByText('Wheel cylinder')
    .waitFor();
  expect(errors).toEqual([]);
  await close();
});

/** Words under 13 px as they stand on the screen, the pictures' too. Runs in the page. */
function small(): string[] {
  const found: string[] = [];
  const roots: ParentNode[] = [document];
  for (let root = roots.pop(); root; root = roots.pop()) {
    for (const el of root.querySelectorAll('*')) {
      if (el.shadowRoot) roots.push(el.shadowRoot);
      if (![...el.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim())) continue;
      const box = el.getBoundingClientRect();
      if (box.width < 2 || box.height < 2) continue;
      const { fontSize, visibility } = getComputedStyle(el);
      const drawn = el instanceof SVGGraphicsElement ? el.getScreenCTM() : null;
      const px = Number.parseFloat(fontSize) * (drawn ? Math.hypot(drawn.b, drawn.d) : 1);
      // A scale's last digit may be lost.
      if (px < 12.95 && visibility !== 'hidden') found.push(`${px.toFixed(1)} ${el.textContent}`);
    }
  }
  return found;
}

it.each([
  [320, 640],
  [1024, 768],
  [1366, 768],
])(
  'at %i × %i no word is under 13 px and nothing is wider than the window',
  async (width, height) => {
    const { page, errors, close } = await open(width, height);
    let before = '';
    for (const key of stations) {
      await page.keyboard.press(key);
      await expect.poll(() => page.locator('main').getAttribute('data-station')).not.toBe(before);
      before = (await page.locator('main').getAttribute('data-station')) ?? '';
      await frames(page, 3);
      await noWider(page, width);
      await soon(async () => expect(await page.evaluate(small), before).toEqual([]));
      const turn = page.locator('.one .turn');
      if (!(await turn.isVisible())) continue;
      await turn.click();
      await soon(async () => expect(await page.evaluate(small), before).toEqual([]));
    }
    expect(errors).toEqual([]);
    await close();
  },
);

it('the browser’s own print puts the drawing and the readings on paper', async () => {
  const { page, errors, close } = await open(1366, 768);
  await page.keyboard.press('4');
  await station(page, 'park');
  await page.emulateMedia({ media: 'print' });
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  const paper = page.locator('#print-moment');
  await expect.poll(() => paper.isVisible()).toBe(true);
  expect(await paper.locator('h1').innerText()).toMatch(/^Park/);
  expect(await paper.locator('svg path').count()).toBeGreaterThan(50);
  expect(await paper.locator('dd').count()).toBeGreaterThan(10);
  await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
  await expect.poll(() => paper.count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('going round the stations leaves nothing behind', async () => {
  const { page, errors, close } = await open(1366, 768);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const held = async () => {
    for (let i = 0; i < 3; i++) await session.send('HeapProfiler.collectGarbage');
    const { metrics } = await session.send('Performance.getMetrics');
    const of = (name: string): number => metrics.find((m) => m.name === name)?.value ?? Number.NaN;
    return { listeners: of('JSEventListeners'), nodes: of('Nodes') };
  };
  const round = async (): Promise<void> => {
    for (const key of [...stations, '1']) {
      await page.keyboard.press(key);
      await frames(page, 12);
    }
  };
  // What is made when a station is first opened stays for the next time.
  await round();
  const before = await held();
  for (let i = 0; i < samples('rounds'); i++) await round();
  const after = await held();
  expect(after.listeners).toBeLessThanOrEqual(1.1 * before.listeners);
  expect(after.nodes).toBeLessThanOrEqual(1.1 * before.nodes);
  expect(errors).toEqual([]);
  await close();
});
