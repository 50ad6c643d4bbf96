import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { seriousFaults } from './axe.ts';
import { openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';
import { openStation, stationCount } from './tour.ts';

/**
 * Where the system says the colours (forced-colors), the page has no more than its ink and its ground: what is
 * pressed, what has the focus and where a control ends must be seen by these alone, and what is painted on a canvas
 * in colours of its own must keep its own ground.
 */

/** What cannot be told apart by the system's colours. Runs in the page. */
function merged(): string[] {
  const wrong: string[] = [];
  const named = (e: Element): string =>
    (e.getAttribute('aria-label') ?? e.textContent ?? '').trim().slice(0, 30);
  /** The ground under an element: its own, or that of the nearest round it that has one. */
  const ground = (e: Element): string => {
    for (let at: Element | null = e; at; ) {
      const { backgroundColor } = getComputedStyle(at);
      if (!/^rgba\(.*, 0\)$/.test(backgroundColor)) return backgroundColor;
      const root: Node = at.getRootNode();
      at = at.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
    }
    return '';
  };
  const look = (e: Element): string => {
    const { color, boxShadow, borderTopWidth, borderTopColor, fontWeight, textDecorationLine } =
      getComputedStyle(e);
    const edge = `${borderTopWidth} ${borderTopColor}`;
    return [ground(e), color, boxShadow, edge, fontWeight, textDecorationLine].join(' | ');
  };
  /** It, or one round it within three, has a line on at least one side, or another ground than what lies round it. */
  const edged = (e: Element): boolean => {
    if (e.parentElement && ground(e) !== ground(e.parentElement.parentElement ?? e.parentElement))
      return true;
    let at: Element | null = e;
    for (let up = 0; at && up < 3; up++) {
      const s = getComputedStyle(at);
      const lines = [s.borderTopWidth, s.borderBottomWidth, s.borderLeftWidth, s.borderRightWidth];
      if (lines.some((w) => Number.parseFloat(w) > 0) || s.boxShadow !== 'none') return true;
      if (/underline/.test(s.textDecorationLine)) return true;
      at = at.parentElement;
    }
    return false;
  };
  const within: ParentNode[] = [document];
  for (let root = within.pop(); root; root = within.pop()) {
    for (const e of root.querySelectorAll('*')) {
      if (e.shadowRoot) within.push(e.shadowRoot);
      if (!e.matches('button, select, textarea, input, [role="slider"]')) continue;
      if (!e.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      const { color } = getComputedStyle(e);
      if (named(e) !== '' && color === ground(e)) wrong.push(`ink on its own colour: ${named(e)}`);
      if (e.matches('button') && !edged(e)) wrong.push(`no edge: ${named(e)}`);
      if (e.getAttribute('aria-pressed') !== 'true') continue;
      const other = [...(e.parentElement?.children ?? [])].find(
        (o) => o.getAttribute('aria-pressed') === 'false' && o.className !== e.className,
      );
      if (other && look(other) === look(e)) wrong.push(`pressed or not: ${named(e)}`);
    }
  }
  return wrong;
}

/** What has the focus has a ring round it, in another colour than what lies under it. Runs in the page. */
function ringless(): string[] {
  let e = document.activeElement;
  while (e?.shadowRoot?.activeElement) e = e.shadowRoot.activeElement;
  if (!e || e === document.body) return ['nothing has the focus'];
  const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(e);
  const under = getComputedStyle(e.closest('main, header, dialog') ?? document.body);
  const seen =
    outlineStyle !== 'none' &&
    Number.parseFloat(outlineWidth) >= 2 &&
    outlineColor !== under.backgroundColor;
  return seen ? [] : [`${e.outerHTML.slice(0, 80)}: ${outlineStyle} ${outlineColor}`];
}

/**
 * The first control of the open station takes the focus: from there Tab goes on among the station's own. Past the end of
 * the page it would go to the browser's own buttons, in Firefox, and what has the focus in the page shows no ring then.
 * Runs in the page.
 */
function beginInStation(): void {
  const first = (under: ParentNode): HTMLElement | undefined => {
    for (const e of under.children) {
      if (!e.checkVisibility({ visibilityProperty: true })) continue;
      const control = e.matches('button:enabled, select, textarea, input, summary, [tabindex="0"]');
      if (control && (e as HTMLElement).tabIndex >= 0) return e as HTMLElement;
      const inner = (e.shadowRoot && first(e.shadowRoot)) ?? first(e);
      if (inner) return inner;
    }
    return undefined;
  };
  const main = document.querySelector('takeup-app')?.shadowRoot?.querySelector('main');
  const control = main ? first(main) : undefined;
  if (!control) throw new Error('nothing to set in the station');
  control.focus();
}

/** The stage is painted on the ground of its own theme. */
const stageGround = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const stage = document.querySelector('takeup-app')?.shadowRoot?.querySelector('takeup-stage');
    return stage ? getComputedStyle(stage).backgroundColor : '';
  });

/** How long it is looked whether something moves, ms. */
const LOOKED = 1000;

/**
 * Nothing moves by itself for whoever asked for reduced motion: no animation of the page's runs, and after all is
 * worked out two pictures a second apart are the same to the pixel.
 */
async function nothingMoves(page: Page, station: string): Promise<void> {
  const running = () => document.getAnimations().filter((a) => a.playState === 'running').length;
  await expect.poll(() => page.evaluate(running), { message: station }).toBe(0);
  await soon(async () => {
    const before = await page.screenshot();
    await page.waitForTimeout(LOOKED);
    expect((await page.screenshot()).equals(before), station).toBe(true);
  });
}

it.each([
  // Sheet and Board as ui/theme.ts has them, and the grounds that Chromium's two palettes have.
  {
    colorScheme: 'light',
    stage: 'rgb(252, 253, 252)',
    page: 'rgb(255, 255, 255)',
    also: ', and nothing moves by itself',
  },
  { colorScheme: 'dark', stage: 'rgb(15, 25, 30)', page: 'rgb(0, 0, 0)', also: '' },
] as const)(
  'in the colours of a $colorScheme system every station has edges, pressed states, a ring of focus, a legible stage$also',
  async ({ colorScheme, stage, page: canvas, also }) => {
    const browser = await openBrowser();
    const { page, errors, close } = await browser.open({
      viewport: { width: 1366, height: 768 },
      reducedMotion: 'reduce',
      forcedColors: 'active',
      colorScheme,
    });
    const count = await stationCount(page);
    const wrong: string[] = [];
    for (let at = 0; at < count; at++) {
      const station = await openStation(page, at);
      await frames(page, 3);
      await page.evaluate(beginInStation);
      for (let i = 0; i < 3; i++) await page.keyboard.press('Tab');
      const found = [
        ...(await page.evaluate(merged)),
        ...(await page.evaluate(ringless)),
        ...(await seriousFaults(page, ['color-contrast'])),
      ];
      wrong.push(...found.map((line) => `${station}: ${line}`));
      expect(await stageGround(page), station).toBe(stage);
      // Whichever colours there are, the same moves or does not.
      if (also !== '') await nothingMoves(page, station);
    }
    expect(wrong).toEqual([]);
    const ground = page.locator('main .blk').first();
    expect(await ground.evaluate((e) => getComputedStyle(e).backgroundColor)).toBe(canvas);
    expect(errors).toEqual([]);
    await close();
    await browser.close();
  },
);
