import { tableAt } from '../math/table.ts';
import { type FilmShares, filmFactor } from './film.ts';
import { type Surface, surfaceFactor } from './surface.ts';
import type { Brake, Side } from './types.ts';

/** What warmth does to a brake: its bore grows, its friction changes; the shoes stay cold. */

/** Temperature at which drum and linings have their written sizes, °C. */
export const ROOM = 20;

/**
 * Inner radius of a drum at a temperature, mm: linear expansion of a ring, r·(1 + α·Δϑ).
 *
 * @param radius of the cold drum, mm; @param temperature °C
 */
export const boreAt = (brake: Brake, radius: number, temperature: number): number =>
  radius * (1 + brake.drum.expansion * (temperature - ROOM));

/**
 * Friction of a lining at a drum's temperature, °C: its own, times the scene's tables of heat and surface, and
 * what films on it count.
 */
export const frictionAt = (
  brake: Brake,
  side: Side,
  surface: Surface,
  temperature: number,
  films?: FilmShares,
): number =>
  brake.shoes[side].lining.friction *
  (tableAt(brake.frictionTable, temperature) *
    surfaceFactor(brake.surfaces, surface, temperature)) *
  (films ? filmFactor(brake, side, films, temperature) : 1);
