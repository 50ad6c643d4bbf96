import { type StickForce, stickForce } from '../../contact/stick.ts';

/** What a piston that a hand holds, or held, has about it; travel outward from its place at rest, mm, and N. */
interface About {
  /** Where its toe stands, and where it stood itself. */
  readonly toe: number;
  readonly place: number;
  /** Where the cup's bristle holds; its stiffness, N/mm, and the cup's friction. */
  readonly anchor: number;
  readonly grip: number;
  readonly friction: number;
  /** Push of fluid and centre spring. */
  readonly fluid: number;
  readonly hand: {
    readonly at: number;
    readonly rate: number;
    readonly limit: number;
  } | null;
}

export interface PistonByHand {
  /** How far in the piston goes until it stands against the other one, mm. */
  readonly bottom: number;
  place: number;
  anchor: number;
  /** On the toe, and its slope in the toe's travel. */
  push: number;
  slope: number;
  /** Of the hand on the piston, outward. */
  hand: number;
}

export const makePistonByHand = (bottom: number): PistonByHand => ({
  ...{ bottom, place: 0, anchor: 0, push: 0, slope: 0, hand: 0 },
});

const stick: StickForce = { force: 0, slope: 0, anchor: 0 };

/** Halvings of a place, 20 mm to 1e-14. */
const HALVINGS = 60;

/** What pushes the piston outward at a travel, its cup and its hand with it, N. */
function pushAt(x: number, a: About): number {
  stickForce(x, a.anchor, a.grip, a.friction, stick);
  return a.fluid + stick.force + handAt(x, a);
}

function handAt(x: number, { hand }: About): number {
  if (!hand) return 0;
  return Math.max(-hand.limit, Math.min(hand.limit, hand.rate * (hand.at - x)));
}

/**
 * A piston without mass: on it act fluid and centre spring, the cup's friction (a bristle, stick.ts), a hand
 * h by its spring k up to a limit, and the toe N ≥ 0 (plane statics):
 *
 *   N = p·A + F_spring − F_cup(x) + clamp(k(h − x))
 *
 * At its toe while N > 0. Else off it, at the x where the rest is nought, which falls with x throughout; without a
 * hand it stays where it was left as long as the cup holds it. It can go no farther in than `bottom`.
 */
export function pistonByHand(a: About, out: PistonByHand): PistonByHand {
  const atToe = pushAt(a.toe, a);
  if (atToe > 0) {
    out.push = atToe;
    const { hand } = a;
    const within = hand && Math.abs(hand.rate * (hand.at - a.toe)) < hand.limit;
    out.slope = stick.slope - (within ? hand.rate : 0);
    out.place = a.toe;
  } else {
    out.push = 0;
    out.slope = 0;
    out.place = freePlace(a, Math.min(out.bottom, a.toe));
  }
  stickForce(out.place, a.anchor, a.grip, a.friction, stick);
  out.anchor = stick.anchor;
  out.hand = handAt(out.place, a);
  return out;
}

/** Where it stands off its toe: as near to where it was as the forces let it. */
function freePlace(a: About, bottom: number): number {
  const was = Math.max(bottom, Math.min(a.toe, a.place));
  const there = pushAt(was, a);
  if (there === 0) return was;
  let [low, high] = there > 0 ? [was, a.toe] : [bottom, was];
  if (there < 0 && pushAt(bottom, a) <= 0) return bottom;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (pushAt(middle, a) > 0) low = middle;
    else high = middle;
  }
  return low;
}
