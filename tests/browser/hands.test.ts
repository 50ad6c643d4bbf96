import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { fingersOn } from './fingers.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, placeOf, soon, soonNear, thumbHigh } from './soon.ts';

// Readings against tests/unit/hands/statics.test.ts, where their sums stand; the van's parts give a little here.

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const figure = (text: string): number =>
  Number(
    (text.replace(/[\u202f\u00a0]/g, '').match(/−?\d+(?:\.\d+)?/)?.[0] ?? 'NaN').replace('−', '-'),
  );
const read = (page: Page, key: string) => async (): Promise<number> =>
  figure(await page.locator(`.hands-rd [data-key="${key}"] .v`).innerText());
const force = (page: Page) => async (): Promise<number> =>
  figure(await page.locator('takeup-hand-pad [data-force]').innerText());
const pad = (page: Page) => page.getByRole('slider', { name: 'Pull of the hand' });

async function handsIn(page: Page): Promise<void> {
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.getByRole('button', { name: 'Hands', exact: true }).click();
  await page.getByRole('heading', { name: 'Hands' }).waitFor();
}

/** Arrows pull ten newtons each. */
async function pull(page: Page, arrow: string, times: number): Promise<void> {
  await pad(page).focus();
  for (let i = 0; i < times; i++) await page.keyboard.press(arrow);
}

it('by keyboard alone: choose a part, pull, read, let go; undone and kept over a reload', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.getByRole('button', { name: 'Hands', exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Hands' }).waitFor();
  await soonNear(read(page, 'strut-home'), 171, { abs: 1 }, 'strut at rest');

  await pull(page, 'ArrowLeft', 9);
  await soonNear(read(page, 'toe'), 0.6, { abs: 0.01 }, 'toe');
  await soonNear(read(page, 'strut'), 162, { abs: 2 }, 'strut');
  // The hand stands 18 mm out, its part 0.6 mm nearer: 5 N/mm.
  await soonNear(force(page), 87, { abs: 2 }, 'force');
  await shot('hands-shoe');

  await page.reload();
  await page.getByRole('heading', { name: 'Hands' }).waitFor();
  await soonNear(force(page), 87, { abs: 2 }, 'force after a reload');

  await page.keyboard.press('Escape');
  await soonNear(force(page), 0, { abs: 0 }, 'let go');
  // The pair stays where it was carried.
  await soonNear(read(page, 'toe'), 0.6, { abs: 0.01 }, 'toe, let go');

  await page.locator('.hands-list [data-part="front shoe"]').focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect
    .poll(() => page.locator('.hands-list [aria-current="true"]').getAttribute('data-part'))
    .toBe('both toes');
  await pull(page, 'ArrowLeft', 14);
  await soonNear(read(page, 'parted'), 0, { abs: 0.02 }, 'held together by the springs');
  await pull(page, 'ArrowLeft', 6);
  await soonNear(read(page, 'parted'), 1, { abs: 0.02 }, 'parted to the drum');
  await page.keyboard.press('Escape');
  await soonNear(read(page, 'strut'), 171, { abs: 10 }, 'home on the strut');

  // A hand that has let go leaves nothing in the record to take back; the choice before it does.
  await page.keyboard.press('Control+z');
  await expect
    .poll(() => page.locator('.hands-list [aria-current="true"]').getAttribute('data-part'))
    .toBe('rear shoe');
  expect(errors).toEqual([]);
  await close();
});

it('the parking lever at its hook, the drum turned with its drag, a piston pushed back', async () => {
  const { page, errors, close } = await browser.open();
  await handsIn(page);
  await page.locator('.hands-list [data-part="parking lever"]').click();
  await pull(page, 'ArrowLeft', 12);
  await soonNear(read(page, 'hook'), 7, { abs: 0.3 }, 'hook');
  await soon(async () => {
    const [strut, hand] = [await read(page, 'strut')(), await force(page)()];
    // 109 over 16 mm.
    expect(strut / hand).toBeGreaterThan(6.6);
    expect(strut / hand).toBeLessThan(7.1);
  });
  await page.keyboard.press('Escape');
  await soonNear(read(page, 'strut'), 171, { abs: 10 }, 'back on its stop');

  await page.locator('.hands-list [data-part="front piston"]').click();
  await pull(page, 'ArrowRight', 12);
  await soon(async () => expect(await read(page, 'back')()).toBeGreaterThan(5));
  await soon(async () => expect(await read(page, 'fluid')()).toBeGreaterThan(1.4));
  await page.keyboard.press('Escape');

  await page.locator('.hands-list [data-part="drum"]').click();
  await pull(page, 'ArrowUp', 10);
  await soon(async () => expect(Math.abs(await read(page, 'turned')())).toBeGreaterThan(4));
  await page.keyboard.press('Escape');
  expect(errors).toEqual([]);
  await close();
});

it('by touch on the stage: a finger on the front shoe carries the pair, and lets it go', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  await handsIn(page);
  await noWider(page, 390);
  await thumbHigh(page.locator('aside.side'));
  const stage = await placeOf(page.locator('takeup-stage'));
  const fingers = await fingersOn(page);
  // The front web, left of the hub at half height.
  const [x, y] = [stage.x + 0.2 * stage.width, stage.y + 0.47 * stage.height];
  await fingers([x, y]);
  await expect
    .poll(() => page.locator('.hands-list [aria-current="true"]').getAttribute('data-part'))
    .toBe('front shoe');
  for (let i = 1; i <= 10; i++) await fingers([x - 4 * i, y]);
  await soon(async () => expect(await force(page)()).toBeGreaterThan(80));
  await soonNear(read(page, 'toe'), 0.6, { abs: 0.02 }, 'toe');
  await shot('hands-touch');
  await fingers();
  await soonNear(force(page), 0, { abs: 0 }, 'let go');
  expect(errors).toEqual([]);
  await close();
});

it('by two fingers on the stage: both shoes at once, off the strut; one lifted, the other holds on', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  await handsIn(page);
  // At half height a bare hand has half the arm of one at the toe: a bar in each.
  await page.getByRole('button', { name: 'Bar', exact: true }).click();
  // Its button stands below the drawing.
  await page.evaluate(() => scrollTo(0, 0));
  const stage = await placeOf(page.locator('takeup-stage'));
  const fingers = await fingersOn(page);
  const y = stage.y + 0.47 * stage.height;
  const [a, b] = [stage.x + 0.2 * stage.width, stage.x + 0.8 * stage.width];
  await fingers([a, y]);
  await fingers([a, y], [b, y]);
  await page.locator('.hands-rd [data-key="second"]').waitFor();
  // As far as the screen goes.
  for (let i = 1; i <= 12; i++) await fingers([a - 6 * i, y], [b + 6 * i, y]);
  await soon(async () => expect(await force(page)()).toBeGreaterThan(150));
  await soon(async () => expect(await read(page, 'second')()).toBeGreaterThan(150));
  await soon(async () => expect(await read(page, 'parted')()).toBeGreaterThan(0.1));
  await shot('hands-two-fingers');
  await fingers(undefined, [b + 72, y]);
  await soon(async () =>
    expect(await page.locator('.hands-rd [data-key="second"]').count()).toBe(0),
  );
  await fingers();
  await soonNear(force(page), 0, { abs: 0 }, 'let go');
  expect(errors).toEqual([]);
  await close();
});

it('by mouse on the stage, movements ten times as large, and said so', async () => {
  const { page, errors, shot, close } = await browser.open();
  await handsIn(page);
  await page.getByRole('button', { name: '×10' }).click();
  await page.getByText('Shoes’ movements and gaps ×10').waitFor();
  const stage = await placeOf(page.locator('takeup-stage'));
  const [x, y] = [stage.x + 0.29 * stage.width, stage.y + 0.49 * stage.height];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await soonNear(force(page), 0, { abs: 1 }, 'taken hold of: nothing pulls yet');
  await page.mouse.move(x - 80, y, { steps: 6 });
  await soon(async () => expect(await force(page)()).toBeGreaterThan(60));
  await soonNear(read(page, 'toe'), 0.6, { abs: 0.02 }, 'its true way');
  await shot('hands-large');
  await page.mouse.up();
  await soonNear(force(page), 0, { abs: 0 }, 'let go');
  expect(errors).toEqual([]);
  await close();
});

it('drum off: springs and hold-downs come off with what they take, with the caution, and by undo go on again', async () => {
  const { page, errors, shot, close } = await browser.open();
  await handsIn(page);
  expect(await page.locator('[data-spring]').count()).toBe(0);
  await page.getByRole('button', { name: 'Off', exact: true }).click();
  await page.getByText('Springs store force').waitFor();
  // 155 N as fitted, drawn out by 4 mm of 8 N/mm, less what the rest pose gave back: 178.
  await soonNear(
    async () => figure(await page.locator('[data-spring="0"] span').innerText()),
    178,
    { abs: 2 },
    'takes',
  );
  await page.getByRole('button', { name: /Unhook the upper/ }).click();
  // The lower one alone: 154 N, 12 mm over the pins, against seats 130 over them.
  await soonNear(read(page, 'strut'), 14.2, { abs: 1.5 }, 'the lower one alone');
  await page.getByRole('button', { name: /Take off the front/ }).click();
  await page.getByRole('button', { name: /Put on the front/ }).waitFor();
  await shot('hands-springs');
  await page.locator('.hands-list').click({ position: { x: 5, y: 5 } });
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await soonNear(read(page, 'strut'), 171, { abs: 4 }, 'both hooked on');
  // Spread by hand the shoes take the adjuster along, until no drum goes over them; wound back it does.
  await page.locator('.hands-list [data-part="both toes"]').click();
  // With a bar: the lever's spring alone would stop a bare hand before.
  await page.getByRole('button', { name: 'Bar', exact: true }).click();
  await pull(page, 'PageDown', 10);
  await page.getByText('No way for the drum').waitFor();
  await page.keyboard.press('Escape');
  await expect
    .poll(() => page.getByRole('button', { name: 'Back to Apply' }).isDisabled())
    .toBe(true);
  await soon(async () => expect(await read(page, 'strut-home')()).toBeLessThan(400));
  await page.getByRole('button', { name: /Wind back/ }).click();
  await expect.poll(() => page.getByText('No way for the drum').count()).toBe(0);
  await page.getByRole('button', { name: 'Back to Apply' }).click();
  await page.getByRole('heading', { name: 'Apply' }).waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('Park: with the chocks away the vehicle rolls with its mass, and the hand brake stops it', async () => {
  const { page, errors, shot, close } = await browser.open({ path: '?station=park' });
  await page.locator('[data-verdict]').waitFor();
  const cable = page.getByRole('spinbutton', { name: 'Pull in each cable, N' });
  await cable.fill('0');
  await cable.press('Enter');
  await page.getByRole('button', { name: 'Chocks away' }).click();
  const speed = async (): Promise<number> =>
    Number(await page.locator('[data-rolling]').first().getAttribute('data-rolling'));
  await soon(async () => expect(await speed()).toBeGreaterThan(500));
  await shot('hands-rolling');
  await cable.fill('600');
  await cable.press('Enter');
  await soon(async () => expect(await speed()).toBeLessThan(0.001));
  await page.getByRole('button', { name: 'Chock it' }).click();
  await page.getByRole('button', { name: 'Chocks away' }).waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('the toothed lever: lifted off its teeth by keys, turned back, its force told; by a pointer too', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?state=Worn-in',
  });
  await handsIn(page);
  const row = page.locator('.hands-list [data-part="adjuster lever"]');
  await row.focus();
  await page.keyboard.press('Enter');
  await soonNear(read(page, 'tooth'), 5, { abs: 0 }, 'tooth');
  // 15 N as fitted and 1.5 N/mm over a tooth of 1 mm: it is off its teeth from 16.5 N on.
  await pull(page, 'ArrowUp', 1);
  await soonNear(read(page, 'lift'), 0, { abs: 0 }, 'held down by its spring');
  await pull(page, 'ArrowLeft', 1);
  await soonNear(read(page, 'tooth'), 5, { abs: 0 }, 'in its teeth');
  await pull(page, 'ArrowUp', 2);
  await soon(async () => expect(await read(page, 'lift')()).toBeGreaterThan(1));
  await pull(page, 'ArrowLeft', 2);
  await soonNear(read(page, 'tooth'), 3, { abs: 0 }, 'turned back');
  await soon(async () => expect(await force(page)()).toBeGreaterThan(50));
  await shot('hands-lever');
  await page.keyboard.press('Escape');
  await soonNear(read(page, 'tooth'), 3, { abs: 0 }, 'let go');
  await soonNear(force(page), 0, { abs: 0 }, 'let go');
  // On the stage: taken hold of at its plate, drawn up its slot, and then to the left.
  const stage = await placeOf(page.locator('takeup-stage'));
  const [x, y] = [stage.x + 0.326 * stage.width, stage.y + 0.425 * stage.height];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y - 18, { steps: 4 });
  await soon(async () => expect(await read(page, 'lift')()).toBeGreaterThan(1));
  await page.mouse.move(x - 8, y - 18, { steps: 4 });
  await soon(async () => expect(await read(page, 'tooth')()).toBeLessThan(3));
  await page.mouse.up();
  await soonNear(read(page, 'lift'), 0, { abs: 0 }, 'dropped in');
  await page.keyboard.press('Control+z');
  // With the drum off it stands in the list with the springs, all in view.
  await page.getByRole('button', { name: 'Off', exact: true }).click();
  const last = page.getByRole('button', { name: 'Take off the rear hold-down' });
  await last.waitFor();
  const place = await placeOf(last);
  expect(place.y + place.height).toBeLessThan(768);
  await shot('hands-lever-off');
  expect(errors).toEqual([]);
  await close();
});

it('the drum pulled against its lip, and rocked: what the hand feels, by keyboard', async () => {
  for (const viewport of [
    { width: 1366, height: 768 },
    { width: 390, height: 844 },
  ]) {
    const { page, errors, shot, close } = await browser.open({
      viewport,
      path: '?state=Second%20set&station=drum-off',
    });
    await page.locator('takeup-stage canvas').first().waitFor();
    await page.getByRole('button', { name: 'Hands', exact: true }).click();
    await page.locator('.hands-list [data-part="drum pulled"]').click();
    // 5 N/mm, lip 0.8 mm away: 30 mm of the hand: 5·(29.2 − g) = 2·(40 + 10 g), 2.64 mm and 133 N (tests/unit/hands/drum-lip.test.ts).
    await pull(page, 'ArrowRight', 15);
    await soonNear(read(page, 'slid'), 3.44, { abs: 0.06 }, 'out');
    await soonNear(force(page), 132.8, { abs: 1 }, 'force');
    await soonNear(read(page, 'lip'), 132.8, { abs: 1 }, 'lip');
    await noWider(page, viewport.width);
    await shot(`hands-lip-${viewport.width}`);
    await page.keyboard.press('Escape');
    await page.locator('.hands-list [data-part="drum rocked"]').click();
    await pull(page, 'ArrowRight', 10);
    // 5·(19.2 − g) = 40 + 10 g: 3.73 mm.
    await soonNear(read(page, 'lifted'), 3.7, { abs: 0.06 }, 'lifted');
    await soonNear(force(page), 77.3, { abs: 1 }, 'force, rocked');
    await page.keyboard.press('Escape');
    expect(errors).toEqual([]);
    await close();
  }
});
