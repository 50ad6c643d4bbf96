import type { DrumFault } from '../index.ts';
import { workshopFaultsDrum as words } from '../words/en.ts';
import type { FaultWords } from './fault-types.ts';

/** What the workshop says of them. */
export const drumFaults: Readonly<Record<DrumFault, FaultWords>> = {
  'oval drum': {
    short: words.ovalDrumShort,
    change: words.ovalDrumChange,
    mechanism: words.ovalDrumMechanism,
    tells: words.ovalDrumTells,
    lookAlikes: ['drum off centre', 'bearing', 'stepped hot'],
    remedy: words.ovalDrumRemedy,
    caution: 'fitting',
  },
  'drum off centre': {
    short: words.drumOffCentreShort,
    change: words.drumOffCentreChange,
    mechanism: words.drumOffCentreMechanism,
    tells: words.drumOffCentreTells,
    lookAlikes: ['oval drum', 'bearing'],
    remedy: words.drumOffCentreRemedy,
    caution: 'drumOff',
  },
  lip: {
    short: words.lipShort,
    change: words.lipChange,
    mechanism: words.lipMechanism,
    tells: words.lipTells,
    lookAlikes: ['hub rust', 'short cable', 'stepped hot', 'rusted on'],
    remedy: words.lipRemedy,
    caution: 'drumOff',
  },
  'hub rust': {
    short: words.hubRustShort,
    change: words.hubRustChange,
    mechanism: words.hubRustMechanism,
    tells: words.hubRustTells,
    lookAlikes: ['lip', 'short cable', 'rusted on'],
    remedy: words.hubRustRemedy,
    caution: 'hubRust',
  },
  groove: {
    short: words.grooveShort,
    change: words.grooveChange,
    mechanism: words.grooveMechanism,
    tells: words.grooveTells,
    lookAlikes: ['sluggish pistons', 'strong springs'],
    remedy: words.grooveRemedy,
    caution: 'springs',
  },
  bearing: {
    short: words.bearingShort,
    change: words.bearingChange,
    mechanism: words.bearingMechanism,
    tells: words.bearingTells,
    lookAlikes: ['drum off centre', 'oval drum', 'kept pull'],
    remedy: words.bearingRemedy,
    caution: 'stands',
  },
  'rusted on': {
    short: words.rustedOnShort,
    change: words.rustedOnChange,
    mechanism: words.rustedOnMechanism,
    tells: words.rustedOnTells,
    lookAlikes: ['kept pull', 'hub rust', 'stepped hot'],
    remedy: words.rustedOnRemedy,
    caution: 'park',
  },
};
