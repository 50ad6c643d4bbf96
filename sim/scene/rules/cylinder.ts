import { cos } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import { sceneRulesCylinder as words } from '../../words/en.ts';
import { openingMiddle, over, seatsForGap, slackOf } from './pose.ts';
import { bore, eachShoe, fromAxis, mm, must, place, type Rule, webRadius } from './rule.ts';

/** Least wall between the bore and the outside, mm: a thinner one would swell (common practice is 2 and more). */
const WALL = 1;
/** A toe stands in the piston's fork: off its axis by this share of the bore at most, else it tilts the piston. */
const OFF_AXIS = 0.05;

/** Wheel cylinder, and the way of its pistons. */
export const cylinderRules: readonly Rule[] = [
  {
    name: words.wallOfTheName,
    reason: words.wallOfTheReason,
    broken: ({ cylinder: c }) =>
      must(
        c.bore + 2 * WALL <= c.outerDiameter,
        'cylinder.bore',
        mm(c.bore),
        words.atMostInACylinder(mm(c.outerDiameter - 2 * WALL), mm(c.outerDiameter)),
      ),
  },
  {
    name: words.cylinderInDrumName,
    reason: words.cylinderInDrumReason,
    broken: (s) => {
      const { at, length, outerDiameter } = s.cylinder;
      const far = fromAxis([Math.abs(at[0]) + length / 2, Math.abs(at[1]) + outerDiameter / 2]);
      const low = at[1] - outerDiameter / 2;
      return [
        ...must(
          far < bore(s),
          'cylinder.at',
          words.aCornerFromTheAxis(place(at), mm(far)),
          words.insideTheDrumUnder(mm(bore(s))),
        ),
        ...must(
          low > s.look.hubRadius,
          'cylinder.at',
          words.downToAboveTheAxis(place(at), mm(low)),
          words.overTheHubMoreThan(mm(s.look.hubRadius)),
        ),
      ];
    },
  },
  {
    name: words.cylinderBetweenTablesName,
    reason: words.cylinderBetweenTablesReason,
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
          words.anEndAtXOver(mm(inner * cos(end)), mm(far)),
          words.anEndBesideTheCylinder(mm(at[0] + (outward * length) / 2)),
        );
      });
    },
  },
  {
    name: words.strutUnderCylinderName,
    reason: words.strutUnderCylinderReason,
    broken: (s) => {
      const low = s.cylinder.at[1] - s.cylinder.outerDiameter / 2;
      return eachShoe(s, ({ strutSeat }, path) =>
        must(
          strutSeat[1] < low,
          `${path}.strutSeat`,
          words.aboveTheAxle(mm(strutSeat[1])),
          words.underTheCylinder(mm(low)),
        ),
      );
    },
  },
  {
    name: words.pistonsInCylinderName,
    reason: words.pistonsInCylinderReason,
    broken: ({ cylinder: c }) =>
      must(
        c.stroke <= c.length / 2,
        'cylinder.stroke',
        mm(c.stroke),
        words.atMostHalfOfThe(mm(c.length / 2)),
      ),
  },
  {
    name: words.toeOnTheName,
    reason: words.toeOnTheReason,
    broken: (s) =>
      eachShoe(s, ({ toe }, at) => {
        const y = s.cylinder.at[1];
        const off = OFF_AXIS * s.cylinder.bore;
        return must(
          Math.abs(toe[1] - y) <= off,
          `${at}.toe`,
          words.aboveTheAxle2(mm(toe[1])),
          words.theCylindersToWithin(mm(y), mm(off)),
        );
      }),
  },
  {
    name: words.toeOutsideTheName,
    reason: words.toeOutsideTheReason,
    broken: (s) =>
      eachShoe(s, ({ toe }, at, outward) => {
        const end = s.cylinder.at[0] + (outward * s.cylinder.length) / 2;
        return must(
          outward * (toe[0] - end) >= 0,
          `${at}.toe`,
          `x ${mm(toe[0])}`,
          words.outsideTheCylindersEndAt(mm(end)),
        );
      }),
  },
  {
    name: words.travelWithinStrokeName,
    reason: words.travelWithinStrokeReason,
    broken: (s) =>
      eachShoe(s, (shoe, _, __, side) => {
        const { adjuster } = s;
        // The clearance as built, or the most that the adjuster lets be: the seats stand apart by the slot
        // play before it can step at all.
        const clearance = Math.max(slackOf(s).gap, adjuster.lostMotion / seatsForGap(s));
        const travel = (clearance * over(shoe, shoe.toe)) / openingMiddle(shoe, side);
        return must(
          !(travel > s.cylinder.stroke),
          clearance > slackOf(s).gap ? 'adjuster.lostMotion' : 'adjuster.lengthAtZero',
          words.thePistonTravelsToThe(
            mm(clearance > slackOf(s).gap ? adjuster.lostMotion : adjuster.lengthAtZero),
            side,
            mm(travel),
          ),
          words.aTravelWithinTheStroke(mm(s.cylinder.stroke)),
        );
      }),
  },
];
