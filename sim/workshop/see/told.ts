import type { FaultId } from '../../index.ts';

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
    name: 'When',
    ask: 'When does it happen?',
    values: [
      ['always', 'always'],
      ['braked', 'just after braking'],
      ['longer', 'worse the longer I drive'],
      ['cold', 'only cold'],
      ['parked', 'after parking'],
      ['laden', 'only laden'],
      ['downhill', 'after a long descent'],
      ['damp', 'damp, first stops'],
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
    name: 'Since',
    ask: 'Since when?',
    values: [
      ['sudden', 'all at once'],
      ['weeks', 'weeks'],
      ['months', 'months, slowly worse'],
      ['work', 'since some work'],
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
    name: 'After work on',
    ask: 'After which work?',
    values: [
      ['none', 'none'],
      ['shoes', 'shoes'],
      ['drum', 'drum'],
      ['cylinder', 'wheel cylinder'],
      ['pipe', 'hose or pipe'],
      ['cable', 'cable, lever'],
      ['hub', 'hub, bearing'],
      ['master', 'master, booster, pedal'],
      ['wash', 'washing, rain'],
      ['stood', 'stood for months'],
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
    name: 'Noise',
    ask: 'Which noise?',
    values: [
      ['none', 'none'],
      ['squeal', 'squeal'],
      ['grind', 'grinding'],
      ['groan', 'groan, honk'],
      ['clunk', 'one clunk, change of direction'],
      ['rattle', 'rattle'],
      ['rub', 'rub, swish'],
      ['pop', 'pop at the first touch'],
      ['bang', 'bang, then locks one way'],
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
    name: 'Smell',
    ask: 'A smell?',
    values: [
      ['none', 'none'],
      ['burnt', 'burnt lining'],
      ['oil', 'oil'],
      ['fluid', 'fluid, fishy'],
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
    text: 'A pedal that sinks is a master seal or a leak: not on this bench. Do not drive it.',
    danger: true,
  },
  'noise=squeal': {
    text: 'Noise is not computed. Shiny linings, loose hold-downs, dry pads are looked at first.',
  },
  'noise=grind': {
    text: 'Grinding may be metal on metal, out of this plane. Do not drive it before the drum was off.',
    danger: true,
  },
  'noise=clunk': {
    text: 'One clunk at a change of direction is a worn pin or abutment: pins here have no play.',
  },
  'noise=rattle': { text: 'A rattle may be a hold-down lost: the shoe tilts out of this plane.' },
  'noise=bang': {
    text: 'A loose lining wedges one way: not on this bench. Do not drive it.',
    danger: true,
  },
  'travel=floor': {
    text: 'A pedal on the floor: do not drive it, whatever the cause.',
    danger: true,
  },
  'thin=gone': { text: 'No lining is left: do not drive it.', danger: true },
  'wet=fluid': { text: 'A leak of fluid: do not drive it.', danger: true },
};

/** Never to be seen here, whatever was said. */
export const neverSeen =
  'Not to be seen on this bench: a bell-mouthed drum, a lost hold-down, a loose lining, a worn pin.';
