import { pressureFactor, type Rubbing, speedFactor } from '../brake/rubbing.ts';
import type { Rig, ShoeRig } from './types.ts';

/** Friction of both linings. */
export interface Mus {
  readonly front: number;
  readonly rear: number;
}

/**
 * Mean pressure of the last evaluation on a lining, MPa: all that presses on it over its whole new face. One
 * pressure a lining, so one friction a lining, as the contact law has it.
 */
export function meanPressure({ brake }: Rig, { shoe, rub }: ShoeRig): number {
  const { lining } = shoe;
  let sum = 0;
  for (const n of rub.normal) sum += n;
  return sum / (lining.width * brake.drum.radiusNew * (lining.to - lining.from));
}

/** Friction of both linings at a speed of the vehicle, mm/s; as it is where none is named or the drum stands. */
export function atSpeed(law: Rubbing, base: Mus, speed: number | undefined): Mus {
  if (speed === undefined) return base;
  const factor = speedFactor(law, speed);
  return { front: base.front * factor, rear: base.rear * factor };
}

/** Friction that is found to this share of itself, beyond what a solve leaves over. */
const FOUND = 1e-9;
const ROUNDS = 60;
/**
 * Slopes of (asked − taken) against taken between which a secant is believed. It is −1 + (a − 1)·d ln p/d ln mu:
 * −1 where friction leaves the pressure alone; steeper on a shoe that helps itself with a below 1, flatter with
 * a above 1. At nothing and above it, pressure and friction drive each other up.
 */
const STEEPEST = -8;
const FLATTEST = -0.1;

/** One lining's friction on its way. */
interface Seeking {
  readonly shoe: ShoeRig;
  readonly base: number;
  mu: number;
  before: number;
  /** asked − taken of the time before; NaN: there was none. */
  off: number;
}

/**
 * Finds the friction of both linings together with the balance: a solve gives each a mean pressure, that
 * pressure a friction, until the one asked for is the one solved with (fixed point, by a secant for each
 * lining; the linings hang on each other through springs and strut alone).
 *
 * @param base friction at the law's pressure, at the present speed
 * @param solve solves with such frictions and leaves the linings' forces in the rig
 * @returns false when it was not found: pressure and friction drive each other up
 */
export function settleFriction(
  rig: Rig,
  law: Rubbing,
  base: Mus,
  solve: (mus: Mus) => void,
): boolean {
  const seek = (shoe: ShoeRig): Seeking => {
    const mu = base[shoe.side];
    return { shoe, base: mu, mu, before: mu, off: Number.NaN };
  };
  const front = seek(rig.front);
  const rear = seek(rig.rear);
  for (let i = 0; i < ROUNDS; i++) {
    solve({ front: front.mu, rear: rear.mu });
    // Both have to be moved on, whichever is found.
    const found = [front, rear].map((s) => movedOn(rig, law, s));
    if (found.every((f) => f)) return true;
  }
  return false;
}

/** Takes the next friction; true when the last was already the one asked for. */
function movedOn(rig: Rig, law: Rubbing, s: Seeking): boolean {
  const asked = s.base * pressureFactor(law, meanPressure(rig, s.shoe));
  const off = asked - s.mu;
  if (!(Math.abs(off) > FOUND * s.mu)) return true;
  const slope = (off - s.off) / (s.mu - s.before);
  const believed = Number.isFinite(slope) ? Math.min(FLATTEST, Math.max(STEEPEST, slope)) : -1;
  s.before = s.mu;
  s.off = off;
  s.mu -= off / believed;
  return false;
}
