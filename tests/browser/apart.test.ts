import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soon } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

it('by keyboard: taken apart, put together in order, a spring away and pressed, both side by side', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('a');
  await page.getByRole('heading', { name: 'Adjuster apart', exact: true }).waitFor();
  const on = page.locator('.ap-l li.on');
  const all = await page.locator('.ap-l li').count();
  await expect.poll(() => on.count()).toBe(all);
  await page.getByRole('button', { name: 'Take it apart' }).press('Enter');
  await expect.poll(() => on.count()).toBe(0);
  await shot('apart-loose');
  // The third has nothing to go on yet; the first goes on.
  await page.locator('.ap-l button').nth(2).press('Enter');
  await expect.poll(() => on.count()).toBe(0);
  await page.locator('.ap-l button').nth(0).press('Enter');
  await expect.poll(() => on.count()).toBe(1);
  await page.getByRole('button', { name: 'Next step' }).press('Enter');
  await expect.poll(() => on.count()).toBe(2);
  await page.getByRole('button', { name: 'Lever spring', exact: true }).press('Enter');
  await expect.poll(() => page.locator('.ap-w p').innerText()).toMatch(/takes up nothing/);
  // By hand: 0.30 mm new and 0.60 mm worn off.
  await expect
    .poll(() => page.locator('.ap-t tr[data-row="Clearance at rest, mm"] td').nth(1).innerText())
    .toBe('0.90');
  await shot('apart-spring-away');
  await page.reload();
  await expect.poll(() => on.count()).toBe(2);
  await page.locator('body').press('Control+z');
  await expect.poll(() => page.locator('.ap-w p').count()).toBe(0);
  await page.locator('body').press('Control+y');
  await page.getByRole('button', { name: 'Both side by side' }).press('Enter');
  await expect.poll(() => page.locator('.cmp-n h2').innerText()).toBe('One thing differs');
  expect(errors).toEqual([]);
  await close();
});

it('a tap on the drawing puts the next part on; a phone has room for all of it', async () => {
  const { page, errors, shot, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    path: '?station=apart',
    reducedMotion: 'reduce',
  });
  await page.getByRole('button', { name: 'Take it apart' }).click();
  await noWider(page, 390);
  await shot('apart-phone');
  // The strut's number stands under it: its body lies above the middle of the number.
  const number = page.locator('takeup-stage text', { hasText: /^1$/ }).first();
  await number.waitFor();
  await number.scrollIntoViewIfNeeded();
  const box = await number.boundingBox();
  if (!box) throw new Error('no number');
  const on = page.locator('.ap-l li.on');
  for (let up = 6; up < 70 && (await on.count()) === 0; up += 4)
    for (const across of [0, -20, -40, 20, 40])
      if ((await on.count()) === 0)
        await page.mouse.click(box.x + box.width / 2 + across, box.y - up);
  await expect.poll(() => on.count()).toBe(1);
  expect(errors).toEqual([]);
  await close();
});

it('the spring of the strut away: a wedge that takes up too much, on the desk and on every wall', async () => {
  const { page, errors, shot, close } = await browser.open({
    path: '?station=apart',
    reducedMotion: 'reduce',
  });
  await page.getByRole('button', { name: 'Wedge, stepless' }).press('Enter');
  await page.getByRole('button', { name: 'Strut spring', exact: true }).press('Enter');
  await expect.poll(() => page.locator('.ap-w p').innerText()).toMatch(/takes up 0\.9\d mm more/);
  // By hand: the play of 0.9 mm behind the hook is taken up too, so nothing is left of the gap.
  await expect
    .poll(() => page.locator('.ap-t tr[data-row="Clearance at rest, mm"] td').nth(1).innerText())
    .toMatch(/^.?0\.0\d$/);
  await shot('apart-strut-spring-away');
  await page.keyboard.press('w');
  await page.locator('.wall .ap-t').waitFor();
  for (const [width, height] of [
    [1920, 1080],
    [1366, 768],
    [1024, 768],
  ] as const) {
    await page.setViewportSize({ width, height });
    await soon(async () => {
      const over = await page
        .locator('.wall .words')
        .evaluate((e) => [e.scrollHeight - e.clientHeight, e.scrollWidth - e.clientWidth]);
      expect(over, String(width)).toEqual([0, 0]);
    });
    await shot(`apart-strut-spring-wall-${width}`);
  }
  expect(errors).toEqual([]);
  await close();
});
