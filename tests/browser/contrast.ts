import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';

/**
 * Contrast as it is painted: the page is looked at twice, with its drawn texts and without their ink. Where
 * the two differ a letter stands; what is seen round it without the ink is what it is read against, be
 * that a part of the brake, a hatch or the text's own halo.
 */

/** A drawn text and its letters, px of the window. */
export interface Drawn {
  readonly text: string;
  readonly ink: Colour;
  readonly letters: readonly Box[];
}
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
type Colour = readonly [number, number, number];

export interface Read {
  readonly text: string;
  /** Of the letter that stands out least. */
  readonly contrast: number;
}

/** Relative luminance (Web Content Accessibility Guidelines 2.2, "relative luminance"). */
function luminance([r, g, b]: Colour): number {
  const [x, y, z] = [r, g, b].map((v) => {
    const s = v / 255;
    return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * x + 0.7152 * y + 0.0722 * z;
}

/** Contrast ratio of two colours, 1 to 21 (the same guidelines, "contrast ratio"). */
export function contrastOf(a: Colour, b: Colour): number {
  const [x, y] = [luminance(a) + 0.05, luminance(b) + 0.05];
  return Math.max(x / y, y / x);
}

/** "rgb(1, 2, 3)" as a browser computes it; a see-through colour is no ink. */
const colourOf = (css: string): Colour | null => {
  const [r, g, b, a = 1] = (css.match(/[\d.]+/g) ?? []).map(Number);
  return r === undefined || g === undefined || b === undefined || a === 0 ? null : [r, g, b];
};

/** All texts of drawings that stand in the window. Runs in the page. */
function drawnTexts(): { text: string; fill: string; letters: Box[] }[] {
  const found: SVGTextElement[] = [];
  const within: ParentNode[] = [document];
  for (let root = within.pop(); root; root = within.pop()) {
    found.push(...root.querySelectorAll<SVGTextElement>('svg text'));
    for (const { shadowRoot } of root.querySelectorAll('*'))
      if (shadowRoot) within.push(shadowRoot);
  }
  return found.flatMap((element) => {
    const matrix = element.getScreenCTM();
    const fill = getComputedStyle(element).fill;
    if (!matrix || element.getBoundingClientRect().width === 0) return [];
    const letters: Box[] = [];
    for (let i = 0; i < element.getNumberOfChars(); i++) {
      const { x, y, width, height } = element.getExtentOfChar(i);
      const corners = [
        [x, y],
        [x + width, y],
        [x, y + height],
        [x + width, y + height],
      ].map(([a, b]) => new DOMPoint(a, b).matrixTransform(matrix));
      const xs = corners.map((p) => p.x);
      const ys = corners.map((p) => p.y);
      const [left, top] = [Math.min(...xs), Math.min(...ys)];
      letters.push({
        x: left,
        y: top,
        width: Math.max(...xs) - left,
        height: Math.max(...ys) - top,
      });
    }
    return [{ text: element.textContent ?? '', fill, letters }];
  });
}

/** Shows or hides the ink of all drawn texts; their halos stay. Runs in the page. */
function inkShown(shown: boolean): void {
  const within: ParentNode[] = [document];
  for (let root = within.pop(); root; root = within.pop()) {
    for (const element of root.querySelectorAll<SVGTextElement>('svg text')) {
      element.style.fillOpacity = shown ? '' : '0';
    }
    for (const { shadowRoot } of root.querySelectorAll('*'))
      if (shadowRoot) within.push(shadowRoot);
  }
}

/** Channels that differ by so much are ink: less is the edge of a letter, or nothing. */
const INK = 40;
/** What lies so far round a letter's ink is what it is read against, px. */
const ROUND = 4;

/** Median contrast of an ink with what is seen round a letter of it; null where no ink is painted. */
function letterContrast(box: Box, ink: Colour, withInk: PNG, without: PNG): number | null {
  const left = Math.max(0, Math.floor(box.x) - ROUND);
  const top = Math.max(0, Math.floor(box.y) - ROUND);
  const right = Math.min(without.width, Math.ceil(box.x + box.width) + ROUND);
  const bottom = Math.min(without.height, Math.ceil(box.y + box.height) + ROUND);
  const inked = new Set<number>();
  const near = new Set<number>();
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const at = 4 * (y * without.width + x);
      const off = [0, 1, 2].map((c) => (withInk.data[at + c] ?? 0) - (without.data[at + c] ?? 0));
      if (Math.max(...off.map(Math.abs)) < INK) continue;
      inked.add(at);
      for (let i = Math.max(left, x - ROUND); i <= Math.min(right - 1, x + ROUND); i++) {
        for (let j = Math.max(top, y - ROUND); j <= Math.min(bottom - 1, y + ROUND); j++) {
          near.add(4 * (j * without.width + i));
        }
      }
    }
  }
  if (inked.size === 0) return null;
  const all = [...near]
    .filter((at) => !inked.has(at))
    .map((at) => contrastOf(ink, [...without.data.subarray(at, at + 3)] as unknown as Colour))
    .sort((a, b) => a - b);
  return all[Math.floor(all.length / 2)] ?? null;
}

/** The texts of all drawings that stand in the window. */
export async function drawnOn(page: Page): Promise<Drawn[]> {
  return (await page.evaluate(drawnTexts)).flatMap(({ text, fill, letters }): Drawn[] => {
    const ink = colourOf(fill);
    return ink ? [{ text, ink, letters }] : [];
  });
}

/** How each of them that is painted stands out. The page must stand still meanwhile. */
export async function drawnContrasts(page: Page, texts: readonly Drawn[]): Promise<Read[]> {
  if (texts.length === 0) return [];
  const withInk = PNG.sync.read(await page.screenshot());
  await page.evaluate(inkShown, false);
  const without = PNG.sync.read(await page.screenshot());
  await page.evaluate(inkShown, true);
  return texts.flatMap(({ text, ink, letters }) => {
    const all = letters.flatMap((box) => letterContrast(box, ink, withInk, without) ?? []);
    return all.length > 0 ? [{ text, contrast: Math.min(...all) }] : [];
  });
}

/** A control that cannot be used now: its words, and the grounds that lie under them from the top. */
interface Off {
  readonly text: string;
  readonly ink: string;
  readonly grounds: readonly string[];
}

/** All controls to be seen that cannot be used now. Runs in the page. */
function controlsOff(): Off[] {
  const found: Element[] = [];
  const within: ParentNode[] = [document];
  for (let root = within.pop(); root; root = within.pop()) {
    found.push(...root.querySelectorAll(':disabled, [aria-disabled="true"]'));
    for (const { shadowRoot } of root.querySelectorAll('*'))
      if (shadowRoot) within.push(shadowRoot);
  }
  return found.flatMap((control) => {
    if (!control.checkVisibility() || control.matches('option')) return [];
    const grounds: string[] = [];
    for (let at: Element | null = control; at; ) {
      grounds.push(getComputedStyle(at).backgroundColor);
      const root: Node = at.getRootNode();
      at = at.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
    }
    const text = control.getAttribute('aria-label') ?? control.textContent?.trim() ?? '';
    return [{ text, ink: getComputedStyle(control).color, grounds }];
  });
}

/** How the controls that cannot be used now stand out from the first ground under them that is filled. */
export async function offContrasts(page: Page): Promise<Read[]> {
  return (await page.evaluate(controlsOff)).map(({ text, ink, grounds }) => {
    const letters = colourOf(ink);
    const ground = grounds.map(colourOf).find((g) => g !== null);
    if (!letters || !ground) throw new Error(`${text}: ${ink} on ${grounds.join(', ')}`);
    return { text, contrast: contrastOf(letters, ground) };
  });
}

/** Lets nothing move on the page while it is looked at; its clock must be the test's. */
export async function still<T>(page: Page, look: () => Promise<T>): Promise<T> {
  // A second on: what waits for its moment has come, and no clock is set back.
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 1000);
  const seen = await look();
  await page.clock.resume();
  return seen;
}
