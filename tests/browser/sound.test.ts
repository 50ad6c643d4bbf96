import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

interface Heard {
  contexts: number;
  /** Sources started so far, of every kind. */
  started: number;
}
declare global {
  interface Window {
    heard: Heard;
  }
}

/** Each click is a burst of noise and two tones. */
const A_CLICK = 3;

/** Counts what the page asks of the browser's sound from now on. */
const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const heard = { contexts: 0, started: 0 };
    window.heard = heard;
    const Own = window.AudioContext;
    window.AudioContext = class extends Own {
      constructor(options?: AudioContextOptions) {
        super(options);
        heard.contexts += 1;
      }
    };
    for (const Source of [AudioBufferSourceNode, OscillatorNode]) {
      const { start } = Source.prototype;
      Source.prototype.start = function (this: AudioScheduledSourceNode, ...args: [number?]) {
        heard.started += 1;
        return start.apply(this, args);
      };
    }
  });

const heard = (page: Page): Promise<Heard> => page.evaluate(() => window.heard);

/** Lets a tooth drop in on the page's session, as often as asked, one a frame. */
const drop = (page: Page, times: number): Promise<void> =>
  page.evaluate(async (n) => {
    const app = document.querySelector('takeup-app') as unknown as {
      session: { tellClick(): void };
    };
    for (let i = 0; i < n; i++) {
      app.session.tellClick();
      await new Promise(requestAnimationFrame);
    }
  }, times);

it('clicks aloud only after an action, not when off, and never more than 8 a second', async () => {
  const { page, errors, close } = await browser.open();
  await page.locator('takeup-app canvas').first().waitFor();
  await listen(page);
  await drop(page, 5);
  expect(await heard(page)).toEqual({ contexts: 0, started: 0 });

  await page.getByRole('button', { name: 'Backward' }).click();
  await expect.poll(async () => (await heard(page)).contexts).toBe(1);
  expect((await heard(page)).started).toBe(0);
  await drop(page, 1);
  await expect.poll(async () => (await heard(page)).started).toBe(A_CLICK);

  const before = (await heard(page)).started;
  const from = Date.now();
  await drop(page, 150);
  const seconds = (Date.now() - from) / 1000;
  const clicks = ((await heard(page)).started - before) / A_CLICK;
  // One may fall on each end of the time.
  expect(clicks).toBeLessThanOrEqual(8 * seconds + 1);
  expect(clicks).toBeGreaterThan(1);
  expect((await heard(page)).contexts).toBe(1);

  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('button', { name: 'Off', exact: true }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  const silent = (await heard(page)).started;
  await drop(page, 30);
  expect((await heard(page)).started).toBe(silent);
  expect(errors).toEqual([]);
  await close();
});
