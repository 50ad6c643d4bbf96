import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { shipped } from '../../ui/lessons/library.ts';
import { long, samples } from '../samples.ts';
import { seriousFaults } from './axe.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { frames, soon } from './soon.ts';

/** Lessons by keyboard alone, by a remote of four keys, left and taken up again, on the wall. */

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const panel = (page: Page) => page.locator('takeup-lesson');
const place = (page: Page) => panel(page).locator('.place').innerText();
const phase = (page: Page) => panel(page).locator('[aria-current="step"]').innerText();

async function begin(page: Page, title: string): Promise<void> {
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('l');
  // The other button of that name writes one's own from it.
  const button = page.getByRole('button', { name: `: ${title}` }).first();
  await button.focus();
  await page.keyboard.press('Enter');
  await panel(page).waitFor();
}

/** Where one is at the beginning of a lesson of the course. */
const begunAs = (number: number): RegExp => new RegExp(`^Lesson ${number}, step 1 of`);

/** Words of the roles on the drawing. */
const roles = (page: Page) =>
  page
    .locator('takeup-stage')
    .getByText(/^(Leading|Trailing)/)
    .count();

/** Few: one in some. Many: all of them. */
const lessons = shipped
  .filter((l) => l.kind === 'lesson')
  .filter((_, i) => i % samples('lessonsInOne') === 0);

it.each(lessons.map((l) => [l.title, l] as const))(
  'is played by keys from its first step to its last: %s',
  async (title, lesson) => {
    const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
    await begin(page, title);
    for (const [i, step] of lesson.steps.entries()) {
      await soon(async () => expect(await place(page)).toContain(`step ${i + 1} of`));
      expect(await phase(page)).toBe('Predict');
      const told = panel(page).locator('.explained, [data-value]');
      expect(await told.count()).toBe(0);
      // Without a guess nothing is shown.
      await page.keyboard.press('PageDown');
      expect(await phase(page)).toBe('Predict');
      await page.keyboard.press('b');
      await page.keyboard.press('PageDown');
      await soon(async () => expect(await phase(page)).toBe('Explain'));
      await soon(async () =>
        expect(await panel(page).locator('.mine .held').count()).toBe(
          step.choices?.[1]?.says.filter((s) => s.holds).length ?? 0,
        ),
      );
      await page.keyboard.press('PageDown');
    }
    await soon(async () => expect(await place(page)).toMatch(/the end/i));
    expect(errors).toEqual([]);
    await close();
  },
);

it('is taught by four keys of a remote, and the class’s hands stay beside the outcome', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await begin(page, 'Self-energising and direction');
  await page.keyboard.press('w');
  await page.locator('main.wall').waitFor();
  await page.keyboard.press('Shift+A');
  await page.keyboard.press('Shift+B');
  await page.keyboard.press('Shift+B');
  for (let step = 1; step <= 4; step++) {
    await soon(async () => expect(await place(page)).toContain(`step ${step} of`));
    await page.keyboard.press('PageUp');
    await page.keyboard.press('PageUp');
    await soon(async () =>
      expect(await panel(page).locator('.mine').getAttribute('data-choice')).toBe('B'),
    );
    await page.keyboard.press('PageDown');
    await soon(async () => expect(await phase(page)).toBe('Explain'));
    if (step === 1) {
      const hands = panel(page).locator('li[data-choice="B"] .hands');
      expect(await hands.innerText()).toContain('2');
    }
    await page.keyboard.press('.');
    await soon(async () => expect(await page.locator('main.wall.blank').count()).toBe(1));
    expect(await page.getByRole('button', { name: 'Blank: show it again' }).isVisible()).toBe(true);
    // A blank wall is shown again first: nothing goes on unseen.
    await page.keyboard.press('PageDown');
    await soon(async () => expect(await page.locator('main.wall.blank').count()).toBe(0));
    expect(await place(page)).toContain(`step ${step} of`);
    await page.keyboard.press('PageDown');
  }
  await soon(async () => expect(await place(page)).toMatch(/the end/i));
  await page.keyboard.press('F5');
  await soon(async () => expect(await place(page)).toContain('step 4 of'));
  expect(errors).toEqual([]);
  await close();
});

it('tells its keys on the wall, with letters off too, and Esc closes them before it leaves', async () => {
  const { page, errors, shot, close } = await browser.open({ reducedMotion: 'reduce' });
  await begin(page, 'Self-energising and direction');
  await page.keyboard.press('w');
  // Its words come with the wall's own part of the page.
  await page.locator('main.wall').waitFor();
  await panel(page).waitFor();
  const card = page.getByRole('dialog', { name: 'Keys of the wall' });
  await page.keyboard.press('?');
  await card.waitFor();
  await shot('lesson-wall-keys');
  const text = await card.innerText();
  for (const keys of ['Page Down', 'F5', 'Esc']) expect(text).toContain(keys);
  await page.keyboard.press('Escape');
  await card.waitFor({ state: 'detached' });
  expect(await page.locator('main.wall').count()).toBe(1);
  await panel(page).getByRole('button', { name: '? keys' }).click();
  await card.getByRole('checkbox').uncheck();
  await page.keyboard.press('?');
  await card.waitFor({ state: 'detached' });
  await page.keyboard.press('.');
  await page.keyboard.press('a');
  await page.keyboard.press('?');
  await card.waitFor();
  expect(await page.locator('main.wall.blank').count()).toBe(0);
  expect(await panel(page).locator('.mine').count()).toBe(0);
  await page.keyboard.press('Escape');
  await card.waitFor({ state: 'detached' });
  await panel(page).getByRole('button', { name: 'leave the wall' }).click();
  await page.locator('main.work').waitFor();
  // The list of all lessons is a letter away, once letters work again.
  await page.keyboard.press('?');
  await page.getByRole('checkbox', { name: 'Keys of one letter work' }).check();
  await page.keyboard.press('l');
  await page.locator('takeup-lessons').waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('is chosen on the wall by a remote, taught, and the next one is marked', async () => {
  const { page, errors, shot, close } = await browser.open({
    reducedMotion: 'reduce',
    path: '?station=lessons',
  });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('w');
  const list = page.locator('takeup-wall-lessons');
  await list.locator('[data-next]').waitFor();
  await shot('wall-lessons');
  const small = await list.evaluate(
    (e) =>
      [...(e.shadowRoot?.querySelectorAll('h1, li button, small, span, kbd') ?? [])].filter(
        (x) => Number.parseFloat(getComputedStyle(x).fontSize) < 34,
      ).length,
  );
  expect(small).toBe(0);
  // The talk comes first; a remote's other key marks the next.
  for (let n = 0; n < 8; n++) await page.keyboard.press('PageUp');
  expect(await list.locator('button:focus').getAttribute('data-number')).toBe('8');
  await page.keyboard.press('PageDown');
  await soon(async () => expect(await place(page)).toMatch(begunAs(8)));
  const { length } = shipped.find((l) => l.number === 8)?.steps ?? [];
  for (let step = 1; step <= (length ?? 0); step++) {
    await soon(async () => expect(await place(page)).toContain(`step ${step} of`));
    await page.keyboard.press('PageUp');
    await page.keyboard.press('PageDown');
    await soon(async () => expect(await phase(page)).toBe('Explain'));
    await page.keyboard.press('PageDown');
  }
  await soon(async () => expect(await place(page)).toMatch(/the end/i));
  await page.keyboard.press('PageDown');
  await list.waitFor();
  expect(await list.locator('[data-next]').getAttribute('data-number')).toBe('9');
  await page.keyboard.press('?');
  const card = page.getByRole('dialog', { name: 'Keys of the wall' });
  await card.waitFor();
  await page.keyboard.press('Escape');
  await card.waitFor({ state: 'detached' });
  await page.keyboard.press('6');
  await soon(async () => expect(await place(page)).toMatch(begunAs(6)));
  // Hands are counted until the outcome is seen, and no longer.
  await page.keyboard.press('Shift+A');
  await page.keyboard.press('PageDown');
  await soon(async () => expect(await phase(page)).toBe('Explain'));
  await page.keyboard.press('Shift+A');
  expect(await panel(page).locator('li[data-choice="A"] .hands').innerText()).toContain('1');
  expect(errors).toEqual([]);
  await close();
});

it('keeps its answer to itself: values, layers, table and roles are covered', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await begin(page, 'Self-energising and direction');
  await soon(async () => expect(await panel(page).locator('[data-covered]').count()).toBe(1));
  expect(await page.locator('.show').count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Table' }).isDisabled()).toBe(true);
  await page.keyboard.press('t');
  expect(await page.locator('takeup-readings dialog[open]').count()).toBe(0);
  expect(await roles(page)).toBe(0);
  // The space bar goes on with the lesson: it does not press before somebody guessed.
  await page.keyboard.press(' ');
  expect(await phase(page)).toBe('Predict');
  await page.keyboard.press('a');
  await page.keyboard.press(' ');
  await soon(async () => expect(await phase(page)).toBe('Explain'));
  // A wrong guess is struck through, without a colour of its own.
  expect(await panel(page).locator('li[data-choice="A"] s').count()).toBe(1);
  await soon(async () => expect(await roles(page)).toBeGreaterThan(0));
  expect(errors).toEqual([]);
  await close();
});

it('is left and taken up again, undone, and there after a reload', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await begin(page, 'What sets the rest position');
  await page.keyboard.press('b');
  await page.keyboard.press('PageDown');
  await soon(async () => expect(await phase(page)).toBe('Explain'));
  await page.keyboard.press('PageDown');
  await soon(async () => expect(await place(page)).toContain('step 2 of'));
  await page.keyboard.press('Control+z');
  await soon(async () => expect(await place(page)).toContain('step 1 of'));
  expect(await phase(page)).toBe('Explain');
  await page.keyboard.press('Control+y');
  await soon(async () => expect(await place(page)).toContain('step 2 of'));
  await page.waitForTimeout(1200);
  await page.reload();
  await panel(page).waitFor();
  await soon(async () => expect(await place(page)).toContain('step 2 of'));
  // One's own brake waits meanwhile, and the lesson in its list.
  await page.keyboard.press('Escape');
  const on = page.getByRole('button', { name: 'Go on with: What sets the rest position' });
  await on.click();
  await soon(async () => expect(await place(page)).toContain('step 2 of'));
  await page.keyboard.press('1');
  await page.locator('main[data-station="apply"]').waitFor();
  await page.keyboard.press('l');
  await soon(async () => expect(await place(page)).toContain('step 2 of'));
  expect(errors).toEqual([]);
  await close();
});

it('plays its talk by itself, stops where it is asked to, and goes on', async () => {
  const { page, errors, close } = await browser.open({ clock: true });
  await begin(page, 'How this brake works, in four minutes');
  await page.keyboard.press('PageDown');
  await page.clock.runFor(11_000);
  await soon(async () => expect(await place(page)).toContain('2 of 24'));
  await page.keyboard.press('PageDown');
  const at = await place(page);
  await page.clock.runFor(20_000);
  expect(await place(page)).toBe(at);
  // Stopped, it tells what one may try; it can be handled.
  await soon(async () => expect(await panel(page).locator('.try').count()).toBe(1));
  await page.keyboard.press('PageDown');
  await page.clock.runFor(10_000);
  await soon(async () => expect(await place(page)).toContain('3 of 24'));
  expect(errors).toEqual([]);
  await close();
});

/** Windows of a wall that a lesson must have room on, px. */
const walls = [
  [1920, 1080],
  [1366, 768],
  [1280, 800],
  [1024, 768],
] as const;

/** What the buttons that begin a lesson are called, one of each, in the order of the lessons. */
const beginners = /^(Begin|Go on with|Play|Beginnen|Weiter mit|Abspielen): /;

/** Lessons with the least room on the wall, in each language; many: all of them. */
const tight = { en: [8, 9], de: [10, 12] };

it.each(['en', 'de'] as const)(
  'on the wall has room for its words, none under 34 px at 1920, at each size: %s',
  async (language) => {
    const { page, errors, close } = await browser.open({
      reducedMotion: 'reduce',
      path: `?lang=${language}&station=lessons`,
    });
    await page.locator('takeup-app canvas').first().waitFor();
    const inGerman = language === 'de';
    for (const [at, { kind, title, steps: all }] of shipped.entries()) {
      if (kind !== 'lesson' || !(long || tight[language].includes(at))) continue;
      await page.keyboard.press('l');
      await page.getByRole('button', { name: beginners }).nth(at).click();
      await panel(page).waitFor();
      await page.keyboard.press('w');
      await page.locator('main.wall').waitFor();
      const steps = all.length;
      expect(steps).toBeGreaterThan(0);
      for (let step = 1; step <= steps; step++) {
        await soon(async () =>
          expect(await place(page)).toContain(inGerman ? `Schritt ${step} von` : `step ${step} of`),
        );
        for (const told of [false, true]) {
          if (told) {
            await page.keyboard.press('c');
            await page.keyboard.press('PageDown');
            await soon(async () =>
              expect(await phase(page)).toBe(inGerman ? 'Erklären' : 'Explain'),
            );
          }
          for (const [width, height] of walls) {
            await page.setViewportSize({ width, height });
            await frames(page, 3);
            await soon(async () => {
              const { least, over } = await measured(page);
              expect(over, `${title}, step ${step}, ${width} × ${height}`).toBeLessThanOrEqual(0);
              expect(least).toBeGreaterThanOrEqual((34 * width) / 1920 - 0.1);
            });
          }
        }
        await page.keyboard.press('PageDown');
      }
      await page.setViewportSize({ width: 1920, height: 1080 });
      await page.keyboard.press('w');
      await page.keyboard.press('Escape');
    }
    expect(errors).toEqual([]);
    await close();
  },
);

/** By how much the panel's words reach past their place, px, and their smallest type. */
const measured = (page: Page): Promise<{ over: number; least: number }> =>
  panel(page).evaluate((host) => {
    const root = host.shadowRoot as ShadowRoot;
    const body = root.querySelector('.body') as HTMLElement;
    // Each of them: what is not shown lies at 0, also where it is the last.
    const last = Math.max(...[...body.children].map((e) => e.getBoundingClientRect().bottom));
    const sizes = [...root.querySelectorAll<HTMLElement>('*')]
      .filter((e) => [...e.childNodes].some((n) => n.nodeType === 3 && n.textContent?.trim()))
      .filter((e) => e.tagName !== 'STYLE' && e.tagName !== 'text')
      .filter((e) => e.getBoundingClientRect().width > 2)
      .map((e) => Number.parseFloat(getComputedStyle(e).fontSize));
    const wide = body.scrollWidth - body.clientWidth;
    const high = last - body.getBoundingClientRect().bottom;
    return { over: Math.round(Math.max(high, wide)), least: Math.min(...sizes) };
  });

it('is clean for assistive software: its list, a question, an outcome, the wall', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('l');
  await page.locator('takeup-lessons').waitFor();
  expect(await seriousFaults(page)).toEqual([]);
  await begin(page, 'The click and the lost motion');
  expect(await seriousFaults(page)).toEqual([]);
  await page.keyboard.press('b');
  await page.keyboard.press('PageDown');
  await soon(async () => expect(await phase(page)).toBe('Explain'));
  expect(await seriousFaults(page)).toEqual([]);
  await page.keyboard.press('w');
  await page.locator('main.wall').waitFor();
  expect(await seriousFaults(page)).toEqual([]);
  expect(errors).toEqual([]);
  await close();
});

it('opens a stranger’s lesson, and says where one is wrong', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await page.locator('takeup-app canvas').first().waitFor();
  await page.keyboard.press('l');
  const own = { ...lessons[0], name: 'mine', title: 'Mine <b>bold</b>' };
  const file = (data: unknown) => ({
    name: 'lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(typeof data === 'string' ? data : JSON.stringify(data)),
  });
  const input = page.getByLabel('Open a lesson file');
  await input.setInputFiles(file({ ...own, tittle: 1, steps: [{ ...own.steps?.[0], shos: 2 }] }));
  const alert = page.locator('takeup-lessons [role="alert"]');
  await expect.poll(() => alert.innerText()).toContain('steps.0.shos: found an unknown key');
  expect(await alert.innerText()).toContain('the nearest is title');
  await input.setInputFiles(file('\u0000PNG'));
  await expect.poll(() => alert.innerText()).toContain('(file)');
  await input.setInputFiles(file(own));
  await page.getByRole('button', { name: 'Begin: Mine <b>bold</b>' }).click();
  await soon(async () => expect(await place(page)).toContain('step 1 of'));
  // Texts stay texts.
  expect(await panel(page).locator('h1').innerText()).toBe('Mine <b>bold</b>');
  await page.waitForTimeout(1200);
  await page.reload();
  await panel(page).waitFor();
  expect(await panel(page).locator('h1').innerText()).toBe('Mine <b>bold</b>');
  expect(errors).toEqual([]);
  await close();
});

it('tells the teacher in a window of its own, which works the lesson', async () => {
  const { page, errors, close } = await browser.open({ reducedMotion: 'reduce' });
  await begin(page, 'Self-energising and direction');
  const opened = page.context().waitForEvent('page');
  await page.keyboard.press('i');
  const teacher = await opened;
  await teacher.locator('takeup-teacher .ask').waitFor();
  expect(await teacher.locator('.choice.right').innerText()).toContain('Three times');
  expect(await teacher.locator('[data-clock]').innerText()).toMatch(/\d:\d\d/);
  await teacher.getByRole('button', { name: 'One hand more for A' }).click();
  await expect.poll(() => panel(page).locator('li[data-choice="A"] .hands').innerText()).toBe('1');
  await teacher.locator('button.p').click();
  await soon(async () => expect(await phase(page)).toBe('Explain'));
  await teacher.locator('button.p').click();
  await soon(async () => expect(await place(page)).toContain('step 2 of'));
  await expect.poll(() => teacher.locator('h2').first().innerText()).toContain('On the wall');
  expect(await seriousFaults(teacher)).toEqual([]);
  expect(errors).toEqual([]);
  await close();
});
