import { expect, it } from 'vitest';
import { doItYourself, instructor, student } from './heard-walks.ts';
import { openBrowser } from './open.ts';
import { listen, Reader } from './reader.ts';

/**
 * What three people hear who do their whole job by keys alone, held to the texts in `heard/`, which were read as
 * whoever cannot see the page would. Where a change is meant: `HEARD=write`, and read them again.
 */

it.each([
  ['instructor', instructor],
  ['student', student],
  ['do-it-yourselfer', doItYourself],
] as const)('the %s hears by keys alone what there is to hear', async (name, walk) => {
  const browser = await openBrowser();
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    reducedMotion: 'reduce',
    alone: true,
    prepare: listen,
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  const reader = await Reader.of(page, name);
  await walk(reader);
  reader.end();
  expect(errors).toEqual([]);
  await close();
  await browser.close();
});
