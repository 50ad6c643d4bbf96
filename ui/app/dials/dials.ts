import type { Brake, Point, Quantity } from '../../../sim/index.ts';
import { labelWords, appDialsDials as words } from '../../../sim/words/en.ts';
import { isCountable, wordsOf } from '../../adjusters.ts';
import { sceneName } from '../../record/scene-names.ts';
import { polar } from '../../stage/geometry.ts';
import { rimRadius } from '../../stage/parts/drum.ts';

/** Which dials a brake has, and where on it each one sits. */

/** One thing that can be turned on the stage. */
export interface Dial {
  readonly id: string;
  readonly name: string;
  /** Beside its handle, before the value. */
  readonly short: string;
  /** What it sets: one quantity, or the two of a place. */
  readonly sets: readonly Quantity[];
  /** A place follows the pointer in mm; else a way to the right is more. */
  readonly place: boolean;
  /** mm in the brake as it is drawn. */
  at(brake: Brake): Point;
}

/** The dial of the pedal: it is none of the brake, and nothing of it is built. */
export const PEDAL = 'pressure';

const degrees = (angle: number): number => (angle * Math.PI) / 180;

/** In the middle of a lining's thickness, at an angle. */
const inLining =
  (side: 'front' | 'rear', angle: number) =>
  (brake: Brake): Point =>
    polar(brake.drum.radiusNew - brake.shoes[side].lining.thicknessNew / 2, degrees(angle));

/** Of both shoes at once, where they are alike; else of each. */
function ofShoes(
  all: ReadonlyMap<string, Quantity>,
  key: string,
  made: Omit<Dial, 'id' | 'sets' | 'at' | 'place'>,
  front: Dial['at'],
  rear: Dial['at'],
): Dial[] {
  const both = all.get(`shoes.${key}`);
  if (both) return [{ ...made, id: both.id, sets: [both], place: false, at: front }];
  return (['front', 'rear'] as const).flatMap((side) => {
    const one = all.get(`shoes.${side}.${key}`);
    if (!one) return [];
    const name = words.name(made.name, side);
    const at = side === 'front' ? front : rear;
    return [{ ...made, id: one.id, name, sets: [one], place: false, at }];
  });
}

/** Pin, or centre of a sliding heel, of a shoe. */
function pinOf(all: ReadonlyMap<string, Quantity>, side: 'front' | 'rear', brake: Brake): Dial[] {
  const [x, y] = [0, 1].map((i) => all.get(`shoes.${side}.anchor.at.${i}`));
  if (!x || !y) return [];
  const what = brake.shoes[side].anchor.kind === 'pin' ? 'pin' : 'heel';
  return [
    {
      id: `${side} anchor`,
      name: words.anchors[what][side],
      short: words.anchors[what][side],
      sets: [x, y],
      place: true,
      at: (now) => now.shoes[side].anchor.at,
    },
  ];
}

const middle = ([a, b]: Point, [c, d]: Point, share: number): Point => [
  a + (c - a) * share,
  b + (d - b) * share,
];

/**
 * All dials of a brake, in the order in which Tab goes through them.
 *
 * @param quantities all that can be varied of it
 */
export function dialsOf(quantities: readonly Quantity[], brake: Brake): readonly Dial[] {
  const all = new Map(quantities.map((q) => [q.id, q]));
  const one = (id: string, name: string, short: string, at: Dial['at']): Dial[] => {
    const q = all.get(id);
    return q ? [{ id, name, short, sets: [q], place: false, at }] : [];
  };
  const cylinder = brake.cylinder.at;
  const step = wordsOf(brake).next === 'next tooth' ? labelWords.tooth : labelWords.step;
  return [
    ...one(PEDAL, words.pedalLinePressure, labelWords.pedal, () => [cylinder[0], cylinder[1]]),
    ...one('cylinder.bore', words.boreOfTheWheelCylinder, labelWords.bore, (b) => [
      cylinder[0] + 0.62 * b.cylinder.halfLength,
      cylinder[1] + b.cylinder.outerRadius,
    ]),
    ...brake.springs.flatMap((spring, i) =>
      one(
        `springs.${i}.fitted`,
        words.forceAsFitted(
          sceneName(spring.name).charAt(0).toUpperCase(),
          sceneName(spring.name).slice(1),
        ),
        labelWords.spring,
        () => middle(spring.ends[0].at, spring.ends[1].at, 0.64),
      ),
    ),
    ...(isCountable(brake)
      ? one('tooth', words.ofTheAdjuster(step), step, (b) =>
          middle(b.shoes.front.strutSeat, b.shoes.rear.strutSeat, 0.3),
        )
      : []),
    ...ofShoes(
      all,
      'lining.friction',
      { name: words.frictionOfTheLiningsCold, short: labelWords.friction },
      inLining('front', 188),
      inLining('rear', 8),
    ),
    ...ofShoes(
      all,
      'lining.thicknessNew',
      { name: words.thicknessOfTheLiningsWhen, short: words.lining },
      inLining('rear', -28),
      inLining('front', 208),
    ),
    ...pinOf(all, 'front', brake),
    ...pinOf(all, 'rear', brake),
    ...one('temperature', words.temperatureOfTheDrum, labelWords.drum, (b) =>
      polar(rimRadius(b) - b.drum.rim / 2, degrees(-62)),
    ),
  ];
}

/** A step that tells something of a range, of 1, 2 or 5 at some power of ten: about a hundredth of it. */
export function stepOf({ usual: [low, high], whole }: Quantity): number {
  const raw = (high - low) / 100;
  const ten = 10 ** Math.floor(Math.log10(raw));
  const nice = [1, 2, 5, 10].find((n) => n * ten >= raw * 0.999) ?? 10;
  return whole ? Math.max(1, Math.round(nice * ten)) : nice * ten;
}
