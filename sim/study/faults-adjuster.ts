import { application } from '../wear/application.ts';
import { FIRM } from './checks.ts';
import { ailing, type Fault, newShoes } from './fault-types.ts';

/** A long descent's heat over the air, K: what lesson and table step the adjuster at. */
const DESCENT = 287;

/** Faults of the adjuster and its strut. */
export const adjusterFaults: readonly Fault[] = [
  {
    id: 'seized short',
    row: 1,
    name: 'Adjuster seized short',
    short: 'the strut stays at tooth 0',
    group: 'Adjuster',
    change: 'adjuster seized, tooth 0 on linings worn as they are',
    mechanism:
      'Linings and drum wear, the strut does not follow: the whole wear stands as gap. The pedal closes it anew at each press. Once the lining touches, it brakes as before.',
    tells:
      'A long pedal that is firm, nearly all of it already there at 10 bar, with many notches.',
    lookAlikes: ['air', 'stretched cable', 'worn teeth', 'broken lever spring'],
    remedy:
      'Free or renew lever and strut, reset, and see to the other wheel too. Do not take it up at the cable.',
    caution: 'strut',
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing({ ...state, tooth: 0 }, { adjusterSeized: true }) }),
  },
  {
    id: 'worn teeth',
    row: 2,
    name: 'Worn teeth let go',
    short: 'the strut slips back under a parking pull',
    group: 'Adjuster',
    change: 'teeth hold 1 000 N, two teeth lost on the parking brake',
    mechanism:
      'Parked, the strut carries far more than at rest. Rounded teeth slip back under it; the springs alone they hold. The next firm press clicks them out again.',
    tells: 'The first press after parking is long and clicks, the next is good.',
    lookAlikes: ['seized short', 'stretched cable', 'air'],
    remedy: 'Renew lever and strut as a pair.',
    caution: 'park',
    wheels: 'both',
    apply: (_rig, state) => ({
      state: ailing({ ...state, tooth: Math.max(0, state.tooth - 2) }, { teethHold: 1000 }),
    }),
  },
  {
    id: 'broken lever spring',
    row: 3,
    name: 'Spring of the toothed lever broken',
    short: 'the lever never drops in',
    group: 'Adjuster',
    change: 'lever spring at 0, tooth 0 on linings worn as they are',
    mechanism:
      'The lever is lifted over the tooth but nothing pulls it in: no click, and the gap grows with the wear.',
    tells: 'As a seized adjuster, but with the drum off the lever swings free.',
    lookAlikes: ['seized short', 'worn teeth'],
    remedy: 'Renew the spring, reset the adjuster.',
    caution: 'springs',
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing({ ...state, tooth: 0 }, { leverSpring: 0 }) }),
  },
  {
    id: 'stepped hot',
    row: 4,
    name: 'Stepped on while hot',
    short: 'teeth taken on a grown drum',
    group: 'Adjuster',
    change: `one firm press with the drum ${DESCENT} K hotter, then cold again`,
    mechanism:
      'A hot drum is wider. The lever feels travel and cannot know the reason: it takes teeth that the cold drum has no room for.',
    tells:
      'Free while hot, tight when cold, both wheels; the lever is home and the bleed point changes nothing.',
    lookAlikes: ['kept pull', 'hose', 'port shut', 'oval drum'],
    remedy: 'Back the adjuster off, see that the hot lock works if it has one, ask about descents.',
    caution: 'park',
    wheels: 'both',
    apply: (rig, state) => {
      const hot = { ...state, temperature: state.temperature + DESCENT };
      const pressed = application(rig, hot, { pressure: FIRM, turning: 1 });
      return { state: { ...pressed.state, temperature: state.temperature } };
    },
  },
  {
    id: 'shoes swapped',
    row: 31,
    name: 'Used shoes swapped front to rear',
    short: 'each lining runs where the other was worn in',
    group: 'Adjuster',
    change: 'worn profiles of the two linings exchanged',
    mechanism:
      'The thick lining now leads and the thin one trails. Fit and shares are wrong until both are bedded anew, and the thin lining sits where little is worn.',
    tells: 'Torque a little off at first; measured linings are thinnest on the trailing shoe.',
    lookAlikes: ['oversize bore', 'glazed'],
    remedy: 'Put each shoe back where it ran, or fit a new set on both sides.',
    caution: 'wear',
    wheels: 'one',
    // Mirrored places: the front arc runs from toe to heel, the rear from heel to toe.
    apply: (_rig, state) => ({
      state: {
        ...state,
        wear: {
          front: state.wear.rear.slice().reverse(),
          rear: state.wear.front.slice().reverse(),
        },
      },
    }),
  },
  {
    id: 'wrong side',
    row: 32,
    name: 'Adjusters left and right swapped',
    short: 'a passed tooth winds the strut back',
    group: 'Adjuster',
    change: 'a step goes the wrong way; back at tooth 0',
    mechanism:
      'Fitted on the other side, the adjuster works backwards or idles. The gap grows faster than by wear.',
    tells: 'As a seized adjuster; with the drum off the hand of its parts shows it.',
    lookAlikes: ['seized short', 'broken lever spring'],
    remedy: 'Swap them, reset, press until silent.',
    caution: 'springs',
    wheels: 'both',
    apply: (_rig, state) => ({ state: ailing({ ...state, tooth: 0 }, { adjusterStep: -1 }) }),
  },
  {
    id: 'strut mis-seated',
    row: 33,
    name: 'Strut not in its seat',
    short: 'the shoes stand held out',
    group: 'Adjuster',
    change: 'strut 1.5 mm longer between its seats',
    mechanism: 'A strut end that rides on the edge of its notch spaces the shoes by so much more.',
    tells: 'Gap gone at once after the work, at any tooth; the drum hardly goes on.',
    lookAlikes: ['stepped hot', 'short cable'],
    remedy: 'Reseat the strut; both ends in their notches before the drum goes on.',
    caution: 'springs',
    wheels: 'one',
    apply: (rig, state) => ({
      brake: {
        ...rig.brake,
        adjuster: { ...rig.brake.adjuster, lengthAtZero: rig.brake.adjuster.lengthAtZero + 1.5 },
      },
      state,
    }),
  },
  {
    id: 'dead adjuster to the end',
    row: 38,
    name: 'Piston past its run-out',
    short: 'linings gone, drum worn, strut at 0',
    group: 'Adjuster',
    change: 'linings worn to the table, drum 1 mm on radius past new, tooth 0',
    mechanism:
      'Each piston travels about twice the gap at the lining’s middle. With nothing taken up and everything worn, its cup leaves the bore. Too loose does that, never too tight.',
    tells: 'Travel left to run-out, read before it is gone.',
    lookAlikes: ['seized short', 'air'],
    remedy: 'All of it: cylinder, shoes, adjuster, drum, on both sides.',
    caution: 'piston',
    wheels: 'one',
    apply: (rig, state) => {
      const gone = newShoes(rig, state, rig.brake.drum.radiusNew + 1);
      return {
        state: {
          ...gone,
          wear: {
            front: Float64Array.from(rig.front.bed.thickness),
            rear: Float64Array.from(rig.rear.bed.thickness),
          },
          condition: { ...gone.condition, adjusterSeized: true },
        },
      };
    },
  },
];
