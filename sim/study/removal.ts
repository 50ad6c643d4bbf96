import { balance, rest } from '../balance/balance.ts';
import { dress } from '../balance/dress.ts';
import { isTold } from '../balance/instant.ts';
import type { Rig } from '../balance/rig.ts';
import { usualPressure } from '../brake/duty.ts';
import type { BrakeState, Condition } from '../brake/state.ts';
import { type BackOff, type LipFit, lipFit, teethToBackOff } from './lip.ts';
import { HAND_PULL, lipForce } from './lip-force.ts';

/** What holds a drum besides the brake's state: set by hand, nothing of it wears or is remembered. */
export interface Held {
  /** Rust between the drum's bore and the hub's spigot. */
  readonly hubRust: boolean;
  /** Linings rusted on to the bore, shoes not home. */
  readonly liningsRusted: boolean;
  /** The pair of shoes stands off centre towards the front shoe by this much, mm. */
  readonly aside: number;
}

export const UNHELD: Held = { hubRust: false, liningsRusted: false, aside: 0 };

/** The locks, as they answer each to its own release. */
export type Lock = ForceLock | StandingLock;

/** Forces that are left and press a shoe outward: gone, the shoes go home by themselves. */
export type ForceLock = 'pressure in the line' | 'cable keeps its pull' | 'part leans on a shoe';

export type StandingLock =
  | 'linings rusted on'
  | 'rust at the hub'
  | 'lever off its stop'
  | 'shoes not centred'
  | 'adjuster too far out'
  | 'lip';

export type Turns = 'freely' | 'lightly' | 'stiffly' | 'not at all';
export type Slides = 'not at all' | 'a little' | 'off';

/** What hands feel at the drum. */
export interface Signs {
  readonly turns: Turns;
  /** Torque by hand, each way, N·mm; of the bond while it holds. */
  readonly forward: number;
  readonly backward: number;
  /** It rocks a little on its hub. */
  readonly rocks: boolean;
  readonly slides: Slides;
  /** How far it comes under both hands before it stops, mm. */
  readonly slide: number;
}

export interface Removal {
  /** Null: the drum comes off. */
  readonly heldBy: Lock | null;
  /** All that would hold it, the one felt first in front. */
  readonly locks: readonly Lock[];
  readonly signs: Signs;
  readonly fit: LipFit;
  readonly backOff: BackOff;
  /** Overlap with the lever home, with the shoes centred, no force left, mm; negative: that clears by so much. */
  readonly leverHome: number;
  readonly centred: number;
  /** The adjuster stands further out than it would ever click by itself on a cold drum. */
  readonly tooFar: boolean;
  /** Push that frees the rubbing linings along the axle, N: friction of what presses at rest. */
  readonly rub: number;
}

/** Torque by hand from which a drum is felt to drag, and from which it is stiff, N·mm; from memory. */
export const FELT = 500;
export const STIFF = 30000;
/** Shear strength of rusted-on linings, MPa: after a wet week on the lever; its order, from memory. */
const RUST_SHEAR = 0.1;
/** The table's tolerance at the strut, mm. */
const LATE = 0.02;
/** Overlap under this is a touch, not a hold, mm. */
const TOUCH = 0.0005;

/**
 * Torque that breaks rusted linings loose, N·mm: shear strength × area × radius, both linings over
 * their whole arc. Holds once: broken, it is gone.
 */
export function rustTorque(rig: Rig, state: BrakeState): number {
  const { front, rear } = dress(rig, state);
  let area = 0;
  for (const a of front.area) area += a;
  for (const a of rear.area) area += a;
  return RUST_SHEAR * area * state.drumRadius;
}

/** What both hands turn with the wheel on, N·mm: their pull × the tyre's radius. */
const handTorque = (rig: Rig): number => HAND_PULL * rig.brake.vehicle.tyreRadius;

function turning(
  rig: Rig,
  state: BrakeState,
  fit: LipFit,
): Pick<Signs, 'turns' | 'forward' | 'backward'> {
  const torque = (way: 1 | -1): number => {
    const i = balance(rig, state, { pressure: 0, turning: way });
    if (!isTold(i)) return Number.POSITIVE_INFINITY;
    return Math.abs(i.torqueOnDrum);
  };
  const forward = torque(1);
  const backward = torque(-1);
  const most = Math.max(forward, backward);
  // A drum within its limit is out of round by a quarter of it on the radius, each way from the mean
  // (oval: the limit is on the diameter, twice the radius's swing). A smaller gap brushes once or twice a turn.
  const least = fit.height - fit.greatest;
  const brushes = least < rig.brake.drum.outOfRoundMax / 4;
  const turns: Turns =
    most > handTorque(rig)
      ? 'not at all'
      : most > STIFF
        ? 'stiffly'
        : most > FELT || brushes
          ? 'lightly'
          : 'freely';
  return { turns, forward, backward };
}

/**
 * A tooth drops in only when a press parts the seats by lost motion and one tooth more, so after it
 * the press still parts them by the lost motion. Less than that: set by hand, or stepped on a hot drum.
 */
function tooFarOut(rig: Rig, home: BrakeState): boolean {
  const { adjuster } = rig.brake;
  const pressure = usualPressure(rig.brake);
  const i = balance(rig, home, { pressure, turning: 1 });
  if (!isTold(i)) return false;
  return i.separation - i.strutLength < adjuster.lostMotion - LATE;
}

/** What each force is in a brake's condition, in the order of what letting it go costs. */
const FORCES: Readonly<
  Record<ForceLock, { left(c: Condition): boolean; readonly gone: Partial<Condition> }>
> = {
  'pressure in the line': { left: (c) => c.keptPressure > 0, gone: { keptPressure: 0 } },
  'cable keeps its pull': { left: (c) => c.keptCable > 0, gone: { keptCable: 0 } },
  'part leans on a shoe': {
    left: (c) => c.lean.front > 0 || c.lean.rear > 0,
    gone: { lean: { front: 0, rear: 0 } },
  },
};
const FORCE_LOCKS = Object.keys(FORCES) as ForceLock[];

export const isForceLock = (lock: Lock): lock is ForceLock => lock in FORCES;

/** The brake with one of these forces let go. */
export const letGo = (state: BrakeState, lock: ForceLock): BrakeState => ({
  ...state,
  condition: { ...state.condition, ...FORCES[lock].gone },
});

/** The brake with all of them let go: the same one where there are none. */
export const unforced = (state: BrakeState): BrakeState =>
  FORCE_LOCKS.reduce((s, lock) => (FORCES[lock].left(s.condition) ? letGo(s, lock) : s), state);

/** How the linings stand to lip and bore: overlap where they are caught, mm, and the push that frees them, N. */
function standing(rig: Rig, state: BrakeState, aside: number) {
  const fit = lipFit(rig, state, aside);
  const i = rest(rig, state);
  const { friction } = dress(rig, state);
  const { front, rear } = i.shoes;
  const rub = friction.front * front.normalSum + friction.rear * rear.normalSum;
  const caught = fit.height > TOUCH && fit.greatest > TOUCH;
  return { fit, rub, caught, held: caught || rub > HAND_PULL };
}

/**
 * Forces that hold the drum: let go one after the other, each that lets the linings stand or press less
 * is a lock of its own. They come before teeth, since a shoe that is pushed out follows the drum
 * however short the strut is.
 */
function forceLocks(rig: Rig, state: BrakeState, aside: number): ForceLock[] {
  const out: ForceLock[] = [];
  let now = state;
  for (const lock of FORCE_LOCKS) {
    if (!FORCES[lock].left(now.condition)) continue;
    const here = standing(rig, now, aside);
    if (!here.held) break;
    now = letGo(now, lock);
    const eased = standing(rig, now, aside);
    if (eased.fit.greatest < here.fit.greatest - TOUCH || eased.rub < here.rub / 2) out.push(lock);
  }
  return out;
}

/** How the drum stands on its brake and what keeps it there. */
export function removal(rig: Rig, state: BrakeState, held: Held = UNHELD): Removal {
  const { aside } = held;
  const { fit, rub, caught } = standing(rig, state, aside);
  // What teeth, cable and centring do is asked of the brake that no force is left in.
  const free = unforced(state);
  const home: BrakeState = { ...free, leverOffStop: 0 };
  const after = free === state ? { rub, caught } : standing(rig, free, aside);
  const leverHome = lipFit(rig, home, aside).greatest;
  const centred = lipFit(rig, free).greatest;
  const backOff = teethToBackOff(rig, free, aside);
  const tooFar = tooFarOut(rig, home);

  const locks: Lock[] = [];
  if (held.liningsRusted) locks.push('linings rusted on');
  if (held.hubRust) locks.push('rust at the hub');
  locks.push(...forceLocks(rig, state, aside));
  if (after.caught || after.rub > HAND_PULL) {
    const off = state.leverOffStop > 0;
    // One release that is enough names the lock; else the lip, whatever else would help.
    if (off && (after.caught ? leverHome <= TOUCH : true)) locks.push('lever off its stop');
    else if (after.caught && aside !== 0 && centred <= TOUCH) locks.push('shoes not centred');
    else if (tooFar || !after.caught) locks.push('adjuster too far out');
    else locks.push('lip');
  }

  const turns = turning(rig, state, fit);
  const stuck = held.liningsRusted;
  const bond = rustTorque(rig, state);
  const { lipGap } = rig.brake.across;
  const hard = rub > HAND_PULL;
  const slides: Slides = stuck || held.hubRust || hard ? 'not at all' : caught ? 'a little' : 'off';
  return {
    heldBy: locks[0] ?? null,
    locks,
    signs: {
      turns: stuck ? 'not at all' : turns.turns,
      forward: stuck ? bond : turns.forward,
      backward: stuck ? bond : turns.backward,
      rocks: !stuck && !held.hubRust && !hard,
      slides,
      slide: slides === 'a little' ? lipGap + lipForce(rig.brake, fit, HAND_PULL).give : 0,
    },
    fit,
    backOff,
    leverHome,
    centred,
    tooFar,
    rub,
  };
}

/**
 * Force of a screw in a threaded hole of the drum, N: T / (0.2·d), torque over a nut factor of 0.2
 * for dry steel times the thread (common practice, e.g. Shigley, Mechanical Engineering Design,
 * section 8-8). Two of them press the drum off its hub evenly.
 */
export const jackScrew = (torque: number, diameter: number): number => torque / (0.2 * diameter);
