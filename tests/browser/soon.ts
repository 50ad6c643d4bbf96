import type { Locator, Page } from 'playwright-core';
import { expect, vi } from 'vitest';
import { near, type Tolerance } from '../near.ts';
import { SLOW } from './slow.ts';

/**
 * The page draws its answer to an action in a later frame, so a test never reads once and judges: it
 * tries until the check holds. `expect.poll` does this for one value; here is the rest. What is to be
 * absent is read only after something that comes with its absence is there.
 */

/** Tries several checks together until they all pass. */
export const soon = <T>(check: () => T | Promise<T>): Promise<T> =>
  vi.waitFor(check, { timeout: 30000 * SLOW, interval: 50 });

/** `near` for a figure on the page. */
export const soonNear = (
  read: () => Promise<number>,
  expected: number,
  tolerance: Tolerance,
  label = '',
): Promise<void> => soon(async () => near(await read(), expected, tolerance, label));

/** Lets the page draw so many frames. */
export const frames = (page: Page, count: number): Promise<void> =>
  page.evaluate(async (n) => {
    for (let i = 0; i < n; i++) await new Promise(requestAnimationFrame);
  }, count);

/** A value once it stands: the page has drawn between two looks, and they agree. */
export async function steady<T>(page: Page, look: () => Promise<T>): Promise<T> {
  return soon(async () => {
    const before = await look();
    await frames(page, 3);
    const after = await look();
    expect(after).toEqual(before);
    return after;
  });
}

/** Where a part of the page lies once it lies still. */
export async function placeOf(
  part: Locator,
): Promise<{ x: number; y: number; width: number; height: number }> {
  await part.waitFor();
  const box = await steady(part.page(), () => part.boundingBox());
  if (!box) throw new Error('no place on the page');
  return box;
}

/** The page is no wider than its window. */
export const noWider = (page: Page, width: number): Promise<void> =>
  expect
    .poll(() => page.evaluate(() => document.documentElement.scrollWidth))
    .toBeLessThanOrEqual(width);

/** Least height of what a thumb presses on a phone, px: our own rule; common advice is 44 to 48 (from memory). */
const THUMB = 56;

/** Everything to press in a part of the page is a thumb high; there is something to press. */
export const thumbHigh = (controls: Locator): Promise<void> =>
  soon(async () => {
    const all = await controls.evaluateAll((found) =>
      found.map((e) => ({
        text: e.outerHTML.slice(0, 80),
        high: e.getBoundingClientRect().height,
      })),
    );
    // What is not shown has no height; a height may lack the last digit.
    const shown = all.filter((c) => c.high > 0);
    expect(shown.length).toBeGreaterThan(0);
    expect(shown.filter((c) => c.high < THUMB - 1e-3)).toEqual([]);
  });
