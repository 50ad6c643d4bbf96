import type { Page } from 'playwright-core';

/**
 * Makes each page slow on purpose, to find tests that read before the page has drawn.
 * `TAKEUP_LATE=300`: every part of the page redraws 300 ms after it was asked to.
 * `TAKEUP_SLOW=4`: the page's processor runs at a quarter of its speed.
 */
const setting = (name: string, least: number): number =>
  Math.max(least, Number(process.env[name]) || least);
const rate = setting('TAKEUP_SLOW', 1);
const late = setting('TAKEUP_LATE', 0);

/** How many times longer the tests may then take. */
export const SLOW = rate * (late > 0 ? 2 : 1);

/** Before the page is loaded. */
export async function slowDown(page: Page): Promise<void> {
  if (rate > 1) {
    const client = await page.context().newCDPSession(page);
    await client.send('Emulation.setCPUThrottlingRate', { rate });
  }
  if (late > 0) await page.addInitScript(drawLate, late);
}

/** Parts of the page are Lit's: it waits for what `scheduleUpdate` promises. */
function drawLate(ms: number): void {
  interface Part {
    scheduleUpdate?(): unknown;
  }
  const define = customElements.define.bind(customElements);
  customElements.define = (name, part, options) => {
    const own = part.prototype as unknown as Part;
    const update = own.scheduleUpdate;
    if (update) {
      own.scheduleUpdate = async function (this: Part): Promise<void> {
        await new Promise((drawn) => setTimeout(drawn, ms));
        await update.call(this);
      };
    }
    define(name, part, options);
  };
}
