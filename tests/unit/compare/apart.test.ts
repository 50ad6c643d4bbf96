import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { adjusterKinds, isTold } from '../../../sim/index.ts';
import { Session } from '../../../ui/session.ts';
import { ApartDesk } from '../../../ui/stations/apart/desk.ts';
import { drawApart } from '../../../ui/stations/apart/draw.ts';
import { fitPart } from '../../../ui/stations/apart/side.ts';
import { fitTo, goWithout, layKind } from '../../../ui/stations/apart/wants.ts';
import { near } from '../../near.ts';

const session = Session.of(quayVan, true);
const desk = new ApartDesk(session);
const STAGE = { width: 1300, height: 980, foot: 0, size: 'wide' } as const;

describe.each(adjusterKinds)('%s on the bench', (kind) => {
  it('is drawn from both sides, as many parts together as were put on', () => {
    session.do(layKind, kind);
    session.do(fitTo, 0);
    const { order } = desk;
    expect(order.length).toBeGreaterThan(3);
    const [front, back] = drawApart(session, desk, STAGE);
    for (const part of order) {
      expect(front?.shapes.some((s) => s.part === part)).toBe(true);
      expect(back?.shapes.some((s) => s.part === part)).toBe(true);
    }
    // One out of its turn has nothing to go on yet.
    fitPart(desk, order[1] as (typeof order)[number]);
    expect(desk.fitted).toBe(0);
    fitPart(desk, order[0] as (typeof order)[number]);
    expect(desk.fitted).toBe(1);
    // Two dashed places fewer than parts: what is on stands where it belongs.
    const places = drawApart(session, desk, STAGE)[0]?.shapes.filter((s) => s.group === 'place');
    const loose = desk.shapes.filter((s) => s.part !== order[0]);
    expect(places?.length).toBe(loose.length);
  });

  it('takes the gap up with its spring, and nothing without it', () => {
    session.do(layKind, kind);
    session.do(goWithout, 'adjuster');
    const whole = desk.tried('nothing');
    const less = desk.tried('adjuster');
    expect(whole.clicks).toBeGreaterThan(0);
    expect(less.clicks).toBe(0);
    // By hand: 0.30 mm of gap on new linings (README) and 0.60 mm worn off both.
    near(less.clearance, 0.9, { abs: 0.01 });
    // What is taken up is between the last step that fits and none: no more than was worn off.
    expect(whole.clearance).toBeLessThan(0.45);
    expect(whole.clearance).toBeGreaterThan(0.2);
    expect(less.travel - whole.travel).toBeGreaterThan(10);
  });
});

it('a return spring that is unhooked holds the strut no more', () => {
  session.do(layKind, null);
  const springs = desk.springs.filter((s) => s.of !== 'adjuster');
  expect(springs.length).toBe(desk.brake.springs.length);
  const whole = desk.tried('nothing');
  for (const { of } of springs) expect(desk.tried(of).strut).toBeLessThan(whole.strut);
  expect(isTold(desk.rest)).toBe(true);
});
