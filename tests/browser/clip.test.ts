import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { bringSlow } from '../../ui/brought.ts';
import { ClickShow } from '../../ui/click-show.ts';
import { rigOf } from '../../ui/record/derive.ts';
import { aboutToClick, allOf, filmOf } from '../clip-film.ts';
import { near } from '../near.ts';
import { onsets, readMp4, readWebm } from '../read-film.ts';
import { long } from '../samples.ts';
import { type OpenBrowser, openBrowser } from './open.ts';

/** Films as the built page makes them, read back by demuxers and a decoder of others. */
let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
  await bringSlow();
});
afterAll(() => browser.close());

const RATE = 30;

/** The dialog at its films, the quay van about to click. */
async function openClips() {
  const opened = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?station=apply&state=Just+clicked',
    // Files go to the downloads, not where a reader would have to say.
    prepare: () => Reflect.deleteProperty(window, 'showSaveFilePicker'),
  });
  const { page } = opened;
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.evaluate(() => {
    interface Session {
      readonly moment: { readonly bench: { readonly state: { readonly tooth: number } } };
      put(moment: object, said: string): void;
    }
    const { session } = document.querySelector('takeup-app') as unknown as { session: Session };
    const { moment } = session;
    const { state } = moment.bench;
    const bench = { ...moment.bench, state: { ...state, tooth: state.tooth - 2 } };
    session.put({ ...moment, bench }, 'two teeth back');
  });
  await page.keyboard.press('e');
  const dialog = page.getByRole('dialog', { name: 'Take away' });
  await dialog.waitFor();
  await page.keyboard.press('c');
  await dialog.getByRole('button', { name: 'Make it' }).waitFor();
  return { ...opened, dialog };
}

async function choose(page: Page, kind: string): Promise<void> {
  await page.getByRole('button', { name: kind, exact: true }).click();
}

/** Makes what is chosen, and saves it by a button. */
async function made(page: Page, saves: string): Promise<Buffer> {
  await page.getByRole('button', { name: 'Make it' }).click();
  const save = page.getByRole('button', { name: saves });
  await save.waitFor({ timeout: 0 });
  return saved(page, saves);
}

async function saved(page: Page, name: string): Promise<Buffer> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name }).click(),
  ]);
  return readFileSync(await file.path());
}

const hashOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

// That film and loop made twice are the same is looked at here on the long run, and in Node always (unit/away/film).
it('a press as a film has its pictures, length, click and captions', async () => {
  const { page, errors, close } = await openClips();
  // What it has to be: the same film reckoned here, of a press that clicks.
  const bench = aboutToClick();
  expect(ClickShow.of(rigOf(bench), bench.bench.state).clicks).toBe(true);
  const ready = await filmOf('press', { rate: RATE, undrawn: true });
  const count = allOf(ready).length;
  const hit = ready.film.sounds[0]?.at ?? Number.NaN;
  // Not every build of the browser has H.264.
  const mp4 = await page.getByRole('button', { name: 'MP4', exact: true }).isEnabled();
  for (const kind of mp4 ? (['WebM', 'MP4'] as const) : (['WebM'] as const)) {
    await choose(page, kind);
    const bytes = await made(page, 'Save the film');
    // What is to be saved is looked at first, with its captions.
    const seen = await page.getByLabel(/^Preview: A press/).evaluate(async (e) => {
      const video = e as HTMLVideoElement;
      if (video.readyState < 1)
        await new Promise((loaded) => video.addEventListener('loadedmetadata', loaded));
      const [track] = video.textTracks;
      while (!track?.cues?.length) await new Promise(requestAnimationFrame);
      const [first] = track.cues as unknown as { text: string }[];
      return {
        high: video.videoHeight,
        lasts: video.duration,
        mode: track.mode,
        first: first?.text,
      };
    });
    expect(seen).toMatchObject({ high: 720, mode: 'showing' });
    expect(seen.first).toContain('The pedal goes down');
    near(seen.lasts, count / RATE, { abs: 0.1 }, `${kind} preview`);
    const film = kind === 'MP4' ? await readMp4(bytes) : readWebm(bytes);
    expect(film.size, kind).toEqual([1280, 720]);
    expect(film.pictures, kind).toHaveLength(count);
    // WebM tells times to a millisecond.
    // An encoder of H.264 may hand them over in the order in which they are decoded, not shown.
    const times = film.pictures.map(({ at }) => at).sort((a, b) => a - b);
    for (const [i, at] of times.entries()) near(at, i / RATE, { abs: 6e-4 });
    near(film.lasts, count / RATE, { abs: 1e-3 }, `${kind} length`);
    const heard = await onsets(film);
    expect(heard, kind).toHaveLength(1);
    near(heard[0] ?? 0, hit, { abs: 1 / RATE }, `${kind} click`);
    const said = (at: number): string | undefined =>
      film.captions.findLast((c) => c.at <= at + 1e-6)?.text;
    expect(said(0)).toContain('The pedal goes down');
    expect(film.captions.find((c) => c.text === '[click]')?.at).toBeCloseTo(hit, 2);
    // An encoder of H.264 may spend its bits by the clock; those of VP9 and VP8 give the same file for the same pictures.
    if (long && kind === 'WebM')
      expect(hashOf(await made(page, 'Save the film'))).toBe(hashOf(bytes));
    const vtt = (await saved(page, 'Save captions')).toString();
    expect(vtt.startsWith('WEBVTT\n\n00:00:00.000 --> ')).toBe(true);
    for (const { text } of film.captions) expect(vtt).toContain(text);
    const transcript = (await saved(page, 'Save transcript')).toString();
    expect(transcript).toContain('Quay van');
    expect(transcript).toContain('[click]');
  }
  expect(errors).toEqual([]);
  await close();
});

it('a loop has its size; a strip its eight pictures, each with the pace of time', async () => {
  const { page, errors, close } = await openClips();
  await choose(page, 'Loop');
  const loop = await made(page, 'Save loop');
  const wide = await page
    .getByRole('img', { name: /^Preview: / })
    .evaluate((e) => (e as HTMLImageElement).naturalWidth);
  expect(wide).toBe(960);
  expect(PNG.sync.read(loop).width).toBe(960);
  if (long) expect(hashOf(await made(page, 'Save loop'))).toBe(hashOf(loop));
  await choose(page, 'Strip');
  const strip = PNG.sync.read(await made(page, 'Save strip'));
  // Two by four pictures of 3 to 2 on a sheet of paper.
  near(strip.height / strip.width, 2650 / 1880, { rel: 1e-3 });
  const svg = (await saved(page, 'Save as SVG')).toString();
  // Eight pictures, each with its number and the pace of time in it.
  expect(svg.match(/<svg x=/g)).toHaveLength(8);
  expect(svg.match(/Time ×/g)?.length).toBe(8);
  // Its letters come along.
  expect(svg).toContain("@font-face{font-family:'Encode Sans Variable'");
  expect(svg).toContain('data:font/woff2;base64,d09GM');
  expect(errors).toEqual([]);
  await close();
});

it('the page goes on while a film is made; stopped, nothing of it is left', async () => {
  const { page, dialog, errors, close } = await openClips();
  await dialog.getByRole('radio', { name: /four minutes/ }).check();
  await choose(page, '1920 × 1080');
  const workers = page.workers().length;
  await dialog.getByRole('button', { name: 'Make it' }).click();
  const progress = dialog.getByRole('progressbar');
  const share = () => progress.evaluate((e) => (e as HTMLProgressElement).value);
  await expect.poll(share).toBeGreaterThan(0);
  const before = await share();
  // Pictures of the page itself, one after the other, while those of the film are made.
  await page.evaluate(async () => {
    for (let n = 0; n < 60; n++) await new Promise(requestAnimationFrame);
  });
  await expect.poll(share).toBeGreaterThan(before);
  expect(page.workers().length).toBe(workers + 1);
  await dialog.getByRole('button', { name: 'Stop' }).click();
  await dialog.getByText('Stopped. Nothing was kept of it.').waitFor();
  await expect.poll(() => page.workers().length).toBe(workers);
  expect(await dialog.getByRole('button', { name: /^Save/ }).count()).toBe(0);
  await dialog.getByRole('button', { name: 'Make it' }).waitFor();
  expect(errors).toEqual([]);
  await close();
});
