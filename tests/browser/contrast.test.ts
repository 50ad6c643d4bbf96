import { expect, it } from 'vitest';
import { contrastOf, drawnContrasts, drawnOn, offContrasts, type Read, still } from './contrast.ts';
import { openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';
import { dressIn, eachLayer, eachView, openStation, stationCount } from './tour.ts';

/** Least contrast of text: Web Content Accessibility Guidelines 2.2, success criterion 1.4.3 (AA). */
const LEAST = 4.5;

const below = (all: readonly Read[]): string[] =>
  all.filter((r) => r.contrast < LEAST).map((r) => `${r.text}: ${r.contrast.toFixed(2)}`);

it('knows the contrast of colours', () => {
  // Black on white is 21 by the definition; #767676 on white is the guidelines' usual least grey, 4.54 (common practice).
  expect(contrastOf([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 6);
  expect(contrastOf([0x76, 0x76, 0x76], [255, 255, 255])).toBeCloseTo(4.54, 2);
});

it('sees a text that a part of the brake swallows', async () => {
  const browser = await openBrowser();
  const { page, close } = await browser.open({ reducedMotion: 'reduce', clock: true });
  const words = page.locator('takeup-stage svg.stage-labels text');
  await words.first().waitFor();
  const low = () => still(page, async () => below(await drawnContrasts(page, await drawnOn(page))));
  expect(await low()).toEqual([]);
  // A word of the drawing is laid over the lining without its halo, in the lining's own colour.
  await words.first().evaluate((text) => {
    const planted = text.cloneNode() as SVGTextElement;
    planted.textContent = 'planted';
    planted.style.fill = 'var(--off)';
    planted.style.stroke = 'var(--lining)';
    planted.style.strokeWidth = '12px';
    text.after(planted);
  });
  expect((await low()).map((line) => line.split(':')[0])).toContain('planted');
  await close();
  await browser.close();
});

/** A laptop's drawing lies over the most parts, a phone's letters are the smallest. */
const windows = [
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
];

it.each(windows.flatMap((w) => (['Sheet', 'Board'] as const).map((theme) => ({ ...w, theme }))))(
  'at $width in $theme every text on a drawing stands out, and every control that is off',
  async ({ theme, ...viewport }) => {
    const browser = await openBrowser();
    const { page, errors, close } = await browser.open({
      viewport,
      reducedMotion: 'reduce',
      clock: true,
    });
    const count = await stationCount(page);
    expect(count).toBeGreaterThan(1);
    await dressIn(page, theme);
    const found = new Map<string, string>();
    let texts = 0;
    let off = 0;
    let before = '';
    /** @param changed the drawing has changed, if only under its texts */
    const look = (where: string, changed: boolean): Promise<void> =>
      still(page, async () => {
        const controls = await offContrasts(page);
        const drawn = await drawnOn(page);
        const now = JSON.stringify(drawn);
        const read = changed || now !== before ? await drawnContrasts(page, drawn) : [];
        before = now;
        texts += read.length;
        off += controls.length;
        for (const line of below([...read, ...controls])) {
          if (!found.has(line)) found.set(line, where);
        }
      });
    for (let at = 0; at < count; at++) {
      const station = await openStation(page, at);
      await eachView(page, (view) => look(`${station}, ${view}`, false));
      const pedal = page.locator('takeup-pedal [role="slider"]');
      if (await pedal.isVisible()) {
        await pedal.focus();
        await page.keyboard.press('Enter');
        await soon(async () => expect(await pedal.getAttribute('aria-valuenow')).not.toBe('0'));
        await look(`${station}, pressed`, true);
      }
      await eachLayer(page, (layer) => look(`${station}, ${layer} turned`, true));
    }
    expect([...found].map(([line, where]) => `${line} (${where})`)).toEqual([]);
    // It has looked at something.
    expect(texts).toBeGreaterThan(3 * count);
    expect(off).toBeGreaterThan(count);
    expect(errors).toEqual([]);
    await close();
    await browser.close();
  },
);

it('on the wall every text on a drawing stands out', async () => {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce', clock: true });
  const count = await stationCount(page);
  for (let at = 0; at < count; at++) {
    const station = await openStation(page, at);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await page.keyboard.press('w');
    await page.locator('main.wall').waitFor();
    await frames(page, 10);
    const read = await still(page, async () => drawnContrasts(page, await drawnOn(page)));
    expect(below(read), station).toEqual([]);
    await page.keyboard.press('w');
    await page.locator('main.work').waitFor();
  }
  expect(errors).toEqual([]);
  await close();
  await browser.close();
});
