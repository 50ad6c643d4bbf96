import { cos, sin } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import { leverOf, springOf, toAdjuster } from '../adjuster.ts';
import type { Scene } from '../schema.ts';
import { openingMiddle, over } from './pose.ts';
import { apart, bore, fromAxis, mm, must, type P, place, type Rule } from './rule.ts';

/** Half as much again as two worn-through linings ask for: spare, as any thread has. */
const SPARE = 1.5;
/** Least step, mm: finer than any thread or serration in use (from memory). */
const FINEST = 0.005;
/** Least pitch along the lever's row of teeth, mm, that a finger can still hold. */
const FINEST_TOOTH = 0.2;
/** Teeth higher than this many pitches would be needles, and the lever could not pass them. */
const STEEPEST = 1.5;

/** Growth of the strut up to a tooth, mm. */
export const growthTo = (scene: Scene, tooth: number): number =>
  toAdjuster(scene.adjuster).growth[Math.min(tooth, scene.adjuster.teeth)] ?? Number.NaN;

/** Parting of the seats by which both shoes follow a drum and linings worn by so much, mm. */
export function partingFor(
  scene: Scene,
  worn: { readonly front: number; readonly rear: number },
): number {
  return (['front', 'rear'] as const).reduce((sum, side) => {
    const shoe = scene.shoes[side];
    return sum + (worn[side] * over(shoe, shoe.strutSeat)) / openingMiddle(shoe, side);
  }, 0);
}

/** Ends of the lever's row of teeth, which hangs below its pin, at the first tooth and at the last. */
function row(lever: NonNullable<ReturnType<typeof leverOf>>, teeth: number): P[] {
  return [-1, 0, 1].map((share) => {
    const a = (-90 + share * teeth * lever.toothAngle) * DEG;
    return [lever.pin[0] + lever.toothRadius * cos(a), lever.pin[1] + lever.toothRadius * sin(a)];
  });
}

/** Strut and adjuster. */
export const adjusterRules: readonly Rule[] = [
  {
    name: 'strut between seats',
    reason: 'Right back, the strut lies between its seats with a little play and lets the drum on.',
    broken: (s) => {
      const seats = apart(s.shoes.front.strutSeat, s.shoes.rear.strutSeat);
      const { lengthAtZero } = s.adjuster;
      return must(
        lengthAtZero <= seats && lengthAtZero >= seats * 0.9,
        'adjuster.lengthAtZero',
        `${mm(lengthAtZero)} between seats ${mm(seats)} apart in the reference pose`,
        `${mm(seats * 0.9)} to ${mm(seats)}`,
      );
    },
  },
  {
    name: 'pitch or lever',
    reason: 'The growth of a step is told once.',
    broken: ({ adjuster: a }) => [
      ...must(
        !(leverOf(a) && a.pitch !== undefined),
        'adjuster.pitch',
        'pitch and lever both given',
        'either a pitch or a lever, not both',
      ),
      ...must(
        leverOf(a) !== undefined || a.pitch !== undefined,
        'adjuster',
        'neither pitch nor lever',
        'a pitch in mm a step, or the lever geometry',
      ),
    ],
  },
  {
    name: 'climb told once',
    reason: 'What the seats feel of a climb follows from the lever’s spring.',
    broken: ({ adjuster: a }) =>
      must(
        !(springOf(a) && a.climbForce > 0),
        'adjuster.climbForce',
        `${a.climbForce} N beside the lever’s spring`,
        'either a spring or a climb force, not both',
      ),
  },
  {
    name: 'teeth run forward',
    reason: 'Each step makes the strut longer.',
    broken: ({ adjuster: a }) => {
      const lever = leverOf(a);
      const last = lever ? lever.startAngle + a.teeth * lever.toothAngle : 0;
      return [
        ...must(
          a.pitch === undefined || a.pitch >= FINEST,
          'adjuster.pitch',
          mm(a.pitch ?? Number.NaN),
          `at least ${mm(FINEST)} a step`,
        ),
        ...must(
          !lever || lever.toothAngle > 0,
          'adjuster.lever.toothAngle',
          `${lever?.toothAngle}°: the teeth would run backwards`,
          'more than 0°',
        ),
        ...must(
          last <= 175,
          'adjuster.lever.toothAngle',
          `the last tooth at ${last.toFixed(1)}°`,
          'at most 175°: past that the nose lets the strut shorten',
        ),
      ];
    },
  },
  {
    name: 'growth in reach',
    reason: 'A strut that grows farther would push the shoes through the drum.',
    broken: (s) => {
      const { pitch, teeth } = s.adjuster;
      const lever = leverOf(s.adjuster);
      if (lever ? lever.toothAngle <= 0 : !(pitch !== undefined && pitch > 0)) return [];
      const out = (s.drum.diameterMax - s.drum.diameterNew) / 2;
      const { front, rear } = s.shoes;
      const most =
        SPARE *
        partingFor(s, {
          front: front.lining.thicknessNew + out,
          rear: rear.lining.thicknessNew + out,
        });
      const growth = growthTo(s, teeth);
      return must(
        !(growth > most),
        'adjuster.teeth',
        `${teeth} that make the strut ${mm(growth)} longer`,
        `at most ${mm(most)}, half as much again as two linings worn through take`,
      );
    },
  },
  {
    name: 'steps in one press',
    reason: 'No more steps are taken than there are.',
    broken: ({ adjuster: a }) =>
      must(
        a.perApplication === undefined || a.perApplication <= a.teeth,
        'adjuster.perApplication',
        `${a.perApplication}`,
        `at most ${a.teeth}, the teeth there are`,
      ),
  },
  {
    name: 'slot play',
    reason: 'With more play than a worn-out pair takes up the adjuster would never step.',
    broken: (s) => {
      const { front, rear } = s.shoes;
      const most = partingFor(s, {
        front: front.lining.thicknessNew,
        rear: rear.lining.thicknessNew,
      });
      return must(
        s.adjuster.lostMotion <= most,
        'adjuster.lostMotion',
        mm(s.adjuster.lostMotion),
        `at most ${mm(most)}, what two linings worn through take`,
      );
    },
  },
  {
    name: 'lever in drum',
    reason: 'The toothed lever turns inside the drum.',
    broken: (s) => {
      const { teeth } = s.adjuster;
      const lever = leverOf(s.adjuster);
      if (!lever) return [];
      const reach = Math.max(fromAxis(lever.pin), ...row(lever, teeth).map(fromAxis));
      return must(
        reach < bore(s),
        'adjuster.lever.pin',
        `${place(lever.pin)}, with teeth out to ${mm(reach)} from the axis`,
        `inside the drum, under ${mm(bore(s))}`,
      );
    },
  },
  {
    name: 'nose at the strut',
    reason: 'The lever’s nose pushes the front shoe through its window, where the strut lies.',
    broken: (s) => {
      const lever = leverOf(s.adjuster);
      if (!lever) return [];
      const y = lever.pin[1] + lever.nose * sin(lever.startAngle * DEG);
      const seat = s.shoes.front.strutSeat[1];
      return must(
        Math.abs(y - seat) <= lever.window[1] / 2,
        'adjuster.lever.pin',
        `a nose ${mm(y)} above the axle`,
        `the front seat's ${mm(seat)}, to within half of the window's height, ${mm(lever.window[1] / 2)}`,
      );
    },
  },
  {
    name: 'teeth to hold',
    reason: 'Teeth have to be coarse enough to hold and low enough to be passed.',
    broken: (s) => {
      const lever = leverOf(s.adjuster);
      if (!lever || !(lever.toothAngle > 0)) return [];
      const pitch = lever.toothRadius * lever.toothAngle * DEG;
      return [
        ...must(
          pitch >= FINEST_TOOTH,
          'adjuster.lever.toothAngle',
          `teeth ${mm(pitch)} apart`,
          `at least ${mm(FINEST_TOOTH)}`,
        ),
        ...must(
          lever.toothHeight <= STEEPEST * pitch && lever.toothHeight <= lever.toothRadius / 2,
          'adjuster.lever.toothHeight',
          mm(lever.toothHeight),
          `at most ${mm(Math.min(STEEPEST * pitch, lever.toothRadius / 2))} on teeth ${mm(pitch)} apart`,
        ),
      ];
    },
  },
];
