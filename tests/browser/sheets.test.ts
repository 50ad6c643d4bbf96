import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { PAPERS, type PaperSize, paperSizes } from '../../ui/pieces/papers.ts';
import { samples } from '../samples.ts';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const laptop = { viewport: { width: 1366, height: 768 } };

/** The browser's own dialog cannot be seen here: that it was asked for is counted. */
const printsCounted = (page: Page) =>
  page.evaluate(() => {
    const { dataset } = document.body;
    window.print = () => {
      dataset['printed'] = String(Number(dataset['printed'] ?? 0) + 1);
    };
  });

async function openSheets(page: Page): Promise<void> {
  await page.keyboard.press('e');
  await page.locator('takeup-away dialog').waitFor();
  await page.keyboard.press('p');
  await page.locator('takeup-away-sheets').waitFor();
}

interface Read {
  readonly sizes: readonly (readonly [wide: number, high: number])[];
  readonly least: number;
  readonly text: string;
  readonly fonts: readonly boolean[];
}

/** A PDF as another hand reads it: pages in mm, the smallest letters in pt, the words, and whether each font is in it. */
async function readBack(pdf: Buffer): Promise<Read> {
  const doc = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const sizes: [number, number][] = [];
  const fonts: boolean[] = [];
  let least = Number.POSITIVE_INFINITY;
  let text = '';
  for (let n = 1; n <= doc.numPages; n++) {
    const page = await doc.getPage(n);
    const [, , wide, high] = page.view as [number, number, number, number];
    sizes.push([(wide / 72) * 25.4, (high / 72) * 25.4]);
    // Fonts are read with what is drawn by them.
    await page.getOperatorList();
    const { items } = await page.getTextContent();
    for (const item of items) {
      if (!('transform' in item) || item.str.trim() === '') continue;
      text += `${item.str} `;
      const [, , c, d] = item.transform as number[];
      least = Math.min(least, Math.hypot(c as number, d as number));
      const font = page.commonObjs.get(item.fontName) as { missingFile?: boolean };
      fonts.push(font.missingFile !== true);
    }
  }
  return { sizes, least, text, fonts };
}

/** Does anything reach out of its page's body? */
const overflowing = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll('#print .sheet .body')]
      .filter((b) => b.scrollHeight > b.clientHeight + 1 || b.scrollWidth > b.clientWidth + 1)
      .map((b) => b.closest('[data-sheet]')?.getAttribute('data-sheet')),
  );

/** Fonts come with the page's, all of them: nothing is printed by a font that the reader may not have. */
async function check(page: Page, paper: PaperSize, name: string, said: number): Promise<string> {
  await page.emulateMedia({ media: 'print' });
  const { width, height } = PAPERS[paper];
  // As wide as what is printed between the borders, in the browser's 96 px an inch.
  await page.setViewportSize({
    width: Math.round(((width - 20) / 25.4) * 96),
    height: Math.round(((height - 16) / 25.4) * 96),
  });
  expect(await overflowing(page), name).toEqual([]);
  await page.emulateMedia({ media: null });
  await page.setViewportSize(laptop.viewport);
  const read = await readBack(await page.pdf({ preferCSSPageSize: true }));
  expect(read.sizes, name).toHaveLength(said);
  for (const [wide, high] of read.sizes) {
    expect(Math.abs(wide - width), name).toBeLessThan(0.5);
    expect(Math.abs(high - height), name).toBeLessThan(0.5);
  }
  expect(read.least, name).toBeGreaterThanOrEqual(8);
  expect(read.fonts.length, name).toBeGreaterThan(5);
  expect(read.fonts.every(Boolean), name).toBe(true);
  expect(read.text, name).toContain('no repair instruction');
  return read.text;
}

/** Words that a sheet has, or keeps to itself. */
const WORDS: Readonly<Record<string, readonly (readonly [boolean, string])[]>> = {
  names: [[false, 'Toothed lever']],
  'names-answers': [[true, 'Toothed lever']],
  predictions: [
    [true, 'Which shoe is the leading one?'],
    [false, 'Seen'],
  ],
  'predictions-answers': [[true, 'Sets how long the strut is']],
  wear: [[true, 'Click: tooth 1 at']],
  log: [[true, 'Open the bleed point']],
  removal: [[true, 'a loaded tooth lets go suddenly']],
  fitting: [[true, 'With the drum off, do not press the pedal']],
};

it.each(paperSizes)(
  'every sheet of %s: as many pages as said, no letter under 8 pt, its fonts in it',
  async (paper) => {
    const { page, errors, close } = await browser.open({ ...laptop, path: '?station=wear' });
    await printsCounted(page);
    // A life to report: what it shows is of the bench.
    await page.getByRole('button', { name: 'to next click', exact: true }).click();
    await page.getByRole('button', { name: 'Wear on', exact: true }).click();
    await page.locator('[data-progress]').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Wear on', exact: true }).waitFor();
    await openSheets(page);
    await page.getByRole('button', { name: paper, exact: true }).click();
    const buttons = page.locator('takeup-away-sheets [data-sheet]');
    const ids = await buttons.evaluateAll((all) => all.map((b) => b.getAttribute('data-sheet')));
    expect(ids.length).toBeGreaterThan(9);
    const texts = new Map<string, string>();
    // Of each paper others, and all on the long round.
    const leap = samples('sheetsInOne');
    const chosen = [...ids.entries()].filter(([i]) => (i + paperSizes.indexOf(paper)) % leap === 0);
    for (const [n, [i, id]] of chosen.entries()) {
      await buttons.nth(i).click();
      await expect
        .poll(() => page.locator('body').getAttribute('data-printed'))
        .toBe(String(n + 1));
      const told = await page.locator('takeup-away-sheets .said').innerText();
      const said = told.startsWith('One') ? 1 : Number.parseInt(told, 10);
      texts.set(String(id), await check(page, paper, String(id), said));
      await expect.poll(() => page.locator('#print').count()).toBe(0);
    }
    expect(chosen.length).toBeGreaterThan(2);
    for (const [id, text] of texts) {
      for (const [has, words] of WORDS[id] ?? []) {
        if (has) expect(text, id).toContain(words);
        else expect(text, id).not.toContain(words);
      }
    }
    expect(errors).toEqual([]);
    await close();
  },
);

it('the browser’s own print gives the sheet of the open station', async () => {
  const { page, errors, close } = await browser.open({ ...laptop, path: '?station=order' });
  await page.getByRole('button', { name: 'Apart' }).click();
  const read = await readBack(await page.pdf({ preferCSSPageSize: true }));
  expect(read.text).toContain('Taking apart, in order');
  expect(read.least).toBeGreaterThanOrEqual(8);
  await expect.poll(() => page.locator('#print-moment').count()).toBe(0);
  // A station without one: the drawing and all readings, on one page.
  await page.keyboard.press('1');
  await page.getByRole('heading', { name: 'Apply' }).waitFor();
  const plain = await readBack(await page.pdf({ preferCSSPageSize: true }));
  expect(plain.sizes).toHaveLength(1);
  expect(plain.text).toContain('Clearance');
  expect(errors).toEqual([]);
  await close();
});
