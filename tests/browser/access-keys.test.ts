import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { stations } from '../../ui/stations/index.ts';
import { firstHeadings, seriousFaults } from './axe.ts';
import { openBrowser } from './open.ts';

/**
 * Stations without a tab are opened by their keys alone, from what the page itself has registered: a new one is gone
 * to as well. Those with a tab are gone through with all their views by `look-round.ts`, and on a phone, whose list has them all, these too.
 */

const untabbed = stations.filter((s) => s.noTab);

/** What is typed into must not take the key. Runs in the page. */
function leaveField(): void {
  let active = document.activeElement;
  while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
  (active as HTMLElement | null)?.blur();
}

async function openByKey(page: Page, { id, key }: (typeof stations)[number]): Promise<void> {
  const main = page.locator('main');
  await page.evaluate(leaveField);
  await page.keyboard.press(key);
  await expect.poll(() => main.getAttribute('data-station')).toBe(id);
  await expect.poll(() => page.locator('main .waiting').count()).toBe(0);
}

it.each([{ width: 1366, height: 768 }])(
  'at $width px no station that is opened by its key has a serious fault of access, and each has one h1',
  async (viewport) => {
    const browser = await openBrowser();
    const { page, errors, close } = await browser.open({ viewport, reducedMotion: 'reduce' });
    await page.locator('takeup-stage canvas').first().waitFor({ state: 'attached' });
    const wrong: string[] = [];
    for (const station of untabbed) {
      await openByKey(page, station);
      wrong.push(...(await seriousFaults(page)).map((fault) => `${station.id}: ${fault}`));
      const headings = await firstHeadings(page);
      if (headings.length !== 1)
        wrong.push(`${station.id}: h1 ${headings.join(' and ') || 'none'}`);
    }
    expect(wrong).toEqual([]);
    expect(untabbed.length).toBeGreaterThan(5);
    expect(errors).toEqual([]);
    await close();
    await browser.close();
  },
);
