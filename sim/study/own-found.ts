import { rest } from '../balance/balance.ts';
import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { gapsOf } from '../readings/roles.ts';
import { KM } from '../units/units.ts';
import { thinnest, wearOn } from '../wear/wear-on.ts';
import { FIRM, HAND, notchesAt, pedalAt } from './checks.ts';
import { loadMeasured, type WheelReadings } from './measured.ts';

/**
 * What was measured on one's own brake as it is now, held against what the model says of a brake that is
 * worn so: where its adjuster should stand, and what lever and pedal should then do. What was not
 * measured is left out and nothing is said of it.
 */
export const foundKeys = ['drumNow', 'leading', 'trailing', 'tooth', 'notches', 'pedal'] as const;
export type FoundKey = (typeof foundKeys)[number];
/** Drum and linings in mm, pedal travel at a firm press in mm, notches at a firm pull, tooth by number. */
export type OwnFound = Readonly<Partial<Record<FoundKey, number>>>;

/** A steel rule on a lining reads within this, mm (common practice). */
export const RULE = 0.1;
/** An inside caliper in a worn bore reads within this on diameter, mm (common practice). */
const CALIPER = 0.05;

/** A figure of the model for the sizes as read, and for readings that are all off one way or the other. */
export interface Spread {
  readonly least: number;
  readonly as: number;
  readonly most: number;
}

/** What the adjuster, the lever and the pedal should do on a brake so worn. */
export interface Expected {
  /** Tooth at which presses fall silent. */
  readonly tooth: Spread;
  /** Mean clearance there, mm. */
  readonly clearance: number;
  /** Mean clearance at the tooth that was found, mm; null where none was. */
  readonly clearanceFound: number | null;
  /** At the tooth that was found, or at the silent one. */
  readonly notches: Spread;
  /** mm. */
  readonly pedal: Spread;
}

function clearanceOf(rig: Rig, state: BrakeState): number {
  const still = rest(rig, state);
  const of = (side: Side): number => gapsOf(rig.brake.shoes[side], still.shoes[side]).centre;
  return (of('front') + of('rear')) / 2;
}

/** What a wheel was found to be, each reading off by its share of what rule and caliper leave open. */
function readingsOf(rig: Rig, found: OwnFound, off: -1 | 0 | 1): WheelReadings {
  const { drum, shoes } = rig.brake;
  const bore =
    found.drumNow === undefined
      ? []
      : [Math.max(2 * drum.radiusNew, found.drumNow + off * CALIPER)];
  const lining = (side: Side, t: number | undefined) =>
    t === undefined
      ? {}
      : {
          [side]: {
            thinnest: Math.max(0, Math.min(shoes[side].lining.thicknessNew, t - off * RULE)),
          },
        };
  return {
    drum: bore,
    lining: {
      ...lining('front', found.leading),
      ...lining('rear', found.trailing),
    },
  };
}

/**
 * Expected of a brake so worn, its drum as new where that was not measured; null where not both linings
 * were, or where the sizes cannot be this brake's.
 */
export function expected(rig: Rig, found: OwnFound): Expected | null {
  const { drumNow, leading, trailing, tooth } = found;
  if (leading === undefined || trailing === undefined) return null;
  const { drum, shoes } = rig.brake;
  // Contradictions are told as such; nothing is computed from them.
  if (drumNow !== undefined && drumNow < 2 * drum.radiusNew - CALIPER) return null;
  if (leading > shoes.front.lining.thicknessNew + RULE) return null;
  if (trailing > shoes.rear.lining.thicknessNew + RULE) return null;
  const states: { silent: BrakeState; stands: BrakeState }[] = [];
  for (const off of [-1, 0, 1] as const) {
    const loaded = loadMeasured(rig, readingsOf(rig, found, off));
    if (!loaded.ok) return null;
    const stands = Math.min(rig.brake.adjuster.teeth, Math.max(0, tooth ?? loaded.state.tooth));
    states.push({
      silent: loaded.state,
      stands: { ...loaded.state, tooth: stands },
    });
  }
  const spread = (of: (s: { silent: BrakeState; stands: BrakeState }) => number): Spread => {
    const [a, as, b] = states.map(of) as [number, number, number];
    return { least: Math.min(a, as, b), as, most: Math.max(a, as, b) };
  };
  const middle = states[1] as { silent: BrakeState; stands: BrakeState };
  const axle = (state: BrakeState) => ({
    left: { rig, state },
    right: { rig, state },
  });
  return {
    tooth: spread((s) => s.silent.tooth),
    clearance: clearanceOf(rig, middle.silent),
    clearanceFound: tooth === undefined ? null : clearanceOf(rig, middle.stands),
    notches: spread((s) => notchesAt(axle(s.stands), HAND)),
    pedal: spread((s) => pedalAt(axle(s.stands), FIRM).total),
  };
}

/**
 * Driven to see how unlike both linings wear, mm; with shoes that bend, until their new linings have bedded in: the
 * van's wear 1.9 to 1 over their first 3 000 km, 2.91 over 20 000 and 2.92 over 40 000.
 */
const TRIAL = 3000 * KM;
const TRIAL_BENT = 20000 * KM;

/**
 * How many times as much the front (leading, rolling forward) lining of this brake wears as the rear, at
 * their thinnest, by its own first duty. Along a pinned rigid shoe pressure and so wear keep their shape
 * (Archard's law, wear goes with pressure times way), so the ratio of the first kilometres stays; a bedded shoe that
 * bends wears as that does.
 */
export function wearRatio(rig: Rig): number {
  const distance = rig.front.modes > 0 ? TRIAL_BENT : TRIAL;
  const { state } = wearOn(rig, freshState(rig.brake), { distance });
  const lost = (side: Side): number =>
    rig.brake.shoes[side].lining.thicknessNew - thinnest(rig, state, side);
  return lost('front') / lost('rear');
}
