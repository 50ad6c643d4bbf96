import { cos, sin } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
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
    name: 'lining arc',
    reason: 'A shoe lines at most half of the drum, and a strip of some length.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          arc(l) >= 2 && arc(l) <= 175,
          `${at}.lining.to`,
          `${l.to}° after from ${l.from}°`,
          'more than from, by 2° to 175°',
        ),
      ),
  },
  {
    name: 'lining on its side',
    reason:
      'The front shoe stands left of the axle, the rear one right: else both lie in one place.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at, _, side) => {
        const [low, high] = half[side];
        const allowed = `${low}° to ${high}°, its own half of the drum`;
        return [
          ...must(l.from >= low, `${at}.lining.from`, `${l.from}°`, allowed),
          ...must(l.to <= high, `${at}.lining.to`, `${l.to}°`, allowed),
        ];
      }),
  },
  {
    name: 'table under lining',
    reason: 'The lining is bonded or riveted to the table along all its length.',
    broken: (s) =>
      eachShoe(s, ({ lining: l, steel: { tableArc } }, at) =>
        must(
          tableArc[0] <= l.from && tableArc[1] >= l.to,
          `${at}.steel.tableArc`,
          `${tableArc[0]}° to ${tableArc[1]}° under a lining from ${l.from}° to ${l.to}°`,
          'at least the lining’s arc',
        ),
      ),
  },
  {
    name: 'table on its side',
    reason: 'The tables of both shoes do not reach over the line between them.',
    broken: (s) =>
      eachShoe(s, ({ steel: { tableArc } }, at, _, side) => {
        const [low, high] = half[side];
        return must(
          tableArc[0] < tableArc[1] && tableArc[0] >= low && tableArc[1] <= high,
          `${at}.steel.tableArc`,
          `${tableArc[0]}° to ${tableArc[1]}°`,
          `from less than to, within ${low}° to ${high}°`,
        );
      }),
  },
  {
    name: 'lining width',
    reason: 'No drum is as deep as its radius and half of it again.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          l.width <= 1.5 * bore(s),
          `${at}.lining.width`,
          mm(l.width),
          `at most ${mm(1.5 * bore(s))} in this drum`,
        ),
      ),
  },
  {
    name: 'webs under lining',
    reason: 'The webs stand beside each other under the table.',
    broken: (s) =>
      eachShoe(s, ({ lining: l, steel }, at) => {
        const webs = steel.webThickness * steel.webCount;
        return must(
          webs <= l.width,
          `${at}.steel.webThickness`,
          `${mm(webs)} of web`,
          `at most the lining's width, ${mm(l.width)}`,
        );
      }),
  },
  {
    name: 'lining limit',
    reason: 'A lining is worn from new down to its limit.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          l.thicknessMin < l.thicknessNew,
          `${at}.lining.thicknessMin`,
          mm(l.thicknessMin),
          `less than thicknessNew, ${mm(l.thicknessNew)}`,
        ),
      ),
  },
  {
    name: 'lining in drum',
    reason: 'Lining, table and web have to go between drum and hub.',
    broken: (s) =>
      eachShoe(s, ({ lining: l, steel }, at) =>
        must(
          l.thicknessNew + steel.tableThickness <= 0.35 * bore(s),
          `${at}.lining.thicknessNew`,
          `${mm(l.thicknessNew)} on a table of ${mm(steel.tableThickness)}`,
          `at most ${mm(0.35 * bore(s))} together in this drum`,
        ),
      ),
  },
  {
    name: 'rivets in lining',
    reason: 'Rivet heads are sunk in the lining.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) =>
        must(
          l.rivetHeight < l.thicknessNew,
          `${at}.lining.rivetHeight`,
          mm(l.rivetHeight),
          `less than thicknessNew, ${mm(l.thicknessNew)}`,
        ),
      ),
  },
  {
    name: 'slope in lining',
    reason: 'A sloped end is cut into the lining and not through it.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) => [
        ...must(
          l.chamferDepth < l.thicknessNew,
          `${at}.lining.chamferDepth`,
          mm(l.chamferDepth),
          `less than thicknessNew, ${mm(l.thicknessNew)}`,
        ),
        ...must(
          2 * l.chamferArc < arc(l),
          `${at}.lining.chamferArc`,
          `${l.chamferArc}° at each end`,
          'less than half the arc',
        ),
        ...must(
          2 * l.cutEdgeArc < arc(l),
          `${at}.lining.cutEdgeArc`,
          `${l.cutEdgeArc}° at each end`,
          'less than half the arc',
        ),
      ]),
  },
  {
    name: 'ground radius',
    reason: 'Ground to another radius than the drum’s by this much it would never fit it.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) => {
        const r = bore(s);
        return must(
          l.groundRadius >= 0.9 * r && l.groundRadius <= 1.05 * r,
          `${at}.lining.groundRadius`,
          mm(l.groundRadius),
          `${mm(0.9 * r)} to ${mm(1.05 * r)} for this drum`,
        );
      }),
  },
  {
    name: 'lining ends over limit',
    reason: 'Ground too small, its new ends would be as thin as a worn lining.',
    broken: (s) =>
      eachShoe(s, ({ lining: l }, at) => {
        if (l.groundRadius >= bore(s)) return [];
        const ends = l.thicknessNew + proudAt(bore(s), l.groundRadius, (arc(l) / 2) * DEG);
        return must(
          ends > l.thicknessMin,
          `${at}.lining.groundRadius`,
          `${mm(l.groundRadius)}, which leaves ${mm(ends)} at the ends`,
          `as much as leaves more than thicknessMin there, ${mm(l.thicknessMin)}`,
        );
      }),
  },
  {
    name: 'drum goes on',
    reason: 'With new linings and the adjuster right back the drum has to go on.',
    broken: (s) =>
      eachShoe(s, (shoe, at, _, side) => {
        const { lining: l } = shoe;
        const middle = (l.from + l.to) / 2;
        // A strut too long for its seats is told at the strut.
        const turn = Math.max(0, slackOf(s, 0).turn[side]);
        const proud = [l.from, l.to].map(
          (end) =>
            proudAt(bore(s), l.groundRadius, (end - middle) * DEG) -
            turn * opening(shoe, side, end),
        );
        const worst = Math.max(...proud);
        return must(
          !(worst > BEARS * bore(s)),
          `${at}.lining.groundRadius`,
          `${mm(l.groundRadius)}: at rest an end stands ${mm(worst)} outside the new drum`,
          `at most ${mm(BEARS * bore(s))}`,
        );
      }),
  },
  {
    name: 'lining goes outward',
    reason: 'A shoe that opens presses all of its lining outward.',
    broken: (s) =>
      eachShoe(s, (shoe, at, outward, side) => {
        // The end beside the anchor: the front shoe's last, the rear one's first.
        const [key, end] =
          outward < 0 ? (['to', shoe.lining.to] as const) : (['from', shoe.lining.from] as const);
        return must(
          opening(shoe, side, end) >= 0,
          `${at}.lining.${key}`,
          `${end}°, past the anchor at (${shoe.anchor.at[0]}, ${shoe.anchor.at[1]})`,
          'an end before the line from the axis to the anchor',
        );
      }),
  },
];
