import { describe, expect, it } from 'vitest';
import ferry from '../../scenes/ferry-runabout.json';
import {
  balance,
  createMotion,
  createRig,
  driveLife,
  freshState,
  rest,
  shoeFactor,
  usualPressure,
} from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
import { leftOver } from '../left-over.ts';
import { near } from '../near.ts';

/** The scene with sloped, frictionless flats: at rest only the hold-downs keep its shoes from climbing. */
const brake = mustRead(ferry);

describe('a shoe on an abutment at rest', () => {
  for (const flexible of [false, true]) {
    const kind = flexible ? 'bending' : 'rigid';
    const rig = createRig(brake, { flexible });
    const state = freshState(brake);

    it(`${kind}: freshly built, stands on strut and heels with both gaps alike`, () => {
      const i = rest(rig, state);
      near(i.separation, i.strutLength, { abs: 1e-9 }, 'strut');
      const middle = (side: 'front' | 'rear') => i.shoes[side].gap[24] as number;
      // Hold-downs give by about a hundredth before they carry the slope's share of the springs.
      near(middle('front'), middle('rear'), { abs: 0.02 }, 'gaps');
      for (const side of ['front', 'rear'] as const) {
        expect(i.shoes[side].normalSum).toBe(0);
        expect(Math.hypot(...i.shoes[side].anchorForce)).toBeGreaterThan(1);
      }
      expect(i.residual).toBeLessThan(1e-3);
    });

    it(`${kind}: stands the same after every press`, () => {
      const motion = createMotion(rig, state);
      const poses: string[] = [];
      for (let press = 0; press < 4; press++) {
        for (let k = 0; k < 120; k++) motion.step({ pressure: Math.min(3, k / 20), turning: 1 });
        for (let k = 0; k < 120; k++) motion.step({ pressure: 0, turning: 1 });
        const i = motion.instant();
        poses.push(
          (['front', 'rear'] as const)
            .map((side) => {
              const { ux, uy, phi } = i.shoes[side].pose;
              expect(i.shoes[side].normalSum).toBe(0);
              return `${ux.toFixed(5)} ${uy.toFixed(5)} ${phi.toFixed(7)}`;
            })
            .join(' '),
        );
      }
      // The first press takes its teeth; from then on nothing drifts.
      expect(poses.slice(1)).toEqual([poses[1], poses[1], poses[1]]);
    });
  }
});

describe('between strut and drum, the drum turning', () => {
  // Shaken free the shoes climb their sloped flats back on to the strut; with all their hold-down friction
  // they leave it: so they lie on it without force until the pistons outweigh the slope.
  const rig = createRig(brake);
  const state = freshState(brake);
  for (const turning of [1, -1] as const) {
    it(`${turning > 0 ? 'forward' : 'backward'}: no strut is entered or pulls, and all forces balance`, () => {
      let idle = 0;
      for (let pressure = 0.45; pressure < 0.75; pressure += 0.01) {
        const i = balance(rig, state, { pressure, turning });
        expect(i.separation - i.strutLength).toBeGreaterThan(-1e-6);
        for (const side of ['front', 'rear'] as const) {
          const left = leftOver(brake, i, side);
          expect(left.force).toBeLessThan(1e-6 * left.largest);
          expect(left.moment).toBeLessThan(1e-6 * left.largest);
        }
        if (i.strutForce === 0 && i.separation - i.strutLength < 1e-6) idle++;
      }
      expect(idle).toBeGreaterThan(10);
    });
  }
});

describe('heels that rub on their flats', () => {
  const rough = structuredClone(ferry);
  for (const side of ['front', 'rear'] as const) rough.shoes[side].anchor.friction = 0.2;
  const rubbing = mustRead(rough);
  const rig = createRig(rubbing);
  const state = freshState(rubbing);

  it('Balance, Motion and a life press to the same torque', () => {
    const pressure = usualPressure(rubbing);
    const i = balance(rig, state, { pressure, turning: 1 });
    const torque = (of: typeof i) => of.shoes.front.torqueOnDrum + of.shoes.rear.torqueOnDrum;
    // Rough heels carry part of the drag: not the slick brake's torque, by more than is asked for below.
    const slick = balance(createRig(brake), freshState(brake), { pressure, turning: 1 });
    expect(Math.abs(torque(i) / torque(slick) - 1)).toBeGreaterThan(1e-3);
    // The first press steps the adjuster while it lasts; the second is one steady press from rest.
    const hard = 4;
    let motion = createMotion(rig, state);
    for (let n = 0; n < 2; n++) {
      motion = createMotion(rig, motion.state);
      for (let k = 0; k < 800; k++) {
        motion.step({ pressure: hard * Math.min(1, k / 400), turning: 1 });
      }
    }
    near(
      torque(balance(rig, motion.state, { pressure: hard, turning: 1 })),
      torque(motion.instant()),
      { rel: 2e-4 },
      'Motion',
    );
    const life = driveLife(rig, state, rubbing.duties[0], { distance: 1e6 });
    const last = life.rows.at(-1);
    const pressed = balance(rig, life.state(), { pressure, turning: 1 });
    near(
      last?.brakeFactor ?? 0,
      shoeFactor(pressed, 'front') + shoeFactor(pressed, 'rear'),
      { rel: 5e-4 },
      'factor of a life’s row',
    );
  });
});
