import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { stations } from '../../ui/stations/index.ts';
import { inChromiumAlone } from './firefox.ts';
import { hostFolder } from './host.ts';
import { builtPage, type OpenBrowser, type Opened, openBrowser, startBrowser } from './open.ts';
import { frames, noWider, soon, steady } from './soon.ts';
import { endWorker, holdWorkers } from './workers.ts';

/**
 * What may go wrong around the page, put in on purpose: nothing is lost, and who has to know is told in a sentence.
 * Which test is for which fault, those of other files too: `tests/faults-put-in.md`.
 */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const laptop = { viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce' } as const;
async function open(options: Parameters<OpenBrowser['open']>[0] = {}): Promise<Opened> {
  const opened = await browser.open({ ...laptop, ...options });
  await opened.page.locator('takeup-stage canvas').first().waitFor();
  return opened;
}
const at = (page: Page, id: string): Promise<void> =>
  expect.poll(() => page.locator('main').getAttribute('data-station')).toBe(id);
const troubles = (page: Page): Promise<string[]> =>
  page.locator('takeup-app .troubles p span').allInnerTexts();
const undo = (page: Page): Promise<string | null> =>
  page.locator('button.undo').first().getAttribute('aria-label');
/** All readings beside the stage, once they stand. */
const readings = (page: Page): Promise<string[]> =>
  steady(page, () => page.locator('.side [data-key]').allInnerTexts());
/** What this window keeps of the bench. */
const kept = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const { moment } = JSON.parse(sessionStorage.getItem('takeup-moment-1') ?? '{}');
    return JSON.stringify(moment);
  });

it('a record of a later version is put aside under its own key, told in one sentence, and the page opens', async () => {
  const { page, errors, close } = await open({ alone: true });
  await page.keyboard.press('4');
  await at(page, 'park');
  const later = await steady(page, () =>
    page.evaluate(() => {
      const text = localStorage.getItem('takeup-moment-1') ?? '';
      return text.replace(/"version":(\d+)/, (_, n) => `"version":${Number(n) + 1},"tyres":4`);
    }),
  );
  expect(later).toContain('tyres');
  await page.evaluate((text) => {
    // Leaving the page keeps the record once more: that must not hide what is tested.
    window.addEventListener('pagehide', (e) => e.stopImmediatePropagation(), true);
    localStorage.setItem('takeup-moment-1', text);
    sessionStorage.clear();
  }, later);
  await page.goto(new URL('?', browser.address).href);
  await page.locator('takeup-stage canvas').first().waitFor();
  await expect.poll(() => troubles(page)).toHaveLength(1);
  const [said = ''] = await troubles(page);
  expect(said).toMatch(
    /^What was kept under "takeup-moment-1" could not be read: version: found \d+/,
  );
  expect(said).toMatch(/It is still in this browser under "takeup-moment-1-unread"\.$/);
  expect(await page.evaluate(() => localStorage.getItem('takeup-moment-1-unread'))).toBe(later);
  await at(page, 'apply');
  expect(errors).toEqual([]);
  await close();
});

/** A year, ms. */
const YEAR = 365 * 24 * 3_600_000;

it('a clock that is set back a year, then on by ten, changes nothing on the bench', async () => {
  const { page, errors, close } = await open({ alone: true });
  await page.addInitScript(() => {
    const real = Date.now.bind(Date);
    const by = (): number => Number(sessionStorage.getItem('planted-clock') ?? 0);
    globalThis.Date = new Proxy(Date, {
      construct: (target, args) => Reflect.construct(target, args.length ? args : [real() + by()]),
      get: (target, name) => (name === 'now' ? () => real() + by() : Reflect.get(target, name)),
    });
  });
  await page.reload();
  const setClock = (by: number): Promise<number> =>
    page.evaluate((ms) => {
      sessionStorage.setItem('planted-clock', String(ms));
      return new Date().getFullYear();
    }, by);
  await page.keyboard.press('4');
  await at(page, 'park');
  await page.getByLabel('One notch on').click();
  const before = await readings(page);
  const year = new Date().getFullYear();
  for (const years of [-1, 10]) {
    expect(Math.abs((await setClock(years * YEAR)) - year - years)).toBeLessThanOrEqual(1);
    await page.getByLabel('One notch on').click();
    await page.getByLabel('One notch back').click();
    await soon(async () => expect(await readings(page)).toEqual(before));
    const said = await undo(page);
    await page.reload();
    await at(page, 'park');
    await soon(async () => expect(await readings(page)).toEqual(before));
    expect(await undo(page)).toBe(said);
  }
  expect(await troubles(page)).toEqual([]);
  expect(errors).toEqual([]);
  await close();
});

it('a tab that was hidden for an hour, its pedal down, stands as it stood', async () => {
  const { page, errors, close } = await open({ clock: true });
  const hide = (hidden: boolean): Promise<void> =>
    page.evaluate((now) => {
      const told = (name: string, value: unknown): void => {
        Object.defineProperty(document, name, { configurable: true, get: () => value });
      };
      told('visibilityState', now ? 'hidden' : 'visible');
      told('hidden', now);
      document.dispatchEvent(new Event('visibilitychange'));
    }, hidden);
  const pedal = page.locator('takeup-pedal [role="slider"]');
  await pedal.focus();
  await page.keyboard.press('Enter');
  await page.clock.runFor(2000);
  await expect.poll(() => pedal.getAttribute('aria-valuetext')).toContain('40 bar');
  const look = (): Promise<string[]> => page.locator('.side [data-key]').allInnerTexts();
  const before = await look();
  const was = await kept(page);
  await hide(true);
  // A hidden page gets no frames; an hour goes by at once.
  await page.clock.fastForward(3_600_000);
  await hide(false);
  await page.clock.runFor(500);
  expect(await look()).toEqual(before);
  expect(await kept(page)).toBe(was);
  expect(await troubles(page)).toEqual([]);
  expect(errors).toEqual([]);
  await close();
});

it('two tabs and a teacher’s window worked in by turns: each keeps its own bench, also after a reload', async () => {
  const { page, errors, close } = await open();
  const other = await page.context().newPage();
  await other.goto(browser.address);
  await other.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('l');
  await page
    .getByRole('button', { name: /^Begin: / })
    .first()
    .click();
  await page.locator('takeup-lesson').waitFor();
  const lesson = await page.locator('takeup-lesson h1, takeup-lesson h2').first().innerText();
  const teachers = page.context().waitForEvent('page');
  await page.keyboard.press('i');
  const teacher = await teachers;
  await teacher.locator('takeup-teacher .ask').waitFor();
  await other.bringToFront();
  await other.keyboard.press('4');
  await at(other, 'park');
  await other.getByLabel('One notch on').click();
  const parked = await readings(other);
  await page.bringToFront();
  await page.keyboard.press('PageDown');
  await page.reload();
  await other.reload();
  await at(other, 'park');
  await soon(async () => expect(await readings(other)).toEqual(parked));
  await page.locator('takeup-lesson').waitFor();
  expect(await page.locator('takeup-lesson h1, takeup-lesson h2').first().innerText()).toBe(lesson);
  // The teacher's window follows the lesson that was opened anew.
  await teacher.locator('takeup-teacher .ask').waitFor();
  expect(await troubles(page)).toEqual([]);
  expect(await troubles(other)).toEqual([]);
  expect(errors).toEqual([]);
  await close();
});

/** Buttons of a row share a border, so the first one's may lie outside, px. */
const BORDER = 2;

it('at 200 % of the browser’s own zoom every station is there, none wider than its window', async () => {
  // A laptop's window of 1366 × 768 then has half as many pixels of the page's own.
  const { page, errors, close } = await open({
    viewport: { width: 683, height: 384 },
    deviceScaleFactor: 2,
  });
  for (const { id } of stations) {
    await page.goto(new URL(`?station=${id}`, browser.address).href);
    await at(page, id);
    await noWider(page, 683);
    // What is to be pressed can be brought into view, none of it beside the window.
    const beside = (): Promise<string[]> =>
      page.locator('main button, main select, main input').evaluateAll(
        (all, border) =>
          all
            .filter((e) => e.checkVisibility())
            .map((e) => ({ box: e.getBoundingClientRect(), says: e.outerHTML.slice(0, 90) }))
            .filter(({ box }) => box.width > 1)
            .filter(({ box }) => box.left < -border || box.right > innerWidth + border)
            .map(({ says }) => says),
        BORDER,
      );
    await soon(async () => expect(await beside(), id).toEqual([]));
  }
  expect(errors).toEqual([]);
  await close();
});

it('after a storm of window sizes the page stands as if it had been opened at the last', async () => {
  const { page, errors, close } = await open();
  const fresh = await open();
  const layout = (of: Page): Promise<string[]> =>
    of.locator('header.top > *, main > *, takeup-stage canvas').evaluateAll((all) =>
      all.map((e) => {
        const { x, y, width, height } = e.getBoundingClientRect();
        const canvas = e instanceof HTMLCanvasElement ? `${e.width}×${e.height}` : '';
        return `${e.tagName} ${[x, y, width, height].map(Math.round)} ${canvas}`;
      }),
    );
  for (let i = 0; i < 60; i++) {
    // Phones, tablets, walls and slivers, the same each time.
    const [width, height] = [320 + ((i * 397) % 1600), 320 + ((i * 211) % 800)];
    await page.setViewportSize({ width, height });
    if (i % 7 === 0) await frames(page, 1);
  }
  await page.setViewportSize(laptop.viewport);
  const wanted = await steady(fresh.page, () => layout(fresh.page));
  await expect.poll(() => layout(page)).toEqual(wanted);
  const bench = async (of: Page): Promise<unknown> => JSON.parse(await kept(of)).bench;
  expect(await bench(page)).toEqual(await bench(fresh.page));
  expect(errors).toEqual([]);
  await fresh.close();
  await close();
});

it('a pedal held while the printer’s dialog takes the keyboard is let go, and the bench stays', async () => {
  const { page, errors, close } = await open();
  const pedal = page.locator('takeup-pedal [role="slider"]');
  const bench = async (): Promise<unknown> => JSON.parse(await kept(page)).bench;
  const before = await steady(page, bench);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.keyboard.down(' ');
  await expect.poll(() => pedal.getAttribute('aria-valuetext')).toContain('40 bar');
  // The dialog is the system's own: the window loses the keyboard, and the key comes up elsewhere.
  await page.evaluate(() => {
    window.dispatchEvent(new Event('beforeprint'));
    window.dispatchEvent(new Event('blur'));
  });
  await page.emulateMedia({ media: 'print' });
  await frames(page, 5);
  await page.emulateMedia({ media: null });
  await page.evaluate(() => {
    window.dispatchEvent(new Event('afterprint'));
    window.dispatchEvent(new Event('focus'));
  });
  await expect.poll(() => pedal.getAttribute('aria-valuenow')).toBe('0');
  const figure = (key: string): Promise<string> =>
    page.locator(`[data-key="${key}"] .v`).first().innerText();
  await expect.poll(() => figure('linePressure')).toMatch(/^0\.0/);
  await expect.poll(() => figure('torque')).toMatch(/^0\.0/);
  await expect.poll(bench).toEqual(before);
  await page.keyboard.up(' ');
  expect(errors).toEqual([]);
  await close();
});

/** Lets the system's own dialog for files give a handle that cannot be written. Runs in the page. */
function noRoom(): void {
  Object.assign(globalThis, {
    showSaveFilePicker: async () => ({
      name: 'chosen.file',
      createWritable: async () => ({
        write: async () => {
          throw new DOMException('full', 'QuotaExceededError');
        },
        close: async () => undefined,
      }),
    }),
  });
}
const NO_ROOM =
  'chosen.file was not saved: there is no room on the disk. What stands on the bench stays as it is.';

it('a disk that is full when a file is saved: each way says so, and nothing is thrown', async () => {
  const { page, errors, close } = await open({ alone: true });
  await page.evaluate(noRoom);
  const dialog = page.locator('dialog[open]');
  const before = await kept(page);
  for (const [key, button] of [
    ['s', 'Save as a file'],
    ['f', /^Save/],
    ['d', /^(Save|CSV)/],
    ['m', /^(Save|SVG)/],
  ] as const) {
    await page.keyboard.press('e');
    await dialog.waitFor();
    // A dialog that has just come may not hear its keys yet.
    const save = dialog.getByRole('button', { name: button }).first();
    await soon(async () => {
      await page.keyboard.press(key);
      await save.waitFor({ timeout: 2000 });
    });
    await save.click();
    await dialog.getByText(NO_ROOM).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog.count()).toBe(0);
  }
  expect(await kept(page)).toBe(before);
  expect(errors).toEqual([]);
  await close();
});

it('curves whose worker is missing, or ends without a word, are worked out on the page, each point once', async () => {
  const points = (page: Page): Promise<string | null> =>
    page.locator('takeup-curve path[stroke-width="3.5"]').first().getAttribute('d');
  const sound = await open({ alone: true, path: '?station=vary' });
  const busy = (page: Page): Promise<number> =>
    page.locator('takeup-curve [aria-busy="true"]').count();
  await sound.page.locator('takeup-curve path[stroke-width="3.5"]').first().waitFor();
  await expect.poll(() => busy(sound.page)).toBe(0);
  const wanted = await steady(sound.page, () => points(sound.page));
  await sound.close();

  const missing = await open({ alone: true });
  await missing.page.route('**/vary-worker*', (route) => route.abort());
  await missing.page.keyboard.press('v');
  await expect.poll(() => points(missing.page)).toBe(wanted);
  expect(missing.errors.filter((e) => !/vary-worker|ERR_FAILED/.test(e))).toEqual([]);
  await missing.close();

  const killed = await open({ alone: true });
  const dies = `const post = self.postMessage.bind(self);
    self.postMessage = (what) => { post(what); self.postMessage = () => {}; self.close(); };`;
  await killed.page.route('**/vary-worker*', async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, body: `${dies}\n${await response.text()}` });
  });
  await killed.page.keyboard.press('v');
  await expect.poll(() => points(killed.page)).toBe(wanted);
  expect(killed.errors).toEqual([]);
  await killed.close();
});

it('a film whose worker ends without a word is told of, and can be made again', async () => {
  const { page, errors, close } = await open({ alone: true, prepare: holdWorkers });
  await page.keyboard.press('e');
  const dialog = page.locator('dialog[open]');
  await dialog.waitFor();
  await page.keyboard.press('c');
  await dialog.getByRole('radio', { name: /four minutes/ }).check();
  await dialog.getByRole('button', { name: 'Make it' }).click();
  const share = (): Promise<number> =>
    dialog.getByRole('progressbar').evaluate((e) => (e as HTMLProgressElement).value);
  await expect.poll(share).toBeGreaterThan(0);
  await endWorker(page);
  await dialog
    .getByText(
      'What makes films has ended by itself, and nothing was kept of this one: make it again.',
    )
    .waitFor();
  await dialog.getByRole('button', { name: 'Make it' }).click();
  await expect.poll(share).toBeGreaterThan(0);
  await dialog.getByRole('button', { name: 'Stop' }).click();
  expect(errors).toEqual([]);
  await close();
});

/** Files of parts that come when they are asked for. */
const LATER =
  /\/(readings-table|keys-sheet|take-away|bench-sheet|wall|wall-code|class-kit|dials|look-back-rows)-[\w-]{8}\.js/;
const NOT_LOADED = /^What this needs could not be loaded: is the network there\?/;

it('a part of the page that cannot be loaded: whoever asks for it is told, and the bench stays', async () => {
  const { page, errors, close } = await open({ alone: true });
  await page.route(LATER, (route) => route.abort());
  await page.reload();
  await page.locator('takeup-stage canvas').first().waitFor();
  await at(page, 'apply');
  const told = async (): Promise<void> => {
    await expect.poll(() => troubles(page)).toHaveLength(1);
    expect((await troubles(page))[0]).toMatch(NOT_LOADED);
    await page.locator('takeup-app .troubles button').click();
    await expect.poll(() => troubles(page)).toEqual([]);
  };
  await page.keyboard.press('u');
  await told();
  await page.keyboard.press('u');
  const before = await steady(page, () => kept(page));
  for (const key of ['t', '?', 'e', 'E', 'd', 'g']) {
    await page.keyboard.press(key);
    await told();
  }
  await page.getByRole('button', { name: 'Bench', exact: true }).click();
  await told();
  // The look back ends by itself: it would have no controls.
  await page.keyboard.press('r');
  await page.getByText(NOT_LOADED).first().waitFor();
  await page.keyboard.press('w');
  const missed = page.locator('main.wall [role="alert"]');
  await missed.waitFor();
  expect(await missed.innerText()).toMatch(NOT_LOADED);
  await page.keyboard.press('q');
  await page.keyboard.press('Escape');
  await told();
  expect(await steady(page, () => kept(page))).toBe(before);
  await page.unroute(LATER);
  await page.reload();
  await page.locator('takeup-stage canvas').first().waitFor();
  await soon(async () => {
    await page.keyboard.press('t');
    await page.locator('takeup-readings dialog[open]').waitFor({ timeout: 2000 });
  });
  expect(errors.filter((error) => !LATER.test(error))).toEqual([]);
  await close();
});

// Firefox remembers that a script could not be had; the sentence there says to load the page anew.
inChromiumAlone(
  'a station whose script could not be loaded comes once the network is back, without a reload',
  async () => {
    const { page, close } = await open({ alone: true });
    const all = /\/(inspect|units)-[\w-]{8}\.js/;
    await page.route(all, (route) => route.abort());
    await page.reload();
    await page.locator('takeup-stage canvas').first().waitFor();
    await page.keyboard.press('5');
    await page.locator('.waiting').getByText(NOT_LOADED).waitFor();
    await page.unroute(all);
    await soon(async () => {
      await page.keyboard.press('1');
      await page.keyboard.press('5');
      await page.locator('takeup-inspect').waitFor({ timeout: 3000 });
    });
    expect(await page.locator('.waiting').count()).toBe(0);
    await close();
  },
);

it('a file let go before what takes files has come is taken once it is there', async () => {
  const { page, errors, close } = await open({ alone: true });
  let come: () => void = () => {};
  const held = new Promise<void>((resolve) => {
    come = resolve;
  });
  await page.route('**/drop-*.js', async (route) => {
    await held;
    await route.continue();
  });
  await page.reload();
  await page.locator('takeup-stage canvas').first().waitFor();
  const kept = await page.evaluate(() => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File(['no moment'], 'shopping.txt', { type: 'text/plain' }));
    return ['dragover', 'drop'].map((kind) => {
      const e = new DragEvent(kind, { dataTransfer, bubbles: true, cancelable: true });
      document.body.dispatchEvent(e);
      return e.defaultPrevented;
    });
  });
  expect(kept).toEqual([true, true]);
  expect(await troubles(page)).toEqual([]);
  come();
  await expect.poll(() => troubles(page)).toHaveLength(1);
  expect((await troubles(page))[0]).toContain('shopping.txt');
  expect(errors).toEqual([]);
  await close();
});

it('a network that goes in the middle of an update leaves the page as it was; it is offered when it is back', async () => {
  const built = builtPage();
  const newer = mkdtempSync(join(tmpdir(), 'takeup-update-'));
  cpSync(built, newer, { recursive: true });
  const worker = readFileSync(join(newer, 'offline.js'), 'utf8');
  const [, version = ''] = /`takeup \$\{\w+\} `,\w+=\w+\+"([0-9a-f]{16})"/.exec(worker) ?? [];
  expect(version).not.toBe('');
  writeFileSync(join(newer, 'offline.js'), worker.replace(version, 'fedcba9876543210'));
  let folder = built;
  /** Answers until the network goes. */
  let left = Number.POSITIVE_INFINITY;
  const host = await hostFolder(() => {
    left--;
    return left < 0 ? join(tmpdir(), 'takeup-nowhere') : folder;
  });
  const own = await startBrowser();
  const context = await own.newContext(laptop);
  const page = await context.newPage();
  await page.goto(host.address);
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state ?? ''))
    .toBe('activated');
  await page.keyboard.press('4');
  await at(page, 'park');
  await page.getByLabel('One notch on').click();
  const before = await readings(page);

  folder = newer;
  // The new list comes, and a few of its files; then nothing.
  left = 8;
  await page.evaluate(async () => {
    await (await navigator.serviceWorker.getRegistration())?.update().catch(() => undefined);
  });
  await expect.poll(() => left).toBeLessThan(0);
  await page.reload();
  await at(page, 'park');
  await soon(async () => expect(await readings(page)).toEqual(before));
  expect(await page.locator('.newer').count()).toBe(0);

  left = Number.POSITIVE_INFINITY;
  await page.reload();
  await page.locator('.newer').waitFor();
  await page.getByRole('button', { name: 'Open it' }).click();
  await expect
    .poll(() =>
      page
        .locator('.newer')
        .count()
        .catch(() => 1),
    )
    .toBe(0);
  await at(page, 'park');
  await soon(async () => expect(await readings(page)).toEqual(before));
  await host.stop();
  await own.close();
  rmSync(newer, { recursive: true });
});
