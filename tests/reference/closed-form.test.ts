import { describe, it } from 'vitest';
import { balance } from '../../sim/index.ts';
import { pinnedPair } from '../brakes.ts';
import { near } from '../near.ts';

/**
 * Closed form of a rigid shoe on a pin with pressure as the sine of the angle from the pin:
 * BF = mu·(h/r) / (X ∓ mu·Y), X = (a/r)·[arc − sin(arc)·cos(A3)] / [4·sin(arc/2)·sin(A3/2)],
 * Y = 1 − (a/r)·cos(arc/2)·cos(A3/2), A3 = th1 + th2; minus for the leading shoe. Same form as in
 * Limpert, Brake Design and Safety, ch. 2 (form from memory; derived and checked by element sums).
 */
function closed(mu: number, a: number, h: number, from: number, to: number, sign: 1 | -1): number {
  const rad = Math.PI / 180;
  const arc = (to - from) * rad;
  const a3 = (to + from) * rad;
  const x = (a * (arc - Math.sin(arc) * Math.cos(a3))) / (4 * Math.sin(arc / 2) * Math.sin(a3 / 2));
  const y = 1 - a * Math.cos(arc / 2) * Math.cos(a3 / 2);
  return (mu * h) / (x - sign * mu * y);
}

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
        near(factor('front'), closed(mu, s.pin, s.arm, s.from, s.to, 1), { rel: 1e-3 }, 'leading');
        near(factor('rear'), closed(mu, s.pin, s.arm, s.from, s.to, -1), { rel: 1e-3 }, 'trailing');
      });
    }
  }
});
