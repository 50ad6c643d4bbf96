import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seriousFaults } from './axe.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { openStation, stationCount } from './tour.ts';

/** The page in German: all of it, kept over a reload, and back. */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const lang = (page: Page): Promise<string> => page.evaluate(() => document.documentElement.lang);

/** English words that hold a sentence together, and are no German ones. */
const ENGLISH =
  /(?<![\p{L}.-])(the|of|with|and|is|are|from|into|that|this|which|your|its|not|when|than|by|at|on|for|each|left of|out of)(?![\p{L}-])/iu;

/**
 * What stays as it is: texts that stand in the teaching brakes' scenes (what a road is like, who drives it), which have
 * one language; the name that each language gives itself; and keys and codes.
 */
const AS_IT_IS = ['.wearabout', '[lang=en]', 'kbd', 'code', 'select.where', 'option[value*="-"]'];

/** A road is told of by its scene; so it is in the title of the list of roads. */
const OF_SCENES = /^All stops alike, forward/;

/** Texts that are seen on the page, each as it stands. Runs in the page. */
function seen(except: string): string[] {
  const out: string[] = [];
  const walk = (root: Document | ShadowRoot): void => {
    for (const e of root.querySelectorAll<HTMLElement>('*')) {
      if (e.shadowRoot) walk(e.shadowRoot);
      if (e.matches('script, style, noscript, textarea') || e.closest(except)) continue;
      if (!e.checkVisibility({ visibilityProperty: true })) continue;
      for (const node of e.childNodes)
        if (node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim())
          out.push(node.nodeValue.trim().replace(/\s+/g, ' '));
      for (const name of ['title', 'aria-label', 'placeholder']) {
        const told = e.getAttribute(name);
        // A reading's title ends with its formula, whose signs are named in English.
        if (told) out.push(told.split('\n')[0] ?? '');
      }
    }
  };
  walk(document);
  return out;
}

const SIZES = [
  { width: 1366, height: 768 },
  { width: 390, height: 844 },
];

describe.each(SIZES)('at $width px', (viewport) => {
  it('opens every station in German, without an error and no wider than the page', async () => {
    const { page, errors, close } = await browser.open({
      viewport,
      path: '?lang=de&station=apply',
    });
    await page.locator('takeup-app main').waitFor();
    const wrong: string[] = [];
    for (let at = 0; at < (await stationCount(page)); at++) {
      const id = await openStation(page, at);
      expect(await lang(page), id).toBe('de');
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide, id).toBeLessThanOrEqual(0);
      const texts = await page.evaluate(seen, AS_IT_IS.join(', '));
      expect(texts.length, id).toBeGreaterThan(20);
      wrong.push(
        ...texts
          .filter((t) => ENGLISH.test(t) && !OF_SCENES.test(t))
          .map((t) => `${id}: ${t.slice(0, 90)}`),
      );
      const points = texts.filter((t) =>
        /(?<![\d.,])\d+\.\d+(?![\d.])\s?(?:mm|bar|N|km|MPa|%)/.test(t),
      );
      wrong.push(...points.map((t) => `${id}: ${t.slice(0, 90)}`));
    }
    expect([...new Set(wrong)]).toEqual([]);
    expect(errors).toEqual([]);
    await close();
  });
});

it('is clean for assistive software at a desk', async () => {
  const { page, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?lang=de&station=apply',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  expect(await seriousFaults(page)).toEqual([]);
  await close();
});

it('is chosen on the sheet of the bench, kept over a reload with all that stands, and left again', async () => {
  const { page, errors, close } = await browser.open({ viewport: { width: 1366, height: 768 } });
  const choose = async (name: string): Promise<void> => {
    await page.locator('header.top [aria-haspopup="dialog"]').last().click();
    await page.locator('takeup-bench-sheet dialog').getByRole('button', { name }).click();
  };
  const station = () => page.locator('main').getAttribute('data-station');
  await page.locator('takeup-stage canvas').first().waitFor();
  expect(await lang(page)).toBe('en');
  await page.keyboard.press('4');
  await expect.poll(station).toBe('park');
  await choose('Deutsch');
  await expect.poll(() => lang(page).catch(() => '')).toBe('de');
  await expect.poll(station).toBe('park');
  await page.getByRole('button', { name: 'Parken' }).waitFor();
  await page.reload();
  await expect.poll(() => lang(page).catch(() => '')).toBe('de');
  await expect.poll(station).toBe('park');
  await choose('English');
  await expect.poll(() => lang(page).catch(() => '')).toBe('en');
  await page.getByRole('button', { name: '4 Park' }).waitFor();
  expect(await station()).toBe('park');
  expect(errors).toEqual([]);
  await close();
});

it('is English whatever the browser is set to, which is offered once, on Start', async () => {
  const { page, close } = await browser.open({ language: 'de-DE', path: '?station=start' });
  await page.locator('takeup-app main').waitFor();
  expect(await lang(page)).toBe('en');
  await page.locator('.speaks').getByRole('button', { name: 'Deutsch' }).click();
  await expect.poll(() => lang(page).catch(() => '')).toBe('de');
  await close();
  const other = await browser.open({ language: 'fr-FR', path: '?station=start' });
  await other.page.locator('.ways').waitFor();
  expect(await other.page.locator('.speaks').count()).toBe(0);
  await other.close();
});

it('a link wins over what was chosen, for its window alone; what English needs brings no German', async () => {
  const { page, close } = await browser.open({ viewport: { width: 1366, height: 768 } });
  await page.locator('takeup-stage canvas').first().waitFor();
  const scripts = () =>
    page.evaluate(() =>
      performance
        .getEntriesByType('resource')
        .map((e) => e.name)
        .filter((name) => /\/(de|german|decimal-comma)-[^/]*\.js$/.test(name)),
    );
  expect(await scripts()).toEqual([]);
  await page.goto(new URL('?lang=de', browser.address).href);
  await expect.poll(() => lang(page)).toBe('de');
  expect((await scripts()).length).toBeGreaterThan(1);
  expect(await page.evaluate(() => localStorage.getItem('takeup-language'))).toBe(null);
  await close();
});

it('a lesson in German is played by its keys', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?lang=de&station=lessons',
  });
  const row = page
    .locator('takeup-lessons, .lessons, main')
    .getByText('Der Klick und der Totgang')
    .first();
  await row.waitFor();
  await page
    .getByRole('listitem')
    .filter({ hasText: 'Der Klick und der Totgang' })
    .getByRole('button')
    .first()
    .click();
  await page.getByText('Der Spalt ist auf 0,39 mm gewachsen').first().waitFor();
  await page.keyboard.press('b');
  await page.keyboard.press('PageDown');
  await page.getByText('und fällt auf Zahn 9 zurück').first().waitFor();
  expect(errors).toEqual([]);
  await close();
});
