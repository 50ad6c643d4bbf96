import type { Instant } from '../balance/instant.ts';
import type { Brake, Side } from '../brake/types.ts';
import { cos } from '../math/trig.ts';

/**
 * Tilt of a shoe about its long axis, seen along the plate: what the view from outside cannot show.
 *
 * The shoe stands on its edge like a stool on three pads of the plate: one at the middle of the
 * table, one near each end. The return springs lie on the outer face of the web, while strut and
 * anchor answer in its middle plane: a couple M = F·e that lifts the middle off its pad, about the
 * line through the end pads. A spring is a body of two forces: its pull goes through the places where
 * its hooks bear, and those are in the walls of the webs' holes. So wherever its coils lie, the arm is
 * half the web's thickness at most, the hole's outer edge; that is taken. The hold-down's spring presses
 * between, at the arm a from that line:
 *
 *   H·a = F·e,  H = H₀ + k·a·θ   (moments about the long axis; plane statics, any text)
 *
 * Below H₀·a the shoe stays on all three. Past it the spring gives, θ = (F·e/a − H₀)/(k·a), until
 * the ends run up against their guides (the piston's slot, the keeper). With the hold-down lost
 * nothing but those guides holds. Pads worn hollow at the ends let the ends sink in by the depth.
 */

/** Friction of a greased pad and of the hold-down's cup on steel; common practice. */
const PAD_FRICTION = 0.15;
/** Play of toe and heel in their guides along the axle, mm; from memory. */
const GUIDE_PLAY = 0.8;
/** Wire of a return spring: it is drawn half of it beside the face of the web, mm; common practice. */
const WIRE = 2.8;

export interface TiltCause {
  readonly holdDown: 'fitted' | 'lost';
  /** Depth worn into the end pads, mm. */
  readonly groove: number;
}

export const UPRIGHT: TiltCause = { holdDown: 'fitted', groove: 0 };

export interface Tilt {
  /** Of the return springs on this shoe, towards the other one, N. */
  readonly pull: number;
  /** Arm of that pull about the web's middle plane, and where the springs' wire lies beside it, mm. */
  readonly beside: number;
  readonly wire: number;
  /** Of that pull about the long axis, N·mm. */
  readonly moment: number;
  /** Force of the hold-down's spring now, N, and its arm about the end pads, mm. */
  readonly holdDown: number;
  readonly arm: number;
  /** What the hold-down can answer before the shoe leaves its middle pad, N·mm. */
  readonly righting: number;
  /** rad; top of the table away from the plate. */
  readonly angle: number;
  /** How much nearer to the axle the lining's outer edge stands than its inner one, mm. */
  readonly acrossLining: number;
  /** What stops it. */
  readonly stop: 'pads' | 'hold-down spring' | 'guides';
  /** Radius of the end pads' line and of the middle pad, mm: level, from the drum's axis. */
  readonly endPads: number;
  readonly middlePad: number;
}

/** Preload of the hold-down's spring: it presses on both sides of the web, friction = 2·μ·H₀. */
export const holdDownPreload = (brake: Brake, side: Side): number =>
  brake.shoes[side].holdDown.friction / (2 * PAD_FRICTION);

/** How a shoe leans under the springs of an instant. */
export function tiltOf(
  brake: Brake,
  instant: Instant,
  side: Side,
  cause: TiltCause = UPRIGHT,
): Tilt {
  const shoe = brake.shoes[side];
  const { lining, steel } = shoe;
  let pull = 0;
  instant.springs.forEach((spring, i) => {
    const ends = brake.springs[i]?.ends;
    if (!ends?.some((e) => e.on === side)) return;
    const [dx, dy] = [spring.to[0] - spring.from[0], spring.to[1] - spring.from[1]];
    const length = Math.sqrt(dx * dx + dy * dy);
    if (length > 0) pull += (spring.force * Math.abs(dx)) / length;
  });
  const beside = (steel.webThickness * steel.webCount) / 2;
  const moment = pull * beside;
  const middlePad = lining.groundRadius - lining.thicknessNew - steel.tableThickness / 2;
  // Level distance of the lining's ends from the axis: the mean of both.
  const endPads = (middlePad * (Math.abs(cos(lining.from)) + Math.abs(cos(lining.to)))) / 2;
  const arm = Math.abs(shoe.holdDown.at[0]) - endPads;
  const toGuides = endPads - (Math.abs(shoe.toe[0]) + Math.abs(shoe.anchor.at[0])) / 2;
  const most = GUIDE_PLAY / Math.max(1, toGuides);
  const lost = cause.holdDown === 'lost';
  const preload = lost ? 0 : holdDownPreload(brake, side);
  const righting = preload * arm;
  const hollow = cause.groove / (middlePad - endPads);
  let lifted = 0;
  if (moment > righting) {
    lifted = lost ? most : (moment / arm - preload) / (brake.across.holdDown.rate * arm);
  }
  const angle = Math.min(most, lifted + hollow);
  const stop = angle >= most ? 'guides' : lifted > 0 ? 'hold-down spring' : 'pads';
  return {
    pull,
    beside,
    wire: beside + WIRE / 2,
    moment,
    holdDown: lost ? 0 : preload + brake.across.holdDown.rate * arm * Math.max(0, angle - hollow),
    arm,
    righting,
    angle,
    acrossLining: angle * lining.width,
    stop,
    endPads,
    middlePad,
  };
}
