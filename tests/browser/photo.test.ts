import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { samples } from '../samples.ts';
import { cases, isEnd, type PhotoCase, pointNamed, tapsOf } from '../unit/photo/cases.ts';
import { seriousFaults } from './axe.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, thumbHigh } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

type P = readonly [number, number];
const of = (name: string): PhotoCase => cases.find((c) => c.name === name) as PhotoCase;
const drums = { 'quay-van': 200, 'bench-brake': 165, 'farm-trailer': 250, 'ferry-runabout': 190 };
const widths = { 'quay-van': 32, 'bench-brake': 30, 'farm-trailer': 50, 'ferry-runabout': 34 };

/** A picture as a camera would have taken it, painted: the plate, the linings, and a spot at each place. */
async function painted(page: Page, c: PhotoCase): Promise<Buffer> {
  const told = {
    ...c.picture,
    spots: Object.values(tapsOf(c)),
    edge: [...c.taps.liningEdgeFront, ...c.taps.liningEdgeRear],
    rim: c.taps.plateRim ?? [],
  };
  const url = await page.evaluate(({ width, height, spots, edge, rim }) => {
    const canvas = document.createElement('canvas');
    canvas.width = width;
    canvas.height = height;
    const g = canvas.getContext('2d') as CanvasRenderingContext2D;
    g.fillStyle = '#3d3a36';
    g.fillRect(0, 0, width, height);
    const ring = (all: readonly P[], colour: string) => {
      g.fillStyle = colour;
      g.beginPath();
      const [mx, my] = [0, 1].map((i) => all.reduce((s, p) => s + (p[i] ?? 0), 0) / all.length);
      const by = (p: P) => Math.atan2(p[1] - (my ?? 0), p[0] - (mx ?? 0));
      for (const [x, y] of [...all].sort((a, b) => by(a) - by(b))) g.lineTo(x, y);
      g.fill();
    };
    if (rim.length > 2) ring(rim, '#8d8f90');
    ring(edge, '#a5764e');
    g.fillStyle = '#f2f2ee';
    for (const [x, y] of spots) {
      g.beginPath();
      g.arc(x, y, 9, 0, 7);
      g.fill();
    }
    return canvas.toDataURL('image/jpeg', 0.7);
  }, told);
  return Buffer.from(url.slice(url.indexOf(',') + 1), 'base64');
}

const picture = (buffer: Buffer, name = 'brake.jpg') => ({ name, mimeType: 'image/jpeg', buffer });
const chooser = (page: Page) => page.locator('takeup-own input[accept="image/*"]');
const box = (page: Page) => page.locator('takeup-photo .box');

/** A brake of one's own from the case's teaching brake. */
async function begin(page: Page, c: PhotoCase): Promise<void> {
  const { scene } = c as { scene: keyof typeof drums };
  await page.getByLabel('Drum Ø of yours, new').fill(String(drums[scene]));
  await page.getByRole('button', { name: 'Make it mine' }).click();
  await page.locator('[data-own="liningWidth"] input').fill(String(widths[scene]));
}

/** The sizes beside the picture. */
async function measured(page: Page, c: PhotoCase): Promise<void> {
  const { scene } = c as { scene: keyof typeof drums };
  const put = (key: string, text: string) => page.locator(`[data-photo="${key}"] input`).fill(text);
  await put('across', c.known.liningDiameter.toFixed(2));
  await put('plate', c.known.plateDiameter?.toFixed(1) ?? '');
  await put('liningOff', (c.known.depth.edge - widths[scene]).toFixed(1));
}

/** Where the picture lies: its corner on the page and its scale. */
async function laid(page: Page, width: number): Promise<{ at: P; scale: number }> {
  const rect = await page.locator('takeup-photo canvas.all').boundingBox();
  if (!rect) throw new Error('a picture');
  return { at: [rect.x, rect.y], scale: rect.width / width };
}

/** Goes through all points: taps each that the case has, and passes over the rest. */
async function tapAll(page: Page, c: PhotoCase): Promise<void> {
  const taps = tapsOf(c);
  const { at, scale } = await laid(page, c.picture.width);
  const count = await page.locator('takeup-photo-side .points li').count();
  for (let n = 0; n < count; n++) {
    const mark = page.locator('takeup-photo-side .now h2 i');
    await expect.poll(() => mark.innerText()).toBe(String(n + 1));
    const id = await box(page).getAttribute('data-point');
    const tap = taps[id as keyof typeof taps];
    if (tap) {
      await page.mouse.click(at[0] + tap[0] * scale, at[1] + tap[1] * scale);
      await page.locator(`takeup-photo [data-mark="${id}"].no:not(.open)`).waitFor();
      await page.getByRole('button', { name: /^Set / }).click();
    } else await page.getByRole('button', { name: 'Cannot see it' }).click();
  }
}

/** Places as the list tells them, mm, by the point's id; what is assumed is not in it. */
async function told(page: Page): Promise<ReadonlyMap<string, { at: P; band: number }>> {
  const rows = await page
    .locator('takeup-photo-side .points li')
    .evaluateAll((all) =>
      all.map((li) => [
        li.getAttribute('data-id') ?? '',
        li.querySelector('span:last-child')?.textContent ?? '',
      ]),
    );
  return new Map(
    rows.flatMap(([id, text]) => {
      const [x, y, band] = (text as string).replaceAll('−', '-').match(/-?[\d.]+/g) ?? [];
      if (band === undefined) return [];
      return [[id as string, { at: [Number(x), Number(y)] as P, band: Number(band) }]];
    }),
  );
}

it('reads painted pictures through the page, tap by tap, within its tolerance', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  const asked: string[] = [];
  page.on('request', (r) => asked.push(r.url()));
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('8');
  for (const c of cases.filter((_, i) => (i + 1) % samples('photosInOne') === 0)) {
    await page.locator('takeup-own').waitFor();
    await begin(page, c);
    await chooser(page).setInputFiles(picture(await painted(page, c)));
    await page.locator('takeup-photo').waitFor();
    await measured(page, c);
    if (c.mirrored !== (await page.locator('[data-wheel]').innerText()).startsWith('A right')) {
      await page.locator('[data-wheel]').click();
    }
    await tapAll(page, c);
    await expect.poll(() => page.locator('[data-fit]').innerText()).toMatch(/Lies within/);
    await expect.poll(() => page.locator('[data-answers]').innerText()).not.toMatch(/so far/);
    const places = await told(page);
    for (const [name, truth] of Object.entries(c.atRest)) {
      if (isEnd(name) || c.tolerance.except?.includes(name)) continue;
      const id = pointNamed(name);
      const place = places.get(id);
      if (!place) throw new Error(`${c.name}: ${name} is not told`);
      const off = Math.hypot(place.at[0] - truth[0], place.at[1] - truth[1]);
      // A pixel of the page is 3 of the picture, so a tap half of one beside; depths as typed: half a mm.
      expect(off, `${c.name}: ${name}`).toBeLessThan(c.tolerance.positionMm + 0.5);
      expect(place.band, `${c.name}: ${name}`).toBeLessThan(4);
    }
    const alarms = await page.locator('[data-alarm]').allInnerTexts();
    if (c.tolerance.mirrorSuspects) {
      expect(alarms.join()).toMatch(/^Upper spring, leading hole and its partner are no mirror/);
      await shot('photo-slipped');
    } else expect(alarms, c.name).toEqual([]);
    if (c.name === 'usual') {
      await shot('photo-usual');
      expect(await seriousFaults(page)).toEqual([]);
    }
    await page.getByRole('button', { name: 'Back to all sizes' }).click();
  }
  // Nothing but the page's own files, and nothing with a body.
  const origin = new URL(browser.address).origin;
  expect(asked.filter((u) => !u.startsWith(origin) && !/^(blob|data):/.test(u))).toEqual([]);
  expect(errors).toEqual([]);
  await close();
});

it('on the phone, by keyboard, over a reload; kept only if asked, and deleted with its points', async () => {
  const c = of('usual');
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
    hasTouch: true,
    path: '?station=own',
  });
  await page.locator('takeup-own').waitFor();
  await begin(page, c);
  const file = picture(await painted(page, c));
  await chooser(page).setInputFiles(file);
  await page.locator('takeup-photo').waitFor();
  await noWider(page, 390);
  await thumbHigh(page.locator('takeup-photo-side .now button'));
  // Arrow keys begin in the middle of the picture, Shift goes by ten.
  await box(page).press('Shift+ArrowLeft');
  await box(page).press('ArrowUp');
  await page.locator('takeup-photo [data-mark="edgeF1"]').waitFor();
  await box(page).press('Enter');
  await expect.poll(() => box(page).getAttribute('data-point')).toBe('edgeF2');
  await box(page).press('Backspace');
  await expect.poll(() => box(page).getAttribute('data-point')).toBe('edgeF1');
  await shot('photo-phone');
  expect(await seriousFaults(page)).toEqual([]);
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await page.reload();
  await page.locator('takeup-photo').waitFor();
  await page.getByText('The picture is not kept here.').waitFor();
  await page.locator('takeup-photo input[type=file]').setInputFiles(file);
  await page.getByText('The picture is not kept here.').waitFor({ state: 'detached' });
  await page.getByLabel('Keep the picture in this browser').check();
  await page.getByLabel('The picture is kept in this browser').waitFor();
  await page.reload();
  await page.locator('takeup-photo .lens, takeup-photo canvas.all').first().waitFor();
  await page.getByText('The picture is not kept here.').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Back to all sizes' }).click();
  await page.getByRole('button', { name: 'Take its points and picture away' }).click();
  await chooser(page).waitFor({ state: 'attached' });
  await expect.poll(() => page.getByRole('button', { name: /^Go on: / }).count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('a picture that cannot be read is told, and nothing else changes', async () => {
  const { page, close } = await browser.open({ reducedMotion: 'reduce', path: '?station=own' });
  await page.locator('takeup-own').waitFor();
  await begin(page, of('usual'));
  const heic = Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1');
  await chooser(page).setInputFiles(picture(heic, 'brake.heic'));
  await expect
    .poll(() => page.locator('[data-said]').innerText())
    .toMatch(/brake\.heic was not taken.*\(HEIC\).*JPEG/s);
  await chooser(page).setInputFiles(picture(Buffer.from('no picture'), 'brake.txt'));
  await expect
    .poll(() => page.locator('[data-said]').innerText())
    .toMatch(/brake\.txt was not taken.*Allowed: JPEG, PNG, WebP/s);
  await expect.poll(() => page.locator('takeup-photo').count()).toBe(0);
  await close();
});
