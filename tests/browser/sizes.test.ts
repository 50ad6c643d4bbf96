import { expect, it } from 'vitest';
import { openBrowser } from './open.ts';
import { noWider, soon } from './soon.ts';

/** Window sizes between and beyond those that the page was drawn for: tablets, projectors, laptops with a browser's bars, large screens. */
const windows = [
  [844, 390],
  [820, 1180],
  [901, 700],
  [1024, 768],
  [1180, 820],
  [1280, 600],
  [1366, 640],
  [1536, 730],
  [1680, 940],
  [1800, 900],
  [1920, 861],
  [2560, 1300],
] as const;
/** What of the bars, the columns and the drawing's words hangs over and so is cut off unseen. Runs in the page. */
function cut(): string[] {
  const root = document.querySelector('takeup-app')?.shadowRoot;
  const stage = root?.querySelector('takeup-stage');
  const all = (within: ParentNode | null | undefined, what: string): Element[] => [
    ...(within?.querySelectorAll(what) ?? []),
  ];
  const over = (el: Element, left: number, right: number): boolean => {
    const box = el.getBoundingClientRect();
    return box.width > 0 && (box.left < left - 1 || box.right > right + 1);
  };
  const place = stage?.getBoundingClientRect();
  return [
    ...all(root, '.top *, .side *').filter((el) => over(el, 0, innerWidth)),
    ...all(root, '.show button').filter(
      (el) => place && place.height > 0 && over(el, place.left, place.right),
    ),
    ...all(stage?.shadowRoot, '.stage-labels text').filter(
      (el) => place && place.height > 0 && over(el, place.left, place.right),
    ),
  ].map((el) => `${el.textContent?.trim().slice(0, 30)} ${el.outerHTML.slice(0, 60)}`);
}

/** A phone on its side has its controls below the drawing. */
const LYING = 521;
const stations = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

it.each(windows)(
  'at %i × %i nothing hangs over the sides and the controls are in view',
  async (width, height) => {
    const browser = await openBrowser();
    const { page, errors, close } = await browser.open({
      viewport: { width, height },
      reducedMotion: 'reduce',
    });
    await page.locator('takeup-stage canvas').waitFor();
    const main = page.locator('main');
    const first = await main.getAttribute('data-station');
    let before = '';
    for (const key of stations) {
      await page.keyboard.press(key);
      await expect.poll(() => main.getAttribute('data-station')).not.toBe(before || null);
      before = (await main.getAttribute('data-station')) ?? '';
      if (key === '1') expect(before).toBe(first);
      await noWider(page, width);
      await soon(async () => expect(await page.evaluate(cut), `station ${key}`).toEqual([]));
      const controls = page.locator('.ctl').first();
      if (!(await controls.isVisible()) || height < LYING) continue;
      await soon(async () => {
        const box = await controls.boundingBox();
        expect(box && box.y + box.height, `station ${key}`).toBeLessThanOrEqual(height + 1);
      });
    }
    expect(errors).toEqual([]);
    await close();
    await browser.close();
  },
);
