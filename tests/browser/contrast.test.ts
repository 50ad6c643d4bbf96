import { expect, it } from 'vitest';
import { contrastOf, drawnContrasts, drawnOn, still } from './contrast.ts';
import { below } from './look-round.ts';
import { openBrowser } from './open.ts';

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
