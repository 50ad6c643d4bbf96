import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { StageView } from '../../ui/app/stage-view.ts';
import { fingersOn } from './fingers.ts';
import { inChromiumAlone } from './firefox.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { countPainting, painted } from './painting.ts';
import { placeOf, soon, steady } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

/** Makes the page believe in a graphics card, so that it paints by WebGL. */
const withCard = () => {
  const real = WebGL2RenderingContext.prototype.getParameter;
  const named = [0x1f01, 0x9246];
  WebGL2RenderingContext.prototype.getParameter = function (name: number) {
    return named.includes(name) ? 'Graphics card' : real.call(this, name);
  };
};

const withoutCard = () => {
  const real = HTMLCanvasElement.prototype.getContext as (k: string, o?: unknown) => unknown;
  Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
    value(this: HTMLCanvasElement, kind: string, options?: unknown) {
      return kind.startsWith('webgl') ? null : real.call(this, kind, options);
    },
  });
};

const painter = (page: Page): Promise<string> =>
  page.locator('takeup-stage').evaluate((e) => (e as unknown as { painter: string }).painter);

/** Different colours in the middle of the drawing: the sheet alone has one. */
async function colours(page: Page): Promise<number> {
  const box = await page.locator('takeup-stage').boundingBox();
  if (!box) return 0;
  const clip = {
    x: box.x + box.width / 2 - 150,
    y: box.y + box.height / 2 - 150,
    width: 300,
    height: 300,
  };
  const png = await page.screenshot({ clip });
  return page.evaluate(
    async (bytes) => {
      const picture = await createImageBitmap(new Blob([new Uint8Array(bytes)]));
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      const pen = canvas.getContext('2d');
      pen?.drawImage(picture, 0, 0);
      const data = pen?.getImageData(0, 0, picture.width, picture.height).data;
      return new Set(new Uint32Array(data?.buffer ?? new ArrayBuffer(0))).size;
    },
    [...png],
  );
}
/** Plate, hub, nuts, lines and their soft edges. */
const DRAWN = 50;

/** Loses the graphics context of the stage; gives it back when asked. */
const lose = (page: Page, back: boolean): Promise<void> =>
  page.locator('takeup-stage canvas').evaluate(async (e, again) => {
    const canvas = e as HTMLCanvasElement;
    const loss = canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context');
    const told = new Promise((done) => {
      canvas.addEventListener('webglcontextlost', done, { once: true });
    });
    loss?.loseContext();
    await told;
    // In a task of its own: a context may be given back only after its loss was told to all.
    await new Promise((next) => setTimeout(next));
    if (again) loss?.restoreContext();
  }, back);

/** The stage's graphics context is gone, and not yet given back. */
const lost = (page: Page): Promise<boolean> =>
  page
    .locator('takeup-stage canvas')
    .evaluate((e) => (e as HTMLCanvasElement).getContext('webgl2')?.isContextLost() ?? true);

/** Opens anew with a script that runs before the page's own; first lets it load to the end. */
async function again(page: Page, before: () => void): Promise<void> {
  await expect.poll(() => painter(page)).not.toBe('');
  await page.addInitScript(before);
  await page.reload();
}

it('paints on without WebGL', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await again(page, withoutCard);
  await expect.poll(() => painter(page)).toBe('canvas');
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  expect(errors).toEqual([]);
  await close();
});

/** A busy machine may take longer than the page waits to give a context back. */
const patient = () => {
  const real = window.setTimeout;
  const slower = (run: TimerHandler, ms?: number, ...rest: unknown[]) =>
    real(run, ms === 3000 ? 60000 : ms, ...rest);
  window.setTimeout = slower as typeof window.setTimeout;
};
const SMALL = { viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce' } as const;

inChromiumAlone('a lost graphics context comes back by itself', async () => {
  const { page, errors, close } = await browser.open(SMALL);
  await page.addInitScript(patient);
  await again(page, withCard);
  await expect.poll(() => painter(page)).toBe('webgl');
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  await lose(page, true);
  await expect.poll(() => lost(page)).toBe(false);
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  await expect.poll(() => painter(page)).toBe('webgl');
  expect(errors).toEqual([]);
  await close();
});

inChromiumAlone('a graphics context that stays away: the canvas takes over', async () => {
  const { page, errors, close } = await browser.open(SMALL);
  await again(page, withCard);
  await expect.poll(() => painter(page)).toBe('webgl');
  await lose(page, false);
  await expect.poll(() => painter(page)).toBe('canvas');
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  expect(errors).toEqual([]);
  await close();
});

/**
 * A browser smooths an edge a little otherwise where it paints only a part of it, and may begin a thin
 * line a pixel sooner, so a pixel is looked for in the other picture with its neighbours. Steps of 255.
 * A line that was left standing, or out, differs by all its contrast; a tinted area by a little.
 */
const LINE = 60;
const TINT = 4;
/** Side of a square that is looked at for a lost area, px. */
const SQUARE = 8;

/** How far each pixel lies outside of what the other picture has within a pixel of it, row by row. */
function astray(a: PNG, b: PNG): Uint8Array {
  const { width, height } = a;
  const out = new Uint8Array(width * height);
  const around = [-width - 1, -width, -width + 1, -1, 0, 1, width - 1, width, width + 1];
  for (let i = width + 1; i < width * (height - 1) - 1; i++) {
    for (let c = 0; c < 3; c++) {
      let [low, high] = [255, 0];
      for (const d of around) {
        const v = b.data[4 * (i + d) + c] as number;
        if (v < low) low = v;
        if (v > high) high = v;
      }
      const v = a.data[4 * i + c] as number;
      out[i] = Math.max(out[i] as number, low - v, v - high);
    }
  }
  return out;
}

const SAME = { lines: 0, areas: 0 };

/** Pixels of lines that only the first picture has, and squares of areas that it has in another tint. */
function onlyIn(a: PNG, b: PNG): { lines: number; areas: number } {
  const squares = new Map<number, number>();
  let lines = 0;
  astray(a, b).forEach((off, i) => {
    if (off > LINE) lines++;
    if (off <= TINT) return;
    const square = Math.floor(i / a.width / SQUARE) * a.width + Math.floor((i % a.width) / SQUARE);
    squares.set(square, (squares.get(square) ?? 0) + 1);
  });
  const areas = [...squares.values()].filter((n) => n > (2 / 3) * SQUARE ** 2).length;
  return { lines, areas };
}

/** The pictures of a comparison, to be looked at where it fails. */
function keepPictures(name: string, pictures: Readonly<Record<string, PNG>>): void {
  const shots = fileURLToPath(new URL('shots', import.meta.url));
  mkdirSync(shots, { recursive: true });
  for (const [which, picture] of Object.entries(pictures))
    writeFileSync(join(shots, `graphics-${name}-${which}.png`), PNG.sync.write(picture));
}

/** Ends the browser's graphics process, as a fault of the driver does: every canvas loses what it held. */
async function endGraphics(page: Page): Promise<void> {
  const session = await page.context().browser()?.newBrowserCDPSession();
  if (!session) throw new Error('no browser to speak to');
  // The call is never answered by what it ends.
  await session.send('Browser.crashGpuProcess').catch(() => undefined);
}

/** Keeps what a canvas tells of its context, lost and given back. */
const listen = (canvas: Locator): Promise<void> =>
  canvas.evaluate((element) => {
    const told: string[] = [];
    Object.assign(window, { told });
    const names = ['contextlost', 'contextrestored', 'webglcontextlost', 'webglcontextrestored'];
    for (const name of names) element.addEventListener(name, () => told.push(name));
  });
const told = (page: Page): Promise<string[]> =>
  page.evaluate(() => (window as unknown as { told: string[] }).told);

inChromiumAlone.each([
  ['canvas', withoutCard, ['contextlost', 'contextrestored']],
  ['webgl', withCard, ['webglcontextlost', 'webglcontextrestored']],
] as const)(
  'when the graphics process dies and comes back, the %s stands as it did, hatches and loupe too',
  async (kind, before, events) => {
    // A browser of its own: the process is that of all its pages.
    const own = await openBrowser();
    const { page, errors, close } = await own.open(SMALL);
    await page.addInitScript(patient);
    await again(page, before);
    await expect.poll(() => painter(page)).toBe(kind);
    await page.getByRole('button', { name: 'Stopped' }).click();
    await page.getByRole('button', { name: 'Loupe' }).click();
    const picture = async (): Promise<PNG> =>
      PNG.sync.read(await page.locator('section.stage').screenshot());
    await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
    // What comes while nobody waits for it ends with a button in the stage's foot: on a busy machine after the picture.
    await page.getByRole('button', { name: /^Keep/ }).waitFor();
    await steady(page, async () => (await picture()).data.toString('base64'));
    const whole = await picture();
    await listen(page.locator('takeup-stage canvas'));
    await endGraphics(page);
    await expect.poll(() => told(page)).toEqual(events);
    await soon(async () => {
      const after = await picture();
      keepPictures(kind, { before: whole, after });
      expect([onlyIn(whole, after), onlyIn(after, whole)]).toEqual([SAME, SAME]);
    });
    expect(errors).toEqual([]);
    await close();
    await own.close();
  },
);

inChromiumAlone(
  'when the graphics process dies and comes back, the chart stands as it did',
  async () => {
    const own = await openBrowser();
    const { page, errors, close } = await own.open(SMALL);
    await expect.poll(() => painter(page)).not.toBe('');
    await page.keyboard.press('2');
    const chart = page.locator('takeup-chart');
    const picture = (): Promise<string> =>
      chart
        .locator('canvas')
        .first()
        .evaluate((e) => (e as HTMLCanvasElement).toDataURL());
    await chart.locator('canvas').first().waitFor();
    const whole = await steady(page, picture);
    await listen(chart.locator('canvas').first());
    await endGraphics(page);
    await expect.poll(() => told(page)).toEqual(['contextlost', 'contextrestored']);
    await expect.poll(picture).toBe(whole);
    expect(errors).toEqual([]);
    await close();
    await own.close();
  },
);

it('a page that was hidden is painted whole when it is shown again', async () => {
  const { page, errors, close } = await browser.open(SMALL);
  await again(page, withoutCard);
  await expect.poll(() => painter(page)).toBe('canvas');
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  // What a hidden page's canvas lost without a word.
  await page.locator('takeup-stage canvas').evaluate((e) => {
    const { canvas } = (e as HTMLCanvasElement).getContext('2d') ?? {};
    const pen = canvas?.getContext('2d');
    pen?.setTransform(1, 0, 0, 1, 0, 0);
    pen?.fillRect(0, 0, canvas?.width ?? 0, canvas?.height ?? 0);
  });
  await expect.poll(() => colours(page)).toBeLessThan(DRAWN);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  expect(errors).toEqual([]);
  await close();
});

const zoomed = (page: Page): Promise<boolean> =>
  page.locator('takeup-stage').evaluate((e) => e.hasAttribute('zoomed'));

it('zooms by wheel, buttons and keys, moves by drag and keys, and one key resets', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  const stage = page.locator('takeup-stage');
  await page.locator('takeup-app canvas').first().waitFor();
  /** Where the drum's centre lies, px: texts may go aside. */
  const at = (): Promise<[number, number]> =>
    stage.evaluate((e) => {
      const [x, y] = (e as StageView).drawings[0]?.view.origin ?? [0, 0];
      return [Math.round(x), Math.round(y)];
    });
  const home = await steady(page, at);
  const resets = async () => {
    await page.keyboard.press('0');
    await expect.poll(() => zoomed(page)).toBe(false);
    await expect.poll(at).toEqual(home);
  };

  await page.getByRole('button', { name: 'Zoom in' }).click();
  await expect.poll(() => zoomed(page)).toBe(true);
  await expect.poll(at).not.toEqual(home);
  await page.getByRole('button', { name: 'Zoom out' }).click();
  await expect.poll(at).toEqual(home);
  await expect.poll(() => zoomed(page)).toBe(false);

  await page.keyboard.press('+');
  await expect.poll(() => zoomed(page)).toBe(true);
  await expect.poll(at).not.toEqual(home);
  const near = await steady(page, at);
  await stage.locator('#host').focus();
  await page.keyboard.press('Shift+ArrowUp');
  await expect.poll(at).toEqual([near[0], near[1] - 60]);
  await page.keyboard.press('Shift+ArrowLeft');
  await expect.poll(at).toEqual([near[0] - 60, near[1] - 60]);
  await resets();

  const box = await placeOf(stage);
  const [x, y] = [box.x + 500, box.y + 400];
  await page.mouse.move(x, y);
  await page.mouse.wheel(0, -400);
  await expect.poll(() => zoomed(page)).toBe(true);
  await shot('zoomed');
  await expect.poll(at).not.toEqual(home);
  const before = await steady(page, at);
  await page.mouse.down();
  await page.mouse.move(x - 40, y - 30, { steps: 4 });
  await page.mouse.up();
  await expect.poll(at).toEqual([before[0] - 40, before[1] - 30]);
  await resets();
  expect(errors).toEqual([]);
  await close();
});

it('two fingers zoom on a phone', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  await expect.poll(() => zoomed(page)).toBe(false);
  const box = await placeOf(page.locator('takeup-stage'));
  const [x, y] = [box.x + 195, box.y + 200];
  const fingers = await fingersOn(page);
  for (const apart of [40, 50, 60, 70, 80]) await fingers([x - apart, y], [x + apart, y]);
  await fingers();
  await expect.poll(() => zoomed(page)).toBe(true);
  const back = page.getByRole('button', { name: /Whole brake/ });
  const size = await placeOf(back);
  expect(Math.min(size.height, size.width)).toBeGreaterThanOrEqual(56);
  await back.click();
  await expect.poll(() => zoomed(page)).toBe(false);
  expect(errors).toEqual([]);
  await close();
});

/** Later than any page takes to load, ms. */
const HOUR = 3.6e6;
/** Calls for a picture of a held brake whose drum turns: the hub, the paint on the rim, and pictures of the rest. */
const HELD = 40;

it('what is painted in part is what would be painted whole', async () => {
  const { page, errors, close } = await browser.open({ clock: true, prepare: countPainting });
  await page.locator('takeup-stage canvas').waitFor();
  await page.clock.pauseAt(HOUR);
  await page.clock.runFor(300);
  const stage = page.locator('takeup-stage canvas');
  const run = async (button: string, ms: number) => {
    await page.getByRole('button', { name: button }).first().click();
    await page.clock.runFor(ms);
  };
  /** What the canvas itself holds: buttons over it have their own ways of changing. */
  const picture = async (): Promise<PNG> => {
    const url = await stage.evaluate((canvas: HTMLCanvasElement) => canvas.toDataURL('image/png'));
    return PNG.sync.read(Buffer.from(url.slice(url.indexOf(',') + 1), 'base64'));
  };
  /** The canvas as it stands, and then after all of it was painted anew at the same moment. */
  const compared = async (): Promise<void> => {
    const partly = await picture();
    // Another size and back: nothing painted stands, while the page's time does.
    await page.setViewportSize({ width: 1900, height: 1060 });
    await expect.poll(async () => (await stage.boundingBox())?.height).toBeLessThan(1060);
    await page.setViewportSize({ width: 1920, height: 1080 });
    await expect.poll(async () => (await picture()).width).toBe(partly.width);
    const whole = await picture();
    expect([onlyIn(partly, whole), onlyIn(whole, partly)]).toEqual([SAME, SAME]);
  };
  const pedal = page.locator('takeup-pedal [role="slider"]');
  await pedal.focus();
  await page.keyboard.press('Enter');
  await page.clock.runFor(400);
  await compared();
  // Held so long that what stands still is copied, not painted.
  await page.clock.runFor(1200);
  await painted(page);
  await page.clock.runFor(160);
  const calls = await painted(page);
  expect(calls).toBeGreaterThan(0);
  expect(calls / 10).toBeLessThan(HELD);
  await compared();
  await run('Gap fan', 300);
  await run('Rest ghost', 200);
  await run('Names', 200);
  await compared();
  // The drum stands, so nothing else moves over what goes.
  await run('Stopped', 1000);
  await compared();
  await run('Rest ghost', 200);
  await run('Gap fan', 200);
  await compared();
  await run('Forward', 100);
  await run('Loupe', 200);
  await pedal.focus();
  await page.keyboard.press('Enter');
  await page.clock.runFor(500);
  await compared();
  await page.keyboard.press('+');
  await page.clock.runFor(200);
  await run('Names', 200);
  await compared();
  expect(errors).toEqual([]);
  await close();
});
