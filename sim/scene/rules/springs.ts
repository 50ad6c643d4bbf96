import type { Side } from '../../brake/types.ts';
import { sceneRulesSprings as words } from '../../words/en.ts';
import type { Scene } from '../schema.ts';
import {
  apart,
  bore,
  eachShoe,
  fromAxis,
  lineFromAxis,
  mm,
  must,
  place,
  type Rule,
  webRadius,
} from './rule.ts';

type Spring = Scene['springs'][number];

/** Moment of a spring's fitted pull about a point, N·mm, counter-clockwise, on the part at its end `i`. */
function moment(spring: Spring, i: 0 | 1, [ax, ay]: readonly [number, number]): number {
  const from = spring.ends[i].at;
  const to = spring.ends[(1 - i) as 0 | 1].at;
  const length = apart(from, to);
  const x = (spring.fitted * (to[0] - from[0])) / length;
  const y = (spring.fitted * (to[1] - from[1])) / length;
  return (from[0] - ax) * y - (from[1] - ay) * x;
}

/** Moment of all fitted pulls on a shoe about its anchor, N·mm, inward. */
export function inwardMoment(s: Scene, side: Side): number {
  const outward = side === 'front' ? -1 : 1;
  let inward = 0;
  for (const spring of s.springs) {
    for (const i of [0, 1] as const) {
      if (spring.ends[i].on !== side) continue;
      inward += outward * moment(spring, i, s.shoes[side].anchor.at);
    }
  }
  return inward;
}

/** Return springs. */
export const springRules: readonly Rule[] = [
  {
    name: words.springOfSomeName,
    reason: words.springOfSomeReason,
    broken: (s) =>
      s.springs.flatMap(({ ends: [a, b] }, i) =>
        must(
          apart(a.at, b.at) >= 5,
          `springs.${i}.ends`,
          words.apart(mm(apart(a.at, b.at))),
          words.atLeast5MmApart,
        ),
      ),
  },
  {
    name: words.springBetweenTwoName,
    reason: words.springBetweenTwoReason,
    broken: (s) =>
      s.springs.flatMap(({ ends: [a, b] }, i) =>
        must(a.on !== b.on, `springs.${i}.ends`, words.bothOn(a.on), words.twoDifferentParts),
      ),
  },
  {
    name: words.springEndsInName,
    reason: words.springEndsInReason,
    broken: (s) =>
      s.springs.flatMap(({ ends }, i) =>
        ends.flatMap(({ on, at }, n) => {
          const side = on === 'front' ? -1 : 1;
          const room = on === 'plate' ? bore(s) : webRadius(s.shoes[on]);
          return [
            ...must(
              fromAxis(at) < room,
              `springs.${i}.ends.${n}.at`,
              words.fromTheAxis(place(at), mm(fromAxis(at))),
              words.underInside(mm(room), on === 'plate' ? words.theDrum : words.theTable),
            ),
            ...must(
              on === 'plate' || side * at[0] >= 0,
              `springs.${i}.ends.${n}.at`,
              place(at),
              words.onTheShoeOfThe(on, on === 'front' ? words.left : words.right),
            ),
          ];
        }),
      ),
  },
  {
    name: words.springClearOfName,
    reason: words.springClearOfReason,
    broken: (s) =>
      s.springs.flatMap(({ ends: [a, b] }, i) => {
        const off = lineFromAxis(a.at, b.at);
        return must(
          off > s.look.hubRadius,
          `springs.${i}.ends`,
          words.aSpringFromTheAxis(mm(off)),
          words.moreThanPastTheHub(mm(s.look.hubRadius)),
        );
      }),
  },
  {
    name: words.springsPullBackName,
    reason: words.springsPullBackReason,
    broken: (s) =>
      eachShoe(s, (_, __, ___, side) => {
        const inward = inwardMoment(s, side);
        const first = s.springs.findIndex(({ ends }) => ends.some(({ on }) => on === side));
        return must(
          first < 0 || inward >= 0,
          `springs.${first}.ends`,
          words.theShoesSpringsTogetherPress(side, Math.round(-inward)),
          words.springsThatPullItBack,
        );
      }),
  },
];
