import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

/**
 * Contexts of a browser that are used again: a page in a new one costs twice as much of the processor, since
 * nothing of its scripts is ready. What a test left behind is cleared, and that nothing stayed is looked at;
 * where it cannot be, the context is closed.
 */
export class Contexts {
  readonly #browser: Browser;
  readonly #address: string;
  /** By what they were made with: contexts that stand ready, each with a page of nothing. */
  readonly #ready = new Map<string, { context: BrowserContext; still: Page }[]>();

  constructor(browser: Browser, address: string) {
    this.#browser = browser;
    this.#address = address;
  }

  /**
   * A page in a context that remembers nothing, and a way to give both back.
   *
   * @param full the page shows all that it can show
   * @param alone in a new context, which is closed afterwards
   */
  async page(
    { viewport, ...options }: BrowserContextOptions,
    full: boolean,
    alone: boolean,
  ): Promise<{ page: Page; close: () => Promise<void> }> {
    const key = JSON.stringify([options, full]);
    const known = alone ? undefined : this.#ready.get(key)?.pop();
    const context = known?.context ?? (await this.#made(options, full));
    const page = await context.newPage();
    if (viewport) await page.setViewportSize(viewport);
    await known?.still.close();
    const close = async (): Promise<void> => {
      const cleared = !alone && (await this.#cleared(context, page).catch(() => false));
      if (!cleared) return context.close();
      const all = this.#ready.get(key) ?? [];
      this.#ready.set(key, [...all, { context, still: page }]);
    };
    return { page, close };
  }

  async #made(options: BrowserContextOptions, full: boolean): Promise<BrowserContext> {
    // What is kept for times without a network would be fetched again by each test: offline.test.ts is for that.
    const context = await this.#browser.newContext({ serviceWorkers: 'block', ...options });
    // Its own dialogs for files stand outside of the page, where no test can press anything.
    await context.addInitScript(() => {
      for (const way of ['showSaveFilePicker', 'showOpenFilePicker'])
        Reflect.deleteProperty(globalThis, way);
    });
    if (full) {
      await context.addInitScript(() => {
        try {
          localStorage.setItem('takeup-full', 'yes');
        } catch {
          // Where a test shuts the storage, or fills it, the page shows what tells most.
        }
      });
    }
    return context;
  }

  /** Leaves one page of a text, and nothing in the browser's memory; true when that is so. */
  async #cleared(context: BrowserContext, page: Page): Promise<boolean> {
    for (const other of context.pages()) if (other !== page) await other.close();
    await page.unrouteAll({ behavior: 'ignoreErrors' });
    await page.goto(new URL('changes.txt', this.#address).href, { timeout: 10_000 });
    const client = await context.newCDPSession(page);
    const { origin } = new URL(this.#address);
    await client.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
    await client.detach();
    return page.evaluate(
      async () =>
        Object.keys(localStorage).length === 0 && (await indexedDB.databases()).length === 0,
    );
  }
}
