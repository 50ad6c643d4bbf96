import type { FrictionFault } from '../index.ts';
import { workshopFaultsFriction as words } from '../words/en.ts';
import type { FaultWords } from './fault-types.ts';

const COMMON = words.common;

/** What the workshop says of them. */
export const frictionFaults: Readonly<Record<FrictionFault, FaultWords>> = {
  'fluid on linings': {
    short: words.fluidOnLiningsShort,
    change: words.fluidOnLiningsChange,
    mechanism: words.fluidOnLiningsMechanism(COMMON),
    tells: words.fluidOnLiningsTells,
    lookAlikes: ['stuck piston', 'oil on one lining', 'glazed', 'water inside'],
    remedy: words.fluidOnLiningsRemedy,
    caution: 'fluid',
  },
  'oil on one lining': {
    short: words.oilOnOneLiningShort,
    change: words.oilOnOneLiningChange,
    mechanism: words.oilOnOneLiningMechanism(COMMON),
    tells: words.oilOnOneLiningTells,
    lookAlikes: ['stuck piston', 'stiff pivot', 'glazed', 'fluid on linings'],
    remedy: words.oilOnOneLiningRemedy,
    caution: 'park',
  },
  glazed: {
    short: words.glazedShort,
    change: words.glazedChange,
    mechanism: words.glazedMechanism(COMMON),
    tells: words.glazedTells,
    lookAlikes: ['fluid on linings', 'stiff pivot', 'hot fade', 'strong springs'],
    remedy: words.glazedRemedy,
    caution: 'wear',
  },
  damp: {
    short: words.dampShort,
    change: words.dampChange,
    mechanism: words.dampMechanism(COMMON),
    tells: words.dampTells,
    lookAlikes: ['other bore', 'lining ends', 'leaning part'],
    remedy: words.dampRemedy,
    caution: 'fault',
  },
  'water inside': {
    short: words.waterInsideShort,
    change: words.waterInsideChange,
    mechanism: words.waterInsideMechanism(COMMON),
    tells: words.waterInsideTells,
    lookAlikes: ['fluid on linings', 'glazed'],
    remedy: words.waterInsideRemedy,
    caution: 'fault',
  },
  'hot fade': {
    short: words.hotFadeShort,
    change: words.hotFadeChange,
    mechanism: words.hotFadeMechanism,
    tells: words.hotFadeTells,
    lookAlikes: ['air', 'glazed', 'oversize bore'],
    remedy: words.hotFadeRemedy,
    caution: 'hot',
  },
  'oversize bore': {
    short: words.oversizeBoreShort,
    change: words.oversizeBoreChange,
    mechanism: words.oversizeBoreMechanism,
    tells: words.oversizeBoreTells,
    lookAlikes: ['glazed', 'hot fade', 'lining ends'],
    remedy: words.oversizeBoreRemedy,
    caution: 'fitting',
  },
  'lining ends': {
    short: words.liningEndsShort,
    change: words.liningEndsChange,
    mechanism: words.liningEndsMechanism,
    tells: words.liningEndsTells,
    lookAlikes: ['damp', 'stepped hot', 'oversize bore'],
    remedy: words.liningEndsRemedy,
    caution: 'fitting',
  },
};
