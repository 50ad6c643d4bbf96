import { BAR, LessonValues, type LifeEvent, type LifeRow } from '../../sim/index.ts';
import type { BrakeRef } from '../record/bench.ts';
import { read, rigOf } from '../record/derive.ts';
import { KeptFor } from '../record/kept.ts';
import { type Moment, withPart } from '../record/moment.ts';
import { FIRST, plainMoment } from '../record/start.ts';
import { act } from './act.ts';
import type { Action } from './actions.ts';
import type { Lesson, Step } from './format.ts';

/** A step of a lesson done by the mechanics: what is seen on its way, and the values that its text names. */

/** An action with the moments it goes through. */
export interface Beat {
  readonly action: Action;
  readonly moments: readonly Moment[];
}

export interface Ran {
  readonly start: Moment;
  readonly beats: readonly Beat[];
  readonly end: Moment;
  /** Values by the name of the moment they are of: `before`, those noted, and `now`. */
  readonly notes: ReadonlyMap<string, LessonValues>;
  /** What was driven last. */
  readonly rows: readonly LifeRow[];
}

/** The brake that a lesson is about. */
export function brakeRefOf({ brake, scene }: Lesson): BrakeRef {
  if (scene !== undefined) return { kind: 'whole', scene: read(scene as object).scene };
  return brake === undefined ? FIRST : { kind: 'scene', name: brake };
}

/** The record as a lesson begins. */
export function lessonStart(lesson: Lesson): Moment {
  const plain = plainMoment('lessons', brakeRefOf(lesson), lesson.state ?? null);
  return withPart(plain, 'park', { cable: 0 });
}

interface Driven {
  readonly rows: readonly LifeRow[];
  readonly events: readonly LifeEvent[];
}
const NOTHING: Driven = { rows: [], events: [] };

/** Values of the brake as the record has it. */
export function valuesOf(m: Moment, { rows, events }: Driven = NOTHING): LessonValues {
  return new LessonValues({
    rig: rigOf(m),
    state: m.bench.state,
    pressure: m.pedal * BAR,
    turning: m.turning,
    cable: m.parts.park.cable,
    moreSlack: m.parts.park.moreSlack,
    held: m.bench.held,
    rows,
    events,
  });
}

const kept = new KeptFor<Step, Ran>();

/** A script done to the record: it goes on in the same notes. */
class Script {
  readonly notes = new Map<string, LessonValues>();
  readonly beats: Beat[] = [];
  moment: Moment;
  driven: Driven = NOTHING;

  constructor(moment: Moment) {
    this.moment = moment;
  }

  note(name: string): void {
    this.notes.set(name, valuesOf(this.moment, this.driven));
  }

  run(actions: readonly Action[]): void {
    for (const action of actions) {
      if (action.do === 'note') {
        this.note(action.as);
        continue;
      }
      const { events, moments, rows } = act(this.moment, action);
      if (action.do === 'wear') this.driven = { rows, events };
      this.beats.push({ action, moments });
      this.moment = moments.at(-1) as Moment;
    }
  }
}

/** A step done from its start to its end; once for each. */
export const runStep = (lesson: Lesson, step: Step): Ran =>
  kept.of(step, () => {
    const script = new Script(lessonStart(lesson));
    script.run(step.start);
    const start = script.moment;
    script.note('before');
    const first = script.beats.length;
    script.run(step.hand);
    script.note('now');
    const { driven, moment: end, notes } = script;
    return { start, beats: script.beats.slice(first), end, notes, rows: driven.rows };
  });
