import type { CableFault } from '../index.ts';
import type { FaultWords } from './fault-types.ts';

/** What the workshop says of them. */
export const cableFaults: Readonly<Record<CableFault, FaultWords>> = {
  'short cable': {
    short: 'the lever never gets home',
    change: 'lever held 6 mm off its stop',
    mechanism:
      'The lever stands in line with the strut, so the cable and not the stop sets the rest position. The slot play is used up and the adjuster does not step any more.',
    tells: 'Few notches, and the lever is off its stop.',
    lookAlikes: ['kept pull', 'lip', 'stepped hot'],
    remedy: 'Slacken the cable, set the shoes, the cable last.',
    caution: 'park',
  },
  'kept pull': {
    short: 'seized in its sheath: the lever never gets home',
    change: '40 N stay in one cable after release',
    mechanism:
      'A cable that sticks in its sheath goes on pulling after release. Strut and pivot press both shoes, so it drags the same both ways.',
    tells: 'One wheel; the lever stands off its stop, and the bleed point changes nothing.',
    lookAlikes: ['hose', 'leaning part', 'port shut', 'short cable'],
    remedy: 'Renew the cable.',
    caution: 'hot',
  },
  'stretched cable': {
    short: 'the lever’s stroke is lost before the hook',
    change: 'cable slack 10 mm more',
    mechanism:
      'The hand lever takes up the slack before anything moves in the drum. The shoes are as they were.',
    tells: 'Many notches with a good pedal: the pedal judges the gap, the lever gap and cable.',
    lookAlikes: ['seized short', 'worn teeth', 'stiff pivot'],
    remedy: 'Set or renew the cable once the shoes are right. Never set shoes with it.',
    caution: 'park',
  },
  'stiff pivot': {
    short: 'half the pull never gets to the shoes',
    change: 'half the cable’s pull lost in the lever’s pivot',
    mechanism: 'A rusted pivot takes part of the cable’s pull, on the way out and on the way back.',
    tells: 'Weak parked, both ways alike, with a good pedal; the lever moves slowly.',
    lookAlikes: ['glazed', 'oil on one lining', 'stretched cable'],
    remedy: 'Free or renew the lever, check the other side.',
    caution: 'springs',
  },
};
