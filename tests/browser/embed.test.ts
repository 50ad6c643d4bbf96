import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContext, Frame, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { seriousFaults } from './axe.ts';
import { type Host, hostFolder } from './host.ts';
import { builtPage, startBrowser } from './open.ts';
import { slowDown } from './slow.ts';
import { soon } from './soon.ts';

/** The brake in a course's page: of another site, with a strict policy, and no more than its address says. */

let browser: Browser;
let bench: Host;
let course: Host;

/** The course's own policy: its own scripts and rules, frames of the bench, nothing else. */
const policy = (from: string): string =>
  `default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; frame-src ${new URL(from).origin}; base-uri 'none'; form-action 'none'`;

const pageOf = (body: string, from: string) => ({
  text: `<!doctype html><html lang="en"><title>A course</title><meta charset="utf-8"><script type="module" src="/takeup-brake.js"></script><link rel="stylesheet" href="/course.css"><h1>A course</h1>${body}<p>After it.</p></html>`,
  headers: { 'content-type': 'text/html', 'content-security-policy': policy(from) },
});

beforeAll(async () => {
  browser = await startBrowser();
  bench = await hostFolder(builtPage, '/takeup/', { name: 'bench.localhost' });
  const { address } = bench;
  const also = new Map<string, { text: string; headers: Record<string, string> }>([
    [
      '/course.css',
      {
        text: 'body{margin:0;height:3000px} takeup-brake,iframe{width:720px;height:540px;aspect-ratio:auto;border:0} .small{width:400px;height:420px}',
        headers: { 'content-type': 'text/css' },
      },
    ],
    ['/favicon.ico', { text: '', headers: {} }],
    [
      '/takeup-brake.js',
      {
        text: readFileSync(join(builtPage(), 'takeup-brake.js'), 'utf8'),
        headers: { 'content-type': 'text/javascript' },
      },
    ],
    [
      '/lesson',
      pageOf(
        `<takeup-brake bench="${address}" controls="pedal,drum,readings,names" label="Quay van">x</takeup-brake>`,
        address,
      ),
    ],
    [
      '/still',
      pageOf(
        `<takeup-brake class="small" bench="${address}" moment="${address}?station=park&brake=bench-brake" controls="none" view="board"></takeup-brake>`,
        address,
      ),
    ],
    ['/bench', pageOf(`<iframe title="bench" src="${address}"></iframe>`, address)],
  ]);
  course = await hostFolder(builtPage, '/nothing-of-it/', { name: 'course.localhost', also });
});
afterAll(async () => {
  await browser.close();
  await bench.stop();
  await course.stop();
});

interface Visit {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly errors: string[];
  readonly hosts: Set<string>;
}

async function visit(path: string): Promise<Visit> {
  const context = await browser.newContext({
    viewport: { width: 900, height: 700 },
    reducedMotion: 'reduce',
  });
  // Sounds that were begun, what was to be kept, and messages that came to the course's page.
  await context.addInitScript(() => {
    const told = { sounds: 0, kept: 0, messages: 0 };
    Object.assign(globalThis, { told });
    // Firefox has no class for what its empty page may not keep.
    const counts = (of: object | undefined, name: string): void => {
      if (!of) return;
      const does = Reflect.get(of, name) as (...asked: unknown[]) => unknown;
      Reflect.set(of, name, function (this: unknown, ...asked: unknown[]) {
        told.kept += 1;
        return does.apply(this, asked);
      });
    };
    counts(Storage.prototype, 'setItem');
    counts(IDBFactory.prototype, 'open');
    counts(globalThis.CacheStorage?.prototype, 'open');
    counts(globalThis.ServiceWorkerContainer?.prototype, 'register');
    globalThis.AudioContext = new Proxy(AudioContext, {
      construct(target, how) {
        told.sounds += 1;
        return Reflect.construct(target, how) as object;
      },
    });
    addEventListener('message', () => {
      told.messages += 1;
    });
  });
  const hosts = new Set<string>();
  context.on('request', (r) => hosts.add(new URL(r.url()).host));
  const page = await context.newPage();
  await slowDown(page);
  const errors: string[] = [];
  page.on('pageerror', (e) => errors.push(String(e)));
  page.on('console', (m) => {
    if (m.type() === 'error') errors.push(m.text());
  });
  await page.goto(new URL(path, course.address).href);
  return { context, page, errors, hosts };
}

async function frameOf(page: Page): Promise<Frame> {
  await expect.poll(() => page.frames().length).toBe(2);
  const frame = page.frames()[1] as Frame;
  await frame.locator('takeup-stage canvas').first().waitFor();
  return frame;
}

const torque = (frame: Frame) => async (): Promise<number> =>
  Number((await frame.locator('[data-key="torque"] dd').innerText()).replace(/[^\d.]/g, ''));

const told = (at: Page | Frame) =>
  at.evaluate(
    () =>
      (globalThis as unknown as { told: { sounds: number; kept: number; messages: number } }).told,
  );
const QUIET = { sounds: 0, kept: 0, messages: 0 };

/** What the browser keeps for the bench's site, where the view has a window of its own: in a frame it may keep nothing anyway. */
const keptBy = (page: Page) =>
  page.evaluate(async () => ({
    local: localStorage.length,
    session: sessionStorage.length,
    bases: (await indexedDB.databases()).length,
    caches: (await caches.keys()).length,
    workers: (await navigator.serviceWorker.getRegistrations()).length,
    cookies: document.cookie,
  }));
const NOTHING = { local: 0, session: 0, bases: 0, caches: 0, workers: 0, cookies: '' };

it('is pressed by keys inside a page with a strict policy, keeps nothing and makes no sound', async () => {
  const { context, page, errors, hosts } = await visit('/lesson');
  const frame = await frameOf(page);
  expect(await page.locator('iframe').getAttribute('title')).toBe('Quay van');
  // By Tab alone: stage, drum, names, pedal, in the order in which they are seen.
  const focused = (): Promise<string> =>
    frame.evaluate(() => {
      let at = document.activeElement;
      while (at?.shadowRoot?.activeElement) at = at.shadowRoot.activeElement;
      return (at?.getAttribute('aria-label') ?? at?.textContent ?? '').slice(0, 8).trim();
    });
  const reached = [await focused()];
  for (let n = 0; n < 12 && reached.at(-1) !== 'Pedal'; n++) {
    await page.keyboard.press('Tab');
    // The frame is in a process of its own, and hears of a key later; a stop before the frame changes nothing in it.
    await expect
      .poll(focused, { timeout: 3000 })
      .not.toBe(reached.at(-1))
      .catch(() => undefined);
    reached.push(await focused());
  }
  expect(reached.slice(-6)).toEqual([
    'Brake: a',
    'Forward',
    'Stopped',
    'Backward',
    'Names',
    'Pedal',
  ]);
  await page.keyboard.press('Enter');
  // The van's 227 N·m at 40 bar (tests/reference/teaching-tables.md).
  await soon(async () => expect(await torque(frame)()).toBeGreaterThan(200));
  await page.keyboard.press('Escape');
  await soon(async () => expect(await torque(frame)()).toBeLessThan(20));
  // Keys of the bench are none here.
  for (const key of ['2', 'w', '?', 't', 'e', 'm', 'l']) await page.keyboard.press(key);
  await page.keyboard.press('Control+z');
  await frame.getByRole('button', { name: 'Backward' }).click();
  await expect
    .poll(() => frame.getByRole('button', { name: 'Backward' }).getAttribute('aria-pressed'))
    .toBe('true');
  expect(await frame.locator('dialog, main, nav').count()).toBe(0);
  expect(await told(frame)).toEqual(QUIET);
  expect((await told(page)).messages).toBe(0);
  expect(errors).toEqual([]);
  expect([...hosts].sort()).toEqual(
    [bench.address, course.address].map((a) => new URL(a).host).sort(),
  );
  await page.screenshot({ path: 'tests/browser/shots/embed-lesson.png' });
  await context.close();
});

it('does what its address says and no more: not driven by messages, not read by the page around it', async () => {
  const { context, page, errors } = await visit('/still');
  const frame = await frameOf(page);
  expect(await frame.locator('button, a, input, select, [role="slider"], dl').count()).toBe(0);
  const before = await frame.evaluate(() => location.href);
  expect(before).toMatch(/embed\.html\?station=park&brake=bench-brake&controls=none&view=board$/);
  expect(
    await page.evaluate(() => {
      const frame = document.querySelector('takeup-brake')?.shadowRoot?.querySelector('iframe');
      for (const said of ['press', { press: 40 }, 'take over', { ask: 'blank', n: 1, by: 1 }])
        frame?.contentWindow?.postMessage(said, '*');
      try {
        return String(frame?.contentWindow?.document.body.innerText);
      } catch (e) {
        return (e as Error).name;
      }
    }),
  ).toBe('SecurityError');
  await page.mouse.move(100, 200);
  await page.mouse.wheel(0, 300);
  // Turned over the frame, the wheel moves the page around it.
  await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(0);
  await frame.locator('[role="application"]').focus();
  for (const key of [' ', '+', 'Enter', '1']) await page.keyboard.press(key);
  const session = await frame.evaluate(() => {
    const { moment } = (
      document.querySelector('takeup-embed') as unknown as {
        session: { moment: { pedal: number; station: string; view: { zoom: { factor: number } } } };
      }
    ).session;
    return [moment.pedal, moment.station, moment.view.zoom.factor];
  });
  expect(session).toEqual([0, 'park', 1]);
  expect(await frame.evaluate(() => location.href)).toBe(before);
  expect((await told(frame)).kept).toBe(0);
  expect((await told(page)).messages).toBe(0);
  expect(errors).toEqual([]);
  await page.screenshot({ path: 'tests/browser/shots/embed-still.png' });
  await context.close();
});

it('the bench itself is not to be framed', async () => {
  const { context, page, errors } = await visit('/bench');
  await expect.poll(() => errors.join()).toMatch(/frame-ancestors/);
  expect(await page.frames()[1]?.locator('takeup-app').count()).toBe(0);
  await context.close();
});

it.each([
  [320, 480],
  [480, 360],
  [720, 540],
  [1366, 768],
  [320, 300],
] as const)('fits its place, %i × %i', async (width, height) => {
  const page = await browser.newPage({ viewport: { width, height } });
  await slowDown(page);
  await page.goto(
    new URL('embed.html?controls=pedal,drum,readings,names,link', bench.address).href,
  );
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.getByRole('slider', { name: 'Pedal' }).waitFor();
  await soon(async () => {
    const { over, low, stage } = await page.evaluate(() => {
      const root = document.querySelector('takeup-embed')?.shadowRoot;
      const place = (selector: string) => root?.querySelector(selector)?.getBoundingClientRect();
      const { scrollWidth, scrollHeight } = document.documentElement;
      return {
        over: [scrollWidth - innerWidth, scrollHeight - innerHeight],
        low: (place('takeup-pedal')?.bottom ?? Infinity) - innerHeight,
        stage: place('.stage')?.height ?? 0,
      };
    });
    expect(over).toEqual([0, 0]);
    expect(low).toBeLessThanOrEqual(0);
    expect(stage).toBeGreaterThan(80);
  });
  expect(await seriousFaults(page)).toEqual([]);
  await page.getByRole('slider', { name: 'Pedal' }).press('Enter');
  await expect
    .poll(() => page.getByRole('slider', { name: 'Pedal' }).getAttribute('aria-valuenow'))
    .not.toBe('0');
  expect(await keptBy(page)).toEqual(NOTHING);
  await page.screenshot({ path: `tests/browser/shots/embed-${width}.png` });
  await page.close();
});

it('says what is wrong with an address, and what is allowed', async () => {
  const page = await browser.newPage();
  await slowDown(page);
  for (const [query, says] of [
    ['?controls=pedal,engine', /controls: found engine; allowed: none, or some of pedal/],
    ['?view=wall', /view: found wall; allowed: sheet, board/],
    ['?brake=nobody', /brake: found nobody; allowed: quay-van/],
    ['?more=#AAAA', /behind #/],
  ] as const) {
    // A hash alone would not load it anew.
    await page.goto('about:blank');
    await page.goto(new URL(`embed.html${query}`, bench.address).href);
    await expect.poll(() => page.getByRole('alert').innerText()).toMatch(says);
  }
  await page.close();
});
