import { dress, drumAt } from '../balance/dress.ts';
import type { Instant } from '../balance/instant.ts';
import { makePlaced, place, poseOf, turnsOf } from '../balance/place.ts';
import type { Rig } from '../balance/rig.ts';
import type { Turns } from '../balance/types.ts';
import type { BrakeState } from '../brake/state.ts';
import type { Point, Side } from '../brake/types.ts';

/**
 * Everything that pushes on one shoe with what it carries, cut free: a body at rest, so its forces laid
 * tip to tail come back to where they began, and their moments about any point are nothing (statics; e.g.
 * J. L. Meriam & L. G. Kraige, Engineering Mechanics: Statics, ch. 3).
 */

/** What pushes at a shoe. */
export type BodyKind =
  | 'piston'
  | 'spring'
  | 'hold-down'
  | 'climbing'
  | 'strut'
  | 'normal'
  | 'friction'
  | 'anchor'
  | 'other';

/** A force on the shoe. */
export interface BodyForce {
  readonly kind: BodyKind;
  /** The part that it comes from, as the brake names it. */
  readonly name: string;
  /** A point of its line, mm; of the lining's resultants the drum's centre, about which `couple` is told. */
  readonly at: Point;
  /** N */
  readonly force: Point;
  /** Moment beside that of the force at its point, N·mm: of friction about the drum's centre. */
  readonly couple: number;
}

export const noTurns = (): Turns => ({
  frontCos: 1,
  frontSin: 0,
  rearCos: 1,
  rearSin: 0,
  leverCos: 1,
  leverSin: 0,
});

/** Where the strut's seats stand, front and rear, bent shoes and a turned parking lever too, mm. */
function seatsOf(rig: Rig, i: Instant): Readonly<Record<Side, Point>> {
  const pose = poseOf(rig, i);
  const turns = turnsOf(rig, pose, noTurns());
  const at = (side: Side): Point => {
    const { x, y } = place(rig, pose, turns, rig[side].seat, makePlaced(rig.n));
    return [x, y];
  };
  return { front: at('front'), rear: at('rear') };
}

/** Where a shoe's pin or heel centre stands, mm. */
export const anchorAt = (rig: Rig, i: Instant, side: Side): Point => {
  const { anchor } = rig.brake.shoes[side];
  const { ux, uy } = i.shoes[side].pose;
  return [anchor.at[0] + ux, anchor.at[1] + uy];
};

/** Unit vector along the strut, from the front seat to the rear one. */
export function strutLine(rig: Rig, i: Instant): Point {
  const { front: a, rear: b } = seatsOf(rig, i);
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const long = Math.sqrt(dx * dx + dy * dy);
  return [dx / long, dy / long];
}

/** Names that a force of the list goes by. */
function kindOf(rig: Rig, name: string): BodyKind {
  const [, plain] = /^(?:front|rear) (piston|hold-down|heel)$/.exec(name) ?? [];
  if (plain === 'heel') return 'anchor';
  if (plain === 'piston' || plain === 'hold-down') return plain;
  if (name === 'climbing lever') return 'climbing';
  return rig.brake.springs.some((s) => s.name === name) ? 'spring' : 'other';
}

const ORDER: readonly BodyKind[] = [
  'piston',
  'spring',
  'climbing',
  'hold-down',
  'other',
  'strut',
  'normal',
  'friction',
  'anchor',
];

/** The forces on a shoe in the order in which they are laid tip to tail: what pushes first, the anchor last. */
export function freeBody(
  rig: Rig,
  state: BrakeState,
  i: Instant,
  side: Side,
): readonly BodyForce[] {
  const s = i.shoes[side];
  const [ex, ey] = strutLine(rig, i);
  const sense = side === 'front' ? -1 : 1;
  const spots = i.forces
    .filter((f) => f.on === side)
    .map((f): BodyForce => ({ ...f, kind: kindOf(rig, f.name), couple: 0 }));
  const one = (kind: BodyKind, at: Point, force: Point, couple = 0): BodyForce => ({
    kind,
    name: kind,
    at,
    force,
    couple,
  });
  const drum = drumAt(dress(rig, state), i.drumAngle);
  const axle: Point = [drum.x, drum.y];
  const { [side]: seat } = seatsOf(rig, i);
  // A heel's own force, with the friction of its flat, stands among the spots.
  const pin = spots.some((f) => f.kind === 'anchor')
    ? []
    : [one('anchor', anchorAt(rig, i, side), s.anchorForce)];
  return [
    ...spots,
    one('strut', seat, [sense * i.strutForce * ex, sense * i.strutForce * ey]),
    one('normal', axle, s.normalForce),
    one('friction', axle, s.frictionForce, -s.torqueOnDrum),
    ...pin,
  ]
    .filter((f) => f.force[0] !== 0 || f.force[1] !== 0)
    .sort((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind));
}

/** What is left of all forces laid tip to tail, N: nothing, but for rounding. */
export const bodyGap = (forces: readonly BodyForce[]): Point =>
  forces.reduce<Point>(([x, y], { force }) => [x + force[0], y + force[1]], [0, 0]);

/** Moment of a force about a point, N·mm, counter-clockwise positive. */
export const momentAbout = ({ at, force, couple }: BodyForce, [x, y]: Point): number =>
  (at[0] - x) * force[1] - (at[1] - y) * force[0] + couple;
