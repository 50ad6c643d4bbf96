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

/** Least side of what is pressed, px: Web Content Accessibility Guidelines 2.2, success criterion 2.5.8 (AA). */
const TARGET = 24;

/**
 * What is pressed and is neither 24 px wide and high, nor stands in a sentence, nor has so much room that a circle
 * of 24 px round its middle meets no other: empty when there is none. What is scrolled away counts too.
 */
export const smallTargets = (page: Page): Promise<string[]> =>
  page.evaluate((least) => {
    const what =
      'button, a[href], select, summary, input:not([type="hidden"]), textarea, [tabindex="0"], [role="slider"]';
    const found: { e: Element; box: DOMRect }[] = [];
    const within: ParentNode[] = [document];
    for (let root = within.pop(); root; root = within.pop()) {
      for (const e of root.querySelectorAll('*')) {
        if (e.shadowRoot) within.push(e.shadowRoot);
        if (!e.matches(what) || !e.checkVisibility({ visibilityProperty: true })) continue;
        // A label is pressed for its field, wherever the field itself stands.
        const box = (e.closest('label') ?? e).getBoundingClientRect();
        if (box.width > 0) found.push({ e, box });
      }
    }
    const small = ({ box }: { box: DOMRect }) =>
      box.width < least - 0.01 || box.height < least - 0.01;
    const middle = (box: DOMRect) => [box.x + box.width / 2, box.y + box.height / 2] as const;
    /** How far a point is from a box. */
    const far = ([x, y]: readonly [number, number], b: DOMRect) =>
      Math.hypot(Math.max(b.left - x, 0, x - b.right), Math.max(b.top - y, 0, y - b.bottom));
    return found
      .filter((one) => {
        if (!small(one)) return false;
        if (getComputedStyle(one.e).display === 'inline') return false;
        const at = middle(one.box);
        return found.some((other) => {
          if (other.e === one.e || other.e.contains(one.e) || one.e.contains(other.e)) return false;
          const [x, y] = middle(other.box);
          return small(other)
            ? Math.hypot(x - at[0], y - at[1]) < least
            : far(at, other.box) < least / 2;
        });
      })
      .map(({ e, box }) => {
        const name = e.getAttribute('aria-label') ?? e.textContent?.trim() ?? '';
        return `${box.width.toFixed(0)} × ${box.height.toFixed(0)}: ${name.slice(0, 30)} ${e.outerHTML.slice(0, 60)}`;
      });
  }, TARGET);
