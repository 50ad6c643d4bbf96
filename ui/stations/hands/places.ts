import type { Brake, Instant, Point, Side } from '../../../sim/index.ts';
import type { HandPart } from '../../record/hands.ts';
import { apply, type Frame } from '../../stage/geometry.ts';
import type { Pointed } from '../../stage/hit.ts';
import type { PartId } from '../../stage/part-names.ts';
import { placesOf } from '../../stage/place.ts';

/** Turned about the drum's axis, rad. */
export function spun([x, y]: Point, angle: number): Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [c * x - s * y, s * x + c * y];
}

function frameOf(brake: Brake, instant: Instant, part: HandPart): Frame {
  const places = placesOf(brake, instant);
  switch (part) {
    case 'front shoe':
    case 'both toes':
      return places.shoes.front;
    case 'rear shoe':
      return places.shoes.rear;
    case 'front piston':
    case 'rear piston': {
      const side = part === 'front piston' ? 'front' : 'rear';
      const behind = instant.shoes[side].pistonBehind ?? 0;
      const way = (places.out[side] - behind) * (side === 'front' ? -1 : 1);
      return { angle: 0, x: way, y: 0 };
    }
    case 'strut':
      return places.strut;
    case 'adjuster lever':
      return places.lever ?? places.strut;
    case 'parking lever':
    case 'cable':
      return places.parking;
    case 'drum pulled':
    case 'drum rocked':
      return { angle: 0, x: 0, y: 0 };
    case 'drum':
      return { angle: instant.drumAngle, x: 0, y: 0 };
  }
}

/** Where a place of a part stands at an instant, mm. */
export const placeNow = (brake: Brake, instant: Instant, part: HandPart, at: Point): Point =>
  apply(frameOf(brake, instant, part), at);

/** Which place of a part stands there now, as it stands in the reference pose, mm. */
export function unplaced(brake: Brake, instant: Instant, part: HandPart, [x, y]: Point): Point {
  const f = frameOf(brake, instant, part);
  return spun([x - f.x, y - f.y], -f.angle);
}

const onShoe: readonly PartId[] = ['web', 'table', 'lining', 'lever window', 'hold-down'];
const onStrut: readonly PartId[] = ['strut', 'strut fork', 'screw', 'sleeve', 'strut spring'];

const onLever: readonly PartId[] = ['toothed lever', 'lever pin'];

const ofSide = <P extends HandPart>(side: Pointed['side'], front: P, rear: P): P | null =>
  side ? (side === 'front' ? front : rear) : null;

/** What is taken hold of where a part of the drawing is pressed; null: nothing that can be. */
export function holdable({ part, side }: Pointed): HandPart | null {
  if (onShoe.includes(part)) return ofSide(side, 'front shoe', 'rear shoe');
  if (onStrut.includes(part)) return 'strut';
  if (onLever.includes(part)) return 'adjuster lever';
  if (part === 'parking lever' || part === 'lever pivot' || part === 'lever stop')
    return 'parking lever';
  if (part === 'cable') return 'cable';
  if (part === 'piston' || part === 'boot') return ofSide(side, 'front piston', 'rear piston');
  return part === 'drum' ? 'drum' : null;
}

/** How many times as large movements are drawn. */
export const LARGE = 10;

/**
 * The moment with the movements of both shoes ten times as large about where they rest, and the drum as much
 * farther out: then a gap is as many times as wide, and a lining that touches is drawn touching.
 */
export function largened(instant: Instant, rest: Instant): Instant {
  const more = (now: number, was: number): number => was + LARGE * (now - was);
  const point = (now: Point, was: Point): Point => [more(now[0], was[0]), more(now[1], was[1])];
  const shoe = (side: Side): Instant['shoes'][Side] => {
    const [now, was] = [instant.shoes[side], rest.shoes[side]];
    return {
      ...now,
      pose: {
        ...now.pose,
        ux: more(now.pose.ux, was.pose.ux),
        uy: more(now.pose.uy, was.pose.uy),
        phi: more(now.pose.phi, was.pose.phi),
      },
      toe: point(now.toe, was.toe),
    };
  };
  const middle = ({ gap }: Instant['shoes'][Side]): number => gap[gap.length / 2] ?? 0;
  const gap = (middle(rest.shoes.front) + middle(rest.shoes.rear)) / 2;
  return {
    ...instant,
    drumRadius: instant.drumRadius + (LARGE - 1) * Math.max(0, gap),
    shoes: { front: shoe('front'), rear: shoe('rear') },
    springs: instant.springs.map((s, i) => {
      const was = rest.springs[i] ?? s;
      return { ...s, from: point(s.from, was.from), to: point(s.to, was.to) };
    }),
  };
}
