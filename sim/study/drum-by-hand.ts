import type { Brake, Side } from '../brake/types.ts';
import { shoeHeldDown } from './lip-force.ts';
import type { Removal } from './removal.ts';

/** A hand that pulls the drum off its studs, or at one side of its rim so that it rocks. */
export interface DrumPull {
  /** How far the hand has gone, mm; its spring, N/mm, and the most it pulls, N. */
  readonly way: number;
  readonly rate: number;
  readonly limit: number;
  /** Null: straight, with the middle. A side: at the rim there, and the other side is what it turns about. */
  readonly at: Side | null;
}

/** The drum in that hand. */
export interface DrumInHand {
  /** How far it has come, mm: all of it, or the side that is pulled. */
  readonly slid: number;
  /** What the hand feels, and what of it the lip bears, N. */
  readonly pull: number;
  readonly lip: number;
  /** How far each shoe that is caught has come off its pads, mm. */
  readonly give: number;
  /** It has come off: out by the width of the linings, which nothing caught. */
  readonly off: boolean;
}

/**
 * Where drum and hand balance, by statics along the axle. The hand pulls F = k(w − x), at most its limit. Against it:
 * - linings that rub as they press: μΣN, all of it, since along the axle nothing else slides (Coulomb); rust, whatever is
 *   pulled;
 * - from the lip's way on, the shoes that it catches: each is held on its pads by its hold-down, with its preload F₀ before
 *   it moves, then F₀ + c·g, up to solid coils (lip-force.ts, whose preload and rate these are).
 *
 * Pulled straight the caught shoes share it. At one side of the rim the drum turns about the other, so by moments about
 * there the shoe of that side has the whole pull (both at the rim's radius), and the linings' rub half as far: half.
 */
export function drumInHand(brake: Brake, now: Removal, hand: DrumPull): DrumInHand {
  const { way, rate, limit, at } = hand;
  const { lipGap } = brake.across;
  const caught = (['front', 'rear'] as const).filter((side) => now.fit[side].greatest > 0);
  const held = at === null ? caught : caught.filter((side) => side === at);
  const full = Math.min(limit, rate * way);
  const stuck = now.signs.slides === 'not at all';
  const rub = at === null ? now.rub : now.rub / 2;
  // Nothing moves before the pull beats what rubs; rust and a bond take whatever a hand gives.
  if (stuck || full <= rub) return { slid: 0, pull: full, lip: 0, give: 0, off: false };
  const free = Math.min(way, way - rub / rate);
  if (free <= lipGap || held.length === 0) {
    const slid = Math.max(0, free);
    const off = caught.length === 0 && at === null && slid > brake.shoes.front.lining.width;
    return { slid, pull: Math.min(limit, rub), lip: 0, give: 0, off };
  }
  // At the lip: k(w − gap − g) = rub + n(F₀ + c·g), each of them as far as the hand and the coils go.
  const { preload, rate: coil, travel } = shoeHeldDown(brake);
  const n = held.length;
  const asked = (rate * (way - lipGap) - rub - n * preload) / (rate + n * coil);
  const most = (limit - rub - n * preload) / (n * coil);
  const give = Math.max(0, Math.min(asked, most, travel));
  const slid = lipGap + give;
  const pull = Math.min(limit, rate * (way - slid));
  return { slid, pull, lip: pull - rub, give, off: false };
}
