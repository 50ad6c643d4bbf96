import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { samples } from '../samples.ts';
import { firstHeadings, kindsOn, seriousFaults, smallTargets } from './axe.ts';
import { drawnContrasts, drawnOn, offContrasts, type Read, still } from './contrast.ts';
import { openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';
import {
  dressIn,
  eachDialog,
  eachLayer,
  eachView,
  leaveField,
  openStation,
  stationCount,
  type Theme,
} from './tour.ts';

/** One way round the page on which everything is asked that can be asked of a view: access, headings, contrast. */

/** Least contrast of text: Web Content Accessibility Guidelines 2.2, success criterion 1.4.3 (AA). */
const LEAST = 4.5;

export const below = (all: readonly Read[]): string[] =>
  all.filter((r) => r.contrast < LEAST).map((r) => `${r.text}: ${r.contrast.toFixed(2)}`);

/** Only colours differ between the two views, so only they are asked about in the second. */
const OF_COLOUR = ['color-contrast'];

/** Looks for faults of access wherever there is a kind of element that was not looked at before. */
class Access {
  readonly #seen = new Set<string>();
  readonly #found: string[] = [];
  readonly #headings: string[] = [];
  #count = 0;
  readonly #page: Page;
  readonly #theme: Theme | 'both';

  /** @param theme the view that the page is in; in both it is put into the second where it looks, and back */
  constructor(page: Page, theme: Theme | 'both' = 'Sheet') {
    this.#page = page;
    this.#theme = theme;
  }

  async at(where: string): Promise<void> {
    const size = this.#page.viewportSize()?.width;
    const all = (await kindsOn(this.#page)).map((kind) => `${size} ${kind}`);
    const fresh = all.filter((kind) => !this.#seen.has(kind));
    if (fresh.length === 0) return;
    for (const kind of fresh) this.#seen.add(kind);
    this.#count++;
    await this.#look(where, this.#theme === 'Board' ? OF_COLOUR : undefined);
    for (const small of await smallTargets(this.#page)) this.#found.push(`${small} (${where})`);
    if (this.#theme !== 'both') return;
    await this.#page.evaluate<void, 'sheet' | 'board'>(lookAs, 'board');
    await this.#look(`${where}, dark`, OF_COLOUR);
    await this.#page.evaluate<void, 'sheet' | 'board'>(lookAs, 'sheet');
  }

  async #look(where: string, rules: string[] | undefined): Promise<void> {
    for (const fault of await seriousFaults(this.#page, rules))
      if (!this.#found.some((f) => f.startsWith(fault))) this.#found.push(`${fault} (${where})`);
  }

  /** The same, and there is one heading of the first level. */
  async headed(where: string): Promise<void> {
    await this.at(where);
    const h1 = await firstHeadings(this.#page);
    if (h1.length !== 1) this.#headings.push(`${where}: ${h1.join(' and ') || 'none'}`);
  }

  /** @param least so often it has looked, at the least */
  judge(least: number): void {
    expect(this.#found).toEqual([]);
    expect(this.#headings).toEqual([]);
    expect(this.#count).toBeGreaterThan(least);
  }
}

/** Puts the page into a view, and waits until it is drawn. Runs in the page. */
async function lookAs(theme: 'sheet' | 'board'): Promise<void> {
  interface App {
    readonly session: { look(theme: string): void };
    readonly updateComplete: Promise<unknown>;
  }
  const app = document.querySelector('takeup-app') as unknown as App;
  app.session.look(theme);
  for (let i = 0; i < 2; i++) await new Promise(requestAnimationFrame);
  await app.updateComplete;
}

/** Reads how texts on drawings stand out, and controls that are off. The page's clock must be the test's. */
class Contrast {
  readonly #found = new Map<string, string>();
  #texts = 0;
  #off = 0;
  #before = '';
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
  }

  /** @param changed the drawing has changed, if only under its texts */
  at(where: string, changed: boolean): Promise<void> {
    return still(this.#page, async () => {
      const controls = await offContrasts(this.#page);
      const drawn = await drawnOn(this.#page);
      const now = JSON.stringify(drawn);
      const read = changed || now !== this.#before ? await drawnContrasts(this.#page, drawn) : [];
      this.#before = now;
      this.#texts += read.length;
      this.#off += controls.length;
      for (const line of below([...read, ...controls])) {
        if (!this.#found.has(line)) this.#found.set(line, where);
      }
    });
  }

  /** @param texts so many were read, at the least @param off so many controls that are off */
  judge(texts: number, off: number): void {
    expect([...this.#found].map(([line, where]) => `${line} (${where})`)).toEqual([]);
    expect(this.#texts).toBeGreaterThan(texts);
    expect(this.#off).toBeGreaterThan(off);
  }
}

interface Round {
  readonly width: number;
  readonly height: number;
  readonly theme: Theme;
}

/** Goes through all stations, views, dialogs and layers of the page in a window, and looks at the drawings too. */
export async function lookRound({ width, height, theme }: Round): Promise<void> {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open({
    viewport: { width, height },
    reducedMotion: 'reduce',
    clock: true,
  });
  const access = new Access(page, theme);
  const contrast = new Contrast(page);
  const count = await stationCount(page);
  expect(count).toBeGreaterThan(1);
  await dressIn(page, theme);
  // Few: each layer in some of the stations, in the dark in others. Many: in all.
  const every = samples('layersInOne');
  const first = theme === 'Sheet' ? 0 : 1;
  /** Stations with a drawing in view: a phone has some without. */
  let drawings = 0;
  for (let at = 0; at < count; at++) {
    const station = await openStation(page, at);
    if (await page.locator('takeup-stage').isVisible()) drawings++;
    await eachView(page, async (view) => {
      await access.headed(`${station}, ${view}`);
      await contrast.at(`${station}, ${view}`, false);
    });
    const pedal = page.locator('takeup-pedal [role="slider"]');
    if (await pedal.isVisible()) {
      await pedal.focus();
      await page.keyboard.press('Enter');
      await soon(async () => expect(await pedal.getAttribute('aria-valuenow')).not.toBe('0'));
      await contrast.at(`${station}, pressed`, true);
    }
    await eachLayer(
      page,
      (layer) => contrast.at(`${station}, ${layer} turned`, true),
      (layer) => (at + layer + first) % every === 0,
    );
  }
  await eachDialog(page, async (dialog) => {
    await frames(page, 2);
    await access.at(dialog);
  });
  access.judge(count);
  contrast.judge(3 * drawings, count);
  expect(errors).toEqual([]);
  await close();
  await browser.close();
}

interface Windows {
  readonly sizes: readonly { readonly width: number; readonly height: number }[];
  /** A station in so many is gone to. */
  readonly leap: number;
}

/** Goes through stations, views and dialogs in one page whose window changes, in the light and in the dark. */
export async function lookThrough({ sizes, leap }: Windows): Promise<void> {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  const access = new Access(page, 'both');
  const count = await stationCount(page);
  let looked = 0;
  for (let at = 0; at < count; at += leap) {
    looked++;
    for (const size of sizes) {
      await page.setViewportSize(size);
      await frames(page, 3);
      const station = await openStation(page, at);
      await eachView(page, (view) => access.headed(`${station} at ${size.width}, ${view}`));
    }
  }
  for (const size of sizes) {
    await page.setViewportSize(size);
    await frames(page, 3);
    await eachDialog(page, async (dialog) => {
      await frames(page, 2);
      await access.at(`${dialog} at ${size.width}`);
    });
  }
  access.judge(looked);
  expect(looked).toBeGreaterThan(1);
  expect(errors).toEqual([]);
  await close();
  await browser.close();
}

/** Goes through all stations on the wall. */
export async function lookRoundTheWall(): Promise<void> {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce', clock: true });
  const access = new Access(page);
  const contrast = new Contrast(page);
  const count = await stationCount(page);
  for (let at = 0; at < count; at++) {
    const station = await openStation(page, at);
    await page.evaluate(leaveField);
    await page.keyboard.press('w');
    await page.locator('main.wall').waitFor();
    // The drawing takes its place, then its texts theirs.
    await frames(page, 10);
    await access.headed(station);
    await contrast.at(station, true);
    await page.keyboard.press('w');
    await page.locator('main.work').waitFor();
  }
  access.judge(0);
  contrast.judge(0, -1);
  expect(errors).toEqual([]);
  await close();
  await browser.close();
}
