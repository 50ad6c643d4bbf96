import { cos, sin } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import { sceneRulesLining as words } from '../../words/en.ts';
import { opening, slackOf } from './pose.ts';
import { bore, eachShoe, mm, must, type Rule } from './rule.ts';

type Lining = Parameters<Parameters<typeof eachShoe>[1]>[0]['lining'];

const arc = (l: Lining): number => l.to - l.from;

/**
 * How far the unworn face stands outside the new drum at an angle from the lining's middle in the
 * reference pose, mm: on a ray at the angle d from the middle, (R − g)·cos d + √(g² − (R − g)²·sin² d) − R
 * (as in contact/bed.ts).
 */
function proudAt(radius: number, ground: number, d: number): number {
  const off = radius - ground;
  const s = off * sin(d);
  return off * cos(d) + Math.sqrt(ground * ground - s * s) - radius;
}

/** A lining may bear by this share of the drum's radius before it is worked in, and the drum still goes on. */
const BEARS = 0.001;

/** Each half of the drum has its shoe: the front one left of the axle, the rear one right. */
const half = { front: [90, 270], rear: [-90, 90] } as const;

/** Linings: where they lie, how thick and how round they are. */
export const liningRules: readonly Rule[] = [
  {
    name: words.liningArcName,
    reason: words.liningArcReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          arc(l) >= 2 && arc(l) <= 175,
          `${at}.lining.to`,
          words.afterFrom(l.to, l.from),
          words.moreThanFromBy2,
        ),
      ),
  },
  {
    name: words.liningOnItsName,
    reason: words.liningOnItsReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at, _, side) => {
        const [low, high] = half[side];
        const allowed = words.allowed(low, high);
        return [
          ...must(l.from >= low, `${at}.lining.from`, `${l.from}°`, allowed),
          ...must(l.to <= high, `${at}.lining.to`, `${l.to}°`, allowed),
        ];
      }),
  },
  {
    name: words.tableUnderLiningName,
    reason: words.tableUnderLiningReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l, steel: { tableArc } }, at) =>
        must(
          tableArc[0] <= l.from && tableArc[1] >= l.to,
          `${at}.steel.tableArc`,
          words.toUnderALiningFrom(tableArc[0], tableArc[1], l.from, l.to),
          words.atLeastTheLiningsArc,
        ),
      ),
  },
  {
    name: words.tableOnItsName,
    reason: words.tableOnItsReason,
    broken: (s) =>
      eachShoe(s, ({ steel: { tableArc } }, at, _, side) => {
        const [low, high] = half[side];
        return must(
          tableArc[0] < tableArc[1] && tableArc[0] >= low && tableArc[1] <= high,
          `${at}.steel.tableArc`,
          words.to(tableArc[0], tableArc[1]),
          words.fromLessThanToWithin(low, high),
        );
      }),
  },
  {
    name: words.liningWidthName,
    reason: words.liningWidthReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          l.width <= 1.5 * bore(s),
          `${at}.lining.width`,
          mm(l.width),
          words.atMostInThisDrum(mm(1.5 * bore(s))),
        ),
      ),
  },
  {
    name: words.websUnderLiningName,
    reason: words.websUnderLiningReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l, steel }, at) => {
        const webs = steel.webThickness * steel.webCount;
        return must(
          webs <= l.width,
          `${at}.steel.webThickness`,
          words.ofWeb(mm(webs)),
          words.atMostTheLiningsWidth(mm(l.width)),
        );
      }),
  },
  {
    name: 'lining limit',
    reason: words.liningLimitReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          l.thicknessMin < l.thicknessNew,
          `${at}.lining.thicknessMin`,
          mm(l.thicknessMin),
          words.lessThanThicknessNew(mm(l.thicknessNew)),
        ),
      ),
  },
  {
    name: words.liningInDrumName,
    reason: words.liningInDrumReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l, steel }, at) =>
        must(
          l.thicknessNew + steel.tableThickness <= 0.35 * bore(s),
          `${at}.lining.thicknessNew`,
          words.onATableOf(mm(l.thicknessNew), mm(steel.tableThickness)),
          words.atMostTogetherInThis(mm(0.35 * bore(s))),
        ),
      ),
  },
  {
    name: words.rivetsInLiningName,
    reason: words.rivetsInLiningReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          l.rivetHeight < l.thicknessNew,
          `${at}.lining.rivetHeight`,
          mm(l.rivetHeight),
          words.lessThanThicknessNew(mm(l.thicknessNew)),
        ),
      ),
  },
  {
    name: words.slopeInLiningName,
    reason: words.slopeInLiningReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) => [
        ...must(
          l.chamferDepth < l.thicknessNew,
          `${at}.lining.chamferDepth`,
          mm(l.chamferDepth),
          words.lessThanThicknessNew(mm(l.thicknessNew)),
        ),
        ...must(
          2 * l.chamferArc < arc(l),
          `${at}.lining.chamferArc`,
          words.atEachEnd(l.chamferArc),
          words.lessThanHalfTheArc,
        ),
        ...must(
          2 * l.cutEdgeArc < arc(l),
          `${at}.lining.cutEdgeArc`,
          words.atEachEnd2(l.cutEdgeArc),
          words.lessThanHalfTheArc,
        ),
      ]),
  },
  {
    name: words.groundRadiusName,
    reason: words.groundRadiusReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) => {
        const r = bore(s);
        return must(
          l.groundRadius >= 0.9 * r && l.groundRadius <= 1.05 * r,
          `${at}.lining.groundRadius`,
          mm(l.groundRadius),
          words.toForThisDrum(mm(0.9 * r), mm(1.05 * r)),
        );
      }),
  },
  {
    name: words.liningEndsOverName,
    reason: words.liningEndsOverReason,
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) => {
        if (l.groundRadius >= bore(s)) return [];
        const ends = l.thicknessNew + proudAt(bore(s), l.groundRadius, (arc(l) / 2) * DEG);
        return must(
          ends > l.thicknessMin,
          `${at}.lining.groundRadius`,
          words.whichLeavesAtTheEnds(mm(l.groundRadius), mm(ends)),
          words.asMuchAsLeavesMore(mm(l.thicknessMin)),
        );
      }),
  },
  {
    name: words.drumGoesOnName,
    reason: words.drumGoesOnReason,
    broken: (s) =>
      eachShoe(s, (shoe, at, _, side) => {
        const { lining: l } = shoe;
        const middle = (l.from + l.to) / 2;
        // A strut too long for its seats is told at the strut.
        const turn = Math.max(0, slackOf(s).turn[side]);
        const proud = [l.from, l.to].map(
          (end) =>
            proudAt(bore(s), l.groundRadius, (end - middle) * DEG) -
            turn * opening(shoe, side, end),
        );
        const worst = Math.max(...proud);
        return must(
          !(worst > BEARS * bore(s)),
          `${at}.lining.groundRadius`,
          words.atRestAnEndStands(mm(l.groundRadius), mm(worst)),
          words.atMost(mm(BEARS * bore(s))),
        );
      }),
  },
  {
    name: words.liningGoesOutwardName,
    reason: words.liningGoesOutwardReason,
    broken: (s) =>
      eachShoe(s, (shoe, at, outward, side) => {
        // The end beside the anchor: the front shoe's last, the rear one's first.
        const [key, end] =
          outward < 0 ? (['to', shoe.lining.to] as const) : (['from', shoe.lining.from] as const);
        return must(
          opening(shoe, side, end) >= 0,
          `${at}.lining.${key}`,
          words.pastTheAnchorAt(end, shoe.anchor.at[0], shoe.anchor.at[1]),
          words.anEndBeforeTheLine,
        );
      }),
  },
];
