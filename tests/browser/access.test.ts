import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import { openBrowser } from './open.ts';

/** What axe-core calls serious or critical; texts over the canvas it cannot judge are looked at by hand. */
it('Apply and Wear have no serious fault of access, light and dark', async () => {
  const browser = await openBrowser();
  const { page, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  const source = readFileSync(
    createRequire(import.meta.url).resolve('axe-core/axe.min.js'),
    'utf8',
  );
  await page.evaluate(source);
  const check = async (): Promise<string[]> =>
    page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: {
          run: () => Promise<{
            violations: { id: string; impact: string; nodes: { html: string }[] }[];
          }>;
        };
      };
      const { violations } = await axe.run();
      return violations
        .filter((v) => v.impact === 'serious' || v.impact === 'critical')
        .map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 120)).join(' | ')}`);
    });
  expect(await check()).toEqual([]);
  await page.keyboard.press('2');
  await page.locator('takeup-chart').waitFor();
  expect(await check()).toEqual([]);
  await page.getByRole('button', { name: /^View/ }).click();
  await page.getByRole('button', { name: 'View: Board' }).waitFor();
  expect(await check()).toEqual([]);
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('heading', { name: 'Bench' }).waitFor();
  expect(await check()).toEqual([]);
  await close();
  await browser.close();
});
