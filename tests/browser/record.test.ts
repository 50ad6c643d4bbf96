import pixelmatch from 'pixelmatch';
import type { Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenBrowser, type Opened, openBrowser } from './open.ts';
import { soon, steady } from './soon.ts';

/** What stands on the bench is one record: kept, undone, linked to, put aside and brought back. */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const laptop = { viewport: { width: 1366, height: 768 }, reducedMotion: 'reduce' } as const;

const ready = (page: Page): Promise<void> =>
  page.locator('takeup-app canvas').first().waitFor() as Promise<void>;
async function open(options = {}): Promise<Opened> {
  const opened = await browser.open({ ...laptop, ...options });
  await ready(opened.page);
  return opened;
}
const station = (page: Page) => page.locator('main').getAttribute('data-station');
const at = (page: Page, id: string) => expect.poll(() => station(page)).toBe(id);
const reading = (page: Page, key: string) => page.locator(`[data-key="${key}"] .v`).first();
const text = (page: Page, key: string) => reading(page, key).innerText();
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ }).first();
const bar = (page: Page) => page.getByLabel('Guest on the bench');
/** All readings beside the stage, once they stand. */
const readings = (page: Page) =>
  steady(page, () => page.locator('.side [data-key]').allInnerTexts());

/** The address, once it is written for what is there. */
async function address(page: Page): Promise<string> {
  return steady(page, async () => {
    await page.waitForTimeout(900);
    return page.evaluate(() => location.href);
  });
}

it('undoes and does again, each step named; a held pedal is one step', async () => {
  const { page, errors, close } = await open();
  expect(await undo(page).isDisabled()).toBe(true);
  await page.getByRole('button', { name: 'Backward' }).click();
  await page.getByRole('button', { name: 'Loupe', exact: true }).click();
  await expect.poll(() => undo(page).getAttribute('aria-label')).toBe('Undo: loupe on');
  await page.keyboard.press('Control+z');
  await page.getByText('Undone: loupe on').waitFor();
  await expect.poll(() => undo(page).getAttribute('aria-label')).toBe('Undo: drum backward');
  await page.keyboard.press('Control+z');
  await expect
    .poll(() => page.getByRole('button', { name: 'Forward' }).getAttribute('aria-pressed'))
    .toBe('true');
  await page.keyboard.press('Control+Shift+z');
  await page.getByText('Done again: drum backward').waitFor();
  await page.getByRole('button', { name: 'Redo' }).click();
  await page.getByText('Done again: loupe on').waitFor();
  // Dragging along the pedal and letting go, nothing clicked: nothing is left to be undone of it.
  const pedal = page.locator('takeup-pedal [role="slider"]');
  const box = await pedal.boundingBox();
  if (!box) throw new Error('no pedal');
  await page.mouse.move(box.x + 40, box.y + 20);
  await page.mouse.down();
  await page.mouse.move(box.x + 120, box.y + 20, { steps: 8 });
  await expect.poll(() => pedal.getAttribute('aria-valuenow')).not.toBe('0');
  await page.mouse.up();
  await expect.poll(() => pedal.getAttribute('aria-valuenow')).toBe('0');
  await expect.poll(() => undo(page).getAttribute('aria-label')).toBe('Undo: loupe on');
  expect(errors).toEqual([]);
  await close();
});

it('comes back after a reload as it was: station, brake, state, layers, a pedal that is down', async () => {
  const { page, errors, close } = await open();
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByLabel('Brake on the bench').selectOption('Farm trailer');
  await page.getByRole('button', { name: 'Board', exact: true }).click();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: /^Rest ghost/ }).click();
  await page.locator('takeup-pedal [role="slider"]').focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => text(page, 'linePressure')).toMatch(/40\.0/);
  const before = await readings(page);
  await page.waitForTimeout(600);
  await page.reload();
  await ready(page);
  await at(page, 'apply');
  await soon(async () => expect(await readings(page)).toEqual(before));
  await expect
    .poll(() => page.getByRole('button', { name: /^Rest ghost/ }).getAttribute('aria-pressed'))
    .toBe('true');
  await page.getByRole('button', { name: 'Bench' }).click();
  const board = page.getByRole('button', { name: 'Board', exact: true });
  await expect.poll(() => board.getAttribute('aria-pressed')).toBe('true');
  await page.getByRole('button', { name: 'Done' }).click();
  // In another station too, and in a window of its own.
  await page.keyboard.press('4');
  await at(page, 'park');
  await page.getByRole('button', { name: 'Nose up' }).click();
  await page.getByLabel('One notch on').click();
  const parked = await readings(page);
  await page.waitForTimeout(600);
  await page.reload();
  await ready(page);
  await at(page, 'park');
  await soon(async () => expect(await readings(page)).toEqual(parked));
  const again = await page.context().newPage();
  await again.goto(browser.address);
  await ready(again);
  await at(again, 'park');
  await soon(async () => expect(await readings(again)).toEqual(parked));
  expect(errors).toEqual([]);
  await close();
});

it('Back closes the dialog that lies over the page first, and no entry is lost', async () => {
  const { page, errors, close } = await open();
  const dialog = page.locator('dialog[open]');
  const opened = () => expect.poll(() => dialog.count()).toBe(1);
  const closed = () => expect.poll(() => dialog.count()).toBe(0);
  // The browser is sent forth again to the entry that it left; it may take its time.
  const entry = () => page.evaluate(() => (history.state as { at: number }).at);
  const backAt = (n: number) => expect.poll(entry).toBe(n);
  // Straight after the page was opened there is nothing behind it: Back would leave it.
  await page.keyboard.press('?');
  await opened();
  await page.evaluate(() => history.back());
  await closed();
  await at(page, 'apply');
  await page.keyboard.press('3');
  await at(page, 'drum-off');
  await page.keyboard.press('4');
  await at(page, 'park');
  await page.goBack();
  await at(page, 'drum-off');
  // Each kind of dialog: keys, table of readings, Take away, Bench.
  for (const show of [
    () => page.keyboard.press('?'),
    () => page.keyboard.press('t'),
    () => page.keyboard.press('e'),
    () => page.getByRole('button', { name: 'Bench', exact: true }).click(),
  ]) {
    const before = await entry();
    await show();
    await opened();
    await page.evaluate(() => history.back());
    await closed();
    await backAt(before);
    await at(page, 'drum-off');
  }
  // Forward leads on as before, and closes what lies over the page too.
  await page.keyboard.press('?');
  await opened();
  const here = await entry();
  await page.evaluate(() => history.forward());
  await closed();
  await backAt(here);
  await at(page, 'drum-off');
  await page.goForward();
  await at(page, 'park');
  await page.goBack();
  await at(page, 'drum-off');
  await page.goBack();
  await at(page, 'apply');
  await page.goForward();
  await at(page, 'drum-off');
  expect(errors).toEqual([]);
  await close();
});

it('a dialog that was closed by its button leaves nothing in the way back', async () => {
  const { page, errors, close } = await open({ alone: true });
  const before = await page.evaluate(() => history.length);
  await page.keyboard.press('?');
  await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
  await expect.poll(() => page.locator('dialog[open]').count()).toBe(0);
  await expect.poll(() => page.evaluate(() => history.state.dialog ?? null)).toBe(null);
  // A way out of a dialog takes the entry that was made for it.
  await page.getByRole('button', { name: 'Bench', exact: true }).click();
  await expect.poll(() => page.locator('dialog[open]').count()).toBe(1);
  await page.keyboard.press('Escape');
  await expect.poll(() => page.evaluate(() => history.state.dialog ?? null)).toBe(null);
  await page.keyboard.press('3');
  await at(page, 'drum-off');
  expect(await page.evaluate(() => history.length)).toBe(before + 1);
  await page.goBack();
  await at(page, 'apply');
  expect(errors).toEqual([]);
  await close();
});

it('Back and Forward walk through stations and guests; the brake stays as it is', async () => {
  const { page, errors, close } = await open();
  await page.keyboard.press('3');
  await at(page, 'drum-off');
  await page.keyboard.press('4');
  await at(page, 'park');
  await page.goBack();
  await at(page, 'drum-off');
  await page.goBack();
  await at(page, 'apply');
  await page.goForward();
  await at(page, 'drum-off');
  // A guest is a place of its own.
  await page.keyboard.press('7');
  await at(page, 'faults');
  expect(await bar(page).count()).toBe(0);
  await page.getByLabel('Fault', { exact: true }).selectOption('stuck piston');
  await bar(page).waitFor();
  await page.goBack();
  await at(page, 'faults');
  await expect.poll(() => bar(page).count()).toBe(0);
  await page.goForward();
  await bar(page).waitFor();
  await expect.poll(() => bar(page).innerText()).toMatch(/Quay van: .*[Pp]iston/);
  // Forward was no step of its own: what is undone is the fault.
  await expect.poll(() => undo(page).getAttribute('aria-label')).toMatch(/^Undo: .*[Pp]iston/);
  await page.goBack();
  await page.goBack();
  await at(page, 'drum-off');
  expect(errors).toEqual([]);
  await close();
});

it('opening Faults changes nothing; a guest is judged as it is, and leaves with its stations', async () => {
  const { page, errors, shot, close } = await open();
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByLabel('Brake on the bench').selectOption('Ferry runabout');
  await page.getByRole('button', { name: 'Done' }).click();
  const mine = await readings(page);
  await page.keyboard.press('7');
  await at(page, 'faults');
  await page.keyboard.press('1');
  await at(page, 'apply');
  await soon(async () => expect(await readings(page)).toEqual(mine));
  await page.keyboard.press('7');
  await page.getByLabel('Fault', { exact: true }).selectOption('rusted on');
  await bar(page).waitFor();
  await expect
    .poll(() => bar(page).innerText())
    .toMatch(/Yours waits as you left it: Ferry runabout/);
  await shot('guest');
  await page.keyboard.press('3');
  await at(page, 'drum-off');
  await expect.poll(() => page.locator('[data-found]').innerText()).toMatch(/rusted/);
  // New shoes has nothing for it: there one's own stands again.
  await page.keyboard.press('6');
  await at(page, 'new-shoes');
  await expect.poll(() => bar(page).count()).toBe(0);
  await page.keyboard.press('1');
  await soon(async () => expect(await readings(page)).toEqual(mine));
  // Back to mine, by its button and by Escape.
  await page.keyboard.press('7');
  await page.getByLabel('Fault', { exact: true }).selectOption('hose');
  await page.keyboard.press('1');
  await expect.poll(() => text(page, 'linePressure')).toMatch(/8\.0/);
  await page.getByRole('button', { name: 'Back to mine' }).click();
  await page.keyboard.press('1');
  await soon(async () => expect(await readings(page)).toEqual(mine));
  await page.keyboard.press('Control+z');
  expect(errors).toEqual([]);
  await close();
});

/** What this window keeps of one's own brake: as a guest found it, or as it stands. */
const kept = (page: Page, guest: boolean): Promise<string> =>
  page.evaluate((there) => {
    const { moment } = JSON.parse(sessionStorage.getItem('takeup-moment-1') ?? '{}');
    const { bench, parts, turning } = there ? (moment.guest?.mine ?? {}) : moment;
    return JSON.stringify([bench, parts?.wear, parts?.park, turning, moment.guest === null]);
  }, guest);

/** Wears on by a thousand kilometres, and waits until they are driven. */
async function drive(page: Page): Promise<void> {
  const km = async (): Promise<number> => {
    const text = await page.locator('[data-key="distance"]').innerText();
    return Number(/([\d\s\u202f]+) ?km/.exec(text)?.[1]?.replace(/\D/g, ''));
  };
  const before = await km();
  await page.getByRole('button', { name: '1\u202f000 km', exact: true }).click();
  await page.getByRole('button', { name: 'Wear on', exact: true }).click();
  await expect.poll(km).toBe(before + 1000);
  await page.getByRole('button', { name: 'Wear on', exact: true }).waitFor();
}

it('a brake that was changed comes back from under a guest bit for bit, after a reload too', async () => {
  const { page, errors, close } = await open();
  await page.getByRole('button', { name: 'Bench' }).click();
  await page.getByLabel('Brake on the bench').selectOption('Ferry runabout');
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Backward' }).click();
  // Worn by driving, and stopped where it happens to be.
  await page.keyboard.press('2');
  await at(page, 'wear');
  await drive(page);
  await page.keyboard.press('4');
  await at(page, 'park');
  await page.getByLabel('One notch on').click();
  await page.keyboard.press('7');
  await at(page, 'faults');
  const mine = await steady(page, () => kept(page, false));
  expect(mine).toMatch(/"front":/);
  await page.getByLabel('Fault', { exact: true }).selectOption('stuck piston');
  await bar(page).waitFor();
  await page.keyboard.press('2');
  await at(page, 'wear');
  await drive(page);
  await expect.poll(() => bar(page).innerText()).toMatch(/Ferry runabout, 1.000 km/);
  await page.reload();
  await ready(page);
  await bar(page).waitFor();
  await page.getByRole('button', { name: 'Back to mine' }).click();
  await expect.poll(() => bar(page).count()).toBe(0);
  await expect.poll(() => kept(page, false)).toBe(mine);
  expect(errors).toEqual([]);
  await close();
});

it('the way back outlasts a reload: a link opened over one’s own work is undone after it', async () => {
  const { page, errors, close } = await open();
  await page.getByRole('button', { name: 'Bench', exact: true }).click();
  await page.getByLabel('Brake on the bench').selectOption('Farm trailer');
  await page.getByRole('button', { name: 'Done' }).click();
  await page.getByRole('button', { name: 'Backward' }).click();
  const mine = await readings(page);
  // Somebody's link, pasted over the address.
  const sender = await open();
  await sender.page.keyboard.press('7');
  await sender.page.getByLabel('Fault', { exact: true }).selectOption('hose');
  await bar(sender.page).waitFor();
  const link = await address(sender.page);
  await sender.close();
  await steady(page, () => page.evaluate(() => sessionStorage.getItem('takeup-moment-1')));
  await page.goto(link);
  await ready(page);
  await bar(page).waitFor();
  await expect.poll(() => undo(page).getAttribute('aria-label')).toBe('Undo: link opened');
  await page.reload();
  await ready(page);
  await bar(page).waitFor();
  await undo(page).click();
  await page.getByText('Undone: link opened').waitFor();
  await expect.poll(() => bar(page).count()).toBe(0);
  await soon(async () => expect(await readings(page)).toEqual(mine));
  await page.keyboard.press('Control+Shift+z');
  await bar(page).waitFor();
  // A copy that lost its rest is known.
  await page.goto(link.slice(0, link.indexOf('#')));
  await ready(page);
  await expect
    .poll(() => page.locator('takeup-app .troubles').innerText())
    .toMatch(/behind #: found nothing; allowed: the rest of the link: it was cut off/);
  expect(errors).toEqual([]);
  await close();
});

it('says when a guest leaves with its stations, and whose brake stands there', async () => {
  const { page, errors, close } = await open();
  await page.getByRole('button', { name: 'Bench', exact: true }).click();
  await page.getByLabel('Brake on the bench').selectOption('Ferry runabout');
  await page.getByRole('button', { name: 'Done' }).click();
  await expect.poll(() => page.locator('.onbench').innerText()).toBe('Ferry runabout');
  await page.keyboard.press('7');
  await page.getByLabel('Fault', { exact: true }).selectOption('stuck piston');
  await bar(page).waitFor();
  await expect.poll(() => page.locator('.onbench').innerText()).toMatch(/: One piston stuck/);
  await page.keyboard.press('6');
  await at(page, 'new-shoes');
  await page.getByText(/One piston stuck has left\. Yours stands on the bench again\./).waitFor();
  await expect.poll(() => page.locator('.onbench').innerText()).toBe('Ferry runabout');
  expect(errors).toEqual([]);
  await close();
});

it('a link is copied, and a bad file told of, where it can be read', async () => {
  const { page, errors, close } = await open({ permissions: ['clipboard-write'] });
  const sheet = page.getByRole('dialog', { name: 'Bench' });
  await page.getByRole('button', { name: 'Bench' }).click();
  await sheet.getByRole('button', { name: 'Copy its link' }).click();
  await page.getByText('Link copied.').waitFor();
  await expect.poll(() => sheet.isVisible()).toBe(false);
  await page.getByRole('button', { name: 'Bench' }).click();
  await sheet.getByLabel('Open a moment’s file').setInputFiles({
    name: 'letter.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"version": 1, "station": "kitchen"}'),
  });
  await expect
    .poll(() => page.locator('takeup-app .troubles').innerText())
    .toMatch(
      /letter\.json was not opened; nothing else has changed\. It is no moment of the bench/,
    );
  await expect.poll(() => sheet.isVisible()).toBe(false);
  expect(errors).toEqual([]);
  await close();
});

it('what is typed is kept at once, not only when the page is left', async () => {
  const { page, errors, close } = await open({ clock: true });
  await page.keyboard.press('5');
  const toe = page.getByLabel('Leading lining, toe, right wheel', { exact: true });
  await toe.waitFor();
  await page.clock.pauseAt(3.6e6);
  await toe.fill('thick');
  await page.clock.runFor(60);
  const text = await page.evaluate(() => sessionStorage.getItem('takeup-moment-1'));
  expect(text).toMatch(/thick/);
  expect(errors).toEqual([]);
  await close();
});

it('a reload is one also where the browser forgot the entry’s state', async () => {
  const { page, errors, close } = await open();
  await page.keyboard.press('5');
  const toe = page.getByLabel('Leading lining, toe, right wheel', { exact: true });
  await toe.fill('thick');
  await expect
    .poll(() => page.evaluate(() => sessionStorage.getItem('takeup-moment-1')))
    .toMatch(/thick/);
  // The address says Inspect, and nothing yet of what was typed.
  await page.evaluate(() => {
    History.prototype.replaceState.call(history, null, '', '?station=inspect');
  });
  await page.reload();
  await at(page, 'inspect');
  await expect.poll(() => toe.inputValue()).toBe('thick');
  expect(errors).toEqual([]);
  await close();
});

const FRAMES = 1500;
/** The stage as a picture, the page's own clock stopped after the same frames. */
async function picture(path: string): Promise<PNG> {
  const { page, errors, close } = await browser.open({
    ...laptop,
    deviceScaleFactor: 0.6,
    clock: true,
    path,
  });
  await ready(page);
  await page.clock.pauseAt(3.6e6);
  await page.clock.runFor(FRAMES);
  const image = await page.locator('section.stage').screenshot();
  expect(errors).toEqual([]);
  await close();
  return PNG.sync.read(image);
}

it('a link opened in an empty browser shows the same readings and the same picture', async () => {
  const { page, errors, close } = await open();
  await page.getByRole('button', { name: 'Loupe', exact: true }).click();
  await page.getByRole('button', { name: 'Stopped' }).click();
  await page.locator('takeup-pedal [role="slider"]').focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => text(page, 'linePressure')).toMatch(/40\.0/);
  const before = await readings(page);
  const link = await address(page);
  expect(link.length).toBeLessThan(2000);
  const path = link.slice(browser.address.length);
  const stranger = await open({ path });
  await soon(async () => expect(await readings(stranger.page)).toEqual(before));
  await stranger.close();
  const [a, b] = [await picture(path), await picture(path)];
  expect([a.width, a.height]).toEqual([b.width, b.height]);
  const differ = pixelmatch(a.data, b.data, null, a.width, a.height, { threshold: 0.1 });
  expect(differ / (a.width * a.height)).toBeLessThan(0.003);
  expect(errors).toEqual([]);
  await close();
});

it('a bad link opens the page all the same and says which part is wrong; texts stay text', async () => {
  const cases: readonly (readonly [string, RegExp])[] = [
    ['?station=kitchen', /station: found kitchen; allowed: apply, wear/],
    ['?brake=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E', /brake: found <img src=x/],
    ['?state=Molten', /state: found Molten; allowed: New, Worn-in/],
    ['#%%%', /behind #/],
    ['#q1ZKVrIy1FGqBQA', /found/],
    [`#${'A'.repeat(70_000)}`, /behind #: found 70000 letters; allowed: at most 65536/],
  ];
  for (const [path, says] of cases) {
    const { page, errors, close } = await open({ path });
    const alert = page.locator('takeup-app .troubles');
    await expect.poll(() => alert.innerText(), { message: path }).toMatch(says);
    expect(await alert.locator('img').count()).toBe(0);
    await at(page, 'apply');
    await alert.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => alert.count()).toBe(0);
    expect(errors).toEqual([]);
    await close();
  }
});

it('two windows: each sees the other’s brakes at once, and none is lost', async () => {
  const { page, errors, close } = await open();
  const other = await page.context().newPage();
  await other.goto(browser.address);
  await ready(other);
  const kept = (p: Page) => p.locator('takeup-own .kept li');
  for (const p of [page, other]) {
    await p.locator('nav button', { hasText: 'My brake' }).click();
    await p.getByRole('button', { name: 'Make it mine' }).waitFor();
  }
  // One after the other, each seen in both: so both windows have them in the same order.
  for (const [n, p] of [page, other].entries()) {
    await p.getByRole('button', { name: 'Make it mine' }).click();
    await p.locator('[data-own="bore"] input').waitFor();
    await expect.poll(() => kept(page).count()).toBe(n + 1);
    await expect.poll(() => kept(other).count()).toBe(n + 1);
  }
  // Different sizes of one brake, typed in both windows, are both kept.
  const first = await kept(page).first().locator('span').innerText();
  await other.locator('takeup-own .kept li').first().getByRole('button').first().click();
  await expect.poll(() => other.locator('takeup-own .kept li.on').count()).toBe(1);
  expect(await kept(other).first().locator('span').innerText()).toBe(first);
  await page.locator('[data-own="bore"] input').fill('22.2');
  await other.locator('[data-own="drumMax"] input').fill('202');
  await expect.poll(() => other.locator('[data-own="bore"] input').inputValue()).toBe('22.2');
  await expect.poll(() => page.locator('[data-own="drumMax"] input').inputValue()).toBe('202');
  expect(errors).toEqual([]);
  await close();
});

it('a browser that is full, keeps nothing, or holds rubbish is told of, and works', async () => {
  const garbage = await open();
  await garbage.page.keyboard.press('4');
  await garbage.page.waitForTimeout(700);
  await garbage.page.evaluate(() => {
    sessionStorage.setItem('takeup-moment-1', '{broken');
    localStorage.setItem('takeup-moment-1', '{"version":7}');
    localStorage.setItem('takeup-own-brakes-2', '{"brakes":[{"name":"x"}],"removed":null}');
  });
  // Leaving the page keeps the record once more: that must not hide what is tested.
  await garbage.page.evaluate(() => {
    window.addEventListener('pagehide', (e) => e.stopImmediatePropagation(), true);
  });
  const fresh = await garbage.page.context().newPage();
  await fresh.goto(browser.address);
  await ready(fresh);
  const alert = fresh.locator('takeup-app .troubles');
  await expect.poll(() => alert.innerText()).toMatch(/takeup-own-brakes-2.*could not be read/s);
  await expect.poll(() => alert.innerText()).toMatch(/takeup-moment-1.*could not be read/s);
  await expect
    .poll(() => fresh.evaluate(() => localStorage.getItem('takeup-moment-1-unread')))
    .toBe('{"version":7}');
  expect(garbage.errors).toEqual([]);
  await garbage.close();

  const full = await open();
  await full.page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await full.page.keyboard.press('4');
  await expect
    .poll(() => full.page.locator('takeup-app .troubles').innerText())
    .toMatch(/no room to keep/);
  await at(full.page, 'park');
  expect(full.errors).toEqual([]);
  await full.close();

  const forbidden = await open();
  await forbidden.page.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage']) {
      Object.defineProperty(window, name, {
        get() {
          throw new DOMException('forbidden', 'SecurityError');
        },
      });
    }
  });
  await forbidden.page.reload();
  await ready(forbidden.page);
  await expect
    .poll(() => forbidden.page.locator('takeup-app .troubles').innerText())
    .toMatch(/keeps nothing/);
  await forbidden.page.keyboard.press('3');
  await at(forbidden.page, 'drum-off');
  expect(forbidden.errors).toEqual([]);
  await forbidden.close();
});

it('a sheet that was scrolled stands there again after a reload', async () => {
  const { page, errors, close } = await open();
  await page.keyboard.press('5');
  const scroll = page.locator('takeup-inspect .scroll');
  await scroll.waitFor();
  await scroll.evaluate((e) => e.scrollTo(0, 150));
  await page.waitForTimeout(200);
  await page.reload();
  await at(page, 'inspect');
  await expect.poll(() => scroll.evaluate((e) => e.scrollTop)).toBe(150);
  expect(errors).toEqual([]);
  await close();
});
