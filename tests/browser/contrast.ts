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

/** A piece of the window, and where in the window it begins, px. */
interface Piece {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A letter's box with what lies round it, in whole pixels of a piece of the window. */
function around({ x, y, width, height }: Box, piece: Piece): Piece {
  const left = Math.max(0, Math.floor(x) - piece.left - ROUND);
  const top = Math.max(0, Math.floor(y) - piece.top - ROUND);
  const right = Math.min(piece.width, Math.ceil(x + width) - piece.left + ROUND);
  const bottom = Math.min(piece.height, Math.ceil(y + height) - piece.top + ROUND);
  return { left, top, width: Math.max(0, right - left), height: Math.max(0, bottom - top) };
}

/** Median contrast of an ink with what is seen round a letter of it; null where no ink is painted. */
function letterContrast(at: Piece, ink: Colour, withInk: PNG, without: PNG): number | null {
  const { width, height } = at;
  /** 1: near the ink. 2: ink. */
  const marks = new Uint8Array(width * height);
  const pixel = (x: number, y: number) => 4 * ((at.top + y) * without.width + at.left + x);
  let some = false;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const p = pixel(x, y);
      let most = 0;
      for (let c = p; c < p + 3; c++)
        most = Math.max(most, Math.abs((withInk.data[c] ?? 0) - (without.data[c] ?? 0)));
      if (most < INK) continue;
      some = true;
      const [first, last] = [Math.max(0, x - ROUND), Math.min(width - 1, x + ROUND)];
      for (let j = Math.max(0, y - ROUND); j <= Math.min(height - 1, y + ROUND); j++)
        for (let i = j * width + first; i <= j * width + last; i++) marks[i] = (marks[i] ?? 0) | 1;
      marks[y * width + x] = 2;
    }
  }
  if (!some) return null;
  const known = new Map<number, number>();
  const all: number[] = [];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      if (marks[y * width + x] !== 1) continue;
      const [r = 0, g = 0, b = 0] = without.data.subarray(pixel(x, y), pixel(x, y) + 3);
      const key = (r << 16) | (g << 8) | b;
      const contrast = known.get(key) ?? contrastOf(ink, [r, g, b]);
      known.set(key, contrast);
      all.push(contrast);
    }
  }
  all.sort((a, b) => a - b);
  return all[Math.floor(all.length / 2)] ?? null;
}

/** The texts of all drawings that stand in the window. */
export async function drawnOn(page: Page): Promise<Drawn[]> {
  return (await page.evaluate(drawnTexts)).flatMap(({ text, fill, letters }): Drawn[] => {
    const ink = colourOf(fill);
    return ink ? [{ text, ink, letters }] : [];
  });
}

/** The least piece of the window that holds all letters and what lies round them; null when none is in it. */
async function pieceOf(page: Page, texts: readonly Drawn[]): Promise<Piece | null> {
  const window = page.viewportSize();
  if (!window) throw new Error('the window has no size of its own');
  const whole = { left: 0, top: 0, ...window };
  const boxes = texts
    .flatMap(({ letters }) => letters.map((box) => around(box, whole)))
    .filter((box) => box.width > 0 && box.height > 0);
  if (boxes.length === 0) return null;
  const left = Math.min(...boxes.map((b) => b.left));
  const top = Math.min(...boxes.map((b) => b.top));
  return {
    left,
    top,
    width: Math.max(...boxes.map((b) => b.left + b.width)) - left,
    height: Math.max(...boxes.map((b) => b.top + b.height)) - top,
  };
}

/** How each of them that is painted stands out. The page must stand still meanwhile. */
export async function drawnContrasts(page: Page, texts: readonly Drawn[]): Promise<Read[]> {
  const piece = await pieceOf(page, texts);
  if (!piece) return [];
  const { left: x, top: y, width, height } = piece;
  const picture = () => page.screenshot({ clip: { x, y, width, height } });
  const withInk = PNG.sync.read(await picture());
  await page.evaluate(inkShown, false);
  const without = PNG.sync.read(await picture());
  await page.evaluate(inkShown, true);
  return texts.flatMap(({ text, ink, letters }) => {
    const all = letters.flatMap(
      (box) => letterContrast(around(box, piece), ink, withInk, without) ?? [],
    );
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
