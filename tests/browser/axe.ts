import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

interface Axe {
  run(
    where: Document,
    how: { resultTypes: string[]; runOnly?: string[] },
  ): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }>;
}

/**
 * What axe-core calls serious or critical on the page as it stands; empty when there is none. Texts over
 * the canvas it cannot judge: `contrast.test.ts` does.
 *
 * @param only the rules that are asked, where not all are
 */
export async function seriousFaults(page: Page, only?: string[]): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) {
    const source = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
    await page.evaluate(readFileSync(source, 'utf8'));
  }
  return page.evaluate(async (runOnly) => {
    const { axe } = globalThis as unknown as { axe: Axe };
    const how = { resultTypes: ['violations'], ...(runOnly && { runOnly }) };
    const { violations } = await axe.run(document, how);
    return violations
      .filter((v) => v.impact === 'serious' || v.impact === 'critical')
      .map((v) => `${v.id}: ${v.nodes.map((n) => n.html.slice(0, 120)).join(' | ')}`);
  }, only);
}

/** Tells apart what can differ in access: each kind of element to be seen, by what it is, stands in and is called. */
export const kindsOn = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const kinds = new Set<string>();
    const within: { root: ParentNode; path: string }[] = [{ root: document, path: '' }];
    for (let at = within.pop(); at; at = within.pop()) {
      for (const e of at.root.children) {
        if (!e.checkVisibility()) continue;
        const told = [...e.attributes]
          .filter((a) => /^(role|aria-|disabled|type|tabindex|href)/.test(a.name))
          .map((a) => (/label|value|describedby/.test(a.name) ? a.name : `${a.name}=${a.value}`));
        const kind = `${e.tagName}.${e.getAttribute('class') ?? ''} ${told.sort().join(' ')}`;
        const path = `${at.path.split(' > ').slice(-2).join(' > ')} > ${kind}`;
        kinds.add(path);
        within.push({ root: e, path });
        if (e.shadowRoot) within.push({ root: e.shadowRoot, path });
      }
    }
    return [...kinds];
  });

/** The headings of the first level that are to be seen or heard. */
export const firstHeadings = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const within: ParentNode[] = [document];
    for (let root = within.pop(); root; root = within.pop()) {
      for (const h of root.querySelectorAll('h1'))
        if (h.checkVisibility({ visibilityProperty: true }))
          found.push(h.textContent?.trim() ?? '');
      for (const { shadowRoot } of root.querySelectorAll('*'))
        if (shadowRoot) within.push(shadowRoot);
    }
    return found;
  });
