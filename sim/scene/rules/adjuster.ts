import { cos, sin } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import { sceneRulesAdjuster as words } from '../../words/en.ts';
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
    name: words.strutBetweenSeatsName,
    reason: words.strutBetweenSeatsReason,
    broken: (s) => {
      const seats = apart(s.shoes.front.strutSeat, s.shoes.rear.strutSeat);
      const { lengthAtZero } = s.adjuster;
      return must(
        lengthAtZero <= seats && lengthAtZero >= seats * 0.9,
        'adjuster.lengthAtZero',
        words.betweenSeatsApartInThe(mm(lengthAtZero), mm(seats)),
        words.to(mm(seats * 0.9), mm(seats)),
      );
    },
  },
  {
    name: words.pitchOrLeverName,
    reason: words.pitchOrLeverReason,
    broken: ({ adjuster: a }) => [
      ...must(
        !(leverOf(a) && a.pitch !== undefined),
        'adjuster.pitch',
        words.pitchAndLeverBothGiven,
        words.eitherAPitchOrA,
      ),
      ...must(
        leverOf(a) !== undefined || a.pitch !== undefined,
        'adjuster',
        words.neitherPitchNorLever,
        words.aPitchInMmA,
      ),
    ],
  },
  {
    name: words.climbToldOnceName,
    reason: words.climbToldOnceReason,
    broken: ({ adjuster: a }) =>
      must(
        !(springOf(a) && a.climbForce > 0),
        'adjuster.climbForce',
        words.nBesideTheLeversSpring(a.climbForce),
        words.eitherASpringOrA,
      ),
  },
  {
    name: words.teethRunForwardName,
    reason: words.teethRunForwardReason,
    broken: ({ adjuster: a }) => {
      const lever = leverOf(a);
      const last = lever ? lever.startAngle + a.teeth * lever.toothAngle : 0;
      return [
        ...must(
          a.pitch === undefined || a.pitch >= FINEST,
          'adjuster.pitch',
          mm(a.pitch ?? Number.NaN),
          words.atLeastAStep(mm(FINEST)),
        ),
        ...must(
          !lever || lever.toothAngle > 0,
          'adjuster.lever.toothAngle',
          words.theTeethWouldRunBackwards(lever?.toothAngle),
          words.moreThan0,
        ),
        ...must(
          last <= 175,
          'adjuster.lever.toothAngle',
          words.theLastToothAt(last.toFixed(1)),
          words.atMost175PastThat,
        ),
      ];
    },
  },
  {
    name: words.growthInReachName,
    reason: words.growthInReachReason,
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
        words.thatMakeTheStrutLonger(teeth, mm(growth)),
        words.atMostHalfAsMuch(mm(most)),
      );
    },
  },
  {
    name: words.stepsInOneName,
    reason: words.stepsInOneReason,
    broken: ({ adjuster: a }) =>
      must(
        a.perApplication === undefined || a.perApplication <= a.teeth,
        'adjuster.perApplication',
        `${a.perApplication}`,
        words.atMostTheTeethThere(a.teeth),
      ),
  },
  {
    name: words.slotPlayName,
    reason: words.slotPlayReason,
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
        words.atMostWhatTwoLinings(mm(most)),
      );
    },
  },
  {
    name: words.leverInDrumName,
    reason: words.leverInDrumReason,
    broken: (s) => {
      const { teeth } = s.adjuster;
      const lever = leverOf(s.adjuster);
      if (!lever) return [];
      const reach = Math.max(fromAxis(lever.pin), ...row(lever, teeth).map(fromAxis));
      return must(
        reach < bore(s),
        'adjuster.lever.pin',
        words.withTeethOutToFrom(place(lever.pin), mm(reach)),
        words.insideTheDrumUnder(mm(bore(s))),
      );
    },
  },
  {
    name: words.noseAtTheName,
    reason: words.noseAtTheReason,
    broken: (s) => {
      const lever = leverOf(s.adjuster);
      if (!lever) return [];
      const y = lever.pin[1] + lever.nose * sin(lever.startAngle * DEG);
      const seat = s.shoes.front.strutSeat[1];
      return must(
        Math.abs(y - seat) <= lever.window[1] / 2,
        'adjuster.lever.pin',
        words.aNoseAboveTheAxle(mm(y)),
        words.theFrontSeatsToWithin(mm(seat), mm(lever.window[1] / 2)),
      );
    },
  },
  {
    name: words.teethToHoldName,
    reason: words.teethToHoldReason,
    broken: (s) => {
      const lever = leverOf(s.adjuster);
      if (!lever || !(lever.toothAngle > 0)) return [];
      const pitch = lever.toothRadius * lever.toothAngle * DEG;
      return [
        ...must(
          pitch >= FINEST_TOOTH,
          'adjuster.lever.toothAngle',
          words.teethApart(mm(pitch)),
          words.atLeast(mm(FINEST_TOOTH)),
        ),
        ...must(
          lever.toothHeight <= STEEPEST * pitch && lever.toothHeight <= lever.toothRadius / 2,
          'adjuster.lever.toothHeight',
          mm(lever.toothHeight),
          words.atMostOnTeethApart(
            mm(Math.min(STEEPEST * pitch, lever.toothRadius / 2)),
            mm(pitch),
          ),
        ),
      ];
    },
  },
];
