import type { Brake, Hand, Point } from '../../../sim/index.ts';
import type { HandPart } from '../../record/hands.ts';

/** A place that is held and where the hand is, mm. */
interface Held {
  readonly at: Point;
  readonly to: Point;
}

/** Hands of the mechanics for a part that is held; none for what no hand of theirs holds. */
export function handsOn(
  { parkingLever: lever, shoes }: Brake,
  part: HandPart,
  { at, to }: Held,
  rate: number,
  limit: number,
): readonly Hand[] {
  const hand = (on: Hand['on'], held = at, where = to): Hand => ({
    ...{ on, at: held, to: where },
    ...{ rate, limit },
  });
  switch (part) {
    case 'front shoe':
      return [hand('front')];
    case 'rear shoe':
      return [hand('rear')];
    case 'both toes': {
      const { toe } = shoes.rear;
      return [hand('front'), hand('rear', toe, [toe[0] - (to[0] - at[0]), toe[1] + to[1] - at[1]])];
    }
    case 'strut':
      return [hand('strut')];
    case 'parking lever':
      return [hand('lever')];
    case 'cable': {
      // A cable only pulls, and only its own way.
      const along = (to[0] - at[0]) * lever.pull[0] + (to[1] - at[1]) * lever.pull[1];
      const way = Math.max(0, along);
      return [
        hand('lever', lever.hook, [
          lever.hook[0] + way * lever.pull[0],
          lever.hook[1] + way * lever.pull[1],
        ]),
      ];
    }
    case 'front piston':
    case 'rear piston':
      return [hand(part)];
    case 'adjuster lever':
    case 'drum':
    case 'drum pulled':
    case 'drum rocked':
      return [];
  }
}
