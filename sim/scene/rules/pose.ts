import type { Side } from '../../brake/types.ts';
import { cos, sin } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import type { Scene } from '../schema.ts';
import { apart } from './rule.ts';

/**
 * Small turns of the shoes about their anchors, as a first approximation: enough to tell what can be
 * built from what cannot. A shoe that opens by the angle φ moves a point at the height h over its anchor
 * outward by h·φ, and a place of its lining at the angle a along the normal by
 * φ·(±x·sin a − ±y·cos a), with (x, y) the anchor and + for the rear shoe: the cross product of turn and
 * place, taken along the normal.
 */
type SceneShoe = Scene['shoes']['front'];

/** Normal travel of the lining at an angle (degrees) for a unit of opening, mm/rad. */
export function opening(shoe: SceneShoe, side: Side, angle: number): number {
  const [x, y] = shoe.anchor.at;
  const out = side === 'front' ? -1 : 1;
  return out * (x * sin(angle * DEG) - y * cos(angle * DEG));
}

/** The same at the lining's middle. */
export const openingMiddle = (shoe: SceneShoe, side: Side): number =>
  opening(shoe, side, (shoe.lining.from + shoe.lining.to) / 2);

export const over = (shoe: SceneShoe, point: readonly [number, number]): number =>
  point[1] - shoe.anchor.at[1];

/** Parting of the seats for a unit of clearance at both linings' middles. */
export function seatsForGap(scene: Scene): number {
  const { front, rear } = scene.shoes;
  return (
    over(front, front.strutSeat) / openingMiddle(front, 'front') +
    over(rear, rear.strutSeat) / openingMiddle(rear, 'rear')
  );
}

/**
 * How the shoes stand on the strut at tooth 0: both clearances alike, as the built rest pose has it.
 *
 * @returns clearance at the middles, mm, and the turn inward that makes it, rad; negative: pressed on
 */
export function slackOf(scene: Scene): { gap: number; turn: Readonly<Record<Side, number>> } {
  const { front, rear } = scene.shoes;
  const seats = apart(front.strutSeat, rear.strutSeat);
  const gap = (seats - scene.adjuster.lengthAtZero) / seatsForGap(scene);
  return {
    gap,
    turn: { front: gap / openingMiddle(front, 'front'), rear: gap / openingMiddle(rear, 'rear') },
  };
}
