import { orderWordsSet as words } from '../../../sim/words/en.ts';
import { cautions } from '../../cautions.ts';
import { number } from '../../format.ts';
import type { Facts, Step } from './step.ts';

/** Setting new shoes, and bedding them in: figures are the model's, with the sizes of New shoes. */

const mm2 = (value: number): string => number(value, 2);

export function setWords(desk: Facts): Readonly<Record<string, Step>> {
  const { set } = desk;
  return {
    parts: {
      name: words.partsName,
      does: () =>
        words.boreLiningsThickAndGround(
          mm2(set.bore),
          mm2(set.thickness),
          mm2(set.ground),
          set.fitWords,
        ),
      tool: ['gauge', words.drumGaugeRule],
      checks: words.partsChecks,
      care: words.partsCare,
    },
    gauge: {
      name: words.gaugeName,
      does: () => words.cableSlackMeasureTheBore(mm2(set.difference), set.toothName),
      tool: ['gauge', words.shoeSettingGauge],
      checks: [words.gaugeSlidesOverBothLinings],
      care: cautions.piston,
      holds: () => [
        { name: words.smallerThanTheName, value: mm2(set.difference), unit: 'mm' },
        { name: words.gapOfEachName, value: mm2(set.gap), unit: 'mm' },
        { name: words.roomAtTheName, value: mm2(set.lip), unit: 'mm' },
      ],
    },
    'drum-on': {
      name: words.drumOnName,
      does: words.drumOnDoes,
      tool: ['hands', 'hands'],
      checks: words.drumOnChecks,
      care: cautions.fitting,
    },
    silent: {
      name: words.silentName,
      does: () => words.oneListensAtEachWheel(set.pressText),
      tool: ['pedal', words.aFootAndAnEar],
      checks: [words.silentAtBothWheels],
      care: words.silentCare,
      holds: () => [
        { name: words.pressesUntilSilentName, value: String(set.presses), unit: '' },
        { name: words.gapThenEachName, value: mm2(set.gapThen), unit: 'mm' },
        { name: words.pedalThenName, value: number(set.pedalThen, 1), unit: 'mm' },
      ],
    },
    home: {
      name: words.homeName,
      does: words.homeDoes,
      tool: ['hands', words.torchThroughTheHole],
      checks: words.homeChecks,
      care: words.homeCare,
    },
    'cable-last': {
      name: words.cableLastName,
      does: () => words.slackJustGoneBothLevers(number(set.notches, 1)),
      tool: ['pliers', words.spannerAtTheCablesNut],
      checks: words.cableLastChecks,
      care: cautions.park,
      holds: () => [{ name: words.notchesAt300Name, value: number(set.notches, 1), unit: '' }],
    },
    turn: {
      name: words.turnName,
      does: () => words.atTheTyreUnderN(number(set.felt, 0), number(set.stiff, 0)),
      tool: ['hands', words.aHandAtTheTyre],
      checks: words.turnChecks,
      care: cautions.fitting,
      holds: () => [
        { name: words.freeUnderName, value: number(set.felt, 0), unit: 'N' },
        { name: words.wrongOverName, value: number(set.stiff, 0), unit: 'N' },
        {
          name: words.hereForwardName,
          value: `${number(set.turns[0], 0)} / ${number(set.turns[1], 0)}`,
          unit: 'N',
        },
      ],
      done: words.turnDone,
    },
  };
}

export function bedWords(desk: Facts): Readonly<Record<string, Step>> {
  const bed = desk.bedding;
  return {
    stops: {
      name: words.stopsName,
      does: () => words.tenSlowDownsFrom50(number(bed.rise, 0), number(bed.warmest, 0)),
      tool: ['pedal', words.anEmptyLevelRoad],
      checks: words.stopsChecks,
      care: cautions.fault,
    },
    far: {
      name: words.farName,
      does: () =>
        words.tenSlowDownsBedNothing(
          number(bed.tenKm, 0),
          bed.share(0),
          bed.share(bed.tenKm),
          bed.farText,
        ),
      tool: ['pedal', 'patience'],
      checks: words.farChecks,
      care: cautions.hot,
    },
    'first-drive': {
      name: words.firstDriveName,
      does: words.firstDriveDoes,
      tool: ['pedal', words.levelEmptyGround],
      checks: words.firstDriveChecks,
      care: cautions.fitting,
    },
    refuse: {
      name: words.refuseName,
      does: words.refuseDoes,
      tool: ['stands', words.aTrailer],
      checks: [words.noneOfTheseHolds],
      care: cautions.standing,
      done: words.refuseDone,
    },
  };
}
