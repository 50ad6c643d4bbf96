import { cos } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import { openingMiddle, over, seatsForGap, slackOf } from './pose.ts';
import { bore, eachShoe, fromAxis, mm, must, place, type Rule, webRadius } from './rule.ts';

/** Least wall between the bore and the outside, mm: a thinner one would swell (common practice is 2 and more). */
const WALL = 1;
/** A toe stands in the piston's fork: off its axis by this share of the bore at most, else it tilts the piston. */
const OFF_AXIS = 0.05;

/** Wheel cylinder, and the way of its pistons. */
export const cylinderRules: readonly Rule[] = [
  {
    name: 'wall of the cylinder',
    reason: 'The wall round the bore holds the pressure.',
    broken: ({ cylinder: c }) =>
      must(
        c.bore + 2 * WALL <= c.outerDiameter,
        'cylinder.bore',
        mm(c.bore),
        `at most ${mm(c.outerDiameter - 2 * WALL)} in a cylinder of ${mm(c.outerDiameter)}`,
      ),
  },
  {
    name: 'cylinder in drum',
    reason: 'The wheel cylinder stands inside the drum, over the hub.',
    broken: (s) => {
      const { at, length, outerDiameter } = s.cylinder;
      const far = fromAxis([Math.abs(at[0]) + length / 2, Math.abs(at[1]) + outerDiameter / 2]);
      const low = at[1] - outerDiameter / 2;
      return [
        ...must(
          far < bore(s),
          'cylinder.at',
          `${place(at)}, a corner ${mm(far)} from the axis`,
          `inside the drum, under ${mm(bore(s))}`,
        ),
        ...must(
          low > s.look.hubRadius,
          'cylinder.at',
          `${place(at)}, down to ${mm(low)} above the axis`,
          `over the hub, more than ${mm(s.look.hubRadius)}`,
        ),
      ];
    },
  },
  {
    name: 'cylinder between tables',
    reason: 'The tables end beside the wheel cylinder.',
    broken: (s) => {
      const { at, length, outerDiameter } = s.cylinder;
      return eachShoe(s, (shoe, path, outward) => {
        const end = shoe.steel.tableArc[outward < 0 ? 0 : 1] * DEG;
        const inner = webRadius(shoe);
        const beside = outward * (inner * cos(end) - at[0]) >= length / 2;
        const far = fromAxis([Math.abs(at[0]) + length / 2, at[1] + outerDiameter / 2]);
        return must(
          beside || far <= inner,
          `${path}.steel.tableArc`,
          `an end at x ${mm(inner * cos(end))}, over a cylinder that reaches ${mm(far)} out`,
          `an end beside the cylinder, past x ${mm(at[0] + (outward * length) / 2)}`,
        );
      });
    },
  },
  {
    name: 'strut under cylinder',
    reason: 'The strut goes from web to web between hub and wheel cylinder.',
    broken: (s) => {
      const low = s.cylinder.at[1] - s.cylinder.outerDiameter / 2;
      return eachShoe(s, ({ strutSeat }, path) =>
        must(
          strutSeat[1] < low,
          `${path}.strutSeat`,
          `${mm(strutSeat[1])} above the axle`,
          `under the cylinder, ${mm(low)}`,
        ),
      );
    },
  },
  {
    name: 'pistons in cylinder',
    reason: 'Each piston has its half of the cylinder, and stays in it over its stroke.',
    broken: ({ cylinder: c }) =>
      must(
        c.stroke <= c.length / 2,
        'cylinder.stroke',
        mm(c.stroke),
        `at most ${mm(c.length / 2)}, half of the cylinder's length`,
      ),
  },
  {
    name: 'toe on the cylinder’s axis',
    reason: 'A piston pushes along its axis; a toe beside it would tilt it.',
    broken: (s) =>
      eachShoe(s, ({ toe }, at) => {
        const y = s.cylinder.at[1];
        const off = OFF_AXIS * s.cylinder.bore;
        return must(
          Math.abs(toe[1] - y) <= off,
          `${at}.toe`,
          `${mm(toe[1])} above the axle`,
          `the cylinder's ${mm(y)}, to within ${mm(off)}`,
        );
      }),
  },
  {
    name: 'toe outside the cylinder',
    reason: 'The toes stand at the cylinder’s two ends.',
    broken: (s) =>
      eachShoe(s, ({ toe }, at, outward) => {
        const end = s.cylinder.at[0] + (outward * s.cylinder.length) / 2;
        return must(
          outward * (toe[0] - end) >= 0,
          `${at}.toe`,
          `x ${mm(toe[0])}`,
          `outside the cylinder's end at x ${mm(end)}`,
        );
      }),
  },
  {
    name: 'travel within stroke',
    reason: 'With new linings the pistons have to press them on before they leave the cylinder.',
    broken: (s) =>
      eachShoe(s, (shoe, _, __, side) => {
        const { adjuster } = s;
        // The clearance as built, or the most that the adjuster lets be: the seats stand apart by the slot
        // play before it can step at all.
        const clearance = Math.max(slackOf(s, 0).gap, adjuster.lostMotion / seatsForGap(s));
        const travel = (clearance * over(shoe, shoe.toe)) / openingMiddle(shoe, side);
        return must(
          !(travel > s.cylinder.stroke),
          clearance > slackOf(s, 0).gap ? 'adjuster.lostMotion' : 'adjuster.lengthAtZero',
          `${mm(clearance > slackOf(s, 0).gap ? adjuster.lostMotion : adjuster.lengthAtZero)}: the ${side} piston travels ${mm(travel)} to the first touch`,
          `a travel within the stroke of ${mm(s.cylinder.stroke)}`,
        );
      }),
  },
];
