import type { Arrow } from '../instant.ts';
import { makePlaced, place } from '../place.ts';
import type { Acting, Force, Hand, Placed, Rig, Spot, Work } from '../types.ts';
import { addBend, book } from './sums.ts';

/** A hand's pull at a place: force on the part, N, its tangent dF/dp (symmetric, N/mm), and stored energy, N·mm. */
export interface Pull {
  x: number;
  y: number;
  xx: number;
  xy: number;
  yy: number;
  energy: number;
}

export const makePull = (): Pull => ({
  x: 0,
  y: 0,
  xx: 0,
  xy: 0,
  yy: 0,
  energy: 0,
});

/**
 * A hand h on a place p, d = |h − p|, u = (h − p)/d. A soft spring up to what a hand can:
 *   F = k(h − p) while k·d ≤ limit, else limit·u
 *   dF/dp = −k·1, beyond −(limit/d)(1 − u uᵀ)
 * (Hooke's law; the derivative of the unit vector u in p is −(1 − u uᵀ)/d, any text on vector calculus). The
 * energy is k d²/2, beyond limit·d − limit²/2k, so that F = −dE/dp and nothing jumps where it grows no more.
 */
export function pullOf(hand: Hand, x: number, y: number, out: Pull): Pull {
  const dx = hand.to[0] - x;
  const dy = hand.to[1] - y;
  const d = Math.sqrt(dx * dx + dy * dy);
  const { rate, limit } = hand;
  if (rate * d <= limit) {
    out.x = rate * dx;
    out.y = rate * dy;
    out.xx = -rate;
    out.xy = 0;
    out.yy = -rate;
    out.energy = (rate * d * d) / 2;
    return out;
  }
  const ux = dx / d;
  const uy = dy / d;
  const round = limit / d;
  out.x = limit * ux;
  out.y = limit * uy;
  out.xx = -round * (1 - ux * ux);
  out.xy = round * ux * uy;
  out.yy = -round * (1 - uy * uy);
  out.energy = limit * d - (limit * limit) / (2 * rate);
  return out;
}

/** One hand as the element knows it: the spots that its place is made of, and their shares. */
interface Grip {
  readonly hand: Hand;
  readonly spots: readonly {
    readonly spot: Spot;
    readonly share: number;
    readonly side: 0 | 1;
  }[];
  readonly placed: readonly Placed[];
  /** How each freedom moves the held place. */
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  readonly pull: Pull;
}

/**
 * Where along the strut a hand holds: the strut lies clamped between its seats, so its place is between theirs in
 * fixed shares (lever law), and so is the force that it hands on to them.
 */
function alongStrut(rig: Rig, at: Hand['at']): number {
  const a = rig.brake.shoes.front.strutSeat;
  const b = rig.brake.shoes.rear.strutSeat;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const t = ((at[0] - a[0]) * dx + (at[1] - a[1]) * dy) / (dx * dx + dy * dy);
  return Math.max(0, Math.min(1, t));
}

function gripOf(rig: Rig, hand: Hand): Grip | null {
  const { on, at } = hand;
  const spots = (): Grip['spots'] => {
    if (on === 'strut') {
      const share = alongStrut(rig, at);
      return [
        { spot: rig.front.seat, share: 1 - share, side: 0 },
        { spot: rig.rear.seat, share, side: 1 },
      ];
    }
    // A piston takes its hand itself: it need not be at its toe.
    if (on === 'front piston' || on === 'rear piston') return [];
    return [{ spot: rig.spotOn(on, at), share: 1, side: on === 'front' ? 0 : 1 }];
  };
  const all = spots();
  if (all.length === 0) return null;
  const placed = all.map(() => makePlaced(rig.n));
  const [only] = placed;
  const own = all.length > 1 || !only;
  return {
    hand,
    spots: all,
    placed,
    dx: own ? new Float64Array(rig.n) : only.dx,
    dy: own ? new Float64Array(rig.n) : only.dy,
    pull: makePull(),
  };
}

/** Between two spots a place moves by their shares; on one, as it does. */
function moveBy({ spots, placed, dx, dy }: Grip): void {
  if (spots.length === 1) return;
  for (let j = 0; j < dx.length; j++) {
    let x = 0;
    let y = 0;
    for (let i = 0; i < spots.length; i++) {
      const share = spots[i]?.share as number;
      const p = placed[i] as Placed;
      x += share * (p.dx[j] as number);
      y += share * (p.dy[j] as number);
    }
    dx[j] = x;
    dy[j] = y;
  }
}

/** All hands on shoes, strut and parking lever. A hand is a force like any other: both solvers meet it here. */
export class Hands implements Force {
  readonly name = 'hand';
  readonly remembers = 0;
  slot = 0;
  readonly #rig: Rig;
  #of: Acting['hands'];
  #grips: readonly Grip[] = [];

  constructor(rig: Rig) {
    this.#rig = rig;
  }

  prepare(): void {}

  add(w: Work, y: Float64Array, { hands }: Acting): void {
    if (hands !== this.#of) {
      this.#of = hands;
      this.#grips = (hands ?? []).flatMap((h) => gripOf(this.#rig, h) ?? []);
    }
    for (let i = 0; i < this.#grips.length; i++) this.#add(w, y, this.#grips[i] as Grip);
  }

  #add(w: Work, y: Float64Array, grip: Grip): void {
    const { hand, spots, placed, pull, dx, dy } = grip;
    const rig = this.#rig;
    let px = 0;
    let py = 0;
    for (let i = 0; i < spots.length; i++) {
      const { spot, share } = spots[i] as Grip['spots'][number];
      const p = place(rig, y, w.turns, spot, placed[i] as Placed);
      px += share * p.x;
      py += share * p.y;
    }
    pullOf(hand, px, py, pull);
    moveBy(grip);
    const { n } = rig;
    const { q, k } = w;
    for (let j = 0; j < n; j++) {
      const xj = dx[j] as number;
      const yj = dy[j] as number;
      if (xj === 0 && yj === 0) continue;
      q[j] = (q[j] as number) + pull.x * xj + pull.y * yj;
      if (!w.slopes) continue;
      // dQ/dy = Jᵀ·dF/dp·J, and the bend of the places below.
      const tx = pull.xx * xj + pull.xy * yj;
      const ty = pull.xy * xj + pull.yy * yj;
      for (let l = 0; l < n; l++) {
        k[j * n + l] = (k[j * n + l] as number) + tx * (dx[l] as number) + ty * (dy[l] as number);
      }
    }
    for (let i = 0; i < spots.length; i++) {
      const { share, side } = spots[i] as Grip['spots'][number];
      addBend(rig, w, placed[i] as Placed, share * pull.x, share * pull.y);
      book(w, side, share * pull.x, share * pull.y);
    }
  }

  arrows(): readonly Arrow[] {
    return this.#grips.flatMap(({ spots, placed, pull }) =>
      spots.map(({ share, side }, i) => {
        const { x, y } = placed[i] as Placed;
        return {
          name: this.name,
          on: side === 0 ? 'front' : 'rear',
          at: [x, y],
          force: [share * pull.x, share * pull.y],
        } as const;
      }),
    );
  }

  energy(): number {
    return this.#grips.reduce((sum, { pull }) => sum + pull.energy, 0);
  }
}
