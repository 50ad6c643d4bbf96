import * as v from 'valibot';
import type { HeatOf, Stuff } from '../brake/heat-of.ts';
import { JOULE, KG } from '../units/units.ts';
import { labelWords, sceneHeat as texts } from '../words/en.ts';
import { LONG, num, part, size, words } from './parts.ts';

/**
 * Usual stuffs, from memory: grey iron as handbooks give it near room temperature, and a moulded lining,
 * which scatters twofold from one to the next.
 */
const IRON = { conductivity: 50, density: 7150, specificHeat: 460 };
const MOULDED = { conductivity: 0.5, density: 2000, specificHeat: 1000 };
const USUAL = texts.usual;

/** Specific heat of mild steel near room temperature, J/(kg·K): handbooks, from memory. */
const STEEL = 480;

const stuff = (about: string, usual: typeof IRON) =>
  v.optional(
    part(about, {
      conductivity: v.optional(size(texts.conductivityOfHeat, 'W/(m·K)', 1000), usual.conductivity),
      density: v.optional(size(labelWords.density, 'kg/m³', 30000), usual.density),
      specificHeat: v.optional(size(texts.specificHeat, 'J/(kg·K)', 10000), usual.specificHeat),
    }),
    {},
  );

/** How heat goes through drum, linings and shoes. */
export const heatPart = part(texts.howHeatGoesThroughDrum, {
  drum: stuff(texts.stuffOfTheDrumGrey, IRON),
  lining: stuff(texts.stuffOfTheLiningsA, MOULDED),
  shoes: v.optional(
    part(texts.shoesThatWarmThroughTheir, {
      capacity: v.optional(size(texts.heatCapacityOfBothShoes, 'J/K', 1e6)),
      loss: size(texts.heatThatBothShoesGive, 'W/K', 1e3),
      // Mild steel, from memory (handbooks give 11 to 13).
      expansion: v.optional(num(texts.thermalExpansionOfTheirSteel, '1/K', 0, 1e-4), 12e-6),
      liningExpansion: v.optional(num(texts.thermalExpansionOfTheLinings, '1/K', 0, 1e-3), 0),
    }),
  ),
  source: v.optional(words(texts.whereTheseNumbersComeFrom, LONG), USUAL),
});

type HeatPart = v.InferOutput<typeof heatPart>;

const toStuff = (s: HeatPart['drum']): Stuff => ({
  conductivity: s.conductivity,
  // kg/m³ to tonne/mm³
  density: s.density * KG * 1e-9,
  // J/(kg·K) to N·mm/(tonne·K)
  specificHeat: (s.specificHeat * JOULE) / KG,
});

/** @param mass of both shoes, kg */
export function toHeat(h: HeatPart, mass: number): HeatOf {
  const { shoes } = h;
  return {
    drum: toStuff(h.drum),
    lining: toStuff(h.lining),
    source: h.source,
    shoes: shoes
      ? {
          capacity: (shoes.capacity ?? mass * STEEL) * JOULE,
          loss: shoes.loss * JOULE,
          expansion: shoes.expansion,
          liningExpansion: shoes.liningExpansion,
        }
      : null,
  };
}
