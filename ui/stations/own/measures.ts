import type { OwnKey } from '../../../sim/index.ts';
import { labelWords, ownMeasures as words } from '../../../sim/words/en.ts';
import { ownNames } from './fields.ts';

/** What can be measured at home on one's own brake, how, and within what. */
export interface OwnField {
  readonly key: OwnKey;
  readonly name: string;
  readonly how: string;
  /** In the unit library's spelling; none for a plain number. */
  readonly unit: 'mm' | 'N' | 'N/mm' | 'kg' | '';
  readonly digits: number;
  readonly range: readonly [number, number];
}
export interface OwnGroup {
  readonly name: string;
  readonly fields: readonly OwnField[];
}

const f = (
  key: OwnKey,
  unit: OwnField['unit'],
  digits: number,
  range: readonly [number, number],
  how: string,
): OwnField => ({ key, name: ownNames[key], how, unit, digits, range });

export const ownGroups: readonly OwnGroup[] = [
  {
    name: words.drumAndLiningsName,
    fields: [
      f('drumNew', 'mm', 2, [80, 500], words.atTheUnwornEdgeOutside),
      f('drumMax', 'mm', 2, [80, 510], words.castOnTheDrumOften),
      f('liningWidth', 'mm', 1, [5, 200], words.acrossTheShoeWithA),
      f('liningNew', 'mm', 2, [1, 25], words.onANewShoeLining),
      f('liningMin', 'mm', 2, [0, 20], words.theMakersFigureDownTo),
      f('liningArc', 'mm', 1, [20, 800], words.paperStripAlongTheRubbing),
      f('friction', '', 2, [0.05, 1], words.twoLettersAtTheEnd),
    ],
  },
  {
    name: words.placesOfTheName,
    fields: [
      f('pinsApart', 'mm', 1, [4, 200], words.betweenTheMiddlesOfBoth),
      f('pinBelow', 'mm', 1, [20, 240], words.fromTheHubsMiddleDown),
      f('toeHeight', 'mm', 1, [20, 240], words.fromTheHubsMiddleUp),
      f('strutHeight', 'mm', 1, [5, 200], words.fromTheHubsMiddleUp2),
    ],
  },
  {
    name: words.cylinderAndPedalName,
    fields: [
      f('bore', 'mm', 2, [8, 60], words.castBehindThePlateIn),
      f('stroke', 'mm', 1, [2, 40], words.cylinderOffTheVehicleFrom),
      f('masterBore', 'mm', 2, [8, 60], words.castOnItsBody),
      f('pedalRatio', '', 2, [1, 12], words.pivotToFootOverPivot),
      f('freePlay', 'mm', 1, [0, 10], words.pressByHandUntilIt),
    ],
  },
  {
    name: labelWords.adjuster,
    fields: [
      f('strutLength', 'mm', 2, [20, 400], words.seatToSeatWithThe),
      f('lostMotion', 'mm', 2, [0, 10], words.feelerGaugeBetweenStrutAnd),
      f('teeth', '', 0, [1, 2000], words.countThemFromShortestTo),
    ],
  },
  {
    name: words.returnSpringsName,
    fields: [
      f('upperForce', 'N', 0, [0, 2000], words.luggageScaleAtTheFitted),
      f('upperRate', 'N/mm', 1, [0, 200], words.pullIt5MmFurther),
      f('lowerForce', 'N', 0, [0, 2000], words.asTheUpperOne),
      f('lowerRate', 'N/mm', 1, [0, 200], words.asTheUpperOne),
    ],
  },
  {
    name: words.parkingLeverAndName,
    fields: [
      f('leverNotch', 'mm', 1, [2, 100], words.uprightFromThePivotsMiddle),
      f('leverHook', 'mm', 1, [20, 300], words.straightMiddleToMiddle),
      f('perNotch', 'mm', 1, [0.2, 20], words.markTheCablePullTen),
      f('tyre', 'mm', 0, [100, 800], words.fromTheHubsMiddleTo),
      f('mass', 'kg', 0, [50, 20000], words.fromItsPapers),
    ],
  },
];

export const ownFields: readonly OwnField[] = ownGroups.flatMap((g) => g.fields);

/** What no one measures at home: it stays the teaching brake's, and that is said. */
export const assumed: readonly string[] = words.assumed;
