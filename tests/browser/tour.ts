import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { stations } from '../../ui/stations/index.ts';
import { frames, steady } from './soon.ts';

/**
 * A way round the page that takes nothing from a list of its own: stations are those that the page itself has
 * registered, views are what can be turned on in a station, dialogs are what the document holds. A new one is gone
 * to as well.
 */

/** The tabs of the stations, or the entries of the list that stands for them where they have no room; not all have one. */
const TABS = 'nav.tabs button, select.where option';
/** What changes a station's view: switches, steps of a sequence, what can be unfolded. */
const VIEWS = [
  'main button[aria-pressed="false"]',
  'main [role="group"]:has(> [aria-current]) > button:not([aria-current])',
  'main details:not([open]) > summary',
].join(', ');
/** Switches of the drawing's layers. */
const LAYERS = 'main .show button';

/** How many stations there are to go to: those with a tab, which stand first, and those that are opened by their keys. */
export async function stationCount(page: Page): Promise<number> {
  await page.locator('takeup-stage canvas').first().waitFor({ state: 'attached' });
  return stations.length;
}

async function openByTab(page: Page, at: number): Promise<void> {
  const entry = page.locator(TABS).nth(at);
  const inList = await entry.evaluate((e) => e instanceof HTMLOptionElement);
  if (inList) await page.locator('select.where').selectOption({ index: at });
  else await entry.click();
  const is = () =>
    entry.evaluate((e) =>
      e instanceof HTMLOptionElement ? e.selected : e.getAttribute('aria-current') === 'page',
    );
  await expect.poll(is).toBe(true);
}

/** What is typed into must not take the key. Runs in the page. */
export function leaveField(): void {
  let active = document.activeElement;
  while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
  (active as HTMLElement | null)?.blur();
}

async function openByKey(page: Page, key: string, id: string): Promise<void> {
  const open = page.locator('main').getAttribute('data-station');
  // The key of an open station may do something in it.
  if ((await open) === id) return;
  await page.evaluate(leaveField);
  await page.keyboard.press(key);
}

/** Opens a station by its place among the page's own, and gives its id once it is shown. */
export async function openStation(page: Page, at: number): Promise<string> {
  const entry = stations[at];
  if (!entry) throw new Error(`no station ${at}`);
  const listed = at < (await page.locator(TABS).count());
  await (listed ? openByTab(page, at) : openByKey(page, entry.key, entry.id));
  const main = page.locator('main');
  await expect.poll(() => main.getAttribute('data-station')).toBe(entry.id);
  await expect.poll(() => page.locator('main .waiting').count()).toBe(0);
  return steady(page, async () => (await main.getAttribute('data-station')) ?? '');
}

/** Names of some buttons in their order; empty for one that cannot be pressed by a pointer. Runs in the page. */
function reachable(buttons: Element[]): string[] {
  return buttons.map((b) => {
    b.scrollIntoView({ block: 'nearest' });
    const { left, top, width, height } = b.getBoundingClientRect();
    const [x, y] = [left + width / 2, top + height / 2];
    let hit = document.elementFromPoint(x, y);
    for (let inner = hit; inner?.shadowRoot; ) {
      inner = inner.shadowRoot.elementFromPoint(x, y);
      if (inner === hit) break;
      hit = inner;
    }
    const reached = width > 0 && hit !== null && b.contains(hit) && !b.matches(':disabled');
    return reached ? (b.getAttribute('aria-label') ?? b.textContent?.trim() ?? '') : '';
  });
}

/** The open station as it is, then after each of its views has been turned on, one after the other. */
export async function eachView(page: Page, visit: (view: string) => Promise<void>): Promise<void> {
  await visit('as it opens');
  const layers = await page.locator(LAYERS).evaluateAll(reachable);
  const pressed = new Set(['', ...layers]);
  for (;;) {
    const views = page.locator(VIEWS);
    const names = await views.evaluateAll(reachable);
    const at = names.findIndex((name) => !pressed.has(name));
    const name = names[at];
    if (name === undefined) return;
    pressed.add(name);
    await views.nth(at).click();
    await frames(page, 2);
    await visit(name);
  }
}

/**
 * The drawing with each of its layers turned the other way, one at a time.
 *
 * @param wanted which of them, by their places
 */
export async function eachLayer(
  page: Page,
  visit: (layer: string) => Promise<void>,
  wanted: (at: number) => boolean,
): Promise<void> {
  const layers = page.locator(LAYERS);
  for (const [at, name] of (await layers.evaluateAll(reachable)).entries()) {
    if (name === '' || !wanted(at)) continue;
    await layers.nth(at).click();
    await frames(page, 2);
    await visit(name);
    await layers.nth(at).click();
  }
}

/** Every dialog of the page, opened by what says that it opens one, in the page or in another dialog. */
export async function eachDialog(
  page: Page,
  visit: (dialog: string) => Promise<void>,
): Promise<void> {
  const open = page.locator('dialog[open]');
  const label = async () => (await open.getAttribute('aria-label')) ?? '';
  const seen = new Set<string>();
  const look = async (): Promise<void> => {
    const name = await label();
    if (seen.has(name)) return;
    seen.add(name);
    await visit(name);
  };
  const openers = '[aria-haspopup="dialog"]:visible';
  for (const button of await page.locator(openers).all()) {
    await button.click();
    await open.waitFor();
    await look();
    const first = await label();
    // Dialogs that this one opens, each anew from the page.
    const inner = await open.locator(openers).count();
    for (let i = 0; i < inner; i++) {
      if (i > 0) {
        await button.click();
        await open.waitFor();
      }
      await open.locator(openers).nth(i).click();
      await expect.poll(label).not.toBe(first);
      await look();
      await page.keyboard.press('Escape');
      await expect.poll(() => open.count()).toBe(0);
    }
    if (inner > 0) continue;
    await page.keyboard.press('Escape');
    await expect.poll(() => open.count()).toBe(0);
  }
  const all = await page.locator('dialog').evaluateAll((d) => d.map((one) => one.ariaLabel ?? ''));
  expect([...seen].sort(), 'dialogs that can be opened').toEqual(all.sort());
}

/** The page's two views. */
export type Theme = 'Sheet' | 'Board';

/** Puts the page in one of them. */
export async function dressIn(page: Page, name: Theme): Promise<void> {
  const bench = page.locator('takeup-bench-sheet dialog');
  await page.locator('header.top [aria-haspopup="dialog"]').last().click();
  await bench.getByRole('button', { name, exact: true }).click();
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('dialog[open]').count()).toBe(0);
}
