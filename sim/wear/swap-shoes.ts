import type { BrakeState } from '../brake/state.ts';

/**
 * The worn shoes put in each other's place: each lining's toe end stays its toe end, and the arcs of
 * the two sides run opposite ways (a mirror brake; with unlike shoes the depths alone are swapped). Glaze goes with its shoe.
 */
export function swapShoes(state: BrakeState): BrakeState {
  const { front, rear } = state.wear;
  const wear = { front: rear.slice().reverse(), rear: front.slice().reverse() };
  const { film } = state;
  if (!film) return { ...state, wear };
  const glaze = { front: film.glaze.rear, rear: film.glaze.front };
  return { ...state, wear, film: { ...film, glaze } };
}
