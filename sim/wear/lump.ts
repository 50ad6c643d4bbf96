import { dress, tableAt } from '../balance/dress.ts';
import { type Guess, type Solved, solveDressed } from '../balance/press.ts';
import type { Rig, ShoeRig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Side, Turning } from '../brake/types.ts';
import { wornBed } from '../contact/bed.ts';
import { roundDrum } from '../contact/rub.ts';
import { KM, PI } from '../units/units.ts';

/**
 * Wear of one lump of driving: the only change of lasting state beside the adjuster's step.
 *
 * Archard's law (J. F. Archard 1953, "Contact and rubbing of flat surfaces"): depth = k·p·s on each
 * lining element and, spread evenly around the bore, on the drum. The sliding distance follows from
 * energy: the stops of the lump turn E each into heat, drag × sliding = E.
 *
 * Implicit in the step: with w = k·s·p at the lump's end, p = (E/t)(penetration − w) gives
 * p = penetration / (t/E + k·s): the bed is softened by k·s while the lump is solved, against the
 * bore as it will be at the lump's end. (Explicit steps checkerboard when (E/t)·k·s exceeds 2.)
 */

/** Energy of one stop in one brake of the axle, N·mm: ½·m·v²·share / brakes. */
export function stopEnergy(rig: Rig): number {
  const { vehicle, duty } = rig.brake;
  return (0.5 * vehicle.mass * duty.speed * duty.speed * vehicle.share) / vehicle.brakes;
}

/** Torque of both linings against the turning, N·mm, at the solved pose. */
export function dragTorque(solved: Solved, turning: Turning): number {
  let sum = 0;
  for (const shoe of [solved.dressed.rig.front, solved.dressed.rig.rear]) {
    const { friction, faceX, faceY } = shoe.rub;
    for (let i = 0; i < shoe.bed.count; i++) {
      const t = friction[i] as number;
      if (t === 0) continue;
      const x = (faceX[i] as number) - solved.load.drum.x;
      const y = (faceY[i] as number) - solved.load.drum.y;
      sum += t * Math.sqrt(x * x + y * y);
    }
  }
  return sum * turning;
}

/** Carried from lump to lump: the last pose and drag, so that one solve a lump is enough. */
export interface Run {
  guess: Guess | undefined;
  drag: number;
  /** Drum wear of the last lump by distance driven: taken ahead, so that the lump sees the bore at its end. */
  drumRate: number;
}

export const newRun = (): Run => ({ guess: undefined, drag: 0, drumRate: 0 });

export const guessOf = (solved: Solved): Guess => ({
  pose: solved.pose,
  strutOn: solved.solution.strutOn,
  leverFree: solved.solution.leverFree,
});

/**
 * @param distance of the lump, mm
 * @returns the state with worn linings and drum; the tooth is not judged here
 */
export function wearLump(
  rig: Rig,
  state: BrakeState,
  distance: number,
  turning: 1 | -1,
  run: Run,
): BrakeState {
  const d = dress(rig, state);
  const press = { pressure: rig.brake.duty.pressure, turning };
  if (run.drag <= 0) {
    const first = solveDressed(d, press, run.guess);
    run.drag = dragTorque(first, turning) / d.drum.radius;
    run.guess = guessOf(first);
    if (!(run.drag > 0)) return { ...state, distance: state.distance + distance };
  }
  const hot = tableAt(rig.brake.wearTable, state.temperature);
  const energy = (stopEnergy(rig) * rig.brake.duty.stopsPerKm * distance) / KM;
  const soft = (shoe: ShoeRig, side: Side, sliding: number) =>
    wornBed(shoe.bed, state.wear[side], shoe.shoe.lining.wearRate * hot * sliding);
  const guessed = energy / run.drag;
  const drum = roundDrum(d.drum.radius + run.drumRate * distance);
  const solved = solveDressed(
    { ...d, drum, front: soft(rig.front, 'front', guessed), rear: soft(rig.rear, 'rear', guessed) },
    press,
    run.guess,
  );
  run.drag = dragTorque(solved, turning) / d.drum.radius;
  run.guess = guessOf(solved);
  const sliding = run.drag > 0 ? energy / run.drag : 0;
  let drumDepth = 0;
  const worn = (shoe: ShoeRig, side: Side): Float64Array => {
    const before = state.wear[side];
    const after = new Float64Array(before.length);
    const rate = shoe.shoe.lining.wearRate * hot * sliding;
    for (let i = 0; i < before.length; i++) {
      const normal = shoe.rub.normal[i] as number;
      after[i] = (before[i] as number) + (rate * normal) / shoe.bed.area;
      drumDepth +=
        (rig.brake.drum.wearRate * hot * sliding * normal) /
        (shoe.shoe.lining.width * 2 * PI * d.drum.radius);
    }
    return after;
  };
  const wear = { front: worn(rig.front, 'front'), rear: worn(rig.rear, 'rear') };
  run.drumRate = drumDepth / distance;
  return {
    ...state,
    wear,
    drumRadius: state.drumRadius + drumDepth,
    distance: state.distance + distance,
    applications: state.applications + Math.round((rig.brake.duty.stopsPerKm * distance) / KM),
  };
}
