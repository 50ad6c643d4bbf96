import type { CableFault } from '../index.ts';
import { workshopFaultsCable as words } from '../words/en.ts';
import type { FaultWords } from './fault-types.ts';

/** What the workshop says of them. */
export const cableFaults: Readonly<Record<CableFault, FaultWords>> = {
  'short cable': {
    short: words.shortCableShort,
    change: words.shortCableChange,
    mechanism: words.shortCableMechanism,
    tells: words.shortCableTells,
    lookAlikes: ['kept pull', 'lip', 'stepped hot'],
    remedy: words.shortCableRemedy,
    caution: 'park',
  },
  'kept pull': {
    short: words.keptPullShort,
    change: words.keptPullChange,
    mechanism: words.keptPullMechanism,
    tells: words.keptPullTells,
    lookAlikes: ['hose', 'leaning part', 'port shut', 'short cable'],
    remedy: words.keptPullRemedy,
    caution: 'hot',
  },
  'stretched cable': {
    short: words.stretchedCableShort,
    change: words.stretchedCableChange,
    mechanism: words.stretchedCableMechanism,
    tells: words.stretchedCableTells,
    lookAlikes: ['seized short', 'worn teeth', 'stiff pivot'],
    remedy: words.stretchedCableRemedy,
    caution: 'park',
  },
  'stiff pivot': {
    short: words.stiffPivotShort,
    change: words.stiffPivotChange,
    mechanism: words.stiffPivotMechanism,
    tells: words.stiffPivotTells,
    lookAlikes: ['glazed', 'oil on one lining', 'stretched cable'],
    remedy: words.stiffPivotRemedy,
    caution: 'springs',
  },
};
