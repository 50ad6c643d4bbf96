import { PI } from '../../units/units.ts';
import { apart, bore, eachShoe, fromAxis, mm, must, type Rule, webRadius } from './rule.ts';

/** Drum, hub, plate and wheel. */
export const drumRules: readonly Rule[] = [
  {
    name: 'drum limit over new',
    reason: 'A drum only ever gets larger.',
    broken: ({ drum }) =>
      must(
        drum.diameterMax >= drum.diameterNew,
        'drum.diameterMax',
        mm(drum.diameterMax),
        `at least diameterNew, ${mm(drum.diameterNew)}`,
      ),
  },
  {
    name: 'drum limit within rim',
    reason: 'With more than half of its rim turned off a drum bursts or cracks.',
    broken: ({ drum }) =>
      must(
        drum.diameterMax - drum.diameterNew <= drum.rim,
        'drum.diameterMax',
        mm(drum.diameterMax),
        `at most ${mm(drum.diameterNew + drum.rim)}, half of the rim's ${mm(drum.rim)} on each side`,
      ),
  },
  {
    name: 'rim on drum',
    reason: 'The rim is the drum’s wall, not its bulk.',
    broken: (s) =>
      must(s.drum.rim <= bore(s) / 2, 'drum.rim', mm(s.drum.rim), `at most ${mm(bore(s) / 2)}`),
  },
  {
    name: 'lip under limit',
    reason: 'The lip is the edge that no lining has worn.',
    broken: ({ drum }) =>
      must(
        drum.lipDiameter <= drum.diameterMax,
        'drum.lipDiameter',
        mm(drum.lipDiameter),
        `at most diameterMax, ${mm(drum.diameterMax)}`,
      ),
  },
  {
    name: 'lip as wide as new',
    reason: 'A new drum has no lip: its edge is as wide as its bore, to within a casting’s skin.',
    broken: ({ drum }) =>
      must(
        drum.lipDiameter >= 0.98 * drum.diameterNew,
        'drum.lipDiameter',
        mm(drum.lipDiameter),
        `at least ${mm(0.98 * drum.diameterNew)}, 98 % of diameterNew`,
      ),
  },
  {
    name: 'out of round in limit',
    reason: 'A drum that runs out by more than its wear is no longer the same drum.',
    broken: (s) =>
      must(
        s.drum.outOfRoundMax <= 0.02 * s.drum.diameterNew,
        'drum.outOfRoundMax',
        mm(s.drum.outOfRoundMax),
        `at most ${mm(0.02 * s.drum.diameterNew)}, 2 % of diameterNew`,
      ),
  },
  {
    name: 'hub inside drum',
    reason: 'Shoes, cylinder and strut stand about the hub, inside the drum.',
    broken: (s) =>
      must(
        s.look.hubRadius <= 0.6 * bore(s),
        'look.hubRadius',
        mm(s.look.hubRadius),
        `at most ${mm(0.6 * bore(s))}, six tenths of the drum's radius`,
      ),
  },
  {
    name: 'web clear of hub',
    reason: 'The hub turns between the shoes’ webs.',
    broken: (s) =>
      eachShoe(s, (shoe, at) => {
        const inner = webRadius(shoe) - shoe.steel.webDepth;
        return must(
          inner > s.look.hubRadius,
          `${at}.steel.webDepth`,
          `${mm(shoe.steel.webDepth)}, in to ${mm(inner)} from the axis`,
          `under ${mm(webRadius(shoe) - s.look.hubRadius)}, clear of the hub`,
        );
      }),
  },
  {
    name: 'studs on hub',
    reason: 'The wheel studs sit in the hub, beside each other.',
    broken: ({ look }) => [
      ...must(
        look.studCircle + look.studRadius <= look.hubRadius,
        'look.studCircle',
        `studs out to ${mm(look.studCircle + look.studRadius)}`,
        `at most the hub, ${mm(look.hubRadius)}`,
      ),
      ...must(
        look.studs * 2 * look.studRadius <= 2 * PI * look.studCircle,
        'look.studs',
        `${look.studs} of ${mm(2 * look.studRadius)} on a circle of ${mm(2 * PI * look.studCircle)}`,
        'as many as have room beside each other',
      ),
    ],
  },
  {
    name: 'plate behind drum',
    reason: 'The backing plate closes the drum: it is about as large.',
    broken: (s) =>
      must(
        s.look.plateRadius >= 0.8 * bore(s) && s.look.plateRadius <= 1.5 * bore(s),
        'look.plateRadius',
        mm(s.look.plateRadius),
        `${mm(0.8 * bore(s))} to ${mm(1.5 * bore(s))} for this drum`,
      ),
  },
  {
    name: 'access hole in drum',
    reason: 'The hole opens to the adjuster, inside the drum.',
    broken: (s) => {
      const { at, length, radius } = s.look.accessHole;
      const reach = fromAxis(at) + length / 2 + radius;
      return must(
        reach < bore(s),
        'look.accessHole.at',
        `a hole out to ${mm(reach)} from the axis`,
        `inside the drum, under ${mm(bore(s))}`,
      );
    },
  },
  {
    name: 'anchor pin in eye',
    reason: 'The shoe’s eye turns on the pin and the pin goes through it.',
    broken: ({ look }) =>
      must(
        look.pinRadius < look.eyeRadius,
        'look.pinRadius',
        mm(look.pinRadius),
        `under the eye's, ${mm(look.eyeRadius)}`,
      ),
  },
  {
    name: 'pins beside each other',
    reason: 'Two pins cannot stand in one place.',
    broken: (s) => {
      const { front, rear } = s.shoes;
      if (front.anchor.kind !== 'pin' || rear.anchor.kind !== 'pin') return [];
      const off = apart(front.anchor.at, rear.anchor.at);
      return must(
        off >= 0.03 * bore(s),
        'shoes.rear.anchor.at',
        `${mm(off)} from the front one`,
        `at least ${mm(0.03 * bore(s))} apart`,
      );
    },
  },
  {
    name: 'wheel over drum',
    reason: 'The wheel goes over the drum.',
    broken: (s) => {
      const outside = bore(s) + s.drum.rim;
      return must(
        s.vehicle.tyreRadius > outside,
        'vehicle.tyreRadius',
        mm(s.vehicle.tyreRadius),
        `more than the drum's outside, ${mm(outside)}`,
      );
    },
  },
  {
    name: 'iron of the drum',
    reason: 'Iron holds the heat: a drum with less than a tenth of its rim’s would be foil.',
    broken: (s) => {
      // A ring of iron as wide as the lining: 7.2e-6 kg/mm³, 500 J/kg/K (handbook values).
      const ring = 2 * PI * bore(s) * s.drum.rim * s.shoes.front.lining.width * 7.2e-6 * 500;
      return must(
        s.drum.heatCapacity >= 0.1 * ring,
        'drum.heatCapacity',
        `${s.drum.heatCapacity} J/K`,
        `at least ${Math.ceil(0.1 * ring)} J/K, a tenth of an iron rim of this size`,
      );
    },
  },
];
