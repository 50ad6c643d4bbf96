import type { BrakeState } from '../../brake/state.ts';
import { studyWorkingTurn as words } from '../../words/en.ts';
import { given } from './term.ts';
import type { Derivations } from './working.ts';

/** mm to µm. */
const MICRON = 1e3;

/** Workings of what lies on the rubbing faces: told as it is, kept press by press (sim/wear/lump.ts). */
export function filmWorkings({ film }: BrakeState): Derivations {
  if (!film) return {};
  const lies = (symbol: string, value: number, unit: string) =>
    [given(symbol, value, unit, words.onTheFaceNow, 'state'), 'given'] as const;
  return {
    waterFilm: lies('h_w', film.water * MICRON, 'µm'),
    rustFilm: lies('h_r', film.rust * MICRON, 'µm'),
    glazeOfFront: lies('z', 100 * film.glaze.front, '%'),
    glazeOfRear: lies('z', 100 * film.glaze.rear, '%'),
  };
}
