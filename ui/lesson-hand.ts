import { BAR } from '../sim/index.ts';
import type { Lesson, Step } from './lessons/format.ts';
import { type Beat, type Ran, runStep } from './lessons/run.ts';
import { handDid, progressOf } from './lessons/wants.ts';
import type { Session } from './session.ts';
import { lessonOf } from './stations/lessons/part.ts';

/** How long an action is shown where it does not say, s. */
const SHOWN = 0.7;
/** The same of a drive, and of what is held at the end of a press. */
const DRIVEN = 2.6;
const HELD = 0.5;
/** A pedal that does not get where it is to be within this is not waited for, s. */
const PATIENCE = 6;

/** What is being done, and how far it is. */
interface Doing {
  readonly lesson: Lesson;
  readonly step: Step;
  readonly at: number;
  readonly ran: Ran;
  /** Called when the last action is done. */
  readonly then: () => void;
  beat: number;
  /** Moment of the beat that is shown. */
  moment: number;
  /** Since the beat began, and since what it waits for was there, s. */
  since: number;
  held: number;
  before: number;
  /** Since the step began, s. */
  total: number;
}

/** Who gives the next picture's time, ms: the page's screen, or a film that is made picture by picture. */
export interface Pictures {
  ask(tick: (now: number) => void): number;
  cancel(asked: number): void;
}
const screen: Pictures = {
  ask: (tick) => requestAnimationFrame(tick),
  cancel: (asked) => cancelAnimationFrame(asked),
};

/**
 * The scripted hand of a lesson: it does a step's actions on the stage, one after the other, at the pace
 * at which they can be watched. Like the moving brake it is no part of the record; what it did is.
 */
export class LessonHand {
  readonly #session: Session;
  readonly #pictures: Pictures;
  #doing: Doing | null = null;
  #frame: number | null = null;

  constructor(session: Session, pictures: Pictures = screen) {
    this.#session = session;
    this.#pictures = pictures;
    session.addEventListener('change', () => this.#follow());
  }

  get busy(): boolean {
    return this.#doing !== null;
  }

  /** Does the open step's actions from where the record has them. */
  begin(lesson: Lesson, then: () => void = () => {}): void {
    const { moment } = this.#session;
    const at = progressOf(moment, lesson.name).step;
    const step = lesson.steps[at];
    this.stop();
    if (!step || lessonOf(moment) !== lesson.name) return;
    const ran = runStep(lesson, step);
    const beat = moment.parts.lessons.done;
    const clock = { since: 0, held: 0, before: 0, total: 0 };
    this.#doing = { lesson, step, at, ran, then, beat, moment: -1, ...clock };
    // Of a talk each moment is its last picture then, for as long as it is said.
    if (this.#session.reducedMotion && step.seconds === undefined) this.finish();
    else this.#frame = this.#pictures.ask(this.#tick);
  }

  /** Stops where it is; what was done stays. */
  stop(): void {
    this.#doing = null;
    if (this.#frame !== null) this.#pictures.cancel(this.#frame);
    this.#frame = null;
  }

  /** Does all that is left at once. */
  finish(): void {
    const doing = this.#doing;
    if (!doing) return;
    const { beats } = doing.ran;
    for (let k = doing.beat; k < beats.length; k++) this.#put(beats[k] as Beat, k + 1, true);
    this.#end(doing);
  }

  #put(beat: Beat, done: number, whole: boolean, moment = beat.moments.length - 1): void {
    this.#session.amend(handDid, beat, moment, done, whole);
  }

  #end(doing: Doing): void {
    this.stop();
    // Where somebody pressed meanwhile the brake stands otherwise: it ends as the script has it.
    const last = doing.ran.beats.at(-1);
    const { state } = doing.ran.end.bench;
    if (last && this.#session.state.tooth !== state.tooth) {
      this.#put(last, doing.ran.beats.length, true);
    }
    doing.then();
    this.#session.changed();
  }

  /** Whoever goes elsewhere takes the hand off. */
  #follow(): void {
    const doing = this.#doing;
    if (!doing) return;
    const { moment } = this.#session;
    const { name } = doing.lesson;
    const here = lessonOf(moment) === name && moment.station === 'lessons';
    const there = here && progressOf(moment, name).step === doing.at;
    if (!there || moment.parts.lessons.done < doing.beat) this.stop();
  }

  #tick = (now: number): void => {
    this.#frame = null;
    const doing = this.#doing;
    if (!doing) return;
    const seconds = doing.before > 0 ? Math.min(0.1, (now - doing.before) / 1000) : 0;
    doing.before = now;
    if (!this.#session.frozen && !this.#session.showing) this.#forward(doing, seconds);
    if (this.#doing) this.#frame = this.#pictures.ask(this.#tick);
  };

  #forward(doing: Doing, seconds: number): void {
    const beat = doing.ran.beats[doing.beat];
    doing.total += seconds;
    if (!beat) {
      // A moment of a talk stands as long as its sentence takes.
      if (doing.total >= (doing.step.seconds ?? 0)) this.#end(doing);
      return;
    }
    doing.since += seconds;
    if (this.#shown(doing, beat, seconds)) {
      doing.beat += 1;
      doing.moment = -1;
      doing.since = 0;
      doing.held = 0;
    }
  }

  /** Shows a beat as far as it is; true when it is over. */
  #shown(doing: Doing, beat: Beat, seconds: number): boolean {
    const { action, moments } = beat;
    const most = moments.length - 1;
    const still = this.#session.reducedMotion;
    const lasts = still ? 0.01 : lastsOf(beat);
    const to = most === 0 ? 0 : Math.min(most, Math.floor((doing.since / lasts) * moments.length));
    if (to !== doing.moment) {
      const before = this.#session.state.tooth;
      this.#put(beat, to === most ? doing.beat + 1 : doing.beat, false, to);
      doing.moment = to;
      // A tooth that dropped in on the road is seen and heard as in Wear.
      if (action.do === 'wear' && this.#session.state.tooth > before) this.#session.tellClick();
    }
    if (to < most) return false;
    if (action.do === 'pedal' || action.do === 'release') {
      const there = Math.abs(this.#session.pressure - this.#session.pedal * BAR) < 1e-6;
      if (there || doing.since > PATIENCE) doing.held += seconds;
      return doing.held >= (still ? 0 : HELD);
    }
    return doing.since >= lasts;
  }
}

/** How long a beat is shown, s; of a press, how long the pedal takes. */
function lastsOf({ action }: Beat): number {
  switch (action.do) {
    case 'wear':
      return action.seconds ?? DRIVEN;
    case 'pedal':
      return action.seconds ?? 0.01;
    case 'release':
      return 0.01;
    case 'wait':
      return action.seconds;
    case 'show':
      return 0.2;
    default:
      return SHOWN;
  }
}
