import { describe, expect, it } from 'vitest';
import quayVan from '../../../scenes/quay-van.json';
import { act } from '../../../ui/lessons/act.ts';
import type { Action } from '../../../ui/lessons/actions.ts';
import { readLessonText } from '../../../ui/lessons/read.ts';
import { recordedBetween } from '../../../ui/lessons/recorded.ts';
import { lessonStart, runStep, valuesOf } from '../../../ui/lessons/run.ts';
import { openLesson, tell } from '../../../ui/lessons/wants.ts';
import {
  begunFrom,
  fileOf,
  startFrom,
  startOf,
  stepFrom,
  untoldOf,
  type Written,
  withMore,
} from '../../../ui/lessons/written.ts';
import { fitAdjuster, press, putStanding, putState, release } from '../../../ui/record/bench.ts';
import { begin } from '../../../ui/record/history.ts';
import { type Moment, withPart } from '../../../ui/record/moment.ts';
import { layersOf } from '../../../ui/record/parts.ts';
import { plainMoment } from '../../../ui/record/start.ts';
import { bend, magnify, turn } from '../../../ui/record/view.ts';
import { Session } from '../../../ui/session.ts';

type Kind = Action['do'];
type Of<K extends Kind> = Extract<Action, { do: K }>;

const first = { kind: 'scene', name: quayVan.name } as const;
const van = (): Session => new Session(begin(plainMoment('apply', first)), true);

/** What is done before, and what is then recorded. A kind of action without a sample does not compile. */
const samples: {
  readonly [K in Kind]: readonly [before: readonly Action[], done: readonly Of<K>[]];
} = {
  pedal: [[], [{ do: 'pedal', bar: 37.5 }]],
  release: [[{ do: 'pedal', bar: 40 }], [{ do: 'release' }]],
  drum: [[], [{ do: 'drum', way: 'backward' }]],
  wear: [
    [],
    [
      { do: 'wear', km: 12345 },
      { do: 'wear', to: 'click' },
    ],
  ],
  tooth: [[{ do: 'state', name: 'Worn-in' }], [{ do: 'tooth', by: -2 }]],
  lever: [[], [{ do: 'lever', mm: 2.25 }]],
  cable: [[], [{ do: 'cable', newton: 280, slack: 4 }]],
  descend: [[], [{ do: 'descend', slope: 12, km: 6 }]],
  cool: [[{ do: 'grow', kelvin: 180 }], [{ do: 'cool' }]],
  grow: [[], [{ do: 'grow', kelvin: 95.5 }]],
  state: [[], [{ do: 'state', name: 'Second set' }]],
  brake: [[], [{ do: 'brake', name: 'bench-brake' }]],
  condition: [
    [],
    [
      {
        do: 'condition',
        springFactor: 0.6,
        adjusterSeized: true,
        teethHold: 400,
        keptPressure: 3,
        leanFront: 60,
        leanRear: 40,
        offCentre: 0.05,
        oval: 0.04,
      },
    ],
  ],
  friction: [[], [{ do: 'friction', front: 0.31, rear: 0.44 }]],
  circuit: [[], [{ do: 'circuit', mm3PerMPa: 220 }]],
  shoes: [[], [{ do: 'shoes', bore: 201.2, lip: 200.4, tooth: 4 }]],
  swap: [[{ do: 'wear', km: 30000 }], [{ do: 'swap' }]],
  try: [
    [{ do: 'state', name: 'Near the limit' }],
    [
      { do: 'try', what: 'turn' },
      { do: 'try', what: 'pull' },
    ],
  ],
  hold: [[], [{ do: 'hold', hubRust: true, liningsRusted: true }]],
  show: [
    [],
    [
      { do: 'show', on: ['fan', 'forces'], fan: 40, holdDown: 'lost' },
      { do: 'show', names: ['drum', 'strut'] },
    ],
  ],
  note: [[{ do: 'pedal', bar: 20 }], [{ do: 'note', as: 'x' }]],
  wait: [[{ do: 'pedal', bar: 20 }], [{ do: 'wait', seconds: 2 }]],
};

/** Values that take many instants each: those follow from the same brake as all the others. */
const LONG = [
  'touchPressure',
  'firstTouchPressure',
  'strutFreePressure',
  'handForward',
  'clickLate',
];

const doneTo = (m: Moment, actions: readonly Action[]): Moment =>
  actions.reduce((here, a) => act(here, a).moments.at(-1) as Moment, m);

/** What a moment shows: how it stands, how it is looked at, and every figure there is of it, as it is told. */
function seen(m: Moment) {
  const values = valuesOf(m);
  const { bench, parts, pedal, turning, view } = m;
  return {
    pedal,
    turning,
    held: bench.held,
    tried: parts['drum-off'].tried,
    cable: [parts.park.cable, parts.park.moreSlack],
    layers: layersOf(m, 'lessons'),
    looked: [view.magnification, view.revealed, view.tilt.holdDown],
    figures: Object.fromEntries(
      values.keys
        .filter((key) => !LONG.includes(key))
        .map((key) => {
          const value = values.of(key);
          return [key, value?.value.toFixed(value.digits)];
        }),
    ),
  };
}

/** A lesson of one step, with its question. */
function asked(w: Written, step: Written): Written {
  const full = {
    ...step,
    ask: 'What happens?',
    choices: [
      { says: [{ words: 'This', holds: true }] },
      { says: [{ words: 'That', holds: false }] },
    ],
  };
  return { ...w, title: 'Recorded', steps: [full] };
}

/** The lesson as its file has it, opened, and shown to its end. */
function played(w: Written): Moment {
  const read = readLessonText(fileOf(w));
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  const session = van();
  session.do(openLesson, read.lesson);
  session.do(tell, read.lesson);
  // Opened again where it was told, it stands at its end.
  session.do(openLesson, read.lesson);
  return session.moment;
}

const begun = (): Written => begunFrom(plainMoment('apply', first), null);

describe('what is done on the stage is recorded, kind by kind', () => {
  for (const kind of Object.keys(samples) as Kind[]) {
    it(`${kind}: played from the file it comes to the same moment`, () => {
      const [before, all] = samples[kind];
      for (const done of all as readonly Action[]) {
        const w = begun();
        const start = startOf(w) as Moment;
        const on = doneTo(doneTo(start, before), [done]);
        const step = stepFrom(w, on) as Written;
        expect(untoldOf({ steps: [step] }, 0)).toEqual([]);
        expect(seen(played(asked(w, step)))).toEqual(seen(on));
      }
    });

    it(`${kind}: after what was done before it, in the same step`, () => {
      const [before, all] = samples[kind];
      for (const done of all as readonly Action[]) {
        const w = begun();
        const from = doneTo(startOf(w) as Moment, before);
        const on = doneTo(from, [done]);
        const one = asked(w, stepFrom(w, from) as Written);
        const more = withMore(one, 0, on) as Written;
        expect(untoldOf(more, 0)).toEqual([]);
        expect(seen(played(more))).toEqual(seen(on));
      }
    });
  }

  it('says by its own action what another one could only come near to', () => {
    const start = lessonStart({ brake: 'quay-van' } as never);
    for (const kind of Object.keys(samples) as Kind[]) {
      // A hill leaves a warm drum, and these leave nothing.
      if (kind === 'descend' || kind === 'note' || kind === 'wait') continue;
      const [before, all] = samples[kind];
      const from = doneTo(start, before);
      for (const done of all as readonly Action[]) {
        const { actions } = recordedBetween(from, doneTo(from, [done]));
        expect(actions.map((a) => a.do)).toContain(kind);
      }
    }
  });
});

describe('what is done at the stations', () => {
  it('a standing state, driven on, with the pedal down in reverse', () => {
    const session = van();
    session.do(putStanding, 'Worn-in');
    session.do(turn, -1);
    session.do(press, 33.37);
    session.do(magnify, 40);
    const w = begun();
    const step = stepFrom(w, session.moment) as Written;
    const end = played(asked(w, step));
    const now = session.moment;
    // A cable pulls in Park alone.
    const still = withPart(now, 'park', { cable: 0 });
    expect(seen(end).figures).toEqual(seen(still).figures);
    expect([end.turning, end.view.magnification]).toEqual([-1, 40]);
  });

  it('how a step begins is done before its question, and the pedal goes down and up in one step', () => {
    const session = van();
    const w = { ...begun(), steps: [] as unknown[] };
    session.do(putStanding, 'Before a click');
    let lesson = asked(w, startFrom(w, session.moment) as Written);
    session.do(press, 40);
    lesson = withMore(lesson, 0, session.moment) as Written;
    session.do(release);
    lesson = withMore(lesson, 0, session.moment) as Written;
    const read = readLessonText(fileOf(lesson));
    if (!read.ok) throw new Error(JSON.stringify(read.findings));
    const [step] = read.lesson.steps;
    if (!step) throw new Error('no step');
    expect(step.start.map((a) => a.do)).toEqual(['state']);
    expect(step.hand.map((a) => a.do)).toEqual(['pedal', 'note', 'wait', 'release']);
    const ran = runStep(read.lesson, step);
    expect(ran.start.bench.standing).toBe('Before a click');
    expect(ran.notes.get('a')?.of('linePressure')?.value).toBeCloseTo(40, 6);
    expect(ran.end.pedal).toBe(0);
  });

  it('tells what a lesson cannot say, and keeps it out of the file', () => {
    const session = van();
    session.do(fitAdjuster, { kind: 'wedge', hotLock: false, drivenBy: 'application' });
    session.do(bend, true);
    session.do(putState, {
      ...session.state,
      condition: { ...session.state.condition, cupExtra: 40 },
    });
    const w = begun();
    const step = stepFrom(w, session.moment) as Written;
    const all = untoldOf({ steps: [step] }, 0);
    expect(all).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/adjuster/),
        expect.stringMatching(/bend/),
        expect.stringMatching(/sluggish piston/),
      ]),
    );
    expect(fileOf(asked(w, step))).not.toMatch(/untold|sluggish/);
    expect(readLessonText(fileOf(asked(w, step))).ok).toBe(true);
  });
});
