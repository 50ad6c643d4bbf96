import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenBrowser, type Opened, openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';

/** Cautions, and what is to be tried in Apply, are in view whole, however far is scrolled. */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name }).first().click();

/** Of the stations that caution, or say what to try. */
const keys = {
  apply: '1',
  wear: '2',
  'drum-off': '3',
  park: '4',
  inspect: '5',
  'new-shoes': '6',
  faults: '7',
} as const;

interface Place {
  readonly name: string;
  readonly station: keyof typeof keys;
  readonly go?: (page: Page) => Promise<void>;
}

const places: readonly Place[] = [
  { name: 'Apply’s Try', station: 'apply' },
  { name: 'Wear', station: 'wear' },
  { name: 'Drum off', station: 'drum-off' },
  {
    name: 'Drum off, Which is mine?',
    station: 'drum-off',
    go: (page) => press(page, 'Which is mine?'),
  },
  { name: 'Park', station: 'park' },
  { name: 'Inspect', station: 'inspect' },
  ...[1, 2, 3, 4, 5, 6].map((step) => ({
    name: `New shoes, step ${step}`,
    station: 'new-shoes' as const,
    go: (page: Page) =>
      page.locator(`[data-step="${step}"], .ns-strip [aria-label^="${step} "]`).first().click(),
  })),
  { name: 'Faults', station: 'faults' },
  { name: 'Find the fault', station: 'faults', go: (page) => press(page, 'Find the fault') },
];

/** What is wrong with the cautions as the page now stands; what they say, for whoever reads a failure. */
const wrong = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const notes: HTMLElement[] = [];
    const look = (root: Document | ShadowRoot): void => {
      notes.push(...root.querySelectorAll<HTMLElement>('.note, .side > .try, .hotwarns'));
      for (const e of root.querySelectorAll('*')) if (e.shadowRoot) look(e.shadowRoot);
    };
    look(document);
    const shown = notes.filter((n) => n.getClientRects().length > 0 && n.textContent?.trim());
    if (shown.length === 0) return ['no caution is there'];
    const at = (x: number, y: number): Element | null => {
      let e = document.elementFromPoint(x, y);
      for (let into = e?.shadowRoot?.elementFromPoint(x, y); into && into !== e; ) {
        e = into;
        into = e.shadowRoot?.elementFromPoint(x, y);
      }
      return e;
    };
    for (const note of shown) {
      const says = note.textContent?.trim().slice(0, 30) ?? '';
      const range = document.createRange();
      range.selectNodeContents(note);
      if (note.scrollHeight > note.clientHeight + 1) found.push(`"${says}" is cut`);
      for (const line of range.getClientRects()) {
        if (line.width < 2 || line.height < 2) continue;
        const where = `${Math.round(line.left)},${Math.round(line.top)}`;
        if (line.top < 0 || line.bottom > innerHeight || line.left < 0 || line.right > innerWidth) {
          found.push(`"${says}" leaves the window at ${where}`);
          break;
        }
        const on = [0.02, 0.5, 0.98].map((k) =>
          at(line.left + k * line.width, (line.top + line.bottom) / 2),
        );
        if (on.some((e) => !e || !(note === e || note.contains(e)))) {
          found.push(`"${says}" is covered at ${where}`);
          break;
        }
      }
    }
    return found;
  });

/** Scrolls all that scrolls, the page itself and what is in it, to a share of its way. */
const scroll = (page: Page, share: number): Promise<void> =>
  page.evaluate((k) => {
    const all = (root: Document | ShadowRoot): Element[] =>
      [...root.querySelectorAll('*')].flatMap((e) => [
        e,
        ...(e.shadowRoot ? all(e.shadowRoot) : []),
      ]);
    for (const e of [document.documentElement, ...all(document)]) {
      if (e.matches('.side, .side > *') || e === document.documentElement) {
        e.scrollTop = k * (e.scrollHeight - e.clientHeight);
      }
    }
  }, share);

describe.each([
  [1920, 1080],
  [1366, 768],
  [1024, 768],
  [390, 844],
])('at %i × %i', (width, height) => {
  /** One page for all places, which follow each other as a visit would. */
  let opened: Opened;
  beforeAll(async () => {
    const viewport = { width, height };
    opened = await browser.open({ viewport, reducedMotion: 'reduce' });
    await opened.page.locator('main').waitFor();
  });
  afterAll(() => opened.close());

  it.each(places)('$name: in view from top to bottom', async ({ name, station, go }) => {
    const { page, errors, shot } = opened;
    await page.keyboard.press(keys[station]);
    await page.locator(`main[data-station="${station}"]`).waitFor();
    await go?.(page);
    // What stood there before is gone with the next frames.
    await frames(page, 2);
    for (const share of [0, 0.5, 1]) {
      await soon(async () => {
        await scroll(page, share);
        expect(await wrong(page), `scrolled ${share}`).toEqual([]);
      });
    }
    await shot(`cautions-${width}-${name.replace(/\W+/g, '-')}`);
    expect(errors).toEqual([]);
  });
});
