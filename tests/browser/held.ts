import type { CDPSession, Page } from 'playwright-core';

/** What a page holds on to. */
export interface Held {
  /** kB of the JavaScript heap. */
  readonly heap: number;
  readonly nodes: number;
  readonly listeners: number;
  readonly workers: number;
}

/** What is left after all that can go is gone; the client's domain Performance is on. */
export async function held(page: Page, client: CDPSession): Promise<Held> {
  // What is freed in one collection lets go of more in the next.
  for (let i = 0; i < 3; i++) await client.send('HeapProfiler.collectGarbage');
  const { metrics } = await client.send('Performance.getMetrics');
  const of = (name: string) => metrics.find((m) => m.name === name)?.value ?? Number.NaN;
  return {
    heap: Math.round(of('JSHeapUsedSize') / 1000),
    nodes: of('Nodes'),
    listeners: of('JSEventListeners'),
    workers: page.workers().length,
  };
}
