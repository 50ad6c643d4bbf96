import { describe, expect, it } from 'vitest';
import bench from '../../scenes/bench-brake.json';
import trailer from '../../scenes/farm-trailer.json';
import runabout from '../../scenes/ferry-runabout.json';
import {
  balance,
  createRig,
  freshState,
  isTold,
  ownKeys,
  ownScene,
  type Rig,
  readScene,
  sizeAt,
  type Turning,
} from '../../sim/index.ts';
import { quayScene } from '../brakes.ts';
import { samples } from '../samples.ts';

/**
 * Forces of a pressed brake are continuous in its sizes (rigid shoes on one-sided springs and dry friction that
 * slides; pins and flats): where two neighbours differ by much, a finer step between them differs by less. A jump
 * that halving does not resolve is a fault of the solver, or a shoe that snaps.
 */
const words = { name: 'swept', title: 'Swept', about: 'One.', source: 'Swept.' };
/** Two places 1.1 % apart that differ by more than this share are looked at closer. */
const MUCH = 0.03;
/** Halvings, after which at most this share of the difference may be left in one half. */
const HALVINGS = 12;
const LEFT = 0.1;

interface Told {
  readonly torque: number;
  readonly apart: number;
}

function told(rig: Rig, turning: Turning): Told | null {
  const i = balance(rig, freshState(rig.brake), { pressure: 3, turning });
  return isTold(i) ? { torque: i.torqueOnDrum, apart: i.separation } : null;
}

describe('readings of a pressed brake have no jump that a finer step does not resolve', () => {
  for (const data of [quayScene(), bench, trailer, runabout]) {
    const base = readScene(data);
    if (!base.ok) throw new Error('a teaching brake is read');
    it(base.scene.title, () => {
      const many = samples('jumps');
      const jumps: string[] = [];
      let asked = 0;
      for (const key of ownKeys) {
        // A whole number has no finer step.
        if (key === 'teeth') continue;
        const size = sizeAt(base.scene, key);
        for (const turning of [1, -1] as const) {
          const at = (ratio: number): Told | null => {
            const read = readScene(ownScene(base.scene, { [key]: size * ratio }, words));
            return read.ok ? told(createRig(read.brake), turning) : null;
          };
          const apart = (a: Told, b: Told): number =>
            Math.max(
              Math.abs(b.torque - a.torque) / Math.max(1e3, Math.abs(a.torque), Math.abs(b.torque)),
              Math.abs(b.apart - a.apart) / 5,
            );
          for (let n = 0; n < many; n++) {
            let low = 9 ** ((n + 0.5) / many - 0.5);
            let high = low * 1.011;
            let [f, g] = [at(low), at(high)];
            if (!f || !g) continue;
            asked++;
            const first = apart(f, g);
            if (first < MUCH) continue;
            for (let k = 0; k < HALVINGS && f && g; k++) {
              const middle = (low + high) / 2;
              const m = at(middle);
              if (!m) {
                f = null;
                break;
              }
              if (apart(f, m) > apart(m, g)) [high, g] = [middle, m];
              else [low, f] = [middle, m];
            }
            if (f && g && apart(f, g) > LEFT * first)
              jumps.push(
                `${key} at ${(size * low).toFixed(5)}, ${turning}: ${(100 * apart(f, g)).toFixed(1)} %`,
              );
          }
        }
      }
      expect(asked).toBeGreaterThan(ownKeys.length * many * 0.3);
      expect(jumps).toEqual([]);
    });
  }
});
