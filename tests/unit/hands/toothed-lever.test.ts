import { describe, expect, it } from 'vitest';
import farmTrailer from '../../../scenes/farm-trailer.json';
import quayVan from '../../../scenes/quay-van.json';
import { leverForm, leverInHand, leverMass, rest, standingState } from '../../../sim/index.ts';
import { letGoHand, openHands } from '../../../ui/record/hands.ts';
import { Session } from '../../../ui/session.ts';
import { HandsDesk } from '../../../ui/stations/hands/desk.ts';
import { placeNow } from '../../../ui/stations/hands/places.ts';
import { quay } from '../../brakes.ts';
import { near } from '../../near.ts';

// The van's scene: 15 N as fitted, 1.5 N/mm, teeth 1.0 mm high; a hand of 5 N/mm and 200 N.
const { brake, rig } = quay();
const still = rest(rig, standingState(rig, 'Worn-in'));
const held = (reach: number, strength = 1) => {
  const made = leverInHand(brake, still, strength, 5, reach, 200);
  if (!made) throw new Error('the van has a toothed lever');
  return made;
};

describe('a toothed lever in the hand', () => {
  it('lifts once the pull beats its spring: r·(d − s) = F0 + k·s by hand', () => {
    expect(held(2.9)).toMatchObject({ lift: 0, free: false });
    near(held(2.9).pull, 14.5, { rel: 1e-12 }, 'held down by its spring');
    // (5·3.3 − 15)/(5 + 1.5) = 0.2308 mm at 15.346 N.
    near(held(3.3).lift, 0.230769, { abs: 1e-6 }, 'lift');
    near(held(3.3).pull, 15 + 1.5 * 0.230769, { abs: 1e-5 }, 'pull');
    // A tooth high at (15 + 6.5)/5 = 4.3 mm of the hand, by 16.5 N.
    expect([held(4.29).free, held(4.31).free]).toEqual([false, true]);
    near(held(4.3).pull, 16.5, { abs: 1e-9 }, 'off its teeth');
    // At the slot's end, two teeth high, the hand pulls as far as it can.
    near(held(30).lift, 2, { abs: 1e-12 }, 'end of the slot');
    near(held(30).pull, 140, { abs: 1e-9 }, 'against its end');
    near(held(60).pull, 200, { abs: 1e-9 }, 'a hand\u2019s most');
  });

  it('a weak spring asks for less, a broken one for nothing', () => {
    // 0.3 of it: (15 − 4.5)/(5 + 0.45)
    near(held(3, 0.3).lift, (15 - 4.5) / 5.45, { abs: 1e-9 }, 'weak');
    near(held(1, 0).lift, 1, { abs: 1e-12 }, 'broken');
    near(held(1, 0).pull, 0, { abs: 1e-12 }, 'broken');
  });

  it('freed, the strut\u2019s clamp has to be held: virtual work on the finger', () => {
    const form = leverForm(brake);
    if (!form) throw new Error('no lever');
    // The strut from tooth 5 to a thousandth of a radian on grows by nose·(cos − cos).
    const angle = form.angles[still.tooth] ?? 0;
    const grows = form.noseRadius * (Math.cos(angle) - Math.cos(angle + 1e-3));
    const row = form.toothRadius * 1e-3;
    near(held(5).holds, (still.strutForce * grows) / row, { rel: 1e-3 }, 'hold');
    expect(held(5).holds).toBeGreaterThan(50);
  });

  it('turns back tooth by tooth only off its teeth, no further on than it was taken, and stays where it is let go', () => {
    const session = Session.of(quayVan, true);
    session.standing('Worn-in');
    session.do(openHands, true);
    const desk = new HandsDesk(session);
    expect(desk.parts).toContain('adjuster lever');
    expect(session.state.tooth).toBe(5);
    const gap = session.rest.shoes.front.gap[24] ?? 0;
    desk.take('adjuster lever');
    // Level pulls do nothing while it is in its teeth.
    desk.pull(-10, 0);
    expect(session.state.tooth).toBe(5);
    desk.letGo();
    desk.take('adjuster lever');
    for (let n = 0; n < 3; n++) desk.pull(0, 10);
    expect(desk.lever?.free).toBe(true);
    expect(desk.force(session.instant())).toBeGreaterThan(desk.lever?.pull ?? 0);
    desk.pull(-10, 0);
    desk.pull(-10, 0);
    expect(session.state.tooth).toBe(3);
    // Shorter by two teeth, both linings stand further from the drum.
    expect(session.rest.shoes.front.gap[24] ?? 0).toBeGreaterThan(gap + 0.2);
    for (let n = 0; n < 4; n++) desk.pull(10, 0);
    expect(session.state.tooth).toBe(5);
    desk.pull(-10, 0);
    session.do(letGoHand);
    expect([session.state.tooth, desk.lever]).toEqual([4, null]);
    for (let n = 0; n < 9 && session.state.tooth !== 5; n++) session.undo();
    expect(session.state.tooth).toBe(5);
  });

  it('let go it falls by its spring and its mass, hits and rings out, to be seen slowly and looked back at', () => {
    const session = Session.of(quayVan, true);
    session.standing('Worn-in');
    session.do(openHands, true);
    const desk = new HandsDesk(session);
    desk.take('adjuster lever');
    // A hand 6 mm up: (5·6 − 15)/(5 + 1.5) = 2.3 mm, and the slot ends at two teeth.
    for (let n = 0; n < 3; n++) desk.pull(0, 10);
    near(desk.lever?.lift ?? 0, 2, { abs: 1e-9 }, 'in the hand');
    const heard = session.clickedAt;
    session.motion.setStep(1 / 96000);
    const from = session.motion.time;
    desk.letGo();
    const form = leverForm(session.brake);
    if (!form) throw new Error('no lever');
    // m·s″ = −(F0 + k·s) from 2 mm: at the root when cos ωt = (F0/k)/(2 + F0/k), with F0·2 + k·2²/2 = 33 mJ.
    const w = Math.sqrt(form.spring.rate / leverMass(form).mass);
    const far = form.spring.fitted / form.spring.rate;
    const lands = Math.acos(far / (2 + far)) / w;
    const lifts: number[] = [];
    const still = { pressure: 0, turning: 0 } as const;
    while (session.motion.time < from + lands) {
      session.motion.step(still);
      const t = session.motion.time - from;
      const lift = session.motion.instant().lever?.lift ?? Number.NaN;
      if (t < lands) near(lift, (2 + far) * Math.cos(w * t) - far, { abs: 2e-3 }, `at ${t}`);
      lifts.push(lift);
    }
    // Some tens of steps at ×1/400, and it bounces after.
    expect(lifts.length).toBeGreaterThan(40);
    let bounces = 0;
    for (let n = 0; n < 400; n++) {
      session.motion.step(still);
      bounces = Math.max(bounces, session.motion.instant().lever?.lift ?? 0);
    }
    expect(bounces).toBeGreaterThan(0.01);
    expect(bounces).toBeLessThan(2 * 0.4 ** 2 + 0.05);
    expect(session.back.reel.crests.at(-1)).toBe(from);
    expect(session.clickedAt).toBe(heard);
    session.frame(1 / 60);
    // Heard once it has hit.
    expect(session.clickedAt).toBeGreaterThan(heard);
  });

  it('with a broken spring nothing drives it: it is with the law at once', () => {
    const session = Session.of(quayVan, true);
    const { motion } = session;
    motion.load({ ...motion.state, condition: { ...motion.state.condition, leverSpring: 0 } });
    expect(motion.letFall(1)).toBeNull();
    expect(motion.instant().lever?.lift).toBe(0);
  });

  it('a pointer draws it the same way: up its slot, then along its row', () => {
    const session = Session.of(quayVan, true);
    session.standing('Worn-in');
    session.do(openHands, true);
    const desk = new HandsDesk(session);
    desk.takeAt('adjuster lever', session.instant(), [-60, 14]);
    const { hold } = session.moment.hands;
    if (!hold) throw new Error('not held');
    const [x, y] = placeNow(session.brake, session.instant(), 'adjuster lever', hold.at);
    near(x, -60, { abs: 1e-9 });
    desk.follow(session.instant(), [x, y + 6]);
    expect([desk.lever?.free, session.state.tooth]).toEqual([true, 5]);
    const form = leverForm(brake);
    const pitch = (form?.toothAngle ?? 0) * (form?.toothRadius ?? 0);
    desk.follow(session.instant(), [x - 2.1 * pitch, y + 6]);
    expect(session.state.tooth).toBe(3);
  });

  it('is in no list where there is none', () => {
    const session = Session.of(farmTrailer, true);
    session.do(openHands, true);
    expect(new HandsDesk(session).parts).not.toContain('adjuster lever');
  });
});
