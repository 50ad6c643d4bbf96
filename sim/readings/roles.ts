import type { Instant, ShoeInstant } from '../balance/instant.ts';
import type { Shoe, Side, Turning } from '../brake/types.ts';

export type Role = 'leading' | 'trailing';

/**
 * Role of a shoe: the drum drags the leading shoe onto itself. Seen from outside a left-hand wheel
 * the front shoe leads forward; standing still the roles are those of forward travel.
 */
export function roleOf(side: Side, turning: Turning): Role {
  const forward = side === 'front' ? 'leading' : 'trailing';
  if (turning >= 0) return forward;
  return forward === 'leading' ? 'trailing' : 'leading';
}

export interface Gaps {
  readonly toe: number;
  readonly centre: number;
  readonly heel: number;
}

/**
 * Gap of lining to drum at the arc's ends and middle, mm, 0 where it touches. Elements stand half
 * a step inside the ends; the end values go on along a straight line through the last two.
 */
export function gapsOf(shoe: Shoe, s: ShoeInstant): Gaps {
  const n = s.gap.length;
  const at = (i: number) => s.gap[i] as number;
  const first = at(0) + (at(0) - at(1)) / 2;
  const last = at(n - 1) + (at(n - 1) - at(n - 2)) / 2;
  const centre = (at(n / 2 - 1) + at(n / 2)) / 2;
  // The arc runs counter-clockwise: the front shoe's toe is at its start, the rear's at its end.
  const [toe, heel] = shoe.side === 'front' ? [first, last] : [last, first];
  const open = (g: number) => Math.max(0, g);
  return { toe: open(toe), centre: open(centre), heel: open(heel) };
}

/**
 * A clearance at rest, mm: as found; where the linings stand inside the drum, by how much, as a life's chart has it.
 * Squeezed into it they have no gap, or one at the side to which the pair has gone.
 */
export const restGapOf = ({ restGap }: Pick<Instant, 'restGap'>, found: number): number =>
  restGap < 0 ? restGap : found;
