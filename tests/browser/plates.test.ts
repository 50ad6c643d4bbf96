import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { samples } from '../samples.ts';
import { differing, shots } from './differing.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { type Plate, platesOf, type Size, show, sizes } from './plates.ts';

/**
 * The stage against pictures that were judged by eye (`tests/browser/plates/index.html` lays them
 * side by side). Where one differs, expected, actual and difference stay in `tests/browser/shots/`.
 * `npm run plates` makes them anew: look at every one of them before keeping it.
 */

const folder = fileURLToPath(new URL('plates', import.meta.url));
const writing = process.env['PLATES'] === 'write';

/** Share of pixels that may differ: other versions of a browser smooth edges and letters a little differently. */
const SHARE = 0.003;

/** Later than any page takes to load, ms. */
const HOUR = 3.6e6;

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
  if (writing) mkdirSync(folder, { recursive: true });
});
afterAll(async () => {
  await browser.close();
  if (writing) writeFileSync(`${folder}/index.html`, sheet());
});

/** All plates on one page. */
function sheet(): string {
  const row = (size: Size): string =>
    `<h2>${size}</h2><div>${platesOf(size)
      .map(
        (p) =>
          `<figure><img src="${p}-${size}.png" alt="${p}"><figcaption>${p}</figcaption></figure>`,
      )
      .join('')}</div>`;
  return `<!doctype html><meta charset="utf-8"><title>Plates</title><style>body{font:16px sans-serif;background:#ccc}div{display:flex;flex-wrap:wrap;gap:12px}figure{margin:0}img{max-height:420px;border:1px solid #000}</style>${Object.keys(
    sizes,
  )
    .map((s) => row(s as Size))
    .join('')}\n`;
}

async function picture(size: Size, plate: Plate): Promise<Buffer> {
  const { width, height, deviceScaleFactor } = sizes[size];
  const { page, errors, close } = await browser.open({
    viewport: { width, height },
    deviceScaleFactor,
    // Painted for a whole screen, and only the picture made smaller.
    ratio: 1,
    reducedMotion: 'reduce',
    clock: true,
  });
  await page.locator('takeup-stage canvas').waitFor();
  // It comes late to the stage's foot: a plate without it differs.
  if (size !== 'phone') await page.getByRole('button', { name: /^Keep/ }).waitFor();
  // From here on time stands, save where the plate lets it run.
  await page.clock.pauseAt(HOUR);
  await page.clock.runFor(300);
  await show(page, size, plate);
  const shot = await page.locator('section.stage').screenshot();
  expect(errors).toEqual([]);
  await close();
  return shot;
}

const all = Object.keys(sizes) as Size[];
/** Few: each plate at one of the sizes, by turns. Many, and whenever they are made anew: at all. */
const every = writing ? 1 : samples('platesInOne');

describe.each(all)('on a %s', (size) => {
  it.each(platesOf(size).filter((_, i) => (i + all.indexOf(size)) % every === 0))(
    '%s looks as it was judged',
    async (plate) => {
      const file = `${folder}/${plate}-${size}.png`;
      const bytes = await picture(size, plate);
      if (writing) {
        writeFileSync(file, bytes);
        return;
      }
      expect(existsSync(file), `${file}; npm run plates makes it`).toBe(true);
      const actual = PNG.sync.read(bytes);
      const expected = PNG.sync.read(readFileSync(file));
      expect([actual.width, actual.height]).toEqual([expected.width, expected.height]);
      const off = differing(`${plate}-${size}`, actual, expected, SHARE);
      expect(off, `pictures in ${shots}`).toBeLessThanOrEqual(SHARE);
    },
  );
});
