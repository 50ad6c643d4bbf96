import { PI } from '../units/units.ts';
import type { Film } from './films.ts';
import { surfaceFactor } from './surface.ts';
import type { Brake, Side } from './types.ts';

/** How much of each film counts, 0..1. */
export type FilmShares = Film;

/** Water: density, tonne/mm³; heat to boil it away from 20 °C, N·mm/tonne: 80 K·4.187 + 2 257 J/g (steam tables). */
const DENSITY = 1e-9;
const BOILED = (80 * 4.187 + 2257) * 1e9;

const track = (brake: Brake): number =>
  2 *
  PI *
  brake.drum.radiusNew *
  Math.max(brake.shoes.front.lining.width, brake.shoes.rear.lining.width);

/** Energy that dries each mm of water on the track, N·mm/mm: ρ·A·(c·80 K + L). What flings off is left out. */
export const dryingEnergy = (brake: Brake): number => DENSITY * track(brake) * BOILED;

/**
 * Energy that rubs off each mm of rust, N·mm/mm: V = k_r·N·s (Archard) and E = mu·N·s give E = V·mu/k_r, with
 * the linings' mean friction.
 */
export function rustEnergy(brake: Brake): number {
  const { front, rear } = brake.shoes;
  const mu = (front.lining.friction + rear.lining.friction) / 2;
  return (track(brake) * mu) / brake.films.rust.wearRate;
}

/** Shares that count of films as they lie. */
export const filmShares = ({ films }: Brake, f: Film): FilmShares => ({
  water: Math.min(1, f.water / films.water.full),
  rust: Math.min(1, f.rust / films.rust.full),
  glaze: f.glaze,
});

/** What is left of a film, and the mean share that counted while it went. */
function going(thick: number, full: number, perMm: number, energy: number): [number, number] {
  const share = (x: number): number => Math.min(1, x / full);
  if (!(energy > 0)) return [thick, share(thick)];
  const left = Math.max(0, thick - energy / perMm);
  // ∫ min(1, x/full) dx
  const sum = (x: number): number => (x < full ? (x * x) / (2 * full) : x - full / 2);
  return [left, ((sum(thick) - sum(left)) * perMm) / energy];
}

/** One press of an energy, N·mm: the films after it, and the mean shares over its energy. */
export function rubbedOff(
  brake: Brake,
  f: Film,
  energy: number,
): { readonly film: Film; readonly mean: FilmShares } {
  const { water, rust } = brake.films;
  const [wetter, wet] = going(f.water, water.full, dryingEnergy(brake), energy);
  const [rustier, rusty] = going(f.rust, rust.full, rustEnergy(brake), energy);
  return {
    film: { water: wetter, rust: rustier, glaze: f.glaze },
    mean: { water: wet, rust: rusty, glaze: f.glaze },
  };
}

/** Glaze of a lining after a press. @param hot energy braked above the glaze's temperature, N·mm; @param pressure its mean, MPa; @param worn mean depth worn off it, mm */
export function glazedBy(
  { films: { glaze } }: Brake,
  before: number,
  hot: number,
  pressure: number,
  worn: number,
): number {
  if (!glaze) return before;
  const comes = pressure < glaze.below ? hot / glaze.energy : 0;
  return Math.min(1, Math.max(0, before + comes - worn / glaze.depth));
}

/** Nothing on the faces. */
export const BARE: Film = { water: 0, rust: 0, glaze: { front: 0, rear: 0 } };

/** The film, or undefined where there is none. */
export const filmOrNone = (f: Film): Film | undefined =>
  f.water > 0 || f.rust > 0 || f.glaze.front > 0 || f.glaze.rear > 0 ? f : undefined;

/** What films make of a lining's friction at a temperature, °C: each its surface's factor, as far as it counts. */
export function filmFactor(
  { surfaces }: Brake,
  side: Side,
  shares: FilmShares,
  temperature: number,
): number {
  const mixed = (surface: 'wet' | 'damp' | 'glazed', share: number): number =>
    1 + share * (surfaceFactor(surfaces, surface, temperature) - 1);
  return (
    mixed('wet', shares.water) * mixed('damp', shares.rust) * mixed('glazed', shares.glaze[side])
  );
}
