import { orderWordsApart as words } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Holds, Step } from './step.ts';

/**
 * Taking apart, part by part. What is done in which order, by which tool and what it may do to the hand is
 * common practice of the trade; forces are the model's, of the brake on the bench.
 */

const NO_PEDAL = words.noPedal(cautions.piston);
const FLIES = words.flies;

const newton = (name: string, value: number): Holds => ({
  ...{ name, value: number(value, 0), unit: 'N' },
});

/** What a return spring holds, takes to be unhooked, and would give back. */
const spring =
  (end: 'upper' | 'lower') =>
  (desk: Facts): readonly Holds[] => {
    const u = desk.spring(end);
    if (!u) return [];
    if (desk.off.has('shoes')) return [newton(words.itHeldTogether, desk.fitted(end) ?? 0)];
    return u.now > 1
      ? [
          newton(words.itHolds, u.now),
          newton(words.takesToUnhook, u.takes),
          { name: words.storesName, value: number(u.stored / 1000, 1), unit: 'J' },
        ]
      : [newton(words.itHoldsNow, u.now)];
  };

const strutNow = (desk: Facts): readonly Holds[] => [newton(words.strutIsHeldBy, desk.strutForce)];

const shorten: Readonly<
  Record<'lift' | 'wheel' | 'wedge', Pick<Step, 'does' | 'tool' | 'flies' | 'back'>>
> = {
  lift: {
    does: words.liftDoes,
    tool: ['hook', words.thinHookAFlatBlade],
    flies: words.liftFlies,
    back: words.liftBack,
  },
  wheel: {
    does: words.wheelDoes,
    tool: ['hook', words.thinHookForTheSpring],
    flies: words.wheelFlies,
    back: words.wheelBack,
  },
  wedge: {
    does: words.wedgeDoes,
    tool: ['hook', words.thinHookForTheSpring2],
    flies: words.wedgeFlies,
    back: words.wedgeBack,
  },
};

const hold = (side: 'front' | 'rear'): Step => ({
  name: words.holdDown(side),
  does: words.aFingerOnThePins,
  tool: ['cup', words.cupTurnerOrPliersOn],
  flies: words.cupAndSpringStraightOut,
  checks: words.checks,
  care: FLIES,
  holds: (desk) => [newton(words.pressItInWith, desk.pressing(side))],
});

export function apartWords(desk: Facts): Readonly<Record<string, Step>> {
  const flats = desk.onFlats;
  return {
    before: {
      name: words.beforeName,
      does: words.beforeDoes,
      tool: ['stands', words.chocksJackTwoStandsWheel],
      checks: words.beforeChecks,
      care: `${cautions.stands} ${cautions.doubt}`,
    },
    drum: {
      name: words.drumName,
      does: words.drumDoes,
      tool: ['wash', words.lowPressureWashAndTray],
      checks: words.drumChecks,
      care: words.drumCare(cautions.wear),
      holds: (d) => [{ name: words.roomAtTheName, value: number(d.lipRoom, 2), unit: 'mm' }],
    },
    picture: {
      name: words.pictureName,
      does: words.pictureDoes,
      tool: ['camera', words.cameraChalkSheetToLay],
      back: words.pictureBack,
      checks: words.pictureChecks,
      care: NO_PEDAL,
    },
    cable: {
      name: words.cableName,
      does: words.cableDoes,
      tool: ['pliers', words.pliersOnTheCablesEnd],
      flies: words.cableFlies,
      checks: words.cableChecks,
      care: cautions.park,
      holds: (d) => [{ name: words.leverOffItsName, value: number(d.leverOff, 1), unit: 'mm' }],
    },
    shorten: {
      name: words.shortenName,
      ...shorten[desk.byHand],
      checks: words.shortenChecks,
      care: cautions.strut,
      holds: (d) => [
        newton(words.strutIsHeldBy, d.strutForce),
        newton(words.partsAToeFromIt, d.toeForce),
        ...(d.lift ? [newton(words.liftsTheLever, d.lift.total)] : []),
      ],
    },
    upper: flats
      ? {
          name: words.upperSpringOnTheBench,
          does: words.thePairLiesOnThe,
          tool: ['hands', words.handsAHookedPullerWhere],
          flies: words.littleTheShoesFoldTogether,
          back: words.hookSideAndCoilAs,
          checks: words.checks2,
          care: FLIES,
          holds: spring('upper'),
        }
      : {
          name: words.upperReturnSpring,
          does: words.hookTheToolOnThe,
          tool: ['puller', words.hookedSpringPuller],
          flies: words.theFreedHookAlongThe,
          back: words.endsInTheHolesOf,
          checks: words.checks2,
          care: FLIES,
          holds: spring('upper'),
        },
    clamp: {
      name: words.clampName,
      does: flats ? words.holdBothPistonsWithA : words.atOnceBeforeAnythingElse,
      tool: ['clamp', words.clampOrBandOverBoth],
      flies: words.clampFlies,
      checks: words.clampChecks,
      care: NO_PEDAL,
      holds: (d) => [{ name: words.leftToAName, value: number(d.runOut, 1), unit: 'mm' }],
    },
    'hold-front': hold('front'),
    'hold-rear': hold('rear'),
    strut: {
      name: words.strutName,
      does: words.strutDoes,
      tool: ['hands', words.handThinHookForThe],
      flies: words.strutFlies,
      back: words.strutBack,
      checks: words.strutChecks,
      care: cautions.springs,
      holds: strutNow,
    },
    shoes: {
      name: flats ? words.bothShoesOffAsOne : words.shoesOffTheirPins,
      does: flats ? words.drawTheToesOutOf : words.swingTheToesTowardsEach,
      tool: ['hands', 'hands'],
      flies: words.shoesFlies,
      back: words.shoesBack,
      checks: flats
        ? [words.heelsRoundsAndTheFlats, words.liningsThinnestPlaceWetLoose]
        : [words.eyesNotOvalPinsNot, words.liningsThinnestPlaceWetLoose],
      care: words.shoesCare,
    },
    lower: flats
      ? {
          name: words.lowerEndsOutLowerSpring,
          does: words.swingOneHeelOutOf,
          tool: ['hands', words.flatLeverAgainstTheAnchor],
          flies: words.aHeelThatSlipsBack,
          back: words.hooksAsInPicture4,
          checks: words.checks3,
          care: FLIES,
          holds: spring('lower'),
        }
      : {
          name: words.lowerSpringOnTheBench,
          does: words.withTheShoesFoldedTogether,
          tool: ['hands', words.handsElseThePuller],
          flies: words.littleIsLeftInIt,
          back: words.hooksAsInPicture4,
          checks: words.checks3,
          care: FLIES,
          holds: spring('lower'),
        },
    lever: {
      name: words.leverName,
      does: words.leverDoes,
      tool: ['pliers', words.clipToolANewClip],
      flies: words.leverFlies,
      back: words.leverBack,
      checks: words.leverChecks,
      care: cautions.springs,
    },
    plate: {
      name: words.plateName,
      does: words.plateDoes,
      tool: ['gauge', 'straightedge'],
      checks: words.plateChecks,
      care: cautions.wearShort,
    },
    cylinder: {
      name: words.cylinderName,
      does: words.cylinderDoes,
      tool: ['gauge', words.bluntToolRuleLiningGauge],
      checks: words.cylinderChecks,
      care: cautions.fluid,
      done: words.cylinderDone,
    },
  };
}
