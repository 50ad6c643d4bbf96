import { dress } from '../balance/dress.ts';
import type { Rig } from '../balance/rig.ts';
import { type BrakeState, freshState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';
import { KM } from '../units/units.ts';
import { application } from './application.ts';
import { dragTorque, guessOf, newRun, wearLump } from './lump.ts';

export interface WearEvent {
  readonly kind: 'click' | 'lining limit' | 'drum limit' | 'teeth used up';
  /** mm driven. */
  readonly distance: number;
  readonly tooth: number;
  readonly text: string;
}

/** One row of the chart strip. */
export interface TracePoint {
  readonly distance: number;
  /** Clearance of the linings' middle at rest, mean of both shoes, mm. */
  readonly clearance: number;
  /** Thinnest lining left of the front and rear shoe, mm. */
  readonly liningFront: number;
  readonly liningRear: number;
  /** Brake factor after springs at the duty's pressure. */
  readonly brakeFactor: number;
  readonly tooth: number;
  readonly drumRadius: number;
}

export interface WearResult {
  readonly state: BrakeState;
  readonly events: readonly WearEvent[];
  readonly trace: readonly TracePoint[];
}

/** Driving is taken in lumps of this length, mm: clicks are placed to within it. */
export const LUMP = 50 * KM;

/** Thinnest lining left on a shoe, mm. */
export function thinnest(rig: Rig, state: BrakeState, side: Side): number {
  const { thickness } = rig[side].bed;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < thickness.length; i++) {
    least = Math.min(least, (thickness[i] as number) - (state.wear[side][i] as number));
  }
  return least;
}

const km = (distance: number): string => `${Math.round(distance / KM)} km`;

/**
 * Wears the brake on by its duty, fast-forwarded in lumps; after each lump one application at the
 * duty's pressure is judged by the ratchet (wear is taken after release).
 *
 * @param distance to drive, mm; with `toNextClick` the most to drive
 * @param toNextClick stop right after the next click, or at the lining's limit
 */
export function wearOn(
  rig: Rig,
  start: BrakeState,
  options: { readonly distance: number; readonly toNextClick?: boolean },
): WearResult {
  const { brake } = rig;
  const press = { pressure: brake.duty.pressure, turning: 1 } as const;
  const run = newRun();
  const events: WearEvent[] = [];
  const trace: TracePoint[] = [];
  let state = start;
  let guess: ReturnType<typeof guessOf> | undefined;

  const judge = (): boolean => {
    const before = state;
    const result = application(rig, state, press, guess);
    guess = guessOf(result.solved);
    state = result.state;
    for (let i = 1; i <= result.clicked; i++) {
      const tooth = before.tooth + i;
      events.push({
        kind: 'click',
        distance: state.distance,
        tooth,
        text: `Click: tooth ${tooth} at ${km(state.distance)}`,
      });
      if (tooth === brake.adjuster.teeth) {
        events.push({
          kind: 'teeth used up',
          distance: state.distance,
          tooth,
          text: `Last tooth used at ${km(state.distance)}: from here the clearance grows`,
        });
      }
    }
    const { work, load } = result.solved;
    const drag = dragTorque(result.solved, 1) / load.drum.radius;
    const toe = (shoe: 'front' | 'rear', i: 0 | 1) =>
      ((-work.toe[i].ry * rig[shoe].outward * (work.piston[i] as number) +
        (work.springMoment[i] as number)) *
        rig[shoe].opening) /
      (rig[shoe].shoe.toe[1] - rig[shoe].shoe.anchor.at[1]);
    const push = (toe('front', 0) + toe('rear', 1)) / 2;
    trace.push({
      distance: state.distance,
      clearance: dress(rig, state).restGap,
      liningFront: thinnest(rig, state, 'front'),
      liningRear: thinnest(rig, state, 'rear'),
      brakeFactor: push > 0 && drag > 0 ? drag / push : Number.NaN,
      tooth: state.tooth,
      drumRadius: state.drumRadius,
    });
    return result.clicked > 0;
  };
  const limits = (before: BrakeState): boolean => {
    let reached = false;
    for (const side of ['front', 'rear'] as const) {
      const least = brake.shoes[side].lining.thicknessMin;
      if (thinnest(rig, before, side) > least && thinnest(rig, state, side) <= least) {
        reached = true;
        events.push({
          kind: 'lining limit',
          distance: state.distance,
          tooth: state.tooth,
          text: `${side === 'front' ? 'Front' : 'Rear'} lining at its limit of ${least} mm at ${km(state.distance)}`,
        });
      }
    }
    if (before.drumRadius <= brake.drum.radiusMax && state.drumRadius > brake.drum.radiusMax) {
      events.push({
        kind: 'drum limit',
        distance: state.distance,
        tooth: state.tooth,
        text: `Drum past its largest diameter at ${km(state.distance)}`,
      });
    }
    return reached;
  };

  let clicked = judge();
  if (clicked && options.toNextClick) return { state, events, trace };
  const end = start.distance + options.distance;
  while (state.distance < end - 1) {
    const before = state;
    state = wearLump(rig, state, Math.min(LUMP, end - state.distance), 1, run);
    const atLimit = limits(before);
    clicked = judge();
    if (options.toNextClick && (clicked || atLimit)) break;
    if (thinnest(rig, state, 'front') <= 0 || thinnest(rig, state, 'rear') <= 0) break;
  }
  return { state, events, trace };
}

/** One of the scene's standing states, made by its recipe from new. Throws on an unknown name. */
export function standingState(rig: Rig, name: string): BrakeState {
  const recipe = rig.brake.states.find((s) => s.name === name);
  if (!recipe) {
    throw new Error(
      `No state "${name}"; this scene has ${rig.brake.states.map((s) => s.name).join(', ')}`,
    );
  }
  const start = freshState(rig.brake, recipe.drumRadius ?? rig.brake.drum.radiusNew);
  return recipe.distance > 0 ? wearOn(rig, start, { distance: recipe.distance }).state : start;
}
