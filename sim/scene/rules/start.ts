import type { Side } from '../../brake/types.ts';
import { depthAt, depthsWithin } from '../../brake/worn-along.ts';
import { sceneRulesStart as words } from '../../words/en.ts';
import type { Scene } from '../schema.ts';
import { type StartPart, wornOf } from '../start.ts';
import { growthTo, partingFor } from './adjuster.ts';
import { leverArms } from './parking.ts';
import { opening, openingMiddle } from './pose.ts';
import { apart, type Breach, eachShoe, mm, must, type Rule } from './rule.ts';

/** A drum may be this far past its mark at the start, mm on diameter: it must be seen to fail. */
const PAST_MARK = 2;
/** A strut too long by this drags, mm at the seats: an adjuster set out too far. Longer, no drum goes on. */
const DRAGS = 0.5;

/** Wheels of the axle that a scene tells of, by their keys. */
const eachStart = (
  s: Scene,
  ask: (start: StartPart, path: string) => readonly Breach[],
): readonly Breach[] => [
  ...ask(s.start, 'start'),
  ...(s.otherWheel ? ask(s.otherWheel, 'otherWheel') : []),
];

/** Places along a lining that may be the first to touch. */
const PLACES = 24;

/**
 * Even wear that lets a shoe out as far as its wear along the arc does, mm: wherever the lining touches
 * first. The place at an angle goes out by its opening (pose.ts) for a unit of turn, the middle by its own.
 */
function asEven(s: Scene, side: Side, told: StartPart['wear']['front']): number {
  if (typeof told === 'number') return told;
  const shoe = s.shoes[side];
  const { from, to } = shoe.lining;
  const worn = wornOf(told);
  let least = worn.middle;
  for (let k = 0; k <= PLACES; k++) {
    const place = k / PLACES;
    const angle = side === 'front' ? from + place * (to - from) : to - place * (to - from);
    const out = opening(shoe, side, angle);
    if (out > 0) least = Math.min(least, (depthAt(worn, place) * openingMiddle(shoe, side)) / out);
  }
  return least;
}

/** How it starts, and the states it offers. */
export const startRules: readonly Rule[] = [
  {
    name: words.toothThatIsName,
    reason: words.toothThatIsReason,
    broken: (s) =>
      eachStart(s, (start, path) =>
        must(
          start.tooth <= s.adjuster.teeth,
          `${path}.tooth`,
          `${start.tooth}`,
          words.of0ToTheTeethThere(s.adjuster.teeth),
        ),
      ),
  },
  {
    name: words.drumAtTheName,
    reason: words.drumAtTheReason,
    broken: (s) =>
      eachStart(s, (start, path) => {
        const { drum } = s;
        const bore = start.drumDiameter ?? drum.diameterNew;
        return must(
          bore >= drum.diameterNew && bore <= drum.diameterMax + PAST_MARK,
          `${path}.drumDiameter`,
          mm(bore),
          words.asNewToTwoPast(mm(drum.diameterNew), mm(drum.diameterMax + PAST_MARK)),
        );
      }),
  },
  {
    name: words.liningAtTheName,
    reason: words.liningAtTheReason,
    broken: (s) =>
      eachStart(s, (start, path) =>
        eachShoe(s, ({ lining }, _, __, side) => {
          const { greatest } = depthsWithin(wornOf(start.wear[side]));
          return must(
            greatest < lining.thicknessNew,
            `${path}.wear.${side}`,
            mm(greatest),
            words.lessThanTheLining(mm(lining.thicknessNew)),
          );
        }),
      ),
  },
  {
    name: words.wearThatTakesName,
    reason: words.wearThatTakesReason,
    broken: (s) =>
      eachStart(s, (start, path) =>
        eachShoe(s, (_, __, ___, side) => {
          const { least } = depthsWithin(wornOf(start.wear[side]));
          return must(
            least >= 0,
            `${path}.wear.${side}`,
            words.betweenTheDepths(mm(least)),
            words.depthsWhoseParabolaStaysAt,
          );
        }),
      ),
  },
  {
    name: words.strutAtTheName,
    reason: words.strutAtTheReason,
    broken: (s) =>
      eachStart(s, (start, path) => {
        const { drum, adjuster, shoes } = s;
        const out = ((start.drumDiameter ?? drum.diameterNew) - drum.diameterNew) / 2;
        const front = asEven(s, 'front', start.wear.front);
        const rear = asEven(s, 'rear', start.wear.rear);
        const room =
          apart(shoes.front.strutSeat, shoes.rear.strutSeat) +
          partingFor(s, { front: front + out, rear: rear + out });
        const arms = leverArms(s);
        const held = Math.abs((start.leverOffStop * arms.notch) / arms.hook);
        const length = adjuster.lengthAtZero + growthTo(s, start.tooth) + held;
        const bare = adjuster.lengthAtZero + growthTo(s, start.tooth);
        return must(
          !(length > room + DRAGS),
          bare > room + DRAGS ? `${path}.tooth` : `${path}.leverOffStop`,
          bare > room + DRAGS
            ? words.aStrutOf(start.tooth, mm(bare))
            : words.withItAStrutOf(mm(start.leverOffStop), mm(length)),
          words.aStrutOfAtMost(mm(room + DRAGS)),
        );
      }),
  },
];
