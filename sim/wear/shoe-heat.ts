import { exp } from '../math/exp.ts';

/**
 * Drum and shoes as two lumps of heat: the drum takes the friction, gives heat to the air and, through
 * linings that touch it, to the shoes, which give it to the air in turn (lumped capacities, e.g.
 * F. P. Incropera & D. P. DeWitt, Fundamentals of Heat and Mass Transfer, ch. 5):
 *
 *   C_d dT_d = P − G_d·(T_d − air) − G_in·(T_d − T_s)
 *   C_s dT_s = G_in·(T_d − T_s) − G_out·(T_s − air)
 */
export interface Lumps {
  /** N·mm/K */
  readonly drumCapacity: number;
  readonly shoesCapacity: number;
  /** From drum to shoes, N·mm/s/K: liningConductance while they touch. */
  readonly between: number;
  /** To the air, N·mm/s/K. */
  readonly drumLoss: number;
  readonly shoesLoss: number;
}

/** Temperatures of drum and shoes, °C. */
export interface Warmth {
  readonly drum: number;
  readonly shoes: number;
}

/** What of a lining heat goes through. */
interface Conducting {
  readonly conductivity: number;
  /** mm² */
  readonly area: number;
  /** mm */
  readonly thickness: number;
}

/** Conductance of linings side by side, N·mm/s/K: Σ k·A/t (Fourier's law, a flat plate). */
export const liningConductance = (linings: readonly Conducting[]): number =>
  linings.reduce((sum, l) => sum + (l.conductivity * l.area) / l.thickness, 0);

/** Share of the drum's rise over the air that the shoes come to, drum held: G_in/(G_in + G_out), from dT_s = 0. */
export const shoesShare = ({ between, shoesLoss }: Lumps): number =>
  between > 0 ? between / (between + shoesLoss) : 0;

/** Time constant with which the shoes follow a drum that is held, s: C_s/(G_in + G_out). */
export const shoesTime = ({ shoesCapacity, between, shoesLoss }: Lumps): number =>
  shoesCapacity / (between + shoesLoss);

/** Below this exponent the series of (e^x − 1)/x stands for it: its next term is under 1e-17. */
const SMALL = 1e-3;

/** (e^(l·t) − 1)/l, s: ∫ e^(l·τ) dτ from 0 to t, t itself where l is nothing. */
export function gathered(l: number, t: number): number {
  const x = l * t;
  if (Math.abs(x) < SMALL) {
    return t * (1 + (x / 2) * (1 + (x / 3) * (1 + (x / 4) * (1 + x / 5))));
  }
  return (exp(x) - 1) / l;
}

/**
 * Temperatures after a time of even heating, exact for any time. With x the rises over the air the system is
 * dx/dt = A·x + b, b = (P/C_d, 0), so x = e^(At)·x_0 + ∫ e^(Aτ) dτ·b. For a 2×2 matrix with eigenvalues
 * l1, l2 (E. J. Putzer 1966, American Mathematical Monthly 73) e^(At) = e^(l1·t)·I + c(t)·(A − l1·I) with
 * c = (e^(l1·t) − e^(l2·t))/(l1 − l2), and its integral alike with the integrals of those. Both are real and
 * never above nothing, as A's product of the other diagonal is positive; l1 is taken as det/l2, without
 * cancellation.
 *
 * @param power friction, N·mm/s; @param time s; @param air °C
 */
export function warmedBoth(
  lumps: Lumps,
  now: Warmth,
  power: number,
  time: number,
  air: number,
): Warmth {
  const { drumCapacity, shoesCapacity, between, drumLoss, shoesLoss } = lumps;
  const a = -(drumLoss + between) / drumCapacity;
  const b = between / drumCapacity;
  const c = between / shoesCapacity;
  const d = -(shoesLoss + between) / shoesCapacity;
  const root = Math.sqrt((a - d) * (a - d) + 4 * b * c);
  const fast = (a + d - root) / 2;
  // det = (G_d·G_out + G_in·(G_d + G_out))/(C_d·C_s): nothing is subtracted.
  const det =
    (drumLoss * shoesLoss + between * (drumLoss + shoesLoss)) / (drumCapacity * shoesCapacity);
  const slow = fast < 0 ? det / fast : 0;
  const apart = slow - fast;
  const decay = exp(slow * time);
  const held = gathered(slow, time);
  // Alike only where nothing goes between two lumps of one time constant: then c(t) meets zeros alone.
  const mixed = apart > 0 ? (decay - exp(fast * time)) / apart : 0;
  const mixedHeld = apart > 0 ? (held - gathered(fast, time)) / apart : 0;
  const drum = now.drum - air;
  const shoes = now.shoes - air;
  const heat = power / drumCapacity;
  return {
    drum:
      air +
      decay * drum +
      mixed * ((a - slow) * drum + b * shoes) +
      (held + mixedHeld * (a - slow)) * heat,
    shoes: air + decay * shoes + mixed * (c * drum + (d - slow) * shoes) + mixedHeld * c * heat,
  };
}

/**
 * Part of R·α·ΔT that the middle of a face moves outward when shoes and strut warm and the pins stay with the
 * cold plate. Plane geometry of the quay van's front shoe, strain ε: from its pin (−16, −78) the middle
 * (−100, 0) grows by 84ε outward; the seat (−59.2, 52) grows by 43.2ε and is pushed by the warm strut to
 * 59.2ε, which turns the shoe by (59.2 − 43.2)ε/130, and the middle, 78 over the pin, by 9.6ε more: 0.936.
 */
export const PINS_COLD = 0.94;

/**
 * How far a shoe's face grows outward as it warms, mm: R·α_s·κ·ΔT_shoe of the steel, and t·α_l·ΔT_lining of
 * the lining on it (linear expansion).
 *
 * @param rise of the shoe and of the lining's mean over ROOM, K
 */
export const faceGrowth = (
  radius: number,
  thickness: number,
  expansion: { readonly expansion: number; readonly liningExpansion: number },
  rise: { readonly shoe: number; readonly lining: number },
): number =>
  radius * expansion.expansion * PINS_COLD * rise.shoe +
  thickness * expansion.liningExpansion * rise.lining;
