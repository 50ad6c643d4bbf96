import { describe, expect, it } from 'vitest';
import bench from '../../scenes/bench-brake.json';
import trailer from '../../scenes/farm-trailer.json';
import runabout from '../../scenes/ferry-runabout.json';
import {
  type BrakeState,
  balance,
  createRig,
  freshState,
  lockedShoe,
  ownKeys,
  ownScene,
  readScene,
  sizeAt,
} from '../../sim/index.ts';
import { mustRead, quayScene } from '../brakes.ts';
import { near } from '../near.ts';
import { samples } from '../samples.ts';

/**
 * Linings ground smaller than the drum touch in a narrow patch. Moments about the drum's axis of a shoe
 * that trails on a smooth flat: toe arm × push = heel arm × heel's force + radius × drag. All on the right
 * push the same way, so the push is never naught while it rubs: such a shoe cannot lock, wherever its
 * patch lies. A leading one can: the narrow patch at height 75.2 of a drum of 95 locks from
 * sin(atan mu) = 75.2/95 on, mu 1.295 (plane statics).
 */
const ground = (radius: number, friction?: number) => {
  const scene = structuredClone(runabout);
  for (const side of ['front', 'rear'] as const) {
    scene.shoes[side].lining.groundRadius = radius;
    if (friction !== undefined) scene.shoes[side].lining.friction = friction;
  }
  const brake = mustRead(scene);
  return { rig: createRig(brake), state: freshState(brake) };
};

describe('linings ground smaller than the drum, on smooth flats', () => {
  it('lock on neither shoe at everyday friction, ground from 92.5 to 95.5', () => {
    const many = samples('groundRadii');
    const locked: string[] = [];
    for (let n = 0; n <= many; n++) {
      const radius = 92.5 + (3 * n) / many;
      for (const friction of [0.37, 0.45]) {
        const { rig, state } = ground(radius, friction);
        for (const turning of [1, -1] as const) {
          const side = lockedShoe(rig, state, turning);
          if (side) locked.push(`${radius.toFixed(2)} mu ${friction} ${turning}: ${side}`);
        }
      }
    }
    expect(locked).toEqual([]);
  });

  it('lock on the leading shoe where plane statics says, however they are ground', () => {
    for (const radius of [95, 94, 93.76]) {
      expect(lockedShoe(...both(ground(radius, 1.28)), 1), `${radius} at 1.28`).toBeNull();
      expect(lockedShoe(...both(ground(radius, 1.32)), 1), `${radius} at 1.32`).toBe('front');
      expect(lockedShoe(...both(ground(radius, 1.32)), -1), `${radius} backward`).toBe('rear');
    }
  });

  it('brake as an independent solver says: 18 bar, forward', () => {
    // Worked out apart from this code, by another solver of the same brake; N·m, leading and trailing.
    for (const [radius, leading, trailing] of [
      [94, 34.19, 13.47],
      [93.76, 34.16, 13.5],
      [93.6, 34.15, 13.52],
      [93, 34.09, 13.6],
    ] as const) {
      const { rig, state } = ground(radius);
      const { shoes, locked } = balance(rig, state, { pressure: 1.8, turning: 1 });
      expect(locked, `${radius}`).toBeNull();
      near(Math.abs(shoes.front.torqueOnDrum) / 1000, leading, { rel: 0.005 }, `${radius} leading`);
      near(
        Math.abs(shoes.rear.torqueOnDrum) / 1000,
        trailing,
        { rel: 0.005 },
        `${radius} trailing`,
      );
    }
  });
});

/** Linings worn to their limit, most at the middle of the leading one, as driving leaves them. */
function wornOut(fresh: BrakeState, most: number): BrakeState {
  const over = (wear: Float64Array, share: number): Float64Array =>
    wear.map((_, i) => share * most * Math.sin((Math.PI * (i + 0.5)) / wear.length));
  return { ...fresh, wear: { front: over(fresh.wear.front, 1), rear: over(fresh.wear.rear, 0.4) } };
}

describe('any size over the whole range in which a brake can be built', () => {
  const words = { name: 'swept', title: 'Swept', about: 'One.', source: 'Swept.' };
  for (const data of [quayScene(), bench, trailer, runabout]) {
    const base = readScene(data);
    if (!base.ok) throw new Error('a teaching brake is read');
    it(`the trailing shoe never locks: ${base.scene.title}`, () => {
      const many = samples('sweptSizes');
      const locked: string[] = [];
      let asked = 0;
      for (const key of ownKeys) {
        const size = sizeAt(base.scene, key);
        for (let n = 0; n < many; n++) {
          // From a third of the size to three times it, evenly in ratio.
          const typed = key === 'teeth' ? 1 + n : size * 9 ** (n / (many - 1) - 0.5);
          const read = readScene(ownScene(base.scene, { [key]: typed }, words));
          if (!read.ok) continue;
          const rig = createRig(read.brake);
          const { thicknessNew, thicknessMin } = read.brake.shoes.front.lining;
          const fresh = freshState(read.brake);
          for (const state of [fresh, wornOut(fresh, thicknessNew - thicknessMin)]) {
            asked += 2;
            // Forward the front shoe leads.
            if (lockedShoe(rig, state, 1) === 'rear') locked.push(`${key} ${typed} forward`);
            if (lockedShoe(rig, state, -1) === 'front') locked.push(`${key} ${typed} backward`);
          }
        }
      }
      expect(asked).toBeGreaterThan(ownKeys.length * many);
      expect(locked).toEqual([]);
    });
  }
});

const both = ({ rig, state }: ReturnType<typeof ground>) => [rig, state] as const;
