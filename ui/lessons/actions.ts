import * as v from 'valibot';
import { part, words } from '../../sim/index.ts';
import { lessonsActions as texts } from '../../sim/words/en.ts';

/** What a hand does to the brake in a lesson: a list of these is its script. */

const num = (about: string, least: number, most: number) =>
  v.pipe(
    v.number(texts.aNumber),
    v.minValue(least, texts.atLeast(least)),
    v.maxValue(most, texts.atMost(most)),
    v.description(about),
  );
const yes = (about: string) => v.pipe(v.boolean(texts.trueOrFalse), v.description(about));
const act = <const K extends string, const T extends v.ObjectEntries>(
  name: K,
  about: string,
  entries: T,
) => part(about, { do: v.literal(name), ...entries });
const maybe = v.optional;

/** What is out of order: keys as the record's condition has them, in its units. */
const condition = {
  springFactor: maybe(num(texts.forceOfTheReturnSprings, 0, 10)),
  adjusterSeized: maybe(yes(texts.theAdjusterIsStuckWhere)),
  teethHold: maybe(num(texts.teethLetGoAboveThis, 0, 1e6)),
  keptPressure: maybe(num(texts.pressureThatStaysInThe, 0, 100)),
  leanFront: maybe(num(texts.aStuckPartLeansOn, 0, 1e4)),
  leanRear: maybe(num(texts.aStuckPartLeansOn2, 0, 1e4)),
  offCentre: maybe(num(texts.drumOffCentreMm, 0, 5)),
  oval: maybe(num(texts.drumOvalByMm, 0, 5)),
};

export const action = v.variant(
  'do',
  [
    act('pedal', texts.pressesThePedalAndHolds, {
      bar: num(texts.linePressureBar, 0, 80),
      seconds: maybe(num(texts.howLongThePedalTakes, 0, 20)),
    }),
    act('release', texts.letsThePedalGo, {}),
    act('drum', texts.turnsTheDrum, {
      way: v.picklist(['forward', 'backward', 'stands'], texts.forwardBackwardOrStands),
    }),
    act('wear', texts.drivesTheBrakeOnBy, {
      km: maybe(num(texts.soFarKm, 0, 500000)),
      to: maybe(v.picklist(['click', 'limit'], texts.clickOrLimit)),
      reverse: maybe(num(texts.shareOfTheStopsIn, 0, 100)),
      past: maybe(yes(texts.onPastTheLimits)),
      seconds: maybe(num(texts.howLongItIsShown, 0, 60)),
    }),
    act('tooth', texts.setsTheAdjusterByHand, {
      to: maybe(num(texts.toThisTooth, 0, 1e5)),
      by: maybe(num(texts.onBySoManyLess, -1e5, 1e5)),
    }),
    act('lever', texts.letsTheCableHoldThe, {
      mm: num(texts.atTheHookMm, 0, 8),
    }),
    act('cable', texts.pullsTheParkingCable, {
      newton: num(texts.atEachBrakeN0, 0, 600),
      slack: maybe(num(texts.slackBeyondTheBrakesOwn, 0, 30)),
    }),
    act('descend', texts.goesDownAHillThe, {
      slope: num(texts.slope, 1, 40),
      km: num(texts.lengthKm, 0.1, 30),
      kmh: maybe(num(texts.speedKmH, 5, 120)),
    }),
    act('cool', texts.letsTheDrumCoolDown, {}),
    act('grow', texts.warmsTheDrumBySo, { kelvin: num('K', 0, 400) }),
    act('state', texts.putsOnAStandingState, { name: words(texts.itsName) }),
    act('brake', texts.putsAnotherTeachingBrakeOn, { name: words(texts.itsName) }),
    act('condition', texts.putsSomethingOutOfOrder, condition),
    act('friction', texts.liningsOfAnotherFriction, {
      front: maybe(num(texts.plainNumber, 0.05, 1)),
      rear: maybe(num(texts.plainNumber, 0.05, 1)),
    }),
    act('circuit', texts.anotherGiveOfTheRest, {
      mm3PerMPa: num('mm³/MPa', 1, 5000),
    }),
    act('shoes', texts.fitsNewShoes, {
      bore: num(texts.boreOfTheDrumMm, 50, 500),
      lip: maybe(num(texts.diameterOfTheUnwornEdge, 50, 500)),
      tooth: num(texts.toothTheAdjusterStandsAt, 0, 1e5),
    }),
    act('swap', texts.putsTheWornShoesIn, {}),
    act('try', texts.triesTheDrumByHand, {
      what: v.picklist(['pull', 'turn', 'rock'], texts.pullTurnOrRock),
    }),
    act('hold', texts.somethingHoldsTheDrumBesides, {
      hubRust: maybe(yes(texts.rustAtTheHub)),
      liningsRusted: maybe(yes(texts.liningsRustedOn)),
    }),
    act('show', texts.layersAndWhatIsLooked, {
      on: maybe(v.array(words(texts.aLayer))),
      off: maybe(v.array(words(texts.aLayer))),
      fan: maybe(v.picklist([1, 20, 40], texts.of120Or40)),
      names: maybe(v.array(words(texts.aPart))),
      holdDown: maybe(v.picklist(['fitted', 'lost'], texts.fittedOrLost)),
    }),
    act('note', texts.keepsTheValuesOfThis, { as: words(texts.theName, 20) }),
    act('wait', texts.holdsStill, { seconds: num('s', 0, 60) }),
  ],
  texts.anActionDo,
);
export type Action = v.InferOutput<typeof action>;
