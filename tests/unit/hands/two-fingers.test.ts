import { expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import type { Point } from '../../../sim/index.ts';
import { openHands } from '../../../ui/record/hands.ts';
import { Session } from '../../../ui/session.ts';
import { HandsDesk } from '../../../ui/stations/hands/desk.ts';
import { hands } from '../../../ui/stations/hands/index.ts';
import { near } from '../../near.ts';

const FRAME = 1 / 60;

function open() {
  const session = Session.of(quayVan, true);
  session.do(openHands, true);
  const desk = new HandsDesk(session);
  session.acts = (press) => desk.acts(press);
  const { front, rear } = session.brake.shoes;
  const { takes } = hands;
  if (!takes) throw new Error('hands take pointers');
  /** Both fingers on their toes; each then as far out as its pull wants, 5 N/mm. */
  const apart = (newton: number): void => {
    const out = (toe: Point, way: -1 | 1): Point => [toe[0] + (way * newton) / 5, toe[1]];
    takes.move(session, out(session.instant().shoes.front.toe, -1), 0);
    takes.move(session, out(session.instant().shoes.rear.toe, 1), 1);
  };
  const touch = (side: 'front' | 'rear', finger: number): boolean =>
    takes.down(session, side === 'front' ? front.toe : rear.toe, { part: 'web', side }, finger);
  const run = (seconds: number): void => {
    for (let t = 0; t < seconds; t += FRAME) session.frame(FRAME);
  };
  return { session, desk, takes, apart, touch, run };
}
const parted = (s: Session): number => s.instant().separation - s.instant().strutLength;

it('two fingers take hold of both shoes, and part them from the strut when they beat its clamp', () => {
  const { session, apart, desk, touch, run } = open();
  expect(touch('front', 0)).toBe(true);
  expect(touch('rear', 1)).toBe(true);
  expect(session.moment.hands.second?.part).toBe('rear shoe');
  // The springs clamp the strut with 171 N at 130 mm over the pins: 143 N at each toe, 156 over them (moments).
  apart(125);
  run(1);
  expect(parted(session)).toBeLessThan(1e-3);
  near(desk.force(session.instant()), 125, { abs: 4 }, 'first hand');
  near(desk.secondForce(session.instant()), 125, { abs: 4 }, 'second hand');
  apart(190);
  run(1);
  expect(parted(session)).toBeGreaterThan(0.5);
});

it('one finger alone carries the pair over and parts nothing', () => {
  const { session, takes, touch, run } = open();
  touch('front', 0);
  const { toe } = session.instant().shoes.front;
  takes.move(session, [toe[0] - 60, toe[1]], 0);
  run(1);
  expect(parted(session)).toBeLessThan(1e-3);
});

it('the first finger lifted, the other holds on as the first; the last lets go', () => {
  const { session, takes, touch, apart, run } = open();
  touch('front', 0);
  touch('rear', 1);
  apart(190);
  run(0.5);
  takes.up(session, 0);
  expect(session.moment.hands).toMatchObject({ part: 'rear shoe', second: null });
  expect(session.moment.hands.hold).not.toBeNull();
  run(0.5);
  expect(parted(session)).toBeLessThan(1e-3);
  takes.up(session, 0);
  expect(session.moment.hands.hold).toBeNull();
});

it('a second finger finds nothing on the part of the first, on the toothed lever or on nothing', () => {
  const { session, takes, touch } = open();
  touch('front', 0);
  expect(touch('front', 1)).toBe(false);
  expect(takes.down(session, [0, 0], null, 1)).toBe(false);
  expect(takes.down(session, [0, 0], { part: 'toothed lever' }, 1)).toBe(false);
  expect(session.moment.hands.second).toBeNull();
});
