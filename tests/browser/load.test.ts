import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('loads without an error or a warning, and draws something', async () => {
  const { page, errors, warnings, shot, close } = await browser.open();
  await page.locator('takeup-app canvas').first().waitFor();
  await expect.poll(() => page.title()).toBe('Takeup');
  await expect.poll(async () => (await shot('load')).length).toBeGreaterThan(20_000);
  expect(errors).toEqual([]);
  // What the graphics driver says of its own speed is not the page's.
  expect(warnings.filter((text) => !text.includes('GL Driver Message'))).toEqual([]);
  await close();
});

it('asks for nothing from another host', async () => {
  const { page, close } = await browser.open();
  const hosts: string[] = [];
  page.on('request', (request) => hosts.push(new URL(request.url()).host));
  await page.reload({ waitUntil: 'networkidle' });
  expect(hosts.length).toBeGreaterThan(1);
  expect(new Set(hosts)).toEqual(new Set([new URL(browser.address).host]));
  await close();
});

it('notices an error of the page', async () => {
  const { page, errors, close } = await browser.open();
  await page.evaluate(() => {
    console.error('planted');
    setTimeout(() => {
      throw new Error('thrown on purpose');
    });
  });
  await expect.poll(() => errors.length).toBe(2);
  expect(errors[0]).toContain('planted');
  expect(errors[1]).toContain('thrown on purpose');
  await close();
});
