import type { Page, Request } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { stations } from '../../ui/stations/index.ts';
import { samples } from '../samples.ts';
import { type Budget, CARD_CALLS, KEPT, ofDialogs, ofStations, WHOLE } from './budgets.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { countPainting } from './painting.ts';
import { frames, soon, steady } from './soon.ts';
import { eachDialog } from './tour.ts';

/** More than are kept each way. */
const STEPS = 120;
/** Set by `npm run budgets`: the table is printed. */
const told = process.env['TAKEUP_TABLE'] !== undefined;
const WINDOW = { viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce' } as const;

let browser: OpenBrowser;
const lines: string[] = [];
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  if (told) console.log(['', 'what | measured / may be', ...lines].join('\n'));
});

/** Judges what was measured, all of it at once, and keeps its line for the table. */
function within<T extends object>(
  what: string,
  measured: T,
  may: { [K in keyof T]: number },
): void {
  const names = Object.keys(measured) as (keyof T & string)[];
  lines.push(
    `${what.padEnd(24)} | ${names.map((n) => `${n} ${measured[n]} / ${may[n]}`).join(' | ')}`,
  );
  const over = names.filter((n) => !((measured[n] as number) <= may[n]));
  expect(
    over.map((n) => `${n}: ${measured[n]}, may be ${may[n]}`),
    what,
  ).toEqual([]);
}

/** All together, so that one run tells all. */
function withinAll<T extends object>(
  found: readonly (readonly [string, T])[],
  may: Readonly<Record<string, { [K in keyof T]: number }>>,
): void {
  const wrong: string[] = [];
  for (const [what, measured] of found) {
    try {
      within(what, measured, may[what] as { [K in keyof T]: number });
    } catch (error) {
      wrong.push(String(error));
    }
  }
  expect(wrong).toEqual([]);
}

const kB = (bytes: number): number => Math.ceil(bytes / 1000);

/** Packed bytes of all scripts that were asked for before a mark of the page; all of them when it is not there. */
const scriptsBefore = (page: Page, mark: string): Promise<number> =>
  page.evaluate((name) => {
    const until = performance.getEntriesByName(name)[0]?.startTime ?? Number.POSITIVE_INFINITY;
    return (performance.getEntriesByType('resource') as PerformanceResourceTiming[])
      .filter((e) => e.name.endsWith('.js') && e.startTime < until)
      .reduce((sum, e) => sum + e.encodedBodySize, 0);
  }, mark);

/** Elements in the page and within its parts; of one part alone where it is told. Runs in the page. */
const elementsOf = (page: Page, within = 'html'): Promise<number> =>
  page.locator(within).evaluate((top) => {
    let count = 0;
    const roots: ParentNode[] = [top];
    for (let root = roots.pop(); root; root = roots.pop()) {
      for (const element of root.querySelectorAll('*')) {
        count++;
        if (element.shadowRoot) roots.push(element.shadowRoot);
      }
    }
    return count;
  });

/** Calls by which the whole stage is painted anew: a page that was hidden is, when it is shown. */
const paintedAnew = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const { counted } = globalThis as unknown as { counted: { strokes: number } };
    const frame = (): Promise<number> => new Promise(requestAnimationFrame);
    await frame();
    counted.strokes = 0;
    document.dispatchEvent(new Event('visibilitychange'));
    await frame();
    return counted.strokes;
  });

/** Listeners of the page, once what can be collected is collected. */
async function listenersOf(page: Page): Promise<number> {
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable');
  for (let i = 0; i < 3; i++) await client.send('HeapProfiler.collectGarbage');
  const { metrics } = await client.send('Performance.getMetrics');
  await client.detach();
  return metrics.find((m) => m.name === 'JSEventListeners')?.value ?? Number.NaN;
}

const main = (page: Page): Promise<string | null> =>
  page.locator('main').getAttribute('data-station');
const whole = (page: Page): Promise<number> =>
  page.evaluate(() => performance.getEntriesByName('takeup whole').length);

async function measured(id: string, first: number): Promise<Budget & { all: number }> {
  const { page, errors, close } = await browser.open({
    ...WINDOW,
    path: `?station=${id}`,
    prepare: countPainting,
  });
  await expect.poll(() => main(page)).toBe(id);
  await expect.poll(() => whole(page)).toBe(1);
  const early = await scriptsBefore(page, 'takeup moves');
  const elements = await steady(page, () => elementsOf(page));
  const strokes = await paintedAnew(page);
  const listeners = await listenersOf(page);
  expect(errors).toEqual([]);
  await close();
  return { scripts: kB(early - first), elements, listeners, strokes, all: early };
}

it('every station takes no more than it may: scripts, elements, listeners, strokes', async () => {
  expect(Object.keys(ofStations).sort()).toEqual(stations.map((s) => s.id).sort());
  let first = 0;
  const found: [string, Budget][] = [];
  // Few: the first, from which the others are reckoned, and some of them. Many: all.
  const some = stations.filter((_, i) => told || i % samples('budgetsInOne') === 0);
  for (const { id } of some) {
    const { all, ...budget } = await measured(id, first);
    if (id === 'apply') first = all;
    found.push([id, budget]);
  }
  withinAll(found, ofStations);
});

/** A card's name, where the browser's software is to pass for one. Runs in the page, before its own scripts. */
function passForCard(): void {
  const card = WebGL2RenderingContext.prototype;
  const asked = card.getParameter;
  // 0x9246: who draws, by WEBGL_debug_renderer_info.
  card.getParameter = function (what) {
    return what === 0x9246 ? 'A card' : asked.call(this, what);
  };
}

it('a graphics card paints the stage by no more calls than it may', async () => {
  const { page, errors, close } = await browser.open({
    ...WINDOW,
    prepare: countPainting,
    alone: true,
  });
  await page.addInitScript(passForCard);
  await page.reload();
  const painter = (): Promise<string> =>
    page.locator('takeup-stage').evaluate((e) => (e as HTMLElement & { painter: string }).painter);
  await expect.poll(painter).toBe('webgl');
  await expect.poll(() => whole(page)).toBe(1);
  // The first time all of it goes to the card besides.
  await paintedAnew(page);
  const strokes = await paintedAnew(page);
  expect(strokes).toBeGreaterThan(0);
  expect(errors).toEqual([]);
  await close();
  within('apply, by a card', { strokes }, { strokes: CARD_CALLS });
});

it('every dialog asks for no more than it may when it is opened first', async () => {
  const { page, close } = await browser.open({ ...WINDOW, alone: true });
  // What would come by itself does not come, so that each dialog asks for all that it needs.
  await expect.poll(() => whole(page)).toBe(1);
  const first = await page.evaluate(() => {
    const until = performance.getEntriesByName('takeup moves')[0]?.startTime ?? 0;
    const all = performance.getEntriesByType('resource');
    return all.filter((e) => e.startTime < until).map((e) => e.name);
  });
  await page.route('**/assets/*.js', (route) =>
    first.includes(route.request().url()) ? route.continue() : route.abort(),
  );
  await page.reload();
  await expect.poll(() => whole(page)).toBe(1);
  await page.unroute('**/assets/*.js');
  // What is still on its way would be counted for the next dialog.
  const coming = new Set<Request>();
  page.on('request', (request) => coming.add(request));
  page.on('requestfinished', (request) => coming.delete(request));
  page.on('requestfailed', (request) => coming.delete(request));
  const come = (): Promise<number> =>
    steady(page, async () => {
      expect(coming.size).toBe(0);
      return scriptsBefore(page, 'never');
    });
  let before = await come();
  const found = new Map<string, { scripts: number; elements: number }>();
  await eachDialog(page, async (name) => {
    await frames(page, 3);
    const all = await come();
    const elements = await elementsOf(page, 'dialog[open]');
    found.set(name, { scripts: kB(all - before), elements });
    before = all;
  });
  await close();
  expect([...found.keys()].sort()).toEqual(Object.keys(ofDialogs).sort());
  withinAll([...found], ofDialogs);
});

it('all that comes by itself stays within its bound', async () => {
  const { page, close } = await browser.open(WINDOW);
  await expect.poll(() => whole(page)).toBe(1);
  const scripts = kB(await scriptsBefore(page, 'takeup whole'));
  await close();
  within('all of it', { scripts }, { scripts: WHOLE });
});

/** What is typed into must not take the key. Runs in the page. */
function leaveField(): void {
  let active = document.activeElement;
  while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
  (active as HTMLElement | null)?.blur();
}

/** Letters in the browser's storage, names and values. */
const keptIn = (page: Page): Promise<number> =>
  page.evaluate(() =>
    [localStorage, sessionStorage].reduce(
      (sum, store) => sum + Object.entries(store).reduce((n, [k, v]) => n + k.length + v.length, 0),
      0,
    ),
  );

it('what is kept in the browser stays within its bound, with all stations seen and the longest way back', async () => {
  const { page, errors, close } = await browser.open({ ...WINDOW, alone: true });
  for (const { id, key } of stations) {
    // The field of Ask takes the keyboard a little after it is there: a key that it took is pressed again.
    await soon(async () => {
      await page.evaluate(leaveField);
      if ((await main(page)) !== id) await page.keyboard.press(key);
      await frames(page, 2);
      expect(await main(page)).toBe(id);
    });
  }
  await page.keyboard.press('2');
  await page.getByRole('button', { name: 'to the limit', exact: true }).click();
  await page.getByRole('button', { name: 'Wear on', exact: true }).click();
  await page.getByText('Ended: a lining is at its limit.').waitFor();
  // More steps than are kept (`ui/record/kept-steps.ts`), of a brake that is worn along its linings.
  await page.keyboard.press('1');
  for (let i = 0; i < STEPS / 2; i++)
    for (const way of ['Stopped', 'Forward'])
      await page.getByRole('button', { name: way, exact: true }).click();
  // Leaving the page keeps the steps.
  await page.reload();
  await page.locator('takeup-stage canvas').first().waitFor();
  const letters = await steady(page, () => keptIn(page));
  expect(letters).toBeGreaterThan(1000);
  expect(errors).toEqual([]);
  await close();
  within('kept', { letters }, { letters: KEPT });
});

it('finds what is over its bound', () => {
  expect(() => within('planted', { scripts: 11 }, { scripts: 10 })).toThrow('11, may be 10');
  expect(() => within('planted', { scripts: Number.NaN }, { scripts: 10 })).toThrow('NaN');
  lines.splice(-2);
});
