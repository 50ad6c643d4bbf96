import { cos } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
import { sceneRulesShoe as words } from '../../words/en.ts';
import { openingMiddle, over } from './pose.ts';
import {
  apart,
  bore,
  eachShoe,
  fromAxis,
  lineFromAxis,
  mm,
  must,
  type P,
  place,
  type Rule,
  webRadius,
} from './rule.ts';

/** Points of a shoe that carry something. */
const spots = (shoe: Parameters<Parameters<typeof eachShoe>[1]>[0]): readonly [string, P][] => [
  ['anchor.at', shoe.anchor.at],
  ['toe', shoe.toe],
  ['strutSeat', shoe.strutSeat],
  ['holdDown.at', shoe.holdDown.at],
];

/** Shoes: anchor, toe, seat, hold-down, holes, weight. */
export const shoeRules: readonly Rule[] = [
  {
    name: words.shoeOnItsName,
    reason: words.shoeOnItsReason,
    broken: (s) =>
      eachShoe(s, (shoe, at, outward) =>
        spots(shoe).flatMap(([key, p]) =>
          must(
            outward * p[0] >= 0,
            `${at}.${key}`,
            place(p),
            outward < 0 ? words.xOf0OrLess : words.xOf0OrMore,
          ),
        ),
      ),
  },
  {
    name: words.shoeInDrumName,
    reason: words.shoeInDrumReason,
    broken: (s) =>
      eachShoe(s, (shoe, at) => {
        const { anchor } = shoe;
        const round = anchor.kind === 'pin' ? s.look.pinRadius : anchor.heelRadius;
        return spots(shoe).flatMap(([key, p]) => {
          const out = key === 'anchor.at' ? round : 0;
          // What sits in the web stays under the table; toe and heel reach past its ends.
          const room = key === 'holdDown.at' || key === 'strutSeat' ? webRadius(shoe) : bore(s);
          return must(
            fromAxis(p) + out < room,
            `${at}.${key}`,
            words.outToFromTheAxis(place(p), mm(fromAxis(p) + out)),
            words.underInside(mm(room), room < bore(s) ? words.theTable : words.theDrum),
          );
        });
      }),
  },
  {
    name: words.shoeClearOfName,
    reason: words.shoeClearOfReason,
    broken: (s) =>
      eachShoe(s, (shoe, at) =>
        spots(shoe).flatMap(([key, p]) =>
          must(
            fromAxis(p) > s.look.hubRadius,
            `${at}.${key}`,
            words.fromTheAxis(place(p), mm(fromAxis(p))),
            words.moreThanClearOfThe(mm(s.look.hubRadius)),
          ),
        ),
      ),
  },
  {
    name: words.anchorBelowAxleName,
    reason: words.anchorBelowAxleReason,
    broken: (s) =>
      eachShoe(s, (shoe, at, _, side) => [
        ...must(
          shoe.anchor.at[1] <= -0.4 * bore(s),
          `${at}.anchor.at`,
          words.belowTheAxle(mm(-shoe.anchor.at[1])),
          words.atLeastBelowItFour(mm(0.4 * bore(s))),
        ),
        ...must(
          openingMiddle(shoe, side) >= 0.35 * bore(s),
          `${at}.lining.from`,
          words.aMiddleAtWhichGoes(
            (shoe.lining.from + shoe.lining.to) / 2,
            mm(openingMiddle(shoe, side)),
          ),
          words.atLeastARadianA(mm(0.35 * bore(s))),
        ),
      ]),
  },
  {
    name: words.toeOverAnchorName,
    reason: words.toeOverAnchorReason,
    broken: (s) =>
      eachShoe(s, (shoe, at) =>
        must(
          over(shoe, shoe.toe) >= 0.5 * bore(s),
          `${at}.toe`,
          words.aboveTheAnchor(mm(over(shoe, shoe.toe))),
          words.atLeastAboveIt(mm(0.5 * bore(s))),
        ),
      ),
  },
  {
    name: words.seatOverAnchorName,
    reason: words.seatOverAnchorReason,
    broken: (s) =>
      eachShoe(s, (shoe, at) =>
        must(
          over(shoe, shoe.strutSeat) >= 0.3 * bore(s),
          `${at}.strutSeat`,
          words.aboveTheAnchor(mm(over(shoe, shoe.strutSeat))),
          words.atLeastAboveIt(mm(0.3 * bore(s))),
        ),
      ),
  },
  {
    name: words.heelOnItsName,
    reason: words.heelOnItsReason,
    broken: (s) =>
      eachShoe(s, ({ anchor }, at, outward) =>
        anchor.kind === 'pin'
          ? []
          : must(
              outward * cos(anchor.normal * DEG) >= cos(45 * DEG),
              `${at}.anchor.normal`,
              `${anchor.normal}°`,
              outward < 0 ? words.of135To225Outward : words.of45To45Outward,
            ),
      ),
  },
  {
    name: words.webHolesInName,
    reason: words.webHolesInReason,
    broken: (s) =>
      eachShoe(s, (shoe, at, outward) =>
        shoe.webHoles.flatMap((hole, i) => {
          const r = fromAxis(hole.at);
          return must(
            r + hole.radius <= webRadius(shoe) &&
              r - hole.radius >= s.look.hubRadius &&
              outward * hole.at[0] > 0,
            `${at}.webHoles.${i}.at`,
            words.toFromTheAxis(place(hole.at), mm(r - hole.radius), mm(r + hole.radius)),
            words.onTheShoesSideTo(mm(s.look.hubRadius), mm(webRadius(shoe))),
          );
        }),
      ),
  },
  {
    name: words.steelOfTheName,
    reason: words.steelOfTheReason,
    broken: (s) =>
      eachShoe(s, ({ steel }, at) => [
        ...must(
          steel.tableThickness >= 0.3,
          `${at}.steel.tableThickness`,
          mm(steel.tableThickness),
          words.atLeast03Mm,
        ),
        ...must(
          steel.webThickness >= 0.3,
          `${at}.steel.webThickness`,
          mm(steel.webThickness),
          words.atLeast03Mm,
        ),
        ...must(
          steel.webDepth >= 0.05 * bore(s),
          `${at}.steel.webDepth`,
          mm(steel.webDepth),
          words.atLeast(mm(0.05 * bore(s))),
        ),
      ]),
  },
  {
    name: words.weightOfTheName,
    reason: words.weightOfTheReason,
    broken: (s) =>
      eachShoe(s, (shoe, at) => {
        const arm = Math.sqrt(shoe.inertia / shoe.mass);
        return must(
          arm >= 0.2 * bore(s) && arm <= 2 * bore(s),
          `${at}.inertia`,
          words.kgMmWithKgAs(shoe.inertia, shoe.mass, mm(arm)),
          words.toTheRootOfInertia(mm(0.2 * bore(s)), mm(2 * bore(s))),
        );
      }),
  },
  {
    name: words.strutBetweenShoesName,
    reason: words.strutBetweenShoesReason,
    broken: (s) => {
      const [a, b] = [s.shoes.front.strutSeat, s.shoes.rear.strutSeat];
      const off = lineFromAxis(a, b);
      return [
        ...must(
          b[0] - a[0] >= 0.2 * bore(s) && Math.abs(b[1] - a[1]) <= 0.3 * apart(a, b),
          'shoes.front.strutSeat',
          words.withTheRearOneAt(place(a), place(b)),
          words.leftOfTheRearSeat(mm(0.2 * bore(s))),
        ),
        ...must(
          off > s.look.hubRadius && a[1] > 0,
          'shoes.rear.strutSeat',
          words.aStrutFromTheAxis(mm(off)),
          words.overTheHubMoreThan(mm(s.look.hubRadius)),
        ),
      ];
    },
  },
];
