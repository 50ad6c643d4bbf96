import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axleWith, DRIVE, dragHeat, handTurn } from '../../sim/index.ts';
import { faultOf } from '../../sim/workshop/index.ts';
import { vanRig, vanState } from '../../ui/stations/faults/van.ts';
import { type OpenBrowser, openBrowser } from './open.ts';
import { noWider } from './soon.ts';

/** From the first screen of a phone to the answer: each way in, its taps counted. */
let browser: OpenBrowser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(() => browser.close());

const phone = { viewport: { width: 390, height: 844 }, reducedMotion: 'reduce', path: '' } as const;
/** No way may take more (the purpose of Start). */
const MOST_TAPS = 8;

/** Counts what a thumb does. */
class Thumb {
  taps = 0;
  async tap(on: Locator): Promise<void> {
    this.taps++;
    await on.click();
  }
}

const station = (page: Page, id: string) => page.locator(`main[data-station="${id}"]`).waitFor();
const say = (page: Page, what: string): Locator =>
  page.locator(`takeup-likely [data-say="${what}"]`);
const firstCause = (page: Page) =>
  page.locator('takeup-likely [data-cause]').first().getAttribute('data-cause');

interface Walk {
  readonly name: string;
  readonly way: string;
  go(page: Page, thumb: Thumb): Promise<void>;
}

const walks: readonly Walk[] = [
  {
    name: 'a stuck drum: what holds it, in the order of release',
    way: 'stuck',
    async go(page, thumb) {
      for (const given of ['studs', 'freely', 'a little', 'no change', 'none'])
        await thumb.tap(page.locator(`.quiz [data-answer="${given}"]`));
      await expect
        .poll(() => page.locator('[data-likely]').first().getAttribute('data-likely'))
        .toBe('shoes not centred');
      await expect.poll(() => page.locator('.order').innerText()).toMatch(/No access hole/);
    },
  },
  {
    name: 'one hot wheel: the hose, told from the cable by the notches',
    way: 'drag',
    async go(page, thumb) {
      for (const given of ['hot=one', 'turns=stiff', 'ways=alike'])
        await thumb.tap(say(page, given));
      await page.locator('[data-check-next="notches"]').waitFor();
      await thumb.tap(
        page.locator('takeup-likely').getByRole('button', { name: 'more', exact: true }),
      );
      // A step alone says nothing yet: the question stands until the figure is right.
      await page.locator('[data-check-next="notches"]').waitFor();
      expect(await page.locator('takeup-likely input').first().inputValue()).not.toBe('');
      await thumb.tap(page.locator('takeup-likely [data-done]').first());
      await expect.poll(() => firstCause(page)).toBe('hose');
    },
  },
  {
    name: 'a long pedal that comes up: the adjuster, and what parts its three causes',
    way: 'pedal',
    async go(page, thumb) {
      for (const given of ['travel=half', 'feel=firm', 'pumped=up'])
        await thumb.tap(say(page, given));
      await expect
        .poll(() => firstCause(page))
        .toMatch(/^(seized short|broken lever spring|wrong side)$/);
    },
  },
  {
    name: 'a lever that goes too far with a good pedal: the cable',
    way: 'lever',
    async go(page, thumb) {
      const more = page.locator('takeup-likely').getByRole('button', { name: 'more', exact: true });
      await more.waitFor();
      thumb.taps++;
      await page.locator('takeup-likely input').fill('11');
      await page.keyboard.press('Enter');
      await thumb.tap(say(page, 'travel=ever'));
      await expect.poll(() => firstCause(page)).toBe('stretched cable');
    },
  },
  {
    name: 'fitting shoes: the first step with its sizes',
    way: 'shoes',
    async go(page) {
      await station(page, 'new-shoes');
      await expect.poll(() => page.locator('main').innerText()).toMatch(/Right parts|right parts/);
    },
  },
  {
    name: 'parts still good: the drum’s verdict against the mark on it',
    way: 'parts',
    async go(page, thumb) {
      await station(page, 'inspect');
      const type = async (field: Locator, text: string): Promise<void> => {
        await thumb.tap(field);
        await field.fill(text);
      };
      const next = page.getByRole('button', { name: /^Next: / });
      await type(page.locator('[data-ask="drumNew"]'), '200');
      await thumb.tap(next);
      await type(page.locator('[data-ask="drumMax"]'), '202');
      await thumb.tap(next);
      // A machining limit, where one has it.
      await thumb.tap(next);
      await type(page.locator('[data-key="drumA"]'), '201.2');
      await expect
        .poll(() => page.locator('[data-line="largest"]').innerText())
        .toMatch(/201\.20[\s\S]*0\.80 left/);
    },
  },
  {
    name: 'how it works: the pedal pressed, torque told',
    way: 'works',
    async go(page, thumb) {
      await station(page, 'apply');
      await thumb.tap(page.locator('takeup-pedal [role="slider"]'));
      await page.locator('[data-key="torque"]').first().waitFor();
    },
  },
];

describe('on a phone the page begins with Start, and each way leads to its answer', () => {
  it.each(walks)('$name', async ({ way, go }) => {
    const { page, errors, shot, close } = await browser.open(phone);
    const thumb = new Thumb();
    await station(page, 'start');
    await thumb.tap(page.locator(`[data-way="${way}"]`));
    await go(page, thumb);
    expect(thumb.taps, `${thumb.taps} taps`).toBeLessThanOrEqual(MOST_TAPS);
    await noWider(page, 390);
    await shot(`start-${way}`);
    expect(errors).toEqual([]);
    await close();
  });

  it('seven ways and the field stand on one screen', async () => {
    const { page, errors, shot, close } = await browser.open(phone);
    await page.locator('[data-way]').first().waitFor();
    const ways = await page.locator('[data-way]').all();
    expect(ways).toHaveLength(7);
    for (const way of ways) {
      const box = await way.boundingBox();
      expect((box?.y ?? 999) + (box?.height ?? 0)).toBeLessThanOrEqual(844);
      expect(box?.height).toBeGreaterThanOrEqual(56);
      await way.click({ trial: true });
    }
    await page.locator('#ask-field').click({ trial: true });
    await shot('start');
    expect(errors).toEqual([]);
    await close();
  });

  it('at a desk it is one press away, and the brake stands there first', async () => {
    const { page, errors, close } = await browser.open({ path: '' });
    await station(page, 'apply');
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await station(page, 'start');
    await page.keyboard.press('1');
    await station(page, 'apply');
    await page.keyboard.press('s');
    await station(page, 'start');
    expect(errors).toEqual([]);
    await close();
  });
});

describe('Ask', () => {
  it('its field keeps the focus from Start on, and finds as one types', async () => {
    const { page, errors, shot, close } = await browser.open(phone);
    await page.locator('#ask-field').click();
    await page.keyboard.type('handbrake clicks too many');
    await station(page, 'ask');
    await expect
      .poll(() => page.locator('#ask-field').inputValue())
      .toBe('handbrake clicks too many');
    await expect
      .poll(() => page.locator('takeup-ask li').first().getAttribute('data-entry'))
      .toBe('fault:stretched cable');
    await expect
      .poll(() => page.locator('takeup-ask .read').innerText())
      .toMatch(/Read as handbrake clicks/);
    await shot('ask');
    await page.locator('takeup-ask [data-entry="fault:stretched cable"] button').click();
    await station(page, 'faults');
    await expect.poll(() => page.locator('.asked.guest').innerText()).toMatch(/stretched/);
    expect(errors).toEqual([]);
    await close();
  });

  it('a key brings it at a desk, letters go into its field, and nothing is lost by Undo', async () => {
    const { page, errors, close } = await browser.open();
    await page.locator('takeup-stage canvas').first().waitFor();
    await page.keyboard.press('/');
    await station(page, 'ask');
    const field = page.locator('#ask-field');
    await expect.poll(() => field.evaluate((e) => e.matches(':focus'))).toBe(true);
    await page.keyboard.type('drum 1 stuck');
    await expect.poll(() => field.inputValue()).toBe('drum 1 stuck');
    await expect
      .poll(() => page.locator('takeup-ask li').first().getAttribute('data-entry'))
      .toBe('station:drum-off');
    // By keyboard alone from the field to where it leads.
    await page.locator('takeup-ask li button').first().focus();
    await page.keyboard.press('Enter');
    await station(page, 'drum-off');
    await page.keyboard.press('Control+z');
    await station(page, 'ask');
    await expect.poll(() => field.inputValue()).toBe('drum 1 stuck');
    expect(errors).toEqual([]);
    await close();
  });

  it('never ends in an empty list, and leads to what one sees', async () => {
    const { page, errors, close } = await browser.open({ ...phone, path: '?station=ask' });
    await page.locator('#ask-field').fill('xyzzy');
    await expect.poll(() => page.locator('takeup-ask li').count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'None of these: say what I see' }).click();
    await station(page, 'see');
    expect(errors).toEqual([]);
    await close();
  });
});

describe('What I see', () => {
  it('carries the case to Drum off, New shoes and Inspect, and a band leads back; it is kept', async () => {
    const { page, errors, close } = await browser.open({ ...phone, path: '?station=see' });
    await page.locator('details.see-all summary').click();
    for (const given of ['hot=one', 'turns=freely', 'slides=some'])
      await page.locator(`details.see-all [data-say="${given}"]`).click();
    for (const [name, id] of [
      ['Drum off', 'drum-off'],
      ['New shoes', 'new-shoes'],
      ['Inspect', 'inspect'],
    ] as const) {
      await page.getByRole('button', { name, exact: true }).click();
      await station(page, id);
      // What was seen answers two of its questions already.
      if (id === 'drum-off') {
        await page.locator('.quiz [data-answer="studs"]').click();
        await page.locator('.quiz [data-question="slack"]').waitFor();
      }
      await expect
        .poll(() => page.locator('.case').innerText())
        .toMatch(/one rear drum gets hot.*the wheel turns freely by hand/s);
      await page.reload();
      await station(page, id);
      await page.getByRole('button', { name: 'What I see', exact: true }).click();
      await station(page, 'see');
      await page.locator('[data-tile="slides"]').waitFor();
    }
    expect(errors).toEqual([]);
    await close();
  });

  it('says what forbids driving, what this plane does not show, and why each cause fits', async () => {
    const { page, errors, close } = await browser.open({ ...phone, path: '' });
    await page.locator('[data-way="pedal"]').click();
    await say(page, 'travel=ever').click();
    await say(page, 'feel=sinks').click();
    await expect
      .poll(() => page.locator('takeup-likely .danger').first().innerText())
      .toMatch(/Do not drive it/);
    await expect
      .poll(() => page.locator('takeup-likely .never').last().innerText())
      .toMatch(/Not to be seen on this bench/);
    await expect
      .poll(() => page.locator('takeup-likely [data-cause]').first().innerText())
      .toMatch(/Because .*Then you would also find: /s);
    expect(errors).toEqual([]);
    await close();
  });

  it('works for another brake too: its own figures are worked out', async () => {
    const { page, errors, close } = await browser.open({
      ...phone,
      path: '?station=see&brake=bench-brake',
    });
    await page.locator('details.see-all summary').click();
    await page.locator('details.see-all [data-say="hot=all"]').click();
    await expect.poll(() => firstCause(page)).toBe('port shut');
    await expect
      .poll(() => page.locator('takeup-likely [role="status"]').count(), { timeout: 60_000 })
      .toBe(0);
    await expect.poll(() => firstCause(page)).toBe('port shut');
    expect(errors).toEqual([]);
    await close();
  });

  it('will it wear free: how hot, how far, what a force that stays does', async () => {
    const { page, errors, shot, close } = await browser.open({ ...phone, path: '?station=ask' });
    await page.locator('#ask-field').fill('will it wear free');
    await page.locator('takeup-ask [data-entry="check:free"] button').click();
    await expect.poll(() => page.locator('[data-free="yes"]').count()).toBe(1);
    const km = await page.locator('[data-free-told="after"]').innerText();
    expect(Number(km.replace(/\D/g, ''))).toBeGreaterThan(1000);
    await expect.poll(() => page.locator('[data-forced]').count()).toBe(4);
    // As the mechanics have it for the van with that fault.
    const van = { rig: vanRig(), state: vanState('Worn-in') };
    const { right } = axleWith(van, faultOf('hose'));
    const [rise, drag] = [dragHeat(right, DRIVE), handTurn(right).forward / 1000];
    await expect
      .poll(() => page.locator('[data-forced="hose"]').innerText())
      .toMatch(new RegExp(`\\+${rise.toFixed(0)}\\sK\\s+${drag.toFixed(0)}\\sN·m`));
    await shot('free');
    expect(errors).toEqual([]);
    await close();
  });
});
