import { describe, expect, it } from 'vitest';
import { begin } from '../../../ui/record/history.ts';
import { linkOf, readLink } from '../../../ui/record/link.ts';
import type { Moment } from '../../../ui/record/moment.ts';
import { shownState } from '../../../ui/record/parts.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { brakes } from '../../../ui/scenes.ts';
import { Session } from '../../../ui/session.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import type { Shape } from '../../../ui/stage/shapes.ts';
import { OrderDesk } from '../../../ui/stations/order/desk.ts';
import { placeIn, setUp } from '../../../ui/stations/order/part.ts';
import { offAt, orderPages, stepsOn } from '../../../ui/stations/order/plan.ts';
import { lacking } from '../../../ui/stations/order/stage.ts';
import { textOf } from '../../../ui/stations/order/step.ts';
import {
  backOffHere,
  goToStep,
  openOrder,
  tickCheck,
  tryWornHere,
} from '../../../ui/stations/order/wants.ts';
import { themes } from '../../../ui/theme.ts';

const open = (name = 'quay-van', standing: string | null = null): Session =>
  new Session(begin(plainMoment('order', { kind: 'scene', name }, standing)), false);
describe.each(brakes.map((b) => b.name))('%s', (name) => {
  it('has words, a tool, a caution for every step of every page', () => {
    const session = open(name);
    const desk = new OrderDesk(session);
    for (const page of orderPages) {
      desk.open(page);
      expect(desk.ids.length, page).toBeGreaterThan(3);
      expect(new Set(desk.ids).size).toBe(desk.ids.length);
      for (const i of desk.ids.keys()) {
        desk.go(i);
        const { step, id } = desk;
        expect(step, `${page} ${id}`).toBeDefined();
        expect(textOf(step.does, desk).length, id).toBeGreaterThan(20);
        expect(textOf(step.does, desk), id).not.toMatch(/NaN|undefined|null/);
        expect(step.care.length, id).toBeGreaterThan(10);
        for (const { value } of step.holds?.(desk) ?? []) expect(value, id).toMatch(/^−?\d/);
      }
    }
  });
  it('takes off only what is on, and puts on again all that came off', () => {
    const { brake } = open(name);
    const apart = stepsOn(brake, 'apart');
    const before = apart.map((_, i) => offAt(brake, 'apart', i).size);
    expect(before).toEqual([...before].sort((a, b) => a - b));
    const last = offAt(brake, 'apart', apart.length);
    for (const part of ['upper', 'lower', 'front hold-down', 'strut', 'shoes', 'lever'] as const)
      expect(last.has(part), part).toBe(true);
    expect(offAt(brake, 'together', 0)).toEqual(last);
    // Cable and drum wait for the setting.
    const together = offAt(brake, 'together', stepsOn(brake, 'together').length);
    expect([...together].sort()).toEqual(['cable', 'drum', 'length']);
  });
});

describe('what is off', () => {
  const groups = (s: Session): Set<string> => {
    const desk = new OrderDesk(s);
    const drawing = drawBrake({
      brake: s.brake,
      state: s.shown,
      instant: desk.instant,
      rest: desk.instant,
      layers: {},
      view: { width: 400, height: 400, scale: 2, origin: [200, 200], k: 1, text: 1, narrow: false },
      theme: themes.sheet,
    });
    const lacks = lacking(desk.off) ?? (() => false);
    return new Set(drawing.shapes.filter((x: Shape) => !lacks(x)).map((x: Shape) => x.part ?? ''));
  };
  it('is missing in the drawing', () => {
    const s = open();
    const desk = new OrderDesk(s);
    for (const [id, part] of [
      ['upper', 'upper spring'],
      ['strut', 'toothed lever'],
      ['shoes', 'web'],
      ['shoes', 'lower spring'],
      ['shoes', 'parking lever'],
    ] as const) {
      const i = desk.ids.indexOf(id);
      desk.go(i);
      expect(groups(s).has(part), `${part} before`).toBe(true);
      desk.go(i + 1);
      expect(groups(s).has(part), `${part} after`).toBe(false);
    }
  });
  // 170.9 N hold the van's strut with both springs on, 14.3 with the lower one alone: nothing without.
  it('and in the mechanism', () => {
    const s = open();
    const desk = new OrderDesk(s);
    const strut = (id: string): number => {
      desk.go(desk.ids.indexOf(id));
      return desk.strutForce;
    };
    expect(strut('upper')).toBeCloseTo(170.9, 0);
    expect(strut('clamp')).toBeCloseTo(14.3, 0);
    expect(s.shown.condition.unhooked).toEqual([0]);
    desk.go(desk.ids.indexOf('lever'));
    expect(s.shown.condition.unhooked).toEqual([0, 1]);
    expect([...(s.shown.condition.unheld ?? [])].sort()).toEqual(['front', 'rear']);
    // The bench's own brake waits, whole.
    expect(s.moment.bench.state.condition.unhooked).toBeUndefined();
  });
});

describe('the place reached', () => {
  it('goes both ways, by undo too, and no further than there are steps', () => {
    const s = open();
    const desk = new OrderDesk(s);
    desk.go(5);
    desk.go(6);
    s.undo();
    expect(desk.at).toBe(5);
    s.undo();
    expect(desk.at).toBe(0);
    desk.go(-3);
    expect(desk.at).toBe(0);
    desk.go(99);
    expect(desk.at).toBe(desk.ids.length - 1);
  });
  it('each page keeps its own', () => {
    const s = open();
    s.do(goToStep, 4);
    s.do(openOrder, 'set');
    s.do(goToStep, 2);
    s.do(openOrder, 'apart');
    expect(placeIn(s.moment)).toBe(4);
    s.do(openOrder, 'set');
    expect(placeIn(s.moment)).toBe(2);
  });
  it('is in a link, with what was ticked and backed off', async () => {
    const s = open('quay-van', 'Second set');
    s.do(openOrder, 'back');
    s.do(goToStep, 3);
    s.do(backOffHere, 2);
    s.do(tickCheck, 'push 0');
    const link = await linkOf(s.moment);
    const cut = link.indexOf('#');
    const there = await readLink(link.slice(0, cut), link.slice(cut));
    expect(there.ok && there.moment.parts.order).toEqual(s.moment.parts.order);
  });
  it('a link with a step that this brake has not shows its last', () => {
    const m = plainMoment('order');
    const far = { ...m.parts.order, at: { ...m.parts.order.at, apart: 20 } };
    const there: Moment = { ...m, parts: { ...m.parts, order: far } };
    expect(placeIn(there)).toBe(14);
    expect(shownState(there).condition.unhooked).toEqual([0, 1]);
  });
});

describe('backing off', () => {
  // 0.29 mm over the lip, 0.068 a tooth there: five.
  it('the second set comes free five teeth back, as Drum off tells', () => {
    const s = open('quay-van', 'Second set');
    const desk = new OrderDesk(s);
    desk.open('back');
    expect(desk.need).toBe(5);
    for (let i = 0; i < 5; i++) desk.backOff(1);
    expect([desk.back, desk.need]).toEqual([5, 0]);
    expect(s.shown.tooth).toBe(s.moment.bench.state.tooth - 5);
    desk.backOff(-99);
    expect(desk.back).toBe(0);
  });
  it('a new brake has nothing to back off; a worn one comes as a guest and goes again', () => {
    const s = open();
    const desk = new OrderDesk(s);
    s.do(tryWornHere);
    expect([s.station, desk.page]).toEqual(['order', 'back']);
    expect(s.moment.bench.state.tooth).toBeGreaterThan(0);
    expect(desk.lift?.total).toBeGreaterThan(20);
    s.undo();
    expect(s.moment.bench.state.tooth).toBe(0);
  });
});

describe('setting', () => {
  it('has the sizes of New shoes, the tooth of its gauge, and presses until silent', () => {
    const s = open();
    const { set } = new OrderDesk(s);
    const { preset, pressed } = setUp(s.moment);
    expect(set.difference).toBeGreaterThanOrEqual(s.moment.parts['new-shoes'].wanted - 1e-9);
    expect(pressed().clicks.at(-1)).toBe(0);
    expect(set.silent.tooth).toBeGreaterThanOrEqual(preset.tooth);
    // A cable that holds the lever 3 mm off its stop takes clearance and notches.
    // Cable first: as many notches, so it is not noticed, and the pedal alone is longer.
    const first = set.orders.find((o) => o.order === 'cable first');
    expect(first?.notches).toBeCloseTo(set.notches, 1);
    expect(first?.pedal).toBeGreaterThan(set.pedalThen);
    expect(set.turns).toEqual([0, 0]);
  });
  it('what the bed page tells is what is held of the van', () => {
    const s = open();
    const { bedding } = new OrderDesk(s);
    expect(Math.round(bedding.tenKm)).toBe(15);
    expect([bedding.share(0), bedding.share(bedding.tenKm)]).toEqual(['42', '42']);
    expect(bedding.farText).toBe('Some 800 km bring 71 %; so do 200 hard stops from 80 km/h.');
  });
});
