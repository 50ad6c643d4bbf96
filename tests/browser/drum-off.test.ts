import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seriousFaults } from './axe.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { soonNear } from './soon.ts';

let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const sizes = {
  desktop: { width: 1920, height: 1080 },
  laptop: { width: 1366, height: 768 },
  phone: { width: 390, height: 844 },
} as const;

async function openStation(size: keyof typeof sizes) {
  const opened = await browser.open({ viewport: sizes[size], reducedMotion: 'reduce' });
  const { page } = opened;
  await page.locator('takeup-app canvas').first().waitFor();
  if (size === 'phone') await page.getByLabel('Station').selectOption('drum-off');
  else await page.keyboard.press('3');
  await page.getByRole('button', { name: 'Pull the drum' }).waitFor();
  return opened;
}

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();

/** What a user reads after a try: the phone's strip, or the heading's line. */
const found = (page: Page) => page.locator('.drumctl [role="status"]');

/** The figure that a pattern finds beside one of the locks. */
const figure = async (page: Page, lock: string, at: RegExp): Promise<number> =>
  Number(at.exec(await page.locator(`[data-lock="${lock}"]`).innerText())?.[1]);

async function setState(page: Page, name: string): Promise<void> {
  await press(page, 'Set another fault');
  await page.getByLabel('Brake as it stands').selectOption(name);
  await page.locator('[data-done]').click();
}

for (const size of ['desktop', 'phone'] as const) {
  describe(`on the ${size}`, () => {
    it('the second set: held by the lip, five teeth back, off', async () => {
      const { page, errors, shot, close } = await openStation(size);
      await setState(page, 'Second set');
      await press(page, 'Pull the drum');
      await expect.poll(() => found(page).textContent()).toContain('The drum is held by the lip');
      // Teaching tables: 0.29 at the heel, tooth 11, five teeth to tooth 6.
      await soonNear(() => figure(page, 'lip', /(\d\.\d\d)/), 0.29, { abs: 0.01 }, 'overlap');
      await expect.poll(() => page.locator('[data-tooth]').last().innerText()).toBe('11');
      await expect.poll(() => page.locator('[data-need]').innerText()).toBe('6');
      await shot(`drum-off-lip-${size}`);
      for (let n = 1; n <= 5; n++) {
        await press(page, 'One tooth back');
        await expect.poll(() => page.locator('[data-back]').innerText()).toBe(String(n));
        await press(page, 'Pull the drum');
        const held = n < 5 ? 'held by the lip' : 'The drum is off';
        await expect.poll(() => found(page).textContent()).toContain(held);
      }
      await expect
        .poll(() => page.locator('[data-lock="lip"]').getAttribute('data-holds'))
        .toBe('false');
      // The hazard that comes with it.
      await page.locator('.note', { hasText: 'do not press the pedal' }).waitFor();
      await shot(`drum-off-off-${size}`);
      await press(page, 'Put it back on');
      await page.getByRole('button', { name: 'Pull the drum' }).waitFor();
      expect(errors).toEqual([]);
      await close();
    });

    it('rust at the hub: it turns, does not rock, does not slide at all, until freed', async () => {
      const { page, errors, close } = await openStation(size);
      await setState(page, 'Worn-in');
      await press(page, 'Set another fault');
      await page.locator('[data-set="hub"]').click();
      await page.locator('[data-done]').click();
      await press(page, 'Turn it');
      await expect.poll(() => found(page).textContent()).toContain('turns freely');
      await press(page, 'Rock it');
      await expect.poll(() => found(page).textContent()).toContain('does not rock');
      await press(page, 'Pull the drum');
      await expect.poll(() => found(page).textContent()).toContain('held by rust at the hub');
      await expect.poll(() => found(page).textContent()).toContain('does not slide at all');
      // Teaching tables: nothing overlaps, 0.06 in hand.
      await soonNear(() => figure(page, 'lip', /(\d\.\d\d)/), 0.06, { abs: 0.01 }, 'in hand');
      await press(page, 'Rust at the hub: Free it');
      await press(page, 'Pull the drum');
      await expect.poll(() => found(page).textContent()).toContain('The drum is off');
      expect(errors).toEqual([]);
      await close();
    });

    it('the lever 6 mm off its stop: slackening the cable alone clears it', async () => {
      const { page, close } = await openStation(size);
      await press(page, 'Set another fault');
      await page
        .getByLabel('Or what its driver says')
        .selectOption({ label: '“Came off last year, and I only tightened the handbrake.”' });
      await press(page, 'Turn it');
      await expect.poll(() => found(page).textContent()).toContain('drags lightly both ways');
      await press(page, 'Pull the drum');
      await expect.poll(() => found(page).textContent()).toContain('the lever is off its stop');
      // Teaching tables: clears by 0.06.
      const clears = () => figure(page, 'lever off its stop', /clears it by (\d\.\d\d)/);
      await soonNear(clears, 0.06, { abs: 0.01 }, 'cleared by');
      await press(page, 'Slacken the cable');
      await press(page, 'Pull the drum');
      await expect.poll(() => found(page).textContent()).toContain('The drum is off');
      await close();
    });

    it('which is mine: the answers lead to the hub; one press goes one back', async () => {
      const { page, errors, shot, close } = await openStation(size);
      await press(page, 'Which is mine?');
      const answer = (question: string, given: string) =>
        page
          .locator('.quiz', { has: page.locator(`[data-question="${question}"]`) })
          .locator(`[data-answer="${given}"]`)
          .click();
      await answer('fastening', 'screw');
      await answer('turns', 'not at all');
      await page.locator('[data-question="slides"]').waitFor();
      await page.locator('[data-one-back]').click();
      await answer('turns', 'freely');
      await answer('slides', 'not at all');
      await answer('slack', 'no change');
      await answer('hole', 'there');
      const first = page.locator('[data-likely]').first();
      await expect.poll(() => first.getAttribute('data-likely')).toBe('rust at the hub');
      // What fastens it comes before any lock; each step has its caution.
      const steps = page.locator('.order li');
      await expect.poll(() => steps.first().innerText()).toContain('screw or clip');
      await expect.poll(() => page.locator('.order .care').count()).toBe(await steps.count());
      await expect.poll(() => page.locator('.foot').innerText()).toContain('no repair instruction');
      await shot(`drum-off-mine-${size}`);
      await page.locator('[data-one-back]').click();
      await page.locator('[data-question="hole"]').waitFor();
      expect(errors).toEqual([]);
      await close();
    });
  });
}

it('linings rusted on: no turn, no pull; broken loose once, then free', async () => {
  const { page, close } = await openStation('desktop');
  await setState(page, 'Worn-in');
  await press(page, 'Set another fault');
  await page.locator('[data-set="rusted"]').click();
  await page.locator('[data-done]').click();
  await press(page, 'Turn it');
  await expect.poll(() => found(page).textContent()).toContain('does not turn');
  await press(page, 'Linings rusted on: Break loose');
  await expect.poll(() => found(page).textContent()).toContain('frees with one jerk');
  await press(page, 'Turn it');
  await expect.poll(() => found(page).textContent()).toContain('turns freely');
  await press(page, 'Pull the drum');
  await expect.poll(() => found(page).textContent()).toContain('The drum is off');
  await close();
});

it('how it is fastened: the hub nut with its three whys and its cautions', async () => {
  const { page, errors, shot, close } = await openStation('laptop');
  await press(page, 'How it is fastened');
  await press(page, 'Hub nut');
  const fast = page.locator('.fast');
  for (const part of ['only to its last turns', 'by hand and slowly', 'reused', 'magnets']) {
    await expect.poll(() => fast.innerText()).toContain(part);
  }
  await page.locator('.note', { hasText: 'maker’s figures' }).waitFor();
  await shot('drum-off-fastening');
  expect(errors).toEqual([]);
  await close();
});

it('a sheet over the brake closes for what is done to the drum, and the questions go on', async () => {
  const { page, errors, close } = await openStation('laptop');
  await setState(page, 'At its limit');
  const verdict = page.locator('[data-found]');
  for (const [sheet, there] of [
    ['Set another fault', '[data-set="hub"]'],
    ['How it is fastened', '.fast'],
  ] as const) {
    await press(page, sheet);
    await page.locator(there).waitFor();
    await expect.poll(() => verdict.count()).toBe(0);
    await press(page, 'Pull the drum');
    await expect.poll(() => verdict.innerText()).toContain('held by the lip');
  }
  await press(page, 'Which is mine?');
  await page.locator('[data-answer="screw"]').click();
  await page.locator('[data-question="turns"]').waitFor();
  await press(page, 'Turn it');
  await expect.poll(() => verdict.innerText()).toContain('turns freely');
  await press(page, 'Which is mine?');
  await page.locator('[data-question="turns"]').waitFor();
  expect(errors).toEqual([]);
  await close();
});

it('a slackened cable is answered beside the brake', async () => {
  const { page, errors, close } = await openStation('laptop');
  await press(page, 'Set another fault');
  await page.getByRole('button', { name: 'Parking lever off its stop: more' }).click();
  await expect.poll(() => page.locator('[data-set="lever"]').innerText()).toContain('1\u00a0mm');
  await press(page, 'Slacken the cable');
  const lever = page.locator('[data-lock="lever off its stop"]');
  await expect.poll(() => lever.innerText()).toContain('back on its stop');
  expect(errors).toEqual([]);
  await close();
});

it('by keyboard alone: pull, back off, pull', async () => {
  const { page, close } = await openStation('laptop');
  await setState(page, 'At its limit');
  const focus = async (name: string): Promise<void> => {
    const button = page.getByRole('button', { name });
    // Past the end the one browser begins anew, the other goes on to its own buttons: so back as well.
    for (const key of ['Tab', 'Shift+Tab']) {
      for (let i = 0; i < 60; i++) {
        if (await button.evaluate((e) => e.matches(':focus'))) return;
        await page.keyboard.press(key);
      }
    }
    throw new Error(`No way to "${name}" by Tab`);
  };
  await focus('Pull the drum');
  await page.keyboard.press('Enter');
  await expect.poll(() => found(page).textContent()).toContain('held by the lip');
  await focus('One tooth back');
  await page.keyboard.press('Enter');
  await page.keyboard.press(' ');
  // Teaching tables: the first set at 59 500 km wants two teeth.
  await expect.poll(() => page.locator('[data-back]').innerText()).toBe('2');
  await focus('Pull the drum');
  await page.keyboard.press('Enter');
  await expect.poll(() => found(page).textContent()).toContain('The drum is off');
  await close();
});

it('no serious fault of access; on the phone no text under 14 px, no target under 56 px', async () => {
  for (const size of ['desktop', 'phone'] as const) {
    const { page, close } = await openStation(size);
    await setState(page, 'Second set');
    const small = async (): Promise<string[]> =>
      page.locator('.side').evaluate((side) => {
        const out: string[] = [];
        for (const e of side.querySelectorAll('*')) {
          const box = e.getBoundingClientRect();
          if (box.width <= 1 || e.closest('svg, .hidden')) continue;
          const own = [...e.childNodes].some(
            (n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim(),
          );
          const px = Number.parseFloat(getComputedStyle(e).fontSize);
          if (own && px < 14) out.push(`${px} px: ${e.textContent?.trim().slice(0, 30)}`);
          if (e.matches('button, select') && box.height < 56)
            out.push(`${box.height} high: ${e.textContent?.trim().slice(0, 30)}`);
        }
        return out;
      });
    for (const [go, there] of [
      ['', '[data-lock="lip"]'],
      ['Set another fault', '[data-set="hub"]'],
      ['Which is mine?', '[data-question="fastening"]'],
      ['How it is fastened', '.fast'],
    ] as const) {
      if (go) await press(page, go);
      await page.locator(there).first().waitFor();
      expect(await seriousFaults(page), `${size} ${go}`).toEqual([]);
      if (size === 'phone') await expect.poll(small, { message: go }).toEqual([]);
      if (go && size === 'phone') {
        await page.locator('[data-done], [data-one-back]').first().click();
      }
    }
    await close();
  }
});

it('a new drum that nothing holds: a worn one is a tap away, and back again', async () => {
  for (const size of ['desktop', 'phone'] as const) {
    const { page, errors, shot, close } = await openStation(size);
    await page.locator('[data-try-worn]').click();
    await press(page, 'Pull the drum');
    await expect.poll(() => found(page).textContent()).toContain('held by the lip');
    await shot(`drum-off-worn-guest-${size}`);
    await press(page, 'Back to mine');
    await page.locator('[data-try-worn]').waitFor();
    expect(errors).toEqual([]);
    await close();
  }
});

it('which is mine: no access hole is an answer, and changes what is to be done', async () => {
  const { page, errors, close } = await openStation('phone');
  await press(page, 'Which is mine?');
  for (const given of ['studs', 'freely', 'a little', 'no change', 'none']) {
    await page.locator(`.quiz [data-answer="${given}"]`).click();
  }
  const lip = page.locator('[data-likely="lip"]');
  await expect.poll(() => lip.innerText()).toMatch(/No access hole/);
  await page.locator('[data-one-back]').click();
  await page.locator('.quiz [data-answer="there"]').click();
  await expect.poll(() => lip.innerText()).toMatch(/through the access hole/);
  expect(errors).toEqual([]);
  await close();
});
