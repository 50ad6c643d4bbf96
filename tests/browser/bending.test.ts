import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import quayVan from '../../scenes/quay-van.json';
import { BAR, balance, createRig, freshState, standingState } from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import { long } from '../samples.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider, soonNear } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const brake = mustRead(quayVan);
const rigs = { bending: createRig(brake, { flexible: true }), rigid: createRig(brake) };

/** A figure of the block: of the shoes that bend (0) or of rigid ones (1). */
const figure = (page: Page, key: string, of: 0 | 1) => async (): Promise<number> => {
  const text = await page.locator(`[data-pair="${key}"] td`).nth(of).innerText();
  return Number(text.replace(/[\u202f\u00a0]/g, '').replace('−', '-'));
};
const there = (page: Page) => page.locator('[data-pair="clicks"]').waitFor();

it('a key turns rigid shoes into ones that bend: both torques stand side by side, as the mechanics have them', async () => {
  const { page, errors, shot, close } = await browser.open();
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('b');
  await there(page);
  await page.keyboard.down(' ');
  const press = { pressure: 40 * BAR, turning: 1 } as const;
  const torque = (rig: keyof typeof rigs): number =>
    Math.abs(balance(rigs[rig], freshState(brake), press).torqueOnDrum) / 1000;
  await soonNear(figure(page, 'torque', 0), torque('bending'), { rel: 2e-3 }, 'that bend');
  await soonNear(figure(page, 'torque', 1), torque('rigid'), { rel: 2e-3 }, 'rigid');
  // The same brake everywhere: the reading beside the stage, and the drawing with its scale.
  await soonNear(
    async () =>
      Number(
        await page
          .locator('[data-key="torque"] .v')
          .first()
          .innerText()
          .then((t) => t.split('\n')[0]?.replace('N·m', '')),
      ),
    torque('bending'),
    { rel: 2e-3 },
    'reading',
  );
  await expect.poll(() => page.getByText('Shoes bend: bow ×150').count()).toBe(1);
  await shot('bending-apply');
  await page.keyboard.up(' ');
  await page.keyboard.press('b');
  await expect.poll(() => page.locator('.bend').count()).toBe(0);
  await expect.poll(() => page.getByText('Shoes bend: bow').count()).toBe(0);
  expect(errors).toEqual([]);
  await close();
});

it('a worn brake is bedded in beside the page, and stays so through a reload, by link and back', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 1366, height: 768 },
    path: '?state=Worn-in&station=park',
    reducedMotion: 'reduce',
  });
  await page.locator('[data-verdict]').waitFor();
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByRole('button', { name: 'That bend' }).click();
  await page.getByRole('button', { name: 'Done' }).first().click();
  await there(page);
  // Parked by 300 N, each on linings worn in under its own shoes.
  const parked = (rig: keyof typeof rigs): number =>
    Math.abs(
      balance(rigs[rig], standingState(rigs[rig], 'Worn-in'), {
        pressure: 0,
        turning: 1,
        cable: 300,
      }).torqueOnDrum,
    ) / 1000;
  await soonNear(figure(page, 'torque', 0), parked('bending'), { rel: 0.01 }, 'that bend');
  await soonNear(figure(page, 'torque', 1), parked('rigid'), { rel: 0.01 }, 'rigid');
  const told = await figure(page, 'torque', 0)();
  // The address follows a little later; what it says is the whole moment.
  await expect.poll(() => page.url()).toContain('#');
  await page.reload();
  await there(page);
  await soonNear(figure(page, 'torque', 0), told, { abs: 0.05 }, 'after a reload');
  await page.keyboard.press('Control+z');
  await expect.poll(() => page.locator('.bend').count()).toBe(0);
  await page.keyboard.press('Control+y');
  await there(page);
  expect(errors).toEqual([]);
  await close();
});

it('every station that computes goes on with them, on a phone too', async () => {
  const { page, errors, close } = await browser.open({
    viewport: { width: 390, height: 844 },
    reducedMotion: 'reduce',
  });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.getByRole('button', { name: 'Show' }).click();
  await page.getByRole('button', { name: 'That bend' }).click();
  await page.getByRole('button', { name: 'Done' }).first().click();
  await there(page);
  await noWider(page, 390);
  for (const station of ['wear', 'drum-off', 'park', 'faults', 'own', 'apply']) {
    await page.locator('select.where').selectOption(station);
    await there(page);
  }
  // A sheet of measurements tells nothing twice.
  await page.locator('select.where').selectOption('inspect');
  await expect.poll(() => page.locator('.bend').count()).toBe(0);
  // With its drum off nothing is near the linings of New shoes: only what they will do is told.
  await page.locator('select.where').selectOption('new-shoes');
  await expect.poll(() => page.locator('.bend').count()).toBe(1);
  await expect.poll(() => page.locator('[data-pair]').count()).toBe(2);
  // A life driven with them says which tooth rigid shoes have by as much wear.
  await page.locator('select.where').selectOption('wear');
  await page.getByRole('button', { name: /^Wear on/ }).click();
  await expect.poll(() => page.locator('[data-key="distance"]').innerText()).toMatch(/^1.000/);
  const tooth = figure(page, 'reached', 0);
  await expect
    .poll(async () => Math.abs((await tooth()) - (await figure(page, 'reached', 1)())))
    .toBeLessThanOrEqual(1);
  expect(errors).toEqual([]);
  await close();
});

it('all readings are told twice, bending and rigid', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('b');
  await there(page);
  await page.keyboard.press('t');
  const now = page.getByRole('table', { name: 'Now' });
  await expect
    .poll(() => now.getByRole('columnheader').allInnerTexts())
    .toEqual(['Reading', 'Shoes bend', 'Rigid', 'What it means', 'From']);
  const rows = await now.locator('tbody tr').count();
  expect(rows).toBeGreaterThan(30);
  expect(await now.locator('tbody td.r').count()).toBe(rows);
  expect(errors).toEqual([]);
  await close();
});

it('Faults reads a bending van once its linings are bedded in, the rigid reading under each', async () => {
  for (const viewport of [
    { width: 1366, height: 768 },
    { width: 390, height: 844 },
  ]) {
    const { page, errors, shot, close } = await browser.open({ viewport, reducedMotion: 'reduce' });
    await page.locator('takeup-stage canvas').first().waitFor();
    await page.keyboard.press('b');
    await there(page);
    if (viewport.width > 400) await page.keyboard.press('7');
    else await page.locator('select.where').selectOption('faults');
    await page.getByLabel('Fault', { exact: true }).selectOption('strong springs');
    const table = page.locator('takeup-fault-readings');
    await table.locator('small.rigid').first().waitFor();
    await table.getByText('Taking the readings…').waitFor({ state: 'detached' });
    // Every reading that the fault changes has its rigid one.
    const rows = await table.locator('tbody tr').count();
    expect(rows).toBeGreaterThan(0);
    expect(await table.locator('tbody small.rigid').count()).toBe(rows);
    await noWider(page, viewport.width);
    await shot(`bending-faults-${viewport.width}`);
    await page.getByRole('button', { name: 'Find the fault' }).click();
    await page.getByRole('button', { name: 'Take it: Story and feel' }).click();
    await page.locator('takeup-find-board small.rigid').first().waitFor();
    await shot(`bending-find-${viewport.width}`);
    expect(errors).toEqual([]);
    await close();
  }
});

it('What I see, New parts and New shoes tell the rigid answer beside the bending one', async () => {
  for (const viewport of [
    { width: 1366, height: 768 },
    { width: 390, height: 844 },
  ]) {
    const narrow = viewport.width < 400;
    const { page, errors, shot, close } = await browser.open({ viewport, reducedMotion: 'reduce' });
    await page.locator('takeup-stage canvas').first().waitFor();
    await page.keyboard.press('b');
    await there(page);
    // At rest too it stands with the drawing that its shoes bend, and in the row of layers where there is one.
    await expect.poll(() => page.getByText('Shoes bend: bow').count()).toBe(1);
    if (!narrow) await expect.poll(() => page.getByText(/· shoes bend$/).count()).toBe(1);
    await shot(`bending-rest-${viewport.width}`);
    const go = async (station: string, key: string) => {
      if (narrow) await page.locator('select.where').selectOption(station);
      else await page.keyboard.press(key);
    };
    await go('new-shoes', '6');
    for (const pair of ['fit gap', 'first torque'])
      await page.locator(`[data-pair="${pair}"]`).waitFor();
    expect(await figure(page, 'first torque', 0)()).not.toBe(
      await figure(page, 'first torque', 1)(),
    );
    await page.locator('.ns-rigid').first().waitFor();
    await noWider(page, viewport.width);
    await shot(`bending-new-shoes-${viewport.width}`);
    await go('see', 'i');
    await page.getByRole('button', { name: 'one rear' }).first().click();
    // Faults and checks one by one: as long as that takes they are told of rigid shoes.
    const likely = page.locator('takeup-likely');
    await likely.getByText('Of rigid shoes until').waitFor();
    // Few: its end is waited for where there is least room. Many: in both windows.
    if (narrow || long) {
      while ((await likely.getByText('Of rigid shoes until').count()) > 0)
        await page.waitForTimeout(200);
      await expect.poll(() => likely.locator('li small.rigid').count()).toBeGreaterThan(0);
      expect(await likely.locator('li small.rigid').count()).toBe(
        await likely.locator('li').count(),
      );
    }
    await noWider(page, viewport.width);
    await shot(`bending-see-${viewport.width}`);
    await go('inspect', '5');
    await page.locator('[data-part="left-lining"]').first().fill('4.5');
    await page.locator('[data-part-verdicts] [data-rigid]').first().waitFor();
    await page.locator('[data-parts]').scrollIntoViewIfNeeded();
    await noWider(page, viewport.width);
    await shot(`bending-new-parts-${viewport.width}`);
    expect(errors).toEqual([]);
    await close();
  }
});

it('shoes that bend are found by Ask', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-stage canvas').first().waitFor();
  await page.keyboard.press('/');
  await page.locator('#ask-field').fill('bending shoes');
  await page.getByRole('button', { name: /Shoes that bend/ }).waitFor();
  await page.keyboard.press('Enter');
  await there(page);
  expect(errors).toEqual([]);
  await close();
});
