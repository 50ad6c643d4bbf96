import type { TemplateResult } from 'lit';
import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { adjusterKinds, balance, isTold, kindLaws } from '../../../sim/index.ts';
import { Session } from '../../../ui/session.ts';
import { drawBrake } from '../../../ui/stage/scene.ts';
import { fitView } from '../../../ui/stage/view.ts';
import { ApartDesk } from '../../../ui/stations/apart/desk.ts';
import { drawApart } from '../../../ui/stations/apart/draw.ts';
import { fitPart, table } from '../../../ui/stations/apart/side.ts';
import { fitTo, goWithout, layKind } from '../../../ui/stations/apart/wants.ts';
import { themes } from '../../../ui/theme.ts';
import { near } from '../../near.ts';

const session = Session.of(quayVan, true);
const desk = new ApartDesk(session);
/** Every text of a template, its markup left as it is. */
function textOf(value: unknown): string {
  if (Array.isArray(value)) return value.map(textOf).join(' ');
  if (typeof value !== 'object' || value === null)
    return ['string', 'number'].includes(typeof value) ? String(value) : '';
  const { strings = [], values = [] } = value as Partial<TemplateResult>;
  return strings.map((s, i) => s + textOf(values[i])).join('');
}
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

const struts = adjusterKinds.filter((kind) => kindLaws[kind].strutSpring !== null);
it.each(struts)('%s without the spring of its strut: laid out, drawn nowhere, and told', (kind) => {
  session.do(layKind, kind);
  session.do(fitTo, desk.order.length);
  expect(desk.springs.map((s) => s.of)).toContain('strut');
  session.do(goWithout, 'strut');
  // It lies beside the adjuster, its place dashed.
  const [front] = drawApart(session, desk, STAGE);
  const dashed = front?.shapes.filter((s) => s.group === 'place') ?? [];
  expect(dashed.length).toBeGreaterThan(0);
  expect(dashed.length).toBe(desk.shapes.filter((s) => s.part === 'strut spring').length);
  const [whole, less] = [desk.tried('nothing'), desk.tried('strut')];
  const says = textOf(table(desk));
  if (kindLaws[kind].strutSpring === 'holds it back') {
    expect(less.clicks).toBe(0);
    expect(says).toContain('the lever takes it along instead of climbing its tooth');
  } else {
    // 0.9 mm of play behind the hook (README), a step of 0.02 mm to either side.
    near(less.longer - whole.longer, 0.9, { abs: 0.021 });
    expect(less.drag).toBeGreaterThan(5);
    expect(says).toContain('drag with');
  }
  // In the brake it is neither drawn nor named.
  const drawn = (state: typeof less.state) =>
    drawBrake({
      brake: desk.brake,
      state,
      instant: balance(desk.rig, state, { pressure: 4, turning: 1 }),
      rest: desk.rest,
      layers: { names: true },
      view: fitView(desk.brake, { width: 1370, height: 992, narrow: false, band: 24 }),
      theme: themes.sheet,
    });
  const has = ({ shapes, labels }: ReturnType<typeof drawn>) => [
    shapes.some((s) => s.part === 'strut spring'),
    labels.some((l) => l.text === 'Strut spring'),
  ];
  expect(has(drawn(whole.state))).toEqual([true, true]);
  expect(has(drawn(less.state))).toEqual([false, false]);
});

it('a screw strut offers no such spring', () => {
  session.do(layKind, 'screw strut');
  expect(desk.springs.map((s) => s.of)).not.toContain('strut');
});

it('a return spring that is unhooked holds the strut no more', () => {
  session.do(layKind, null);
  const springs = desk.springs.filter((s) => typeof s.of === 'number');
  expect(springs.length).toBe(desk.brake.springs.length);
  const whole = desk.tried('nothing');
  for (const { of } of springs) expect(desk.tried(of).strut).toBeLessThan(whole.strut);
  expect(isTold(desk.rest)).toBe(true);
});
