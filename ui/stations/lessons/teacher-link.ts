import { lessonsTeacherLink as texts } from '../../../sim/words/en.ts';
import { spoken } from '../../language.ts';
import { blank } from '../../lessons/wants.ts';
import type { Session } from '../../session.ts';
import { deskOf } from '../station.ts';
import { LessonDesk } from './desk.ts';
import { TEACHER_ASKS, type TeacherAsk, teacherWords } from './teacher-words.ts';

/**
 * The other window of the same browser, for the teacher: this one tells it in words how the lesson
 * stands, and does what it asks for. Nothing goes over a network.
 */

/** Under which this window's name is kept, so that a reload finds its other window again. */
const KEY = 'takeup teacher';

function nameOf(): string {
  try {
    const known = sessionStorage.getItem(KEY);
    if (known) return known;
    const made = Math.random().toString(36).slice(2, 10);
    sessionStorage.setItem(KEY, made);
    return made;
  } catch {
    // A browser that keeps nothing: the window is lost with a reload.
    return 'one';
  }
}

const isAsk = (data: unknown): data is TeacherAsk => {
  if (typeof data !== 'object' || data === null || !('ask' in data)) return false;
  const { ask, n, by } = data as TeacherAsk;
  return TEACHER_ASKS.includes(ask) && Number.isInteger(n) && Number.isInteger(by);
};

export class TeacherLink {
  readonly #session: Session;
  readonly #name = nameOf();
  readonly #channel: BroadcastChannel | null;

  constructor(session: Session) {
    this.#session = session;
    const there = typeof BroadcastChannel === 'function';
    this.#channel = there ? new BroadcastChannel(`takeup lesson ${this.#name}`) : null;
    this.#channel?.addEventListener('message', (e: MessageEvent<unknown>) => this.#hear(e.data));
    session.addEventListener('change', () => this.#tell());
  }

  /** Opens the window, or brings it to the front. */
  open(): void {
    if (!this.#channel) {
      this.#session.say(texts.thisBrowserDoesNotLet);
      return;
    }
    const address = `${location.pathname}?teacher=${this.#name}&lang=${spoken()}`;
    const other = window.open(address, `takeup-${this.#name}`, 'popup,width=1366,height=768');
    if (!other) this.#session.say(texts.theBrowserDidNotOpen);
    this.#tell();
  }

  #tell(): void {
    const { wall } = this.#session;
    this.#channel?.postMessage({ words: teacherWords(deskOf(LessonDesk, this.#session)), wall });
  }

  #hear(data: unknown): void {
    if (data === 'hello') this.#tell();
    if (!isAsk(data)) return;
    const { ask, by, n } = data;
    const desk = deskOf(LessonDesk, this.#session);
    if (!desk.lesson) return;
    if (ask === 'next') desk.next();
    else if (ask === 'back') desk.back();
    else if (ask === 'choose') desk.choose(n);
    else if (ask === 'count') desk.count(n, by);
    else if (ask === 'go') desk.go(n);
    else if (ask === 'again') desk.show();
    else if (ask === 'blank') {
      this.#session.do(blank, !this.#session.moment.parts.lessons.blank);
    } else this.#session.showOnWall(!this.#session.wall);
  }
}
