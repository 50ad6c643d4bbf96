import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Session } from '../../ui/session.ts';
import type { Climb } from '../../ui/shown-press.ts';
import { samples } from '../samples.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

declare global {
  interface Window {
    /** What each picture showed, and in which of them a sound was begun. */
    told: {
      pictures: { there: number; phase: string | null; hit: boolean; card: string; bar: string }[];
      sounds: number[];
    };
    /** The session's own frame, while a test runs its time. */
    ownFrame: (seconds: number) => void;
  }
}

const session = `document.querySelector('takeup-app').session`;

/** The quay van in Wear after a click, ready to show it. */
async function justClicked(width: number, height: number, more = {}) {
  const opened = await browser.open({
    viewport: { width, height },
    path: '?station=wear&state=Just+clicked',
    ...more,
  });
  const { page } = opened;
  await page.locator('takeup-stage canvas').waitFor();
  await page.waitForFunction(() => customElements.get('takeup-press') !== undefined);
  return opened;
}

const showsIt = (page: Page): Promise<boolean> =>
  page.evaluate(`${session}.showClick(), ${session}.showing`);

it('the sound and the number come with the hit, within a picture of it', async () => {
  const { page, errors, close } = await justClicked(1920, 1080);
  await page.mouse.click(5, 5);
  await page.evaluate(() => {
    const { start } = OscillatorNode.prototype;
    OscillatorNode.prototype.start = function (this: OscillatorNode, ...args: [number?]) {
      window.told.sounds.push(window.told.pictures.length);
      return start.apply(this, args);
    };
  });
  /** @param busy how long something else keeps every picture waiting, also the two before, ms */
  const play = async (busy = 0) => {
    await page.evaluate(async (ms) => {
      const waits = (): void => {
        for (const until = performance.now() + ms; performance.now() < until; );
      };
      window.told = { pictures: [], sounds: [] };
      const app = document.querySelector('takeup-app') as unknown as {
        session: Session;
        shadowRoot: ShadowRoot;
      };
      const own = app.session.sound.wake.bind(app.session.sound);
      own();
      const look = (): void => {
        const { climb, shown } = app.session;
        const panel = app.shadowRoot.querySelector('takeup-press')?.shadowRoot;
        window.told.pictures.push({
          there: climb.there,
          phase: climb.phase,
          hit: shown.tooth === 10,
          card: app.shadowRoot.querySelector('[data-tooth]')?.getAttribute('data-tooth') ?? '',
          bar: panel?.querySelector('[data-there]')?.textContent ?? '',
        });
        waits();
        if (app.session.showing) requestAnimationFrame(look);
      };
      for (let before = 0; before < 2; before++)
        await new Promise<void>((done) => requestAnimationFrame(() => done(waits())));
      app.session.showClick();
      requestAnimationFrame(look);
    }, busy);
    await expect.poll(() => page.evaluate(`${session}.showing`)).toBe(false);
    return page.evaluate(() => window.told);
  };
  const climbIn = (all: typeof window.told.pictures) =>
    all.filter((p) => p.phase === 'climb').map((p) => p.there);
  // A machine that is busy for a moment draws too few pictures to judge by: it is shown again.
  let told = await play();
  for (let again = 0; again < 5 && climbIn(told.pictures).length <= 3; again++) told = await play();
  const together = ({ pictures, sounds }: typeof told): number => {
    const hit = pictures.findIndex((p) => p.hit);
    expect(hit).toBeGreaterThan(5);
    // Two tones a click, begun in the picture in which the lever has hit, or the next.
    expect(sounds.length).toBe(2);
    for (const s of sounds) expect(Math.abs(s - hit)).toBeLessThanOrEqual(1);
    const number = pictures.findIndex((p) => p.card === '10' && p.phase !== null);
    expect(Math.abs(number - hit)).toBeLessThanOrEqual(1);
    return hit;
  };
  const { pictures } = told;
  const hit = together(told);
  expect(
    pictures
      .slice(0, hit - 1)
      .filter((p) => p.phase !== null)
      .every((p) => p.card === '9' || p.card === '10'),
  ).toBe(true);
  const climb = climbIn(pictures);
  expect(climb.length).toBeGreaterThan(3);
  expect(Math.max(...climb)).toBeLessThan(1.402);
  expect(pictures.some((p) => p.bar === '1.40')).toBe(true);
  // A machine that draws 30 pictures a second.
  together(await play(30));
  expect(errors).toEqual([]);
  await close();
});

it('shows it as a strip of eight pictures; words, bar and counter stand clear of each other', async () => {
  const windows = [
    [1366, 768],
    [1920, 1080],
    [390, 844],
  ] as const;
  for (const [width, height] of windows.slice(0, samples('clickWindows'))) {
    const { page, errors, shot, close } = await justClicked(width, height);
    await page.evaluate(() => {
      const { session: s } = document.querySelector('takeup-app') as unknown as {
        session: Session;
      };
      window.ownFrame = s.frame.bind(s);
      s.frame = () => {};
    });
    expect(await showsIt(page)).toBe(true);
    const seen: string[] = [];
    let time = 0;
    for (const at of [0.03, 0.35, 0.65, 0.9, 1.02, 1.1, 1.2, 1.33]) {
      await page.evaluate((seconds) => {
        for (let t = 0; t < seconds - 1e-9; t += 1 / 60) window.ownFrame(1 / 60);
        const { session: s } = document.querySelector('takeup-app') as unknown as {
          session: Session;
        };
        s.changed();
      }, at - time);
      time += Math.ceil((at - time) * 60 - 1e-9) / 60;
      await frames(page, 4);
      const { phase, there } = (await page.evaluate(`${session}.climb`)) as Climb;
      seen.push(phase ?? 'over');
      const panel = page.locator('takeup-press');
      await soon(async () => {
        expect(await panel.locator('[data-there]').innerText()).toBe(there.toFixed(2));
      });
      const over = await panel.evaluate((e) => [
        e.scrollHeight - e.clientHeight,
        e.scrollWidth - e.clientWidth,
      ]);
      expect(over, `${width}`).toEqual([0, 0]);
      const boxes = await panel
        .locator('.words span, .head p, .head button')
        .evaluateAll((all) => all.map((e) => e.getBoundingClientRect().toJSON() as DOMRect));
      for (const [i, a] of boxes.entries()) {
        for (const b of boxes.slice(i + 1)) {
          const apart =
            a.right <= b.left + 1 ||
            b.right <= a.left + 1 ||
            a.bottom <= b.top + 3 ||
            b.bottom <= a.top + 3;
          expect(apart, `${width} ${phase}: ${JSON.stringify([a, b])}`).toBe(true);
        }
      }
      await shot(`click-${width}-${seen.length}`);
    }
    expect(new Set(seen).size).toBeGreaterThanOrEqual(5);
    expect(errors).toEqual([]);
    await close();
  }
});

it('any key and any tap ends it; one who wants less motion sees none, and the tooth counts at once', async () => {
  const { page, errors, close } = await justClicked(1366, 768);
  for (const end of [() => page.keyboard.press('j'), () => page.mouse.click(600, 700)]) {
    expect(await showsIt(page)).toBe(true);
    await page.locator('takeup-press').waitFor();
    await end();
    expect(await page.evaluate(`${session}.showing`)).toBe(false);
    await expect.poll(() => page.locator('.card [data-tooth]').innerText()).toBe('10');
  }
  expect(errors).toEqual([]);
  await close();
  const calm = await justClicked(1366, 768, { reducedMotion: 'reduce' });
  expect(await showsIt(calm.page)).toBe(false);
  await close();
});

it('every click in the list of events, and the last one, can be shown again; a press that does not click tells how far it climbed', async () => {
  const { page, errors, close } = await browser.open({
    path: '?station=wear&state=Before+a+click',
  });
  await page.waitForFunction(() => customElements.get('takeup-press') !== undefined);
  // What is said of a press goes with it: on a busy machine a look now and then would miss it.
  await page.evaluate(() => {
    const said: string[] = [];
    Object.assign(globalThis, { said });
    const hear = (): void => {
      const panel = document.querySelector('takeup-app')?.shadowRoot?.querySelector('takeup-press');
      said.push(panel?.shadowRoot?.querySelector('.head p')?.textContent ?? '');
      requestAnimationFrame(hear);
    };
    hear();
  });
  await page.getByRole('button', { name: 'Press it here' }).click();
  const said = () => page.evaluate(() => (globalThis as unknown as { said: string[] }).said);
  await expect.poll(said).toContainEqual(expect.stringContaining('79 % of its tooth'));
  await expect.poll(() => page.evaluate(`${session}.showing`)).toBe(false);
  await page.getByRole('button', { name: 'to next click' }).click();
  await page.getByRole('button', { name: /^Wear on/ }).click();
  await expect.poll(() => page.evaluate(`${session}.state.tooth`)).toBe(10);
  await expect.poll(() => page.evaluate(`${session}.showing`)).toBe(false);
  const again = page.getByRole('button', { name: 'Show the click again', exact: true });
  await again.click();
  expect(await page.evaluate(`${session}.showing`)).toBe(true);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^Events/ }).click();
  await page.locator('[data-show-click]').first().click();
  expect(await page.evaluate(`${session}.showing`)).toBe(true);
  await page.keyboard.press('Escape');
  await page.keyboard.press('c');
  expect(await page.evaluate(`${session}.showing`)).toBe(true);
  expect(errors).toEqual([]);
  await close();
});

it('in Apply the gap closes before one’s eyes, with its factor and the pace said', async () => {
  const { page, errors, shot, close } = await browser.open({ path: '?station=apply' });
  await page.waitForFunction(() => customElements.get('takeup-press') !== undefined);
  const caption = page.locator('takeup-stage text', { hasText: 'Gap fan ×20' });
  await caption.waitFor();
  await shot('apply-rest');
  const gaps = page.locator('takeup-stage text').filter({ hasText: /^0\.\d\d$/ });
  expect(await gaps.count()).toBeGreaterThanOrEqual(6);
  // How many pictures the gap of each side takes to close.
  await page.evaluate(() => {
    const { session: s } = document.querySelector('takeup-app') as unknown as { session: Session };
    const seen = new Set<string>();
    const look = (): void => {
      const { front, rear } = s.instant().shoes;
      const middle = (g: Float64Array): number => g[Math.floor(g.length / 2)] ?? 0;
      const [a, b] = [middle(front.gap), middle(rear.gap)];
      if (a > 0.005 || b > 0.005) seen.add(`${a.toFixed(3)} ${b.toFixed(3)} ${s.paceNow}`);
      (window as unknown as { seen: string[] }).seen = [...seen];
      requestAnimationFrame(look);
    };
    look();
  });
  await page.keyboard.down(' ');
  await expect.poll(() => page.evaluate(`Math.round(${session}.pressure * 10)`)).toBe(40);
  await expect.poll(() => gaps.count()).toBe(0);
  const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
  expect(seen.filter((t) => t.endsWith(' 50')).length).toBeGreaterThanOrEqual(5);
  await shot('apply-pressed');
  await page.keyboard.up(' ');
  expect(errors).toEqual([]);
  await close();
});
