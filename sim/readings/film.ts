import type { BrakeState } from '../brake/state.ts';
import { readingFormulas as formulas, readingNames as names } from '../words/en.ts';
import type { Reading } from './reading.ts';

/** mm to µm. */
const MICRON = 1e3;

/** What lies on the rubbing faces; nothing to read where they are bare. */
export function filmReadings({ film }: BrakeState): Reading[] {
  if (!film) return [];
  const row = (
    key: Reading['key'],
    name: string,
    value: number,
    unit: string,
    formula: string,
  ): Reading => ({ key, name, symbol: '', value, unit, digits: unit === '%' ? 0 : 1, formula });
  const water = formulas.water;
  const rust = formulas.rust;
  const glaze = formulas.glaze;
  return [
    row('waterFilm', names.waterOnDrum, film.water * MICRON, 'µm', water),
    row('rustFilm', names.rustOnDrum, film.rust * MICRON, 'µm', rust),
    row('glazeOfFront', names.frontGlazed, 100 * film.glaze.front, '%', glaze),
    row('glazeOfRear', names.rearGlazed, 100 * film.glaze.rear, '%', glaze),
  ];
}
