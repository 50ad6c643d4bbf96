import * as v from 'valibot';
import type { Films } from '../brake/films.ts';
import { JOULE } from '../units/units.ts';
import { LONG, num, part, size, words } from './parts.ts';

/** µm to mm. */
export const MICRON = 1e-3;

/**
 * Weak: no published figure was found of how thick a film has to be. Water as thick as a worn lining is rough;
 * a night's rust of 1 to 5 µm, gone in the first stops, gives the rate.
 */
const USUAL = 'weak: worked out from how soon wet and rusted brakes are as before';

/** Films on the rubbing faces. */
export const filmsPart = part('Films of water, rust and glaze, and how they go', {
  water: v.optional(
    part('Water on the drum', {
      full: v.optional(size('Thickness from which it counts whole', 'µm', 1000), 20),
    }),
    {},
  ),
  rust: v.optional(
    part('Rust on the drum', {
      full: v.optional(size('Thickness from which it counts whole', 'µm', 1000), 1),
      wearRate: v.optional(size('Archard coefficient of the rust', 'mm²/N', 1e-3), 1e-6),
    }),
    {},
  ),
  glaze: v.optional(
    part('Glaze of the linings; it neither comes nor goes when left out', {
      above: num('Drum hotter than this', '°C', 0, 1000),
      below: size('Lining pressed less than this, mean', 'MPa', 100),
      energy: size('Energy braked so that makes it whole', 'J', 1e9),
      depth: size('Depth worn off a lining that takes it away', 'µm', 1000),
    }),
  ),
  source: v.optional(words('Where these numbers come from', LONG), USUAL),
});

export const toFilms = (f: v.InferOutput<typeof filmsPart>): Films => ({
  water: { full: f.water.full * MICRON },
  rust: { full: f.rust.full * MICRON, wearRate: f.rust.wearRate },
  glaze: f.glaze
    ? { ...f.glaze, energy: f.glaze.energy * JOULE, depth: f.glaze.depth * MICRON }
    : null,
  source: f.source,
});
