import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

/** What axe-core calls serious or critical on the page as it stands; empty when there is none. */
export async function seriousFaults(page: Page): Promise<string[]> {
  const source = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
  await page.evaluate(readFileSync(source, 'utf8'));
  return page.evaluate(async () => {
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
}
