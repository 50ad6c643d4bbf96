import { dress } from '../sim/balance/dress.ts';
import { createRig, freshState, type Rig, rest } from '../sim/index.ts';
import { onPaper, quayScene } from './brakes.ts';

/**
 * The quay van with a strut so long that, the drum away, the middles of its new linings stand inside the new
 * bore; and the clamp of its strut there, N. It is not asked whether anybody would build it.
 *
 * @param z mm; @param give of what bears the strut's force, mm/N
 */
export function standingInside(
  z: number,
  give: number,
  change: (scene: ReturnType<typeof quayScene>) => void = () => {},
): { readonly rig: Rig; readonly away: () => number } {
  const scene = quayScene();
  change(scene);
  const at = (length: number) => {
    scene.adjuster.lengthAtZero = length;
    const brake = onPaper(scene);
    const rig = createRig(brake, { strutGive: give });
    const state = freshState(brake, brake.drum.radiusNew + 10);
    return { rig, inside: 10 - dress(rig, state).restGap, away: () => rest(rig, state).strutForce };
  };
  let [low, high] = [scene.adjuster.lengthAtZero, scene.adjuster.lengthAtZero + 3];
  for (let n = 0; n < 45; n++) {
    const middle = (low + high) / 2;
    if (at(middle).inside < z) low = middle;
    else high = middle;
  }
  return at(high);
}
