import * as v from 'valibot';
import type { Films } from '../brake/films.ts';
import { JOULE } from '../units/units.ts';
import { sceneFilms as texts } from '../words/en.ts';
import { LONG, num, part, size, words } from './parts.ts';

/** µm to mm. */
export const MICRON = 1e-3;

/**
 * Weak: no published figure was found of how thick a film has to be. Water as thick as a worn lining is rough;
 * a night's rust of 1 to 5 µm, gone in the first stops, gives the rate.
 */
const USUAL = texts.usual;

/** Films on the rubbing faces. */
export const filmsPart = part(texts.filmsOfWaterRustAnd, {
  water: v.optional(
    part(texts.waterOnTheDrum, {
      full: v.optional(size(texts.thicknessFromWhichItCounts, 'µm', 1000), 20),
    }),
    {},
  ),
  rust: v.optional(
    part(texts.rustOnTheDrum, {
      full: v.optional(size(texts.thicknessFromWhichItCounts, 'µm', 1000), 1),
      wearRate: v.optional(size(texts.archardCoefficientOfTheRust, 'mm²/N', 1e-3), 1e-6),
    }),
    {},
  ),
  glaze: v.optional(
    part(texts.glazeOfTheLiningsIt, {
      above: num(texts.drumHotterThanThis, '°C', 0, 1000),
      below: size(texts.liningPressedLessThanThis, 'MPa', 100),
      energy: size(texts.energyBrakedSoThatMakes, 'J', 1e9),
      depth: size(texts.depthWornOffALining, 'µm', 1000),
    }),
  ),
  source: v.optional(words(texts.whereTheseNumbersComeFrom, LONG), USUAL),
});

export const toFilms = (f: v.InferOutput<typeof filmsPart>): Films => ({
  water: { full: f.water.full * MICRON },
  rust: { full: f.rust.full * MICRON, wearRate: f.rust.wearRate },
  glaze: f.glaze
    ? { ...f.glaze, energy: f.glaze.energy * JOULE, depth: f.glaze.depth * MICRON }
    : null,
  source: f.source,
});
