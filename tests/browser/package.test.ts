import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { buildPackage } from '../../ui/package/build.ts';
import { CLIMB_TAKES } from '../brakes.ts';
import { near } from '../near.ts';
import { seriousFaults } from './axe.ts';
import { notThePage } from './firefox.ts';
import { type Host, hostFolder } from './host.ts';
import { startBrowser } from './open.ts';
import { slowDown } from './slow.ts';

/** The package's page of worked cells: the built library in a browser and in a worker of it, with nothing from outside. */

let browser: Browser;
let host: Host;
const folder = mkdtempSync(join(tmpdir(), 'takeup-notebook-'));

beforeAll(async () => {
  await buildPackage(folder);
  // This host has none of its own; the page brings its policy along.
  writeFileSync(join(folder, '_headers'), '');
  browser = await startBrowser();
  host = await hostFolder(() => folder, '/any/');
});
afterAll(async () => {
  await browser.close();
  await host.stop();
  rmSync(folder, { recursive: true });
});

it('runs its cells by the built library, again when a number is changed, and asks nobody else', async () => {
  const page = await browser.newPage({ viewport: { width: 1000, height: 1600 } });
  await slowDown(page);
  const errors: string[] = [];
  const hosts = new Set<string>();
  page.on('request', (r) => hosts.add(new URL(r.url()).host));
  page.on('pageerror', (e) => {
    if (!notThePage(e.message)) errors.push(String(e));
  });
  page.on('console', (m) => {
    if (m.type() === 'error') errors.push(m.text());
  });
  await page.goto(new URL('notebook/index.html', host.address).href);
  const ran = () => page.locator('section[data-ran="yes"]').count();
  await expect.poll(ran).toBe(4);
  const row = async (name: string): Promise<number> =>
    Number.parseFloat(await page.getByRole('row', { name }).getByRole('cell').innerText());
  // Calculated apart from this program: tests/reference/teaching-tables.md, tables 0 and 4.
  near(await row('Brake factor'), 2.29, { rel: 0.01 }, 'factor');
  near(await row('Brake torque'), 227 - CLIMB_TAKES, { rel: 0.02 }, 'torque');
  near(await row('Driven'), 3000, { abs: 100 }, 'first click');
  const curve = page.getByRole('img', { name: /^Torque, N·m against Lining friction/ });
  expect(await curve.getAttribute('aria-label')).toMatch(/at 0\.20 to \d+ at 0\.60$/);
  // The tool would hide the caret by a style of its own, which the page's policy refuses; in Firefox it has another.
  const path = 'tests/browser/shots/notebook.png';
  await page.screenshot({ path, fullPage: true, caret: 'initial' });

  // Half the pressure, by keys: 96 N·m in table 0, of which the lever's spring takes as much as at 40 bar.
  await page.getByLabel('Line pressure, bar').fill('20');
  await page.getByRole('button', { name: 'Run from cell 2' }).press('Enter');
  await expect.poll(() => row('Brake torque')).toBeLessThan(100);
  near(await row('Brake torque'), 96 - CLIMB_TAKES, { rel: 0.02 }, '20 bar');
  await expect.poll(ran).toBe(4);

  await page.getByLabel('Line pressure, bar').fill('500');
  await page.getByRole('button', { name: 'Run from cell 2' }).press('Enter');
  await expect
    .poll(() => page.locator('[data-cell="press"] output').innerText())
    .toBe('Line pressure, bar: from 1 to 120');
  expect(await seriousFaults(page)).toEqual([]);
  expect(errors).toEqual([]);
  expect([...hosts]).toEqual([new URL(host.address).host]);
  await page.close();
});
