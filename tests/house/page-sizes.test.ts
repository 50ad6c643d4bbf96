import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { NARROW } from '../../ui/pieces/page-sizes.ts';

it('the page scrolls as a whole where its layout is the narrow one: page.css says the same', () => {
  const css = readFileSync(new URL('../../ui/page.css', import.meta.url), 'utf8');
  const conditions = [...css.matchAll(/@media ([^{]*px[^{]*)\{/g)].map(([, said]) => said?.trim());
  expect(conditions).toEqual([NARROW.cssText]);
});
