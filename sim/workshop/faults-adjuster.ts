import { type AdjusterFault, DESCENT } from '../index.ts';
import type { FaultWords } from './fault-types.ts';

/** What the workshop says of them. */
export const adjusterFaults: Readonly<Record<AdjusterFault, FaultWords>> = {
  'seized short': {
    short: 'the strut stays at tooth 0',
    change: 'adjuster seized, tooth 0 on linings worn as they are',
    mechanism:
      'Linings and drum wear, the strut does not follow: the whole wear stands as gap. The pedal closes it anew at each press. Once the lining touches, it brakes as before.',
    tells:
      'A long pedal that is firm, nearly all of it already there at 10 bar, with many notches.',
    lookAlikes: ['air', 'stretched cable', 'worn teeth', 'broken lever spring'],
    remedy:
      'Free or renew lever and strut, reset, and see to the other wheel too. Do not take it up at the cable.',
    caution: 'strut',
  },
  'worn teeth': {
    short: 'the strut slips back under a parking pull',
    change: 'teeth hold 1 000 N, two teeth lost on the parking brake',
    mechanism:
      'Parked, the strut carries far more than at rest. Rounded teeth slip back under it; the springs alone they hold. The next firm press clicks them out again.',
    tells: 'The first press after parking is long and clicks, the next is good.',
    lookAlikes: ['seized short', 'stretched cable', 'air'],
    remedy: 'Renew lever and strut as a pair.',
    caution: 'park',
  },
  'broken lever spring': {
    short: 'the lever never drops in',
    change: 'lever spring at 0, tooth 0 on linings worn as they are',
    mechanism:
      'The lever is lifted over the tooth but nothing pulls it in: no click, and the gap grows with the wear.',
    tells: 'As a seized adjuster, but with the drum off the lever swings free.',
    lookAlikes: ['seized short', 'worn teeth'],
    remedy: 'Renew the spring, reset the adjuster.',
    caution: 'springs',
  },
  'stepped hot': {
    short: 'teeth taken on a grown drum',
    change: `one firm press with the drum ${DESCENT} K hotter, then cold again`,
    mechanism:
      'A hot drum is wider. The lever feels travel and cannot know the reason: it takes teeth that the cold drum has no room for.',
    tells:
      'Free while hot, tight when cold, both wheels; the lever is home and the bleed point changes nothing.',
    lookAlikes: ['kept pull', 'hose', 'port shut', 'oval drum'],
    remedy: 'Back the adjuster off, see that the hot lock works if it has one, ask about descents.',
    caution: 'park',
  },
  'shoes swapped': {
    short: 'each lining runs where the other was worn in',
    change: 'worn profiles of the two linings exchanged',
    mechanism:
      'The thick lining now leads and the thin one trails. Fit and shares are wrong until both are bedded anew, and the thin lining sits where little is worn.',
    tells: 'Torque a little off at first; measured linings are thinnest on the trailing shoe.',
    lookAlikes: ['oversize bore', 'glazed'],
    remedy: 'Put each shoe back where it ran, or fit a new set on both sides.',
    caution: 'wear',
  },
  'wrong side': {
    short: 'a passed tooth winds the strut back',
    change: 'a step goes the wrong way; back at tooth 0',
    mechanism:
      'Fitted on the other side, the adjuster works backwards or idles. The gap grows faster than by wear.',
    tells: 'As a seized adjuster; with the drum off the hand of its parts shows it.',
    lookAlikes: ['seized short', 'broken lever spring'],
    remedy: 'Swap them, reset, press until silent.',
    caution: 'springs',
  },
  'strut mis-seated': {
    short: 'the shoes stand held out',
    change: 'strut 1.5 mm longer between its seats',
    mechanism: 'A strut end that rides on the edge of its notch spaces the shoes by so much more.',
    tells: 'Gap gone at once after the work, at any tooth; the drum hardly goes on.',
    lookAlikes: ['stepped hot', 'short cable'],
    remedy: 'Reseat the strut; both ends in their notches before the drum goes on.',
    caution: 'springs',
  },
  'dead adjuster to the end': {
    short: 'linings gone, drum worn, strut at 0',
    change: 'linings worn to the table, drum 1 mm on radius past new, tooth 0',
    mechanism:
      'Each piston travels about twice the gap at the lining’s middle. With nothing taken up and everything worn, its cup leaves the bore. Too loose does that, never too tight.',
    tells: 'Travel left to run-out, read before it is gone.',
    lookAlikes: ['seized short', 'air'],
    remedy: 'All of it: cylinder, shoes, adjuster, drum, on both sides.',
    caution: 'piston',
  },
};
