import { describe, expect, it } from 'vitest';
import { freshState, type Point, rest, type ToothedLever } from '../../../sim/index.ts';
import { angleOf, apply, distance, IDENTITY } from '../../../ui/stage/geometry.ts';
import { windowBox } from '../../../ui/stage/parts/shoe.ts';
import { leverTeeth, sawRadius, strutTeeth } from '../../../ui/stage/parts/teeth.ts';
import { leverFrame, placesOf } from '../../../ui/stage/place.ts';
import { near } from '../../near.ts';
import { quayVan } from './bench.ts';

const { brake, rig } = quayVan();
const lever = brake.adjuster.lever as ToothedLever;

/** Corners of the lever's teeth about its pin when it stands `climb` of the way past a tooth. */
function corners(tooth: number, climb: number): { radius: number; phase: number }[] {
  const frame = leverFrame(brake, IDENTITY, tooth, climb);
  if (!frame) throw new Error('a toothed lever is needed');
  return leverTeeth(lever).map((p) => {
    const now: Point = apply(frame, p);
    return {
      radius: distance(now, lever.pin),
      phase: (angleOf(now, lever.pin) - lever.firstTooth) / lever.toothAngle,
    };
  });
}

describe('teeth of lever and strut', () => {
  it('lie in each other at every tooth', () => {
    for (let tooth = 0; tooth <= brake.adjuster.teeth; tooth++) {
      const found = corners(tooth, 0);
      found.forEach(({ radius, phase }, i) => {
        // Tips fill the strut's gaps at whole teeth; the lever's gaps take the strut's crests.
        const tip = i % 2 === 0;
        expect(radius).toBeCloseTo(lever.toothRadius - (tip ? 0 : lever.toothHeight), 9);
        expect(phase).toBeCloseTo(Math.round(phase), 9);
      });
    }
  });

  it('never overlap while a tooth is climbed', () => {
    for (const climb of [0.1, 0.3, 0.5, 0.8, 0.99]) {
      for (const { radius, phase } of corners(7, climb)) {
        expect(radius).toBeLessThanOrEqual(sawRadius(lever, phase) + 0.005);
      }
    }
  });

  it("follow one saw line: the strut's corners are on it", () => {
    const points = strutTeeth(lever, brake.adjuster);
    points.forEach((p, i) => {
      const radius = distance(p, lever.pin);
      expect(radius).toBeCloseTo(lever.toothRadius - (i % 2 === 0 ? lever.toothHeight : 0), 9);
    });
    expect(points.length).toBeGreaterThan(2 * brake.adjuster.teeth);
  });
});

it("the lever's finger lies on the web's window at every tooth while the strut is clamped", () => {
  const box = windowBox(brake);
  if (!box) throw new Error('a window is needed');
  for (let tooth = 0; tooth <= brake.adjuster.teeth; tooth++) {
    // Worn just so far that the shoes come back onto the strut.
    const grown = brake.adjuster.growth[tooth] ?? 0;
    const radius = brake.drum.radiusNew + 0.3 * grown + 0.1;
    const state = { ...freshState(brake, radius), tooth };
    const instant = rest(rig, state);
    expect(instant.strutForce).toBeGreaterThan(0);
    const places = placesOf(brake, instant);
    const angle = lever.startAngle - lever.firstTooth;
    const nose = apply(places.lever ?? IDENTITY, [
      lever.noseRadius * Math.cos(angle),
      lever.noseRadius * Math.sin(angle),
    ]);
    const edge = apply(places.shoes.front, [box.left, nose[1]]);
    // The seat of the model is a point of the edge, the finger touches it up to 1 mm beside that.
    near(nose[0] - lever.window.x / 2, edge[0], { abs: 0.08 }, `tooth ${tooth}`);
  }
});
