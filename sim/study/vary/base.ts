import type { BrakeState } from '../../brake/state.ts';
import type { Turning } from '../../brake/types.ts';
import type { Scene } from '../../scene/schema.ts';

/** How the brake is worked while one thing is varied. */
export interface Press {
  /** MPa */
  readonly pressure: number;
  readonly turning: Turning;
  /** Pull of the parking cable at the hook, N. */
  readonly cable: number;
}

/** The brake that one thing is varied of: its scene, the state it is in, and how it is pressed. */
export interface Base {
  readonly scene: Scene;
  readonly state: BrakeState;
  readonly press: Press;
  /** Its shoes bend. */
  readonly bending: boolean;
  /** The adjuster does what it does in such a press; else it keeps its tooth. */
  readonly steps: boolean;
}
