import type { BrakeState } from '../brake/state.ts';
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
  const water = 'film − E / (ρ · A · (c · 80 K + L))';
  const rust = 'film − E · k_r / (A · μ)';
  const glaze = 'hot light stops − depth worn';
  return [
    row('waterFilm', 'Water on the drum', film.water * MICRON, 'µm', water),
    row('rustFilm', 'Rust on the drum', film.rust * MICRON, 'µm', rust),
    row('glazeOfFront', 'Front lining glazed', 100 * film.glaze.front, '%', glaze),
    row('glazeOfRear', 'Rear lining glazed', 100 * film.glaze.rear, '%', glaze),
  ];
}
