import { cos, sin } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import { sceneRulesParking as words } from '../../words/en.ts';
import type { Scene } from '../schema.ts';
import {
  apart,
  bore,
  fromAxis,
  lineFromAxis,
  mm,
  must,
  type P,
  place,
  type Rule,
  webRadius,
} from './rule.ts';

/** Room that the hook needs before its cable's guide, in parts of the drum's radius: it swings that far. */
const SWING = 0.1;

/** Direction of the cable's pull, as in read.ts. */
function pull({ parkingLever: l }: Scene): P {
  if (l.pullDirection !== undefined) {
    return [cos(l.pullDirection * DEG), sin(l.pullDirection * DEG)];
  }
  const length = apart(l.cableGuide, l.hook);
  return [(l.cableGuide[0] - l.hook[0]) / length, (l.cableGuide[1] - l.hook[1]) / length];
}

/**
 * Travel of the hook along the pull and of the notch along the strut, for a unit of the lever's turn, mm:
 * (ẑ × arm) · direction. Alike in sign where a pull pushes the strut.
 */
export function leverArms(scene: Scene): { hook: number; notch: number } {
  const { pivot, hook } = scene.parkingLever;
  const { front, rear } = scene.shoes;
  const along = (arm: P, to: P): number => arm[0] * to[1] - arm[1] * to[0];
  const arm = (p: P): P => [p[0] - pivot[0], p[1] - pivot[1]];
  const strut = apart(front.strutSeat, rear.strutSeat);
  return {
    hook: along(arm(hook), pull(scene)),
    notch: along(arm(rear.strutSeat), [
      (front.strutSeat[0] - rear.strutSeat[0]) / strut,
      (front.strutSeat[1] - rear.strutSeat[1]) / strut,
    ]),
  };
}

/** Parking lever and its cable. */
export const parkingRules: readonly Rule[] = [
  {
    name: words.parkingLeverInName,
    reason: words.parkingLeverInReason,
    broken: (s) =>
      (['pivot', 'hook', 'cableGuide'] as const).flatMap((key) => {
        const p = s.parkingLever[key];
        const room = webRadius(s.shoes.rear);
        return must(
          fromAxis(p) < room && fromAxis(p) > s.look.hubRadius,
          `parkingLever.${key}`,
          words.fromTheAxis(place(p), mm(fromAxis(p))),
          words.toFromTheAxisBetween(mm(s.look.hubRadius), mm(room)),
        );
      }),
  },
  {
    name: words.pivotOnRearName,
    reason: words.pivotOnRearReason,
    broken: (s) =>
      must(
        s.parkingLever.pivot[0] > 0,
        'parkingLever.pivot',
        place(s.parkingLever.pivot),
        words.rightOfTheAxleOn,
      ),
  },
  {
    name: words.guideOffTheName,
    reason: words.guideOffTheReason,
    broken: (s) => {
      const { hook, cableGuide } = s.parkingLever;
      const off = lineFromAxis(hook, cableGuide);
      return [
        ...must(
          !(off < s.look.hubRadius) || fromAxis(cableGuide) < s.look.hubRadius,
          'parkingLever.cableGuide',
          words.withACableFromThe(place(cableGuide), mm(off)),
          words.aCablePastTheHub(mm(s.look.hubRadius)),
        ),
        ...must(
          apart(hook, cableGuide) >= SWING * bore(s),
          'parkingLever.cableGuide',
          words.fromTheHook(place(cableGuide), mm(apart(hook, cableGuide))),
          words.atLeastFromIt(mm(SWING * bore(s))),
        ),
      ];
    },
  },
  {
    name: words.pullPushesTheName,
    reason: words.pullPushesTheReason,
    broken: (s) => {
      const { hook, notch } = leverArms(s);
      const way = notch < 0 ? -1 : 1;
      return [
        ...must(
          Math.abs(notch) >= 1,
          'parkingLever.pivot',
          words.fromTheStrutsLine(mm(Math.abs(notch))),
          words.atLeast1MmElse,
        ),
        ...must(
          !(Math.abs(notch) >= 1) || way * hook >= Math.abs(notch),
          'parkingLever.hook',
          words.whereThePullHasAn(place(s.parkingLever.hook), mm(way * hook)),
          words.atLeastTheStrutsTurning(mm(Math.abs(notch))),
        ),
      ];
    },
  },
  {
    name: words.slackToTakeName,
    reason: words.slackToTakeReason,
    broken: ({ parkingLever: l }) =>
      must(
        l.slack <= 40 * l.perNotch,
        'parkingLever.slack',
        mm(l.slack),
        words.atMostFortyNotches(mm(40 * l.perNotch)),
      ),
  },
];
