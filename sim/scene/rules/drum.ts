import { PI } from '../../units/units.ts';
import { sceneRulesDrum as words } from '../../words/en.ts';
import { apart, bore, eachShoe, fromAxis, mm, must, type Rule, webRadius } from './rule.ts';

/** Drum, hub, plate and wheel. */
export const drumRules: readonly Rule[] = [
  {
    name: words.drumLimitOverName,
    reason: words.drumLimitOverReason,
    broken: ({ drum }) =>
      must(
        drum.diameterMax >= drum.diameterNew,
        'drum.diameterMax',
        mm(drum.diameterMax),
        words.atLeastDiameterNew(mm(drum.diameterNew)),
      ),
  },
  {
    name: words.drumLimitWithinName,
    reason: words.drumLimitWithinReason,
    broken: ({ drum }) =>
      must(
        drum.diameterMax - drum.diameterNew <= drum.rim,
        'drum.diameterMax',
        mm(drum.diameterMax),
        words.atMostHalfOfThe(mm(drum.diameterNew + drum.rim), mm(drum.rim)),
      ),
  },
  {
    name: words.rimOnDrumName,
    reason: words.rimOnDrumReason,
    broken: (s) =>
      must(s.drum.rim <= bore(s) / 2, 'drum.rim', mm(s.drum.rim), words.atMost(mm(bore(s) / 2))),
  },
  {
    name: words.lipUnderLimitName,
    reason: words.lipUnderLimitReason,
    broken: ({ drum }) =>
      must(
        drum.lipDiameter <= drum.diameterMax,
        'drum.lipDiameter',
        mm(drum.lipDiameter),
        words.atMostDiameterMax(mm(drum.diameterMax)),
      ),
  },
  {
    name: words.lipAsWideName,
    reason: words.lipAsWideReason,
    broken: ({ drum }) =>
      must(
        drum.lipDiameter >= 0.98 * drum.diameterNew,
        'drum.lipDiameter',
        mm(drum.lipDiameter),
        words.atLeast98OfDiameter(mm(0.98 * drum.diameterNew)),
      ),
  },
  {
    name: words.outOfRoundName,
    reason: words.outOfRoundReason,
    broken: (s) =>
      must(
        s.drum.outOfRoundMax <= 0.02 * s.drum.diameterNew,
        'drum.outOfRoundMax',
        mm(s.drum.outOfRoundMax),
        words.atMost2OfDiameter(mm(0.02 * s.drum.diameterNew)),
      ),
  },
  {
    name: words.hubInsideDrumName,
    reason: words.hubInsideDrumReason,
    broken: (s) =>
      must(
        s.look.hubRadius <= 0.6 * bore(s),
        'look.hubRadius',
        mm(s.look.hubRadius),
        words.atMostSixTenthsOf(mm(0.6 * bore(s))),
      ),
  },
  {
    name: words.webClearOfName,
    reason: words.webClearOfReason,
    broken: (s) =>
      eachShoe(s, (shoe, at) => {
        const inner = webRadius(shoe) - shoe.steel.webDepth;
        return must(
          inner > s.look.hubRadius,
          `${at}.steel.webDepth`,
          words.inToFromTheAxis(mm(shoe.steel.webDepth), mm(inner)),
          words.underClearOfTheHub(mm(webRadius(shoe) - s.look.hubRadius)),
        );
      }),
  },
  {
    name: words.studsOnHubName,
    reason: words.studsOnHubReason,
    broken: ({ look }) => [
      ...must(
        look.studCircle + look.studRadius <= look.hubRadius,
        'look.studCircle',
        words.studsOutTo(mm(look.studCircle + look.studRadius)),
        words.atMostTheHub(mm(look.hubRadius)),
      ),
      ...must(
        look.studs * 2 * look.studRadius <= 2 * PI * look.studCircle,
        'look.studs',
        words.ofOnACircleOf(look.studs, mm(2 * look.studRadius), mm(2 * PI * look.studCircle)),
        words.asManyAsHaveRoom,
      ),
    ],
  },
  {
    name: words.plateBehindDrumName,
    reason: words.plateBehindDrumReason,
    broken: (s) =>
      must(
        s.look.plateRadius >= 0.8 * bore(s) && s.look.plateRadius <= 1.5 * bore(s),
        'look.plateRadius',
        mm(s.look.plateRadius),
        words.toForThisDrum(mm(0.8 * bore(s)), mm(1.5 * bore(s))),
      ),
  },
  {
    name: words.accessHoleInName,
    reason: words.accessHoleInReason,
    broken: (s) => {
      const { at, length, radius } = s.look.accessHole;
      const reach = fromAxis(at) + length / 2 + radius;
      return must(
        reach < bore(s),
        'look.accessHole.at',
        words.aHoleOutToFrom(mm(reach)),
        words.insideTheDrumUnder(mm(bore(s))),
      );
    },
  },
  {
    name: words.anchorPinInName,
    reason: words.anchorPinInReason,
    broken: ({ look }) =>
      must(
        look.pinRadius < look.eyeRadius,
        'look.pinRadius',
        mm(look.pinRadius),
        words.underTheEyes(mm(look.eyeRadius)),
      ),
  },
  {
    name: words.pinsBesideEachName,
    reason: words.pinsBesideEachReason,
    broken: (s) => {
      const { front, rear } = s.shoes;
      if (front.anchor.kind !== 'pin' || rear.anchor.kind !== 'pin') return [];
      const off = apart(front.anchor.at, rear.anchor.at);
      return must(
        off >= 0.03 * bore(s),
        'shoes.rear.anchor.at',
        words.fromTheFrontOne(mm(off)),
        words.atLeastApart(mm(0.03 * bore(s))),
      );
    },
  },
  {
    name: words.wheelOverDrumName,
    reason: words.wheelOverDrumReason,
    broken: (s) => {
      const outside = bore(s) + s.drum.rim;
      return must(
        s.vehicle.tyreRadius > outside,
        'vehicle.tyreRadius',
        mm(s.vehicle.tyreRadius),
        words.moreThanTheDrumsOutside(mm(outside)),
      );
    },
  },
  {
    name: words.ironOfTheName,
    reason: words.ironOfTheReason,
    broken: (s) => {
      // A ring of iron as wide as the lining: 7.2e-6 kg/mm³, 500 J/kg/K (handbook values).
      const ring = 2 * PI * bore(s) * s.drum.rim * s.shoes.front.lining.width * 7.2e-6 * 500;
      return must(
        s.drum.heatCapacity >= 0.1 * ring,
        'drum.heatCapacity',
        `${s.drum.heatCapacity} J/K`,
        words.atLeastJKA(Math.ceil(0.1 * ring)),
      );
    },
  },
];
