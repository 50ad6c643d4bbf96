import type { Page } from 'playwright-core';

/** Pictures of the stage: each layer and view, at the three sizes, always of the same moment. */

export const sizes = {
  desk: { width: 1920, height: 1080, deviceScaleFactor: 0.5 },
  laptop: { width: 1366, height: 768, deviceScaleFactor: 0.6 },
  phone: { width: 390, height: 844, deviceScaleFactor: 1 },
} as const;
export type Size = keyof typeof sizes;

const plates = [
  'pressed',
  'gap-fan',
  'names',
  'ghost',
  'heat',
  'loupe',
  'edge-on',
  'board',
  'right-hand',
  'wall',
] as const;
export type Plate = (typeof plates)[number];

/** The wall is for a projector: a phone has none. */
export const platesOf = (size: Size): readonly Plate[] =>
  plates.filter((p) => p !== 'wall' || size !== 'phone');

/** Lets the page's own clock run on, so that a moment is reached after the same frames each time. */
const run = (page: Page, ms: number): Promise<void> => page.clock.runFor(ms);

async function choose(page: Page, size: Size, layer: string): Promise<void> {
  if (size !== 'phone') return page.getByRole('button', { name: layer }).click();
  await page.getByRole('button', { name: 'Show', exact: true }).click();
  await page.getByRole('button', { name: layer }).click();
  await page.getByRole('button', { name: 'Done' }).click();
}

/** A press of 40 bar, settled, the pedal held by the keys. */
async function press(page: Page): Promise<void> {
  const pedal = page.locator('takeup-pedal [role="slider"]');
  await pedal.focus();
  await page.keyboard.press('Enter');
  await run(page, 1200);
}

async function onBench(page: Page, size: Size, button: string): Promise<void> {
  await page
    .getByRole('button', { name: size === 'phone' ? 'Show' : 'Bench', exact: true })
    .click();
  await page.getByRole('button', { name: button, exact: true }).click();
  await page.getByRole('button', { name: 'Done' }).click();
}

/** Brings a freshly opened page to the moment of a plate. */
export async function show(page: Page, size: Size, plate: Plate): Promise<void> {
  if (plate === 'gap-fan') {
    await choose(page, size, 'Pressure comb');
  } else if (plate === 'names') {
    await choose(page, size, 'Forces');
    await choose(page, size, 'Names');
  } else if (plate === 'ghost') {
    await press(page);
    await choose(page, size, 'Rest ghost');
  } else if (plate === 'heat') {
    await choose(page, size, 'Heat');
  } else if (plate === 'loupe') {
    await choose(page, size, 'Loupe');
  } else if (plate === 'edge-on') {
    await choose(page, size, 'Edge-on');
    await run(page, 300);
    await page.getByRole('button', { name: 'Hold-down lost' }).click();
  } else if (plate === 'board') {
    await onBench(page, size, 'Board');
    await press(page);
  } else if (plate === 'right-hand') {
    await onBench(page, size, 'Right-hand');
    await press(page);
  } else if (plate === 'wall') {
    await press(page);
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await page.keyboard.press('w');
  } else await press(page);
  // No focus ring, no pointer: the stage alone.
  await page.mouse.move(0, 0);
  await run(page, 600);
}
