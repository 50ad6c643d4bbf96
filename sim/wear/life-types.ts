import type { BrakeState } from '../brake/state.ts';
import type { Side } from '../brake/types.ts';

/** What can happen in a life. */
export type LifeEventKind =
  | 'click'
  | 'stepped hot'
  | 'tooth lost'
  | 'teeth used up'
  | 'lining limit'
  | 'rivet contact'
  | 'table contact'
  | 'drum limit'
  | 'piston run-out'
  | 'no balance'
  | 'drag at rest'
  | 'drag ends'
  | 'lever off its stop'
  | 'seized'
  | 'gave way'
  | 'locks';

/** Something that happened in a life, and the brake right after it. */
export interface LifeEvent {
  readonly kind: LifeEventKind;
  /** mm driven. */
  readonly distance: number;
  /** Tooth after it. */
  readonly tooth: number;
  readonly side: Side | null;
  /** Of the drum at a step taken hot, °C; 0 where it does not matter. */
  readonly temperature: number;
  /** What matters to the kind: the way of a click (1, −1), teeth lost, mm of a clearance or of the lever, N·mm of what is seized, N of what gave way; else 0. */
  readonly value: number;
  /** Where a drag begins or ends: torque that turns the drum at rest, N·mm; else 0. */
  readonly torque: number;
  /** The brake right after it: put it on and the moment is there. */
  readonly state: BrakeState;
}

/** One row of the chart strip. A click has two at its distance: before it and after it. */
export interface LifeRow {
  /** mm driven. */
  readonly distance: number;
  readonly at: 'run' | 'before click' | 'after click';
  /**
   * Clearance of the linings' middle at rest, mean of both shoes, mm; negative: drags. The drum cooled
   * down to the air where the duty follows its heat, else as warm as it stands.
   */
  readonly clearance: number;
  /** Thinnest lining left of the front (leading when driven forward) and rear shoe, mm. */
  readonly liningFront: number;
  readonly liningRear: number;
  /** Brake factor after springs at the duty's first kind of stop, forward. */
  readonly brakeFactor: number;
  readonly tooth: number;
  /** Highest of the drum since the row before, °C. */
  readonly temperature: number;
  /** mm at the pedal for that press. */
  readonly pedalTravel: number;
  /** Cold inner radius of the drum where it is swept, mm. */
  readonly drumRadius: number;
  /** Step from the swept face to the unworn edge, mm on radius. */
  readonly lip: number;
  /**
   * Of the released brake: torque that turns the drum at rest, N·mm, as cold as the clearance is told, and the
   * power that went into the drum on the way to the last press, N·mm/s. Nothing while it is free.
   */
  readonly drag: { readonly torque: number; readonly power: number };
  readonly state: BrakeState;
}

/** How far a life is driven, and how finely. */
export interface LifeOptions {
  /** Stop right after the first press that steps the adjuster, the one before driving off included. */
  readonly toNextClick?: boolean;
  /** Drive to this distance, mm from new; as far as a limit when left out. */
  readonly distance?: number;
  /** End at the first lining or drum limit (true when left out); else at rivets, table, run-out or distance. */
  readonly stopAtLimit?: boolean;
  /** Every stop on its own instead of lumps. */
  readonly oneByOne?: boolean;
  /** Deepest wear of one lump, mm. */
  readonly lump?: number;
  /** Least distance between two rows beside the clicks, mm. */
  readonly rowEvery?: number;
  /** Temperature of the air, °C. */
  readonly air?: number;
  /** Ask whether a shoe locks, before driving off (true when left out). */
  readonly askLocks?: boolean;
}

/** Why a life is over. */
export type LifeEnd =
  | 'distance'
  | 'lining limit'
  | 'drum limit'
  | 'worn through'
  | 'click'
  | 'piston run-out'
  | 'no balance'
  | 'seized'
  | 'gave way'
  | 'locks';

/**
 * A life that can be driven on piece by piece: a worker calls `advance`, tells what is new, looks
 * whether it was cancelled, and goes on. The outcome does not depend on the pieces.
 */
export interface Life {
  readonly done: boolean;
  /** Null while it is not. */
  readonly end: LifeEnd | null;
  /** mm driven. */
  readonly distance: number;
  /** Share of the way, 0..1: to the distance, or to the limit by what is worn. */
  readonly progress: number;
  readonly rows: readonly LifeRow[];
  readonly events: readonly LifeEvent[];
  /** The brake as it stands. */
  state(): BrakeState;
  /** Drives on by at least this distance, mm, to the end of a lump; less when the life ends. */
  advance(distance: number): void;
}
