import type { Page } from 'playwright-core';

/** Workers of a page, to be ended without a word from outside, as the system does that is out of memory. */

interface Window {
  takeupWorkers: Worker[];
}

/** What a page is to be opened with (`prepare`) so that its workers can be ended. Runs in the page. */
export function holdWorkers(): void {
  const held: Worker[] = [];
  (globalThis as unknown as Window).takeupWorkers = held;
  const Own = globalThis.Worker;
  globalThis.Worker = class extends Own {
    constructor(address: string | URL, options?: WorkerOptions) {
      super(address, options);
      held.push(this);
    }
  };
}

/** Ends the worker that the page made last; it tells nobody. */
export const endWorker = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const worker = (globalThis as unknown as Window).takeupWorkers.at(-1);
    if (!worker) throw new Error('no worker');
    worker.terminate();
  });
