import type { BrakeState } from '../brake/state.ts';

/**
 * The worn shoes put in each other's place: each lining's toe end stays its toe end, and the arcs of
 * the two sides run opposite ways (a mirror brake; with unlike shoes the depths alone are swapped).
 */
export function swapShoes(state: BrakeState): BrakeState {
  const { front, rear } = state.wear;
  return { ...state, wear: { front: rear.slice().reverse(), rear: front.slice().reverse() } };
}
