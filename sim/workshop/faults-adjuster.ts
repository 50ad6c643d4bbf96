import { type AdjusterFault, DESCENT } from '../index.ts';
import { workshopFaultsAdjuster as words } from '../words/en.ts';
import type { FaultWords } from './fault-types.ts';

/** What the workshop says of them. */
export const adjusterFaults: Readonly<Record<AdjusterFault, FaultWords>> = {
  'seized short': {
    short: words.seizedShortShort,
    change: words.seizedShortChange,
    mechanism: words.seizedShortMechanism,
    tells: words.seizedShortTells,
    lookAlikes: ['air', 'stretched cable', 'worn teeth', 'broken lever spring'],
    remedy: words.seizedShortRemedy,
    caution: 'strut',
  },
  'worn teeth': {
    short: words.wornTeethShort,
    change: words.wornTeethChange,
    mechanism: words.wornTeethMechanism,
    tells: words.wornTeethTells,
    lookAlikes: ['seized short', 'stretched cable', 'air'],
    remedy: words.wornTeethRemedy,
    caution: 'park',
  },
  'broken lever spring': {
    short: words.brokenLeverSpringShort,
    change: words.brokenLeverSpringChange,
    mechanism: words.brokenLeverSpringMechanism,
    tells: words.brokenLeverSpringTells,
    lookAlikes: ['seized short', 'worn teeth'],
    remedy: words.brokenLeverSpringRemedy,
    caution: 'springs',
  },
  'stepped hot': {
    short: words.steppedHotShort,
    change: words.steppedHotChange(DESCENT),
    mechanism: words.steppedHotMechanism,
    tells: words.steppedHotTells,
    lookAlikes: ['kept pull', 'hose', 'port shut', 'oval drum'],
    remedy: words.steppedHotRemedy,
    caution: 'park',
  },
  'shoes swapped': {
    short: words.shoesSwappedShort,
    change: words.shoesSwappedChange,
    mechanism: words.shoesSwappedMechanism,
    tells: words.shoesSwappedTells,
    lookAlikes: ['oversize bore', 'glazed'],
    remedy: words.shoesSwappedRemedy,
    caution: 'wear',
  },
  'wrong side': {
    short: words.wrongSideShort,
    change: words.wrongSideChange,
    mechanism: words.wrongSideMechanism,
    tells: words.wrongSideTells,
    lookAlikes: ['seized short', 'broken lever spring'],
    remedy: words.wrongSideRemedy,
    caution: 'springs',
  },
  'strut mis-seated': {
    short: words.strutMisSeatedShort,
    change: words.strutMisSeatedChange,
    mechanism: words.strutMisSeatedMechanism,
    tells: words.strutMisSeatedTells,
    lookAlikes: ['stepped hot', 'short cable'],
    remedy: words.strutMisSeatedRemedy,
    caution: 'springs',
  },
  'dead adjuster to the end': {
    short: words.deadAdjusterToTheEndShort,
    change: words.deadAdjusterToTheEndChange,
    mechanism: words.deadAdjusterToTheEndMechanism,
    tells: words.deadAdjusterToTheEndTells,
    lookAlikes: ['seized short', 'air'],
    remedy: words.deadAdjusterToTheEndRemedy,
    caution: 'piston',
  },
};
