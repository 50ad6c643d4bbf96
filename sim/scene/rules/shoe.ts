import { cos } from '../../math/trig.ts';
import { DEG } from '../../units/units.ts';
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
    name: 'shoe on its side',
    reason: 'The front shoe stands left of the axle, the rear one right.',
    broken: (s) =>
      eachShoe(s, (shoe, at, outward) =>
        spots(shoe).flatMap(([key, p]) =>
          must(
            outward * p[0] >= 0,
            `${at}.${key}`,
            place(p),
            outward < 0 ? 'x of 0 or less, left of the axle' : 'x of 0 or more, right of the axle',
          ),
        ),
      ),
  },
  {
    name: 'shoe in drum',
    reason: 'All of the shoe lies inside the drum.',
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
            `${place(p)}, out to ${mm(fromAxis(p) + out)} from the axis`,
            `under ${mm(room)}, inside ${room < bore(s) ? 'the table' : 'the drum'}`,
          );
        });
      }),
  },
  {
    name: 'shoe clear of hub',
    reason: 'The hub turns between the shoes.',
    broken: (s) =>
      eachShoe(s, (shoe, at) =>
        spots(shoe).flatMap(([key, p]) =>
          must(
            fromAxis(p) > s.look.hubRadius,
            `${at}.${key}`,
            `${place(p)}, ${mm(fromAxis(p))} from the axis`,
            `more than ${mm(s.look.hubRadius)}, clear of the hub`,
          ),
        ),
      ),
  },
  {
    name: 'anchor below axle',
    reason:
      'Nearer to the middle a shoe turns along the drum and not onto it: the pistons run out before it touches.',
    broken: (s) =>
      eachShoe(s, (shoe, at, _, side) => [
        ...must(
          shoe.anchor.at[1] <= -0.4 * bore(s),
          `${at}.anchor.at`,
          `${mm(-shoe.anchor.at[1])} below the axle`,
          `at least ${mm(0.4 * bore(s))} below it, four tenths of the drum's radius`,
        ),
        ...must(
          openingMiddle(shoe, side) >= 0.35 * bore(s),
          `${at}.lining.from`,
          `a middle at ${(shoe.lining.from + shoe.lining.to) / 2}°, which goes out by ${mm(openingMiddle(shoe, side))} a radian`,
          `at least ${mm(0.35 * bore(s))} a radian: a middle farther from the anchor`,
        ),
      ]),
  },
  {
    name: 'toe over anchor',
    reason: 'Else the piston cannot turn the shoe.',
    broken: (s) =>
      eachShoe(s, (shoe, at) =>
        must(
          over(shoe, shoe.toe) >= 0.5 * bore(s),
          `${at}.toe`,
          `${mm(over(shoe, shoe.toe))} above the anchor`,
          `at least ${mm(0.5 * bore(s))} above it`,
        ),
      ),
  },
  {
    name: 'seat over anchor',
    reason: 'Else the strut cannot hold the shoe.',
    broken: (s) =>
      eachShoe(s, (shoe, at) =>
        must(
          over(shoe, shoe.strutSeat) >= 0.3 * bore(s),
          `${at}.strutSeat`,
          `${mm(over(shoe, shoe.strutSeat))} above the anchor`,
          `at least ${mm(0.3 * bore(s))} above it`,
        ),
      ),
  },
  {
    name: 'heel on its flat',
    reason:
      'The flat stands inside the heel and holds it outward: the drum pushes the shoe inward.',
    broken: (s) =>
      eachShoe(s, ({ anchor }, at, outward) =>
        anchor.kind === 'pin'
          ? []
          : must(
              outward * cos(anchor.normal * DEG) >= cos(45 * DEG),
              `${at}.anchor.normal`,
              `${anchor.normal}°`,
              outward < 0 ? '135° to 225°, outward' : '-45° to 45°, outward',
            ),
      ),
  },
  {
    name: 'web holes in web',
    reason: 'A hole is cut in the shoe’s web: inside the table, clear of the hub, on its own side.',
    broken: (s) =>
      eachShoe(s, (shoe, at, outward) =>
        shoe.webHoles.flatMap((hole, i) => {
          const r = fromAxis(hole.at);
          return must(
            r + hole.radius <= webRadius(shoe) &&
              r - hole.radius >= s.look.hubRadius &&
              outward * hole.at[0] > 0,
            `${at}.webHoles.${i}.at`,
            `${place(hole.at)}, ${mm(r - hole.radius)} to ${mm(r + hole.radius)} from the axis`,
            `on the shoe's side, ${mm(s.look.hubRadius)} to ${mm(webRadius(shoe))} from the axis`,
          );
        }),
      ),
  },
  {
    name: 'steel of the table',
    reason: 'Table and web are sheet or cast steel of some thickness.',
    broken: (s) =>
      eachShoe(s, ({ steel }, at) => [
        ...must(
          steel.tableThickness >= 0.3,
          `${at}.steel.tableThickness`,
          mm(steel.tableThickness),
          'at least 0.3 mm',
        ),
        ...must(
          steel.webThickness >= 0.3,
          `${at}.steel.webThickness`,
          mm(steel.webThickness),
          'at least 0.3 mm',
        ),
        ...must(
          steel.webDepth >= 0.05 * bore(s),
          `${at}.steel.webDepth`,
          mm(steel.webDepth),
          `at least ${mm(0.05 * bore(s))}`,
        ),
      ]),
  },
  {
    name: 'weight of the shoe',
    reason: 'The shoe’s weight lies within the drum, about its anchor.',
    broken: (s) =>
      eachShoe(s, (shoe, at) => {
        const arm = Math.sqrt(shoe.inertia / shoe.mass);
        return must(
          arm >= 0.2 * bore(s) && arm <= 2 * bore(s),
          `${at}.inertia`,
          `${shoe.inertia} kg·mm² with ${shoe.mass} kg: as if ${mm(arm)} from the anchor`,
          `${mm(0.2 * bore(s))} to ${mm(2 * bore(s))}: the root of inertia over mass`,
        );
      }),
  },
  {
    name: 'strut between shoes',
    reason: 'The strut goes from shoe to shoe, over the hub.',
    broken: (s) => {
      const [a, b] = [s.shoes.front.strutSeat, s.shoes.rear.strutSeat];
      const off = lineFromAxis(a, b);
      return [
        ...must(
          b[0] - a[0] >= 0.2 * bore(s) && Math.abs(b[1] - a[1]) <= 0.3 * apart(a, b),
          'shoes.front.strutSeat',
          `${place(a)} with the rear one at ${place(b)}`,
          `left of the rear seat by ${mm(0.2 * bore(s))} or more, and about as high`,
        ),
        ...must(
          off > s.look.hubRadius && a[1] > 0,
          'shoes.rear.strutSeat',
          `a strut ${mm(off)} from the axis`,
          `over the hub, more than ${mm(s.look.hubRadius)} from the axis`,
        ),
      ];
    },
  },
];
