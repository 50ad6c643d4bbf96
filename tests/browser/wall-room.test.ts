import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { samples } from '../samples.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';
import { openStation, stationCount } from './tour.ts';

/** On the wall every station has room for its words, in each language: none is cut, none lies on another. */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Projectors, px. */
const walls = [
  [1920, 1080],
  [1366, 768],
  [1280, 800],
  [1024, 768],
] as const;

/** What is wrong with the wall's texts beside the drawing, each said; the drawing's own are tested in Node. */
const wrong = (page: Page): Promise<string[]> =>
  page.locator('takeup-app').evaluate((app) => {
    const main = app.shadowRoot?.querySelector('main.wall');
    if (!main) return ['no wall'];
    const texts: { on: Element; says: string; box: DOMRect }[] = [];
    const walk = (root: Element | ShadowRoot): void => {
      for (const on of root.querySelectorAll('*')) {
        if (on.shadowRoot) walk(on.shadowRoot);
        if (on instanceof SVGElement || on.tagName === 'STYLE' || on.closest('.hidden')) continue;
        if (!on.checkVisibility({ visibilityProperty: true })) continue;
        if (getComputedStyle(on).clipPath !== 'none') continue;
        for (const node of on.childNodes) {
          const says = node.nodeType === Node.TEXT_NODE ? node.nodeValue?.trim() : '';
          if (!says) continue;
          const range = document.createRange();
          range.selectNodeContents(node);
          const box = range.getBoundingClientRect();
          if (box.width > 2 && box.height > 2) texts.push({ on, says: says.slice(0, 40), box });
        }
      }
    };
    walk(main);
    const out: string[] = [];
    for (const { on, says, box } of texts) {
      if (box.right > innerWidth + 1 || box.bottom > innerHeight + 1)
        out.push(`beyond the wall: ${says}`);
      for (let e: Element | null = on; e; ) {
        const { overflowX, overflowY } = getComputedStyle(e);
        const around = e.getBoundingClientRect();
        if (overflowX === 'hidden' && box.right > around.right + 1) out.push(`cut: ${says}`);
        else if (overflowY === 'hidden' && box.bottom > around.bottom + 2) out.push(`cut: ${says}`);
        const root: Node = e.getRootNode();
        e = e.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
      }
    }
    for (const [i, a] of texts.entries()) {
      for (const b of texts.slice(i + 1)) {
        if (a.on.contains(b.on) || b.on.contains(a.on)) continue;
        const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        // Lines stand so close that the boxes of their letters meet; the letters do not.
        if (wide > 2 && high > 0.25 * Math.min(a.box.height, b.box.height))
          out.push(`${a.says} on ${b.says}`);
      }
    }
    for (const words of main.querySelectorAll('.words')) {
      if (words.scrollHeight > words.clientHeight + 1) out.push('words are higher than the wall');
      if (words.scrollWidth > words.clientWidth + 1) out.push('words are wider than their place');
    }
    return out;
  });

it.each(['en', 'de'])('in every station, on every projector: %s', async (language) => {
  const { page, errors, close } = await browser.open({
    reducedMotion: 'reduce',
    path: `?lang=${language}&station=apply`,
  });
  await page.locator('takeup-app canvas').first().waitFor();
  const count = await stationCount(page);
  const few = samples('wallsInOne');
  for (let at = language === 'de' ? 2 : 0; at < count; at += few) {
    await page.setViewportSize({ width: 1920, height: 1080 });
    // The head of a smaller window has a list of stations where this one has buttons.
    await expect.poll(() => page.locator('select.where').count()).toBe(0);
    const id = await openStation(page, at);
    // A station may take the focus into a field, whose keys are its own.
    await page.locator('takeup-app').evaluate((app) => {
      for (let e = app.shadowRoot?.activeElement; e; e = e.shadowRoot?.activeElement ?? null)
        (e as HTMLElement).blur();
    });
    await page.keyboard.press('w');
    await page.locator('main.wall').waitFor();
    for (const [width, height] of walls) {
      await page.setViewportSize({ width, height });
      await frames(page, 3);
      await soon(async () => expect(await wrong(page), `${id}, ${width} × ${height}`).toEqual([]));
    }
    await page.keyboard.press('Escape');
    await page.locator('main.work').waitFor();
  }
  expect(errors).toEqual([]);
  await close();
});
