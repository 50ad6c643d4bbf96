import type { WheelBrake } from '../../../sim/index.ts';
import type { Observed } from '../../../sim/workshop/index.ts';
import { bending, rigOfBrake } from '../../record/derive.ts';
import { Rebeds } from '../../record/rebeds.ts';
import { vanBrake, vanRig, vanState } from './van.ts';

/** The van as the workshop's checks meet it, and the same under rigid shoes where its own bend. */
export interface Van {
  readonly own: WheelBrake;
  /** Null where its shoes are rigid anyway. */
  readonly rigid: WheelBrake | null;
}

/** The sound van in its standing states, under rigid shoes and under ones that bend. */
export class Vans {
  readonly #rebeds: Rebeds;

  /** @param tell is called when a state is bedded in */
  constructor(tell: () => void) {
    this.#rebeds = new Rebeds(tell);
  }

  /** The van in a standing state, its shoes rigid. */
  rigid(standing: string): Van {
    return { own: { rig: vanRig(), state: vanState(standing) }, rigid: null };
  }

  /** Its shoes bending; null while the linings are bedded in. */
  bending(standing: string): Van | null {
    const { own: rigid } = this.rigid(standing);
    const rig = rigOfBrake(bending(vanBrake()));
    const state = this.#rebeds.of(rig, rigid.state);
    return state && { own: { rig, state }, rigid };
  }
}

/** Of all that a check finds, what has the names of a list; all of it where none has. */
export function sameNames(list: readonly Observed[], all: readonly Observed[]): Observed[] {
  const same = all.filter((f) => list.some((l) => l.name === f.name));
  return same.length > 0 ? same : [...all];
}
