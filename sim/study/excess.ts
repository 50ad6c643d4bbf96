import { balance } from '../balance/balance.ts';
import { playToStep } from '../balance/ratchet.ts';
import { createRig, type Rig } from '../balance/rig.ts';
import { type BrakeState, freshState, SOUND, strutLength } from '../brake/state.ts';
import type { Brake, Shoe, Turning } from '../brake/types.ts';
import { AIR } from '../wear/heat.ts';

/**
 * What the adjuster senses, split into what it should take up and what it should not. Seats apart at a
 * press, over the strut at tooth 0:
 *   as built + linings worn + drum worn + drum grown + elasticity,
 * less what the teeth have taken up already. Each share is the difference of two touching brakes, one
 * with it and one without; elasticity is what the press adds beyond the touch. Linings and drum wear
 * to fit each other, so they are not taken away one by one: the drum's part is its depth times how the
 * seats part when the bore grows, and the linings' part is the rest (derived here).
 */
export interface Excess {
  /** mm at the strut, in the order of the sum. */
  readonly gap: number;
  readonly linings: number;
  readonly drum: number;
  readonly growth: number;
  readonly elasticity: number;
  /** Taken up by the teeth, mm. */
  readonly takenUp: number;
  /** Play sensed: the sum less what was taken up. */
  readonly sensed: number;
  /** Play at which the next tooth drops in; NaN past the last. */
  readonly needed: number;
}

/** A push that closes the gaps and hardly more, MPa. */
const TOUCH = 0.005;
/** Rise of the bore by which its effect on the seats is measured, mm. */
const BORE = 0.05;

const bare = new WeakMap<Rig, Rig>();

/** The same brake without springs and hold-downs: a touch of pressure brings its shoes to the drum. */
function bareRig(rig: Rig): Rig {
  let made = bare.get(rig);
  if (!made) {
    const free = (shoe: Shoe): Shoe => ({
      ...shoe,
      holdDown: { ...shoe.holdDown, friction: 0 },
    });
    const { front, rear } = rig.brake.shoes;
    const brake: Brake = {
      ...rig.brake,
      springs: [],
      adjuster: { ...rig.brake.adjuster, climbForce: 0, spring: null },
      shoes: { front: free(front), rear: free(rear) },
      cylinder: { ...rig.brake.cylinder, cupFriction: 0, centreSpring: 0 },
    };
    made = createRig(brake, rig.options);
    bare.set(rig, made);
  }
  return made;
}

/** @param pressure MPa of the press whose sensed travel is split
 * @param swell of warm shoes, mm: the room that it takes from the drum's growth */
export function excess(
  rig: Rig,
  state: BrakeState,
  press: { readonly pressure: number; readonly turning: Turning },
  swell = 0,
): Excess {
  const elements = rig.front.bed.count;
  const fresh = freshState(rig.brake, rig.brake.drum.radiusNew, elements);
  const on = bareRig(rig);
  const touch = (s: Partial<BrakeState>): number =>
    balance(
      on,
      { ...state, condition: SOUND, tooth: 0, leverOffStop: 0, ...s },
      { pressure: TOUCH, turning: press.turning },
    ).separation;
  const built = { wear: fresh.wear, drumRadius: fresh.drumRadius, temperature: AIR };
  const asBuilt = touch(built);
  const worn = touch({ temperature: AIR });
  const room = { ...state, drumRadius: state.drumRadius - swell };
  const hot = touch({ drumRadius: room.drumRadius });
  const wider = touch({ temperature: AIR, drumRadius: state.drumRadius + BORE });
  const drum = ((wider - worn) / BORE) * (state.drumRadius - fresh.drumRadius);
  const { separation } = balance(rig, room, press);
  const zero = strutLength(rig.brake, 0);
  const here = strutLength(rig.brake, state.tooth);
  return {
    gap: asBuilt - zero,
    linings: worn - asBuilt - drum,
    drum,
    growth: hot - worn,
    elasticity: separation - hot,
    takenUp: here - zero,
    sensed: separation - here,
    needed: playToStep(rig.brake, state),
  };
}
