import { describe, expect, it } from 'vitest';
import ferry from '../../scenes/ferry-runabout.json';
import { createMotion, createRig, freshState, rest } from '../../sim/index.ts';
import { mustRead } from '../brakes.ts';
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
