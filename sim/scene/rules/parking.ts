import { cos, sin } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
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
    name: 'parking lever in drum',
    reason: 'Lever and cable end lie inside the drum, beside the hub.',
    broken: (s) =>
      (['pivot', 'hook', 'cableGuide'] as const).flatMap((key) => {
        const p = s.parkingLever[key];
        const room = webRadius(s.shoes.rear);
        return must(
          fromAxis(p) < room && fromAxis(p) > s.look.hubRadius,
          `parkingLever.${key}`,
          `${place(p)}, ${mm(fromAxis(p))} from the axis`,
          `${mm(s.look.hubRadius)} to ${mm(room)} from the axis, between hub and table`,
        );
      }),
  },
  {
    name: 'pivot on rear shoe',
    reason: 'The lever’s pivot is riveted to the rear shoe’s web.',
    broken: (s) =>
      must(
        s.parkingLever.pivot[0] > 0,
        'parkingLever.pivot',
        place(s.parkingLever.pivot),
        'right of the axle, on the rear shoe',
      ),
  },
  {
    name: 'guide off the hook',
    reason: 'The cable pulls the hook towards its guide: past the hub and from some way off.',
    broken: (s) => {
      const { hook, cableGuide } = s.parkingLever;
      const off = lineFromAxis(hook, cableGuide);
      return [
        ...must(
          !(off < s.look.hubRadius) || fromAxis(cableGuide) < s.look.hubRadius,
          'parkingLever.cableGuide',
          `${place(cableGuide)}, with a cable ${mm(off)} from the axis`,
          `a cable past the hub, ${mm(s.look.hubRadius)}`,
        ),
        ...must(
          apart(hook, cableGuide) >= SWING * bore(s),
          'parkingLever.cableGuide',
          `${place(cableGuide)}, ${mm(apart(hook, cableGuide))} from the hook`,
          `at least ${mm(SWING * bore(s))} from it`,
        ),
      ];
    },
  },
  {
    name: 'pull pushes the strut',
    reason:
      'A pull of the cable turns the lever so that it pushes the strut, with a longer arm than the strut’s.',
    broken: (s) => {
      const { hook, notch } = leverArms(s);
      const way = notch < 0 ? -1 : 1;
      return [
        ...must(
          Math.abs(notch) >= 1,
          'parkingLever.pivot',
          `${mm(Math.abs(notch))} from the strut's line`,
          'at least 1 mm: else the lever cannot push it',
        ),
        ...must(
          !(Math.abs(notch) >= 1) || way * hook >= Math.abs(notch),
          'parkingLever.hook',
          `${place(s.parkingLever.hook)}, where the pull has an arm of ${mm(way * hook)} about the pivot`,
          `at least the strut's, ${mm(Math.abs(notch))}, turning it towards the strut`,
        ),
      ];
    },
  },
  {
    name: 'slack to take up',
    reason: 'The hand lever has to take the cable up within its own way.',
    broken: ({ parkingLever: l }) =>
      must(
        l.slack <= 40 * l.perNotch,
        'parkingLever.slack',
        mm(l.slack),
        `at most ${mm(40 * l.perNotch)}, forty notches`,
      ),
  },
];
