import type { FaultId } from '../../index.ts';
import { seeTold as words } from '../../words/en.ts';

/**
 * What no examination of this bench shows, but people tell: when, since what work, which noise or smell.
 * Which goes with which fault is common practice of the trade; it sways, it does not decide.
 */
export interface Told {
  readonly key: string;
  readonly name: string;
  readonly ask: string;
  readonly values: readonly (readonly [value: string, label: string])[];
  /** Faults that go with a value. */
  readonly speaksFor: Readonly<Record<string, readonly FaultId[]>>;
}

export const told: readonly Told[] = [
  {
    key: 'when',
    name: words.whenName,
    ask: words.whenAsk,
    values: [
      ['always', words.always],
      ['braked', words.justAfterBraking],
      ['longer', words.worseTheLongerIDrive],
      ['cold', words.onlyCold],
      ['parked', words.afterParking],
      ['laden', words.onlyLaden],
      ['downhill', words.afterALongDescent],
      ['damp', words.dampFirstStops],
    ],
    speaksFor: {
      braked: ['hose', 'sluggish pistons'],
      longer: ['port shut'],
      cold: ['stepped hot', 'damp', 'rusted on'],
      parked: ['worn teeth', 'kept pull', 'stiff pivot', 'rusted on'],
      laden: ['bearing'],
      downhill: ['hot fade', 'stepped hot'],
      damp: ['damp', 'water inside', 'rusted on'],
    },
  },
  {
    key: 'since',
    name: words.sinceName,
    ask: words.sinceAsk,
    values: [
      ['sudden', words.allAtOnce],
      ['weeks', words.weeks],
      ['months', words.monthsSlowlyWorse],
      ['work', words.sinceSomeWork],
    ],
    speaksFor: {
      months: [
        'seized short',
        'broken lever spring',
        'dead adjuster to the end',
        'stretched cable',
        'lip',
        'glazed',
        'stiff pivot',
        'worn teeth',
        'sluggish pistons',
      ],
      sudden: [
        'rusted on',
        'damp',
        'water inside',
        'hot fade',
        'stepped hot',
        'broken lever spring',
      ],
      work: [
        'shoes swapped',
        'wrong side',
        'strut mis-seated',
        'short cable',
        'strong springs',
        'port shut',
        'other bore',
        'air',
        'oversize bore',
        'lining ends',
        'drum off centre',
      ],
    },
  },
  {
    key: 'after',
    name: words.afterName,
    ask: words.afterAsk,
    values: [
      ['none', words.nothing],
      ['shoes', words.shoes],
      ['drum', words.drum],
      ['cylinder', words.wheelCylinder],
      ['pipe', words.hoseOrPipe],
      ['cable', words.cableLever],
      ['hub', words.hubBearing],
      ['master', words.masterBoosterPedal],
      ['wash', words.washingRain],
      ['stood', words.stoodForMonths],
    ],
    speaksFor: {
      shoes: [
        'shoes swapped',
        'strut mis-seated',
        'wrong side',
        'oversize bore',
        'lining ends',
        'strong springs',
      ],
      drum: ['oversize bore', 'drum off centre', 'oval drum'],
      cylinder: ['other bore', 'air'],
      pipe: ['air'],
      cable: ['short cable'],
      hub: ['drum off centre', 'bearing'],
      master: ['port shut', 'air'],
      wash: ['rusted on', 'water inside', 'damp'],
      stood: ['rusted on', 'hub rust', 'kept pull', 'stuck piston', 'stiff pivot'],
    },
  },
  {
    key: 'noise',
    name: words.noiseName,
    ask: words.noiseAsk,
    values: [
      ['none', words.noNoise],
      ['squeal', words.squeal],
      ['grind', words.grinding],
      ['groan', words.groanHonk],
      ['clunk', words.oneClunkChangeOfDirection],
      ['rattle', words.rattle],
      ['rub', words.rubSwish],
      ['pop', words.popAtTheFirstTouch],
      ['bang', words.bangThenLocksOneWay],
    ],
    speaksFor: {
      grind: ['dead adjuster to the end'],
      groan: ['glazed', 'damp', 'bearing'],
      rub: ['drum off centre', 'oval drum', 'bearing', 'kept pull', 'hose'],
      pop: ['groove', 'rusted on'],
      squeal: ['glazed', 'damp'],
    },
  },
  {
    key: 'smell',
    name: words.smellName,
    ask: words.smellAsk,
    values: [
      ['none', words.noSmell],
      ['burnt', words.burntLining],
      ['oil', words.oil],
      ['fluid', words.fluidFishy],
    ],
    speaksFor: {
      burnt: [
        'kept pull',
        'hose',
        'port shut',
        'leaning part',
        'bearing',
        'stepped hot',
        'strut mis-seated',
        'hot fade',
        'oval drum',
      ],
      oil: ['oil on one lining'],
      fluid: ['fluid on linings'],
    },
  },
];

/** What was told, that this plane does not show: said beside the list. */
export const unseen: Readonly<Record<string, { readonly text: string; readonly danger?: true }>> = {
  'feel=sinks': {
    text: words.feelSinksText,
    danger: true,
  },
  'noise=squeal': {
    text: words.noiseSquealText,
  },
  'noise=grind': {
    text: words.noiseGrindText,
    danger: true,
  },
  'noise=clunk': {
    text: words.noiseClunkText,
  },
  'noise=rattle': { text: words.noiseRattleText },
  'noise=bang': {
    text: words.noiseBangText,
    danger: true,
  },
  'travel=floor': {
    text: words.travelFloorText,
    danger: true,
  },
  'thin=gone': { text: words.thinGoneText, danger: true },
  'wet=fluid': { text: words.wetFluidText, danger: true },
};

/** Never to be seen here, whatever was said. */
export const neverSeen = words.neverSeen;
