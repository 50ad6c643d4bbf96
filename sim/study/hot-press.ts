import { instantOf } from '../balance/build.ts';
import { dress } from '../balance/dress.ts';
import { solveBalance } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState, strutLength } from '../brake/state.ts';
import { BAR } from '../units/units.ts';
import { application } from '../wear/application.ts';
import { AIR, descended } from '../wear/heat.ts';

/**
 * A descent, one firm press at its foot, a cold morning: what the adjuster made of the travel that it
 * felt, and what that leaves. The lever feels how far the seats part, never why.
 */

/** Where the travel that the adjuster feels comes from, mm at the strut's seats; they add up. */
export interface Excess {
  /** Of the brake as built: new linings, new drum, tooth 0, at first touch. */
  readonly built: number;
  /** What linings and drum have lost since. */
  readonly wear: number;
  /** What the teeth have taken up: negative. */
  readonly teeth: number;
  /** Growth of the hot drum. */
  readonly growth: number;
  /** Give of linings and shoes under the press, and the turning in of the linings on a wider drum. */
  readonly elastic: number;
  /** The sum: how far the seats part beyond the strut. */
  readonly total: number;
  /** Needed for a step: the lost motion and one tooth. */
  readonly needed: number;
}

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
const FIRM = { pressure: 40 * BAR, turning: 1 } as const;

/** How far the seats stand apart when the second lining has just touched the drum, mm. */
function apartAtTouch(rig: Rig, state: BrakeState): number {
  const at = (pressure: number) => {
    const press = { pressure, turning: 1 } as const;
    return instantOf(solveBalance(rig, state, press), press);
  };
  const touching = (pressure: number): boolean => {
    const { front, rear } = at(pressure).shoes;
    return front.normalSum > 0 && rear.normalSum > 0;
  };
  let low = 0;
  let high: number = FIRM.pressure;
  if (touching(low)) return at(low).separation;
  if (!touching(high)) return at(high).separation;
  for (let i = 0; i < 18; i++) {
    const middle = (low + high) / 2;
    if (touching(middle)) high = middle;
    else low = middle;
  }
  return at(high).separation;
}

/**
 * Drives down a hill from the brake's present temperature, presses once at 40 bar, lets it cool.
 *
 * @param air °C
 */
export function hotPress(rig: Rig, state: BrakeState, hill: Hill, air = AIR): HotPress {
  const { brake } = rig;
  const { adjuster } = brake;
  const temperature = descended(brake, state.temperature, hill, air);
  const foot = { ...state, temperature };
  const pressed = application(rig, foot, FIRM);
  const apart = pressed.solved.work.separation;
  const cold = { ...pressed.state, temperature: air };

  const length = strutLength(brake, state.tooth);
  const fresh = { ...freshState(brake), condition: state.condition };
  const touchNew = apartAtTouch(rig, fresh);
  const touchCold = apartAtTouch(rig, { ...state, temperature: air });
  const touchHot = apartAtTouch(rig, foot);
  const taken = length - strutLength(brake, 0);
  const next = adjuster.growth[state.tooth + 1];
  const step = next === undefined ? Number.NaN : next - (adjuster.growth[state.tooth] as number);
  return {
    before: state,
    hot: pressed.state,
    cold,
    temperature,
    stepped: pressed.clicked,
    held: temperature > adjuster.hotLock,
    excess: {
      built: touchNew - strutLength(brake, 0),
      wear: touchCold - touchNew,
      teeth: -taken,
      growth: touchHot - touchCold,
      elastic: apart - touchHot,
      total: apart - length,
      needed: adjuster.lostMotion + step,
    },
    gapBefore: dress(rig, state).restGap,
    gapHot: dress(rig, foot).restGap,
    gapCold: dress(rig, cold).restGap,
  };
}
