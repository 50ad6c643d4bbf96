import { readFile } from 'node:fs/promises';
import DxfParser from 'dxf-parser';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('the cut-out model is saved as SVG, DXF and pages, and what cannot work is told', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
  });
  await page.keyboard.press('e');
  await page.locator('takeup-away dialog').waitFor();
  await page.keyboard.press('m');
  const way = page.locator('takeup-away-cut');
  await way.getByText('all 20 teeth are passed, taken and held').waitFor();
  await way.getByText('the smallest tooth is 2.25 mm wide and 2.00 mm high').waitFor();
  await shot('cut-out');
  const saved = async (name: string): Promise<Buffer> => {
    const download = page.waitForEvent('download');
    await way.getByRole('button', { name, exact: true }).click();
    return readFile(await (await download).path());
  };
  expect((await saved('SVG')).toString()).toMatch(/^<svg [^>]*width="600mm"/);
  const read = new DxfParser().parseSync((await saved('DXF')).toString());
  expect(read?.entities.filter((e) => e.type === 'LWPOLYLINE').length).toBeGreaterThan(12);
  const pages = await saved('PDF to glue together');
  expect((await getDocument({ data: new Uint8Array(pages), verbosity: 0 }).promise).numPages).toBe(
    20,
  );
  // A beam of 1 mm rounds the roots of teeth that are 2.25 mm wide.
  await way.getByLabel('Kerf, mm').fill('1');
  await way.getByLabel('Kerf, mm').press('Tab');
  await way.getByText('It will not work so').waitFor();
  expect(errors).toEqual([]);
  await close();
});
