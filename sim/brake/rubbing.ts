import { pow } from '../math/pow.ts';

/**
 * Friction that hangs on pressure and speed as well: F = K·P^a·V^b (S. K. Rhee, SAE paper 740415, 1974), so
 * mu = F/P goes with (P/P0)^(a − 1)·(V/V0)^b. Measured exponents lie between 0.80 and 1.25 for a and −0.25
 * and +0.25 for b, by lining and temperature (same paper, abstract).
 */
export interface Rubbing {
  /** a */
  readonly pressureExponent: number;
  /** b */
  readonly speedExponent: number;
  /** Mean pressure of a lining, MPa, and speed of the vehicle, mm/s, at which its friction is the one written down. */
  readonly atPressure: number;
  readonly atSpeed: number;
  readonly source: string;
}

/**
 * The law is kept level below a tenth and above ten times where it is told: linings are measured over about
 * that range, and a power of nothing would be without end (own choice).
 */
const WIDEST = 10;

const within = (ratio: number): number => Math.min(WIDEST, Math.max(1 / WIDEST, ratio));

/** What a lining's mean pressure makes of its friction. @param pressure MPa */
export const pressureFactor = (law: Rubbing, pressure: number): number =>
  pow(within(pressure / law.atPressure), law.pressureExponent - 1);

/**
 * What the sliding speed makes of it. Sliding goes with the vehicle's speed, so their ratio is the same.
 *
 * @param speed of the vehicle, mm/s
 */
export const speedFactor = (law: Rubbing, speed: number): number =>
  pow(within(speed / law.atSpeed), law.speedExponent);

/** Most that the law makes of a friction, anywhere. */
export const mostFactor = (law: Pick<Rubbing, 'pressureExponent' | 'speedExponent'>): number =>
  pow(WIDEST, Math.abs(law.pressureExponent - 1) + Math.abs(law.speedExponent));
