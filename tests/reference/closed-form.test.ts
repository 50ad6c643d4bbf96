import { describe, it } from 'vitest';
import { balance } from '../../sim/index.ts';
import { pinnedPair } from '../brakes.ts';
import { closedFactor } from '../closed-factor.ts';
import { near } from '../near.ts';

describe('48 elements against the closed form, within 0.1 %', () => {
  const shapes = [
    { pin: 0.8, arm: 1.6, from: 35, to: 145 },
    { pin: 0.8, arm: 1.55, from: 23.4, to: 133.4 },
    { pin: 0.75, arm: 1.4, from: 10, to: 100 },
    { pin: 0.85, arm: 1.6, from: 20, to: 120 },
  ];
  for (const s of shapes) {
    for (const mu of [0.2, 0.35, 0.5]) {
      it(`pin ${s.pin} r, arm ${s.arm} r, lining ${s.from}° to ${s.to}°, friction ${mu}`, () => {
        const radius = 110;
        const built = pinnedPair({
          mu,
          width: 40,
          radius,
          pin: s.pin * radius,
          arm: s.arm * radius,
          from: s.from,
          to: s.to,
        });
        const i = balance(built.rig, built.state, { pressure: 1, turning: 1 });
        const factor = (side: 'front' | 'rear') =>
          -i.shoes[side].torqueOnDrum / (radius * i.shoes[side].pistonForce);
        near(
          factor('front'),
          closedFactor(mu, s.pin, s.arm, s.from, s.to, 1),
          { rel: 1e-3 },
          'leading',
        );
        near(
          factor('rear'),
          closedFactor(mu, s.pin, s.arm, s.from, s.to, -1),
          { rel: 1e-3 },
          'trailing',
        );
      });
    }
  }
});
