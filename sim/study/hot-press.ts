import { dress } from '../balance/dress.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { BAR } from '../units/units.ts';
import { application } from '../wear/application.ts';
import { DragShoes } from '../wear/drag-shoes.ts';
import { AIR, coolingAt, descended, descentForce } from '../wear/heat.ts';
import { type Excess, excess } from './excess.ts';

/**
 * A descent, one firm press at its foot, a cold morning: what the adjuster made of the travel that it
 * felt, and what that leaves. The lever feels how far the seats part, never why.
 */

export interface HotPress {
  /** Before the descent, as it stands. */
  readonly before: BrakeState;
  /** At the foot, after the press. */
  readonly hot: BrakeState;
  /** Next morning, the drum as cold as the air. */
  readonly cold: BrakeState;
  /** Drum at the foot, °C. */
  readonly temperature: number;
  /** Teeth taken at the press. */
  readonly stepped: number;
  /** Held by its hot lock at that temperature. */
  readonly held: boolean;
  /** Where the travel came from that the adjuster felt at that press. */
  readonly excess: Excess;
  /** Clearance at the linings' middle, mean of both shoes, mm; negative: the lining stands inside the drum. */
  readonly gapBefore: number;
  /** At the foot, before the press. */
  readonly gapHot: number;
  readonly gapCold: number;
}

export interface Hill {
  /** Rise over level distance. */
  readonly slope: number;
  /** mm along the road */
  readonly length: number;
  /** mm/s */
  readonly speed: number;
}

/** The press at the foot: 40 bar, drum forward. */
export const FOOT_PRESS = { pressure: 40 * BAR, turning: 1 } as const;

/**
 * Drum and shoes at the foot, °C, and how far the shoes have swollen there, mm. Shoes are as cold as the air at the
 * top, and stay so where the scene says nothing of their heat.
 */
function atFoot(
  { brake }: Rig,
  from: number,
  hill: Hill,
  air: number,
): { readonly temperature: number; readonly swell: number } {
  const shoes = new DragShoes(brake, air);
  const { slope, length, speed } = hill;
  const power = descentForce(brake, slope, speed) * speed;
  const both = shoes.together(from, power, coolingAt(brake, speed), length / speed, air);
  if (!both) return { temperature: descended(brake, from, hill, air), swell: 0 };
  return { temperature: both.drum, swell: shoes.growth(both.drum, both.shoes) };
}

/**
 * Drives down a hill from the brake's present temperature, presses once at 40 bar, lets it cool.
 *
 * @param air °C
 */
export function hotPress(rig: Rig, state: BrakeState, hill: Hill, air = AIR): HotPress {
  const { brake } = rig;
  const { adjuster } = brake;
  const { temperature, swell } = atFoot(rig, state.temperature, hill, air);
  const foot = { ...state, temperature };
  // What the shoes have swollen is missing from the bore, till both are cold.
  const squeezed = { ...foot, drumRadius: state.drumRadius - swell };
  const pressed = application(rig, squeezed, FOOT_PRESS);
  const hot = { ...pressed.state, drumRadius: state.drumRadius };
  const cold = { ...hot, temperature: air };

  return {
    before: state,
    hot,
    cold,
    temperature,
    stepped: pressed.clicked,
    held: temperature > adjuster.hotLock,
    excess: excess(rig, foot, FOOT_PRESS, swell),
    gapBefore: dress(rig, state).restGap,
    gapHot: dress(rig, squeezed).restGap,
    gapCold: dress(rig, cold).restGap,
  };
}
