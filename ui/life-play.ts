import type { Brake, LifeRow } from '../sim/index.ts';
import type { ToldEvent } from '../sim/workshop/index.ts';
import { isCountable, wordsOf } from './adjusters.ts';
import type { LifeDriver, LifeTrouble } from './life-messages.ts';
import { LifeRun } from './life-run.ts';
import { countRows, lastStretch, type Stretch } from './record/life.ts';
import { LifeBook, type LifeSoFar } from './record/life-book.ts';
import type { Session } from './session.ts';
import { follow, stopHere } from './stations/wear-part.ts';

/** With more clicks than this in one run each is only flashed, not stepped through. */
const MANY = 30;

/** The steps of some adjusters are too small to be told one by one. */
export const toldOf = (events: readonly ToldEvent[], brake: Brake): readonly ToldEvent[] =>
  isCountable(brake) ? events : events.filter((e) => e.kind !== 'click');

/** What is shown of a stretch so far, mm, its pace, mm/s, and the page's clock at the last look, ms. */
interface Shown {
  far: number;
  readonly pace: number;
  before: number;
}

/**
 * A stretch of a life while it is driven and shown: the record follows it, row by row. Like the moving
 * brake it is no part of the record; it ends where the record goes elsewhere, and with the station.
 */
export class LifePlay {
  readonly #session: Session;
  readonly #book: LifeBook;
  /** The stretch that is driven or shown. */
  #open: Stretch | null = null;
  /** Null: what is driven is shown at once. */
  #shown: Shown | null = null;
  #frame: number | null = null;

  constructor(session: Session, driver: LifeDriver = new LifeRun()) {
    this.#session = session;
    this.#book = new LifeBook(driver, (stretch, events) => this.#hear(stretch, events));
    session.addEventListener('change', () => this.#follow());
    this.#follow();
  }

  /** Is a stretch being driven or shown? */
  get busy(): boolean {
    return this.#open !== null && this.trouble === null;
  }
  get progress(): number {
    return this.#book.progress;
  }
  get trouble(): LifeTrouble | null {
    return this.#book.trouble;
  }
  /** The life as far as it has been driven. */
  get soFar(): LifeSoFar {
    const { brake, moment } = this.#session;
    return this.#book.soFar(moment.bench.life, brake, moment.parts.wear.road);
  }

  /**
   * Drives the stretch that the life ends with to its end, and shows it.
   *
   * @param pace of what is shown, mm/s of the page's clock
   */
  begin(pace: number): void {
    const { moment, reducedMotion } = this.#session;
    this.#rest();
    this.#open = lastStretch(moment.bench.life);
    if (!this.#open) return;
    this.#book.again();
    if (!reducedMotion) {
      this.#shown = { far: moment.bench.state.distance, pace, before: 0 };
      this.#frame = requestAnimationFrame(this.#tick);
    }
    this.#follow();
    // What it has given already, as after it was taken back, is shown like news.
    this.#hear(this.#open, []);
  }

  /** No more is driven; what was driven is kept. */
  halt(): void {
    this.#rest();
    this.#follow();
  }

  /** Ends the stretch where it is shown; what was driven beyond is forgotten. */
  stop(): void {
    const open = this.#open;
    this.#rest();
    if (open) this.#session.amend(stopHere, open);
  }

  #rest(): void {
    this.#open = null;
    this.#showAll();
  }

  #showAll(): void {
    this.#shown = null;
    if (this.#frame !== null) cancelAnimationFrame(this.#frame);
    this.#frame = null;
  }

  /** The record has changed. */
  #follow(): void {
    const { brake, moment } = this.#session;
    const { life } = moment.bench;
    if (this.#open && lastStretch(life) !== this.#open) this.#rest();
    if (moment.station === 'wear') {
      this.#book.drive(life, brake, this.#open);
      return;
    }
    this.#book.pause();
    const open = this.#open;
    if (!open) return;
    // Whoever goes to another station takes along what was driven, without a replay there.
    this.#rest();
    this.#toEnd(open);
  }

  /** News of a stretch, with its new events, or trouble. */
  #hear(stretch: Stretch, events: readonly ToldEvent[]): void {
    const open = this.#open;
    const { brake } = this.#session;
    if (stretch === open) {
      const { end, rows } = this.#book.given(brake, stretch);
      const { trouble } = this;
      if (trouble) this.#showAll();
      if (this.#shown) this.#session.amend(follow, stretch, rows.length, null);
      else {
        for (const e of toldOf(events, brake)) this.#session.tell(e);
        if (end || (trouble && trouble.kind !== 'silent')) this.#rest();
        this.#toEnd(stretch);
      }
    }
    this.#session.changed();
  }

  /** The record stands at the last row that its last stretch has given. */
  #toEnd(stretch: Stretch): void {
    const { brake, moment } = this.#session;
    const { life } = moment.bench;
    const last = life.legs.at(-1);
    if (last?.kind !== 'drive' || last.stretch !== stretch) return;
    const { rows } = this.#book.given(brake, stretch);
    const row = rows.at(-1);
    const at = countRows(life) - last.rows + rows.length - 1;
    this.#session.amend(follow, stretch, rows.length, row ? { at, state: row.state } : null);
  }

  #tick = (now: number): void => {
    this.#frame = null;
    const shown = this.#shown;
    if (!shown) return;
    const seconds = shown.before > 0 ? Math.min(0.1, (now - shown.before) / 1000) : 0;
    shown.before = now;
    // A tooth that is being shown dropping in holds the run up.
    if (!this.#session.showing) this.#forward(shown, seconds);
    if (this.#shown) this.#frame = requestAnimationFrame(this.#tick);
  };

  #forward(shown: Shown, seconds: number): void {
    const open = this.#open;
    if (!open) return;
    const { brake, moment } = this.#session;
    const { events, rows } = this.soFar;
    const before = moment.bench.life.at;
    const most = rows.at(-1)?.distance ?? 0;
    shown.far = Math.min(most, shown.far + shown.pace * seconds);
    const many = !isCountable(brake) || events.length > MANY;
    let at = before;
    let clicks = 0;
    while (at + 1 < rows.length && (rows[at + 1] as LifeRow).distance <= shown.far) {
      at += 1;
      if ((rows[at] as LifeRow).at !== 'after click') continue;
      clicks += 1;
      if (!many) break;
    }
    const given = this.#book.given(brake, open);
    if (at !== before) {
      const from = (rows[before] as LifeRow).distance;
      const { distance, state } = rows[at] as LifeRow;
      this.#session.amend(follow, open, given.rows.length, { at, state });
      for (const e of toldOf(events, brake)) {
        if (e.distance > from && e.distance <= distance) this.#session.tell(e);
      }
      if (clicks > 0 && wordsOf(brake).timbre) {
        if (many) this.#session.tellClick();
        else this.#session.showClick();
      }
    }
    if (given.end && at >= rows.length - 1) {
      this.#rest();
      this.#session.changed();
    }
  }
}
