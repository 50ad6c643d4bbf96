import { readFileSync } from 'node:fs';
import jsQR from 'jsqr';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

/** The dialog by which everything leaves the bench, and what it shares. */
let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const dialogOf = (page: Page) => page.getByRole('dialog', { name: 'Take away' });

/** What a code on the screen says, read by a decoder that has nothing to do with its maker; empty: nothing. */
async function readCode(page: Page, code: string): Promise<string> {
  const { data, width, height } = PNG.sync.read(await page.locator(code).screenshot());
  return jsQR(new Uint8ClampedArray(data), width, height)?.data ?? '';
}

it('opens by its key, from the head and from the phone’s menu; its keys are its own, and the same key closes it', async () => {
  const { page, errors, close } = await browser.open({ viewport: { width: 1366, height: 768 } });
  await page.locator('takeup-stage canvas').first().waitFor();
  const dialog = dialogOf(page);
  await page.keyboard.press('e');
  await dialog.waitFor();
  // T opens the table on the page behind, 2 leads to Wear there.
  for (const key of ['t', '2']) await page.keyboard.press(key);
  expect(await page.locator('dialog[open]').count()).toBe(1);
  expect(await page.locator('main').getAttribute('data-station')).toBe('apply');
  await page.keyboard.press('e');
  await dialog.waitFor({ state: 'hidden' });
  await page.getByRole('button', { name: 'Take away' }).click();
  await dialog.waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
  expect(errors).toEqual([]);
  await close();

  const phone = await browser.open({ viewport: { width: 390, height: 844 }, hasTouch: true });
  await phone.page.getByRole('button', { name: 'Show', exact: true }).click();
  await phone.page.getByRole('button', { name: 'Take away…' }).click();
  await dialogOf(phone.page).waitFor();
  await dialogOf(phone.page).getByRole('button', { name: 'Done' }).click();
  await dialogOf(phone.page).waitFor({ state: 'hidden' });
  expect(phone.errors).toEqual([]);
  await phone.close();
});

it('the code in the dialog, read by an independent decoder, is the link, and opens the same moment', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?station=wear&state=Worn-in',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('n');
  await page.keyboard.press('e');
  await dialogOf(page).waitFor();
  await page.keyboard.press('s');
  const link = dialogOf(page).getByLabel(/^Link, /);
  const address = await link.inputValue();
  expect(address).toContain('station=wear');
  expect(await readCode(page, 'takeup-away-share .code')).toBe(address);
  // On the machine itself a phone could not follow it, and that is said.
  await dialogOf(page).getByText('runs on this computer alone').waitFor();
  const other = await browser.open({ path: address.slice(browser.address.length) });
  const state = (p: Page) =>
    p.evaluate(() => {
      interface App {
        readonly session: { readonly moment: { readonly bench: object; readonly station: string } };
      }
      const { bench, station } = (document.querySelector('takeup-app') as unknown as App).session
        .moment;
      return JSON.stringify([bench, station]);
    });
  await expect.poll(() => state(other.page)).toBe(await state(page));
  await other.close();
  expect(errors).toEqual([]);
  await close();
});

it('on the wall its key shows the code large, read by an independent decoder, and the same key or Escape closes it', async () => {
  const { page, errors, shot, close } = await browser.open({
    path: '?station=apply&state=Second+set',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('w');
  await page.locator('.wall .words').waitFor();
  const code = page.getByRole('dialog', { name: 'Code for phones' });
  await page.keyboard.press('q');
  await code.waitFor();
  await expect.poll(() => readCode(page, 'takeup-wall-code .code')).toContain('state=Second+set');
  const address = await readCode(page, 'takeup-wall-code .code');
  // Large: over half of the wall's height. Rule of the wall: no text under 34 px.
  const box = await page.locator('takeup-wall-code .code').boundingBox();
  expect(box?.height ?? 0).toBeGreaterThan(540);
  const sizes = await code.evaluate((d) =>
    [...d.querySelectorAll('h2, p, button')].map((e) =>
      Number.parseFloat(getComputedStyle(e).fontSize),
    ),
  );
  expect(sizes.length).toBeGreaterThan(2);
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(34);
  const told = await code.locator('.address').innerText();
  expect(address.startsWith(told)).toBe(true);
  await shot('wall-code');
  await page.keyboard.press('q');
  await code.waitFor({ state: 'detached' });
  await page.keyboard.press('q');
  await code.waitFor();
  await page.keyboard.press('Escape');
  await code.waitFor({ state: 'detached' });
  // The wall is still there; a phone that follows the code opens the desk.
  expect(await page.locator('main.wall').count()).toBe(1);
  await page.keyboard.press('?');
  await page.getByText('this moment as a code for phones').waitFor();
  await shot('wall-keys');
  const over = await page
    .locator('.wall .keycard')
    .evaluate((e) => [e.scrollHeight - e.clientHeight, e.scrollWidth - e.clientWidth]);
  expect(over).toEqual([0, 0]);
  const phone = await browser.open({ path: address.slice(browser.address.length) });
  await phone.page.locator('main.work[data-station="apply"]').waitFor();
  await phone.close();
  expect(errors).toEqual([]);
  await close();
});

it('is found by Ask in one’s own words, and a hit opens it on that way', async () => {
  const { page, errors, close } = await browser.open({ viewport: { width: 1366, height: 768 } });
  await page.locator('takeup-stage canvas').first().waitFor();
  for (const [words, way] of [
    ['qr code for my students', 'Share'],
    ['make a video', 'Clip'],
    ['export csv', 'Data'],
  ] as const) {
    await page.keyboard.press('/');
    await page.locator('#ask-field').fill(words);
    await page.locator(`[data-entry="away:${way.toLowerCase()}"] button`).click();
    await dialogOf(page).waitFor();
    await expect
      .poll(() => dialogOf(page).locator('nav [aria-current]').innerText())
      .toContain(way);
    await page.keyboard.press('Escape');
    await dialogOf(page).waitFor({ state: 'hidden' });
    // The field keeps its keys: the next is asked from the brake again.
    await page.getByRole('button', { name: /Apply$/ }).click();
  }
  expect(errors).toEqual([]);
  await close();
});

/** Lets a file go over the page, as a hand does that dragged it there. */
const drop = (page: Page, name: string, type: string, text: string): Promise<boolean> =>
  page.evaluate(
    async ([file, kind, content]) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([content], file, { type: kind }));
      const tell = (what: string): boolean =>
        document.body.dispatchEvent(
          new DragEvent(what, { dataTransfer, bubbles: true, cancelable: true, composed: true }),
        );
      const hinted = (): boolean =>
        document
          .querySelector('takeup-app')
          ?.shadowRoot?.querySelector('takeup-drop')
          ?.hasAttribute('over') === true;
      tell('dragenter');
      for (let n = 0; n < 600 && !hinted(); n++) await new Promise(requestAnimationFrame);
      const hint = hinted();
      tell('drop');
      return hint;
    },
    [name, type, text] as const,
  );

it('what is dropped on the page is taken where its kind is read, and a bad file is told of', async () => {
  const { page, errors, close } = await browser.open({ viewport: { width: 1366, height: 768 } });
  await page.locator('takeup-drop').waitFor({ state: 'attached' });
  const station = () => page.locator('main').getAttribute('data-station');
  const brake = readFileSync(new URL('../../scenes/farm-trailer.json', import.meta.url), 'utf8');
  expect(await drop(page, 'mine.json', 'application/json', brake)).toBe(true);
  await expect.poll(station).toBe('own');
  await page.getByText('Farm trailer').first().waitFor();
  // A figure: its moment is in it.
  const origin = 'Takeup origin: {"version":"0.1.0","scene":"quay-van","link":"x/?station=park"}';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg"><metadata>${origin.replaceAll('"', '&#34;')}</metadata></svg>`;
  await drop(page, 'a.svg', 'image/svg+xml', svg);
  await expect.poll(station).toBe('park');
  const lesson = readFileSync(
    new URL('../../scenes/lessons/00-how-this-brake-works.json', import.meta.url),
    'utf8',
  );
  await drop(
    page,
    'l.json',
    'application/json',
    lesson.replace('"how-this-brake-works"', '"mine-own"'),
  );
  await expect.poll(station).toBe('lessons');
  await page.getByText('l.json is among the lessons.').waitFor();
  await drop(page, 'letter.txt', 'text/plain', 'Dear sir');
  await page.getByText('letter.txt was not opened; nothing else has changed.').first().waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('saves by the browser’s own handles where it has them, and takes a Cancel for an answer', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    alone: true,
  });
  await page.evaluate(() => {
    const written: string[] = [];
    const asked: unknown[] = [];
    Object.assign(globalThis, {
      written,
      asked,
      cancels: false,
      showSaveFilePicker: async (options: { suggestedName: string }) => {
        asked.push(options);
        if ((globalThis as unknown as { cancels: boolean }).cancels)
          throw new DOMException('', 'AbortError');
        return {
          name: 'chosen.json',
          createWritable: async () => ({
            write: async (blob: Blob) => void written.push(await blob.text()),
            close: async () => undefined,
          }),
        };
      },
    });
  });
  await page.keyboard.press('e');
  await dialogOf(page).waitFor();
  await page.keyboard.press('s');
  const save = dialogOf(page).getByRole('button', { name: 'Save as a file' });
  await save.click();
  await page.getByText('chosen.json is saved.').waitFor();
  const told = await page.evaluate(() => {
    const { written, asked } = globalThis as unknown as { written: string[]; asked: object[] };
    return { written, asked };
  });
  expect(JSON.parse(told.written[0] ?? '')).toHaveProperty('bench');
  expect(told.asked[0]).toMatchObject({ suggestedName: 'takeup-quay-van-apply.json' });
  await page.evaluate(() => Object.assign(globalThis, { cancels: true }));
  await save.click();
  await page.getByText('chosen.json is saved.').waitFor({ state: 'hidden' });
  // Opened by a handle: saving begins beside that file, under its name.
  await page.evaluate((text) => {
    const handle = {
      name: 'mine.json',
      getFile: async () => new File([text], 'mine.json', { type: 'application/json' }),
    };
    Object.assign(globalThis, { cancels: false, showOpenFilePicker: async () => [handle] });
  }, told.written[0] ?? '');
  await page.keyboard.press('Escape');
  await dialogOf(page).waitFor({ state: 'hidden' });
  await page.keyboard.press('e');
  await dialogOf(page).waitFor();
  await page.keyboard.press('s');
  await dialogOf(page).getByLabel('Open a moment’s file').click();
  await dialogOf(page).waitFor({ state: 'hidden' });
  await page.keyboard.press('e');
  await dialogOf(page).waitFor();
  await page.keyboard.press('s');
  await save.click();
  await expect
    .poll(() => page.evaluate(() => (globalThis as unknown as { asked: object[] }).asked.at(-1)))
    .toMatchObject({ suggestedName: 'mine.json', startIn: { name: 'mine.json' } });
  expect(errors).toEqual([]);
  await close();
});

it('the table of readings is saved and copied, with where it comes from', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('e');
  await dialogOf(page).waitFor();
  await page.keyboard.press('d');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save CSV: All readings of the moment' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('takeup-quay-van-readings.csv');
  const text = readFileSync(await download.path(), 'utf8');
  expect(text).toContain('Takeup origin: ');
  // The quay van's drum: 200 mm across, in its scene.
  expect(text).toMatch(/Now,drumDiameter,,Drum diameter,200,mm/);
  expect(text).toContain('Once around the drum');
  await page.getByRole('button', { name: 'Copy table: All readings of the moment' }).click();
  await page.getByText('Table copied').waitFor();
  const copied = await page.evaluate(() => navigator.clipboard.readText());
  expect(copied).toContain('drumDiameter\t\tDrum diameter\t200\tmm');
  // No life yet: it says how to have one.
  await page.getByText('let it wear on in Wear').waitFor();
  expect(errors).toEqual([]);
  await close();
});
