import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { samples } from '../samples.ts';
import { firstHeadings, kindsOn, seriousFaults } from './axe.ts';
import { drawnContrasts, drawnOn, offContrasts, type Read, still } from './contrast.ts';
import { openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';
import {
  dressIn,
  eachDialog,
  eachLayer,
  eachView,
  openStation,
  stationCount,
  type Theme,
} from './tour.ts';

/** One way round the page on which everything is asked that can be asked of a view: access, headings, contrast. */

/** Least contrast of text: Web Content Accessibility Guidelines 2.2, success criterion 1.4.3 (AA). */
const LEAST = 4.5;

export const below = (all: readonly Read[]): string[] =>
  all.filter((r) => r.contrast < LEAST).map((r) => `${r.text}: ${r.contrast.toFixed(2)}`);

/** Looks for faults of access wherever there is a kind of element that was not looked at before. */
class Access {
  readonly #seen = new Set<string>();
  readonly #found: string[] = [];
  readonly #headings: string[] = [];
  #count = 0;
  readonly #page: Page;
  readonly #rules: string[] | undefined;

  constructor(page: Page, rules?: string[]) {
    this.#page = page;
    this.#rules = rules;
  }

  async at(where: string): Promise<void> {
    const fresh = (await kindsOn(this.#page)).filter((kind) => !this.#seen.has(kind));
    if (fresh.length === 0) return;
    for (const kind of fresh) this.#seen.add(kind);
    this.#count++;
    for (const fault of await seriousFaults(this.#page, this.#rules))
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

/** In the dark only colours differ, so only they are asked about there. */
const rulesIn: Record<Theme, string[] | undefined> = {
  Sheet: undefined,
  Board: ['color-contrast'],
};

interface Round {
  readonly width: number;
  readonly height: number;
  readonly theme: Theme;
  /** The drawings are looked at too, picture by picture. */
  readonly drawn: boolean;
}

/** Goes through all stations, views and dialogs of the page in a window; where drawings are looked at, layers too. */
export async function lookRound({ width, height, theme, drawn }: Round): Promise<void> {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open({
    viewport: { width, height },
    reducedMotion: 'reduce',
    clock: drawn,
  });
  const access = new Access(page, rulesIn[theme]);
  const contrast = drawn ? new Contrast(page) : null;
  const count = await stationCount(page);
  expect(count).toBeGreaterThan(1);
  await dressIn(page, theme);
  // Few: each layer in some of the stations, in the dark in others. Many: in all.
  const every = samples('layersInOne');
  const first = theme === 'Sheet' ? 0 : 1;
  /** Stations with a drawing in view: a phone has some without. */
  let drawings = 0;
  // Few: where no drawing is looked at, some of the stations, in the dark others. Many: all.
  const leap = drawn ? 1 : samples('stationsInOne');
  let looked = 0;
  for (let at = 0; at < count; at++) {
    if ((at + first) % leap !== 0) continue;
    looked++;
    const station = await openStation(page, at);
    if (await page.locator('takeup-stage').isVisible()) drawings++;
    await eachView(page, async (view) => {
      await access.headed(`${station}, ${view}`);
      await contrast?.at(`${station}, ${view}`, false);
    });
    if (!contrast) continue;
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
  access.judge(looked);
  contrast?.judge(3 * drawings, count);
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
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
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
