import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readOrigin } from '../../ui/away/origin.ts';
import { stationIds } from '../../ui/record/moment.ts';
import { samples } from '../samples.ts';
import { differing, shots } from './differing.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';

/** Figures: what is saved is what the stage shows, in lines and in points, and says where it comes from. */
let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const dialogOf = (page: Page) => page.getByRole('dialog', { name: 'Take away' });

/** Nothing around the drawing, in the page's own colours. */
const BARE = {
  frame: 'stage',
  names: 'as',
  look: 'light',
  title: false,
  bar: false,
  facts: false,
  legend: false,
  caption: false,
};

/** Opens the dialog at Figure with these choices. */
async function figureWith(page: Page, choices: object): Promise<void> {
  await page.evaluate((kept) => {
    localStorage.setItem('takeup-away-figure', kept);
    localStorage.setItem('takeup-away-last', 'figure');
  }, JSON.stringify(choices));
  await page.keyboard.press('e');
  await page.locator('takeup-away-figure img.seen').waitFor();
}

/** The figure as it is shown; the page's policy lets nobody fetch it from its picture. */
const shownFigure = (page: Page): Promise<{ svg: string; drawn: number }> =>
  page.locator('takeup-away-figure').evaluate((way) => {
    const { svg, drawn } = (way as unknown as { made: { svg: string; drawn: number } }).made;
    return { svg, drawn };
  });

/** Leaves of the page the stage alone, and of the stage drawing and texts; or a picture in their place. */
async function alone(page: Page, picture: string | null): Promise<PNG> {
  const stage = page.locator('takeup-stage');
  await stage.evaluate(async (element, svg) => {
    const root = element.getRootNode() as ShadowRoot;
    const own = element.shadowRoot as ShadowRoot;
    const put = (at: ShadowRoot, id: string, rules: string): void => {
      if (at.adoptedStyleSheets.some((s) => s.media.mediaText === id)) return;
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(rules);
      at.adoptedStyleSheets.push(sheet);
    };
    put(
      root,
      'page',
      '* { visibility: hidden !important; } takeup-stage { visibility: visible !important; }',
    );
    put(own, 'stage', '.zoom, .part { visibility: hidden !important; }');
    own.querySelector('#test-figure')?.remove();
    if (svg === null) return;
    const img = document.createElement('img');
    img.id = 'test-figure';
    const [, width, height] = /viewBox="0 0 (\S+) (\S+)"/.exec(svg) ?? [];
    Object.assign(img.style, {
      position: 'absolute',
      left: '0',
      top: '0',
      zIndex: '9',
      width: `${width}px`,
      height: `${height}px`,
      background: 'white',
    });
    img.src = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    own.append(img);
    await img.decode();
  }, picture);
  await frames(page, 2);
  return PNG.sync.read(await stage.screenshot());
}

const BRAKES = ['quay-van', 'ferry-runabout', 'farm-trailer', 'bench-brake'];
const LAYERS = ['fan', 'comb', 'forces', 'names', 'ghost', 'heat', 'loupe', 'edge'];
it.each(
  Array.from({ length: samples('figures') }, (_, i) => ({
    station: stationIds[(i * 5) % stationIds.length] ?? 'apply',
    brake: BRAKES[(i + (i >> 4)) % BRAKES.length] as string,
    // Each bit of a number that runs through them is a layer.
    layers: LAYERS.filter((_layer, at) => ((i * 37 + 5) >> at) & 1),
    pressed: i % 2 === 0,
  })),
)(
  'the figure of $brake at $station with $layers is the stage',
  async ({ station, brake, layers, pressed }) => {
    const { page, errors, close } = await browser.open({
      viewport: { width: 1366, height: 768 },
      path: `?station=${station}&brake=${brake}`,
      reducedMotion: 'reduce',
      alone: true,
    });
    await page.locator('takeup-stage canvas').first().waitFor();
    await expect.poll(() => page.locator('main .waiting').count()).toBe(0);
    await page.evaluate(
      ([wanted, bar]) => {
        interface App {
          readonly session: {
            readonly layers: Record<string, boolean>;
            toggle(layer: string): void;
            pressTo(bar: number): void;
            turn(way: 0): void;
          };
        }
        const { session } = document.querySelector('takeup-app') as unknown as App;
        session.turn(0);
        for (const [layer, on] of Object.entries(session.layers))
          if (on !== wanted.includes(layer)) session.toggle(layer);
        if (bar > 0) session.pressTo(bar);
      },
      [layers, pressed ? 40 : 0] as const,
    );
    // A picture is taken of a brake that stands.
    const drawn = async () => (await page.locator('takeup-stage').screenshot()).toString('base64');
    await soon(async () => {
      const before = await drawn();
      await frames(page, 20);
      expect(await drawn()).toBe(before);
    });
    await figureWith(page, BARE);
    const { svg, drawn: high } = await shownFigure(page);
    await page.keyboard.press('e');
    await dialogOf(page).waitFor({ state: 'hidden' });
    const [stage, figure] = [await alone(page, null), await alone(page, svg)];
    // What stands under the layers' row is left out of the figure.
    expect(high).toBeGreaterThan(stage.height * 0.6);
    const { width } = stage;
    const cut = (png: PNG): PNG => {
      const upper = new PNG({ width, height: high });
      PNG.bitblt(png, upper, 0, 0, width, high);
      return upper;
    };
    // Heat's dots are a px across and a drum that is off may be a ring of two: canvas and SVG smooth them otherwise
    // (measured: 0.14 % of the picture).
    const most = layers.includes('heat') ? 0.002 : 0.001;
    const name = ['figure', station, brake, ...layers].join('-');
    expect(differing(name, cut(figure), cut(stage), most), `pictures in ${shots}`).toBeLessThan(
      most,
    );
    expect(errors).toEqual([]);
    await close();
  },
);

it('is saved as lines and as points of 3 840 across; both say where they come from, dropped on the page they open it', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?station=wear&state=Worn-in',
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await figureWith(page, {
    ...BARE,
    title: true,
    facts: true,
    kind: 'png',
    wide: 3840,
    scale: '1:1',
  });
  const saved = async (press: () => Promise<void>): Promise<[name: string, bytes: Buffer]> => {
    const [download] = await Promise.all([page.waitForEvent('download'), press()]);
    // Where a file of this name still lies, Firefox numbers the next by itself.
    const name = download.suggestedFilename().replace(/\(\d\)/, '');
    return [name, readFileSync(await download.path())];
  };
  const [pngName, png] = await saved(() =>
    page.getByRole('button', { name: 'Save figure' }).click(),
  );
  expect(pngName).toBe('takeup-quay-van-wear.png');
  const picture = PNG.sync.read(png);
  expect(picture.width).toBe(3840);
  // Something is drawn, on white.
  expect(new Set(picture.data.subarray(0, 4 * 3840 * 800)).size).toBeGreaterThan(50);
  const origin = readOrigin(png.toString('utf8'));
  expect(origin?.scene).toBe('quay-van');
  expect(origin?.link).toContain('station=wear');
  // Chosen and saved in one task: the file is of what is chosen, not of the figure that is still seen.
  const [hastyName, hasty] = await saved(() =>
    page.locator('takeup-away-figure').evaluate((way) => {
      const buttons = [...(way.shadowRoot?.querySelectorAll('button') ?? [])];
      buttons.find((b) => b.textContent === 'Drawing (SVG)')?.click();
      buttons.find((b) => b.textContent === 'Save figure')?.click();
    }),
  );
  expect([hastyName, hasty.subarray(0, 4).toString()]).toEqual([
    'takeup-quay-van-wear.svg',
    '<svg',
  ]);
  const [svgName, svg] = await saved(() =>
    page.getByRole('button', { name: 'Save figure' }).click(),
  );
  expect(svgName).toBe('takeup-quay-van-wear.svg');
  const text = svg.toString('utf8');
  expect(readOrigin(text)).toEqual(origin);
  expect(text).toContain('font/woff2;base64,');
  expect(text).not.toMatch(/<image|href=/);
  // One key, the last choices; in the dialog too.
  const [inDialog] = await saved(() => page.keyboard.press('Shift+E'));
  expect(inDialog).toBe(svgName);
  await page.keyboard.press('e');
  const [again, same] = await saved(() => page.keyboard.press('Shift+E'));
  expect([again, same.toString('utf8') === text]).toEqual([svgName, true]);
  expect(errors).toEqual([]);
  await close();
});
