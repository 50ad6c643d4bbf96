import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { onTestFailed } from 'vitest';
import { serve } from '../../ui/serve/static.mjs';
import { findBrowser } from '../run/browser.mjs';
import { Contexts } from './contexts.ts';
import { FIREFOX, Firefoxes, forFirefox, notThePage, startFirefox } from './firefox.ts';
import { SLOW, slowDown } from './slow.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** On a phone the page begins with Start, which has tests of its own (start.test.ts): the others begin at the brake. */
const AT_THE_BRAKE = '?station=apply';
const isPhone = ({ viewport }: BrowserContextOptions): boolean =>
  viewport != null && (viewport.width <= 900 || viewport.height <= 520);

/** Quiet, and without traffic of the browser's own. */
const flags = [
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // The same colours on every screen, so that pictures can be compared.
  '--force-color-profile=srgb',
];

export interface Opened {
  readonly page: Page;
  /** Errors of the page so far: thrown, on the console, refused by the content policy, not loaded. */
  readonly errors: readonly string[];
  readonly warnings: readonly string[];
  /** Keeps a picture of the page as tests/browser/shots/NAME.png and gives it. */
  shot(name: string): Promise<Buffer>;
  close(): Promise<void>;
}

/**
 * `clock`: a test can stop the page's time and let it run. `language`: what the browser says the reader's
 * is, though it may be none. `ratio`: device pixels in a CSS one as the page is told, where a picture of it
 * is taken at another scale. `few`: the page shows what tells most alone, as to whoever opens it first; the
 * other tests are of all that it can show. `prepare` runs in the page before its own scripts.
 * `alone`: in a context that no other test uses, before or after.
 */
type OpenOptions = BrowserContextOptions & {
  readonly path?: string;
  readonly clock?: boolean;
  readonly language?: string;
  readonly ratio?: number;
  readonly few?: boolean;
  readonly prepare?: () => void;
  readonly alone?: boolean;
};

export interface OpenBrowser {
  /** Where the built page is served. */
  readonly address: string;
  /** A new page in a context that remembers nothing of another (contexts.ts). 1920×1080 unless told. */
  open(options?: OpenOptions): Promise<Opened>;
  close(): Promise<void>;
}

/** The folder of the built page. */
export function builtPage(): string {
  const built = join(root, 'dist');
  if (existsSync(join(built, 'index.html'))) return built;
  throw new Error('The page is not built. Run npm run test:browser, or npm run build first.');
}

/** A browser on nothing yet. */
export const startBrowser = async (): Promise<Browser> =>
  FIREFOX
    ? startFirefox({ reducedMotion: 'reduce' })
    : chromium.launch({
        executablePath: process.env['TAKEUP_BROWSER'] || (await findBrowser()),
        args: flags,
      });

/** Contexts of the browser, or of the Firefoxes, that a page is opened in. */
async function manyContexts(address: string): Promise<{
  of(options: BrowserContextOptions): Promise<Contexts>;
  close(): Promise<void>;
}> {
  if (!FIREFOX) {
    const browser = await startBrowser();
    const contexts = new Contexts(browser, address);
    return { of: async () => contexts, close: () => browser.close() };
  }
  const all = new Firefoxes();
  return {
    of: async (options) => new Contexts(await all.for(options, isPhone(options)), address),
    close: () => all.close(),
  };
}

/** What a page shows and holds, for a reader who has nothing but what a failed run printed. */
async function stateOf(page: Page): Promise<string> {
  return page.evaluate(() => {
    const deep = (root: Document | ShadowRoot): Element[] =>
      [...root.querySelectorAll('*')].flatMap((e) =>
        e.shadowRoot ? [e, ...deep(e.shadowRoot)] : [e],
      );
    const focus: string[] = [];
    for (let e = document.activeElement; e; e = e.shadowRoot?.activeElement ?? null)
      focus.push(e.outerHTML.slice(0, 120));
    const all = deep(document);
    const open = all.filter((e) => e instanceof HTMLDialogElement && e.open);
    const told = all
      .filter(
        (e) => e.matches('[role="status"], [role="alert"], [aria-live]') && e.textContent?.trim(),
      )
      .map((e) => e.textContent?.trim().slice(0, 120));
    return JSON.stringify({
      address: location.href.slice(0, 200),
      focus,
      dialogs: open.map((e) => e.getAttribute('aria-label') ?? e.textContent?.trim().slice(0, 60)),
      told,
    });
  });
}

/** A test that fails tells what its page was like. */
function tellWhenItFails(page: Page, errors: readonly string[]): void {
  const tell = async (): Promise<void> => {
    if (page.isClosed()) return;
    const state = await Promise.race([
      stateOf(page).catch(String),
      new Promise<string>((r) => setTimeout(() => r('the page does not answer'), 5000)),
    ]);
    console.error(`The page when it failed: ${state}\nIts errors: ${JSON.stringify(errors)}`);
  };
  try {
    onTestFailed(tell);
  } catch {
    // Opened before a test began: no test of its own fails.
  }
}

/** Serves the built page by the project's own server and starts a browser on it. */
export async function openBrowser(): Promise<OpenBrowser> {
  const { server, address } = await serve(builtPage(), 0);
  const many = await manyContexts(address);

  async function open(options: OpenOptions = {}): Promise<Opened> {
    const {
      path: asked,
      clock = false,
      language,
      ratio,
      few = false,
      prepare,
      alone,
      ...rest
    } = options;
    const path = asked ?? (isPhone(rest) ? AT_THE_BRAKE : '');
    // A clock that is the test's stays so for the whole context.
    const contexts = await many.of(rest);
    const { page, close } = await contexts.page(
      { viewport: { width: 1920, height: 1080 }, ...(FIREFOX ? forFirefox(rest) : rest) },
      !few,
      FIREFOX !== undefined || (alone ?? clock),
    );
    page.context().setDefaultTimeout(30000 * SLOW);
    await slowDown(page);
    if (language !== undefined) {
      await page.addInitScript((told) => {
        Object.defineProperty(Navigator.prototype, 'language', { get: () => told });
      }, language);
    }
    if (ratio !== undefined) {
      await page.addInitScript((told) => {
        Object.defineProperty(globalThis, 'devicePixelRatio', { get: () => told });
      }, ratio);
    }
    if (prepare) await page.addInitScript(prepare);
    if (clock) await page.clock.install({ time: 0 });
    const errors: string[] = [];
    const warnings: string[] = [];
    page.on('pageerror', (error) => {
      if (!notThePage(error.message)) errors.push(`thrown: ${error.stack ?? error.message}`);
    });
    page.on('console', (message) => {
      const text = `${message.text()} (${message.location().url})`;
      if (message.type() === 'error') errors.push(`console: ${text}`);
      // The test tool's own word for what contexts.ts asked of it.
      if (text.startsWith('Service Worker registration blocked by Playwright')) return;
      if (message.type() === 'warning') warnings.push(text);
    });
    page.on('requestfailed', (request) => {
      // A reload breaks off what the browser itself still fetches for its own bar: the page's icon.
      if (request.resourceType() === 'other' && request.url().endsWith('.svg')) return;
      // So it does with stations that come while nobody waits for them.
      const why = request.failure()?.errorText ?? '';
      // And letters of a width nothing has yet been set in, and a film that is taken off the page
      // while the browser still reads it. What is not there fails with another word.
      const brokenOff = ['script', 'font', 'media'].includes(request.resourceType());
      if (brokenOff && why === 'net::ERR_ABORTED') return;
      if (notThePage(why)) return;
      errors.push(`not loaded: ${request.url()} ${why}`);
    });
    page.on('response', (response) => {
      if (response.status() >= 400) errors.push(`${response.status()}: ${response.url()}`);
    });
    tellWhenItFails(page, errors);
    await page.goto(new URL(path, address).href, { waitUntil: 'load' });
    await page.evaluate(async () => {
      await document.fonts.ready;
    });
    return {
      page,
      errors,
      warnings,
      async shot(name) {
        const shots = join(root, 'tests/browser/shots');
        mkdirSync(shots, { recursive: true });
        return page.screenshot({ path: join(shots, `${name}.png`) });
      },
      close,
    };
  }

  return {
    address,
    open,
    async close() {
      await many.close();
      await new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      });
    },
  };
}
