import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { questions } from '../../ui/questions/index.ts';
import { type OpenBrowser, type Opened, openBrowser } from './open.ts';
import { walks } from './questions-walks.ts';

/**
 * Walks questions as a user does: types some words of it into Questions, presses Show me, does the
 * steps and reads the answer. The figures expected are those of the teaching tables.
 */
let browser: OpenBrowser;
let opened: Opened;
beforeAll(async () => {
  browser = await openBrowser();
  opened = await browser.open({ reducedMotion: 'reduce' });
  await opened.page.locator('takeup-app canvas').first().waitFor();
});
afterAll(() => browser.close());

/** Everything that stands on the page, inside its parts too; blanks made one. */
const read = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const words: string[] = [];
    const visit = (node: Node): void => {
      if (node instanceof Text) words.push(node.data);
      if (node instanceof HTMLStyleElement) return;
      if (node instanceof Element && node.shadowRoot) visit(node.shadowRoot);
      for (const child of node.childNodes) visit(child);
    };
    visit(document.body);
    return words.join(' ').replace(/\s+/g, ' ');
  });

describe('questions', () => {
  it('lists all of them, each with its answer or why there is none', async () => {
    const { page } = opened;
    await page.keyboard.press('9');
    await page.locator('[data-question]').first().waitFor();
    await expect.poll(() => page.locator('[data-question]').count()).toBe(118);
    await expect
      .poll(() => page.getByText(/^Not covered: /).count())
      .toBe(questions.filter((q) => !q.station).length);
  });

  it('walks at least 25, in every station', () => {
    const walked = walks.map((w) => questions.find((q) => q.id === w.id)?.station);
    expect(walked.length).toBeGreaterThanOrEqual(25);
    expect(new Set(walked)).toEqual(
      new Set(['apply', 'wear', 'drum-off', 'park', 'inspect', 'new-shoes', 'faults']),
    );
  });

  for (const walk of walks) {
    it(`${walk.id}: ${walk.words}`, async () => {
      const { page, errors } = opened;
      await page.getByRole('button', { name: 'Questions' }).first().click();
      await page.getByRole('searchbox').fill(walk.words);
      const entry = page.locator(`[data-question="${walk.id}"]`);
      await entry.getByRole('button', { name: /^Show me/ }).click();
      const question = questions.find((q) => q.id === walk.id);
      await page.locator(`main[data-station="${question?.station}"]`).waitFor();
      for (const [role, name] of walk.presses ?? []) {
        await page.getByRole(role, { name, exact: true }).first().click();
      }
      for (const [label, text] of walk.fills ?? []) {
        await page.getByLabel(label, { exact: true }).fill(text);
      }
      for (const expected of walk.reads) {
        await expect.poll(() => read(page)).toMatch(expected);
      }
      expect(errors).toEqual([]);
    });
  }
});
