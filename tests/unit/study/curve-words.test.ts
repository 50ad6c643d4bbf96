import { describe, expect, it } from 'vitest';
import { apartDown } from '../../../ui/stations/vary/scale.ts';

/** Lines of words beside curves: each as near to its own place as the others and the axis leave it. */
describe('lines of words one below the other', () => {
  it('stay where they are, where they have room', () => {
    expect(apartDown([10, 40, 70], 18, 100)).toEqual([10, 40, 70]);
    expect(apartDown([], 18, 100)).toEqual([]);
  });
  it('go down from the one above', () => {
    expect(apartDown([10, 12, 60], 18)).toEqual([10, 28, 60]);
  });
  it('keep off the axis, and push up what is above', () => {
    // 95 is over the lowest of 90; 80 would be 10 from it.
    expect(apartDown([20, 80, 95], 18, 90)).toEqual([20, 72, 90]);
  });
  it('are so far apart and never below the axis, wherever they would stand', () => {
    let seed = 7;
    const random = () => {
      seed = (seed * 16807) % 2147483647;
      return seed / 2147483647;
    };
    for (let n = 0; n < 200; n++) {
      const wanted = Array.from({ length: 1 + Math.floor(5 * random()) }, () => 300 * random());
      wanted.sort((a, b) => a - b);
      const ys = apartDown(wanted, 18, 250);
      expect(ys.length).toBe(wanted.length);
      expect(Math.max(...ys)).toBeLessThanOrEqual(250);
      ys.slice(1).forEach((y, i) => {
        expect(y - (ys[i] as number)).toBeGreaterThanOrEqual(18 - 1e-9);
      });
    }
  });
});
