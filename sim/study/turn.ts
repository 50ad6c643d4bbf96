import { balance } from '../balance/balance.ts';
import { drumRadiusNow } from '../balance/dress.ts';
import type { Press } from '../balance/press.ts';
import type { Rig } from '../balance/rig.ts';
import type { BrakeState } from '../brake/state.ts';
import { cos, sin } from '../math/trig.ts';
import { gapsOf } from '../readings/roles.ts';
import { PI } from '../units/units.ts';

/** One place of the drum in its turn. */
export interface TurnPoint {
  /** rad */
  readonly angle: number;
  /** N·mm against the turning. */
  readonly torque: number;
  readonly frontGap: number;
  readonly rearGap: number;
}

/** Clearance and torque around one turn of the drum: what an off-centre or oval drum does. */
export function aroundTurn(rig: Rig, state: BrakeState, press: Press, places = 72): TurnPoint[] {
  return Array.from({ length: places }, (_, k) => {
    const angle = (2 * PI * k) / places;
    const i = balance(rig, state, { ...press, drumAngle: angle });
    const torque = i.shoes.front.torqueOnDrum + i.shoes.rear.torqueOnDrum;
    return {
      angle,
      torque: -press.turning * torque,
      frontGap: gapsOf(rig.brake.shoes.front, i.shoes.front).centre,
      rearGap: gapsOf(rig.brake.shoes.rear, i.shoes.rear).centre,
    };
  });
}

/** What a two-point gauge reads across the bore at an angle, mm: the oval shows, an offset does not. */
export function boreDiameter(rig: Rig, state: BrakeState, angle: number): number {
  const { oval } = state.condition;
  const c = cos(angle);
  const s = sin(angle);
  return 2 * (drumRadiusNow(rig, state) + oval * (c * c - s * s));
}
