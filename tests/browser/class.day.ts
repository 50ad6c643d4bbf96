import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { shipped } from '../../ui/lessons/library.ts';
import { stations } from '../../ui/stations/index.ts';
import { type Held, held } from './held.ts';
import { openBrowser } from './open.ts';
import { frames } from './soon.ts';
import { eachView, leaveField, openStation, stationCount } from './tour.ts';

/**
 * Eight hours of class at thirty times their speed or more (`npm run test:day`): periods, one after the other, of what
 * a class does at the page. After each period what can be collected is collected, and what is left is counted; while
 * something is done, pictures that take longer than a tenth of a second are noted under its name.
 */

/** A class does one thing at the page every twenty seconds at most: from memory. */
const SECONDS = 20;
const HOURS = Number(process.env['TAKEUP_HOURS'] ?? 8);
const DOINGS = (HOURS * 3600) / SECONDS;
const TIMES = 30;

/** A picture that is felt, ms. */
const LONG = 100;
/**
 * What may take that long once in a while, and why. All else may not: what moves, what is pressed, pulled, stepped or
 * undone.
 */
const MAY: Readonly<Record<string, string>> = {
  'a station': 'all of another station is put on the page, and its curves are reckoned',
  'a view': 'what it shows is reckoned and put on the page at once',
  'the wall': 'all of the page is laid out anew',
  'a lesson': 'another brake comes onto the bench, with its state',
  'a guest': 'another brake comes onto the bench, with its state',
  'a film': 'its pictures are painted beside, on the same processors',
  'a link': 'all of the page is loaded',
  'a stretch of life': 'a worker reckons beside, on the same processors',
  'the second window': 'another page is loaded beside',
};

/** What may have come from the first judged period to the last. */
const MORE = { heap: 1.1, nodes: 1.1, listeners: 1.1 };
/** Share of the time before anything is judged: the way back fills (see memory.test.ts). */
const WARM_SHARE = 1 / 4;

interface Counted extends Held {
  readonly doings: number;
}

interface Long {
  readonly ms: number;
  readonly by: string;
}

/** Notes long pictures from the page's first on. Runs in the page. */
function watchFrames(): void {
  const told: Long[] = [];
  const note = (entries: readonly PerformanceEntry[]): void => {
    for (const entry of entries) {
      const { scripts = [] } = entry as unknown as {
        scripts?: {
          invoker: string;
          duration: number;
          sourceURL: string;
          sourceFunctionName: string;
        }[];
      };
      const most = scripts.toSorted((a, b) => b.duration - a.duration)[0];
      told.push({
        ms: entry.duration,
        by: most
          ? `${most.invoker} ${most.sourceURL.split('/').at(-1)} ${most.sourceFunctionName} ${Math.round(most.duration)} ms`
          : 'no script',
      });
    }
  };
  const watch = new PerformanceObserver((list) => note(list.getEntries()));
  watch.observe({ type: 'long-animation-frame', buffered: false });
  const longFrames = (): Long[] => {
    note(watch.takeRecords());
    return told.splice(0);
  };
  Object.assign(globalThis, { longFrames });
}

/** What was noted since it was last asked. */
const longFrames = (page: Page): Promise<Long[]> =>
  page.evaluate(() => (globalThis as unknown as { longFrames: () => Long[] }).longFrames());

class Day {
  doings = 0;
  /** Worst picture of each doing, and how many were long. */
  readonly long = new Map<string, { worst: Long; count: number }>();
  readonly page: Page;

  constructor(page: Page) {
    this.page = page;
  }

  /** One thing that a class does, then pictures as the page draws them. */
  async does(name: string, act: (page: Page) => Promise<unknown>): Promise<void> {
    const { page } = this;
    await act(page);
    await frames(page, 3);
    this.doings++;
    for (const frame of await longFrames(page)) {
      if (frame.ms <= LONG) continue;
      const kept = this.long.get(name);
      const worst = kept && kept.worst.ms > frame.ms ? kept.worst : frame;
      this.long.set(name, { worst, count: (kept?.count ?? 0) + 1 });
    }
  }

  key(name: string, key: string): Promise<void> {
    return this.does(name, (page) => page.keyboard.press(key));
  }

  /** To a station by its place. */
  async open(at: number): Promise<string> {
    let id = '';
    await this.does('a station', async (page) => {
      id = await openStation(page, at);
    });
    return id;
  }

  async openById(wanted: string): Promise<void> {
    await this.open(stations.findIndex(({ id }) => id === wanted));
  }
}

/** The pedal a few times, held and let go, with the drum turning either way. */
async function presses(day: Day): Promise<void> {
  // A button that has the focus would take the space bar for itself.
  await day.page.evaluate(leaveField);
  for (let n = 0; n < 3; n++) {
    await day.does('a press', async (page) => {
      await page.keyboard.down(' ');
      await frames(page, 20);
    });
    await day.does('a release', async (page) => {
      await page.keyboard.up(' ');
      await frames(page, 20);
    });
  }
}

/** A lesson from its first step to its last, by keys, on the wall, the notes in a second window. */
async function lesson(day: Day, at: number): Promise<void> {
  const lessons = shipped.filter((l) => l.kind === 'lesson');
  const chosen = lessons[at % lessons.length];
  if (!chosen) throw new Error('no lesson');
  const { page } = day;
  await day.key('a station', 'l');
  const leave = page.getByRole('button', { name: /^Go on with/ });
  await day.does('a lesson', async () => {
    const button = page.getByRole('button', { name: `: ${chosen.title}` });
    await button.or(leave).first().waitFor();
    await button.first().click();
    await page.locator('takeup-lesson').waitFor();
  });
  await day.key('the wall', 'w');
  const opened = page.context().waitForEvent('page');
  await day.key('the second window', 'i');
  const teacher = await opened;
  await teacher.locator('takeup-teacher .ask').waitFor();
  for (let n = 0; n < chosen.steps.length; n++) {
    await day.key('a guess', 'b');
    await day.key('a lesson', 'PageDown');
    await expect
      .poll(() => page.locator('takeup-lesson [aria-current="step"]').innerText())
      .toBe('Explain');
    await day.key('a lesson', 'PageDown');
  }
  await teacher.close();
  await day.key('the wall', 'w');
  await day.key('a station', 'Escape');
}

/** Hands on a shoe and on the drum: pulled by keys, let go. */
async function hands(day: Day): Promise<void> {
  await day.open(0);
  const { page } = day;
  const button = page.getByRole('button', { name: 'Hands', exact: true });
  await day.does('a view', () => button.click());
  for (const part of ['front shoe', 'drum', 'parking lever']) {
    await day.does('a part', () => page.locator(`.hands-list [data-part="${part}"]`).click());
    await day.does('a pull', async () => {
      await page.getByRole('slider', { name: 'Pull of the hand' }).focus();
      for (let n = 0; n < 5; n++) await page.keyboard.press('ArrowLeft');
      await frames(page, 10);
    });
    await day.key('a pull', 'Escape');
  }
}

/** A guest by the station of faults, and home. */
async function guest(day: Day): Promise<void> {
  await day.openById('faults');
  const { page } = day;
  await day.does('a guest', () =>
    page.getByRole('button', { name: 'Browse', exact: true }).click(),
  );
  await day.does('a guest', async () => {
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.locator('.asked').waitFor();
  });
  await presses(day);
  await day.does('a guest', async () => {
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.asked').count()).toBe(0);
  });
}

/** Wears on to the next click, and back to new; undone and done again. */
async function life(day: Day): Promise<void> {
  await day.openById('wear');
  const { page } = day;
  await day.does('a stretch of life', async () => {
    await page.getByRole('button', { name: 'to next click' }).click();
    await page.getByRole('button', { name: 'Wear on', exact: true }).click();
    await expect.poll(() => page.locator('.undo').getAttribute('aria-label')).toContain('click');
  });
  await day.does('a stretch of life', () =>
    page.getByRole('button', { name: 'Back to new' }).click(),
  );
  for (let n = 0; n < 3; n++) await day.key('an undo', 'Control+z');
  for (let n = 0; n < 3; n++) await day.key('an undo', 'Control+Shift+z');
}

/** A film of a press is begun and stopped, and a link copied out and opened. */
async function takenAway(day: Day): Promise<void> {
  await day.open(0);
  const { page } = day;
  const dialog = page.getByRole('dialog', { name: 'Take away' });
  await day.does('a film', async () => {
    await page.keyboard.press('e');
    await dialog.waitFor();
    await page.keyboard.press('c');
    await dialog.getByRole('button', { name: 'Make it' }).click();
    await dialog.getByRole('progressbar').waitFor();
    await frames(page, 20);
    const stop = dialog.getByRole('button', { name: 'Stop' });
    if (await stop.isVisible()) await stop.click();
    await dialog.getByRole('button', { name: 'Make it' }).waitFor();
  });
  await day.does('a film', async () => {
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'hidden' });
  });
  await day.does('a link', async () => {
    await page.goto(page.url());
    await page.reload();
    await stationCount(page);
  });
  await day.does('a link', () => page.goBack());
  await day.does('a link', () => page.goForward());
}

/** All stations, one after the other, and the views of two of them. */
async function tour(day: Day, period: number): Promise<void> {
  const count = await stationCount(day.page);
  for (let at = 0; at < count; at++) {
    await day.open(at);
    if (at % 9 === period % 9) await eachView(day.page, () => day.does('a view', async () => {}));
  }
}

async function period(day: Day, n: number): Promise<void> {
  await day.open(0);
  await presses(day);
  await lesson(day, n);
  await hands(day);
  await guest(day);
  await life(day);
  await takenAway(day);
  await tour(day, n);
}

it('a day of class leaves nothing behind, says nothing on the console, and keeps every picture short but named ones', async () => {
  const browser = await openBrowser();
  const { page, errors, warnings, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    alone: true,
    prepare: watchFrames,
  });
  const client = await page.context().newCDPSession(page);
  await client.send('Performance.enable');
  await stationCount(page);
  const day = new Day(page);
  const all: Counted[] = [];
  const from = Date.now();
  for (let n = 0; day.doings < DOINGS; n++) {
    await period(day, n);
    const now = { ...(await held(page, client)), doings: day.doings };
    all.push(now);
    const past = (Date.now() - from) / 1000;
    console.log(
      `${((day.doings * SECONDS) / 3600).toFixed(1)} h of class in ${(past / 60).toFixed(1)} min ` +
        `(×${((day.doings * SECONDS) / past).toFixed(0)}): heap ${now.heap} kB, ${now.nodes} nodes, ` +
        `${now.listeners} listeners, ${now.workers} workers`,
    );
  }
  const times = (day.doings * SECONDS * 1000) / (Date.now() - from);
  for (const [name, { worst, count: of }] of day.long)
    console.log(
      `${of} long pictures at ${name}: ${Math.round(worst.ms)} ms at most (${worst.by})${MAY[name] ? `; may be: ${MAY[name]}` : ''}`,
    );
  const warm = all.findIndex((c) => c.doings >= WARM_SHARE * DOINGS);
  const [first, last] = [all[warm], all.at(-1)];
  if (!first || !last) throw new Error('no period to judge');
  for (const what of ['heap', 'nodes', 'listeners'] as const)
    expect(last[what], `${what}, period by period: ${all.map((c) => c[what])}`).toBeLessThanOrEqual(
      MORE[what] * first[what],
    );
  expect(last.workers).toBeLessThanOrEqual(first.workers);
  expect(errors).toEqual([]);
  expect(warnings).toEqual([]);
  expect([...day.long.keys()].filter((name) => !(name in MAY))).toEqual([]);
  expect(times, 'times the speed of a class').toBeGreaterThan(TIMES);
  await close();
  await browser.close();
});
