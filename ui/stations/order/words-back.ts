import { labelWords, orderWordsBack as words } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Holds, Step } from './step.ts';

/** Backing the adjuster off with the drum on: what is done, seen and felt. Figures are the model's. */

interface Hand {
  readonly lift: string;
  readonly push: string;
  readonly felt: string;
  readonly wrong: string;
}

const hands: Readonly<Record<'lift' | 'wheel' | 'wedge', Hand>> = {
  lift: words.lift,
  wheel: words.wheel,
  wedge: words.wedge,
};

function gives(desk: Facts): readonly Holds[] {
  const g = desk.gives;
  if (!g) return [];
  return [
    { name: words.clearanceEachLiningName, value: number(g.clearance, 2), unit: 'mm' },
    { name: words.roomAtTheName, value: number(g.lip, 2), unit: 'mm' },
    { name: labelWords.pedal, value: number(g.pedal, 1), unit: 'mm' },
    { name: words.notchesName, value: number(g.notches, 1), unit: '' },
  ];
}

export function backWords(desk: Facts): Readonly<Record<string, Step>> {
  const hand = hands[desk.byHand];
  return {
    load: {
      name: words.loadName,
      does: words.loadDoes,
      tool: ['pliers', words.spannerAtTheCableFlare],
      checks: words.loadChecks,
      care: cautions.park,
      holds: (d) => [{ name: words.strutIsHeldName, value: number(d.strutForce, 0), unit: 'N' }],
    },
    find: {
      name: words.findName,
      does: words.findDoes,
      tool: ['hook', words.torchThinHookFlatBlade],
      checks: [words.youSeeOrFeelThe],
      care: words.findCare,
    },
    lift: {
      name: words.liftName,
      does: `${hand.lift} ${hand.felt}`,
      tool: ['hook', words.thinHookFlatBlade],
      checks: [words.itLiftsWithThatMuch],
      care: cautions.strut,
      holds: (d) =>
        d.lift
          ? [
              { name: words.toLiftItName, value: number(d.lift.total, 0), unit: 'N' },
              { name: words.ofItItsName, value: number(d.lift.spring, 0), unit: 'N' },
              { name: words.ofItTheName, value: number(d.lift.friction, 0), unit: 'N' },
            ]
          : [],
    },
    push: {
      name: words.pushName,
      does: `${hand.push} ${hand.wrong}`,
      tool: ['hook', words.hookHoldsBladePushes],
      checks: [words.eachOneCountedToSet],
      care: cautions.strut,
      holds: gives,
    },
    try: {
      name: words.tryName,
      does: (d) =>
        d.need === null
          ? words.pressItHomeTurnIt
          : d.need <= 0
            ? words.pressItHomeTurnIt2
            : words.pressItHomeTurnIt3(d.needText),
      tool: ['hands', words.handsBothEdgesOfThe],
      checks: [words.triedThreeTimesAndStill],
      care: words.tryCare(cautions.drumOff.split('. ')[1] ?? ''),
    },
    'way-out': {
      name: words.wayOutName,
      does: words.wayOutDoes,
      tool: ['hands', words.seeEach],
      checks: [],
      care: words.wayOutCare,
      done: words.wayOutDone,
    },
  };
}

/** Ways without a hole, each with its price; forces of the lip from the model. */
export function waysOut(desk: Facts): readonly (readonly [way: string, price: string])[] {
  const f = desk.lipForce;
  const kn = (n: number) => `${number(n / 1000, 1)} kN`;
  return [
    [words.lookForAPressedIn, words.costsNothing],
    [
      words.twoScrewsByTurnsIn,
      f
        ? words.atTheLipThisPulls(kn(f.pull), kn(f.onShoe), f.givesFirst, kn(f.givesAt))
        : words.rightForRustAtThe,
    ],
    [words.theCylindersTwoBoltsOut, words.thePipeMayBreakThen],
    [words.cutTheHeadsOfThe, words.pinsSpringsMostlyLiningsSprings],
    [words.drillAHoleWhereThis, words.onlyByTheMakersDrawing],
    [words.cutTheDrum, words.theDrumIsLostFor],
  ];
}
